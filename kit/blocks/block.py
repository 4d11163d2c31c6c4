"""A foundation block: what a lesson may start from, drafted for a body."""

from __future__ import annotations

import inspect
from collections.abc import Callable
from dataclasses import dataclass, field, replace
from functools import wraps
from typing import Any

from kit.body.body import Body
from kit.body.measures import MEASUREMENTS
from kit.diagnostic import Message, Told, Value, measure, message
from kit.errors import KitError
from kit.lesson.definition import Definition
from kit.lesson.lesson import Lesson
from kit.lesson.parameter import Parameter
from kit.lesson.pattern import LessonInfo
from kit.lesson.steps import Entry, entry_of
from kit.lesson.verb import RESERVED
from kit.lesson.working import work
from kit.piece.piece import Piece


@dataclass(frozen=True)
class Block:
    """A block: `title`, the body `measures` it is drafted from, and `draft` (body to pieces). `steps` are those it
    is drafted by, `start` the block they begin with (none: fresh paper), `parameters` the numbers they use. `said`: its
    title in the reader's language (none: the title as it is).

    Calling it gives the pieces. Raises `KitError` when the body lacks a measurement, when the draft refuses one, or
    when something on a piece is named by a verb of the bench.

    >>> from kit import bodice_block, workshop_chart
    >>> front, back = bodice_block(workshop_chart()["W4"])
    >>> [edge.name for edge in front.edges]
    ['neck', 'shoulder', 'armhole', 'side', 'hip', 'centre']
    """

    title: str
    measures: tuple[str, ...]
    draft: Callable[[Body], tuple[Piece, ...]]
    steps: tuple[Entry, ...] = field(default=(), repr=False)
    start: Callable[[Body], tuple[Piece, ...]] | None = field(default=None, repr=False)
    parameters: tuple[Parameter, ...] = field(default=(), repr=False)
    said: Message | None = field(default=None, repr=False)

    @property
    def told(self) -> Told:
        """What it is called within a message."""
        return self.said or self.title

    @property
    def definition(self) -> Definition:
        """The lesson that drafts this block step by step, as a value. `KitError` when the block is not written as
        steps."""
        if not self.steps:
            raise KitError(f"the {self.title.lower()} is not written in steps.", do="Start a lesson from it instead.")
        return Definition(LessonInfo(self.title, ""), self.start or no_pieces, self.parameters, self.steps)

    @property
    def lesson(self) -> Lesson:
        """A fresh lesson that drafts this block step by step, to read and to change. `KitError` as `definition`."""
        return Lesson.of(self)

    def _said_for(self, body: Body) -> Told:
        return message("blocks.for_body", block=self.told, body=body.name) if body.name else self.told

    def __call__(self, body: Body) -> tuple[Piece, ...]:
        for name in self.measures:
            if name not in body:
                row = MEASUREMENTS.get(name)
                raise KitError(
                    message("blocks.missing", measure=measure(name)),
                    where=self._said_for(body),
                    do=message("blocks.missing_do", note=Value(f"measure_note.{name}", "key"))
                    if row
                    else message("blocks.missing_own_do"),
                )
        try:
            pieces = self.draft(body)
        except KitError as error:
            raise error.at(self._said_for(body)) from None
        for piece in pieces:
            refuse_verbs(piece, self.title)
        return pieces


def refuse_verbs(piece: Piece, where: str) -> None:
    """Refuse a piece of a block on which something is named by a word of the bench: a step could not tell the two
    apart. Raises `KitError` with the name and what to do."""
    drawn = [(edge.name, "edge") for edge in piece.edges]
    drawn += [(name, "construction line") for name, _ in piece.guides] + [(name, "point") for name, _ in piece.points]
    for name, what in drawn:
        if name in RESERVED:
            raise KitError(
                f"the {what} '{name}' has the name of a verb, {piece.name}.{name}(...).",
                where=f"{where}, {piece.title or piece.name}",
                do=f"Give it another name where the block is made, such as {name}_{what.split()[-1]}.",
            )


def no_pieces(body: Body) -> tuple[Piece, ...]:
    """Where a block's own lesson starts: fresh paper."""
    return ()


def block_step(title: str, *, makes: tuple[str, ...] = ()) -> Callable[[Callable[..., Any]], Entry]:
    """A step of a block, written like a step of a lesson."""

    def wrap(function: Callable[..., Any]) -> Entry:
        return entry_of("step", title, function, makes)

    return wrap


def steps_of(
    plan: Callable[..., Any], parameters: tuple[Parameter, ...]
) -> Callable[..., Callable[[Callable[..., Any]], Entry]]:
    """A `block_step` for the steps of one block, all of which draw parts of one `plan`: a function from the body and
    the numbers of the block's `parameters`, in their order (mm or share). A step takes what it gives as its argument
    `draft`, beside its pieces, measurements and those numbers that it names itself; to a lesson it is a step that uses
    the body and all of the parameters."""
    numbers = tuple(parameter.name for parameter in parameters)

    def step(title: str, *, makes: tuple[str, ...] = ()) -> Callable[[Callable[..., Any]], Entry]:
        def wrap(function: Callable[..., Any]) -> Entry:
            own = inspect.signature(function).parameters
            uses = dict.fromkeys("body" if name == "draft" else name for name in own) | dict.fromkeys(numbers)

            @wraps(function)
            def drawn(**given: Any) -> None:
                draft = plan(given["body"], *(given[name] for name in numbers))
                function(**{name: draft if name == "draft" else given[name] for name in own})

            named = [inspect.Parameter(name, inspect.Parameter.POSITIONAL_OR_KEYWORD) for name in uses]
            drawn.__signature__ = inspect.Signature(named)  # type: ignore[attr-defined]
            return entry_of("step", title, drawn, makes)

        return wrap

    return step


def drafted(
    title: str,
    steps: tuple[Entry, ...],
    start: Callable[[Body], tuple[Piece, ...]] | None = None,
    parameters: tuple[Parameter, ...] = (),
) -> Callable[[Body], tuple[Piece, ...]]:
    """The draft of a block that is written in steps: body to pieces, unnumbered. It starts on fresh paper, or with
    the pieces of another block."""

    def draft(body: Body) -> tuple[Piece, ...]:
        definition = Definition(LessonInfo(title, ""), start or no_pieces, parameters, steps)
        return tuple(replace(piece, number=0) for piece in work(definition, body, {}).pieces)

    return draft
