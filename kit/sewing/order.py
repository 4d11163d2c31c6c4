"""The order of sewing: every operation of a pattern carried out in turn, with what speaks against it."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace
from typing import Any, Protocol

from kit.diagnostic import Diagnostic, measured, message, named_edge
from kit.errors import KitError
from kit.sewing.cut import Cut
from kit.sewing.facts import at_place
from kit.sewing.named import edge_on
from kit.sewing.open_folds import left_open
from kit.sewing.operation import Operation
from kit.sewing.outcome import Closing, Fact
from kit.sewing.places import corner
from kit.sewing.rules import apart
from kit.sewing.spans import neighbours, sides_of
from kit.sewing.state import TOLERANCE, EdgeKey, State
from kit.sewing.trouble import trouble


class SewnStep(Protocol):
    """One sewing step: its key, its title, and the operations it writes."""

    @property
    def key(self) -> str: ...

    @property
    def title(self) -> str: ...

    @property
    def operations(self) -> tuple[Operation, ...]: ...


class SewingOrder(Cut, Protocol):
    """A pattern with the order it is sewn in."""

    @property
    def sewing(self) -> Sequence[SewnStep]: ...


def operations(pattern: SewingOrder) -> Iterator[tuple[Any, Operation]]:
    """(the sewing step that begins it, operation) of every operation, once and whole, in the order they are begun."""
    for record in pattern.sewing:
        for operation in record.operations:
            if operation.begins:
                yield record, operation.entire


def of_kind(pattern: SewingOrder, *kinds: str) -> list[Any]:
    """The operations of some kinds, in sewing order."""
    return [operation for _, operation in operations(pattern) if operation.kind in kinds]


def crossed(state: State, operation: Operation, pattern: Cut) -> tuple[Diagnostic, ...]:
    """Seams that the operation runs into while they still wait for the iron, or for a row that finishes them."""
    if not operation.crosses:
        return ()
    found: dict[EdgeKey, Diagnostic] = {}
    for run in operation.runs():
        piece = pattern.piece(run.piece)
        for name in neighbours(piece, run.edges):
            for side in sides_of(pattern, run):
                key = (run.piece, side, name)
                facts: list[Fact] = [("half_sewn", *key), ("unpressed", *key)]
                if run.start is None and run.end is None:  # a whole edge ends at the corner with that one
                    facts = [at_place(pattern, fact, corner(pattern, run, name)) for fact in facts]
                half, waits = map(state.touches, facts)
                if half or waits:
                    code = "half_sewn" if half else "not_pressed"
                    found[key] = trouble(
                        code,
                        message(f"sewing_trouble.{code}", edge=edge_on(piece, side, name)),
                        piece.title,
                        message(f"sewing_trouble.{code}_do"),
                        piece=piece.name,
                        edge=name,
                    )
    return tuple(found.values())


def twice(state: State, closings: tuple[Closing, ...], pattern: Cut) -> tuple[Diagnostic, ...]:
    """Stretches that are closed already, and edges on the fold that need no closing."""
    found: list[Diagnostic] = []
    for closing in closings:
        span = closing.span
        piece = pattern.piece(span.piece)
        edge = piece.edge(span.edge)
        if span.edge == piece.fold:
            found.append(
                trouble(
                    "fold_sewn",
                    message("sewing_trouble.fold_sewn", edge=named_edge(edge)),
                    piece.title,
                    message("sewing_trouble.fold_sewn_do"),
                    piece=piece.name,
                    edge=edge.name,
                )
            )
        for done in state.on((span.piece, span.side, span.edge)):
            shared = done.span.overlap(span)
            if shared > TOLERANCE:
                key = f"closed_twice_{done.how}{'_by' if done.step else ''}"
                found.append(
                    trouble(
                        "closed_twice",
                        message(
                            f"sewing_trouble.{key}",
                            amount=measured(shared),
                            edge=edge_on(piece, span.side, span.edge),
                            step=done.step,
                        ),
                        piece.title,
                        message("sewing_trouble.closed_twice_do"),
                        amount=shared,
                        piece=piece.name,
                        edge=edge.name,
                    )
                )
    return tuple(found)


def sew(pattern: SewingOrder) -> tuple[State, tuple[Diagnostic, ...]]:
    """Carry out the whole order. Refused operations are carried out all the same, so that one slip is told
    once. An operation that cannot be worked at all (it names a piece that is gone) is left out and told."""
    state = State()
    met: list[Diagnostic] = []
    for record in pattern.sewing:
        for operation in record.operations:
            try:
                outcome = operation.outcome(pattern)
                against = operation.refusals(state, pattern)
                troubles = (
                    *against,
                    *(found for found in apart(operation.runs(), state, pattern) if found not in against),
                    *crossed(state, operation, pattern),
                    *twice(state, outcome.closes, pattern),
                    *left_open(state, outcome, pattern),
                )
                state = state.after(outcome, pattern, record.title)
            except KitError as error:
                troubles = (replace(error.told, code="cannot_be_sewn"),)
            met += [_met(found, record.key, record.title) for found in troubles]
    return state, tuple(met)


def _met(found: Diagnostic, step: str, title: str) -> Diagnostic:
    """The same, met in a step."""
    if found.at:
        return replace(found, at=message("proof.where_step", piece=found.at, step=title), step=step)
    return replace(found, at=message("proof.where_step_alone", step=title), step=step)
