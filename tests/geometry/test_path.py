"""Paths: joining, measuring along, trimming and carrying on. Splines are checked against the worked example of
the MetaPost manual, lengths along against shapely."""

from __future__ import annotations

import math

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from shapely import LineString

from kit.errors import KitError
from kit.geometry import RIGHT, UP, Arc, Cubic, Line, Path, Point, Vector
from kit.units import cm

BEND = Path.of(
    Line(Point(0, 0), Point(100, 0)),
    Arc(Point(100, 50), 50, -math.pi / 2, math.pi / 2),
    Cubic(Point(150, 50), Point(150, 90), Point(180, 120), Point(240, 120)),
    Line(Point(240, 120), Point(240, 200)),
)
shares = st.floats(0, 1)
quick = settings(max_examples=60, deadline=None)


def test_length_and_places_against_shapely() -> None:
    line = LineString([(p.x, p.y) for p in BEND.points(0.0005)])
    assert BEND.length == pytest.approx(line.length, abs=0.02)
    for d in (0, 30, 100, 140, 178.5, 250, BEND.length):
        want = line.interpolate(d)
        assert BEND.at(d).close_to(Point(want.x, want.y), 0.02)
    assert BEND.bounds() == pytest.approx((0, 0, 240, 200))


@quick
@given(shares, shares)
def test_split_and_between(a: float, b: float) -> None:
    d0, d1 = sorted((a * BEND.length, b * BEND.length))
    if not 0.01 < d0 < d1 - 0.01:
        return
    before, after = BEND.split(d0)
    assert before.length == pytest.approx(d0, abs=1e-4)
    assert before.length + after.length == pytest.approx(BEND.length, abs=1e-4)
    assert before.end.close_to(after.start, 1e-6)
    part = BEND.between(d0, d1)
    assert part.length == pytest.approx(d1 - d0, abs=1e-4)
    assert part.start.close_to(BEND.at(d0), 1e-6) and part.end.close_to(BEND.at(d1), 1e-6)
    back = BEND.between(d1, d0)
    assert back.start.close_to(part.end, 1e-9) and back.length == pytest.approx(part.length, abs=1e-6)


@quick
@given(shares)
def test_reversed_and_nearest(a: float) -> None:
    d = a * BEND.length
    assert BEND.reversed().at(BEND.length - d).close_to(BEND.at(d), 1e-5)
    p = BEND.at(d) + BEND.normal_at(d) * 3
    assert BEND.distance_to(p) <= 3 + 1e-6
    assert BEND.at(BEND.nearest(BEND.at(d))).close_to(BEND.at(d), 1e-5)
    mirror = Line(Point(3, 3), Point(7, 40))
    assert BEND.mirrored(mirror).mirrored(mirror).at(d).close_to(BEND.at(d), 1e-6)


def test_directions_and_corners() -> None:
    assert (BEND.tangent_at(50) - RIGHT).length < 1e-9 and (BEND.normal_at(50) - UP).length < 1e-9
    assert (BEND.tangent_at(BEND.length) - UP).length < 1e-9
    assert BEND.corners == pytest.approx((BEND.length - 80,))  # arc and cubic join smoothly
    assert not BEND.is_straight and Path.line(Point(0, 0), Point(5, 5)).is_straight
    dashed = Path.of(Line(Point(0, 0), Point(10, 0)), Line(Point(10, 0), Point(30, 0)).as_cubics()[0])
    assert dashed.is_straight
    assert not Path.of(Line(Point(0, 0), Point(30, 0)), Line(Point(30, 0), Point(10, 0))).is_straight


def test_joining() -> None:
    a, b = Path.line(Point(0, 0), Point(10, 0)), Path.line(Point(10, 0.005), Point(10, 20))
    assert (a + b).length == pytest.approx(30, abs=0.01) and a.joined(b) == a + b == Path.of(a, b)
    assert len(Path.of(a, Line(Point(10, 0), Point(10, 0)), b).curves) == 2


def test_to_trims_and_carries_on() -> None:
    wall = Path.line(Point(60, -50), Point(60, 50))
    assert Path.line(Point(0, 0), Point(100, 0)).to(wall) == Path.line(Point(0, 0), Point(60, 0))
    assert Path.line(Point(0, 0), Point(100, 0)).to(wall, end="start") == Path.line(Point(60, 0), Point(100, 0))
    assert Path.line(Point(0, 0), Point(20, 0)).to(wall) == Path.line(Point(0, 0), Point(60, 0))
    curve = Path((Cubic.square(Point(0, 0), UP, Point(30, 30), RIGHT),))
    reached = curve.to(wall)
    assert reached.end.close_to(Point(60, 30), 1e-6) and (reached.end_tangent - RIGHT).length < 1e-9
    started = Path.line(Point(60, 10), Point(20, 10))
    assert started.to(Path.line(Point(0, 0), Point(0, 99))).end == Point(0, 10)
    assert started.to(wall, end="start") == started  # it starts there already
    with pytest.raises(KitError, match="never meets") as caught:
        Path.line(Point(0, 60), Point(20, 60)).to(wall)
    assert "2 cm (3/4 in) across" in caught.value.where


def test_extended() -> None:
    line = Path.line(Point(0, 0), Point(10, 0))
    assert line.extended(2 * cm) == Path.line(Point(0, 0), Point(30, 0))
    assert line.extended(5, end="start") == Path.line(Point(-5, 0), Point(10, 0))
    assert BEND.reversed().extended(7, end="start").start.close_to(Point(240, 207), 1e-9)


def test_crossings() -> None:
    assert BEND.crossings(Path.line(Point(50, -10), Point(50, 10))) == [Point(50, 0)]
    across = BEND.crossings(Path.line(Point(-10, 25), Point(400, 25)))
    assert len(across) == 1 and across[0].x == pytest.approx(100 + math.sqrt(50**2 - 25**2))
    # Through a joint: found once, though both neighbours have it.
    assert len(BEND.crossings(Path.line(Point(100, -20), Point(100, 20)))) == 1


def test_spline_against_the_metapost_manual() -> None:
    """J. D. Hobby, "A User's Manual for MetaPost", section on curves: the controls of a smooth curve through
    five points, printed there to one decimal."""
    path = Path.through([Point(0, 0), Point(60, 40), Point(40, 90), Point(10, 70), Point(30, 50)])
    controls = [
        ((26.8, -1.8), (51.4, 14.6)),
        ((67.1, 61.0), (59.8, 84.6)),
        ((25.4, 94.0), (10.5, 84.5)),
        ((9.6, 58.8), (18.8, 49.6)),
    ]
    for curve, (c1, c2) in zip(path.curves, controls, strict=True):
        assert isinstance(curve, Cubic)
        assert (curve.c1.x, curve.c1.y) == pytest.approx(c1, abs=0.06)
        assert (curve.c2.x, curve.c2.y) == pytest.approx(c2, abs=0.06)


def test_spline_through_a_circle() -> None:
    circle = Arc(Point(0, 0), 100, 0.2, 3.0)
    path = Path.through([circle.point(i / 6) for i in range(7)])
    assert path.corners == ()
    assert max(abs(path.at(path.length * i / 99).distance(Point(0, 0)) - 100) for i in range(100)) < 0.3
    held = Path.through([Point(0, 0), Point(50, 30), Point(120, 0)], start_direction=UP, end_direction=Vector(1, -1))
    assert (held.start_tangent - UP).length < 1e-9 and held.end_tangent.cross(Vector(1, -1)) == pytest.approx(0)
    assert Path.through([Point(0, 0), Point(5, 5)]).is_straight


@pytest.mark.parametrize(
    ("make", "says"),
    [
        (lambda: Path(()), "at least one"),
        (lambda: Path((Line(Point(0, 0), Point(10, 0)), Line(Point(10, 3), Point(20, 3)))), "ends 3 mm from"),
        (lambda: BEND.at(BEND.length + 0.01), "falls off its end"),
        (lambda: BEND.at(-2 * cm), "-2 cm"),
        (lambda: BEND.at(math.nan), "falls off"),
        (lambda: BEND.split(0), "cannot be cut"),
        (lambda: BEND.between(5, 5), "nothing between"),
        (lambda: BEND.extended(-5), "carried on by -5 mm"),
        (lambda: Path.through([Point(0, 0)]), "at least two points"),
        (lambda: Path.through([Point(0, 0), Point(0, 0), Point(5, 5)]), "same place"),
    ],
)
def test_refusals(make, says: str) -> None:  # type: ignore[no-untyped-def]
    with pytest.raises(KitError, match=says) as caught:
        make()
    assert caught.value.do
    assert BEND.at(BEND.length + 1e-7) == BEND.end  # rounding error is forgiven


def test_to_reaches_the_shortest_of_lines() -> None:
    wall = Path.line(Point(60, -0.2), Point(60, 0.2))
    assert Path.line(Point(0, 0), Point(20, 0)).to(wall) == Path.line(Point(0, 0), Point(60, 0))


def test_a_curve_through_points_leaves_and_arrives_as_told_from_either_end() -> None:
    points = [Point(0, 0), Point(50, 30), Point(120, 0), Point(150, 60), Point(240, 20)]
    there = Path.through(points, start_direction=UP, end_direction=Vector(1, -1))
    assert there.start_tangent.dot(UP) == pytest.approx(1.0)
    assert there.end_tangent.dot(Vector(1, -1).unit()) == pytest.approx(1.0)
    back = Path.through(points[::-1], start_direction=Vector(-1, 1), end_direction=UP * -1.0)
    for one, other in zip(there.curves, back.reversed().curves, strict=True):
        for t in (0.0, 0.3, 0.5, 1.0):
            assert one.point(t).close_to(other.point(t), 1e-6)


@pytest.mark.parametrize("sweep", [math.pi / 2, -math.pi / 2])
def test_a_ray_just_off_the_end_of_an_arc_passes_its_end(sweep: float) -> None:
    """On a radius of 100 mm an angle of 0.01 is 1 mm along the arc."""
    arc = Arc(Point(0, 0), 100.0, 0.0, sweep)
    way = math.copysign(1.0, sweep)

    def toward(angle: float, slack: float) -> float | None:
        return arc.t_toward(Point(math.cos(way * angle), math.sin(way * angle)), slack)

    assert toward(math.pi / 4, 0.0) == pytest.approx(0.5)
    assert toward(math.pi / 2 + 0.01, 1.1) == 1.0
    assert toward(-0.01, 1.1) == 0.0
    assert toward(math.pi / 2 + 0.01, 0.9) is None and toward(-0.01, 0.9) is None
