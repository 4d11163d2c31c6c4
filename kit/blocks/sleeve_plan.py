"""The figures of the straight sleeve: where every point and line lies for an arm and an armscye, in mm.

Our own method, from proportions that are common practice (no source). The sleeve lies with its centre line, from the
top of the cap to the wrist, on x = 0: the front half at x > 0, the back half at x < 0. The upper arm line lies level
with the bodice's underarm and is exactly the girth with its ease. Two things are then found by closing in on them
between two bounds: the cap height, so that the whole cap measures the armscye and its ease, and where the centre line
divides the width, so that front and back each measure their own armscye and their own share of that ease.
"""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import dataclass
from functools import cache

from kit.body.body import Body
from kit.diagnostic import Message, Value, measure, measured, message, named_edge
from kit.errors import KitError
from kit.forgetting import forgettable
from kit.geometry import Cubic, Line, Motion, Path, Point, Vector

FRONT_SHARE = 0.45
"""The front's part of the cap ease; the back has more, for reaching forward."""
FRONT_NOTCH, BACK_NOTCH = 0.34, 0.38
"""Where the notches lie, as a part of the front and the back armscye from the underarm up. Below them the cap is as
long as the armscye; all ease lies above."""
LEAST_CAP, MOST_CAP = 0.20, 0.40
"""Cap height as a part of the whole armscye. Flatter is a different sleeve, and in a higher cap the arm cannot lift."""
MOST_TAPER, MOST_FLARE = math.radians(16), math.radians(6)
ELBOW = 0.58
"""Level of the elbow below the top of the cap, as a part of the arm length."""


@dataclass(frozen=True)
class CapShape:
    """How one half of the cap leaves its slant, the straight line from underarm to top: (place along the slant from
    the underarm, distance above it) for the hollow, the crossing and the swell, as parts of the slant's length."""

    hollow: tuple[float, float]
    crossing: float
    swell: tuple[float, float]


FRONT = CapShape((0.25, -0.056), 0.50, (0.76, 0.078))
"""More hollow, where the arm moves forward."""
BACK = CapShape((0.24, -0.040), 0.44, (0.72, 0.086))
"""Fuller, over the shoulder blade."""


@dataclass(frozen=True)
class HalfSleeve:
    """One half: `width` of its upper arm line, its `cap` from the underarm to the top, its `slant`, the `places` the
    cap runs through, and its `seam` from the underarm to the wrist."""

    width: float
    cap: Path
    slant: Path
    places: tuple[Point, ...]
    seam: Path


@dataclass(frozen=True)
class SleevePlan:
    """The whole draft: `wrist` from front to back, the cap height, the levels."""

    front: HalfSleeve
    back: HalfSleeve
    wrist: Path
    cap_height: float
    top: Point
    upper_arm: Path
    elbow: Path


def found(measure: Callable[[float], float], low: float, high: float) -> float:
    """Where a `measure` that grows from below 0 at `low` to above 0 at `high` is 0 (to 1e-7): the straight line
    between the ends is followed, and an end that stays counts half the next time, so that both close in."""
    below, above, last = measure(low), measure(high), 0
    place = (low + high) / 2
    for _ in range(100):
        place = (low * above - high * below) / (above - below) if below < 0 < above else (low + high) / 2
        value = measure(place)
        if abs(value) < 1e-7:
            break
        if value < 0:
            low, below = place, value
            above = above / 2 if last < 0 else above
            last = -1
        else:
            high, above = place, value
            below = below / 2 if last > 0 else below
            last = 1
    return place


def half_cap(width: float, level: float, height: float, lean: float, shape: CapShape) -> tuple[Path, tuple[Point, ...]]:
    """Half a cap at x > 0, from the underarm to the top, and the places it runs through. It leaves square to a seam
    that leans inward by `lean` (tangent of the angle) and arrives level."""
    underarm, top = Point(width, level), Point(0.0, level + height)
    slant = top - underarm
    above = slant.right()
    (low, dip), (high, rise) = shape.hollow, shape.swell
    places = tuple(
        underarm + slant * along + above * off for along, off in ((low, dip), (shape.crossing, 0.0), (high, rise))
    )
    return Path.through((underarm, *places, top), Vector(-1.0, lean), Vector(-1.0, 0.0)), places


def wrist_line(upper_arm: float, length: float, girth: float) -> tuple[float, float, float]:
    """(half the straight width, depth of the ends below the middle, lean of the seams) of a wrist line `girth` long
    that is square to both seams; `length` is the height from its middle to the upper arm line."""
    half, depth, lean = girth / 2, 0.0, 0.0
    for _ in range(15):
        lean = (upper_arm / 2 - half) / (length + depth)
        depth = half * lean / 2
        half *= girth / wrist_curve(0.0, half, depth, lean).length
    return half, depth, lean


def wrist_curve(middle: float, half: float, depth: float, lean: float) -> Cubic:
    """The wrist line from its front to its back end."""
    third = 2 * half / 3
    front, back = Point(middle + half, -depth), Point(middle - half, -depth)
    return Cubic(front, front + Vector(-third, third * lean), back + Vector(third, third * lean), back)


def _mirrored(path: Path) -> Path:
    return path.mirrored(Line(Point(0.0, 0.0), Point(0.0, 1.0)))


@forgettable(32)
def sleeve_plan(
    body: Body,
    front_armscye: float,
    back_armscye: float,
    cap_ease: float,
    arm_ease: float,
    wrist_ease: float,
    underarm: float = 0.0,
) -> SleevePlan:
    """The draft; the upper arm line lies at the level `underarm`. `KitError` naming the measurement that
    does not go with the armscye or with another."""
    armscye = front_armscye + back_armscye
    wide = body["upper_arm_girth"] + arm_ease
    long = body["arm_length"]
    girth = body["wrist_girth"] + wrist_ease
    front_cap = front_armscye + FRONT_SHARE * cap_ease
    back_cap = back_armscye + (1 - FRONT_SHARE) * cap_ease
    if long - MOST_CAP * armscye < 120:
        raise _refusal(body, "arm_length", "arm_short", armscye=measured(armscye))

    # Two unknowns, the cap's height and how the width is divided between front and back, and two lengths to hit. Each
    # is closed in on from two sides (`found`), one inside the other: for any height there is one division at which
    # front and back miss by as much, and of those divisions one height misses by nothing. Both misses grow steadily
    # with what is changed, as a higher cap and a wider half are longer, so a change of sign at the two limits is all
    # that must be looked at; where it is missing, no sleeve fits, and which limit fails says whether the arm is too
    # large or too small. Both searches look at their limits and at what they find more than once, so that it is kept.
    @cache
    def too_long(height: float, lean: float, part: float) -> tuple[float, float]:
        """By how much front and back cap exceed what is wanted, the front taking this part of the width."""
        level = long - height
        halves = ((wide * part, FRONT, front_cap), (wide * (1 - part), BACK, back_cap))
        front, back = (half_cap(w, level, height, lean, shape)[0].length - want for w, shape, want in halves)
        return front, back

    @cache
    def division(height: float, lean: float) -> float:
        def uneven(part: float) -> float:
            front, back = too_long(height, lean, part)
            return front - back

        return found(uneven, 0.3, 0.7)

    @cache
    def whole(height: float) -> float:
        lean = wrist_line(wide, long - height, girth)[2]
        return sum(too_long(height, lean, division(height, lean)))

    low, high = LEAST_CAP * armscye, MOST_CAP * armscye
    if whole(low) > 0:
        raise _refusal(
            body,
            "upper_arm_girth",
            "arm_large",
            message("blocks.arm_large_do"),
            ease=measured(arm_ease),
            armscye=measured(armscye),
            least=measured(low),
        )
    if whole(high) < 0:
        raise _refusal(
            body,
            "upper_arm_girth",
            "arm_small",
            message("blocks.arm_small_do"),
            ease=measured(arm_ease),
            armscye=measured(armscye),
            most=measured(high),
        )
    height = found(whole, low, high)
    part = division(height, wrist_line(wide, long - height, girth)[2])
    if not 0.38 < part < 0.62:
        raise KitError(
            message("blocks.armscyes_differ", front=measured(front_armscye), back=measured(back_armscye)),
            where=message("refusal.here", place=named_edge("armhole")),
            do=message("blocks.armscyes_differ_do"),
        )
    return _laid_out(body, wide, long, girth, height, part, underarm)


def _laid_out(
    body: Body, wide: float, long: float, girth: float, height: float, part: float, underarm: float
) -> SleevePlan:
    level = long - height
    half, depth, lean = wrist_line(wide, level, girth)
    if not -math.tan(MOST_FLARE) <= lean <= math.tan(MOST_TAPER):
        how = "wrist_wide" if lean < 0 else "wrist_narrow"
        raise _refusal(body, "wrist_girth", how, arm=measured(body["upper_arm_girth"]))
    widths = (wide * part, wide * (1 - part))
    middle = (widths[0] - widths[1]) / 2
    halves = []
    for width, shape, end in zip(widths, (FRONT, BACK), (middle + half, half - middle), strict=True):
        cap, places = half_cap(width, level, height, lean, shape)
        seam = Path.line(cap.start, Point(end, -depth))
        halves.append(HalfSleeve(width, cap, Path.line(cap.start, cap.end), places, seam))
    front, back = halves
    back = HalfSleeve(
        back.width,
        _mirrored(back.cap),
        _mirrored(back.slant),
        tuple(Point(-p.x, p.y) for p in back.places),
        _mirrored(back.seam),
    )
    elbow_level = long * (1 - ELBOW)
    ends = [
        half_seam.at((level - elbow_level) / (level + depth) * half_seam.length)
        for half_seam in (front.seam, back.seam)
    ]
    up = Motion.translation(Vector(0.0, underarm - level))
    return SleevePlan(
        _moved(front, up),
        _moved(back, up),
        Path.of(wrist_curve(middle, half, depth, lean)).moved(up),
        height,
        up(Point(0.0, long)),
        Path.line(front.cap.start, back.cap.start).moved(up),
        Path.line(ends[0], ends[1]).moved(up),
    )


def _moved(half: HalfSleeve, up: Motion) -> HalfSleeve:
    places = tuple(up(p) for p in half.places)
    return HalfSleeve(half.width, half.cap.moved(up), half.slant.moved(up), places, half.seam.moved(up))


def _refusal(body: Body, name: str, key: str, do: Message | None = None, **more: Value) -> KitError:
    what = message(f"blocks.{key}", measure=measure(name), value=measured(body[name]), **more)
    guessed = any(m.name == name for m in body.estimated)
    return KitError(
        message("blocks.estimated", what=what, measures=measure(name)) if guessed else what,
        where=message("refusal.here", place=measure(name)),
        do=do or message("blocks.again_do", measure=measure(name)),
    )
