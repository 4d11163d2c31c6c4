"""A lesson's own finished measurements against the girths they go over, and why a garment was not tried on a body."""

from __future__ import annotations

import pytest

from kit.language import speaking
from kit.sewing.order import sew
from kit.wear.worn import why_untried, worn
from tests.example import GARMENTS
from tests.wear.garments import lesson_of

SMALL = ('neck_half", 10 * cm', 'neck_half", 7 * cm')


def told(*changes: tuple[str, str], base: str = "child_tabard"):
    pattern = lesson_of(base, changes).work()
    return worn(pattern, sew(pattern)[0])


@pytest.mark.parametrize("language", ("en", "de", "fr", "es"))
def test_a_neck_smaller_than_the_head_is_told_with_what_is_missing(language: str) -> None:
    """By Pythagoras, twice the root of 7 and 11 squared and twice that of 7 and 5 squared are 43.28 cm; 50 pass."""
    (found,) = told(SMALL)
    assert (found.code, found.level, found.piece, found.edge) == ("finished_small", "error", "front", "neck")
    assert found.amount == pytest.approx(500.0 - 432.8, abs=0.1)
    with speaking(language):
        assert "Neck opening, all round" in found.what and "43" in found.what and "50" in found.what
        assert "6.7" in found.do.replace(",", ".") and "_" not in found.what + found.do


def test_what_is_no_whole_edge_is_a_warning_and_only_where_nothing_opens() -> None:
    """Four times 15 cm less 5 are 55 cm over a chest of 56; a garment that ties is as wide as it is tied."""
    across = ("return front.hem.length * 4", "return front.hem.length * 4 - 5 * cm")
    (found,) = told(across)
    assert (found.code, found.level, found.measures) == ("finished_small", "warning", ("child_chest_girth",))
    assert found.amount == pytest.approx(10.0, abs=0.1)
    tied = (
        "    make.bind(front.hem, front.side",
        "    make.attach_strip(edge_binding, front.tie_place, lap=1 * cm)\n    make.bind(front.hem, front.side",
    )
    place = (
        "    back.join(back.neck, back.centre)",
        '    back.join(back.neck, back.centre)\n    front.mark_point("tie_place", front.side.at(20 * cm), said="tie")',
    )
    assert told(across, tied, place) == []


def test_why_it_was_not_tried_on_is_said_in_a_line() -> None:
    def why(*changes: tuple[str, str], base: str = "child_tabard") -> str:
        return str(why_untried(lesson_of(base, changes).work()) or "")

    assert "no piece has a line" in why()
    line = (
        "centre=centre_top.to(low))",
        "centre=centre_top.to(low))\n    front.guide(bust_line=front.side.at(20 * cm).to(front.centre.at(20 * cm)))",
    )
    said = why(line)
    assert "back waist length" in said and "armscye depth" in said and "\n" not in said
    assert [base for base in GARMENTS if why(base=base)] == []
