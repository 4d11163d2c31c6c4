"""Where the name of a size stands in its own line: clear of every other line, mark and word, at a few places."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any

import numpy as np
import shapely

from kit.geometry import Curve, Line, Point
from kit.paper.pdf_pen import label_size
from kit.paper.share import Part
from kit.picture.drawing import Dot, Fill, Item, Label, Stroke
from kit.picture.lettering import upright

EVERY = 170.0
"""A name about every so many mm of line."""
_TYPES = (3.4, 2.7, 2.1)
_STEP = 8.0
_AIR = 0.5
_BEND = 1 / 40


@dataclass(frozen=True)
class _Spot:
    """A place in a size's line: mm along it, where, and which way text lies there."""

    along: float
    at: Point
    angle: float


def size_names(parts: Sequence[Part], sizes: Sequence[str], words: Sequence[Label]) -> tuple[Part, ...]:
    """For each size the names in the cut lines that are its own: a patch of paper and the label on it. `words` are
    the labels that stand already."""
    own = [_own(parts, size) for size in range(len(sizes))]
    lines, owners = _lines(parts)
    tree = shapely.STRtree(lines)
    taken: list[Any] = [_boxes([_Spot(0.0, word.at, word.angle)], *label_size(word))[0] for word in words]
    taken += [shapely.Point(i.at.x, i.at.y).buffer(1.5) for part in parts for i in part.items if isinstance(i, Dot)]
    items: list[list[Item]] = [[] for _ in sizes]
    spots = [_spots(curves) for curves in own]
    lengths = [sum(curve.length for curve in curves) for curves in own]
    counts = [max(2, round(length / EVERY)) for length in lengths]
    wanted = [
        [(i + 0.15 + 0.7 * size / len(sizes)) * lengths[size] / counts[size] for i in range(counts[size])]
        for size in range(len(sizes))
    ]
    for height in _TYPES:
        for size, name in enumerate(sizes):
            if not spots[size] or not wanted[size]:
                continue
            wide, high = label_size(Label(name, Point(0, 0), "new", size=height))
            boxes = _boxes(spots[size], wide, high)
            places, met = tree.query(boxes, predicate="intersects")
            free = np.ones(len(boxes), dtype=bool)
            free[places[owners[met] != size]] = False
            reach = lengths[size] / counts[size] / 2
            left = []
            for target in wanted[size]:
                found = _nearest(spots[size], boxes, free, target, reach, taken)
                if found is None:
                    left.append(target)
                    continue
                spot = spots[size][found]
                taken.append(boxes[found])
                items[size] += [_patch(spot, wide, high), Label(name, spot.at, "new", spot.angle, height)]
            wanted[size] = left
    return tuple(Part((size,), tuple(found)) for size, found in enumerate(items) if found)


def _own(parts: Sequence[Part], size: int) -> list[Curve]:
    return [
        curve
        for part in parts
        if part.sizes == (size,)
        for item in part.items
        if isinstance(item, Stroke) and item.role == "cut"
        for curve in item.curves
    ]


def _lines(parts: Sequence[Part]) -> tuple[list[Any], Any]:
    """Every curve drawn, and the size whose own cut line it is (-1: none's)."""
    lines, owners = [], []
    for part in parts:
        for item in part.items:
            if isinstance(item, Stroke):
                owner = part.sizes[0] if len(part.sizes) == 1 and item.role == "cut" else -1
                for curve in item.curves:
                    points = [(p.x, p.y) for p in curve.points(0.3)]
                    if len(points) > 1:
                        lines.append(shapely.LineString(points))
                        owners.append(owner)
    return lines, np.array(owners, dtype=int)


def _nearest(
    spots: Sequence[_Spot], boxes: Any, free: Any, target: float, reach: float, taken: Sequence[Any]
) -> int | None:
    """The free spot nearest to `target` along the line, at most `reach` mm from it."""
    near = sorted(
        (i for i in map(int, np.flatnonzero(free)) if abs(spots[i].along - target) <= reach),
        key=lambda i: abs(spots[i].along - target),
    )
    for i in near:
        if not shapely.intersects(boxes[i], taken).any():
            return i
    return None


def _spots(curves: Sequence[Curve]) -> list[_Spot]:
    """Places along the curves where text lies on a nearly straight stretch."""
    spots: list[_Spot] = []
    run = 0.0
    for curve in curves:
        length = curve.length
        count = int((length - 10.0) / _STEP) + 1 if length > 10.0 else 0
        for i in range(count):
            t = (5.0 + (length - 10.0) * (i + 0.5) / count) / length
            if isinstance(curve, Line) or abs(curve.curvature(t)) < _BEND:
                way = curve.derivative(t)
                spots.append(_Spot(run + t * length, curve.point(t), upright(math.atan2(way.y, way.x))))
        run += length
    return spots


def _boxes(spots: Sequence[_Spot], wide: float, high: float) -> Any:
    """The paper a name takes at each spot, with a little air (array of shapely polygons)."""
    at = np.array([(spot.at.x, spot.at.y) for spot in spots])
    angle = np.array([spot.angle for spot in spots])
    along = np.column_stack([np.cos(angle), np.sin(angle)]) * (wide / 2 + _AIR)
    up = np.column_stack([-np.sin(angle), np.cos(angle)]) * (high / 2 + _AIR)
    rings = np.stack([at - along - up, at + along - up, at + along + up, at - along + up], axis=1)
    return shapely.polygons(rings)


def _patch(spot: _Spot, wide: float, high: float) -> Fill:
    """Blank paper under a name."""
    cos, sin = math.cos(spot.angle) / 2, math.sin(spot.angle) / 2
    wide, high = wide + 0.6, high * 0.8
    corners = [
        Point(spot.at.x + x * wide * cos - y * high * sin, spot.at.y + x * wide * sin + y * high * cos)
        for x, y in ((-1, -1), (1, -1), (1, 1), (-1, 1))
    ]
    return Fill(tuple(Line(a, b) for a, b in zip(corners, corners[1:] + corners[:1], strict=True)), "paper")
