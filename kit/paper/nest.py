"""Fitting shapes together on a sheet that will be cut into pages, so that a facing lies in the bend of an underarm
and few pages are touched.

Each shape, grown by half the gap, is marked on cells of about 10 mm, a whole number of them to a page; a cell counts
when the grown shape touches it at all, so what fits on the cells fits on the sheet. Free places are found for the
whole sheet at once: what is taken is one whole number, a bit for each cell, and beside it stand the same bits smeared
over 2, 4, 8 ... cells down, so that all places where a run of cells would strike something come from two shifts. Of
the free ones a shape takes the one that needs fewest pages not yet in use, then the one that parts it over fewest
pages, then the highest and leftmost. No chance is involved.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any

import numpy as np
import numpy.typing as npt
import shapely
from shapely import affinity

CELL = 10.0
EDGE = 2.0
"""How far (mm) shapes keep from the borders of the sheet."""
_SAMPLE = 2.0
_TOUCH = 1e-6  # of a cell: what comes so near touches
_PAGE_ROWS = 150
_PAGE, _PART = 10**10, 10**7  # a page more, then a part more, outweigh any place on the sheet

Cells = npt.NDArray[np.bool_]
Run = tuple[int, int, int, int]


@dataclass(frozen=True)
class Mesh:
    """The cells of a sheet: pages carry on from each other by `across` x `down` mm, which is `columns` x `rows`
    cells; shapes lie `gap` mm apart."""

    across: float
    down: float
    columns: int
    rows: int
    gap: float

    @classmethod
    def of(cls, across: float, down: float, gap: float) -> Mesh:
        return cls(across, down, max(1, round(across / CELL)), max(1, round(down / CELL)), gap)

    @property
    def wide(self) -> float:
        return self.across / self.columns

    @property
    def high(self) -> float:
        return self.down / self.rows

    @property
    def shift(self) -> float:
        """How far the first cell reaches over the sheet's edge: half a gap need not be kept there."""
        return self.gap / 2 - EDGE


@dataclass(eq=False)
class Lying:
    """A shape turned by `angle` radians: the `cells` it takes, its corner in the upper left one; `left` and `top` are
    that corner in mm of the turned shape. `first` and `last` say for each row phase, page row and column which page
    columns its ink reaches (`last` no more), `parts` what lying on so many pages counts. `touched` tells the same as
    ones and zeros: [page row and page column, row phase and column]. `runs` are the runs of cells down each column:
    its column, the smear to look at and two shifts."""

    angle: float
    left: float
    top: float
    cells: Cells
    first: npt.NDArray[np.int64]
    last: npt.NDArray[np.int64]
    parts: npt.NDArray[np.int64]
    touched: npt.NDArray[np.float32]
    runs: tuple[Run, ...]


@dataclass(frozen=True)
class Spot:
    """Where a shape lies: turned by `angle`, then slid by `dx`, `dy`; y is 0 at the sheet's top edge."""

    angle: float
    dx: float
    dy: float


def lying(shape: Any, angle: float, mesh: Mesh, limit: int) -> Lying:
    """`shape` (shapely, mm) turned by `angle` and marked on the cells of `mesh`, on a sheet at most `limit` cells
    wide."""
    turned = affinity.rotate(shape, angle, origin=(0, 0), use_radians=True)
    half = mesh.gap / 2
    reach = turned.bounds
    # A rough outline is quicker; the extra millimetre makes up for what simplifying and few corners take off.
    grown = turned.simplify(0.5).buffer(half + 1.0, quad_segs=2)
    left, top = reach[0] - half, reach[3] + half
    wide = max(1, math.ceil((reach[2] + half - left) / mesh.wide - 1e-6))
    tall = max(1, math.ceil((top - reach[1] + half) / mesh.high - 1e-6))
    taken = _cells(shapely.get_parts(grown), left, top, mesh, (tall, wide))
    first, last, parts = _pages(turned, reach, mesh, max(1, limit - wide + 1))
    column = np.arange(int(last.max()))[:, None, None]
    touched = [(first[:, each] <= column) & (column < last[:, each]) for each in range(first.shape[1])]
    flat = np.stack(touched).reshape(len(touched) * len(column), -1).astype(np.float32)
    return Lying(angle, left, top, taken, first, last, parts, flat, _runs(taken))


def _cells(areas: Any, left: float, top: float, mesh: Mesh, size: tuple[int, int]) -> Cells:
    """The cells, (rows, columns) of them from the corner `left`, `top` on, that any of `areas` (shapely polygons)
    touches: those its border runs through, and those whose middle lies in it."""
    tall, wide = size
    edge = np.zeros((tall, wide + 1), dtype=np.int64)
    inside = np.zeros((tall, wide + 1), dtype=np.int64)
    for ring in (ring for area in areas for ring in (area.exterior, *area.interiors)):
        points = shapely.get_coordinates(ring)
        x, y = (points[:, 0] - left) / mesh.wide, (top - points[:, 1]) / mesh.high
        up = y[:-1] > y[1:]
        x0, y0 = np.where(up, x[1:], x[:-1]), np.where(up, y[1:], y[:-1])
        x1, y1 = np.where(up, x[:-1], x[1:]), np.where(up, y[:-1], y[1:])
        begin, end = _floor(y0 - _TOUCH, tall), _floor(y1 + _TOUCH, tall)
        counts = end - begin + 1
        which = np.repeat(np.arange(len(counts)), counts)
        row = np.arange(len(which)) - np.repeat(np.cumsum(counts) - counts, counts) + begin[which]
        x0, y0, x1, y1 = x0[which], y0[which], x1[which], y1[which]
        slope = (x1 - x0) / np.maximum(y1 - y0, 1e-12)
        one = x0 + (np.clip(row, y0, y1) - y0) * slope
        other = x0 + (np.clip(row + 1.0, y0, y1) - y0) * slope
        flat = y1 - y0 < 1e-9
        low = np.where(flat, np.minimum(x0, x1), np.minimum(one, other))
        high = np.where(flat, np.maximum(x0, x1), np.maximum(one, other))
        np.add.at(edge, (row, _floor(low - _TOUCH, wide)), 1)
        np.add.at(edge, (row, _floor(high + _TOUCH, wide) + 1), -1)
        middle = row + 0.5
        crossed = (y0 <= middle) & (middle < y1)
        at = x0[crossed] + (middle[crossed] - y0[crossed]) * slope[crossed]
        np.add.at(inside, (row[crossed], np.clip(np.ceil(at - 0.5), 0, wide).astype(int)), 1)
    return np.asarray((np.cumsum(edge, axis=1) > 0) | (np.cumsum(inside, axis=1) % 2 > 0))[:, :wide]


def _floor(values: Any, count: int) -> Any:
    return np.clip(np.floor(values), 0, count - 1).astype(int)


def _runs(cells: Cells) -> tuple[Run, ...]:
    padded = np.zeros((cells.shape[1], cells.shape[0] + 2), dtype=np.int8)
    padded[:, 1:-1] = cells.T
    steps = np.diff(padded, axis=1)
    found = []
    for (column, start), end in zip(np.argwhere(steps == 1).tolist(), np.nonzero(steps == -1)[1].tolist(), strict=True):
        level = (end - start).bit_length() - 1
        found.append((column, level, start, end - (1 << level)))
    return tuple(found)


def _pages(turned: Any, reach: tuple[float, ...], mesh: Mesh, places: int) -> tuple[Any, Any, Any]:
    """The first page column that the ink reaches and the one after the last, as arrays [row phase, page row, column of
    the shape's corner]; and what its lying on so many pages counts, as [row phase, column]."""
    parts = shapely.get_parts(turned)
    parts = parts[shapely.length(parts) > 1e-3]  # a line of no length cannot be cut into segments
    points = shapely.get_coordinates(shapely.segmentize(parts, _SAMPLE))
    band = ((reach[3] - points[:, 1] + EDGE) / mesh.high).astype(int)
    count = int(band.max()) + 1
    low, high = np.full(count, np.inf), np.full(count, -np.inf)
    np.minimum.at(low, band, points[:, 0] - reach[0])
    np.maximum.at(high, band, points[:, 0] - reach[0])
    rows = (count - 1 + mesh.rows - 1) // mesh.rows + 1
    spread_low = np.full((mesh.rows, rows), np.inf)
    spread_high = np.full((mesh.rows, rows), -np.inf)
    phases = np.arange(mesh.rows)
    for each in range(count):
        row = (phases + each) // mesh.rows
        spread_low[phases, row] = np.minimum(spread_low[phases, row], low[each])
        spread_high[phases, row] = np.maximum(spread_high[phases, row], high[each])
    at = np.arange(places) * mesh.wide + EDGE
    none = ~np.isfinite(spread_low)
    spread_low[none] = 0.0
    spread_high[none] = 0.0
    first = ((at + spread_low[..., None] - 0.6) // mesh.across).astype(np.int64).clip(0)
    last = ((at + spread_high[..., None] + 0.6) // mesh.across).astype(np.int64)
    last += 1
    last[none] = first[none]
    return first, last, (last - first).sum(axis=1) * _PART


def nest(
    ways: Sequence[Sequence[Lying]],
    order: Sequence[int],
    mesh: Mesh,
    columns: int,
    *,
    way_in: int = 0,
    at_most: float = math.inf,
) -> tuple[tuple[Spot, ...], int] | None:
    """Lay one of each shape's `ways` on a sheet `columns` cells wide, in `order`. Of equally good places the highest
    is taken (`way_in` 0), the leftmost (1), the highest then rightmost (2) or the rightmost (3). Gives a spot for each
    shape and the number of pages in use, or None when a shape is too wide or more than `at_most` pages are needed."""
    tallest = max(way.cells.shape[0] for each in ways for way in each)
    # Below what is taken every page row is like the next; on a sheet of one page row there is no next.
    below = mesh.rows if mesh.rows <= _PAGE_ROWS else 1
    total = sum(max(way.cells.shape[0] for way in each) + below for each in ways)
    taken = np.zeros((total + tallest + below, columns), dtype=bool)
    rows = len(taken)
    bands = max(way.first.shape[1] for each in ways for way in each)
    across_pages = max(way.touched.shape[0] // way.first.shape[1] for each in ways for way in each)
    fresh = np.ones((rows // mesh.rows + 1 + bands, max(across_pages, columns // mesh.columns + 3)), dtype=np.float32)
    spots: list[Spot | None] = [None] * len(ways)
    depth = used = 0
    for place in order:
        high = depth + below
        reach = high + tallest
        smears = _smears(taken[:reach], tallest)
        pages = -(-high // mesh.rows)
        best: tuple[int, int, int, Lying] | None = None
        for way in ways[place]:
            tall, wide = way.cells.shape
            if wide > columns:
                continue
            across = columns - wide + 1
            struck = _struck(way, smears, reach, across)[:high] if depth else None
            count = way.first.shape[1]
            cut = way.touched.shape[0] // count
            left = np.concatenate([fresh[each : each + pages, :cut] for each in range(count)], axis=1)
            new = (left @ way.touched).reshape(pages * mesh.rows, -1)[:high, :across]
            if struck is not None:
                new[struck] = np.inf
            least = new.min()
            if least == np.inf or (best is not None and least * _PAGE > best[0]):
                continue
            row, column = np.nonzero(new == least)
            down, side = row + tall, across - column if way_in >= 2 else column
            worth = int(least) * _PAGE + way.parts[row % mesh.rows, column]
            worth += (side * 1000 + down) if way_in % 2 else (down * 1000 + side)
            least_at = int(worth.argmin())
            if best is None or worth[least_at] < best[0]:
                best = (int(worth[least_at]), int(row[least_at]), int(column[least_at]), way)
        if best is None:
            return None
        _, at_row, at_column, way = best
        tall, wide = way.cells.shape
        taken[at_row : at_row + tall, at_column : at_column + wide] |= way.cells
        depth = max(depth, at_row + tall)
        phase = at_row % mesh.rows
        for each in range(way.first.shape[1]):
            span = slice(way.first[phase, each, at_column], way.last[phase, each, at_column])
            fresh[at_row // mesh.rows + each, span] = 0
        used = int(np.count_nonzero(fresh == 0))
        if used > at_most:
            return None
        spots[place] = Spot(
            way.angle, at_column * mesh.wide - mesh.shift - way.left, -at_row * mesh.high + mesh.shift - way.top
        )
    return tuple(spot for spot in spots if spot is not None), used


def _smears(taken: Cells, tallest: int) -> list[int]:
    """What is taken, column after column, as one number; then smeared over 2, 4, 8 ... rows."""
    bits = int.from_bytes(np.packbits(taken.T, bitorder="little").tobytes(), "little")
    found = [bits]
    for level in range(tallest.bit_length() - 1):
        bits |= bits >> (1 << level)
        found.append(bits)
    return found


def _struck(way: Lying, smears: Sequence[int], rows: int, across: int) -> Cells:
    """For every row and column whether the shape, its corner there, would strike something."""
    struck = 0
    for column, level, one, two in way.runs:
        bits, start = smears[level], column * rows
        struck |= bits >> (start + one)
        if two != one:
            struck |= bits >> (start + two)
    size = rows * across
    found = (struck & ((1 << size) - 1)).to_bytes((size + 7) // 8, "little")
    flat = np.unpackbits(np.frombuffer(found, dtype=np.uint8), count=size, bitorder="little")
    return flat.reshape(across, rows).T.astype(bool)
