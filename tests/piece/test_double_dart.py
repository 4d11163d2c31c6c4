"""Darts with two points and slits, on a sheet of 200 mm by 300, all numbers by hand."""

from __future__ import annotations

import math

import pytest

from kit.geometry import Path, Point
from kit.piece.darts_and_pleats import Dart
from kit.piece.double_dart import around, double_dart, double_darts, sewn_width
from kit.piece.piece import Edge, Mark, Piece
from kit.piece.slit import room, slit_of

TOP, ONE, BOTTOM, OTHER = Point(100, 250), Point(88, 160), Point(100, 50), Point(112, 160)


def sheet(*marks: Mark, fold: str = "", darts: tuple[Dart, ...] = ()) -> Piece:
    from kit.piece.piece import CutPlan

    corners = [Point(0, 0), Point(200, 0), Point(200, 300), Point(0, 300)]
    edges = tuple(
        Edge(n, Path.line(a, b))
        for n, a, b in zip(("hem", "right", "top", "left"), corners, [*corners[1:], corners[0]], strict=True)
    )
    return Piece("sheet", "Sheet", edges, marks=marks, darts=darts, cut=CutPlan(1, fold=fold))


def dart(*points: Point) -> Mark:
    return Mark("waist_dart", "dart", path=around(*(points or (TOP, ONE, BOTTOM, OTHER))))


def test_its_measures() -> None:
    found = double_dart(dart())
    assert found is not None
    assert (found.top, found.one, found.bottom, found.other) == (TOP, ONE, BOTTOM, OTHER)
    assert (found.intake, found.up, found.down) == (24.0, 90.0, 110.0)
    assert found.middle == Point(100, 160)
    assert found.unlike is None
    assert found.sharpest == pytest.approx(2 * math.degrees(math.atan(12 / 90)))


def test_its_lines_run_from_the_upper_point_to_the_lower() -> None:
    found = double_dart(dart())
    assert found is not None
    for leg, side in zip(found.legs, (ONE, OTHER), strict=True):
        assert (leg.start, leg.end) == (TOP, BOTTOM) and len(leg.curves) == 2 and leg.curves[0].end == side
        assert leg.length == pytest.approx(math.hypot(12, 90) + math.hypot(12, 110))
    assert (found.fold.start, found.fold.end, found.fold.length) == (TOP, BOTTOM, 200.0)


@pytest.mark.parametrize(
    ("points", "legs"),
    [
        ((TOP, Point(84, 160), BOTTOM, OTHER), (math.hypot(16, 90), math.hypot(12, 90))),
        ((Point(104, 250), ONE, BOTTOM, OTHER), (math.hypot(16, 90), math.hypot(8, 90))),
        ((TOP, ONE, Point(96, 50), OTHER), (math.hypot(8, 110), math.hypot(16, 110))),
    ],
)
def test_the_half_whose_legs_differ_more_is_told(points: tuple[Point, ...], legs: tuple[float, float]) -> None:
    found = double_dart(dart(*points))
    assert found is not None and found.unlike == pytest.approx(legs)


def test_other_marks_are_none() -> None:
    line = Path.line(TOP, BOTTOM)
    other = Mark("line", "line", path=around(TOP, ONE, BOTTOM, OTHER))
    assert [double_dart(mark) for mark in (other, Mark("dart", "dart"), Mark("dart", "dart", path=line))] == [None] * 3
    assert [found.mark for found in double_darts(sheet(other, dart()))] == [dart()]


@pytest.mark.parametrize(("y", "width"), [(160, 176.0), (205, 188.0), (105, 188.0), (255, 200.0), (45, 200.0)])
def test_the_cloth_across_it_is_less_by_what_it_takes_there(y: float, width: float) -> None:
    """Half way to a point it takes half: 12 of 24 mm."""
    assert sewn_width(sheet(dart()), Path.line(Point(-20, y), Point(260, y))) == pytest.approx(width, abs=0.01)


def test_a_dart_of_the_edge_takes_its_part_too_and_none_twice() -> None:
    plain = Dart("top_dart", "top", Point(100, 200), 90.0, 110.0)  # 20 at the edge, 10 half way down at y = 250
    across = Path.line(Point(0, 250), Point(200, 250))
    assert sewn_width(sheet(darts=(plain,)), across) == pytest.approx(190.0, abs=0.01)
    assert sewn_width(sheet(dart(), darts=(plain,)), Path.line(Point(0, 160), Point(200, 160))) == pytest.approx(176.0)


# ---- slits ------------------------------------------------------------------------------------------------------


def slit(*points: Point) -> Mark:
    return Mark("slit", "slit", path=Path.line(*points))


def test_a_slit_opens_on_the_edge_it_meets_from_whichever_end_it_was_drawn() -> None:
    for mark in (slit(Point(150, 0), Point(150, 120)), slit(Point(150, 120), Point(150, 0))):
        found = slit_of(sheet(), mark)
        assert found is not None and found.edge == "hem" and found.at == pytest.approx(150.0)
        assert (found.line.start, found.line.end) == (Point(150, 0), Point(150, 120))


@pytest.mark.parametrize(("miss", "is_one"), [(0.9, True), (1.1, False)])
def test_its_mouth_may_miss_the_line_by_a_millimetre(miss: float, is_one: bool) -> None:
    assert (slit_of(sheet(), slit(Point(150, miss), Point(150, 120))) is not None) == is_one


def test_what_is_no_slit() -> None:
    inside, line = slit(Point(50, 50), Point(50, 120)), Path.line(Point(150, 0), Point(150, 120))
    assert [slit_of(sheet(), mark) for mark in (inside, Mark("a", "line", path=line), Mark("a", "slit"))] == [None] * 3
    assert slit_of(sheet(fold="left"), slit(Point(0, 150), Point(60, 150))) is None, "a fold is no edge to cut into"


@pytest.mark.parametrize(
    ("end", "left"), [(Point(150, 120), 50.0), (Point(190, 120), 10.0), (Point(150, 295), 5.0), (Point(150, 310), 0.0)]
)
def test_the_cloth_beyond_its_end(end: Point, left: float) -> None:
    """To the nearest edge that is not its own; none where it runs out of the piece."""
    found = slit_of(sheet(), slit(Point(150, 0), end))
    assert found is not None and room(sheet(), found) == pytest.approx(left)
