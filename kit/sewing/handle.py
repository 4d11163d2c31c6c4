"""The handles a sewing step writes with: a cut piece, whose attributes are its edges, marks and folds, and a strip."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Any, Literal

from kit.diagnostic import as_value, message, titled
from kit.errors import KitError, near
from kit.piece.dart import meant
from kit.piece.piece import Piece, Side, Strip
from kit.sewing.marked import Fold, Notched, Place
from kit.sewing.run import Run

_BY_NAME = ("edge", "mark")
"""What gives an edge or a mark by a name put together in code: front.mark(f"button_{number}")."""


class PieceHandle:
    """A cut piece as a sewing step sees it: attributes are its edges (`front.side`), its marks, its darts, pleats and
    tucks, and `.left` / `.right` for one half; `.edge("side")` and `.mark("button_1")` give them by name.

    >>> from kit import bodice_block, workshop_chart
    >>> front = PieceHandle(bodice_block(workshop_chart()["W4"])[0])
    >>> front.left.side
    <front left side>
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
            if self._piece.cut.count > 1:
                name, count = self._piece.name, self._piece.cut.count
                says = message(f"refusal.cut_alike_{side}", count=as_value(count), piece=titled(self._piece.title))
                raise KitError(says, do=message("refusal.cut_alike_do", call=f"{name}.cut({count}, mirrored=True)"))
            raise KitError(f"{self._piece.title} has no {side} half: it is cut as one single layer.")
        return PieceHandle(self._piece, side)

    def __getattr__(self, name: str) -> Any:
        if name.startswith("_"):
            raise AttributeError(name)
        if self._piece.has_edge(name):
            return Run(self._piece.name, (name,), self._side, ground=self._piece)
        for mark in self._piece.marks:
            if mark.name == name:
                return Place(self._piece.name, mark, self._side)
        for notch in self._piece.notches:
            if notch.name and notch.name == name:
                return Notched(self._piece.name, notch, self._side)
        folds = {dart.name: dart.edge for dart in self._piece.darts}
        folds |= {pleat.name: pleat.edge for pleat in self._piece.pleats}
        if (fold := meant(self._piece, name)) in folds:
            return Fold(self._piece.name, fold, folds[fold], self._side)
        if name in self._piece.spared:
            return Fold(self._piece.name, name, "", self._side)
        if name in _BY_NAME:
            return self.__getattr__
        known = [edge.name for edge in self._piece.edges] + [mark.name for mark in self._piece.marks]
        known += [notch.name for notch in self._piece.notches if notch.name] + list(folds)
        raise KitError(f"there is no edge or mark '{name}'.", where=self._piece.title, do=near(name, known))

    def __repr__(self) -> str:
        return f"<{self._piece.title}{' ' + self._side if self._side else ''}>"


def piece_of(handle: PieceHandle) -> tuple[Piece, Side | None]:
    """The piece behind a handle and the half it stands for (None: both)."""
    return handle._piece, handle._side


@dataclass(frozen=True)
class StripEdges:
    """The long edges of a strip ("sides") or its short ones ("ends"), as scissors take them: `make.trim(tie.sides)`."""

    strip: str
    which: Literal["sides", "ends"]

    @property
    def said(self) -> str:
        return f"the {self.which} of the {self.strip.replace('_', ' ')}"

    def __repr__(self) -> str:
        return f"<{self.said}>"


class StripHandle:
    """A strip as a sewing step sees it: `.name`, `.strip`, and its `.sides` and `.ends`, whose allowances are trimmed
    and graded as those of edges are."""

    def __init__(self, strip: Strip) -> None:
        self.strip = strip
        self.name = strip.name

    @property
    def sides(self) -> StripEdges:
        """Its long edges, along which it is seamed.

        Example::

            long_edges = tie.sides
        """
        return StripEdges(self.name, "sides")

    @property
    def ends(self) -> StripEdges:
        """Its short edges.

        Example::

            short_edges = tie.ends
        """
        return StripEdges(self.name, "ends")

    if not TYPE_CHECKING:  # what a strip has stands above; this only says what a strip is not

        def __getattr__(self, name: str) -> Any:
            if name.startswith("_"):
                raise AttributeError(name)
            raise KitError(
                f"it is a strip and has no edge or mark '{name}', only sides and ends.",
                where=self.strip.title,
                do="Sew it on with attach_strip, attach_handle or bind. What is set on along an edge, as a waistband, "
                "cuff or neckband is, must be drawn as a piece: a rectangle with place and draw.",
            )

    def __repr__(self) -> str:
        return f"<{self.strip.title}>"
