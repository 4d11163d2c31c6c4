"""The worksheet as the booklet prints it: what is alike is told once."""

from __future__ import annotations

import pytest

from kit.body import workshop_chart
from kit.booklet.forms import FORMS
from kit.booklet.model import SheetStep
from kit.booklet.pictures import Inks
from kit.booklet.worksheets import _alike, worksheets
from kit.geometry import Path, Point
from kit.picture.theme import THEME
from kit.piece.piece import Edge, Piece
from kit.prose.worksheet import PieceSheet
from tests.lesson_words import example_lessons


@pytest.fixture(scope="module")
def bag() -> tuple[SheetStep, ...]:
    pattern = example_lessons()["lantern_bag"].work(workshop_chart()["W4"])
    form = FORMS["a4"]
    return worksheets(pattern, {}, form, Inks.of(THEME, form))


def test_pieces_that_are_alike_are_told_once_with_all_their_names(bag: tuple[SheetStep, ...]) -> None:
    """Back and lining of a bag are traced from its front; the linings alone have a gap to turn it through."""
    front, traced, _, allowances = bag
    assert [(piece.title, piece.several) for piece in front.pieces] == [("Front", False)]
    assert [(piece.title, piece.several) for piece in traced.pieces] == [
        ("Back", False),
        ("Front lining and Back lining: all alike", True),
    ]
    assert [piece.several for piece in allowances.pieces] == [True]
    assert all(name in allowances.pieces[0].title for name in ("Front", "Back", "Front lining", "Back lining"))


def test_what_differs_is_told_apart() -> None:
    """Front and back of a skirt: other darts, other letters."""
    pattern = example_lessons()["dune_skirt"].work(workshop_chart()["W4"])
    form = FORMS["a4"]
    made = worksheets(pattern, {}, form, Inks.of(THEME, form))
    assert [piece.title for piece in made[0].pieces] == ["Front skirt", "Back skirt"]
    assert not any(piece.several for step in made for piece in step.pieces)


@pytest.mark.parametrize("hem, groups", [(30.0, 1), (0.0, 2)])
def test_what_the_picture_shows_differently_is_told_apart(hem: float, groups: int) -> None:
    """Its cut line has the allowances of earlier steps too, of which this step says nothing."""
    corners = Point(0, 0), Point(100, 0), Point(100, 50), Point(0, 50)
    paths = [Path.line(a, b) for a, b in zip(corners, corners[1:] + corners[:1], strict=True)]

    def sheet(name: str, low: float) -> PieceSheet:
        widths = (low, 10.0, 10.0, 10.0)
        edges = tuple(Edge(n, path, allowance=w) for n, path, w in zip("abcd", paths, widths, strict=True))
        return PieceSheet(Piece(name, name.title(), edges), "", (), (), notes=("Allow 1 cm.",), allowed=True)

    assert len(_alike([sheet("front", 30.0), sheet("back", hem)])) == groups
