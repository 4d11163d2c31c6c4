"""What is bound to an edge, when other edges are drawn in its place: a notch or an opening stays where it lies on the
paper if a new edge runs there, and is gone with its edge if none does."""

from __future__ import annotations

from dataclasses import replace

from kit.piece.piece import Edge, Mark, Notch, Piece

_SAME = 0.05  # mm that a new line may lie beside the place


def carried(before: Piece, after: Piece) -> Piece:
    """`after` is `before` with other edges in the place of some. Notches and openings of an edge that is gone are
    carried to the new edge that runs through the same place of the paper; those that none runs through stay named after
    the edge that is gone (`kept` leaves them out).

    >>> from kit.geometry import Path, Point
    >>> corners = [Point(0, 0), Point(100, 0), Point(100, 50), Point(0, 50)]
    >>> paths = [Path.line(a, b) for a, b in zip(corners, corners[1:] + corners[:1])]
    >>> edges = tuple(Edge(n, p) for n, p in zip("abcd", paths))
    >>> square = Piece("square", "Square", edges, notches=(Notch("a", 30.0),))
    >>> halves = Edge("left", paths[0].between(0, 20)), Edge("right", paths[0].between(20, 100))
    >>> carried(square, replace(square, edges=(*halves, *square.edges[1:]))).notches
    (Notch(edge='right', distance=10.0, kind='single', name=''),)
    """
    gone = {edge.name: edge for edge in before.edges if not after.has_edge(edge.name)}
    fresh = [edge for edge in after.edges if not before.has_edge(edge.name)]
    if not gone or not fresh:
        return after
    notches = tuple([_notch(notch, gone, fresh) for notch in after.notches])
    marks = tuple([_opening(mark, gone, fresh) for mark in after.marks])
    if notches == after.notches and marks == after.marks:
        return after
    return replace(after, notches=notches, marks=marks)


def _notch(notch: Notch, gone: dict[str, Edge], fresh: list[Edge]) -> Notch:
    old = gone.get(notch.edge)
    for edge in fresh if old else ():
        places = _places(old, (notch.distance,), edge)
        if places:
            return replace(notch, edge=edge.name, distance=places[0])
    return notch


def _opening(mark: Mark, gone: dict[str, Edge], fresh: list[Edge]) -> Mark:
    old = gone.get(mark.edge) if mark.kind == "opening" else None
    for edge in fresh if old else ():
        places = _places(old, (mark.start, mark.end), edge)
        if places and places[0] != places[1]:
            return replace(mark, edge=edge.name, start=min(places), end=max(places))
    return mark


def _places(old: Edge | None, distances: tuple[float, ...], edge: Edge) -> tuple[float, ...]:
    """Where these places of the old edge lie along the new one; none where one of them does not lie on it."""
    if old is None or not all(-_SAME <= d <= old.path.length + _SAME for d in distances):
        return ()
    spots = [old.path.at(min(max(d, 0.0), old.path.length)) for d in distances]
    places = tuple([edge.path.nearest(spot) for spot in spots])
    near = all(edge.path.at(at).distance(spot) < _SAME for at, spot in zip(places, spots, strict=True))
    return places if near else ()


def kept(piece: Piece) -> Piece:
    """The piece without the darts, pleats, notches, openings and slits whose edge is gone. A point marked at such an
    edge stays where it is, inside the piece."""
    edges = {edge.name for edge in piece.edges}
    darts = tuple([dart for dart in piece.darts if dart.edge in edges])
    pleats = tuple([p for p in piece.pleats if p.edge in edges and (p.far or p.edge) in edges])
    notches = tuple([notch for notch in piece.notches if notch.edge in edges])
    marks = tuple([kept for mark in piece.marks if (kept := _kept_mark(mark, edges)) is not None])
    if (darts, pleats, notches, marks) == (piece.darts, piece.pleats, piece.notches, piece.marks):
        return piece
    return replace(piece, darts=darts, pleats=pleats, notches=notches, marks=marks)


def _kept_mark(mark: Mark, edges: set[str]) -> Mark | None:
    if not mark.edge or mark.edge in edges:
        return mark
    if mark.kind == "slit" or (mark.path is None and mark.point is None):
        return None
    return replace(mark, edge="", start=0.0, end=0.0)
