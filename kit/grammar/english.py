"""English: the definite article, which a name with a number behind it goes without.

Rule: "see page 3", "sew dart 2", as against "the page", "the dart" (Quirk et al., A Comprehensive Grammar of the
English Language, names with a numeral; from memory).
"""

from __future__ import annotations

import re
from collections.abc import Callable
from typing import Any

from kit.grammar.nouns import starting

_BETWEEN = re.compile(r" and | or |, ")
_NUMBERED = re.compile(r"[^\W\d].* \d{1,2}")


def _the(text: Any) -> str:
    """Names with the article; numbered ones, such as "buttonhole 1", stand by themselves."""
    said = str(text)
    return said if all(_NUMBERED.fullmatch(name) for name in _BETWEEN.split(said)) else f"the {said}"


ENGLISH: dict[str, Callable[..., str]] = {"THE": _the, "START": starting}
