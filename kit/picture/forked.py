"""Legs laid flat: where a pair of halves is sewn to itself along a seam that runs past the centre line, as the crotch
seam of trousers does, both meet at the centre and the forks lie folded in between the legs (common practice of how
trousers are drawn and laid, no source)."""

from __future__ import annotations

from bisect import bisect_right
from collections.abc import Callable, Iterable
from dataclasses import replace

from kit.geometry import Point
from kit.picture.chains import Chain, crossings
from kit.picture.flat_piece import Flat
from kit.sewing.state import State

PAST = 20.0
"""mm past the centre line from which on a half is a leg, and not a shaped centre seam."""
APART = 10.0
"""mm that the legs are drawn apart at the hem, so that their edges are seen as two."""
FINEST = 0.05  # mm inside the ends of a half at which its width is taken


def closed_legs(flats: list[Flat], state: State) -> list[Flat]:
    """The flats, every leg drawn in to the centre line along its seam with the other leg and beside the fork."""
    return [_closed(flat, state) for flat in flats]


def _closed(flat: Flat, state: State) -> Flat:
    seams = _centre_seams(flat, state)
    if not seams or flat.piece.fold or flat.bent is not None:
        return flat
    ring, way = flat.ring, 1.0 if _middle(flat.ring) > 0 else -1.0
    mine = [Point(p.x * way, p.y) for p in ring]
    if min(p.x for p in mine) > -PAST:
        return flat
    seam = [Point(p.x * way, p.y) for name in seams for p in flat.edge(name, flat.side)]
    shift = _drawn_in(mine, seam)

    def moved(p: Point) -> Point:
        inner, target, far = shift(p.y)
        share = min(max((p.x * way - inner) / max(far - inner, 1.0), 0.0), 1.0)
        return Point(p.x - way * (inner - target) * (1.0 - share), p.y)

    return replace(flat, bent=moved)


def _centre_seams(flat: Flat, state: State) -> list[str]:
    """The edges along which the left half of a piece is sewn to its right."""
    name, found = flat.piece.name, []
    for edge in flat.piece.edges:
        if frozenset({(name, "left", edge.name), (name, "right", edge.name)}) in state.seams:
            found.append(edge.name)
    return found


def _middle(ring: Chain) -> float:
    return (min(p.x for p in ring) + max(p.x for p in ring)) / 2


def _drawn_in(ring: Chain, seam: Iterable[Point]) -> Callable[[float], tuple[float, float, float]]:
    """For a height: (x of the inner edge of a half that lies at x > 0, x to which it is drawn, x of its outer edge)."""
    points = sorted(seam, key=lambda p: p.y)
    top, fork, low = points[-1], points[0].y, min(p.y for p in ring)
    levels: list[tuple[float, float, float, float]] = []
    for y in sorted({min(p.y, top.y) for p in ring}):  # between two corners of the ring its edges are straight
        xs = crossings(ring, min(max(y, low + FINEST), top.y - FINEST))
        if not xs:
            continue
        inner, outer = (top.x if y >= top.y else min(xs)), max(xs)
        if levels and levels[-1][3] - outer > y - levels[-1][0] + FINEST:
            outer = levels[-1][3]  # nearer to level than to upright: the waist slopes there, and is not the outer edge
        down = min(max((fork - y) / max(fork - low, 1.0), 0.0), 1.0)
        levels.append((y, inner, 0.0 if y >= fork else max(inner, APART * down), outer))
    heights = [level[0] for level in levels]

    def at(y: float) -> tuple[float, float, float]:
        place = min(max(bisect_right(heights, y) - 1, 0), len(levels) - 2)
        (y0, *one), (y1, *two) = levels[place], levels[place + 1]
        share = min(max((y - y0) / max(y1 - y0, 1e-9), 0.0), 1.0)
        inner, target, outer = (a + (b - a) * share for a, b in zip(one, two, strict=True))
        return inner, target, outer

    return at
