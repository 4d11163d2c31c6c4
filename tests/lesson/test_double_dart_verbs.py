"""Darts with two points, drafted.

The width they take up is what a tape would read (worked by hand); the limits are common practice, no source."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest

from kit.errors import KitError
from kit.geometry import Path, Point
from kit.lesson.bench import BenchPiece
from kit.piece.dart import Dart
from kit.piece.double_dart import double_darts, sewn_width
from kit.proof.double_darts import drawn
from kit.units import cm
from tests.double_darted import WIDE, back, dart

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
