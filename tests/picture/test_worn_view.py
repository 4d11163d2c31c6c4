"""The garment on its body, in three sizes: its lengths are the finished ones, its widths those of what goes round, the
body that of the chart. What is measured on the drawing is held to the kit's finished measures, which other tests hold
to paper, and to the body's own measures as ISO 8559-1 defines them (from memory: heights from the floor or between
landmarks on a standing body, girths round it)."""

from __future__ import annotations

from functools import cache
from itertools import pairwise

import pytest
from shapely.geometry import LineString, Polygon, box
from shapely.ops import unary_union

from kit import workshop_chart
from kit.body.body import NOBODY, Body
from kit.body.make import make_body
from kit.lesson.lesson import Lesson
from kit.lesson.pattern import Pattern
from kit.picture.chains import length
from kit.picture.drawing import Fill, Stroke
from kit.picture.flat import laid_flat
from kit.picture.on_body import Bent
from kit.picture.tied import wrapped
from kit.picture.wearer import Wearer
from kit.picture.worn_view import WornView, worn_drawing, worn_view
from kit.piece.double_dart import double_darts
from kit.wear.girth import Worn
from tests.body.bdims import women
from tests.renamed import plain_lesson, work
from tests.wear.garments import lesson_of

SIZES = ("W1", "W4", "W10")
TOPS = ("tideline_wrap_top", "harbour_jacket")
WORN = (*TOPS, "dune_skirt")
NEAR = 5.0  # mm


@cache
def worked(lesson: str, size: str = "W4") -> Pattern:
    return work(plain_lesson(f"{lesson}.ipynb"), size)


@cache
def short(lesson: str, size: str = "W4") -> Pattern:
    return lesson_of(lesson).work(workshop_chart()[size])


@cache
def seen(lesson: str, size: str, view: str) -> WornView:
    found = worn_view(worked(lesson, size), view)  # type: ignore[arg-type]
    assert found is not None
    return found


def areas(view: WornView, body: bool) -> list[Polygon]:
    return [
        Polygon([(p.x, p.y) for c in item.curves for p in c.points(0.3)[:-1]]).buffer(0)
        for item in view.items
        if isinstance(item, Fill) and (item.name == "body") is body
    ]


def across(shape: Polygon, y: float) -> float:
    """How wide a shape is at a height, round x = 0."""
    line = shape.intersection(LineString([(-900, y), (900, y)]))
    parts = [part for part in getattr(line, "geoms", [line]) if part.bounds[0] < 0 < part.bounds[2]]
    return max((part.length for part in parts), default=0.0)


# ---- the body ----------------------------------------------------------------------------------------------


@pytest.mark.parametrize("size", SIZES)
def test_the_body_is_as_high_and_as_wide_as_measured(size: str) -> None:
    body = workshop_chart()[size]
    figure = Wearer(body)
    assert figure.crown - figure.floor == pytest.approx(body["height"], abs=1.0)
    assert -figure.floor == pytest.approx(body["waist_height"], abs=1.0)
    assert figure.nape == pytest.approx(body["back_waist_length"], abs=1.0)
    assert figure.nape - figure.underarm == pytest.approx(body["armscye_depth"], abs=1.0)
    assert figure.neck.distance(figure.tip) == pytest.approx(body["shoulder_length"], abs=1.0)
    for name, y in (("waist_girth", 0.0), ("hip_girth", -body["waist_to_hip"])):
        assert 2 * figure.half(y) / figure.seen(y) == pytest.approx(body[name] / 2, rel=0.015)
    drawn = unary_union([Polygon([(p.x, p.y) for c in item.curves for p in c.points(0.3)]).buffer(0.1)
                         for item in figure.items("front") if isinstance(item, Fill)])  # fmt: skip
    assert drawn.bounds[3] == pytest.approx(figure.crown, abs=3.0)
    assert drawn.bounds[1] == pytest.approx(figure.floor, abs=8.0)
    arm = drawn.intersection(box(figure.tip.x - 20.0, figure.floor, 2000.0, figure.tip.y + 20.0))
    assert figure.tip.distance(figure.hand) == pytest.approx(body["arm_length"] + 70.0, abs=40.0)  # half a hand on
    assert arm.area > 0.0


def test_a_wider_body_is_drawn_wider_at_that_level_alone() -> None:
    chart = workshop_chart()
    one, other = Wearer(chart["W4"]), Wearer(chart["W10"])
    for name, y, far in (("waist_girth", 0.0, 0.0), ("hip_girth", "waist_to_hip", -1.0)):
        levels = [far * body[y] if isinstance(y, str) else y for body in (chart["W4"], chart["W10"])]
        ratio = other.half(levels[1]) / one.half(levels[0])
        assert ratio == pytest.approx(chart["W10"][name] / chart["W4"][name], rel=0.01)


# ---- lengths -----------------------------------------------------------------------------------------------


@pytest.mark.parametrize("size", SIZES)
@pytest.mark.parametrize("lesson", TOPS)
def test_back_and_sleeve_are_as_long_as_the_table_says(lesson: str, size: str) -> None:
    pattern = worked(lesson, size)
    finished = dict(pattern.finished)
    view = seen(lesson, size, "back")
    (back,) = view.garment.of("back")
    centre = back.edge("centre")
    assert abs(centre[0].y - centre[-1].y) == pytest.approx(finished["Back length, neck to hem"], abs=NEAR)
    hang = view.wearer.nape - min(p.y for p in centre)  # the hem's true level: as far below the nape as it is long
    assert hang == pytest.approx(finished["Back length, neck to hem"], abs=NEAR)
    for side in back.sides:
        assert length(back.edge("overarm", side)) == pytest.approx(finished["Sleeve, neck point to opening"], abs=NEAR)
        assert 2 * length(back.edge("opening", side)) == pytest.approx(finished["Sleeve opening, all round"], abs=NEAR)


@pytest.mark.parametrize("size", SIZES)
def test_the_skirt_hangs_from_the_waist_to_its_hem(size: str) -> None:
    pattern = worked("dune_skirt", size)
    long = dict(pattern.finished)["Length below the band"]
    for view in ("front", "back"):
        found = seen("dune_skirt", size, view)
        (flat,) = found.garment.of(view)
        centre = [p.y for p in flat.edge("centre")]
        assert min(centre) == pytest.approx(-long, abs=12.0)  # the waist itself dips by so much at most
        assert max(centre) - min(centre) == pytest.approx(long, abs=12.0)
        side = flat.edge("side", "right")
        assert length(side) == pytest.approx(long, rel=0.05)


# ---- widths ------------------------------------------------------------------------------------------------


@pytest.mark.parametrize("size", SIZES)
@pytest.mark.parametrize("lesson", WORN)
@pytest.mark.parametrize("view", ["front", "back"])
def test_it_is_as_wide_as_it_goes_round_and_no_narrower_than_the_body(lesson: str, size: str, view: str) -> None:
    """The garment's girth by the cuts of kit/wear, which other tests hold to shapely."""
    pattern, found = worked(lesson, size), seen(lesson, size, view)
    worn = Worn(pattern, found.garment.state)
    rings = unary_union([Polygon([(p.x, p.y) for p in flat.ring]).buffer(0) for flat in found.garment.flats])
    low, _ = worn.span
    top = 60.0 if lesson in TOPS else -30.0
    checked = 0
    for y in range(int(low) + 25, int(top), 20):
        there = worn.round(float(y))
        if there is None or not there.closed:
            continue
        checked += 1
        wide = across(rings, float(y))
        assert 2 * wide / found.wearer.seen(float(y)) == pytest.approx(there.girth, abs=2 * NEAR), y
        assert wide >= 2 * found.wearer.half(float(y)) - 4.0, f"cloth inside the body at {y}"
    assert checked >= 5


@pytest.mark.parametrize("size", SIZES)
@pytest.mark.parametrize("lesson", TOPS)
def test_the_arm_lies_in_its_sleeve(lesson: str, size: str) -> None:
    found = seen(lesson, size, "front")
    cloth = unary_union(areas(found, body=False))
    end = max(p.x for flat in found.garment.near for p in flat.ring)
    arms = unary_union([area for area in areas(found, body=True) if area.bounds[2] > end or area.bounds[0] < -end])
    upper = box(found.wearer.tip.x, found.wearer.underarm + 40.0, end * 0.8, found.wearer.crown)
    assert arms.intersection(upper).difference(cloth.buffer(2.0)).area < 60.0


# ---- closed, tied, in order --------------------------------------------------------------------------------


@pytest.mark.parametrize("size", SIZES)
def test_the_wrap_is_tied_with_what_its_ties_have_left_laid_flat(size: str) -> None:
    for view in ("front", "back"):
        garment = seen("tideline_wrap_top", size, view).garment
        assert garment.lying is not None
        one, other = wrapped(garment), wrapped(garment.lying)
        assert one is not None and other is not None
        assert one.left == pytest.approx(other.left)
        assert (one.knot is None) == (other.knot is None)


@pytest.mark.parametrize("size", SIZES)
@pytest.mark.parametrize("lesson", TOPS)
def test_the_right_front_lies_over_the_left_and_all_over_the_body(lesson: str, size: str) -> None:
    names = [
        (item.name, item.role) for item in seen(lesson, size, "front").items if isinstance(item, Stroke) and item.closed
    ]
    places = [names.index((name, "edge")) for name in ("front.left", "front.right")]
    last = max(i for i, (name, _) in enumerate(names) if name == "body")
    assert last < places[0] < places[1]


@pytest.mark.parametrize("size", SIZES)
def test_the_skirts_darts_are_shut(size: str) -> None:
    pattern = worked("dune_skirt", size)
    for view in ("front", "back"):
        darts = len(pattern.piece(view).darts)
        lines = [item for item in seen("dune_skirt", size, view).items if getattr(item, "role", "") == "symbol"]
        assert len([line for line in lines if line.name.startswith(f"{view}.")]) == 2 * darts  # type: ignore[union-attr]


@pytest.mark.parametrize("size", SIZES)
@pytest.mark.parametrize("lesson", (*WORN, "ferry_tote", "lantern_bag"))
def test_front_and_back_have_one_scale_and_one_level(lesson: str, size: str) -> None:
    drawing = worn_drawing(worked(lesson, size))
    assert drawing is not None and drawing.bounds is not None and drawing.alt
    heads = [
        Polygon([(p.x, p.y) for c in item.curves for p in c.points(0.3)])
        for item in drawing.items
        if isinstance(item, Fill) and item.name == "body"
    ]
    tall = sorted(heads, key=lambda area: -area.bounds[3])[:2]
    assert tall[0].bounds[3] == pytest.approx(tall[1].bounds[3])
    assert tall[0].area == pytest.approx(tall[1].area)
    ys = [p.y for item in drawing.items if isinstance(item, Stroke) and item.name != "body"
          for c in item.curves for p in c.points(1.0)]  # fmt: skip
    assert min(ys) >= drawing.bounds[1] and max(ys) <= drawing.bounds[3], "cut off"


@pytest.mark.parametrize("view", ["front", "back"])
def test_darts_with_two_points_are_one_line_each_on_cover_and_body(view: str) -> None:
    pattern = short("shift")
    cover, worn = laid_flat(pattern, view), worn_view(pattern, view)  # type: ignore[arg-type]
    assert worn is not None
    for piece in pattern.pieces:
        for dart in double_darts(piece):
            name = f"{piece.name}.{dart.mark.name}"
            for items in (cover.items, worn.items):
                lines = [item for item in items if isinstance(item, Stroke) and item.name == name]
                assert len(lines) == 2, "one on either half"
                for line in lines:
                    ys = [p.y for c in line.curves for p in c.points(1.0)]
                    assert max(ys) - min(ys) == pytest.approx(dart.top.y - dart.bottom.y, abs=0.5)


# ---- what is not on the trunk ------------------------------------------------------------------------------


def test_a_bag_with_short_handles_hangs_from_the_hand_and_clears_the_floor() -> None:
    found = worn_view(worked("ferry_tote"), "front")
    assert found is not None and found.how == "hand" and found.wearer.body == NOBODY
    whole = unary_union(areas(found, body=False))
    front = max(areas(found, body=False), key=lambda area: area.area)
    width = dict(found.garment.pattern.finished)["Width"]
    assert front.bounds[2] - front.bounds[0] == pytest.approx(width, abs=0.5)
    assert whole.bounds[1] > found.wearer.floor + 30.0
    assert whole.distance(Polygon([(found.wearer.hand.x + dx, found.wearer.hand.y + dy)
                                   for dx, dy in ((-1, -1), (1, -1), (1, 1), (-1, 1))])) < 30.0  # fmt: skip


def test_a_bag_with_long_handles_hangs_from_the_shoulder() -> None:
    found = worn_view(worked("lantern_bag"), "back")
    assert found is not None and found.how == "shoulder"
    whole = unary_union(areas(found, body=False))
    assert whole.bounds[3] > found.wearer.tip.y
    assert whole.centroid.x < 0, "the wearer's left, seen from behind"


def test_a_hat_sits_on_the_brow_as_wide_as_a_head_with_its_ease() -> None:
    found = worn_view(short("hat"), "front")
    assert found is not None and found.how == "head"
    hat, head = unary_union(areas(found, body=False)), found.wearer.body["head_girth"]
    assert found.wearer.neck.y < hat.bounds[1] < found.wearer.crown < hat.bounds[3]
    bare = 2 * 74.0 * head / 560.0  # the measuring figure's head
    assert bare <= hat.bounds[2] - hat.bounds[0] < bare * 1.2


def test_an_apron_goes_round_the_sides_and_is_tied_behind() -> None:
    pattern = short("apron")
    found = worn_view(pattern, "back")
    assert found is not None
    (flat,) = found.garment.of("front")
    assert isinstance(flat.bent, Bent)
    y = -300.0
    side = dict(flat.bent.limits)[y]
    shown = 2 * side + 2 * (side - flat.bent.behind(y))
    width = next(value.value for value in pattern.values if value.name == "width")
    assert shown / found.wearer.seen(y) == pytest.approx(width, abs=NEAR)
    ties = [item for item in found.items if isinstance(item, Fill) and item.name == "tie"]
    assert len(ties) >= 4, "the ties across the back, and a bow"
    strap = [item for item in found.items if isinstance(item, Fill) and item.name == "strap"]
    assert strap and max(p.y for c in strap[0].curves for p in c.points(1.0)) > found.wearer.tip.y


# ---- drawn up ----------------------------------------------------------------------------------------------

DRAWN_UP = ("full_skirt", "breaker_skirt", "corded", "gathered")
"""A skirt of two widths on elastic; three tiers, each gathered to the one above it, on elastic; the first one with a
cord in its casing; and gathered to a length, sewn to no other edge. What is asked of them was written before they were
drawn: as cloth drawn up hangs on a body (common practice, no source)."""
_CASING = """    gap = back.right.waist.between(4 * cm, 8 * cm)
    make.casing(front.waist, back.waist, first=1 * cm, depth=3 * cm, gap=gap)
    make.thread_elastic(front.waist, back.waist, length=elastic + 2 * cm, width=25 * mm, gap=gap)
"""
_UPPER = "    front.guide(waist_line=d.to(c))\n"
OTHERWISE = {
    "corded": (
        (_UPPER, _UPPER + '    front.mark_point("eyelet", d.out(2 * cm).down(1 * cm))\n'),
        ("    make.plain_seam(", "    make.eyelets(front.eyelet)\n    make.plain_seam("),
        (
            _CASING,
            """    make.casing(front.waist, back.waist, first=1 * cm, depth=3 * cm)
    make.thread_cord(front.waist, back.waist, cord=140 * cm, through=front.eyelet)
""",
        ),
    ),
    "gathered": (
        ("    make.plain_seam(", "    make.gather(front.waist, back.waist, to=elastic / 4)\n    make.plain_seam("),
        (_CASING, ""),
    ),
}


def drawn_up_skirt(name: str) -> Lesson:
    return lesson_of("full_skirt", OTHERWISE[name]) if name in OTHERWISE else lesson_of(name)


def full(lesson: str, size: str, view: str) -> WornView:
    body = workshop_chart()[size]
    found = worn_view(drawn_up_skirt(lesson).work(body), view)  # type: ignore[arg-type]
    assert found is not None and found.how == "worn"
    return found


def cloth_of(found: WornView) -> Polygon:
    return unary_union([Polygon([(p.x, p.y) for p in flat.ring]).buffer(0.3) for flat in found.garment.flats])


@pytest.mark.parametrize("size", SIZES)
@pytest.mark.parametrize("lesson", DRAWN_UP)
@pytest.mark.parametrize("view", ["front", "back"])
def test_what_is_drawn_up_follows_the_waist_and_is_full_below(lesson: str, size: str, view: str) -> None:
    """The elastic lies on the waist, nothing of trunk and legs is bare down to the hem, it grows wider all the way down
    and is never as wide as the cloth laid out flat, whose fullness hangs in folds."""
    found = full(lesson, size, view)
    cloth, wearer = cloth_of(found), found.wearer
    top, hem = cloth.bounds[3], cloth.bounds[1]
    waist = top - 12.0
    assert 2 * wearer.half(waist) <= across(cloth, waist) <= 2 * wearer.half(waist) + 30.0
    levels = [waist - 20.0 * step for step in range(int((waist - hem - 10.0) / 20.0))]
    wide = [across(cloth, y) for y in levels]
    assert all(two >= one - 1.0 for one, two in pairwise(wide)), "it grows no narrower"
    body = max(areas(found, body=True), key=lambda area: area.area).intersection(box(-900.0, hem, 900.0, waist))
    assert body.difference(cloth.buffer(1.0)).area < 0.004 * body.area
    widest = max(flat.piece.outline.bounds()[2] - flat.piece.outline.bounds()[0] for flat in found.garment.flats)
    laid_out = 2 * widest  # each piece is cut on the fold
    assert wide[0] + 60.0 < wide[-1] < 0.85 * laid_out


@pytest.mark.parametrize("size", SIZES)
@pytest.mark.parametrize("lesson", DRAWN_UP)
def test_its_length_is_that_of_the_cloth(lesson: str, size: str) -> None:
    """From the elastic's upper edge to the hem, what was turned over for casing and hem left out, as it is drafted."""
    found = full(lesson, size, "front")
    assert found.garment.lying is not None
    seen, lying = (
        max(p.y for flat in each.near for p in flat.ring) - min(p.y for flat in each.near for p in flat.ring)
        for each in (found.garment, found.garment.lying)
    )
    assert seen == pytest.approx(lying, abs=1.0)


@pytest.mark.parametrize("size", SIZES)
@pytest.mark.parametrize("view", ["front", "back"])
def test_each_tier_is_gathered_to_the_one_above_it(size: str, view: str) -> None:
    """At each seam between tiers both are as wide."""
    found = full("breaker_skirt", size, view)
    flats = sorted(found.garment.near, key=lambda flat: -max(p.y for p in flat.ring))
    assert len(flats) == 3
    for upper, lower in pairwise(flats):
        seam = max(p.y for p in lower.ring)
        one, two = (
            across(Polygon([(p.x, p.y) for p in flat.ring]).buffer(0.3), y)
            for flat, y in ((upper, seam + 1.5), (lower, seam - 1.5))
        )
        assert two == pytest.approx(one, abs=2 * NEAR)


@pytest.mark.parametrize("lesson", DRAWN_UP)
def test_its_folds_are_seen(lesson: str) -> None:
    """Short lines where it is drawn up, and long ones that fall from there, all of them on the cloth."""
    found = full(lesson, "W4", "front")
    cloth = cloth_of(found).buffer(1.0)
    lines = [item for item in found.items if isinstance(item, Stroke) and item.name.endswith((" gathers", " folds"))]
    assert {item.name.split()[-1] for item in lines} == {"gathers", "folds"}
    for item in lines:
        assert cloth.contains(LineString([(p.x, p.y) for c in item.curves for p in (c.start, c.end)]))


# ---- trousers ----------------------------------------------------------------------------------------------


def straight_and_full() -> tuple[Body, Body]:
    """Of the 260 women of `bdims` the one whose waist comes nearest to her hip, and the one with the largest hip."""
    bodies = [make_body(woman, name=f"woman {number}") for number, woman in enumerate(women())]
    return max(bodies, key=lambda b: b["waist_girth"] / b["hip_girth"]), max(bodies, key=lambda b: b["hip_girth"])


@cache
def legs(lesson: str, who: str, view: str) -> WornView:
    body = dict(zip(("straight", "full"), straight_and_full(), strict=True)).get(who) or workshop_chart()[who]
    found = worn_view(lesson_of(lesson).work(body), view)  # type: ignore[arg-type]
    assert found is not None and found.how == "worn"
    return found


@pytest.mark.parametrize("who", ["W1", "W4", "W10", "straight", "full"])
@pytest.mark.parametrize("lesson", ["trousers", "slack_water_trousers"])
@pytest.mark.parametrize("view", ["front", "back"])
def test_trousers_cover_waist_hip_and_both_legs(lesson: str, who: str, view: str) -> None:
    """Nothing of the body is bare from the waist to the hem, each leg has its own, and the cloth is as wide at the hip
    as it goes round there."""
    found = legs(lesson, who, view)
    cloth = unary_union([Polygon([(p.x, p.y) for p in flat.ring]).buffer(0.3) for flat in found.garment.flats])
    body = found.wearer.body
    hem, crotch = cloth.bounds[1], -body["body_rise"] - 15.0
    trunk = max(areas(found, body=True), key=lambda area: area.area)
    inside = trunk.intersection(box(-900.0, hem, 900.0, -20.0))
    assert inside.difference(cloth.buffer(1.0)).area < 0.004 * inside.area
    for y in (crotch - 250.0, (crotch + hem) / 2, hem + 20.0):
        cut = cloth.intersection(LineString([(-900.0, y), (900.0, y)]))
        left, right = sorted(cut.geoms, key=lambda part: part.bounds[0])
        assert left.bounds[2] < 0.0 < right.bounds[0] and left.length == pytest.approx(right.length, abs=NEAR)
    worn = Worn(found.garment.pattern, found.garment.state)
    there = worn.round(-body["waist_to_hip"])
    assert there is not None and there.closed
    wide = across(cloth, -body["waist_to_hip"])
    assert 2 * wide / found.wearer.seen(-body["waist_to_hip"]) == pytest.approx(there.girth, rel=0.06)
    assert abs(cloth.bounds[0] + cloth.bounds[2]) < NEAR, "both sides alike"


@pytest.mark.parametrize("who", ["W1", "W4", "W10"])
def test_the_trousers_end_as_far_above_the_floor_as_they_are_drafted(who: str) -> None:
    """The leg of the block ends 1.5 cm above the floor; the inside leg is the body's, less its lower crotch."""
    found = legs("trousers", who, "front")
    body, cloth = found.wearer.body, [p.y for flat in found.garment.near for p in flat.ring]
    assert min(cloth) == pytest.approx(-body["body_rise"] - body["inside_leg_length"] + 15.0, abs=1.0)
    (left, _) = (flat for flat in found.garment.near if flat.piece.name == "front")
    assert length(left.edge("crotch")) > 0.0
    drop = [p.y for p in left.edge("inseam")]
    assert max(drop) - min(drop) == pytest.approx(body["inside_leg_length"] - 30.0, abs=1.0)


@pytest.mark.parametrize("view", ["front", "back"])
def test_elastic_is_as_wide_as_the_waist_it_goes_round(view: str) -> None:
    found = legs("slack_water_trousers", "W4", view)
    cloth = unary_union([Polygon([(p.x, p.y) for p in flat.ring]).buffer(0.3) for flat in found.garment.flats])
    wide = across(cloth, -5.0)
    assert 2 * found.wearer.half(-5.0) <= wide <= 2 * found.wearer.half(-5.0) + 30.0
