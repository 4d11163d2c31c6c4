"""The measurement table: what each measurement is called, how it is taken, and what a person can measure.

Names follow ISO 8559-1:2017 where it has the measurement (written in snake case in code); `named` says how sure
the spelling is. The notes are in our own words. The plausible ranges are wide on purpose, from a small teenager
to a very large adult: they catch a slipped unit or digit, not an unusual body (common practice, no source).
"""

from __future__ import annotations

from dataclasses import dataclass

from kit.errors import KitError, near
from kit.units import both


@dataclass(frozen=True)
class Measurement:
    """One row of the table: `name` in code, `said` as people say it, `note` on how it is taken, plausible
    `least` and `most` in mm. `kind` is girth (around), width (across) or height (along the body). `named` is
    where the name comes from: "ISO 8559-1", "ISO 8559-1, from memory" (not checked against its text), or
    "common practice" (a term of the trade)."""

    name: str
    said: str
    note: str
    least: float
    most: float
    kind: str
    named: str = "ISO 8559-1, from memory"


_TABLE = (
    Measurement(
        "bust_girth",
        "bust girth",
        "Around the fullest part of the bust, tape level all round, breathing easily.",
        500,
        1800,
        "girth",
        "ISO 8559-1",
    ),
    Measurement(
        "upper_chest_girth",
        "upper chest girth",
        "Around the chest high under the arms and above the breasts, tape level.",
        500,
        1700,
        "girth",
    ),
    Measurement(
        "under_bust_girth",
        "under-bust girth",
        "Around the ribs just beneath the breasts, tape level.",
        450,
        1700,
        "girth",
    ),
    Measurement(
        "bust_point_width",
        "bust point width",
        "From one bust point to the other, straight across.",
        100,
        400,
        "width",
    ),
    Measurement(
        "waist_girth",
        "waist girth",
        "Around the natural waist, where the body bends sideways; tie a tape there and leave it on.",
        400,
        1800,
        "girth",
        "ISO 8559-1",
    ),
    Measurement(
        "hip_girth",
        "hip girth",
        "Around the fullest part of the seat, feet together, tape level.",
        500,
        2000,
        "girth",
        "ISO 8559-1",
    ),
    Measurement(
        "neck_base_girth",
        "neck base girth",
        "Around the foot of the neck: over the nape, the neck points and the hollow in front.",
        250,
        650,
        "girth",
    ),
    Measurement(
        "shoulder_length",
        "shoulder length",
        "From the neck point, where neck and shoulder meet, to the shoulder tip at the end of the bone.",
        70,
        200,
        "width",
        "ISO 8559-1",
    ),
    Measurement(
        "back_width",
        "back width",
        "Across the back from arm crease to arm crease, halfway between shoulder and armpit.",
        200,
        600,
        "width",
    ),
    Measurement(
        "front_width",
        "front width",
        "Across the chest from arm crease to arm crease, above the bust.",
        200,
        600,
        "width",
        "common practice",
    ),
    Measurement(
        "back_waist_length",
        "back waist length",
        "Down the spine from the nape, the bone that stands out at the foot of the neck, to the waist tape.",
        240,
        600,
        "height",
        "ISO 8559-1",
    ),
    Measurement(
        "front_waist_length",
        "front waist length",
        "From the neck point down over the bust point to the waist tape.",
        260,
        700,
        "height",
    ),
    Measurement(
        "neck_to_bust_point",
        "neck to bust point",
        "From the neck point, where neck and shoulder meet, down to the bust point.",
        150,
        520,
        "height",
        "common practice",
    ),
    Measurement(
        "armscye_depth",
        "armscye depth",
        "Down the spine from the nape to the level of the armpits; hold a ruler level under both arms to find it.",
        120,
        350,
        "height",
        "common practice",
    ),
    Measurement(
        "waist_to_hip",
        "waist to hip",
        "Down the side from the waist tape to the level of the fullest part of the seat.",
        100,
        320,
        "height",
        "common practice",
    ),
    Measurement(
        "upper_arm_girth",
        "upper arm girth",
        "Around the fullest part of the upper arm, arm hanging.",
        150,
        700,
        "girth",
        "ISO 8559-1",
    ),
    Measurement(
        "elbow_girth",
        "elbow girth",
        "Around the elbow over its bone, arm bent.",
        140,
        600,
        "girth",
    ),
    Measurement(
        "wrist_girth",
        "wrist girth",
        "Around the wrist over the bone.",
        100,
        300,
        "girth",
    ),
    Measurement(
        "arm_length",
        "arm length",
        "From the shoulder tip over the slightly bent elbow to the wrist bone.",
        300,
        850,
        "height",
    ),
    Measurement(
        "thigh_girth",
        "thigh girth",
        "Around the thigh just below the crotch, legs a little apart, tape level.",
        300,
        1100,
        "girth",
    ),
    Measurement(
        "knee_girth",
        "knee girth",
        "Around the knee over the middle of the kneecap, leg straight.",
        220,
        800,
        "girth",
    ),
    Measurement(
        "calf_girth",
        "calf girth",
        "Around the fullest part of the calf.",
        200,
        750,
        "girth",
    ),
    Measurement(
        "ankle_girth",
        "ankle girth",
        "Around the ankle over its bones.",
        140,
        500,
        "girth",
    ),
    Measurement(
        "body_rise",
        "body rise",
        "Sit upright on a flat, hard chair: at the side from the waist tape down to the seat of the chair.",
        150,
        480,
        "height",
    ),
    Measurement(
        "total_crotch_length",
        "total crotch length",
        "From the waist tape in front, between the legs, up to the waist tape at the back; not pulled tight.",
        400,
        1250,
        "girth",
    ),
    Measurement(
        "waist_height",
        "waist height",
        "At the side from the waist tape straight down to the floor, without shoes.",
        550,
        1450,
        "height",
    ),
    Measurement(
        "outside_leg_length",
        "outside leg length",
        "At the side from the waist tape over the curve of the hip, then straight down to the floor.",
        550,
        1500,
        "height",
    ),
    Measurement(
        "inside_leg_length",
        "inside leg length",
        "From the crotch down the inside of the leg to the floor, without shoes; a book held level there helps.",
        400,
        1150,
        "height",
    ),
    Measurement(
        "height",
        "height",
        "From the crown of the head to the floor, standing straight without shoes.",
        900,
        2300,
        "height",
    ),
)

MEASUREMENTS: dict[str, Measurement] = {row.name: row for row in _TABLE}


def measurement(name: str) -> Measurement:
    """The table's row. Raises `KitError` with the nearest name for one it has not."""
    try:
        return MEASUREMENTS[name]
    except KeyError:
        raise KitError(f"there is no body measurement '{name}'.", do=near(name, MEASUREMENTS)) from None


def said(name: str) -> str:
    """A measurement's name as people say it."""
    row = MEASUREMENTS.get(name)
    return row.said if row else name.replace("_", " ")


_SLIPS = (
    (10.0, "Was a value in cm typed as mm?"),
    (0.1, "Was a value in mm typed as cm?"),
    (2.54, "Was a value in inches typed as cm?"),
    (25.4, "Was a value in inches typed as mm?"),
    (1 / 2.54, "Was a value in cm typed as inches?"),
)


def plausible(name: str, value: float) -> float:
    """`value` (mm) when a person can measure that; raises `KitError` naming the measurement, its value and
    the plausible range otherwise."""
    row = measurement(name)
    if row.least <= value <= row.most:
        return float(value)
    hint = next((text for factor, text in _SLIPS if row.least <= value * factor <= row.most), "Measure again.")
    raise KitError(
        f"{both(value)} cannot be right; people measure between {both(row.least)} and {both(row.most)}.",
        where=row.said,
        do=f"{hint} {row.note}",
    )
