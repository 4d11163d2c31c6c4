"""The fit changes that a reader sets by their amount alone, though the author placed none: which can be made to this
garment, and where among the entries each is worked.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import replace
from functools import partial

from kit.body.body import Body
from kit.lesson.definition import Definition
from kit.lesson.fit_change import FIT_CHANGES, possible
from kit.lesson.fit_steps import fit_parameter, place_of
from kit.lesson.parameter import Parameter, Setting
from kit.lesson.steps import Entry
from kit.lesson.working import work
from kit.piece.piece import Piece


class FitsAsked:
    """What a reader may alter of a lesson. Where a change belongs is found by drafting, which takes time, and is kept
    as long as the entries stay. A `body` is asked for only where one is needed."""

    def __init__(self) -> None:
        self._places: dict[str, tuple[tuple[Entry, ...], int]] = {}

    def forget(self, name: str) -> None:
        """The author placed that change."""
        self._places.pop(name, None)

    def offered(self, definition: Definition, body: Callable[[], Body]) -> tuple[Parameter, ...]:
        """The changes that can be made somewhere in the lesson and that it does not have."""
        own = {parameter.name for parameter in definition.parameters}
        there = _possible(definition, body())
        return tuple(fit_parameter(FIT_CHANGES[name], definition.info.language) for name in there if name not in own)

    def more(
        self,
        definition: Definition,
        known: Sequence[Parameter],
        values: Mapping[str, Setting],
        body: Callable[[], Body],
    ) -> tuple[Parameter, ...]:
        """The changes among these values that are not `known`; those set to nothing need not be possible."""
        own = {parameter.name for parameter in known}
        more = [name for name in values if name in FIT_CHANGES and name not in own]
        gone = [name for name in more if not values[name]]
        there = _possible(definition, body(), [n for n in more if n not in gone]) if len(gone) < len(more) else ()
        return tuple(fit_parameter(FIT_CHANGES[name], definition.info.language) for name in (*gone, *there))

    def placed(self, definition: Definition, values: Mapping[str, float], body: Callable[[], Body]) -> dict[str, int]:
        """The changes that `values` ask for and the author did not place, each with its place among the entries."""
        own = {parameter.name for parameter in definition.parameters}
        asked = [name for name, value in values.items() if name in FIT_CHANGES and name not in own and value > 1e-6]
        return {name: self._place(name, definition, body) for name in asked}

    def _place(self, name: str, definition: Definition, body: Callable[[], Body]) -> int:
        entries = definition.entries
        known = self._places.get(name)
        if known is None or known[0] is not entries:
            worn = body()
            place = place_of(name, definition, worn, partial(_drafted, definition, worn))
            known = self._places[name] = (entries, place)
        return known[1]


def _possible(definition: Definition, body: Body, names: Sequence[str] | None = None) -> tuple[str, ...]:
    """The changes that can be made somewhere in the lesson; of `names`, where some are named."""
    start = tuple(definition.start(body))
    pieces = start or tuple(_drafted(definition, body, len(definition.entries)).values())
    return possible(pieces, body, names)


def _drafted(definition: Definition, body: Body, number: int) -> Mapping[str, Piece]:
    """The pieces after so many entries."""
    if not number:
        return {piece.name: piece for piece in definition.start(body)}
    steps = tuple(entry for entry in definition.entries[:number] if entry.kind == "step")
    pattern = work(replace(definition, entries=steps), body, {}, whole=False)
    return {piece.name: piece for piece in pattern.pieces}
