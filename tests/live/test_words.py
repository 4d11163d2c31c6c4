"""Words said by a cell: numbers on the notebook's page that follow the sliders, markdown in the booklet."""

from __future__ import annotations

from pathlib import Path

import nbformat
import pytest
from nbformat.v4 import new_code_cell, new_markdown_cell, new_notebook, new_output

from kit import cm
from kit.booklet.told_words import WORDS, raw_words, with_told_words
from kit.errors import KitError
from kit.lesson.cells import note_cells
from kit.live.beside import beside
from kit.live.panel import panel
from kit.live.told_values import told

from .conftest import LessonMaker

TEXT = """
    ## When you have worn it

    Longer than {hem_drop}; see {lower_hem:step}, and `{hem_drop}` as typed.
    """


def test_the_numbers_stand_and_what_is_not_known_yet_is_left_open(make_lesson: LessonMaker) -> None:
    lesson = make_lesson()
    assert told("{hem_drop}, {lower_hem:step}, {nothing_yet}, {{so}}", lesson.work()) == (
        "14 cm (5 1/2 in), step 1, …, {so}"
    )
    assert told("`{hem_drop}` {hem_drop}", None) == "`{hem_drop}` …"


def test_in_plain_python_they_are_printed(make_lesson: LessonMaker, capsys: pytest.CaptureFixture[str]) -> None:
    make_lesson().words(TEXT)
    assert capsys.readouterr().out.startswith(
        "## When you have worn it\n\nLonger than 14 cm (5 1/2 in); see step 1, and `{"
    )


def test_words_follow_a_moved_value(make_lesson: LessonMaker, monkeypatch: pytest.MonkeyPatch) -> None:
    lesson = make_lesson()
    shown: list[str] = []

    class Handle:
        def update(self, what: object) -> None:
            shown.append(what.data)  # type: ignore[attr-defined]

    from kit.lesson.where import acting

    monkeypatch.setattr("IPython.display.display", lambda what, **_: shown.append(what.data) or Handle())
    with acting(notebook=True, cell="a", run=1):
        lesson.words("Longer than {hem_drop}.")
        lesson.change(hem_drop=15 * cm)
    assert shown == ["Longer than 14 cm (5 1/2 in).", "Longer than 15 cm (5 7/8 in)."]
    with acting(notebook=True, cell="a", run=2):
        lesson.words("As long as {hem_drop}.")
        lesson.change(hem_drop=16 * cm)
    assert shown[2:] == ["As long as 15 cm (5 7/8 in).", "As long as 16 cm (6 5/16 in)."], "the former run is gone"
    assert len(beside(lesson)._said) == 1


@pytest.mark.parametrize("text", ["a {brace", 7])
def test_what_cannot_be_read_is_refused(make_lesson: LessonMaker, text: object) -> None:
    with pytest.raises(KitError):
        make_lesson().words(text)  # type: ignore[arg-type]


def test_after_a_run_they_stand_behind_their_cell() -> None:
    cell = new_code_cell("lesson.words(...)", id="end", metadata={"tags": ["for-class"]})
    cell.outputs = [new_output("display_data", {WORDS: "Longer than {hem_drop}."})]
    book = with_told_words(new_notebook(cells=[cell, new_markdown_cell("after")]))
    nbformat.validate(book)
    assert [one.cell_type for one in book.cells] == ["code", "markdown", "markdown"]
    assert book.cells[1].source == "Longer than {hem_drop}." and book.cells[1].metadata.tags == ["for-class"]


def test_braces_that_stand_raw_on_the_page_are_noted() -> None:
    private = new_markdown_cell("{hem_drop}", metadata={"tags": ["notes-to-self"]})
    book = new_notebook(
        cells=[new_markdown_cell("## End\n\nLonger than {hem_drop:inch}."), new_markdown_cell("{{x}} `{y}`"), private]
    )
    (note,) = raw_words(book)
    assert "{hem_drop:inch}" in note and "“End Longer than" in note and "lesson.words(" in note


def test_the_examples_have_no_raw_braces(root: Path) -> None:
    lessons = [path for path in (root / "example_notebooks").glob("*.ipynb") if not path.name.startswith("reference_")]
    assert len(lessons) > 5, "a page of reference speaks of braces and is no lesson"
    for path in lessons:
        assert raw_words(nbformat.read(path, as_version=4)) == (), path.name


def test_a_deleted_cell_is_told_at_once(make_lesson: LessonMaker) -> None:
    """The page tells of its cells; no file is saved."""
    from kit import Lesson, bodice_block
    from kit.lesson.where import acting

    lesson = Lesson("Gone", start=bodice_block)
    with acting(notebook=False, cell="one", run=1):

        @lesson.step("Step one")
        def one(front):
            """Nothing."""

    with acting(notebook=False, cell="two", run=2):

        @lesson.step("Step two")
        def two(front):
            """Nothing."""

    shown = panel(lesson)
    try:
        shown._watch._heard(None, {"cells": [["one", "def drafted"], ["other", ""]]}, [])
        assert lesson.stale() == ("Step two",)
        assert "Step two" in shown.notes.value and "not in the notebook any more" in shown.notes.value
        shown._watch._heard(None, {"cells": [["one", ""], ["two", ""]]}, [])
        assert lesson.stale() == () and "Step two" not in shown.notes.value
        shown._watch._heard(None, {"cells": "nonsense"}, [])
    finally:
        note_cells(())


def test_what_the_last_session_left_is_said_beside_start_fresh(make_lesson: LessonMaker) -> None:
    first = make_lesson()
    first.change(hem_drop=11 * cm)
    first.save()
    shown = panel(make_lesson())
    assert shown.reset.description == "Start fresh" and "last session left" in shown.notes.value
    shown.reset.click()
    assert shown.lesson.values["hem_drop"] == 140.0
    assert shown.reset.description == "Reset values" and "last session" not in shown.notes.value


def test_a_build_reads_them_as_markdown_in_their_place(tmp_path: Path) -> None:
    from kit.booklet.run_notebook import run_notebook

    made = 'from kit import Lesson, bodice_block, cm\nlesson = Lesson("Words", start=bodice_block)'
    book = new_notebook(
        cells=[
            new_code_cell(f'{made}\nlesson.length("hem", 9 * cm, least=1 * cm, most=20 * cm)'),
            new_code_cell('lesson.words("""\n    ## At the end\n\n    Longer than {hem}.\n    """)'),
        ]
    )
    ran = run_notebook(book, tmp_path)
    assert [cell.source for cell in ran.notebook.cells if cell.cell_type == "markdown"] == [
        "## At the end\n\nLonger than {hem}."
    ]
