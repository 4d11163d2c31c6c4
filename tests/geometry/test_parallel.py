"""Parallels, checked against shapely's buffer (GEOS) with mitred corners."""

from __future__ import annotations

import math

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from shapely import LineString, Polygon, box
from shapely import Point as Spot

from kit.errors import KitError
from kit.geometry import DOWN, LEFT, RIGHT, UP, Arc, Cubic, Line, Path, Point, Vector, beside, parallel
from tests.near import near

UNDERARM = Cubic(Point(240, 180), Point(190, 182), Point(172, 150), Point(170, 60))
QUARTER = Cubic.square(Point(100, 0), UP, Point(0, 100), LEFT)


def flat(path: Path, tol: float = 1e-4) -> list[tuple[float, float]]:
    return [(p.x, p.y) for p in path.points(tol)]


def loop(*corners: tuple[float, float]) -> Path:
    spots = [Point(*c) for c in corners]
    return Path(tuple(Line(a, b) for a, b in zip(spots, [*spots[1:], spots[0]], strict=True)))


ROUNDED = Path.of(
    Line(Point(0, 0), Point(200, 0)),
    Line(Point(200, 0), Point(220, 120)),
    Cubic(Point(220, 120), Point(200, 220), Point(90, 240), Point(40, 230)),
    Arc(Point(40, 190), 40, math.pi / 2, math.pi / 2),
    Line(Point(0, 190), Point(0, 0)),
)


@pytest.mark.parametrize("d", [1.0, 6.0, 10.0, 15.0, 40.0])
@pytest.mark.parametrize("shape", [loop((0, 0), (300, 20), (340, 260), (-30, 300)), ROUNDED], ids=["straight", "round"])
def test_convex_outlines_against_shapely(shape: Path, d: float) -> None:
    want = Polygon(flat(shape)).buffer(d, join_style="mitre", mitre_limit=20, quad_segs=360)
    got = Polygon(flat(parallel(shape, -d)))  # the shapes run ccw: outside is to the right
    assert got.is_valid
    assert near(got.exterior, want.exterior, 0.02)
    assert got.area == pytest.approx(want.area, rel=2e-5)


@pytest.mark.parametrize("d", [5.0, 20.0])
@pytest.mark.parametrize("shape", [loop((0, 0), (300, 20), (340, 260), (-30, 300)), ROUNDED], ids=["straight", "round"])
def test_inward_against_shapely(shape: Path, d: float) -> None:
    want = Polygon(flat(shape)).buffer(-d, join_style="mitre", mitre_limit=20, quad_segs=360)
    got = Polygon(flat(parallel(shape, d)))
    assert got.is_valid
    assert near(got.exterior, want.exterior, 0.02)


@pytest.mark.parametrize("d", [8.0, -8.0])
def test_concave_outline_against_shapely(d: float) -> None:
    shape = loop((0, 0), (300, 0), (300, 100), (150, 100), (150, 260), (0, 260))
    want = Polygon(flat(shape)).buffer(-d, join_style="mitre", mitre_limit=20)
    got = Polygon(flat(parallel(shape, d)))
    assert near(got.exterior, want.exterior, 0.001)


@settings(max_examples=60, deadline=None)
@given(st.floats(-1.3, 1.3), st.floats(-1.3, 1.3), st.floats(-40, 40).filter(lambda d: abs(d) > 0.5))
def test_cubic_parallel_stays_at_its_distance(theta: float, phi: float, d: float) -> None:
    try:
        curve = Cubic.square(Point(0, 0), Vector.at_angle(theta), Point(250, 0), Vector.at_angle(phi))
        parts = curve.parallel(d)
    except KitError:
        return
    line = LineString([(p.x, p.y) for p in curve.points(0.0005)])
    for part in parts:
        for i in range(1, 20):
            p = part.point(i / 20)
            assert line.distance(Spot(p.x, p.y)) <= abs(d) + 0.01
            # Off the ends the nearest point is an end, and further than d is not possible there.
            t = curve.nearest(p)
            if 0 < t < 1:
                assert curve.point(t).distance(p) == pytest.approx(abs(d), abs=0.01)
    side = (parts[0].start - curve.start).dot(curve.normal(0))
    assert side == pytest.approx(d, abs=1e-9)
    assert (parts[-1].end - curve.end).dot(curve.normal(1)) == pytest.approx(d, abs=1e-9)


def test_few_pieces() -> None:
    assert len(UNDERARM.parallel(-10)) <= 8 and len(QUARTER.parallel(-15)) <= 4


def test_lines_and_arcs_are_exact() -> None:
    assert Line(Point(0, 0), Point(100, 0)).parallel(5) == (Line(Point(0, 5), Point(100, 5)),)
    (inner,) = Arc(Point(0, 0), 100, 0, 2).parallel(30)  # ccw: the centre is on the left
    assert (inner.centre, inner.radius) == (Point(0, 0), 70)
    (outer,) = Arc(Point(0, 0), 100, 0, -2).parallel(30)
    assert outer.radius == 130


def test_corners_are_mitred_outside_and_trimmed_inside() -> None:
    ell = Path.of(Line(Point(0, 0), Point(100, 0)), Line(Point(100, 0), Point(100, 80)))
    assert [p for p in parallel(ell, -10).points()] == [Point(0, -10), Point(110, -10), Point(110, 80)]
    assert [p for p in parallel(ell, 10).points()] == [Point(0, 10), Point(90, 10), Point(90, 80)]


@pytest.mark.parametrize("lap", [5.0, 20.0, 49.0])
def test_a_lap_shorter_than_a_facing_is_deep_is_passed_over(lap: float) -> None:
    """Up a button edge, in along its lap and on round the neck, and the same the other way: against the front that it
    bounds, buffered inward by GEOS."""
    neck = Cubic.square(Point(0, 350), RIGHT, Point(75, 430), UP)
    path = Path.of(Line(Point(-lap, 0), Point(-lap, 350)), Line(Point(-lap, 350), Point(0, 350)), neck)
    deep = 50.0
    front = Polygon([*flat(path, 0.01), (600, 430), (600, 0)]).buffer(-deep, quad_segs=180)
    seen = box(-100, 60, 400, 370)  # away from where the front's other edges are buffered too
    want = front.exterior.intersection(seen)
    for got in (parallel(path, -deep), parallel(path.reversed(), deep).reversed()):
        assert got.start.close_to(Point(deep - lap, 0))
        assert got.end.close_to(Point(75 + deep, 430))
        assert LineString(flat(got)).intersection(seen).hausdorff_distance(want) < 0.05


def test_a_notch_narrower_than_the_parallel_is_deep_is_still_refused() -> None:
    """What follows the short part must clear the line before it: a step of the outline that turns back does not."""
    path = Path.of(
        Line(Point(0, 0), Point(0, 100)), Line(Point(0, 100), Point(10, 100)), Line(Point(10, 100), Point(10, 0))
    )
    with pytest.raises(KitError):
        parallel(path, -30.0)


def test_smooth_joints_stay_joined() -> None:
    curve = Path.through([Point(0, 0), Point(60, 30), Point(120, 20), Point(200, 60)])
    for d in (-12, 12):
        beside = parallel(curve, d)
        line = LineString(flat(curve))
        assert max(abs(line.distance(Spot(p)) - 12) for p in flat(beside, 0.5)) < 0.02


def test_a_tight_curve_is_refused_with_its_radius() -> None:
    bend = Arc(Point(50, 50), 8, -math.pi / 2, math.pi)
    with pytest.raises(KitError, match="cannot follow a curve of radius 8 mm") as caught:
        bend.parallel(10)
    assert "5.8 cm (2 1/4 in) across" in caught.value.where and "less than 8 mm" in caught.value.do
    assert bend.parallel(-10)[0].length > bend.length
    hairpin = Cubic(Point(0, 0), Point(90, 0), Point(90, 10), Point(0, 10))
    t, most = hairpin.tightest(left=True)
    assert t == pytest.approx(0.5, abs=1e-3)
    with pytest.raises(KitError, match="fold back"):
        hairpin.parallel(1 / most + 0.5)
    assert hairpin.parallel(1 / most - 0.5)
    with pytest.raises(KitError, match="fold back"):  # nearly a cusp, between two looks
        Cubic(Point(0, 0), Point(100, 100.001), Point(0.3, 100), Point(100, 0)).parallel(-5)


def test_other_refusals() -> None:
    with pytest.raises(KitError, match="too short"):
        parallel(
            Path.of(
                Line(Point(0, 0), Point(100, 0)), Line(Point(100, 0), Point(100, 5)), Line(Point(100, 5), Point(0, 5))
            ),
            10,
        )
    with pytest.raises(KitError, match="turns back on itself"):
        parallel(Path.of(Line(Point(0, 0), Point(100, 0)), Line(Point(100, 0), Point(0, 1))), -10)
    with pytest.raises(KitError, match="without length"):
        parallel(Path.line(Point(1, 1), Point(1, 1)), 5)
    assert DOWN == -UP and RIGHT == -LEFT


@pytest.mark.parametrize("d", [-15.0, -10.0, 10.0, 15.0])
def test_beside_a_line_with_a_shut_dart_there_is_what_a_picture_draws(d: float) -> None:
    """A line that jogs 0.3 mm out and back, where no parallel can follow: within 0.5 mm of shapely's parallel of
    the line without the jog; without one it is the parallel itself."""
    left, right = Cubic(Point(0, 0), Point(20, 6), Point(40, 8), Point(60, 5)), Line(Point(60, 5), Point(120, 0))
    jog = (Line(Point(60, 5), Point(60.02, 5.3)), Line(Point(60.02, 5.3), Point(60, 5)))
    smooth, jogged = Path.of(left, right), Path.of(left, *jog, right)
    with pytest.raises(KitError):
        parallel(jogged, d)
    made, wanted = (
        LineString(flat(beside(jogged, d))),
        LineString(flat(smooth)).parallel_offset(abs(d), "left" if d > 0 else "right"),
    )
    assert made.hausdorff_distance(wanted) < 0.5
    assert beside(smooth, d) == parallel(smooth, d)
