"""The order of sewing: every operation of a pattern carried out in turn, with what speaks against it."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple, Protocol

from kit.errors import KitError
from kit.language import say
from kit.sewing.cut import Cut
from kit.sewing.mouths import left_open
from kit.sewing.operation import Operation
from kit.sewing.outcome import Closing
from kit.sewing.state import TOLERANCE, EdgeKey, State
from kit.sewing.told import edge_told, side_told
from kit.sewing.trouble import Trouble
from kit.sewing.walk import neighbours, sides_of
from kit.units import both


class Sewn(Protocol):
    """One sewing step: its key, its title, and the operations it writes."""

    @property
    def key(self) -> str: ...

    @property
    def title(self) -> str: ...

    @property
    def operations(self) -> tuple[Operation, ...]: ...


class Order(Cut, Protocol):
    """A pattern with the order it is sewn in."""

    @property
    def sewing(self) -> Sequence[Sewn]: ...


class Refusal(NamedTuple):
    """A `Trouble` met in sewing, with the step's key and title."""

    trouble: Trouble
    step: str
    title: str


def crossed(state: State, operation: Operation, pattern: Cut) -> tuple[Trouble, ...]:
    """Seams that the operation runs into while they still wait for the iron."""
    if not operation.crosses:
        return ()
    found: dict[EdgeKey, Trouble] = {}
    for run in operation.runs():
        piece = pattern.piece(run.piece)
        for name in neighbours(piece, run.edges):
            for side in sides_of(pattern, run):
                key = (run.piece, side, name)
                if key in state.unpressed:
                    found[key] = Trouble(
                        "not_pressed",
                        say("sewing_trouble.not_pressed", edge=side_told(piece, side, name)),
                        piece.title,
                        say("sewing_trouble.not_pressed_do"),
                        piece=piece.name,
                        edge=name,
                    )
    return tuple(found.values())


def twice(state: State, closings: tuple[Closing, ...], pattern: Cut) -> tuple[Trouble, ...]:
    """Stretches that are closed already, and edges on the fold that need no closing."""
    found: list[Trouble] = []
    for closing in closings:
        span = closing.span
        piece = pattern.piece(span.piece)
        edge = piece.edge(span.edge)
        if span.edge == piece.fold:
            found.append(
                Trouble(
                    "fold_sewn",
                    say("sewing_trouble.fold_sewn", edge=edge_told(edge)),
                    piece.title,
                    say("sewing_trouble.fold_sewn_do"),
                    piece=piece.name,
                    edge=edge.name,
                )
            )
        for done in state.on((span.piece, span.side, span.edge)):
            shared = done.span.overlap(span)
            if shared > TOLERANCE:
                key = f"closed_twice_{done.how}{'_by' if done.step else ''}"
                found.append(
                    Trouble(
                        "closed_twice",
                        say(
                            f"sewing_trouble.{key}",
                            amount=both(shared),
                            edge=side_told(piece, span.side, span.edge),
                            step=done.step,
                        ),
                        piece.title,
                        say("sewing_trouble.closed_twice_do"),
                        amount=shared,
                        piece=piece.name,
                        edge=edge.name,
                    )
                )
    return tuple(found)


def sew(pattern: Order) -> tuple[State, tuple[Refusal, ...]]:
    """Carry out the whole order. Refused operations are carried out all the same, so that one slip is told
    once. An operation that cannot be worked at all (it names a piece that is gone) is left out and told."""
    state = State()
    refusals: list[Refusal] = []
    for record in pattern.sewing:
        for operation in record.operations:
            try:
                outcome = operation.outcome(pattern)
                troubles = (
                    *operation.check(state, pattern),
                    *crossed(state, operation, pattern),
                    *twice(state, outcome.closes, pattern),
                    *left_open(state, outcome, pattern),
                )
                state = state.after(outcome, pattern, record.title)
            except KitError as error:
                troubles = (Trouble("cannot_be_sewn", error.what, error.where, error.do),)
            refusals += [Refusal(trouble, record.key, record.title) for trouble in troubles]
    return state, tuple(refusals)
