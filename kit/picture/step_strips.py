"""Strips that a drafting step cuts without a paper piece: true rectangles under one another, with their folds, what is
added at the ends, and the grain."""

from __future__ import annotations

from collections.abc import Iterable

from kit.geometry import Line, Point, Vector
from kit.language import say
from kit.picture.drawing import Area, Dimension, Item, Label, Stroke
from kit.picture.place import rectangle
from kit.picture.step_texts import Telling
from kit.piece.piece import Strip

FOLDS: dict[str, tuple[float, ...]] = {
    "in_four": (0.25, 0.5, 0.75),
    "in_two": (0.5,),
    "band": (0.5,),
    "single_binding": (0.25, 0.5, 0.75),
    "double_binding": (1 / 6, 1 / 3, 0.5, 2 / 3, 5 / 6),
}
"""Where a strip is folded, as shares of its cut width from one edge (common practice, no source)."""
_GRAIN = {"lengthwise": Vector(1.0, 0.0), "crosswise": Vector(0.0, 1.0), "bias": Vector(1.0, 1.0)}


def strip_items(strips: tuple[Strip, ...], y: float, tell: Telling) -> Iterable[Item]:
    """The strips from the level `y` down."""
    longest = max((strip.length for strip in strips), default=0.0)
    room = max(longest, 200.0) * 0.045
    for strip in strips:
        y -= room * 1.6
        low = y - strip.width
        box = rectangle(0.0, low, strip.length, y)
        yield from _folds(strip, low)
        yield Stroke(box, "new", closed=True, name=strip.name)
        yield _grain(strip, low)
        a, b, c = Point(0.0, y), Point(strip.length, y), Point(strip.length, low)
        yield Dimension(a, b, tell.length(strip.length), room, name=f"{strip.name}.length")
        yield Dimension(b, c, tell.length(strip.width), room, name=f"{strip.name}.width")
        yield from _ends(strip, low, room, tell)
        count = say("picture.strip_cut", strip=strip.title, count=strip.count)
        below = Point(max(strip.length, longest * 0.3) / 2, low - room)
        yield Label(count, below, "name", of=Area(box))
        y -= strip.width + room * 1.6


def _folds(strip: Strip, low: float) -> Iterable[Item]:
    for share in FOLDS.get(strip.fold, ()):
        level = low + strip.width * share
        line = Line(Point(0.0, level), Point(strip.length, level))
        yield Stroke((line,), "fold", name=f"{strip.name}.fold")


def _grain(strip: Strip, low: float) -> Stroke:
    """A short grainline between two folds, or across the strip."""
    way = _GRAIN.get(strip.grain, _GRAIN["lengthwise"]).unit()
    middle = Point(strip.length * 0.8, low + strip.width * 0.375)
    half = min(strip.length * 0.08, strip.width * 2.0) if way.y == 0.0 else strip.width * 0.3
    return Stroke((Line(middle - way * half, middle + way * half),), "grain", arrow="both", name=f"{strip.name}.grain")


def _ends(strip: Strip, low: float, room: float, tell: Telling) -> Iterable[Item]:
    """What is added at each short end: the line up to which the strip is seen in the end."""
    extra = (strip.length - strip.finished_length) / 2 if strip.finished_length else 0.0
    if extra < 0.5:
        return
    for x in (extra, strip.length - extra):
        line = Line(Point(x, low), Point(x, low + strip.width))
        yield Stroke((line,), "guide", name=f"{strip.name}.end")
    start, end = Point(0.0, low), Point(extra, low)
    yield Dimension(start, end, tell.length(extra), -room * 0.6, name=f"{strip.name}.end")
