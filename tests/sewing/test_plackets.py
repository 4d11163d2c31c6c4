"""Plackets, continuous and with a tower: the slit drawn, sewn round before it is cut, finished, never left raw.

Its order and measures are common practice, no source."""

from __future__ import annotations

from dataclasses import replace

import pytest

from kit.errors import KitError
from kit.geometry import Path, Point
from kit.lesson.bench import BenchPiece
from kit.picture.drawing import Stroke
from kit.picture.piece_sheet import piece_items
from kit.piece.piece import Mark, Piece, Strip
from kit.piece.slit import slit_of
from kit.proof import prove
from kit.proof.slits import drawn
from kit.sewing.in_work import shown_scenes
from kit.sewing.sections import plackets as shapes
from kit.units import cm, mm

LONG = 80.0


def slit(start=(150.0, 0.0), end=(150.0, LONG)) -> Mark:
    return Mark("cuff_slit", "slit", path=Path.line(Point(*start), Point(*end)), said="sleeve slit")


def sleeve(garments, *marks) -> Piece:
    piece = garments.rectangle("sleeve", 220, 300, {"wrist": 10, "front": 15, "cap": 15, "back": 15}, cut=garments.PAIR)
    return replace(piece, marks=marks or (slit(),))


def cut(length=180.0, width=30.0, count=2) -> Strip:
    return Strip("placket", "Placket strip", length, width, count)


def bound(make, sleeve, placket):
    make.bound_placket(placket, slit=sleeve.cuff_slit)


def hemmed(make, sleeve, **_):
    make.narrow_hem(sleeve.wrist)


def codes(garments, sewn, *writes, strip=None, piece=None):
    return sewn((piece or sleeve(garments),), *writes, strips=(strip or cut(),)).codes


# ---- drawing ------------------------------------------------------------------------------------------------------


def test_a_slit_is_drawn_square_to_its_edge(garments):
    bench = BenchPiece(replace(sleeve(garments), marks=()))
    bench.slit("cuff_slit", "wrist", at=15 * cm, size=8 * cm)
    piece = bench.freeze()
    found = slit_of(piece, piece.marks[0])
    assert (found.edge, found.at) == ("wrist", pytest.approx(150.0))
    assert (found.line.end.x, found.line.end.y) == pytest.approx((150.0, 80.0))
    with pytest.raises(KitError, match="leaves no cloth beyond its end"):
        bench.slit("long", "wrist", at=15 * cm, size=29.5 * cm)
    with pytest.raises(KitError, match="already marked"):
        bench.slit("cuff_slit", "wrist", at=10 * cm, size=5 * cm)


@pytest.mark.parametrize(
    ("mark", "found"),
    [
        (slit(), []),
        (slit(start=(150, LONG), end=(150, 0)), []),  # drawn the other way round it is the same
        (slit(start=(150, 20), end=(150, LONG)), ["slit_adrift"]),
        (slit(end=(150, 295)), ["slit_long"]),
        (slit(end=(216, 40)), ["slit_long"]),
    ],
)
def test_what_cannot_be_opened_is_told(garments, mark, found):
    assert [finding.code for finding in drawn((sleeve(garments, mark),))] == found


def test_it_is_printed_with_a_bar_at_either_end(garments, wrap):
    items = [i for i in piece_items(sleeve(garments), wrap.pattern_of([])) if isinstance(i, Stroke)]
    (line,) = [item for item in items if item.name == "sleeve.cuff_slit"]
    assert line.role == "symbol" and line.curves[0].length == pytest.approx(LONG)
    bars = [item.curves[0] for item in items if item.name == "sleeve.cuff_slit.bar"]
    assert {round(bar.start.mid(bar.end).y) for bar in bars} == {0, 80}


# ---- sewing -------------------------------------------------------------------------------------------------------


def test_left_out_the_slit_is_raw(garments, sewn):
    def raw(*writes):
        found = prove(sewn((sleeve(garments),), *writes, strips=(cut(),)).pattern)
        return [str(finding) for finding in found if finding.code == "slit_raw"]

    def left(make, sleeve, placket):
        make.bound_placket(placket, slit=sleeve.left.cuff_slit)

    assert raw(bound, hemmed) == []
    assert len(raw(hemmed)) == 1 and "make.bound_placket(strip, slit=sleeve.cuff_slit)" in raw(hemmed)[0]
    assert len(raw(left, hemmed)) == 1


def test_the_edge_it_opens_on_is_closed_after_it(garments, sewn):
    assert codes(garments, sewn, bound, hemmed) == []
    assert codes(garments, sewn, hemmed, bound) == ["placket_late"]
    assert codes(garments, sewn, bound, bound, strip=cut(count=4)) == ["placket_twice"]


@pytest.mark.parametrize(
    ("strip", "found"),
    [
        (cut(length=180), []),  # 80 mm and 10 mm of allowance, down and up again
        (cut(length=179), ["placket_short"]),
        (cut(width=24), []),  # four times 6 mm
        (cut(width=20), ["placket_narrow"]),
        (cut(count=1), ["too_few_strips"]),
    ],
)
def test_the_strip_goes_down_one_side_and_up_the_other(garments, sewn, strip, found):
    assert codes(garments, sewn, bound, strip=strip) == found


def test_a_slit_that_opens_nowhere_is_refused(garments, sewn):
    piece = sleeve(garments, slit(start=(150, 30)))
    assert codes(garments, sewn, bound, piece=piece) == ["slit_adrift"]
    point = sleeve(garments, Mark("cuff_slit", "point", point=Point(150, 30)))
    with pytest.raises(KitError, match="is no slit"):
        codes(garments, sewn, bound, piece=point)


def test_it_is_sewn_round_before_it_is_cut(garments, sewn):
    done = sewn((sleeve(garments),), bound, strips=(cut(),))
    said = done.said
    order = ("Do not cut yet", "one stitch across the end", "small scissors", "straight line", "9 mm", "slant", "baste")
    order = (*order, "left and the right side alike")
    assert [word for word, line in zip(order, said, strict=True) if word not in line] == []
    assert "8 cm" in said[0] and "scissors" in done.last.cautions
    state = done.state
    assert {side for _, piece, side, mark in (f for f in state.facts if f[0] == "slit_finished")} == {"left", "right"}
    assert state.count("placket") == 2


def test_the_row_runs_in_to_the_end_and_back(garments, sewn):
    done = sewn((sleeve(garments),), bound, strips=(cut(),))
    into, back = done.last.rows_round(done.pattern)
    assert into.end == back.start == Point(150, 80)
    assert {round(into.start.x), round(back.end.x)} == {144, 156}
    first, *between, last = done.last.scenes(done.pattern)
    assert [thing.kind for thing in first.things] == ["cut"] and [thing.kind for thing in last.things] == ["binding"]
    (row,) = first.rows  # one row, in and out again
    assert row.line.length == pytest.approx(into.length + back.length)
    assert [scene.shape.placket for scene in between] == ["laid", "covering", "slant"]
    assert {scene.shape.slit for scene in between} == {90.0}, "from the cut edge, its allowance of 10 mm with it"


def test_every_raw_edge_of_it_is_shut_in():
    """Counts worked by hand: the cut edge of the garment and both edges of the strip."""
    section = shapes.placket_bound()
    assert (section.raw_edges, section.enclosed) == (3, 3)
    assert section.through(0) == ("strip", "garment")
    assert section.through(1) == ("garment", "strip", "strip")
    assert section.at(2.0) == ("strip", "strip")


def test_a_cuff_is_set_on_a_slit_sleeve(garments, sewn):
    pieces = (replace(garments.SLEEVE, marks=(slit((-50, -300), (-50, -220)),)), garments.CUFF)

    def seam(make, sleeve, **_):
        make.plain_seam(sleeve.front_underarm, sleeve.back_underarm, allowance=15 * mm)
        make.gather(sleeve.wrist, to=18 * cm)

    def cuff_ends(make, cuff, **_):
        make.band_ends(cuff.start, cuff.end, allowance=1 * cm, overlap=3 * cm, at=cuff.end)
        make.turn_out(cuff, through=cuff.inner)

    def set_on(make, cuff, sleeve, **_):
        make.set_band(cuff.lower, sleeve.wrist, allowance=1 * cm, overlap=3 * cm, at=cuff.end)
        make.close_band(cuff.inner, cuff.lower, allowance=1 * cm, overlap=3 * cm, at=cuff.end)

    def placket_first(make, sleeve, placket, **_):
        make.bound_placket(placket, slit=sleeve.cuff_slit)

    assert sewn(pieces, placket_first, seam, cuff_ends, set_on, strips=(cut(),)).codes == []
    assert "placket_late" in sewn(pieces, seam, cuff_ends, set_on, placket_first, strips=(cut(),)).codes


# ---- the tower --------------------------------------------------------------------------------------------------


def tower(garments, long=110.0, wide=50.0):
    return garments.polygon(
        "tower",
        [(0, 0), (wide, 0), (wide, long - 20), (wide / 2, long), (0, long - 20)],
        {"lower": 10, "outer": 6, "right_point": 6, "left_point": 6, "edge": 6},
        cut=garments.PAIR,
    )


def towered(make, sleeve, tower, placket):
    around = [tower.outer, tower.right_point, tower.left_point]
    make.tower_placket(tower.edge, around=around, under=placket, slit=sleeve.cuff_slit)


@pytest.mark.parametrize(
    ("long", "wide", "strip", "found"),
    [
        (110, 50, cut(90), []),  # 80 mm of slit and 10 of allowance: one side only
        (95, 50, cut(90), []),  # 15 mm beyond the end of the slit
        (94, 50, cut(90), ["tower_short"]),
        (110, 20, cut(90), []),  # 10 mm when folded: 8 of the box and 2
        (110, 18, cut(90), ["tower_narrow"]),
        (110, 50, cut(89), ["placket_short"]),
    ],
)
def test_a_tower_reaches_over_the_end_of_the_slit(garments, sewn, long, wide, strip, found):
    assert sewn((sleeve(garments), tower(garments, long, wide)), towered, strips=(strip,)).codes == found


def test_a_tower_finishes_the_slit_and_hangs_on_its_sleeve(garments, sewn):
    pieces = (sleeve(garments), tower(garments))
    done = sewn(pieces, towered, lambda make, sleeve, **_: make.narrow_hem(sleeve.wrist), strips=(cut(90),))
    assert done.codes == []
    found = {(f.code, f.piece, f.edge) for f in prove(done.pattern) if f.level == "error"}
    assert not {code for code, piece, _ in found if piece == "tower"}
    assert "slit_raw" not in {code for code, _, _ in found}
    without = sewn(pieces, lambda make, sleeve, **_: make.narrow_hem(sleeve.wrist), strips=(cut(90),))
    assert "slit_raw" in {f.code for f in prove(without.pattern)}
    late = sewn(pieces, lambda make, sleeve, **_: make.narrow_hem(sleeve.wrist), towered, strips=(cut(90),))
    assert late.codes == ["placket_late"]


def test_a_tower_is_sewn_in_this_order(garments, sewn):
    done = sewn((sleeve(garments), tower(garments)), towered, strips=(cut(90),))
    said = done.said
    order = (
        "Do not cut yet",
        "narrow box",
        "lie under",
        "both corners",
        "edgestitch",
        "other side",
        "triangle",
        "across",
        "left and the right side alike",
    )
    assert [word for word, line in zip(order, said, strict=True) if word not in line] == []
    box = done.last.rows_round(done.pattern)
    assert [round(line.length) for line in box] == [80, 8, 80]
    over = done.last.scenes(done.pattern)[-1]
    (drawn_tower,) = over.things
    # 25 mm wide when folded, from the wrist to 15 mm beyond the end of the slit, its row across at that end.
    assert (drawn_tower.kind, drawn_tower.width, drawn_tower.line.length) == ("tower", 25.0, pytest.approx(95.0))
    (row,) = over.rows
    assert {round(p.y) for p in (row.line.curves[-1].start, row.line.curves[-1].end)} == {80}
    assert row.line.start.y == 0.0


def test_the_strip_lies_under_one_side_and_the_tower_over_the_other(garments, sewn):
    """By hand: a box of 8 mm round a slit at x = 150, seams of 6 mm, a strip 30 mm wide that is 9 mm when made, a tower
    of 50 mm."""
    done = sewn((sleeve(garments), tower(garments)), towered, strips=(cut(90),))
    _, box, under, folded, sewn_on, last = done.last.scenes(done.pattern)
    assert [row.line.length for row in box.rows] == [pytest.approx(168.0)]
    seam = under.rows[-1].line
    assert {round(p.x) for p in (seam.start, seam.end)} == {146}
    (strip,) = (thing for thing in under.things if thing.kind == "binding")
    assert (strip.line.start.x - 15.0, strip.line.start.x + 15.0) == (pytest.approx(122.0), pytest.approx(152.0))
    (strip,) = (thing for thing in folded.things if thing.kind == "binding")
    assert (strip.line.start.x - 4.5, strip.line.start.x + 4.5) == (pytest.approx(145.0), pytest.approx(154.0))
    (laid,) = (thing for thing in sewn_on.things if thing.kind == "tower")
    x0, y0, x1, y1 = laid.line.bounds()
    assert (x0, x1, y0, y1) == (pytest.approx(148.0), pytest.approx(204.0), pytest.approx(0.0), pytest.approx(110.0))
    (made,) = last.things
    assert (made.line.start.x - 12.5, made.line.start.x + 12.5) == (pytest.approx(130.0), pytest.approx(155.0))


def test_the_tower_is_a_piece_of_its_own(garments, sewn):
    def wrong(make, sleeve, tower, placket):
        make.tower_placket(sleeve.front, around=[tower.outer], under=placket, slit=sleeve.cuff_slit)

    with pytest.raises(KitError, match="one piece of its own"):
        sewn((sleeve(garments), tower(garments)), wrong, strips=(cut(90),))


def test_the_tower_covers_the_strip():
    """Counts worked by hand: the two cut edges of the slit, two edges of the strip, two of the tower."""
    section = shapes.placket_tower()
    assert (section.raw_edges, section.enclosed) == (6, 6)
    assert section.through(0) == ("tower", "left") and section.through(2) == ("strip", "right")
    assert section.through(1) == ("left", "tower", "tower") and section.through(3) == ("right", "strip", "strip")
    assert section.at(3.0) == ("strip", "strip", "tower", "tower")


@pytest.mark.parametrize("at", [12.0, 110.0, 208.0])
def test_a_bound_slit_near_the_end_of_its_edge_is_shown(garments, sewn, at):
    """The basting across it ends with the edge, which is 22 cm long."""
    piece = sleeve(garments, slit((at, 0.0), (at, LONG)))
    found = sewn((piece,), bound, strips=(cut(),))
    assert found.codes == []
    (basted,) = [row for scene in shown_scenes(found.pattern, found.last) for row in scene.rows if row.style == "baste"]
    assert (basted.run.start, basted.run.end) == pytest.approx((max(at - 15.0, 0.0), min(at + 15.0, 220.0)))
