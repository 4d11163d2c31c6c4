"""What a try-on changes of cloth that is cut: the draft until then, the one that counts from then on, and what of the
sewing so far lies on lines that moved.

A `Refit` is a value in the try-on itself, made when the lesson is worked (kit/lesson/tried.py, by
kit/sewing/refitting.py): the operation then says, draws and checks it without asking anybody. Geometry comes from
kit/piece/recut.py.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Literal

from kit.piece.piece import Piece, Strip
from kit.piece.recut import EdgeChange, PieceChange
from kit.sewing.run import Run
from kit.sewing.spans import Span

Kind = Literal["length", "share", "count"]


@dataclass(frozen=True)
class Turn:
    """One value that a try-on changes: mm for a length, 0..1 for a share, whole for a count. `label` is how people call
    it."""

    name: str
    label: str
    kind: Kind
    before: float
    after: float


@dataclass(frozen=True)
class StripChange:
    """A strip whose cut size changed, by mm of its length and width (above zero: longer, wider)."""

    strip: Strip
    longer: float
    wider: float


@dataclass(frozen=True)
class Refit:
    """`pieces` that differ between the two drafts, pieces only the second has (`fresh`) or only the first (`gone`),
    `strips` cut in another size. Of what was sewn before: `unpicked`, edges whose line moved under a row; `basted`,
    those that are only basted; `opened`, closed edges beside a moved end; `folded`, (piece, dart or pleat) sewn where
    it lies no more. `seams` is how each edge is closed from now on: (piece, edge, the operation's kind); `cut_back`
    what was trimmed off before: (piece, edge, mm left). `shifted` are openings, and places within an edge where
    rows end, as they lie from now on, that were sewn elsewhere: what they hang on has moved along the edge."""

    turns: tuple[Turn, ...]
    pieces: tuple[PieceChange, ...] = ()
    fresh: tuple[Piece, ...] = ()
    gone: tuple[Piece, ...] = ()
    strips: tuple[StripChange, ...] = ()
    unpicked: tuple[Run, ...] = ()
    basted: tuple[Run, ...] = ()
    opened: tuple[Run, ...] = ()
    folded: tuple[tuple[str, str], ...] = ()
    seams: tuple[tuple[str, str, str], ...] = ()
    cut_back: tuple[tuple[str, str, float], ...] = ()
    shifted: tuple[tuple[Literal["opening", "row"], Span], ...] = ()

    @property
    def nothing(self) -> bool:
        """Whether the two drafts are alike."""
        return not (self.pieces or self.fresh or self.gone or self.strips)

    def edges(self) -> Iterator[tuple[PieceChange, EdgeChange]]:
        """Every edge whose line moved, with its piece."""
        for piece in self.pieces:
            for edge in piece.moved:
                yield piece, edge

    def seam_of(self, piece: str, edge: str) -> str:
        """The kind of the operation that closes an edge from now on; empty where none does."""
        return next((kind for name, other, kind in self.seams if (name, other) == (piece, edge)), "")
