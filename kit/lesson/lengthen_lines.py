"""Lengthen and shorten lines: where a piece may be cut through, or folded, so that it becomes longer or shorter.

They lie between two levels of the body (bust and waist, hip and hem, above and below the elbow, thigh and knee), square
to the grain, and at the same height in every piece that has these levels, so that seams stay equal. Within the middle
of that stretch they keep clear of darts, pleats, notches and marks where there is room (common practice, no source).
Heights are mm along the grain, upward.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from itertools import pairwise

from kit.forgetting import forgettable
from kit.geometry import Line, Path, Point, Vector
from kit.lesson.pattern import Pattern
from kit.piece.dart import darts_lying, legs
from kit.piece.piece import LengthenLine, Piece
from kit.piece.role import EdgeRole, Landmark

LEAST = 40.0
"""mm between two levels, under which no line lies between them (common practice, no source)."""
_CLEAR = 8.0  # mm from a notch or mark
_SHARES = (0.5, 0.45, 0.55, 0.4, 0.6, 0.35, 0.65, 0.3, 0.7, 0.25, 0.75)
_FAR = 5000.0
_BODY: tuple[Landmark, ...] = ("bust_line", "waist_line", "hip_line", "thigh_line", "knee_line")
_ARM: tuple[Landmark, ...] = ("upper_arm_line", "elbow_line", "wrist_line")
_TOPS: tuple[EdgeRole, ...] = ("waist",)
_ENDS: tuple[EdgeRole, ...] = ("hem", "wrist", "hip", "waist")
_LEVEL = 0.85  # an edge that runs as level as this (cosine) is not crossed
_NOT_CUT = {("hip_line", "thigh_line")}  # the crotch seam lies there


@dataclass(frozen=True)
class LevelStretch:
    """The part of a piece between two levels: their names ("top" and "end" for its own upper edge and its lower end),
    how high they lie, and the level heights are told from, one that is drawn."""

    upper: str
    lower: str
    high: float
    low: float
    origin: float

    @property
    def key(self) -> tuple[str, str]:
        return self.upper, self.lower


def with_lengthen_lines(pattern: Pattern) -> Pattern:
    """The pattern with the lines on every piece that has a level of the body and whose author placed none."""
    placed = placed_lines(pattern.pieces)
    pieces = tuple(
        piece if piece.lengthen is not None else replace(piece, lengthen=placed.get(piece.name, ()))
        for piece in pattern.pieces
    )
    return replace(pattern, pieces=pieces)


def lengthen_lines(piece: Piece, pieces: Sequence[Piece]) -> tuple[LengthenLine, ...]:
    """The lines of one of these pieces: its author's, else those the kit places. They run from edge to edge of the
    piece as it is now: whole, where it was opened from its fold since."""
    if piece.lengthen is None:
        return placed_lines(pieces).get(piece.name, ())
    return tuple(
        replace(line, path=path) for line in piece.lengthen for path in level_lines(piece, _middle(piece, line))
    )


def author_lines(piece: Piece, points: Iterable[Point]) -> tuple[LengthenLine, ...]:
    """Lines through these points of a piece, square to its grain, top to bottom."""
    up, found = upward(piece), []
    for point in sorted(points, key=lambda p: -height_of(piece, p)):
        at = height_of(piece, point)
        key = next((s.key for s in _stretches(piece) if s.low - 0.1 <= at <= s.high + 0.1), ("top", "end"))
        across = up.left() * 0.5
        found.append(LengthenLine(*key, Path.line(point - across, point + across)))
    return tuple(found)


def placed_lines(pieces: Iterable[Piece]) -> dict[str, tuple[LengthenLine, ...]]:
    """Where the lines of pieces lie, by name, top to bottom: at one height in all that have the same two levels."""
    return dict(_placed(tuple(pieces)))


@forgettable(64)  # every piece drawn asks for the lines of all
def _placed(pieces: tuple[Piece, ...]) -> Mapping[str, tuple[LengthenLine, ...]]:
    every = {piece.name: piece for piece in pieces if piece.edges and piece.lengthen is None}
    stretches = {name: list(_stretches(piece)) for name, piece in every.items()}
    found: dict[str, list[LengthenLine]] = {name: [] for name in every}
    for key in dict.fromkeys(s.key for each in stretches.values() for s in each):
        group = [(every[name], s) for name, each in stretches.items() for s in each if s.key == key]
        for members in _together(group):
            for piece, height in _height(members):
                for line in level_lines(piece, height):
                    found[piece.name].append(LengthenLine(*key, line))
    for piece in every.values():
        if not found[piece.name] and piece.source in every and piece.role in ("facing", "lining", "interfacing"):
            found[piece.name] += _inherited(piece, found[piece.source])
    return {name: tuple(lines) for name, lines in found.items()}


def cut_heights(pieces: Iterable[Piece]) -> Iterator[tuple[Piece, LevelStretch, float]]:
    """Where pieces are cut through to make them longer: each stretch between two levels, and the height there."""
    every = [piece for piece in pieces if piece.edges]
    stretches = [(piece, stretch) for piece in every for stretch in _stretches(piece)]
    for key in dict.fromkeys(stretch.key for _, stretch in stretches):
        for members in _together([(piece, s) for piece, s in stretches if s.key == key]):
            of = {piece.name: s for piece, s in members}
            for piece, height in _height(members):
                yield piece, of[piece.name], _own_height(piece, key, height)


def _own_height(piece: Piece, key: tuple[str, str], height: float) -> float:
    """The height its author placed a line at between these levels, else this one."""
    own = [_middle(piece, line) for line in piece.lengthen or () if (line.upper, line.lower) == key]
    return own[0] if own else height


def upward(piece: Piece) -> Vector:
    """The direction of the grain on the draft, the way up; straight up where the piece has none or lies on the bias."""
    grain = piece.grain
    if grain is None or grain.kind == "bias" or grain.start.distance(grain.end) < 1:
        return Vector(0.0, 1.0)
    way = (grain.end - grain.start).unit()
    way = way.left() if grain.kind == "crosswise" else way
    return way * -1.0 if way.y < 0 else way


def height_of(piece: Piece, point: Point) -> float:
    """How high a point lies on a piece, along its grain."""
    return upward(piece).dot(point - Point(0.0, 0.0))


def level_lines(piece: Piece, height: float) -> tuple[Path, ...]:
    """The stretches of a piece at a height, square to its grain, from edge to edge."""
    return tuple(Path.line(one, other) for one, other, _ in _across(piece, height))


def level_height(piece: Piece, level: Landmark) -> float | None:
    """How high the line of a level lies on a piece; None where it has none."""
    line = piece.guide_of(level)
    return None if line is None else height_of(piece, line.start.mid(line.end))


def _middle(piece: Piece, line: LengthenLine) -> float:
    return height_of(piece, line.path.start.mid(line.path.end))


def _inherited(piece: Piece, lines: Sequence[LengthenLine]) -> Iterator[LengthenLine]:
    """The lines of the piece it was drawn from, as far as they cross it where it was drawn."""
    for line in lines:
        for own in level_lines(piece, _middle(piece, line)):
            if all(line.path.distance_to(end) < _CLEAR for end in (own.start, own.end)):
                yield replace(line, path=own)


# ---- between which levels ---------------------------------------------------------------------------------


def _stretches(piece: Piece) -> Iterator[LevelStretch]:
    names = _ARM if piece.role == "sleeve" else _BODY
    heights: dict[str, float] = {name: at for name in names if (at := level_height(piece, name)) is not None}
    if not heights:
        return
    levels = sorted(heights.items(), key=lambda item: -item[1])
    tops = [height_of(piece, p) for e in piece.edges if e.role in _TOPS for p in (e.path.start, e.path.end)]
    all_points = [p for e in piece.edges for p in (e.path.start, e.path.end)]
    if levels[0][0] in ("hip_line", "thigh_line", "knee_line") and tops and min(tops) > levels[0][1]:
        levels.insert(0, ("top", min(tops)))
    ends = [height_of(piece, p) for e in piece.edges if e.role in _ENDS for p in (e.path.start, e.path.end)]
    low = [h for h in ends or [height_of(piece, p) for p in all_points] if h < levels[-1][1] - LEAST]
    if low:
        levels.append(("end", max(low)))
    for (upper, high), (lower, down) in pairwise(levels):
        if high - down >= LEAST and (upper, lower) not in _NOT_CUT:
            yield LevelStretch(upper, lower, high, down, down if lower != "end" else high)


def _together(group: list[tuple[Piece, LevelStretch]]) -> list[list[tuple[Piece, LevelStretch]]]:
    """Pieces whose stretches have enough in common to be cut at one height; the others each by themselves."""
    high = min(s.high - s.origin for _, s in group)
    low = max(s.low - s.origin for _, s in group)
    return [group] if high - low >= LEAST / 2 else [[one] for one in group]


# ---- at which height --------------------------------------------------------------------------------------


def _height(group: list[tuple[Piece, LevelStretch]]) -> list[tuple[Piece, float]]:
    """The height for each piece: that nearest the middle which crosses least; none where every one cuts an edge that
    runs across."""
    high = min(s.high - s.origin for _, s in group)
    low = max(s.low - s.origin for _, s in group)
    best: tuple[float, float] | None = None
    for order, share in enumerate(_SHARES):
        if best is not None and best[0] <= order * 0.05:
            break  # what lies farther from the middle costs that much by itself
        at = low + (high - low) * share
        costs = [_cost(piece, at + stretch.origin) for piece, stretch in group]
        if any(cost is None for cost in costs):
            continue
        cost = sum(cost for cost in costs if cost is not None) + order * 0.05
        if best is None or cost < best[0]:
            best = (cost, at)
    return [(piece, best[1] + stretch.origin) for piece, stretch in group] if best else []


def _cost(piece: Piece, height: float) -> float | None:
    """How much a line at that height is in the way: darts and pleats it crosses, what is marked near it; None where it
    cannot lie."""
    found = _across(piece, height)
    side = upward(piece).left()
    for one, other, names in found:
        for point, name in zip((one, other), names, strict=True):
            edge = piece.edge(name).path
            if abs(edge.tangent_at(edge.nearest(point)).dot(side)) > _LEVEL:
                return None
    if not found:
        return None
    cost = 4.0 * (len(found) - 1)
    line = Path.of(*(Line(one, other) for one, other, _ in found[:1]))
    for dart in darts_lying(piece):
        cost += 1.0 * any(line.crossings(leg) for leg in legs(piece, dart))
    cost += 1.0 * sum(1 for pleat in piece.pleats if any(line.crossings(leg) for leg in pleat.lines))
    spots = [piece.edge(n.edge).path.at(n.distance) for n in piece.notches if piece.has_edge(n.edge)]
    for mark in piece.marks:
        if mark.path is not None and mark.kind != "line":
            cost += 1.0 * bool(line.crossings(mark.path))
        spots += [mark.point] if mark.point is not None else []
        if mark.edge and mark.point is None and piece.has_edge(mark.edge):
            edge = piece.edge(mark.edge).path
            spots += [edge.at(min(max(at, 0.0), edge.length)) for at in (mark.start, mark.end)]
    return cost + sum(0.6 for spot in spots if abs(height_of(piece, spot) - height) < _CLEAR)


def _across(piece: Piece, height: float) -> list[tuple[Point, Point, tuple[str, str]]]:
    """Where a level line lies on a piece: from where to where, and the two edges it meets."""
    up = upward(piece)
    middle = Point(0.0, 0.0) + up * height
    side = up.left() * -1.0
    line = Path.line(middle - side * _FAR, middle + side * _FAR)
    met: list[tuple[float, Point, str]] = []
    for edge in piece.edges:
        for point in line.crossings(edge.path):
            along = side.dot(point - middle)
            if not any(abs(along - other) < 1e-3 for other, _, _ in met):
                met.append((along, point, edge.name))
    met.sort(key=lambda item: item[0])
    if len(met) % 2:
        return []
    return [(a[1], b[1], (a[2], b[2])) for a, b in zip(met[::2], met[1::2], strict=True)]
