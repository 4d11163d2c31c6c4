"""The words of a drafting picture on one piece: names of lines and points, the letters they have on the worksheet, the
numbers of the strokes, and every measure the step is about.

Which texts there are, and what each belongs to, is said here; where they stand is the placer's.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field

from kit.geometry import Path, Point, Vector
from kit.language import called, say
from kit.lesson.pattern import StepMeasure, StepRecord
from kit.picture.drawing import Dimension, Label
from kit.picture.hand_order import line_of_number, moves_on, numbered
from kit.picture.lettering import upright
from kit.picture.markings import place_of
from kit.picture.place import Scaling
from kit.picture.step_lines import (
    fresh_points,
    mark_line_of,
    new_lines,
    places_used,
    rectangle_corners,
    title_of,
    traced_edges,
    used_points,
)
from kit.piece.piece import Edge, Mark, Piece
from kit.prose.hand_said import point_said
from kit.prose.step_measures import place_said
from kit.units import System, percent, plain, show
from kit.units import both as both_systems
from kit.wording.names import edge_label

Letters = Mapping[str, Sequence[tuple[str, Point]]]
"""For each piece the letters of its points on the worksheet, and where they are."""
_LETTERED = 1.0
"""mm that a letter's place, which is rounded to what a ruler shows, may lie off its point."""


@dataclass(frozen=True)
class Telling:
    """How a picture tells: in which system, with both, and by which letters. `reach` is what offsets of text are taken
    from."""

    system: System = "cm"
    both: bool = False
    letters: Letters = field(default_factory=dict)
    reach: float = 100.0

    def length(self, value: float) -> str:
        """A length as people read it."""
        return both_systems(value, self.system) if self.both else show(value, self.system)


@dataclass(frozen=True)
class DrawnMeasure:
    """What is dimensioned on a piece: from `start` to `end`, or along a line; `bare` where the picture shows by itself
    what is measured, and the dimension stands on it."""

    name: str
    text: str
    value: float
    start: Point
    end: Point
    along: Path | None = None
    bare: bool = False
    allowance: bool = False
    is_length: bool = True


def shown_value(spot: StepMeasure, system: System, both: bool = False) -> str:
    """A measured spot's value as people read it: lengths in the system (or both), shares and counts bare."""
    if spot.kind == "share":
        return percent(spot.value)
    if spot.kind == "count":
        return plain(spot.value, 0)
    return both_systems(spot.value, system) if both else show(spot.value, system)


def measured(spot: StepMeasure, record: StepRecord, value: str) -> str:
    """A measure by what it is called, and its value."""
    return say("picture.measure", name=place_said(spot, record.pieces), value=value)


# ---- measures ---------------------------------------------------------------------------------------------


def measures_of(piece: Piece, record: StepRecord, tell: Telling) -> list[DrawnMeasure]:
    """Everything dimensioned on a piece: the measures of the step by name, what the hand measured off on its way to a
    point, and the sides of a rectangle ruled on fresh paper."""
    found = []
    silent = _told_elsewhere(piece, record.spots) if piece.name in record.allowed else set()
    for spot in record.spots:
        if spot.piece == piece.name and not (spot.allowance and not spot.extra and spot.name in silent):
            bare = piece.name in record.allowed and spot.allowance
            value = shown_value(spot, tell.system, tell.both)
            text = value if bare else measured(spot, record, value)
            along = None if spot.along is None or spot.along.is_straight else spot.along
            length = spot.kind == "length"
            allowance = spot.allowance
            found.append(
                DrawnMeasure(spot.name, text, spot.value, spot.start, spot.end, along, bare, allowance, length)
            )
    for number, move in enumerate(moves_on(piece, record), start=1):
        apart = move.start.distance(move.end) > 0.05
        if (
            move.kind == "mark"
            and move.path is None
            and move.size > 0
            and apart
            and not _told(found, move.start, move.end)
        ):
            text = tell.length(move.size)
            found.append(DrawnMeasure(f"{piece.name}.size.{number}", text, move.size, move.start, move.end))
    corners = rectangle_corners(piece, record)
    if corners is not None:
        for number, (a, b) in enumerate(((corners[0], corners[1]), (corners[1], corners[2])), start=1):
            size = a.distance(b)
            if not any(
                m.along is None and abs(m.start.distance(m.end) - size) < 0.5 and _level(m, a, b) for m in found
            ):
                found.append(DrawnMeasure(f"{piece.name}.side.{number}", tell.length(size), size, a, b))
    return found


def _told_elsewhere(piece: Piece, spots: Iterable[StepMeasure]) -> set[str]:
    """The allowances that another edge of the piece tells in the same picture: of all edges to which the step gives one
    width the longest names it. What a step before has given is named in that step's picture alone."""
    given = {spot.name for spot in spots if spot.piece == piece.name and spot.allowance and not spot.extra}
    told: dict[float, Edge] = {}
    for edge in piece.edges:
        if edge.allowance and edge.name != piece.fold and f"{edge.name}_allowance" in given:
            width = round(edge.allowance, 2)
            if width not in told or edge.path.length > told[width].path.length + 0.01:
                told[width] = edge
    names = {edge.name for edge in told.values()}
    return {f"{edge.name}_allowance" for edge in piece.edges if edge.name not in names}


def _told(found: Iterable[DrawnMeasure], start: Point, end: Point) -> bool:
    """Whether a measure between two places is there already."""
    return any(
        (m.start.distance(start) < 0.5 and m.end.distance(end) < 0.5)
        or (m.start.distance(end) < 0.5 and m.end.distance(start) < 0.5)
        for m in found
    )


def _level(measure: DrawnMeasure, a: Point, b: Point) -> bool:
    """Whether a measure runs the same way as the line from `a` to `b`."""
    one, other = measure.end - measure.start, b - a
    return abs(one.cross(other)) < 0.05 * one.length * other.length


def dimension(measure: DrawnMeasure, middle: Point, put: Scaling, reach: float, off: float = 0.045) -> Dimension:
    """The measure's dimension, set off to the outer side of the piece so that it does not cover its line; a bare one
    stands on what it measures."""
    along = measure.along
    half = measure.start.mid(measure.end) if along is None else along.at(along.length / 2)
    span = measure.end - measure.start
    side = 1.0 if span.cross(half - middle) >= 0 else -1.0
    return Dimension(
        put.point(measure.start),
        put.point(measure.end),
        measure.text,
        offset=0.0 if measure.bare else side * reach * off,
        along=() if along is None else put.curves(along.curves),
        name=measure.name,
    )


# ---- names ------------------------------------------------------------------------------------------------


def line_names(
    piece: Piece, record: StepRecord, middle: Point, put: Scaling, reach: float, below: Piece | None = None
) -> Iterable[Label]:
    """The names of new lines, beside them. Lines that were only traced are known already, and so are those `below`, the
    piece this one lies on."""
    taken = traced_edges(piece, record)
    shared = {edge.path for edge in below.edges} if below else set()
    for name, path in new_lines(piece, record):
        if name in taken or path in shared:
            continue
        text = edge_label(piece.edge(name)) if piece.has_edge(name) else called(name)
        if below and piece.has_edge(name) and piece.edge(name).role == "outer":
            text = say("picture.traced_edge", piece=title_of(piece), edge=text)
        yield beside(text, path, middle, reach, put)


def beside(text: str, path: Path, middle: Point, reach: float, put: Scaling) -> Label:
    """A line's name along its middle, on the inner side of the piece."""
    half = path.length / 2
    at, along = path.at(half), path.tangent_at(half)
    normal = Vector(-along.y, along.x)
    if normal.dot(middle - at) < 0:
        normal = normal * -1.0
    angle = upright(math.atan2(along.y, along.x))
    return Label(text, put.point(at) + normal * (reach * 0.03), "new", angle, of=put.curves(path.curves))


def mark_names(piece: Piece, record: StepRecord, middle: Point, put: Scaling, reach: float) -> Iterable[Label]:
    """The names of new marks."""
    for owner, mark in record.new_marks:
        if owner == piece.name:
            yield from _mark_name(piece, mark, middle, put, reach)


def _mark_name(piece: Piece, mark: Mark, middle: Point, put: Scaling, reach: float) -> Iterable[Label]:
    path, at = mark_line_of(piece, mark), place_of(piece, mark)
    if path is not None:
        yield beside(mark.label, path, middle, reach, put)
    elif at is not None:
        yield Label(mark.label, put.point(at) + Vector(0.0, reach * 0.035), "new", of=put.point(at))


def point_names(piece: Piece, record: StepRecord, tell: Telling, middle: Point, put: Scaling) -> Iterable[Label]:
    """The points of the step by name and by their letter on the worksheet: those it marks, and those of before that it
    starts from. A place without a name has its letter alone."""
    letters = tell.letters.get(piece.name, ())
    fresh = fresh_points(piece, record)
    named = [*fresh, *used_points(piece, record)]
    seen: list[Point] = []
    for name, point in named:
        letter = _letter(letters, point)
        said = point_said(name)
        text = say("picture.lettered_point", letter=letter, point=said) if letter else said
        seen.append(point)
        yield _outward(text, point, middle, put, tell.reach)
    for point in places_used(piece, record):
        letter = _letter(letters, point)
        if letter and not any(point.distance(other) < _LETTERED for other in seen):
            seen.append(point)
            yield _outward(letter, point, middle, put, tell.reach)


def _letter(letters: Sequence[tuple[str, Point]], at: Point) -> str:
    near = min(letters, key=lambda one: one[1].distance(at), default=None)
    return near[0] if near is not None and near[1].distance(at) < _LETTERED else ""


def _outward(text: str, point: Point, middle: Point, put: Scaling, reach: float) -> Label:
    """A point's name goes outward from the middle of the piece, where fewer lines run than inside."""
    out = point - middle
    away = out.unit() if out.length > 1e-6 else Vector(0.0, 1.0)
    return Label(text, put.point(point) + away * (reach * 0.035), "small", of=put.point(point))


def order_numbers(piece: Piece, record: StepRecord, put: Scaling) -> Iterable[Label]:
    """The number of every stroke of the hand, on its line."""
    for number, move in enumerate(numbered(piece, record), start=1):
        line = line_of_number(move, piece, record)
        yield Label(str(number), put.point(line.at(line.length / 2)), "order", of=put.curves(line.curves))
