"""Names of places on the cut pieces: runs of edges, and the handles a sewing step writes them with.

Sewing works on cut pieces. A mirrored pair, or a piece opened out from the fold, has a left and a right
half; `front.side` means both, `front.left.side` one.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import Any

from kit.diagnostic import measured, message
from kit.errors import KitError, near
from kit.piece.piece import Mark, Piece, Side, Strip
from kit.units import Size, length


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
        if self.start is not None or other.start is not None:
            raise KitError(
                f"{self.said} and {other.said}: only whole edges are joined into one run.",
                do="Join the edges first, then take the part: (front.underarm + front.side).between(...).",
            )
        return replace(self, edges=self.edges + other.edges)

    def between(self, start: Size, end: Size) -> Run:
        """The part from `start` to `end`, lengths along the run. Raises `KitError` for a bare number.

        Example::

            zip_place = front.side.between(2 * cm, 17 * cm)
        """
        low, high = float(length(start, self.said)), float(length(end, self.said))
        if not 0 <= low < high:
            raise KitError(
                message("refusal.no_part", start=measured(low), end=measured(high)),
                where=self.said,
                do=message("refusal.no_part_do"),
            )
        return replace(self, start=low, end=high)

    def after(self, start: Size) -> Run:
        """The part from `start`, a length along the run, to its end. Raises `KitError` for a bare number.

        Example::

            upper = front.side.after(15 * cm)
        """
        low = float(length(start, self.said))
        if low < 0:
            raise KitError(
                message("refusal.part_before", start=measured(low)),
                where=self.said,
                do=message("refusal.from_start_do"),
            )
        return replace(self, start=low, end=None)

    @property
    def said(self) -> str:
        edges = " and ".join(edge.replace("_", " ") for edge in self.edges)
        return f"{self.piece.replace('_', ' ')} {self.side + ' ' if self.side else ''}{edges}"


@dataclass(frozen=True)
class Place:
    """A mark on a cut piece, with the half it is meant on (None: both)."""

    piece: str
    mark: Mark
    side: Side | None = None

    @property
    def edge(self) -> str:
        return self.mark.edge

    @property
    def start(self) -> float:
        """mm along the mark's edge; a point mark has its place here."""
        return self.mark.start

    @property
    def end(self) -> float:
        return self.mark.end

    @property
    def said(self) -> str:
        return f"{self.piece.replace('_', ' ')} {self.side + ' ' if self.side else ''}{self.mark.label}"


@dataclass(frozen=True)
class Fold:
    """A dart, pleat or tuck of a cut piece, with the half it is meant on (None: both), and the edge it opens on."""

    piece: str
    name: str
    edge: str
    side: Side | None = None

    @property
    def said(self) -> str:
        return f"{self.piece.replace('_', ' ')} {self.side + ' ' if self.side else ''}{self.name.replace('_', ' ')}"


class PieceHandle:
    """A cut piece as a sewing step sees it: attributes are its edges (`front.side`), its marks, its darts, pleats and
    tucks, and `.left` / `.right` for one half.

    >>> from kit import bodice_block, workshop_chart
    >>> front = PieceHandle(bodice_block(workshop_chart()["W4"])[0])
    >>> front.left.side
    Run(piece='front', edges=('side',), side='left', start=None, end=None)
    """

    def __init__(self, piece: Piece, side: Side | None = None) -> None:
        self._piece = piece
        self._side = side

    @property
    def left(self) -> PieceHandle:
        """The left half alone, as worn.

        Example::

            left_side = front.left.side
        """
        return self._half("left")

    @property
    def right(self) -> PieceHandle:
        """The right half alone, as worn.

        Example::

            right_side = front.right.side
        """
        return self._half("right")

    def _half(self, side: Side) -> PieceHandle:
        if side not in self._piece.sides:
            if not self._piece.cut.said:
                name = self._piece.name
                raise KitError(
                    f"no step says how {self._piece.title} is cut, so it has no {side} half.",
                    do=f"Write its cutting plan in a drafting step: {name}.cut(2, mirrored=True) for a pair, or "
                    f'{name}.cut(1, fold="centre").',
                )
            raise KitError(f"{self._piece.title} has no {side} half: it is cut as one single layer.")
        return PieceHandle(self._piece, side)

    def __getattr__(self, name: str) -> Any:
        if name.startswith("_"):
            raise AttributeError(name)
        if self._piece.has_edge(name):
            return Run(self._piece.name, (name,), self._side)
        for mark in self._piece.marks:
            if mark.name == name:
                return Place(self._piece.name, mark, self._side)
        folds = {dart.name: dart.edge for dart in self._piece.darts}
        folds |= {pleat.name: pleat.edge for pleat in self._piece.pleats}
        if name in folds:
            return Fold(self._piece.name, name, folds[name], self._side)
        known = [edge.name for edge in self._piece.edges] + [mark.name for mark in self._piece.marks] + list(folds)
        raise KitError(f"there is no edge or mark '{name}'.", where=self._piece.title, do=near(name, known))

    def __repr__(self) -> str:
        return f"<{self._piece.title}{' ' + self._side if self._side else ''}>"


def piece_of(handle: PieceHandle) -> tuple[Piece, Side | None]:
    """The piece behind a handle and the half it stands for (None: both)."""
    return handle._piece, handle._side


class StripHandle:
    """A strip as a sewing step sees it. `.name`, `.strip`."""

    def __init__(self, strip: Strip) -> None:
        self.strip = strip
        self.name = strip.name

    def __repr__(self) -> str:
        return f"<{self.strip.title}>"
