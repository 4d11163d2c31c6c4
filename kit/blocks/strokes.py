"""What a drawing file gives, whatever its format: strokes in millimetres, y up, and what was noticed on the way."""

from __future__ import annotations

import math
from dataclasses import dataclass

from kit.errors import KitError
from kit.geometry import Arc, Cubic, Curve, Line, Path, Point, Vector

_FARTHEST = 1e7

UNITS = {"mm": 1.0, "cm": 10.0, "m": 1000.0, "inch": 25.4}
"""Millimetres in each unit a person may name."""


@dataclass(frozen=True)
class SketchStroke:
    """One drawn line, open or closed. `names` are what the file calls it: its own name or label first, then the
    layers and groups it lies in."""

    names: tuple[str, ...]
    path: Path


@dataclass(frozen=True)
class Sketch:
    """A file's strokes in mm. `down` is true where the drawing program counts y downward; places are then told
    that way. `messages` say what was assumed or left out, one sentence each."""

    file: str
    strokes: tuple[SketchStroke, ...]
    messages: tuple[str, ...] = ()
    down: bool = False

    def place(self, point: Point) -> str:
        """A place as the drawing program shows it."""
        if self.down:
            return f"{point.x:.1f} mm across and {-point.y:.1f} mm down"
        return f"x {point.x:.1f} mm, y {point.y:.1f} mm"


def finite(x: float, y: float) -> Point:
    """The point (mm). `KitError` for a coordinate no paper is large enough for."""
    if not (abs(x) < _FARTHEST and abs(y) < _FARTHEST):
        raise KitError(
            f"the drawing has a point at {x:g}, {y:g} mm.", do="Take stray points out in the drawing program."
        )
    return Point(x, y)


def ellipse(centre: Point, u: Vector, v: Vector, start: float, sweep: float) -> tuple[Curve, ...]:
    """The stretch centre + u cos(t) + v sin(t) for t from `start` through `sweep` radians: an arc where it is
    round, else cubics of at most 22.5 degrees of t each (within 1 part in 10 million of the longer axis)."""
    size = max(u.length, v.length)
    if abs(u.length - v.length) < 1e-6 * size and abs(u.dot(v)) < 1e-6 * size * size:
        side = 1.0 if u.cross(v) > 0 else -1.0
        return (Arc(centre, u.length, u.angle + side * start, side * sweep),)
    n = max(1, math.ceil(abs(sweep) / (math.pi / 8) - 1e-9))
    step = sweep / n
    handle = 4 / 3 * math.tan(step / 4)

    def at(t: float) -> Point:
        return centre + u * math.cos(t) + v * math.sin(t)

    def way(t: float) -> Vector:
        return (v * math.cos(t) - u * math.sin(t)) * handle

    found = []
    for i in range(n):
        a, b = start + step * i, start + step * (i + 1)
        found.append(Cubic(at(a), at(a) + way(a), at(b) - way(b), at(b)))
    return tuple(found)


def ended(curve: Curve, end: Point) -> Curve:
    """The curve with its end moved (a little) to `end`, its start kept and its shape as nearly as it goes."""
    if isinstance(curve, Line):
        return Line(curve.start, end)
    if isinstance(curve, Cubic):
        return Cubic(curve.start, curve.c1, curve.c2 + (end - curve.end), end)
    assert isinstance(curve, Arc)
    chord = end - curve.start
    if chord.length < 1e-6:
        return curve
    middle = curve.start.lerp(end, 0.5)
    centre = middle + chord.unit().left() * (chord.length / 2 / math.tan(curve.sweep / 2))
    spoke = curve.start - centre
    return Arc(centre, spoke.length, spoke.angle, curve.sweep)


def enlarged(path: Path, scale: float) -> Path:
    """The path with every coordinate times `scale`."""

    def at(p: Point) -> Point:
        return Point(p.x * scale, p.y * scale)

    found: list[Curve] = []
    for curve in path.curves:
        if isinstance(curve, Cubic):
            found.append(Cubic(at(curve.start), at(curve.c1), at(curve.c2), at(curve.end)))
        elif isinstance(curve, Arc):
            found.append(Arc(at(curve.centre), curve.radius * scale, curve.from_angle, curve.sweep))
        else:
            found.append(Line(at(curve.start), at(curve.end)))
    return Path(tuple(found))
