"""The lines of a picture, kept so that it is quickly known which of them run under a box of text.

Lines are cut into short straight pieces on a grid; a box asks the cells it touches and clips each piece there exactly
(after Liang and Barsky, "A new concept and method for line clipping", 1984: the share of a piece inside a box from the
four quotients of its sides).
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from itertools import pairwise

Spot = tuple[float, float]
Box = tuple[float, float, float, float]
_Piece = tuple[float, float, float, float, float, int]


class DrawnLines:
    """Lines by the place they run at. `cell` is the side of the grid's cells in mm, about the height of two lines of
    text; a piece's `weight` says how bad it is to write over it, its `owner` whose line it is."""

    def __init__(self, cell: float) -> None:
        self.cell = cell
        self._cells: dict[tuple[int, int], list[_Piece]] = {}

    def add(self, points: Sequence[Spot], weight: float, owner: int = -1, covers: Sequence[Box] = ()) -> None:
        """A line through `points`, but for what of it lies under the boxes of paper `covers`."""
        for (ax, ay), (bx, by) in pairwise(points):
            for x0, y0, x1, y1 in _uncovered((ax, ay, bx, by), covers) if covers else ((ax, ay, bx, by),):
                self._add(x0, y0, x1, y1, weight, owner)

    def _add(self, x0: float, y0: float, x1: float, y1: float, weight: float, owner: int) -> None:
        cell, cells = self.cell, self._cells
        count = int(max(abs(x1 - x0), abs(y1 - y0)) / cell) + 1
        dx, dy = (x1 - x0) / count, (y1 - y0) / count
        for i in range(count):
            ax, ay = x0 + dx * i, y0 + dy * i
            bx, by = ax + dx, ay + dy
            piece = (ax, ay, bx, by, weight, owner)
            i0, i1 = int(min(ax, bx) // cell), int(max(ax, bx) // cell)
            j0, j1 = int(min(ay, by) // cell), int(max(ay, by) // cell)
            for column in range(i0, i1 + 1):
                for row in range(j0, j1 + 1):
                    found = cells.get((column, row))
                    if found is None:
                        cells[column, row] = [piece]
                    else:
                        found.append(piece)

    def under(
        self, x: float, y: float, wide: float, high: float, angle: float, owner: int = -2, enough: float = math.inf
    ) -> float:
        """The weighted length (mm) of all lines inside a box centred at x, y and turned by `angle`, those of `owner`
        left out; of more than `enough` only so much that it is more."""
        c, s = (math.cos(angle), math.sin(angle)) if angle else (1.0, 0.0)
        half_x = (abs(c) * wide + abs(s) * high) / 2
        half_y = (abs(s) * wide + abs(c) * high) / 2
        cell, get = self.cell, self._cells.get
        columns = range(int((x - half_x) // cell), int((x + half_x) // cell) + 1)
        rows = range(int((y - half_y) // cell), int((y + half_y) // cell) + 1)
        wide, high = wide / 2, high / 2
        left, right, low, top = x - half_x, x + half_x, y - half_y, y + half_y
        total, seen = 0.0, set()
        for column in columns:
            for row in rows:
                for piece in get((column, row), ()):
                    ax, ay, bx, by, weight, mine = piece
                    if mine == owner or (ax < left and bx < left) or (ax > right and bx > right):
                        continue
                    if (ay < low and by < low) or (ay > top and by > top) or id(piece) in seen:
                        continue
                    seen.add(id(piece))
                    ax, ay, bx, by = ax - x, ay - y, bx - x, by - y
                    if angle:
                        ax, ay = ax * c + ay * s, ay * c - ax * s
                        bx, by = bx * c + by * s, by * c - bx * s
                    share = inside_share(ax, ay, bx, by, -wide, -high, wide, high)
                    if share:
                        total += weight * share * math.hypot(bx - ax, by - ay)
                        if total > enough:
                            return total
        return total


def inside_share(ax: float, ay: float, bx: float, by: float, x0: float, y0: float, x1: float, y1: float) -> float:
    """How much (0..1) of the line from a to b lies in the box."""
    t0, t1 = inside_span(ax, ay, bx, by, x0, y0, x1, y1)
    return t1 - t0


def inside_span(
    ax: float, ay: float, bx: float, by: float, x0: float, y0: float, x1: float, y1: float
) -> tuple[float, float]:
    """The stretch of the line from a to b inside the box, as shares; (0, 0) when there is none."""
    t0, t1 = 0.0, 1.0
    for p, low, high in ((bx - ax, x0 - ax, x1 - ax), (by - ay, y0 - ay, y1 - ay)):
        if p == 0.0:
            if low > 0.0 or high < 0.0:
                return (0.0, 0.0)
            continue
        a, b = low / p, high / p
        if a > b:
            a, b = b, a
        if a > t0:
            t0 = a
        if b < t1:
            t1 = b
        if t0 >= t1:
            return (0.0, 0.0)
    return (t0, t1)


def _uncovered(line: Box, covers: Iterable[Box]) -> list[Box]:
    """The parts of a straight line (x0, y0, x1, y1) that lie under none of the boxes."""
    parts = [line]
    for cover in covers:
        left: list[Box] = []
        for ax, ay, bx, by in parts:
            t0, t1 = inside_span(ax, ay, bx, by, *cover)
            if t1 <= t0:
                left.append((ax, ay, bx, by))
                continue
            dx, dy = bx - ax, by - ay
            if t0 > 1e-9:
                left.append((ax, ay, ax + dx * t0, ay + dy * t0))
            if t1 < 1.0 - 1e-9:
                left.append((ax + dx * t1, ay + dy * t1, bx, by))
        parts = left
    return parts
