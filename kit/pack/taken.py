"""What is taken of a ground, and where a footprint is free to lie.

Each column is a whole number with a bit for each row that is free. To know where a run of cells has room one need not
look cell by cell: shifted down by k, the number has bit r set where row r + k is free, so a run of n cells has room at
every r set in all of n such shifts. Those are brought down to two. A column that has room for 2 cells is itself and
itself shifted by 1; for 4, that and that shifted by 2; for 8, that and that shifted by 4, and so on: its level k has
bit r set where the 2**k rows from r on are free. A run of any length has room where the largest power of two in it has,
once from its first row on and once up to its last. Python's whole numbers are as long as they need to be, and a shift
of one is a single call for all rows of a strip of cloth.

The ground may be asked in two ways. `soonest` looks at one column after another and gives up a column as soon as no
row is left that would better what it has; this suits a long ground on which only the nearest free place matters.
`struck` joins all columns into one number and answers for every place at once; this suits a small ground on which every
place has its own cost. Both look at the same bits and agree (the tests hold them to it).
"""

from __future__ import annotations

from collections.abc import Iterable

import numpy as np

from kit.pack.footprint import Cells, Footprint


class Taken:
    """A ground of so many `columns`, as long as it needs to be, nothing on it yet. `depth` is how many rows are in
    use.

    >>> import shapely
    >>> square = Footprint.of(shapely.box(0, 0, 20, 20), (10.0, 10.0))
    >>> ground = Taken(4)
    >>> ground.put(square, 0, 1)
    >>> ground.depth, ground.soonest(square, range(3), 10)
    (2, (2, 0))
    >>> ground.struck(square, 3).astype(int)
    array([[1, 1, 1],
           [1, 1, 1],
           [0, 0, 0]])
    """

    def __init__(self, columns: int) -> None:
        self.columns = columns
        self.depth = 0
        self._taken = [0] * columns  # a bit for each row that is taken: what all else is worked out from
        # The levels of each column, made as far as somebody looks; None for a column with nothing in it. They know of
        # so many rows; what lies beyond counts as taken there and must not be asked for.
        self._levels: list[list[int] | None] = [None] * columns
        self._rows = 0
        # All columns in one number, and its levels; how many bits a column has there, 0 when they must be joined anew.
        self._joined: list[int] = []
        self._stride = 0
        self._tallest = 0

    def put(self, shape: Footprint, row: int, column: int) -> None:
        """Take the cells of `shape`, its corner at `row` and `column`."""
        for at, start, length in shape.runs:
            self._taken[column + at] |= ((1 << length) - 1) << (row + start)
            self._levels[column + at] = []
        self.depth = max(self.depth, row + shape.rows)
        self._stride = 0

    def soonest(self, shape: Footprint, columns: Iterable[int], rows: int) -> tuple[int, int] | None:
        """The free place (row, column) nearest the beginning for the corner of `shape`, among the first `rows` rows of
        `columns`, the earliest named of equally near ones; None when all are struck."""
        self._reckon_with(max(rows + shape.rows, self.depth))
        found = None
        levels = self._levels
        probes = list(shape.probes)
        for column in columns:
            if rows <= 0:
                break
            free = (1 << rows) - 1  # only rows nearer than the nearest yet
            for probe in probes:
                at, level, one, two = probe
                own = levels[column + at]
                if own is not None:
                    bits = own[level] if level < len(own) else self._level(own, level, column + at)
                    # A short number and a long one together are a short one: cheaper than to join the long ones first.
                    free &= bits >> one
                    free &= bits >> two
                    if not free:
                        # What struck here last will likely strike in the next column too, so it is asked first there.
                        if probe is not probes[0]:
                            probes.remove(probe)
                            probes.insert(0, probe)
                        break
            else:
                rows = (free & -free).bit_length() - 1  # its lowest bit
                found = rows, column
        return found

    def struck(self, shape: Footprint, rows: int) -> Cells:
        """For each of the first `rows` rows and every column that leaves room for `shape`: whether its corner there
        would make it strike something. An array [row, column]."""
        self._tallest = max(self._tallest, shape.rows)
        stride = self._join(rows + self._tallest)  # the tallest, so that all ways of a shape ask the same number
        across = self.columns - shape.columns + 1
        size = stride * across
        free = (1 << size) - 1
        joined = self._joined
        for at, level, one, two in shape.probes:
            bits, start = joined[level] if level < len(joined) else _deepen(joined, level), at * stride
            free &= bits >> (start + one)
            if two != one:
                free &= bits >> (start + two)
        flat = np.unpackbits(np.frombuffer(free.to_bytes(size // 8, "little"), dtype=np.uint8), bitorder="little")
        return np.asarray(flat.reshape(across, stride).T[:rows] == 0)

    def _reckon_with(self, rows: int) -> None:
        """Have the levels know of at least so many rows."""
        if self._rows < rows:
            self._rows = rows
            self._levels = [[] if taken else None for taken in self._taken]

    def _level(self, own: list[int], level: int, column: int) -> int:
        if not own:
            own.append(((1 << self._rows) - 1) ^ self._taken[column])
        return _deepen(own, level)

    def _join(self, rows: int) -> int:
        """Have all columns in one number, one after another; gives how many bits each has there, at least `rows`. A
        footprint that begins in a row asked for ends before them, so that no level brings in bits of the column after
        it."""
        needed = -(-max(rows, self.depth) // 8) * 8
        if self._stride < needed:
            self._stride = needed
            whole = b"".join([bits.to_bytes(needed // 8, "little") for bits in self._taken])
            self._joined = [int.from_bytes(whole, "little") ^ ((1 << needed * self.columns) - 1)]
        return self._stride


def _deepen(levels: list[int], level: int) -> int:
    """That level of the first of `levels`; those before it are kept in the list."""
    while len(levels) <= level:
        levels.append(levels[-1] & (levels[-1] >> (1 << len(levels) - 1)))
    return levels[level]
