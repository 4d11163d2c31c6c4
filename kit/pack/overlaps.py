"""How much two shapes overlap, wherever the one lies beside the other.

Shapes are seen here on coarse cells, each taken by so many shares of it. What two of them have in common when one lies
r rows and c columns from the other is a correlation of their shares, and so the places of all r and c at once are a
product of two Fourier transforms. Shares are whole numbers, and so is what they have in common: rounded, it is exact,
on every machine the same.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

import numpy as np
import numpy.typing as npt

from kit.pack.footprint import Footprint

SHARES = 4
"""Shares of a coarse cell."""

Shares = npt.NDArray[np.int64]
"""[row, column]: how much of each coarse cell is taken, from 0 to `SHARES`."""
Common = npt.NDArray[np.float32]
"""[row, column]: whole numbers, kept as floats that are to be weighed."""


def shares_of(shape: Footprint, cell: tuple[int, int]) -> Shares:
    """The footprint on coarse cells of (columns, rows) of its own, its corner at theirs.

    >>> import shapely
    >>> shares_of(Footprint.of(shapely.box(0, 0, 30, 60), (10.0, 10.0)), (2, 4))
    array([[4, 2],
           [2, 1]])
    """
    wide, high = cell
    columns, rows = -(-shape.columns // wide), -(-shape.rows // high)
    cells = np.zeros((columns * wide, rows * high), dtype=np.int64)
    for column, start, length in shape.runs:
        cells[column, start : start + length] = 1
    taken = cells.reshape(columns, wide, rows, high).sum(axis=(1, 3)).T
    return np.asarray((taken * SHARES * 2 + wide * high) // (2 * wide * high))


class Overlaps:
    """Of so many `shapes`, given by their shares, what any two have in common. It is worked out when it is first asked
    for; `known` is what has been.

    >>> bar, square = np.full((1, 3), 4), np.full((2, 2), 4)
    >>> overlaps = Overlaps((bar, square))
    >>> overlaps.between(0, 1).astype(int) // 16
    array([[1, 2, 2, 1],
           [1, 2, 2, 1]])
    >>> overlaps.at(0, (1, 1), 1, (0, 0)) / 16, overlaps.at(0, (2, 0), 1, (0, 0))
    (1.0, 0.0)
    """

    def __init__(self, shapes: Sequence[Shares]) -> None:
        self.shapes = tuple(shapes)
        self._size = (
            tuple(_quick(2 * max(each.shape[axis] for each in shapes)) for axis in (0, 1)) if shapes else (1, 1)
        )
        self._waves: dict[int, Any] = {}
        self.known: dict[tuple[int, int], Common] = {}

    def between(self, one: int, other: int) -> Common:
        """What they have in common: [row, column] in the place where the corner of `one` lies so many rows and columns
        from the first place at which it reaches into `other`, its last row and column upon the other's first."""
        if (one, other) not in self.known:
            (rows, columns), (down, across) = self.shapes[one].shape, self.shapes[other].shape
            common = np.fft.irfft2(self._wave(other) * np.conj(self._wave(one)), self._size)
            common = np.roll(common, (rows - 1, columns - 1), (0, 1))[: rows + down - 1, : columns + across - 1]
            self.known[one, other] = np.rint(common).astype(np.float32)
            # Seen from the other one, all lies the other way round.
            self.known[other, one] = np.ascontiguousarray(self.known[one, other][::-1, ::-1])
        return self.known[one, other]

    def at(self, one: int, here: tuple[int, int], other: int, there: tuple[int, int]) -> float:
        """What they have in common with their corners at these (row, column)."""
        rows, columns = self.shapes[one].shape
        common = self.between(one, other)
        row, column = here[0] - there[0] + rows - 1, here[1] - there[1] + columns - 1
        inside = 0 <= row < common.shape[0] and 0 <= column < common.shape[1]
        return float(common[row, column]) if inside else 0.0

    def _wave(self, shape: int) -> Any:
        if shape not in self._waves:
            self._waves[shape] = np.fft.rfft2(self.shapes[shape], self._size)
        return self._waves[shape]


def _quick(length: int) -> int:
    """The next length with no factors but 2, 3 and 5: waves of such lengths are worked out several times as soon.

    >>> _quick(218), _quick(125)
    (225, 125)
    """
    rest = length
    for factor in (2, 3, 5):
        while rest % factor == 0:
            rest //= factor
    return length if rest == 1 else _quick(length + 1)
