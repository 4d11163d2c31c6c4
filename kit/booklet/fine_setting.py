"""Fine setting of a text for print: real fractions, and a number that never parts from its unit at a line's end."""

from __future__ import annotations

import re
from functools import lru_cache

from markupsafe import Markup, escape

from kit.language import language, say
from kit.units import set_fractions

_TAG = re.compile(r"(<[^>]*>)")


def set_finely(text: str | Markup) -> Markup:
    """`text` set finely. Plain text is escaped; of HTML only what stands between tags is touched."""
    parts = _TAG.split(str(escape(text)))
    return Markup("".join(part if part.startswith("<") else fine_text(part) for part in parts))


def fine_text(text: str) -> str:
    """The same for what is no HTML and is not escaped."""
    return _units(language()).sub("\u00a0", set_fractions(text))


@lru_cache(maxsize=8)
def _units(code: str) -> re.Pattern[str]:
    """The space between a number and a unit sign of the language."""
    units = ("mm", "cm", "m", "in", "yd", "percent")
    signs = {say(f"unit.{unit}", amount="").strip() for unit in units}
    known = "|".join(re.escape(sign) for sign in sorted(signs, key=len, reverse=True) if sign)
    return re.compile(rf"(?<=[\d½¼¾⅛⅜⅝⅞₀-₉]) (?=(?:{known})(?![A-Za-z]))")
