"""Circular arcs: compass lines, quarter circles of a curve drawn with a round, circle skirts."""

from __future__ import annotations

import math
from dataclasses import dataclass, field

from kit.diagnostic import measured, message, number
from kit.errors import KitError
from kit.geometry.cubic import Cubic
from kit.geometry.curve import Bounds, Curve, too_tight
from kit.geometry.motion import Motion
from kit.geometry.point import TOLERANCE, Point, Vector, place


@dataclass(frozen=True, slots=True)
class Arc(Curve):
    """The arc about `centre` with `radius` mm, from `from_angle` (radians ccw from +x) through `sweep` radians
    (positive ccw). `KitError` for a radius that is not positive or a sweep of nothing or over a full turn.

    >>> quarter = Arc(Point(0, 0), 100.0, 0.0, math.pi / 2)
    >>> quarter.start, round(quarter.length, 2)
    (Point(x=100.0, y=0.0), 157.08)
    """

    centre: Point
    radius: float
    from_angle: float
    sweep: float
    start: Point = field(init=False, repr=False, compare=False)
    end: Point = field(init=False, repr=False, compare=False)

    def __post_init__(self) -> None:
        for name in ("radius", "from_angle", "sweep"):
            object.__setattr__(self, name, float(getattr(self, name)))
        if not self.radius > 0:
            raise KitError(
                message("refusal.arc_radius", radius=measured(self.radius)),
                where=place(self.centre),
                do=message("refusal.arc_radius_do"),
            )
        if not 1e-12 < abs(self.sweep) <= 2 * math.pi + 1e-9:
            raise KitError(
                message("refusal.arc_sweep", degrees=number(math.degrees(self.sweep))),
                where=place(self.centre),
                do=message("refusal.arc_sweep_do"),
            )
        object.__setattr__(self, "start", self._on_circle(self.from_angle))
        object.__setattr__(self, "end", self._on_circle(self.from_angle + self.sweep))

    def _on_circle(self, angle: float) -> Point:
        return Point(self.centre.x + self.radius * math.cos(angle), self.centre.y + self.radius * math.sin(angle))

    @property
    def length(self) -> float:
        return self.radius * abs(self.sweep)

    def point(self, t: float) -> Point:
        return self._on_circle(self.from_angle + self.sweep * t)

    def derivative(self, t: float) -> Vector:
        angle, speed = self.from_angle + self.sweep * t, self.radius * self.sweep
        return Vector(-speed * math.sin(angle), speed * math.cos(angle))

    def curvature(self, t: float) -> float:
        return math.copysign(1 / self.radius, self.sweep)

    def t_at(self, distance: float) -> float:
        return self.on(distance) / self.length

    def t_toward(self, point: Point, slack: float = 0.0) -> float | None:
        """The parameter at which the arc passes the ray from its centre through `point`, or None when it does
        not reach that far (by more than `slack` mm); held to 0..1."""
        # How far ahead the point lies in the arc's own sense, 0 to a whole turn. What lies behind the start seems to
        # be almost a turn ahead, so the slack there is looked for last.
        angle = math.atan2(point.y - self.centre.y, point.x - self.centre.x) - self.from_angle
        turn, full = abs(self.sweep), 2 * math.pi
        ahead = (angle if self.sweep > 0 else -angle) % full
        over = slack / self.radius
        if ahead <= turn:
            return ahead / turn
        if ahead - turn <= over:
            return 1.0
        return 0.0 if full - ahead <= over else None

    def between(self, t0: float, t1: float) -> Arc:
        return Arc(self.centre, self.radius, self.from_angle + self.sweep * t0, self.sweep * (t1 - t0))

    def reversed(self) -> Arc:
        return Arc(self.centre, self.radius, self.from_angle + self.sweep, -self.sweep)

    def moved(self, motion: Motion) -> Arc:
        # A reflection turns the sense round: angles are counted back from the motion's own.
        side = -1.0 if motion.flips else 1.0
        return Arc(motion(self.centre), self.radius, motion.angle + side * self.from_angle, side * self.sweep)

    def bounds(self) -> Bounds:
        xs, ys = [self.start.x, self.end.x], [self.start.y, self.end.y]
        first, last = sorted((self.from_angle, self.from_angle + self.sweep))
        # A circle reaches farthest at its quarters; those within the sweep, and the ends, make the box.
        quarter = math.pi / 2
        for k in range(math.ceil(first / quarter), math.floor(last / quarter) + 1):
            xs.append(self.centre.x + self.radius * (1, 0, -1, 0)[k % 4])
            ys.append(self.centre.y + self.radius * (0, 1, 0, -1)[k % 4])
        return min(xs), min(ys), max(xs), max(ys)

    def segments(self, tol: float) -> int:
        """How many equal chords stay within `tol` mm (by their sagitta)."""
        share = min(1.0, float(tol) / self.radius)
        return max(1, math.ceil(abs(self.sweep) / (2 * math.acos(1 - share))))

    def points(self, tol: float = TOLERANCE) -> list[Point]:
        n = self.segments(tol)
        return [self.start, *(self.point(i / n) for i in range(1, n)), self.end]

    def nearest(self, point: Point) -> float:
        t = self.t_toward(point)
        if t is not None:
            return t
        return 0.0 if point.distance(self.start) <= point.distance(self.end) else 1.0

    def parallel(self, distance: float) -> tuple[Arc, ...]:
        d = float(distance)
        radius = self.radius - d if self.sweep > 0 else self.radius + d
        if radius <= 1e-9:
            raise too_tight(d, self.radius, self.point(0.5))
        return (Arc(self.centre, radius, self.from_angle, self.sweep),)

    def as_cubics(self) -> tuple[Cubic, ...]:
        """Cubics of at most 45 degrees each: within 4 parts in a million of the radius."""
        n = max(1, math.ceil(abs(self.sweep) / (math.pi / 4) - 1e-9))
        step = self.sweep / n
        handle = 4 / 3 * math.tan(step / 4) * self.radius
        found = []
        start = self.start
        for i in range(n):
            a0 = self.from_angle + step * i
            a1 = a0 + step
            end = self.end if i == n - 1 else self._on_circle(a1)
            found.append(
                Cubic(
                    start,
                    Point(start.x - handle * math.sin(a0), start.y + handle * math.cos(a0)),
                    Point(end.x + handle * math.sin(a1), end.y - handle * math.cos(a1)),
                    end,
                )
            )
            start = end
        return tuple(found)

    def area_term(self) -> float:
        step = self.end - self.start
        return (self.radius**2 * self.sweep + self.centre.x * step.y - self.centre.y * step.x) / 2
