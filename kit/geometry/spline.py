"""Smooth curves through given points, after J. D. Hobby, "Smooth, easy to compute interpolating splines",
Discrete & Computational Geometry 1 (1986), with unit tension and end curl 1."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from kit.diagnostic import message
from kit.errors import KitError
from kit.geometry.cubic import Cubic, hobby_handle
from kit.geometry.line import Line
from kit.geometry.point import Point, Vector, place


def spline(
    points: Sequence[Point], start_direction: Vector | None = None, end_direction: Vector | None = None
) -> tuple[Cubic | Line, ...]:
    """One curve for each pair of neighbouring `points`, without corners between them.

    Mock curvature is continuous at each inner point; this is a tridiagonal system for the angles between
    chords and tangents. Raises `KitError` for fewer than two points or two alike in a row.

    >>> curves = spline([Point(0, 0), Point(50, 20), Point(100, 0)])
    >>> len(curves), curves[0].tangent(1.0).turn_to(curves[1].tangent(0.0)) < 1e-9
    (2, True)
    """
    if len(points) < 2:
        raise KitError("a curve needs at least two points to run through.", do="Mark another point.")
    for p, q in pairwise(points):
        if p.close_to(q):
            raise KitError(message("refusal.curve_same_points"), where=place(p), do=message("refusal.leave_one_out_do"))
    n = len(points) - 1
    chords = [points[k + 1] - points[k] for k in range(n)]
    if n == 1 and start_direction is None and end_direction is None:
        return (Line(points[0], points[1]),)
    size = [chord.length for chord in chords]
    turn = [0.0, *(chords[k - 1].turn_to(chords[k]) for k in range(1, n)), 0.0]
    theta = _angles(chords, size, turn, start_direction, end_direction)
    found = []
    for k in range(n):
        out = theta[k]
        # The tangent at a point is one and the same for both chords there; counted from the arriving chord its angle
        # is less by the turn, and it is told the other way round, as the handle rule wants it.
        into = -turn[k + 1] - theta[k + 1]
        way = chords[k] / size[k]
        leave, arrive = way.rotated(out), way.rotated(-into)
        found.append(
            Cubic(
                points[k],
                points[k] + leave * (hobby_handle(out, into) * size[k]),
                points[k + 1] - arrive * (hobby_handle(into, out) * size[k]),
                points[k + 1],
            )
        )
    return tuple(found)


def _angles(
    chords: list[Vector],
    size: list[float],
    turn: list[float],
    start_direction: Vector | None,
    end_direction: Vector | None,
) -> list[float]:
    """The angle from each outgoing chord to the tangent (at the last point, from the incoming one)."""
    n = len(chords)
    # Row k of the system is low * theta[k - 1] + mid * theta[k] + high * theta[k + 1] = right. In the inner rows the
    # mock curvature arriving at a point equals that leaving it; each row weighs a chord by one over its length, so
    # that a short chord turns more sharply than a long one. The two outer rows hold the direction given or, without
    # one, make the first and the last stretch symmetrical, as an arc is.
    low, mid, high, right = [0.0] * (n + 1), [1.0] * (n + 1), [0.0] * (n + 1), [0.0] * (n + 1)
    if start_direction is not None:
        right[0] = chords[0].turn_to(start_direction.unit())
    else:
        high[0], right[0] = 1.0, -turn[1]
    for k in range(1, n):
        before, after = 1 / size[k - 1], 1 / size[k]
        low[k], mid[k], high[k] = before, 2 * before + 2 * after, after
        right[k] = -2 * turn[k] * before - turn[k + 1] * after
    if end_direction is not None:
        right[n] = chords[-1].turn_to(end_direction.unit())
    else:
        low[n] = 1.0
    # Elimination forward, then backward: the inner rows are diagonally dominant, so no pivot is needed.
    for k in range(1, n + 1):
        factor = low[k] / mid[k - 1]
        mid[k] -= factor * high[k - 1]
        right[k] -= factor * right[k - 1]
    theta = [0.0] * (n + 1)
    theta[n] = right[n] / mid[n] if abs(mid[n]) > 1e-12 else 0.0
    for k in range(n - 1, -1, -1):
        theta[k] = (right[k] - high[k] * theta[k + 1]) / mid[k]
    return theta
