"""A mark that the sewing names on one half alone is told of that half, wherever a piece tells its marks: which side
laps over is the lesson's word, and a cut pair's two pieces are marked unlike (common practice, no source)."""

from __future__ import annotations

import re
from dataclasses import replace

import pytest

from kit.booklet.marking import marking
from kit.language import speaking
from kit.lesson.pattern import Pattern
from kit.picture.drawing import Label
from kit.picture.piece_sheet import piece_alt, piece_drawing
from kit.prose.by_measures import measured_marks
from kit.prose.on_one_half import marks_on_one_half
from tests.wear.garments import lesson_of


@pytest.fixture(scope="module")
def shirt() -> Pattern:
    return lesson_of("shirt", ()).work()


def marks_in(pattern: Pattern, title: str) -> str:
    table = marking(pattern).table
    assert table is not None
    return next(dict(zip(table.head, row, strict=True))["Marks"] for row in table.rows if row[1] == title)


def test_the_table_says_which_band_gets_the_buttonholes(shirt: Pattern) -> None:
    told = "fold line; right button band only: buttonhole 1 to 6; left button band only: button 1 to 6"
    assert marks_in(shirt, "Button band") == told
    assert marks_in(shirt, "Stand") == "right half only: buttonhole 1; left half only: button 1"


def test_what_both_halves_get_is_told_of_both(shirt: Pattern) -> None:
    """A cuff has its buttonhole and its button, left as right; without sewing nothing is known of halves."""
    assert marks_in(shirt, "Cuff") == "fold line, buttonhole 1, button 1"
    assert marks_on_one_half(replace(shirt, sewing=())) == {}


def test_every_mark_on_the_printed_piece_says_it(shirt: Pattern) -> None:
    drawn = {item.text for item in piece_drawing(shirt.piece("band"), shirt).items if isinstance(item, Label)}
    for number in range(1, 7):
        assert f"buttonhole {number}: right button band only" in drawn
        assert f"button {number}: left button band only" in drawn
    assert "buttonhole 1: right half only" in piece_alt(shirt.piece("stand"), shirt)


def test_a_piece_cut_by_its_measures_says_it_too() -> None:
    """One cuff with the buttonhole and the other with the button (which no arm wants): told with their places."""
    changes = (
        ("cuff.buttonhole_1, length", "cuff.right.buttonhole_1, length"),
        ("cuff.buttonhole_button_1", "cuff.left.buttonhole_button_1"),
        ("stand.right.buttonhole_1, cuff.buttonhole_1]", "stand.right.buttonhole_1, cuff.right.buttonhole_1]"),
    )
    pattern = lesson_of("shirt", changes).work()
    told = " ".join(measured_marks(pattern.piece("cuff"), pattern))
    assert "(button 1: left cuff only)" in told and "(buttonhole 1: right cuff only)" in told


@pytest.mark.parametrize(
    ("code", "half"), [("de", "nur rechte Hälfte"), ("es", "solo mitad derecha"), ("fr", "moitié droite seulement")]
)
def test_it_is_said_in_every_language(shirt: Pattern, code: str, half: str) -> None:
    with speaking(code):
        assert half in piece_alt(shirt.piece("stand"), shirt)
        table = marking(shirt).table
    assert table is not None
    assert re.search(half, " ".join(cell for row in table.rows for cell in row))
