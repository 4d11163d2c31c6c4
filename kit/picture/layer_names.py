"""The names of a scene's layers: which of each is seen in the picture's window, and the place there that its name's
leader goes to. The names themselves stand beside the cloth; where is for the placer."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from kit.geometry import Curve, Point
from kit.geometry.region import Spot
from kit.language import say
from kit.picture.drawing import Area, Item, Label
from kit.picture.drawn_lines import Box
from kit.picture.laid import PlacedLayer

_GRID = 30  # places across and down the window that are looked at
_LEAST = 2  # of them that a layer must show to be named


def layer_names(placed: Sequence[PlacedLayer], window: Box) -> list[Item]:
    """A name for each layer that is seen in the `window`. The side of the cloth is told by its pattern."""
    seen = _seen(placed, window)
    titles: dict[tuple[str, str], int] = {}
    for p in placed:
        titles[p.piece.name, p.layer.stuff] = titles.get((p.piece.name, p.layer.stuff), 0) + 1
    named: list[Item] = []
    for number, p in enumerate(placed):
        places = seen[number]
        if len(places) < _LEAST:
            continue
        title = p.piece.title if titles[p.piece.name, p.layer.stuff] == 1 else half_said(p)
        if p.layer.stuff == "interfacing":
            title = say("picture.layer_face", piece=title, face="interfacing")
        x0, y0, x1, y1 = window
        column, row = _innermost(places)
        at = Point(x0 + (column + 0.5) * (x1 - x0) / _GRID, y0 + (row + 0.5) * (y1 - y0) / _GRID)
        named.append(Label(title, at, "name", of=Area(p.outline, at)))
    return named


def half_said(p: PlacedLayer) -> str:
    """A layer's piece and which half of it lies there, where it has two."""
    return say("picture.half", piece=p.piece.title, side=p.side if len(p.piece.sides) == 2 else "both")


# ---- what is seen -----------------------------------------------------------------------------------------


def _seen(placed: Sequence[PlacedLayer], window: Box) -> list[set[tuple[int, int]]]:
    """The places of a grid over the window at which each layer lies uppermost, its turned parts with it."""
    top: dict[tuple[int, int], int] = {}
    for number, p in enumerate(placed):
        for outline in (p.outline, *p.flaps):
            for place in _inside(outline, window):
                top[place] = number
    seen: list[set[tuple[int, int]]] = [set() for _ in placed]
    for place, number in top.items():
        seen[number].add(place)
    return seen


def _inside(outline: Sequence[Curve], window: Box) -> list[tuple[int, int]]:
    """The places of the grid that lie inside an outline (even-odd, row by row)."""
    x0, y0, x1, y1 = window
    step_x, step_y = (x1 - x0) / _GRID, (y1 - y0) / _GRID
    points: list[Spot] = [(q.x, q.y) for curve in outline for q in curve.points(1.0)]
    if not points or step_x <= 0 or step_y <= 0:
        return []
    crossings: list[list[float]] = [[] for _ in range(_GRID)]
    for (ax, ay), (bx, by) in pairwise((*points, points[0])):
        if ay == by:
            continue
        if ay > by:
            ax, ay, bx, by = bx, by, ax, ay
        low = max(0, int((ay - y0) / step_y - 0.5))
        high = min(_GRID - 1, int((by - y0) / step_y + 0.5))
        for row in range(low, high + 1):
            y = y0 + (row + 0.5) * step_y
            if ay <= y < by:
                crossings[row].append(ax + (bx - ax) * (y - ay) / (by - ay))
    found = []
    for row, xs in enumerate(crossings):
        xs.sort()
        for left, right in zip(xs[::2], xs[1::2], strict=False):
            first = max(0, int((left - x0) / step_x + 0.5))
            last = min(_GRID - 1, int((right - x0) / step_x - 0.5))
            found += [(column, row) for column in range(first, last + 1)]
    return found


def _innermost(places: set[tuple[int, int]]) -> tuple[int, int]:
    """The place farthest from what is not among `places`: they are peeled from outside until none is left."""
    left, last = set(places), set(places)
    while left:
        last = left
        left = {(c, r) for c, r in left if {(c - 1, r), (c + 1, r), (c, r - 1), (c, r + 1)} <= left}
    column = sum(c for c, _ in last) / len(last)
    row = sum(r for _, r in last) / len(last)
    return min(last, key=lambda place: ((place[0] - column) ** 2 + (place[1] - row) ** 2, place))
