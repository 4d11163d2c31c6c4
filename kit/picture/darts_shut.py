"""A piece with darts and pleats sewn, drawn flat: the mouth of each is closed, the edge runs on smoothly over it.

Cloth with a dart in it does not lie flat. The drawing gives what the eye sees of it from above: the two legs meet in
the middle between them, the cloth beside them follows, less and less farther off, and a hand's breadth away everything
lies as drafted; so a side seam still meets the one it is sewn to.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Iterable
from dataclasses import dataclass, replace
from itertools import pairwise

from kit.errors import KitError
from kit.geometry import Curve, Line, Path, Point, Vector
from kit.picture.chains import whole_steps
from kit.piece.dart import mouth, sewn_point
from kit.piece.darts_and_pleats import Dart, Pleat
from kit.piece.piece import Piece

Warp = Callable[[Point], Point]
Reach = tuple[float, float, float, float]
_OVER = 1.3  # shares of its depth up to which a dart goes on widening beyond the edge
_REACH = 70.0  # mm beside a dart as far as the cloth follows
_SMOOTH = 40.0  # mm beside a dart over which its edge is drawn smooth
_STEP = 5.0  # mm between the points of a line that is moved


@dataclass(frozen=True)
class ShutFold:
    """A dart or pleat as it is drawn shut: its `point`, the unit vector `deep` from there through the middle of its
    mouth, `depth` and half the width of the mouth `half` in mm, the unit vector `toward` square to it to the side it is
    pressed to, and how far beside it the cloth follows (`reach`, mm)."""

    name: str
    point: Point
    deep: Vector
    depth: float
    half: float
    toward: Vector
    reach: float

    def __call__(self, p: Point) -> Point:
        off = p - self.point
        up, aside = off.dot(self.deep) / self.depth, off.dot(self.toward)
        if up <= 0:
            return p
        half = self.half * min(up, _OVER)
        side, far = (1.0 if aside >= 0 else -1.0), abs(aside)
        if far <= half:
            moved = 0.0
            # between the legs the edge rises to the fold; it is taken down to where the legs meet
            p = p - self.deep * ((half - far) * self.half / self.depth)
        else:
            # From the leg on, the cloth is drawn in by `half`, and by less until nothing at `reach`; the cubic is level
            # at both ends and nowhere steeper than 3/2, so that nothing is turned over while half < 2/3 reach.
            share = min((far - half) / max(self.reach, 1.6 * half), 1.0)
            moved = far - half * (1.0 - share * share * (3.0 - 2.0 * share))
        # The edge comes to a peak at the mouth as drafted, half the dart's angle on either side of level; it is raised
        # beside the seam by as much, and less and less farther off.
        raised = self.half / self.depth * moved * math.exp(-((moved / _SMOOTH) ** 2)) * min(up, 1.0)
        return p + self.toward * (side * moved - aside) + self.deep * raised

    @property
    def seam(self) -> Path:
        """The row, from the edge to the point."""
        return Path.line(self.point + self.deep * self.depth, self.point)

    def wedge(self, allowance: float) -> tuple[Point, Point, Point]:
        """What is folded away, as it lies on the wrong side: point, seam at the cut edge, fold at the cut edge."""
        over = 1.0 + allowance / self.depth
        foot = self.point + self.deep * (self.depth * over)
        return self.point, foot, foot + self.toward * (self.half * over) + self.deep * (self.half**2 / self.depth)


def shut_folds(piece: Piece, names: Iterable[str]) -> tuple[ShutFold, ...]:
    """The darts and pleats of those names, as they are drawn shut. One that does not lie on its edge is left out."""
    wanted = set(names)
    found: list[ShutFold] = []
    several: list[Dart | Pleat] = [*piece.darts, *piece.pleats]
    for each in several:
        if each.name in wanted:
            try:
                found.append(_shut(piece, each))
            except (KitError, ZeroDivisionError):
                continue  # told by the proof
    feet = [fold.point + fold.deep * fold.depth for fold in found]
    return tuple(
        replace(fold, reach=min([_REACH, *(foot.distance(other) * 0.8 for other in feet if other is not foot)]))
        for fold, foot in zip(found, feet, strict=True)
    )


def _shut(piece: Piece, it: Dart | Pleat) -> ShutFold:
    if isinstance(it, Dart):
        point, (one, two) = sewn_point(piece, it), mouth(piece, it)
        pressed = it.pressed
    else:
        first, second = it.lines
        edge = piece.edge(it.edge).path
        if edge.distance_to(first.start) > edge.distance_to(first.end):
            first, second = first.reversed(), second.reversed()
        one, two, point = first.start, second.start, first.end.mid(second.end)
        pressed = it.laid
    middle = one.mid(two)
    deep = (middle - point).unit()
    path = piece.edge(it.edge).path
    end = path.start if pressed == "start" else path.end
    toward = deep.left() if (end - middle).dot(deep.left()) > 0 else deep.left() * -1.0
    return ShutFold(it.name, point, deep, point.distance(middle), one.distance(two) / 2, toward, _REACH)


def warped(path: Path, warp: Warp, reach: Reach | None = None, step: float = _STEP) -> Path:
    """A path moved point by point, as straight lines of `step` mm to less than twice that, or shorter where the path's
    own points are closer. What lies outside the box `reach` (xmin, ymin, xmax, ymax) is not moved and stays."""
    found: list[Curve] = []
    for curve in path.curves:
        if reach is not None:
            x0, y0, x1, y1 = curve.bounds()
            if x1 < reach[0] or x0 > reach[2] or y1 < reach[1] or y0 > reach[3]:
                if found and found[-1].end.distance(curve.start) > 1e-6:  # the line before it was moved at its end
                    found.append(Line(found[-1].end, curve.start))
                found.append(curve)
                continue
        own = list(curve.points(0.4))
        points: list[Point] = []
        for a, b in pairwise(own):
            count = max(whole_steps(a.distance(b), step), 1)
            points += [a.lerp(b, number / count) for number in range(count)]
        moved = [warp(p) for p in (*points, own[-1])]
        if found:  # where a warp jumps at a corner the line goes on from where it was
            moved.insert(0, found[-1].end)
        found += [Line(a, b) for a, b in pairwise(moved) if a.distance(b) > 1e-6]
    if not found:
        start = warp(path.start)
        return Path((Line(start, start + Vector(0.01, 0.0)),))
    return Path(tuple(found))


def reach_of(folds: Iterable[ShutFold]) -> Reach:
    """The box that the folds move anything in."""
    corners = [
        fold.point + fold.deep * (fold.depth * up * 2.0) + fold.toward * (side * (fold.reach + 2 * fold.half))
        for fold in folds
        for up in (0.0, 1.0)
        for side in (-1.0, 1.0)
    ]
    xs, ys = [q.x for q in corners], [q.y for q in corners]
    return min(xs), min(ys), max(xs), max(ys)


def all_of(folds: Iterable[ShutFold]) -> Warp:
    """Several folds shut, one after another."""
    several = tuple(folds)

    def warp(p: Point) -> Point:
        for fold in several:
            p = fold(p)
        return p

    return warp
