"""A piece with its darts and pleats shut, flat on the table: what lies beyond each of them is slid up to it.

Cloth with a dart sewn does not lie flat; a drawing of it does. Beyond a dart the cloth is slid across by what the dart
takes up, all of it at the mouth and nothing at the point, so that the edge closes and runs on without a step (common
practice of flat drawings, no source). A pleat held at its edge alone is slid so too, down to the far edge.
"""

from __future__ import annotations

from collections.abc import Callable, Collection
from dataclasses import dataclass

from kit.geometry import Cubic, Path, Point, Vector
from kit.picture.chains import Chain, dense
from kit.piece.dart import darts_lying, mouth, sewn_point
from kit.piece.piece import Piece
from kit.piece.pleat import pleats_lying

_STEP = 15.0  # mm between points of an edge that folds slide across
FINE = 0.7
"""mm a chain of points may lie off its curve."""


@dataclass(frozen=True)
class Shut:
    """One fold taken out of the edge `edge` from `start` to `end` (mm along it): its `tip`, the `mouth` it closes from,
    and how far the cloth at the far side of it slides there."""

    name: str
    edge: str
    start: float
    end: float
    tip: Point
    middle: Point
    fixed: Point
    slides: Vector

    def moved(self, p: Point) -> Point:
        """Where a point of the draft lies once this fold is shut."""
        axis = self.middle - self.tip
        share = (p - self.tip).dot(axis) / axis.dot(axis)
        if share <= 0.0 or axis.cross(p - self.tip) * axis.cross(self.fixed - self.tip) > 0:
            return p
        share = min(share, 1.0)
        return p + self.slides * (share * share * (3.0 - 2.0 * share))  # no corner at the level of the point


def shut_folds(piece: Piece, sewn: Collection[str]) -> tuple[Shut, ...]:
    """The darts, pleats and tucks of the names `sewn`, those nearest to what stays first."""
    found: list[Shut] = []
    anchor = _anchor(piece)
    for dart in darts_lying(piece):
        if dart.name in sewn:
            one, two = mouth(piece, dart)
            found.append(_fold(dart.name, dart.edge, dart.start, dart.end, one, two, sewn_point(piece, dart), anchor))
    for pleat in pleats_lying(piece):
        if pleat.name in sewn:
            path = piece.edge(pleat.edge).path
            one, two = path.at(pleat.start), path.at(pleat.end)
            into = pleat.lines[0].end_tangent
            tip = one.mid(two) + into * _reach(piece, one.mid(two), into)
            found.append(_fold(pleat.name, pleat.edge, pleat.start, pleat.end, one, two, tip, anchor))
    return tuple(sorted(found, key=lambda fold: fold.middle.distance(fold.fixed)))


def shut_by(folds: tuple[Shut, ...]) -> Callable[[Point], Point]:
    """Where a point of the draft lies once all of them are shut, seen one after another from the outermost."""

    def moved(p: Point) -> Point:
        slide = Vector(0.0, 0.0)
        for fold in folds:
            slide = slide + (fold.moved(p) - p)
        return p + slide

    return moved


def edge_points(piece: Piece, name: str, folds: tuple[Shut, ...]) -> Chain:
    """An edge as it lies with those folds shut, their mouths left out."""
    path: Path = piece.edge(name).path
    moved = shut_by(folds)
    mouths = sorted((fold.start, fold.end) for fold in folds if fold.edge == name)
    found: Chain = []
    at = 0.0
    for low, high in (*mouths, (path.length, path.length)):
        if low - at > 1e-6:
            nudge = min(0.01, (low - at) / 4)
            # The two ends of a mouth lie on neither side of it; they are taken from the side they belong to.
            points = path.between(at, low).points(FINE)
            points = dense(points, _STEP) if folds else points
            begins = moved(path.at(at + nudge)) - path.at(at + nudge)
            ends = moved(path.at(low - nudge)) - path.at(low - nudge)
            part = [points[0] + begins, *(moved(p) for p in points[1:-1]), points[-1] + ends]
            found += part[1:] if found and found[-1].distance(part[0]) < 0.5 else part
        at = high
    return _run_on(found, path) if mouths else found


def _run_on(chain: Chain, path: Path) -> Chain:
    """The edge with its mouths shut as one smooth line: cloth slid across keeps the slant it was drafted with on either
    side of a mouth, the sewn edge has none. It leaves the end that stayed where it was as it was drafted."""
    start, end = chain[0], chain[-1]
    turned = start.distance(path.start) > end.distance(path.end)
    way = path.end_tangent * -1.0 if turned else path.start_tangent
    if turned:
        start, end = end, start
    third = start.distance(end) / 3
    smooth = Cubic(start, start + way * third, end.lerp(start, 1 / 3), end).points(FINE)
    return smooth[::-1] if turned else list(smooth)


def _anchor(piece: Piece) -> Callable[[Point, Point], Point]:
    """What stays where it is: for a fold that runs up and down the centre, for one that runs across the upper part."""
    xs = [edge.path.at(edge.path.length / 2) for edge in piece.edges if edge.name == piece.fold]
    xs = xs or [edge.path.at(edge.path.length / 2) for edge in piece.with_role("centre")]
    left, low, right, high = piece.outline.bounds()
    centre = xs[0] if xs else Point((left + right) / 2, (low + high) / 2)

    def fixed(middle: Point, tip: Point) -> Point:
        axis = middle - tip
        if abs(axis.y) >= abs(axis.x):
            return Point(centre.x, middle.y) if abs(centre.x - middle.x) > 1.0 else Point(left - 10.0, middle.y)
        return Point(middle.x, high + 1000.0)

    return fixed


def _fold(
    name: str,
    edge: str,
    start: float,
    end: float,
    one: Point,
    two: Point,
    tip: Point,
    anchor: Callable[[Point, Point], Point],
) -> Shut:
    middle = one.mid(two)
    fixed = anchor(middle, tip)
    axis = middle - tip
    stays, goes = (one, two) if axis.cross(one - tip) * axis.cross(fixed - tip) > 0 else (two, one)
    return Shut(name, edge, start, end, tip, middle, fixed, stays - goes)


def _reach(piece: Piece, start: Point, way: Vector) -> float:
    """How far the piece goes on that way, mm."""
    left, low, right, high = piece.outline.bounds()
    return max(
        (p - start).dot(way) for p in (Point(left, low), Point(left, high), Point(right, low), Point(right, high))
    )
