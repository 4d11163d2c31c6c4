"""Where lines of several sizes run too close together for a name between them: a leader beside them tells their order.

A bunch is a stretch on which neighbouring lines run the same way nearer to each other than the smallest name is high.
It is found by comparing stations along all lines, so it does not matter what the lines are of, or which sizes. Beside
it, on the paper of the piece, stand the sizes in the order in which a leader crosses them, that next to the words
first.
"""

from __future__ import annotations

import itertools
import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from typing import Any

import numpy as np
import shapely

from kit.geometry import Curve, Line, Point
from kit.language import say
from kit.paper.pdf_pen import label_size
from kit.paper.shared_lines import SharedPart
from kit.picture.drawing import Dot, Label, Stroke
from kit.picture.lettering import upright
from kit.wording.lists import strung

NEAR = 1.6
"""mm between two lines, under which no name has room in one of them."""
LEAST = 18.0
"""mm that lines must run so to be a bunch."""
EVERY = 150.0
"""An order about every so many mm of a bunch."""
_STEP = 3.0
_PEN = 0.4  # mm
_SLANT = math.sin(math.radians(20))  # lines that turn away from each other more than so cross, and do not bunch
_TYPES = (2.7, 2.1)
_OFF = (1.6, 4.0, 8.0, 14.0)  # mm between the words and the line next to them
_OVER = 1.2  # mm that a leader reaches beyond the last line
_TRIED = 24  # stations that are tried for one order


@dataclass(frozen=True)
class _Stations:
    """Places about `_STEP` mm apart along all lines: `at` and `way` (arrays [n, 2]), the number of the `line` each is
    of, and how far `along` its line it lies."""

    at: Any
    way: Any
    line: Any
    along: Any


@dataclass(frozen=True)
class Orders:
    """The orders told (`parts`: a leader and a label each), and the `share` (0..1) of the cut lines that bunch."""

    parts: tuple[SharedPart, ...] = ()
    share: float = 0.0


@dataclass(frozen=True)
class Bunch:
    """Stations, by number, that lie in one bunch: those of its longest line, in order, and how many mm it is long."""

    spine: tuple[int, ...]
    length: float


def orders(
    parts: Sequence[SharedPart], sizes: Sequence[str], places: Sequence[int], paper: Any, words: Sequence[Label]
) -> Orders:
    """For each bunch of cut lines in `parts` its order, told beside it: a label, and a leader across the lines. `sizes`
    are their names, `places` their places in the chart, `paper` the area (shapely) the words must stay on, `words` the
    labels that stand already.

    >>> lines = [Line(Point(0, 0.5 * i), Point(100, 0.5 * i)) for i in range(3)]
    >>> parts = [SharedPart((i,), (Stroke((line,), "cut"),)) for i, line in enumerate(lines)]
    >>> told = orders(parts, ("W1", "W2", "W3"), (1, 2, 3), shapely.box(0, 0, 100, 60), ())
    >>> (found,) = told.parts
    >>> told.share, found.sizes, [item.text for item in found.items if isinstance(item, Label)]
    (1.0, (0, 1, 2), ['W3 to W1'])
    """
    lines = _lines(parts, len(sizes))
    stations = _stations([line for line, _ in lines])
    pairs = _pairs(stations)
    bunches = list(_bunches(stations, pairs))
    if not bunches:
        return Orders()
    drawn = _Drawn(lines, parts, paper, words)
    found = []
    for bunch in bunches:
        often = max(1, round(bunch.length / EVERY))
        for i in range(often):
            told = _told(bunch, (i + 0.5) / often, stations, drawn, sizes, places)
            if told is not None:
                found.append(told)
    return Orders(tuple(found), len(np.unique(pairs)) / len(stations.line))


# ---- what bunches ------------------------------------------------------------------------------------------


def _lines(parts: Sequence[SharedPart], count: int) -> list[tuple[Any, tuple[int, ...]]]:
    """The cut lines that are not of all sizes (shapely), with the sizes each is of."""
    return [
        (_string(item.curves), part.sizes)
        for part in parts
        if len(part.sizes) < count
        for item in part.items
        if isinstance(item, Stroke) and item.role == "cut"
    ]


def _stations(lines: Sequence[Any]) -> _Stations:
    at, way, line, along = [np.empty((0, 2))], [np.empty((0, 2))], [np.empty(0, dtype=int)], [np.empty(0)]
    for number, string in enumerate(lines):
        places = shapely.get_coordinates(string)
        steps = np.diff(places, axis=0)
        sizes = np.hypot(*steps.T)
        ends = np.concatenate([[0.0], np.cumsum(sizes)])
        count = max(1, round(ends[-1] / _STEP))
        here = (np.arange(count) + 0.5) * ends[-1] / count
        on = np.clip(np.searchsorted(ends, here, side="right") - 1, 0, len(steps) - 1)
        turned = steps[on] / np.maximum(sizes[on], 1e-9)[:, None]
        at.append(places[on] + turned * (here - ends[on])[:, None])
        way.append(turned)
        line.append(np.full(count, number))
        along.append(here)
    return _Stations(np.concatenate(at), np.concatenate(way), np.concatenate(line), np.concatenate(along))


def _pairs(stations: _Stations) -> Any:
    """Stations of two lines that run beside each other closer than `NEAR`, as an array [2, n]."""
    points = shapely.points(stations.at)
    one, two = shapely.STRtree(points).query(points, predicate="dwithin", distance=math.hypot(NEAR, _STEP))
    off = stations.at[two] - stations.at[one]
    way = stations.way[one]
    across = np.abs(off[:, 0] * way[:, 1] - off[:, 1] * way[:, 0])
    beside = np.abs((off * way).sum(axis=1)) <= 0.6 * _STEP
    turned = np.abs(way[:, 0] * stations.way[two][:, 1] - way[:, 1] * stations.way[two][:, 0])
    kept = (stations.line[one] != stations.line[two]) & (across < NEAR) & beside & (turned < _SLANT)
    return np.stack([one[kept], two[kept]])


def _bunches(stations: _Stations, pairs: Any) -> Iterator[Bunch]:
    """Stations that are close to one another, or follow each other on a line and are close to some, together."""
    one, two = pairs
    head = np.arange(len(stations.line))

    def top(i: int) -> int:
        while head[i] != i:
            head[i] = head[head[i]]
            i = int(head[i])
        return i

    close = np.unique(one)
    follow = [
        (a, b)
        for a, b in itertools.pairwise(close)
        if stations.line[a] == stations.line[b] and abs(stations.along[b] - stations.along[a]) < 2.5 * _STEP
    ]
    for a, b in (*zip(one.tolist(), two.tolist(), strict=True), *follow):
        low, high = sorted((top(int(a)), top(int(b))))
        head[high] = low
    together: dict[int, list[int]] = {}
    for i in close.tolist():
        together.setdefault(top(i), []).append(i)
    for members in together.values():
        of: dict[int, list[int]] = {}
        for i in members:
            of.setdefault(int(stations.line[i]), []).append(i)
        spine = max(of.values(), key=lambda own: (len(own), -own[0]))
        length = float(stations.along[spine[-1]] - stations.along[spine[0]]) + _STEP
        if length >= LEAST:
            yield Bunch(tuple(spine), length)


# ---- telling it --------------------------------------------------------------------------------------------


class _Drawn:
    """What is on the paper already, and the words that come to it."""

    def __init__(
        self,
        lines: Sequence[tuple[Any, tuple[int, ...]]],
        parts: Sequence[SharedPart],
        paper: Any,
        words: Sequence[Label],
    ) -> None:
        strokes = [item for part in parts for item in part.items if isinstance(item, Stroke)]
        self.paper = paper.buffer(0.2)
        shapely.prepare(self.paper)
        self.cut = [line for line, _ in lines]
        self.sizes = [sizes for _, sizes in lines]
        self.tree = shapely.STRtree(self.cut)
        self.all = shapely.STRtree([_string(item.curves) for item in strokes])
        self.taken = [_box(word.at, word.angle, *label_size(word)) for word in words]
        self.taken += [
            shapely.Point(item.at.x, item.at.y).buffer(1.5)
            for part in parts
            for item in part.items
            if isinstance(item, Dot)
        ]

    def clear(self, way: Any) -> bool:
        """Whether nothing that could be taken for a line of the bunch lies on the way to it."""
        return not len(self.all.query(way, predicate="intersects"))

    def free(self, box: Any) -> bool:
        return bool(
            self.paper.covers(box)
            and not len(self.all.query(box, predicate="intersects"))
            and not any(box.intersects(other) for other in self.taken)
        )


def _told(
    bunch: Bunch,
    share: float,
    stations: _Stations,
    drawn: _Drawn,
    sizes: Sequence[str],
    places: Sequence[int],
) -> SharedPart | None:
    """The order of a bunch near that share of its length, where most sizes are crossed and there is room."""
    begin = float(stations.along[bunch.spine[0]])
    near = sorted(bunch.spine, key=lambda i: abs(float(stations.along[i]) - begin - share * bunch.length))
    crossed = [(i, _crossed(i, stations, drawn)) for i in near[:_TRIED]]
    ranked = sorted((each for each in crossed if len(each[1]) > 1), key=lambda each: -sum(len(s) for _, s in each[1]))
    for height in _TYPES:
        for i, met in ranked:
            for side in (1.0, -1.0):
                inward = met if side < 0 else met[::-1]
                text = _said([size for run in _as_one(inward) for size in run], sizes, places)
                found = _beside(i, inward[0][0], side, text, height, stations, drawn)
                if found is not None:
                    label, off = found
                    drawn.taken.append(_box(label.at, label.angle, *label_size(label)))
                    ends = (inward[0][0] + side * off, inward[-1][0] - side * _OVER)
                    leader = Line(*(_point(i, end, stations) for end in ends))
                    of = tuple(sorted({size for _, own in met for size in own}))
                    return SharedPart(of, (Stroke((leader,), "leader", name="order"), label))
    return None


def _beside(
    i: int, edge: float, side: float, text: str, height: float, stations: _Stations, drawn: _Drawn
) -> tuple[Label, float] | None:
    """A free place for the words beside the bunch, along its lines, and how far they are from the line next to them,
    which lies `edge` mm off the station."""
    way = stations.way[i]
    label = Label(text, Point(0.0, 0.0), "new", upright(math.atan2(way[1], way[0])), height)
    wide, high = label_size(label)
    for off in _OFF:
        at = _point(i, edge + side * (off + high / 2), stations)
        way_in = [(point.x, point.y) for point in (_point(i, edge + side * end, stations) for end in (0.3, off))]
        if drawn.free(_box(at, label.angle, wide + 1.0, high + 1.0)) and drawn.clear(shapely.LineString(way_in)):
            return Label(text, at, "new", label.angle, height), off - 0.4
    return None


def _point(i: int, off: float, stations: _Stations) -> Point:
    """The place `off` mm to the left of a station."""
    (x, y), (along_x, along_y) = stations.at[i], stations.way[i]
    return Point(float(x - off * along_y), float(y + off * along_x))


def _crossed(i: int, stations: _Stations, drawn: _Drawn) -> list[tuple[float, tuple[int, ...]]]:
    """The lines of the bunch at a station, from its right to its left: how far off each lies, and whose it is."""
    reach = 60.0
    left, right = _point(i, reach, stations), _point(i, -reach, stations)
    ray = shapely.LineString([(right.x, right.y), (left.x, left.y)])
    shapely.prepare(ray)
    met = []
    for number in drawn.tree.query(ray, predicate="intersects").tolist():
        for point in shapely.get_parts(ray.intersection(drawn.cut[number])):
            middle = point if point.geom_type == "Point" else point.centroid
            met.append((ray.project(middle) - reach, drawn.sizes[number]))
    met.sort()
    own = min(range(len(met)), key=lambda k: abs(met[k][0]), default=0)
    first = last = own
    while first > 0 and met[first][0] - met[first - 1][0] < NEAR:
        first -= 1
    while last + 1 < len(met) and met[last + 1][0] - met[last][0] < NEAR:
        last += 1
    return met[first : last + 1]


def _as_one(inward: Sequence[tuple[float, tuple[int, ...]]]) -> Iterator[list[int]]:
    """Sizes in their order; those whose lines are one to whoever cuts, within a pen's width, by the chart."""
    group: list[int] = []
    begin = math.nan
    for at, own in inward:
        if group and abs(at - begin) > _PEN:
            yield sorted(group)
            group = []
        if not group:
            begin = at
        group += own
    yield sorted(group)


def _said(order: Sequence[int], sizes: Sequence[str], places: Sequence[int]) -> str:
    """Sizes in their order, runs up or down the chart drawn together: "W10 to W3, W1, W2"."""
    runs: list[list[int]] = []
    for size in order:
        run = runs[-1] if runs else []
        step = places[size] - places[run[-1]] if run else 0
        if run and abs(step) == 1 and (len(run) == 1 or step == places[run[1]] - places[run[0]]):
            run.append(size)
        else:
            runs.append([size])
    words: list[str] = []
    for run in runs:
        if len(run) > 2:
            words.append(say("paper.sizes_run", first=sizes[run[0]], last=sizes[run[-1]]))
        else:
            words += [sizes[size] for size in run]
    return strung(words)


def _string(curves: Sequence[Curve]) -> Any:
    points = [point for curve in curves for point in curve.points(0.1)]
    return shapely.LineString([(point.x, point.y) for point in points])


def _box(at: Point, angle: float, wide: float, high: float) -> Any:
    cos, sin = math.cos(angle) / 2, math.sin(angle) / 2
    return shapely.Polygon(
        [
            (at.x + x * wide * cos - y * high * sin, at.y + x * wide * sin + y * high * cos)
            for x, y in ((-1, -1), (1, -1), (1, 1), (-1, 1))
        ]
    )
