"""The names of a scene's layers: which of each is seen in the picture's window, and the place there that its name's
leader goes to. The names themselves stand beside the cloth; where is for the placer."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from kit.geometry import Curve, Point
from kit.geometry.region import Spot
from kit.language import say
from kit.picture.drawing import Area, Item, Label, Stroke
from kit.picture.drawn_lines import Box
from kit.picture.laid import PlacedLayer
from kit.piece.piece import Side

_GRID = 30  # places across and down the window that are looked at
_DEEP = 3  # places from what lies beside it at which a layer is named, where it is as wide
_LEAST = 2  # of them that a layer must show to be named


Places = set[tuple[int, int]]
"""Places of the grid, (column, row)."""
Over = tuple[str, tuple[Curve, ...]]
"""The name (none where it is named elsewhere) and the outline of what lies on the layers."""


def layer_names(placed: Sequence[PlacedLayer], window: Box, over: Sequence[Over] = ()) -> list[Item]:
    """A name for each layer that is seen in the `window`, and for what lies `over` them. The side of the cloth is told
    by its pattern; which half a layer is of, where both are in the picture. One cloth is named once, also where its two
    ends are sewn to each other and lie there as two layers: where most of it is seen."""
    seen = _seen([(p.outline, *p.flaps) for p in placed] + [(outline,) for _, outline in over], window)
    halves: dict[tuple[str, str], set[Side]] = {}
    for p in placed:
        halves.setdefault((p.piece.name, p.layer.stuff), set()).add(p.side)
    of_cloth: dict[tuple[str, str, Side], int] = {}  # the layer at which each cloth is named
    for number, p in enumerate(placed):
        cloth = (p.piece.name, p.layer.stuff, p.side)
        if len(seen[number]) > len(seen[of_cloth[cloth]] if cloth in of_cloth else ()):
            of_cloth[cloth] = number
    named: list[tuple[str, tuple[Curve, ...], Places]] = []
    for number, p in enumerate(placed):
        places = seen[number]
        if len(places) < _LEAST or of_cloth[p.piece.name, p.layer.stuff, p.side] != number:
            continue
        title = half_said(p) if len(halves[p.piece.name, p.layer.stuff]) > 1 else p.piece.title
        if p.layer.stuff == "interfacing":
            title = say("picture.layer_face", piece=title, face="interfacing")
        named.append((title, p.outline, places))
    told: set[str] = set()
    for (title, outline), places in zip(over, seen[len(placed) :], strict=True):
        if places and title and title not in told:
            told.add(title)
            named.append((title, outline, places))
    spots = _from_sides([places for *_, places in named], set().union(*seen), window)
    found: list[Item] = []
    for (title, outline, places), sides in zip(named, spots, strict=True):
        at = _point(_innermost(places), window)
        found.append(Label(title, at, "name", of=Area(outline, at, sides)))
    return found


def _point(place: tuple[int, int], window: Box) -> Point:
    """The middle of a place of the grid."""
    x0, y0, x1, y1 = window
    column, row = place
    return Point(x0 + (column + 0.5) * (x1 - x0) / _GRID, y0 + (row + 0.5) * (y1 - y0) / _GRID)


def hidden_items(placed: Sequence[PlacedLayer], window: Box) -> list[Item]:
    """Dashed, what goes on from a lower layer and is wholly covered there by what goes on from the upper one."""
    upper = [p.base.base for p in placed if p.layer.how == "open" and p.base is not None and p.base.base is not None]
    found = [p for p in placed if p.layer.how == "open" and any(p.base is base for base in upper)]
    if not found:
        return []
    seen = _seen([(p.outline, *p.flaps) for p in placed], window)
    return [
        Stroke(p.outline, "hidden", closed=True, name=f"below {p.piece.name}")
        for p, places in zip(placed, seen, strict=True)
        if not places and any(p is each for each in found)
    ]


def half_said(p: PlacedLayer) -> str:
    """A layer's piece and which half of it lies there, where it has two."""
    return say("picture.half", piece=p.piece.title, side=p.side if len(p.piece.sides) == 2 else "both")


# ---- what is seen -----------------------------------------------------------------------------------------


def _seen(layers: Sequence[Sequence[tuple[Curve, ...]]], window: Box) -> list[Places]:
    """The places of a grid over the window at which each layer lies uppermost, its turned parts with it."""
    top: dict[tuple[int, int], int] = {}
    for number, parts in enumerate(layers):
        for outline in parts:
            for place in _inside(outline, window):
                top[place] = number
    seen: list[Places] = [set() for _ in layers]
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


def _from_sides(layers: Sequence[Places], cloth: Places, window: Box) -> list[tuple[tuple[Point, float], ...]]:
    """For each layer the places a little inside what is seen of it that a leader reaches over as little other cloth as
    may be: from the left, from below, from the right and from above. Those of several layers lie apart, in the order in
    which the layers do, so that their names find room beside each other."""
    found: list[list[tuple[Point, float]]] = [[] for _ in layers]
    for upright, back in ((False, False), (True, False), (False, True), (True, True)):
        middles = [sum(place[0 if upright else 1] for place in places) / len(places) for places in layers]
        order = sorted(range(len(layers)), key=lambda i: (middles[i], i))
        for number, i in enumerate(order):
            wanted = _GRID * (number + 1) / (len(order) + 1) - 0.5
            place, over = _reached(layers[i], cloth, upright, back, wanted)
            found[i].append((_point(place, window), over / _GRID))
    return [tuple(each) for each in found]


def _reached(places: Places, cloth: Places, upright: bool, back: bool, wanted: float) -> tuple[tuple[int, int], int]:
    """The place of a layer that is reached along a column (`upright`) or a row, from its far end (`back`) or its near
    one: over the least other cloth, then nearest to the column or row that is `wanted`, the first place there that lies
    well inside the layer; and over how many places of other cloth."""
    core = _core(places)
    lanes: dict[int, list[int]] = {}
    for column, row in core:
        lanes.setdefault(column if upright else row, []).append(row if upright else column)
    best: tuple[int, float, int, int] | None = None
    for lane, steps in lanes.items():
        step = max(steps) if back else min(steps)
        before = range(step + 1, _GRID) if back else range(step)
        passed = ((lane, each) if upright else (each, lane) for each in before)
        over = sum(1 for place in passed if place in cloth and place not in places)
        one = (over, abs(lane - wanted), lane, step)
        if best is None or one < best:
            best = one
    assert best is not None
    over, _, lane, step = best
    return ((lane, step) if upright else (step, lane)), over


def _core(places: Places) -> Places:
    """The places that lie inside others of them, `_DEEP` deep where there are such."""
    core = places
    for _ in range(_DEEP):
        inner = {(c, r) for c, r in core if {(c - 1, r), (c + 1, r), (c, r - 1), (c, r + 1)} <= core}
        if not inner:
            break
        core = inner
    return core


def _innermost(places: Places) -> tuple[int, int]:
    """The place farthest from what is not among `places`: they are peeled from outside until none is left."""
    left, last = set(places), set(places)
    while left:
        last = left
        left = {(c, r) for c, r in left if {(c - 1, r), (c + 1, r), (c, r - 1), (c, r + 1)} <= left}
    column = sum(c for c, _ in last) / len(last)
    row = sum(r for _, r in last) / len(last)
    return min(last, key=lambda place: ((place[0] - column) ** 2 + (place[1] - row) ** 2, place))
