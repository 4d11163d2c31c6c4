"""The hand-drafting worksheet: every step of a draft in the reader's own numbers, for a ruler and a set square.

Every point has a letter and is measured from the crossing of two lines; straight lines are ruled from letter to letter;
curves are set off from the straight line between two letters (kit.geometry.guide). What is printed is rounded to what a
ruler shows, and offsets are taken from the rounded points, so that errors do not add up.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from typing import Literal

from kit.geometry import Path, Point
from kit.geometry.guide import MARK, GuideCurve, GuidePoint, guide_points, on_ruler
from kit.language import called, say, says
from kit.lesson.pattern import Pattern, StepRecord
from kit.piece.dart import darts_lying, legs
from kit.piece.piece import Edge, Mark, Notch, Piece, Strip
from kit.rulers import reading
from kit.units import System, show
from kit.wording.lists import listed
from kit.wording.names import edge_said, piece_said

Kind = Literal["rule", "curve", "trim", "trace"]
_LETTERS = "ABCDEFGHJKLMNPQRSTUVWXYZ"  # no I, no O: O is where the two lines cross
_SAME = 0.05
_NAMED = 0.6
_NEAR = 1.0
"""How far a point may lie from its place so that its number is the printed one, mm."""


@dataclass(frozen=True)
class SheetPoint:
    """A point to mark: its `letter`, its `name` as people say it (may be empty), where it is marked (`at`, mm, as the
    ruler shows it), and the cells `across` and `above` and the sentence `words` that say so."""

    letter: str
    name: str
    at: Point
    across: str
    above: str
    words: str


@dataclass(frozen=True)
class SheetLine:
    """A line to draw from the point `start` to the point `end` (letters). `edge` is its name in the lesson (empty for
    what is drawn inside the piece), `label` as people say it, `words` the sentence. A "curve" has `rows` of
    (along, off) cells, and (along, off) of the places its ends aim for, empty where they lie on the straight line; its
    `guide` holds the same numbers in mm. "trim" keeps a part of the line `source` (piece, edge) drawn before, "trace"
    takes it from another piece."""

    kind: Kind
    edge: str
    label: str
    start: str
    end: str
    words: str
    rows: tuple[tuple[str, str], ...] = ()
    leaves: tuple[str, str] = ("", "")
    arrives: tuple[str, str] = ("", "")
    aims: tuple[str, ...] = ()
    guide: GuideCurve | None = None
    source: tuple[str, str] = ("", "")

    @property
    def sentences(self) -> tuple[str, ...]:
        """All of it in sentences, the rows too."""
        rows = (say("worksheet.offset", along=along, start=self.start, off=off) for along, off in self.rows)
        return (self.words, *rows, *self.aims)


@dataclass(frozen=True)
class PieceSheet:
    """What a step asks of one piece: `origin` says where O lies (empty once it is said), then the new `points`, the
    `lines` to draw, what is `rubbed` out (may be empty), and `notes`: notches, openings, allowances. `piece` is the
    piece after the step, `known` the earlier points its lines and notes begin or end at. `notches` and `marks` are
    those on edges that the notes place, `allowed` says that they give allowances."""

    piece: Piece
    origin: str
    points: tuple[SheetPoint, ...]
    lines: tuple[SheetLine, ...]
    rubbed: str = ""
    notes: tuple[str, ...] = ()
    known: tuple[SheetPoint, ...] = ()
    notches: tuple[Notch, ...] = ()
    marks: tuple[Mark, ...] = ()
    allowed: bool = False

    @property
    def curves(self) -> tuple[SheetLine, ...]:
        return tuple(line for line in self.lines if line.kind == "curve")


@dataclass(frozen=True)
class WorksheetStep:
    """One drafting step in numbers: `key` and `title` are the step's ("start" for the starting block), with a sheet for
    each piece it draws on and a sentence for each strip it cuts."""

    key: str
    title: str
    sheets: tuple[PieceSheet, ...]
    strips: tuple[str, ...] = ()

    @property
    def lines(self) -> tuple[str, ...]:
        """Everything but the curves' rows as sentences, piece by piece."""
        found: list[str] = []
        for sheet in self.sheets:
            found += [text for text in (sheet.origin, sheet.rubbed) if text]
            found += [point.words for point in sheet.points]
            found += [line.words for line in sheet.lines]
            found += sheet.notes
        return (*found, *self.strips)

    @property
    def curves(self) -> tuple[SheetLine, ...]:
        """The curves of all its pieces."""
        return tuple(line for sheet in self.sheets for line in sheet.curves)


def worksheet(pattern: Pattern, units: System | None = None) -> tuple[WorksheetStep, ...]:
    """The starting block (where there is one) and every drafting step, in the numbers of one system: `units`, else the
    lesson's. Steps that draw nothing are left out."""
    desk = _Desk(units or pattern.lesson.units, pattern)
    found = []
    block = tuple(desk.sheet(piece) for piece in pattern.start if piece.edges)
    if block:
        found.append(WorksheetStep("start", say("worksheet.start"), block))
    for record in pattern.steps:
        step = _step(record, desk)
        if step.sheets or step.strips:
            found.append(step)
    return tuple(found)


def letters_of(steps: Sequence[WorksheetStep]) -> dict[str, dict[str, tuple[tuple[str, Point], ...]]]:
    """The letters of all points by step and piece, as (letter, place): those marked in the step and those of before, so
    that a picture of the step can be read together with the worksheet."""
    known: dict[str, dict[str, Point]] = {}
    found: dict[str, dict[str, tuple[tuple[str, Point], ...]]] = {}
    for step in steps:
        for sheet in step.sheets:
            known.setdefault(sheet.piece.name, {}).update({point.letter: point.at for point in sheet.points})
        found[step.key] = {name: tuple(points.items()) for name, points in known.items()}
    return found


def _step(record: StepRecord, desk: _Desk) -> WorksheetStep:
    sheets = (desk.sheet(piece) for piece in record.pieces if piece.edges)
    kept = tuple(s for s in sheets if s.points or s.lines or s.notes or s.rubbed)
    return WorksheetStep(record.key, record.title, kept, tuple(desk.strip(strip) for strip in record.strips))


class _Desk:
    """The paper as it grows: what is drawn on every piece so far, and its points by letter."""

    def __init__(self, system: System, pattern: Pattern) -> None:
        self.system = system
        self.titles = {piece.name: piece.title for piece in pattern.pieces}
        self.words: dict[tuple[str, str], str] = {}  # what the lesson's steps call an edge of the block
        for piece in (*(p for record in pattern.steps for p in record.pieces), *pattern.pieces):
            for edge in piece.edges:
                self.words.setdefault((piece.name, edge.name), edge.said)
        self.pieces: dict[str, Piece] = {}
        self.letters: dict[str, dict[tuple[float, float], SheetPoint]] = {}

    # ---- one piece ----------------------------------------------------------------------------------------

    def sheet(self, piece: Piece) -> PieceSheet:
        """What is new on `piece`, which is remembered as it is now."""
        was = self.pieces.get(piece.name)
        piece = replace(piece, title=self.titles.get(piece.name, piece.title))
        self.now = piece
        self.fresh: list[SheetPoint] = []
        self.known: dict[str, SheetPoint] = {}
        origin = "" if was else self._origin(piece)
        lines: list[SheetLine] = []
        rubbed: list[str] = []
        old = {edge.name: edge for edge in was.edges} if was else {}
        # An edge that is a part of the old one was only cut shorter: what is left stays on the paper, and nothing is
        # rubbed out but the rest. The worksheet tells lines, then what to rub out, then notches and allowances, as a
        # hand does them.
        for edge in piece.edges:
            before = old.get(edge.name)
            if before is None or before.path != edge.path:
                found = self._edge(edge, was)
                lines += found
                if (
                    before is not None
                    and not _part_of(before.path, edge.path)
                    and not any(line.kind == "trim" and line.source[1] == edge.name for line in found)
                ):
                    rubbed.append(self._said(before))
        rubbed += [self._said(edge) for edge in old.values() if not piece.has_edge(edge.name)]
        lines += self._inside(piece, was)
        allowances = list(self._allowances(piece, was))
        notes = [*self._notches(piece, was), *allowances]
        self.pieces[piece.name] = piece
        said = say("worksheet.rub_out", lines=listed(rubbed)) if rubbed else ""
        fresh, known = tuple(self.fresh), tuple(self.known.values())
        notches, marks = _placed_on_edges(piece, was)
        allowed = bool(allowances)
        return PieceSheet(piece, origin, fresh, tuple(lines), said, tuple(notes), known, notches, marks, allowed)

    def strip(self, strip: Strip) -> str:
        return say(
            "worksheet.strip",
            title=strip.title,
            count=strip.pieces,
            length=show(strip.cut_length, self.system),
            width=show(strip.width, self.system),
        )

    def _origin(self, piece: Piece) -> str:
        found = [say("worksheet.origin")]
        named = [(self._said(edge), edge.path) for edge in piece.edges]
        named += [(_named(name), path) for name, path in piece.guides]
        for key, flat in (("upright", 0), ("level", 1)):
            lying = [name for name, path in named if all(abs((p.x, p.y)[flat]) < 0.01 for p in path.points())]
            if lying:
                found.append(say(f"worksheet.{key}", line=lying[0]))
        return " ".join(found)

    def _said(self, edge: Edge, piece: str = "") -> str:
        """An edge as people say it: the lesson's own words, else the language's for that name, else the name."""
        own = self.words.get((piece or self.now.name, edge.name)) or edge.said
        return edge_said(replace(edge, said=own)) if own or says(f"edge.{edge.name}") else _named(edge.name)

    # ---- points -------------------------------------------------------------------------------------------

    def _pin(self, p: Point) -> Point:
        return Point(self._as_read(p.x), self._as_read(p.y))

    def _as_read(self, value: float) -> float:
        """Where a ruler shows what the booklet prints for `value`, where that is near enough to draw by: 38 cm are
        15 in there and here, not 14 15/16. Longer lengths are printed rounder than a draft may be."""
        printed = math.copysign(reading(abs(value), self.system)[self.system] * MARK[self.system], value)
        return printed if abs(printed - value) <= _NEAR + 1e-9 else on_ruler(value, self.system)

    def letter(self, place: Point, name: str = "") -> str:
        """The letter of a place on the piece; a new one is added to the points to mark."""
        at = self._pin(place)
        known = self.letters.setdefault(self.now.name, {})
        key = (round(at.x, 3) + 0.0, round(at.y, 3) + 0.0)
        if key not in known:
            count = len(known)
            letter = _LETTERS[count % len(_LETTERS)] + (str(count // len(_LETTERS) + 1) if count >= 24 else "")
            name = name or next((_named(n) for n, p in self.now.points if p.distance(place) < _NAMED), "")
            across = self._cell(at.x, "right", "left", "on_upright")
            above = self._cell(at.y, "up", "down", "on_level")
            said = {"letter": letter, "across": across, "above": above}
            key_ = ("named_point" if name else "point") + ("" if any(key) else "_at_origin")
            words = say(f"worksheet.{key_}", {**said, "name": name} if name else said)
            known[key] = SheetPoint(letter, name, at, across, above, words)
            self.fresh.append(known[key])
        point = known[key]
        if point not in self.fresh:
            self.known[point.letter] = point
        return point.letter

    def _cell(self, value: float, more: str, less: str, none: str) -> str:
        if abs(value) < 1e-6:
            return say(f"worksheet.{none}")
        return say(f"worksheet.{more if value > 0 else less}", length=show(abs(value), self.system))

    # ---- lines --------------------------------------------------------------------------------------------

    def _edge(self, edge: Edge, was: Piece | None) -> list[SheetLine]:
        """An edge as a part of one drawn before, a line traced from another piece, or lines to draw."""
        label = self._said(edge)
        kept = self._kept(edge.path, was)
        if kept is not None:
            return [self._taken("trim", edge.name, label, edge.path, kept, {})]
        for name, piece in self.pieces.items():
            if name != self.now.name:
                for other in piece.edges:
                    if _alike(edge.path, other.path) or (not edge.path.is_straight and _part_of(edge.path, other.path)):
                        title = piece_said(piece.title or name.replace("_", " "))
                        more = {"line": self._said(other, name), "piece": title}
                        return [self._taken("trace", edge.name, label, edge.path, (name, other.name), more)]
        return self._drawn(label, edge.path, edge.name, was)

    def _kept(self, path: Path, was: Piece | None) -> tuple[str, str] | None:
        """The line of the piece as it was that `path` is a part of."""
        for other in was.edges if was else ():
            if _part_of(path, other.path):
                return self.now.name, other.name
        return None

    def _taken(
        self, kind: Kind, edge: str, label: str, path: Path, source: tuple[str, str], more: dict[str, str]
    ) -> SheetLine:
        start, end = self.letter(path.start), self.letter(path.end)
        words = say(f"worksheet.{kind}", {"edge": _capital(label), "start": start, "end": end, **more})
        return SheetLine(kind, edge, label, start, end, words, source=source)

    def _drawn(self, label: str, path: Path, edge: str = "", was: Piece | None = None) -> list[SheetLine]:
        found = []
        for curve in guide_points(path, self.system, self._pin):
            start, end = self.letter(curve.path.start), self.letter(curve.path.end)
            kept = self._kept(curve.path, was)
            if start == end:
                continue
            if kept is not None:
                found.append(self._taken("trim", edge, label, curve.path, kept, {}))
            elif curve.is_straight:
                said = {"edge": _capital(label), "start": start, "end": end}
                words = say("worksheet.rule", said, length=show(self._ruled_length(curve.path), self.system))
                found.append(SheetLine("rule", edge, label, start, end, words))
            else:
                found.append(self._curve(label, edge, start, end, _ruled(curve, self.system)))
        return found

    def _ruled_length(self, path: Path) -> float:
        """How long the line is: a level or upright one, as far as the numbers of its two ends lie apart."""
        way = self._pin(path.end) - self._pin(path.start)
        return way.length if min(abs(way.x), abs(way.y)) < 1e-6 else path.length

    def _curve(self, label: str, edge: str, start: str, end: str, curve: GuideCurve) -> SheetLine:
        rows = tuple((show(p.along, self.system), self._off(p.up)) for p in curve.points)
        said = {"edge": _capital(label), "start": start, "end": end}
        words = say("worksheet.curve", said, chord=show(curve.chord, self.system))
        cells, aims = [], []
        for key, aim in (("leaves", curve.leaves), ("arrives", curve.arrives)):
            if abs(aim.up) < 1e-6:
                cells.append(("", ""))
                aims.append(say(f"worksheet.{key}_straight", start=start, end=end))
            else:
                cell = (show(aim.along, self.system), self._off(aim.up))
                cells.append(cell)
                aims.append(say(f"worksheet.{key}", start=start, end=end, along=cell[0], off=cell[1]))
        return SheetLine("curve", edge, label, start, end, words, rows, cells[0], cells[1], tuple(aims), curve)

    def _off(self, up: float) -> str:
        return self._cell(up, "off_left", "off_right", "off_none")

    # ---- inside and on the lines --------------------------------------------------------------------------

    def _inside(self, piece: Piece, was: Piece | None) -> Iterable[SheetLine]:
        """Darts, pleats, marks and the grainline that are new."""
        for dart in darts_lying(piece):
            if was is None or dart not in was.darts:
                for leg in legs(piece, dart):
                    yield from self._drawn(dart.label, leg)
        for pleat in piece.pleats:
            if was is None or pleat not in was.pleats:
                for line in pleat.lines:
                    yield from self._drawn(pleat.label, line)
        for mark in piece.marks:
            if was is None or mark not in was.marks:
                if mark.path is not None:
                    yield from self._drawn(mark.label, mark.path)
                elif mark.point is not None and not mark.edge:
                    self.letter(mark.point, mark.label)
        if piece.grain is not None and (was is None or was.grain != piece.grain):
            yield from self._drawn(say("worksheet.grain"), Path.line(piece.grain.start, piece.grain.end))

    def _notches(self, piece: Piece, was: Piece | None) -> Iterable[str]:
        notches, marks = _placed_on_edges(piece, was)
        for notch in notches:
            said = self._on_edge(piece, notch.edge)
            yield say("worksheet.notch", said, kind=notch.kind, length=show(notch.distance, self.system))
        for mark in marks:
            yield self._mark_on_edge(piece, mark)

    def _mark_on_edge(self, piece: Piece, mark: Mark) -> str:
        said = {**self._on_edge(piece, mark.edge), "mark": mark.label}
        if mark.kind == "opening":
            low, high = (show(value, self.system) for value in sorted((mark.start, mark.end)))
            return say("worksheet.opening", said, low=low, high=high)
        return say("worksheet.mark_on_edge", said, length=show(mark.start, self.system))

    def _on_edge(self, piece: Piece, name: str) -> dict[str, str]:
        edge = piece.edge(name)
        return {"edge": _capital(self._said(edge)), "start": self.letter(edge.path.start)}

    def _allowances(self, piece: Piece, was: Piece | None) -> Iterable[str]:
        old = {edge.name: edge.allowance for edge in was.edges} if was else {}
        widths: dict[str, list[str]] = {}
        for edge in piece.edges:
            if edge.allowance and old.get(edge.name) != edge.allowance:
                widths.setdefault(show(edge.allowance, self.system, "allowance"), []).append(self._said(edge))
        for width, lines in widths.items():
            yield say("worksheet.allow", width=width, lines=listed(lines))
        extra: dict[str, list[str]] = {}
        known = {edge.name: edge.extra for edge in was.edges} if was else {}
        for edge in piece.edges:
            if edge.extra and known.get(edge.name) != edge.extra:
                extra.setdefault(show(edge.extra, self.system, "allowance"), []).append(self._said(edge))
        for width, lines in extra.items():
            yield say("worksheet.allow_extra", width=width, lines=listed(lines))


def _placed_on_edges(piece: Piece, was: Piece | None) -> tuple[tuple[Notch, ...], tuple[Mark, ...]]:
    """The notches and marks a step places along edges."""
    notches = (n for n in piece.notches if (was is None or n not in was.notches) and piece.has_edge(n.edge))
    marks = (
        mark
        for mark in piece.marks
        if mark.path is None and piece.has_edge(mark.edge) and (was is None or mark not in was.marks)
    )
    return tuple(notches), tuple(marks)


def _ruled(curve: GuideCurve, system: System) -> GuideCurve:
    """The curve with the numbers a ruler shows."""
    points = tuple(GuidePoint(p.along, on_ruler(p.up, system)) for p in curve.points)
    leaves, arrives = (replace(aim, up=on_ruler(aim.up, system)) for aim in (curve.leaves, curve.arrives))
    return replace(curve, points=points, leaves=leaves, arrives=arrives)


def _alike(one: Path, two: Path) -> bool:
    return one == two or one == two.reversed()


def _part_of(part: Path, whole: Path) -> bool:
    """Whether `part` lies on `whole`."""
    if part.length > whole.length + 0.1:
        return False
    steps = 8
    return all(whole.distance_to(part.at(part.length * i / steps)) < _SAME for i in (0, steps, *range(1, steps)))


def _named(name: str) -> str:
    """A point or line of a block by its name in the language, else by the name the lesson gave it."""
    key = f"worksheet.name.{name}"
    return say(key) if says(key) else called(name)


def _capital(text: str) -> str:
    return text[:1].upper() + text[1:]
