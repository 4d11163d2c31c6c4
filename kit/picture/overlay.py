"""One piece of two drafts laid over each other, quickly: lines alone, while a value is still being moved.

`kit.picture.fitting` draws the same with what moved measured, in the same place.
"""

from __future__ import annotations

from kit.geometry import Point
from kit.language import say
from kit.lesson.moved import LEAST
from kit.lesson.pattern import Pattern
from kit.picture.drawing import Area, Drawing, Item, Label, Stroke, StrokeRole
from kit.picture.fitting import room_of
from kit.piece.piece import Edge, Piece

_LEAST = 0.05  # mm
_CARRIED = 500.0


def most_moved(before: Pattern, after: Pattern) -> str:
    """The name of the piece some end or middle of whose edges moved farthest; empty when none did. A piece that is in
    one draft only counts as moved by all its size."""
    was = {piece.name: piece for piece in before.pieces}
    best, name = _LEAST, ""
    for piece in after.pieces:
        moved = _moved(was[piece.name], piece) if piece.name in was else 0.0
        if moved > best:
            best, name = moved, piece.name
    if not name:
        fresh = [piece.name for piece in after.pieces if piece.name not in was]
        name = fresh[0] if fresh else ""
    return name


def _moved(was: Piece, now: Piece) -> float:
    if was is now or was.edges == now.edges:
        return 0.0
    return max((_shift(was.edge(edge.name), edge) for edge in now.edges if was.has_edge(edge.name)), default=0.0)


def _shift(was: Edge, now: Edge) -> float:
    one, two = was.path, now.path
    if one == two:
        return 0.0
    middles = one.at(one.length / 2).distance(two.at(two.length / 2))
    return max(one.start.distance(two.start), one.end.distance(two.end), middles)


def _off(was: Edge, now: Edge) -> bool:
    """Whether an edge lies off its earlier line; carried on or shortened along it, it does not."""
    if was.path == now.path:
        return False
    line = was.path.extended(_CARRIED, "start").extended(_CARRIED, "end")
    places = (now.path.at(now.path.length * share) for share in (0.0, 0.5, 1.0))
    return any(line.distance_to(place) > LEAST for place in places)


def overlay_drawing(before: Pattern, after: Pattern, piece: str) -> Drawing | None:
    """The piece before, dashed, and after, heavy where it differs; None when it is not in both drafts."""
    was = next((p for p in before.pieces if p.name == piece), None)
    now = next((p for p in after.pieces if p.name == piece), None)
    if was is None or now is None:
        return None
    items: list[Item] = [
        Stroke(edge.path.curves, "removed", name=f"{piece}.{edge.name}.before")
        for edge in was.edges
        if not now.has_edge(edge.name) or now.edge(edge.name).path != edge.path
    ]
    for edge in now.edges:
        fresh = not was.has_edge(edge.name) or _off(was.edge(edge.name), edge)
        role: StrokeRole = "new" if fresh else "fold" if edge.name == now.fold else "kept"
        items.append(Stroke(edge.path.curves, role, name=f"{piece}.{edge.name}"))
    bounds, middle = room_of(was, now)
    items.append(
        Label(
            now.title,
            Point(*middle),
            "ghost",
            of=Area(tuple(curve for edge in now.edges for curve in edge.path.curves)),
        )
    )
    alt = say("fitting.alt_moving", piece=now.title)
    return Drawing(tuple(items), alt, say("fitting.title", piece=now.title), bounds)
