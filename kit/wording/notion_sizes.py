"""Sizes of notions as an author writes them, "zip, 18 cm", read in both systems."""

from __future__ import annotations

import re

from kit.rulers import System
from kit.units import both, parse

_SIZE = re.compile(
    r"(?<![\w.,/])((?:\d+ )?\d+/\d+|\d+(?:[.,]\d+)?(?: ?[½¼¾⅛⅜⅝⅞])?|[½¼¾⅛⅜⅝⅞])"
    r"[ \u00a0\u202f]?(mm|cm|m|inch|in|yd|Zoll|pulg\.|po|vg)(?![\w²³/])"
)
_PAIRED = re.compile(r"\s*\(\s*[\d½¼¾⅛⅜⅝⅞]")


def lengths_in(text: str) -> list[float]:
    """The lengths, in mm, that a text names in one system alone."""
    return [_mm(found) for found in _found(text)]


def without_sizes(text: str) -> str:
    """The text without the lengths in it, so that what numbers are left are counts.

    >>> without_sizes("2 buttons, 18 mm across")
    '2 buttons,  across'
    """
    return _SIZE.sub("", text)


def sized(text: str, system: System) -> str:
    """A notion with its sizes in both systems, `system` first, or in that alone. A size that its author gave in both
    stays as written.

    >>> sized("zip, 18 cm", "cm"), sized("2 buttons, 5/8 in across", "inch"), sized("cord, 4 mm (3/16 in)", "cm")
    ('zip, 18 cm (7 1/8 in)', '2 buttons, 5/8 in (1.5 cm) across', 'cord, 4 mm (3/16 in)')
    """
    for found in reversed(_found(text)):
        long = found[2] in ("m", "yd", "vg")
        said = both(_mm(found), system, "shop") if long else both(_mm(found), system)
        text = text[: found.start()] + said + text[found.end() :]
    return text


def _found(text: str) -> list[re.Match[str]]:
    """The lengths that stand neither before nor within the brackets of a pair."""
    found: list[re.Match[str]] = []
    end = -1
    for each in _SIZE.finditer(text):
        within = end >= 0 and text[end : each.start()].strip() == "("
        end = each.end()
        if not within and not _PAIRED.match(text, each.end()):
            found.append(each)
    return found


def _mm(found: re.Match[str]) -> float:
    return float(parse(f"{found[1]} {'yd' if found[2] == 'vg' else found[2]}"))
