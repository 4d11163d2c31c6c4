"""Meetings of curves, checked against svgpathtools and shapely (independent libraries) and by hand."""

from __future__ import annotations

import math
import random

import numpy as np
import pytest
import svgpathtools
from hypothesis import given, settings
from hypothesis import strategies as st
from shapely import LineString, box

from kit.geometry import RIGHT, UP, Arc, Cubic, Curve, Line, Point, Vector, meet, meet_lines
from kit.geometry.meet import apart, only_meet_at
from kit.geometry.roots import cubic_roots

where = st.floats(-300, 300).map(lambda v: round(v, 2))
points = st.builds(Point, where, where)
lines = st.builds(Line, points, points).filter(lambda c: c.length > 5)
sweeps = st.floats(0.2, 6.0).flatmap(lambda a: st.sampled_from([a, -a]))
arcs = st.builds(Arc, points, st.floats(20, 300), st.floats(-3, 3), sweeps)
cubics = st.builds(Cubic, points, points, points, points).filter(lambda c: c.length > 20)
curves = st.one_of(lines, arcs, cubics)


def bezier(c: Cubic) -> object:
    return svgpathtools.CubicBezier(*(complex(p.x, p.y) for p in (c.start, c.c1, c.c2, c.end)))


def segment(line: Line) -> object:
    return svgpathtools.Line(complex(line.start.x, line.start.y), complex(line.end.x, line.end.y))


def out_of_the_origin(ends: list[Point]) -> Curve:
    return Line(Point(0, 0), ends[0]) if len(ends) == 1 else Cubic(Point(0, 0), ends[0], ends[1], ends[2])


rays = st.sampled_from([1, 3]).flatmap(lambda n: st.lists(points, min_size=n, max_size=n)).map(out_of_the_origin)


@settings(max_examples=300, deadline=None)
@given(rays.filter(lambda c: c.length > 5), rays.filter(lambda c: c.length > 5), st.booleans())
def test_curves_from_a_shared_end_surely_meet_nowhere_else(a: Curve, b: Curve, turned: bool) -> None:
    """What is said to be sure is compared with the search itself and with shapely's chords."""
    hub = Point(0, 0)
    if only_meet_at(hub, a.reversed() if turned else a, b):
        assert only_meet_at(hub, b, a)
        assert all(p.close_to(hub, 1e-3) for p, _, _ in meet(a, b))
        one, two = (LineString([(p.x, p.y) for p in c.points(0.001)]) for c in (a, b))
        assert max(math.hypot(x, y) for x, y in one.intersection(two).coords) < 0.01


def test_corners_that_are_sure_and_others() -> None:
    hub, wall = Point(0, 0), Line(Point(0, 0), Point(0, 100))
    bow = Cubic(Point(80, 60), Point(60, 20), Point(30, 0), Point(0, 0))
    assert only_meet_at(hub, bow, wall) and only_meet_at(hub, wall, bow)
    assert only_meet_at(hub, Line(Point(-50, 0), hub), Line(hub, Point(50, 0)))  # on in one line
    back = Cubic(Point(0, 0), Point(0, 0), Point(80, 80), Point(-10, 100))  # its handle lies in its start
    for other in (Line(hub, Point(0, 50)), Line(hub, Point(0.001, 50)), Line(hub, Point(0, 1e-4)), back):
        assert not only_meet_at(hub, wall, other)  # back along it, hardly off it, hardly there, across it again
    assert not only_meet_at(hub, wall, Arc(Point(50, 0), 50, math.pi, 1.0))  # an arc is not looked at
    assert not only_meet_at(hub, wall, Line(Point(1, 0), Point(50, 0)))  # no shared end


def some_cubics(seed: int, count: int) -> list[Cubic]:
    rng = random.Random(seed)

    def spot() -> Point:
        return Point(rng.uniform(0, 300), rng.uniform(0, 300))

    return [Cubic(spot(), spot(), spot(), spot()) for _ in range(count)]


def test_line_and_cubic_against_svgpathtools() -> None:
    lines_ = [Line(c.start, c.end) for c in some_cubics(4, 80)]
    total = 0
    for line, cubic in zip(lines_, some_cubics(5, 80), strict=True):
        want = sorted(t for t, _ in segment(line).intersect(bezier(cubic)))  # type: ignore[attr-defined]
        got = [t for _, t, _ in meet(line, cubic)]
        assert got == pytest.approx(want, abs=1e-6)
        total += len(got)
    assert total > 20


def test_cubic_and_cubic_against_svgpathtools() -> None:
    total = 0
    for a, b in zip(some_cubics(1, 12), some_cubics(2, 12), strict=True):
        hits = bezier(a).intersect(bezier(b), tol=1e-6)  # type: ignore[attr-defined]
        got = meet(a, b)
        assert len(got) == len({round(t, 3) for t, _ in hits})
        for t, s in hits:
            assert min(abs(t - m[1]) + abs(s - m[2]) for m in got) < 1e-4
        total += len(got)
    assert total > 8


@settings(max_examples=80, deadline=None)
@given(curves, curves)
def test_every_pair_against_shapely(a: Curve, b: Curve) -> None:
    """Fine chords of both, crossed by shapely: the same places, except where the curves graze."""
    found = meet(a, b)
    for p, t, s in found:
        assert a.point(t).close_to(p, 1e-3) and b.point(s).close_to(p, 1e-3)
        assert 0 <= t <= 1 and 0 <= s <= 1
    fine_a, fine_b = (LineString([(p.x, p.y) for p in c.points(0.002)]) for c in (a, b))
    crossed = fine_a.intersection(fine_b)
    for spot in getattr(crossed, "geoms", [crossed]):
        if spot.is_empty or spot.geom_type != "Point":
            continue
        p = Point(spot.x, spot.y)
        steep = abs(a.tangent(a.nearest(p)).cross(b.tangent(b.nearest(p))))
        if steep > 0.1:
            assert any(p.close_to(m[0], 0.1) for m in found)
    assert [m[1] for m in found] == sorted(m[1] for m in found)
    back = meet(b, a)
    if all(abs(a.tangent(t).cross(b.tangent(s))) > 0.1 for _, t, s in found + [(p, s, t) for p, t, s in back]):
        assert len(back) == len(found)


def test_by_hand() -> None:
    (hit,) = meet(Line(Point(0, 0), Point(10, 10)), Line(Point(0, 10), Point(10, 0)))
    assert hit == (Point(5, 5), 0.5, 0.5)
    circle = Arc(Point(0, 0), 50, 0, math.pi)
    hits = meet(Line(Point(-100, 30), Point(100, 30)), circle)
    assert [round(p.x, 9) for p, _, _ in hits] == [-40, 40]  # 30-40-50 triangle
    hits = meet(circle, Arc(Point(60, 0), 50, math.pi / 2, math.pi))
    assert [(round(p.x, 9), round(p.y, 9)) for p, _, _ in hits] == [(30, 40)]  # the lower one is off the arcs
    assert meet(Line(Point(0, 0), Point(10, 0)), Line(Point(0, 5), Point(10, 5))) == []


def test_ends_count() -> None:
    base = Line(Point(0, 0), Point(100, 0))
    assert [m[1:] for m in meet(base, Line(Point(100, 0), Point(100, 50)))] == [(1.0, 0.0)]
    assert [m[1:] for m in meet(base, Line(Point(40, 0), Point(40, 50)))] == [(0.4, 0.0)]
    smooth = Cubic.square(Point(0, 80), RIGHT, Point(60, 0), Vector(1, 0))
    (hit,) = meet(base, smooth)  # it runs into the line without a corner: a double root
    assert hit[0].close_to(Point(60, 0), 1e-4) and hit[2] == pytest.approx(1)
    (hit,) = meet(smooth, Cubic.square(Point(60, 0), RIGHT, Point(120, 40), UP))
    assert hit[1:] == (1.0, 0.0)
    # A curve that touches from below in mid-run.
    hill = Cubic(Point(10, -30), Point(30, 10), Point(70, 10), Point(90, -30))
    assert [p.x for p, _, _ in meet(base, hill)] == pytest.approx([50], abs=0.05)


def test_touching_circles_and_curves() -> None:
    left = Arc(Point(0, 0), 50, -1, 2)
    right = Arc(Point(100, 0), 50, 2, 2)
    (hit,) = meet(left, right)
    assert hit[0].close_to(Point(50, 0), 1e-3)
    (hit,) = meet(Line(Point(50, -60), Point(50, 60)), left)
    assert hit[0].close_to(Point(50, 0), 1e-3)


def test_shared_stretch_gives_its_ends() -> None:
    hits = meet(Line(Point(0, 0), Point(100, 0)), Line(Point(40, 0), Point(160, 0)))
    assert [p for p, _, _ in hits] == [Point(40, 0), Point(100, 0)]
    flat = Line(Point(40, 0), Point(160, 0)).as_cubics()[0]
    assert [round(p.x, 6) for p, _, _ in meet(Line(Point(0, 0), Point(100, 0)), flat)] == [40, 100]


def test_endless_lines() -> None:
    assert meet_lines(Point(0, 0), RIGHT, Point(30, -20), UP) == Point(30, 0)
    assert meet_lines(Point(0, 0), RIGHT, Point(0, 5), RIGHT * -3) is None


@settings(max_examples=100, deadline=None)
@given(*(st.floats(-50, 50).map(lambda v: round(v, 2)) for _ in range(4)))
def test_cubic_roots_against_numpy(a: float, b: float, c: float, d: float) -> None:
    if max(abs(a), abs(b), abs(c)) == 0:
        return
    got = cubic_roots(a, b, c, d)
    for root in np.roots(np.trim_zeros([a, b, c, d], "f")):
        slope = abs((3 * a * root + 2 * b) * root + c)
        if abs(root.imag) < 1e-9 and abs(root) < 10 and slope > 0.05:
            assert min((abs(root.real - r) for r in got), default=9) < 1e-6


@given(
    st.tuples(st.integers(-9, 9), st.integers(-9, 9), st.integers(1, 5), st.integers(1, 5)),
    st.tuples(st.integers(-9, 9), st.integers(-9, 9), st.integers(1, 5), st.integers(1, 5)),
    st.integers(0, 4),
)
def test_boxes_apart(one: tuple[int, int, int, int], other: tuple[int, int, int, int], slack: int) -> None:
    """Reference: shapely's intersection of the two boxes, one of them grown by the slack."""
    a, b = ((x, y, x + w, y + h) for x, y, w, h in (one, other))
    grown = box(a[0] - slack, a[1] - slack, a[2] + slack, a[3] + slack)
    assert apart(a, b, slack) == (not grown.intersects(box(*b)))


@pytest.mark.parametrize(("x", "y"), [(7, 0), (-7, 0), (0, 7), (0, -7), (7, 7)])
def test_boxes_that_stand_apart_on_one_side_alone(x: int, y: int) -> None:
    assert apart((0, 0, 5, 5), (x, y, x + 5, y + 5), 1.9)
    assert not apart((0, 0, 5, 5), (x, y, x + 5, y + 5), 2.0)


@pytest.mark.parametrize("half", [10.0, 0.4, 0.03])
def test_a_line_however_short_meets_the_curve_it_crosses(half: float) -> None:
    arch = Cubic(Point(0, 0), Point(0, 40), Point(100, 40), Point(100, 0))
    top = Point(50, 30)  # by de Casteljau: halfway up three quarters of its handles
    ((p, t, s),) = meet(Line(Point(50, 30 - half), Point(50, 30 + half)), arch)
    assert p.close_to(top, 1e-6) and (t, s) == pytest.approx((0.5, 0.5), abs=1e-6)
    assert meet(Line(top, top), arch) == []
