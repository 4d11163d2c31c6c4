"""Working a lesson: from its definition, a body and values to an immutable pattern.

Entries are taken one after another (kit/lesson/worked_entry.py); what they made is put together, numbered and checked.
"""

from __future__ import annotations

import time
from collections.abc import Mapping, Sequence
from contextlib import suppress
from copy import copy
from dataclasses import dataclass, field

from kit.body.body import NOBODY, Body
from kit.diagnostic import measured, message, named_edge
from kit.errors import KitError
from kit.lesson.cornered import with_corners
from kit.lesson.definition import Definition
from kit.lesson.fit_steps import ready
from kit.lesson.following import told as follows_said
from kit.lesson.halted import entries_before
from kit.lesson.own_code import stopped
from kit.lesson.parameter import Parameter
from kit.lesson.pattern import MeasuredOn, ParameterValue, Pattern, SewRecord, StepRecord
from kit.lesson.sewn_roles import with_sewn_roles
from kit.lesson.steps import Entry
from kit.lesson.time_limit import TRIED, begins, within
from kit.lesson.tried import with_tries
from kit.lesson.worked_entry import WorkTable, drafted, measure, sewn
from kit.piece.changed import changed
from kit.piece.piece import Piece, Strip
from kit.sewing.call import CallError


def work(
    definition: Definition,
    body: Body,
    values: Mapping[str, float],
    *,
    whole: bool = True,
    time_limit: float | None = None,
) -> Pattern:
    """The pattern of a lesson for a body and parameter values (name -> mm, share or count; missing ones take
    their default). `whole=False` is for a lesson still being written: its outlines need not close yet. `time_limit` is
    the seconds it may take (None: the lesson's own). Raises `KitError` with the step and what to do for whatever
    cannot be drafted, or not in time."""
    limit = definition.time_limit if time_limit is None else time_limit
    with within(limit, definition.entries, body, values):
        definition = definition.fitted(body)
        pattern = _worked(definition, body, values, whole)
        return _tried(pattern, definition, body, values, whole)


def _worked(definition: Definition, body: Body, values: Mapping[str, float], whole: bool) -> Pattern:
    """The pattern of these values alone, without what its try-ons make of it."""
    table = WorkTable(definition, body, values)
    if (refusal := table.outside()) is not None:
        raise refusal
    made = _Made()
    for entry in definition.entries:
        _take(entry, table, made)
    return _pattern(table, made, whole)


def _tried(
    pattern: Pattern, definition: Definition, body: Body, values: Mapping[str, float], whole: bool = True
) -> Pattern:
    return with_tries(pattern, values, definition.parameters, lambda other: _worked(definition, body, other, whole))


class Reworking:
    """A lesson worked again and again for one body, some of its `values` changed each time. A step can touch only what
    it names, so all before the first entry that uses a changed value is taken over instead of being worked again.

    `reached` is the index of the entry that refused the `values` as they are, the number of entries when none did;
    `refused` says why, empty when they can be drafted, and then `pattern` is what they give. Raises `KitError` for
    values outside their range and for a body that the block refuses. `error` is the last refusal, as it was raised.

    Each draft may take the lesson's own time limit. `hurried` is for a search somebody waits for: one draft of it may
    take `TRIED` seconds or three times as long as the `values` as they are took, never more than the limit."""

    def __init__(
        self, definition: Definition, body: Body, values: Mapping[str, float], *, hurried: bool = False
    ) -> None:
        self._table = WorkTable(definition, body, values)
        self.definition, self.body, self.values = self._table.definition, self._table.body, dict(values)
        self.error: KitError | None = None
        self._before: list[tuple[dict[str, Piece], dict[str, Strip], _Made]] = []
        limit = self._seconds = self.definition.time_limit
        begun = time.monotonic()
        self.pattern, _, self.refused = self._work(self._table, _Made(), 0, keep=True)
        if hurried:
            took = time.monotonic() - begun
            # What ran out of time says nothing of how long a sound draft takes.
            self._seconds = min(limit, TRIED if took >= limit else max(TRIED, 3 * took))
        self.reached = len(self._before) - 1
        if (refusal := self._table.outside()) is not None:  # where it could be drafted too, any value may mend it
            self.pattern, self.refused, self.error = None, str(refusal), refusal

    def first_use(self, name: str) -> int:
        """The index of the first entry that uses the parameter `name`; the number of entries when none does."""
        entries = self.definition.entries
        return next((index for index, entry in enumerate(entries) if name in entry.uses), len(entries))

    def work(self, changed: Mapping[str, float]) -> tuple[Pattern | None, int, str]:
        """The pattern with some values `changed`, or None; how many entries could be worked; and why no more."""
        start = min(map(self.first_use, changed), default=len(self.definition.entries))
        if start > self.reached or not changed:
            return self.pattern, self.reached, self.refused
        values = {**self.values, **changed}
        table = copy(self._table)
        table.values = {p.name: p.checked(values.get(p.name, p.default)) for p in self.definition.parameters}
        if (refusal := table.outside()) is not None:
            self.error = refusal
            return None, self.reached, str(refusal)
        pieces, strips, made = self._before[start]
        table.pieces, table.strips = dict(pieces), dict(strips)
        return self._work(table, made.copy(), start)

    def _work(
        self, table: WorkTable, made: _Made, start: int, *, keep: bool = False
    ) -> tuple[Pattern | None, int, str]:
        entries = self.definition.entries
        index = start
        try:
            with within(self._seconds, entries, self.body, table.values):
                for index in range(start, len(entries) + 1):
                    if keep:
                        self._before.append((dict(table.pieces), dict(table.strips), made.copy()))
                    if index < len(entries):
                        _take(entries[index], table, made)
                pattern = _pattern(table, made, True)
                return _tried(pattern, self.definition, self.body, table.values), index, ""
        except KitError as error:
            self.error = error
            if keep and not self._before:
                self._work_before(table, made)
            return None, index, str(error)

    def _work_before(self, table: WorkTable, made: _Made) -> None:
        """Work what comes before the entry in which the same draft was stopped before: it is not begun again, and yet
        other values are to be tried from there on."""
        entries = self.definition.entries
        count = entries_before((entries, self.body, table.values))
        with suppress(KitError), within(self._seconds, entries[:count], self.body, table.values):
            for entry in (*entries[:count], None):
                self._before.append((dict(table.pieces), dict(table.strips), made.copy()))
                if entry is not None:
                    _take(entry, table, made)


@dataclass(frozen=True)
class _Made:
    """What the entries worked so far have made."""

    steps: list[StepRecord] = field(default_factory=list)
    sewing: list[SewRecord] = field(default_factory=list)
    finished: list[tuple[str, float]] = field(default_factory=list)
    measured_on: list[MeasuredOn] = field(default_factory=list)

    def copy(self) -> _Made:
        return _Made(list(self.steps), list(self.sewing), list(self.finished), list(self.measured_on))


def _take(entry: Entry, table: WorkTable, made: _Made) -> None:
    """Work one entry."""
    begins(entry)
    place = (
        message("refusal.step", step=entry.title)
        if entry.kind != "finished"
        else message("refusal.finished", title=entry.title)
    )
    try:
        if entry.fit:
            amount = table.values.get(entry.fit, 0.0)
            altered = ready(entry, table.pieces, amount, table.body, table.definition.info.language)
            if altered is not None:
                made.steps.append(drafted(altered, table))
        elif entry.kind == "step":
            made.steps.append(drafted(entry, table))
        elif entry.kind == "sew":
            made.sewing.append(sewn(entry, table, made.sewing))
        else:
            size, on = measure(entry, table)
            made.finished.append((entry.title, size))
            made.measured_on.append(on)
    except CallError as error:
        raise stopped(error, entry.function, place) from None
    except KitError as error:
        raise error.at(place) from None
    except Exception as error:
        raise stopped(error, entry.function, place) from error


def _pattern(table: WorkTable, made: _Made, whole: bool) -> Pattern:
    definition, body = table.definition, table.body
    pieces = _numbered(tuple(table.pieces.values()))
    offset = max((p.number for p in pieces), default=0)
    strips = tuple(changed(s, number=offset + 1 + i) for i, s in enumerate(table.strips.values()))
    shown = tuple(_shown(p, table.values[p.name], definition) for p in definition.parameters)
    over = tuple((entry.title, entry.over) for entry in definition.entries if entry.kind == "finished" and entry.over)
    pattern = Pattern(
        definition.info,
        body,
        shown,
        pieces,
        strips,
        _titled(made.steps, pieces),
        tuple(made.sewing),
        tuple(made.finished),
        over,
        table.start,
        measured_on=tuple(made.measured_on),
    )
    pattern = with_corners(with_sewn_roles(pattern))
    if whole:
        for piece in pattern.pieces:
            _check_closed(piece, body != NOBODY)
    return pattern


def _shown(parameter: Parameter, value: float, definition: Definition) -> ParameterValue:
    """A parameter's value in the pattern; what it follows from, where it was not moved."""
    shown = parameter.valued(value)
    if parameter.is_following and abs(value - parameter.default) < 1e-6:
        return changed(shown, follows=follows_said(parameter, definition.chart))
    return shown


def _titled(steps: Sequence[StepRecord], pieces: Sequence[Piece]) -> tuple[StepRecord, ...]:
    """The steps with every piece under the title it ends up with: who rules a band is not told of a collar that
    is called so later on."""
    last = {piece.name: piece.title for piece in pieces}
    found = []
    for step in steps:
        named = tuple(
            piece if last.get(piece.name, piece.title) == piece.title else changed(piece, title=last[piece.name])
            for piece in step.pieces
        )
        same = all(a is b for a, b in zip(named, step.pieces, strict=True))
        found.append(step if same else changed(step, pieces=named))
    return tuple(found)


def so_far(definition: Definition, entry: Entry, body: Body, values: Mapping[str, float]) -> Pattern:
    """The pattern as `entry` leaves it. Outlines need not close yet."""
    every = definition.entries
    at = next(i for i, other in enumerate(every) if (other.kind, other.name) == (entry.kind, entry.name))
    wanted = every[: at + 1]
    if entry.kind != "step":
        steps = tuple(e for e in every if e.kind == "step")
        wanted = steps + tuple(e for e in wanted if e.kind == "sew" and e is not every[at]) + (every[at],)
    return work(changed(definition, entries=wanted), body, values, whole=False)


def _numbered(pieces: tuple[Piece, ...]) -> tuple[Piece, ...]:
    """Pieces with the numbers their steps gave them, the rest counted on, in number order."""
    taken = {p.number for p in pieces if p.number}
    free = (n for n in range(1, len(pieces) + len(taken) + 1) if n not in taken)
    return tuple(sorted((p if p.number else changed(p, number=next(free)) for p in pieces), key=lambda p: p.number))


def _check_closed(piece: Piece, worn: bool) -> None:
    outline = piece.outline
    crossing = outline.self_crossing()
    if crossing is not None:
        first, second, at = crossing
        raise KitError(
            message(
                "refusal.crosses_worn" if worn else "refusal.crosses",
                edge=named_edge(piece.edge(first)),
                other=named_edge(piece.edge(second)),
                across=measured(at.x),
                up=measured(at.y),
            ),
            where=piece.title,
            do=message("refusal.crosses_do"),
        )
