"""Which cells of a ground a shape takes.

A ground is cut into columns, and each column into rows of cells. A cell belongs to a shape's footprint when the shape
reaches into it at all, so that shapes whose footprints share no cell do not overlap. Whoever wants them to lie a gap
apart grows each by half the gap first (shapely's `buffer`).

How the cells are found: every segment of the outline is cut at the rows it runs through, which gives for each row the
columns from its leftmost to its rightmost point there. Those are the cells on the border. For those inside, segments
that cross the middle line of a row are counted from the left: a cell whose middle has an odd number of them before it
lies inside. Both are done for all segments at once, as sums of +1 where something begins and -1 where it ends.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Any

import numpy as np
import numpy.typing as npt
import shapely

_INTO = 1e-6
"""Of a cell: what reaches no farther into it than so does not take it. Rounding is smaller, a shape is larger."""

Cells = npt.NDArray[np.bool_]
"""[row, column]"""


@dataclass(frozen=True, eq=False)
class Footprint:
    """The cells a shape takes, counted from its corner: so many `columns` across and `rows` along.

    `left` and `low` are that corner in the shape's own mm: the cell in row 0 and column 0 begins there. `runs` are
    the cells themselves, as (column, first row, how many). `probes` are what must be looked at to know whether a run
    strikes something: (column, level, one, two) says that the run is covered by two stretches of 2**level rows, which
    begin `one` and `two` rows on from the corner. They overlap where the run is no power of two, which does no harm.
    The longest run comes first, since it is the likeliest to strike.
    """

    left: float
    low: float
    rows: int
    columns: int
    runs: tuple[tuple[int, int, int], ...]
    probes: tuple[tuple[int, int, int, int], ...]

    @classmethod
    def of(
        cls, shape: Any, cell: tuple[float, float], box: tuple[float, float, float, float] | None = None
    ) -> Footprint:
        """The footprint of `shape` (a shapely polygon or several, in mm, y along the ground) on cells of (across,
        along) mm, their corner at the lower left of `box` (xmin, ymin, xmax, ymax; the shape's own bounds when none is
        given). What of the shape reaches over the box counts to the cells at the box's border.

        >>> corner = shapely.Polygon([(0, 0), (30, 0), (30, 10), (10, 10), (10, 40), (0, 40)])
        >>> print_ = Footprint.of(corner, (10.0, 10.0))
        >>> print_.rows, print_.columns, print_.runs
        (4, 3, ((0, 0, 4), (1, 0, 1), (2, 0, 1)))
        """
        left, low, right, high = box or shape.bounds
        columns = max(1, math.ceil((right - left) / cell[0] - _INTO))
        rows = max(1, math.ceil((high - low) / cell[1] - _INTO))
        runs = _runs(touched(shape, (left, low), cell, (rows, columns)))
        longest_first = sorted(runs, key=lambda run: (-run[2], run))
        return cls(left, low, rows, columns, runs, tuple(_probe(*run) for run in longest_first))


def _probe(column: int, start: int, length: int) -> tuple[int, int, int, int]:
    level = length.bit_length() - 1
    return column, level, start, start + length - (1 << level)


def touched(shape: Any, corner: tuple[float, float], cell: tuple[float, float], size: tuple[int, int]) -> Cells:
    """Of `size` (rows, columns) cells from `corner` (x, y in mm) on, those that `shape` reaches into; see above for
    how. `cell` is (across, along) in mm."""
    rows, columns = size
    # One column more than there are: where something ends at the last one, its -1 stands there.
    # Small numbers are quicker; of crossings it only matters whether they are odd, so that one may run over.
    border = np.zeros((rows, columns + 1), dtype=np.int16)
    crossings = np.zeros((rows, columns + 1), dtype=np.uint8)
    for ring in (ring for area in shapely.get_parts(shape) for ring in (area.exterior, *area.interiors)):
        # Each segment from its lower end (x0, y0) to its upper one (x1, y1), in cells.
        points = (shapely.get_coordinates(ring) - corner) / cell
        down = points[:-1, 1] > points[1:, 1]
        x0, y0 = np.where(down[:, None], points[1:], points[:-1]).T
        x1, y1 = np.where(down[:, None], points[:-1], points[1:]).T
        # From here on there is one entry for each segment and row it runs through, `row` counting on for each.
        begin, end = _within(y0 + _INTO, rows), _within(y1 - _INTO, rows)
        counts = end - begin + 1
        which = np.repeat(np.arange(len(counts)), counts)
        row = np.arange(len(which)) - np.repeat(np.cumsum(counts) - counts, counts) + begin[which]
        x0, y0, x1, y1 = x0[which], y0[which], x1[which], y1[which]
        slope = (x1 - x0) / np.maximum(y1 - y0, 1e-12)
        one = x0 + (np.clip(row, y0, y1) - y0) * slope
        other = x0 + (np.clip(row + 1.0, y0, y1) - y0) * slope
        level = y1 - y0 < 1e-9  # has no slope to go by: both ends count
        least = np.where(level, np.minimum(x0, x1), np.minimum(one, other))
        most = np.where(level, np.maximum(x0, x1), np.maximum(one, other))
        np.add.at(border, (row, _within(least + _INTO, columns)), 1)
        np.add.at(border, (row, _within(most - _INTO, columns) + 1), -1)
        middle = row + 0.5
        crossed = (y0 <= middle) & (middle < y1)  # of two segments that meet on the line, one
        at = x0[crossed] + (middle[crossed] - y0[crossed]) * slope[crossed]
        np.add.at(crossings, (row[crossed], np.clip(np.ceil(at - 0.5), 0, columns).astype(int)), 1)
    inside = np.cumsum(crossings, axis=1, dtype=np.uint8) & 1
    return np.asarray((np.cumsum(border, axis=1, dtype=np.int16) > 0) | inside.view(np.bool_))[:, :columns]


def _within(values: Any, count: int) -> Any:
    return np.clip(np.floor(values), 0, count - 1).astype(int)


def _runs(cells: Cells) -> tuple[tuple[int, int, int], ...]:
    """The runs of cells down each column: (column, first row, how many)."""
    edged = np.zeros((cells.shape[1], cells.shape[0] + 2), dtype=np.bool_)
    edged[:, 1:-1] = cells.T
    # Where a cell differs from the one before it a run begins or, every other time, has ended.
    at = np.flatnonzero(edged[:, 1:] != edged[:, :-1])
    column, start = np.divmod(at[::2], edged.shape[1] - 1)
    return tuple(zip(column.tolist(), start.tolist(), (at[1::2] - at[::2]).tolist(), strict=True))
