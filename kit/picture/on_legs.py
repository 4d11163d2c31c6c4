"""Trousers bent round the figure that wears them: down to the crotch they go round the trunk, below it each leg goes
round its own leg of the figure. Heights stay as they were drafted. Elastic at the waist is as wide as the body there.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence
from dataclasses import dataclass

from kit.geometry import Point
from kit.picture.assembled import Flat
from kit.picture.chains import crossings
from kit.picture.wearer import Wearer

_STEP = 5.0  # mm between the heights at which widths are taken
_PARTING = 220.0  # mm below the crotch within which the cloth goes over from the trunk to the leg
_ROUND = 0.72
"""How wide a trouser leg looks from in front, of half its girth: between a round tube (2 / pi) and two layers laid flat
(by eye, on the example lessons)."""
_CLEAR = 3.0  # mm between a leg and the middle
_OVER = 2.0  # mm that cloth lies outside the body


@dataclass(frozen=True)
class LegRow:
    """A layer at one height, mm from the middle: where its cloth lies flat, from `inner` to `outer`, and where it is
    then seen, from `near` to `far`."""

    inner: float
    outer: float
    near: float
    far: float


@dataclass(frozen=True)
class BentLegs:
    """Bends one layer of trousers: `rise` mm up, then across by its `rows`, one each `_STEP` mm from `low` up (heights
    above the waist)."""

    rise: float
    low: float
    rows: tuple[LegRow, ...]

    def __call__(self, lying: Point) -> Point:
        x, y = abs(lying.x), lying.y + self.rise
        place = (y - self.low) / _STEP
        i = min(max(int(place), 0), len(self.rows) - 2)
        share = min(max(place - i, 0.0), 1.0)
        one, two = _across(self.rows[i], x), _across(self.rows[i + 1], x)
        there = one + (two - one) * share
        return Point(there if lying.x >= 0 else -there, y)


def _across(row: LegRow, x: float) -> float:
    return row.near + (x - row.inner) * (row.far - row.near) / max(row.outer - row.inner, 1.0)


def on_legs(
    flats: Sequence[Flat],
    others: Sequence[Flat],
    rises: tuple[float, float],
    crotch: float,
    wearer: Wearer,
    elastic: bool,
) -> BentLegs | None:
    """How the layer of those `flats` bends that parts at the `crotch`; half the garment's girth is shared evenly with
    the `others`, the layer on the other side of the body. They hang so many mm up (`rises`). None where it has no leg
    at x > 0."""
    own, other = _reach(flats, rises[0]), _reach(others, rises[1])
    if not own:
        return None
    rows: list[LegRow] = []
    low, top = (
        min(own),
        max(min(_side_end(flats) + rises[0], _side_end(others) + rises[1], max(own) * _STEP), crotch + _STEP),
    )
    for step in range(low, int(top / _STEP) + 1):  # above the side the waist slopes: no cut tells its width there
        y = step * _STEP
        inner, outer = own.get(step) or own[min(own, key=lambda at: abs(at - step))]
        inner = 0.0 if y >= crotch else inner
        wide, theirs = outer - inner, other.get(step)
        half = wide if theirs is None else (wide + theirs[1] - (0.0 if y >= crotch else theirs[0])) / 2
        trunk = outer * wearer.seen(y) * half / max(wide, 1.0)
        if elastic:
            trunk = max(trunk, wearer.half(max(y, crotch)) + _OVER)
        if y >= crotch:
            rows.append(LegRow(inner, outer, 0.0, trunk))
            continue
        body_in, body_out = wearer.leg(y)
        reach = max(half * _ROUND, body_out - body_in + 2 * _OVER) / 2
        middle = max((body_in + body_out) / 2, reach + _CLEAR)
        part = min((crotch - y) / _PARTING, 1.0)
        part = part * part * (3.0 - 2.0 * part)
        near = part * (middle - reach)
        rows.append(LegRow(inner, outer, near, trunk + part * (middle + reach - trunk)))
    return BentLegs(rises[0], low * _STEP, tuple(rows)) if len(rows) > 1 else None


def _side_end(flats: Sequence[Flat]) -> float:
    """How high the lowest of the side seams ends, as the pieces lie."""
    tops = [
        max(p.y for p in flat.edge(edge.name, flat.side))
        for flat in flats
        for edge in flat.piece.edges
        if edge.role == "side"
    ]
    return min(tops, default=math.inf)


def _reach(flats: Sequence[Flat], rise: float) -> dict[int, tuple[float, float]]:
    """From where to where, mm from the middle, the legs at x > 0 reach at each height, counted in steps."""
    found: dict[int, tuple[float, float]] = {}
    for flat in flats:
        ring = flat.ring
        if min(p.x for p in ring) + max(p.x for p in ring) <= 0.0:
            continue
        low, high = (end(p.y for p in ring) + rise for end in (min, max))
        for step in range(math.ceil(low / _STEP), int(high / _STEP) + 1):
            xs = crossings(ring, step * _STEP - rise - 0.01)
            if xs:
                a, b = found.get(step, (xs[0], xs[-1]))
                found[step] = (max(min(a, xs[0]), 0.0), max(b, xs[-1]))
    return found


def then(first: Callable[[Point], Point] | None, second: Callable[[Point], Point]) -> Callable[[Point], Point]:
    """One place after the other: as it lies with its legs closed, then as it is seen on the body."""
    return second if first is None else lambda p: second(first(p))
