"""Cross-checks of a body: measurements that do not go with each other. They flag and never refuse; bodies differ.

The bounds are wide, from common practice (no source): they are there to find a tape read wrongly, two numbers
swapped, or a measurement taken at another place, not an unusual body.
"""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass

from kit.body.body import Body
from kit.body.measures import said
from kit.units import System, both


@dataclass(frozen=True)
class Doubt:
    """Measurements that do not go together: `what` is odd with its values, the `measures` concerned, and what
    to `do`."""

    what: str
    measures: tuple[str, ...]
    do: str

    def __str__(self) -> str:
        return f"{self.what} {self.do}"


@dataclass(frozen=True)
class _Share:
    """`part` is between `least` and `most` times `whole`; `small` and `large` say it when it is not."""

    part: str
    whole: str
    least: float
    most: float
    small: str
    large: str


_SHARES = (
    _Share("waist_girth", "hip_girth", 0.52, 1.12, "is very small beside", "is larger by far than"),
    _Share("waist_girth", "bust_girth", 0.55, 1.12, "is very small beside", "is larger by far than"),
    _Share("hip_girth", "bust_girth", 0.78, 1.40, "is much smaller than", "is much larger than"),
    _Share("bust_girth", "upper_chest_girth", 0.94, 1.28, "is smaller than", "is larger by far than"),
    _Share("under_bust_girth", "bust_girth", 0.62, 1.0, "is very small beside", "is larger than"),
    _Share("neck_base_girth", "bust_girth", 0.29, 0.52, "is small beside", "is large beside"),
    _Share("front_width", "back_width", 0.78, 1.12, "is small beside", "is large beside"),
    _Share("bust_point_width", "front_width", 0.38, 0.80, "is small beside", "is large beside"),
    _Share("armscye_depth", "back_waist_length", 0.38, 0.62, "is short beside", "is long beside"),
    _Share("front_waist_length", "back_waist_length", 0.88, 1.32, "is short beside", "is long beside"),
    _Share("neck_to_bust_point", "front_waist_length", 0.45, 0.80, "is short beside", "is long beside"),
    _Share("wrist_girth", "upper_arm_girth", 0.36, 0.90, "is small beside", "is large beside"),
    _Share("elbow_girth", "upper_arm_girth", 0.65, 1.15, "is small beside", "is large beside"),
    _Share("thigh_girth", "hip_girth", 0.45, 0.75, "is small beside", "is large beside"),
    _Share("knee_girth", "thigh_girth", 0.45, 0.95, "is small beside", "is large beside"),
    _Share("ankle_girth", "knee_girth", 0.48, 0.90, "is small beside", "is large beside"),
    _Share("total_crotch_length", "body_rise", 1.9, 3.4, "is short beside", "is long beside"),
    _Share("back_waist_length", "height", 0.20, 0.30, "is short beside", "is long beside"),
    _Share("arm_length", "height", 0.29, 0.41, "is short beside", "is long beside"),
    _Share("waist_height", "height", 0.54, 0.70, "is low beside", "is high beside"),
    _Share("inside_leg_length", "waist_height", 0.60, 0.85, "is short beside", "is long beside"),
    _Share("outside_leg_length", "waist_height", 0.97, 1.10, "is shorter than", "is longer by far than"),
)
_AGAIN = "Measure both again; if they are right, go on."


def check_body(body: Body, system: System = "cm") -> tuple[Doubt, ...]:
    """What looks odd about `body`, or nothing. Only measurements somebody took are compared: an estimated one
    follows the size chart. `system` is the unit read first."""
    taken = {measure.name: measure.value for measure in body.measures if not measure.estimated}
    return (*_shares(taken, system), *_sums(taken, system))


def _shares(taken: dict[str, float], system: System) -> Iterator[Doubt]:
    for row in _SHARES:
        if row.part not in taken or row.whole not in taken:
            continue
        part, whole = taken[row.part], taken[row.whole]
        if row.least * whole <= part <= row.most * whole:
            continue
        how = row.small if part < row.least * whole else row.large
        yield Doubt(
            f"The {said(row.part)}, {both(part, system)}, {how} the {said(row.whole)}, {both(whole, system)}.",
            (row.part, row.whole),
            _AGAIN,
        )


def _sums(taken: dict[str, float], system: System) -> Iterator[Doubt]:
    names = ("shoulder_length", "back_width", "neck_base_girth")
    if all(name in taken for name in names):
        shoulder, back, neck = (taken[name] for name in names)
        across = 2 * shoulder * math.cos(math.radians(22)) + 0.36 * neck  # from shoulder tip to shoulder tip
        if not 0.80 * across <= back <= 1.20 * across:
            how = "narrow" if back < across else "wide"
            yield Doubt(
                f"The shoulder length, {both(shoulder, system)}, does not go with the back width, "
                f"{both(back, system)}: the back is {how} for shoulders about {both(across, system)} from tip to tip.",
                names,
                "Find the end of the shoulder bone again by lifting the arm, and measure both once more.",
            )
    names = ("back_waist_length", "waist_height", "height")
    if all(name in taken for name in names):
        back, waist, height = (taken[name] for name in names)
        if not 0.80 * height <= back + waist <= 0.92 * height:
            yield Doubt(
                f"Back waist length and waist height together, {both(back + waist, system)}, do not reach the nape "
                f"of a person of {both(height, system)}.",
                names,
                "Tie a tape around the waist and measure all three to and from it.",
            )
    names = ("waist_height", "inside_leg_length", "body_rise")
    if all(name in taken for name in names):
        waist, inside, rise = (taken[name] for name in names)
        if abs(waist - inside - rise) > 60:
            yield Doubt(
                f"Waist height less inside leg length is {both(waist - inside, system)}, but the body rise is "
                f"{both(rise, system)}.",
                names,
                "Measure the body rise sitting on a flat, hard chair, and the inside leg to the floor.",
            )
