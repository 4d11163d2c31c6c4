"""Curves between two ends of a draft: on which side a curve leaves a line that it is square to, and whether it can be
drawn.

Square to a line there are two ways to go. A curve goes to the cloth's side of an edge that ends there, as long as it
can be drawn that way; elsewhere, and where nothing tells which side that is, to the side on which its other end lies.
Everything here follows from the lines themselves, so what is drawn on a mirrored piece is the mirror image.
"""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import dataclass

from kit.diagnostic import Message, Value, message, number, word
from kit.errors import KitError
from kit.geometry import TOLERANCE, Arc, Cubic, Curve, Path, Point, Vector

DIRECTIONS = {"up": Vector(0, 1), "down": Vector(0, -1), "out": Vector(1, 0), "in": Vector(-1, 0)}
TURNED = 120.0
"""How many degrees off the straight line to its other end a curve may leave or arrive, where its side is sure."""
_ASKEW = 0.05
_OFF = 1.0


@dataclass(frozen=True)
class EndWay:
    """The direction of travel at one end of a curve: `first` choice, and the `other` one if that cannot be drawn;
    `sure` where the first is more than the near way, so that the curve may turn back a little to take it."""

    first: Vector
    other: Vector | None = None
    sure: bool = False


def cloth_side(line: Path, at: Point, around: Iterable[Path]) -> float:
    """On which side of `line`, at its end `at`, the cloth lies: 1 left, -1 right, 0 where that cannot be told.

    It is the side of the edge that begins where the line's other end is (the overarm, for a sleeve's opening); without
    one, the side of all the lines `around`, if they lie on one.
    """
    at_end = line.end.distance(at) <= line.start.distance(at)
    if (line.end if at_end else line.start).distance(at) > TOLERANCE:
        return 0.0
    far, onward = (line.start, line.start_tangent) if at_end else (line.end, line.end_tangent)
    others = [path for path in around if path != line]
    leaving = [path.start_tangent for path in others if path.start.distance(far) <= TOLERANCE]
    leaving += [path.end_tangent * -1.0 for path in others if path.end.distance(far) <= TOLERANCE]
    turns = [turn for way in leaving if abs(turn := onward.cross(way)) > _ASKEW]
    if turns:
        return math.copysign(1.0, turns[0]) if min(turns) * max(turns) > 0 else 0.0
    normal = (line.end_tangent if at_end else line.start_tangent).left()
    off = [normal.dot(p - at) for path in others for c in path.curves for p in (c.start, c.point(0.5), c.end)]
    if off and min(off) >= -_OFF and max(off) > _OFF:
        return 1.0
    return -1.0 if off and max(off) <= _OFF and min(off) < -_OFF else 0.0


def square_way(
    normal: Vector, chord: Vector, cloth: float, toward: Vector | str, said: Value, arriving: bool = False
) -> EndWay:
    """The way square to a line whose left normal is `normal`, for a curve with the straight line `chord` between its
    ends. `cloth` is as `cloth_side` gives it; `toward` what the author says of the direction of travel: a direction of
    the paper, "inside" or "outside", or "". `KitError` where that names neither side of the line, called `said`."""
    if toward in ("inside", "outside"):
        if not cloth:
            raise KitError(
                f"which side of this line is {toward} cannot be told from what is drawn.",
                do='Say a direction of the paper: toward="in", "out", "up" or "down".',
            )
        return EndWay(normal * (cloth if toward == "inside" else -cloth), sure=True)
    if isinstance(toward, Vector):
        agrees = normal.dot(toward)
        if abs(agrees) < _ASKEW:
            raise KitError(
                message("drafting.neither_side", line=said, toward=said_way(toward)),
                do=message("drafting.neither_side_do", one=said_way(normal), other=said_way(normal * -1.0)),
            )
        return EndWay(normal * math.copysign(1.0, agrees), sure=True)
    # Nothing is said. The cloth's side is taken where it is known and differs from the near one; the near way stays
    # as the second choice, for where the first cannot be drawn.
    near = normal if normal.dot(chord) >= 0 else normal * -1.0
    side = -cloth if arriving else cloth  # what lies on the cloth's side arrives coming from there
    if side and near.dot(normal) * side < 0:
        return EndWay(normal * side, near, sure=True)
    return EndWay(near)


def along_way(tangent: Vector, chord: Vector, toward: Vector | str, said: Value) -> EndWay:
    """The way along a line with this `tangent`: onward to the other end, or as the author says."""
    if isinstance(toward, str) and toward:
        raise KitError(
            "along a line a curve goes neither to its inside nor to its outside.",
            do='Say a direction of the paper: toward="in", "out", "up" or "down".',
        )
    onward = tangent.dot(toward if isinstance(toward, Vector) else chord)
    if isinstance(toward, Vector) and abs(onward) < _ASKEW:
        raise KitError(
            message("drafting.neither_side", line=said, toward=said_way(toward)),
            do=message("drafting.neither_side_do", one=said_way(tangent), other=said_way(tangent * -1.0)),
        )
    return EndWay(tangent if onward >= 0 else tangent * -1.0, sure=isinstance(toward, Vector))


def curve(start: Point, leave: EndWay, end: Point, arrive: EndWay, fullness: float) -> Curve:
    """The smooth curve between two points. The first ways are tried, then the others. `KitError` that names the
    direction when none can be drawn."""
    # The first refusal is the one that is told: it speaks of the way the author would expect.
    trouble: KitError | None = None
    for out in filter(None, (leave.first, leave.other)):
        for into in filter(None, (arrive.first, arrive.other)):
            sure = (leave.sure and out is leave.first) or (arrive.sure and into is arrive.first)
            try:
                return _one(start, out, end, into, fullness, sure)
            except KitError as error:
                trouble = trouble or error
    assert trouble is not None
    raise trouble


def _one(start: Point, out: Vector, end: Point, into: Vector, fullness: float, sure: bool) -> Curve:
    chord = end - start
    if not sure or chord.length < TOLERANCE or not 0.05 <= float(fullness) <= 3.0:
        return Cubic.square(start, out, end, into, fullness)
    theta, phi = (math.degrees(turn) for turn in (chord.turn_to(out), into.turn_to(chord)))
    # A single cubic is no good circle halfway round and more, so a curve that is alike at both ends is an exact arc
    # there.
    if abs(theta - phi) < 1e-6 and abs(theta) > 89.5 and fullness == 1.0:
        return _part_of_circle(start, out, end, math.radians(theta))
    off = max(abs(theta), abs(phi))
    if off > TURNED:
        raise KitError(
            message("drafting.turns_back", way=said_way(out), off=number(round(off)), most=number(TURNED)),
            do=message("drafting.turns_back_do"),
        )
    return Cubic.square(start, out, end, into, fullness, turned=True)


def _part_of_circle(start: Point, out: Vector, end: Point, theta: float) -> Arc:
    """The arc that leaves `start` along `out`, which is `theta` off its chord, and ends at `end`."""
    radius = (end - start).length / (2 * math.sin(abs(theta)))
    side = math.copysign(1.0, -theta)  # leaving to the left of the chord it bends to the right
    centre = start + out.unit().left() * (radius * side)
    return Arc(centre, radius, (start - centre).angle, 2 * abs(theta) * side)


def said_way(way: Vector) -> Value:
    """A direction of the paper as a word: the nearest of up, down, in, out."""
    return word(f"way_{max(DIRECTIONS, key=lambda name: DIRECTIONS[name].dot(way))}")


def double_back(line: Value, other: Value, way: Vector) -> tuple[Message, Message]:
    """What is wrong with a curve from the end of `line` into `other`, and what to do."""
    return (
        message("drafting.doubles_back", line=line, other=other, way=said_way(way)),
        message("drafting.doubles_back_do", line=line, other=other),
    )
