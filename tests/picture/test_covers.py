"""The cover and the view laid flat, of every example lesson in three sizes: the thing as made, whole, without a word,
and each measure one of the table's. The rules are the trade's own: a flat drawing shows the finished article from both
sides at one scale (common practice, no source)."""

from __future__ import annotations

import re
from functools import cache
from itertools import pairwise

import pytest
from shapely.geometry import LineString, Polygon, box
from shapely.ops import unary_union

from kit import Lesson, blank_paper, bodice_block, cm
from kit.booklet.forms import FORMS, PX
from kit.booklet.garment_shown import COVER_SHARE
from kit.geometry import Point
from kit.lesson.pattern import Pattern
from kit.picture.assembled import assembled
from kit.picture.drawing import Dimension, Drawing, Fill, Label, Stroke
from kit.picture.flat import cover_drawing, laid_flat
from kit.picture.put_on import on_piece, outlines_on
from kit.picture.svg_pen import svg
from kit.picture.tied import bow
from kit.piece.piece import Strip
from kit.sewing.in_work import shown_scenes
from kit.sewing.order import operations
from kit.sewing.order import sew as order
from kit.units import both
from tests.example import GARMENTS
from tests.renamed import plain_lesson, work
from tests.wear.garments import lesson_of

SIZES = ("W1", "W4", "W10")
ALL = [(lesson, size) for lesson in GARMENTS for size in SIZES]
INSIDE = ("facing", "lining", "interfacing", "bag")  # what a finished thing does not show, from memory of the trade


@cache
def worked(lesson: str, size: str = "W4") -> Pattern:
    return work(plain_lesson(f"{lesson}.ipynb"), size)


def areas(drawing: Drawing) -> list[tuple[str, Polygon]]:
    return [
        (item.name, Polygon([(p.x, p.y) for c in item.curves for p in c.points(0.3)[:-1]]).buffer(0))
        for item in drawing.items
        if isinstance(item, Fill)
    ]


def strokes(drawing: Drawing, role: str, name: str = "") -> list[LineString]:
    return [
        LineString([(p.x, p.y) for c in item.curves for p in c.points(0.3)])
        for item in drawing.items
        if isinstance(item, Stroke) and item.role == role and name in item.name
    ]


# ---- the cover ---------------------------------------------------------------------------------------------


@pytest.mark.parametrize(("lesson", "size"), ALL)
@pytest.mark.parametrize("view", ["front", "back"])
def test_nothing_lies_loose(lesson: str, size: str, view: str) -> None:
    """All cloth of a view hangs together: drawn areas that touch are one."""
    whole = unary_union([area.buffer(0.6) for _, area in areas(laid_flat(worked(lesson, size), view))])  # type: ignore[arg-type]
    assert whole.geom_type == "Polygon"


@pytest.mark.parametrize(("lesson", "size"), ALL)
def test_every_cut_piece_and_every_strip_is_there(lesson: str, size: str) -> None:
    pattern = worked(lesson, size)
    shown = {name for view in ("front", "back") for name, _ in areas(laid_flat(pattern, view))}  # type: ignore[arg-type]
    wanted = {piece.name for piece in pattern.pieces if piece.cut.cloth == "main" and piece.role not in INSIDE}
    assert wanted | {strip.name for strip in pattern.strips} <= shown


@pytest.mark.parametrize(("lesson", "size"), ALL)
def test_a_cover_has_no_word(lesson: str, size: str) -> None:
    assert not [item for item in cover_drawing(worked(lesson, size)).items if isinstance(item, Label | Dimension)]


@pytest.mark.parametrize("lesson", GARMENTS)
@pytest.mark.parametrize("form", ["a4", "letter", "a5", "half-letter", "a4-large"])
def test_a_cover_fills_its_page(lesson: str, form: str) -> None:
    """At least 60 % of the width of the text, and no more than the upper two thirds of the page."""
    page = FORMS[form]
    room = (page.measure * PX, page.depth * COVER_SHARE * PX)
    found = re.search(r'width="([\d.]+)" height="([\d.]+)"', svg(cover_drawing(worked(lesson)), *map(round, room)))
    assert found is not None
    wide, high = float(found[1]), float(found[2])
    assert wide >= 0.6 * room[0]
    assert high <= page.height * PX * 2 / 3


@pytest.mark.parametrize(("lesson", "size"), ALL)
def test_both_views_have_one_scale_and_one_base_line(lesson: str, size: str) -> None:
    pattern = worked(lesson, size)
    both_views = areas(cover_drawing(pattern))
    middle = sum(area.bounds[i] for _, area in both_views for i in (0, 2)) / (2 * len(both_views))
    for piece in pattern.pieces:
        if piece.role not in ("front", "back"):
            continue
        left, right = (
            [area for name, area in both_views if name == piece.name and (area.centroid.x < middle) == first]
            for first in (True, False)
        )
        assert sum(a.area for a in left) == pytest.approx(sum(a.area for a in right), rel=1e-3)
        assert min(a.bounds[1] for a in left) == pytest.approx(min(a.bounds[1] for a in right), abs=0.5)


@pytest.mark.parametrize(("lesson", "size"), ALL)
def test_strips_are_of_the_garments_cloth(lesson: str, size: str) -> None:
    pattern = worked(lesson, size)
    names = {strip.name for strip in pattern.strips if strip.cloth == "main"}
    roles = {item.role for item in cover_drawing(pattern).items if isinstance(item, Fill) and item.name in names}
    assert roles <= {"right_side"}


# ---- what makes each of them -------------------------------------------------------------------------------


@pytest.mark.parametrize("size", SIZES)
def test_the_skirts_darts_are_sewn_and_its_waist_runs_on(size: str) -> None:
    """One line a dart and half, from the waist to its point; the waist without a corner at their mouths, and as long as
    the edges sewn to the band are (the kit's own `sewn_length`, tested against paper elsewhere)."""
    pattern = worked("dune_skirt", size)
    for view in ("front", "back"):
        flat = assembled(pattern, view).near[0]  # type: ignore[arg-type]
        drawing = laid_flat(pattern, view)  # type: ignore[arg-type]
        lines = strokes(drawing, "symbol", f"{view}.")
        assert len(lines) == 2 * len(flat.piece.darts)
        edge = flat.edge("waist", "right")
        turns = [abs((b - a).turn_to(c - b)) for (a, b), (_, c) in pairwise(pairwise(edge)) if b.distance(a) > 1e-6]
        assert max(turns, default=0.0) < 0.06
        waist = LineString(
            [(p.x, p.y) for side in flat.sides for p in flat.edge("waist", side)[:: 1 if side == "left" else -1]]
        )
        assert all(waist.distance(line) < 1.0 for line in lines)
        assert all(line.length > 60.0 for line in lines)


@pytest.mark.parametrize("size", SIZES)
def test_front_and_back_of_the_skirt_lie_edge_on_edge(size: str) -> None:
    """Seen from the back nothing of the front looks out at the sides; at the waist it does, where the back dips."""
    views = areas(laid_flat(worked("dune_skirt", size), "back"))
    front = unary_union([area for name, area in views if name == "front"])
    back = unary_union([area for name, area in views if name == "back"])
    below = box(-1000.0, -1000.0, 1000.0, back.bounds[3] - 30.0)
    assert front.intersection(below).difference(back.buffer(1.0)).area < 30.0


@pytest.mark.parametrize("size", SIZES)
def test_the_skirts_band_is_one_and_closes_at_the_side(size: str) -> None:
    pattern = worked("dune_skirt", size)
    drawing = laid_flat(pattern, "front")
    bands = [area for name, area in areas(drawing) if name == "waistband"]
    top = max(bands, key=lambda area: area.bounds[1])
    for line in strokes(drawing, "edge", "waistband"):
        for (x0, y0), (x1, y1) in pairwise(line.coords):
            assert abs(x0) > 30 or abs(y1 - y0) < 0.5 * abs(x1 - x0) + 1e-6, "a line in the band's middle"
    button = next(area for name, area in areas(drawing) if name == "buttonhole_1")
    assert top.covers(button)
    assert button.centroid.x > 0.7 * top.bounds[2], "the wearer's left is at the viewer's right"
    back = areas(laid_flat(pattern, "back"))
    assert "buttonhole_1" not in {name for name, _ in back}


@pytest.mark.parametrize("size", SIZES)
def test_the_skirts_zip_shows_as_a_row_at_the_side_it_is_in(size: str) -> None:
    pattern = worked("dune_skirt", size)
    (zip,) = [op for _, op in operations(pattern) if op.kind == "lapped_zip"]
    (row,) = [
        line
        for line in strokes(laid_flat(pattern, "front"), "old_row")
        if line.bounds[3] - line.bounds[1] > line.bounds[2] - line.bounds[0]
    ]
    assert row.bounds[0] > 0
    assert row.length == pytest.approx(zip.length, rel=0.04)


@pytest.mark.parametrize("lesson", ["ferry_tote", "lantern_bag"])
def test_a_handle_is_as_long_as_it_was_made(lesson: str) -> None:
    """Its arc: drawn area over width; less what lies on or in the bag, and eight millimetres of it behind the edge."""
    pattern = worked(lesson)
    ops = [op for _, op in operations(pattern) if op.kind == "attach_handle"]
    drawn = [(name, area) for name, area in areas(laid_flat(pattern)) if name == ops[0].name]
    assert len(drawn) == len(ops) == 2
    for op, (_, area) in zip(ops, drawn, strict=True):
        strip = pattern.strip(op.name)
        long = strip.finished_length - 2 * op.lap + 16.0
        assert area.area / strip.finished_width == pytest.approx(long, rel=0.01)


def test_the_totes_handles_rise_from_where_they_are_sewn() -> None:
    pattern = worked("ferry_tote")
    (op, _) = [op for _, op in operations(pattern) if op.kind == "attach_handle"]
    crosses = [line for line in strokes(laid_flat(pattern), "old_row", "handle sewn") if line.is_closed]
    assert len(crosses) == 2
    apart = abs(crosses[0].centroid.x - crosses[1].centroid.x)
    assert apart == pytest.approx(op.at[1] - op.at[0], abs=0.5)


@pytest.mark.parametrize("size", SIZES)
def test_the_jackets_belt_goes_round_at_its_loops_and_is_tied(size: str) -> None:
    pattern = worked("harbour_jacket", size)
    for view in ("front", "back"):
        drawing = areas(laid_flat(pattern, view))  # type: ignore[arg-type]
        belt = [area for name, area in drawing if name == "belt"]
        loops = [area for name, area in drawing if name == "belt_loop"]
        round_body = max(belt, key=lambda area: area.bounds[2] - area.bounds[0])
        assert len(loops) == 2
        assert all(loop.intersects(round_body) for loop in loops)
        assert (len(belt) > 3) == (view == "front"), "knot, loops and ends in front"
        cloth = unary_union([area for name, area in drawing if name in ("front", "back")])
        low, high = loops[0].bounds[1], loops[0].bounds[3]
        assert cloth.bounds[1] < low < high < cloth.bounds[3]


@pytest.mark.parametrize("lesson", ["tideline_wrap_top", "neap_tide_wrap"])
@pytest.mark.parametrize("size", SIZES)
def test_the_ties_of_a_wrap_go_round_the_back(lesson: str, size: str) -> None:
    """From the opening in the right side seam to the loop at the left one; they are tied at that side in front, or at
    the back where they are too short to come round."""
    pattern = worked(lesson, size)
    back = areas(laid_flat(pattern, "back"))
    tie = max((area for name, area in back if name == "tie"), key=lambda area: area.bounds[2] - area.bounds[0])
    cloth = unary_union([area for name, area in back if name == "back"])
    level = (tie.bounds[1] + tie.bounds[3]) / 2
    across = cloth.intersection(LineString([(-2000, level), (2000, level)]))
    assert tie.bounds[2] - tie.bounds[0] > 0.95 * across.length
    front, behind = ([name for name, _ in view].count("tie") for view in (areas(laid_flat(pattern)), back))
    assert (front >= 5 and behind == 1) or (front == 2 and behind >= 4)


def test_darts_nobody_sews_stay_open() -> None:
    """A lesson without sewing lies there as drafted."""
    pattern = worked("blocks_and_moves")
    flat = assembled(pattern, "front").near[0]
    assert flat.piece.darts
    assert not flat.folds


# ---- laid flat, with its measures --------------------------------------------------------------------------


def said(drawing: Drawing) -> list[str]:
    return [item.text for item in drawing.items if isinstance(item, Label)]


@pytest.mark.parametrize(("lesson", "size"), ALL)
@pytest.mark.parametrize("view", ["front", "back"])
def test_each_measure_is_a_row_of_the_table(lesson: str, size: str, view: str) -> None:
    pattern = worked(lesson, size)
    drawing = laid_flat(pattern, view, "cm")  # type: ignore[arg-type]
    rows = {title: both(value, "cm", "finished") for title, value in pattern.finished}
    lines = [item for item in drawing.items if isinstance(item, Stroke) and item.arrow == "both" and item.name in rows]
    words = " ".join(said(drawing))
    for line in lines:
        assert line.name in words
        assert rows[line.name] in words
        values = dict(pattern.finished)
        a, b = line.curves[0].start, line.curves[-1].end
        straight = a.distance(b)
        if abs(a.y - b.y) < 0.01 and len(line.curves) == 1:  # straight across: the whole or half of it
            assert any(abs(straight * times - values[line.name]) < 1.0 for times in (1, 2))
    texts = [text for row in rows.items() for text in row]
    assert all(any(text in row for row in texts) for text in said(drawing))


@pytest.mark.parametrize(
    ("lesson", "view", "count"),
    [
        ("ferry_tote", "front", 2),
        ("dune_skirt", "front", 3),
        ("harbour_jacket", "back", 5),
        ("tideline_wrap_top", "back", 5),
        ("lantern_bag", "front", 1),
        ("neap_tide_wrap", "back", 5),
    ],
)
@pytest.mark.parametrize("size", SIZES)
def test_every_row_of_the_table_has_its_line(lesson: str, view: str, count: int, size: str) -> None:
    pattern = worked(lesson, size)
    assert len(pattern.finished) == count
    titles = {title for title, _ in pattern.finished}
    items = laid_flat(pattern, view, "cm").items  # type: ignore[arg-type]
    assert {item.name for item in items if isinstance(item, Stroke) and item.arrow == "both"} >= titles


def ways(drawing: Drawing) -> dict[str, tuple[Point, Point]]:
    """Where the line of each measure begins and ends."""
    return {
        item.name: (item.curves[0].start, item.curves[-1].end)
        for item in drawing.items
        if isinstance(item, Stroke) and item.arrow == "both"
    }


def test_of_two_lines_as_long_a_measure_stands_on_the_one_it_is_of() -> None:
    """The apron is as long as it is wide: its length was worked out from heights, its width from the hem."""
    found = ways(laid_flat(worked("oyster_apron"), "front", "cm"))
    a, b = found["Length, bib to hem"]
    assert abs(a.x - b.x) < 0.1 and abs(a.y - b.y) == pytest.approx(800.0, abs=0.6)
    a, b = found["Width at the waist"]
    assert abs(a.y - b.y) < 0.1 and abs(a.x - b.x) == pytest.approx(800.0, abs=0.6)


def test_a_measure_of_an_edge_is_drawn_nowhere_else() -> None:
    """Pulled open, a waist is as wide as the tier hangs below it; drawn there, it would be measured there."""
    pattern = worked("breaker_skirt")
    for view in ("front", "back"):
        found = ways(laid_flat(pattern, view, "cm"))  # type: ignore[arg-type]
        assert set(found) == {"Length", "Hem, all round"}
        a, b = found["Length"]
        assert abs(a.x - b.x) < 0.1 and abs(a.y - b.y) == pytest.approx(dict(pattern.finished)["Length"], abs=0.6)


@pytest.mark.parametrize("size", SIZES)
def test_the_hem_of_a_pocket_on_the_fold_is_one_row_across_it(size: str) -> None:
    pattern = worked("oyster_apron", size)
    drawing = laid_flat(pattern, "front")
    (pocket,) = (area for name, area in areas(drawing) if name == "pocket")
    x0, _, x1, y1 = pocket.bounds
    rows = strokes(drawing, "old_row", "pocket")
    across = [row for row in rows if row.bounds[3] - row.bounds[1] < 1.0]
    assert [(row.bounds[0], row.bounds[2]) for row in across] == [
        (pytest.approx(x0, abs=0.1), pytest.approx(x1, abs=0.1))
    ]
    assert y1 - 35.0 < across[0].bounds[1] < y1 - 20.0
    (around,) = (row for row in rows if row not in across)
    assert around.length == pytest.approx(2 * (y1 - pocket.bounds[1]) + x1 - x0, rel=0.03)  # open at the mouth


@pytest.mark.parametrize("lesson", GARMENTS)
def test_names_of_measures_stand_outside_the_garment(lesson: str) -> None:
    pattern = worked(lesson)
    for view in ("front", "back"):
        drawing = laid_flat(pattern, view, "cm")  # type: ignore[arg-type]
        cloth = unary_union([area for _, area in areas(drawing)])
        x0, _, x1, _ = cloth.bounds
        for item in drawing.items:
            if isinstance(item, Label):
                assert item.at.x < x0 if item.anchor == "end" else item.at.x > x1


def test_the_ends_that_hang_from_a_bow_are_slanted_as_they_are_made() -> None:
    """Cut off aslant by 40 mm, an end 30 mm wide has 600 mm² less cloth; the other is as it was."""
    strip = Strip("tie", "Tie", 900.0, 80.0, 1, finished_length=880.0, finished_width=30.0)

    def tails(*slants: float) -> list[float]:
        fills = [item for item in bow(Point(0.0, 0.0), strip, 600.0, slants) if isinstance(item, Fill)]
        return [
            Polygon([(p.x, p.y) for curve in fill.curves for p in curve.points(1.0)[:-1]]).area for fill in fills[:2]
        ]

    (left, right), (cut, kept) = tails(0.0, 0.0), tails(40.0, 0.0)
    assert left - cut == pytest.approx(40.0 * 30.0 / 2, rel=0.1) and kept == pytest.approx(right)


@pytest.mark.parametrize("sewn_in", [True, False])
def test_inside_a_lined_garment_its_lining_shows(sewn_in: bool) -> None:
    """Into the neck of a lined top one sees the lining of its back, not the wrong side of its cloth."""
    lesson = Lesson("Lined top", start=bodice_block, size="W4")

    @lesson.step("Line the back", makes="back_lining")
    def line(front, back, back_lining):
        """Trace it."""
        for piece in (front, back):
            piece.allow(neck=1 * cm, shoulder=1 * cm, armhole=1 * cm, side=1 * cm, hip=1 * cm)
            piece.cut(1, fold="centre")
            piece.grain()
        back_lining.line(back)

    @lesson.sew("Sew")
    def sew(make, front, back, back_lining):
        """Shoulders and sides."""
        make.plain_seam(front.shoulder, back.shoulder, allowance=1 * cm)
        make.plain_seam(front.side, back.side, allowance=1 * cm)
        if sewn_in:
            make.seam_to_turn(back.neck, back_lining.neck, allowance=1 * cm)

    fills = {(item.name, item.role) for item in cover_drawing(lesson.work()).items if isinstance(item, Fill)}
    assert (("back", "lining") in fills) == sewn_in
    assert (("back", "wrong_side") in fills) != sewn_in
    assert ("front", "right_side") in fills


@pytest.mark.parametrize("view", ["front", "back"])
def test_set_in_sleeves_lie_folded_along_the_armhole_alike_on_both_sides(view: str) -> None:
    """Laid flat, a shirt's sleeve is half as wide as it goes round and joins the armhole without a gap (common
    practice, no source)."""
    garment = assembled(lesson_of("blouse", ()).work(), view)
    rings = {}
    for side in ("left", "right"):
        (sleeve,), body = garment.of("sleeve", side), garment.of(view, side)[0]
        ring = Polygon([(p.x, p.y) for p in sleeve.ring]).buffer(0)
        rings[side] = ring
        armhole = LineString([(p.x, p.y) for p in body.edge("armhole", side)])
        assert armhole.within(ring.buffer(1.0))
        # Half of it, and the hollow under the arm that the cap fills when it lies along the armhole.
        assert ring.area == pytest.approx(abs(sleeve.piece.outline.area) / 2, rel=0.12)
    left, right = rings["left"].bounds, rings["right"].bounds
    assert (left[0], left[2]) == pytest.approx((-right[2], -right[0]), abs=2.0)
    assert (left[1], left[3]) == pytest.approx((right[1], right[3]), abs=2.0)
    assert min(abs(left[0]), abs(left[2])) > 100.0


def test_a_pocket_on_the_fold_of_a_front_is_one_pocket_and_its_mouth_stays_open() -> None:
    """Its half is marked on the half of the front; on the cover both are one outline, and no row crosses its mouth."""
    lesson = Lesson("Apron", start=blank_paper)

    @lesson.step("Draw", makes=("front", "pocket"))
    def draw(front, pocket):
        """Half of each."""
        for piece, wide, high in ((front, 30 * cm, 60 * cm), (pocket, 8 * cm, 12 * cm)):
            low = piece.place(0 * cm, 0 * cm)
            out, top = low.out(wide), low.up(high)
            piece.draw(hem=low.to(out), side=out.to(out.up(high)), neck=out.up(high).to(top), centre=top.to(low))
            piece.cut(1, fold="centre")
            piece.allow(hem=1 * cm, side=1 * cm, neck=3 * cm)
        front.placement("pocket_place", pocket, at=front.place(0 * cm, 40 * cm), by=pocket.neck.end)

    @lesson.sew("Sew")
    def sew(make, front, pocket):
        """The pocket first."""
        make.pocket_hem(pocket.neck, second=2.4 * cm)
        make.fold_pocket(pocket.side, pocket.hem, allowance=1 * cm)
        make.patch_pocket(pocket.side, pocket.hem, at=front.pocket_place, allowance=1 * cm)

    pattern = lesson.work()
    assert [each.code for each in order(pattern)[1]] == []
    drawing = cover_drawing(pattern)
    (pocket,) = [shape for name, shape in areas(drawing) if name == "pocket"]
    assert pocket.area == pytest.approx(160.0 * 120.0, rel=0.01)
    (hem,) = [line for line in strokes(drawing, "old_row", "pocket") if line.bounds[1] == line.bounds[3]]
    assert hem.length == pytest.approx(160.0, abs=1.0)
    made = pattern.sewing[0].operations[-1]
    rows = [row for scene in shown_scenes(pattern, made) for row in scene.rows if row.line is not None]
    assert rows and all(row.line.length == pytest.approx(80.0 + 120.0, abs=6.0) for row in rows)


def test_a_button_of_the_stand_does_not_show_at_the_centre_back_and_cuffs_are_in_line() -> None:
    """A stand is buttoned in front; a cuff is as wide as the sleeve that it ends (common practice, no source)."""
    pattern = lesson_of("shirt", ()).work()
    back = assembled(pattern, "back")
    (body,) = (flat for flat in back.near if flat.piece.name == "back")
    drawn = [item for item in on_piece(body, back) if isinstance(item, Stroke) and item.name.startswith("buttonhole")]
    assert drawn == []
    front = assembled(pattern, "front")
    holes = {item.name for flat in front.near for item in on_piece(flat, front) if item.name.startswith("buttonhole")}
    assert {f"buttonhole_{number}" for number in range(1, 7)} <= holes
    for view in (front, back):
        for sleeve in (flat for flat in view.near if flat.piece.name == "sleeve"):
            (cuff,) = (Polygon([(p.x, p.y) for p in r]) for name, r in outlines_on(sleeve, view) if name == "cuff")
            square = cuff.minimum_rotated_rectangle.area
            assert cuff.is_valid and cuff.area > 0.85 * square  # with the flag of its overlap 0.6 of it
