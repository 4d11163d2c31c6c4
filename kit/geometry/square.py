"""Curves drawn square to the edges they join: the underarm, an armhole, a hem that meets its side seam."""

from __future__ import annotations

from typing import Literal

from kit.errors import KitError
from kit.geometry.cubic import Cubic
from kit.geometry.path import Path
from kit.geometry.point import TOLERANCE, Point, Vector, place, say

Arrival = Literal["square", "smooth"]


def square_curve(
    start: Point,
    start_edge: Path,
    end: Point,
    end_edge: Path,
    at_end: Arrival = "square",
    *,
    at_start: Arrival = "square",
    fullness: float = 1.0,
    where: str = "",
) -> Cubic:
    """The curve from `start` to `end` that leaves square to `start_edge` and arrives square to `end_edge`, or
    with "smooth" runs along it without a corner. Directions are those that lead toward the other end.

    `start_edge` and `end_edge` are read at their points nearest to `start` and `end`; these should lie on the
    edges or on their straight continuation. `where` names the curve in messages. Raises `KitError` when the
    curve would cross itself or double back.
    """
    chord = end - start
    if chord.length < TOLERANCE:
        raise KitError(
            "the curve has no room: both its ends fall on the same place.",
            where=where or place(start),
            do="Make the opening smaller, or carry the edge further before the curve begins.",
        )
    leave = _direction(start, start_edge, chord, at_start)
    arrive = _direction(end, end_edge, chord, at_end)
    try:
        return Cubic.square(start, leave, end, arrive, fullness)
    except KitError as error:
        raise KitError(
            f"{error.what} Its ends are {say(abs(chord.x))} apart across and {say(abs(chord.y))} up and down.",
            where=f"{where}, {error.where}" if where and error.where else where or error.where,
            do=error.do,
        ) from None


def _direction(point: Point, edge: Path, chord: Vector, manner: Arrival) -> Vector:
    way = edge.tangent_at(edge.nearest(point))
    if manner == "square":
        way = way.left()
    return way if way.dot(chord) >= 0 else -way
