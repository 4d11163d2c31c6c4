"""A straight band drawn along the run it is sewn to, however that bends: what lies `u` mm along the band and `v` mm
across it is drawn `u` mm along the run and `v` mm square to it."""

from __future__ import annotations

from kit.geometry import Path, Point, Vector
from kit.picture.darts_shut import Warp
from kit.sewing.scene import Along

_STEP = 3.0  # mm, so that a curve of 5 cm radius is drawn 0.02 mm off
_ROUND = 12.0  # mm on either side over which the direction square to the run is a mean: a corner is met roundly


def bent(own: Path, inward: Vector, target: Path, into: Vector, along: Along, slip: float = 0.0) -> Warp:
    """Takes points of the band's draft to the picture. `own` is the band's run there and `inward` the unit vector into
    the band; `target` is the run in the picture and `into` points from its middle into the garment's cloth."""
    first, way = own.start, (own.end - own.start).unit()
    forth = 1.0 if along.end > along.start else -1.0
    size = abs(along.end - along.start)
    scale = target.length / size
    rail = _Rail(target)
    left = 1.0 if target.normal_at(target.length / 2).dot(into) > 0 else -1.0
    side = -left if along.outward else left

    def warp(p: Point) -> Point:
        off = p - first
        u, v = off.dot(way), off.dot(inward)
        if along.middle > 0 and v > along.middle:
            v = 2 * along.middle - v
        gone = (u - along.start) * forth
        # Beyond the run nothing is eased in: what laps is as long as it is drafted.
        at = gone if gone < 0.0 else gone * scale if gone < size else target.length + gone - size
        return rail.on(at) + rail.square(at) * (side * (v + slip))

    return warp


def across(own: Path, inward: Vector, u: float, v: float) -> Point:
    """The point of a band's draft `u` mm along its run and `v` mm into it."""
    return own.start + (own.end - own.start).unit() * u + inward * v


class _Rail:
    """A line as points `_STEP` mm apart, which runs on straight beyond its ends."""

    def __init__(self, line: Path) -> None:
        count = max(int(line.length / _STEP), 2)
        self.step = line.length / count
        self.length = line.length
        self.points = [line.at(line.length * i / count) for i in range(count + 1)]
        self.first, self.last = line.start_tangent, line.end_tangent

    def on(self, at: float) -> Point:
        """The point `at` mm along."""
        if at <= 0:
            return self.points[0] + self.first * at
        if at >= self.length:
            return self.points[-1] + self.last * (at - self.length)
        number = min(int(at / self.step), len(self.points) - 2)
        return self.points[number].lerp(self.points[number + 1], at / self.step - number)

    def square(self, at: float) -> Vector:
        """The unit vector square to it there, on its left."""
        return (self.on(at + _ROUND) - self.on(at - _ROUND)).unit().left()
