"""Pleats and tucks as a teacher writes them in a step: `skirt.add_pleat("pleat", "waist", at=8 * cm, intake=6 * cm)`.

`PleatVerbs` checks what is given, calls the functions in `pleating.py` and lays the result on the bench. Distances
are lengths with a unit; a place on an edge is a length along it or a point marked near it.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from kit.errors import KitError, near
from kit.geometry import Path, Point, Vector
from kit.lesson import pleating
from kit.lesson.pencil import PaperLine, PaperPoint, distance
from kit.piece.piece import Edge, Piece
from kit.piece.pleat import intake as taken
from kit.piece.pleat import pleat_of
from kit.units import Length

if TYPE_CHECKING:
    from kit.lesson.slash import Place
    from kit.piece.darts_and_pleats import Pressed

_STYLES = ("knife", "box", "inverted")


class PleatVerbs:
    """Verbs of a bench piece that fold pleats and tucks into it."""

    piece_name: str
    _edges: dict[str, Edge]

    if TYPE_CHECKING:

        @property
        def _where(self) -> str: ...

        def freeze(self) -> Piece: ...

        def _edge_name(self, item: str | PaperLine) -> str: ...

        def _place(self, edge: str, at: object) -> float: ...

        def _pressed(self, edge: str, word: str) -> Pressed: ...

        def _lay(self, piece: Piece) -> None: ...

        def note(self, value: Length, start: Point, end: Point, along: Path | None = None) -> None: ...

    def add_pleat(
        self,
        name: str,
        edge: str | PaperLine,
        *,
        at: object,
        intake: object,
        to: tuple[str | PaperLine, object] | PaperPoint | None = None,
        along: PaperLine | None = None,
        style: str = "knife",
        face: object = None,
        tapered: bool = False,
        laid: str = "side",
        held: str = "near",
        said: str = "",
    ) -> None:
        """A pleat folded into `edge` `at` this far along, taking up `intake` in all.

        The paper is slashed square to the edge as far as the edge across from it, or parallel to the straight line
        `along`, or `to` a place (edge, how far along), and spread straight; `tapered` swings it to nothing there.
        `style` knife is one fold laid to the "side", "centre", "up" or "down"; box is two with a `face` between
        them; inverted two that meet. `held`="both" folds it into the seam at the far edge too; else it hangs free.
        """
        if style not in _STYLES:
            raise KitError(f"there is no pleat style '{style}'.", where=self._where, do=near(style, _STYLES))
        if held not in ("near", "both"):
            raise KitError(f"a pleat is not held '{held}'.", where=self._where, do='Say held="near" or held="both".')
        edge_name, wide = self._edge_name(edge), distance(intake, f"{name}, intake")
        piece = self.freeze()
        start = (edge_name, self._place(edge_name, at))
        far = self._far(piece, start, to, along)
        ends: pleating.Held = "both" if held == "both" else "near"
        if style == "knife":
            if face is not None:
                raise KitError("only a box pleat has a face.", where=self._where, do='Say style="box".')
            way = self._pressed(edge_name, laid)
            result = pleating.add_pleat(
                piece, name, start, far, float(wide), tapered=tapered, laid=way, held=ends, said=said
            )
        else:
            size = None if face is None else float(distance(face, f"{name}, face"))
            result = pleating.box_pleat(
                piece,
                name,
                start,
                far,
                float(wide),
                inverted=style == "inverted",
                face=size,
                tapered=tapered,
                held=ends,
                said=said,
            )
        self._lay(result)
        self._note_pleat(name if style == "knife" else f"{name}_1", wide if style == "knife" else None)

    def add_tuck(
        self,
        name: str,
        edge: str | PaperLine,
        *,
        at: object,
        depth: object,
        count: int = 1,
        apart: object = None,
        along: PaperLine | None = None,
        sewn: object = None,
        laid: str = "side",
        said: str = "",
    ) -> None:
        """A tuck, or a row of `count` of them with their seams `apart` from one to the next: each `depth` deep from
        fold to stitching, taking up twice that. They run across the piece square to the edge, or parallel to the
        straight line `along`, and are stitched for `sewn`, or all the way."""
        edge_name, deep = self._edge_name(edge), distance(depth, f"{name}, depth")
        if isinstance(count, bool) or not isinstance(count, int):
            raise KitError(f"a row has a whole number of tucks, not {count!r}.", where=self._where, do="Say count=5.")
        if count > 1 and apart is None:
            raise KitError("it is not said how far apart the tucks are.", where=self._where, do="Say apart=1 * cm.")
        gap = 0.0 if apart is None else float(distance(apart, f"{name}, apart"))
        result = pleating.tuck_row(
            self.freeze(),
            name,
            (edge_name, self._place(edge_name, at)),
            count=count,
            depth=float(deep),
            apart=gap,
            way=None if along is None else self._straight(along),
            sewn=None if sewn is None else float(distance(sewn, f"{name}, sewn")),
            laid=self._pressed(edge_name, laid),
            said=said,
        )
        self._lay(result)
        first = pleat_of(result, name if count == 1 else f"{name}_1")
        one, two = (leg.at(leg.length / 2) for leg in first.lines)
        if deep.name:
            self.note(deep, one, one.mid(two))
        else:
            self.note(Length(float(deep), f"{name}_depth"), one, one.mid(two))

    def true_pleat(self, name: str) -> None:
        """Fold the pleat or tuck and redraw its edges through it, so that they run true."""
        self._lay(pleating.true_pleat(self.freeze(), name))

    def _far(
        self,
        piece: Piece,
        start: Place,
        to: tuple[str | PaperLine, object] | PaperPoint | None,
        along: PaperLine | None,
    ) -> Place:
        if to is None:
            return pleating.across(piece, *start, None if along is None else self._straight(along))
        if along is not None:
            raise KitError("it is said twice which way the pleat runs.", where=self._where, do="Give to= or along=.")
        if isinstance(to, tuple) and len(to) == 2:
            name = self._edge_name(to[0])
            return name, self._place(name, to[1])
        if isinstance(to, PaperPoint):
            nearest = min(piece.edges, key=lambda e: e.path.distance_to(to.point))
            return nearest.name, nearest.path.nearest(to.point)
        raise KitError(
            "the far end of the pleat is not a place.", where=self._where, do='Say to=("hem", 12 * cm) or a point.'
        )

    def _straight(self, line: PaperLine) -> Vector:
        if not line.path.is_straight:
            raise KitError("pleats run parallel to a straight line.", where=self._where, do="Name a straight line.")
        return line.path.end - line.path.start

    def _note_pleat(self, name: str, given: Length | None) -> None:
        pleat = pleat_of(self.freeze(), name)
        value = given if given is not None and given.name else Length(taken(pleat), f"{name}_intake")
        self.note(value, pleat.lines[0].start, pleat.lines[1].start)
