"""A waist that is smooth with its darts closed: an arc between one dart and the next, square to the centre, to both
legs of every dart and to the side. Skirt and trousers share it.

Slopes are radians above level, walking from the centre to the side; lengths are mm.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence
from dataclasses import dataclass

from kit.geometry import Arc, Line, Motion, Path, Point, Vector
from kit.lesson.bench import BenchPiece
from kit.piece.darts_and_pleats import Dart, Pressed

ONE_DART_TAKES = 32.0
"""What is more than this, in mm, is shared by two darts (common practice, no source)."""
LEAST_DART = 8.0
"""A dart narrower than this is not worth sewing: the side takes its share (common practice, no source)."""
MOST_DART = 48.0
"""A wider dart pokes (common practice, no source)."""


@dataclass(frozen=True)
class DartWish:
    """A dart as planned: its place as a share of the closed waist, its width at the waist and its depth, mm, and how
    far it leans with the edges beside it (0 upright, 1 like a spoke between centre and side). `tilt` turns it further:
    the slope of the waist it stands square to, radians."""

    share: float
    wide: float
    deep: float
    lean: float = 0.0
    tilt: float = 0.0


@dataclass(frozen=True)
class WaistDart:
    """A dart as drawn: the point it ends at and where its two legs meet the waist."""

    apex: Point
    first: Point
    second: Point


@dataclass(frozen=True)
class Waist:
    """The waist on paper from centre to side, straight across the darts' mouths."""

    path: Path
    darts: tuple[WaistDart, ...]

    def moved(self, by: Vector) -> Waist:
        go = Motion.translation(by)
        darts = tuple(WaistDart(go(d.apex), go(d.first), go(d.second)) for d in self.darts)
        return Waist(self.path.moved(go), darts)


def darted_waist(start: Point, sewn: float, first: float, last: float, wishes: Sequence[DartWish]) -> Waist:
    """The waist from `start` that measures `sewn` with its darts closed, beginning with slope `first` and ending
    with slope `last`."""
    point, slope, along = start, first, 0.0
    curves: list[Arc | Line] = []
    darts = []
    for wish in wishes:
        half = math.asin(wish.wide / 2 / wish.deep)
        at = wish.tilt + wish.lean * (first + (last - first) * wish.share)
        curve = _arc(point, slope, at + half, wish.share * sewn - along)
        apex = curve.end + Vector(math.sin(at + half), -math.cos(at + half)) * wish.deep
        point = Motion.rotation(-2 * half, apex)(curve.end)
        along, slope = wish.share * sewn, at - half
        curves += [curve, Line(curve.end, point)]
        darts.append(WaistDart(apex, curve.end, point))
    curves.append(_arc(point, slope, last, sewn - along))
    return Waist(Path(tuple(curves)), tuple(darts))


def _arc(point: Point, slope: float, last: float, long: float) -> Arc | Line:
    """From `point`, `long` mm, while the slope turns evenly from `slope` to `last`."""
    curvature = (last - slope) / long
    if abs(curvature) < 1e-7:
        return Line(point, point + Vector(math.cos(slope), math.sin(slope)) * long)
    radius = 1 / curvature
    centre = point + Vector(-math.sin(slope), math.cos(slope)) * radius
    from_angle = slope - math.pi / 2 if radius > 0 else slope + math.pi / 2
    return Arc(centre, abs(radius), from_angle, last - slope)


def wishes(
    taken: float, shares: tuple[float, tuple[float, float]], deep: tuple[float, float], lean: float = 0.0
) -> tuple[DartWish, ...]:
    """The darts that take up `taken` mm: none, one at the first of `shares`, or two at the pair. `deep` is the depth
    of the dart nearer the centre and of the one nearer the side."""
    if taken < LEAST_DART:
        return ()
    if taken <= ONE_DART_TAKES:
        return (DartWish(shares[0], taken, deep[0], lean),)
    return tuple(DartWish(share, taken / 2, long, lean) for share, long in zip(shares[1], deep, strict=True))


def sewn(waist: Waist) -> float:
    """What a waist measures with its darts closed, mm."""
    return waist.path.length - sum(dart.first.distance(dart.second) for dart in waist.darts)


def root(miss: Callable[[float], float], one: float, two: float) -> float:
    """Where `miss` is nothing, by the rule of the secant, for functions that are nearly straight."""
    miss_one, miss_two = miss(one), miss(two)
    for _ in range(40):
        if abs(miss_two) < 1e-9 or miss_two == miss_one:
            break
        one, two, miss_one = two, two - miss_two * (two - one) / (miss_two - miss_one), miss_two
        miss_two = miss(two)
    return two


_SPARED = (("waist_dart", "waist_dart_1", "waist_dart_2"), ("waist_dart_2",), ())
"""What a figure with no dart, with one and with two does not need of what others have: a lesson may have been written
for one dart or for two. Where there is one, it is the first of two as well (`kit.piece.dart.meant`)."""


def put_darts(piece: BenchPiece, waist: Waist, pressed: Pressed = "start") -> None:
    """The darts laid on the piece's waist, pressed toward its start, and their caps drawn. What other figures have and
    this one does not need is noted as spared."""
    for number, dart in enumerate(waist.darts, 1):
        path = piece.freeze().edge("waist").path
        name = "waist_dart" if len(waist.darts) == 1 else f"waist_dart_{number}"
        start, end = path.nearest(dart.first), path.nearest(dart.second)
        piece.lay_dart(Dart(name, "waist", dart.apex, start, end, pressed))
    piece.spare_darts(*_SPARED[len(waist.darts)])
