"""Two pieces laid open beside each other along a seam that bends: the second is drawn to follow the first.

Their edges bend differently, or to opposite sides, so that no rigid motion lays one along the other; cloth gives there.
The piece is drawn moved by as much as its edge is off, point by point along the seam, and by less the farther from it.
"""

from __future__ import annotations

from bisect import bisect_left
from itertools import pairwise

from kit.geometry import Path, Point
from kit.picture.darts_shut import Warp

NEAR, FAR = 40.0, 170.0  # mm from the seam up to which all, and from which on nothing is moved
_PLACES = 60


def following(own: Path, target: Path) -> Warp | None:
    """Moves points of a picture so that the line `own` comes to lie on `target`; None where it lies there already."""
    if own.start.distance(target.end) + own.end.distance(target.start) < own.start.distance(
        target.start
    ) + own.end.distance(target.end):
        target = target.reversed()
    shares = [i / _PLACES for i in range(_PLACES + 1)]
    places = [own.at(own.length * share) for share in shares]
    moves = [target.at(target.length * share) - place for share, place in zip(shares, places, strict=True)]
    chord = own.end - own.start
    if max(move.length for move in moves) < 0.3 or chord.length < 1.0:
        return None
    way = chord.unit()
    marks = [(place - own.start).dot(way) for place in places]
    if any(b <= a for a, b in pairwise(marks)):
        return None  # it turns back: there is no telling which place of it a point lies beside

    def warp(p: Point) -> Point:
        at = (p - own.start).dot(way)
        number = min(max(bisect_left(marks, at), 1), len(marks) - 1)
        low, high = marks[number - 1], marks[number]
        share = min(max((at - low) / (high - low), 0.0), 1.0)
        beside = places[number - 1].lerp(places[number], share)
        move = moves[number - 1] + (moves[number] - moves[number - 1]) * share
        off = abs((p - beside).cross(way))
        less = min(max((off - NEAR) / (FAR - NEAR), 0.0), 1.0)
        return p + move * (1.0 - less * less * (3.0 - 2.0 * less))

    return warp
