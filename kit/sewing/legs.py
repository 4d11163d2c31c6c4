"""Edges walked one after another, over folds and seams too, and the places along them that have a name.

A line of edges is a row of legs, each one edge of one half, walked as drafted or back. A landmark is a place on the
line by what lies there: a mark or one end of it, a notch, the end where a neighbouring edge meets it, or a length from
the line's own start. Everything is measured on the stitch line, in mm.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from itertools import pairwise
from typing import Literal, NamedTuple

from kit.diagnostic import EdgeName, NamedLandmark, Value
from kit.errors import KitError
from kit.geometry import Point
from kit.piece.folded import MEET, walked_ways
from kit.piece.piece import Mark, Notch, Piece, Side

End = Literal["start", "end"]
NEAR = 1.0
"""mm a point drawn on the piece may lie off an edge and still be on it."""
_SAME = 0.05  # mm between places that are one
_CORNER = 0.17  # sine of the turn (10°) from which two edges meet in a corner that is seen
_STEEP = 0.75  # share of a length along a line by which it must rise or fall to be told as above or below its start


@dataclass(frozen=True)
class Leg:
    """One edge of a line: of `piece` on `side` (None: on both halves alike), walked as drafted (`forward`) or back; it
    begins `at` mm along the line."""

    piece: Piece
    side: Side | None
    edge: str
    forward: bool = True
    at: float = 0.0

    @property
    def size(self) -> float:
        return self.piece.edge(self.edge).path.length

    def along(self, distance: float) -> float:
        """`distance` mm along the edge as drafted, as mm along the line; and the other way round from its start."""
        return self.at + (distance if self.forward else self.size - distance)

    def point(self, end: End) -> Point:
        """Where the leg starts or ends, in draft coordinates."""
        path = self.piece.edge(self.edge).path
        return path.start if (end == "start") == self.forward else path.end

    def beside(self, end: End) -> str:
        """The edge that meets it at that end; "" where it has no neighbour."""
        names = [edge.name for edge in self.piece.edges]
        if len(names) < 2:
            return ""
        here, number = self.point(end), names.index(self.edge)
        drafted = -1 if (end == "start") == self.forward else 1
        for step in (drafted, -drafted):
            other = self.piece.edges[(number + step) % len(names)]
            if min(other.path.start.distance(here), other.path.end.distance(here)) < MEET:
                return other.name
        return names[(number + drafted) % len(names)]

    def runs_on(self, end: End) -> bool:
        """Whether the edge there runs into its neighbour without a corner: a place nobody finds on cloth."""
        name = self.beside(end)
        if not name:
            return False
        here, other, mine = self.point(end), self.piece.edge(name).path, self.piece.edge(self.edge).path
        ways = [path.start_tangent if path.start.distance(here) < MEET else path.end_tangent for path in (mine, other)]
        return abs(ways[0].cross(ways[1])) < _CORNER

    def on(self, piece: str, side: Side | None) -> bool:
        """Whether it is an edge of that piece and half; what is on both halves is on each."""
        return self.piece.name == piece and (side is None or self.side is None or self.side == side)


Line = tuple[Leg, ...]


def run_legs(piece: Piece, edges: tuple[str, ...], side: Side | None) -> Line:
    """A run of neighbouring edges of one piece. `KitError` where they do not follow one another."""
    ways = walked_ways(piece, edges)
    return _laid([Leg(piece, side, edge, way) for edge, way in zip(edges, ways, strict=True)])


def chained(rows: Sequence[Line]) -> tuple[tuple[Line, ...], tuple[bool, ...]]:
    """Rows of legs laid end to end, each turned round where it is needed, and whether each is walked as it was named.
    Which ends meet: those at a fold, those beside edges of one name or kind, and else those that lie nearer."""
    turned: list[bool] = []
    for number, (one, two) in enumerate(pairwise(rows)):
        ends: tuple[End, ...] = ("start", "end") if number == 0 else ("start" if turned[-1] else "end",)
        choices = [(_apart(one, mine, two, theirs), mine, theirs) for mine in ends for theirs in ("start", "end")]
        _, mine, theirs = min(choices, key=lambda choice: choice[0])
        if number == 0:
            turned.append(mine == "start")
        turned.append(theirs == "end")
    lines: list[Line] = []
    at = 0.0
    for row, back in zip(rows, turned, strict=True):
        legs = [replace(leg, forward=not leg.forward) for leg in reversed(row)] if back else list(row)
        lines.append(_laid(legs, at))
        at = lines[-1][-1].at + lines[-1][-1].size
    return tuple(lines), tuple(not back for back in turned)


def _apart(one: Line, mine: End, two: Line, theirs: End) -> tuple[int, float]:
    """How ill two ends go together: a rank, then mm."""
    first, second = one[-1 if mine == "end" else 0], two[-1 if theirs == "end" else 0]
    a, b = first.beside(mine), second.beside(theirs)
    gap = first.point(mine).distance(second.point(theirs))
    if first.piece.name == second.piece.name:
        return (0 if a == b == first.piece.fold else 1 if a == b else 2), gap
    if a in ("", first.piece.fold) or b in ("", second.piece.fold):
        return 3, gap
    alike = a == b or first.piece.edge(a).role == second.piece.edge(b).role != ""
    return (0 if alike else 1), gap


def _laid(legs: Iterable[Leg], at: float = 0.0) -> Line:
    found = []
    for leg in legs:
        found.append(replace(leg, at=at))
        at += leg.size
    return tuple(found)


# ---- landmarks --------------------------------------------------------------------------------------------------


class Landmark(NamedTuple):
    """A place `at` mm along a line. `what` lies there: a "mark" (its `which` end, where it has two), a "notch" of that
    `number` counted from the start of the line, the end of the `name`d neighbouring "edge", a "tip" of the line without
    a neighbour, or nothing, so that it is told as a "length"."""

    what: Literal["mark", "notch", "edge", "tip", "length"]
    at: float
    name: str = ""
    which: Literal["", "start", "end"] = ""
    piece: str = ""
    side: Side | None = None
    number: int = 0


class LegStretch(NamedTuple):
    """A part of a line from `start` to `end`, in the order they were named."""

    start: Landmark
    end: Landmark

    @property
    def low(self) -> float:
        return min(self.start.at, self.end.at)

    @property
    def high(self) -> float:
        return max(self.start.at, self.end.at)


def size_of(line: Line) -> float:
    """mm of all the legs."""
    return line[-1].at + line[-1].size


def tip(line: Line, end: End) -> Landmark:
    """The start or the end of a line."""
    leg = line[0 if end == "start" else -1]
    at, name = (0.0 if end == "start" else size_of(line)), leg.beside(end)
    return Landmark("edge" if name else "tip", at, name, end if not name else "", leg.piece.name, leg.side)


def at_edge(line: Line, piece: str, edges: Sequence[str], side: Side | None) -> tuple[Landmark, ...]:
    """Where a neighbouring edge meets the line, at its ends or between its legs."""
    own = {(leg.piece.name, leg.edge) for leg in line}
    found: list[Landmark] = []
    for leg in line:
        for end, at in (("start", leg.at), ("end", leg.at + leg.size)):
            name = leg.beside(end)  # type: ignore[arg-type]
            if name in edges and leg.on(piece, side) and (piece, name) not in own:
                found.append(Landmark("edge", at, name, "", piece, leg.side))
    return _distinct(found)


def at_mark(line: Line, piece: str, mark: Mark, side: Side | None) -> tuple[Landmark, ...]:
    """Where a mark lies on the line: its place, or both its ends in the order of the line."""
    found: list[Landmark] = []
    for leg in line:
        if not leg.on(piece, side):
            continue
        places = _places(leg, mark)
        for which, place in places:
            found.append(Landmark("mark", leg.along(place), mark.name, which, piece, side))
    return tuple(sorted(_distinct(found), key=lambda landmark: landmark.at))


def _places(leg: Leg, mark: Mark) -> list[tuple[Literal["", "start", "end"], float]]:
    """(which end of the mark, mm along the leg's edge) of what of it lies on that edge."""
    if mark.edge:
        if mark.edge != leg.edge:
            return []
        if mark.kind == "opening" and abs(mark.end - mark.start) > _SAME:
            return [("start", float(mark.start)), ("end", float(mark.end))]
        return [("", float(mark.start))]
    path = leg.piece.edge(leg.edge).path
    drawn = (mark.path.start, mark.path.end) if mark.path is not None else (mark.point,) if mark.point else ()
    return [("", float(path.nearest(point))) for point in drawn if path.distance_to(point) <= NEAR]


def notches(line: Line) -> tuple[tuple[float, Leg, Notch], ...]:
    """(mm along the line, leg, notch) of every notch on it, in order."""
    found = [
        (leg.along(notch.distance), leg, notch) for leg in line for notch in leg.piece.notches if notch.edge == leg.edge
    ]
    return tuple(sorted(found, key=lambda each: each[0]))


def at_notch(line: Line, piece: str, notch: Notch, side: Side | None) -> tuple[Landmark, ...]:
    """Where a notch lies on the line, and which it is counted from the line's start."""
    return tuple(
        Landmark("notch", at, notch.edge, "", piece, leg.side, number)
        for number, (at, leg, each) in enumerate(notches(line), start=1)
        if each == notch and leg.on(piece, side)
    )


def _distinct(found: Iterable[Landmark]) -> tuple[Landmark, ...]:
    kept: list[Landmark] = []
    for landmark in found:
        if all(abs(landmark.at - other.at) > _SAME for other in kept):
            kept.append(landmark)
    return tuple(kept)


# ---- their names ------------------------------------------------------------------------------------------------


def seen_end(line: Line, end: End = "start") -> End:
    """The end of a line to measure from: `end`, unless only its other end is a corner that is seen on cloth."""
    tips: dict[End, Leg] = {"start": line[0], "end": line[-1]}
    other: End = "end" if end == "start" else "start"
    found = [at for at in (end, other) if tips[at].beside(at) and not tips[at].runs_on(at)]
    return found[0] if found else end


def named_landmark(line: Line, landmark: Landmark, end: End = "start") -> NamedLandmark:
    """A landmark as a value of a message: a mark of two ends by the upper or lower one, a length by the edge at that
    `end` of the line, from which it is measured (at the other where only that is a corner), and whether it lies below
    or above it, as the piece is drafted."""
    halves = len({leg.side for leg in line}) > 1
    if landmark.what == "length":
        end = seen_end(line, end)
        leg, at = (line[0], landmark.at) if end == "start" else (line[-1], size_of(line) - landmark.at)
        up = _point(line, landmark.at).y - leg.point(end).y
        steep = not halves and abs(up) > _STEEP * at
        way = ("above" if up > 0 else "below") if steep else "from"
        side = (leg.side or "") if halves else ""
        return NamedLandmark("length", _edge(leg.piece, leg.beside(end)), way, mm=at, side=side)
    side = (landmark.side or "") if halves else ""
    piece = next((leg.piece for leg in line if leg.piece.name == landmark.piece), line[0].piece)
    if landmark.what == "mark":
        return _mark(line, piece, landmark, side)
    if landmark.what == "notch":
        along = notches(line)
        kind = along[landmark.number - 1][2].kind if landmark.number <= len(along) else "single"
        alike = sum(1 for _, _, notch in along if notch.kind == kind)
        if alike == 1:
            return NamedLandmark("notch", "", "double" if kind == "double" else "", side=side)
        return NamedLandmark("notch", _edge(line[0].piece, line[0].beside("start")), "number", number=landmark.number)
    if landmark.what == "tip":
        return NamedLandmark("tip", "", landmark.which)
    return NamedLandmark("edge", _edge(piece, landmark.name), side=side)


def _mark(line: Line, piece: Piece, landmark: Landmark, side: str) -> NamedLandmark:
    mark = next((mark for mark in piece.marks if mark.name == landmark.name), None)
    label = landmark.name.replace("_", " ") if mark is None else mark.label
    if mark is None or not landmark.which:
        return NamedLandmark("mark", label, side=side)
    path = piece.edge(mark.edge).path
    ends = {which: path.at(min(max(place, 0.0), path.length)) for which, place in _ends(mark)}
    here, there = ends[landmark.which], ends["end" if landmark.which == "start" else "start"]
    if abs(here.y - there.y) >= abs(here.x - there.x):
        return NamedLandmark("mark", label, "upper" if here.y > there.y else "lower", side=side)
    leg = Leg(piece, None, mark.edge)
    beside = leg.beside("start" if (landmark.which == "start") == (mark.start < mark.end) else "end")
    return NamedLandmark("mark", label, "toward", beside=_edge(piece, beside), side=side)


def _ends(mark: Mark) -> tuple[tuple[str, float], tuple[str, float]]:
    return ("start", float(mark.start)), ("end", float(mark.end))


def _point(line: Line, at: float) -> Point:
    """The place `at` mm along the line, where it lies on its own piece as drafted."""
    leg = next((leg for leg in reversed(line) if at >= leg.at - _SAME), line[0])
    path = leg.piece.edge(leg.edge).path
    step = min(max(at - leg.at, 0.0), leg.size)
    return path.at(step if leg.forward else leg.size - step)


def _edge(piece: Piece, name: str) -> EdgeName:
    return EdgeName(name, piece.edge(name).said if piece.has_edge(name) else "")


def landmark_value(line: Line, landmark: Landmark) -> Value:
    """A landmark in a message."""
    return Value(named_landmark(line, landmark), "landmark")


def only(found: Sequence[Landmark], what: str, where: str) -> Landmark:
    """The one landmark found. `KitError` where there are several."""
    if len(found) > 1:
        raise KitError(
            f"{what} meets this line in {len(found)} places.",
            where=where,
            do="Name the half: front.left or front.right.",
        )
    return found[0]
