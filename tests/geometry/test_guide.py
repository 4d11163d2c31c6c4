"""Curves drawn again by hand from guide points.

Outside source: scipy.interpolate.CubicSpline with its end slopes given (bc_type of first derivatives), scipy >= 1.13;
it draws the smooth curve through what a ruler shows, and must come within 1.5 mm of the true one.
"""

from __future__ import annotations

import math
from itertools import pairwise
from pathlib import Path as File

import numpy as np
import pytest
from hypothesis import assume, example, given, settings
from hypothesis import strategies as st
from scipy.interpolate import CubicSpline

from kit.errors import KitError
from kit.geometry import Arc, Cubic, Line, Path, Point, Vector
from kit.geometry.guide import HANDY, MARK, TRUE, GuideCurve, System, guide_points, on_ruler, smooth
from kit.lesson.lesson import Lesson
from tests.example import EXAMPLE, GARMENTS, notebook_names

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


@pytest.mark.parametrize("notebook", GARMENTS)
@pytest.mark.parametrize("system", BOTH)
def test_every_line_of_the_example_lessons(notebook: str, system: System) -> None:
    lesson = notebook_names(File(EXAMPLE).parent / f"{notebook}.ipynb")["lesson"]
    assert isinstance(lesson, Lesson)
    seen = 0
    for size in dict.fromkeys((lesson.sizes.names[0], lesson.sizes.names[-1])):
        for piece in lesson.work(body=lesson.sizes[size], values={}).pieces:
            for edge in piece.edges:
                assert redrawn(edge.path, system) <= 1.5, (size, piece.name, edge.name)
                seen += 1
    assert seen >= 4


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


@settings(max_examples=12)
@example(Point(-60.9, 74.2), Point(-294.0, -245.1), Point(111.3, -6.3), Point(-88.0, 93.7), "cm")  # a thin loop
@example(Point(0, 0), Point(90, 120), Point(-90, 120), Point(0, 0), "cm")  # closed: it begins where it ends
@example(
    Point(-199.98194572027563, -130.5), Point(-282.0, -258.0), Point(0.0, 139.0), Point(0.0, 0.0), "cm"
)  # a tight hook
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


def bow(chord: float, leave: float, arrive: float) -> Path:
    """One curve over a level line, leaving and arriving at these angles (radians)."""
    ways = (Vector(math.cos(a), math.sin(a)) for a in (leave, arrive))
    return Path((Cubic.square(Point(0, 0), next(ways), Point(chord, 0), next(ways)),))


@pytest.mark.parametrize("system", BOTH)
@pytest.mark.parametrize(
    ("chord", "leave", "arrive"), [(90.0, 0.7, -0.5), (160.0, 0.3, -0.3), (260.0, 0.5, 0.4), (430.0, -0.8, 0.1)]
)
def test_no_more_points_than_the_curve_needs(chord: float, leave: float, arrive: float, system: System) -> None:
    """Stepped off at any wider handy distance the redrawn curve (scipy's) is off by more than it may be. A point nearer
    to the end than a quarter step is not set off."""
    curves = guide_points(bow(chord, leave, arrive), system)
    assert redrawn(bow(chord, leave, arrive), system) <= 1.5
    if len(curves) > 1:
        return
    (curve,) = curves
    steps = [b.along - a.along for a, b in pairwise(curve.points)] or [curve.points[0].along]
    assert max(steps) - min(steps) < 1e-6 or chord < 4 * HANDY[system][1]
    xs, ys = np.array([(p.x, p.y) for p in curve.path.points(0.02)]).T
    for step in (wide for wide in HANDY[system] if wide > max(steps) + 1e-6):
        alongs = [step * i for i in range(1, 100) if step * i <= chord - 0.25 * step]
        if not alongs or len(alongs) >= len(curve.points):
            continue
        wider = [on_ruler(float(np.interp(x, xs, ys)), system) for x in alongs]
        run = curve.leaves.along
        ends = (on_ruler(curve.leaves.up, system) / run, -on_ruler(curve.arrives.up, system) / run)
        spline = CubicSpline([0.0, *alongs, chord], [0.0, *wider, 0.0], bc_type=((1, ends[0]), (1, ends[1])))
        lean = np.cos(np.arctan(np.gradient(ys, xs)))
        assert np.max(np.abs(spline(xs) - ys) * lean) > TRUE[system] - 0.02


def test_a_short_curve_with_a_sharp_end_is_drawn_in_two() -> None:
    """Whole it needs five points; halved at its belly, one in each half and the place they share."""
    one, two = guide_points(bow(140.0, 0.9, 0.0))
    assert (len(one.points), len(two.points)) == (1, 1)
    assert 0.2 * 140 < one.end.x < 0.8 * 140
    belly = max(p.y for p in bow(140.0, 0.9, 0.0).points(0.01))
    assert abs(one.end.y) > 0.95 * belly


def test_a_steep_curve_is_cut_where_it_stands_off_most() -> None:
    """A half circle is cut at its top, and each half (a quarter circle) is over a line of r sqrt 2 (geometry)."""
    half = Path((Arc(Point(0, 0), 100.0, math.pi, -math.pi),))
    one, two = guide_points(half)
    assert one.end.close_to(Point(0, 100), 3.0) and two.start == one.end
    assert one.chord == pytest.approx(100 * math.sqrt(2), abs=3) == two.chord


@pytest.mark.parametrize(("up", "ruled"), [(0.25, True), (0.35, False)])
def test_what_hardly_stands_off_is_ruled(up: float, ruled: bool) -> None:
    """A flat arc of 200 mm whose belly stands `up` mm off: radius (100^2 + up^2) / (2 up)."""
    radius = (100**2 + up**2) / (2 * up)
    angle = math.asin(100 / radius)
    (curve,) = guide_points(Path((Arc(Point(100, up - radius), radius, math.pi / 2 + angle, -2 * angle),)))
    assert curve.is_straight is ruled and curve.chord == pytest.approx(200)


@pytest.mark.parametrize(("long", "parts"), [(4.5, 1), (5.5, 2)])
def test_a_straight_stretch_of_half_a_centimetre_is_ruled_by_itself(long: float, parts: int) -> None:
    bend = Cubic.square(Point(long, 0), Vector(1, 0), Point(long + 120, 40), Vector(1, 0.9))
    curves = guide_points(Path((Line(Point(0, 0), Point(long, 0)), bend)))
    assert len(curves) == parts and curves[0].is_straight is (parts == 2)
