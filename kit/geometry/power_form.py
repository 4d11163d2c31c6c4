"""What is reckoned from the two polynomials of a cubic curve, one across and one up: how long a stretch of it is, where
it comes nearest to a place, how far it reaches.

Plain numbers go in and come out, since these lines run more often than any others of the kit.
"""

from __future__ import annotations

import math
from itertools import pairwise

from kit.geometry.roots import quadratic_roots

Power = tuple[float, float, float, float, float, float, float, float]
"""(ax, bx, cx, dx, ay, by, cy, dy): ((ax t + bx) t + cx) t + dx across and as much up."""
Velocity = tuple[float, float, float, float, float, float]
"""(ax, bx, cx, ay, by, cy) of the velocity at t, (ax t + bx) t + cx across and as much up."""

# Abramowitz and Stegun, Handbook of Mathematical Functions, table 25.4, n = 8.
GAUSS = (
    (0.183434642495650, 0.362683783378362),
    (0.525532409916329, 0.313706645877887),
    (0.796666477413627, 0.222381034453374),
    (0.960289856497536, 0.101228536290376),
)
(_NODE_1, _WEIGHT_1), (_NODE_2, _WEIGHT_2), (_NODE_3, _WEIGHT_3), (_NODE_4, _WEIGHT_4) = GAUSS


def halved(found: tuple[float, ...]) -> tuple[tuple[float, ...], tuple[float, ...]]:
    """Bernstein coefficients of a polynomial on the two halves of its stretch (de Casteljau)."""
    row, left, right = list(found), [found[0]], [found[-1]]
    while len(row) > 1:
        row = [(a + b) / 2 for a, b in pairwise(row)]
        left.append(row[0])
        right.append(row[-1])
    return tuple(left), tuple(reversed(right))


def foot(power: Power, px: float, py: float, low: float, high: float) -> float:
    """Where the distance from a place stops falling between `low` and `high`: Newton's method in a bracket."""
    ax, bx, cx, dx, ay, by, cy, dy = power
    t = (low + high) / 2
    for _ in range(80):
        x, y = ((ax * t + bx) * t + cx) * t + dx - px, ((ay * t + by) * t + cy) * t + dy - py
        vx, vy = (3 * ax * t + 2 * bx) * t + cx, (3 * ay * t + 2 * by) * t + cy
        slope = x * vx + y * vy
        if slope > 0:
            high = t
        else:
            low = t
        bend = vx * vx + vy * vy + x * (6 * ax * t + 2 * bx) + y * (6 * ay * t + 2 * by)
        step = t - slope / bend if bend > 0 else -1.0
        new = step if low <= step <= high else (low + high) / 2
        if abs(new - t) < 1e-14:
            break
        t = new
    return t


def quadrature(velocity: Velocity, t0: float, t1: float) -> float:
    """The integral of the speed from `t0` to `t1` by the rule above. No line of the kit runs more often, so its four
    pairs of nodes are written out."""
    ax, bx, cx, ay, by, cy = velocity
    half, middle, root = (t1 - t0) / 2, (t0 + t1) / 2, math.sqrt
    away = half * _NODE_1
    t, u = middle - away, middle + away
    vx, vy, wx, wy = (ax * t + bx) * t + cx, (ay * t + by) * t + cy, (ax * u + bx) * u + cx, (ay * u + by) * u + cy
    total = _WEIGHT_1 * (root(vx * vx + vy * vy) + root(wx * wx + wy * wy))
    away = half * _NODE_2
    t, u = middle - away, middle + away
    vx, vy, wx, wy = (ax * t + bx) * t + cx, (ay * t + by) * t + cy, (ax * u + bx) * u + cx, (ay * u + by) * u + cy
    total += _WEIGHT_2 * (root(vx * vx + vy * vy) + root(wx * wx + wy * wy))
    away = half * _NODE_3
    t, u = middle - away, middle + away
    vx, vy, wx, wy = (ax * t + bx) * t + cx, (ay * t + by) * t + cy, (ax * u + bx) * u + cx, (ay * u + by) * u + cy
    total += _WEIGHT_3 * (root(vx * vx + vy * vy) + root(wx * wx + wy * wy))
    away = half * _NODE_4
    t, u = middle - away, middle + away
    vx, vy, wx, wy = (ax * t + bx) * t + cx, (ay * t + by) * t + cy, (ax * u + bx) * u + cx, (ay * u + by) * u + cy
    total += _WEIGHT_4 * (root(vx * vx + vy * vy) + root(wx * wx + wy * wy))
    return half * total


def extent(first: float, last: float, a: float, b: float, c: float, d: float) -> tuple[float, float]:
    """The least and the greatest value of one polynomial, ((a t + b) t + c) t + d, from t = 0, where it is `first`, to
    t = 1, where it is `last`.

    >>> extent(0.0, 0.0, 0.0, -4.0, 4.0, 0.0)
    (0.0, 1.0)
    """
    low, high = (first, last) if first < last else (last, first)
    for t in quadratic_roots(3 * a, 2 * b, c):
        if 0.0 < t < 1.0:
            value = ((a * t + b) * t + c) * t + d
            low, high = min(low, value), max(high, value)
    return low, high
