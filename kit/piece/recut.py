"""One piece of two drafts: cloth that was cut from the first and is sewn by the second from now on.

For every edge that both drafts have: where its new stitch line runs against the old one, how much cloth was cut outside
the new line, and how much the new cut line wants there. All of it is measured at places along the new edge, square to
the old line (what moved) or to the new one (the cloth), in mm. Edges are matched by name, then by role where only one
of either piece has it; their ends are told by the edges they meet.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, replace
from functools import cached_property
from typing import Literal

from kit.errors import KitError
from kit.geometry import Motion, Path, Point, Region, Vector
from kit.piece.allowance import cut_line, has_allowances
from kit.piece.darts_and_pleats import Dart, Pleat
from kit.piece.moved import moved_piece
from kit.piece.offset import inside_left
from kit.piece.piece import Edge, Mark, Piece

TOLD = 0.8
"""mm that a line may move before it is told: a ruler marked in sixteenths of an inch shows no less."""
ALIKE = 1.0
"""Distances that differ by no more (mm) are told as one."""
SLACK = 0.5
"""mm by which cloth may be too narrow before it is told."""
_STEPS = 32
_CARRIED = 500.0
_NOTHING = 0.04
_ENOUGH = 0.25
"""A draft that shares so much of its outline with the other is laid where it was drawn."""

Shape = Literal["all_along", "to_nothing", "unequal", "middle", "crossing"]


@dataclass(frozen=True)
class CutStation:
    """A place `along` the new edge (mm from its start): how far `off` the old line it lies (above zero outside it), the
    cloth `left` outside it (below zero: the line lies beyond the cut edge) and what the new cut line needs (`need`);
    both None where no cut line can be drawn."""

    along: float
    off: float
    left: float | None
    need: float | None

    @property
    def short(self) -> float:
        """mm of cloth that lack for the new allowance; 0 or less where it suffices."""
        return 0.0 if self.left is None or self.need is None else self.need - self.left


@dataclass(frozen=True)
class EdgeChange:
    """An edge of both drafts, its `old` line and its `new` one (laid where the cloth lies), `was` its name in the first
    draft, `before` and `after` the edges it meets at start and end in the second."""

    edge: str
    was: str
    old: Path
    new: Path
    stations: tuple[CutStation, ...]
    before: str
    after: str

    @property
    def moved(self) -> bool:
        """Whether its stitch line runs elsewhere; an edge that only became longer or shorter has not moved."""
        return any(abs(at.off) > TOLD for at in self.stations)

    @cached_property
    def outward(self) -> CutStation:
        """Where the new line lies farthest outside the old one."""
        return max(self.stations, key=lambda at: at.off)

    @cached_property
    def inward(self) -> CutStation:
        """Where the new line lies farthest inside the old one."""
        return min(self.stations, key=lambda at: at.off)

    @cached_property
    def most(self) -> CutStation:
        """Where it moved most."""
        return max(self.stations, key=lambda at: abs(at.off))

    @property
    def start(self) -> CutStation:
        return self.stations[0]

    @property
    def end(self) -> CutStation:
        return self.stations[-1]

    @property
    def shape(self) -> Shape:
        """How the distance runs along the edge."""
        if self.outward.off > TOLD and self.inward.off < -TOLD:
            return "crossing"
        low, high = sorted((abs(self.start.off), abs(self.end.off)))
        if abs(self.most.off) > high * 1.1 + SLACK:
            return "middle"
        if low <= TOLD:
            return "to_nothing"
        return "all_along" if high - low <= ALIKE else "unequal"

    @property
    def parts_at(self) -> tuple[float, float]:
        """From where to where (mm along the new edge) the two lines part. A straight taper parts all along, however
        small it is: what counts as nothing is a share of the most."""
        nothing = min(TOLD, abs(self.most.off) * _NOTHING)
        off = [at.along for at in self.stations if abs(at.off) > nothing]
        step = self.new.length / _STEPS
        low, high = off[0] - step, off[-1] + step
        return (max(0.0, low), min(self.new.length, high))

    @cached_property
    def shortest(self) -> CutStation | None:
        """Where most cloth lacks; None where it suffices all along."""
        most = max(at.short for at in self.stations)
        worst = next(at for at in self.stations if at.short >= most - 1e-9)  # the first, whatever the last bit says
        return worst if worst.short > SLACK else None

    @property
    def spare(self) -> float:
        """mm of cloth outside the new cut line, where there is most of it."""
        return max((-at.short for at in self.stations), default=0.0)

    def place(self, at: CutStation) -> Point:
        return self.new.at(at.along)

    def foot(self, at: CutStation) -> Point:
        """The place of the old line that a place of the new one is measured from."""
        line = _carried(self.old)
        return line.at(line.nearest(self.place(at)))


@dataclass(frozen=True)
class PieceChange:
    """A piece of both drafts that is not the same in them. `now` is laid where the cloth lies; `edges` are those of
    both; `marks` those that lie elsewhere; `folds` darts and pleats that do; `only` edges that one draft has alone."""

    was: Piece
    now: Piece
    edges: tuple[EdgeChange, ...]
    marks: tuple[str, ...] = ()
    folds: tuple[str, ...] = ()
    only: tuple[str, ...] = ()

    @property
    def moved(self) -> tuple[EdgeChange, ...]:
        """The edges whose line runs elsewhere."""
        return tuple(edge for edge in self.edges if edge.moved)

    def edge(self, name: str) -> EdgeChange | None:
        return next((edge for edge in self.edges if edge.edge == name), None)


def piece_change(was: Piece, now: Piece, cut_back: Mapping[str, float] | None = None) -> PieceChange | None:
    """What differs between two drafts of a piece; None where nothing does. `cut_back`: edges whose allowance has been
    trimmed since (name in the first draft -> mm that are left of it)."""
    now = _laid(was, now)
    names = matched(was, now)
    cut, needed = _cloth(was, cut_back or {}), _cloth(without_extra(now), {})
    cloth, wanted = (None, None) if cut is None or needed is None else (cut, needed)
    changes = tuple(_edges(was, now, names, cloth, wanted, cut_back or {}))
    only = tuple(edge.name for edge in was.edges if edge.name not in names.values())
    only += tuple(edge.name for edge in now.edges if edge.name not in names)
    marks = tuple(mark.name for mark in now.marks if _mark_moved(was, now, mark.name))
    names_of = [*(dart.name for dart in now.darts), *(pleat.name for pleat in now.pleats)]
    folds = tuple(name for name in names_of if _fold_moved(was, now, name))
    found = PieceChange(was, now, changes, marks, folds, only)
    ends = any(was.edge(old).path.end.distance(now.edge(new).path.end) > TOLD for new, old in names.items())
    return found if found.moved or ends or marks or folds or only else None


def matched(was: Piece, now: Piece) -> dict[str, str]:
    """The edges of both drafts: name in the second -> name in the first. By name, then by role where one edge of either
    piece that is left has it; the fold is the fold."""
    found = {edge.name: edge.name for edge in now.edges if was.has_edge(edge.name)}
    left = [edge for edge in was.edges if edge.name not in found.values()]
    for edge in now.edges:
        if edge.name in found or not edge.role:
            continue
        alike = [old for old in left if old.role == edge.role]
        rivals = [new for new in now.edges if new.name not in found and new.role == edge.role]
        if len(alike) == 1 and len(rivals) == 1:
            found[edge.name] = alike[0].name
    return found


# ---- laying the new draft on the cloth ----------------------------------------------------------------------


def _laid(was: Piece, now: Piece) -> Piece:
    """The second draft laid on the cloth: in its own place, or, where next to none of its lines would lie on an old one
    (it was begun elsewhere on the paper), moved so that most of them do, a fold on the fold. It is never turned: the
    grain stays."""
    best, motion = _in_common(was, now, Vector(0.0, 0.0)), Vector(0.0, 0.0)
    if best > _ENOUGH * now.outline.perimeter:
        return now
    steps: list[Vector] = []
    for new, old in matched(was, now).items():
        one, two = was.edge(old).path, now.edge(new).path
        steps += [one.start - two.start, one.end - two.end]
    for step in steps:
        common = _in_common(was, now, step)
        if common > best + 1.0 and _fold_on_fold(was, now, step):
            best, motion = common, step
    return now if motion.length == 0 else moved_piece(now, Motion.translation(motion))


def _fold_on_fold(was: Piece, now: Piece, step: Vector) -> bool:
    if not was.fold or not now.fold or not was.has_edge(was.fold) or not now.has_edge(now.fold):
        return True
    line, path = _carried(was.edge(was.fold).path), now.edge(now.fold).path
    return all(line.distance_to(end + step) < SLACK for end in (path.start, path.end))


def _in_common(was: Piece, now: Piece, step: Vector) -> float:
    """mm of the second draft's edges that lie on those of the first, with one end at least, when it is moved by `step`:
    level lines lie on one another however far aside a piece is drawn."""
    found = 0.0
    for new, old in matched(was, now).items():
        one, path = was.edge(old).path, now.edge(new).path
        if one == path and step.length == 0:
            found += path.length
            continue
        if min(one.start.distance(path.start + step), one.end.distance(path.end + step)) > SLACK:
            continue
        line = _carried(one)
        places = (path.at(path.length * i / 8) + step for i in range(9))
        if all(line.distance_to(place) < SLACK for place in places):
            found += path.length
    return found


# ---- edges --------------------------------------------------------------------------------------------------


def _carried(path: Path) -> Path:
    return path.extended(_CARRIED, "start").extended(_CARRIED, "end")


def _edges(
    was: Piece,
    now: Piece,
    names: Mapping[str, str],
    cloth: Region | None,
    wanted: Region | None,
    cut_back: Mapping[str, float],
) -> Iterator[EdgeChange]:
    out_was, out_now = -inside_left(was), -inside_left(now)
    count = len(now.edges)
    for index, edge in enumerate(now.edges):
        if edge.name not in names or edge.name == now.fold:
            continue
        first = was.edge(names[edge.name])
        old, new = first.path, edge.path
        line = _carried(old)
        # An edge that is as it was, line and allowance, has the cloth it had: looking would cost most of the time.
        same = old == new and (first.allowance, first.extra) == (edge.allowance, edge.extra)
        stations = []
        for step in (0, _STEPS // 2, _STEPS) if same else range(_STEPS + 1):
            along = new.length * step / _STEPS
            place = new.at(along)
            off = 0.0 if old == new else _off(line, place, out_was)
            outward = new.normal_at(along) * out_now
            left, need = (None if each is None or same else each.beyond(place, outward) for each in (cloth, wanted))
            if off <= SLACK and names[edge.name] in cut_back:
                need = None  # what was trimmed there was sewn with what is left
            stations.append(CutStation(along, off, left, need))
        before, after = now.edges[index - 1].name, now.edges[(index + 1) % count].name
        yield EdgeChange(edge.name, names[edge.name], old, new, tuple(stations), before, after)


def _off(line: Path, place: Point, outward: float) -> float:
    """How far a place lies off a line, above zero on its outer side. On a bend the nearest place of the line is not
    quite square to it: the distance counts, the normal says its side."""
    at = line.nearest(place)
    step = place - line.at(at)
    return step.length if step.dot(line.normal_at(at) * outward) >= 0 else -step.length


def _mark_moved(was: Piece, now: Piece, name: str) -> bool:
    two = next(mark for mark in now.marks if mark.name == name)
    one = next((mark for mark in was.marks if mark.name == name), None)
    if one is None:
        return True
    places = [(_spot(was, one), _spot(now, two))]
    if one.path is not None and two.path is not None:
        places.append((one.path.end, two.path.end))
    return any(a is not None and b is not None and a.distance(b) > TOLD for a, b in places)


def _spot(piece: Piece, mark: Mark) -> Point | None:
    if mark.point is not None:
        return mark.point
    if mark.path is not None:
        return mark.path.start
    return piece.edge(mark.edge).path.at(mark.start) if mark.edge else None


def _fold_moved(was: Piece, now: Piece, name: str) -> bool:
    def found(piece: Piece) -> list[Point]:
        spots = [d.apex for d in piece.darts if d.name == name]
        folds: tuple[Dart | Pleat, ...] = (*piece.darts, *piece.pleats)
        for fold in folds:
            if fold.name == name and piece.has_edge(fold.edge):
                path = piece.edge(fold.edge).path
                spots += [path.at(fold.start), path.at(fold.end)]
        return spots

    one, two = found(was), found(now)
    return len(one) != len(two) or any(a.distance(b) > TOLD for a, b in zip(one, two, strict=True))


# ---- cloth --------------------------------------------------------------------------------------------------


def without_extra(piece: Piece) -> Piece:
    """The piece without its extra cloth to fit with."""
    return replace(piece, edges=tuple(replace(edge, extra=0.0) if edge.extra else edge for edge in piece.edges))


def _cloth(piece: Piece, cut_back: Mapping[str, float]) -> Region | None:
    """The cloth as it was cut, and cut back since; None where its allowances are missing or cannot be drawn."""
    if not has_allowances(piece):
        return None

    def back(edge: Edge) -> Edge:
        left = cut_back.get(edge.name)
        whole = (edge.allowance or 0.0) + edge.extra
        return edge if left is None or left >= whole else replace(edge, allowance=left, extra=0.0)

    try:
        return cut_line(replace(piece, edges=tuple(map(back, piece.edges)))).region()
    except KitError:
        return None


@dataclass(frozen=True)
class Areas:
    """Cloth after a try-on: as it was `cut`, as it is `wanted` now, what of it is `kept`, what is trimmed `off`, and
    what it would `lack` for the new draft."""

    cut: Region
    wanted: Region
    kept: Region
    off: Region
    lack: Region


def areas(change: PieceChange, cut_back: Mapping[str, float] | None = None) -> Areas | None:
    """The areas of a piece of both drafts, `SLACK` left out of account; None where a cut line cannot be drawn."""
    cloth, wanted = _cloth(change.was, cut_back or {}), _cloth(without_extra(change.now), {})
    if cloth is None or wanted is None:
        return None
    kept, off = cloth.parted(wanted, SLACK)
    return Areas(cloth, wanted, kept, off, wanted.parted(cloth, SLACK)[1])
