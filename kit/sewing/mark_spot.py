"""Where a mark lies on its piece, and which edge is nearest to it."""

from __future__ import annotations

from kit.geometry import Point
from kit.piece.piece import Side
from kit.sewing.cut import Cut
from kit.sewing.marked import Place
from kit.sewing.run import Run


def spot(pattern: Cut, place: Place) -> Point | None:
    """Where a mark lies, in draft coordinates: the middle of a line; None where it is drawn nowhere."""
    mark = place.mark
    if mark.path is not None:
        return mark.path.at(mark.path.length / 2)
    if mark.point is not None:
        return mark.point
    return pattern.piece(place.piece).edge(mark.edge).path.at(mark.start) if mark.edge else None


def nearest(pattern: Cut, place: Place) -> tuple[str, float] | None:
    """(edge, mm along it) nearest to a mark, its fold aside."""
    at = spot(pattern, place)
    piece = pattern.piece(place.piece)
    edges = [edge for edge in piece.edges if edge.name != piece.fold]
    if at is None or not edges:
        return None
    edge = min(edges, key=lambda each: each.path.distance_to(at))
    return edge.name, float(edge.path.nearest(at))


def ground(pattern: Cut, place: Place) -> Run:
    """A run of the mark's piece, to show and tell it by."""
    near = nearest(pattern, place)
    return Run(place.piece, (near[0] if near else pattern.piece(place.piece).edges[0].name,), place.side)


def halves(pattern: Cut, place: Place) -> tuple[Side, ...]:
    """The halves a mark is meant on."""
    return (place.side,) if place.side else pattern.piece(place.piece).sides
