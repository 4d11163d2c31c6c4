"""What can be dragged: for each parameter the place that moves most when the parameter does.

The lesson is worked once more with each parameter a little larger (or smaller, at the end of its range or where it
cannot be drafted), and the places of the draft are compared. The place where the step says it measures the parameter
is preferred, then a named point, then a place on an edge; an allowance moves only its cut line and is taken there.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass

from kit.errors import KitError
from kit.geometry import Point, Vector
from kit.lesson.lesson import Lesson
from kit.lesson.parameter import Parameter
from kit.lesson.pattern import Pattern
from kit.lesson.scale import Scale
from kit.lesson.time_limit import TRIED
from kit.lesson.working import work
from kit.live.canvas.shown import View, shown
from kit.piece.offset import inside_left
from kit.piece.piece import Piece
from kit.units import System

_NUDGE = {"length": 0.5, "share": 0.005}
_STILL = {"length": 0.05, "share": 5.0}
"""mm that a place moves for each mm, or for the whole of a share; less is not worth a handle."""
_LIVELY = 1.2
"""A place that moves faster than its length grows is no better for it: it is harder to set."""
_APART = 8.0
_WEIGHT = {"spot": 1.15, "point": 1.0, "dart": 1.0, "mark": 1.0, "edge": 0.95, "cut": 0.9}
_ELSEWHERE = 0.7
_KEEP = 0.6
"""A handle stays where it was, or moves off a taken place, while that is at least so good."""


@dataclass(frozen=True)
class Anchor:
    """A place of the draft: a named "point"; a "share" of an "edge" or of its "cut" line; the `share` 0 or 1 end of a
    measured "spot", an opening's "mark" or a dart's mouth (0.5 its apex)."""

    kind: str
    piece: str
    name: str
    share: float = 0.0


@dataclass(frozen=True)
class Handle:
    """A place to drag for the parameter `name`. `direction` is the unit vector in which it moves as the value grows,
    `rate` by how many mm for each mm of a length, or for the whole of a share."""

    name: str
    anchor: Anchor
    direction: Vector
    rate: float


@dataclass(frozen=True)
class Probe:
    """The lesson worked with the parameter `name` changed by `by`."""

    name: str
    by: float
    pattern: Pattern


class Ground:
    """The places of the pieces a view shows."""

    def __init__(self, pattern: Pattern, step: str = "", block: Sequence[Piece] = ()) -> None:
        self.pieces = {piece.name: piece for piece in shown(pattern, step, block).pieces}
        self.spots: dict[tuple[str, str], tuple[Point, Point]] = {}
        for record in pattern.steps:
            for spot in record.spots:
                self.spots.setdefault((spot.piece, spot.name), (spot.start, spot.end))
            if record.key == step:
                break

    def at(self, anchor: Anchor) -> Point | None:
        """Where an anchor lies on its piece, mm; None where there is no such place now."""
        piece = self.pieces.get(anchor.piece)
        if piece is None:
            return None
        if anchor.kind == "spot":
            ends = self.spots.get((anchor.piece, anchor.name))
            return ends and ends[int(anchor.share)]
        if anchor.kind == "point":
            return dict(piece.points).get(anchor.name)
        if anchor.kind == "dart":
            dart = next((d for d in piece.darts if d.name == anchor.name), None)
            if dart is None or not piece.has_edge(dart.edge):
                return None
            if anchor.share == 0.5:
                return dart.apex
            return _along(piece, dart.edge, dart.end if anchor.share else dart.start)
        if anchor.kind == "mark":
            mark = next((m for m in piece.marks if m.name == anchor.name), None)
            if mark is None or not piece.has_edge(mark.edge):
                return None
            return _along(piece, mark.edge, mark.end if anchor.share else mark.start)
        if not piece.has_edge(anchor.name):
            return None
        edge = piece.edge(anchor.name)
        at = edge.path.length * anchor.share
        if anchor.kind == "edge":
            return edge.path.at(at)
        try:
            inward = edge.path.normal_at(at) * inside_left(piece)
        except KitError:
            return None  # its outline stands open
        return edge.path.at(at) - inward * (edge.allowance or 0.0)

    def anchors(self, parameter: str) -> Iterator[Anchor]:
        """Every place a handle could stand."""
        # In the order of preference: the dimension that carries the parameter's own name, then corners, darts,
        # openings, edges, and the cut line last. The first that moves with the slider, and far enough, gets the handle.
        for owner, name in self.spots:
            if name == parameter and owner in self.pieces:
                yield Anchor("spot", owner, name, 1.0)
                yield Anchor("spot", owner, name, 0.0)
        for piece in self.pieces.values():
            own = piece.name
            ends = [end for edge in piece.edges for end in (edge.path.start, edge.path.end)]
            for name, point in piece.points:
                if any(point.distance(end) < 0.5 for end in ends):
                    yield Anchor("point", own, name)
            for dart in piece.darts:
                yield from (Anchor("dart", own, dart.name, share) for share in (0.0, 0.5, 1.0))
            for mark in piece.marks:
                if mark.kind == "opening":
                    yield from (Anchor("mark", own, mark.name, share) for share in (1.0, 0.0))
            for edge in piece.edges:
                inner = (0.5,) if edge.path.is_straight else (0.5, 0.25, 0.75)
                yield from (Anchor("edge", own, edge.name, share) for share in (0.0, 1.0, *inner))
                if edge.allowance:
                    yield Anchor("cut", own, edge.name, 0.5)


def handles(
    lesson: Lesson, pattern: Pattern, view: View | None = None, former: Sequence[Handle] = ()
) -> tuple[Handle, ...]:
    """A handle for each length and share that moves something in the view. `former` ones keep their place where it
    is still a good one. The lesson is worked once for each parameter."""
    block = lesson.start(lesson.body)
    return chosen(lesson, pattern, tuple(probes(lesson, pattern)), view or View(), block, former)


def probes(lesson: Lesson, pattern: Pattern) -> Iterator[Probe]:
    """The lesson worked with one parameter after the other changed a little."""
    values = {value.name: value.value for value in pattern.values}
    for parameter in lesson.parameters:
        nudge = _NUDGE.get(parameter.kind)
        if nudge is None or parameter.name not in values:
            continue
        for by in (nudge, -nudge):
            value = values[parameter.name] + by
            if not parameter.least <= value <= parameter.most:
                continue
            try:
                worked = work(
                    lesson.definition,
                    pattern.body,
                    {**values, parameter.name: value},
                    whole=False,
                    time_limit=min(TRIED, lesson.definition.time_limit),
                )
            except KitError:
                continue
            yield Probe(parameter.name, by, worked)
            break


def chosen(
    lesson: Lesson,
    pattern: Pattern,
    found: Iterable[Probe],
    view: View,
    block: Sequence[Piece] = (),
    former: Sequence[Handle] = (),
) -> tuple[Handle, ...]:
    """The handles that the probes of `pattern` give."""
    ground = Ground(pattern, view.step, block)
    home = _homes(pattern)
    kinds = {parameter.name: parameter.kind for parameter in lesson.parameters}
    before = {handle.name: handle.anchor for handle in former}
    taken: list[tuple[str, Point]] = []
    out: list[Handle] = []
    for probe in found:
        there = Ground(probe.pattern, view.step, block)
        scored = _scored(ground, there, probe, kinds[probe.name], home.get(probe.name, frozenset()))
        if not scored:
            continue
        best = scored[0]
        free = [s for s in scored if s[0] >= _KEEP * best[0] and _clear(s[1].piece, s[2], taken)]
        kept = [s for s in free if s[1] == before.get(probe.name)]
        _, anchor, at, way = (kept or free or [best])[0]
        taken.append((anchor.piece, at))
        out.append(Handle(probe.name, anchor, way.unit(), way.length))
    return tuple(out)


_Scored = tuple[float, Anchor, Point, Vector]


def _scored(ground: Ground, there: Ground, probe: Probe, kind: str, home: frozenset[str]) -> list[_Scored]:
    """Places that move, the best first."""
    found: list[_Scored] = []
    for anchor in ground.anchors(probe.name):
        here, moved = ground.at(anchor), there.at(anchor)
        if here is None or moved is None:
            continue
        way = (moved - here) * (1 / probe.by)
        if way.length >= _STILL[kind]:
            speed = min(way.length, _LIVELY) if kind == "length" else way.length
            weight = _WEIGHT[anchor.kind] * (1.0 if not home or anchor.piece in home else _ELSEWHERE)
            found.append((speed * weight, anchor, here, way))
    return sorted(found, key=lambda each: -each[0])


def _clear(piece: str, at: Point, taken: Sequence[tuple[str, Point]]) -> bool:
    return all(piece != other or at.distance(point) > _APART for other, point in taken)


def _homes(pattern: Pattern) -> Mapping[str, frozenset[str]]:
    """Parameter -> the pieces of the first step that uses it."""
    found: dict[str, frozenset[str]] = {}
    for record in pattern.steps:
        for name in record.uses:
            found.setdefault(name, frozenset(piece.name for piece in record.pieces))
    return found


def _along(piece: Piece, edge: str, distance: float) -> Point:
    path = piece.edge(edge).path
    return path.at(min(max(distance, 0.0), path.length))


# ---- values a handle can give --------------------------------------------------------------------------------


def on_scale(parameter: Parameter, system: System, value: float) -> float:
    """The value (mm, share, count) on the slider's nearest step, inside the parameter's range."""
    scale = Scale(parameter, system)
    return scale.value(scale.number(min(max(value, parameter.least), parameter.most)))
