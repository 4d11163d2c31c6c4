"""Curves drawn again by hand from guide points.

Outside source: scipy.interpolate.CubicSpline with its end slopes given (bc_type of first derivatives), scipy >= 1.13;
it draws the smooth curve through what a ruler shows, and must come within 1.5 mm of the true one.
"""

from __future__ import annotations

import math
from itertools import pairwise
from pathlib import Path as File

import pytest
from hypothesis import assume, example, given, settings
from hypothesis import strategies as st
from scipy.interpolate import CubicSpline

from kit.errors import KitError
from kit.geometry import Cubic, Line, Path, Point, Vector
from kit.geometry.guide import HANDY, MARK, GuideCurve, System, guide_points, on_ruler, smooth
from kit.lesson.lesson import Lesson
from tests.example import EXAMPLE, notebook_names

NOTEBOOKS = ("tideline_wrap_top", "harbour_jacket", "dune_skirt", "ferry_tote")
BOTH: tuple[System, ...] = ("cm", "inch")


def drawn(curve: GuideCurve, system: System) -> list[Point]:
    """The curve as a person draws it: every number rounded to what the ruler shows, then scipy's spline."""
    xs = [0.0, *(point.along for point in curve.points), curve.chord]
    ys = [0.0, *(on_ruler(point.up, system) for point in curve.points), 0.0]
    first = on_ruler(curve.leaves.up, system) / curve.leaves.along
    last = -on_ruler(curve.arrives.up, system) / curve.arrives.along
    spline = CubicSpline(xs, ys, bc_type=((1, first), (1, last)))
    return [curve.place(curve.chord * i / 200, float(spline(curve.chord * i / 200))) for i in range(201)]


def off(path: Path, points: list[Point]) -> float:
    """The largest distance of `points` from `path`, and of `path` from the points joined."""
    back = Path(tuple(Line(a, b) for a, b in pairwise(points) if a.distance(b) > 1e-9))
    places = [path.at(path.length * i / 60) for i in range(61)]
    return max(*(path.distance_to(p) for p in points), *(back.distance_to(p) for p in places))


def redrawn(path: Path, system: System) -> float:
    curves = guide_points(path, system)
    assert curves[0].start.close_to(path.start) and curves[-1].end.close_to(path.end)
    for one, two in pairwise(curves):
        assert one.end.close_to(two.start)
    points: list[Point] = []
    for curve in curves:
        points += drawn(curve, system) if not curve.is_straight else [curve.start, curve.end]
    return off(path, points)


@pytest.mark.parametrize("notebook", NOTEBOOKS)
@pytest.mark.parametrize("system", BOTH)
def test_every_line_of_the_example_lessons(notebook: str, system: System) -> None:
    lesson = notebook_names(File(EXAMPLE).parent / f"{notebook}.ipynb")["lesson"]
    assert isinstance(lesson, Lesson)
    seen = 0
    for size in (lesson.sizes.names[0], lesson.sizes.names[-1]):
        for piece in lesson.work(body=lesson.sizes[size], values={}).pieces:
            for edge in piece.edges:
                assert redrawn(edge.path, system) <= 1.5, (size, piece.name, edge.name)
                seen += not edge.path.is_straight
    assert seen > 8 or notebook == "ferry_tote"


@example(chord=39.9, turn=0.73, leave=-1.5, arrive=-1.5, system="cm")  # a steep S of 4 cm: hooks too short to step off
@example(chord=28.0, turn=5.44, leave=1.5, arrive=1.5, system="inch")
@given(
    chord=st.floats(20, 600),
    turn=st.floats(0, 2 * math.pi),
    leave=st.floats(-1.5, 1.5),
    arrive=st.floats(-1.5, 1.5),
    system=st.sampled_from(BOTH),
)
def test_any_smooth_curve(chord: float, turn: float, leave: float, arrive: float, system: System) -> None:
    end = Point(chord * math.cos(turn), chord * math.sin(turn))
    one, two = (Vector(math.cos(turn + a), math.sin(turn + a)) for a in (leave, arrive))
    try:
        path = Path((Cubic.square(Point(0.0, 0.0), one, end, two),))
    except KitError:
        assume(False)
    assert redrawn(path, system) <= 1.5


spots = st.builds(Point, st.floats(-300, 300), st.floats(-300, 300))


@settings(max_examples=30)
@example(Point(-60.9, 74.2), Point(-294.0, -245.1), Point(111.3, -6.3), Point(-88.0, 93.7), "cm")  # a thin loop
@example(Point(0, 0), Point(90, 120), Point(-90, 120), Point(0, 0), "cm")  # closed: it begins where it ends
@given(spots, spots, spots, spots, st.sampled_from(BOTH))
def test_any_cubic(a: Point, b: Point, c: Point, d: Point, system: System) -> None:
    path = Path((Cubic(a, b, c, d),))
    assume(path.length > 20)
    assert redrawn(path, system) <= 1.5


def test_our_spline_is_scipys() -> None:
    xs, ys = [0.0, 20.0, 50.0, 90.0], [0.0, 7.0, 11.0, 0.0]
    ours, theirs = smooth(xs, ys, 0.4, -0.7), CubicSpline(xs, ys, bc_type=((1, 0.4), (1, -0.7)))
    for i in range(91):
        assert ours(float(i)) == pytest.approx(float(theirs(i)), abs=1e-9)


def test_a_quarter_circle_over_its_chord() -> None:
    """A quarter circle of radius r stands r (1 - cos 45 deg) off the middle of its chord (geometry)."""
    path = Path((Cubic.square(Point(100.0, 0.0), Vector(0, 1), Point(0.0, 100.0), Vector(-1, 0)),))
    (curve,) = guide_points(path)
    assert curve.chord == pytest.approx(100 * math.sqrt(2))
    highest = max(-point.up for point in curve.points)
    assert 25.0 < highest <= 100 * (1 - math.cos(math.pi / 4)) + 0.05
    assert curve.leaves.up / curve.leaves.along == pytest.approx(-1.0, abs=1e-6)
    assert curve.arrives.up / curve.arrives.along == pytest.approx(-1.0, abs=1e-6)
    assert all(point.along in (25.0, 50.0, 75.0, 100.0, 125.0) for point in curve.points)


def test_a_curve_that_turns_back_is_cut() -> None:
    path = Path((Cubic(Point(0, 0), Point(120, 0), Point(120, 100), Point(0, 100)),))
    curves = guide_points(path)
    assert len(curves) >= 2
    assert redrawn(path, "cm") <= 1.5


def test_corners_and_straight_lines_part_the_path() -> None:
    bend = Cubic.square(Point(100, 0), Vector(1, 0), Point(200, 60), Vector(1, 1))
    path = Path((Line(Point(0, 0), Point(50, 0)), Line(Point(50, 0), Point(100, 0)), bend))
    straight, curve = guide_points(path)
    assert straight.is_straight and straight.chord == 100.0
    assert not curve.is_straight and curve.leaves.up < 0


def test_ends_pinned_to_the_ruler_are_measured_from() -> None:
    path = Path((Cubic.square(Point(0.4, 0.3), Vector(1, 0.5), Point(180.6, 20.4), Vector(1, -0.5)),))
    (curve,) = guide_points(path, "cm", lambda p: Point(on_ruler(p.x), on_ruler(p.y)))
    assert curve.start == Point(0.0, 0.0) and curve.end == Point(181.0, 20.0)
    for point in curve.points:
        assert path.distance_to(curve.place(point.along, point.up)) < 0.05


def test_what_a_ruler_shows() -> None:
    assert [on_ruler(v) for v in (0.4, 0.5, -0.5, 12.49)] == [0.0, 1.0, -1.0, 12.0]
    assert on_ruler(25.0, "inch") == pytest.approx(25.4) and MARK["inch"] * 16 == pytest.approx(25.4)
    assert HANDY["inch"][0] == 50.8
