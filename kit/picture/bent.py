"""A straight band drawn along the run it is sewn to, however that bends: what lies `u` mm along the band and `v` mm
across it is drawn `u` mm along the run and `v` mm square to it."""

from __future__ import annotations

from kit.geometry import Path, Point, Vector
from kit.picture.darts_shut import Warp
from kit.sewing.scene import Along

_ROUND = 12.0  # mm on either side over which the direction square to the run is a mean: a corner is met roundly


def bent(own: Path, inward: Vector, target: Path, into: Vector, along: Along, slip: float = 0.0) -> Warp:
    """Takes points of the band's draft to the picture. `own` is the band's run there and `inward` the unit vector into
    the band; `target` is the run in the picture and `into` points from its middle into the garment's cloth."""
    first, way = own.start, (own.end - own.start).unit()
    scale = target.length / (along.end - along.start)
    middle = target.length / 2
    left = 1.0 if target.normal_at(middle).dot(into) > 0 else -1.0
    side = -left if along.outward else left

    def warp(p: Point) -> Point:
        off = p - first
        u, v = off.dot(way), off.dot(inward)
        if along.middle > 0 and v > along.middle:
            v = 2 * along.middle - v
        at = (u - along.start) * scale
        return _on(target, at) + _square(target, at) * (side * (v + slip))

    return warp


def across(own: Path, inward: Vector, u: float, v: float) -> Point:
    """The point of a band's draft `u` mm along its run and `v` mm into it."""
    return own.start + (own.end - own.start).unit() * u + inward * v


def _on(target: Path, at: float) -> Point:
    """The point `at` mm along a line, which runs on straight beyond its ends."""
    if at < 0:
        return target.start + target.start_tangent * at
    if at > target.length:
        return target.end + target.end_tangent * (at - target.length)
    return target.at(at)


def _square(target: Path, at: float) -> Vector:
    chord = _on(target, at + _ROUND) - _on(target, at - _ROUND)
    return chord.unit().left()
