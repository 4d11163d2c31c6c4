"""Words with live values as a notebook shows them: markdown, its braces filled."""

from __future__ import annotations

import re

from kit.booklet.live_values import live
from kit.errors import KitError
from kit.lesson.pattern import Pattern
from kit.placeholder import Placeholder, fill

_CODE = re.compile(r"(`+[^`]*`+)")
_NOT_YET = "…"


def told(text: str, pattern: Pattern | None) -> str:
    """`text` (markdown) with the numbers of `pattern`; what it does not know, or all where there is no pattern, is an
    ellipsis. What stands in backticks stays as it is. `KitError` for a brace left open."""
    known = None if pattern is None else live(pattern)

    def said(found: Placeholder) -> str:
        try:
            return _NOT_YET if known is None else known.text(found)
        except KitError:
            return _NOT_YET

    parts = _CODE.split(text)
    return "".join(part if number % 2 else fill(part, said) for number, part in enumerate(parts))
