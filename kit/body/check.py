"""Cross-checks of a body: measurements that do not go with each other. They flag and never refuse; bodies differ.

The bounds are wide, from common practice (no source): they are there to find a tape read wrongly, two numbers
swapped, or a measurement taken at another place, not an unusual body.
"""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass

from kit.body.body import Body
from kit.diagnostic import Diagnostic, Message, System, Value, measure, message


@dataclass(frozen=True)
class _Share:
    """`part` is between `least` and `most` times `whole`; `small` and `large` are the
    messages that say it when it is not."""

    part: str
    whole: str
    least: float
    most: float
    small: str
    large: str


_SHARES = (
    _Share("waist_girth", "hip_girth", 0.52, 1.12, "very_small", "larger_by_far"),
    _Share("waist_girth", "bust_girth", 0.55, 1.12, "very_small", "larger_by_far"),
    _Share("hip_girth", "bust_girth", 0.78, 1.40, "much_smaller", "much_larger"),
    _Share("bust_girth", "upper_chest_girth", 0.94, 1.28, "smaller", "larger_by_far"),
    _Share("under_bust_girth", "bust_girth", 0.62, 1.0, "very_small", "larger"),
    _Share("neck_base_girth", "bust_girth", 0.29, 0.52, "small", "large"),
    _Share("front_width", "back_width", 0.78, 1.12, "small", "large"),
    _Share("bust_point_width", "front_width", 0.38, 0.80, "small", "large"),
    _Share("armscye_depth", "back_waist_length", 0.38, 0.62, "short", "long"),
    _Share("front_waist_length", "back_waist_length", 0.88, 1.32, "short", "long"),
    _Share("neck_to_bust_point", "front_waist_length", 0.45, 0.80, "short", "long"),
    _Share("wrist_girth", "upper_arm_girth", 0.36, 0.90, "small", "large"),
    _Share("elbow_girth", "upper_arm_girth", 0.65, 1.15, "small", "large"),
    _Share("thigh_girth", "hip_girth", 0.45, 0.75, "small", "large"),
    _Share("knee_girth", "thigh_girth", 0.45, 0.95, "small", "large"),
    _Share("ankle_girth", "knee_girth", 0.48, 0.90, "small", "large"),
    _Share("total_crotch_length", "body_rise", 1.9, 3.4, "short", "long"),
    _Share("back_waist_length", "height", 0.20, 0.30, "short", "long"),
    _Share("arm_length", "height", 0.29, 0.41, "short", "long"),
    _Share("waist_height", "height", 0.54, 0.70, "low", "high"),
    _Share("inside_leg_length", "waist_height", 0.60, 0.85, "short", "long"),
    _Share("outside_leg_length", "waist_height", 0.97, 1.10, "shorter", "longer_by_far"),
)


def check_body(body: Body, system: System = "cm") -> tuple[Diagnostic, ...]:
    """What looks odd about `body`, or nothing: each a warning that names the `measures` concerned and prints as a
    sentence. Only measurements somebody took are compared: an estimated one follows the size chart. `system` is the
    unit read first.

    >>> from kit import cm, make_body
    >>> [odd.measures for odd in check_body(make_body({"bust_girth": 90 * cm, "waist_girth": 120 * cm}))]
    [('waist_girth', 'bust_girth')]
    """
    taken = {measure.name: measure.value for measure in body.measures if not measure.estimated}
    return (*_shares(taken, system), *_sums(taken, system))


def _odd(code: str, says: Message, can: str, measures: tuple[str, ...]) -> Diagnostic:
    return Diagnostic(code, "warning", says, can=message(can), measures=measures)


def _shares(taken: dict[str, float], system: System) -> Iterator[Diagnostic]:
    for row in _SHARES:
        if row.part not in taken or row.whole not in taken:
            continue
        part, whole = taken[row.part], taken[row.whole]
        if row.least * whole <= part <= row.most * whole:
            continue
        how = row.small if part < row.least * whole else row.large
        says = message(
            f"body.check_{how}",
            part=measure(row.part),
            part_value=Value(part, "length", system),
            whole=measure(row.whole),
            whole_value=Value(whole, "length", system),
        )
        yield _odd("body_share", says, "body.check_again", (row.part, row.whole))


def _sums(taken: dict[str, float], system: System) -> Iterator[Diagnostic]:
    names = ("shoulder_length", "back_width", "neck_base_girth")
    if all(name in taken for name in names):
        shoulder, back, neck = (taken[name] for name in names)
        across = 2 * shoulder * math.cos(math.radians(22)) + 0.36 * neck  # from shoulder tip to shoulder tip
        if not 0.80 * across <= back <= 1.20 * across:
            says = message(
                "body.check_shoulders",
                shoulder=measure("shoulder_length"),
                shoulder_value=Value(shoulder, "length", system),
                back=measure("back_width"),
                back_value=Value(back, "length", system),
                across=Value(across, "length", system),
                how="narrow" if back < across else "wide",
            )
            yield _odd("body_shoulders", says, "body.check_shoulders_do", names)
    names = ("back_waist_length", "waist_height", "height")
    if all(name in taken for name in names):
        back, waist, height = (taken[name] for name in names)
        if not 0.80 * height <= back + waist <= 0.92 * height:
            says = message(
                "body.check_nape",
                back=Value("back_waist_length", "measure_first"),
                waist=measure("waist_height"),
                sum=Value(back + waist, "length", system),
                height=Value(height, "length", system),
            )
            yield _odd("body_nape", says, "body.check_nape_do", names)
    names = ("waist_height", "inside_leg_length", "body_rise")
    if all(name in taken for name in names):
        waist, inside, rise = (taken[name] for name in names)
        if abs(waist - inside - rise) > 60:
            says = message(
                "body.check_rise",
                waist=Value("waist_height", "measure_first"),
                inside=measure("inside_leg_length"),
                left=Value(waist - inside, "length", system),
                rise=measure("body_rise"),
                rise_value=Value(rise, "length", system),
            )
            yield _odd("body_rise", says, "body.check_rise_do", names)
