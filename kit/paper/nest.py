"""Fitting shapes together on a sheet that will be cut into pages, so that a facing lies in the bend of an underarm
and few pages are touched.

Each shape, grown by half the gap, is marked on cells of about 10 mm, a whole number of them to a page; a cell counts
when the grown shape touches it at all, so what fits on the cells fits on the sheet. Free places are found for the
whole sheet at once by correlation (fast Fourier transform). Of these a shape takes the one that needs fewest pages
not yet in use, then the one that parts it over fewest pages, then the highest and leftmost. No chance is involved.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass, field
from typing import Any

import numpy as np
import numpy.typing as npt
import shapely
from shapely import affinity

CELL = 10.0
EDGE = 2.0
"""How far (mm) shapes keep from the borders of the sheet."""
_SAMPLE = 2.0
_PAGE_ROWS = 150
_PAGE, _PART = 10**10, 10**7  # a page more, then a part more, outweigh any place on the sheet
_NEVER = 2**62
_STEP = 48  # transforms come in few sizes, so that they can be kept

Cells = npt.NDArray[np.bool_]


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
    columns its ink reaches (`last` no more), `parts` what lying on so many pages counts; what the transforms need is
    kept in `waves`."""

    angle: float
    left: float
    top: float
    cells: Cells
    first: npt.NDArray[np.int64]
    last: npt.NDArray[np.int64]
    parts: npt.NDArray[np.int64]
    waves: dict[tuple[int, int], Any] = field(default_factory=dict)


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
    x, y = np.meshgrid(left + mesh.wide * np.arange(wide), top - mesh.high * np.arange(tall))
    shapely.prepare(grown)
    taken = np.asarray(shapely.intersects(grown, shapely.box(x, y - mesh.high, x + mesh.wide, y)), dtype=bool)
    return Lying(angle, left, top, taken, *_pages(turned, reach, mesh, max(1, limit - wide + 1)))


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
    fresh = np.ones((rows // mesh.rows + 1 + bands, columns // mesh.columns + 3), dtype=np.int64)
    spots: list[Spot | None] = [None] * len(ways)
    depth = 0
    for place in order:
        size = (_even(math.ceil((depth + below + tallest) / _STEP) * _STEP), columns)
        wave = np.fft.rfft2(taken[: size[0]].astype(np.float32), size) if depth else None
        before = np.zeros((fresh.shape[0], fresh.shape[1] + 1), dtype=np.int64)
        np.cumsum(fresh, axis=1, out=before[:, 1:])
        sums = before.ravel()
        best: tuple[int, int, int, Lying] | None = None
        for way in ways[place]:
            tall, wide = way.cells.shape
            if wide > columns:
                continue
            high, across = depth + below, columns - wide + 1
            if wave is None:
                free = np.ones((high, across), dtype=bool)
            else:
                if size not in way.waves:
                    way.waves[size] = np.conj(np.fft.rfft2(way.cells.astype(np.float32), size))
                free = np.fft.irfft2(wave * way.waves[size], size)[:high, :across] < 0.5
            if not free.any():
                continue
            top = np.arange(high)
            phase, page = top % mesh.rows, top // mesh.rows
            new = np.zeros(free.shape, dtype=np.int64)
            for each in range(way.first.shape[1]):
                row = ((page + each) * before.shape[1])[:, None]
                new += sums.take(way.last[phase, each, :across] + row)
                new -= sums.take(way.first[phase, each, :across] + row)
            down, side = (top + tall)[:, None], np.arange(across)[None, :]
            if way_in >= 2:
                side = across - side
            worth = new * _PAGE + way.parts[phase, :across]
            worth += (side * 1000 + down) if way_in % 2 else (down * 1000 + side)
            worth[~free] = _NEVER
            at = int(worth.argmin())
            if best is None or worth.flat[at] < best[0]:
                best = (int(worth.flat[at]), *divmod(at, across), way)
        if best is None:
            return None
        _, at_row, column, way = best
        tall, wide = way.cells.shape
        taken[at_row : at_row + tall, column : column + wide] |= way.cells
        depth = max(depth, at_row + tall)
        for each in range(way.first.shape[1]):
            span = slice(way.first[at_row % mesh.rows, each, column], way.last[at_row % mesh.rows, each, column])
            fresh[at_row // mesh.rows + each, span] = 0
        if fresh.size - fresh.sum() > at_most:
            return None
        spots[place] = Spot(
            way.angle, column * mesh.wide - mesh.shift - way.left, -at_row * mesh.high + mesh.shift - way.top
        )
    return tuple(spot for spot in spots if spot is not None), int(fresh.size - fresh.sum())


def _even(least: int) -> int:
    """The next length of small factors, for which the transform is quick."""
    while True:
        rest = least
        for factor in (2, 3, 5):
            while rest % factor == 0:
                rest //= factor
        if rest == 1:
            return least
        least += 1
