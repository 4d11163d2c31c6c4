"""What the sewing order makes of the corners of the allowances.

At a corner two edges meet. The one sewn or turned first is crossed by the later operation, so its allowance lies
already folded there and its end must lie flush: it is shaped by the folds of its pressing (common practice, no
source). A seam pressed open, or toward its own piece, folds its allowance at the stitch line; one pressed toward
the other piece leaves it straight on. A French seam folds again at its crease. A faced edge is folded at the stitch
line. A hem is always the folded one, at the hem line and, turned twice, once more. Two edges closed by one operation,
two hems, and edges no operation closes are mitred.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass, replace
from typing import Literal, NamedTuple

from kit.errors import KitError
from kit.piece.corner import Corner
from kit.piece.piece import Edge, Piece
from kit.sewing.operation import Operation
from kit.sewing.operations.facings import AttachFacing
from kit.sewing.operations.hems import Hem
from kit.sewing.operations.joined import Seam
from kit.sewing.operations.pressing import Press
from kit.sewing.operations.seams import FrenchSeam
from kit.sewing.order import SewingOrder, operations
from kit.sewing.run import Run
from kit.sewing.spans import Span, spans

End = Literal["start", "end"]
_AT_END = 0.5  # mm; a part of an edge that comes as near as this reaches the corner

OPEN = (0.0,)
"""Folded once, at the stitch line."""
STRAIGHT: tuple[float, ...] = ()
"""Not folded: it lies on, away from its own piece."""


@dataclass(frozen=True)
class Turning:
    """How an allowance lies once its edge is closed: folded at `folds` (mm outside the stitch line). `number` counts
    the operations in sewing order, `step` and `title` are those of the sewing step."""

    operation: Operation
    number: int
    folds: tuple[float, ...]
    hem: bool = False
    step: str = ""
    title: str = ""


class Choice(NamedTuple):
    """The edge whose end is folded at a corner, and how."""

    edge: str
    turning: Turning


Turnings = dict[tuple[str, str, End], Turning]


def turnings(pattern: SewingOrder) -> Turnings:
    """{(piece, edge, its end): what closes it there first}. Operations that cannot be worked are left out."""
    found: Turnings = {}
    for number, (record, operation) in enumerate(operations(pattern), 1):
        if isinstance(operation, Hem | Seam):
            for run, folds, hem in _folded(_pressed_later(operation, pattern)):
                turning = Turning(operation, number, folds, hem, record.key, record.title)
                for key in _ends(pattern, run):
                    found.setdefault(key, turning)
            continue
        for span, hem in _others(operation, pattern):
            turning = Turning(operation, number, OPEN, hem, record.key, record.title)
            for key in _reached(pattern, span):
                found.setdefault(key, turning)
    return found


def _folded(operation: Operation) -> Iterator[tuple[Run, tuple[float, ...], bool]]:
    """(run, folds, is it a hem) for what a hem or seam closes."""
    if isinstance(operation, Hem):
        folds = (0.0, operation.second) if operation.second > 0 else OPEN
        for run in operation.runs():
            yield run, folds, True
    elif isinstance(operation, FrenchSeam):
        onto = _pressed_onto(operation)
        for run in operation.a:
            yield run, (0.0, operation.second) if onto != "b" else (operation.second,), False
        for run in operation.b:
            yield run, (0.0, operation.second) if onto == "b" else (operation.second,), False
    elif isinstance(operation, Seam):
        both = isinstance(operation, AttachFacing) or operation.press in ("open", "later")
        onto = _pressed_onto(operation)
        for side, runs in (("a", operation.a), ("b", operation.b)):
            for run in runs:
                yield run, OPEN if both or onto == side else STRAIGHT, False


def _pressed_later(operation: Operation, pattern: SewingOrder) -> Operation:
    """A seam pressed by an operation of its own, as if it had been pressed so at once; open where none presses it."""
    if not isinstance(operation, Seam) or operation.press != "later":
        return operation
    sewn = {(run.piece, edge) for run in operation.runs() for edge in run.edges}
    for record in pattern.sewing:
        for other in record.operations:
            if isinstance(other, Press) and any((run.piece, e) in sewn for run in other.seams for e in run.edges):
                return replace(operation, press=other.way)
    return operation


def _pressed_onto(operation: Seam) -> str:
    """Which row of runs the allowances of a seam are pressed onto; "one side" is the first, as it is drawn."""
    first = {run.piece for run in operation.a}
    return "a" if operation.press == "one side" or operation.press in first else "b"


def _others(operation: Operation, pattern: SewingOrder) -> Iterator[tuple[Span, bool]]:
    """(span, is it a hem) for edges closed in any other way: enclosed once sewn or faced, turned once as a hem. An
    edge that is only finished lies flat."""
    try:
        closed = operation.closes(pattern)
    except KitError:
        return  # told by the sewing order
    for closing in closed:
        if closing.how != "finished":
            yield closing.span, closing.how == "hemmed"


def _ends(pattern: SewingOrder, run: Run) -> Iterable[tuple[str, str, End]]:
    if run.start is None and run.end is None:
        for edge in run.edges:
            yield run.piece, edge, "start"
            yield run.piece, edge, "end"
        return
    try:
        parts = spans(pattern, run)
    except KitError:
        return  # told by the sewing order
    for span in parts:
        yield from _reached(pattern, span)


def _reached(pattern: SewingOrder, span: Span) -> Iterable[tuple[str, str, End]]:
    """The ends of its edge that a stretch reaches."""
    if span.start < _AT_END:
        yield span.piece, span.edge, "start"
    if span.end > pattern.piece(span.piece).edge(span.edge).path.length - _AT_END:
        yield span.piece, span.edge, "end"


def chosen(piece: Piece, before: Edge, after: Edge, found: Turnings) -> Choice | None:
    """The edge folded at the corner of two neighbours; None for a mitre."""
    one = found.get((piece.name, before.name, "end"))
    two = found.get((piece.name, after.name, "start"))
    if one is not None and two is not None and one.operation is two.operation:
        return None
    if one is not None and one.hem:
        return None if two is not None and two.hem else Choice(before.name, one)
    if two is not None and two.hem:
        return Choice(after.name, two)
    if one is None or two is None:
        return None
    return Choice(before.name, one) if one.number < two.number else Choice(after.name, two)


def meetings(piece: Piece) -> Iterator[tuple[Edge, Edge]]:
    """The neighbours around a piece, (before, after)."""
    return ((edge, piece.edges[(i + 1) % len(piece.edges)]) for i, edge in enumerate(piece.edges))


def allowed(piece: Piece, edge: Edge) -> bool:
    """Whether there is an allowance outside that edge."""
    return bool(edge.allowance) and edge.name != piece.fold


def sewn_corners(piece: Piece, found: Turnings) -> tuple[Corner, ...]:
    """The corner of every two neighbours with allowances, as the sewing order has it; one set by hand is kept."""
    by_hand = {frozenset((c.before, c.after)): c for c in piece.corners if c.by_hand}
    corners: list[Corner] = []
    for before, after in meetings(piece):
        said = by_hand.get(frozenset((before.name, after.name)))
        if said is not None:
            corners.append(said)
            continue
        if not (allowed(piece, before) and allowed(piece, after)):
            continue
        choice = chosen(piece, before, after, found)
        if choice is None or not choice.turning.folds:
            corners.append(Corner(before.name, after.name))
        else:
            corners.append(Corner(before.name, after.name, "turned", turned=choice.edge, folds=choice.turning.folds))
    return tuple(corners)
