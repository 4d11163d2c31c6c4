"""Fitting shapes together on a sheet of a given width, so that a facing lies in the bend of an underarm.

Each shape, grown by half the gap, is marked on squared paper of 10 mm; a square counts when the shape touches
it at all, so what fits on the squares fits on the sheet. A shape goes to the highest free place, then the
leftmost; free places are found for the whole sheet at once by correlation (fast Fourier transform). No chance
is involved.
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

SQUARE = 10.0

Squares = npt.NDArray[np.bool_]


@dataclass(frozen=True, eq=False)
class Lying:
    """A shape turned by `quarters` (counterclockwise), with the squares it takes, its own upper left corner in
    the upper left square. `left` and `top` are that corner in mm of the turned shape, gap included."""

    quarters: int
    left: float
    top: float
    squares: Squares


@dataclass(frozen=True)
class Spot:
    """Where a shape lies: turned by `quarters`, then slid by `dx`, `dy`; y is 0 at the sheet's top edge."""

    quarters: int
    dx: float
    dy: float


def lying(shape: Any, quarters: int, gap: float) -> Lying:
    """`shape` (shapely, mm) turned and marked on squares with half the `gap` around it."""
    turned = affinity.rotate(shape, 90 * quarters, origin=(0, 0))
    reach = turned.bounds
    # A rough outline is quicker; the extra millimetre makes up for what simplifying and few corners take off.
    grown = turned.simplify(0.5).buffer(gap / 2 + 1.0, quad_segs=2)
    left, top = reach[0] - gap / 2, reach[3] + gap / 2
    wide = max(1, math.ceil((reach[2] + gap / 2 - left) / SQUARE - 1e-6))
    tall = max(1, math.ceil((top - reach[1] + gap / 2) / SQUARE - 1e-6))
    xs = left + SQUARE * np.arange(wide)
    ys = top - SQUARE * np.arange(tall)
    x, y = np.meshgrid(xs, ys)
    shapely.prepare(grown)
    taken = shapely.intersects(grown, shapely.box(x, y - SQUARE, x + SQUARE, y))
    return Lying(quarters, left, top, np.asarray(taken, dtype=bool))


def nest(ways: Sequence[Sequence[Lying]], order: Sequence[int], width: float) -> tuple[Spot, ...] | None:
    """Lay one of each shape's `ways` on a sheet `width` mm wide, in `order`. Gives a spot for each shape, or
    None when one is too wide."""
    columns = int((width + 1e-6) // SQUARE)
    taken = np.zeros((0, columns), dtype=bool)
    spots: list[Spot | None] = [None] * len(ways)
    for place in order:
        best: tuple[int, int, int, Lying] | None = None
        for way in ways[place]:
            found = _highest(taken, way.squares, None if best is None else best[0])
            if found is None:
                continue
            row, column = found
            worth = (row + way.squares.shape[0], row, column, way)
            if best is None or worth[:3] < best[:3]:
                best = worth
        if best is None:
            return None
        low, row, column, way = best
        if low > len(taken):
            taken = np.vstack([taken, np.zeros((low - len(taken), columns), dtype=bool)])
        taken[row:low, column : column + way.squares.shape[1]] |= way.squares
        spots[place] = Spot(way.quarters, column * SQUARE - way.left, -row * SQUARE - way.top)
    return tuple(spot for spot in spots if spot is not None)


def _highest(taken: Squares, squares: Squares, deepest: int | None) -> tuple[int, int] | None:
    """Row and column of the highest, then leftmost, place where `squares` meet nothing `taken`, none of them
    below row `deepest`."""
    tall, wide = squares.shape
    columns = taken.shape[1]
    if wide > columns:
        return None
    rows = len(taken)
    if rows:
        size = (_even(rows + tall), _even(columns))
        both = np.fft.rfft2(taken, size) * np.conj(np.fft.rfft2(squares, size))
        meeting = np.fft.irfft2(both, size)[:rows, : columns - wide + 1]
        free = meeting < 0.5
        if deepest is not None:
            free = free[: max(0, deepest - tall + 1)]
        first = int(free.argmax()) if free.size else 0
        if free.size and free.flat[first]:
            row, column = divmod(first, free.shape[1])
            return row, column
    if deepest is not None and rows + tall > deepest:
        return None
    return rows, 0


@lru_cache(maxsize=512)
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
