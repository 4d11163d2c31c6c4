"""Guide points: what a person needs to draw a curve again by hand, with a ruler and a set square.

The straight line between the curve's ends is ruled; at handy distances along it the curve's distance from it is set
off square; and at each end a short pair (along, off) shows the direction in which the curve leaves. There are as many
points as a smooth curve through them needs to be true. The smooth curve meant is the cubic spline with its end
directions given, which is the shape a thin springy lath takes when it is held at the points (de Boor, A Practical
Guide to Splines, 1978, chapter IV).
"""

from __future__ import annotations

import math
from bisect import bisect_right
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from itertools import pairwise
from typing import Literal

from kit.geometry.line import Line
from kit.geometry.path import Path
from kit.geometry.point import Point, Vector

System = Literal["cm", "inch"]
MARK: dict[System, float] = {"cm": 1.0, "inch": 25.4 / 16}
"""The smallest mark of a ruler in mm: a millimetre, a sixteenth of an inch."""
HANDY: dict[System, tuple[float, ...]] = {"cm": (50.0, 25.0, 20.0, 10.0), "inch": (50.8, 25.4, 12.7)}
"""Distances along the straight line that are easy to step off, in mm."""
TRUE: dict[System, float] = {"cm": 0.9, "inch": 1.3}
"""How far the curve through the points, measured out with a ruler, may lie off, in mm."""
FLAT = 0.3
"""A line that stands off the straight one by no more than this is ruled."""
_STEEP = math.cos(math.radians(57.0))
_LEAST = 12.0
_MANY = 4
_DENSE = 0.02
_DEEPEST = 16

Pin = Callable[[Point], Point]


@dataclass(frozen=True)
class GuidePoint:
    """`along` the straight line from its start, and `up` from it to the curve: square, to the left of travel (less than
    nothing: to the right). mm."""

    along: float
    up: float


@dataclass(frozen=True)
class GuideCurve:
    """A curve over the straight line from `start` to `end`, `chord` mm long. `leaves` is a place (along from the start,
    up) toward which the curve sets off; `arrives` one from which it comes in (along measured back from the end).
    `path` is the curve itself, `points` are in order and exact. A straight line has no points."""

    start: Point
    end: Point
    chord: float
    points: tuple[GuidePoint, ...]
    leaves: GuidePoint
    arrives: GuidePoint
    path: Path

    @property
    def is_straight(self) -> bool:
        return not self.points

    def place(self, along: float, up: float) -> Point:
        """The place on the paper so far along and so far off the straight line."""
        way = (self.end - self.start).unit()
        return self.start + way * along + way.left() * up


def on_ruler(value: float, system: System = "cm") -> float:
    """`value` (mm) as a ruler shows it: to 1 mm, or to 1/16 in."""
    step = MARK[system]
    return math.copysign(math.floor(abs(value) / step + 0.5 + 1e-9) * step, value)


def guide_points(path: Path, system: System = "cm", pin: Pin | None = None) -> tuple[GuideCurve, ...]:
    """`path` as curves that can be drawn again: cut at its corners, where long straight lines begin and end, and where
    it would turn back over the straight line between its ends. `pin` gives the place where an end is marked on the
    paper, such as the nearest millimetre; the offsets are then taken from the line between marked places."""
    pinned = pin or (lambda p: p)
    found: list[GuideCurve] = []
    for part in _parts(path):
        found += _curves(part, system, pinned, 0)
    return tuple(found)


def smooth(xs: Sequence[float], ys: Sequence[float], first: float, last: float) -> Callable[[float], float]:
    """The cubic spline through the points, with the slopes `first` and `last` at its ends."""
    n = len(xs)
    gaps = [b - a for a, b in pairwise(xs)]
    rises = [(b - a) / h for (a, b), h in zip(pairwise(ys), gaps, strict=True)]
    low, mid, high, right = [0.0] * n, [1.0] * n, [0.0] * n, [0.0] * n  # for the slopes at the points
    right[0], right[-1] = first, last
    for i in range(1, n - 1):
        low[i], mid[i], high[i] = gaps[i], 2 * (gaps[i - 1] + gaps[i]), gaps[i - 1]
        right[i] = 3 * (gaps[i] * rises[i - 1] + gaps[i - 1] * rises[i])
    for i in range(1, n):
        factor = low[i] / mid[i - 1]
        mid[i] -= factor * high[i - 1]
        right[i] -= factor * right[i - 1]
    slopes = [0.0] * n
    slopes[-1] = right[-1] / mid[-1]
    for i in range(n - 2, -1, -1):
        slopes[i] = (right[i] - high[i] * slopes[i + 1]) / mid[i]

    def at(x: float) -> float:
        i = min(max(bisect_right(xs, x) - 1, 0), n - 2)
        t, h = (x - xs[i]) / gaps[i], gaps[i]
        a, b = slopes[i] * h, slopes[i + 1] * h
        rise = ys[i + 1] - ys[i]
        return ys[i] + t * (a + t * (3 * rise - 2 * a - b + t * (a + b - 2 * rise)))

    return at


# ---- cutting ----------------------------------------------------------------------------------------------


def _parts(path: Path) -> list[Path]:
    """`path` cut at corners and at the ends of its straight lines."""
    cuts = set(path.corners)
    for i, curve in enumerate(path.curves):
        if Path((curve,)).is_straight and curve.length > 5.0:
            cuts |= {path.marks[i], path.marks[i + 1]}
    places = [0.0, *sorted(c for c in cuts if 1e-6 < c < path.length - 1e-6), path.length]
    parts = [path.between(a, b) for a, b in pairwise(places) if b - a > 1e-6]
    merged: list[Path] = []
    for part in parts:  # one straight line drawn in several pieces is ruled once
        if merged and merged[-1].is_straight and part.is_straight and (merged[-1] + part).is_straight:
            merged[-1] = Path.line(merged[-1].start, part.end)
        else:
            merged.append(part)
    return merged


def _curves(path: Path, system: System, pin: Pin, depth: int) -> list[GuideCurve]:
    start, end = pin(path.start), pin(path.end)
    chord = start.distance(end)
    if path.is_straight:
        return [_straight(path, start, end, chord)]
    seen = _over(path, start, end) if chord > 1e-6 else None
    if seen is not None:
        if max(abs(up) for _, up in seen[0]) <= FLAT:
            return [_straight(path, start, end, chord)]
        for alongs in _choices(chord, system):
            made = _made(path, start, end, chord, seen, alongs, HANDY[system][0])
            if _off(made, seen[0], system) <= TRUE[system]:
                return _fewer(made, system, pin, depth)
    if (
        path.length < _LEAST or depth > _DEEPEST
    ):  # too short to be stepped off: one point, or the ruler, if that is true
        short, off = _short(path, start, end, seen, system)
        if off <= TRUE[system] or depth > _DEEPEST:
            return [short]
    one, two = path.split(_farthest(path))
    return [*_curves(one, system, pin, depth + 1), *_curves(two, system, pin, depth + 1)]


def _short(path: Path, start: Point, end: Point, seen: _Seen | None, system: System) -> tuple[GuideCurve, float]:
    """A very short curve by a point in its middle, or ruled where it turns steep or back; and how far off that is."""
    chord = start.distance(end)
    middle = on_ruler(chord / 2, system)
    if seen is not None and 0 < middle < chord:
        made = _made(path, start, end, chord, seen, (middle,), HANDY[system][0])
        return made, _off(made, seen[0], system)
    ruled = Line(start, end)
    return _straight(path, start, end, chord), max(
        p.distance(ruled.point(ruled.nearest(p))) for p in path.points(_DENSE)
    )


def _fewer(made: GuideCurve, system: System, pin: Pin, depth: int) -> list[GuideCurve]:
    """The curve, or two halves of it where a short one needs many points and they need far fewer together."""
    if len(made.points) <= _MANY or made.chord > 3 * HANDY[system][0] or depth > 1:
        return [made]
    one, two = made.path.split(_farthest(made.path))
    halves = [*_curves(one, system, pin, depth + 1), *_curves(two, system, pin, depth + 1)]
    return halves if len(halves) == 2 and sum(len(half.points) + 1 for half in halves) < len(made.points) else [made]


_Seen = tuple[list[tuple[float, float]], float, float]
"""Points of a curve as (along, up) over its straight line, and its slopes at both ends."""


def _over(path: Path, start: Point, end: Point) -> _Seen | None:
    """The curve as seen over its straight line; None where it turns steep or back."""
    way = (end - start).unit()
    side = way.left()
    for curve in path.curves:
        steps = 16
        if any(curve.tangent(i / steps).dot(way) < _STEEP for i in range(steps + 1)):
            return None
    found = [((p - start).dot(way), (p - start).dot(side)) for p in path.points(_DENSE)]
    if any(b[0] <= a[0] for a, b in pairwise(found)):
        return None
    slopes = [t.dot(side) / t.dot(way) for t in (path.start_tangent, path.end_tangent)]
    return found, slopes[0], slopes[1]


def _farthest(path: Path) -> float:
    """How far along the curve stands off the line between its ends the most, away from both."""
    chord = path.end - path.start
    way = chord.unit() if chord.length > 1e-6 else Vector(1.0, 0.0)
    steps = 40
    places = [path.length * i / steps for i in range(steps // 5, steps - steps // 5 + 1)]
    return max(places, key=lambda d: abs(way.cross(path.at(d) - path.start)))


# ---- choosing ---------------------------------------------------------------------------------------------


def _choices(chord: float, system: System) -> list[tuple[float, ...]]:
    """Sets of distances along, the fewest points first: handy steps, or halves and quarters of a short line."""
    found: list[tuple[float, ...]] = []
    for step in HANDY[system]:
        count = int((chord - 0.25 * step) // step)
        found.append(tuple(step * i for i in range(1, count + 1)))
    if chord < 4 * HANDY[system][1]:
        for parts in (2, 4):
            found.append(tuple(sorted({on_ruler(chord * i / parts, system) for i in range(1, parts)})))
    return sorted((f for f in found if f and f[0] > 0 and f[-1] < chord), key=len)


def _made(
    path: Path, start: Point, end: Point, chord: float, seen: _Seen, alongs: Sequence[float], run: float
) -> GuideCurve:
    dense, first, last = seen
    xs = [a for a, _ in dense]
    points = []
    for along in alongs:
        i = min(max(bisect_right(xs, along) - 1, 0), len(xs) - 2)
        (a, u), (b, v) = dense[i], dense[i + 1]
        points.append(GuidePoint(along, u + (v - u) * (along - a) / (b - a)))
    return GuideCurve(
        start, end, chord, tuple(points), GuidePoint(run, first * run), GuidePoint(run, -last * run), path
    )


def _straight(path: Path, start: Point, end: Point, chord: float) -> GuideCurve:
    flat = GuidePoint(50.0, 0.0)
    return GuideCurve(start, end, chord, (), flat, flat, path)


def _off(made: GuideCurve, dense: Sequence[tuple[float, float]], system: System) -> float:
    """How far the smooth curve through the points, measured out with a ruler, lies off the true one."""
    xs = [0.0, *(p.along for p in made.points), made.chord]
    ys = [0.0, *(on_ruler(p.up, system) for p in made.points), 0.0]
    run = made.leaves.along
    first, last = on_ruler(made.leaves.up, system) / run, -on_ruler(made.arrives.up, system) / run
    line = smooth(xs, ys, first, last)
    worst = 0.0
    step = max(len(dense) // 120, 1)
    for i in range(0, len(dense) - 1, step):
        (a, u), (b, v) = dense[i], dense[i + 1]
        lean = (b - a) / math.hypot(b - a, v - u)
        worst = max(worst, abs(line(a) - u) * lean)
    return worst
