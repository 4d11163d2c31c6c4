"""Cubic Bezier curves: every freehand curve of a draft.

Lengths come from adaptive Gauss-Legendre quadrature; curves given by their end directions get handles by
J. D. Hobby's rule ("Smooth, easy to compute interpolating splines", Discrete & Computational Geometry 1,
1986), which turns a circle's tangents into that circle within 0.03 % for a quarter turn.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, field
from functools import lru_cache
from itertools import pairwise

from kit.diagnostic import message, number
from kit.errors import KitError
from kit.geometry.curve import Bounds, Curve, too_tight
from kit.geometry.motion import Motion
from kit.geometry.point import TOLERANCE, Point, Vector, place
from kit.geometry.power_form import Power, extent, foot, halved, quadrature
from kit.geometry.roots import cubic_roots

_SHORT = 1 / 64
"""How much of a curve without a slow spot the rule measures at once: see `Cubic.length_between`."""


def hobby_handle(theta: float, phi: float) -> float:
    """Hobby's velocity over 3: the handle's share of the chord at the end where the curve makes `theta` with
    the chord, `phi` at the other end (radians, same sign when the curve stays on one side); 4 at most, as it grows
    without bound where both ends point backwards."""
    st, sp, ct, cp = math.sin(theta), math.sin(phi), math.cos(theta), math.cos(phi)
    root5 = math.sqrt(5.0)
    top = 2.0 + math.sqrt(2.0) * (st - sp / 16.0) * (sp - st / 16.0) * (ct - cp)
    under = 3.0 * (1.0 + 0.5 * (root5 - 1.0) * ct + 0.5 * (3.0 - root5) * cp)
    return min(4.0, top / max(under, 1e-9))


@dataclass(frozen=True, slots=True)
class Cubic(Curve):
    """A cubic Bezier curve from `start` to `end` with handles `c1` and `c2` (mm)."""

    start: Point
    c1: Point
    c2: Point
    end: Point
    _power: Power | None = field(default=None, init=False, repr=False, compare=False)
    _length: float | None = field(default=None, init=False, repr=False, compare=False)
    _slow: tuple[float, ...] | None = field(default=None, init=False, repr=False, compare=False)
    _box: Bounds | None = field(default=None, init=False, repr=False, compare=False)

    @classmethod
    def square(
        cls,
        start: Point,
        start_direction: Vector,
        end: Point,
        end_direction: Vector,
        fullness: float = 1.0,
        *,
        turned: bool = False,
    ) -> Cubic:
        """The smooth curve that leaves `start` along `start_direction` and arrives at `end` travelling along
        `end_direction`. `fullness` scales both handles (1 is nearest to a circle).

        Raises `KitError` when the ends coincide, or when the curve would cross itself or, unless it may be `turned`,
        double back (anywhere travel away from its end).

        >>> quarter = Cubic.square(Point(100, 0), Vector(0, 1), Point(0, 100), Vector(-1, 0))
        >>> abs(quarter.length / (50 * math.pi) - 1) < 0.0003  # a quarter of a circle
        True
        """
        fullness = float(fullness)
        chord = end - start
        size = chord.length
        if size < TOLERANCE:
            raise KitError(
                message("refusal.curve_ends"),
                where=place(start),
                do=message("refusal.move_end_do"),
            )
        if not 0.05 <= fullness <= 3.0:
            raise KitError(
                message("refusal.fullness", fullness=number(fullness)),
                do=message("refusal.fullness_do", least=number(0.3), most=number(1.6)),
            )
        leave, arrive = start_direction.unit(), end_direction.unit()
        # Both angles are signed so that they agree where the curve stays on one side of its chord, as an arc does;
        # of opposite signs they make an S. The rule gives each handle from both angles.
        theta, phi = chord.turn_to(leave), arrive.turn_to(chord)
        out = hobby_handle(theta, phi) * size * fullness
        back = hobby_handle(phi, theta) * size * fullness
        curve = cls(start, start + leave * out, end - arrive * back, end)
        crossing = curve.self_crossing()
        if crossing is not None:
            raise KitError(
                message("refusal.curve_crosses"),
                where=place(crossing),
                do=message("refusal.curve_crosses_do"),
            )
        t = None if turned else curve.doubling_back()
        if t is not None:
            off = max(abs(math.degrees(theta)), abs(math.degrees(phi)))
            raise KitError(
                message("refusal.doubles_back", degrees=round(off))
                if off > 90.5
                else message("refusal.doubles_back_full", fullness=number(fullness)),
                where=place(curve.point(t)),
                do=message("refusal.doubles_back_do" if off > 90.5 else "refusal.doubles_back_full_do"),
            )
        return curve

    # ---- evaluation ---------------------------------------------------------------------------------------

    def _coefficients(self) -> Power:
        known = self._power
        if known is not None:
            return known
        x0, y0, x1, y1 = self.start.x, self.start.y, self.c1.x, self.c1.y
        x2, y2, x3, y3 = self.c2.x, self.c2.y, self.end.x, self.end.y
        power = (
            x3 - x0 + 3 * (x1 - x2),
            3 * (x0 - 2 * x1 + x2),
            3 * (x1 - x0),
            x0,
            y3 - y0 + 3 * (y1 - y2),
            3 * (y0 - 2 * y1 + y2),
            3 * (y1 - y0),
            y0,
        )
        object.__setattr__(self, "_power", power)
        return power

    def xy(self, t: float) -> tuple[float, float]:
        """Coordinates at `t` as plain floats (mm)."""
        ax, bx, cx, dx, ay, by, cy, dy = self._coefficients()
        return ((ax * t + bx) * t + cx) * t + dx, ((ay * t + by) * t + cy) * t + dy

    def point(self, t: float) -> Point:
        if t == 0.0:
            return self.start
        if t == 1.0:
            return self.end
        return Point(*self.xy(t))

    def _velocity(self, t: float) -> tuple[float, float]:
        ax, bx, cx, _, ay, by, cy, _ = self._coefficients()
        return (3 * ax * t + 2 * bx) * t + cx, (3 * ay * t + 2 * by) * t + cy

    def derivative(self, t: float) -> Vector:
        return Vector(*self._velocity(t))

    def tangent(self, t: float) -> Vector:
        vx, vy = self._velocity(t)
        size = math.hypot(vx, vy)
        if size > 1e-9:
            return Vector(vx / size, vy / size)
        # A handle of no length: the direction is that of the next control point that differs.
        if t <= 0.5:
            for other in (self.c2, self.end):
                if other.distance(self.start) > 1e-9:
                    return (other - self.start).unit()
        for other in (self.c1, self.start):
            if other.distance(self.end) > 1e-9:
                return (self.end - other).unit()
        return (self.end - self.start).unit()

    def curvature(self, t: float) -> float:
        ax, bx, cx, _, ay, by, cy, _ = self._coefficients()
        vx, vy = (3 * ax * t + 2 * bx) * t + cx, (3 * ay * t + 2 * by) * t + cy
        speed2 = vx * vx + vy * vy
        if speed2 < 1e-12:
            return self.curvature(t + 1e-4 if t < 0.5 else t - 1e-4) if 0.0 <= t <= 1.0 else 0.0
        wx, wy = 6 * ax * t + 2 * bx, 6 * ay * t + 2 * by
        return (vx * wy - vy * wx) / (speed2 * math.sqrt(speed2))

    # ---- length -------------------------------------------------------------------------------------------

    @property
    def length(self) -> float:
        known = self._length
        if known is None:
            known = _whole_length(self)
            object.__setattr__(self, "_length", known)
        return known

    def length_between(self, t0: float, t1: float) -> float:
        """Length in mm from `t0` to `t1`, by 8-point Gauss-Legendre, halved until steady to 1e-6 mm."""
        ax, bx, cx, _, ay, by, cy, _ = self._coefficients()
        velocity = 3 * ax, 2 * bx, cx, 3 * ay, 2 * by, cy
        # A short stretch where the curve goes forward needs no second look. Let S be the way by the control points:
        # along the chord the velocity is more than 0.3 S there, and it changes by less than 6 S a unit of t (and that
        # by less than 12 S), so the speed has no root nearer than 0.03 in the complex plane. The rule's error falls
        # with the 16th power of that distance over half the stretch, twice taken: 8 to the power of 16.
        slow = self._slow_spots()
        if not slow and abs(t1 - t0) <= _SHORT and self._goes_forward():
            return quadrature(velocity, t0, t1)

        # A cusp, or nearly one, is where Gauss's rule is worst, for the speed has a corner there that halving would
        # have to close in on; so the length is taken from one slow spot to the next. A stretch whose two halves agree
        # with the whole is done; as the rule is of 16th order, the halves are far better than that difference says.
        def refine(a: float, b: float, whole: float, depth: int) -> float:
            mid = (a + b) / 2
            left, right = quadrature(velocity, a, mid), quadrature(velocity, mid, b)
            if depth == 0 or abs(left + right - whole) < 1e-6:
                return left + right
            return refine(a, mid, left, depth - 1) + refine(mid, b, right, depth - 1)

        stops = [t0, *(t for t in slow if t0 < t < t1), t1]
        return math.fsum(refine(a, b, quadrature(velocity, a, b), 24) for a, b in pairwise(stops))

    def _slow_spots(self) -> tuple[float, ...]:
        """Parameters, in order, where the speed has a deep minimum: at a cusp or close to one the length and
        the curvature change abruptly there."""
        known = self._slow
        if known is None:
            known = () if self._goes_forward() else self._slowest()
            object.__setattr__(self, "_slow", known)
        return known

    def _goes_forward(self) -> bool:
        """Whether the curve travels along its chord at a good speed throughout, as most do: it has no slow spot then.
        The velocity is a mean of the three times thrice the way from one control point to the next."""
        x0, y0, x1, y1 = self.start.x, self.start.y, self.c1.x, self.c1.y
        x2, y2, x3, y3 = self.c2.x, self.c2.y, self.end.x, self.end.y
        gx, gy = x3 - x0, y3 - y0
        least = min((x1 - x0) * gx + (y1 - y0) * gy, (x2 - x1) * gx + (y2 - y1) * gy, (x3 - x2) * gx + (y3 - y2) * gy)
        return least > 0.101 * self._usual_speed() * math.hypot(gx, gy)  # a tenth, and room for rounding

    def _usual_speed(self) -> float:
        return self.start.distance(self.c1) + self.c1.distance(self.c2) + self.c2.distance(self.end)

    def _slowest(self) -> tuple[float, ...]:
        ax, bx, cx, _, ay, by, cy, _ = self._coefficients()
        roots = cubic_roots(
            18 * (ax * ax + ay * ay),
            18 * (ax * bx + ay * by),
            4 * (bx * bx + by * by) + 6 * (ax * cx + ay * cy),
            2 * (bx * cx + by * cy),
        )
        slow = 0.3 * self._usual_speed()
        return tuple(sorted({t for t in roots if 0.0 < t < 1.0 and math.hypot(*self._velocity(t)) < slow}))

    def t_at(self, distance: float) -> float:
        d, length = self.on(distance), self.length
        if d <= 0.0 or length <= 0.0:
            return 0.0
        return 1.0 if d >= length else _parameter_at(self, d)

    def _searched(self, d: float) -> float:
        """The parameter at a distance between 0 and the length."""
        low, high, t = 0.0, 1.0, d / self.length
        done, at = 0.0, 0.0  # length `done` is known up to the parameter `at`
        # Newton's method, for the derivative of the length is the speed, kept in a bracket that shrinks: near a cusp
        # the speed is almost nothing and a step would leave the curve. Only the stretch since the last try is measured.
        for _ in range(60):
            done += self.length_between(at, t)
            at = t
            off = done - d
            if abs(off) < 1e-8:
                break
            if off > 0:
                high = t
            else:
                low = t
            speed = math.hypot(*self._velocity(t))
            step = t - off / speed if speed > 1e-9 else -1.0
            t = step if low < step < high else (low + high) / 2
            if high - low < 1e-15:
                break
        return t

    # ---- parts and copies ---------------------------------------------------------------------------------

    def between(self, t0: float, t1: float) -> Cubic:
        if t0 <= 0.0 and t1 >= 1.0:
            return self
        # A part of a cubic is a cubic, and so is known from its ends and its velocities there: a handle is a third of
        # the velocity, which is scaled by how much slower the part runs through its own parameter.
        start, end = self.point(t0), self.point(t1)
        third = (t1 - t0) / 3
        v0, v1 = self._velocity(t0), self._velocity(t1)
        return Cubic(
            start,
            Point(start.x + v0[0] * third, start.y + v0[1] * third),
            Point(end.x - v1[0] * third, end.y - v1[1] * third),
            end,
        )

    def reversed(self) -> Cubic:
        return Cubic(self.end, self.c2, self.c1, self.start)

    def moved(self, motion: Motion) -> Cubic:
        made = Cubic(motion(self.start), motion(self.c1), motion(self.c2), motion(self.end))
        if self._length is not None:
            object.__setattr__(made, "_length", self._length)  # a motion is rigid
        return made

    def as_cubics(self) -> tuple[Cubic, ...]:
        return (self,)

    # ---- measuring ----------------------------------------------------------------------------------------

    def bounds(self) -> Bounds:
        known = self._box
        if known is not None:
            return known
        ax, bx, cx, dx, ay, by, cy, dy = self._coefficients()
        xlow, xhigh = extent(self.start.x, self.end.x, ax, bx, cx, dx)
        ylow, yhigh = extent(self.start.y, self.end.y, ay, by, cy, dy)
        box = xlow, ylow, xhigh, yhigh
        object.__setattr__(self, "_box", box)
        return box

    def points(self, tol: float = TOLERANCE) -> list[Point]:
        n = self.segments(tol)
        return [self.start, *(Point(*self.xy(i / n)) for i in range(1, n)), self.end]

    def segments(self, tol: float) -> int:
        """How many chords of equal `t` stay within `tol` mm (from the bound on the second derivative)."""
        ax, bx, _, _, ay, by, _, _ = self._coefficients()
        most = max(math.hypot(2 * bx, 2 * by), math.hypot(6 * ax + 2 * bx, 6 * ay + 2 * by))
        return max(1, math.ceil(math.sqrt(most / (8 * float(tol)))))

    def nearest(self, point: Point) -> float:
        # At the foot the way from the point stands square to the velocity: a polynomial of the fifth degree. Its
        # Bernstein coefficients change sign at least as often as it has roots in (0, 1) (Descartes), so no change
        # means no foot and one means just one; with more, the stretch is halved. So no hook, however tight, is missed.
        px, py = point.x, point.y
        qs = [(p.x - px, p.y - py) for p in (self.start, self.c1, self.c2, self.end)]
        (ax, ay), (bx, by), (cx, cy), (dx, dy) = qs
        ux, uy, vx, vy, wx, wy = bx - ax, by - ay, cx - bx, cy - by, dx - cx, dy - cy
        square: tuple[float, ...] = (
            ax * ux + ay * uy,
            (2 * (ax * vx + ay * vy) + 3 * (bx * ux + by * uy)) / 5,
            ((ax * wx + ay * wy) + 6 * (bx * vx + by * vy) + 3 * (cx * ux + cy * uy)) / 10,
            (3 * (bx * wx + by * wy) + 6 * (cx * vx + cy * vy) + (dx * ux + dy * uy)) / 10,
            (3 * (cx * wx + cy * wy) + 2 * (dx * vx + dy * vy)) / 5,
            dx * wx + dy * wy,
        )
        best_t, best = (0.0, ax * ax + ay * ay) if ax * ax + ay * ay <= dx * dx + dy * dy else (1.0, dx * dx + dy * dy)
        power = self._coefficients()
        open_now = [(square, 0.0, 1.0)]
        while open_now:
            found, low, high = open_now.pop()
            signs = [value > 0 for value in found if value != 0.0]
            changes = sum(a is not b for a, b in pairwise(signs))
            if changes == 0:
                continue
            if changes > 1 and high - low > 1e-12:
                left, right = halved(found)
                t = (low + high) / 2
                open_now += [(right, t, high), (left, low, t)]
                if right[0] != 0.0:
                    continue  # else a foot lies just between the halves, and in neither
            else:
                t = foot(power, px, py, low, high)
            x, y = self.xy(t)
            gap = (x - px) ** 2 + (y - py) ** 2
            if gap < best:
                best_t, best = t, gap
        return best_t

    def area_term(self) -> float:
        # Half the integral of x dy - y dx along the curve (Green's theorem), with the Bernstein polynomials integrated
        # once and for all: summed around an outline these give its area exactly.
        x0, y0, x1, y1 = self.start.x, self.start.y, self.c1.x, self.c1.y
        x2, y2, x3, y3 = self.c2.x, self.c2.y, self.end.x, self.end.y
        return (
            x0 * (6 * y1 + 3 * y2 + y3)
            + x1 * (-6 * y0 + 3 * y2 + 3 * y3)
            + x2 * (-3 * y0 - 3 * y1 + 6 * y3)
            - x3 * (y0 + 3 * y1 + 6 * y2)
        ) / 20

    def self_crossing(self) -> Point | None:
        """Where the curve crosses itself, or None. Solved exactly: with B(s) = B(t) divided by s - t, the sum
        and the product of s and t follow from two linear equations.

        >>> round(Cubic(Point(0, 0), Point(150, 100), Point(-50, 100), Point(100, 0)).self_crossing().x, 6)
        50.0
        """
        ax, bx, cx, _, ay, by, cy, _ = self._coefficients()
        bend = bx * ay - by * ax
        square = ax * ax + ay * ay
        # Without a term of third degree the curve is a parabola, with one parallel to that of second degree an even S:
        # neither has a loop.
        if square < 1e-18 or abs(bend) < 1e-12 * square:
            return None
        total = -(cx * ay - cy * ax) / bend
        product = total * total + ((bx * ax + by * ay) * total + cx * ax + cy * ay) / square
        spread = total * total - 4 * product
        if spread <= 1e-12:
            return None
        root = math.sqrt(spread)
        s, t = (total - root) / 2, (total + root) / 2
        return self.point(s) if s >= -1e-9 and t <= 1 + 1e-9 else None

    def doubling_back(self) -> float | None:
        """A parameter where the curve travels away from its end (against the chord), or None."""
        ux, uy = self.end.x - self.start.x, self.end.y - self.start.y
        ax, bx, cx, _, ay, by, cy, _ = self._coefficients()
        a, b, c = 3 * (ax * ux + ay * uy), 2 * (bx * ux + by * uy), cx * ux + cy * uy
        spots = [0.0, 1.0]
        if abs(a) > 1e-12 and 0.0 < -b / (2 * a) < 1.0:
            spots.append(-b / (2 * a))
        worst = min(spots, key=lambda t: (a * t + b) * t + c)
        # Half a degree of slack, so that an exact right angle is not refused for a rounding error.
        return worst if (a * worst + b) * worst + c < -0.009 * (ux * ux + uy * uy) else None

    # ---- parallels ----------------------------------------------------------------------------------------

    def tightest(self, left: bool, enough: float = 0.0) -> tuple[float, float]:
        """(t, curvature) where the curve bends most to the left (or right); curvature in 1/mm, at least 0.
        Only a bend of `enough` or more need be pinned down exactly."""
        sign, n = (1.0 if left else -1.0), 24
        bends = [sign * self.curvature(i / n) for i in range(n + 1)]
        first = max(range(n + 1), key=bends.__getitem__)
        best_t, best = first / n, bends[first]
        # Near a cusp the curve turns within a moment, which may fall between two looks; it is slow there.
        windows = [(t - 1e-3, t + 1e-3) for t in self._slow_spots()]
        if best >= enough:
            windows.append(((first - 1) / n, (first + 1) / n))
        golden = (math.sqrt(5.0) - 1) / 2
        for low, high in windows:
            low, high = max(0.0, low), min(1.0, high)
            for _ in range(30):
                a, b = high - golden * (high - low), low + golden * (high - low)
                if sign * self.curvature(a) > sign * self.curvature(b):
                    high = b
                else:
                    low = a
            t = (low + high) / 2
            bend = sign * self.curvature(t)
            if bend > best:
                best_t, best = t, bend
        return best_t, max(0.0, best)

    def parallel(self, distance: float) -> tuple[Cubic, ...]:
        d = float(distance)
        if abs(d) < 1e-12:
            return (self,)
        if self.length < 1e-9:
            raise KitError(message("refusal.no_parallel"), where=place(self.start), do=message("refusal.move_end_do"))
        # To the inside of a bend a parallel gets a cusp as soon as its distance is the radius of the tightest place.
        t, most = self.tightest(d > 0, 0.3 / abs(d))
        if abs(d) * most >= 1.0 - 1e-9:
            raise too_tight(d, 1 / most, self.point(t))
        found: list[Cubic] = []
        self._fit_parallel(d, 0.0, 1.0, found, 12)
        return tuple(found)

    def _beside(self, t: float, d: float) -> tuple[float, float, float, float, float, float]:
        """The parallel's point and velocity at `t`, its stretch 1 - d * curvature, and the curvature of the curve."""
        ax, bx, cx, dx, ay, by, cy, dy = self._coefficients()
        vx, vy = (3 * ax * t + 2 * bx) * t + cx, (3 * ay * t + 2 * by) * t + cy
        speed2 = vx * vx + vy * vy
        if speed2 < 1e-12:
            way, bend = self.tangent(t), self.curvature(t)
            wx, wy = way.x, way.y
        else:
            size = math.sqrt(speed2)
            wx, wy = vx / size, vy / size
            bend = (vx * (6 * ay * t + 2 * by) - vy * (6 * ax * t + 2 * bx)) / (speed2 * size)
        x, y = ((ax * t + bx) * t + cx) * t + dx, ((ay * t + by) * t + cy) * t + dy
        stretch = 1.0 - d * bend
        return x - d * wy, y + d * wx, vx * stretch, vy * stretch, stretch, bend

    def _fit_parallel(self, d: float, t0: float, t1: float, found: list[Cubic], depth: int) -> None:
        """Appends cubics that stay within a third of the tolerance of the parallel from `t0` to `t1`.

        The parallel of a cubic is no cubic. Its ends and velocities are known exactly, though, so each cubic is fitted
        to those, and the stretch is halved while five places in between lie off. What counts is how far `aside` a
        place lies: one that lies a little ahead `along` the curve is on it all the same, but for the sagitta of the
        bend over that distance, which is added. Each begins where the last one ended, so that no gap opens from
        rounding."""
        x0, y0, vx0, vy0, _, _ = self._beside(t0, d)
        x3, y3, vx3, vy3, _, _ = self._beside(t1, d)
        third = (t1 - t0) / 3
        if found:
            start = found[-1].end
        else:
            start = Point(x0, y0)
        fit = Cubic(
            start, Point(x0 + vx0 * third, y0 + vy0 * third), Point(x3 - vx3 * third, y3 - vy3 * third), Point(x3, y3)
        )
        if depth:
            for share in (0.15, 0.3, 0.5, 0.7, 0.85):
                t = t0 + (t1 - t0) * share
                x, y, vx, vy, stretch, turn = self._beside(t, d)
                fx, fy = fit.xy(share)
                speed = math.hypot(vx, vy) or 1.0
                along = ((fx - x) * vx + (fy - y) * vy) / speed
                aside = abs((fy - y) * vx - (fx - x) * vy) / speed
                bend = abs(turn / stretch) if stretch > 1e-9 else math.inf
                if aside + bend * along * along / 2 > TOLERANCE / 3 or abs(along) > 2.0:
                    mid = (t0 + t1) / 2
                    self._fit_parallel(d, t0, mid, found, depth - 1)
                    self._fit_parallel(d, mid, t1, found, depth - 1)
                    return
        found.append(fit)


# Lessons are worked again and again with curves that did not change, and every view of a pattern asks for the same
# places on them: four of ten parameters are asked for again in one work and its proof, nine of ten in a search for
# remedies. A curve is a value, so what is known of it is known of its equals.


@lru_cache(maxsize=4096)
def _whole_length(curve: Cubic) -> float:
    return curve.length_between(0.0, 1.0)


@lru_cache(maxsize=16384)
def _parameter_at(curve: Cubic, distance: float) -> float:
    return curve._searched(distance)
