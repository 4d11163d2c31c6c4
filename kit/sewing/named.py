"""Places on the cut pieces as values of messages: names as the lesson gives them, put into words later."""

from __future__ import annotations

from kit.diagnostic import EdgeName, NamedPlace, Value, named_edge, own
from kit.piece.piece import Piece, Side
from kit.sewing.cut import Cut
from kit.sewing.run import Place, Run


def edge_of(piece: Piece, name: str) -> Value:
    """An edge of a piece by its name; of a name that no edge has, the name."""
    return named_edge(piece.edge(name)) if piece.has_edge(name) else own(name)


def edge_on(piece: Piece, side: Side, name: str) -> Value:
    """An edge of one half: "left side seam" where the piece has two halves, else "side seam"."""
    return Value((_name(piece, name), side if len(piece.sides) == 2 else ""), "edge_on")


def spot(pattern: Cut, place: Run | Place) -> NamedPlace:
    """A run of edges or a mark with its piece."""
    piece = pattern.piece(place.piece)
    edges: tuple[EdgeName | str, ...]
    edges = (place.mark.label,) if isinstance(place, Place) else tuple(_name(piece, name) for name in place.edges)
    return NamedPlace(piece.title, edges, place.side if place.side and len(piece.sides) == 2 else "")


def placed(pattern: Cut, place: Run | Place) -> Value:
    """A run of edges or a mark with its piece: "front left side seam"."""
    return Value(spot(pattern, place), "place")


def row(pattern: Cut, runs: tuple[Run, ...]) -> Value:
    """Runs of edges that are sewn as one."""
    return Value(tuple(spot(pattern, run) for run in runs), "row")


def _name(piece: Piece, name: str) -> EdgeName:
    return EdgeName(name, piece.edge(name).said if piece.has_edge(name) else "")
