"""993 measured women: 2012 Anthropometric Survey of U.S. Army Personnel (ANSUR II, public release), Gordon et al.,
NATICK/TR-15/007, 2014; each second woman, read from the folder of published figures beside the checkout.

The survey's waist is at the navel: its girth there, its back length down to there and its height go together, so the
level of the navel is the waist of these bodies, and the hip lies below it; where that is less than a tape would be
held to (10 cm, of 38 women), the chart says where the hip is. Its upper arm is measured flexed. Back width is interscye
I. Armscye depth is left to the chart: what the survey has is the height of the front fold of the arm, 15.7 cm below the
nape in the middle, where two published rules of drafting (bust/8 + 2 1/2 in, bust/6 + 1 in) give 18 to 19. The front
has no width or length there.
"""

from __future__ import annotations

import csv
from functools import cache
from pathlib import Path

from kit.units import Length, cm, mm

TABLE = Path(__file__).resolve().parents[3] / "shared" / "reference" / "ansur2-women-odd-rows.csv"
ABSENT = f"the survey's rows are not beside the checkout, in {TABLE.parents[1].name}/{TABLE.parent.name}"
"""Why a check that needs them is skipped where they are not: the project holds no copy of them."""

_COLUMNS = {
    "bust_girth": "chestcircumference",
    "waist_girth": "waistcircumference",
    "hip_girth": "buttockcircumference",
    "neck_base_girth": "neckcircumferencebase",
    "shoulder_length": "shoulderlength",
    "back_width": "interscyei",
    "back_waist_length": "waistbacklength",
    "upper_arm_girth": "bicepscircumferenceflexed",
    "wrist_girth": "wristcircumference",
    "arm_length": "sleeveoutseam",
    "thigh_girth": "thighcircumference",
    "calf_girth": "calfcircumference",
    "ankle_girth": "anklecircumference",
    "total_crotch_length": "crotchlengthomphalion",
    "waist_height": "waistheightomphalion",
    "inside_leg_length": "crotchheight",
    "height": "stature",
    "head_girth": "headcircumference",
    "hand_girth": "handcircumference",
    "heel_girth": "heelanklecircumference",
}


@cache
def rows() -> tuple[dict[str, float], ...]:
    """The table as it was published, mm by the survey's own names; none where it is not beside the checkout."""
    if not TABLE.is_file():
        return ()
    with TABLE.open(encoding="utf-8") as file:
        return tuple({name: float(value) for name, value in row.items()} for row in csv.DictReader(file))


@cache
def _women() -> tuple[dict[str, Length], ...]:
    return tuple(_woman(row) for row in rows())


def _woman(row: dict[str, float]) -> dict[str, Length]:
    measured = {ours: row[theirs] * mm for ours, theirs in _COLUMNS.items()}
    if (hip := (row["waistheightomphalion"] - row["buttockheight"]) * mm) >= 10 * cm:
        measured["waist_to_hip"] = hip
    return measured


def women() -> list[dict[str, Length]]:
    """The measurements of each woman by the kit's names, ready for `make_body`; none where the table is not beside the
    checkout."""
    return [dict(woman) for woman in _women()]
