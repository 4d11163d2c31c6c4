"""The lines of a picture, kept so that it is quickly known which of them run under a box of text.

Lines are cut into short straight pieces on a grid; a box asks the cells it touches and clips each piece there exactly
(after Liang and Barsky, "A new concept and method for line clipping", 1984: the share of a piece inside a box from the
four quotients of its sides).
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from itertools import accumulate, chain, pairwise, product, repeat
from operator import add

from kit.geometry.region import Spot

Box = tuple[float, float, float, float]
_Piece = tuple[float, float, float, float, float, int]
"""Its ends, its weighted length, and its owner."""
_FINER = 5.0
_CELLS = 160
_WORTH_SUMS = 400
"""Questions from which on the sums cost less than they save: a step of few lines and texts never asks so many."""
_NOTHING = 1e-9


class DrawnLines:
    """Lines by the place they run at. `cell` is the side of the grid's cells in mm, about the height of two lines of
    text; a piece's `weight` says how bad it is to write over it, its `owner` whose line it is. So many questions are
    `worth` summing the lines up for."""

    def __init__(self, cell: float, worth: int = _WORTH_SUMS) -> None:
        self.cell = cell
        self.worth = worth
        self._cells: dict[tuple[int, int], list[_Piece]] = {}
        self._pieces: list[_Piece] = []
        self._sorted = 0  # of the pieces, how many are in the cells
        self._blocks: dict[tuple[int, int, int, int], list[_Piece]] = {}
        self._owned: dict[int, float] = {}
        self._sums: _Sums | None = None
        self._asked = 0

    def add(self, points: Sequence[Spot], weight: float, owner: int = -1, covers: Sequence[Box] = ()) -> None:
        """A line through `points`, but for what of it lies under the boxes of paper `covers`."""
        self._sums = None
        if covers:
            xs, ys = [x for x, _ in points], [y for _, y in points]
            left, low, right, top = min(xs), min(ys), max(xs), max(ys)
            covers = [c for c in covers if c[0] <= right and left <= c[2] and c[1] <= top and low <= c[3]]
        for (ax, ay), (bx, by) in pairwise(points):
            for x0, y0, x1, y1 in _uncovered((ax, ay, bx, by), covers) if covers else ((ax, ay, bx, by),):
                self._add(x0, y0, x1, y1, weight, owner)

    def _add(self, x0: float, y0: float, x1: float, y1: float, weight: float, owner: int) -> None:
        dx, dy = x1 - x0, y1 - y0
        length = math.hypot(dx, dy)
        self._owned[owner] = self._owned.get(owner, 0.0) + weight * length
        count = int(max(abs(dx), abs(dy)) / self.cell) + 1
        dx, dy = dx / count, dy / count
        long = weight * length / count
        for i in range(count):
            ax, ay = x0 + dx * i, y0 + dy * i
            self._pieces.append((ax, ay, ax + dx, ay + dy, long, owner))

    def _grid(self) -> dict[tuple[int, int], list[_Piece]]:
        """The pieces by the cells they touch, sorted in when they are first asked for: who looks roughly never does."""
        cell, cells = self.cell, self._cells
        for piece in self._pieces[self._sorted :]:
            ax, ay, bx, by, _, _ = piece
            i0, i1 = int(ax // cell), int(bx // cell)
            j0, j1 = int(ay // cell), int(by // cell)
            if i0 == i1 and j0 == j1:
                found = cells.get((i0, j0))
                if found is None:
                    cells[i0, j0] = [piece]
                else:
                    found.append(piece)
                continue
            for column in range(i0, i1 + 1) if i0 < i1 else range(i1, i0 + 1):
                for row in range(j0, j1 + 1) if j0 < j1 else range(j1, j0 + 1):
                    cells.setdefault((column, row), []).append(piece)
        self._sorted = len(self._pieces)
        self._blocks.clear()
        return cells

    def _block(self, key: tuple[int, int, int, int]) -> list[_Piece]:
        """The pieces in the cells from one column to another and from one row to another, each once, in the order in
        which the cells hold them: places near each other ask for the same."""
        cells = self._cells if self._sorted == len(self._pieces) else self._grid()
        found = self._blocks.get(key)
        if found is None:
            first, last, low, top = key
            touched = product(range(first, last + 1), range(low, top + 1))
            every = list(chain.from_iterable(map(cells.get, touched, repeat(()))))
            # A piece in several cells is the same object; two that are alike are two.
            found = self._blocks[key] = list(dict(zip(map(id, every), every, strict=True)).values())
        return found

    def between(self, x: float, y: float, wide: float, high: float, angle: float, owner: int = -2) -> Spot:
        """Quickly, the least and the most that `under` can be; (0, 0) where no line comes near.

        >>> lines = DrawnLines(8.0, worth=0)
        >>> lines.add(((0.0, 0.0), (100.0, 0.0)), 1.0)
        >>> lines.between(50, 40, 20, 8, 0.0)
        (0.0, 0.0)
        >>> least, most = lines.between(50, 0, 20, 8, 0.0)
        >>> least <= lines.under(50, 0, 20, 8, 0.0) <= most
        True
        """
        if self._sums is None:
            self._asked += 1
            if self._asked < self.worth:
                return (0.0, math.inf)
            self._sums = _Sums(self._pieces, self.cell / _FINER)
        if angle:
            c, s = abs(math.cos(angle)), abs(math.sin(angle))
            half_x, half_y = (c * wide + s * high) / 2, (s * wide + c * high) / 2
            level = c < 1e-3 or s < 1e-3
        else:
            half_x, half_y, level = wide / 2, high / 2, True
        least, most = self._sums.between(x, y, half_x, half_y, level)
        if least and owner in self._owned:
            least = max(0.0, least - self._owned[owner])
        return (least, most)

    def under(
        self, x: float, y: float, wide: float, high: float, angle: float, owner: int = -2, enough: float = math.inf
    ) -> float:
        """The weighted length (mm) of all lines inside a box centred at x, y and turned by `angle`, those of `owner`
        left out; of more than `enough` only so much that it is more."""
        c, s = (math.cos(angle), math.sin(angle)) if angle else (1.0, 0.0)
        half_x = (abs(c) * wide + abs(s) * high) / 2
        half_y = (abs(s) * wide + abs(c) * high) / 2
        cell = self.cell
        left, right, low, top = x - half_x, x + half_x, y - half_y, y + half_y
        wide, high = wide / 2, high / 2
        total = 0.0
        for piece in self._block((int(left // cell), int(right // cell), int(low // cell), int(top // cell))):
            ax, ay, bx, by, long, mine = piece
            if (ax < left and bx < left) or (ax > right and bx > right) or mine == owner:
                continue
            if (ay < low and by < low) or (ay > top and by > top):
                continue
            ax, ay, bx, by = ax - x, ay - y, bx - x, by - y
            if angle:
                ax, ay = ax * c + ay * s, ay * c - ax * s
                bx, by = bx * c + by * s, by * c - bx * s
            # As in `inside_span`, written out: this is where the placer spends its time.
            t0, t1 = 0.0, 1.0
            dx, dy = bx - ax, by - ay
            if dx:
                p, q = (-wide - ax) / dx, (wide - ax) / dx
                if p > q:
                    p, q = q, p
                t0, t1 = p if p > 0.0 else 0.0, q if q < 1.0 else 1.0
            elif ax > wide or ax < -wide:
                continue
            if dy:
                p, q = (-high - ay) / dy, (high - ay) / dy
                if p > q:
                    p, q = q, p
                if p > t0:
                    t0 = p
                if q < t1:
                    t1 = q
            elif ay > high or ay < -high:
                continue
            if t0 < t1:
                total += long * (t1 - t0)
                if total > enough:
                    return total
        return total


class _Sums:
    """How much line there is in any level box, from below and from above: the lines are cut into short bits, each
    counted in the one cell of a fine grid that holds its middle, and the cells summed up from a corner, so that every
    box is told by four of these sums (Crow, "Summed-area tables for texture mapping", 1984)."""

    def __init__(self, pieces: Sequence[_Piece], cell: float) -> None:
        self.cell = cell
        if not pieces:
            self.columns = self.rows = 0
            self.x = self.y = 0.0
            return
        self.x = min(min(piece[0], piece[2]) for piece in pieces)
        self.y = min(min(piece[1], piece[3]) for piece in pieces)
        x1 = max(max(piece[0], piece[2]) for piece in pieces)
        y1 = max(max(piece[1], piece[3]) for piece in pieces)
        # A picture that is very large beside its text is told more coarsely.
        self.cell = cell = max(cell, (x1 - self.x) / _CELLS, (y1 - self.y) / _CELLS)
        self.columns, self.rows = int((x1 - self.x) / cell) + 2, int((y1 - self.y) / cell) + 2
        width = self.columns + 1
        found = [[0.0] * width for _ in range(self.rows)]
        left, low, each = self.x, self.y, 1 / cell
        for ax, ay, bx, by, long, _ in pieces:
            count = int(max(abs(bx - ax), abs(by - ay)) * each) + 1
            dx, dy, bit = (bx - ax) / count, (by - ay) / count, long / count
            ax, ay = ax + dx / 2 - left, ay + dy / 2 - low
            for i in range(count):
                found[int((ay + dy * i) * each)][int((ax + dx * i) * each) + 1] += bit
        sums = [0.0] * width
        self.sums = [sums]
        for row in found:
            sums = list(map(add, sums, accumulate(row)))
            self.sums.append(sums)

    def between(self, x: float, y: float, half_x: float, half_y: float, inner: bool) -> Spot:
        """What lies in a box is no less than the first (0 unless `inner`) and no more than the second."""
        cell, columns, rows = self.cell, self.columns, self.rows
        x, y = (x - self.x) / cell, (y - self.y) / cell
        # A bit of line reaches half a cell from its middle, by which it is counted.
        left, right = x - half_x / cell, x + half_x / cell
        low, top = y - half_y / cell, y + half_y / cell
        i0, i1, j0, j1 = int(left - 0.5), int(right + 1.5), int(low - 0.5), int(top + 1.5)
        if i1 <= 0 or j1 <= 0 or i0 >= columns or j0 >= rows:
            return (0.0, 0.0)
        if i0 < 0:
            i0 = 0
        if j0 < 0:
            j0 = 0
        if i1 > columns:
            i1 = columns
        if j1 > rows:
            j1 = rows
        lower, upper = self.sums[j0], self.sums[j1]
        most = upper[i1] - upper[i0] - lower[i1] + lower[i0]
        if most <= _NOTHING:
            return (0.0, 0.0)
        if not inner:
            return (0.0, most)
        i0, i1, j0, j1 = int(left + 1.5), int(right - 0.5), int(low + 1.5), int(top - 0.5)
        if left < -1.5:
            i0 = 0
        if low < -1.5:
            j0 = 0
        if i1 > columns:
            i1 = columns
        if j1 > rows:
            j1 = rows
        if i0 >= i1 or j0 >= j1:
            return (0.0, most)
        lower, upper = self.sums[j0], self.sums[j1]
        least = upper[i1] - upper[i0] - lower[i1] + lower[i0]
        return (least if least > _NOTHING else 0.0, most)


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
