"""The block moves as a teacher writes them in a step: `front.move_dart("bust_dart", to="shoulder", at=6 * cm)`.

`MoveVerbs` is the part of a bench piece that checks what is given, calls the moves and lays the result on the
bench. Distances are lengths with a unit; a place on an edge is a length along it or a point marked near it.
"""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING, Literal

from kit.errors import KitError, near
from kit.geometry import Path, Point
from kit.lesson import moves, shaping
from kit.lesson.pencil import PaperLine, PaperPoint, distance
from kit.piece.dart import dart_of, intake, sewn_length
from kit.piece.darts_and_pleats import Dart, Pressed
from kit.piece.piece import Edge, Piece
from kit.piece.role import EdgeRole
from kit.units import Length

if TYPE_CHECKING:
    from kit.lesson.pattern import Spot

_PRESSED = ("centre", "side", "up", "down", "start", "end")


class MoveVerbs:
    """Verbs of a bench piece that draw and move darts, spread the paper and move its edges."""

    piece_name: str
    _edges: dict[str, Edge]
    _points: dict[str, Point]
    _guides: dict[str, Path]
    _state: Piece
    _spots: list[Spot]
    _drawn: set[str]

    if TYPE_CHECKING:

        def freeze(self) -> Piece: ...

        def _edge_name(self, item: str | PaperLine) -> str: ...

        def _edge_or(self, item: str | PaperLine, role: EdgeRole) -> str: ...

        def note(self, value: Length, start: Point, end: Point, along: Path | None = None) -> None: ...

    # ---- darts ----------------------------------------------------------------------------------------

    def add_dart(
        self, name: str, edge: str | PaperLine, *, at: object, intake: object, apex: PaperPoint, pressed: str = "centre"
    ) -> None:
        """A dart on `edge`, its middle `at` this far along (or at a point), taking up `intake`, pointing to `apex`
        and pressed to the "centre", "side", "up" or "down". Its legs are equal and its cap is drawn."""
        name_of = self._edge_name(edge)
        wide = distance(intake, f"{name}, intake")
        way = self._pressed(name_of, pressed)
        piece = moves.add_dart(
            self.freeze(),
            name,
            name_of,
            at=self._place(name_of, at),
            intake=float(wide),
            apex=apex.point,
            pressed=way,
        )
        self._lay(moves.true_dart(piece, name))
        self._note_dart(name, wide)

    def lay_dart(self, dart: Dart) -> None:
        """A dart on an edge that is already drawn through its mouth; its cap is drawn."""
        piece = self.freeze()
        self._lay(moves.true_dart(replace(piece, darts=(*piece.darts, dart)), dart.name))
        self._note_dart(dart.name)

    def move_dart(
        self,
        name: str,
        *,
        to: str | PaperLine,
        at: object,
        way: Literal["pivot", "slash"] = "pivot",
        pressed: str = "",
        true: bool = True,
    ) -> None:
        """Move a dart to any edge by pivoting about its apex, or by slashing to the apex and closing the old
        dart; both give the same. The new cap is drawn unless true=False."""
        if way not in ("pivot", "slash"):
            raise KitError(f"a dart is moved by 'pivot' or 'slash', not '{way}'.", do=near(way, ("pivot", "slash")))
        edge = self._edge_name(to)
        press = self._pressed(edge, pressed) if pressed else None
        piece = moves.move_dart(self.freeze(), name, edge, self._place(edge, at), way=way, pressed=press)
        self._lay(moves.true_dart(piece, name) if true else piece)
        self._note_dart(name)

    def split_dart(
        self, name: str, *, apart: object, share: float = 0.5, new_name: str = "", true: bool = True
    ) -> None:
        """Take a share of a dart out as a second one on the same edge, `apart` beyond it."""
        second = new_name or f"{name}_2"
        gap = distance(apart, f"{name}, apart")
        piece = moves.split_dart(self.freeze(), name, apart=float(gap), share=share, new_name=second)
        if true:
            piece = moves.true_dart(moves.true_dart(piece, name), second)
        self._lay(piece)
        self._note_dart(name)
        self._note_dart(second)

    def shorten_dart(self, name: str, by: object) -> None:
        """Stop the stitching this far before the apex; the dart still pivots about the apex."""
        self._lay(moves.shorten_dart(self.freeze(), name, float(distance(by, f"{name}, shortened by"))))

    def true_dart(self, name: str, pressed: str = "") -> None:
        """Fold the dart shut and draw its cap, so that the edge runs true."""
        dart = dart_of(self._state, name)
        self._lay(moves.true_dart(self.freeze(), name, self._pressed(dart.edge, pressed) if pressed else None))

    def dart_to_gathers(self, name: str, over: object = None) -> None:
        """Leave a dart unsewn and gather its intake into the edge, between two notches `over` this far apart."""
        self._fullness(name, "gathers", over)

    def dart_to_ease(self, name: str, over: object = None) -> None:
        """Leave a dart unsewn and ease its intake into the edge, between two notches `over` this far apart."""
        self._fullness(name, "ease", over)

    def _fullness(self, name: str, how: Literal["gathers", "ease"], over: object) -> None:
        wide = None if over is None else float(distance(over, f"{name}, over"))
        self._lay(moves.dart_to_fullness(self.freeze(), name, how, wide))

    def sewn_length(self, edge: str | PaperLine) -> Length:
        """An edge's length with its darts sewn."""
        return Length(sewn_length(self.freeze(), self._edge_name(edge)))

    # ---- shaping --------------------------------------------------------------------------------------

    def spread(
        self, first: tuple[str, object], second: tuple[str, object], amount: object, *, hinged: bool = False
    ) -> None:
        """Slash from a place on one edge to a place on another, given as (edge, how far along), and spread by
        `amount`: parallel, or hinged at the second place."""
        wide = distance(amount, "spread")
        one, two = self._edge_name(first[0]), self._edge_name(second[0])
        a, b = self._place(one, first[1]), self._place(two, second[1])
        piece = self.freeze()
        start, end = piece.edge(one).path.at(a), piece.edge(two).path.at(b)
        self._lay(shaping.spread(piece, (one, a), (two, b), float(wide), hinged=hinged))
        self.note(wide, start, start + (end - start).unit().left() * float(wide))

    def add_ease(self, amount: object, edge: str | PaperLine = "") -> None:
        """Add ease to this quarter: the side (or the `edge` named) moves out by `amount`."""
        name, by = self._edge_or(edge, "side"), distance(amount, "ease")
        middle = self._edges[name].path.at(self._edges[name].path.length / 2)
        self._lay(shaping.add_ease(self.freeze(), float(by), name))
        path = self._edges[name].path
        self.note(by, middle, path.at(path.length / 2))

    def extend_hem(self, edge: str | PaperLine, by: object) -> None:
        """Move a hem outward, parallel; the edges beside it run on to meet it."""
        name, size = self._edge_name(edge), distance(by, "hem")
        middle = self._edges[name].path.at(self._edges[name].path.length / 2)
        self._lay(shaping.extend_hem(self.freeze(), name, float(size)))
        path = self._edges[name].path
        self.note(size, middle, path.at(path.nearest(middle)))

    def lower_neckline(self, by: object, *, wider: object = 0, edge: str | PaperLine = "") -> None:
        """Lower the neckline (or the `edge` named) at the centre, and make it `wider` along the shoulder."""
        name, down, out = self._edge_or(edge, "neck"), distance(by, "neckline"), distance(wider, "neckline, wider")
        old = self._edges[name].path
        self._lay(shaping.lower_neckline(self.freeze(), float(down), wider=float(out), edge=name))
        new = self._edges[name].path
        self.note(down, old.start, new.start)
        self.note(out, old.end, new.end)

    # ---- shared ---------------------------------------------------------------------------------------

    def _place(self, edge: str, at: object) -> float:
        path = self._edges[edge].path
        if isinstance(at, PaperPoint):
            return path.nearest(at.point)
        return float(distance(at, f"along the {edge.replace('_', ' ')}"))

    def _pressed(self, edge: str, word: str) -> Pressed:
        if word not in _PRESSED:
            raise KitError(f"a dart is not pressed '{word}'.", do=near(word, _PRESSED))
        path = self._edges[edge].path
        if word in ("start", "end"):
            return "start" if word == "start" else "end"
        if word in ("centre", "side"):
            nearer = abs(path.start.x) < abs(path.end.x)
            return "start" if nearer == (word == "centre") else "end"
        higher = path.start.y > path.end.y
        return "start" if higher == (word == "up") else "end"

    def _note_dart(self, name: str, given: Length | None = None) -> None:
        piece = self.freeze()
        dart: Dart = dart_of(piece, name)
        path = piece.edge(dart.edge).path
        value = given if given is not None and given.name else Length(intake(piece, dart), f"{name}_intake")
        self.note(value, path.at(dart.start), path.at(dart.end))

    def _lay(self, piece: Piece) -> None:
        """The result on the bench; what changed counts as drawn."""
        before = self.freeze()
        old = {e.name: e.path for e in before.edges} | dict(before.guides)
        self._state = piece
        self._edges = {edge.name: edge for edge in piece.edges}
        self._points = dict(piece.points)
        self._guides = dict(piece.guides)
        now = {e.name: e.path for e in piece.edges} | dict(piece.guides)
        self._drawn.update(name for name, path in now.items() if old.get(name) != path)
