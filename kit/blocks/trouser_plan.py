"""What the trouser block draws, worked out for a body: levels, side seam, inseams, crotch seams and waists.

Each leg half lies with its centre at the hip line on x = 0, the side at x > 0 and the crotch at x < 0; the front's
waist begins at y = 0. Ease, shares and proportions are common practice (no source); ease, the front's share of the
darts and the height of the hem are numbers of the block's lesson.
"""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import dataclass, replace

from kit.blocks.darted_waist import MOST_DART, DartWish, Waist, darted_waist, root, sewn, wishes
from kit.blocks.refused import refusal, telling_by
from kit.blocks.sleeve_plan import found
from kit.body.body import Body
from kit.geometry import Cubic, Line, Path, Point, Vector
from kit.geometry.meet import meet_lines
from kit.lesson.parameter import Parameter

WAIST_EASE = 20.0
"""Room to breathe and for what is tucked in, in mm."""
HIP_EASE = 50.0
"""Room to sit, in mm."""
CROTCH_SHARE, MOST_CROTCH_SHARE = 0.155, 0.19
"""What is added at the crotch to go between the legs, front and back together, as a part of the hip girth: the body is
that deep there, so it grows as the hip does. Up to the second where the crotch length asks for it."""
HIGH_LIFT = 60.0
"""A centre back that would rise further above the front waist, in mm, says that the body is deeper between the legs."""
MOST_LOWER = 40.0
"""How much lower the crotch may come to lie, in mm, where the body rise is no tape's: what lies between two heights is
measured standing, and a measured crotch length goes before it."""
LEAST_HIP = 25.0
"""How far the hip line lies above the crotch, at least, in mm."""
THIGH_EASE = 60.0
"""The least room to step and bend, in mm, around the leg just below the crotch: a fuller thigh adds more at the crotch
than its share of the hip."""
MOST_THIGH = 0.5
"""A thigh that the paper exceeds by more than this part of it, over its least ease, was measured wrongly."""
KNEE_EASE = 100.0
"""The leg is straight from knee to hem, so the knee has room to spare, in mm."""
RISE_EASE = 15.0
"""How far the crotch of the trousers lies below the body's, in mm."""
CROTCH_EASE = 5.0
"""What the crotch seam measures more than the tape, in mm."""
FLOOR = 15.0
"""The hem ends this far above the floor, in mm."""
BACK_WIDER = 20.0
"""The back is this much wider than the front at the hip, and again at the knee, in mm."""
FRONT_FORK = 0.32
"""The front's part of what is added at the crotch to go between the legs."""
SEAT_LEAN, MOST_SEAT_LEAN = 0.18, 0.27
"""How far the centre back leans to the side for every mm it rises: the seat is round. More where it rises high."""
EVEN_WAIST = 1.4
"""How much more the centre back leans than the back waist falls to the side, so that the waist turns evenly."""
KNEE_PLACE = 0.45
"""Where the knee lies, as a part of the inside leg from the crotch down."""
SIDE_SHARE = 0.30
SIDE_MOST = 26.0
"""How much of the difference between hip and waist the side seams take, and at most on either side in mm."""
SIDE_OUT = 40.0
"""How far either side seam may lean out from the hip to a waist that is nearly as wide or wider, in mm."""
FRONT_SHARE = 0.38
"""The front's part of what the darts take."""
FRONT_DEEP = (0.48, 0.44)
BACK_DEEP = (0.60, 0.52)
"""How deep the darts are, as a part of waist to hip: nearer the centre, nearer the side."""
FRONT_PLACES = (0.54, (0.44, 0.74))
BACK_PLACES = (0.48, (0.36, 0.68))
"""Where the darts lie on the closed waist from the centre: one dart, or two."""

PARAMETERS = (
    Parameter("waist_ease", "length", WAIST_EASE, 0.0, 60.0, "room to breathe and for what is tucked in"),
    Parameter("hip_ease", "length", HIP_EASE, 30.0, 100.0, "room to sit"),
    Parameter(
        "knee_ease", "length", KNEE_EASE, 40.0, 240.0, "room to bend the knee; the leg is as wide down to the hem"
    ),
    Parameter("front_share", "share", FRONT_SHARE, 0.25, 0.5, "the front's part of what the darts take"),
    Parameter("hem_height", "length", FLOOR, 0.0, 200.0, "how far the hem ends above the floor"),
)

LEAST_BEND = 22.0
"""The crotch curve bends no tighter than a circle of this radius, in mm, where there is room for it: a seam allowance
of 2 cm lies within it."""

_ROUND = 0.6  # handles of a crotch curve: a little fuller than an ellipse
_SETTLED = 1e-9  # mm by which widths that depend on each other may still change
_LEAST_LIFT, _MOST_LIFT = 0.0, 90.0


@dataclass(frozen=True)
class LegPlan:
    """One leg half on paper. `crotch` runs from the inseam up to the waist, `inseam` from the hem up."""

    waist: Waist
    side: Path
    crotch: Path
    inseam: Path
    hip_line: Path
    thigh_line: Path
    knee_line: Path


@dataclass(frozen=True)
class TrouserPlan:
    """Both halves of one body's trousers, mm."""

    front: LegPlan
    back: LegPlan


@dataclass(frozen=True)
class _Room:
    """The numbers of a draft: ease and the hem's height in mm, the front's share of the darts."""

    waist: float
    hip: float
    knee: float
    front_share: float
    hem: float


@dataclass(frozen=True)
class _Frame:
    """Levels and widths the halves share, mm. `lean` is how far the side seam comes in from hip to knee."""

    hip_level: float
    crotch_level: float
    knee_level: float
    hem_level: float
    front: float
    back: float
    knee_front: float
    knee_back: float
    lean: float
    fork: float
    drop: float

    def inward(self, y: float) -> float:
        """How far inside the hip the side seam lies at a level between hip and knee."""
        t = (self.hip_level - y) / (self.hip_level - self.knee_level)
        return self.lean * (3 * t**2 - 2 * t**3)


@telling_by
def plan(numbers: tuple[float, ...], body: Body) -> TrouserPlan:
    """Everything the steps draw; the numbers are those of `PARAMETERS`. `KitError` naming the measurements that do not
    go together."""
    room = _Room(*numbers)
    frame = _frame(body, room, CROTCH_SHARE)
    seat = _seat(body, frame)
    if seat.high > HIGH_LIFT:

        def short(share: float) -> float:
            return HIGH_LIFT - _seat(body, _frame(body, room, share)).high

        most = MOST_CROTCH_SHARE
        share = most if short(most) < 0 else found(short, CROTCH_SHARE, most)
        frame = _frame(body, room, share)
        seat = _seat(body, frame)
        if seat.high > _MOST_LIFT and _guessed(body, "body_rise") and not _guessed(body, "total_crotch_length"):

            def spare(lower: float) -> float:
                return _MOST_LIFT - 1.0 - _seat(body, _frame(body, room, share, lower)).high

            frame = _frame(body, room, share, MOST_LOWER if spare(MOST_LOWER) < 0 else found(spare, 0.0, MOST_LOWER))
            seat = _seat(body, frame)
    front_in, front_curve = seat.front
    back_in, back_curve = seat.back
    hip = Point(0.0, frame.hip_level)
    centre_back, lean = seat.centre_back, seat.lean
    lift = min(max(centre_back.y, _LEAST_LIFT), _MOST_LIFT)
    if _guessed(body, "total_crotch_length"):
        centre_back = hip + seat.up * ((lift - hip.y) / seat.up.y)  # a guess gives way to what the paper allows
    elif lift != centre_back.y:
        trouble = "back_low" if centre_back.y < _LEAST_LIFT else "back_high"
        raise refusal(body, "total_crotch_length", trouble, "body_rise")
    front_waist, back_waist, gain = _waists(body, room, frame, centre_back, lean)
    halves = []
    for wide, waist, curve, inseam in (
        (frame.front, front_waist, front_curve, front_in),
        (frame.back, back_waist, back_curve, back_in),
    ):
        fork = inseam.end
        knee = Point(wide - frame.lean, frame.knee_level)
        halves.append(
            LegPlan(
                waist,
                _side(frame, wide, waist.path.end, gain),
                Path((curve, Line(hip, waist.path.start))),
                inseam,
                Path.line(hip, Point(wide, frame.hip_level)),
                Path.line(fork, Point(wide - frame.inward(fork.y), fork.y)),
                Path.line(Point(inseam.start.x, frame.knee_level), knee),
            )
        )
    return TrouserPlan(*halves)


@dataclass(frozen=True)
class _Seat:
    """The two crotch seams for a frame: inseam and curve of each half, how far the centre back leans, its way up, and
    its end, which the crotch length alone decides."""

    front: tuple[Path, Cubic]
    back: tuple[Path, Cubic]
    lean: float
    up: Vector
    centre_back: Point

    @property
    def high(self) -> float:
        """How far the centre back rises above the front waist, mm."""
        return self.centre_back.y


def _seat(body: Body, frame: _Frame) -> _Seat:
    front_fork = Point(-frame.fork * FRONT_FORK, frame.crotch_level)
    back_fork = Point(-frame.fork * (1 - FRONT_FORK), frame.crotch_level - frame.drop)
    hip = Point(0.0, frame.hip_level)
    front_in = _inseam(frame, front_fork, frame.front - frame.lean - frame.knee_front)
    back_in = _inseam(frame, back_fork, frame.back - frame.lean - frame.knee_back)
    front_curve = _crotch_curve(body, front_in, hip, Vector(0.0, 1.0))
    rest = body["total_crotch_length"] + CROTCH_EASE - front_curve.length + frame.hip_level

    def leaning(lean: float) -> _Seat:
        up = Vector(lean, 1.0).unit()
        curve = _crotch_curve(body, back_in, hip, up)
        return _Seat((front_in, front_curve), (back_in, curve), lean, up, hip + up * (rest - curve.length))

    # A higher centre back leans more, or the waist would fall ever more steeply from it and lie hollow before the side.
    usual = leaning(SEAT_LEAN)
    even = EVEN_WAIST * min(max(usual.high, 0.0), _MOST_LIFT) / (frame.back - usual.centre_back.x)
    return leaning(min(max(even, SEAT_LEAN), MOST_SEAT_LEAN))


def _guessed(body: Body, name: str) -> bool:
    """Whether a measurement was estimated, not measured."""
    return any(measure.name == name for measure in body.estimated)


def _frame(body: Body, room: _Room, share: float, lower: float = 0.0) -> _Frame:
    """Levels and widths with that part of the hip between the legs, the crotch `lower` than the rise says, mm."""
    half_hip = (body["hip_girth"] + room.hip) / 2
    half_knee = (body["knee_girth"] + room.knee) / 2
    hip_level = -body["waist_to_hip"]
    crotch = -(body["body_rise"] + RISE_EASE)
    if crotch > hip_level - LEAST_HIP and _guessed(body, "body_rise"):
        lower = max(lower, min(crotch - (hip_level - LEAST_HIP), MOST_LOWER))
    crotch -= lower
    if crotch > hip_level - LEAST_HIP + 1e-6:
        raise refusal(body, "body_rise", "hip_crotch", "waist_to_hip")
    leg = body["inside_leg_length"] - RISE_EASE - lower
    frame = _Frame(
        hip_level,
        crotch,
        crotch - KNEE_PLACE * leg,
        crotch - leg + room.hem,
        (half_hip - BACK_WIDER) / 2,
        (half_hip + BACK_WIDER) / 2,
        half_knee - BACK_WIDER / 2,
        half_knee + BACK_WIDER / 2,
        0.0,
        0.0,
        0.0,
    )
    thigh = body["thigh_girth"] + THIGH_EASE
    for _ in range(60):
        before = (frame.fork, frame.lean, frame.drop)
        low = crotch - frame.drop
        needed = thigh - half_hip + frame.inward(crotch) + frame.inward(low)
        fork = max(share * body["hip_girth"], needed)
        front_thigh = frame.front - frame.inward(crotch) + fork * FRONT_FORK
        # The crease of the front lies in the middle of thigh and knee.
        frame = replace(frame, fork=fork, lean=(front_thigh - frame.knee_front) / 2 + frame.inward(crotch))
        if fork - needed > MOST_THIGH * body["thigh_girth"]:
            raise refusal(body, "thigh_girth", "wide_leg", "hip_girth")
        if fork > 0.55 * half_hip:
            raise refusal(body, "thigh_girth", "fork_wide", "hip_girth")
        frame = replace(frame, drop=_drop(frame))
        if max(abs(a - b) for a, b in zip(before, (frame.fork, frame.lean, frame.drop), strict=True)) < _SETTLED:
            break
    cramped = _bending(frame.fork * (1 - FRONT_FORK)) - (hip_level - crotch + frame.drop)
    if cramped > 0.1 and lower < MOST_LOWER and _guessed(body, "body_rise"):
        return _frame(body, room, share, min(lower + cramped, MOST_LOWER))
    if abs(frame.lean) > 0.35 * (hip_level - frame.knee_level):
        raise refusal(body, "knee_girth", "leg_slant", "thigh_girth")
    return frame


def _drop(frame: _Frame) -> float:
    """How far the back's crotch point lies below the front's, so that both inseams are equally long."""
    front = _inseam(
        frame, Point(-frame.fork * FRONT_FORK, frame.crotch_level), frame.front - frame.lean - frame.knee_front
    )
    inner = frame.back - frame.lean - frame.knee_back

    def miss(drop: float) -> float:
        fork = Point(-frame.fork * (1 - FRONT_FORK), frame.crotch_level - drop)
        return _inseam(frame, fork, inner).length - front.length

    return root(miss, 0.0, 5.0)


def _bending(out: float) -> float:
    """How far below the hip line the square to an inseam that ends `out` mm from the centre comes to it, so that the
    crotch curve bends on a circle of `LEAST_BEND` there: the curvature at the end of a cubic whose handles are `_ROUND`
    of the two sides of a corner."""
    return math.sqrt(LEAST_BEND * out * (1.0 - _ROUND) / 1.5) / _ROUND


def _inseam(frame: _Frame, fork: Point, inner: float) -> Path:
    """From the hem straight up to the knee at x = `inner`, then bending out to the crotch point."""
    knee = Point(inner, frame.knee_level)
    third = (fork.y - knee.y) / 3
    # Half as steep again as the straight line: the bend fades out evenly down to the knee.
    gain = 0.5 * (inner - fork.x)
    # The crotch curve leaves square to it: it must come to the centre so far below the hip line that it can bend there.
    spare = frame.hip_level - fork.y - _bending(-fork.x)
    gain = min(gain, max(third * spare / -fork.x, 0.0))
    curve = Cubic(knee, knee + Vector(0.0, third), fork + Vector(gain, -third), fork)
    return Path((Line(Point(inner, frame.hem_level), knee), curve))


def _crotch_curve(body: Body, inseam: Path, hip: Point, up: Vector) -> Cubic:
    """From the crotch point, square to the inseam, round to the hip line along the centre seam."""
    fork = inseam.end
    out = inseam.end_tangent.right()
    corner = meet_lines(fork, out, hip, up)
    if corner is None or corner.y > hip.y - 5 or corner.x < fork.x + 5:
        raise refusal(body, "body_rise", "crotch_curve", "waist_to_hip")
    return Cubic(fork, fork.lerp(corner, _ROUND), hip.lerp(corner, _ROUND), hip)


def _side(frame: _Frame, wide: float, top: Point, gain: float) -> Path:
    hip = Point(wide, frame.hip_level)
    knee = Point(wide - frame.lean, frame.knee_level)
    upper, lower = (top.y - hip.y) / 3, (hip.y - knee.y) / 3
    return Path(
        (
            Cubic(top, top + Vector(gain, -1.0) * upper, hip + Vector(0.0, upper), hip),
            Cubic(hip, hip - Vector(0.0, lower), knee + Vector(0.0, lower), knee),
            Line(knee, Point(knee.x, frame.hem_level)),
        )
    )


def _waists(body: Body, room: _Room, frame: _Frame, centre_back: Point, lean: float) -> tuple[Waist, Waist, float]:
    """Both waists ending at one height, equally far inside the hip, square to one side seam; and how far that seam
    gains outward at its top for every mm of falling."""
    half_waist = (body["waist_girth"] + room.waist) / 2
    deep = -frame.hip_level
    taken = frame.front + frame.back - centre_back.x - half_waist
    if taken < -2 * SIDE_OUT:
        raise refusal(body, "waist_girth", "no_waist_shape", "hip_girth")
    darts = taken - 2 * min(SIDE_SHARE * taken / 2, SIDE_MOST)
    front = wishes(darts * room.front_share, FRONT_PLACES, (FRONT_DEEP[0] * deep, FRONT_DEEP[1] * deep))
    back = wishes(darts * (1 - room.front_share), BACK_PLACES, (BACK_DEEP[0] * deep, BACK_DEEP[1] * deep))
    if any(wish.wide > MOST_DART for wish in (*front, *back)):
        raise refusal(body, "waist_girth", "darts_wide", "hip_girth")

    def drawn(side: float) -> tuple[Waist, Waist, float]:
        one, gain = _fitted(Point(0.0, 0.0), 0.0, frame.front - side, front, lambda top: 2 * side / (deep + top.y))
        end = Point(frame.back - side, one.path.end.y)
        tilt = math.atan2(end.y - centre_back.y, end.x - centre_back.x)
        slope = -math.atan(lean)

        def miss(turn: float) -> float:
            turned = tuple(replace(wish, tilt=turn) for wish in back)
            return _fitted(centre_back, slope, end.x, turned, lambda _: gain)[0].path.end.y - end.y

        turn = root(miss, tilt, tilt - 0.02)
        turned = tuple(replace(wish, tilt=turn) for wish in back)
        return one, _fitted(centre_back, slope, end.x, turned, lambda _: gain)[0], gain

    def miss_waist(side: float) -> float:
        one, two, _ = drawn(side)
        return sewn(one) + sewn(two) - half_waist

    nominal = (taken - sum(wish.wide for wish in (*front, *back))) / 2
    return drawn(root(miss_waist, nominal, nominal - 1.0))


def _fitted(
    start: Point, slope: float, x: float, darts: tuple[DartWish, ...], gain_at: Callable[[Point], float]
) -> tuple[Waist, float]:
    """The waist from `start` that ends `x` out, square to a side that gains `gain_at(end)`."""
    long, gain = x - start.x - sum(wish.wide for wish in darts), 0.0
    for _ in range(30):
        waist = darted_waist(start, long, slope, math.atan(gain), darts)
        miss, new = x - waist.path.end.x, gain_at(waist.path.end)
        if abs(miss) < 1e-10 and abs(new - gain) < 1e-12:
            break
        long, gain = long + miss, new
    return waist, gain
