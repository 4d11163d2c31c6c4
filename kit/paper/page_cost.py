"""What it costs to lie somewhere on a sheet that will be cut into pages: few pages shall be touched, and a piece be
parted over few of them.

The packing is `kit.pack`'s. Its ground is the sheet, rows downward, on cells of about 10 mm, a whole number of them to
a page. What counts at a place is, in this order: how many pages are touched there that are not in use yet, over how
many pages the shape is parted, and how near it is to the top left corner (or another one, as is asked). No chance is
involved.

Which pages are touched depends only on where in its page the corner of the shape comes to lie, its phase, and on the
page itself. So everything about a shape is worked out once for each row phase (`TurnedShape`), and the pages that are
new at all places of the sheet at once are a single product of matrices (`PageCost.best`): which pages are not in use
around each page, times which of them the shape touches from each place in a page.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from functools import lru_cache
from typing import Any

import numpy as np
import numpy.typing as npt
import shapely
from shapely import affinity

from kit.pack.footprint import Footprint
from kit.pack.packing import Fit, pack
from kit.pack.taken import Taken

CELL = 10.0
EDGE = 2.0
"""How far (mm) shapes keep from the borders of the sheet."""
_SAMPLE = 2.0
_NEAR = 0.6
"""mm: so near a page's border the ink is on both pages. Half a line is 0.5 mm wide; a place of `_SAMPLE` is rounder."""
_PAGE_ROWS = 150
_PAGE, _PART = 10**10, 10**7  # a page more, then a part more, outweigh any place on the sheet


@dataclass(frozen=True)
class PageCells:
    """The cells of a sheet: pages carry on from each other by `across` x `down` mm, which is `columns` x `rows`
    cells; shapes lie `gap` mm apart."""

    across: float
    down: float
    columns: int
    rows: int
    gap: float

    @classmethod
    def of(cls, across: float, down: float, gap: float) -> PageCells:
        """Cells as near 10 mm as a whole number of them to a page of `across` x `down` mm allows.

        >>> cells = PageCells.of(180.0, 267.0, 10.0)
        >>> cells.columns, cells.rows, round(cells.high, 2)
        (18, 27, 9.89)
        """
        return cls(across, down, max(1, round(across / CELL)), max(1, round(down / CELL)), gap)

    @property
    def wide(self) -> float:
        """mm across a cell."""
        return self.across / self.columns

    @property
    def high(self) -> float:
        """mm down a cell."""
        return self.down / self.rows

    @property
    def shift(self) -> float:
        """How far (mm) the first cell reaches over the sheet's edge: half a gap need not be kept there."""
        return self.gap / 2 - EDGE


@dataclass(frozen=True)
class Pose:
    """How a shape lies: turned by `angle` radians about its origin, then slid by `dx`, `dy` mm; y is 0 at the sheet's
    top edge."""

    angle: float
    dx: float
    dy: float

    @property
    def matrix(self) -> list[float]:
        """As shapely writes a motion (`affinity.affine_transform`): [a, b, d, e, dx, dy]."""
        cos, sin = math.cos(self.angle), math.sin(self.angle)
        return [cos, -sin, sin, cos, self.dx, self.dy]


@dataclass(frozen=True, eq=False)
class TurnedShape:
    """A shape turned by `angle` radians, one way for it to lie: its footprint (rows downward), and the pages its ink
    reaches.

    `first` and `last` [row phase, page row, column] say which page columns are reached in each page row below the
    corner (`last` no more), when the corner lies in that row of its page and that column of the sheet; `parts` [row
    phase, column] what lying on so many pages counts. `touched` tells the same as ones and zeros, ready to be
    multiplied: [page row and page column, row phase and column]."""

    angle: float
    footprint: Footprint
    first: npt.NDArray[np.int64]
    last: npt.NDArray[np.int64]
    parts: npt.NDArray[np.int64]
    touched: npt.NDArray[np.float32]

    @property
    def page_rows(self) -> int:
        """How many page rows it may reach."""
        return self.first.shape[1]

    @property
    def page_columns(self) -> int:
        """How many page columns it may reach, counted from the sheet's left edge."""
        return self.touched.shape[0] // self.first.shape[1]

    def pose(self, cells: PageCells, row: int, column: int) -> Pose:
        """How it lies with its corner in that cell."""
        print_ = self.footprint
        return Pose(
            self.angle, column * cells.wide - cells.shift - print_.left, -row * cells.high + cells.shift + print_.low
        )


def turned_shape(shape: Any, angle: float, cells: PageCells, limit: int) -> TurnedShape:
    """`shape` (shapely, mm) turned by `angle` radians and marked on `cells`, on a sheet at most `limit` cells wide."""
    half = cells.gap / 2
    reach, hanging, ink = _turned(shape, angle, half)
    left, bottom, right, top = reach
    footprint = Footprint.of(
        hanging, (cells.wide, cells.high), (left - half, -(top + half), right + half, -(bottom - half))
    )
    first, last, parts = _pages(ink, reach, cells, max(1, limit - footprint.columns + 1))
    column = np.arange(int(last.max()))[:, None, None]
    touched = [(first[:, each] <= column) & (column < last[:, each]) for each in range(first.shape[1])]
    flat = np.stack(touched).reshape(len(touched) * len(column), -1).astype(np.float32)
    return TurnedShape(angle, footprint, first, last, parts, flat)


@lru_cache(maxsize=256)
def _turned(shape: Any, angle: float, half: float) -> tuple[tuple[float, float, float, float], Any, Any]:
    """What is the same on cells of every size: the bounds of the shape when it is turned, its outline grown by half a
    gap, rows downward, and points not far apart on its ink."""
    turned = affinity.rotate(shape, angle, origin=(0, 0), use_radians=True)
    # A rough outline is quicker; the extra millimetre makes up for what simplifying and few corners take off.
    grown = turned.simplify(0.5).buffer(half + 1.0, quad_segs=2)
    lines = shapely.get_parts(turned)
    lines = lines[shapely.length(lines) > 1e-3]  # a line of no length cannot be cut into segments
    ink = shapely.get_coordinates(shapely.segmentize(lines, _SAMPLE))
    return turned.bounds, affinity.affine_transform(grown, [1.0, 0.0, 0.0, -1.0, 0.0, 0.0]), ink


def _pages(points: Any, reach: tuple[float, ...], cells: PageCells, places: int) -> tuple[Any, Any, Any]:
    """`first`, `last` and `parts` of a `TurnedShape` for `places` columns of its corner.

    The ink is taken as `points` not far apart. They are sorted into bands one cell high, of which only the leftmost and
    rightmost point count; for each row phase the bands are gathered into the page rows they fall in; and a page row's
    span, slid to each column, is divided by the width of a page.
    """
    band = ((reach[3] - points[:, 1] + EDGE) / cells.high).astype(int)
    count = int(band.max()) + 1
    low, high = np.full(count, np.inf), np.full(count, -np.inf)
    np.minimum.at(low, band, points[:, 0] - reach[0])
    np.maximum.at(high, band, points[:, 0] - reach[0])
    rows = (count - 1 + cells.rows - 1) // cells.rows + 1
    spread_low = np.full((cells.rows, rows), np.inf)
    spread_high = np.full((cells.rows, rows), -np.inf)
    phases = np.arange(cells.rows)
    for each in range(count):
        row = (phases + each) // cells.rows
        spread_low[phases, row] = np.minimum(spread_low[phases, row], low[each])
        spread_high[phases, row] = np.maximum(spread_high[phases, row], high[each])
    at = np.arange(places) * cells.wide + EDGE
    none = ~np.isfinite(spread_low)
    spread_low[none] = 0.0
    spread_high[none] = 0.0
    first = ((at + spread_low[..., None] - _NEAR) // cells.across).astype(np.int64).clip(0)
    last = ((at + spread_high[..., None] + _NEAR) // cells.across).astype(np.int64)
    last += 1
    last[none] = first[none]
    return first, last, (last - first).sum(axis=1) * _PART


class PageCost:
    """A `kit.pack.packing.Cost`. Of places that cost the same pages and parts the highest is taken (`way_in` 0), the
    leftmost (1), the highest then rightmost (2) or the rightmost (3). `pages` are in use; gives up when they are more
    than `at_most`."""

    def __init__(
        self, ways: Sequence[Sequence[TurnedShape]], cells: PageCells, columns: int, way_in: int, at_most: float
    ) -> None:
        self.pages = 0
        self._cells = cells
        self._way_in = way_in
        self._at_most = at_most
        # Below what is taken every page row is like the next; on a sheet of one page row there is no next.
        self._below = cells.rows if cells.rows <= _PAGE_ROWS else 1
        rows = sum(max(way.footprint.rows for way in each) + self._below for each in ways)
        rows += max(way.footprint.rows for each in ways for way in each) + self._below
        page_rows = rows // cells.rows + 1 + max(way.page_rows for each in ways for way in each)
        page_columns = max(*(way.page_columns for each in ways for way in each), columns // cells.columns + 3)
        self._fresh = np.ones((page_rows, page_columns), dtype=np.float32)  # 1 for a page that is not in use yet

    def best(self, way: TurnedShape, taken: Taken, than: Fit | None) -> Fit | None:
        across = taken.columns - way.footprint.columns + 1
        if across < 1:
            return None
        rows = taken.depth + self._below
        # Line r of `around`: which pages are fresh in page row r and as many below it as the shape may reach. Times
        # `touched` it is, for every row phase and column, how many fresh pages the shape would touch from there.
        pages = -(-rows // self._cells.rows)
        fresh = [self._fresh[each : each + pages, : way.page_columns] for each in range(way.page_rows)]
        around = np.concatenate(fresh, axis=1)
        new = (around @ way.touched).reshape(pages * self._cells.rows, -1)[:rows, :across]
        least = new.min()  # what is taken can only make it more: where that is too much already, nobody need look
        if self.pages + least > self._at_most or (than is not None and least * _PAGE > than.worth):
            return None
        if taken.depth:
            new[taken.struck(way.footprint, rows)] = np.inf
            least = new.min()
        if least == np.inf or (than is not None and least * _PAGE > than.worth):
            return None
        # Only places with the fewest new pages are weighed further: by parts, then by how far down and aside they are.
        row, column = np.nonzero(new == least)
        down, side = row + way.footprint.rows, across - column if self._way_in >= 2 else column
        worth = int(least) * _PAGE + way.parts[row % self._cells.rows, column]
        worth += (side * 1000 + down) if self._way_in % 2 else (down * 1000 + side)
        at = int(worth.argmin())
        if than is not None and worth[at] >= than.worth:
            return None
        return Fit(int(worth[at]), int(row[at]), int(column[at]))

    def lay(self, way: TurnedShape, fit: Fit) -> bool:
        page, phase = divmod(fit.row, self._cells.rows)
        for each in range(way.page_rows):
            span = slice(way.first[phase, each, fit.column], way.last[phase, each, fit.column])
            self._fresh[page + each, span] = 0
        self.pages = int(np.count_nonzero(self._fresh == 0))
        return self.pages <= self._at_most


def pack_on_pages(
    ways: Sequence[Sequence[TurnedShape]],
    order: Sequence[int],
    cells: PageCells,
    columns: int,
    *,
    way_in: int = 0,
    at_most: float = math.inf,
) -> tuple[tuple[Pose, ...], int] | None:
    """Lay one of each shape's `ways` on a sheet `columns` cells wide, in `order`; `way_in` and `at_most` as `PageCost`
    has them. Gives each shape's pose, in the order of `ways`, and the number of pages in use; None when a shape is too
    wide or more than `at_most` pages are needed.

    >>> cells = PageCells.of(180.0, 267.0, gap=10.0)
    >>> strips = [[turned_shape(shapely.box(0, 0, 50, 200), 0.0, cells, 36)] for _ in range(4)]
    >>> poses, pages = pack_on_pages(strips, range(4), cells, 36)
    >>> pages, [round(pose.dx) for pose in poses]
    (2, [2, 62, 122, 182])
    """
    cost = PageCost(ways, cells, columns, way_in, at_most)
    packed = pack(ways, order, columns, cost)
    if packed is None:
        return None
    poses = (
        each[which].pose(cells, row, column) for each, (which, row, column) in zip(ways, packed.places, strict=True)
    )
    return tuple(poses), cost.pages
