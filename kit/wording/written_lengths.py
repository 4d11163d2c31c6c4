"""Lengths that an author wrote out in words, read again where one system of lengths is printed alone.

"Turn 1 cm to the wrong side" in a booklet in inches sends the sewer for another ruler. What is read is a number with
its unit, a stretch between two numbers ("2 to 3 cm"), and a pair that an author gave in both systems, of which the one
asked for stays. Code in backticks stays as it is.
"""

from __future__ import annotations

import re

from kit.rulers import System
from kit.units import both, parse

_NUMBER = r"(?:\d+ )?\d+/\d+|\d+(?:[.,]\d+)?(?: ?[½¼¾⅛⅜⅝⅞])?|[½¼¾⅛⅜⅝⅞]"
_UNIT = r"mm|cm|m|inches|inch|in|yd|Zoll|pulg\.|po|vg"
_SPACE = "[ \u00a0\u202f]?"
_LENGTH = re.compile(
    rf"(?<![\w.,/])(?:(?P<low>{_NUMBER})(?P<to>{_SPACE}(?:-|–|x|×|to|bis|à|a|or|oder|ou|o|and|und|et|y){_SPACE}))?"
    rf"(?P<high>{_NUMBER}){_SPACE}(?P<unit>{_UNIT})(?![\w²³/])"
)
_CODE = re.compile(r"(?<!`)(`+)(?!`).*?(?<!`)\1(?!`)", re.DOTALL)
_AND = ("and", "und", "et", "y")
_BETWEEN = re.compile(r"\b(?:between|zwischen|entre)\s+$", re.IGNORECASE)
_METRIC = ("mm", "cm", "m")
_AFTER_INCHES = re.compile(r"\s*(?:$|[.,;:!?)(]|(?:wide|long|deep|high|across|from|below|above|apart|more|less|of)\b)")
_LEAST = 3.0  # mm: what is shorter is a stitch, whose length machines tell in millimetres


def in_one_system(text: str, system: System) -> str:
    """`text` with the lengths its author wrote out in `system` alone; those written in it stay as they are.

    >>> from kit.rulers import Ruling, ruled
    >>> with ruled(Ruling(alone=True)):
    ...     in_one_system("Turn 1 cm, then 2 to 3 cm, to the wrong side; stitches of 2.5 mm.", "inch")
    ...     in_one_system("Cut it 10 cm (4 in) wide, 1 1/2 in deep, and fold 2 in half.", "cm")
    'Turn 3/8 in, then 3/4 in to 1 3/16 in, to the wrong side; stitches of 2.5 mm.'
    'Cut it 10 cm wide, 3.8 cm deep, and fold 2 in half.'
    """
    made, begin = [], 0
    for code in _CODE.finditer(text):
        made += [_read(text[begin : code.start()], system), code[0]]
        begin = code.end()
    return "".join((*made, _read(text[begin:], system)))


def _read(text: str, system: System) -> str:
    made, begin = [], 0
    found = [each for each in _LENGTH.finditer(text) if _is_length(each, text)]
    for at, each in enumerate(found):
        if each.start() < begin:
            continue  # within the brackets of a pair
        end, said = each.end(), each[0]
        after = found[at + 1] if at + 1 < len(found) else None
        paired = after is not None and _system(after) != _system(each) and text[end : after.start()].strip() == "("
        if paired and after is not None and (close := re.match(r"\s*\)", text[after.end() :])):
            said = each[0] if _system(each) == system else after[0]
            end = after.end() + close.end()
        elif _system(each) != system and _mm(each["high"], each["unit"]) >= _LEAST:
            low = _low(each, text, system) if each["low"] else ""
            said = low + _said(each["high"], each["unit"], system)
        made += [text[begin : each.start()], said]
        begin = end
    return "".join((*made, text[begin:]))


def _low(found: re.Match[str], text: str, system: System) -> str:
    """The first number of a stretch and what stands after it. "And" joins other things too: "rows 1 and 2 cm"."""
    if found["to"].strip() in _AND and not _BETWEEN.search(text[: found.start()]):
        return f"{found['low']}{found['to']}"
    return f"{_said(found['low'], found['unit'], system)}{found['to']}"


def _is_length(found: re.Match[str], text: str) -> bool:
    """The sign for an inch is a word as well: a whole number before it is a length where the sentence ends or says of
    what."""
    if found["unit"] != "in" or re.search(r"[/.,½¼¾⅛⅜⅝⅞]", found["high"]):
        return True
    return bool(_AFTER_INCHES.match(text, found.end()))


def _system(found: re.Match[str]) -> System:
    return "cm" if found["unit"] in _METRIC else "inch"


def _mm(number: str, unit: str) -> float:
    return float(parse(f"{number} {'yd' if unit == 'vg' else 'in' if unit == 'inches' else unit}"))


def _said(number: str, unit: str, system: System) -> str:
    mm = _mm(number, unit)
    return both(mm, system, "shop") if unit in ("m", "yd", "vg") else both(mm, system)
