"""Pieces derived from others: facings."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from kit.errors import KitError
from kit.geometry import Line, Path, Point
from kit.lesson.pencil import PaperLine, distance
from kit.piece.piece import Edge, Piece
from kit.units import Length, show

if TYPE_CHECKING:
    from kit.lesson.bench import BenchPiece
    from kit.lesson.pattern import Spot


class FaceVerbs:
    """Verbs of a bench piece that draw it from another piece's edges."""

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

    def face(
        self, source: BenchPiece, edges: tuple[str, ...], *, depth: object, short: object = 0, ends: tuple[str, str]
    ) -> None:
        """Derive a facing from a run of `source`'s edges: the run itself, a parallel `depth` inside it named
        `outer`, and the two short ends along the neighbouring edges, named by `ends`. At ends that are seams
        the outer edge is drawn `short` by this much so that the facing pulls taut; an end on the centre fold
        is kept."""
        names = [source._edge_name(name) for name in edges]
        order = list(source._edges)
        first = order.index(names[0])
        if [order[(first + i) % len(order)] for i in range(len(names))] != names:
            raise KitError(
                f"{', '.join(names)} do not follow one another around {source._where}.",
                where=self._where,
                do=f"Name them in order: {', '.join(order)}.",
            )
        before, after = order[first - 1], order[(first + len(names)) % len(order)]
        run = source._edges[names[0]].path
        for name in names[1:]:
            run = run.joined(source._edges[name].path)
        size = distance(depth, f"{self._where}, facing depth")
        want = distance(short, f"{self._where}, short by")
        start_line, end_line = source._edges[before].path, source._edges[after].path
        try:
            outer = run.parallel(float(size) if source.inside_is_left() else -float(size))
            outer = outer.to(start_line, end="start").to(end_line, end="end")
        except KitError as error:
            raise KitError(
                f"a facing {show(size)} deep does not fit inside {source._where}: {error.what}",
                where=self._where,
                do="Make the facing narrower.",
            ) from None
        on_fold = {source._state.cut.fold} - {""}
        # The start is kept where it lies on a fold or is caught in a hem with the garment's own edge.
        if ends[1] not in on_fold and want > 0:
            outer = outer.between(0.0, outer.length - float(want))
        middle = run.at(run.length / 2)
        self._edges = {name: Edge(name, source._edges[name].path, said=source._edges[name].said) for name in names}
        tail = Path.of(Line(run.end, outer.end))
        head = Path.of(Line(outer.start, run.start))
        drawn_in = 0.0 if ends[1] in on_fold else float(want)
        self._edges[ends[1]] = Edge(ends[1], tail, drawn_in=drawn_in)
        self._edges["outer"] = Edge("outer", outer.reversed())
        self._edges[ends[0]] = Edge(ends[0], head)
        self._points, self._guides = {}, {}
        self._drawn.update(self._edges)
        self._state = replace(self._state, source=source.piece_name)
        self.note(size, middle, outer.at(outer.nearest(middle)))
        if want.name and want > 0:
            self._spot(
                want.name, float(want), outer.end, outer.end + outer.tangent_at(outer.length) * float(want), None
            )
