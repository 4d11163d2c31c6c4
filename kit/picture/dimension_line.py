"""Where the line of a dimension runs."""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import replace

from kit.geometry import Curve, Line, Point
from kit.picture.drawing import Dimension
from kit.picture.svg_path import shifted


def set_off(item: Dimension) -> tuple[float, float]:
    """How far (x, y in mm) a dimension line lies from what it measures."""
    dx, dy = item.end.x - item.start.x, item.end.y - item.start.y
    size = math.hypot(dx, dy)
    return (-dy / size * item.offset, dx / size * item.offset) if size > 1e-9 else (0.0, 0.0)


def dimension_curves(item: Dimension) -> tuple[Curve, ...]:
    """The line of a dimension as it is drawn; none where it measures nothing."""
    if item.along:
        return tuple(shifted(c, item.offset) for c in item.along) if item.offset else item.along
    if item.start.distance(item.end) < 1e-6:
        return ()
    dx, dy = set_off(item)
    return (Line(Point(item.start.x + dx, item.start.y + dy), Point(item.end.x + dx, item.end.y + dy)),)


def in_lanes(items: Iterable[Dimension], lane: float) -> list[Dimension]:
    """Dimensions of which no two lie on one line over each other: a reader takes the end of the shorter for the end of
    the longer. The shorter stays beside what it measures, the longer moves outward by a `lane` (mm) or more.

    >>> deep = Dimension(Point(0, 30), Point(0, 0), "depth 30 cm", offset=4.0)
    >>> part = Dimension(Point(0, 6), Point(0, 0), "rounding 6 cm", offset=4.0)
    >>> [item.offset for item in in_lanes([deep, part], 5.0)]
    [9.0, 4.0]
    """
    told = list(items)
    order = sorted(range(len(told)), key=lambda i: told[i].start.distance(told[i].end))
    kept: list[Dimension] = []
    for i in order:
        item = told[i]
        while item.offset and any(_over(item, other, lane / 2) for other in kept):
            item = replace(item, offset=item.offset + math.copysign(lane, item.offset))
        told[i] = item
        kept.append(item)
    return told


def _over(one: Dimension, other: Dimension, near: float) -> bool:
    """Whether two straight dimension lines lie on one line, less than `near` apart, and over each other."""
    if one.along or other.along:
        return False
    lines = dimension_curves(one), dimension_curves(other)
    if not lines[0] or not lines[1]:
        return False
    a, b = lines[0][0], lines[1][0]
    way = (a.end - a.start).unit()
    if any(abs(way.cross(p - a.start)) > near for p in (b.start, b.end)):
        return False
    spans = [sorted(way.dot(p - a.start) for p in (line.start, line.end)) for line in (a, b)]
    return min(spans[0][1], spans[1][1]) - max(spans[0][0], spans[1][0]) > near
