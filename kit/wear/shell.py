"""The cut pieces that are worn, and what joins them: all that goes round the body, and nothing inside it or on it."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from typing import NamedTuple

from kit.lesson.pattern import Pattern
from kit.piece.piece import Piece, Side
from kit.piece.role import PieceRole
from kit.sewing.operation import Operation
from kit.sewing.operations.bands import SetBand
from kit.sewing.operations.joined import Seam, pairs
from kit.sewing.operations.openings import OpenSeam
from kit.sewing.operations.zips import Zip
from kit.sewing.order import operations
from kit.sewing.places import on_both
from kit.sewing.run import Run
from kit.sewing.spans import run_length, sides_of

Row = tuple[Run, ...]
_NOT_WORN: tuple[PieceRole, ...] = ("facing", "lining", "interfacing", "pocket", "flap", "bag", "strip")
TRIMS: tuple[PieceRole, ...] = ("band", "cuff", "collar")
"""Pieces that finish an edge; where the edge is worn tells where they are."""


class Joined(NamedTuple):
    """Two rows of runs, each on one half, sewn together `by` an operation."""

    a: Row
    b: Row
    by: Operation

    @property
    def zipped(self) -> bool:
        """Whether it opens again."""
        return isinstance(self.by, Zip)


def is_worn(piece: Piece) -> bool:
    """Whether a piece goes round the body: no facing, lining, pocket or the like."""
    return piece.role not in _NOT_WORN and piece.cut.cloth == "main"


def joints(pattern: Pattern) -> tuple[Joined, ...]:
    """What is joined of the pieces that are worn, in the order it is sewn; a seam with an opening left in it is one on
    either side of that."""
    found: list[Joined] = []
    for _, operation in operations(pattern):
        for a, b in _rows(pattern, operation):
            if all(is_worn(pattern.piece(run.piece)) for run in (*a, *b)):
                found += (Joined(one, other, operation) for one, other in _sided(pattern, a, b))
    return tuple(found)


def _rows(pattern: Pattern, operation: Operation) -> Iterator[tuple[Row, Row]]:
    if isinstance(operation, Zip):
        yield (operation.over,), (operation.under,)
    elif isinstance(operation, OpenSeam) and operation.opening is not None:
        a, b = operation.a[0], operation.b[0]
        start, end = operation.opening
        for low, high in ((0.0, start), (end, run_length(pattern, a))):
            if high - low > 1.0:
                one, other = on_both(pattern, a, b, (low, high))
                yield (one,), (other,)
    elif isinstance(operation, Seam):
        yield from pairs(operation.a, operation.b)
    elif isinstance(operation, SetBand):
        yield operation.a, operation.b


def _sided(pattern: Pattern, a: Row, b: Row) -> Iterator[tuple[Row, Row]]:
    """The rows as they are sewn: left to left and right to right; as one where a row goes on over both halves."""
    alike = [{side for run in row for side in sides_of(pattern, run)} == {"left", "right"} for row in (a, b)]
    each_both = all(len(sides_of(pattern, run)) == 2 for run in (*a, *b))
    if all(alike) and each_both and not any(_over_fold(pattern, run) for run in (*a, *b)):
        sides: tuple[Side, ...] = ("left", "right")
        for side in sides:
            yield tuple(replace(run, side=side) for run in a), tuple(replace(run, side=side) for run in b)
    else:
        yield _spread(pattern, a), _spread(pattern, b)


def _spread(pattern: Pattern, row: Row) -> Row:
    return tuple(replace(run, side=side) for run in row for side in sides_of(pattern, run))


def _over_fold(pattern: Pattern, run: Run) -> bool:
    """Whether a run on both halves goes on over the fold: then left and right are one edge."""
    piece = pattern.piece(run.piece)
    if run.side or not piece.has_edge(piece.fold):
        return False
    names = [edge.name for edge in piece.edges]
    at = names.index(piece.fold)
    return bool({names[at - 1], names[(at + 1) % len(names)]} & set(run.edges))
