"""Curves drawn square to the edges they join: the underarm, an armhole, a hem that meets its side seam."""

from __future__ import annotations

from typing import Literal

from kit.diagnostic import Told, measured, message, within
from kit.errors import KitError
from kit.geometry.cubic import Cubic
from kit.geometry.path import Path
from kit.geometry.point import TOLERANCE, Point, Vector, place

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
    where: Told = "",
) -> Cubic:
    """The curve from `start` to `end` that leaves square to `start_edge` and arrives square to `end_edge`, or
    with "smooth" runs along it without a corner. Directions are those that lead toward the other end.

    `start_edge` and `end_edge` are read at their points nearest to `start` and `end`; these should lie on the
    edges or on their straight continuation. `where` names the curve in messages. Raises `KitError` when the
    curve would cross itself or double back.

    >>> side = Path.line(Point(100, 100), Point(100, 0))
    >>> centre = Path.line(Point(0, 10), Point(0, 100))
    >>> hem = square_curve(Point(0, 10), centre, Point(100, 0), side)
    >>> hem.tangent(0.0), hem.tangent(1.0)
    (Vector(x=1.0, y=0.0), Vector(x=1.0, y=0.0))
    """
    chord = end - start
    if chord.length < TOLERANCE:
        raise KitError(
            message("refusal.curve_no_room"),
            where=where or place(start),
            do=message("refusal.curve_no_room_do"),
        )
    leave = _direction(start, start_edge, chord, at_start)
    arrive = _direction(end, end_edge, chord, at_end)
    try:
        return Cubic.square(start, leave, end, arrive, fullness)
    except KitError as error:
        raise KitError(
            message(
                "refusal.curve_chord", what=error.told.says, across=measured(abs(chord.x)), up=measured(abs(chord.y))
            ),
            where=within(where, error.told.at),
            do=error.told.can,
        ) from None


def _direction(point: Point, edge: Path, chord: Vector, manner: Arrival) -> Vector:
    way = edge.tangent_at(edge.nearest(point))
    if manner == "square":
        way = way.left()
    return way if way.dot(chord) >= 0 else -way
