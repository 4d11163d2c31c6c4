"""Lengths: what a ruler shows, kept as millimetres.

A `Length` is a float of millimetres that remembers it is one: `1.2 * cm` is a Length, adding a bare number
to it is refused (the commonest slip at the drafting table is a number without its unit). Geometry keeps
plain floats; `float(length)` is the millimetre value. One inch is exactly 25.4 mm (international yard and
pound agreement, 1959).
"""

from __future__ import annotations

import math
import re
from collections.abc import Sequence
from fractions import Fraction
from typing import Any, Literal

from kit.errors import KitError

System = Literal["cm", "inch"]
Style = Literal["draft", "allowance", "finished", "shop"]

_TEXT = re.compile(
    r"""^\s*(?P<sign>[-\N{MINUS SIGN}])?\s*
    (?:(?P<whole>\d+(?:[.,]\d+)?)(?:\s+|-|(?=[½¼¾⅛⅜⅝⅞])|(?![\d/])))?
    (?:(?P<num>\d+)\s*[/\N{FRACTION SLASH}]\s*(?P<den>\d+)|(?P<vulgar>[½¼¾⅛⅜⅝⅞]))?
    \s*(?P<unit>mm|cm|m|in\.?|inch|inches|yd|yards?|"|\N{DOUBLE PRIME}|\N{RIGHT DOUBLE QUOTATION MARK})?\s*$""",
    re.VERBOSE | re.IGNORECASE,
)
_VULGAR = {"½": (1, 2), "¼": (1, 4), "¾": (3, 4), "⅛": (1, 8), "⅜": (3, 8), "⅝": (5, 8), "⅞": (7, 8)}
_FACTOR = {"mm": 1.0, "cm": 10.0, "m": 1000.0, "yd": 914.4, "yard": 914.4, "yards": 914.4}


class Length(float):
    """Millimetres that carry their unit. Arithmetic with other lengths and scaling by numbers stay a Length;
    adding or subtracting a bare number other than zero raises `KitError`. `name` is the parameter or
    measurement the value came from, or empty."""

    __slots__ = ("name",)
    name: str

    def __new__(cls, value: float, name: str = "") -> Length:
        self = super().__new__(cls, value)
        self.name = name
        return self

    def __getnewargs__(self) -> tuple[float, str]:  # type: ignore[override]
        return (float(self), self.name)

    def _partner(self, other: object) -> float | None:
        if isinstance(other, Length):
            return float(other)
        if isinstance(other, int | float):
            if other == 0:
                return 0.0
            raise KitError(
                f"{other:g} has no unit, so it cannot be added to or taken from the length {show(self, 'cm')}.",
                do=f"Write {other:g} * cm, {other:g} * mm or {other:g} * inch.",
            )
        return None

    def __add__(self, other: object) -> Length:
        value = self._partner(other)
        return NotImplemented if value is None else Length(float(self) + value)

    __radd__ = __add__

    def __sub__(self, other: object) -> Length:
        value = self._partner(other)
        return NotImplemented if value is None else Length(float(self) - value)

    def __rsub__(self, other: object) -> Length:
        value = self._partner(other)
        return NotImplemented if value is None else Length(value - float(self))

    def __mul__(self, other: Any) -> Any:
        if isinstance(other, Length):
            return float(self) * float(other)
        if isinstance(other, int | float):
            return Length(float(self) * other)
        return NotImplemented

    __rmul__ = __mul__

    def __truediv__(self, other: Any) -> Any:
        if isinstance(other, Length):
            return float(self) / float(other)
        if isinstance(other, int | float):
            return Length(float(self) / other)
        return NotImplemented

    def __neg__(self) -> Length:
        return Length(-float(self))

    def __pos__(self) -> Length:
        return self

    def __abs__(self) -> Length:
        return Length(abs(float(self)))

    def __repr__(self) -> str:
        return f"{float(self):g} * mm"


mm = Length(1.0)
cm = Length(10.0)
inch = Length(25.4)


def length(value: object, where: str = "", *, name: str = "") -> Length:
    """`value` as a Length. Accepts a Length, text such as "1 1/2 in", and zero.

    Raises `KitError` for a bare number, since 23 may mean 23 mm, 23 cm or 23 inches, and for anything that
    is not finite.
    """
    if isinstance(value, Length):
        found = value
    elif isinstance(value, str):
        found = parse(value)
    elif isinstance(value, int | float) and not isinstance(value, bool):
        if value != 0:
            raise KitError(
                f"{value:g} has no unit.",
                where=where,
                do=f"Write {value:g} * cm, {value:g} * mm or {value:g} * inch.",
            )
        found = Length(0.0)
    else:
        raise KitError(f"{value!r} is not a length.", where=where, do="Write, say, 2.5 * cm or '2.5 cm'.")
    if not math.isfinite(found):
        raise KitError("a length must be a finite number.", where=where, do="Write, say, 2.5 * cm.")
    return Length(float(found), name or found.name)


def parse(text: str, default: System | None = None) -> Length:
    """What people type, as a Length: "2.5 cm", "1 1/2 in", '3/8"', "12mm", "1½ in", "9-1/2 in", "2,5 cm".

    `default` is the unit of a number typed without one ("cm" or "inch"); without a default that is refused.
    Raises `KitError` for text that is not one length.
    """
    found = _TEXT.match(text)
    if not found or not (found["whole"] or found["num"] or found["vulgar"]):
        raise KitError(
            f"'{text.strip()}' cannot be read as a length.", do='Type, for example, 2.5 cm, 25 mm, 1 1/2 in or 3/8".'
        )
    value = float(found["whole"].replace(",", ".")) if found["whole"] else 0.0
    if found["num"]:
        if int(found["den"]) == 0:
            raise KitError(f"'{text.strip()}' divides by zero.", do="Type, for example, 3/8 in.")
        value += int(found["num"]) / int(found["den"])
    elif found["vulgar"]:
        top, bottom = _VULGAR[found["vulgar"]]
        value += top / bottom
    unit = (found["unit"] or "").lower().rstrip(".")
    if not unit:
        if default is None:
            raise KitError(f"'{text.strip()}' has no unit.", do=f"Type {text.strip()} cm or {text.strip()} in.")
        unit = "cm" if default == "cm" else "in"
    factor = _FACTOR.get(unit, 25.4)
    return Length((-value if found["sign"] else value) * factor)


# ---- what people read -------------------------------------------------------------------------------------

_INCH_STEP: dict[str, int] = {"draft": 16, "allowance": 8, "finished": 4, "shop": 8}


def _half_up(value: float) -> int:
    return math.floor(value + 0.5 + 1e-9)


def _number(value: float, digits: int) -> str:
    text = f"{value:.{digits}f}"
    return text.rstrip("0").rstrip(".") if "." in text else text


def mixed(value: Fraction) -> str:
    """A mixed fraction as people write it: 1 1/2, 3/8, 4."""
    sign = "-" if value < 0 else ""
    whole, rest = divmod(abs(value), 1)
    if not rest:
        return f"{sign}{whole}"
    part = f"{rest.numerator}/{rest.denominator}"
    return f"{sign}{whole} {part}" if whole else f"{sign}{part}"


def show_metric(value: float, style: Style = "draft") -> str:
    """`value` in mm as metric text: draft to 0.1 cm, allowance in whole mm, finished to 0.5 cm, shop to 10 cm
    (rounded up, as cloth is bought). Under 1 cm a draft or allowance is shown in mm."""
    size = abs(float(value))
    sign = "-" if value < 0 else ""
    if style == "shop":
        return f"{sign}{_number(math.ceil(size / 100 - 1e-6) / 10, 1)} m"
    if style == "finished":
        return f"{sign}{_number(_half_up(size / 5) / 2, 1)} cm"
    whole = _half_up(size)
    if whole < 10:
        return f"{'' if whole == 0 else sign}{whole} mm"
    return f"{sign}{_number(whole / 10, 1)} cm"


def show_inch(value: float, style: Style = "draft") -> str:
    """`value` in mm as inches in mixed fractions: draft to 1/16, allowance to 1/8, finished to 1/4, shop in
    yards to 1/8 (rounded up)."""
    step = _INCH_STEP[style]
    if style == "shop":
        return f"{mixed(Fraction(math.ceil(abs(float(value)) / 914.4 * step - 1e-6), step))} yd"
    count = _half_up(abs(float(value)) / 25.4 * step)
    return f"{mixed(Fraction(-count if value < 0 else count, step))} in"


def show(value: float, system: System = "cm", style: Style = "draft") -> str:
    """`value` (mm) in one system, rounded as the trade does for `style`."""
    return show_metric(value, style) if system == "cm" else show_inch(value, style)


def both(value: float, first: System = "cm", style: Style = "draft") -> str:
    """`value` (mm) in both systems, the lesson's own first: '2.5 cm (1 in)'. Each is rounded on its own."""
    second: System = "inch" if first == "cm" else "cm"
    return f"{show(value, first, style)} ({show(value, second, style)})"


def parts(values: Sequence[float], system: System, style: Style = "allowance") -> list[float]:
    """`values` (mm) rounded so that they add up to their rounded total: 6 mm + 4 mm = 1 cm and
    1/4 in + 1/8 in = 3/8 in. Returns mm values that `show` prints exactly. Largest remainders are rounded up.
    """
    step = 1.0 if system == "cm" else 25.4 / _INCH_STEP[style]
    counts = [float(v) / step for v in values]
    total = _half_up(sum(counts))
    floors = [math.floor(c + 1e-9) for c in counts]
    order = sorted(range(len(counts)), key=lambda i: floors[i] - counts[i])
    for i in order[: total - sum(floors)]:
        floors[i] += 1
    return [f * step for f in floors]
