"""Where the line of a dimension runs."""

from __future__ import annotations

import math

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
