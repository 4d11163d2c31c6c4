"""Packing after a cost.

Source of the squared rectangle: Z. Moroń, "O rozkładach prostokątów na kwadraty", Przegląd Matematyczno-Fizyczny 3
(1925): nine squares, no two alike, fill 33 x 32 without a gap; from memory, and checked here by its area.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import shapely
from hypothesis import given, settings
from hypothesis import strategies as st

from kit.pack.footprint import Footprint
from kit.pack.packing import Fit, Packed, pack
from kit.pack.taken import Taken


@dataclass(frozen=True)
class Box:
    footprint: Footprint


def box(wide: int, high: int) -> Box:
    return Box(Footprint.of(shapely.box(0, 0, wide, high), (1.0, 1.0)))


class Soonest:
    """Each shape as near the beginning as it goes, leftmost; gives up after so many."""

    def __init__(self, most: int = 1000) -> None:
        self.laid: list[tuple[Box, Fit]] = []
        self.most = most

    def best(self, way: Box, taken: Taken, than: Fit | None) -> Fit | None:
        columns = range(taken.columns - way.footprint.columns + 1)
        found = taken.soonest(way.footprint, columns, 500 if than is None else than.worth)
        return found and Fit(found[0], *found)

    def lay(self, way: Box, fit: Fit) -> bool:
        self.laid.append((way, fit))
        return len(self.laid) <= self.most


def areas(found: Packed, shapes: Sequence[Sequence[Box]]) -> list[shapely.Geometry]:
    out = []
    for ways, (which, row, column) in zip(shapes, found.places, strict=True):
        own = ways[which].footprint
        out.append(shapely.box(column, row, column + own.columns, row + own.rows))
    return out


def test_nine_squares_fill_a_rectangle() -> None:
    sides = (18, 15, 7, 8, 14, 4, 10, 1, 9)
    assert sum(side * side for side in sides) == 33 * 32
    found = pack([[box(side, side)] for side in sides], range(9), 33, Soonest())
    assert found is not None and found.rows == 32
    assert shapely.union_all(areas(found, [[box(side, side)] for side in sides])).equals(shapely.box(0, 0, 33, 32))


@given(st.lists(st.tuples(st.integers(1, 9), st.integers(1, 9)), min_size=1, max_size=8), st.randoms())
@settings(max_examples=60)
def test_nothing_overlaps_and_everything_lies_where_it_says(sizes: list[tuple[int, int]], random) -> None:  # type: ignore[no-untyped-def]
    shapes = [[box(wide, high), box(high, wide)] for wide, high in sizes]
    order = list(range(len(sizes)))
    random.shuffle(order)
    cost = Soonest()
    found = pack(shapes, order, 12, cost)
    assert found is not None and found.order == tuple(order)
    laid = areas(found, shapes)
    assert shapely.union_all(laid).area == sum(wide * high for wide, high in sizes)
    assert found.rows == max(area.bounds[3] for area in laid) and max(area.bounds[2] for area in laid) <= 12
    # The cost is told of each shape, in the order in which they are laid.
    assert [(fit.row, fit.column) for _, fit in cost.laid] == [found.places[each][1:] for each in order]


def test_the_cheaper_way_and_of_equal_ones_the_first() -> None:
    wide, high = box(6, 2), box(2, 6)
    found = pack([[wide], [high, wide, wide]], (0, 1), 8, Soonest())
    assert found is not None and found.places == ((0, 0, 0), (0, 0, 6))
    found = pack([[wide], [box(3, 6), wide, wide]], (0, 1), 8, Soonest())
    assert found is not None and found.places[1] == (0, 2, 0)


def test_none_without_room_and_when_the_cost_gives_up() -> None:
    assert pack([[box(9, 1)]], (0,), 8, Soonest()) is None
    assert pack([[box(2, 2)]] * 3, (0, 1, 2), 8, Soonest(most=2)) is None
    assert pack([[box(2, 2)]] * 3, (0, 1, 2), 8, Soonest(most=3)) is not None
