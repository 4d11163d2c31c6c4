"""Where the name of a size stands in its own line: clear of every other line, mark and word, at a few places."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from functools import cached_property
from itertools import pairwise
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
_ASKED = (4, 16, 64)  # how many places for a name are looked at first, and then
_ALL = 1 << 30
_UNKNOWN = -1
_AIR = 0.5
_BEND = 1 / 40
_INNER = ("stitch", "mark", "pleat", "placement")
_LEAST = 40.0  # a line inside the piece shorter than this has no room for a name


@dataclass(frozen=True)
class _NameAt:
    """A place in a size's line: where, and which way text lies there."""

    at: Point
    angle: float


class _Spots:
    """Places along curves where text may lie: how far `along` them each lies (array of mm). Where a place is, and
    whether the line is nearly straight there, is worked out once it is asked for; most never are."""

    def __init__(self, curves: Sequence[Curve]) -> None:
        self._of: list[tuple[Curve, float]] = []
        along: list[float] = []
        run = 0.0
        for curve in curves:
            length = curve.length
            count = int((length - 10.0) / _STEP) + 1 if length > 10.0 else 0
            for i in range(count):
                t = (5.0 + (length - 10.0) * (i + 0.5) / count) / length
                self._of.append((curve, t))
                along.append(run + t * length)
            run += length
        self.along = np.array(along)
        self._known: dict[int, _NameAt | None] = {}

    def __len__(self) -> int:
        return len(self._of)

    def at(self, i: int) -> _NameAt | None:
        """The place of that number; None where the line bends."""
        if i not in self._known:
            curve, t = self._of[i]
            found = None
            if isinstance(curve, Line) or abs(curve.curvature(t)) < _BEND:
                way = curve.derivative(t)
                found = _NameAt(curve.point(t), upright(math.atan2(way.y, way.x)))
            self._known[i] = found
        return self._known[i]


@dataclass(frozen=True)
class _Run:
    """A line that wants names: whose it is, its curves, and where along it names are wanted (mm)."""

    size: int
    number: int
    curves: list[Curve]
    length: float
    reach: float
    wanted: list[float]
    spots: _Spots

    @cached_property
    def near(self) -> list[Any]:
        """For each name that is wanted the numbers of the spots within its reach, the nearest first (arrays)."""
        found = []
        for target in self.wanted:
            far = np.abs(self.spots.along - target)
            near = np.flatnonzero(far <= self.reach)
            found.append(near[np.argsort(far[near], kind="stable")])
        return found


class NamePlaces:
    """Where along the lines in `parts` names of `sizes` may stand, whatever else is written: found once for a nest
    whose words are placed anew. A place knows which lines it meets only once it is asked for: most names stand at the
    first they ask for, and there are thousands."""

    def __init__(self, parts: Sequence[SharedPart], sizes: Sequence[str]) -> None:
        self.sizes = tuple(sizes)
        self.runs = [run for run in _runs(parts, len(sizes)) if len(run.spots) and run.wanted]
        self.dots = [shapely.Point(i.at.x, i.at.y).buffer(1.5) for p in parts for i in p.items if isinstance(i, Dot)]
        lines, self._owners = _lines(parts, self.runs)
        self._tree = shapely.STRtree(lines)
        self._rooms: dict[float, list[tuple[float, float]]] = {}
        self._found: dict[tuple[float, int], tuple[Any, Any]] = {}

    def rooms(self, height: float) -> list[tuple[float, float]]:
        """How much paper each size's name takes, in mm along and across."""
        if height not in self._rooms:
            self._rooms[height] = [label_size(Label(name, Point(0, 0), "new", size=height)) for name in self.sizes]
        return self._rooms[height]

    def look(self, height: float, wanted: Sequence[tuple[_Run, Any]]) -> None:
        """Find out for each of the `wanted` names, by its run and the spots near it, which of its first spots meet no
        line but its own, and of further ones where none of those does: for all names at once, which is quicker than
        for one after another."""
        for begin, end in pairwise((0, *_ASKED, _ALL)):
            self._ask(height, [(run, near[begin:end]) for run, near in wanted])
            wanted = [each for each in wanted if len(each[1]) > end and not self._any(height, each[0], each[1][:end])]

    def _any(self, height: float, run: _Run, spots: Any) -> bool:
        return bool((self._kept(height, run)[1][spots] == 1).any())

    def _ask(self, height: float, asked: Sequence[tuple[_Run, Any]]) -> None:
        rooms = self.rooms(height)
        at: list[_NameAt] = []
        of: list[tuple[_Run, int]] = []
        for run, spots in asked:
            known = self._kept(height, run)[1]
            for i in spots[known[spots] == _UNKNOWN].tolist():
                spot = run.spots.at(i)
                known[i] = spot is not None
                if spot is not None:
                    at.append(spot)
                    of.append((run, i))
        if not at:
            return
        made = _boxes(at, *np.array([rooms[run.size] for run, _ in of]).T)
        for box, (run, i) in zip(made, of, strict=True):
            self._kept(height, run)[0][i] = box
        # A name may lie over its own size's line (it interrupts it) and over no other's.
        places, met = self._tree.query(made, predicate="intersects")
        owners = np.array([run.number for run, _ in of])
        for place in np.unique(places[self._owners[met] != owners[places]]).tolist():
            run, i = of[place]
            self._kept(height, run)[1][i] = 0

    def free(self, height: float, run: _Run, spots: Any) -> tuple[Any, Any]:
        """The boxes of the name of `run` at `spots` (their numbers), and which of them meet no line but its own."""
        self._ask(height, [(run, spots)])
        boxes, known = self._kept(height, run)
        return boxes[spots], known[spots] == 1

    def _kept(self, height: float, run: _Run) -> tuple[Any, Any]:
        if (height, run.number) not in self._found:
            count = len(run.spots)
            self._found[height, run.number] = np.empty(count, dtype=object), np.full(count, _UNKNOWN, dtype=np.int8)
        return self._found[height, run.number]


def size_names(places: NamePlaces, words: Sequence[Label], joins: Any = None) -> tuple[SharedPart, ...]:
    """For each size its names: along the cut lines that are its own, and one in each dart leg or mark that is; a patch
    of paper and the label on it. `words` are the labels that stand already, `joins` lines (shapely) that no name may
    run over."""
    taken = _Taken([_boxes([_NameAt(word.at, word.angle)], *label_size(word))[0] for word in words])
    taken.add(places.dots)
    items: list[list[Item]] = [[] for _ in places.sizes]
    wanted = {run.number: run.near for run in places.runs}
    for height in _TYPES:
        # What finds no room is tried again in the next smaller type.
        places.look(height, [(run, near) for run in places.runs for near in wanted[run.number]])
        for run in places.runs:
            left = []
            for near in wanted[run.number]:
                found = _nearest(places, height, run, near, taken, joins)
                if found is None:
                    left.append(near)
                    continue
                spot = run.spots.at(found)
                assert spot is not None  # no name stands where the line bends
                wide, high = places.rooms(height)[run.size]
                name = Label(places.sizes[run.size], spot.at, "new", spot.angle, height)
                items[run.size] += [_patch(spot, wide, high), name]
            wanted[run.number] = left
    return tuple(SharedPart((size,), tuple(found)) for size, found in enumerate(items) if found)


class _Taken:
    """The paper that words have taken: shapes, and the boxes around them, which rule most of them out at once."""

    def __init__(self, shapes: Sequence[Any]) -> None:
        self._shapes: list[Any] = []
        self._around = np.empty((0, 4))
        self.add(shapes)

    def add(self, shapes: Sequence[Any]) -> None:
        if len(shapes):
            self._shapes.extend(shapes)
            self._around = np.concatenate([self._around, shapely.bounds(list(shapes))])

    def meets(self, box: Any) -> bool:
        left, low, right, high = shapely.bounds(box)
        around = self._around
        beside = (around[:, 0] <= right) & (around[:, 2] >= left) & (around[:, 1] <= high) & (around[:, 3] >= low)
        return any(shapely.intersects(box, self._shapes[i]) for i in np.flatnonzero(beside))


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
        runs.append(_Run(size, size, curves, length, length / places / 2, wanted, _Spots(curves)))
        inner: dict[str, list[Curve]] = {}
        folds = {f"{stroke.name}.fold" for stroke in strokes}  # of darts and pleats whose legs or lines are named
        for stroke in strokes:
            if stroke.role in _INNER and not stroke.closed and stroke.name not in folds:
                inner.setdefault(stroke.name, list(stroke.curves))
        for own in inner.values():
            length = sum(curve.length for curve in own)
            if length > _LEAST:
                at = (0.3 + 0.4 * size / count) * length
                runs.append(_Run(size, count + len(runs), own, length, length / 2, [at], _Spots(own)))
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


def _nearest(places: NamePlaces, height: float, run: _Run, near: Any, taken: _Taken, joins: Any) -> int | None:
    """The first free one of the spots `near` the place that is wanted; it is taken then."""
    asked = 0
    for end in (*_ASKED, _ALL):
        some = near[asked:end]
        if not len(some):
            break
        boxes, free = places.free(height, run, some)
        if joins is not None:
            free[free] = ~shapely.intersects(joins, boxes[free])
        for i in np.flatnonzero(free):
            if not taken.meets(boxes[i]):
                taken.add(boxes[i : i + 1])
                return int(some[i])
        asked = end
    return None


def _boxes(spots: Sequence[_NameAt], wide: Any, high: Any) -> Any:
    """The paper a name takes at each spot, with a little air (array of shapely polygons); `wide` and `high` are those
    of all names, or arrays."""
    at = np.array([(spot.at.x, spot.at.y) for spot in spots])
    angle = np.array([spot.angle for spot in spots])
    along = (np.stack([np.cos(angle), np.sin(angle)]) * (wide / 2 + _AIR)).T
    up = (np.stack([-np.sin(angle), np.cos(angle)]) * (high / 2 + _AIR)).T
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
