"""A traced top: a garment that fits, laid flat and traced, as the starting point instead of a block."""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from itertools import pairwise
from typing import cast

from kit.blocks.block import refuse_verbs
from kit.blocks.traced_levels import POINTS, with_block_lines
from kit.body.body import Body
from kit.diagnostic import Message, message
from kit.errors import KitError, near
from kit.geometry import Path, Point
from kit.piece.piece import CutPlan, Edge, Piece, landmarks_of
from kit.piece.role import EDGE_ROLES, LANDMARKS, PIECE_ROLES, EdgeRole, Landmark, PieceRole
from kit.units import Length, show_metric

Across = Sequence[float]
EdgeLine = Sequence[Across] | Path
Edges = Mapping[str, EdgeLine] | Sequence[tuple[str, EdgeLine]]

_UNITS = {"mm": 1.0, "cm": 10.0, "inch": 25.4}
_LARGEST = 3000.0
_GAP = 0.05

_LANDMARKS: dict[tuple[str, str], Landmark] = {
    ("neck", "shoulder"): "neck_point",
    ("shoulder", "armhole"): "shoulder_tip",
    ("armhole", "side"): "underarm_point",
}


@dataclass(frozen=True, repr=False)
class Traced:
    """A traced top, called like a block. `pieces` gives for each piece its edges in order around the outline,
    each with its points: two make a straight edge, more a smooth curve through them; or a ready `Path` in mm, as
    `kit.blocks.traced_file` reads it from a drawing (`messages` then tell what it did). The points are numbers in
    `unit` ("cm", "mm" or "inch") or lengths, x from the centre line to the side, y up from the waistline. Each
    edge starts where the one before ends. `size` says what it fits; `points` are further named points by piece.

    What a piece or an edge is follows from its name where that is a trade word of the kit's languages; `roles` says it
    for other names, of pieces, edges and points: roles={"forstykke": "front", "hals": "neck"}. The centre is cut on
    the fold where it is straight and its name says no more than that, or `roles` does.

    Corners between edges named as on the bodice block get the block's point names, others both edges' names. A front or
    back has the lines and points of a block too, as far as the roles of its edges tell them: `waist` (unless `waist` is
    False: the y of 0 is not the waistline), `bust_line`, `centre_waist`, `side_waist`, `neck_point`, `shoulder_tip`,
    `underarm_point`. `lines` are others by piece, such as lines={"front": {"hip_line": [(0, -20), (26, -20)]}}.
    What a step draws of a found line's name takes its place.

    Raises `KitError` at once for an outline that does not close or crosses itself, for unreadable points, for names
    that stand twice, and for those of verbs of the bench.

    >>> a, b, c, d = (0, 30), (8, 34), (24, 0), (0, 0)
    >>> edges = {"neck": [a, b], "side": [b, c], "hem": [c, d], "centre": [d, a]}
    >>> camisole = Traced("Camisole", {"front": edges})
    >>> camisole.drafted[0].role, camisole.drafted[0].fold
    ('front', 'centre')
    """

    title: str
    pieces: Mapping[str, Edges]
    unit: str = "cm"
    size: str = ""
    points: Mapping[str, Mapping[str, Across]] = field(default_factory=dict)
    messages: tuple[str, ...] = field(default=(), compare=False)
    roles: Mapping[str, str] = field(default_factory=dict)
    lines: Mapping[str, Mapping[str, EdgeLine]] = field(default_factory=dict)
    waist: bool = True
    drafted: tuple[Piece, ...] = field(init=False, compare=False)

    measures = ()

    def __post_init__(self) -> None:
        if self.unit not in _UNITS:
            raise KitError(
                f"the unit '{self.unit}' is not known.", where=self.title, do="Write unit='cm', 'mm' or 'inch'."
            )
        if not self.pieces:
            raise KitError("a traced top needs a piece.", where=self.title, do="Give the front's edges.")
        for name in (*self.points, *self.lines):
            if name not in self.pieces:
                raise KitError(f"there is no piece '{name}'.", where=self.title, do=near(name, self.pieces))
        self._check_roles()
        object.__setattr__(self, "drafted", tuple(self._piece(name, edges) for name, edges in self.pieces.items()))

    def __call__(self, body: Body) -> tuple[Piece, ...]:
        """The traced pieces, the same for every body."""
        return self.drafted

    @property
    def note(self) -> str:
        """What readers must know: it fits one size."""
        return str(self.notes[0])

    @property
    def notes(self) -> tuple[str | Message, ...]:
        """The note, said when it is shown, and what was assumed, turned or closed when it was read from a drawing."""
        return (message("block_note.traced", title=self.title, size=self.size or "none"), *self.messages)

    def __repr__(self) -> str:
        held = (f"  {piece.name}: {', '.join(edge.name for edge in piece.edges)}" for piece in self.drafted)
        return "\n".join([self.title, *held, *(f"  {note}" for note in self.notes)])

    def _check_roles(self) -> None:
        edges = {edge for given in self.pieces.values() for edge in _names(given)}
        points = {key for given in (*self.points.values(), *self.lines.values()) for key in given}
        for name, role in self.roles.items():
            kinds = ((self.pieces, PIECE_ROLES), (edges, EDGE_ROLES), (points, LANDMARKS))
            known = [word for names, words in kinds if name in names for word in words]
            if not known:
                every = [*self.pieces, *edges, *points]
                raise KitError(f"there is no piece, edge or point '{name}'.", where=self.title, do=near(name, every))
            if role not in known:
                raise KitError(
                    f"{role!r} is not a role for '{name}'.",
                    where=self.title,
                    do=(near(role, known) if isinstance(role, str) else "") or f"Say one of: {', '.join(known)}.",
                )

    def _piece(self, name: str, edges: Edges) -> Piece:
        where = f"{self.title}, {name}"
        pairs = list(edges.items()) if isinstance(edges, Mapping) else list(edges)
        if len(pairs) < 2:
            raise KitError("an outline needs two edges or more.", where=where, do="Name each edge around the piece.")
        names = [edge for edge, _ in pairs]
        for edge in names:
            if names.count(edge) > 1:
                raise KitError(
                    f"two edges are called '{edge}'.", where=where, do="Give each edge of a piece a name of its own."
                )
            if not edge.isidentifier():
                raise KitError(
                    f"'{edge}' cannot be an edge's name.", where=where, do="Use letters and _, such as side_seam."
                )
        factor = _UNITS[self.unit]
        paths = [_path(spots, factor, f"{where}, {edge}") for edge, spots in pairs]
        _closes(names, paths, where)
        corners = [(_corner(names[i - 1], names[i]), paths[i].start) for i in range(len(names))]
        extra = [
            (key, _point(spot, factor, f"{where}, point {key}")) for key, spot in self.points.get(name, {}).items()
        ]
        taken = {key for key, _ in corners}
        for key, _ in extra:
            if key in taken:
                raise KitError(
                    f"the point '{key}' stands twice.", where=where, do="It is a corner already; leave it out."
                )
        guides = [
            (key, _path(spots, factor, f"{where}, line {key}")) for key, spots in self.lines.get(name, {}).items()
        ]
        for key, _ in guides:
            if key in taken or key in names or key in dict(extra):
                raise KitError(f"the line '{key}' has the name of something else.", where=where, do="Rename it.")
        made = tuple(
            Edge(edge, path, role=cast("EdgeRole | None", self.roles.get(edge)))
            for edge, path in zip(names, paths, strict=True)
        )
        # A piece lies on a fold only where its centre is beyond doubt: straight, and the one edge of that role. A
        # centre in two parts (centre_upper, centre_lower) would fold on one of them; such a piece is left for its
        # author to say.
        sure = [
            e.name
            for e in made
            if e.role == "centre" and e.path.is_straight and ("_" not in e.name or e.name in self.roles)
        ]
        piece = Piece(
            name,
            name.replace("_", " ").capitalize(),
            made,
            cut=CutPlan(fold=sure[0] if len(sure) == 1 else ""),
            points=(*corners, *extra),
            guides=tuple(guides),
            role=cast("PieceRole | None", self.roles.get(name)),
            landmarks=_landmarks(made, corners, [key for key, _ in (*extra, *guides)], self.roles),
        )
        refuse_verbs(piece, self.title)
        crossing = piece.outline.self_crossing()
        if crossing:
            first, second, at = crossing
            place = f"at {_place(at)}"
            raise KitError(
                f"the outline crosses itself {place}." if first == second else f"'{first}' crosses '{second}' {place}.",
                where=where,
                do="Check the points near there and their order.",
            )
        return with_block_lines(piece, self.waist)


def _names(edges: Edges) -> list[str]:
    return list(edges) if isinstance(edges, Mapping) else [name for name, _ in edges]


def _landmarks(
    edges: Sequence[Edge], corners: Sequence[tuple[str, Point]], extra: Sequence[str], roles: Mapping[str, str]
) -> tuple[tuple[str, Landmark], ...]:
    """Which points are the neck point and the like: corners by the edges that meet there, others by what is said."""
    found = {
        name: what
        for i, (name, _) in enumerate(corners)
        if (what := _LANDMARKS.get((edges[i - 1].role or "", edges[i].role or "")))
    }
    said = {key: cast("Landmark", roles[key]) for key in extra if key in roles}
    return (*landmarks_of(key for key in extra if key not in roles), *found.items(), *said.items())


def _corner(before: str, after: str) -> str:
    return POINTS.get((before, after), f"{before}_{after}")


def _place(point: Point) -> str:
    return f"x {show_metric(point.x)}, y {show_metric(point.y)}"


def _point(spot: Across, factor: float, where: str) -> Point:
    try:
        x, y = (float(value) if isinstance(value, Length) else float(value) * factor for value in spot)
    except (TypeError, ValueError):
        raise KitError(f"{spot!r} is not a point.", where=where, do="Write two numbers, such as (12.5, 41).") from None
    if not (math.isfinite(x) and math.isfinite(y)):
        raise KitError(f"{spot!r} is not a point.", where=where, do="Write two finite numbers.")
    if max(abs(x), abs(y)) > _LARGEST:
        raise KitError(
            f"the point {tuple(spot)} lies {show_metric(max(abs(x), abs(y)))} from the corner of the paper.",
            where=where,
            do="Check it, and that unit= says what the numbers are.",
        )
    return Point(x, y)


def _path(spots: EdgeLine, factor: float, where: str) -> Path:
    if isinstance(spots, Path):
        return spots
    points = [_point(spot, factor, where) for spot in spots]
    if len(points) < 2:
        raise KitError(f"{len(points)} point is not an edge.", where=where, do="Give two points or more.")
    for a, b in pairwise(points):
        if a.distance(b) < _GAP:
            raise KitError(f"the point at {_place(a)} stands twice in a row.", where=where, do="Take one out.")
    return Path.line(*points) if len(points) == 2 else Path.through(points)


def _closes(names: Sequence[str], paths: Sequence[Path], where: str) -> None:
    for i, path in enumerate(paths):
        gap = paths[i - 1].end.distance(path.start)
        if gap > _GAP:
            raise KitError(
                f"'{names[i - 1]}' ends at {_place(paths[i - 1].end)}, but '{names[i]}' starts at "
                f"{_place(path.start)}: a gap of {gap:.1f} mm.",
                where=where,
                do="Give both edges the same point there, and list the edges in order around the piece.",
            )
