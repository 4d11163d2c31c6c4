"""A drawing as plain data: every number of it in mm to its last digit, before its texts are given their places.

What two Pythons draw is compared so (tests/bench/page_truth.py), and whoever builds upon a page can draw it with a pen
of their own.
"""

from __future__ import annotations

from dataclasses import fields, is_dataclass
from typing import Any

from kit.picture.drawing import Drawing


def drawing_data(drawing: Drawing) -> dict[str, Any]:
    """`items` in painting order, each a list of its kind and what it is made of, in the order of its fields (stroke,
    curves, role ...), with `bounds` and `window` (mm; None where the items tell). All of it can be written as JSON.

    >>> from kit.geometry import Line, Point
    >>> from kit.picture.drawing import Stroke
    >>> drawing_data(Drawing((Stroke((Line(Point(0, 0), Point(1, 0)),), "cut"),)))["items"][0][:3]
    ['Stroke', [['Line', ['Point', 0.0, 0.0], ['Point', 1.0, 0.0]]], 'cut']
    """
    return {
        "items": [_plain(item) for item in drawing.items],
        "bounds": _plain(drawing.bounds),
        "window": _plain(drawing.window),
        "alt": drawing.alt,
    }


def _plain(value: Any) -> Any:
    if is_dataclass(value) and not isinstance(value, type):
        return [type(value).__name__, *(_plain(getattr(value, each.name)) for each in fields(value) if each.repr)]
    if isinstance(value, list | tuple):
        return [_plain(each) for each in value]
    return value if value is None or isinstance(value, bool | int | float) else str(value)
