"""Rigid motions: how a piece is slid, turned or flipped without changing its size."""

from __future__ import annotations

import math
from dataclasses import dataclass

from kit.geometry.point import Point, Vector


@dataclass(frozen=True, slots=True)
class Motion:
    """An optional flip (y to -y), then a turn given by `cos` and `sin`, then a slide of `dx`, `dy` mm.

    `motion(point)` moves a point; curves, paths and outlines have `.moved(motion)`. `flips` is true for
    motions that turn the paper over.

    >>> turn = Motion.rotation(math.pi, about=Point(10, 0))
    >>> turn(Point(0, 0)).distance(Point(20, 0)) < 1e-9
    True
    """

    cos: float = 1.0
    sin: float = 0.0
    flips: bool = False
    dx: float = 0.0
    dy: float = 0.0

    @classmethod
    def identity(cls) -> Motion:
        return cls()

    @classmethod
    def translation(cls, by: Vector) -> Motion:
        """A slide by the vector `by` (mm)."""
        return cls(dx=by.x, dy=by.y)

    @classmethod
    def rotation(cls, angle: float, about: Point | None = None) -> Motion:
        """A turn of `angle` radians ccw about a point (the origin when none is given)."""
        cos, sin = math.cos(angle), math.sin(angle)
        if about is None:
            return cls(cos, sin)
        return cls(cos, sin, False, about.x - cos * about.x + sin * about.y, about.y - sin * about.x - cos * about.y)

    @classmethod
    def reflection(cls, p: Point, q: Point) -> Motion:
        """A flip across the endless line through `p` and `q`. `KitError` when they coincide.

        >>> Motion.reflection(Point(0, 0), Point(0, 1))(Point(3, 4))
        Point(x=-3.0, y=4.0)
        """
        along = (q - p).unit()
        cos, sin = along.x * along.x - along.y * along.y, 2 * along.x * along.y
        return cls(cos, sin, True, p.x - cos * p.x - sin * p.y, p.y - sin * p.x + cos * p.y)

    @classmethod
    def matching(cls, src_a: Point, src_b: Point, dst_a: Point, dst_b: Point, flip: bool = False) -> Motion:
        """The motion that lays `src_a` on `dst_a` and the direction from `src_a` to `src_b` along that from
        `dst_a` to `dst_b`; `flip` turns the paper over on the way. `KitError` when a pair coincides.

        >>> onto = Motion.matching(Point(0, 0), Point(10, 0), Point(5, 5), Point(5, 15))
        >>> onto(Point(0, 0)), onto(Point(10, 0)).distance(Point(5, 15)) < 1e-9
        (Point(x=5.0, y=5.0), True)
        """
        src, dst = (src_b - src_a).unit(), (dst_b - dst_a).unit()
        if flip:
            src = Vector(src.x, -src.y)
        cos, sin = src.dot(dst), src.cross(dst)
        turned = cls(cos, sin, flip).vector(Vector(src_a.x, src_a.y))
        return cls(cos, sin, flip, dst_a.x - turned.x, dst_a.y - turned.y)

    @property
    def angle(self) -> float:
        """The turn after the flip, radians ccw."""
        return math.atan2(self.sin, self.cos)

    def __call__(self, point: Point) -> Point:
        x, y = point.x, -point.y if self.flips else point.y
        return Point(self.cos * x - self.sin * y + self.dx, self.sin * x + self.cos * y + self.dy)

    def vector(self, v: Vector) -> Vector:
        """A displacement carried along (no slide)."""
        x, y = v.x, -v.y if self.flips else v.y
        return Vector(self.cos * x - self.sin * y, self.sin * x + self.cos * y)

    def then(self, other: Motion) -> Motion:
        """This motion first, `other` after it.

        >>> Motion.translation(Vector(1, 0)).then(Motion.reflection(Point(0, 0), Point(0, 1)))(Point(2, 0))
        Point(x=-3.0, y=0.0)
        """
        sin = -self.sin if other.flips else self.sin
        origin = other(Point(self.dx, self.dy))
        return Motion(
            other.cos * self.cos - other.sin * sin,
            other.sin * self.cos + other.cos * sin,
            self.flips != other.flips,
            origin.x,
            origin.y,
        )

    def inverse(self) -> Motion:
        """The motion that undoes this one."""
        back = Motion(self.cos, self.sin if self.flips else -self.sin, self.flips)
        home = back.vector(Vector(self.dx, self.dy))
        return Motion(back.cos, back.sin, back.flips, -home.x, -home.y)
