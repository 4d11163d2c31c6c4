"""Needle and stitch for the weight of a cloth, as a lesson tells it in words: "110 to 180 g/m²"."""

from __future__ import annotations

import re
from dataclasses import dataclass

_WEIGHT = re.compile(r"(\d+(?:[.,]\d+)?)(?:\s*(?:to|-|–|bis|a|à)\s*(\d+(?:[.,]\d+)?))?\s*(g|oz)\b", re.IGNORECASE)
_OUNCE = 33.906  # g/m² in an ounce to the square yard: 28.3495 g / 0.836127 m²
_CLASSES = (
    (100.0, "60/8", "70/10", 2.0),
    (200.0, "80/12", "80/12", 2.5),
    (300.0, "90/14", "90/14", 3.0),
    (float("inf"), "100/16", "100/16", 3.5),
)
"""Up to so many g/m²: the finest and the coarsest needle, and the stitch in mm (common practice, no source; values from
memory)."""

FINE_ROWS = (3.0, 4.0)
"""How far from an edge or fold the rows on fine cloth lie, in mm (common practice, no source)."""


@dataclass(frozen=True)
class NeedleSetting:
    """The finest and the coarsest `needle` that suit, the `stitch` in mm (shortest, longest), and whether the cloth is
    `fine`: under 100 g/m²."""

    needle: tuple[str, str]
    stitch: tuple[float, float]
    fine: bool


def setting_for(weight: str) -> NeedleSetting | None:
    """What suits a cloth of that weight in words; None where no weight in grams or ounces stands in them.

    >>> setting_for("110 to 180 g/m²: light enough to tie")
    NeedleSetting(needle=('80/12', '80/12'), stitch=(2.5, 2.5), fine=False)
    """
    found = _WEIGHT.search(weight)
    if found is None:
        return None
    ends = [float(text.replace(",", ".")) for text in found.group(1, 2) if text]
    factor = _OUNCE if found.group(3).lower() == "oz" else 1.0
    low, high = (next(each for each in _CLASSES if end * factor <= each[0]) for end in (min(ends), max(ends)))
    return NeedleSetting((low[1], high[2]), (low[3], high[3]), max(ends) * factor <= _CLASSES[0][0])
