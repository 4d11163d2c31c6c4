"""The figures of the darted bodice block: where every point and line lies for a body, in mm.

Our own method, from proportions that are common practice (no source); ease, what the waist darts take and the shoulder
dart are numbers of the block's lesson. The centre line is x = 0 with the side at x > 0, the waist y = 0. The shoulder
and the side are first thought closed, straight from end to end, then opened about the sewn points of their darts: so
they close true. The waist is drawn square to the centre, to each leg and to the side, and the waist darts take exactly
what its sewn length must lose.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from kit.blocks.bodice import _corner_curve
from kit.blocks.refused import refusal, telling_by
from kit.body.body import Body
from kit.geometry import Cubic, Line, Motion, Path, Point, Vector
from kit.lesson.parameter import Parameter

BUST_EASE = 60.0
"""Around the whole bust, at the level of the bust points: room to breathe."""
WAIST_EASE = 40.0
NECK_EASE = 10.0
SCYE_EASE = 15.0
"""How far the back armhole lies below the armpit."""
BACK_WIDTH_EASE = 16.0
FRONT_WIDTH_EASE = 10.0

BACK_SLOPE = math.radians(17)
"""Of the back shoulder with its dart closed."""
FRONT_SLOPE = math.radians(24)
BACK_RISE = 0.30
FRONT_DROP = 1.15
FRONT_RISE = 1.0
"""The front neck point lies higher than the back's by this for every degree of the bust dart, in mm: the front is the
longer way over the bust."""
BACK_PITCH, FRONT_PITCH = 0.50, 0.40

BUST_LEVEL = 0.41
"""Height of the bust points above the waist, as a part of the back waist length."""
DART_SHARE = 0.65
"""What the waist dart takes of the difference between bust and waist in a quarter; the side takes the rest."""
LEAST_DART = 8.0
LEAST_BUST, MOST_BUST = 8.0, 22.0
"""Of the bust dart, degrees."""
BUST_SHORT, WAIST_SHORT = 25.0, 20.0
"""How far before the bust point the front darts end."""
BACK_SHORT = 20.0
"""How far below the underarm level the back waist dart ends."""
SHOULDER_DART, SHOULDER_DEPTH = 12.0, 75.0

PARAMETERS = (
    Parameter("bust_ease", "length", BUST_EASE, 45.0, 120.0, "room to breathe and to move"),
    Parameter("waist_ease", "length", WAIST_EASE, 20.0, 100.0, "room to breathe and to sit"),
    Parameter("neck_ease", "length", NECK_EASE, 0.0, 25.0, "the neckline lies a little outside the neck base"),
    Parameter("underarm_drop", "length", SCYE_EASE, 5.0, 35.0, "how far the armhole lies below the armpit"),
    Parameter("dart_share", "share", DART_SHARE, 0.4, 0.8, "what the waist darts take; the side seams take the rest"),
    Parameter("shoulder_dart_width", "length", SHOULDER_DART, 6.0, 20.0, "room for the shoulder blade"),
)

_BACK_ROUND, _FRONT_ROUND = (0.60, 0.90), (0.62, 0.62)
"""How far the handles of the neck curves reach to their corner, at the centre and at the neck point."""


def _neck(width: float, depth: float, slope: float, round_off: tuple[float, float]) -> Cubic:
    """A neck curve from (0, 0), square to the centre line, to (width, depth), square to a shoulder falling by
    `slope`."""
    start, end = Point(0.0, 0.0), Point(width, depth)
    corner = Point(width - depth * math.tan(slope), 0.0)
    return Cubic(start, start.lerp(corner, round_off[0]), end.lerp(corner, round_off[1]), end)


# Both neck curves grow with their width, so the width that gives a wanted neck length is one division.
_LENGTH = (
    2
    * (
        _neck(1000.0, 1000 * BACK_RISE, BACK_SLOPE, _BACK_ROUND).length
        + _neck(1000.0, 1000 * FRONT_DROP, FRONT_SLOPE, _FRONT_ROUND).length
    )
    / 1000
)


@dataclass(frozen=True)
class DartPlan:
    """A dart before it lies on a piece: its apex, the sewn point, how far apart they are, its two leg ends."""

    apex: Point
    short: float
    first: Point
    second: Point


@dataclass(frozen=True)
class HalfPlan:
    """One half: its edges as they run around, its darts (edge, plan) and the points and levels they hang on."""

    neck: Path
    shoulder: Path
    armhole: Path
    side: Path
    waist: Path
    centre: Path
    shoulder_dart: DartPlan | None
    side_dart: DartPlan | None
    waist_dart: DartPlan
    bust_line: Path
    tip: Point
    underarm: Point
    side_waist: Point


@dataclass(frozen=True)
class Plan:
    front: HalfPlan
    back: HalfPlan
    bust_point: Point


def bust_angle(body: Body) -> float:
    """The angle of the bust dart in radians: more where the bust stands out further from the ribs beneath it,
    15 degrees where that is 16 cm."""
    cup = body["bust_girth"] - body["under_bust_girth"]
    return math.radians(min(max(3.0 + 0.075 * cup, LEAST_BUST), MOST_BUST))


@dataclass(frozen=True)
class _Frame:
    """What both halves share, mm: half neck width, levels of underarm and bust points, quarters of bust and waist with
    their ease, how far the side leans in (radians), the waist dart as planned and the shoulder dart."""

    neck: float
    underarm: float
    level: float
    quarter: float
    waist: float
    lean: float
    dart: float
    shoulder_dart: float


@telling_by
def plan(numbers: tuple[float, ...], body: Body) -> Plan:
    """The whole draft; the numbers are those of `PARAMETERS`. `KitError` naming the two measurements that do not go
    together."""
    bust_ease, waist_ease, neck_ease, drop, share, shoulder_dart = numbers
    neck = (body["neck_base_girth"] + neck_ease) / _LENGTH
    if neck > 0.55 * body["back_width"] / 2:
        raise refusal(body, "neck_base_girth", "neck_shoulders", "back_width")
    length = body["back_waist_length"]
    underarm = length - body["armscye_depth"] - drop
    level = min(BUST_LEVEL * length, underarm - 15.0)
    if level < 90:
        raise refusal(body, "armscye_depth", "no_dart_room", "back_waist_length")
    quarter, waist = (body["bust_girth"] + bust_ease) / 4, (body["waist_girth"] + waist_ease) / 4
    dart = max(share * (quarter - waist), LEAST_DART)
    lean = math.atan((quarter - waist - dart) / level)
    if abs(lean) > math.radians(20):
        raise refusal(body, "waist_girth", "side_leans_20", "bust_girth")
    frame = _Frame(neck, underarm, level, quarter, waist, lean, dart, shoulder_dart)
    back = _back(body, frame)
    front, bust_point = _front(body, frame)
    return Plan(front, back, bust_point)


def _back(body: Body, frame: _Frame) -> HalfPlan:
    neck, underarm, level, lean, dart = frame.neck, frame.underarm, frame.level, frame.lean, frame.dart
    neck_point = Point(neck, body["back_waist_length"] + BACK_RISE * neck)
    neck_path = _neck_path(neck, BACK_RISE, BACK_SLOPE, neck_point, _BACK_ROUND)
    # Shoulder: straight when closed, opened about the dart's point.
    long = body["shoulder_length"]
    way = Vector(math.cos(BACK_SLOPE), -math.sin(BACK_SLOPE))
    first = neck_point + way * (0.45 * long)
    point = first + way.right() * SHOULDER_DEPTH
    opening = Motion.rotation(-2 * math.asin(frame.shoulder_dart / 2 / SHOULDER_DEPTH), point)
    second, tip = opening(first), opening(neck_point + way * long)
    shoulder = Path((Line(neck_point, first), Line(first, second), Line(second, tip)))
    # Side: straight, through the full quarter and what the waist dart still takes at the level of the bust.
    at = 0.25 * body["back_width"]
    sewn = Point(at, underarm - BACK_SHORT)
    wide = frame.quarter
    for _ in range(12):
        corner = Point(wide - level * math.tan(lean), 0.0)
        waist_path, ends = _waist(corner, lean, sewn, dart)
        dart += sum(c.length for i, c in enumerate(waist_path.curves) if i != 1) - frame.waist
        legs_at = dart * max(0.0, sewn.y - level) / (sewn.y - ends[0].y)
        wide = frame.quarter + legs_at
    corner = Point(wide - level * math.tan(lean), 0.0)
    top = Point(wide + (underarm - level) * math.tan(lean), underarm)
    side = Path.line(top, corner)
    wanted = (body["back_width"] + BACK_WIDTH_EASE) / 2
    armhole = _armhole(body, tip, opening.vector(way), top, (top - corner).unit(), wanted, BACK_PITCH, "back_width")
    apex = Point(at, underarm)
    return HalfPlan(
        neck_path,
        shoulder,
        armhole,
        side,
        waist_path,
        Path.line(Point(0.0, 0.0), neck_path.start),
        DartPlan(point, 0.0, first, second),
        None,
        DartPlan(apex, BACK_SHORT, ends[1], ends[0]),
        Path.line(Point(0.0, level), Point(wide, level)),
        tip,
        top,
        corner,
    )


def _front(body: Body, frame: _Frame) -> tuple[HalfPlan, Point]:
    neck, underarm, level, lean, dart = frame.neck, frame.underarm, frame.level, frame.lean, frame.dart
    quarter = frame.quarter
    rise = BACK_RISE * neck + FRONT_RISE * math.degrees(bust_angle(body))
    neck_point = Point(neck, body["back_waist_length"] + rise)
    neck_path = _neck_path(neck, FRONT_DROP, FRONT_SLOPE, neck_point, _FRONT_ROUND)
    if neck_path.start.y < underarm + 40:
        raise refusal(body, "neck_base_girth", "neck_armhole", "armscye_depth")
    way = Vector(math.cos(FRONT_SLOPE), -math.sin(FRONT_SLOPE))
    tip = neck_point + way * body["shoulder_length"]
    bust_point = Point(40.0 + 0.058 * body["bust_girth"], level)
    # Side: straight and as long as the back's when closed, opened about the bust dart's sewn point. Its full
    # width lies at the level of the bust point, just above the dart.
    reach = quarter - bust_point.x
    angle = 2 * math.atan(reach * math.tan(bust_angle(body) / 2) / (reach - BUST_SHORT))
    down = angle / 2 + math.radians(4)
    sewn = bust_point + Vector(math.cos(down), -math.sin(down)) * BUST_SHORT
    opening, closing = Motion.rotation(angle, sewn), Motion.rotation(-angle, sewn)
    full = closing(Point(quarter, level))
    corner = Point(full.x - full.y * math.tan(lean), 0.0)
    up = (full - corner).unit()
    top = opening(corner + up * (underarm / math.cos(lean)))
    leg = Vector(math.cos(down + angle / 2), -math.sin(down + angle / 2))
    away = corner - sewn
    along = away.cross(up) / leg.cross(up)
    low = sewn + leg * along
    high = opening(low)
    if low.y < 20 or not along > 30:
        raise refusal(body, "under_bust_girth", "bust_dart_deep", "bust_girth")
    side = Path((Line(top, high), Line(high, low), Line(low, corner)))
    point = Point(bust_point.x, level - WAIST_SHORT)
    for _ in range(12):
        waist_path, ends = _waist(corner, lean, point, dart)
        dart += sum(c.length for i, c in enumerate(waist_path.curves) if i != 1) - frame.waist
    wanted = (body["front_width"] + FRONT_WIDTH_EASE) / 2
    armhole = _armhole(body, tip, way, top, (top - high).unit(), wanted, FRONT_PITCH, "front_width")
    half = HalfPlan(
        neck_path,
        Path.line(neck_point, tip),
        armhole,
        side,
        waist_path,
        Path.line(Point(0.0, 0.0), neck_path.start),
        None,
        DartPlan(bust_point, BUST_SHORT, high, low),
        DartPlan(bust_point, WAIST_SHORT, ends[1], ends[0]),
        Path.line(Point(0.0, level), Point(quarter, level)),
        tip,
        top,
        corner,
    )
    return half, bust_point


def _neck_path(width: float, depth: float, slope: float, neck_point: Point, round_off: tuple[float, float]) -> Path:
    shape = _neck(width, depth * width, slope, round_off)
    up = Vector(0.0, neck_point.y - depth * width)
    return Path((Cubic(shape.start + up, shape.c1 + up, shape.c2 + up, neck_point),))


def _waist(corner: Point, lean: float, point: Point, dart: float) -> tuple[Path, tuple[Point, Point]]:
    """The waist from the side to the centre, open, with the dart's two leg ends (nearer the centre first).

    Square to the side, to both legs and to the centre, so that it runs smooth when the dart is closed.
    """
    first = point.x - dart / 2
    drop = 0.0
    for _ in range(4):
        half = math.atan(dart / 2 / (point.y + drop))
        drop = first * math.tan(half) / 2
    one, two = Point(first, -drop), Point(first + dart, -drop)
    inner = Cubic.square(Point(0.0, 0.0), Vector(1, 0), one, Vector(math.cos(half), -math.sin(half)))
    outer = Cubic.square(two, Vector(math.cos(half), math.sin(half)), corner, Vector(math.cos(lean), -math.sin(lean)))
    return Path((outer.reversed(), Line(two, one), inner.reversed())), (one, two)


def _armhole(
    body: Body, tip: Point, way: Vector, underarm: Point, up: Vector, wanted: float, pitch: float, width: str
) -> Path:
    """Square to the shoulder at its tip, straight down at the pitch, square to the side at the underarm."""
    height = tip.y - underarm.y
    if height < 100:
        raise refusal(body, "armscye_depth", "armhole_shallow", "shoulder_length")
    if max(tip.x, wanted) > underarm.x - 15:
        raise refusal(body, width, "width_beyond", "bust_girth")
    level = underarm.y + pitch * height
    fall = -way.y / way.x
    run = fall * (tip.y - level)
    # Kept within what a square start allows, or the curve below the tip would be too tight for a seam allowance.
    x = min(max(wanted, tip.x - 0.8 * run), tip.x - 0.3 * run)
    into = up.left()
    corner = underarm + into * ((underarm.x - x) / -into.x)
    if corner.y > level - 5:
        raise refusal(body, "waist_girth", "side_leans", "bust_girth")
    place = Point(x, level)
    return Path((Cubic.square(tip, way.right(), place, Vector(0, -1)), _corner_curve(place, corner, underarm)))
