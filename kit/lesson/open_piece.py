"""A piece as it lies open on the bench: the value it is now, and the record of what the step measured and drew.

Verbs are functions of an `OpenPiece`. A step sees it as a `BenchPiece` (kit/lesson/bench.py), whose attributes are the
names drawn on the paper; here everything has a plain name.
"""

from __future__ import annotations

from collections.abc import Iterable
from typing import Any, TypeVar

from kit.errors import KitError, near
from kit.geometry import Path, Point
from kit.lesson.hand import HandMove, named, pointed
from kit.lesson.headings import distance
from kit.lesson.pattern import StepMeasure
from kit.lesson.pencil import At, PaperLine, PaperPoint
from kit.lesson.verb import RESERVED
from kit.piece.bound import kept
from kit.piece.changed import changed
from kit.piece.dart import left_where_they_lie
from kit.piece.piece import Edge, Piece
from kit.piece.role import EdgeRole
from kit.units import Length, Size

T = TypeVar("T")
_SAME = 0.5


class OpenPiece:
    """One piece being changed by a step. `piece` is a frozen value that every change replaces; `spots` are the measures
    written down so far, `limits` the names of those that lines keep within, `drawn` the names of the lines and points
    the step drew, `asked` those of the edges that were asked for, `hand` the moves of the hand."""

    __slots__ = ("asked", "before", "drawn", "hand", "limits", "piece", "spots")

    def __init__(self, piece: Piece) -> None:
        self.before = piece
        self.piece = piece
        self.spots: list[StepMeasure] = []
        self.limits: list[str] = []
        self.drawn: set[str] = set()
        self.asked: set[str] = set()
        self.hand: list[HandMove] = []

    # ---- what is on it --------------------------------------------------------------------------------

    @property
    def piece_name(self) -> str:
        return self.piece.name

    @property
    def where(self) -> str:
        """How messages name the piece."""
        return self.piece.title or self.piece.name

    @property
    def order(self) -> list[str]:
        """The names of the edges, in order around the piece."""
        return [edge.name for edge in self.piece.edges]

    @property
    def names(self) -> list[str]:
        """The names of all edges, guides and points."""
        return [*self.order, *(name for name, _ in self.piece.guides), *(name for name, _ in self.piece.points)]

    def line(self, name: str) -> PaperLine | None:
        """The edge or guide of that name."""
        for edge in self.piece.edges:
            if edge.name == name:
                self.asked.add(name)
                return PaperLine(self, edge.path, name)
        path = _found(self.piece.guides, name)
        return None if path is None else PaperLine(self, path, name)

    def point(self, name: str) -> PaperPoint | None:
        """The point of that name."""
        point = _found(self.piece.points, name)
        return None if point is None else PaperPoint(self, point)

    def edge_name(self, item: str | PaperLine) -> str:
        """The name of an edge of this piece; `KitError` with the near one when there is none."""
        name = item.name if isinstance(item, PaperLine) else item
        if not self.piece.has_edge(name):
            raise KitError(
                f"there is no edge '{name or 'without a name'}'.", where=self.where, do=near(name, self.order)
            )
        return name

    def edge_or(self, item: str | PaperLine, role: EdgeRole) -> str:
        """The edge named or, where none is, the one of that `role`; of several the one that bears the role's name."""
        if item:
            return self.edge_name(item)
        found = [edge.name for edge in self.piece.edges if edge.role == role]
        if len(found) != 1 and role not in found:
            raise KitError(
                f"{', '.join(found)} are each a {role}." if found else f"no edge is known to be the {role}.",
                where=self.where,
                do="Name the edge that is meant"
                + ("." if found else f", or say which it is: {self.piece_name}.role(NAME_OF_EDGE={role!r})."),
            )
        return role if role in found else found[0]

    def path(self, edge: str) -> Path:
        return self.piece.edge(edge).path

    def place_on(self, edge: str, at: At) -> float:
        """mm along an edge of a place given as a length along it, or as a point near it."""
        if isinstance(at, PaperPoint):
            return self.path(edge).nearest(at.point)
        return float(distance(at, f"along the {edge.replace('_', ' ')}"))

    def inside_is_left(self) -> bool:
        """Whether the cloth lies to the left when the outline is walked in edge order."""
        points = [p for e in self.piece.edges for c in e.path.curves for p in (c.start, c.point(0.5))]
        area = sum(p.x * q.y - q.x * p.y for p, q in zip(points, [*points[1:], *points[:1]], strict=True))
        return area > 0

    def edge_paths(self) -> tuple[Path, ...]:
        """The edges drawn so far."""
        return tuple(edge.path for edge in self.piece.edges)

    def is_far_half(self, point: Point) -> bool:
        """Whether a point lies on a mirrored half, where in is to the right: on a piece worn in front or behind that
        lies mostly to the left of the centre line; on one drawn whole, alike to both sides, to the left of that line.
        What a half reaches beyond the centre, for a wrap or a lap, belongs to that half."""
        if not self.piece.worn or not self.piece.edges:
            return False
        boxes = [edge.path.bounds() for edge in self.piece.edges]
        more = min(box[0] for box in boxes) + max(box[2] for box in boxes)
        return point.x < -1e-6 if abs(more) < _SAME else more < 0

    # ---- changing it ----------------------------------------------------------------------------------

    def change(self, **fields: Any) -> None:
        """Replace the piece by one that differs in these fields."""
        self.piece = changed(self.piece, **fields)

    def put_edges(self, *edges: Edge) -> None:
        """Edges in the place of those of their names."""
        new = {edge.name: edge for edge in edges}
        before = self.piece
        self.piece = left_where_they_lie(
            before, changed(before, edges=tuple([new.get(one.name, one) for one in before.edges]))
        )

    def put_guide(self, name: str, path: Path) -> None:
        self.change(guides=_put(self.piece.guides, name, path))

    def put_point(self, name: str, point: Point) -> None:
        self.change(points=_put(self.piece.points, name, point))

    def lay(self, piece: Piece) -> None:
        """A changed piece in place of this one; the lines that differ count as drawn."""
        before = self.freeze()
        old = {e.name: e.path for e in before.edges} | dict(before.guides)
        now = {e.name: e.path for e in piece.edges} | dict(piece.guides)
        self.piece = piece
        self.drawn.update(name for name, path in now.items() if old.get(name) != path)

    def free(self, name: str, what: str = "a line or point") -> None:
        """Refuse a reserved word as a name, and let go what was found of that name."""
        if name in RESERVED:
            raise KitError(
                f"'{name}' is a word of the bench and cannot name {what}.", where=self.where, do="Choose another name."
            )
        if name in self.piece.found:
            self.change(
                points=tuple(pair for pair in self.piece.points if pair[0] != name),
                guides=tuple(pair for pair in self.piece.guides if pair[0] != name),
                landmarks=tuple(pair for pair in self.piece.landmarks or () if pair[0] != name),
                found=tuple(one for one in self.piece.found if one != name),
            )

    # ---- the record -----------------------------------------------------------------------------------

    def note(
        self, value: Length, start: Point, end: Point, along: Path | None = None, *, within: Iterable[Size | None] = ()
    ) -> None:
        """Write down a named measure for the picture, and the named measures `within` which the line keeps."""
        self.limits += [limit.name for limit in within if isinstance(limit, Length) and limit.name]
        if value.name and value > 1e-6:
            self.spot(value.name, float(value), start, end, along)
        elif value.parts is not None and along is None:
            part = value.parts[1]  # what was added last lies at the end
            if not part.name or not 1e-6 < part < value:
                return
            self.spot(part.name, float(part), end + (start - end).unit() * float(part), end, None)

    def spot(
        self,
        name: str,
        value: float,
        start: Point,
        end: Point,
        along: Path | None,
        edge: str = "",
        *,
        extra: bool = False,
    ) -> None:
        """Write down a measure of this name for the picture; of an `edge` it is the allowance, or the `extra` cloth."""
        made = StepMeasure(
            name, value, self.piece_name, start, end, along, edge=edge, allowance=bool(edge), extra=extra
        )
        self.spots.append(made)

    def lines(self) -> Iterable[tuple[str, Path]]:
        """The edges and construction lines drawn so far, by name."""
        yield from ((edge.name, edge.path) for edge in self.piece.edges)
        yield from self.piece.guides

    def did(self, move: HandMove) -> None:
        """Write down a move of the hand."""
        self.hand.append(move)

    def line_named(self, name: str, path: Path) -> None:
        """The moves that drew a line get the name it was drawn under."""
        self.hand = named(self.hand, name, path)

    def point_named(self, name: str, at: Point) -> None:
        """The move that led to a point gets the name it was marked under."""
        self.hand = pointed(self.hand, name, at)

    # ---- the end of the step --------------------------------------------------------------------------

    def freeze(self) -> Piece:
        """The piece as it stands, without the darts, pleats, notches and openings whose edge is gone."""
        return kept(self.piece)

    def __repr__(self) -> str:
        return f"<{self.where}: {', '.join(self.order)}>"


def _found(pairs: Iterable[tuple[str, T]], name: str) -> T | None:
    return next((value for key, value in pairs if key == name), None)


def _put(pairs: tuple[tuple[str, T], ...], name: str, value: T) -> tuple[tuple[str, T], ...]:
    if any(key == name for key, _ in pairs):
        return tuple((key, value if key == name else one) for key, one in pairs)
    return (*pairs, (name, value))
