"""Points and directions. Coordinates are millimetres, x to the right, y up; angles are radians, counter-
clockwise from +x."""

from __future__ import annotations

import math
from dataclasses import dataclass
from inspect import getattr_static
from math import isfinite
from typing import Protocol, overload

from kit.diagnostic import Message, measured, message
from kit.errors import KitError

TOLERANCE = 0.01
"""What counts as the same place, in mm: far under a pencil line."""


def place(point: Point) -> Message:
    """Where `point` is, as read off squared paper: '12 cm across, 40 cm up'."""
    return message("refusal.near_point", across=measured(point.x), up=measured(point.y))


# A draft makes points and vectors by the hundred thousand, so both have an `__init__` of their own: it turns what it is
# given into floats before setting it, and sets it through the slots, where a frozen dataclass would call `__setattr__`.


@dataclass(frozen=True, slots=True, init=False)
class Vector:
    """A displacement of `x`, `y` mm. Lengths are taken as plain floats.

    >>> Vector(3, 4).length, Vector(3, 4).left()
    (5.0, Vector(x=-4.0, y=3.0))
    """

    x: float
    y: float

    def __init__(self, x: float, y: float) -> None:
        _vector_x(self, x if type(x) is float else float(x))
        _vector_y(self, y if type(y) is float else float(y))

    @classmethod
    def at_angle(cls, angle: float, length: float = 1.0) -> Vector:
        """The vector of `length` mm at `angle` radians ccw from +x."""
        return cls(float(length) * math.cos(angle), float(length) * math.sin(angle))

    def __add__(self, other: Vector) -> Vector:
        return Vector(self.x + other.x, self.y + other.y)

    def __sub__(self, other: Vector) -> Vector:
        return Vector(self.x - other.x, self.y - other.y)

    def __neg__(self) -> Vector:
        return Vector(-self.x, -self.y)

    def __mul__(self, scale: float) -> Vector:
        factor = float(scale)
        return Vector(self.x * factor, self.y * factor)

    __rmul__ = __mul__

    def __truediv__(self, scale: float) -> Vector:
        factor = float(scale)
        return Vector(self.x / factor, self.y / factor)

    def dot(self, other: Vector) -> float:
        return self.x * other.x + self.y * other.y

    def cross(self, other: Vector) -> float:
        """Positive when `other` lies to the left of this vector."""
        return self.x * other.y - self.y * other.x

    @property
    def length(self) -> float:
        return math.hypot(self.x, self.y)

    @property
    def angle(self) -> float:
        """Radians ccw from +x, in (-pi, pi]."""
        return math.atan2(self.y, self.x)

    def unit(self) -> Vector:
        """The same direction, 1 mm long. `KitError` for a vector without length."""
        size = math.hypot(self.x, self.y)
        if size < 1e-12:
            raise KitError(
                message("refusal.same_points"),
                do=message("refusal.move_point_do"),
            )
        return Vector(self.x / size, self.y / size)

    def rotated(self, angle: float) -> Vector:
        """Turned by `angle` radians ccw."""
        cos, sin = math.cos(angle), math.sin(angle)
        return Vector(cos * self.x - sin * self.y, sin * self.x + cos * self.y)

    def left(self) -> Vector:
        """Turned 90 degrees ccw."""
        return Vector(-self.y, self.x)

    def right(self) -> Vector:
        """Turned 90 degrees cw."""
        return Vector(self.y, -self.x)

    def turn_to(self, other: Vector) -> float:
        """The signed angle from this direction to `other`, radians in [-pi, pi], left positive.

        >>> math.degrees(Vector(1, 0).turn_to(Vector(0, -2)))
        -90.0
        """
        return math.atan2(self.cross(other), self.dot(other))


_vector_x, _vector_y = (getattr_static(Vector, name).__set__ for name in ("x", "y"))  # the slots of a frozen class


@dataclass(frozen=True, slots=True, init=False)
class Point:
    """A place on the paper, in mm. `KitError` when a coordinate is not a finite number.

    >>> Point(0, 0).toward(Point(30, 40), 10), Point(0, 0) + Vector(0, 5), Point(3, 4) - Point(0, 0)
    (Point(x=6.0, y=8.0), Point(x=0.0, y=5.0), Vector(x=3.0, y=4.0))
    """

    x: float
    y: float

    def __init__(self, x: float, y: float) -> None:
        if type(x) is not float:
            x = float(x)
        if type(y) is not float:
            y = float(y)
        _point_x(self, x)
        _point_y(self, y)
        if not (isfinite(x) and isfinite(y)):
            raise KitError(
                message("refusal.no_place"),
                do=message("refusal.no_place_do"),
            )

    def __add__(self, step: Vector) -> Point:
        return Point(self.x + step.x, self.y + step.y)

    @overload
    def __sub__(self, other: Point) -> Vector: ...
    @overload
    def __sub__(self, other: Vector) -> Point: ...
    def __sub__(self, other: Point | Vector) -> Vector | Point:
        if isinstance(other, Point):
            return Vector(self.x - other.x, self.y - other.y)
        return Point(self.x - other.x, self.y - other.y)

    def distance(self, other: Point) -> float:
        return math.hypot(self.x - other.x, self.y - other.y)

    def toward(self, other: Point, distance: float) -> Point:
        """The point `distance` mm from here in the direction of `other`. `KitError` when both coincide."""
        step = (other - self).unit()
        reach = float(distance)
        return Point(self.x + step.x * reach, self.y + step.y * reach)

    def mid(self, other: Point) -> Point:
        return Point((self.x + other.x) / 2, (self.y + other.y) / 2)

    def lerp(self, other: Point, t: float) -> Point:
        """The point at share `t` of the way to `other` (0 here, 1 there)."""
        return Point(self.x + (other.x - self.x) * t, self.y + (other.y - self.y) * t)

    def close_to(self, other: Point, tol: float = TOLERANCE) -> bool:
        return math.hypot(self.x - other.x, self.y - other.y) <= tol

    def mirrored(self, line: Axis) -> Point:
        """The mirror image across the endless line through `line`."""
        across = (line.end - line.start).unit().left()
        off = (self - line.start).dot(across)
        return Point(self.x - 2 * off * across.x, self.y - 2 * off * across.y)


_point_x, _point_y = (getattr_static(Point, name).__set__ for name in ("x", "y"))


class Axis(Protocol):
    """What can be mirrored across: anything with a `start` and an `end`, carried on endlessly both ways."""

    @property
    def start(self) -> Point: ...

    @property
    def end(self) -> Point: ...


UP = Vector(0.0, 1.0)
DOWN = Vector(0.0, -1.0)
LEFT = Vector(-1.0, 0.0)
RIGHT = Vector(1.0, 0.0)
