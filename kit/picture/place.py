"""Where cloth lies in a sewing picture: a piece as it is seen (`kit.piece.seen`), and its outline as a layer."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, replace
from itertools import pairwise

from kit.geometry import Arc, Cubic, Curve, Line, Motion, Point, Region, Vector
from kit.geometry.region import Spot
from kit.lesson.pattern import Pattern
from kit.picture.drawing import Area, Dimension, Dot, Fill, Item, Label, Stroke
from kit.piece.allowance import CutLine, has_allowances, hem_edges, offset_line
from kit.piece.piece import Piece, Side, Strip
from kit.piece.seen import as_drafted as as_drafted
from kit.piece.seen import is_back as is_back
from kit.piece.seen import is_facing as is_facing

_Named = Point | tuple[Curve, ...] | Area | None  # what a text is the name of
_AXIS = (Point(0.0, 0.0), Point(0.0, 1.0))


def flat_motion(piece: Piece, side: Side, wrong_up: bool) -> Motion:
    """Lays a half in its draft place, mirrored at x = 0 where it is seen the other way round."""
    if as_drafted(piece, side, wrong_up):
        return Motion.identity()
    return Motion.reflection(*_AXIS)


def flat_mirror() -> Motion:
    """Lays a piece as it is seen from its other side."""
    return Motion.reflection(*_AXIS)


def fold_mirror(piece: Piece) -> Motion:
    """The mirror across the fold of a piece cut on the fold."""
    path = piece.edge(piece.fold).path
    return Motion.reflection(path.start, path.end)


def widths_of(piece: Piece) -> dict[str, float]:
    """Each edge's allowance in mm; 0 where none is declared and on the fold."""
    return {edge.name: 0.0 if edge.name == piece.fold else float(edge.allowance or 0.0) for edge in piece.edges}


def layer_line(piece: Piece, changes: Mapping[str, float] | None = None) -> CutLine:
    """The cut line with some widths changed: 0 where a seam is already opened out, less where an edge is turned."""
    widths = widths_of(piece) | dict(changes or {})
    return offset_line(piece, widths, [] if changes or not has_allowances(piece) else hem_edges(piece))


def whole_outline(piece: Piece, line: CutLine) -> tuple[Curve, ...]:
    """The layer's closed outline in draft coordinates: a piece on the fold is opened out into one."""
    if not piece.fold:
        return line.curves
    path = piece.edge(piece.fold).path
    along = (path.end - path.start).unit()
    on_fold = [
        isinstance(c, Line) and all(abs(along.cross(p - path.start)) < 0.05 for p in (c.start, c.end))
        for c in line.curves
    ]
    count = len(line.curves)
    first = next((i for i in range(count) if on_fold[i - 1] and not on_fold[i]), 0)
    ordered = [line.curves[(first + i) % count] for i in range(count)]
    half = [c for i, c in enumerate(ordered) if not on_fold[(first + i) % count]]
    mirror = fold_mirror(piece)
    return tuple(half) + tuple(c.reversed().moved(mirror) for c in reversed(half))


def moved_curves(curves: tuple[Curve, ...], motion: Motion) -> tuple[Curve, ...]:
    return tuple(curve.moved(motion) for curve in curves)


def slid(item: Item, by: Vector) -> Item:
    """What is drawn, elsewhere: all of it, with what a text is the name of."""
    go = Motion.translation(by)
    match item:
        case Stroke() | Fill():
            return replace(item, curves=moved_curves(item.curves, go))
        case Dimension():
            along = moved_curves(item.along, go)
            return replace(item, start=item.start + by, end=item.end + by, along=along)
        case Label():
            return replace(item, at=item.at + by, of=_named_elsewhere(item.of, by))
    return replace(item, at=item.at + by)


def _named_elsewhere(of: _Named, by: Vector) -> _Named:
    go = Motion.translation(by)
    match of:
        case Point():
            return of + by
        case tuple():
            return moved_curves(of, go)
        case Area():
            sides = tuple((spot + by, share) for spot, share in of.sides)
            return Area(moved_curves(of.curves, go), None if of.at is None else of.at + by, sides)
    return None


@dataclass(frozen=True)
class Scaling:
    """Makes a picture smaller for an inset: `factor` about the origin, then a slide to `to`."""

    factor: float
    to: Point

    def point(self, p: Point) -> Point:
        return Point(p.x * self.factor + self.to.x, p.y * self.factor + self.to.y)

    def curves(self, curves: tuple[Curve, ...]) -> tuple[Curve, ...]:
        out: list[Curve] = []
        for c in curves:
            if isinstance(c, Line):
                out.append(Line(self.point(c.start), self.point(c.end)))
            elif isinstance(c, Arc):
                out.append(Arc(self.point(c.centre), c.radius * self.factor, c.from_angle, c.sweep))
            else:
                for q in c.as_cubics():
                    out.append(Cubic(self.point(q.start), self.point(q.c1), self.point(q.c2), self.point(q.end)))
        return tuple(out)

    def items(self, items: Iterable[Item]) -> list[Item]:
        """Strokes and dots scaled and slid."""
        out: list[Item] = []
        for item in items:
            if isinstance(item, Stroke):
                out.append(replace(item, curves=self.curves(item.curves)))
            elif isinstance(item, Dot):
                out.append(replace(item, at=self.point(item.at)))
        return out


def rectangle(x0: float, y0: float, x1: float, y1: float) -> tuple[Curve, ...]:
    a, b, c, d = Point(x0, y0), Point(x1, y0), Point(x1, y1), Point(x0, y1)
    return (Line(a, b), Line(b, c), Line(c, d), Line(d, a))


def polyline(points: list[Point]) -> tuple[Curve, ...]:
    return tuple(Line(a, b) for a, b in pairwise(points) if a.distance(b) > 1e-9)


def in_two(outline: Iterable[Curve], a: Point, b: Point) -> tuple[list[tuple[Curve, ...]], list[tuple[Curve, ...]]]:
    """What of a closed outline lies left, and what right, of the straight line from `a` through `b` (mm): rings of
    lines at most 0.2 mm off the curves, of either side those of the largest area first."""
    cloth = Region.of(q for curve in outline for q in list(curve.points(0.2))[:-1])
    left, right = (sorted(half.rings, key=lambda ring: -Region((ring,)).area) for half in cloth.split(a, b))
    return [_ring(each) for each in left], [_ring(each) for each in right]


def _ring(places: Sequence[Spot]) -> tuple[Curve, ...]:
    return polyline([Point(x, y) for x, y in (*places, places[0])])


def strip_outline(strip: Strip, at: Point, along: Vector, finished: bool, slant: float = 0.0) -> tuple[Curve, ...]:
    """A strip's rectangle from `at` in direction `along`, as cut or as finished; its far end slanted by `slant` mm, the
    edge on the right of its way the shorter."""
    long = (strip.finished_length or strip.length) if finished else strip.length
    wide = (strip.finished_width or strip.width) if finished else strip.width
    side = along.unit().left() * (wide / 2)
    far = at + along.unit() * long
    near = far - along.unit() * slant
    return polyline([at - side, near - side, far + side, at + side, at - side])


def slant_of(strip: Strip, pattern: Pattern) -> float:
    """mm by which one end of a strip is slanted when it is made."""
    made = (each.entire for record in pattern.sewing for each in record.operations)
    return max((getattr(each, "slant", 0.0) for each in made if getattr(each, "name", "") == strip.name), default=0.0)
