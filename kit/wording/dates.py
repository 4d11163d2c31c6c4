"""Dates as running text in the spoken language gives them."""

from __future__ import annotations

import re
from datetime import date

from babel.core import UnknownLocaleError
from babel.dates import format_date, format_skeleton

from kit.language import language_tag

_MONTH = re.compile(r"(\d{4})-(\d{2})")
_LOCALE = {"en": "en_GB"}
"""Where a language's dates are those of one of its countries: English stands here as this kit spells it."""


def date_said(text: str) -> str:
    """A date written as "2026-09-14" or a month as "2026-09" (ISO 8601), in words; any other text as it is.

    >>> date_said("2026-09-14"), date_said("2026-11"), date_said("spring 2026")
    ('14 September 2026', 'November 2026', 'spring 2026')
    """
    tag = language_tag()
    locale = _LOCALE.get(tag, tag.replace("-", "_"))
    try:
        if month := _MONTH.fullmatch(text):
            return format_skeleton("yMMMM", date(int(month[1]), int(month[2]), 1), locale=locale)
        return format_date(date.fromisoformat(text), "long", locale=locale)
    except (ValueError, UnknownLocaleError):  # no date, or a language whose months nobody has written down
        return text
