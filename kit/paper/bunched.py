"""Where lines of several sizes run too close together for a name between them: a leader beside them tells their order.

A bunch is a stretch on which neighbouring lines run the same way nearer to each other than the smallest name is high.
It is found by comparing stations along all lines, so it does not matter what the lines are of, or which sizes. Beside
it, on the paper of the piece, stand the sizes in the order in which a leader crosses them, that next to the words
first.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from typing import Any

import numpy as np
import shapely

from kit.geometry import Line, Point
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
_BESIDE = 0.6 * _STEP  # mm along a line, within which a station of another is beside it
_PEN = 0.4  # mm
_SLANT = math.sin(math.radians(20))  # lines that turn away from each other more than so cross, and do not bunch
_TYPES = (2.7, 2.1)
_OFF = (1.6, 4.0, 8.0, 14.0)  # mm between the words and the line next to them
_OVER = 1.2  # mm that a leader reaches beyond the last line
_TRIED = 24  # stations that are tried for one order
_ASKED = (1, 4)  # how many of them at first, and then


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


_Met = list[tuple[float, tuple[int, ...]]]
"""Lines of a bunch from right to left at a station: how many mm off it, and whose."""


@dataclass(frozen=True)
class Bunched:
    """Where cut lines bunch, whatever is written beside them: `stations` along the lines, for each order to be told
    the stations it may be led from with the lines `met` there, the best first, and the `share` (0..1) of the lines.
    `strokes` (a shapely tree) and `dots` are all that is drawn."""

    stations: _Stations
    leaders: tuple[tuple[tuple[int, _Met], ...], ...] = ()
    share: float = 0.0
    strokes: Any = None
    dots: tuple[Any, ...] = ()


def bunched(parts: Sequence[SharedPart], count: int) -> Bunched:
    """Where the cut lines in `parts` bunch that are not of all the `count` sizes."""
    drawn = [(item, part.sizes) for part in parts for item in part.items if isinstance(item, Stroke)]
    strings = _strings([item for item, _ in drawn])
    lines = [
        (string, sizes)
        for string, (item, sizes) in zip(strings, drawn, strict=True)
        if item.role == "cut" and len(sizes) < count
    ]
    stations = _stations([line for line, _ in lines])
    pairs = _pairs(stations)
    bunches = list(_bunches(stations, pairs))
    if not bunches:
        return Bunched(stations)
    wanted = []
    for bunch in bunches:
        begin = float(stations.along[bunch.spine[0]])
        often = max(1, round(bunch.length / EVERY))
        for i in range(often):
            share = (i + 0.5) / often
            near = sorted(bunch.spine, key=lambda i: abs(float(stations.along[i]) - begin - share * bunch.length))
            wanted.append(near[:_TRIED])
    asked = list(dict.fromkeys(i for tried in wanted for i in tried))
    crossed = dict(zip(asked, _crossed(asked, stations, lines), strict=True))
    leaders = []
    for tried in wanted:
        met = [(i, crossed[i]) for i in tried if len(crossed[i]) > 1]
        leaders.append(tuple(sorted(met, key=lambda each: -sum(len(s) for _, s in each[1]))))
    signs = [item for part in parts for item in part.items if isinstance(item, Dot)]
    dots = tuple(shapely.Point(item.at.x, item.at.y).buffer(1.5) for item in signs)
    share = len(np.unique(pairs)) / len(stations.line)
    return Bunched(stations, tuple(leaders), share, shapely.STRtree(strings), dots)


def orders(
    close: Bunched, sizes: Sequence[str], places: Sequence[int], paper: Any, words: Sequence[Label], joins: Any = None
) -> Orders:
    """For each bunch of cut lines its order, told beside it: a label, and a leader across the lines. `close` is what
    `bunched` found, `sizes` are their names, `places` their places in the chart, `paper` the area (shapely) the words
    must stay on, `words` the labels that stand already, `joins` lines (shapely) that no words may run over.

    >>> lines = [Line(Point(0, 0.5 * i), Point(100, 0.5 * i)) for i in range(3)]
    >>> parts = [SharedPart((i,), (Stroke((line,), "cut"),)) for i, line in enumerate(lines)]
    >>> told = orders(bunched(parts, 3), ("W1", "W2", "W3"), (1, 2, 3), shapely.box(0, 0, 100, 60), ())
    >>> (found,) = told.parts
    >>> told.share, found.sizes, [item.text for item in found.items if isinstance(item, Label)]
    (1.0, (0, 1, 2), ['W3 to W1'])
    """
    if not close.leaders:
        return Orders()
    drawn = _Drawn(close, paper, words, joins)
    told = (_told(ranked, close.stations, drawn, sizes, places) for ranked in close.leaders)
    return Orders(tuple(part for part in told if part is not None), close.share)


# ---- what bunches ------------------------------------------------------------------------------------------


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
    one, two = shapely.STRtree(points).query(points, predicate="dwithin", distance=math.hypot(NEAR, _BESIDE))
    off = stations.at[two] - stations.at[one]
    way = stations.way[one]
    across = np.abs(off[:, 0] * way[:, 1] - off[:, 1] * way[:, 0])
    beside = np.abs((off * way).sum(axis=1)) <= _BESIDE
    turned = np.abs(way[:, 0] * stations.way[two][:, 1] - way[:, 1] * stations.way[two][:, 0])
    kept = (stations.line[one] != stations.line[two]) & (across < NEAR) & beside & (turned < _SLANT)
    return np.stack([one[kept], two[kept]])


def _bunches(stations: _Stations, pairs: Any) -> Iterator[Bunch]:
    """Stations that are close to one another, or follow each other on a line and are close to some, together."""
    close = np.unique(pairs[0])
    before, after = close[:-1], close[1:]
    on_one = stations.line[before] == stations.line[after]
    on_one &= np.abs(stations.along[after] - stations.along[before]) < 2.5 * _STEP
    once = pairs[0] < pairs[1]  # each pair stands in both orders
    links = np.concatenate([pairs[:, once], np.stack([before[on_one], after[on_one]])], axis=1)
    bunch = _linked(len(stations.line), links)[close]
    for first in np.unique(bunch):
        members = close[bunch == first]
        lines, counts = np.unique(stations.line[members], return_counts=True)
        spine = members[stations.line[members] == lines[counts.argmax()]].tolist()
        length = float(stations.along[spine[-1]] - stations.along[spine[0]]) + _STEP
        if length >= LEAST:
            yield Bunch(tuple(spine), length)


def _linked(count: int, links: Any) -> Any:
    """For each of so many things the first of those that `links` ([2, n]) join it to, by whatever way (array).

    >>> _linked(6, np.array([[1, 4, 3], [3, 5, 1]])).tolist()
    [0, 1, 2, 1, 4, 4]
    """
    first = np.arange(count)
    while True:
        one, two = first[links]
        apart = one != two
        if not apart.any():
            return first
        # Of two firsts the later one follows the earlier one, then each looks at what its own first has become.
        np.minimum.at(first, np.maximum(one, two)[apart], np.minimum(one, two)[apart])
        while (first != first[first]).any():
            first = first[first]


# ---- telling it --------------------------------------------------------------------------------------------


class _Drawn:
    """What is on the paper already, and the words that come to it."""

    def __init__(self, close: Bunched, paper: Any, words: Sequence[Label], joins: Any) -> None:
        self.paper = paper.buffer(0.2)
        shapely.prepare(self.paper)
        self.all = close.strokes
        self.joins = joins
        self.taken = [_box(word.at, word.angle, *label_size(word)) for word in words]
        self.taken += close.dots

    def clear(self, shapes: Any) -> Any:
        """Which of `shapes` no line or join runs through (array)."""
        found = np.ones(len(shapes), dtype=bool)
        found[self.all.query(shapes, predicate="intersects")[0]] = False
        if self.joins is not None:
            found &= ~shapely.intersects(self.joins, shapes)
        return found

    def free(self, boxes: Any) -> Any:
        """The places (array) of those of `boxes` that lie on free paper."""
        some = np.flatnonzero(shapely.covers(self.paper, boxes))
        some = some[self.clear(boxes[some])] if len(some) else some
        if not len(some):
            return some
        return some[~shapely.intersects(boxes[some][:, None], np.array(self.taken, dtype=object)).any(axis=1)]


@dataclass(frozen=True)
class _Side:
    """One side of a bunch at a station: the lines met there, those next to the words first, and the words."""

    station: int
    side: float
    inward: _Met
    text: str


def _told(
    ranked: Sequence[tuple[int, _Met]],
    stations: _Stations,
    drawn: _Drawn,
    sizes: Sequence[str],
    places: Sequence[int],
) -> SharedPart | None:
    """The order of a bunch, led from the first of the `ranked` stations where there is room."""
    said: dict[tuple[int, ...], str] = {}

    def sides(some: Sequence[tuple[int, _Met]]) -> Iterator[_Side]:
        for i, met in some:
            for side in (1.0, -1.0):
                inward = met if side < 0 else met[::-1]
                order = tuple(size for run in _as_one(inward) for size in run)
                if order not in said:
                    said[order] = _said(order, sizes, places)
                yield _Side(i, side, inward, said[order])

    for height in _TYPES:
        begin = 0
        for end in (*_ASKED, len(ranked)):
            asked = list(sides(ranked[begin:end]))
            found = _beside(asked, height, stations, drawn) if asked else None
            if found is not None:
                one, label, off = found
                drawn.taken.append(_box(label.at, label.angle, *label_size(label)))
                ends = (one.inward[0][0] + one.side * off, one.inward[-1][0] - one.side * _OVER)
                leader = Line(*(_point(one.station, end, stations) for end in ends))
                of = tuple(sorted({size for _, own in one.inward for size in own}))
                return SharedPart(of, (Stroke((leader,), "leader", name="order"), label))
            begin = end
    return None


def _beside(
    asked: Sequence[_Side], height: float, stations: _Stations, drawn: _Drawn
) -> tuple[_Side, Label, float] | None:
    """The first free place for the words beside a bunch, along its lines: on which side, the label, and how far it is
    from the line next to it, which lies so many mm off the station."""
    at = [each.station for each in asked]
    angles = [upright(math.atan2(y, x)) for x, y in stations.way[at].tolist()]
    labels = [Label(e.text, Point(0.0, 0.0), "new", angle, height) for e, angle in zip(asked, angles, strict=True)]
    room = [label_size(label) for label in labels]
    high = room[0][1]
    edge, side = np.array([(each.inward[0][0], each.side) for each in asked]).T[:, :, None]
    offs = np.array(_OFF)
    middles = _points(at, edge + side * (offs + high / 2), stations)
    boxes = _boxes(middles, angles, [wide + 1.0 for wide, _ in room], high + 1.0)
    free = drawn.free(boxes)
    if len(free):
        ways = np.stack(
            [_points(at, edge + side * np.full(len(offs), 0.3), stations), _points(at, edge + side * offs, stations)],
            axis=2,
        )
        free = free[drawn.clear(shapely.linestrings(ways.reshape(-1, 2, 2)[free]))]
    if not len(free):
        return None
    which, off = divmod(int(free[0]), len(_OFF))
    x, y = middles[which, off].tolist()
    return asked[which], Label(asked[which].text, Point(x, y), "new", angles[which], height), _OFF[off] - 0.4


def _points(at: Sequence[int], off: Any, stations: _Stations) -> Any:
    """The places so many mm to the left of stations: `off` is [station, place], the answer [station, place, 2]."""
    (x, y), (along_x, along_y) = stations.at[at].T, stations.way[at].T
    return np.stack([x[:, None] - off * along_y[:, None], y[:, None] + off * along_x[:, None]], axis=2)


def _point(i: int, off: float, stations: _Stations) -> Point:
    """The place `off` mm to the left of a station."""
    (x, y), (along_x, along_y) = stations.at[i], stations.way[i]
    return Point(float(x - off * along_y), float(y + off * along_x))


def _crossed(near: Sequence[int], stations: _Stations, lines: Sequence[tuple[Any, tuple[int, ...]]]) -> list[_Met]:
    """The lines of the bunch at each of the stations `near`; `lines` are all cut lines, with whose they are."""
    reach = 60.0
    at, way = stations.at[near], stations.way[near]
    left = np.column_stack([-way[:, 1], way[:, 0]]) * reach
    rays: Any = shapely.linestrings(np.stack([at - left, at + left], axis=1))
    # The lines are long, and a ray meets a short stretch of each: it is asked for segment by segment.
    places, of = shapely.get_coordinates([line for line, _ in lines], return_index=True)
    same = of[:-1] == of[1:]
    segments: Any = shapely.linestrings(np.stack([places[:-1], places[1:]], axis=1)[same])
    ray, segment = shapely.STRtree(segments).query(rays, predicate="intersects")
    begin, step = places[:-1][same][segment], np.diff(places, axis=0)[same][segment]
    side = left[ray] / reach
    turn = side[:, 0] * step[:, 1] - side[:, 1] * step[:, 0]
    way_in = begin - at[ray]
    with np.errstate(divide="ignore", invalid="ignore"):
        off = (way_in[:, 0] * step[:, 1] - way_in[:, 1] * step[:, 0]) / turn
    flat = np.abs(turn) < 1e-9  # a stretch on which a line runs along the ray: its middle
    off[flat] = ((way_in + step / 2) * side).sum(axis=1)[flat]
    met: list[dict[tuple[int, float], float]] = [{} for _ in near]
    for number, mm, line in zip(ray.tolist(), off.tolist(), of[:-1][same][segment].tolist(), strict=True):
        met[number].setdefault((line, round(mm, 6)), mm)  # where two segments join they are met twice
    return [_around(sorted((mm, lines[line][1]) for (line, _), mm in each.items())) for each in met]


def _around(met: _Met) -> _Met:
    """Of lines crossed those of the bunch: neighbours that lie near one another, from that of the station on."""
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


def _strings(strokes: Sequence[Stroke]) -> Any:
    """The line of each stroke (array of shapely lines)."""
    runs = [[(point.x, point.y) for curve in stroke.curves for point in curve.points(0.1)] for stroke in strokes]
    if not runs:
        return np.empty(0, dtype=object)
    of = np.repeat(np.arange(len(runs)), [len(run) for run in runs])
    return shapely.linestrings([place for run in runs for place in run], indices=of)


def _box(at: Point, angle: float, wide: float, high: float) -> Any:
    return _boxes(np.array([[(at.x, at.y)]]), [angle], [wide], high)[0]


def _boxes(middles: Any, angles: Sequence[float], wide: Sequence[float], high: float) -> Any:
    """Boxes round `middles` [row, place, 2], those of a row turned and wide alike (array of shapely polygons, row by
    row)."""
    cos, sin = (np.array([turn(angle) / 2 for angle in angles]) for turn in (math.cos, math.sin))
    along = np.column_stack([cos, sin]) * np.array(wide)[:, None]
    up = np.column_stack([-sin, cos]) * high
    a, b = along[:, None, :], up[:, None, :]
    rings = np.stack([middles - a - b, middles + a - b, middles + a + b, middles - a + b], axis=2)
    return shapely.polygons(rings.reshape(-1, 4, 2))
