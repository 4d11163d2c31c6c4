"""Flat areas, held to shapely (GEOS) on shapes drawn at random and on the pieces of the example lessons."""

from __future__ import annotations

import math
from pathlib import Path
from random import Random

import pytest
from shapely import LineString, MultiPolygon, Polygon, make_valid, unary_union
from shapely import Point as Spot

from kit import open_lesson
from kit.geometry import Point, Region, Vector, inside_length
from kit.geometry.region import _chained
from tests.example import GARMENTS

ROOT = Path(__file__).parents[2]
SQUARE = Region.of([Point(0, 0), Point(100, 0), Point(100, 100), Point(0, 100)])


def star(random: Random, x: float = 0.0, y: float = 0.0, corners: int = 14) -> list[Point]:
    """A simple closed line with corners in and out, about (x, y)."""
    angles = sorted(random.uniform(0, math.tau) for _ in range(corners))
    reach = [random.uniform(40, 160) for _ in angles]
    return [Point(x + r * math.cos(a), y + r * math.sin(a)) for a, r in zip(angles, reach, strict=True)]


def cloth(points: list[Point]) -> Polygon:
    return Polygon([(p.x, p.y) for p in points])


def as_shapely(region: Region) -> MultiPolygon:
    """What an odd number of its rings run round."""
    found = MultiPolygon()
    for ring in region.rings:
        found = found.symmetric_difference(make_valid(Polygon(ring)))
    return found


SEEDS = [pytest.param(seed, id=str(seed)) for seed in range(40)]


@pytest.mark.parametrize("seed", SEEDS)
def test_places(seed: int) -> None:
    random = Random(seed)
    points = star(random)
    region, polygon = Region.of(points[::-1]), cloth(points)
    assert region.area == pytest.approx(polygon.area) and region.bounds == pytest.approx(polygon.bounds)
    for _ in range(50):
        p = Point(random.uniform(-200, 200), random.uniform(-200, 200))
        assert region.contains(p) == polygon.contains(Spot(p.x, p.y))
        assert region.distance(p) == pytest.approx(polygon.distance(Spot(p.x, p.y)), abs=1e-9)


@pytest.mark.parametrize("seed", SEEDS)
def test_lines_inside(seed: int) -> None:
    random = Random(seed)
    one, two = star(random), star(random, 60, 20)
    line = [Point(random.uniform(-200, 200), random.uniform(-200, 200)) for _ in range(5)]
    across = LineString([(p.x, p.y) for p in line])
    inside = cloth(one).difference(cloth(two))
    assert inside_length(line, Region.of(one), [Region.of(two)]) == pytest.approx(across.intersection(inside).length)
    a, b = line[:2]
    found = sum(low.distance(high) for low, high in Region.of(one).stretches(a, b))
    straight = LineString([(a.x, a.y), (b.x, b.y)])
    assert found == pytest.approx(straight.intersection(cloth(one)).length)


@pytest.mark.parametrize("seed", SEEDS)
def test_parted_is_the_difference_from_what_is_widened(seed: int) -> None:
    random = Random(seed)
    one, two = star(random), star(random, 40, 10)
    kept, off = Region.of(one).parted(Region.of(two), 0.5)
    wide = cloth(two).buffer(0.5, quad_segs=16)
    assert as_shapely(off).symmetric_difference(cloth(one).difference(wide)).area < 0.05
    assert as_shapely(kept).symmetric_difference(cloth(one).intersection(wide)).area < 0.05
    assert kept.area + off.area == pytest.approx(Region.of(one).area, abs=0.01)


def test_parted_from_what_shares_its_sides() -> None:
    """As cloth and the piece drafted anew on it do: no slivers are left beside the lines they share."""
    narrow = Region.of([Point(0, 0), Point(80, 0), Point(80, 100), Point(0, 100)])
    kept, off = SQUARE.parted(narrow, 0.5)
    assert len(off.rings) == len(kept.rings) == 1
    assert off.area == pytest.approx(19.5 * 100) and kept.area == pytest.approx(80.5 * 100)
    assert SQUARE.parted(SQUARE, 0.5)[1].is_empty
    hole = Region.of([Point(20, 20), Point(80, 20), Point(80, 80), Point(20, 80)])
    assert as_shapely(SQUARE.parted(hole, 0.5)[1]).area == pytest.approx(10000 - 61 * 61, abs=0.3)


@pytest.mark.parametrize("seed", SEEDS)
def test_split_by_a_line(seed: int) -> None:
    random = Random(seed)
    points = star(random)
    a, b = (Point(random.uniform(-60, 60), random.uniform(-60, 60)) for _ in range(2))
    left, right = Region.of(points).split(a, b)
    far = (b - a).unit() * 5000.0
    side = Vector(-far.y, far.x)
    half = Polygon([(p.x, p.y) for p in (a - far, a + far, a + far + side, a - far + side)])
    assert as_shapely(left).symmetric_difference(cloth(points).intersection(half)).area < 1e-6
    assert as_shapely(right).symmetric_difference(cloth(points).difference(half)).area < 1e-6


@pytest.mark.parametrize("seed", SEEDS)
def test_how_far_it_reaches(seed: int) -> None:
    random = Random(seed)
    points = star(random)
    region, polygon = Region.of(points), cloth(points)
    for _ in range(30):
        p, angle = Point(random.uniform(-99, 99), random.uniform(-99, 99)), random.uniform(0, math.tau)
        way = Vector(math.cos(angle), math.sin(angle))
        spot, far = Spot(p.x, p.y), p + way * 900
        if polygon.contains(spot):
            met = LineString([(p.x, p.y), (far.x, far.y)]).intersection(polygon.exterior)
            assert region.beyond(p, way) == pytest.approx(met.distance(spot), abs=1e-6)
        elif polygon.distance(spot) > 0.05:
            assert region.beyond(p, way) == pytest.approx(-polygon.distance(spot))


def test_a_place_on_the_edge_reaches_no_further() -> None:
    assert SQUARE.beyond(Point(100, 50), Vector(1, 0)) == 0
    assert SQUARE.beyond(Point(100.03, 50), Vector(1, 0)) == 0
    assert SQUARE.beyond(Point(100.3, 50), Vector(1, 0)) == pytest.approx(-0.3)
    assert SQUARE.beyond(Point(0, 50), Vector(1, 0)) == pytest.approx(100)
    assert SQUARE.beyond(Point(0, 50), Vector(-1, 0)) == 0


@pytest.mark.parametrize("seed", SEEDS)
def test_the_roomiest_place(seed: int) -> None:
    """As far off the edge as GEOS finds, but for the tolerance."""
    from shapely.ops import polylabel

    points = star(Random(seed))
    found, polygon = Region.of(points).roomiest(1.0), cloth(points)
    most = polygon.exterior.distance(polylabel(polygon, 0.01))
    assert polygon.contains(Spot(found.x, found.y))
    assert polygon.exterior.distance(Spot(found.x, found.y)) > most - 1.0


def test_the_roomiest_place_of_every_piece() -> None:
    from shapely.ops import polylabel

    for name in GARMENTS:
        for piece in open_lesson(ROOT / "example_notebooks" / f"{name}.ipynb").work().pieces:
            x0, y0, x1, y1 = piece.outline.bounds()
            size = max(x1 - x0, y1 - y0)
            polygon, spot = piece.outline.polygon(size / 500), piece.outline.label_point()
            most = polygon.exterior.distance(polylabel(polygon, 0.01))
            assert polygon.exterior.distance(Spot(spot.x, spot.y)) > most - size / 100, (name, piece.name)


def test_a_long_strip_is_lettered_in_its_middle() -> None:
    strip = Region.of([Point(0, 0), Point(765, 0), Point(765, 70), Point(0, 70)])
    assert strip.roomiest(7.65) == Point(382.5, 35)


def test_nothing() -> None:
    nothing = Region.of([Point(0, 0), Point(5, 5)])
    assert nothing.is_empty and nothing.area == 0 and not nothing.contains(Point(0, 0))
    assert SQUARE.parted(nothing, 0.5) == (nothing, SQUARE)
    assert unary_union([as_shapely(nothing)]).is_empty


@pytest.mark.parametrize(("begins", "ends"), [(4e-6, 4e-6), (4e-6, 6e-6), (6e-6, 4e-6), (4e-6, -6e-6)])
def test_a_ring_closes_where_its_ends_are_rounded_apart(begins: float, ends: float) -> None:
    """The ends of sides are computed twice and may differ in their last digits, across the border of two hundred-
    thousandths of a mm as well as within one."""
    sides = [(begins, 0.0, 100.0, 0.0), (100.0, 0.0, 100.0, 100.0), (100.0, 100.0, 0.0, 100.0), (0.0, 100.0, ends, 0.0)]
    (ring,) = _chained(sides)
    assert len(ring) == 4 and Region((ring,)).area == pytest.approx(10000.0)
    assert _chained(sides[:-1]) == ()
