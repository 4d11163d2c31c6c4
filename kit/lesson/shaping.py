"""Shaping moves: fullness by slash and spread, ease, hems and necklines. Pure functions from piece to piece."""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import replace

from kit.diagnostic import measured, message, named_edge
from kit.errors import KitError
from kit.geometry import Cubic, Line, Motion, Path, Point, Vector, parallel
from kit.lesson.corners import meeting
from kit.lesson.slash import STAY, AlongEdge, SlashedPart, holds, on_edge, rearranged, slash_line, with_path
from kit.piece.piece import Edge, Piece
from kit.piece.pleat import stretches


def spread(piece: Piece, first: AlongEdge, second: AlongEdge, amount: float, *, hinged: bool = False) -> Piece:
    """The paper slashed from one place on the outline to another and spread by `amount` mm: parallel, or hinged
    at the second place so that it opens at the first alone."""
    return opened(piece, first, second, amount, hinged=hinged)[0]


def opened(
    piece: Piece, first: AlongEdge, second: AlongEdge, amount: float, *, hinged: bool = False
) -> tuple[Piece, Callable[[str, float, bool], float]]:
    """The paper spread, and where a place on an old edge lies on the new one (before or after a gap there)."""
    a, b = on_edge(piece, *first), on_edge(piece, *second)
    slash = slash_line(piece, a, b)
    there, back = SlashedPart(first, second, STAY), SlashedPart(second, first, STAY)
    hold_there, hold_back = holds(piece, there), holds(piece, back)
    if hold_there == hold_back == math.inf:
        raise KitError(message("refusal.slash_fold"), where=piece.title, do=message("refusal.other_edge_do"))
    # The part from the first place on to the second lies left of the slash on a ccw outline, else right.
    left = 1.0 if piece.outline.area < 0 else -1.0
    stays = hold_there > hold_back
    side = -left if stays else left
    if hinged:
        if amount >= 1.9 * slash.length:
            raise KitError(message("refusal.spread_far"), where=piece.title, do=message("refusal.spread_far_do"))
        # `amount` is measured straight across the gap at the edge, and the slash is the leg of an isosceles triangle
        # on it.
        angle = 2 * math.asin(amount / 2 / slash.length)
        motion = Motion.rotation(-side * angle, b)
    else:
        motion = Motion.translation((b - a).unit().left() * (amount * side))
    parts = (there, replace(back, motion=motion)) if stays else (replace(there, motion=motion), back)
    return rearranged(piece, parts, (slash,))


def _no_darts(piece: Piece, edge: str, what: str) -> Edge:
    for dart in piece.darts:
        if dart.edge == edge:
            raise KitError(
                message("refusal.dart_opens_on", dart=dart.label, edge=named_edge(piece.edge(edge))),
                where=piece.title,
                do=message("refusal.dart_opens_on_do"),
            )
    for _, _, pleat in stretches(piece, edge):
        raise KitError(
            message("refusal.pleat_ends_on", pleat=pleat.label, edge=named_edge(piece.edge(edge))),
            where=piece.title,
            do=message("refusal.pleat_ends_on_do"),
        )
    return piece.edge(edge)


def _neighbours(piece: Piece, edge: str) -> tuple[Edge, Edge]:
    names = [e.name for e in piece.edges]
    i = names.index(edge)
    return piece.edges[i - 1], piece.edges[(i + 1) % len(names)]


def _points_moved(piece: Piece, moves: tuple[tuple[Point, Point], ...]) -> tuple[tuple[str, Point], ...]:
    out = []
    for name, point in piece.points:
        out.append((name, next((new for old, new in moves if old.distance(point) < 0.05), point)))
    return tuple(out)


def add_ease(piece: Piece, amount: float, edge: str = "side") -> Piece:
    """`amount` mm of ease added to this quarter: the side is moved out level, the edges beside it carried on to it."""
    old = _no_darts(piece, edge, "moving it out")
    outward = old.path.normal_at(old.path.length / 2) * (-1.0 if piece.outline.area > 0 else 1.0)
    if abs(outward.x) < 0.5:
        raise KitError(f"the {old.label} does not run up and down.", where=piece.title, do="Name the side edge.")
    # Level, not square to the side, so that every place of it keeps its height and still meets the side it is sewn
    # to.
    by = Vector(math.copysign(amount, outward.x), 0.0)
    before, after = _neighbours(piece, edge)
    path = old.path.moved(Motion.translation(by))
    one = Path.of(before.path, Line(before.path.end, path.start))
    two = Path.of(Line(path.end, after.path.start), after.path)
    shifted = with_path(piece, after.name, two, lambda d: d + path.end.distance(after.path.start))
    shifted = shifted.with_edges(**{before.name: replace(before, path=one), edge: replace(old, path=path)})
    spots = [(name, p + by if old.path.distance_to(p) < 0.05 else p) for name, p in piece.points]
    guides = tuple(
        (n, Path.of(g, Line(g.end, g.end + by)) if g.is_straight and old.path.distance_to(g.end) < 0.05 else g)
        for n, g in piece.guides
    )
    return replace(shifted, points=tuple(spots), guides=guides)


def extend_hem(piece: Piece, edge: str, by: float) -> Piece:
    """The hem moved outward by `by` mm, parallel; the edges beside it run on to meet it."""
    old = _no_darts(piece, edge, "moving it")
    before, after = _neighbours(piece, edge)
    path = parallel(old.path, -by if piece.outline.area > 0 else by)
    # The parallel is too short or too long for edges that do not run square to it: each side is carried on well past
    # it, and both are cut where they meet. Four times the amount reaches even a side at 15 degrees to the hem.
    one, path = meeting(before.path.extended(by * 4), path, (before.name, edge), piece.title)
    path, two = meeting(path, after.path.extended(by * 4, end="start"), (edge, after.name), piece.title)
    shift = two.length - after.path.length
    result = with_path(piece, after.name, two, lambda d: d + shift)
    result = result.with_edges(**{before.name: replace(before, path=one), edge: replace(old, path=path)})
    moves = ((old.path.start, path.start), (old.path.end, path.end))
    return replace(result, points=_points_moved(piece, moves))


def lower_neckline(piece: Piece, by: float, *, wider: float = 0.0, edge: str = "neck") -> Piece:
    """The neckline's centre end lowered `by` mm along the centre line and its other end moved `wider` mm along the
    shoulder, redrawn as one curve with the directions it had at both ends."""
    old = _no_darts(piece, edge, "redrawing it")
    before, after = _neighbours(piece, edge)
    for beside, much in ((before, by), (after, wider)):
        if much >= beside.path.length - 1:
            raise KitError(
                message("refusal.edge_short", edge=named_edge(beside), length=measured(beside.path.length)),
                where=piece.title,
                do=message("refusal.move_less_do"),
            )
    for dart in piece.darts:
        if dart.edge == after.name and dart.start < wider + 1:
            raise KitError(
                message("refusal.neck_into_dart", dart=dart.label),
                where=piece.title,
                do=message("refusal.widen_less_do"),
            )
    one = before.path.between(0.0, before.path.length - by) if by else before.path
    two = after.path.between(wider, after.path.length) if wider else after.path
    curve = Cubic.square(one.end, old.path.start_tangent, two.start, old.path.end_tangent)
    result = with_path(piece, after.name, two, lambda d: max(d - wider, 0.0))
    result = result.with_edges(**{before.name: replace(before, path=one), edge: replace(old, path=Path.of(curve))})
    moves = ((old.path.start, one.end), (old.path.end, two.start))
    return replace(result, points=_points_moved(piece, moves))
