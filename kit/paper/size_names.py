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
from kit.paper.shared_lines import SharedPart
from kit.picture.drawing import Dot, Fill, Item, Label, Stroke
from kit.picture.lettering import upright

EVERY = 170.0
"""A name about every so many mm of line."""
_TYPES = (3.4, 2.7, 2.1)
_STEP = 8.0
_AIR = 0.5
_BEND = 1 / 40
_INNER = ("stitch", "mark", "pleat", "placement")
_LEAST = 40.0  # a line inside the piece shorter than this has no room for a name


@dataclass(frozen=True)
class _NameAt:
    """A place in a size's line: mm along it, where, and which way text lies there."""

    along: float
    at: Point
    angle: float


@dataclass
class _Run:
    """A line that wants names: whose it is, its curves, and where along it names are still wanted (mm)."""

    size: int
    number: int
    curves: list[Curve]
    length: float
    reach: float
    wanted: list[float]
    spots: list[_NameAt]


def size_names(parts: Sequence[SharedPart], sizes: Sequence[str], words: Sequence[Label]) -> tuple[SharedPart, ...]:
    """For each size its names: along the cut lines that are its own, and one in each dart leg or mark that is; a patch
    of paper and the label on it. `words` are the labels that stand already."""
    runs = _runs(parts, len(sizes))
    lines, owners = _lines(parts, runs)
    tree = shapely.STRtree(lines)
    taken: list[Any] = [_boxes([_NameAt(0.0, word.at, word.angle)], *label_size(word))[0] for word in words]
    taken += [shapely.Point(i.at.x, i.at.y).buffer(1.5) for part in parts for i in part.items if isinstance(i, Dot)]
    items: list[list[Item]] = [[] for _ in sizes]
    for height in _TYPES:
        open_runs = [run for run in runs if run.spots and run.wanted]
        if not open_runs:
            break
        rooms = [label_size(Label(name, Point(0, 0), "new", size=height)) for name in sizes]
        boxes = [_boxes(run.spots, *rooms[run.size]) for run in open_runs]
        # Every place a name could stand is a box; all boxes of all sizes are asked at once which lines they meet. A
        # name may lie over its own size's line (it interrupts it) and over no other's. What finds no room is tried
        # again in the next smaller type.
        starts = np.cumsum([0, *map(len, boxes)])
        whose = np.repeat([run.number for run in open_runs], [len(each) for each in boxes])
        places, met = tree.query(np.concatenate(boxes), predicate="intersects")
        free = np.ones(starts[-1], dtype=bool)
        free[places[owners[met] != whose[places]]] = False
        for run, own, start in zip(open_runs, boxes, starts, strict=False):
            left = []
            for target in run.wanted:
                found = _nearest(run.spots, own, free[start : start + len(own)], target, run.reach, taken)
                if found is None:
                    left.append(target)
                    continue
                spot = run.spots[found]
                taken.append(own[found])
                wide, high = rooms[run.size]
                name = Label(sizes[run.size], spot.at, "new", spot.angle, height)
                items[run.size] += [_patch(spot, wide, high), name]
            run.wanted = left
    return tuple(SharedPart((size,), tuple(found)) for size, found in enumerate(items) if found)


def _runs(parts: Sequence[SharedPart], count: int) -> list[_Run]:
    """The lines of each size to be named: all its cut lines as one, and each line inside the piece (of a dart's two
    legs the first)."""
    runs: list[_Run] = []
    for size in range(count):
        strokes = [i for part in parts if part.sizes == (size,) for i in part.items if isinstance(i, Stroke)]
        curves = [curve for stroke in strokes if stroke.role == "cut" for curve in stroke.curves]
        length = sum(curve.length for curve in curves)
        places = max(2, round(length / EVERY))
        wanted = [(i + 0.15 + 0.7 * size / count) * length / places for i in range(places)]
        runs.append(_Run(size, size, curves, length, length / places / 2, wanted, _spots(curves)))
        inner: dict[str, list[Curve]] = {}
        folds = {f"{stroke.name}.fold" for stroke in strokes}  # of darts and pleats whose legs or lines are named
        for stroke in strokes:
            if stroke.role in _INNER and not stroke.closed and stroke.name not in folds:
                inner.setdefault(stroke.name, list(stroke.curves))
        for own in inner.values():
            length = sum(curve.length for curve in own)
            if length > _LEAST:
                at = (0.3 + 0.4 * size / count) * length
                runs.append(_Run(size, count + len(runs), own, length, length / 2, [at], _spots(own)))
    return runs


def _lines(parts: Sequence[SharedPart], runs: Sequence[_Run]) -> tuple[Any, Any]:
    """Every curve drawn, and the number of the run it belongs to (-1: none)."""
    numbers = {id(curve): run.number for run in runs for curve in run.curves}
    owners: list[int] = []
    counts: list[int] = []
    places: list[tuple[float, float]] = []
    for part in parts:
        for item in part.items:
            if isinstance(item, Stroke):
                for curve in item.curves:
                    points = curve.points(0.3)
                    if len(points) > 1:
                        places += [(point.x, point.y) for point in points]
                        counts.append(len(points))
                        owners.append(numbers.get(id(curve), -1))
    lines: Any = shapely.linestrings(places, indices=np.repeat(np.arange(len(counts)), counts)) if counts else []
    return lines, np.array(owners, dtype=int)


def _nearest(
    spots: Sequence[_NameAt], boxes: Any, free: Any, target: float, reach: float, taken: Sequence[Any]
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


def _spots(curves: Sequence[Curve]) -> list[_NameAt]:
    """Places along the curves where text lies on a nearly straight stretch."""
    spots: list[_NameAt] = []
    run = 0.0
    for curve in curves:
        length = curve.length
        count = int((length - 10.0) / _STEP) + 1 if length > 10.0 else 0
        straight = isinstance(curve, Line)
        for i in range(count):
            t = (5.0 + (length - 10.0) * (i + 0.5) / count) / length
            if straight or abs(curve.curvature(t)) < _BEND:
                way = curve.derivative(t)
                spots.append(_NameAt(run + t * length, curve.point(t), upright(math.atan2(way.y, way.x))))
        run += length
    return spots


def _boxes(spots: Sequence[_NameAt], wide: float, high: float) -> Any:
    """The paper a name takes at each spot, with a little air (array of shapely polygons)."""
    at = np.array([(spot.at.x, spot.at.y) for spot in spots])
    angle = np.array([spot.angle for spot in spots])
    along = np.column_stack([np.cos(angle), np.sin(angle)]) * (wide / 2 + _AIR)
    up = np.column_stack([-np.sin(angle), np.cos(angle)]) * (high / 2 + _AIR)
    rings = np.stack([at - along - up, at + along - up, at + along + up, at - along + up], axis=1)
    return shapely.polygons(rings)


def _patch(spot: _NameAt, wide: float, high: float) -> Fill:
    """Blank paper under a name."""
    cos, sin = math.cos(spot.angle) / 2, math.sin(spot.angle) / 2
    wide, high = wide + 0.6, high * 0.8
    corners = [
        Point(spot.at.x + x * wide * cos - y * high * sin, spot.at.y + x * wide * sin + y * high * cos)
        for x, y in ((-1, -1), (1, -1), (1, 1), (-1, 1))
    ]
    return Fill(tuple(Line(a, b) for a, b in zip(corners, corners[1:] + corners[:1], strict=True)), "paper")
