"""Pieces whose cut outline is a rectangle: all that must be known to chalk one onto the cloth without paper.

Everything is told from the cut edges, as a person with a ruler has nothing else to measure from.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from kit.geometry import Path, Point, Vector
from kit.piece.allowance import cut_line, cut_width, has_allowances, notch_lines
from kit.piece.offset import inside_left
from kit.piece.piece import Edge, Mark, Piece

SpotKind = Literal["notch", "double", "line", "point", "slit", "opening"]
_NEAR = 0.2  # mm; what a chalk line does not show
_CLIPPED = 1.0  # mm², a corner cut off by less is none
_POINTS = ("point", "drill", "eyelet", "snap", "socket")


@dataclass(frozen=True)
class MeasuredSpot:
    """Something marked on a rectangle, in mm from its cut edges. A "notch" or "double" notch lies on the side that
    `edge` is of, `at` from the side of `start`; an "opening" there from `at` to `to`. A "line" runs parallel to the
    side of `start`, `at` from it. A "point" is `at` from the side of `start` and `up` from that of `edge`; a "slit"
    runs from `at` to `to` along `edge`, `up` from it. `edge` and `start` are names of edges, `said` of the mark."""

    kind: SpotKind
    start: str
    at: float
    edge: str = ""
    to: float = 0.0
    up: float = 0.0
    said: str = ""


@dataclass(frozen=True)
class Rectangle:
    """A rectangle as cut, allowances included: `length` along the grainline and `width` across it in mm. `beside` are
    the names of the edges that run along the length, `ends` of those at its start and its end (the end is where the
    grainline points)."""

    length: float
    width: float
    beside: tuple[str, str]
    ends: tuple[str, str]
    spots: tuple[MeasuredSpot, ...] = ()


def rectangle(piece: Piece) -> Rectangle | None:
    """The measures of `piece`, or None where it cannot be cut by measures alone: its cut outline is no rectangle along
    its grainline, it lies on the bias, it has a dart or pleat, or a mark that no two measures tell. A piece on the fold
    is measured as it lies there, half."""
    if not has_allowances(piece) or piece.darts or piece.pleats:
        return None
    if piece.grain is not None and piece.grain.kind == "bias":
        return None
    frame = _Frame.of(piece)
    if frame is None:
        return None
    found: list[MeasuredSpot] = []
    for each in notch_lines(piece):
        feet = [line.start for line in each.lines]
        foot = Point(sum(p.x for p in feet) / len(feet), sum(p.y for p in feet) / len(feet))
        start, at = frame.along(each.notch.edge, foot)
        found.append(MeasuredSpot("double" if each.notch.kind == "double" else "notch", start, at, each.notch.edge))
    for mark in piece.marks:
        spot = _spot(piece, mark, frame)
        if spot is None:
            return None
        found.append(spot)
    low, high, left, right = frame.sides
    return Rectangle(frame.long, frame.wide, (left, right), (low, high), tuple(found))


@dataclass(frozen=True)
class _Frame:
    """The rectangle's own axes: `way` along the grain. `sides` are the edges at its start, its end, and on either side
    of the grain, the longest of each; `lies` the side, 0 to 3, of every edge."""

    way: Vector
    low: float
    left: float
    long: float
    wide: float
    sides: tuple[str, str, str, str]
    lies: tuple[tuple[str, int], ...]

    @staticmethod
    def of(piece: Piece) -> _Frame | None:
        way = Vector(0.0, 1.0) if piece.grain is None else (piece.grain.end - piece.grain.start).unit()
        points = cut_line(piece).points(0.1)
        along = [p.x * way.x + p.y * way.y for p in points]
        across = [p.x * way.y - p.y * way.x for p in points]
        low, high, left, right = min(along), max(along), min(across), max(across)
        ring = zip(points, [*points[1:], points[0]], strict=True)
        area = abs(sum(a.x * b.y - b.x * a.y for a, b in ring)) / 2  # the shoelace formula
        if abs(area - (high - low) * (right - left)) > _CLIPPED:
            return None
        inward = inside_left(piece)
        by_side: list[list[Edge]] = [[], [], [], []]
        lies = []
        for edge in piece.edges:
            if not edge.path.is_straight:
                return None
            half = edge.path.length / 2
            middle = edge.path.at(half) - edge.path.normal_at(half) * (inward * cut_width(piece, edge))
            u, v = middle.x * way.x + middle.y * way.y, middle.x * way.y - middle.y * way.x
            off = (abs(u - low), abs(u - high), abs(v - left), abs(v - right))
            side = off.index(min(off))
            if off[side] > _NEAR:
                return None
            by_side[side].append(edge)
            lies.append((edge.name, side))
        if not all(by_side):
            return None
        names = [max(edges, key=lambda edge: edge.path.length).name for edges in by_side]
        sides = (names[0], names[1], names[2], names[3])
        return _Frame(way, low, left, high - low, right - left, sides, tuple(lies))

    def place(self, point: Point) -> tuple[float, float]:
        """How far the point is from the first end and from the left side."""
        u = point.x * self.way.x + point.y * self.way.y - self.low
        return u, point.x * self.way.y - point.y * self.way.x - self.left

    def along(self, edge: str, point: Point) -> tuple[str, float]:
        """From which side a place on `edge` is measured, and how far it is."""
        u, v = self.place(point)
        return (self.sides[2], v) if dict(self.lies)[edge] < 2 else (self.sides[0], u)


def _spot(piece: Piece, mark: Mark, frame: _Frame) -> MeasuredSpot | None:
    low, _, left, _ = frame.sides
    if mark.kind in _POINTS and mark.point is not None:
        u, v = frame.place(mark.point)
        return MeasuredSpot("point", low, u, left, up=v, said=mark.label)
    if mark.kind == "opening" and mark.edge and piece.has_edge(mark.edge):
        path = piece.edge(mark.edge).path
        start, one = frame.along(mark.edge, path.at(mark.start))
        _, other = frame.along(mark.edge, path.at(mark.end))
        return MeasuredSpot("opening", start, min(one, other), mark.edge, to=max(one, other), said=mark.label)
    if mark.kind in ("line", "buttonhole") and mark.path is not None and mark.path.is_straight:
        (u0, v0), (u1, v1) = frame.place(mark.path.start), frame.place(mark.path.end)
        level = abs(u0 - u1) < _NEAR
        if not level and abs(v0 - v1) >= _NEAR:
            return None
        if mark.kind == "line":
            if not _from_edge_to_edge(piece, mark.path):
                return None
            return (
                MeasuredSpot("line", low, u0, said=mark.label)
                if level
                else MeasuredSpot("line", left, v0, said=mark.label)
            )
        if level:
            return MeasuredSpot("slit", left, min(v0, v1), low, max(v0, v1), u0, mark.label)
        return MeasuredSpot("slit", low, min(u0, u1), left, max(u0, u1), v0, mark.label)
    return None


def _from_edge_to_edge(piece: Piece, path: Path) -> bool:
    """Whether both ends lie on edges, which are straight."""

    def on_edge(end: Point) -> bool:
        for edge in piece.edges:
            start, far, whole = edge.path.start, edge.path.end, edge.path.length
            if start.distance(end) + end.distance(far) - whole < _NEAR:
                return True
        return False

    return on_edge(path.start) and on_edge(path.end)
