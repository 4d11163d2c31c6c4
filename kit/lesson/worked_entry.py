"""One entry of a lesson worked: its pieces on a bench, its numbers by name, and the record of what it did.

Each step gets the pieces it names on a bench, its parameters and measurements as named lengths, and may
change only the pieces it was given. What it made is frozen and recorded before the next step begins.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

from kit.body.body import Body
from kit.errors import KitError, near
from kit.geometry import Path, Point
from kit.lesson.bench import BenchPiece, opened
from kit.lesson.bench_strip import BenchStrip
from kit.lesson.bounds import Known, outside
from kit.lesson.definition import Definition
from kit.lesson.fit_steps import measure_labels
from kit.lesson.hand import HandMove, carried_out, ends_of
from kit.lesson.open_piece import OpenPiece
from kit.lesson.pattern import MeasuredOn, SewRecord, StepMeasure, StepRecord
from kit.lesson.steps import Entry
from kit.piece.changed import changed
from kit.piece.piece import Piece, Strip
from kit.placeholder import names as placeholder_names
from kit.sewing.handle import PieceHandle, StripHandle
from kit.sewing.make import Make
from kit.units import Length


class WorkTable:
    """The growing state while a lesson is worked: the pieces and strips that lie on the table, and every number that
    may be named. Raises `KitError` for a value outside its range and one whose name is not known."""

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


def drafted(entry: Entry, table: WorkTable) -> StepRecord:
    """The record of a drafting step, its pieces put back on the table. Raises what its function raises."""
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
    now = [(p, _was(before, p)) for p in after]
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
        new_notches=tuple([(p.name, n) for p, old in now for n in p.notches if n not in old.notches]),
        new_marks=tuple([(p.name, m) for p, old in now for m in p.marks if m not in old.marks]),
        allowed=tuple([p.name for p, old in now if _allowances(p) - _allowances(old)]),
        grained=tuple([p.name for p, old in now if p.grain is not None and p.grain != old.grain]),
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


def _labelled(spots: tuple[StepMeasure, ...], table: WorkTable) -> tuple[StepMeasure, ...]:
    labels = {one.name: one.measurement.said for one in table.definition.own if one.measurement.title}
    labels |= {name: p.label for name, p in table.parameters.items()}
    labels |= measure_labels(table.definition)
    seen: dict[tuple[object, ...], StepMeasure] = {}
    for spot in spots:
        label = labels.get(spot.name, spot.name.replace("_", " "))
        edge = "" if spot.name in labels else spot.edge
        seen.setdefault((spot.name, spot.piece, _stretch(spot)), changed(spot, label=label, edge=edge))
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


def _text_values(entry: Entry, table: WorkTable, spots: tuple[StepMeasure, ...]) -> tuple[tuple[str, float, str], ...]:
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
    """(new lines, removed or redrawn lines, new points) of one piece, by name. What a step leaves alone is the very
    same object, which is seen at once: every point of a long lesson is compared in every step."""
    old = {} if before is None else {e.name: e.path for e in before.edges} | dict(before.guides)
    now = {e.name: e.path for e in after.edges} | dict(after.guides)
    name = after.name
    new = [(name, line, path) for line, path in now.items() if line in drawn and not _same(old.get(line), path)]
    removed = [(name, line, path) for line, path in old.items() if not _same(now.get(line), path)]
    old_points = {} if before is None else dict(before.points)
    points = [(name, p, at) for p, at in after.points if not _same(old_points.get(p), at)]
    return new, removed, points


def _same(one: object, other: object) -> bool:
    return one is other or one == other


def sewn(entry: Entry, table: WorkTable, before: Sequence[SewRecord]) -> SewRecord:
    """The record of a sewing step that comes after those `before`."""
    done = [operation for record in before for operation in record.operations]
    make = Make(tuple(table.pieces.values()), tuple(table.strips.values()), done)
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


def measure(entry: Entry, table: WorkTable) -> tuple[float, MeasuredOn]:
    """A finished measurement, mm, and what it was worked out from."""
    given: dict[str, Any] = {}
    benches: dict[str, BenchPiece] = {}
    numbers: list[str] = []
    for name in entry.uses:
        if name in table.pieces:
            given[name] = benches[name] = BenchPiece(table.pieces[name])
        elif table.has_number(name):
            given[name] = table.number(name)
            numbers.append(name)
        else:
            raise table.unknown(name)
    size = float(entry.function(**given))
    edges = tuple((bench.piece_name, edge) for bench in benches.values() for edge in sorted(bench._open.asked))
    return size, MeasuredOn(edges, tuple(numbers))
