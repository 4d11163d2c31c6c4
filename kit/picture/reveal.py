"""A drawing as it is being made: which of it stands, and in which order the rest is drawn.

Every item has a turn, from the share of the whole at which it is begun to the share at which it is whole. What stands
from before has no turn. New lines grow along their length one after another; a new point is set before the line through
it is drawn, and what names or measures a line comes when the line is there.
"""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace

from kit.geometry import Curve, Point
from kit.picture.drawing import Dimension, Dot, Drawing, Fill, Item, Label, Stroke
from kit.picture.svg_pen import bounds_of

NEW = frozenset(("new", "traced", "aid", "sign", "check", "row", "baste", "hand", "press", "pin", "needle"))
"""The roles of lines that are made in the picture itself."""

# How long each takes, in the time a line needs to cross the picture.
_SHORTEST, _LONGEST, _DOT, _TEXT = 0.12, 2.5, 0.06, 0.22
_BY = 0.09  # how far a point's name or a line through it may lie, as a share of the picture
_PER_CROSSING, _QUICK, _SLOW = 1.1, 1.2, 10.0  # seconds


@dataclass(frozen=True)
class RevealTurn:
    """An item is begun at `start` and whole at `end`, shares 0..1 of the whole; both are 0 when it stands already."""

    start: float = 0.0
    end: float = 0.0

    @property
    def stands(self) -> bool:
        return self.end <= 0.0

    def done(self, share: float) -> float:
        """How much of the item (0..1) there is at `share` of the whole."""
        if self.stands or share >= self.end:
            return 1.0
        return 0.0 if share <= self.start else (share - self.start) / (self.end - self.start)


def turns(drawing: Drawing) -> tuple[RevealTurn, ...]:
    """The turn of every item of `drawing`, in the same order."""
    order = _order(drawing.items, _extent(drawing))
    whole = sum(weight for _, weight in order)
    found = [RevealTurn()] * len(drawing.items)
    at = 0.0
    for number, (index, weight) in enumerate(order):
        end = 1.0 if number == len(order) - 1 else (at + weight) / whole
        found[index] = RevealTurn(at / whole, end)
        at += weight
    return tuple(found)


def reveal(drawing: Drawing, share: float) -> Drawing:
    """What there is of `drawing` when `share` (0..1) of it is made: at 0 what stood before, at 1 all of it. A line in
    the making is cut at its length; texts and dimensions appear when their turn is over. `bounds` stay as they are, so
    a drawing without them fits what is there (`StagedDrawing` keeps every part in its place)."""
    share = min(max(share, 0.0), 1.0)
    items = []
    for item, turn in zip(drawing.items, turns(drawing), strict=True):
        made = item if turn.stands else part_of(item, turn.done(share))
        if made is not None:
            items.append(made)
    return replace(drawing, items=tuple(items))


def part_of(item: Item, share: float) -> Item | None:
    """The part of `item` drawn at `share` (0..1) of it; None when there is nothing to be seen yet."""
    if share >= 1.0:
        return item
    if share <= 0.0 or not isinstance(item, Stroke):
        return None
    curves = item.curves
    if item.closed and curves and curves[-1].end.distance(curves[0].start) > 0.02:
        from kit.geometry import Line

        curves = (*curves, Line(curves[-1].end, curves[0].start))
    left = share * sum(curve.length for curve in curves)
    begun: list[Curve] = []
    for curve in curves:
        long = curve.length
        if long <= left:
            begun.append(curve)
            left -= long
            continue
        if left > 1e-6:
            begun.append(curve.between(0.0, curve.t_at(left)))
        break
    if not begun:
        return None
    return replace(item, curves=tuple(begun), closed=False, arrow="start" if item.arrow in ("start", "both") else "")


def seconds(drawing: Drawing) -> float:
    """How long it takes to make the drawing at an unhurried pace; 0 when nothing in it is new."""
    weight = sum(weight for _, weight in _order(drawing.items, _extent(drawing)))
    return min(max(weight * _PER_CROSSING, _QUICK), _SLOW) if weight else 0.0


# ---- the order --------------------------------------------------------------------------------------------


def _extent(drawing: Drawing) -> float:
    x0, y0, x1, y1 = bounds_of(drawing)
    return max(x1 - x0, y1 - y0, 1.0)


def _order(items: Sequence[Item], extent: float) -> list[tuple[int, float]]:
    """(index, weight) of everything new, in the order in which it is made."""
    lines = {i: _along(item) for i, item in enumerate(items) if isinstance(item, Stroke) and item.role in NEW}
    # Everything new belongs to a line: a point to the line it lies on, before it, a measure and a name to what they are
    # nearest to, after it. So a line is drawn from its points, and then told. A point on no line stands for itself.
    dots = {i: (item.at,) for i, item in enumerate(items) if isinstance(item, Dot) and item.role == "new"}
    before: dict[int, list[int]] = {}
    for i, (at,) in dots.items():
        near, far = _nearest((at,), lines)
        before.setdefault(near if far <= extent * _BY else i, []).append(i)
    hosts: dict[int, Sequence[Point]] = {**lines, **{i: at for i, at in dots.items() if i in before.get(i, ())}}
    after: dict[int, list[int]] = {}
    for i, item in enumerate(items):
        if isinstance(item, Dimension):
            after.setdefault(_nearest(_measured(item), hosts)[0] if hosts else i, []).append(i)
        elif isinstance(item, Label) and _is_new(item, items, lines, extent):
            after.setdefault(_nearest((item.at,), hosts)[0] if hosts else i, []).append(i)
    order: list[tuple[int, float]] = []
    for host in sorted({*hosts, *after}):
        order += [(i, _DOT) for i in before.get(host, ())]
        if host in lines:
            order.append((host, _weight(items[host], extent)))
        order += [(i, _TEXT) for i in after.get(host, ())]
    return order


def _is_new(label: Label, items: Sequence[Item], lines: Mapping[int, Sequence[Point]], extent: float) -> bool:
    """Whether a text belongs to what is new: names of new lines and points, and of strips drawn anew."""
    if label.role in ("new", "measure", "order"):
        return True
    if label.role == "small":
        dots = [item for item in items if isinstance(item, Dot)]
        nearest = min(dots, key=lambda dot: dot.at.distance(label.at), default=None)
        return nearest is not None and nearest.role == "new" and nearest.at.distance(label.at) <= extent * _BY
    if label.role != "name" or any(isinstance(item, Fill) for item in items):
        return False
    standing = {i: _along(item) for i, item in enumerate(items) if isinstance(item, Stroke) and item.role not in NEW}
    return bool(lines) and _nearest((label.at,), lines)[1] <= _nearest((label.at,), standing)[1]


def _along(stroke: Stroke) -> tuple[Point, ...]:
    return tuple(curve.point(k / 8) for curve in stroke.curves for k in range(9))


def _measured(item: Dimension) -> tuple[Point, ...]:
    if item.along:
        return tuple(curve.point(t) for curve in item.along for t in (0.0, 0.5, 1.0))
    return (item.start, item.start.mid(item.end), item.end)


def _nearest(points: Sequence[Point], lines: Mapping[int, Sequence[Point]]) -> tuple[int, float]:
    """The line that lies nearest to all the points together, and how far off it is on average (mm)."""
    best, least = -1, math.inf
    for index, along in lines.items():
        far = sum(min(p.distance(q) for q in along) for p in points) / len(points) if along else math.inf
        if far < least - 1e-9:
            best, least = index, far
    return best, least


def _weight(item: Item, extent: float) -> float:
    length = sum(curve.length for curve in item.curves) if isinstance(item, Stroke) else 0.0
    return min(max(length / extent, _SHORTEST), _LONGEST)
