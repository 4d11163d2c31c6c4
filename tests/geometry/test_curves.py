"""Lines, arcs and cubics. Lengths are checked against scipy.integrate.quad, points, derivatives and curvature
against svgpathtools (independent libraries from the package registry), areas against shapely."""

from __future__ import annotations

import math
from itertools import pairwise

import numpy as np
import pytest
import svgpathtools
from hypothesis import assume, example, given, settings
from hypothesis import strategies as st
from scipy.integrate import quad
from shapely import LineString, Polygon

from kit.errors import KitError
from kit.geometry import DOWN, LEFT, RIGHT, UP, Arc, Cubic, Curve, Line, Point, Vector, power_form
from kit.units import cm

where = st.floats(-600, 600).map(lambda v: round(v, 3))
points = st.builds(Point, where, where)
lines = st.builds(Line, points, points).filter(lambda c: c.length > 1)
sweeps = st.floats(0.05, 6.2).flatmap(lambda a: st.sampled_from([a, -a]))
arcs = st.builds(Arc, points, st.floats(1, 800), st.floats(-7, 7), sweeps)
cubics = st.builds(Cubic, points, points, points, points).filter(lambda c: c.length > 1)
curves = st.one_of(lines, arcs, cubics)
shares = st.floats(0, 1)
quick = settings(max_examples=60, deadline=None)

UNDERARM = Cubic(Point(240, 180), Point(190, 182), Point(172, 150), Point(170, 60))
ESS = Cubic(Point(0, 0), Point(60, 150), Point(90, -100), Point(130, 80))


def complex_of(p: Point) -> complex:
    return complex(p.x, p.y)


def reference(curve: Curve) -> object:
    """The same curve in svgpathtools (whose arcs are made from end points, radius and flags)."""
    if isinstance(curve, Cubic):
        return svgpathtools.CubicBezier(*map(complex_of, (curve.start, curve.c1, curve.c2, curve.end)))
    if isinstance(curve, Arc):
        return svgpathtools.Arc(
            complex_of(curve.start),
            complex(curve.radius, curve.radius),
            0,
            abs(curve.sweep) > math.pi,
            curve.sweep > 0,
            complex_of(curve.end),
        )
    return svgpathtools.Line(complex_of(curve.start), complex_of(curve.end))


# ---- against the outside ----------------------------------------------------------------------------------


def test_quadrature_nodes_against_numpy() -> None:
    nodes, weights = np.polynomial.legendre.leggauss(8)  # numpy as the reference
    ours = sorted((s * n, w) for n, w in power_form.GAUSS for s in (1, -1))
    assert np.allclose([n for n, _ in ours], nodes, atol=1e-14)
    assert np.allclose([w for _, w in ours], weights, atol=1e-14)


@quick
@given(curves)
def test_length_against_scipy(curve: Curve) -> None:
    breaks = [i / 40 for i in range(41)]
    want = sum(quad(lambda t: curve.derivative(t).length, a, b, epsabs=1e-8, limit=200)[0] for a, b in pairwise(breaks))
    assert curve.length == pytest.approx(want, abs=1e-4)


# A curve that goes forward: its control points lie along the x axis in order, however far off it.
forward = st.builds(
    lambda gaps, heights: Cubic(
        *(Point(sum(gaps[:i]), height) for i, height in enumerate(heights)),
    ),
    st.lists(st.floats(5, 300), min_size=3, max_size=3),
    st.lists(st.floats(-200, 200), min_size=4, max_size=4),
)


@quick
@given(forward, st.floats(0, 1 - 1 / 64))
@example(Cubic(Point(0, 0), Point(35, 60), Point(70, -60), Point(100, 0)), 0.5)  # as wild as goes forward
def test_a_short_stretch_is_measured_to_rounding(curve: Cubic, start: float) -> None:
    """numpy's rule of 64 points as the reference."""
    assume(curve._goes_forward())
    nodes, weights = np.polynomial.legendre.leggauss(64)
    for width in (1 / 64, 1 / 65, 1e-3):
        speeds = [curve.derivative(start + width * (1 + node) / 2).length for node in nodes]
        want = float(weights @ speeds) * width / 2
        assert curve.length_between(start, start + width) == pytest.approx(want, rel=1e-12, abs=1e-12)


@pytest.mark.parametrize(
    "curve",
    [
        UNDERARM,
        ESS,
        Cubic(Point(0, 0), Point(0, 0), Point(30, 80), Point(90, 90)),
        Cubic(Point(0, 0), Point(120, 100), Point(-20, 100), Point(100, 0)),  # crosses itself
        Cubic(Point(0, 0), Point(100, 100), Point(0, 100), Point(100, 0)),  # a cusp
        Line(Point(3, 4), Point(300, -20)),
        Arc(Point(10, 20), 150, 0.4, 2.1),
        Arc(Point(10, 20), 150, 0.4, -4.0),
    ],
)
def test_points_lengths_and_bends_against_svgpathtools(curve: Curve) -> None:
    other = reference(curve)
    assert curve.length == pytest.approx(other.length(error=1e-9), abs=1e-4)  # type: ignore[attr-defined]
    for t in (0.1, 0.37, 0.62, 0.95):
        p = other.point(t)  # type: ignore[attr-defined]
        assert curve.point(t).close_to(Point(p.real, p.imag), 1e-8)
        v = other.derivative(t)  # type: ignore[attr-defined]
        assert (curve.derivative(t) - Vector(v.real, v.imag)).length < 1e-6
        if isinstance(curve, Cubic):
            assert abs(curve.curvature(t)) == pytest.approx(other.curvature(t), rel=1e-6)  # type: ignore[attr-defined]
    if not isinstance(curve, Arc):
        xmin, xmax, ymin, ymax = other.bbox()  # type: ignore[attr-defined]
        assert curve.bounds() == pytest.approx((xmin, ymin, xmax, ymax), abs=1e-8)


@quick
@given(cubics, st.floats(0.05, 0.95))
def test_distance_along_against_svgpathtools(curve: Cubic, share: float) -> None:
    # Close to a cusp the reference's own quadrature is off; those are checked by hand below.
    assume(min(curve.derivative(i / 64).length for i in range(65)) > 0.05 * curve.length)
    d = curve.length * share
    want = reference(curve).length(0, curve.t_at(d), error=1e-8)  # type: ignore[attr-defined]
    assert want == pytest.approx(d, abs=1e-4)


@pytest.mark.parametrize("xs", [(1, 0, 101, 0), (83, 84, 493, 152), (0, 100, 0, 100), (0, 300, -200, 100)])
def test_length_of_a_line_travelled_back_and_forth(xs: tuple[float, ...]) -> None:
    """Controls on one straight line: the length is the sum of the runs between the turning points, which
    numpy's polynomial roots give."""
    curve = Cubic(*(Point(x, 0) for x in xs))
    a, b, c, d = xs
    turns = np.roots(np.trim_zeros([3 * (d - a + 3 * (b - c)), 6 * (a - 2 * b + c), 3 * (b - a)], "f"))
    stops = [0.0, *sorted(t.real for t in turns if abs(t.imag) < 1e-9 and 0 < t.real < 1), 1.0]
    want = sum(curve.point(s).distance(curve.point(t)) for s, t in pairwise(stops))
    assert curve.length == pytest.approx(want, abs=1e-4)
    assert sum(part.length for part in curve.split(curve.t_at(want / 3))) == pytest.approx(want, abs=1e-4)


def test_area_against_shapely() -> None:
    lens = [UNDERARM, Line(UNDERARM.end, UNDERARM.start)]
    want = Polygon([(p.x, p.y) for c in lens for p in c.points(1e-4)])
    ccw = 1 if want.exterior.is_ccw else -1
    assert sum(c.area_term() for c in lens) == pytest.approx(ccw * want.area, abs=0.05)
    arc = Arc(Point(300, -50), 80, 0.5, 2.0)
    sector = [Line(arc.centre, arc.start), arc, Line(arc.end, arc.centre)]
    assert sum(c.area_term() for c in sector) == pytest.approx(80**2 * 2.0 / 2, abs=1e-6)  # r2 * angle / 2


# ---- what must always hold --------------------------------------------------------------------------------


@quick
@given(curves, st.floats(0.02, 0.98))
def test_split_lengths_add_up(curve: Curve, t: float) -> None:
    before, after = curve.split(t)
    assert before.length + after.length == pytest.approx(curve.length, abs=1e-4)
    assert before.end.close_to(after.start, 1e-9)
    assert before.point(0.5).close_to(curve.point(t / 2), 1e-8)
    assert after.point(0.5).close_to(curve.point((1 + t) / 2), 1e-8)


@quick
@given(curves, shares)
def test_reversed_reverses(curve: Curve, t: float) -> None:
    back = curve.reversed()
    assert back.point(t).close_to(curve.point(1 - t), 1e-8)
    assert back.length == pytest.approx(curve.length, abs=1e-5)
    assert back.start.close_to(curve.end, 1e-9) and back.reversed().point(t).close_to(curve.point(t), 1e-8)


@quick
@given(curves, lines, shares)
def test_mirrored_twice_is_the_same(curve: Curve, mirror: Line, t: float) -> None:
    there = curve.mirrored(mirror)
    assert there.point(t).close_to(curve.point(t).mirrored(mirror), 1e-7)
    assert there.mirrored(mirror).point(t).close_to(curve.point(t), 1e-7)
    assert there.area_term() == pytest.approx(_area_by_hand(there), rel=1e-6, abs=1e-2)


def _area_by_hand(curve: Curve) -> float:
    def rate(t: float) -> float:
        p, v = curve.point(t), curve.derivative(t)
        return (p.x * v.y - p.y * v.x) / 2

    return quad(rate, 0, 1, limit=200)[0]


@quick
@given(curves, shares, shares)
def test_distance_is_monotone(curve: Curve, a: float, b: float) -> None:
    low, high = sorted((a * curve.length, b * curve.length))
    assert curve.t_at(low) <= curve.t_at(high) + 1e-12
    assert curve.at(low).distance(curve.at(high)) <= high - low + 1e-4


@quick
@given(curves, st.sampled_from([0.01, 0.1, 1.0]))
def test_chords_stay_within_tolerance(curve: Curve, tol: float) -> None:
    chords = LineString([(p.x, p.y) for p in curve.points(tol)])
    off = max(chords.distance(_spot(curve.point(i / 97))) for i in range(98))
    assert off <= tol + 1e-7


def _spot(p: Point) -> object:
    from shapely import Point as Spot

    return Spot(p.x, p.y)


@quick
@given(curves, points)
def test_nearest_against_shapely(curve: Curve, p: Point) -> None:
    want = LineString([(q.x, q.y) for q in curve.points(0.001)]).distance(_spot(p))
    assert curve.point(curve.nearest(p)).distance(p) == pytest.approx(want, abs=0.002)


@quick
@example(Cubic(Point(-60.9, 74.2), Point(-294.0, -245.1), Point(111.3, -6.3), Point(-88.0, 93.7)), 0.97, 0.4)
@given(cubics, shares, st.floats(-5, 5))
def test_nearest_to_a_point_close_by(curve: Cubic, t: float, off: float) -> None:
    """Whatever else of the curve lies near, its foot is no farther than the place the point was set off from."""
    place = curve.point(t)
    spot = place + Vector(0.6, 0.8) * off
    want = min(abs(off), LineString([(q.x, q.y) for q in curve.points(0.001)]).distance(_spot(spot)) + 0.002)
    assert curve.point(curve.nearest(spot)).distance(spot) <= want + 1e-6


@quick
@given(curves)
def test_bounds_hold_every_point_tightly(curve: Curve) -> None:
    x0, y0, x1, y1 = curve.bounds()
    flat = curve.points(0.001)
    assert min(p.x for p in flat) == pytest.approx(x0, abs=0.002)
    assert max(p.x for p in flat) == pytest.approx(x1, abs=0.002)
    assert min(p.y for p in flat) == pytest.approx(y0, abs=0.002)
    assert max(p.y for p in flat) == pytest.approx(y1, abs=0.002)


@quick
@given(arcs)
def test_arc_as_cubics(arc: Arc) -> None:
    parts = arc.as_cubics()
    assert parts[0].start == arc.start and parts[-1].end == arc.end
    for part in parts:
        off = max(abs(part.point(i / 10).distance(arc.centre) - arc.radius) for i in range(11))
        assert off <= 5e-6 * arc.radius
    assert sum(part.length for part in parts) == pytest.approx(arc.length, rel=1e-5)


@quick
@given(curves, st.floats(0.02, 0.98))
def test_tangent_and_normal(curve: Curve, t: float) -> None:
    assume(curve.derivative(t).length > 1)
    tangent, normal = curve.tangent(t), curve.normal(t)
    assert tangent.length == pytest.approx(1) and tangent.cross(normal) == pytest.approx(1)
    assert tangent.cross(curve.derivative(t)) == pytest.approx(0, abs=1e-6)


def test_a_handle_of_no_length_still_has_a_direction() -> None:
    curve = Cubic(Point(0, 0), Point(0, 0), Point(30, 40), Point(100, 40))
    assert (curve.tangent(0) - Vector(0.6, 0.8)).length < 1e-9
    curve = Cubic(Point(0, 0), Point(30, 40), Point(100, 40), Point(100, 40))
    assert (curve.tangent(1) - RIGHT).length < 1e-9


# ---- curves by their end directions -----------------------------------------------------------------------


@pytest.mark.parametrize("degrees", [15, 45, 60, 90])
def test_a_circles_tangents_give_the_circle(degrees: float) -> None:
    """Hobby (1986) chooses handles so that tangents of a circle give nearly that circle."""
    circle = Arc(Point(0, 0), 120, 0.3, math.radians(degrees))
    curve = Cubic.square(circle.start, circle.tangent(0), circle.end, circle.tangent(1))
    worst = max(abs(curve.point(i / 60).distance(circle.centre) - 120) for i in range(61))
    assert worst <= 0.003 * 120
    assert curve.length == pytest.approx(circle.length, rel=0.003)


@quick
@given(st.floats(-1.5, 1.5), st.floats(-1.5, 1.5))
def test_square_keeps_its_directions(theta: float, phi: float) -> None:
    leave, arrive = Vector.at_angle(theta), Vector.at_angle(phi)
    try:
        curve = Cubic.square(Point(10, 20), leave, Point(210, 20), arrive)
    except KitError:
        assert abs(theta) > 0.8 or abs(phi) > 0.8  # only steep ends may be refused
        return
    assert (curve.tangent(0) - leave).length < 1e-9 and (curve.tangent(1) - arrive).length < 1e-9
    xs = [curve.point(i / 200).x for i in range(201)]
    assert all(b >= a - 0.02 for a, b in pairwise(xs))  # never doubles back
    assert curve.self_crossing() is None


def test_fullness_makes_it_fuller() -> None:
    flat, full = (Cubic.square(Point(0, 0), UP, Point(100, 100), RIGHT, f) for f in (0.7, 1.2))
    corner = Point(0, 100)
    assert full.point(full.nearest(corner)).distance(corner) < flat.point(flat.nearest(corner)).distance(corner) - 5


def test_self_crossing_against_svgpathtools() -> None:
    curve = Cubic(Point(0, 0), Point(220, 130), Point(-120, 120), Point(100, 0))
    found = curve.self_crossing()
    assert found is not None
    first, second = reference(curve).split(0.5)  # type: ignore[attr-defined]
    hits = [first.point(t) for t, s in first.intersect(second) if not (t > 0.999 and s < 0.001)]
    assert min(abs(h - complex_of(found)) for h in hits) < 1e-4
    assert UNDERARM.self_crossing() is None and ESS.self_crossing() is None
    assert Cubic(Point(0, 0), Point(30, 30), Point(60, 60), Point(90, 90)).self_crossing() is None


def test_every_pair_of_directions_gives_a_sound_curve_or_a_message() -> None:
    for leave in range(-180, 181, 20):
        for arrive in range(-180, 181, 20):
            ways = Vector.at_angle(math.radians(leave)), Vector.at_angle(math.radians(arrive))
            if abs(leave) < 90 and abs(arrive) < 90:
                Cubic.square(Point(0, 0), ways[0], Point(100, 0), ways[1])
            elif abs(leave) > 90 or abs(arrive) > 90:
                with pytest.raises(KitError, match=r"double back|cross itself"):
                    Cubic.square(Point(0, 0), ways[0], Point(100, 0), ways[1])


# ---- bad input --------------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("make", "says"),
    [
        (lambda: Arc(Point(0, 0), 0, 0, 1), "radius above zero"),
        (lambda: Arc(Point(0, 0), -2 * cm, 0, 1), "-2 cm"),
        (lambda: Arc(Point(0, 0), 10, 0, 0), "sweep through 0°"),
        (lambda: Arc(Point(0, 0), 10, 0, 7), "401"),
        (lambda: Line(Point(0, 0), Point(100, 0)).at(12 * cm), "12 cm .* falls off its end"),
        (lambda: UNDERARM.at(-1), "falls off its end"),
        (lambda: Line(Point(1, 1), Point(1, 1)).tangent(0), "no direction"),
        (lambda: Cubic.square(Point(5, 5), UP, Point(5, 5), UP), "same place"),
        (lambda: Cubic.square(Point(0, 0), LEFT, Point(100, 0), UP), "double back: at one end it runs 180°"),
        (lambda: Cubic.square(Point(0, 0), UP, Point(100, 0), Vector(-1, -1)), "double back: at one end it runs 135°"),
        (lambda: Cubic.square(Point(0, 0), UP, Point(100, 0), DOWN, 40), "fullness of 40"),
        (lambda: Cubic.square(Point(0, 0), RIGHT, Point(100, 0), DOWN, 2.9), "double back on itself with a fullness"),
        (
            lambda: Cubic.square(Point(0, 0), Vector.at_angle(-2.79), Point(100, 0), Vector.at_angle(-1.05)),
            "cross itself",
        ),
    ],
)
def test_refusals(make, says: str) -> None:  # type: ignore[no-untyped-def]
    with pytest.raises(KitError, match=says) as caught:
        make()
    assert caught.value.do and "\n" not in str(caught.value)
