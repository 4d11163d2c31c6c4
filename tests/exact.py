"""Lines and values told whole, in text: every point of every curve, lengths to a hundredth of a mm, angles and shares
to a ten-thousandth. What `tests/told.py` tells in short: there a line is its two ends, its middle and its length."""

from __future__ import annotations

import math
from collections.abc import Callable, Mapping
from dataclasses import MISSING, fields, is_dataclass
from types import ModuleType
from typing import Any

from kit.errors import KitError
from kit.geometry import Arc, Line, Motion, Path, Point, Vector
from tests.told import usual

_NUDGE = 1e-4
"""Places half a step from one another are common where a piece is drawn by hand: all of them go up."""


def number(value: float) -> str:
    """A number, to a hundredth from 1 on, else to a ten-thousandth.

    >>> number(12.345), number(0.12345), number(-3.0)
    ('12.35', '0.1235', '-3')
    """
    if not math.isfinite(value):
        return str(value)
    parts = 100 if abs(value) >= 1 else 10_000
    return f"{math.floor(value * parts + 0.5 + _NUDGE) / parts + 0.0:.10g}"


def exact(value: Any) -> str:
    """A value in full: lines curve by curve, everything else field by field, what is as usual left out."""
    if value is None or isinstance(value, bool | str):
        return str(value)
    if isinstance(value, int | float):
        return number(float(value))
    if isinstance(value, Point | Vector):
        return f"({number(value.x)} {number(value.y)})"
    if isinstance(value, Path):
        return " ".join(exact(curve) for curve in value.curves)
    if isinstance(value, Line):
        return f"{exact(value.start)}-{exact(value.end)}"
    if isinstance(value, Arc):
        turn = f"{number(math.degrees(value.sweep))} degrees"
        return f"{exact(value.start)}~about {exact(value.centre)} {turn}~{exact(value.end)}"
    if isinstance(value, Motion):
        here = [value(Point(x, y)) for x, y in ((0.0, 0.0), (100.0, 0.0))]
        return f"takes (0 0)-(100 0) to {exact(here[0])}-{exact(here[1])}"
    if isinstance(value, Mapping):
        return "{" + ", ".join(f"{key}: {exact(each)}" for key, each in value.items()) + "}"
    if isinstance(value, tuple | list):
        return "[" + ", ".join(map(exact, value)) + "]"
    if hasattr(value, "c1"):
        return "~".join(map(exact, (value.start, value.c1, value.c2, value.end)))
    if is_dataclass(value):
        given = ((each, getattr(value, each.name)) for each in fields(value))
        told = ", ".join(f"{each.name} {exact(one)}" for each, one in given if not usual(each, one))
        return f"{type(value).__name__}({told})"
    raise TypeError(f"{value!r}: no words for it")


def tried(work: Callable[[], Any]) -> str:
    """What a piece of work gives; where it is refused, by which message and with which values."""
    try:
        return exact(work())
    except KitError as error:
        return f"refused: {refusal(error)}"


def refusal(error: KitError) -> str:
    """A refusal as its message's key and values (its words where it has no key), where it is and what can be done."""
    says, do = error.told.says, error.told.can
    key = getattr(says, "key", None)
    values = ", ".join(f"{name} {_plain(each.value)}" for name, each in getattr(says, "values", ()))
    text = f"{key} {{{values}}}" if key else str(says)
    return f"{text}; at {error.where or '-'}; do {getattr(do, 'key', do) or '-'}"


def _plain(value: Any) -> str:
    return exact(value) if isinstance(value, bool | str | int | float | Point | tuple | list) else str(value)


def turns(holds: Callable[[float], bool], low: float, high: float) -> str:
    """Between which hundredths of mm an answer turns from what it is at `low` to what it is at `high`; "never"."""
    at_low = holds(low)
    if holds(high) == at_low:
        return "never"
    while high - low > 0.001:
        middle = (low + high) / 2
        low, high = (middle, high) if holds(middle) == at_low else (low, middle)
    return f"{'until' if at_low else 'from'} {number((low + high) / 2)}"


def usual_values(*modules: ModuleType) -> dict[str, str]:
    """{class: its fields with a usual value, and which} of the values of some modules: what told texts leave out."""
    found: dict[str, str] = {}
    for module in modules:
        for name, kind in vars(module).items():
            if not (isinstance(kind, type) and is_dataclass(kind) and kind.__module__ == module.__name__):
                continue
            told = []
            for each in fields(kind):
                value = each.default if each.default_factory is MISSING else each.default_factory()
                if value is not MISSING:
                    told.append(f"{each.name}: {value!r}" if isinstance(value, str) else f"{each.name}: {exact(value)}")
            if told:
                found[f"{module.__name__.removeprefix('kit.')}.{name}"] = "\n".join(told)
    return found
