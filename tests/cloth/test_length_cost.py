"""Packing on a strip of cloth: short, and what is tied to the fold lies on it."""

from __future__ import annotations

from itertools import permutations

import pytest
import shapely

from kit.cloth.length_cost import FINE, MARGIN, ClothWay, pack_on_cloth, shortest
from kit.cloth.need import GAP
from tests.stopped import stopped_at


def steps() -> list[list[ClothWay]]:
    return [[ClothWay.of(shapely.box(0, 0, 70.0 + 37 * at, 400.0 - 31 * at), GAP)] for at in range(8)]


def test_a_shape_lies_in_the_hollow_of_another() -> None:
    hollow = shapely.Polygon([(0, 0), (400, 0), (400, 300), (300, 300), (300, 60), (100, 60), (100, 300), (0, 300)])
    block = shapely.box(0, 0, 150, 200)
    shapes = [[ClothWay.of(hollow, GAP)], [ClothWay.of(block, GAP)]]
    found = pack_on_cloth(shapes, (0, 1), 400.0 + GAP + 8 * MARGIN)
    assert found is not None and found.rows == pytest.approx(300 + GAP, abs=1.5)
    assert pack_on_cloth(shapes, (0, 1), 390.0) is None
    assert pack_on_cloth(shapes, (0, 1), 420.0, at_most=250) is None


def test_more_tries_are_never_worse() -> None:
    shapes, areas = steps(), [1.0] * 8
    lengths = [shortest(shapes, areas, 620.0, tries).rows for tries in (1, 5, 40)]  # type: ignore[union-attr]
    assert lengths == sorted(lengths, reverse=True) and lengths[-1] < lengths[0]
    hinted = shortest(shapes, areas, 620.0, 1, hints=[shortest(shapes, areas, 620.0, 40).order])  # type: ignore[union-attr]
    assert hinted is not None and hinted.rows <= lengths[-1]


def test_as_short_as_the_best_order_when_few_are_tried_all() -> None:
    shapes, areas = steps()[:4], [1.0] * 4
    best = min(found.rows for order in permutations(range(4)) if (found := pack_on_cloth(shapes, order, 300.0)))
    found = shortest(shapes, areas, 300.0, 200)
    assert found is not None and found.rows == best


def test_tied_to_the_fold_and_kept_off_it() -> None:
    box = shapely.box(0, 0, 100, 100)
    tied, loose = ClothWay.of(box, GAP, tied=True), ClothWay.of(box, GAP, off=GAP)
    found = pack_on_cloth([[loose], [tied], [tied]], (0, 1, 2), 600.0)
    assert found is not None
    assert [column for _, _, column in found.places] == [2, 0, 0]
    rows = sorted(row for _, row, _ in found.places[1:])
    assert rows[1] - rows[0] >= 100 + GAP, "two on the fold lie one after the other, however wide the cloth"
    assert pack_on_cloth([[tied]], (0,), 105.0) is None


def test_an_order_may_hold_a_shape_to_a_way_and_to_the_right() -> None:
    lying, standing = (ClothWay.of(shapely.box(0, 0, *size), GAP) for size in ((300, 100), (100, 300)))
    across = 400.0 + GAP + 8 * MARGIN
    # (number in the order: of one shape with two ways the choices count on from 0) -> its way, and whether it lies left
    for number, (way, left) in enumerate(((1, True), (1, False), (0, True), (0, False), (1, True), (1, False))):
        found = pack_on_cloth([[standing, lying]], (number,), across)
        assert found is not None and found.order == (number,)
        ((taken, row, column),) = found.places
        assert (taken, row, column == 0) == (way, 0, left)
        end = column * 8.0 + (lying, standing)[way == 0].width
        assert end <= across and (left or end > across - 2 * 8.0)


def test_an_order_found_is_laid_again_as_it_was() -> None:
    shapes = [
        [ClothWay.of(shapely.box(0, 0, *size), GAP) for size in ((60 + 41 * at, 300), (300, 60 + 41 * at))]
        for at in range(6)
    ]
    for seed in range(1, 6):
        found = shortest(shapes, [1.0] * 6, 620.0, 60, seed=seed)
        assert found is not None and sorted(number % 6 for number in found.order) == list(range(6))
        again = pack_on_cloth(shapes, found.order, 620.0)
        assert again is not None and (again.places, again.rows) == (found.places, found.rows)


def test_the_way_that_ends_sooner_is_taken() -> None:
    lying, standing = (ClothWay.of(shapely.box(0, 0, *size), GAP) for size in ((300, 100), (100, 300)))
    for ways, expected in (([standing, lying], 1), ([lying, standing], 0)):
        found = pack_on_cloth([ways], (0,), 400.0)
        assert found is not None and found.places[0][0] == expected
        narrow = pack_on_cloth([ways], (0,), 150.0)
        assert narrow is not None and narrow.places[0][0] == 1 - expected


def test_what_is_just_too_wide_for_wide_columns_goes_side_by_side_on_narrow_ones() -> None:
    # Grown by half a gap it is 113.3 mm wide, 15 columns of 8 mm or 29 of 4 mm; the second begins where those end.
    box = shapely.box(0, 0, 103, 200)
    across = 116 + 103 + GAP + 3 * MARGIN
    rows = []
    for column in (8.0, FINE):
        found = pack_on_cloth([[ClothWay.of(box, GAP, column)]] * 2, (0, 1), across)
        assert found is not None
        rows.append(found.rows)
    assert rows == [2 * 210, 211]


def test_nothing_to_lay_takes_nothing() -> None:
    found = shortest([], [], 600.0, 10)
    assert found is not None and found.rows == 0 and found.places == ()


def test_each_try_may_be_the_last() -> None:
    with stopped_at(7):
        shortest(steps(), [1.0] * 8, 620.0, 40)
