"""What a step marks on a piece: notches, openings, lines and points."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from kit.errors import KitError
from kit.geometry import Path, Point
from kit.lesson.match_verbs import level
from kit.lesson.pencil import PaperLine, PaperPoint, distance
from kit.piece.piece import Edge, Mark, Notch, Piece
from kit.units import Length, show

if TYPE_CHECKING:
    from kit.lesson.pattern import Spot


class MarkVerbs:
    """Verbs of a bench piece that mark it."""

    piece_name: str
    _edges: dict[str, Edge]
    _points: dict[str, Point]
    _guides: dict[str, Path]
    _state: Piece
    _spots: list[Spot]
    _drawn: set[str]

    if TYPE_CHECKING:

        @property
        def _where(self) -> str: ...

        def _edge_name(self, item: str | PaperLine) -> str: ...

        def inside_is_left(self) -> bool: ...

        def note(self, value: Length, start: Point, end: Point, along: Path | None = None) -> None: ...

        def _spot(self, name: str, value: float, start: Point, end: Point, along: Path | None) -> None: ...

    def notch(self, edge: str, at: object, *, double: bool = False, name: str = "") -> None:
        """A notch this far along an edge: single, or double for the back (common practice, no source)."""
        path = self._edges[self._edge_name(edge)].path
        size = distance(at, f"{self._where}, notch on {edge}")
        if size > path.length + 1e-6:
            raise KitError(
                f"a notch at {show(size)} lies past the end of the {edge.replace('_', ' ')}, "
                f"which is {show(path.length)} long.",
                where=self._where,
                do="Put it nearer.",
            )
        notch = Notch(edge, min(float(size), path.length), "double" if double else "single", name)
        self._state = replace(self._state, notches=(*self._state.notches, notch))

    def leave_open(self, name: str, edge: str, *, at: object, size: object, said: str = "") -> None:
        """An opening left in a seam: `size` long, its first end `at` this far along the edge; or level with a point,
        or where a line such as the wrap edge, folded over about the centre, meets the edge."""
        path = self._edges[self._edge_name(edge)].path
        if isinstance(at, PaperLine | PaperPoint):
            at = level(self, self._edge_name(edge), at)  # type: ignore[arg-type]
        start = distance(at, f"{self._where}, {name}")
        long = distance(size, f"{self._where}, {name}")
        if start + long > path.length + 1e-6:
            raise KitError(
                f"the opening from {show(start)} to {show(start + long)} does not fit on the "
                f"{edge.replace('_', ' ')}, which is {show(path.length)} long.",
                where=self._where,
                do="Make the opening shorter or move it up, or lengthen the garment.",
            )
        mark = Mark(name, "opening", edge=edge, start=float(start), end=float(start + long), said=said)
        self._state = replace(self._state, marks=(*self._state.marks, mark))
        self.note(long, path.at(float(start)), path.at(float(start + long)))

    def mark_line(self, name: str, line: PaperLine, said: str = "") -> None:
        """A line drawn inside the piece, such as the waistline."""
        mark = Mark(name, "line", path=line.path, said=said)
        self._state = replace(self._state, marks=(*self._state.marks, mark))

    def mark_point(self, name: str, point: PaperPoint, said: str = "") -> None:
        """A point marked inside the piece or at its edge, such as where a tie is set."""
        mark = Mark(name, "point", point=point.point, said=said)
        self._state = replace(self._state, marks=(*self._state.marks, mark))
