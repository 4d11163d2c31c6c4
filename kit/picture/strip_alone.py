"""A strip by itself, as it is cut and as an operation leaves it: folded, seamed, turned, hemmed."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from kit.geometry import Curve, Line, Point, Vector
from kit.language import say
from kit.picture.drawing import Fill, Item, Label, Stroke
from kit.picture.laid import Box, box_of, grown
from kit.picture.lettering import text_width
from kit.picture.place import polyline, strip_outline
from kit.picture.theme import THEME
from kit.piece.piece import Strip
from kit.sewing.scene import StripShape

_FOLDS = {"in_four": (-0.25, 0.0, 0.25)}
"""Where a strip is folded, as shares of its width off the middle; else along the middle."""
_RIGHT = Vector(1.0, 0.0)
_WORDS = 26.0  # CSS px between what is cut and what is made
_GROWN = 1.5  # times as large beside its lines a text may become, where what stands round them takes room
LONGEST = 9.0
"""Widths up to which a strip is drawn as long as it is; a longer one is broken, or its folds could not be seen."""
_NEAR_END = 2.0  # mm from an end that is tucked in to the row that closes it (common practice, no source)
BREAK = "break"
"""The name of the gap where a piece of a long strip is left out."""
BECOMES = "becomes"
"""The name of the arrow from what is cut to what is made: no pressing arrow."""


def strip_alone(strip: Strip, shape: StripShape, px: float = 0.0) -> tuple[list[Item], Box]:
    """The strip as cut, from its wrong side, and below it what is made of it; and the box around both. A long one is
    shown without its middle. Shown at `px` mm to a CSS px, both leave room for a line of words."""
    whole, strip = strip, _shortened(strip)
    gap = max(max(strip.length, strip.width) * 0.14, _WORDS * px)
    cut = strip_outline(strip, Point(0.0, 0.0), _RIGHT, False)
    items: list[Item] = [Fill(cut, "wrong_side", strip.name), Stroke(cut, "edge", closed=True, name=strip.name)]
    for y in _folds(strip, shape):
        items.append(Stroke((Line(Point(0.0, y), Point(strip.length, y)),), "fold"))
    deep = strip.width / 2 if shape.tube else strip.finished_width or strip.width / 4
    low = -strip.width / 2 - gap - deep
    made, drawn = (_tube if shape.tube else _made)(strip, shape, low, low + deep)
    items += drawn
    if strip is not whole:
        items += _broken(strip, strip.width / 2, -strip.width / 2) + _broken(strip, low + deep, low)
    down = Point(strip.length / 2, -strip.width * 0.5 - gap * 0.3)
    items.append(Stroke((Line(down, down + Vector(0.0, -gap * 0.4)),), "symbol", arrow="end", name=BECOMES))
    above, below = strip.width / 2 + gap * 0.35, low - gap * 0.35
    words = say("picture.strip_as_cut", strip=strip.title), say(f"picture.strip_{_called(strip, shape)}")
    for text, y in zip(words, (above, below), strict=True):
        items.append(Label(text, Point(0.0, y), "name", anchor="start"))
    x0, y0, x1, y1 = grown(box_of(cut + made), gap * 0.8)
    wide = max(text_width(text, THEME.texts["name"].size * px) for text in words) * _GROWN
    return items, (x0, y0, max(x1, wide), y1)


def _shortened(strip: Strip) -> Strip:
    """The strip as long as it is drawn: no more than `LONGEST` widths; what is made of it is as much shorter."""
    off = strip.length - LONGEST * strip.width
    if off <= 0.0:
        return strip
    return replace(strip, length=strip.length - off, finished_length=max(strip.finished_length - off, 0.0))


def _broken(strip: Strip, high: float, low: float) -> list[Item]:
    """The gap in a strip between two levels: two edges torn alike, slightly bent."""
    x, wide = strip.length * 0.62, strip.width * 0.22
    over = (high - low) * 0.12
    lean = strip.width * 0.16
    level = [low - over, low + (high - low) * 0.3, low + (high - low) * 0.7, high + over]
    line = [Point(x + lean * step, y) for step, y in zip((-0.5, 0.9, -0.9, 0.5), level, strict=True)]
    other = [point + _RIGHT * wide for point in line]
    ground = polyline([*line, *reversed(other), line[0]])
    tears = (polyline(line), polyline(other))
    return [Fill(ground, "frame", BREAK), *(Stroke(tear, "guide", name=BREAK) for tear in tears)]


def _called(strip: Strip, shape: StripShape) -> str:
    """The key of what is made."""
    if shape.tube:
        return "sewn"
    if shape.hem:
        return "hemmed"
    return "folded" if strip.fold == "in_four" else "turned"


def _folds(strip: Strip, shape: StripShape) -> Iterator[float]:
    """The lines it is folded along, from its middle; a hem is folded twice beside each edge."""
    if shape.hem:
        for turn in (shape.hem, 2 * shape.hem):
            yield from (strip.width / 2 - turn, turn - strip.width / 2)
    else:
        yield from (share * strip.width for share in _FOLDS.get(strip.fold, (0.0,)))


def _made(strip: Strip, shape: StripShape, low: float, high: float) -> tuple[tuple[Curve, ...], list[Item]]:
    """What is made of it, between two levels: its outline and its strokes. The fold, where it has one, lies above, the
    seamed or open edge below."""
    long = strip.finished_length or strip.length
    short = long - shape.slant
    outline = polyline([Point(0, low), Point(short, low), Point(long, high), Point(0, high), Point(0, low)])
    rows = [Stroke((line,), "row") for line in _rows(shape, long, short, low, high)]
    if shape.ends and strip.fold != "in_four":  # what is folded in four is closed by the rows along its sides
        near = (_NEAR_END, long - _NEAR_END)[: 1 if shape.slant else 2]
        rows += [Stroke((Line(Point(x, low), Point(x, high)),), "row") for x in near]
    # Its ends are cut edges until they are tucked in; along its sides it is folded or seamed, as at a slanted end.
    folded = [shape.hem_ends > 1 or shape.ends > 0, shape.hem_ends > 0 or shape.ends > 0 or shape.slant > 0]
    sides = [Stroke((outline[0],), "crease"), Stroke((outline[2],), "crease")]
    ends = (Stroke((line,), "crease" if shut else "edge") for line, shut in zip(outline[3:0:-2], folded, strict=True))
    return outline, [Fill(outline, "strip", strip.name), *ends, *sides, *rows]


def _rows(shape: StripShape, long: float, short: float, low: float, high: float) -> Iterator[Line]:
    """The rows of stitching on what is made."""
    for edge, distance in shape.rows:
        y = low + distance if edge == "open" else high - distance
        yield Line(Point(0, y), Point(short + (long - short) * (y - low) / (high - low), y))
    if shape.hem:
        first = shape.hem if shape.hem_ends > 1 else 0.0
        last = long - shape.hem if shape.hem_ends else long
        for y in (low + shape.hem, high - shape.hem):
            yield Line(Point(first, y), Point(last, y))
        for x in (last,) * (shape.hem_ends > 0) + (first,) * (shape.hem_ends > 1):
            yield Line(Point(x, low + shape.hem), Point(x, high - shape.hem))


def _tube(strip: Strip, shape: StripShape, low: float, high: float) -> tuple[tuple[Curve, ...], list[Item]]:
    """The strip folded in two, right sides together, and seamed: its outline, trimmed where it is, and the seam. With a
    slanted end the cloth beyond that seam is shown as it is cut off or trimmed."""
    seam = low + shape.seam
    raw = seam - shape.back if shape.back else low
    rows = [Line(Point(0, seam), Point(strip.length, seam))]
    end = [Point(strip.length, raw), Point(strip.length, high)]
    if shape.slant:
        tip = Point(strip.length - shape.seam, high)
        corner = Point(tip.x - shape.slant, seam)
        rows = [Line(Point(0, seam), corner), Line(corner, tip)]
        if shape.back_end:
            way = (tip - corner).unit()
            beside = corner + way.left() * -shape.back_end
            at = lambda y: beside + way * ((y - beside.y) / way.y)  # noqa: E731
            end = [at(raw), at(high)]
    outline = polyline([Point(0, raw), *end, Point(0, high), Point(0, raw)])
    strokes = [Stroke((line,), "old_row" if shape.old else "row") for line in rows]
    if shape.upper:
        level = seam - shape.upper
        strokes.append(Stroke((Line(Point(0, level), Point(rows[0].end.x, level)),), "edge"))
    return outline, [Fill(outline, "wrong_side", strip.name), Stroke(outline, "edge", closed=True), *strokes]
