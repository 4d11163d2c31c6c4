"""A connected run of curves: one edge of a piece, a seam line, a guide."""

from __future__ import annotations

import math
from bisect import bisect_right
from collections.abc import Iterable
from dataclasses import dataclass, field
from itertools import pairwise
from typing import Literal

from kit.diagnostic import measured, message
from kit.errors import KitError
from kit.geometry.curve import Bounds, Curve
from kit.geometry.line import Line
from kit.geometry.meet import apart, meet
from kit.geometry.motion import Motion
from kit.geometry.point import TOLERANCE, Point, Vector, place

End = Literal["start", "end"]

_CORNER = math.radians(1.0)


@dataclass(frozen=True, slots=True)
class Path:
    """Curves joined end to start, travelled in order. `KitError` when there are none, or when a joint gapes
    by more than `TOLERANCE`. Distances are mm along from the start.

    >>> path = Path.of(Line(Point(0, 0), Point(30, 0)), Line(Point(30, 0), Point(30, 40)))
    >>> path.length, path.at(50.0), path.corners
    (70.0, Point(x=30.0, y=20.0), (30.0,))
    """

    curves: tuple[Curve, ...]
    _marks: tuple[float, ...] | None = field(default=None, init=False, repr=False, compare=False)

    def __post_init__(self) -> None:
        curves = self.curves
        if type(curves) is not tuple:
            curves = tuple(curves)
            object.__setattr__(self, "curves", curves)
        if not curves:
            raise KitError("a path needs at least one line or curve.", do="Give it one.")
        for before, after in pairwise(curves):
            gap = before.end.distance(after.start)
            if gap > TOLERANCE:
                raise KitError(
                    message("refusal.lines_apart", gap=measured(gap, "exact")),
                    where=place(before.end),
                    do=message("refusal.lines_apart_do"),
                )

    # ---- making -------------------------------------------------------------------------------------------

    @classmethod
    def of(cls, *parts: Curve | Path) -> Path:
        """Curves and paths joined in order; lines without length are left out where others remain."""
        curves: list[Curve] = []
        for part in parts:
            curves.extend(part.curves if isinstance(part, Path) else (part,))
        long = tuple(curve for curve in curves if curve.length > 1e-9)
        return cls(long or tuple(curves))

    @classmethod
    def line(cls, a: Point, b: Point) -> Path:
        return cls((Line(a, b),))

    @classmethod
    def through(
        cls, points: Iterable[Point], start_direction: Vector | None = None, end_direction: Vector | None = None
    ) -> Path:
        """The smooth curve through `points` in order, by Hobby's splines; it leaves and arrives along the
        directions given, else as a circle would. `KitError` for fewer than two points or two alike in a row.

        >>> ring = Path.through([Point(100, 0), Point(0, 100), Point(-100, 0)], Vector(0, 1), Vector(0, -1))
        >>> round(ring.distance_to(Point(0, 0)))
        100
        """
        from kit.geometry.spline import spline

        return cls(spline(list(points), start_direction, end_direction))

    # ---- measuring ----------------------------------------------------------------------------------------

    @property
    def start(self) -> Point:
        return self.curves[0].start

    @property
    def end(self) -> Point:
        return self.curves[-1].end

    @property
    def marks(self) -> tuple[float, ...]:
        """The distance at which each curve starts, and last the whole length."""
        known = self._marks
        if known is None:
            total, found = 0.0, [0.0]
            for curve in self.curves:
                total += curve.length
                found.append(total)
            known = tuple(found)
            object.__setattr__(self, "_marks", known)
        return known

    @property
    def length(self) -> float:
        return self.marks[-1]

    @property
    def is_closed(self) -> bool:
        """Whether the end meets the start (and the path goes anywhere at all)."""
        return self.start.close_to(self.end) and self.length > 10 * TOLERANCE

    @property
    def is_straight(self) -> bool:
        """Whether the path is one straight line throughout, within `TOLERANCE`."""
        chord = self.end - self.start
        if abs(chord.length - self.length) > TOLERANCE:
            return False
        if len(self.curves) == 1 and isinstance(self.curves[0], Line):
            return True
        if chord.length < 1e-9:
            return False
        way = chord.unit()
        return all(abs(way.cross(p - self.start)) <= TOLERANCE for c in self.curves for p in c.points())

    def _locate(self, distance: float) -> tuple[int, float]:
        """The curve a distance lies on and the distance along it; a joint belongs to the later curve."""
        d, marks = float(distance), self.marks
        if not -1e-6 <= d <= marks[-1] + 1e-6:
            raise KitError(
                message("refusal.off_end", along=measured(d), length=measured(marks[-1])),
                where=place(self.end if d > 0 else self.start),
                do=message("refusal.off_end_do", length=measured(marks[-1])),
            )
        d = min(max(d, 0.0), marks[-1])
        i = min(bisect_right(marks, d) - 1, len(self.curves) - 1)
        return i, min(d - marks[i], self.curves[i].length)

    def at(self, distance: float) -> Point:
        """The point `distance` mm along. `KitError` outside 0..length (by more than 1e-6)."""
        i, d = self._locate(distance)
        return self.curves[i].at(d)

    def tangent_at(self, distance: float) -> Vector:
        """Unit vector of travel there; at a corner, that of the line after it."""
        i, d = self._locate(distance)
        return self.curves[i].tangent(self.curves[i].t_at(d))

    def normal_at(self, distance: float) -> Vector:
        """Unit vector square to travel, on the left."""
        return self.tangent_at(distance).left()

    @property
    def start_tangent(self) -> Vector:
        return self.curves[0].tangent(0.0)

    @property
    def end_tangent(self) -> Vector:
        return self.curves[-1].tangent(1.0)

    @property
    def corners(self) -> tuple[float, ...]:
        """Distances of the joints where the direction turns by more than one degree."""
        found = []
        for i in range(1, len(self.curves)):
            if abs(self.curves[i - 1].tangent(1.0).turn_to(self.curves[i].tangent(0.0))) > _CORNER:
                found.append(self.marks[i])
        return tuple(found)

    def bounds(self) -> Bounds:
        boxes = [curve.bounds() for curve in self.curves]
        return (
            min(b[0] for b in boxes),
            min(b[1] for b in boxes),
            max(b[2] for b in boxes),
            max(b[3] for b in boxes),
        )

    def points(self, tol: float = TOLERANCE) -> list[Point]:
        """Points from start to end whose chords stay within `tol` mm of the path."""
        found = list(self.curves[0].points(tol))
        for curve in self.curves[1:]:
            found.extend(curve.points(tol)[1:])
        return found

    def nearest(self, point: Point) -> float:
        """The distance along of the path's point nearest to `point`.

        >>> Path.line(Point(0, 0), Point(100, 0)).nearest(Point(40, 7))
        40.0
        """
        i, t, _ = self._nearest(point)
        return self.marks[i] + along(self.curves[i], t)

    def distance_to(self, point: Point) -> float:
        """How far `point` is from the path, in mm."""
        return self._nearest(point)[2]

    def _nearest(self, point: Point) -> tuple[int, float, float]:
        """The curve nearest to `point`, the parameter there, and how far that is."""
        found = (0, 0.0, math.inf)
        for i, curve in enumerate(self.curves):
            if i:
                x0, y0, x1, y1 = curve.bounds()
                if math.hypot(max(x0 - point.x, 0.0, point.x - x1), max(y0 - point.y, 0.0, point.y - y1)) >= found[2]:
                    continue
            t = curve.nearest(point)
            gap = curve.point(t).distance(point)
            if gap < found[2]:
                found = (i, t, gap)
        return found

    # ---- parts and copies ---------------------------------------------------------------------------------

    def split(self, distance: float) -> tuple[Path, Path]:
        """The parts before and after `distance`. `KitError` at an end, where one part would be nothing."""
        d = float(distance)
        if not 1e-6 < d < self.length - 1e-6:
            raise KitError(
                message("refusal.cut_off_end", length=measured(self.length), along=measured(d)),
                where=place(self.start if d < 1 else self.end),
                do=message("refusal.cut_off_end_do", length=measured(self.length)),
            )
        return self.between(0.0, d), self.between(d, self.length)

    def between(self, d0: float, d1: float) -> Path:
        """The part from `d0` to `d1` mm along, travelled that way round (reversed when d1 is less).

        >>> Path.line(Point(0, 0), Point(100, 0)).between(20.0, 50.0).start
        Point(x=20.0, y=0.0)
        """
        if float(d1) < float(d0):
            return self.between(d1, d0).reversed()
        (i, from_), (j, to) = self._locate(d0), self._locate(d1)
        if float(d1) - float(d0) < 1e-9:
            raise KitError(
                message("refusal.nothing_between", start=measured(d0), end=measured(d1)),
                where=place(self.at(d0)),
                do=message("refusal.nothing_between_do"),
            )
        if i == j:
            return Path((_cut(self.curves[i], from_, to),))
        parts: list[Curve] = []
        if self.curves[i].length - from_ > 1e-9:
            parts.append(_cut(self.curves[i], from_, self.curves[i].length))
        parts.extend(self.curves[i + 1 : j])
        if to > 1e-9:
            parts.append(_cut(self.curves[j], 0.0, to))
        return Path(tuple(parts))

    def reversed(self) -> Path:
        return Path(tuple(curve.reversed() for curve in reversed(self.curves)))

    def moved(self, motion: Motion) -> Path:
        return Path(tuple(curve.moved(motion) for curve in self.curves))

    def mirrored(self, line: Line) -> Path:
        """The mirror image across the endless line through `line`, travelled the same way.

        >>> Path.line(Point(10, 0), Point(20, 5)).mirrored(Line(Point(0, 0), Point(0, 1))).end
        Point(x=-20.0, y=5.0)
        """
        return self.moved(Motion.reflection(line.start, line.end))

    def joined(self, other: Path) -> Path:
        """This path, then `other`. `KitError` when they do not join."""
        return Path(self.curves + other.curves)

    def __add__(self, other: Path) -> Path:
        return self.joined(other)

    # ---- meeting others -----------------------------------------------------------------------------------

    def meetings(self, other: Path) -> list[tuple[Point, float, float]]:
        """Where this path meets `other`: (point, distance along this, distance along other), in order."""
        found: list[tuple[Point, float, float]] = []
        boxes = [curve.bounds() for curve in other.curves]
        for i, a in enumerate(self.curves):
            box = a.bounds()
            for j, b in enumerate(other.curves):
                if apart(box, boxes[j], TOLERANCE):
                    continue
                for p, t, s in meet(a, b):
                    one = (p, self.marks[i] + along(a, t), other.marks[j] + along(b, s))
                    if not any(abs(one[1] - m[1]) < TOLERANCE and abs(one[2] - m[2]) < TOLERANCE for m in found):
                        found.append(one)
        return sorted(found, key=lambda m: m[1])

    def crossings(self, other: Path) -> list[Point]:
        """The points where this path meets `other`, in order along this one.

        >>> Path.line(Point(0, 0), Point(10, 10)).crossings(Path.line(Point(0, 10), Point(10, 0)))
        [Point(x=5.0, y=5.0)]
        """
        found: list[Point] = []
        for p, _, _ in self.meetings(other):
            if not any(p.close_to(q) for q in found):
                found.append(p)
        return found

    def extended(self, distance: float, end: End = "end") -> Path:
        """Carried on straight by `distance` mm (0 or more) at one end, along the tangent there.

        >>> Path.line(Point(0, 0), Point(10, 0)).extended(5.0, end="start").start
        Point(x=-5.0, y=0.0)
        """
        d = float(distance)
        if not d >= 0:
            raise KitError(message("refusal.carried_back", by=measured(d)), do=message("refusal.above_zero_do"))
        if d == 0:
            return self
        if end == "start":
            return self.reversed().extended(d).reversed()
        last, way = self.curves[-1], self.end_tangent
        tip = self.end + way * d
        if isinstance(last, Line):
            return Path((*self.curves[:-1], Line(last.start, tip)))
        return Path((*self.curves, Line(last.end, tip)))

    def to(self, other: Path, end: End = "end") -> Path:
        """Trimmed at `other` where the two cross (the crossing nearest to that end), else carried on straight
        until it meets `other`. `KitError` when it never does.

        >>> Path.line(Point(0, 0), Point(10, 0)).to(Path.line(Point(20, -5), Point(20, 5))).end
        Point(x=20.0, y=0.0)
        """
        if end == "start":
            return self.reversed().to(other).reversed()
        inside = [d for _, d, _ in self.meetings(other) if d > TOLERANCE]
        if inside:
            d = max(inside)
            return self if d >= self.length - 1e-6 else self.between(0.0, d)
        box = other.bounds()
        reach = self.end.distance(Point((box[0] + box[2]) / 2, (box[1] + box[3]) / 2))
        reach += math.hypot(box[2] - box[0], box[3] - box[1]) + 1.0
        ray = Path.line(self.end, self.end + self.end_tangent * reach)
        ahead = ray.meetings(other)
        if not ahead:
            raise KitError(
                message("refusal.never_meets"),
                where=place(self.end),
                do=message("refusal.never_meets_do"),
            )
        return self.extended(ahead[0][1])


def along(curve: Curve, t: float) -> float:
    """The distance in mm from the curve's start to parameter `t`."""
    if t <= 0.0:
        return 0.0
    if t >= 1.0:
        return curve.length
    from kit.geometry.cubic import Cubic

    return curve.length_between(0.0, t) if isinstance(curve, Cubic) else curve.length * t


def _cut(curve: Curve, d0: float, d1: float) -> Curve:
    if d0 <= 1e-9 and d1 >= curve.length - 1e-9:
        return curve
    return curve.between(curve.t_at(d0), curve.t_at(min(d1, curve.length)))
