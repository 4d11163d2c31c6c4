"""Edges that are sewn together stay equal through a fit change.

A front and a back that are altered alike gain or lose a little more where their lines slope more: an inseam cut across
and folded, a shoulder ruled anew beside a dart. What differs is shared between the two at the end that is free, as when
a seam is walked and trued at the table (common practice, no source).
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from kit.lesson.truing import EQUAL, lengthened
from kit.piece.folded import folded
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


def equal_partners(befores: Sequence[Piece], afters: Sequence[Piece]) -> tuple[Piece, ...]:
    """The pieces `afters` a change, in the order of `befores` it, with the edges that a front and a back share grown
    by the same length, mm. Only pieces that the change altered are touched. `KitError` where an edge has no room."""
    made = list(afters)
    changed = [i for i, (old, new) in enumerate(zip(befores, afters, strict=True)) if new is not old]
    for role in _HELD:
        fronts, backs = (
            [i for i in changed if befores[i].role == worn and len(befores[i].with_role(role)) == 1]
            for worn in ("front", "back")
        )
        if len(fronts) != 1 or len(backs) != 1:
            continue
        one, two = fronts[0], backs[0]
        off = _grown(befores[one], made[one], role) - _grown(befores[two], made[two], role)
        if EQUAL < abs(off) <= _MOST:
            made[one] = _longer(made[one], role, -off / 2)
            made[two] = _longer(made[two], role, off / 2)
    return tuple(made)


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
