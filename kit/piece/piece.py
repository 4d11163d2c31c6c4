"""A pattern piece: a closed run of named edges (the stitch line), with all that is written on it.

A `Piece` is a value. While a lesson is being drafted its edges need not join yet; `Piece.outline` closes
them and says plainly where they do not meet. Coordinates are millimetres, y up, the body's centre line at
x = 0 for bodice pieces.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, field
from functools import cached_property
from typing import Any, Literal, TypeVar

from kit.errors import KitError, near
from kit.geometry import Outline, Path, Point
from kit.piece.changed import changed
from kit.piece.corner import Corner, Declared
from kit.piece.darts_and_pleats import Dart, Pleat
from kit.piece.role import EdgeRole, Landmark, PieceRole, Worn, edge_role, landmark, piece_role

GrainKind = Literal["lengthwise", "crosswise", "bias"]
MarkKind = Literal[
    "line",
    "point",
    "opening",
    "drill",
    "buttonhole",
    "placement",
    "hook",
    "bar",
    "eye",
    "snap",
    "socket",
    "eyelet",
    "dart",
    "slit",
]
Cloth = Literal["main", "interfacing", "lining"]
Side = Literal["left", "right"]
StripFold = Literal["in_four", "in_two", "band", "single_binding", "double_binding", "hemmed"]


@dataclass(frozen=True)
class Edge:
    """One named edge of a piece: its stitch-line `path` and the `allowance` outside it in mm (None: not yet
    declared; 0 on a fold or an edge cut on the line). `said` is how people say it ("side seam"). `drawn_in` is how
    far in mm the edge's outer end was moved on purpose, as at the shoulder of a facing drawn short. `extra` is cloth to
    fit with, in mm: the edge is cut so much wider than the allowance it is sewn with, and trimmed after a fitting.

    `role` is what the edge is (hem, neck, side, ...; "" for nothing of that kind). An edge made without one has the
    role its name and `said` give (`kit.piece.role`), found here once; it is never None afterwards and nothing else
    reads the name. `by_hand` says that the author set it, so that nothing sets it otherwise.

    >>> Edge("saum", Path.line(Point(0, 0), Point(1, 0))).role, Edge("fald", Path.line(Point(0, 0), Point(1, 0))).role
    ('hem', '')
    """

    name: str
    path: Path
    allowance: float | None = None
    said: str = ""
    drawn_in: float = 0.0
    role: EdgeRole | None = None
    by_hand: bool = False
    extra: float = 0.0

    def __post_init__(self) -> None:
        if self.role is None:
            object.__setattr__(self, "role", edge_role(self.name, self.said))

    @property
    def label(self) -> str:
        """The name as people say it."""
        return self.said or self.name.replace("_", " ")


@dataclass(frozen=True)
class Notch:
    """A notch on `edge`, `distance` mm along the stitch line from the edge's start. `kind` is single for
    front, double for back (common practice, no source)."""

    edge: str
    distance: float
    kind: Literal["single", "double"] = "single"
    name: str = ""


@dataclass(frozen=True)
class Mark:
    """What is drawn inside a piece or across an edge: a line (waistline), a point (tie place), an opening left in an
    edge from `start` to `end`, a drill mark (a point pricked through), a buttonhole (`path` is its slit), a
    placement (`path` is where another piece, such as a pocket, is laid), or what fastens the garment: a hook, the
    bar or eye it goes into (`path` from foot to bend, or along the bar), a snap's ball half or its socket, an
    eyelet (a point), a dart with two points (`path` runs round it, see `kit.piece.double_dart`), or a slit that is
    cut open for a placket (`path` from its edge to its end, see `kit.piece.slit`). A point or drill mark may have
    its place on `edge` at `start`."""

    name: str
    kind: MarkKind
    path: Path | None = None
    point: Point | None = None
    edge: str = ""
    start: float = 0.0
    end: float = 0.0
    said: str = ""

    @property
    def label(self) -> str:
        return self.said or self.name.replace("_", " ")


@dataclass(frozen=True)
class Grain:
    """The grainline as drawn, from `start` to `end`, laid along the cloth's `kind` of grain. `one_way`: the piece has
    a top, at `end`, that must not be turned round on cloth with a nap or a print that runs one way."""

    start: Point
    end: Point
    kind: GrainKind = "lengthwise"
    one_way: bool = False


@dataclass(frozen=True)
class LengthenLine:
    """A line at which a piece is cut through or folded to make it longer or shorter: the two levels of the body it lies
    between (`kit.piece.role`; "top" and "end" are the piece's own upper and lower end), and its `path` from edge to
    edge of the stitch line."""

    upper: str
    lower: str
    path: Path


@dataclass(frozen=True)
class CutPlan:
    """How a piece is cut: `count` layers of `cloth`; `mirrored` for a left and a right one; `fold` names the
    edge laid on the fold. `interfacing` is how many layers of interfacing the same shape is cut in.
    `right_side_up`: cut single with the right side of cloth and pattern up, because its mirror image would not fit.
    `said` is False where nobody has planned it, so that these are only the values a fresh piece begins with."""

    count: int = 1
    mirrored: bool = False
    fold: str = ""
    cloth: Cloth = "main"
    interfacing: int = 0
    right_side_up: bool = False
    said: bool = field(default=False, compare=False)


@dataclass(frozen=True)
class Piece:
    """A pattern piece: `name` (as in code), `title` (as printed), `number` on the pattern, `edges` in order
    around the outline, `points` named on the paper, `guides` (construction lines such as the waistline).
    `source` is the piece it was traced from, if any. `corners` says how allowances meet (a mitre where nothing is
    said), `declared` names the corners drawn on purpose.

    `role` is what the piece is and `worn` where on the body ("front", "back" or ""): a back neck facing is a facing
    worn at the back. `landmarks` says which of its points and guides are the neck point, the bust line and the like,
    as (name, what it is); `found` names those points and guides that nobody drew, such as the waistline of a traced
    top: whoever draws something of that name replaces it. `spared` names darts that its block draws for other
    figures and this one does not need. `lengthen` are the lines it is lengthened or shortened at, where its author
    placed them (none: an empty tuple); None leaves them to `kit.lesson.lengthen_lines`. What is made without a role has
    the one that name and title give (`kit.piece.role`), found here once and never None afterwards; `by_hand` says that
    the author set it.

    >>> piece = Piece("back_facing", "Back neck facing", ())
    >>> piece.role, piece.worn
    ('facing', 'back')
    """

    name: str
    title: str
    edges: tuple[Edge, ...]
    number: int = 0
    cut: CutPlan = CutPlan()
    grain: Grain | None = None
    notches: tuple[Notch, ...] = ()
    marks: tuple[Mark, ...] = ()
    points: tuple[tuple[str, Point], ...] = ()
    guides: tuple[tuple[str, Path], ...] = ()
    source: str = ""
    darts: tuple[Dart, ...] = ()
    pleats: tuple[Pleat, ...] = ()
    corners: tuple[Corner, ...] = ()
    declared: tuple[Declared, ...] = ()
    role: PieceRole | None = None
    worn: Worn | None = None
    by_hand: bool = False
    landmarks: tuple[tuple[str, Landmark], ...] | None = None
    found: tuple[str, ...] = ()
    spared: tuple[str, ...] = ()
    lengthen: tuple[LengthenLine, ...] | None = None

    def __post_init__(self) -> None:
        if self.role is None:
            role, worn = piece_role(self.name, self.title)
            object.__setattr__(self, "role", role)
            if self.worn is None:
                object.__setattr__(self, "worn", worn)
        elif self.worn is None:
            worn = "front" if self.role == "front" else "back" if self.role == "back" else ""
            object.__setattr__(self, "worn", worn)
        if self.landmarks is None:
            object.__setattr__(self, "landmarks", landmarks_of(name for name, _ in (*self.points, *self.guides)))

    @cached_property
    def outline(self) -> Outline:
        """The closed stitch line. Raises `KitError` naming the two edges that do not meet."""
        try:
            return Outline(tuple((edge.name, edge.path) for edge in self.edges))
        except KitError as error:
            raise error.at(self.title or self.name) from None

    @cached_property
    def known_runs(self) -> dict[tuple[Any, ...], Any]:
        """What kit/piece/folded.py has found of its runs, by their edges, with and without their ways: sewing and proof
        ask for the same few hundreds of times. It knows nothing of the piece, or the two would hold one another."""
        return {}

    def __getstate__(self) -> dict[str, Any]:
        """Whoever takes a piece to another process leaves there what can be found again."""
        held = super().__getstate__()
        assert isinstance(held, dict)
        return {name: value for name, value in held.items() if name != "known_runs"}

    def edge(self, name: str) -> Edge:
        """The edge of that name; `KitError` with the nearest name otherwise."""
        for edge in self.edges:
            if edge.name == name:
                return edge
        raise KitError(
            f"there is no edge '{name}'.", where=self.title, do=near(name, [edge.name for edge in self.edges])
        )

    def has_edge(self, name: str) -> bool:
        return any(edge.name == name for edge in self.edges)

    def with_role(self, role: EdgeRole) -> tuple[Edge, ...]:
        """The edges of that role, in order around the outline."""
        return tuple(edge for edge in self.edges if edge.role == role)

    def point_of(self, what: Landmark) -> Point | None:
        """The point that is `what`, such as the neck point; None where the piece has none."""
        names = {name for name, found in self.landmarks or () if found == what}
        return next((point for name, point in self.points if name in names), None)

    def guide_of(self, what: Landmark) -> Path | None:
        """The construction line that is `what`, such as the bust line; None where the piece has none."""
        names = {name for name, found in self.landmarks or () if found == what}
        return next((path for name, path in self.guides if name in names), None)

    @property
    def fold(self) -> str:
        """The edge on the fold, or empty."""
        return self.cut.fold

    @property
    def sides(self) -> tuple[Side, ...]:
        """The halves that are sewn: a mirrored pair or a piece on the fold has a left and a right one; a
        single unfolded piece counts as its right half alone."""
        return ("left", "right") if self.cut.mirrored or self.cut.fold else ("right",)

    def with_edges(self, **changes: Edge) -> Piece:
        return changed(self, edges=tuple([changes.get(edge.name, edge) for edge in self.edges]))


def landmarks_of(names: Iterable[str]) -> tuple[tuple[str, Landmark], ...]:
    """(name, what it is) of those `names` of points and lines that are words of the trade."""
    return tuple((name, found) for name in names if (found := landmark(name)) is not None)


@dataclass(frozen=True)
class Strip:
    """A strip cut without a paper piece: `length` x `width` as cut, in mm; `count` of `cloth`.
    `finished_length` and `finished_width` are what it measures when sewn; `fold` says how it is made. `grain` is what
    its length runs along; `joins` how many seams piece each strip together, from pieces of `each` mm as cut, joined
    "straight" or on the "diagonal". `square` is the side of the square whose sewn bias tube gives them all, with
    seams of `join_allowance` mm, or 0."""

    name: str
    title: str
    length: float
    width: float
    count: int
    number: int = 0
    cloth: Cloth = "main"
    finished_length: float = 0.0
    finished_width: float = 0.0
    fold: StripFold = "in_four"
    grain: GrainKind = "lengthwise"
    joins: int = 0
    each: float = 0.0
    join: Literal["straight", "diagonal"] = "straight"
    join_allowance: float = 0.0
    square: float = 0.0
    loose: bool = False

    @property
    def pieces(self) -> int:
        """How many lengths are cut for all of them."""
        return self.count * (self.joins + 1)

    @property
    def cut_length(self) -> float:
        """mm of each length as cut: the whole strip, or what it is pieced from."""
        return self.each if self.joins else self.length


def interfacing_cut(pieces: Iterable[Piece], piece: Piece) -> int:
    """Layers of interfacing cut for `piece`: in its own shape, or as pieces of interfacing drawn from it."""
    drawn = sum(p.cut.count for p in pieces if p.cut.cloth == "interfacing" and p.source == piece.name)
    return piece.cut.interfacing or drawn


Named = TypeVar("Named", Piece, Strip)


def named(things: Iterable[Named], name: str, what: str) -> Named:
    """The piece or strip of that name; `KitError` with the nearest name otherwise. `what` is "piece" or "strip".

    >>> from kit import bodice_block, workshop_chart
    >>> front, back = bodice_block(workshop_chart()["W4"])
    >>> named((front, back), "back", "piece").title
    'Back bodice'
    """
    found = {thing.name: thing for thing in things}
    if name not in found:
        raise KitError(f"there is no {what} '{name}'.", do=near(name, found))
    return found[name]
