"""A round way between two directions: straight on, a part of a circle, straight on; and a line bent outward on a circle
until its end stands clear of another.

Both are what a compass and a ruler draw: no place of such a line bends tighter than its circle.
"""

from __future__ import annotations

import math

from kit.geometry.arc import Arc
from kit.geometry.line import Line
from kit.geometry.path import Path
from kit.geometry.point import TOLERANCE, Point, Vector

_LEAST_TURN = 1e-4
_MOST_BEND = math.radians(100)
_TRIED = 40
_SAMPLED = 48


def rounded(start: Point, out: Vector, end: Point, into: Vector) -> tuple[Path, float] | None:
    """From `start` along `out` to `end`, arriving along `into`: straight, round the corner of the two directions on the
    largest circle that has room, and straight on. With it the radius in mm. None where the two directions do not meet
    before both ends, or turn by nothing.

    >>> path, radius = rounded(Point(50, 20), Vector(-1, 0), Point(0, -80), Vector(0, -1))
    >>> round(radius), round(path.length, 1), len(path.curves)
    (50, 128.5, 2)
    """
    out, into = out.unit(), into.unit()
    across = out.cross(into)
    turn = math.atan2(across, out.dot(into))
    if abs(turn) < _LEAST_TURN or abs(across) < _LEAST_TURN:
        return None
    chord = end - start
    before, after = chord.cross(into) / across, -chord.cross(out) / across
    room = min(before, after)
    if room < TOLERANCE:
        return None
    radius = room / math.tan(abs(turn) / 2)
    first = start + out * (before - room)
    left = math.copysign(1.0, turn)
    centre = first + out.left() * (radius * left)
    arc = Arc(centre, radius, (first - centre).angle, turn)
    parts = [Line(start, first)] if before - room > TOLERANCE else []
    rest = [Line(arc.end, end)] if after - room > TOLERANCE else []
    return Path.of(*parts, arc, *rest), radius


def outside_of(point: Point, line: Path, side: float) -> float:
    """How far `point` lies off `line` on that `side` (1 left, -1 right), negative on the other. The line is carried on
    straight at both ends."""
    along = line.nearest(point)
    at, tangent = line.at(along), line.tangent_at(along)
    if TOLERANCE < along < line.length - TOLERANCE:
        return math.copysign(point.distance(at), tangent.left().dot(point - at) * side)
    return tangent.left().dot(point - at) * side


def bent_clear(start: Point, along: Vector, length: float, line: Path, outward: Vector, by: float) -> Path | None:
    """The line of that `length` from `start`, setting out `along`: straight; or, where its end would lie less than `by`
    off `line` to the side of `outward`, bent that way on a circle until it does. None where no bend brings it there.

    >>> side, out, down = Path.line(Point(100, 200), Point(100, 0)), Vector(1, 0), Vector(0, -1)
    >>> bent_clear(Point(300, 300), down, 150, side, out, 20).is_straight
    True
    >>> bent = bent_clear(Point(80, 330), down, 170, side, out, 20)
    >>> round(bent.end.x, 3), round(bent.length, 3)
    (120.0, 170.0)
    """
    along = along.unit()
    side = 1.0 if line.start_tangent.left().dot(outward) > 0 else -1.0
    straight = Path.line(start, start + along * length)
    if outside_of(straight.end, line, side) >= by:
        return straight
    left = 1.0 if along.left().dot(outward) > 0 else -1.0

    def bent(angle: float) -> Path:
        radius = length / angle
        centre = start + along.left() * (radius * left)
        return Path.of(Arc(centre, radius, (start - centre).angle, angle * left))

    def clear(angle: float) -> bool:
        return outside_of(bent(angle).end, line, side) >= by

    high = next((angle for k in range(1, _TRIED + 1) if clear(angle := _MOST_BEND * k / _TRIED)), None)
    if high is None:
        return None
    low = high - _MOST_BEND / _TRIED
    for _ in range(40):
        middle = (low + high) / 2
        low, high = (low, middle) if clear(middle) else (middle, high)
    return bent(high) if high > _LEAST_TURN else straight


def tightest_of(path: Path) -> float:
    """The least radius of a path in mm, as sampled; infinite when it is straight."""
    bends = [abs(curve.curvature(k / _SAMPLED)) for curve in path.curves for k in range(_SAMPLED + 1)]
    return 1 / most if (most := max(bends)) > 1e-9 else math.inf
