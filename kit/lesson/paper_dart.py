"""A dart as a drafting step sees it: `front.waist_dart`, its places and how wide and deep it is."""

from __future__ import annotations

from kit.lesson.headings import NotedSheet
from kit.lesson.pencil import PaperPoint
from kit.piece.dart import depth, intake, mouth, sewn_point
from kit.piece.darts_and_pleats import Dart
from kit.piece.piece import Piece
from kit.units import Length


class PaperDart:
    """A dart that opens on an edge, as it lay when it was named: moved or taken away later, it still tells where it
    was."""

    def __init__(self, sheet: NotedSheet, piece: Piece, dart: Dart) -> None:
        self._sheet, self._piece, self._dart = sheet, piece, dart

    @property
    def name(self) -> str:
        """What it is called on its piece."""
        return self._dart.name

    @property
    def apex(self) -> PaperPoint:
        """The point it turns about and aims at."""
        return PaperPoint(self._sheet, self._dart.apex)

    @property
    def tip(self) -> PaperPoint:
        """Where its stitching ends: the apex, or short of it."""
        return PaperPoint(self._sheet, sewn_point(self._piece, self._dart))

    @property
    def middle(self) -> PaperPoint:
        """The middle of its mouth, on the edge it opens on."""
        one, two = mouth(self._piece, self._dart)
        return PaperPoint(self._sheet, one.mid(two))

    @property
    def start(self) -> PaperPoint:
        """Where the leg that comes first along its edge begins."""
        return PaperPoint(self._sheet, mouth(self._piece, self._dart)[0])

    @property
    def end(self) -> PaperPoint:
        """Where the other leg begins."""
        return PaperPoint(self._sheet, mouth(self._piece, self._dart)[1])

    @property
    def intake(self) -> Length:
        """How much it takes up, from leg to leg."""
        return Length(intake(self._piece, self._dart))

    @property
    def depth(self) -> Length:
        """How long it is stitched, from the middle of its mouth to its tip."""
        return Length(depth(self._piece, self._dart))

    def __repr__(self) -> str:
        return f"<{self._piece.title}: {self._dart.label}>"
