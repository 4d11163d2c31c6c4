"""What a move finds on the paper: the pieces as they lie, what was chosen on them, the edges that meet there.

A `Picked` is asked by a move for what it needs and refuses in plain words what does not fit. When the same thing was
chosen on several pieces the move is written once, in a loop over them.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field

from kit.errors import KitError
from kit.geometry import Path, Point, Vector
from kit.language import SOURCE, called, language, say
from kit.lesson.bench import words as bench_words
from kit.live.tidy_source import Call, free, identifier, length_source, literal, stepped
from kit.piece.piece import Edge, Piece
from kit.units import System
from kit.wording.names import title_said

SAME = 0.05  # mm
_WAYS = {"up": Vector(0, 1), "down": Vector(0, -1), "out": Vector(1, 0), "in": Vector(-1, 0)}


@dataclass(frozen=True)
class Chosen:
    """Something chosen on the canvas: a "piece", an "edge" or a "point" of it; the point `hem.end` is the corner at the
    end of the edge hem."""

    kind: str
    piece: str
    name: str


@dataclass(frozen=True)
class PickedPoint:
    """A point of a piece: `source` is how it is written after the piece's name, `said` what people call it."""

    piece: Piece
    source: str
    said: str
    at: Point

    @property
    def named(self) -> bool:
        return "." not in self.source


@dataclass
class DrawnMove:
    """What a move draws: a title, sentences, statements, the measure it uses (its `kind`, a first `amount` and the
    `least` it may be, mm or share) and the name of the line it adds."""

    title: str
    words: list[str]
    body: list[Call | str] = field(default_factory=list)
    measure: str = ""
    kind: str = "length"
    amount: float = 20.0
    least: float = 0.0
    within: Edge | None = None
    """The edge along which it is measured, so that it cannot be longer."""
    thing: str = ""
    makes: str = ""
    apart: bool = False
    """Whether it names each piece itself, so that no loop goes over them."""


def no(key: str, /, **values: str | int) -> KitError:
    """A refusal in the words of the spoken language."""
    return KitError(say(f"canvas_moves.{key}", values))


class Picked:
    """What was chosen on `pieces` (as they lie after the step the move follows), the `way` of the move, and the names
    asked for: `measure` and `thing` (the new line) are the reader's own, "" where the kit may choose."""

    def __init__(
        self,
        pieces: Mapping[str, Piece],
        chosen: Sequence[Chosen],
        *,
        way: str = "",
        taken: frozenset[str] = frozenset(),
        measure: str = "",
        thing: str = "",
        system: System = "cm",
        known: frozenset[str] = frozenset(("cm", "mm", "inch")),
    ) -> None:
        self.pieces = pieces
        self.chosen = [one for one in chosen if one.piece in pieces and one.kind != "piece"]
        self.way = way
        self.taken = taken
        self.system, self.known = system, known
        self._measure, self.wanted_thing = identifier(measure), identifier(thing)
        self.names = tuple(dict.fromkeys(one.piece for one in self.chosen))
        self.subject = self.names[0] if len(self.names) == 1 else "piece"

    # ---- what was chosen ----------------------------------------------------------------------------------

    def edges(self, count: int) -> list[Edge]:
        """So many edges of one piece; the first piece's where the same were chosen on others."""
        found = self._alike("edge", count)
        first = self.pieces[self.names[0]]
        return [first.edge(name) for name in found]

    def _alike(self, kind: str, count: int) -> list[str]:
        wrong = [one for one in self.chosen if one.kind != kind]
        each = {name: [one.name for one in self.chosen if one.piece == name] for name in self.names}
        lists = list(each.values())
        if wrong or not lists or any(len(names) != count for names in lists):
            raise no(f"choose_{kind}", count=count)
        if any(names != lists[0] for names in lists[1:]):
            raise no("choose_alike")
        for name in self.names:
            if kind == "edge" and not all(self.pieces[name].has_edge(own) for own in lists[0]):
                raise no("not_there_yet")
        return lists[0]

    def places(self, count: int) -> list[PickedPoint]:
        """So many points of one piece."""
        found = self._alike("point", count)
        return [place(self.pieces[self.names[0]], name) for name in found]

    @property
    def piece(self) -> Piece:
        return self.pieces[self.names[0]]

    def on(self, what: str) -> str:
        """What is written after the piece's name, with it: front.hem."""
        return f"{self.subject}.{what}"

    # ---- around the outline -------------------------------------------------------------------------------

    def before(self, edge: str, piece: Piece | None = None) -> Edge:
        return self._beside(edge, -1, piece)

    def after(self, edge: str, piece: Piece | None = None) -> Edge:
        return self._beside(edge, 1, piece)

    def _beside(self, edge: str, by: int, piece: Piece | None) -> Edge:
        edges = (piece or self.piece).edges
        at = next(i for i, one in enumerate(edges) if one.name == edge)
        found = edges[(at + by) % len(edges)]
        if len(edges) < 3:
            raise no("not_closed")
        return found

    def at_point(self, at: Point, piece: Piece | None = None) -> tuple[Edge | None, Edge | None]:
        """The edge that ends at a point and the one that starts there."""
        edges = (piece or self.piece).edges
        ending = next((e for e in edges if e.path.end.distance(at) < SAME), None)
        starting = next((e for e in edges if e.path.start.distance(at) < SAME), None)
        return ending, starting

    def kept_whole(self, *edges: Edge) -> None:
        """Refuse edges that a dart or a pleat opens on."""
        for piece in (self.pieces[name] for name in self.names):
            for edge in edges:
                if any(d.edge == edge.name for d in piece.darts):
                    raise no("has_dart", edge=said(edge))
                if any(edge.name in (p.edge, p.far) for p in piece.pleats):
                    raise no("has_pleat", edge=said(edge))

    def closed(self) -> bool:
        """Whether the outlines close already; while a lesson is drafted they may stand open."""
        try:
            return all(self.pieces[name].outline is not None for name in self.names)
        except KitError:
            return False

    def inside_left(self) -> bool:
        """Whether the cloth lies to the left of its edges."""
        points = [p for e in self.piece.edges for c in e.path.curves for p in (c.start, c.point(0.5))]
        return sum(p.x * q.y - q.x * p.y for p, q in zip(points, [*points[1:], *points[:1]], strict=True)) > 0

    # ---- drawing again ------------------------------------------------------------------------------------

    def redrawn(self, edge: Edge, end: str, to: str, moved: Vector | None) -> tuple[Call, str]:
        """The statement that draws an edge again with its "start" or "end" at `to`, and the sentence for it. `moved` is
        where that end goes; an edge on the fold may only move along itself."""
        self.kept_whole(edge)
        for piece in (self.pieces[name] for name in self.names):
            same = piece.edge(edge.name)
            if same.path.is_straight != edge.path.is_straight:
                raise no("choose_alike")
            if piece.fold == edge.name and (moved is None or abs(same.path.start_tangent.cross(moved)) > 1e-3):
                raise no("on_fold", edge=said(edge))
        if edge.path.corners:
            raise no("has_corner", edge=said(edge))
        own = self.on(edge.name)
        there = f"{own}.{'end' if end == 'start' else 'start'}"
        begin, target = (to, there) if end == "start" else (there, to)
        if edge.path.is_straight:
            return Call(f"{own} = {begin}.to", (target,)), say("canvas_moves.ruled_again", edge=said(edge))
        call = Call(f"{own} = {begin}.curve_to", (target, f"along={own}", f"end_along={own}"))
        return call, say("canvas_moves.curved_again", edge=said(edge))

    def carried(self, at: Point, to: str) -> list[Call | str]:
        """Statements that take the named points of a corner along to its new place."""
        found = [name for name, point in self.piece.points if point.distance(at) < SAME]
        shared = [n for n in found if all(n in dict(self.pieces[p].points) for p in self.names)]
        return [f"{self.on(name)} = {to}" for name in shared]

    def allowed(self, thing: str, like: Edge) -> tuple[list[Call | str], list[str]]:
        """For a new edge of a piece that has its allowances already: the statement and the sentence."""
        if not like.allowance:
            return [], []
        size = length_source(stepped(like.allowance, self.system), self.system, self.known)
        sentence = say("canvas_moves.allowed", edge=words(thing), amount=f"{{{thing}_allowance}}")
        return [Call(self.on("allow"), (f"{thing}={size}",))], [sentence]

    # ---- names --------------------------------------------------------------------------------------------

    def measure(self, stem: str, word: str) -> str:
        """The name of the measure: the reader's own, else from what is there: shoulder tip, lift -> shoulder_lift."""
        return free(self._measure or f"{short(stem)}_{word}", self.taken)

    def thing(self, default: str, *, own: bool = True) -> str:
        """The name of the line the move draws: the reader's `own` where there is one."""
        piece = self.piece
        names = {e.name for e in piece.edges} | {n for n, _ in piece.points} | {n for n, _ in piece.guides}
        names |= {m.name for m in piece.marks}
        return free((self.wanted_thing if own else "") or default, names | bench_words())


def place(piece: Piece, name: str) -> PickedPoint:
    """A named point of a piece, or the corner at the end of an edge."""
    points = dict(piece.points)
    if name in points:
        return PickedPoint(piece, name, literal(called(name)), points[name])
    edge, _, end = name.partition(".")
    if not piece.has_edge(edge) or end != "end":
        raise no("not_there_yet")
    own = piece.edge(edge)
    at_corner = next((n for n, point in points.items() if point.distance(own.path.end) < SAME), "")
    if at_corner:
        return place(piece, at_corner)
    edges = piece.edges
    beside = next((e for e in edges if e.path.start.distance(own.path.end) < SAME), own)
    corner = say("canvas_moves.corner", first=said(own), second=said(beside))
    return PickedPoint(piece, name, corner, own.path.end)


def said(edge: Edge) -> str:
    """What people call an edge, as it stands in a docstring."""
    return literal(edge.said or called(edge.name))


def piece_said(piece: Piece) -> str:
    """What people call a piece: by its name, or by its title where the lesson is not in the kit's own language."""
    return literal(called(piece.name) if language() == SOURCE else title_said(piece.title or called(piece.name)))


def words(name: str) -> str:
    return literal(name.replace("_", " "))


def short(name: str) -> str:
    """A name without what every point or line is: shoulder_tip -> shoulder, hem.end -> hem."""
    plain = name.split(".")[0]
    for ending in ("_point", "_tip", "_line", "_edge", "_corner", "_seam"):
        plain = plain.removesuffix(ending) or plain
    return plain


def toward(path: Path, at: float) -> tuple[str, str]:
    """The words for left and right of a line, `at` mm along: up, down, in or out."""
    normal = path.normal_at(at)
    left = max(_WAYS, key=lambda way: _WAYS[way].dot(normal))
    right = max(_WAYS, key=lambda way: _WAYS[way].dot(normal * -1.0))
    return left, right


def vector(way: str) -> Vector:
    return _WAYS[way]
