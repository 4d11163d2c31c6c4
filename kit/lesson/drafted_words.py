"""A lesson's own words that the kit's catalogues know already: what a name of an edge, a piece, a measurement, a tool
or a heading is called in another language, where only one translation is possible."""

from __future__ import annotations

import re
from functools import lru_cache

from kit.grammar import FUNCTIONS
from kit.language import SOURCE, keys, languages, says, speaking, variables
from kit.language import say as said

_FAMILIES = ("edge", "block", "measure", "term", "tool", "notion", "word.thing", "worksheet.name", "booklet")
_NUMBERED = re.compile(r"(.+) (\d{1,2})")
_SIDED = re.compile(r"(left|right) (.+)")


def drafted(text: str, language: str) -> str:
    """`text`, which is in the source language, as the kit itself says it in `language`: as it stands, with a number
    behind it ("waist 2"), or of the left or the right half. "" where the kit does not know it or has two words for it.
    """
    if language not in languages() or language == SOURCE:
        return ""
    known = _vocabulary(language)
    small = text[:1].lower() + text[1:]
    if found := known.get(text, ""):
        return found
    if numbered := _NUMBERED.fullmatch(text):
        found = drafted(numbered[1], language)
        return f"{found} {numbered[2]}" if found else ""
    if (sided := _SIDED.fullmatch(small)) and (found := known.get(sided[2], "")):
        with speaking(language):
            side = said(f"word.{sided[1]}")
        bare = FUNCTIONS[language]["GENDER"](found) == "none"
        found = "" if bare else FUNCTIONS[language]["SIDE"](found, side)
    elif small != text:
        found = known.get(small, "")
    return found[:1].upper() + found[1:] if small != text else found


@lru_cache(maxsize=4)
def _vocabulary(language: str) -> dict[str, str]:
    """What the source says without a place to fill, and its one translation; what has two is left out."""
    found: dict[str, set[str]] = {}
    names = [f"{family}.{key}" for family in _FAMILIES for key in keys(family)]
    for name in names:
        if not variables(name) and says(name):
            with speaking(SOURCE):
                source = said(name)
            with speaking(language):
                found.setdefault(source, set()).add(said(name))
    return {source: next(iter(words)) for source, words in found.items() if len(words) == 1}
