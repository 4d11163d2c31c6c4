"""Slits: lines from an edge into a piece along which it is cut open, for a placket."""

from __future__ import annotations

from typing import NamedTuple

from kit.geometry import Path
from kit.piece.piece import Mark, Piece

ON_EDGE = 1.0
"""mm by which the mouth of a slit may miss the stitch line."""
CLEAR = 10.0
"""mm of cloth that must lie beyond the end of a slit (common practice, no source)."""


class Slit(NamedTuple):
    """A slit that opens on `edge`, `at` mm along it; `line` runs from there to its end."""

    mark: Mark
    edge: str
    at: float
    line: Path


def slit_of(piece: Piece, mark: Mark) -> Slit | None:
    """The slit that a mark is; None for any other mark, and where neither of its ends lies on an edge."""
    if mark.kind != "slit" or mark.path is None:
        return None
    for line in (mark.path, mark.path.reversed()):
        edge = min(piece.edges, key=lambda each: each.path.distance_to(line.start))
        if edge.path.distance_to(line.start) <= ON_EDGE and edge.name != piece.fold:
            return Slit(mark, edge.name, float(edge.path.nearest(line.start)), line)
    return None


def room(piece: Piece, slit: Slit) -> float:
    """mm of cloth beyond its end; 0 where it runs out of the piece."""
    if not piece.outline.contains(slit.line.end):
        return 0.0
    return min(edge.path.distance_to(slit.line.end) for edge in piece.edges if edge.name != slit.edge)
