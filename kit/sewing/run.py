"""Names of places on the cut pieces: runs of edges, and the handles a sewing step writes them with.

Sewing works on cut pieces. A mirrored pair, or a piece opened out from the fold, has a left and a right
half; `front.side` means both, `front.left.side` one.
"""

from __future__ import annotations

from dataclasses import dataclass, replace

from kit.errors import KitError, near
from kit.piece.piece import Mark, Piece, Side, Strip


@dataclass(frozen=True)
class Run:
    """One or more neighbouring edges of a piece, in the order named. `side` is left, right or None for both.
    `start` and `end` (mm along the run as named; None: whole) narrow it to a part."""

    piece: str
    edges: tuple[str, ...]
    side: Side | None = None
    start: float | None = None
    end: float | None = None

    def __add__(self, other: Run) -> Run:
        if (self.piece, self.side) != (other.piece, other.side):
            raise KitError(
                f"a run of edges stays on one piece: {self.said} and {other.said} do not.",
                do="Name the edges of one piece and side.",
            )
        return replace(self, edges=self.edges + other.edges)

    def between(self, start: float, end: float) -> Run:
        """The part from `start` to `end`, mm along the run."""
        return replace(self, start=float(start), end=float(end))

    @property
    def said(self) -> str:
        edges = " and ".join(edge.replace("_", " ") for edge in self.edges)
        return f"{self.piece.replace('_', ' ')} {self.side + ' ' if self.side else ''}{edges}"


class PieceHandle:
    """A cut piece as a sewing step sees it: attributes are its edges (`front.side`), its marks, and
    `.left` / `.right` for one half."""

    def __init__(self, piece: Piece, side: Side | None = None) -> None:
        self._piece = piece
        self._side = side

    @property
    def left(self) -> PieceHandle:
        return self._half("left")

    @property
    def right(self) -> PieceHandle:
        return self._half("right")

    def _half(self, side: Side) -> PieceHandle:
        if side not in self._piece.sides:
            raise KitError(f"{self._piece.title} has no {side} half: it is cut as one single layer.")
        return PieceHandle(self._piece, side)

    def __getattr__(self, name: str) -> Run | Mark:
        if name.startswith("_"):
            raise AttributeError(name)
        if self._piece.has_edge(name):
            return Run(self._piece.name, (name,), self._side)
        for mark in self._piece.marks:
            if mark.name == name:
                return mark
        known = [edge.name for edge in self._piece.edges] + [mark.name for mark in self._piece.marks]
        raise KitError(f"there is no edge or mark '{name}'.", where=self._piece.title, do=near(name, known))

    def __repr__(self) -> str:
        return f"<{self._piece.title}{' ' + self._side if self._side else ''}>"


class StripHandle:
    """A strip as a sewing step sees it. `.name`, `.strip`."""

    def __init__(self, strip: Strip) -> None:
        self.strip = strip
        self.name = strip.name

    def __repr__(self) -> str:
        return f"<{self.strip.title}>"
