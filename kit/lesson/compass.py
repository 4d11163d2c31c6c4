"""Parts of circles as a drafter draws them with a compass: exact, of any angle up to a full turn.

Plain geometry: points in, an `Arc` out, lengths in mm, angles in degrees. What is said twice or not at all is refused.
"""

from __future__ import annotations

import math

from kit.diagnostic import measured, message, number
from kit.errors import KitError
from kit.geometry import TOLERANCE, Arc, Point, Vector

_REACHED = 0.5
_FULL = 2 * math.pi


def arc(
    start: Point,
    target: Point | None = None,
    *,
    centre: Point | None = None,
    radius: float | None = None,
    angle: float | None = None,
    length: float | None = None,
    through: Point | None = None,
    toward: Vector | None = None,
    far: bool = False,
) -> Arc:
    """The arc that begins at `start`, as `PaperPoint.arc` says. Raises `KitError` for what does not fix one arc."""
    if angle is not None and not (0 < angle <= 360 and math.isfinite(angle)):
        raise KitError(message("drafting.arc_angle", angle=number(angle)), do=message("drafting.arc_angle_do"))
    if centre is not None:
        if [target, angle, length].count(None) != 2 or through is not None or far:
            raise KitError(
                "about a centre an arc goes as far as one thing says.",
                do="Say one of angle=90, length=30 * cm, or the point to stop at.",
            )
        return _about(start, centre, target, angle, length, toward)
    if target is None:
        raise KitError(
            "the arc has no centre and no other end.", do='Say about= a point or "up" with radius=, or name its end.'
        )
    if length is not None or [radius, angle, through].count(None) != 2:
        raise KitError(
            "between two points an arc is drawn by one more thing.",
            do="Say one of radius=20 * cm, angle=90, or through= a third point.",
        )
    if start.distance(target) < TOLERANCE:
        raise KitError(message("drafting.arc_no_way"), do=message("drafting.arc_no_way_do"))
    if through is not None:
        return _through(start, through, target)
    if toward is None:
        raise KitError("it is not said to which side the arc bulges.", do='Say toward="out", or "in", "up", "down".')
    return _spanning(start, target, radius, angle, toward, far)


def _about(
    start: Point, centre: Point, target: Point | None, angle: float | None, length: float | None, toward: Vector | None
) -> Arc:
    spoke = start - centre
    size = spoke.length
    if size < TOLERANCE:
        raise KitError(message("drafting.arc_radius", radius=measured(size)), do=message("drafting.arc_radius_do"))
    if target is not None:
        there = target - centre
        if abs(there.length - size) > _REACHED:
            raise KitError(
                message("drafting.arc_misses", radius=measured(size), far=measured(there.length)),
                do=message("drafting.arc_misses_do"),
            )
        # `turn` is the shorter way round. Where the author says a direction that sets out the other way, the arc goes
        # the long way: a whole turn less.
        turn = spoke.turn_to(there)
        if toward is not None and _side(spoke, toward) * turn < 0:
            turn -= math.copysign(_FULL, turn)
        elif toward is None and abs(turn) > math.pi - 1e-6:
            raise KitError("halfway round there are two ways to the other end.", do='Say toward="out", say.')
        if abs(turn) < 1e-9:
            turn = _FULL
        return Arc(centre, size, spoke.angle, turn)
    if toward is None:
        raise KitError("it is not said which way round the arc goes.", do='Say toward="out", or "in", "up", "down".')
    sweep = math.radians(angle) if angle is not None else (length or 0.0) / size
    if length is not None and not 0 < sweep <= _FULL + 1e-12:
        raise KitError(
            message("drafting.arc_length", length=measured(length), most=measured(_FULL * size)),
            do=message("drafting.arc_length_do"),
        )
    return Arc(centre, size, spoke.angle, _side(spoke, toward) * min(sweep, _FULL))


def _side(spoke: Vector, toward: Vector) -> float:
    """1 when setting out `toward` from the end of `spoke` goes counterclockwise, -1 when clockwise."""
    leftward = spoke.unit().left().dot(toward)
    if abs(leftward) < 0.05:
        raise KitError(
            "that direction runs straight to or from the centre.", do="Say a direction the arc sets out in, along it."
        )
    return math.copysign(1.0, leftward)


def _through(start: Point, middle: Point, end: Point) -> Arc:
    """The arc through three points: its centre is where the perpendiculars on the middles of two chords cross."""
    a, b = middle - start, end - start
    cross = a.cross(b)
    if abs(cross) < 1e-6 * max(a.length, b.length, 1e-9) * b.length or middle.distance(end) < TOLERANCE:
        raise KitError(message("drafting.arc_in_line"), do=message("drafting.arc_in_line_do"))
    # The centre c (from the start) is as far from all three: 2 c.a = a.a and 2 c.b = b.b, solved for c.
    aa, bb = a.dot(a), b.dot(b)
    centre = start + Vector(b.y * aa - a.y * bb, a.x * bb - b.x * aa) / (2 * cross)
    spoke = start - centre
    turn = spoke.turn_to(end - centre) % _FULL  # counterclockwise
    # Counterclockwise the end comes before the middle: then the arc goes clockwise.
    if spoke.turn_to(middle - centre) % _FULL > turn:
        turn -= _FULL
    return Arc(centre, spoke.length, spoke.angle, turn)


def _spanning(start: Point, end: Point, radius: float | None, angle: float | None, toward: Vector, far: bool) -> Arc:
    chord = end - start
    half = chord.length / 2
    leftward = chord.unit().left().dot(toward)
    if abs(leftward) < 0.05:
        raise KitError(
            "that direction runs along the straight line between the ends, so it names no side.",
            do="Say a direction across it.",
        )
    if angle is not None:
        if angle >= 360 - 1e-9:
            raise KitError(message("drafting.arc_angle", angle=number(angle)), do=message("drafting.arc_angle_do"))
        theta = math.radians(angle) / 2
    else:
        assert radius is not None
        if radius < half - TOLERANCE:
            raise KitError(
                message("drafting.arc_short", radius=measured(radius), chord=measured(chord.length)),
                do=message("drafting.arc_short_do", least=measured(half)),
            )
        # Half the angle at the centre. Two circles of this radius pass through both ends, and each is parted by them
        # into a smaller and a larger arc; `toward` names the side, `far` the larger arc.
        theta = math.asin(min(1.0, half / radius))
        theta = math.pi - theta if far else theta
    size = half / math.sin(theta)
    side = math.copysign(1.0, leftward)  # with its belly to the left of the chord the arc goes clockwise
    centre = start.lerp(end, 0.5) - chord.unit().left() * (side * size * math.cos(theta))
    return Arc(centre, size, (start - centre).angle, -side * 2 * theta)
