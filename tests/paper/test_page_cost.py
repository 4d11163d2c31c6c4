"""Fitting shapes together on the sheet: what touches few pages."""

from __future__ import annotations

import math

import numpy as np
import pytest
import shapely
from hypothesis import given, settings
from hypothesis import strategies as st
from shapely import affinity

from kit.pack.taken import Taken
from kit.paper.page_cost import EDGE, PageCells, PageCost, pack_on_pages, turned_shape

GAP = 10.0
SIDES = st.tuples(st.floats(15, 400), st.floats(15, 400))
QUARTERS = (0.0, math.pi / 2, math.pi, 3 * math.pi / 2)


def placed(shapes, columns, angles=QUARTERS, cells=None, **keys):  # type: ignore[no-untyped-def]
    cells = cells or PageCells.of(5000, 5000, GAP)
    ways = [[turned_shape(shape, each, cells, columns) for each in angles] for shape in shapes]
    found = pack_on_pages(ways, range(len(shapes)), cells, columns, **keys)
    if found is None:
        return None
    return [affinity.affine_transform(shape, pose.matrix) for shape, pose in zip(shapes, found[0], strict=True)]


@given(st.lists(SIDES, min_size=1, max_size=6), st.floats(0, 6), st.integers(0, 3))
@settings(max_examples=40)
def test_shapes_never_touch_and_stay_on_the_sheet(sides: list[tuple[float, float]], angle: float, way_in: int) -> None:
    shapes = [shapely.Polygon([(7, -3), (7 + w, -3), (7 + w * 0.4, -3 + h * 0.3), (7, -3 + h)]) for w, h in sides]
    found = placed(shapes, 84, (0.0, angle), PageCells.of(180, 267, GAP), way_in=way_in)
    assert found is not None
    for place, one in enumerate(found):
        left, _, right, top = one.bounds
        assert left >= EDGE - 1e-6 and right <= 840 - EDGE + 1e-6 and top <= -EDGE + 1e-6
        for other in found[place + 1 :]:
            assert one.distance(other) >= GAP - 1e-6


def test_a_small_piece_lies_in_the_bend_of_a_large_one() -> None:
    corner = shapely.Polygon([(0, 0), (400, 0), (400, 80), (80, 80), (80, 500), (0, 500)])
    small = shapely.box(0, 0, 200, 200)
    found = placed([corner, small], 42)
    assert found is not None
    assert shapely.box(*corner.bounds).area >= shapely.box(*shapely.union_all(found).bounds).area - 1e-6


def test_two_triangles_make_a_square() -> None:
    half = shapely.Polygon([(0, 0), (300, 0), (0, 300)])
    found = placed([half, half], 35)
    assert found is not None
    left, bottom, right, top = shapely.union_all(found).bounds
    assert right - left < 345 and top - bottom < 345  # two boxes would need 610


def test_a_shape_too_wide_is_refused() -> None:
    assert placed([shapely.box(0, 0, 500, 500)], 30) is None
    assert placed([shapely.box(0, 0, 500, 100)], 30) is not None  # turned, it fits


def test_a_small_piece_is_kept_on_one_page() -> None:
    # Beside the large piece there is room across the border of two pages; it goes where it stays whole.
    cells = PageCells.of(180, 267, GAP)
    found = placed([shapely.box(0, 0, 120, 500), shapely.box(0, 0, 90, 90)], 36, (0.0,), cells)
    assert found is not None
    left, bottom, right, top = found[1].bounds
    assert left // 180 == right // 180 and bottom // 267 == top // 267


def test_a_page_already_in_use_is_filled_before_a_new_one() -> None:
    cells = PageCells.of(180, 267, GAP)
    found = placed([shapely.box(0, 0, 150, 150), shapely.box(0, 0, 150, 70)], 72, (0.0,), cells)
    assert found is not None
    assert found[1].bounds[0] < 180 and found[1].bounds[1] > -267


@given(st.lists(SIDES, min_size=1, max_size=5), st.integers(0, 3))
@settings(max_examples=30)
def test_pages_in_use_are_those_the_shapes_touch(sides: list[tuple[float, float]], way_in: int) -> None:
    # Counted anew with shapely. What comes within a millimetre of a border may count to both pages.
    cells = PageCells.of(180, 267, GAP)
    shapes = [shapely.box(0, 0, *size) for size in sides]
    ways = [[turned_shape(shape, angle, cells, 84) for angle in QUARTERS] for shape in shapes]
    found = pack_on_pages(ways, range(len(shapes)), cells, 84, way_in=way_in)
    assert found is not None
    ink = shapely.union_all(
        [affinity.affine_transform(shape, pose.matrix) for shape, pose in zip(shapes, found[0], strict=True)]
    )
    pages = [shapely.box(180 * x, -267 * (y + 1), 180 * (x + 1), -267 * y) for x in range(6) for y in range(12)]
    touched = sum(ink.intersection(page).area > 0 for page in pages)
    near = sum(ink.distance(page) < 2.0 for page in pages)
    assert touched <= found[1] <= near


def test_the_cost_of_every_place_is_that_of_laying_there() -> None:
    # The product of matrices against laying the shape and counting, at each place of a small sheet half in use.
    cells = PageCells.of(60, 80, GAP)
    first, shape = (turned_shape(shapely.box(0, 0, *size), 0.0, cells, 24) for size in ((50, 70), (75, 30)))
    ways = [[first], [shape]]

    def begun() -> tuple[PageCost, Taken]:
        cost, taken = PageCost(ways, cells, 24, 0, math.inf), Taken(24)
        fit = cost.best(first, taken, None)
        assert fit is not None and cost.lay(first, fit) and cost.pages == 1
        taken.put(first.footprint, fit.row, fit.column)
        return cost, taken

    cost, taken = begun()
    best = cost.best(shape, taken, None)
    assert best is not None
    free = ~taken.struck(shape.footprint, taken.depth + cells.rows)
    counts = {}
    for row, column in np.argwhere(free).tolist():
        again, _ = begun()
        again.lay(shape, type(best)(0, row, column))
        counts[row, column] = again.pages
    assert len(counts) > 100 and len(set(counts.values())) > 2
    assert counts[best.row, best.column] == min(counts.values())
    assert cost.best(shape, taken, best) is None, "nothing is better than the best"


@pytest.mark.parametrize("at_most", [1, 2])
def test_gives_up_beyond_so_many_pages(at_most: int) -> None:
    cells = PageCells.of(180, 267, GAP)
    found = placed([shapely.box(0, 0, 150, 200), shapely.box(0, 0, 150, 201)], 54, (0.0,), cells, at_most=at_most)
    assert (found is None) == (at_most == 1)
