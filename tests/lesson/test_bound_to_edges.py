"""An edge with notches or an opening, and others drawn in its place. Expected places are worked out by hand from the
lengths along the old edge."""

from __future__ import annotations

import pytest

from kit import Lesson, blank_paper, bodice_block, cm, with_sleeve
from kit.piece.allowance import notch_lines
from kit.piece.piece import Piece


def cut_side(*, opening: float) -> Piece:
    """A rectangle 20 by 30 cm whose side, with a notch at 12 cm and a slit from `opening` cm on, is cut in two:
    a lower part of 10 cm and an upper one."""
    lesson = Lesson("Towel", start=blank_paper)

    @lesson.step("Rule it", makes="towel")
    def rule(towel):  # type: ignore[no-untyped-def]
        a, b = towel.place(0 * cm, 0 * cm), towel.place(20 * cm, 0 * cm)
        c, d = b.up(30 * cm), a.up(30 * cm)
        towel.draw(hem=a.to(b), side=b.to(c), top=c.to(d), far_side=d.to(a))
        towel.notch("side", 12 * cm)
        towel.leave_open("slit", "side", at=opening * cm, size=4 * cm)

    @lesson.step("Cut the side in two")
    def cut(towel):  # type: ignore[no-untyped-def]
        at = towel.side.at(10 * cm)
        towel.draw(lower=towel.side.start.to(at), upper=at.to(towel.side.end), instead_of=towel.side)

    return lesson.work().piece("towel")


def test_a_notch_and_an_opening_go_to_the_part_they_lie_on() -> None:
    towel = cut_side(opening=15)
    ((notch,), (slit,)) = towel.notches, towel.marks
    assert (notch.edge, slit.edge) == ("upper", "upper")
    assert (notch.distance, slit.start, slit.end) == pytest.approx((20.0, 50.0, 90.0), abs=1e-6)


def test_an_opening_cut_through_by_the_corner_is_gone() -> None:
    assert not cut_side(opening=8).marks


def test_a_raglan_is_drawn_on_a_block_with_notched_armholes() -> None:
    lesson = Lesson("Raglan", start=with_sleeve(bodice_block), size="W4")

    @lesson.step("Draw the raglan")
    def raglan(front, back):  # type: ignore[no-untyped-def]
        for piece in (front, back):
            low = piece.neck.at(piece.neck.length - 3 * cm)
            line = low.to(piece.underarm_point)
            piece.draw(neck=piece.neck.to(low), raglan=line, instead_of=("neck", "shoulder", "armhole"))
            piece.allow(neck=1 * cm, raglan=1 * cm, side=1 * cm, hip=1 * cm, centre=0 * cm)

    block = with_sleeve(bodice_block)
    assert any(n.edge == "armhole" for n in Lesson("As it is", start=block, size="W4").work().piece("front").notches)
    for name in ("front", "back"):
        piece = lesson.work().piece(name)
        assert {notch.edge for notch in piece.notches} <= {edge.name for edge in piece.edges}
        notch_lines(piece)  # refused a notch of an edge that is gone
