"""The moment that a built file says it was made: the same for every build of the same notebook."""

from __future__ import annotations

import os
import re
from datetime import UTC, datetime, time, timedelta
from datetime import date as Day
from zlib import crc32

from kit.diagnostic import message
from kit.errors import KitError

_SAID = "SOURCE_DATE_EPOCH"
_DAY = 24 * 60 * 60
_FIRST = Day(1980, 1, 1)  # the first day that a zip file can tell


def moment_of(date: str, content: bytes) -> datetime:
    """What a file made of `content`, for a lesson of that `date` (a day or month of ISO 8601), says it was made at.

    It is that day, never the day of the build, so that a notebook gives the same bytes whenever it is built. The time
    of the day comes from the content: what keeps books by their moment then sees that a changed one is another. Where
    SOURCE_DATE_EPOCH is set it is that second instead (reproducible-builds.org, "SOURCE_DATE_EPOCH", version 1.1);
    raises `KitError` when it is no number of seconds.

    >>> moment_of("2026-11", b"a top").date().isoformat()
    '2026-11-01'
    >>> moment_of("2026-11", b"a top") == moment_of("2026-11", b"a longer top")
    False
    """
    told = os.environ.get(_SAID, "").strip()
    if told:
        try:
            return datetime.fromtimestamp(int(told), UTC)
        except (ValueError, OverflowError, OSError):
            what = message("refusal.no_moment", name=_SAID, said=told)
            raise KitError(what, do=message("refusal.no_moment_do")) from None
    day = f"{date}-01" if re.fullmatch(r"\d{4}-\d{2}", date) else date
    try:
        began = max(Day.fromisoformat(day), _FIRST)
    except ValueError:
        began = _FIRST
    return datetime.combine(began, time(), UTC) + timedelta(seconds=crc32(content) % _DAY)
