"""Which cells a shape takes, against shapely, cell by cell."""

from __future__ import annotations

import numpy as np
import pytest
import shapely
from hypothesis import given, settings
from hypothesis import strategies as st
from shapely import affinity

from kit.pack.footprint import Footprint, touched

CELL = (8.0, 3.0)
POINTS = st.lists(st.tuples(st.integers(0, 60), st.integers(0, 60)), min_size=3, max_size=9)


def cells(found: Footprint) -> np.ndarray:
    marked = np.zeros((found.rows, found.columns), dtype=bool)
    for column, start, length in found.runs:
        assert not marked[start : start + length, column].any(), "no cell is in two runs"
        marked[start : start + length, column] = True
    return marked


def agrees(shape: shapely.Geometry, found: Footprint) -> None:
    """A cell that the shape covers some of is taken, one that is farther off than rounding is not."""
    marked = cells(found)
    for row in range(found.rows):
        for column in range(found.columns):
            x, y = found.left + column * CELL[0], found.low + row * CELL[1]
            cell = shapely.box(x, y, x + CELL[0], y + CELL[1])
            if marked[row, column]:
                assert shape.distance(cell) < 1e-4
            else:
                assert shape.intersection(cell).area < 1e-4


@given(POINTS, st.floats(0, 6.3))
@settings(max_examples=60)
def test_a_cell_is_taken_where_the_shape_reaches_into_it(points: list[tuple[int, int]], angle: float) -> None:
    # Whole numbers first, whose sides lie on borders of cells; then the same turned.
    ring = shapely.MultiPoint(points).buffer(0.4).convex_hull if len(set(points)) < 3 else shapely.Polygon(points)
    shape = shapely.make_valid(ring).buffer(0)
    if shape.area < 1:
        return
    for each in (shape, affinity.rotate(shape, angle, use_radians=True)):
        agrees(each, Footprint.of(each, CELL))


def test_holes_and_parts() -> None:
    ring = shapely.box(0, 0, 80, 60).difference(shapely.box(16, 9, 64, 51))
    apart = shapely.union(ring, shapely.box(24, 18, 40, 30))
    for shape in (ring, apart):
        found = Footprint.of(shape, CELL)
        agrees(shape, found)
    assert not cells(Footprint.of(ring, CELL))[3:17, 2:8].any()
    assert int(cells(Footprint.of(apart, CELL))[3:17, 2:8].sum()) == 2 * 4


def test_two_stretches_of_one_column_the_lower_farther_to_the_right() -> None:
    # A hook whose barb comes back over the column: a slip here once left the barb out of the cells taken.
    hook = shapely.Polygon([(0, 60), (0, 30), (12, 30), (12, 9), (5, 9), (5, 3), (20, 3), (20, 60)])
    found = Footprint.of(hook, CELL, (0, 0, 20, 60))
    agrees(hook, found)
    assert [run for run in found.runs if run[0] == 0] == [(0, 1, 2), (0, 10, 10)]


def test_sides_on_the_borders_of_cells_take_no_cell_beyond_them() -> None:
    found = Footprint.of(shapely.box(8, 3, 24, 15), CELL, (0, 0, 40, 30))
    assert (found.columns, found.rows) == (5, 10)
    assert found.runs == ((1, 1, 4), (2, 1, 4))


def test_what_reaches_over_the_box_counts_to_its_border() -> None:
    marked = touched(shapely.box(-5, -5, 20, 20), (0.0, 0.0), (10.0, 10.0), (1, 2))
    assert marked.tolist() == [[True, True]]


@given(st.lists(st.tuples(st.integers(0, 9), st.integers(1, 900)), min_size=1, max_size=1))
def test_two_probes_cover_a_run_and_no_more(runs: list[tuple[int, int]]) -> None:
    ((start, length),) = runs
    high = float(start + length)
    found = Footprint.of(shapely.box(0, start, 1, high), (1.0, 1.0), (0, 0, 1, high))
    ((column, level, one, two),) = found.probes
    covered = {row + at for row in (one, two) for at in range(2**level)}
    assert column == 0 and covered == set(range(start, start + length))


def test_the_longest_run_is_probed_first() -> None:
    stairs = shapely.Polygon([(0, 0), (30, 0), (30, 50), (20, 50), (20, 30), (10, 30), (10, 10), (0, 10)])
    found = Footprint.of(stairs, (10.0, 10.0))
    assert [column for column, *_ in found.probes] == [2, 1, 0]


@pytest.mark.parametrize("size", [(0.5, 0.5), (10.0, 10.0)])
def test_the_smallest_footprint_is_one_cell(size: tuple[float, float]) -> None:
    found = Footprint.of(shapely.box(3, 4, 3 + size[0], 4 + size[1]), (10.0, 10.0))
    assert (found.rows, found.columns, found.runs, found.left, found.low) == (1, 1, ((0, 0, 1),), 3, 4)
