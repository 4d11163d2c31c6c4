"""Two edges walked under a cell, and findings that show where."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

import pytest

from kit import KitError, Lesson, bodice_block, cm
from kit.lesson.where import acting
from kit.live import fragments
from kit.live.beside import beside
from kit.proof import prove


class Handle:
    """What stands under a cell."""

    def __init__(self, shown: Any) -> None:
        self.html = shown.data

    def update(self, shown: Any) -> None:
        self.html = shown.data


@pytest.fixture
def lesson(tmp_path, monkeypatch) -> Lesson:
    monkeypatch.chdir(tmp_path)
    made = Lesson("Walked", start=bodice_block, size="W4")
    made.length("more", 0 * cm, least=0 * cm, most=3 * cm, why="to try")

    @made.step("Lower the hems")
    def lower(front, back, more):
        """Rule the hems."""
        for piece, drop in ((front, 7 * cm), (back, 7 * cm + more)):
            piece.draw(hem=piece.waist.parallel(drop, "down"), instead_of=piece.hip)
            piece.join(piece.side, piece.hem)
            piece.join(piece.hem, piece.centre)
            piece.allow(side=1 * cm)

    @made.sew("Sew the sides")
    def sides(make, front, back):
        """Sew."""
        make.plain_seam(front.side, back.side, allowance=1 * cm)

    return made


@pytest.fixture
def notebook(monkeypatch) -> Iterator[list[Handle]]:
    """A notebook that keeps what is displayed."""
    shown: list[Handle] = []

    def display(what: Any, **_: Any) -> Handle:
        shown.append(Handle(what))
        return shown[-1]

    monkeypatch.setattr("IPython.display.display", display)
    with acting(notebook=True):
        yield shown


def test_the_walk_stands_under_the_cell_and_follows(lesson, notebook) -> None:
    lesson.walk("front.side", "back.side")
    (handle,) = notebook
    assert "<svg" in handle.html and "equal" in handle.html and "longer" not in handle.html
    lesson.change(more=1 * cm)
    for _ in beside(lesson).follow_on():
        pass
    assert "back bodice 1 cm (3/8 in) longer" in handle.html


def test_a_wrong_name_is_told_under_the_cell(lesson, notebook) -> None:
    lesson.walk("front.sid", "back.side")
    assert "there is no edge" in notebook[0].html and "Traceback" not in notebook[0].html


def test_out_of_a_notebook_the_words_are_printed_and_a_build_is_silent(lesson, capsys, monkeypatch) -> None:
    lesson.walk("front.side", "back.side")
    assert "walked along" in capsys.readouterr().out
    with pytest.raises(KitError, match="there is no piece 'frnt'"):
        lesson.walk("frnt.side", "back.side")
    monkeypatch.setenv("LESSONKIT_BUILD", "1")
    lesson.walk("front.side", "back.side")
    assert capsys.readouterr().out == ""


def test_findings_can_be_unfolded_to_show_where(lesson) -> None:
    lesson.change(more=1 * cm)
    pattern = lesson.work()
    html = fragments.findings(prove(pattern), pattern, "cm")
    assert "<summary>Show where</summary><svg" in html
    assert html.count("<details>") <= 8
    assert "<details>" not in fragments.findings(prove(pattern))
