"""What every curve can do. `Line`, `Arc` and `Cubic` share this interface; lines and arcs are exact, cubics
keep to `TOLERANCE`. A parameter `t` runs from 0 at the start to 1 at the end; a `distance` is mm along."""

from __future__ import annotations

import math
from abc import ABC, abstractmethod
from typing import TYPE_CHECKING, Protocol, Self

from kit.diagnostic import measured, message
from kit.errors import KitError
from kit.geometry.motion import Motion
from kit.geometry.point import TOLERANCE, Axis, Point, Vector, place

Bounds = tuple[float, float, float, float]
"""(xmin, ymin, xmax, ymax) in mm."""


class Handled(Protocol):
    """A curve given by its two ends and a handle for each: what a pen that draws cubics asks of it."""

    @property
    def start(self) -> Point: ...
    @property
    def c1(self) -> Point: ...
    @property
    def c2(self) -> Point: ...
    @property
    def end(self) -> Point: ...


class Curve(ABC):
    """A stretch of line, arc or cubic from `start` to `end`. Values: frozen, hashable, picklable."""

    __slots__ = ()

    if TYPE_CHECKING:

        @property
        def start(self) -> Point: ...
        @property
        def end(self) -> Point: ...

    @property
    @abstractmethod
    def length(self) -> float:
        """Length along the curve in mm."""

    @abstractmethod
    def point(self, t: float) -> Point: ...

    @abstractmethod
    def derivative(self, t: float) -> Vector:
        """Change of the point with `t`, in mm."""

    @abstractmethod
    def curvature(self, t: float) -> float:
        """1/mm, positive where the curve bends to the left of travel."""

    @abstractmethod
    def t_at(self, distance: float) -> float:
        """The parameter `distance` mm along. `KitError` off the ends (by more than 1e-6 mm)."""

    @abstractmethod
    def between(self, t0: float, t1: float) -> Self:
        """The stretch from `t0` to `t1` (t0 < t1)."""

    @abstractmethod
    def reversed(self) -> Self: ...

    @abstractmethod
    def moved(self, motion: Motion) -> Self: ...

    @abstractmethod
    def bounds(self) -> Bounds:
        """The exact bounding box in mm."""

    @abstractmethod
    def points(self, tol: float = TOLERANCE) -> list[Point]:
        """Points from start to end whose chords stay within `tol` mm of the curve."""

    @abstractmethod
    def nearest(self, point: Point) -> float:
        """The parameter of the point of the curve nearest to `point`."""

    @abstractmethod
    def parallel(self, distance: float) -> tuple[Curve, ...]:
        """The parallel `distance` mm to the LEFT of travel (negative: to the right). `KitError` where the
        curve bends too tightly on that side."""

    @abstractmethod
    def as_cubics(self) -> tuple[Handled, ...]:
        """The same curve as cubics, for pens that know no arcs."""

    @abstractmethod
    def area_term(self) -> float:
        """Half the integral of x dy - y dx along the curve (mm2): summed around a closed loop, its area."""

    def tangent(self, t: float) -> Vector:
        """Unit vector of travel."""
        return self.derivative(t).unit()

    def normal(self, t: float) -> Vector:
        """Unit vector square to travel, on the left."""
        return self.tangent(t).left()

    def at(self, distance: float) -> Point:
        """The point `distance` mm along. `KitError` off the ends."""
        return self.point(self.t_at(distance))

    def split(self, t: float) -> tuple[Self, Self]:
        """The stretches before and after `t`."""
        return self.between(0.0, t), self.between(t, 1.0)

    def mirrored(self, line: Axis) -> Self:
        """The mirror image across the endless line through `line`, travelled the same way."""
        return self.moved(Motion.reflection(line.start, line.end))

    def on(self, distance: float) -> float:
        """`distance` as a float held to 0..length. `KitError` when it is off by more than 1e-6 mm."""
        d, length = float(distance), self.length
        if d < -1e-6 or d > length + 1e-6 or math.isnan(d):
            raise KitError(
                message("refusal.off_end", along=measured(d), length=measured(length)),
                where=place(self.end if d > 0 else self.start),
                do=message("refusal.off_end_do", length=measured(length)),
            )
        return min(max(d, 0.0), length)


def too_tight(distance: float, radius: float, where: Point) -> KitError:
    """The refusal of a parallel that would fold back on itself."""
    return KitError(
        message("refusal.curve_tight", by=measured(abs(distance)), radius=measured(radius)),
        where=place(where),
        do=message("refusal.curve_tight_do", radius=measured(radius)),
    )
