"""The bench: pieces as they lie open to change while a step is being drafted.

A `BenchPiece` is made from a frozen `Piece`, changed by one step, and frozen again. A new edge says what it
replaces; an unknown name on the left of an assignment is refused with the near one.
"""

from __future__ import annotations

from dataclasses import replace
from typing import Any, cast, get_args

from kit.errors import KitError, near
from kit.geometry import Line, Path, Point
from kit.lesson.corner_verbs import CornerVerbs
from kit.lesson.corners import in_order, meeting
from kit.lesson.face_verbs import FaceVerbs
from kit.lesson.mark_verbs import MarkVerbs
from kit.lesson.match_verbs import MatchVerbs
from kit.lesson.pattern import Spot
from kit.lesson.pencil import FAR, PaperLine, PaperPoint, distance, heading
from kit.lesson.place_verbs import PlaceVerbs
from kit.lesson.pleat_verbs import PleatVerbs
from kit.lesson.role_verbs import RoleVerbs, landed
from kit.lesson.roles import drawn, said_as, titled
from kit.lesson.true_verbs import TrueVerbs
from kit.lesson.verbs import MoveVerbs
from kit.piece.piece import Cloth, CutPlan, Edge, Grain, GrainKind, Piece
from kit.piece.role import EdgeRole, landmark
from kit.units import Length, length

CLOTHS: tuple[str, ...] = get_args(Cloth)
GRAINS: tuple[str, ...] = get_args(GrainKind)


class BenchPiece(
    MoveVerbs, PleatVerbs, MarkVerbs, MatchVerbs, PlaceVerbs, TrueVerbs, FaceVerbs, CornerVerbs, RoleVerbs
):
    """One piece on the bench. Attributes are its edges, guides (construction lines) and points."""

    _own = frozenset({"piece_name", "_edges", "_points", "_guides", "_state", "_spots", "_drawn", "_before", "_said"})

    def __init__(self, piece: Piece) -> None:
        self.piece_name = piece.name
        self._before = piece
        self._state = piece
        self._edges: dict[str, Edge] = {edge.name: edge for edge in piece.edges}
        self._points: dict[str, Point] = dict(piece.points)
        self._guides: dict[str, Path] = dict(piece.guides)
        self._spots: list[Spot] = []
        self._drawn: set[str] = set()

    # ---- names ----------------------------------------------------------------------------------------

    def __getattr__(self, name: str) -> Any:
        if name.startswith("_"):
            raise AttributeError(name)
        if name in self._edges:
            return PaperLine(self, self._edges[name].path, name)
        if name in self._guides:
            return PaperLine(self, self._guides[name], name)
        if name in self._points:
            return PaperPoint(self, self._points[name])
        raise KitError(f"there is no edge, line or point '{name}'.", where=self._where, do=near(name, self._names()))

    def __setattr__(self, name: str, value: Any) -> None:
        if name in self._own:
            object.__setattr__(self, name, value)
        elif name in self._edges and isinstance(value, PaperLine):
            self._edges[name] = replace(self._edges[name], path=value.path)
            self._drawn.add(name)
        elif name in self._guides and isinstance(value, PaperLine):
            self._guides[name] = value.path
            self._drawn.add(name)
        elif name in self._points and isinstance(value, PaperPoint):
            self._points[name] = value.point
            self._drawn.add(name)
        elif name in self._names():
            raise KitError(
                f"'{name}' was given {type(value).__name__}, which is not the same kind of thing.",
                where=self._where,
                do="Give an edge a line and a point a point.",
            )
        else:
            raise KitError(
                f"there is no edge, line or point '{name}' to change.",
                where=self._where,
                do=f"{near(name, self._names())} To add a new edge say what it replaces: "
                f"{self.piece_name}.draw({name}=..., instead_of=...). "
                f"To mark a point: {self.piece_name}.mark({name}=...).",
            )

    def _names(self) -> list[str]:
        return [*self._edges, *self._guides, *self._points]

    def _free(self, name: str) -> None:
        if hasattr(type(self), name) or name in self._own:
            raise KitError(
                f"'{name}' is a word of the bench and cannot name a line or point.",
                where=self._where,
                do="Choose another name.",
            )

    @property
    def _where(self) -> str:
        return self._state.title or self.piece_name

    # ---- drawing --------------------------------------------------------------------------------------

    def draw(
        self,
        *,
        instead_of: str | PaperLine | tuple[str | PaperLine, ...] = (),
        after: str | PaperLine = "",
        **lines: PaperLine,
    ) -> None:
        """Draw new edges, in order around the piece: `instead_of` one or several neighbouring old ones, or
        `after` one that stays. A new edge has the role of what it stands instead of, unless its name says another."""
        old = [self._edge_name(item) for item in (instead_of if isinstance(instead_of, tuple) else (instead_of,))]
        order = list(self._edges)
        if not self._edges and not old and not after:
            self._first(lines)
            return
        if (after and old) or (not after and not old):
            raise KitError(
                f"it is not said what {', '.join(lines) or 'the new edge'} stands instead of.",
                where=self._where,
                do="Say instead_of=... for the edge it replaces, or after=... for the edge it follows.",
            )
        if old and order.index(old[0]) + len(old) > len(order):
            at = order.index(old[0])  # the run goes on past the last edge: begin the outline with it
            order = [*order[at:], *order[:at]]
        at = order.index(old[0]) if old else order.index(self._edge_name(after)) + 1
        for name in old[1:]:
            if name not in order[at : at + len(old)]:
                raise KitError(f"'{name}' does not lie next to '{old[0]}'.", where=self._where)
        for name, line in lines.items():
            self._free(name)
            if not isinstance(line, PaperLine):
                raise KitError(f"'{name}' must be a line.", where=self._where, do="For a point use mark().")
            if (name in self._edges and name not in old) or name in self._guides or name in self._points:
                raise KitError(f"'{name}' is already drawn.", where=self._where, do="Choose another name.")
        before = self._edges[order[at - 1]].path if len(order) > len(old) else None
        following = order[(at + len(old)) % len(order)]
        after_path = self._edges[following].path if following not in old else None
        entries = [(name, self._edges[name]) for name in order if name not in old]
        at = min(at, len(entries))
        new: list[tuple[str, Edge]] = []
        made = drawn({name: line.path for name, line in lines.items()}, [self._edges[name] for name in old])
        for name, path in in_order([(n, line.path) for n, line in lines.items()], before, after_path):
            new.append((name, replace(made[name], path=path)))
            self._drawn.add(name)
        self._edges = dict(entries[:at] + new + entries[at:])

    def _first(self, lines: dict[str, PaperLine]) -> None:
        """The first edges on fresh paper, turned to follow one another."""
        for name in lines:
            self._free(name)
        for name, path in in_order([(name, line.path) for name, line in lines.items()], None, None):
            self._edges[name] = Edge(name, path)
            self._drawn.add(name)

    def place(self, out: object, up: object) -> PaperPoint:
        """A point measured from the corner of the paper (the centre line and the waistline of a block): this
        far out to the side and this far up."""
        across, above = length(out, f"{self._where}, out"), length(up, f"{self._where}, up")
        return PaperPoint(self, Point(float(across), float(above)))

    def mark(self, **points: PaperPoint) -> None:
        """Mark and name points."""
        for name, point in points.items():
            self._free(name)
            if name in self._edges or name in self._guides:
                raise KitError(f"'{name}' is already a line.", where=self._where, do="Choose another name.")
            self._points[name] = point.point
            self._state = landed(self._state, name, landmark(name))
            self._drawn.add(name)

    def guide(self, **lines: PaperLine) -> None:
        """Draw and name construction lines, which are not part of the outline."""
        for name, line in lines.items():
            self._free(name)
            if name in self._edges or name in self._points:
                raise KitError(f"'{name}' is already used.", where=self._where, do="Choose another name.")
            self._guides[name] = line.path
            self._state = landed(self._state, name, landmark(name))
            self._drawn.add(name)

    def join(self, first: str | PaperLine, second: str | PaperLine) -> None:
        """Trim or carry on two neighbouring edges so that the first ends, and the second begins, where they
        meet."""
        a, b = self._edge_name(first), self._edge_name(second)
        order = list(self._edges)
        if order[(order.index(a) + 1) % len(order)] != b:
            a, b = b, a
            if order[(order.index(a) + 1) % len(order)] != b:
                raise KitError(f"'{a}' and '{b}' are not neighbours on the outline.", where=self._where)
        one, two = meeting(self._edges[a].path, self._edges[b].path, (a, b), self._where)
        self._edges[a] = replace(self._edges[a], path=one)
        self._edges[b] = replace(self._edges[b], path=two)

    def trace(self, other: BenchPiece) -> None:
        """Trace another piece's outline, points and guides onto this one, in place of its own."""
        self._edges = {name: replace(edge, allowance=None) for name, edge in other._edges.items()}
        self._points = dict(other._points)
        self._guides = dict(other._guides)
        self._state = replace(
            self._state, darts=other._state.darts, pleats=other._state.pleats, landmarks=other._state.landmarks
        )
        self._drawn.update(self._edges)

    def mirror(self, axis: str | PaperLine, prefix: str = "far_") -> None:
        """Fold the paper along a straight edge and trace the other half as guide lines, named with `prefix`
        (far_side, far_hem, ...)."""
        name = self._edge_name(axis)
        path = self._edges[name].path
        if not path.is_straight:
            raise KitError(f"the paper folds only along a straight line; '{name}' is curved.", where=self._where)
        line = Line(path.start, path.end)
        for other, edge in self._edges.items():
            if other != name:
                self._guides[prefix + other] = edge.path.mirrored(line)
        for guide, guide_path in list(self._guides.items()):
            if not guide.startswith(prefix):
                self._guides[prefix + guide] = guide_path.mirrored(line)

    def measure(self, **between: tuple[PaperPoint, PaperPoint] | PaperLine) -> None:
        """Write down measures by name: two points, or a line whose length it is. They can stand in the text
        as {name} and are dimensioned in the picture."""
        for name, what in between.items():
            if isinstance(what, PaperLine):
                path = what.path
                self._spot(name, path.length, path.start, path.end, None if path.is_straight else path)
            else:
                a, b = what[0].point, what[1].point
                self._spot(name, a.distance(b), a, b, None)

    def note(self, value: Length, start: Point, end: Point, along: Path | None = None) -> None:
        """Write down a named measure for the picture (verbs call this)."""
        if value.name and value > 1e-6:
            self._spot(value.name, float(value), start, end, along)

    def _spot(self, name: str, value: float, start: Point, end: Point, along: Path | None, edge: str = "") -> None:
        self._spots.append(Spot(name, value, self.piece_name, start, end, along, edge=edge, allowance=bool(edge)))

    def inside_is_left(self) -> bool:
        """Whether the cloth lies to the left when the outline is walked in edge order."""
        points = [p for e in self._edges.values() for c in e.path.curves for p in (c.start, c.point(0.5))]
        area = sum(p.x * q.y - q.x * p.y for p, q in zip(points, [*points[1:], *points[:1]], strict=True))
        return area > 0

    def _edge_name(self, item: str | PaperLine) -> str:
        name = item.name if isinstance(item, PaperLine) else item
        if name not in self._edges:
            raise KitError(
                f"there is no edge '{name or 'without a name'}'.", where=self._where, do=near(name, self._edges)
            )
        return name

    def _edge_or(self, item: str | PaperLine, role: EdgeRole) -> str:
        """The edge named or, where none is, the one of that `role`; of several the one that bears the role's name."""
        if item:
            return self._edge_name(item)
        found = [name for name, edge in self._edges.items() if edge.role == role]
        if len(found) != 1 and role not in found:
            raise KitError(
                f"{', '.join(found)} are each a {role}." if found else f"no edge is known to be the {role}.",
                where=self._where,
                do="Name the edge that is meant"
                + ("." if found else f", or say which it is: {self.piece_name}.role(NAME_OF_EDGE={role!r})."),
            )
        return role if role in found else found[0]

    # ---- making up the piece --------------------------------------------------------------------------

    def allow(self, **allowances: object) -> None:
        """Give edges their seam or hem allowance."""
        way = -1.0 if self.inside_is_left() else 1.0
        for name, value in allowances.items():
            edge = self._edges[self._edge_name(name)]
            size = distance(value, f"{self._where}, allowance on {name}")
            self._edges[name] = replace(edge, allowance=float(size))
            middle = edge.path.length / 2
            outward = edge.path.normal_at(middle) * way
            at = edge.path.at(middle)
            if size > 0:
                self._spot(f"{name}_allowance", float(size), at, at + outward * float(size), None, name)

    def say(self, **names: str) -> None:
        """How people say the names of edges."""
        for name, said in names.items():
            self._edges[self._edge_name(name)] = said_as(self._edges[name], said)

    def cut(
        self,
        count: int = 1,
        *,
        mirrored: bool = False,
        fold: str = "",
        interfacing: int = 0,
        title: str = "",
        number: int | None = None,
        right_side_up: bool = False,
        cloth: str = "",
    ) -> None:
        """How many to cut: a mirrored pair, one with an edge on the fold, or single; `right_side_up` when it is cut
        with the right sides of cloth and pattern up, because its mirror image would not fit. `cloth` is "main",
        "lining" or "interfacing" (when nothing is said, what it was derived for)."""
        if right_side_up and (mirrored or fold):
            raise KitError(
                f"a piece cut {'as a mirrored pair' if mirrored else 'on the fold'} has no single right side up.",
                where=self._where,
                do="Leave right_side_up out, or cut it single.",
            )
        if cloth and cloth not in CLOTHS:
            raise KitError(f"'{cloth}' is not a cloth of the pattern.", where=self._where, do=near(cloth, CLOTHS))
        if count < 1:
            raise KitError(f"{count} cannot be cut.", where=self._where, do="Cut at least one.")
        if cloth == "interfacing" and interfacing:
            raise KitError(
                "a piece of interfacing is not interfaced itself.", where=self._where, do="Leave interfacing=... out."
            )
        if mirrored and fold:
            raise KitError("a piece is cut as a mirrored pair or on the fold, not both.", where=self._where)
        if mirrored and count % 2:
            raise KitError(f"a mirrored pair is cut in even numbers, not {count}.", where=self._where)
        if fold:
            edge = self._edges[self._edge_name(fold)]
            if not edge.path.is_straight:
                raise KitError(f"cloth folds straight; '{fold}' is curved.", where=self._where)
            self._edges[fold] = replace(edge, allowance=0.0)
        stuff = cast("Cloth", cloth) if cloth else self._state.cut.cloth
        plan = CutPlan(count, mirrored, fold, stuff, interfacing, right_side_up)
        self._state = replace(
            titled(self._state, title) if title else self._state,
            cut=plan,
            number=self._state.number if number is None else number,
        )

    def grain(
        self,
        along: PaperLine | str | None = None,
        at: PaperPoint | None = None,
        kind: str = "lengthwise",
        one_way: bool = False,
    ) -> None:
        """Draw the grainline, straight up the paper, in a direction of the paper or parallel to a straight line, `at` a
        point or in the middle. `kind` is what of the cloth it is laid along: its "lengthwise" or "crosswise" grain, or
        the "bias" at 45 degrees to both. `one_way`: the piece has a top that must not be turned round."""
        if kind not in GRAINS:
            raise KitError(f"'{kind}' is not a grain of the cloth.", where=self._where, do=near(kind, GRAINS))
        if isinstance(along, PaperLine):
            if not along.path.is_straight:
                raise KitError(
                    f"a grainline is straight; the {along.said} is curved.",
                    where=self._where,
                    do='Name a straight line, or a direction: along="up".',
                )
            direction = (along.path.end - along.path.start).unit()
            if direction.y < -1e-9:  # its top is the upper end as drafted
                direction = direction * -1.0
        elif isinstance(along, str) and along in self._edges:
            self.grain(PaperLine(self, self._edges[along].path, along), at, kind, one_way)
            return
        else:
            direction = heading("up" if along is None else along)
        if not self._edges:
            raise KitError(
                "nothing is drawn on it yet.", where=self._where, do="Draw its outline before its grainline."
            )
        centre = self.freeze().outline.label_point() if at is None else at.point
        ray = Path.of(Line(centre - direction * FAR, centre + direction * FAR))
        hits = [p for e in self._edges.values() for p in ray.crossings(e.path)]
        above = min((p for p in hits if (p - centre).dot(direction) > 0), key=centre.distance, default=centre)
        below = min((p for p in hits if (p - centre).dot(direction) < 0), key=centre.distance, default=centre)
        if above.distance(below) < 1e-6:
            raise KitError("the grainline would lie outside the piece.", where=self._where, do="Put it inside: at=....")
        grain = Grain(below.lerp(above, 0.12), below.lerp(above, 0.88), cast("GrainKind", kind), one_way)
        self._state = replace(self._state, grain=grain)

    # ---- the end of the step --------------------------------------------------------------------------

    def freeze(self) -> Piece:
        """The piece as an immutable value."""
        return replace(
            self._state,
            edges=tuple(self._edges.values()),
            points=tuple(self._points.items()),
            guides=tuple(self._guides.items()),
            darts=tuple(dart for dart in self._state.darts if dart.edge in self._edges),
            pleats=tuple(p for p in self._state.pleats if p.edge in self._edges and (p.far or p.edge) in self._edges),
        )

    def __repr__(self) -> str:
        return f"<{self._where}: {', '.join(self._edges)}>"
