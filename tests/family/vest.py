"""A small lesson of these tests' own: a vest from the bodice block, with a dart's worth of everything a file holds."""

from __future__ import annotations

from typing import Any

from kit import bodice_block, cm, mm
from kit.lesson.lesson import Lesson


def vest(title: str = "Vest", neck: str = "Square down {drop} at the centre.", **more: Any) -> Lesson:
    """A vest with a lowered neck, a notch, an opening, a strip and one seam; `more` goes to `Lesson`."""
    lesson = Lesson(title, start=bodice_block, notions=["Sewing thread"], **more)
    lesson.length("drop", 2 * cm, least=5 * mm, most=6 * cm, why="room for the head")
    lesson.length("seam", 1.5 * cm, least=1 * cm, most=2 * cm)

    def lower(front: Any, drop: Any) -> None:
        low = front.centre_neck.down(drop)
        front.draw(centre=front.centre_hip.to(low), instead_of="centre")
        front.draw(neck=low.curve_to(front.neck_point, square_to=front.centre), instead_of="neck")

    lower.__doc__ = neck

    def allowances(front: Any, back: Any, seam: Any) -> None:
        """Add {seam} to every edge; centre front and centre back lie on the fold."""
        for piece in (front, back):
            piece.allow(side=seam, shoulder=seam, armhole=6 * mm, hip=seam, neck=6 * mm)
            piece.cut(1, fold="centre")
        front.notch("side", at=5 * cm)

    def sides(make: Any, front: Any, back: Any, seam: Any) -> None:
        """Start at the armhole."""
        make.plain_seam(front.side, back.side, allowance=seam, finish="zigzag")

    lesson.step("Lower the neck")(lower)
    lesson.step("Allowances")(allowances)
    lesson.sew("Sew the sides")(sides)
    return lesson
