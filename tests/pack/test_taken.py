"""Free places, in both ways of asking, against looking cell by cell."""

from __future__ import annotations

import numpy as np
import shapely
from hypothesis import given, settings
from hypothesis import strategies as st

from kit.pack.footprint import Footprint
from kit.pack.taken import Taken

COLUMNS = 14


def block(cells: list[tuple[int, int]]) -> Footprint:
    """The footprint of so many unit cells (column, row), which need not hang together."""
    area = shapely.union_all([shapely.box(x, y, x + 1, y + 1) for x, y in cells])
    return Footprint.of(area, (1.0, 1.0))


def plain(shape: Footprint) -> np.ndarray:
    marked = np.zeros((shape.rows, shape.columns), dtype=bool)
    for column, start, length in shape.runs:
        marked[start : start + length, column] = True
    return marked


BLOCKS = st.lists(st.tuples(st.integers(0, 5), st.integers(0, 20)), min_size=1, max_size=12).map(block)
LAID = st.lists(st.tuples(BLOCKS, st.integers(0, 25), st.integers(0, COLUMNS - 6)), max_size=6)


@given(LAID, BLOCKS, st.integers(1, 40))
@settings(max_examples=150)
def test_both_ways_agree_with_every_cell(laid: list[tuple[Footprint, int, int]], shape: Footprint, rows: int) -> None:
    taken, grid = Taken(COLUMNS), np.zeros((120, COLUMNS), dtype=bool)
    for each, row, column in laid:
        taken.put(each, row, column)
        grid[row : row + each.rows, column : column + each.columns] |= plain(each)
    assert taken.depth == max((row + each.rows for each, row, _ in laid), default=0)
    across = COLUMNS - shape.columns + 1
    mine = plain(shape)
    expected = np.array(
        [[(grid[r : r + shape.rows, c : c + shape.columns] & mine).any() for c in range(across)] for r in range(rows)]
    )
    struck = taken.struck(shape, rows)
    assert struck.shape == (rows, across) and struck.dtype == bool
    assert np.array_equal(struck, expected)
    free = np.argwhere(~expected).tolist()
    assert taken.soonest(shape, range(across), rows) == (tuple(free[0]) if free else None)
    # A second shape after the first look: nothing of what was worked out before may be left over.
    taken.put(shape, 3, 0)
    grid[3 : 3 + shape.rows, : shape.columns] |= mine
    again = [[(grid[r : r + shape.rows, c : c + shape.columns] & mine).any() for c in range(across)] for r in range(9)]
    assert np.array_equal(taken.struck(shape, 9), np.array(again))


def test_of_equally_near_places_the_column_named_first() -> None:
    taken, shape = Taken(COLUMNS), block([(0, 0)])
    assert taken.soonest(shape, (7, 3), 5) == (0, 7)
    taken.put(shape, 0, 7)
    assert taken.soonest(shape, (7, 3), 5) == (0, 3)
    assert taken.soonest(shape, (7,), 5) == (1, 7)
    assert taken.soonest(shape, (7,), 1) is None
    assert taken.soonest(shape, (), 5) is None and taken.soonest(shape, (1,), 0) is None
