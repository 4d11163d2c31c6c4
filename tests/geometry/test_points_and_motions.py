"""Points, directions and rigid motions, checked against complex arithmetic and shapely's affine transforms."""

from __future__ import annotations

import cmath
import math
import pickle

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from shapely import Point as Spot
from shapely import affinity

from kit.errors import KitError
from kit.geometry import DOWN, LEFT, RIGHT, UP, Arc, Cubic, Line, Motion, Path, Point, Vector
from kit.units import cm, inch

where = st.floats(-2000, 2000)
points = st.builds(Point, where, where)
angles = st.floats(-math.pi, math.pi)
motions = st.builds(
    Motion.then,
    st.builds(Motion.rotation, angles, points),
    st.one_of(
        st.builds(Motion.translation, st.builds(Vector, where, where)),
        st.builds(lambda p, a: Motion.reflection(p, p + Vector.at_angle(a, 100)), points, angles),
    ),
)
quick = settings(max_examples=60, deadline=None)


def test_lengths_become_plain_millimetres() -> None:
    p = Point(2 * cm, 1 * inch)
    assert (p.x, p.y) == (20.0, 25.4)  # the inch is 25.4 mm (international yard and pound agreement, 1959)
    assert type(p.x) is float and type((RIGHT * (3 * cm)).x) is float
    assert p + UP * (1 * cm) == Point(20, 35.4)
    assert (1 * cm) * LEFT == Vector(-10, 0)
    assert p.toward(Point(120, 25.4), 5 * cm) == Point(70, 25.4)


def test_directions() -> None:
    assert (UP.left(), LEFT.left(), UP.right(), -UP) == (LEFT, DOWN, RIGHT, DOWN)
    assert Vector(3, 4).length == 5 and Vector(3, 4).unit() == Vector(0.6, 0.8)
    assert UP.angle == pytest.approx(math.pi / 2)
    assert RIGHT.turn_to(UP) == pytest.approx(math.pi / 2) and RIGHT.turn_to(DOWN) == pytest.approx(-math.pi / 2)
    assert Point(0, 0).mid(Point(4, 2)) == Point(2, 1) and Point(0, 0).lerp(Point(4, 2), 0.25) == Point(1, 0.5)
    assert Point(5, 1) - Point(2, 5) == Vector(3, -4) and Point(5, 1) - Vector(1, 1) == Point(4, 0)


@quick
@given(where, where, angles)
def test_turning_a_vector_is_complex_multiplication(x: float, y: float, angle: float) -> None:
    turned = complex(x, y) * cmath.exp(1j * angle)  # Python's cmath as the reference
    got = Vector(x, y).rotated(angle)
    assert complex(got.x, got.y) == pytest.approx(turned, abs=1e-9)


@quick
@given(points, angles, points)
def test_rotation_against_shapely(p: Point, angle: float, about: Point) -> None:
    want = affinity.rotate(Spot(p.x, p.y), angle, origin=(about.x, about.y), use_radians=True)
    assert Motion.rotation(angle, about)(p).close_to(Point(want.x, want.y), 1e-8)


@quick
@given(motions, motions, points)
def test_motions_chain_and_undo(first: Motion, second: Motion, p: Point) -> None:
    assert first.then(second)(p).close_to(second(first(p)), 1e-7)
    assert first.inverse()(first(p)).close_to(p, 1e-7)
    assert first.then(second).flips == (first.flips != second.flips)


@quick
@given(motions, points, points)
def test_motions_keep_distances(motion: Motion, p: Point, q: Point) -> None:
    assert motion(p).distance(motion(q)) == pytest.approx(p.distance(q), abs=1e-7)


@quick
@given(points, angles, points)
def test_reflection_keeps_the_line_and_flips_back(p: Point, angle: float, other: Point) -> None:
    q = p + Vector.at_angle(angle, 100)
    mirror = Motion.reflection(p, q)
    assert mirror.flips and mirror(p).close_to(p, 1e-7) and mirror(q).close_to(q, 1e-7)
    assert mirror(mirror(other)).close_to(other, 1e-7)
    assert mirror(other).close_to(other.mirrored(Line(p, q)), 1e-7)
    assert abs((mirror(other) - other).dot(q - p)) < 1e-4


def test_the_centre_line_mirrors_exactly() -> None:
    centre = Line(Point(0, 0), Point(0, 400))
    assert Point(123.456, 78.9).mirrored(centre) == Point(-123.456, 78.9)
    assert Motion.reflection(centre.start, centre.end)(Point(123.456, 78.9)) == Point(-123.456, 78.9)


@quick
@given(points, points, angles, st.booleans())
def test_matching_lays_one_line_on_another(a: Point, to: Point, angle: float, flip: bool) -> None:
    src_b, dst_b = a + Vector.at_angle(angle, 80), to + Vector.at_angle(2 * angle, 33)
    motion = Motion.matching(a, src_b, to, dst_b, flip)
    assert motion(a).close_to(to, 1e-7) and motion.flips == flip
    assert motion(src_b).close_to(to.toward(dst_b, 80), 1e-7)
    side = (motion(a + Vector.at_angle(angle, 80).left()) - to).cross(dst_b - to)
    assert (side > 0) == flip  # what lay on the left lies on the right once the paper is turned over


@pytest.mark.parametrize(
    "curve",
    [
        Line(Point(1, 2), Point(30, -4)),
        Arc(Point(5, 5), 40, 0.3, -2.0),
        Cubic(Point(0, 0), Point(40, 90), Point(90, -60), Point(150, 10)),
        Path.of(Line(Point(-20, 0), Point(0, 0)), Cubic(Point(0, 0), Point(40, 90), Point(90, -60), Point(150, 10))),
    ],
)
@pytest.mark.parametrize("flip", [False, True])
def test_curves_move_point_by_point(curve: Path, flip: bool) -> None:
    motion = Motion.matching(Point(3, 4), Point(10, 9), Point(-7, 2), Point(-9, 30), flip)
    moved = curve.moved(motion)
    assert moved.length == pytest.approx(curve.length, abs=1e-6)
    for share in (0.0, 0.2, 0.5, 0.77, 1.0):
        assert moved.at(moved.length * share).close_to(motion(curve.at(curve.length * share)), 1e-5)


def test_values_hash_and_pickle() -> None:
    cubic = Cubic(Point(0, 0), Point(40, 90), Point(90, -60), Point(150, 10))
    path = Path.of(cubic, Arc(Point(150, 40), 30, -math.pi / 2, 1.0))
    assert path.length > 0  # fills the kept lengths, which must not tell equal values apart
    fresh = Path.of(
        Cubic(Point(0, 0), Point(40, 90), Point(90, -60), Point(150, 10)),
        Arc(Point(150, 40), 30, -math.pi / 2, 1.0),
    )
    for value in (Point(1, 2), UP, Motion.rotation(0.3, Point(1, 1)), path):
        again = pickle.loads(pickle.dumps(value))
        assert again == value and hash(again) == hash(value)
    assert fresh == path and hash(fresh) == hash(path)


@pytest.mark.parametrize(
    ("make", "says"),
    [
        (lambda: Point(math.nan, 0), "no place|does not come out as a place on the paper"),
        (lambda: Point(0, math.inf), "no place|does not come out as a place on the paper"),
        (lambda: Vector(0, 0).unit(), "same place"),
        (lambda: Point(1, 1).toward(Point(1, 1), 5), "same place"),
        (lambda: Motion.reflection(Point(1, 1), Point(1, 1)), "same place"),
        (lambda: Motion.matching(Point(1, 1), Point(1, 1), Point(0, 0), Point(1, 0)), "same place"),
    ],
)
def test_refusals(make, says: str) -> None:  # type: ignore[no-untyped-def]
    with pytest.raises(KitError, match=says) as caught:
        make()
    assert caught.value.do
