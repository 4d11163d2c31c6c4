"""Edges that are sewn together stay equal through a fit change.

A front and a back that are altered alike gain or lose a little more where their lines slope more: an inseam cut across
and folded, a shoulder ruled anew beside a dart. What differs is shared between the two at the end that is free, as when
a seam is walked and trued at the table (common practice, no source). Where such a seam comes to lie at another slope,
the lines across its ends (a neck, an armhole, a hem, a waist) are bent after it, so that they run on over the seam as
they did.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass

from kit.errors import KitError
from kit.lesson.truing import EQUAL, bent, lengthened
from kit.piece.folded import CornerAt, Folded, corner_at, folded
from kit.piece.piece import Piece
from kit.piece.role import EdgeRole

_HELD: Mapping[EdgeRole, tuple[EdgeRole, ...]] = {
    "inseam": ("crotch",),
    "side": ("armhole", "waist"),
    "shoulder": ("neck",),
}
"""Roles of edges that a front and a back share, and of what meets the end of each that stays."""
_MOST = 8.0
"""mm: what differs by more is meant to, and is eased or taken into a dart."""
_AT = 0.05
_OFF = 0.3
"""Degrees by which a line across a seam may come to bend there."""
_FAR = 40.0
"""Degrees: a corner that changed by more is another corner."""


def equal_partners(befores: Sequence[Piece], afters: Sequence[Piece]) -> tuple[Piece, ...]:
    """The pieces `afters` a change, in the order of `befores` it, with the edges that a front and a back share grown
    by the same length, mm. Only pieces that the change altered are touched. `KitError` where an edge has no room."""
    made = list(afters)
    for role, both in _changed(befores, afters):
        if len(both) != 2:
            continue
        one, two = both
        off = _grown(befores[one], made[one], role) - _grown(befores[two], made[two], role)
        if EQUAL < abs(off) <= _MOST:
            made[one] = _longer(made[one], role, -off / 2)
            made[two] = _longer(made[two], role, off / 2)
    return tuple(made)


def _changed(befores: Sequence[Piece], afters: Sequence[Piece]) -> Iterator[tuple[EdgeRole, list[int]]]:
    """The roles of edges that a front and a back share, and which of the pieces that have such an edge were changed:
    one of each, or one alone; none where several could be meant."""
    changed = [i for i, (old, new) in enumerate(zip(befores, afters, strict=True)) if new is not old]
    for role in _HELD:
        found = [
            [i for i in changed if befores[i].role == worn and len(befores[i].with_role(role)) == 1]
            for worn in ("front", "back")
        ]
        if all(len(some) <= 1 for some in found):
            yield role, [i for some in found for i in some]


def run_on(befores: Sequence[Piece], afters: Sequence[Piece]) -> tuple[Piece, ...]:
    """The pieces `afters` a change, in the order of `befores` it, with what crosses the ends of the edges that a front
    and a back share bent so that the two corners there add up to what they did. Who opened or closed the angle takes it
    back; a corner at a fold, one drawn on purpose and one with no room stay as they are."""
    made = list(afters)
    for role, which in _changed(befores, afters):
        were = {i: _corners(befores[i], role) for i in which}
        for across in dict.fromkeys(name for corners in were.values() for name in corners):
            opened = {}
            for i in which:
                was, now = were[i].get(across), _corners(made[i], role).get(across)
                if was is not None and now is not None and was.corner.beside == now.corner.beside:
                    opened[i] = math.degrees(now.corner.angle - was.corner.angle)
            off = sum(opened.values())
            if abs(off) < _OFF or max(map(abs, opened.values())) > _FAR:
                continue
            same = {i: by for i, by in opened.items() if by * off > 0}
            for i, by in same.items():
                at = _corners(made[i], role)[across]
                try:
                    made[i] = bent(at.run, at.end, -off * by / sum(same.values()))
                except KitError:
                    continue
    return tuple(made)


@dataclass(frozen=True)
class _At:
    """One end of an edge as it is sewn, and the corner there."""

    run: Folded
    end: bool
    corner: CornerAt


def _corners(piece: Piece, role: EdgeRole) -> dict[EdgeRole, _At]:
    """The corners at the ends of the edge of that role, by the role of what crosses there. What lies on a fold, is a
    seam of its own or was drawn with a corner on purpose does not count."""
    run = folded(piece, (piece.with_role(role)[0].name,))
    found: dict[EdgeRole, _At] = {}
    for end in (False, True):
        corner = corner_at(run, end)
        if corner is None or corner.beside == piece.fold or corner.declared(piece):
            continue
        across = piece.edge(corner.beside).role
        if across is None or across in (*_HELD, "centre") or across in found:
            continue
        found[across] = _At(run, end, corner)
    return found


def _grown(before: Piece, after: Piece, role: EdgeRole) -> float:
    """By how much longer (mm) the edge of that role is sewn."""
    name = before.with_role(role)[0].name
    return folded(after, (name,)).length - folded(before, (name,)).length


def _longer(piece: Piece, role: EdgeRole, by: float) -> Piece:
    edge = piece.with_role(role)[0]
    held = [
        end
        for end, place in (("start", edge.path.start), ("end", edge.path.end))
        for other in piece.edges
        if other.role in _HELD[role] and min(other.path.start.distance(place), other.path.end.distance(place)) < _AT
    ]
    run = folded(piece, (edge.name,))
    first = run.stretches[0].forward  # whether the run is walked as the edge is drafted
    free_at_end = (held != ["end"]) == first
    return lengthened(piece, run, free_at_end, by)
