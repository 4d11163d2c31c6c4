"""The continuous bound placket: drawn, sewn round before it is cut, bound, and never left raw.

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
from kit.sewing.sections import plackets as shapes
from kit.units import cm

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
    first, last = done.last.scenes(done.pattern)
    assert [thing.kind for thing in first.things] == ["cut"] and [thing.kind for thing in last.things] == ["binding"]
    assert len(first.rows) == 2


def test_every_raw_edge_of_it_is_shut_in():
    """Counts worked by hand: the cut edge of the garment and both edges of the strip."""
    section = shapes.placket_bound()
    assert (section.raw_edges, section.enclosed) == (3, 3)
    assert section.through(0) == ("strip", "garment")
    assert section.through(1) == ("garment", "strip", "strip")
    assert section.at(2.0) == ("strip", "strip")
