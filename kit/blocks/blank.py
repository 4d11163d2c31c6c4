"""Blank paper: for what is drawn from its own measures alone, such as a bag."""

from __future__ import annotations

from kit.body.body import Body
from kit.piece.piece import Piece


class BlankPaper:
    """A start without pieces. `title` and `measures` as blocks have them.

    >>> from kit import workshop_chart
    >>> blank_paper(workshop_chart()["W4"])
    ()
    """

    title = "Blank paper"
    measures: tuple[str, ...] = ()

    def __call__(self, body: Body) -> tuple[Piece, ...]:
        return ()


blank_paper = BlankPaper()
