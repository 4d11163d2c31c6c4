"""Every cut part of a pattern small, all at one scale: pieces as they are cut, strips as they are cut too.

A thumbnail says which part it is and how large it is beside the others: its outline, grainline, fold, notches, darts
and marks in thin lines, and its number. All that is written on the paper piece stays there. What is so long that it
would make all others tiny lies on its side with its middle left out between two break lines (as long parts are broken
in technical drawings, ISO 128, from memory); its size stands beside the picture.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, replace
from itertools import pairwise
from typing import Any

import shapely

from kit.geometry import Cubic, Line, Motion, Point, Vector
from kit.lesson.pattern import Pattern
from kit.picture.chains import Chain, box, drawn
from kit.picture.drawing import Drawing, Item, Label, Stroke, StrokeRole
from kit.picture.lettering import Box, text_width
from kit.picture.piece_sheet import moved, piece_alt, piece_lines
from kit.picture.place import rectangle
from kit.picture.text_room import room_for
from kit.piece.piece import Strip

ROOM = (200.0, 190.0)
_LONG = 3.0  # times as long as wide, and it may be broken
_EM = 13.0
_GAP = 10.0  # px of white between the two ends of a broken part
_EDGE = 3.0  # px of white around
_FINE = 0.4
_THIN: dict[str, StrokeRole] = {"cut": "edge", "stitch": "leader", "notch": "symbol", "mark": "mark"}


@dataclass(frozen=True)
class Thumbnail:
    """The picture of one cut part, and which it is."""

    number: int
    name: str
    title: str
    drawing: Drawing


@dataclass(frozen=True)
class _Part:
    """A cut part as it is drawn: its lines, the box around them, mm, and what is told of it to whoever does not see it
    ("": its number and title)."""

    number: int
    name: str
    title: str
    lines: tuple[Stroke, ...]
    alt: str = ""

    @property
    def box(self) -> Box:
        return box(_points(line) for line in self.lines)

    @property
    def size(self) -> tuple[float, float]:
        x0, y0, x1, y1 = self.box
        return x1 - x0, y1 - y0


def thumbnails(pattern: Pattern, room: tuple[float, float] = ROOM, letters: float = 1.0) -> tuple[Thumbnail, ...]:
    """A thumbnail of every piece and every strip, in the order of their numbers. Each is as wide as `room` (CSS px) and
    no higher, but for a number below it, and one pixel stands for as many millimetres in all of them; letters are
    `letters` times as large as usual.
    Raises `KitError` as `piece_lines` does."""
    parts = [*_pieces(pattern), *(_strip(strip) for strip in pattern.strips)]
    if not parts:
        return ()
    space = room[0] - 2 * _EDGE, room[1] - 2 * _EDGE
    compact = [part for part in parts if max(part.size) < _LONG * min(part.size)] or parts
    scale = max(max(part.size[0] / space[0], part.size[1] / space[1]) for part in compact)
    if compact is parts:  # strips and bands alone: as wide as lets them be seen
        scale = max(max(min(part.size) for part in parts) / (space[1] * 0.4), 0.5)
    return tuple(_drawn(part, scale, room, letters) for part in sorted(parts, key=lambda part: part.number))


def _pieces(pattern: Pattern) -> Iterator[_Part]:
    for piece in pattern.pieces:
        edges = {f"{piece.name}.{edge.name}" for edge in piece.edges}
        items = [item for item in piece_lines(piece, pattern) if isinstance(item, Stroke)]
        whole = any(item.role == "cut" for item in items)
        # Beside the cut line the stitch line would be a second one half a millimetre off.
        kept = [item for item in items if not (whole and item.role == "stitch" and item.name in edges)]
        lines = tuple(replace(item, role=_THIN.get(item.role, item.role)) for item in kept)
        yield _Part(piece.number, piece.name, piece.title, lines, piece_alt(piece, pattern, pattern.lesson.units))


def _strip(strip: Strip) -> _Part:
    """A strip as cut, on its side; a continuous bias as the square it is cut from."""
    long, wide = (strip.square, strip.square) if strip.square else (strip.cut_length, strip.width)
    outline = Stroke(rectangle(0.0, 0.0, long, wide), "edge", closed=True, name=strip.name)
    middle, reach = Point(long / 2, wide / 2), min(long, wide) * 0.36
    way = {"lengthwise": Vector(1.0, 0.0), "crosswise": Vector(0.0, 1.0)}.get(strip.grain, Vector(1.0, 1.0).unit())
    if strip.grain == "lengthwise":
        reach, middle = min(long * 0.2, wide * 2.0), Point(min(long * 0.3, wide * 2.6), wide / 2)
    grain = Stroke((Line(middle - way * reach, middle + way * reach),), "grain", arrow="both", name="grainline")
    return _Part(strip.number, strip.name, strip.title, (outline, grain))


def _drawn(part: _Part, scale: float, room: tuple[float, float], letters: float) -> Thumbnail:
    wide, high = (side * scale for side in room)
    edge = _EDGE * scale
    lines: list[Stroke] = list(part.lines)
    x0, y0, x1, y1 = part.box
    if y1 - y0 > high - 2 * edge + 1e-6 and y1 - y0 > x1 - x0:
        turned = Motion.rotation(-math.pi / 2, Point(x0, y0))
        lines = [line for line in moved(lines, turned) if isinstance(line, Stroke)]
        x0, y0, x1, y1 = box(_points(line) for line in lines)
    if x1 - x0 > wide - 2 * edge + 1e-6:
        lines = _broken(lines, (x0, y0, x1, y1), wide - 2 * edge, _GAP * scale)
        x0, y0, x1, y1 = box(_points(line) for line in lines)
    em = _EM * letters * scale
    items: list[Item] = [*lines]
    label, below = _number(str(part.number), lines, (x0, y0, x1, y1), em)
    if part.number:
        items.append(label)
    middle = (x0 + x1) / 2
    bounds = (middle - wide / 2, y0 - edge - (below if part.number else 0.0), middle + wide / 2, y1 + edge)
    title = f"{part.number} {part.title}" if part.number else part.title
    return Thumbnail(
        part.number, part.name, part.title, Drawing(tuple(items), title=title, alt=part.alt or title, bounds=bounds)
    )


def _number(
    number: str, lines: list[Stroke], around: tuple[float, float, float, float], em: float
) -> tuple[Label, float]:
    """The number where the part has room for it, or below it, and how much room that takes there."""
    outlines = [_points(line) for line in lines if line.role == "edge" and line.name != "break"]
    shape: Any = shapely.MultiPoint([(p.x, p.y) for chain in outlines for p in chain]).convex_hull
    closed = [line for line in lines if line.role == "edge" and line.closed]
    if closed:
        shape = shapely.union_all([shapely.Polygon([(p.x, p.y) for p in _points(line)]).buffer(0) for line in closed])
    others = [_points(line) for line in lines if not line.closed]
    clear = shape.buffer(-em * 0.15)
    for chain in (chain for chain in others if len(chain) > 1):
        clear = clear.difference(shapely.LineString([(p.x, p.y) for p in chain]).buffer(em * 0.25, quad_segs=2))
    spot = room_for(clear, text_width(number, em, True), em * 1.1, 0.0)
    if spot is not None:
        return Label(number, spot, "title", size=em), 0.0
    x0, y0, x1, _ = around
    return Label(number, Point((x0 + x1) / 2, y0 - em * 0.75), "title", size=em), em * 1.3


# ---- broken ------------------------------------------------------------------------------------------------


def _broken(lines: Iterable[Stroke], around: Box, room: float, gap: float) -> list[Stroke]:
    """Lines with their middle left out, so that they are `room` mm wide with a gap and two break lines in it."""
    x0, y0, x1, y1 = around
    keep = (room - gap) / 2
    left, right = x0 + keep, x1 - keep
    slide = Vector(room - (x1 - x0), 0.0)
    found: list[Stroke] = []
    for line in lines:
        chain = _points(line)
        if line.closed:
            chain = [*chain, chain[0]] if chain[0].distance(chain[-1]) > 1e-6 else chain
        for limit, sign, by in ((left, -1.0, Vector(0.0, 0.0)), (right, 1.0, slide)):
            for run in _beyond(chain, limit, sign):
                arrow = line.arrow if len(run) == len(chain) else ""
                curves = drawn([p + by for p in run])
                if curves:
                    found.append(Stroke(curves, line.role, arrow=arrow, name=line.name))
    high = y1 - y0
    for x in (left, left + gap):
        wave = Cubic(
            Point(x, y0 - high * 0.06),
            Point(x + gap * 0.5, y0 + high * 0.35),
            Point(x - gap * 0.5, y1 - high * 0.35),
            Point(x, y1 + high * 0.06),
        )
        found.append(Stroke((wave,), "leader", name="break"))
    return found


def _beyond(chain: Chain, limit: float, sign: float) -> Iterator[Chain]:
    """The stretches of a chain on one side of an upright line: to its left (-1) or right (1)."""
    run: Chain = []
    for a, b in pairwise(chain):
        inside_a, inside_b = (sign * (p.x - limit) >= 0.0 for p in (a, b))
        if inside_a and not run:
            run = [a]
        if inside_a != inside_b:
            met = a.lerp(b, (limit - a.x) / (b.x - a.x))
            run = [*run, met] if inside_a else [met]
        if inside_b:
            run.append(b)
        elif run:
            yield run
            run = []
    if run:
        yield run


def _points(line: Stroke) -> Chain:
    found: Chain = []
    for curve in line.curves:
        points = curve.points(_FINE)
        found += points[1:] if found and found[-1].distance(points[0]) < 1e-6 else points
    return found
