"""Lengths: what a ruler shows, kept as millimetres.

A `Length` is a float of millimetres that remembers it is one: `1.2 * cm` is a Length, adding a bare number
to it is refused (the commonest slip at the drafting table is a number without its unit). Geometry keeps
plain floats; `float(length)` is the millimetre value. One inch is exactly 25.4 mm (international yard and
pound agreement, 1959). What people read is written in the spoken language: its decimal mark, its unit signs.
"""

from __future__ import annotations

import math
import re
import sys
from fractions import Fraction
from functools import lru_cache
from typing import Literal, overload

from babel.core import UnknownLocaleError
from babel.numbers import get_decimal_symbol

from kit.diagnostic import Told, message
from kit.errors import KitError
from kit.language import language, language_tag, say
from kit.rulers import SIXTEENTH, bought, reading, ruling
from kit.rulers import Style as Style
from kit.rulers import System as System

Said = Literal["cm", "inch", "in"]
"""A system as people say it."""

_TEXT = re.compile(
    r"""^\s*(?P<sign>[-\N{MINUS SIGN}])?\s*
    (?:(?P<whole>\d+(?:[.,]\d+)?)(?:\s+|-|(?=[½¼¾⅛⅜⅝⅞])|(?![\d/])))?
    (?:(?P<num>\d+)\s*[/\N{FRACTION SLASH}]\s*(?P<den>\d+)|(?P<vulgar>[½¼¾⅛⅜⅝⅞]))?
    \s*(?P<unit>mm|cm|m|in\.?|inch|inches|yd|yards?
    |zoll|pulg\.?|pulgadas?|po\.?|pouces?|"|\N{DOUBLE PRIME}|\N{RIGHT DOUBLE QUOTATION MARK})?\s*$""",
    re.VERBOSE | re.IGNORECASE,
)
_VULGAR = {"½": (1, 2), "¼": (1, 4), "¾": (3, 4), "⅛": (1, 8), "⅜": (3, 8), "⅝": (5, 8), "⅞": (7, 8)}
_RAISED = re.compile(r"(\d)([⁰¹²³⁴-⁹])")
_PLAIN_DIGITS = str.maketrans("⁰¹²³⁴⁵⁶⁷⁸⁹₀₁₂₃₄₅₆₇₈₉", "01234567890123456789")
_FAR = sys.float_info.max / 1000
"""Past this a number typed or written is no length: as inches or metres it would be infinite."""
_FACTOR = {"mm": 1.0, "cm": 10.0, "m": 1000.0, "yd": 914.4, "yard": 914.4, "yards": 914.4}


class Length(float):
    """Millimetres that carry their unit. Arithmetic with other lengths and scaling by numbers stay a Length;
    adding or subtracting a bare number other than zero raises `KitError`. `name` is the parameter or
    measurement the value came from, or empty; a length and its opposite have one name. `rest` is the named length that
    was taken off to get this one, so that "all but 2 cm of it" is known to be 2 cm from the other end; `parts` are
    the two it is the sum of, so that the ease at the end of a line can be shown there.

    >>> from kit import cm, inch
    >>> seam = 1.5 * cm
    >>> 40 * cm + seam, float(seam), 3 * inch > 7 * cm
    (415 * mm, 15.0, True)
    """

    __slots__ = ("name", "parts", "rest")
    name: str
    rest: Length | None
    parts: tuple[Length, Length] | None

    def __new__(
        cls,
        value: float,
        name: str = "",
        rest: Length | None = None,
        parts: tuple[Length, Length] | None = None,
    ) -> Length:
        self = super().__new__(cls, value)
        self.name = name
        self.rest = rest
        self.parts = parts
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

    def __add__(self, other: Length | Literal[0]) -> Length:  # type: ignore[override]
        value = self._partner(other)
        parts = (self, other) if isinstance(other, Length) and (other.name or self.name) else None
        return NotImplemented if value is None else Length(float(self) + value, parts=parts)

    def __radd__(self, other: Length | Literal[0]) -> Length:  # type: ignore[override]
        return self.__add__(other)

    def __sub__(self, other: Length | Literal[0]) -> Length:  # type: ignore[override]
        value = self._partner(other)
        rest = other if isinstance(other, Length) and other.name else None
        return NotImplemented if value is None else Length(float(self) - value, rest=rest)

    def __rsub__(self, other: Length | Literal[0]) -> Length:  # type: ignore[override]
        value = self._partner(other)
        return NotImplemented if value is None else Length(value - float(self))

    @overload
    def __mul__(self, other: Length) -> float: ...  # type: ignore[overload-overlap]

    @overload
    def __mul__(self, other: float) -> Length: ...

    def __mul__(self, other: float) -> float:
        if isinstance(other, Length):
            return float(self) * float(other)
        if isinstance(other, int | float):
            return Length(float(self) * other)
        return NotImplemented

    __rmul__ = __mul__

    @overload
    def __truediv__(self, other: Length) -> float: ...  # type: ignore[overload-overlap]

    @overload
    def __truediv__(self, other: float) -> Length: ...

    def __truediv__(self, other: float) -> float:
        if isinstance(other, Length):
            return float(self) / float(other)
        if isinstance(other, int | float):
            return Length(float(self) / other)
        return NotImplemented

    def __neg__(self) -> Length:
        return Length(-float(self), self.name)

    def __pos__(self) -> Length:
        return self

    def __abs__(self) -> Length:
        return self if self >= 0 else -self

    def __repr__(self) -> str:
        return f"{float(self):g} * mm"


mm = Length(1.0)
cm = Length(10.0)
inch = Length(25.4)

Size = Length | str | Literal[0]
"""What is taken where a length is asked for: a Length, text such as "1 1/2 in", or nothing at all, 0."""


def length(value: Size, where: Told = "", *, name: str = "") -> Length:
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
            if not abs(value) < _FAR:
                raise KitError(message("refusal.not_finite"), where=where, do=message("refusal.not_finite_do"))
            # Nobody writes three decimals: the product or quotient of two lengths is a bare number of mm.
            reckoned = round(value, 2) != value
            do = "Worked out from lengths it is in millimetres: write (...) * mm round it." if reckoned else ""
            do = do or f"Write {value:g} * cm, {value:g} * mm or {value:g} * inch."
            raise KitError(f"{value:g} has no unit.", where=where, do=do)
        found = Length(0.0)
    else:
        raise KitError(f"{value!r} is not a length.", where=where, do="Write, say, 2.5 * cm or '2.5 cm'.")
    if not math.isfinite(found):
        raise KitError(message("refusal.not_finite"), where=where, do=message("refusal.not_finite_do"))
    return Length(float(found), name or found.name, found.rest, found.parts)


def parse(text: str, default: System | None = None) -> Length:
    """What people type, as a Length: "2.5 cm", "1 1/2 in", '3/8"', "12mm", "1½ in", "9-1/2 in", "2,5 cm".

    `default` is the unit of a number typed without one ("cm" or "inch"); without a default that is refused.
    Raises `KitError` for text that is not one length.

    >>> float(parse("9-1/2 in")) / 25.4, float(parse("2,5 cm")), float(parse("4", "inch"))
    (9.5, 25.0, 101.6)
    """
    found = _TEXT.match(_RAISED.sub(r"\1 \2", text).translate(_PLAIN_DIGITS))
    if not found or not (found["whole"] or found["num"] or found["vulgar"]):
        raise KitError(message("refusal.not_a_length", text=text.strip()[:60]), do=message("refusal.not_a_length_do"))
    value = float(found["whole"].replace(",", ".")) if found["whole"] else 0.0
    if found["num"]:
        over, under = float(found["num"]), float(found["den"])  # not int, which refuses more than 4300 digits
        if under == 0:
            raise KitError(message("refusal.by_zero", text=text.strip()), do=message("refusal.by_zero_do"))
        value += over / under
    elif found["vulgar"]:
        top, bottom = _VULGAR[found["vulgar"]]
        value += top / bottom
    unit = (found["unit"] or "").lower().rstrip(".")
    if not unit:
        if default is None:
            raise KitError(
                message("refusal.no_unit", text=text.strip()), do=message("refusal.no_unit_do", text=text.strip())
            )
        unit = "cm" if default == "cm" else "in"
    factor = _FACTOR.get(unit, 25.4)
    if not value < _FAR:
        raise KitError(message("refusal.not_finite"), do=message("refusal.not_finite_do"))
    return Length((-value if found["sign"] else value) * factor)


# ---- what people read -------------------------------------------------------------------------------------


def plain(value: float, digits: int = 1) -> str:
    """A number with at most so many `digits` after the decimal mark of the language."""
    text = f"{value:.{digits}f}"
    text = text.rstrip("0").rstrip(".") if "." in text else text
    return text.replace(".", _decimal(language_tag()))


_HERE = "\0"


@lru_cache(maxsize=8)
def _decimal(tag: str) -> str:
    """The decimal mark of a language's region, of the language where nobody has written down that region (Unicode CLDR,
    through Babel)."""
    try:
        return get_decimal_symbol(tag.replace("-", "_"))
    except (UnknownLocaleError, ValueError):
        return get_decimal_symbol(tag.split("-")[0])


@lru_cache(maxsize=64)
def _unit(code: str, unit: str) -> str:
    """How a length in `unit` is written in the language `code`, with `_HERE` in the place of the number."""
    return say(f"unit.{unit}", amount=_HERE)


def _with_unit(number: str, unit: str) -> str:
    return _unit(language(), unit).replace(_HERE, number)


def percent(value: float, digits: int = 0) -> str:
    """A share (0..1) in per cent, as the language writes it: 95%, 95 %."""
    return _with_unit(plain(value * 100, digits), "percent")


def unitless(text: str) -> str:
    """A length without its unit: "2.5 cm" -> "2.5", for tables that name the unit once."""
    for unit in ("cm", "mm", "in"):
        before, _, after = _unit(language(), unit).partition(_HERE)
        if text.startswith(before) and text.endswith(after):
            return text[len(before) : len(text) - len(after)]
    return text


_SUPER = str.maketrans("0123456789", "⁰¹²³⁴⁵⁶⁷⁸⁹")
_SUB = str.maketrans("0123456789", "₀₁₂₃₄₅₆₇₈₉")
_FRACTION = re.compile(r"(?:(?<![\d.,/])(\d+)[ \u00a0\u202f])?(?<![\d/])(\d{1,2})/(2|4|8|16|32)(?![\d/])")
_SET = {"1/2": "½", "1/4": "¼", "3/4": "¾", "1/8": "⅛", "3/8": "⅜", "5/8": "⅝", "7/8": "⅞"}


def set_fractions(text: str) -> str:
    """`text` with its fractions of an inch or a yard set as real ones, for print.

    >>> set_fractions("Take 1 1/2 in, then 3/16 in.")
    'Take 1½ in, then ³⁄₁₆ in.'
    """

    def real(found: re.Match[str]) -> str:
        top, bottom = found[2], found[3]
        if int(top) >= int(bottom):
            return found[0]
        part = _SET.get(f"{top}/{bottom}") or f"{top.translate(_SUPER)}\N{FRACTION SLASH}{bottom.translate(_SUB)}"
        return f"{found[1] or ''}{part}"

    return _FRACTION.sub(real, text) if "/" in text else text


def mixed(value: Fraction) -> str:
    """A mixed fraction as people write it: 1 1/2, 3/8, 4."""
    sign = "-" if value < 0 else ""
    whole, rest = divmod(abs(value), 1)
    if not rest:
        return f"{sign}{whole}"
    part = f"{rest.numerator}/{rest.denominator}"
    return f"{sign}{whole} {part}" if whole else f"{sign}{part}"


def show_metric(value: float, style: Style = "draft") -> str:
    """`value` in mm as metric text: to 0.1 cm, finished measurements to 0.5 cm, cloth to buy (shop) to 10 cm (rounded
    up, as it is sold). Under 1 cm it is shown in mm."""
    return _metric(value, style, "cm")


def show_inch(value: float, style: Style = "draft") -> str:
    """`value` in mm as inches in mixed fractions: the roundest within 1 mm down to 1/16, finished measurements thought
    in inches to 1/4, cloth to buy (shop) in yards to 1/8 (rounded up)."""
    return _inches(value, style, "inch")


def _metric(value: float, style: Style, first: System) -> str:
    size = abs(float(value))
    sign = "-" if value < 0 else ""
    if style == "shop":
        return _with_unit(f"{sign}{plain(bought(size)['cm'] / 10)}", "m")
    whole = reading(size, first, style)["cm"]
    return marked(-whole if value < 0 else whole, "cm")


def _inches(value: float, style: Style, first: System) -> str:
    size = abs(float(value))
    if style == "shop":
        return _with_unit(mixed(Fraction(bought(size)["inch"], 8)), "yd")
    count = reading(size, first, style)["inch"]
    return marked(-count if value < 0 else count, "inch")


def marked(mark: int, system: System) -> str:
    """What stands at a mark of a ruler (`kit.rulers`): so many millimetres, so many sixteenths of an inch.

    >>> marked(15, "cm"), marked(6, "cm"), marked(26, "inch")
    ('1.5 cm', '6 mm', '1 5/8 in')
    """
    if system == "inch":
        return _with_unit(mixed(Fraction(mark, 16)), "in")
    return _with_unit(str(mark), "mm") if abs(mark) < 10 else _with_unit(plain(mark / 10), "cm")


def kept(value: float, first: System, *, least: bool) -> str:
    """An end that must be kept, `value` mm, in both systems: each on the mark of its ruler that keeps it, above it when
    it is the `least`, below it when it is the most. So neither text can be set and refused again.

    >>> kept(58.0, "cm", least=True), kept(58.0, "inch", least=False)
    ('5.8 cm (2 5/16 in)', '2 1/4 in (5.8 cm)')
    """
    marks = value, value / SIXTEENTH
    metric, inches = (math.ceil(m - 1e-6) if least else math.floor(m + 1e-6) for m in marks)
    said = marked(metric, "cm"), marked(inches, "inch")
    return both_said(*said) if first == "cm" else both_said(*reversed(said))


def system_said(units: str, where: str = "") -> System:
    """The system that is meant by `units`: "cm", or "inch" or "in". `KitError` for another word.

    >>> system_said("in")
    'inch'
    """
    known: dict[str, System] = {"cm": "cm", "inch": "inch", "in": "inch"}
    if units not in known:
        raise KitError(f"units are 'cm' or 'inch', not '{units}'.", where=where)
    return known[units]


def show(value: float, system: System = "cm", style: Style = "draft") -> str:
    """`value` (mm) in one system, rounded as the trade does for `style`."""
    return show_metric(value, style) if system == "cm" else show_inch(value, style)


def both(value: float, first: System = "cm", style: Style = "draft") -> str:
    """`value` (mm) in both systems, `first` first; in `first` alone where one system was asked for (`kit.rulers`).
    The lesson's own system is rounded, and the other follows from it.

    >>> both(25.4), both(25.4, "inch"), both(9.5, style="allowance"), both(15.0)
    ('2.5 cm (1 in)', '1 in (2.5 cm)', '1 cm (3/8 in)', '1.5 cm (5/8 in)')
    """
    said = _metric(value, style, first), _inches(value, style, first)
    return both_said(*said) if first == "cm" else both_said(*reversed(said))


def both_said(first: str, second: str) -> str:
    """Two texts of one length, the second in brackets; the first alone where one system was asked for."""
    return first if ruling().alone else f"{first} ({second})"


def stacked(value: float, first: System, style: Style = "draft") -> str:
    """`value` (mm) in both systems on two lines, the units left out but for cloth to buy: '96' over '37 3/4'."""
    lines = _metric(value, style, first), _inches(value, style, first)
    ordered = lines if first == "cm" else (lines[1], lines[0])
    shown = ordered[:1] if ruling().alone else ordered
    return "\n".join(line if style == "shop" else unitless(line) for line in shown)
