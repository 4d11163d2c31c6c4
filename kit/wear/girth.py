"""How far round a garment is at a height: every worn piece cut across there, darts and tucks shut, what lies over
another layer taken off.

Edges are taken as polygons within 0.2 mm; a cut is where a level line crosses them.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property
from itertools import pairwise
from typing import NamedTuple

from kit.geometry import Point
from kit.lesson.pattern import Pattern
from kit.piece.dart import darts_lying, legs, mouth_path
from kit.piece.double_dart import double_darts
from kit.piece.piece import Piece, Side
from kit.sewing.operations.zips import Zip
from kit.sewing.order import operations
from kit.sewing.state import State
from kit.wear.edges import GarmentLoops, Loop
from kit.wear.levels import HungLevels, Level, body_heights, hung
from kit.wear.shell import TRIMS

_TOL = 0.2
_BESIDE = 0.05  # mm off a level edge that a cut is taken
_LOWER = 2.0  # mm
_CENTRE = 1.0  # mm


class Across(NamedTuple):
    """A stretch of a piece at one height, from `low` to `high` in its x, and the edges it runs from and to."""

    low: float
    high: float
    low_edge: str
    high_edge: str


class GirthRound(NamedTuple):
    """The garment at one height: mm of cloth that go round the body once, mm in all with what lies double, and the mm
    that are double. `closed`: no gap is left in it."""

    girth: float
    cloth: float
    overlap: float
    closed: bool


@dataclass(frozen=True)
class Outlined:
    """A piece as polygons: its edges by name, and the parts its sewn darts and tucks take out."""

    edges: tuple[tuple[str, tuple[Point, ...]], ...]
    taken: tuple[tuple[Point, ...], ...]

    def across(self, y: float) -> list[Across]:
        """The stretches inside the outline at a height, from left to right."""
        met: list[tuple[float, str]] = []
        for name, points in self.edges:
            for a, b in pairwise(points):
                if (a.y > y) != (b.y > y):
                    met.append((a.x + (b.x - a.x) * (y - a.y) / (b.y - a.y), name))
        met.sort()
        return [Across(a, b, one, other) for (a, one), (b, other) in zip(met[::2], met[1::2], strict=False)]

    def shut(self, y: float, low: float, high: float) -> float:
        """mm between `low` and `high` that darts and tucks take out at a height."""
        total = 0.0
        for shape in self.taken:
            ends = []
            for a, b in zip(shape, (*shape[1:], shape[0]), strict=True):
                if (a.y > y) != (b.y > y):
                    ends.append(a.x + (b.x - a.x) * (y - a.y) / (b.y - a.y))
            ends.sort()
            for one, other in zip(ends[::2], ends[1::2], strict=False):
                total += max(0.0, min(other, high) - max(one, low))
        return total


def outlined(piece: Piece, state: State, side: Side) -> Outlined:
    """The piece with the darts and tucks of that half that are sewn."""
    edges = tuple((edge.name, tuple(edge.path.points(_TOL))) for edge in piece.edges)
    taken: list[tuple[Point, ...]] = []
    for dart in darts_lying(piece):
        if ("dart", piece.name, side, dart.name) in state.facts:
            one, _ = legs(piece, dart)
            taken.append((one.start, *mouth_path(piece, dart).points(_TOL)))
    for double in double_darts(piece):
        if any(fact[1:] == (piece.name, side, double.mark.name) for fact in state.facts):
            taken.append((double.top, double.one, double.bottom, double.other))
    for pleat in piece.pleats:
        if pleat.kind == "tuck" and ("pleated", piece.name, side, pleat.name) in state.facts:
            one, two = (line.between(0.0, min(pleat.sewn or line.length, line.length)) for line in pleat.lines)
            taken.append((one.start, one.end, two.end, two.start))
    return Outlined(edges, tuple(taken))


class Worn:
    """A sewn garment on its body: its loops, how it hangs, and how far round it is."""

    def __init__(self, pattern: Pattern, state: State) -> None:
        self.pattern, self.state, self.body = pattern, state, pattern.body
        self.edges = GarmentLoops(pattern, state)
        self._outlines: dict[tuple[str, Side], Outlined] = {}
        self._rounds: dict[float, GirthRound | None] = {}

    @property
    def gives(self) -> float:
        """What the cloth's stretch makes of a girth, as a factor."""
        return 1.0 + self.pattern.lesson.stretch

    @cached_property
    def hung(self) -> HungLevels | None:
        """How it hangs; None where nothing of it says where the body is."""
        return hung(self.pattern, self.edges.worn, self.edges.joints)

    @cached_property
    def heights(self) -> dict[Level, float]:
        """The height of each level above the waist: told by the garment's own lines, else by the body."""
        if self.hung is None:
            return {}
        return {**body_heights(self.body), **self.hung.told}

    @cached_property
    def torso(self) -> tuple[Piece, ...]:
        """The pieces round the trunk and the legs that hang on the body."""
        if self.hung is None:
            return ()
        return tuple(piece for piece in self.edges.worn if piece.name in self.hung.up)

    @cached_property
    def legs(self) -> bool:
        """Whether the garment has legs."""
        return any(edge.role in ("inseam", "crotch") for piece in self.torso for edge in piece.edges)

    @cached_property
    def crotch(self) -> float:
        """The height below which there are two legs, mm; far below where there are none."""
        lows = [
            self.up(piece, min(edge.path.start.y, edge.path.end.y))
            for piece in self.torso
            for edge in piece.edges
            if edge.role == "crotch"
        ]
        return max(lows, default=-1e9)

    @cached_property
    def underarm(self) -> float:
        """The height at which the armholes begin, mm; far above where there are none."""
        lows = [
            self.up(piece, min(point.y for point in edge.path.points(1.0)))
            for piece in self.torso
            for edge in piece.edges
            if edge.role == "armhole"
        ]
        return min(lows, default=1e9)

    @cached_property
    def span(self) -> tuple[float, float]:
        """The lowest and the highest point of the trunk and legs, mm above the waist."""
        ys = [self.up(piece, p.y) for piece in self.torso for edge in piece.edges for p in edge.path.points(1.0)]
        return (min(ys), max(ys)) if ys else (0.0, 0.0)

    @cached_property
    def side(self) -> tuple[str, str]:
        """(piece, edge) of a side seam, which a girth depends on; empty where none is known."""
        found = ((piece.name, edge.name) for piece in self.torso for edge in piece.edges if edge.role == "side")
        return next(found, ("", ""))

    @cached_property
    def zip_step(self) -> str:
        """The sewing step that sets in a zip along the trunk; empty where none does."""
        for record, operation in operations(self.pattern):
            if isinstance(operation, Zip) and any(piece.name == operation.over.piece for piece in self.torso):
                return str(record.key)
        return ""

    def up(self, piece: Piece, y: float) -> float:
        """A y of a piece as a height above the waist."""
        assert self.hung is not None
        return y + self.hung.up[piece.name]

    def outline(self, piece: Piece, side: Side) -> Outlined:
        key = (piece.name, side)
        if key not in self._outlines:
            self._outlines[key] = outlined(piece, self.state, side)
        return self._outlines[key]

    def round(self, height: float) -> GirthRound | None:
        """The garment at a height above the waist; None where no piece lies there, or what is cut there is no ring
        round the body, as at an armhole."""
        if height not in self._rounds:
            # Where a level meets a corner it is not told on which edge it ends: the cut is taken a little lower.
            found = self.cut(height)
            lower = self.cut(height - _LOWER) if found is None or not found.closed else None
            self._rounds[height] = lower if lower is not None and (found is None or lower.closed) else found
        return self._rounds[height]

    def cut(self, height: float) -> GirthRound | None:
        """The garment cut at exactly that height."""
        girth = cloth = overlap = 0.0
        ends: list[tuple[Piece, Side, str, float, bool]] = []
        for piece in self.torso:
            y = height - (self.hung.up[piece.name] if self.hung else 0.0)
            for side in piece.sides:
                outline = self.outline(piece, side)
                for each in outline.across(y) or outline.across(y - _BESIDE) or outline.across(y + _BESIDE):
                    kept = self._within(piece, each, y)
                    if kept is None:
                        return None
                    if kept.high <= kept.low:
                        continue
                    shut = outline.shut(y, kept.low, kept.high)
                    wide = kept.high - kept.low - shut
                    cloth += wide
                    double = self._double(piece, side, kept, y)
                    overlap += double
                    girth += wide - double
                    passes = piece.cut.mirrored and kept.low <= _CENTRE
                    ends += [(piece, side, kept.low_edge, y, passes), (piece, side, kept.high_edge, y, False)]
        if not cloth:
            return None
        return GirthRound(girth, cloth, overlap, self._is_closed(ends))

    def _within(self, piece: Piece, each: Across, y: float) -> Across | None:
        """What of a stretch goes round the trunk: a cut-on sleeve is left off at the underarm point; None where the cut
        runs into an armhole or a sleeve of which nothing is known."""
        for name in (each.low_edge, each.high_edge):
            role = piece.edge(name).role
            if role == "armhole" and y > min(p.y for p in piece.edge(name).path.points(1.0)) + 5.0:
                return None
        role = piece.edge(each.high_edge).role
        if role in ("underarm", "opening", "shoulder"):
            point = piece.point_of("underarm_point")
            if point is None or y > point.y + 1.0:
                return None
            # Cloth of the sleeve alone lies beyond the underarm point. A sleeve whose opening lies before it leaves the
            # body open there, as an armhole does.
            if each.high > point.x:
                return each._replace(high=point.x, high_edge="")
            return each if role == "underarm" else None
        return each

    def _double(self, piece: Piece, side: Side, each: Across, y: float) -> float:
        """mm by which a front passes the centre, where its own edge is free."""
        if not piece.cut.mirrored or each.low >= -_CENTRE or each.high <= 0:
            return 0.0
        return -each.low if self._is_free(piece, side, each.low_edge, y) else 0.0

    @cached_property
    def _free(self) -> dict[tuple[str, Side, str], list[tuple[float, float]]]:
        """By edge the heights in y between which it is left, or finished by a band."""
        found: dict[tuple[str, Side, str], list[tuple[float, float]]] = {}
        for loop in self.edges.open:
            for stretch in loop.stretches if not self.is_slot(loop) else ():
                if not stretch.zip and not stretch.slit:
                    part = self.pattern.piece(stretch.piece).edge(stretch.edge).path
                    ys = [p.y for p in part.between(stretch.start, stretch.end).points(_TOL)]
                    found.setdefault((stretch.piece, stretch.side, stretch.edge), []).append((min(ys), max(ys)))
        for joint in self.edges.joints:
            for row, other in ((joint.a, joint.b), (joint.b, joint.a)):
                if self.pattern.piece(other[0].piece).role in TRIMS:
                    for run in row:
                        for edge in run.edges if run.side else ():
                            assert run.side is not None
                            found.setdefault((run.piece, run.side, edge), []).append((-1e9, 1e9))
        return found

    def is_slot(self, loop: Loop) -> bool:
        """Whether a loop is an opening left inside a seam, as for a tie."""
        return all(
            not stretch.slit
            and stretch.start > 0.5
            and stretch.end < self.pattern.piece(stretch.piece).edge(stretch.edge).path.length - 0.5
            for stretch in loop.stretches
        )

    def _is_free(self, piece: Piece, side: Side, edge: str, y: float) -> bool:
        """Whether an edge is left at that y, or is finished there by a band that is no seam of the garment's own."""
        return any(low - _TOL <= y <= high + _TOL for low, high in self._free.get((piece.name, side, edge), ()))

    def _is_closed(self, ends: list[tuple[Piece, Side, str, float, bool]]) -> bool:
        """Whether the cut ends (on an edge, at a y; True: begins at the centre or beyond it) all meet another: in a
        seam, on the fold, or one front over the other. Below a hem that rises there is nothing to meet, nor where the
        front has passed the centre; the front edge of a wrap, though, may be turned like a hem."""
        if any(edge and piece.edge(edge).role == "hem" and not passes for piece, _, edge, _, passes in ends):
            return False
        return all(
            passes or edge in ("", piece.fold) or not self._is_free(piece, side, edge, y)
            for piece, side, edge, y, passes in ends
        )
