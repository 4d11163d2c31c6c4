"""Darts with two points: geometry by hand, sewing, and what the proof says of one that would not sew.

The width they take up is what a tape would read (worked by hand); the limits are common practice, no source."""

from __future__ import annotations

import math
from dataclasses import replace

import jsonschema
import pytest

from kit.errors import KitError
from kit.geometry import Path, Point
from kit.lesson.bench import BenchPiece
from kit.paper.export import pattern_json, pattern_schema
from kit.picture.drawing import Dot, Stroke
from kit.picture.piece_sheet import piece_items
from kit.piece.dart import Dart
from kit.piece.double_dart import around, double_darts, sewn_width
from kit.piece.piece import CutPlan, Edge, Mark, Piece
from kit.piece.unfold import pair
from kit.proof import prove
from kit.proof.double_darts import drawn
from kit.units import cm
from tests.sewing.table import sewn

WIDE, HIGH = 220.0, 500.0


def back(*marks: Mark, **more: object) -> Piece:
    corners = [Point(0, 0), Point(WIDE, 0), Point(WIDE, HIGH), Point(0, HIGH)]
    edges = tuple(
        Edge(name, Path.line(a, b), 10.0)
        for name, a, b in zip(("hem", "side", "neck", "centre"), corners, corners[1:] + corners[:1], strict=True)
    )
    return Piece("back", "Back", edges, cut=CutPlan(count=2, mirrored=True), marks=marks, **more)  # type: ignore[arg-type]


def dart(name="waist_dart", x=100.0, intake=30.0, top=430.0, widest=280.0, bottom=130.0, aside=0.0) -> Mark:
    half = intake / 2
    path = around(Point(x, top), Point(x + aside - half, widest), Point(x, bottom), Point(x + aside + half, widest))
    return Mark(name, "dart", path=path)


def codes(*marks: Mark) -> list[str]:
    return [finding.code for finding in drawn((back(*marks),))]


# ---- drafting ---------------------------------------------------------------------------------------------------


def paper() -> BenchPiece:
    return BenchPiece(back())


def test_it_is_drafted_with_legs_that_are_alike() -> None:
    bench = paper()
    waist = bench.centre.start.down(22 * cm).out(10 * cm)
    bench.add_double_dart("waist_dart", top=waist.up(15 * cm), bottom=waist.down(12 * cm), at=waist, intake=3 * cm)
    (found,) = double_darts(bench.freeze())
    assert (found.intake, found.up, found.down) == pytest.approx((30.0, 150.0, 120.0))
    one, other = found.legs
    long = math.hypot(15, 150) + math.hypot(15, 120)
    assert one.length == pytest.approx(long) and other.length == pytest.approx(long)
    assert found.unlike is None


def test_a_slanting_one_is_square_to_its_own_line() -> None:
    bench = paper()
    top = bench.centre.start.down(8 * cm).out(9 * cm)
    bench.add_double_dart("slant", top=top, bottom=top.down(26 * cm).out(3 * cm), intake=2 * cm)
    (found,) = double_darts(bench.freeze())
    assert found.up == pytest.approx(found.down) and found.intake == pytest.approx(20.0)
    assert (found.other - found.one).dot(found.bottom - found.top) == pytest.approx(0.0, abs=1e-6)
    assert drawn((bench.freeze(),)) == []


@pytest.mark.parametrize("down", [25 * cm, 27.8 * cm, 40 * cm])
def test_one_that_reaches_an_edge_is_refused(down) -> None:
    bench = paper()
    waist = bench.centre.start.down(22 * cm).out(10 * cm)
    write = lambda: bench.add_double_dart("d", top=waist.up(9 * cm), bottom=waist.down(down), at=waist, intake=2 * cm)  # noqa: E731
    if down == 25 * cm:
        write()
    else:
        with pytest.raises(KitError, match=r"reaches the hem.*add_dart"):
            write()


def test_points_in_the_wrong_order_are_refused() -> None:
    bench = paper()
    waist = bench.centre.start.down(22 * cm).out(10 * cm)
    with pytest.raises(KitError, match="does not lie between"):
        bench.add_double_dart("d", top=waist.up(9 * cm), bottom=waist.up(2 * cm), at=waist, intake=2 * cm)
    with pytest.raises(KitError, match="already marked"):
        for _ in range(2):
            bench.add_double_dart("d", top=waist.up(9 * cm), bottom=waist.down(9 * cm), intake=2 * cm)


# ---- how wide the piece is -----------------------------------------------------------------------------------------


@pytest.mark.parametrize(("y", "taken"), [(280, 30), (355, 15), (205, 15), (430, 0), (460, 0), (100, 0)])
def test_the_width_as_sewn_is_less_by_what_it_takes_up_there(y, taken) -> None:
    """Half way to a point it takes up half of its intake, beyond the point nothing."""
    line = Path.line(Point(-30, y), Point(400, y))
    assert sewn_width(back(dart()), line) == pytest.approx(WIDE - taken, abs=0.1)


def test_darts_of_an_edge_count_too_and_the_bench_says_it() -> None:
    """30 mm at the waist of the one; of the other, 40 mm wide at the neck and 200 mm deep, 20 mm at half its depth."""
    piece = back(dart(x=60, top=480, widest=400, bottom=320))
    piece = replace(piece, darts=(Dart("neck_dart", "neck", Point(150, 300), 50, 90),))
    line = Path.line(Point(0, 400), Point(WIDE, 400))
    assert sewn_width(piece, line) == pytest.approx(WIDE - 30 - 20, abs=0.1)
    bench = BenchPiece(piece)
    across = bench.centre.at(10 * cm).to(bench.side.at(40 * cm))
    assert float(bench.sewn_width(across)) == pytest.approx(170.0, abs=0.1)


# ---- the proof ------------------------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("mark", "found"),
    [
        (dart(), []),
        (dart(aside=2.0), []),  # 0.4 mm between its legs: within half a millimetre
        (dart(aside=20.0), ["dart_legs"]),
        (dart(bottom=3.0), ["double_dart_edge"]),
        (dart(top=600.0), ["double_dart_edge"]),
        (dart(x=10.0), ["double_dart_edge"]),
        (dart(intake=60.0, top=340.0), ["double_dart_sharp"]),  # 60 mm within 60: 53 degrees
        (dart(intake=30.0, top=350.0), []),  # 30 mm within 70: 24 degrees
    ],
)
def test_what_would_not_sew_is_told(mark, found) -> None:
    assert codes(mark) == found


def test_two_that_cross_are_told() -> None:
    assert codes(dart(), dart("second", x=140.0)) == []
    assert codes(dart(), dart("second", x=115.0)) == ["double_darts_cross"]


def test_left_out_it_is_told_with_its_call() -> None:
    def told(*writes):
        done = sewn((back(dart()),), *writes)
        return [(f.code, str(f)) for f in prove(done.pattern) if f.code == "never_folded"]

    hem = lambda make, back: make.narrow_hem(back.hem)  # noqa: E731
    both = lambda make, back: make.double_dart(back.waist_dart)  # noqa: E731
    one = lambda make, back: make.double_dart(back.left.waist_dart)  # noqa: E731
    other = lambda make, back: make.double_dart(back.right.waist_dart)  # noqa: E731
    assert [code for code, _ in told(hem)] == ["never_folded"]
    assert "make.double_dart(back.waist_dart)" in told(hem)[0][1]
    assert told(hem, one) and not told(hem, both) and not told(hem, one, other)


# ---- sewing ---------------------------------------------------------------------------------------------------------


def test_it_is_sewn_from_the_middle_to_either_point() -> None:
    done = sewn((back(dart()),), lambda make, back: make.double_dart(back.waist_dart))
    assert done.codes == []
    said = done.said
    order = ("Mark both points", "Stitch", "Do not backstitch", "Clip the fold", "towards the centre")
    assert [word for word, line in zip(order, said, strict=False) if word not in line] == []
    assert "1.5 cm" in said[1] and said[1].index("lower point") < said[1].index("upper point")
    assert "15 cm" in said[1] and "3 mm" in said[3]
    twice = sewn((back(dart()),), *[lambda make, back: make.double_dart(back.waist_dart)] * 2)
    assert twice.codes == ["double_dart_twice"]


def test_a_narrow_one_is_not_clipped() -> None:
    done = sewn((back(dart(intake=10.0)),), lambda make, back: make.double_dart(back.waist_dart, press="side"))
    assert not any("Clip" in line for line in done.said) and "towards the side" in done.said[-2]


def test_each_dart_has_its_own_verb() -> None:
    piece = replace(back(dart(), Mark("spot", "point", point=Point(50, 50))))
    for write, match in (
        (lambda make, back: make.dart(back.waist_dart), "make.double_dart"),
        (lambda make, back: make.double_dart(back.spot), "no dart with two points"),
    ):
        with pytest.raises(KitError, match=match):
            sewn((piece,), write)


def test_its_pictures_show_both_legs() -> None:
    done = sewn((back(dart()),), lambda make, back: make.double_dart(back.waist_dart))
    folded, sewn_up = done.last.scenes(done.pattern)
    assert (len(folded.rows), len(sewn_up.rows)) == (1, 2)
    assert folded.layers[0].fold is not None
    assert [row.line.length for row in sewn_up.rows] == pytest.approx([2 * math.hypot(15, 150)] * 2)


# ---- paper ----------------------------------------------------------------------------------------------------------


def test_it_is_printed_with_its_points_and_its_widest_place() -> None:
    done = sewn((back(dart()),), lambda make, back: make.double_dart(back.waist_dart))
    items = piece_items(back(dart()), done.pattern)
    legs = [item for item in items if isinstance(item, Stroke) and item.name == "back.waist_dart"]
    assert [leg.role for leg in legs] == ["stitch", "stitch"]
    dots = {(item.name, round(item.at.x), round(item.at.y)) for item in items if isinstance(item, Dot)}
    assert dots >= {
        ("back.waist_dart.top", 100, 430),
        ("back.waist_dart.bottom", 100, 130),
        ("back.waist_dart.widest", 85, 280),
        ("back.waist_dart.widest", 115, 280),
    }
    data = pattern_json(done.pattern)
    jsonschema.Draft202012Validator(pattern_schema()).validate(data)
    assert data["pieces"][0]["marks"][0]["kind"] == "dart"


def test_a_pair_carries_it_to_both_halves() -> None:
    left, right = pair(back(dart()))
    for piece, x in ((left, -100), (right, 100)):
        (found,) = double_darts(piece)
        assert found.top.x == pytest.approx(x) and found.intake == pytest.approx(30.0)
        assert drawn((piece,)) == []
