"""Straight lines. Everything about them is exact."""

from __future__ import annotations

from dataclasses import dataclass

from kit.diagnostic import message
from kit.errors import KitError
from kit.geometry.cubic import Cubic
from kit.geometry.curve import Bounds, Curve
from kit.geometry.motion import Motion
from kit.geometry.point import TOLERANCE, Point, Vector, place


@dataclass(frozen=True, slots=True)
class Line(Curve):
    """The straight line from `start` to `end`.

    >>> line = Line(Point(0, 0), Point(30, 40))
    >>> line.length, line.point(0.5), line.nearest(Point(15, 20))
    (50.0, Point(x=15.0, y=20.0), 0.5)
    """

    start: Point
    end: Point

    @property
    def length(self) -> float:
        return self.start.distance(self.end)

    def point(self, t: float) -> Point:
        if t == 1.0:
            return self.end
        return self.start.lerp(self.end, t)

    def derivative(self, t: float) -> Vector:
        return self.end - self.start

    def tangent(self, t: float) -> Vector:
        if self.length < 1e-12:
            raise KitError(message("refusal.no_direction"), where=place(self.start), do=message("refusal.move_end_do"))
        return (self.end - self.start).unit()

    def curvature(self, t: float) -> float:
        return 0.0

    def t_at(self, distance: float) -> float:
        d, length = self.on(distance), self.length
        return d / length if length else 0.0

    def between(self, t0: float, t1: float) -> Line:
        return Line(self.point(t0), self.point(t1))

    def reversed(self) -> Line:
        return Line(self.end, self.start)

    def moved(self, motion: Motion) -> Line:
        return Line(motion(self.start), motion(self.end))

    def bounds(self) -> Bounds:
        a, b = self.start, self.end
        return min(a.x, b.x), min(a.y, b.y), max(a.x, b.x), max(a.y, b.y)

    def points(self, tol: float = TOLERANCE) -> list[Point]:
        return [self.start, self.end]

    def nearest(self, point: Point) -> float:
        along = self.end - self.start
        square = along.dot(along)
        return min(1.0, max(0.0, (point - self.start).dot(along) / square)) if square else 0.0

    def parallel(self, distance: float) -> tuple[Line, ...]:
        step = self.tangent(0.0).left() * distance
        return (Line(self.start + step, self.end + step),)

    def as_cubics(self) -> tuple[Cubic, ...]:
        return (Cubic(self.start, self.point(1 / 3), self.point(2 / 3), self.end),)

    def area_term(self) -> float:
        return (self.start.x * self.end.y - self.end.x * self.start.y) / 2
