"""What can be dragged in a step's picture: the far end of each straight measure that is a slider's length."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

from kit.picture.drawing import Dimension, Drawing

_LEAST = 2.0
"""mm of length from which a measure can be taken hold of: a shorter one has hardly a direction."""


def grips(drawing: Drawing, sliders: Sequence[Mapping[str, Any]]) -> list[dict[str, Any]]:
    """For each of the `sliders` (as `kit.page.sliders` tells them) that the picture shows as a straight distance, where
    it ends (`at`), which `way` it grows (a unit vector), both in the picture's own units as its SVG counts them (y
    down), and by how many of them for each mm (`rate`): a small piece is drawn enlarged."""
    lengths = {each["name"]: each for each in sliders if each["length"]}
    found: dict[str, dict[str, Any]] = {}
    for item in drawing.items:
        if not isinstance(item, Dimension) or item.along or item.name in found or item.name not in lengths:
            continue
        value, span = float(lengths[item.name]["value"]), item.end - item.start
        if value < _LEAST or span.length < _LEAST:
            continue
        way = span.unit()
        found[item.name] = {
            "name": item.name,
            "at": [item.end.x, -item.end.y],
            "way": [way.x, -way.y],
            "rate": span.length / value,
        }
    return list(found.values())
