"""The fit changes of a booklet are shown on the lesson's own pieces wherever these can be altered."""

from __future__ import annotations

import pytest

from kit.body import workshop_chart
from kit.booklet.fit_notes import shown_on
from kit.lesson.fit_change import FIT_CHANGES
from kit.lesson.pattern import Pattern
from tests.lesson_words import example_lessons


@pytest.fixture(scope="module")
def jacket() -> Pattern:
    return example_lessons()["harbour_jacket"].work(workshop_chart()["W4"])


@pytest.mark.parametrize("name", ["lengthen_above_waist", "shorten_above_waist", "shorten_below_waist"])
def test_a_change_that_has_room_for_less_is_shown_with_less(jacket: Pattern, name: str) -> None:
    """Above the waist the jacket has a deep underarm curve: less can be folded out there than is usually shown, and the
    picture is of the jacket all the same, with its sleeves, as the ones beside it are."""
    found = shown_on(jacket, FIT_CHANGES[name])
    assert found is not None
    before, made = found
    assert before == {piece.name: piece for piece in jacket.pieces}
    for piece in made.pieces:
        grown = piece.edge("side").path.length - before[piece.name].edge("side").path.length
        assert abs(grown) >= 0.3 * FIT_CHANGES[name].shown, "it can be told from a redrawn line"
    assert {"opening", "overarm"} <= {edge.name for piece in made.pieces for edge in piece.edges}


def test_what_the_pieces_have_no_lines_for_is_shown_on_the_block(jacket: Pattern) -> None:
    """A cut-on sleeve has no armhole to hinge at."""
    found = shown_on(jacket, FIT_CHANGES["broad_shoulder"])
    assert found is not None
    assert found[0] == {piece.name: piece for piece in jacket.start}
