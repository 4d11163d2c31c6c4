"""A teacher's own words with live values."""

from __future__ import annotations

import pytest

from kit.errors import KitError
from kit.prose import fill_words

VALUES = [("sleeve_length", 230.0, "length"), ("overlap", 0.7, "share"), ("buttons", 6.0, "count")]


@pytest.mark.parametrize(
    ("text", "cm", "inch"),
    [
        ("Carry on for {sleeve_length}.", "Carry on for 23 cm (9 1/16 in).", "Carry on for 9 1/16 in (23 cm)."),
        ("{sleeve_length:cm}", "23 cm", "23 cm"),
        ("{sleeve_length:inch}", "9 1/16 in", "9 1/16 in"),
        ("{sleeve_length:finished}", "23 cm (9 1/16 in)", "9 1/16 in (23 cm)"),
        ("{overlap} of it", "70% of it", "70% of it"),
        ("{ overlap : number }", "0.7", "0.7"),
        ("{overlap:percent}", "70%", "70%"),
        ("{buttons} buttons", "6 buttons", "6 buttons"),
        ("{{not a name}}", "{not a name}", "{not a name}"),
    ],
)
def test_values_are_shown_in_the_lesson_s_system(text, cm, inch):
    assert fill_words(text, VALUES, "cm") == cm
    assert fill_words(text, VALUES, "inch") == inch


def test_what_is_filled_in_is_plain_text():
    assert fill_words("<b>{buttons}</b> & {overlap}", VALUES) == "<b>6</b> & 70%"


@pytest.mark.parametrize(
    ("text", "word"),
    [
        ("{sleve_length}", "Did you mean 'sleeve_length'?"),
        ("{sleeve_length:percent}", "a length cannot be shown as 'percent'"),
        ("{sleeve_length.__class__}", "is not a name"),
        ("{sleeve_length!r}", "is not a name"),
        ("{0}", "is not a name"),
        ("{sleeve_length", "a brace stands alone"),
    ],
)
def test_slips_are_told_plainly(text, word):
    with pytest.raises(KitError) as caught:
        fill_words(text, VALUES)
    assert word in str(caught.value)
