"""A layout made shorter by moving apart what lies over one another: sound, never longer, and as short as is known."""

from __future__ import annotations

from itertools import pairwise

import pytest
import shapely
from shapely import affinity

from kit.cloth.closer import closer, on_fine_columns
from kit.cloth.held import held_at, places_in
from kit.cloth.length_cost import COLUMN, FINE, ROW, ClothWay, pack_on_cloth, shortest
from kit.cloth.need import GAP
from kit.pack.orders import chance
from kit.pack.packing import Packed

WIDE, LONG = 900.0, 1100.0


def jigsaw() -> list[shapely.Polygon]:
    """A rectangle of `WIDE` x `LONG` cut by slanting lines, and a gap taken off along every cut: laid as they were cut
    they take `LONG`, and never less than their area asks."""
    rows = [[(0, 0), (900, 0)], [(0, 380), (900, 300)], [(0, 640), (900, 820)], [(0, 1100), (900, 1100)]]
    across = [(300, 420), (560, 300), (380, 650)]
    pieces = []
    for (low, high), (one, two) in zip(pairwise(rows), across, strict=True):
        band = shapely.Polygon([*low, *high[::-1]])
        for side in (
            shapely.Polygon([(-1, -1), (one, -1), (two, 1200), (-1, 1200)]),
            shapely.Polygon([(one, -1), (901, -1), (901, 1200), (two, 1200)]),
        ):
            part = shapely.intersection(band, side)
            pieces.append(part.buffer(-GAP / 2 - 0.5, join_style="mitre"))
    return pieces


def ways_of(shapes: list[shapely.Polygon], column: float) -> list[list[ClothWay]]:
    """Each as it is and turned round."""
    turned = [affinity.rotate(shape, 180, origin=(0, 0)) for shape in shapes]
    return [
        [ClothWay.of(one, GAP, column), ClothWay.of(two, GAP, column)] for one, two in zip(shapes, turned, strict=True)
    ]


def laid(shapes: list[shapely.Polygon], found: Packed) -> list[shapely.Polygon]:
    """Where the shapes lie, as shapely polygons."""
    out = []
    for shape, (way, row, column) in zip(shapes, found.places, strict=True):
        one = affinity.rotate(shape, 180, origin=(0, 0)) if way else shape
        print_ = ClothWay.of(one, GAP, FINE).footprint
        out.append(affinity.translate(one, column * FINE - print_.left, row * ROW - print_.low))
    return out


def begun(shapes: list[shapely.Polygon], across: float, tries: int = 20) -> Packed:
    found = shortest(ways_of(shapes, COLUMN), [shape.area for shape in shapes], across, tries)
    assert found is not None
    return on_fine_columns(found)


def test_a_jigsaw_comes_near_the_length_it_was_cut_from() -> None:
    shapes, across = jigsaw(), WIDE + GAP
    finer = ways_of(shapes, FINE)
    first = begun(shapes, across)
    lengths = []
    for seed in range(1, 5):
        found = closer(finer, first, across, 600, 0, chance(seed))
        lengths.append(found.rows)
        assert found.rows <= first.rows
        lying = laid(shapes, found)
        assert min(one.distance(two) for at, one in enumerate(lying) for two in lying[:at]) > GAP - 0.3
        assert min(each.bounds[0] for each in lying) > -0.2 and max(each.bounds[2] for each in lying) < across
        assert max(each.bounds[3] for each in lying) == pytest.approx(found.rows - GAP / 2, abs=1.5)
    assert min(lengths) < 1.05 * (LONG + GAP)
    assert min(lengths) < 0.95 * first.rows  # orders alone leave more
    assert min(lengths) > sum(shape.area for shape in shapes) / WIDE


def test_its_order_lays_the_same_again() -> None:
    shapes, across = jigsaw(), WIDE + GAP
    finer = ways_of(shapes, FINE)
    found = closer(finer, begun(shapes, across), across, 300, 0, chance(2))
    again = pack_on_cloth(finer, found.order, across)
    assert again is not None and (again.places, again.rows) == (found.places, found.rows)
    assert closer(finer, begun(shapes, across), across, 300, 0, chance(2)) == found
    # On other columns and on narrower cloth the order says where to lie about, and all are laid.
    for width in (across, across - 60.0, across + 200.0):
        other = pack_on_cloth(ways_of(shapes, COLUMN), found.order, width)
        assert other is not None and len(other.places) == len(shapes)


def test_without_moves_or_where_it_is_short_enough_all_stays() -> None:
    shapes, across = jigsaw(), WIDE + GAP
    first = begun(shapes, across)
    assert closer(ways_of(shapes, FINE), first, across, 0, 0, chance(1)) is first
    assert closer(ways_of(shapes, FINE), first, across, 500, first.rows, chance(1)) is first


def test_what_is_tied_to_the_fold_stays_there_and_the_rest_off_it() -> None:
    halves = [shapely.Polygon([(0, 0), (90 + 40 * at, 0), (60, 200 + 20 * at), (0, 200 + 20 * at)]) for at in range(3)]
    loose = [shapely.Polygon([(0, 0), (170, 0), (30, 360)]) for _ in range(6)]
    shapes, across = [*halves, *loose], 420.0

    def ways(column: float) -> list[list[ClothWay]]:
        return [[ClothWay.of(shape, GAP, column, tied=at < 3, off=GAP)] for at, shape in enumerate(shapes)]

    first = pack_on_cloth(ways(COLUMN), range(9), across)
    assert first is not None
    found = closer(ways(FINE), on_fine_columns(first), across, 800, 0, chance(3))
    assert found.rows < first.rows
    assert all(column == 0 for _, _, column in found.places[:3])
    assert all(column * FINE >= GAP for _, _, column in found.places[3:])


def test_a_choice_says_way_and_place() -> None:
    lying, standing = (ClothWay.of(shapely.box(0, 0, *size), GAP) for size in ((300, 100), (100, 300)))
    for way in (0, 1):
        for column in (0, 5, 12):
            order = (held_at((way, 160, column), 2),)
            found = pack_on_cloth([[standing, lying]], order, 700.0)
            assert found is not None
            ((taken, _, at),) = found.places
            assert taken == way and abs(at * COLUMN - column * FINE) <= COLUMN / 2
            assert places_in(order, (2,)) == {0: (way, 160, column)}
    # Farther than it goes, it lies where it still goes.
    found = pack_on_cloth([[standing, lying]], (held_at((1, 0, 400), 2),), 700.0)
    assert found is not None and found.places[0][2] * COLUMN + lying.width <= 700.0
    assert places_in((5, 3, 2, 10), (1, 1, 1, 1)) == {}  # held to ways and sides alone


def test_begun_where_another_size_lay_it_is_soon_as_short() -> None:
    """The layout of a size laid over pieces 4 % smaller: a few moves do what took hundreds."""
    shapes, across = jigsaw(), WIDE + GAP
    found = min(
        (closer(ways_of(shapes, FINE), begun(shapes, across), across, 600, 0, chance(seed)) for seed in (1, 2, 3, 4)),
        key=lambda each: each.rows,
    )
    smaller = [affinity.scale(shape, 0.96, 0.96, origin=(0, 0)) for shape in shapes]
    begins = [places_in(found.order, [2] * len(shapes))]
    first = begun(smaller, across)
    told = closer(ways_of(smaller, FINE), first, across, 60, 0, chance(1), begins)
    alone = closer(ways_of(smaller, FINE), first, across, 60, 0, chance(1))
    assert told.rows < found.rows and told.rows < alone.rows
