"""Shapes that lie over one another are moved apart.

Source of the squared rectangle: Z. Moroń, "O rozkładach prostokątów na kwadraty", Przegląd Matematyczno-Fizyczny 3
(1925): nine squares, no two alike, fill 33 x 32 without a gap; from memory, and checked by its area.
"""

from __future__ import annotations

from random import Random

import numpy as np
import pytest
import shapely

from kit.pack import untangle
from kit.pack.overlaps import SHARES, Overlaps
from kit.pack.untangle import Loose, Place, Untangling
from tests.stopped import stopped_at

MORON = (18, 15, 14, 10, 9, 8, 7, 4, 1)


def field(sizes: list[tuple[int, int]], across: int, seed: int = 1) -> Untangling:
    """Boxes of (columns, rows), each lying in one way, on a ground so wide."""
    overlaps = Overlaps([np.full((rows, columns), SHARES) for columns, rows in sizes])
    loose = [[Loose(at, 0, across - columns, float(rows))] for at, (columns, rows) in enumerate(sizes)]
    return Untangling(overlaps, loose, Random(seed))


def boxes(sizes: list[tuple[int, int]], places: list[Place]) -> list[shapely.Geometry]:
    return [
        shapely.box(column, row, column + columns, row + rows)
        for (columns, rows), (_, row, column) in zip(sizes, places, strict=True)
    ]


def common(sizes: list[tuple[int, int]], places: list[Place]) -> float:
    """The area that two and two have in common, as shapely finds it."""
    shapes = boxes(sizes, places)
    return sum(one.intersection(two).area for at, one in enumerate(shapes) for two in shapes[:at])


def test_nine_squares_find_their_places_in_a_rectangle_they_fill() -> None:
    sizes = [(side, side) for side in MORON]
    assert sum(side * side for side in MORON) == 33 * 32
    found = []
    for seed in range(1, 9):
        places, over, _ = field(sizes, 33, seed).apart([(0, 0, 0)] * 9, 32.0, 3000)
        assert over == pytest.approx(common(sizes, places))
        found.append(over)
    assert min(found) <= 1.0  # no more over one another than the smallest square
    assert max(found) < 200.0


def test_a_ground_that_is_too_small_is_told_by_what_stays_over() -> None:
    sizes = [(3, 4)] * 4
    places, over, used = field(sizes, 6).apart([(0, 0, 0)] * 4, 6.0, 200)
    assert used >= 200
    assert over == pytest.approx(common(sizes, places)) and over >= 4 * 12 - 36


def test_only_growing_weights_free_what_is_wedged(monkeypatch: pytest.MonkeyPatch) -> None:
    sizes = [(side, side) for side in MORON]

    def least(seed: int) -> float:
        return field(sizes, 33, seed).apart([(0, 0, 0)] * 9, 34.0, 1500)[1]

    with_weights = [least(seed) for seed in range(1, 7)]
    monkeypatch.setattr(untangle, "_GROWS", 1.0)
    monkeypatch.setattr(untangle, "_GROWS_MORE", 0.0)
    without = [least(seed) for seed in range(1, 7)]
    assert sum(with_weights) < sum(without) / 2


def test_the_same_places_each_time_and_another_chance_finds_others() -> None:
    sizes = [(side, side) for side in MORON]
    begin: list[Place] = [(0, 0, 0)] * 9
    assert field(sizes, 34, 5).apart(begin, 40.0, 500) == field(sizes, 34, 5).apart(begin, 40.0, 500)
    assert field(sizes, 34, 5).apart(begin, 40.0, 500)[0] != field(sizes, 34, 6).apart(begin, 40.0, 500)[0]


def test_none_leaves_its_columns_or_the_ground() -> None:
    overlaps = Overlaps([np.full((4, 4), SHARES), np.full((3, 2), SHARES)])
    loose = [[Loose(0, 0, 0, 3.5)], [Loose(1, 2, 9, 3.0), Loose(0, 5, 6, 3.5)], [Loose(1, 0, 10, 3.0)]]
    some = Untangling(overlaps, loose, Random(3))
    begin = some.within([(0, 9, 9), (1, 9, 0), (0, -3, 40)], 8.0)
    assert begin == [(0, 4, 0), (1, 4, 5), (0, 0, 10)]
    for moves in (1, 5, 40):
        places, over, _ = some.apart([(0, 0, 0), (0, 0, 2), (0, 0, 0)], 8.0, moves)
        for ways, (way, row, column) in zip(loose, places, strict=True):
            assert ways[way].first <= column <= ways[way].last and 0 <= row <= 8.0 - ways[way].long
    assert over <= 1.0


def test_each_round_may_be_the_last() -> None:
    with stopped_at(3):
        field([(3, 4)] * 4, 6).apart([(0, 0, 0)] * 4, 6.0, 10**6)
