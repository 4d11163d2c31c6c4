"""Where a text fits into a shape: the roomiest place for a box of it, the way the shape lies, and lines broken evenly.

For pictures that are made once, such as the lay plan: it looks at many places at a time, with shapely.
"""

from __future__ import annotations

import math
from itertools import pairwise
from typing import Any

import numpy as np
import shapely

from kit.geometry import Point, Vector
from kit.picture.lettering import text_width, upright

_GRID = 21


def room_for(clear: Any, wide: float, high: float, angle: float) -> Point | None:
    """The middle of the roomiest free place for a box of text, turned by `angle`, inside `clear`; or None."""
    if clear.is_empty:
        return None
    x0, y0, x1, y1 = clear.bounds
    c, s = math.cos(angle), math.sin(angle)
    half = abs(c) * wide / 2 + abs(s) * high / 2, abs(s) * wide / 2 + abs(c) * high / 2
    if x1 - x0 < 2 * half[0] or y1 - y0 < 2 * half[1]:
        return None
    across, up = np.linspace(x0 + half[0], x1 - half[0], _GRID), np.linspace(y0 + half[1], y1 - half[1], _GRID)
    middles = np.column_stack([np.tile(across, _GRID), np.repeat(up, _GRID)])
    shapely.prepare(clear)
    corners = np.array([(-wide, -high), (wide, -high), (wide, high), (-wide, high)]) / 2 @ np.array([[c, s], [-s, c]])
    # The middle, both ends and the corners of the text first: they are quick to look at.
    for off in (np.zeros(2), *(np.array([c, s]) * away for away in (wide / 2, -wide / 2)), *corners):
        spots = middles + off
        middles = middles[shapely.contains_xy(clear, spots[:, 0], spots[:, 1])]
        if not len(middles):
            return None
    boxes = shapely.polygons(middles[:, None, :] + corners[None, :, :])
    fits = np.flatnonzero(shapely.contains_properly(clear, boxes))
    if not len(fits):
        return None
    far = shapely.distance(boxes[fits], clear.boundary)
    centre = clear.centroid
    away = np.hypot(middles[fits, 0] - centre.x, middles[fits, 1] - centre.y)
    x, y = middles[fits[int(np.argmax(far - 0.05 * away))]]
    return Point(float(x), float(y))


def lie_of(shape: Any) -> float:
    """The direction of the longer side of the smallest rectangle around a shape."""
    corners = shape.minimum_rotated_rectangle.exterior.coords
    sides = [Vector(b[0] - a[0], b[1] - a[1]) for a, b in pairwise(corners)]
    return upright(max(sides, key=lambda side: side.length).angle)


def broken(text: str, lines: int, em: float) -> list[str]:
    """`text` in at most so many lines of about equal width."""
    if lines == 1:
        return [text]
    return wrapped(text, text_width(text, em, True) / lines * 1.15, em, True)


def wrapped(text: str, room: float, em: float, bold: bool) -> list[str]:
    """`text` in lines no wider than `room`, where its words allow it."""
    words = text.split(" ")
    lines = [words[0]]
    for word in words[1:]:
        longer = f"{lines[-1]} {word}"
        if text_width(longer, em, bold) <= room:
            lines[-1] = longer
        else:
            lines.append(word)
    return lines
