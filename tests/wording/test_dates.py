"""Dates in words, against Unicode CLDR's patterns as printed text in each language has them (from memory)."""

from __future__ import annotations

import pytest

from kit.language import speaking
from kit.wording.dates import date_said


@pytest.mark.parametrize(
    ("code", "day", "month"),
    [
        ("en", "14 September 2026", "November 2026"),
        ("de", "14. September 2026", "November 2026"),
        ("es", "14 de septiembre de 2026", "noviembre de 2026"),
        ("fr", "14 septembre 2026", "novembre 2026"),
    ],
)
def test_a_date_is_said_in_words(code: str, day: str, month: str) -> None:
    with speaking(code):
        assert (date_said("2026-09-14"), date_said("2026-11")) == (day, month)


@pytest.mark.parametrize("text", ["", "spring 2026", "2026", "2026-13", "2026-02-30", "14.9.2026"])
def test_what_is_no_date_stays(text: str) -> None:
    assert date_said(text) == text
