"""Working a lesson: from its definition, a body and values to an immutable pattern.

Each step gets the pieces it names on a bench, its parameters and measurements as named lengths, and may
change only the pieces it was given. What it made is frozen and recorded before the next step begins.
"""

from __future__ import annotations

import time
from collections.abc import Mapping, Sequence
from copy import copy
from dataclasses import dataclass, field, replace
from typing import Any

from kit.body.body import NOBODY, Body
from kit.diagnostic import measured, message, named_edge
from kit.errors import KitError, near
from kit.geometry import Path, Point
from kit.lesson.bench import BenchPiece, opened
from kit.lesson.bench_strip import BenchStrip
from kit.lesson.bounds import Known, outside
from kit.lesson.cornered import with_corners
from kit.lesson.definition import Definition
from kit.lesson.fit_steps import measure_labels, ready
from kit.lesson.following import told as follows_said
from kit.lesson.hand import HandMove, carried_out, ends_of
from kit.lesson.open_piece import OpenPiece
from kit.lesson.own_code import stopped
from kit.lesson.parameter import Parameter
from kit.lesson.pattern import ParameterValue, Pattern, SewRecord, StepMeasure, StepRecord
from kit.lesson.sewn_roles import with_sewn_roles
from kit.lesson.steps import Entry
from kit.lesson.time_limit import TRIED, begins, within
from kit.lesson.tried import with_tries
from kit.piece.piece import Piece, Strip
from kit.placeholder import names as placeholder_names
from kit.sewing.call import CallError
from kit.sewing.handle import PieceHandle, StripHandle
from kit.sewing.make import Make
from kit.units import Length


class _Table:
    """The growing state while a lesson is worked."""

    def __init__(self, definition: Definition, body: Body, values: Mapping[str, float]) -> None:
        definition = definition.fitted(body)
        body = definition.completed(body)
        self.definition = definition
        self.body = body
        self.parameters = {p.name: p for p in definition.parameters}
        self.values = {p.name: p.checked(values.get(p.name, p.default)) for p in definition.parameters}
        unknown = set(values) - set(self.parameters)
        if unknown:
            name = sorted(unknown)[0]
            raise KitError(f"there is no parameter '{name}'.", do=near(name, self.parameters))
        self.start = tuple(definition.start(body))
        self.pieces: dict[str, Piece] = {piece.name: piece for piece in self.start}
        self.strips: dict[str, Strip] = {}

    def outside(self) -> KitError | None:
        """The refusal of a value that breaks a bound following from others."""
        if all(p.at_least is None and p.at_most is None for p in self.definition.parameters):
            return None
        return outside(Known(self.parameters, self.values, self.body))

    def number(self, name: str) -> Length | float:
        """A parameter or measurement by name, carrying its name so that pictures can dimension it."""
        if name in self.parameters:
            kind, value = self.parameters[name].kind, self.values[name]
            return Length(value, name) if kind == "length" else value
        return Length(self.body[name], name)

    def has_number(self, name: str) -> bool:
        return name in self.parameters or name in self.body

    def unknown(self, name: str, more: tuple[str, ...] = ()) -> KitError:
        known = [*self.pieces, *self.strips, *self.parameters, *(m.name for m in self.body.measures), *more]
        return KitError(f"there is no piece, parameter or measurement called '{name}'.", do=near(name, known))

    def kind(self, name: str) -> str:
        return self.parameters[name].kind if name in self.parameters else "length"


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
    table = _Table(definition, body, values)
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
    values outside their range and for a body that the block refuses.

    Each draft may take the lesson's own time limit. `hurried` is for a search somebody waits for: one draft of it may
    take `TRIED` seconds or three times as long as the `values` as they are took, never more than the limit."""

    def __init__(
        self, definition: Definition, body: Body, values: Mapping[str, float], *, hurried: bool = False
    ) -> None:
        self._table = _Table(definition, body, values)
        self.definition, self.body, self.values = self._table.definition, self._table.body, dict(values)
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
            self.pattern, self.refused = None, str(refusal)

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
            return None, self.reached, str(refusal)
        pieces, strips, made = self._before[start]
        table.pieces, table.strips = dict(pieces), dict(strips)
        return self._work(table, made.copy(), start)

    def _work(self, table: _Table, made: _Made, start: int, *, keep: bool = False) -> tuple[Pattern | None, int, str]:
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
            return None, index, str(error)


@dataclass(frozen=True)
class _Made:
    """What the entries worked so far have made."""

    steps: list[StepRecord] = field(default_factory=list)
    sewing: list[SewRecord] = field(default_factory=list)
    finished: list[tuple[str, float]] = field(default_factory=list)

    def copy(self) -> _Made:
        return _Made(list(self.steps), list(self.sewing), list(self.finished))


def _take(entry: Entry, table: _Table, made: _Made) -> None:
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
                made.steps.append(_draft(altered, table))
        elif entry.kind == "step":
            made.steps.append(_draft(entry, table))
        elif entry.kind == "sew":
            made.sewing.append(_sew(entry, table, made.sewing))
        else:
            made.finished.append((entry.title, _finished(entry, table)))
    except CallError as error:
        raise stopped(error, entry.function, place) from None
    except KitError as error:
        raise error.at(place) from None
    except Exception as error:
        raise stopped(error, entry.function, place) from error


def _pattern(table: _Table, made: _Made, whole: bool) -> Pattern:
    definition, body = table.definition, table.body
    pieces = _numbered(tuple(table.pieces.values()))
    offset = max((p.number for p in pieces), default=0)
    strips = tuple(replace(s, number=offset + 1 + i) for i, s in enumerate(table.strips.values()))
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
        return replace(shown, follows=follows_said(parameter, definition.chart))
    return shown


def _titled(steps: Sequence[StepRecord], pieces: Sequence[Piece]) -> tuple[StepRecord, ...]:
    """The steps with every piece under the title it ends up with: who rules a band is not told of a collar that
    is called so later on."""
    last = {piece.name: piece.title for piece in pieces}
    found = []
    for step in steps:
        named = tuple(
            piece if last.get(piece.name, piece.title) == piece.title else replace(piece, title=last[piece.name])
            for piece in step.pieces
        )
        same = all(a is b for a, b in zip(named, step.pieces, strict=True))
        found.append(step if same else replace(step, pieces=named))
    return tuple(found)


def so_far(definition: Definition, entry: Entry, body: Body, values: Mapping[str, float]) -> Pattern:
    """The pattern as `entry` leaves it. Outlines need not close yet."""
    every = definition.entries
    at = next(i for i, other in enumerate(every) if (other.kind, other.name) == (entry.kind, entry.name))
    wanted = every[: at + 1]
    if entry.kind != "step":
        steps = tuple(e for e in every if e.kind == "step")
        wanted = steps + tuple(e for e in wanted if e.kind == "sew" and e is not every[at]) + (every[at],)
    return work(replace(definition, entries=wanted), body, values, whole=False)


def _numbered(pieces: tuple[Piece, ...]) -> tuple[Piece, ...]:
    """Pieces with the numbers their steps gave them, the rest counted on, in number order."""
    taken = {p.number for p in pieces if p.number}
    free = (n for n in range(1, len(pieces) + len(taken) + 1) if n not in taken)
    return tuple(sorted((p if p.number else replace(p, number=next(free)) for p in pieces), key=lambda p: p.number))


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


def _draft(entry: Entry, table: _Table) -> StepRecord:
    bench: dict[str, BenchPiece] = {}
    strips: dict[str, BenchStrip] = {}
    # A step is handed exactly what its arguments name, each piece on a bench of its own. Two things follow from that
    # and are relied on: no step can touch a piece it does not name, and values unchanged in all arguments give the
    # same step (`Reworking`).
    given: dict[str, Any] = {}
    before: dict[str, Piece] = {}
    for name in entry.uses:
        title = name.replace("_", " ").capitalize()
        if name in entry.makes and name not in table.pieces:
            given[name] = bench[name] = BenchPiece(Piece(name, title, ()))
        elif name in table.pieces:
            given[name] = bench[name] = BenchPiece(table.pieces[name])
            before[name] = table.pieces[name]
        elif name in entry.strips:
            given[name] = strips[name] = BenchStrip(name, title, table.definition.info.cloth_widths)
        elif name == "body":
            given[name] = table.body
        elif table.has_number(name):
            given[name] = table.number(name)
        else:
            raise table.unknown(name, ("body",))
    # The author's function gives nothing back: it changes what it was handed. What it did is read afterwards, by
    # comparing each piece before and after, so that pictures and sentences cannot say anything else than what was
    # drafted.
    entry.function(**given)

    spots = tuple(spot for piece in bench.values() for spot in opened(piece).spots)
    new: list[tuple[str, str, Path]] = []
    removed: list[tuple[str, str, Path]] = []
    points: list[tuple[str, str, Point]] = []
    for name, piece in bench.items():
        frozen = piece.freeze()
        if name in entry.makes and not frozen.edges:
            raise KitError(f"the step says it makes '{name}' but draws nothing on it.", do="Draw it, or leave it out.")
        # Frozen pieces go back on the table at once: a later step of the same run must see them, and never the bench.
        table.pieces[name] = frozen
        fresh, gone, marks = _difference(before.get(name), frozen, opened(piece).drawn)
        new += fresh
        removed += gone
        points += marks
    after = [piece.freeze() for piece in bench.values()]
    for name, strip in strips.items():
        table.strips[name] = strip.freeze()
    made_strips = tuple(table.strips[name] for name in strips)
    return StepRecord(
        key=entry.name,
        title=entry.title,
        text=entry.text,
        cell=entry.cell,
        uses=entry.uses,
        values=_text_values(entry, table, spots),
        pieces=tuple(table.pieces[name] for name in bench),
        new=tuple(new),
        removed=tuple(removed),
        new_points=tuple(points),
        spots=_labelled(spots, table),
        strips=made_strips,
        new_notches=tuple((p.name, n) for p in after for n in p.notches if n not in _was(before, p).notches),
        new_marks=tuple((p.name, m) for p in after for m in p.marks if m not in _was(before, p).marks),
        allowed=tuple(p.name for p in after if _allowances(p) - _allowances(_was(before, p))),
        grained=tuple(p.name for p in after if p.grain is not None and p.grain != _was(before, p).grain),
        moves=tuple(move for name, piece in bench.items() for move in _moves(name, opened(piece), new, points)),
        limits=tuple(dict.fromkeys(name for piece in bench.values() for name in opened(piece).limits)),
    )


def _moves(
    name: str, piece: OpenPiece, new: Sequence[tuple[str, str, Path]], points: Sequence[tuple[str, str, Point]]
) -> tuple[HandMove, ...]:
    """What the hand did on a piece, as far as it led to what is new."""
    if not piece.hand:
        return ()
    ends = [p for owner, _, path in new if owner == name for p in (path.start, path.end)]
    ends += [p for owner, _, p in points if owner == name]
    before = piece.before.marks
    for mark in piece.piece.marks:
        if mark not in before:
            ends += [mark.point] if mark.point is not None else []
            ends += ends_of(mark.path.curves) if mark.path is not None else []
    return carried_out(piece.hand, ends)


def _was(before: dict[str, Piece], piece: Piece) -> Piece:
    return before.get(piece.name, Piece(piece.name, piece.title, ()))


def _allowances(piece: Piece) -> set[tuple[str, float, float]]:
    return {(e.name, e.allowance, e.extra) for e in piece.edges if e.allowance is not None and e.name != piece.fold}


def _labelled(spots: tuple[StepMeasure, ...], table: _Table) -> tuple[StepMeasure, ...]:
    labels = {one.name: one.measurement.said for one in table.definition.own if one.measurement.title}
    labels |= {name: p.label for name, p in table.parameters.items()}
    labels |= measure_labels(table.definition)
    seen: dict[tuple[object, ...], StepMeasure] = {}
    for spot in spots:
        label = labels.get(spot.name, spot.name.replace("_", " "))
        edge = "" if spot.name in labels else spot.edge
        seen.setdefault((spot.name, spot.piece, _stretch(spot)), replace(spot, label=label, edge=edge))
    return tuple(seen.values())


def _stretch(spot: StepMeasure) -> tuple[float, ...]:
    """What tells two places where one measure is set off apart: the direction and the stretch of paper along it. The
    width of a rectangle is the same at its bottom and at its top; 9 cm from the left are not 9 cm from the right."""
    way = spot.end - spot.start
    if spot.allowance or way.length < 0.05:
        return ()
    unit = way.unit()
    if (round(unit.x, 3), round(unit.y, 3)) < (0.0, 0.0):
        unit = unit * -1.0
    origin = Point(0.0, 0.0)
    ends = sorted(unit.dot(p - origin) for p in (spot.start, spot.end))
    return (round(unit.x, 2), round(unit.y, 2), *(round(end, 0) for end in ends))


def _text_values(entry: Entry, table: _Table, spots: tuple[StepMeasure, ...]) -> tuple[tuple[str, float, str], ...]:
    """The numbers a step's words may name: its own arguments and what it measured."""
    found: dict[str, tuple[str, float, str]] = {spot.name: (spot.name, spot.value, spot.kind) for spot in spots}
    for name in entry.uses:
        if table.has_number(name):
            found[name] = (name, float(table.number(name)), table.kind(name))
    for name in placeholder_names(entry.text):
        if name not in found:
            raise KitError(
                f"the text names {{{name}}}, which the step neither uses nor measures.",
                do=near(name, found) + " Add it to the step's arguments, or measure it.",
            )
    return tuple(found.values())


def _difference(
    before: Piece | None, after: Piece, drawn: set[str]
) -> tuple[list[tuple[str, str, Path]], list[tuple[str, str, Path]], list[tuple[str, str, Point]]]:
    """(new lines, removed or redrawn lines, new points) of one piece, by name."""
    old = {} if before is None else {e.name: e.path for e in before.edges} | dict(before.guides)
    now = {e.name: e.path for e in after.edges} | dict(after.guides)
    name = after.name
    new = [(name, line, path) for line, path in now.items() if line in drawn and old.get(line) != path]
    removed = [(name, line, path) for line, path in old.items() if now.get(line) != path]
    old_points = {} if before is None else dict(before.points)
    points = [(name, p, at) for p, at in after.points if old_points.get(p) != at]
    return new, removed, points


def _sew(entry: Entry, table: _Table, before: Sequence[SewRecord]) -> SewRecord:
    sewn = [operation for record in before for operation in record.operations]
    make = Make(tuple(table.pieces.values()), tuple(table.strips.values()), sewn)
    given: dict[str, Any] = {}
    values: list[tuple[str, float, str]] = []
    for name in entry.uses:
        if name == "make":
            given[name] = make
        elif name in table.pieces:
            given[name] = PieceHandle(table.pieces[name])
        elif name in table.strips:
            given[name] = StripHandle(table.strips[name])
        elif table.has_number(name):
            given[name] = table.number(name)
            values.append((name, float(table.number(name)), table.kind(name)))
        else:
            raise table.unknown(name, ("make",))
    entry.function(**given)
    for name in placeholder_names(entry.text):
        if name not in {value[0] for value in values}:
            raise KitError(
                f"the text names {{{name}}}, which the step does not use.",
                do="Add it to the step's arguments.",
            )
    return SewRecord(
        entry.name, entry.title, entry.text, entry.cell, tuple(make.operations), tuple(values), entry.words
    )


def _finished(entry: Entry, table: _Table) -> float:
    given: dict[str, Any] = {}
    for name in entry.uses:
        if name in table.pieces:
            given[name] = BenchPiece(table.pieces[name])
        elif table.has_number(name):
            given[name] = table.number(name)
        else:
            raise table.unknown(name)
    return float(entry.function(**given))
