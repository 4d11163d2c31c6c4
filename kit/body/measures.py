"""The measurement table: what each measurement is called, how it is taken, and what a person can measure. A lesson may
have measurements of its own besides, with their words in them.

Names follow ISO 8559-1:2017 where it has the measurement (written in snake case in code); `named` says how sure
the spelling is. What people read is in templates/language; the notes are in our own words. The plausible ranges are
wide on purpose, from a small teenager to a very large adult: they catch a slipped unit or digit, not an unusual body
(common practice, no source).
"""

from __future__ import annotations

from dataclasses import dataclass

from kit.diagnostic import Value, measure, measured, message
from kit.errors import KitError, known_near
from kit.language import say

_SLIPS = (
    (10.0, "slip_cm_as_mm"),
    (0.1, "slip_mm_as_cm"),
    (2.54, "slip_inch_as_cm"),
    (25.4, "slip_inch_as_mm"),
    (1 / 2.54, "slip_cm_as_inch"),
)


@dataclass(frozen=True)
class Measurement:
    """One row of the table: `name` in code, plausible `least` and `most` in mm. `kind` is girth (around), width
    (across) or height (along the body). `named` is where the name comes from: "ISO 8559-1", "ISO 8559-1, from memory"
    (not checked against its text), or "common practice" (a term of the trade). A lesson's own has its words in `title`
    and `text`."""

    name: str
    least: float
    most: float
    kind: str
    named: str = "ISO 8559-1, from memory"
    title: str = ""
    text: str = ""

    @property
    def said(self) -> str:
        """Its name as people say it in the spoken language."""
        return self.title or say(f"measure.{self.name}")

    @property
    def note(self) -> str:
        """How it is taken, in the spoken language."""
        return self.text if self.title else say(f"measure_note.{self.name}")

    @property
    def told(self) -> Value | str:
        """Its name as a value of a message."""
        return self.title or measure(self.name)

    def plausible(self, value: float) -> float:
        """`value` (mm) when a person can measure that; raises `KitError` naming the measurement, its value and the
        plausible range otherwise."""
        if self.least <= value <= self.most:
            return float(value)
        slip = next((key for factor, key in _SLIPS if self.least <= value * factor <= self.most), "measure_again")
        hint = message(f"body.{slip}")
        how = self.text if self.title else Value(f"measure_note.{self.name}", "key")
        raise KitError(
            message("body.not_plausible", value=measured(value), least=measured(self.least), most=measured(self.most)),
            where=message("refusal.here", place=self.told),
            do=message("phrase.then", first=hint, then=how) if how else hint,
        )


FROM_WAIST = frozenset(
    (
        *("waist_girth", "back_waist_length", "front_waist_length", "waist_to_hip", "body_rise"),
        *("total_crotch_length", "waist_height", "outside_leg_length"),
    )
)
"""Measurements that are taken at, from or to a tape tied round the waist, as their notes say."""
_TABLE = (
    Measurement("bust_girth", 500, 1800, "girth", "ISO 8559-1"),
    Measurement("upper_chest_girth", 500, 1700, "girth"),
    Measurement("under_bust_girth", 450, 1700, "girth"),
    Measurement("bust_point_width", 100, 400, "width"),
    Measurement("waist_girth", 400, 1800, "girth", "ISO 8559-1"),
    Measurement("hip_girth", 500, 2000, "girth", "ISO 8559-1"),
    Measurement("neck_base_girth", 230, 650, "girth"),
    Measurement("shoulder_length", 60, 200, "width", "ISO 8559-1"),
    Measurement("back_width", 190, 600, "width"),
    Measurement("front_width", 190, 600, "width", "common practice"),
    Measurement("back_waist_length", 200, 600, "height", "ISO 8559-1"),
    Measurement("front_waist_length", 220, 700, "height"),
    Measurement("neck_to_bust_point", 150, 520, "height", "common practice"),
    Measurement("armscye_depth", 120, 350, "height", "common practice"),
    Measurement("waist_to_hip", 100, 320, "height", "common practice"),
    Measurement("upper_arm_girth", 150, 700, "girth", "ISO 8559-1"),
    Measurement("elbow_girth", 140, 600, "girth"),
    Measurement("wrist_girth", 100, 300, "girth"),
    Measurement("arm_length", 270, 850, "height"),
    Measurement("thigh_girth", 280, 1100, "girth"),
    Measurement("knee_girth", 190, 800, "girth"),
    Measurement("calf_girth", 170, 750, "girth"),
    Measurement("ankle_girth", 120, 500, "girth"),
    Measurement("body_rise", 150, 480, "height"),
    Measurement("total_crotch_length", 400, 1250, "girth"),
    Measurement("waist_height", 480, 1450, "height"),
    Measurement("outside_leg_length", 480, 1500, "height"),
    Measurement("inside_leg_length", 360, 1150, "height"),
    Measurement("height", 900, 2300, "height"),
    Measurement("head_girth", 300, 750, "girth"),
    Measurement("hand_girth", 90, 320, "girth"),
    Measurement("heel_girth", 150, 480, "girth", "common practice"),
    Measurement("foot_girth", 130, 400, "girth", "common practice"),
    Measurement("shoulder_girth", 550, 1900, "girth", "common practice"),
)

MEASUREMENTS: dict[str, Measurement] = {row.name: row for row in _TABLE}


def measurement(name: str) -> Measurement:
    """The table's row. Raises `KitError` with the nearest name for one it has not."""
    try:
        return MEASUREMENTS[name]
    except KeyError:
        raise KitError(message("body.unknown_measure", name=name), do=known_near(name, MEASUREMENTS)) from None


def said(name: str) -> str:
    """A measurement's name as people say it."""
    row = MEASUREMENTS.get(name)
    return row.said if row else name.replace("_", " ")


def plausible(name: str, value: float) -> float:
    """`value` (mm) when a person can measure that; raises `KitError` naming the measurement, its value and
    the plausible range otherwise."""
    return measurement(name).plausible(value)
