"""The class copy without a browser: what is in its files, what it opens, the exercise's widget, and own pages."""

from __future__ import annotations

import asyncio
import io
import json
import re
import tokenize
from collections.abc import Sequence
from pathlib import Path
from typing import Any

import nbformat
import pytest

from kit import Body, KitError, Lesson, class_lesson, cm, exercise, grows, keeps, panel, print_mine
from kit.lesson.where import acting
from kit.live import class_copy
from kit.live import print_mine as printing
from kit.live.class_copy import LESSON, ClassCopy, make_class_copy
from kit.live.class_source import class_source
from kit.live.followers import followers

from ..open_room import ANSWERS, EXERCISES, write_lesson
from .conftest import LessonMaker

SECRET = "teachers-remark"
NOTHING_ASKED = 'from kit import keeps\nlesson.exercise("Nothing", goals=keeps("front.hem"))'


@pytest.fixture(scope="module")
def copy(tmp_path_factory: pytest.TempPathFactory) -> ClassCopy:
    folder = tmp_path_factory.mktemp("copy")
    lesson = write_lesson(folder)
    (folder / "tideline-wrap-top.values.json").write_text(json.dumps({"values": {"underarm_drop": 119.0}}))
    return make_class_copy(lesson)


@pytest.fixture
def without_kernel(monkeypatch: pytest.MonkeyPatch) -> None:
    """Lessons are run in this process: a kernel takes seconds to start, and what is asked is what a lesson's exercises
    say of themselves. The `copy` above and one refusal come from real kernels."""

    def run_here(
        book: nbformat.NotebookNode, folder: Path, questions: Sequence[str], mimetype: str, **given: object
    ) -> tuple[nbformat.NotebookNode, tuple[str, ...]]:
        names: dict[str, Any] = {}
        shown: list[dict[str, str]] = []
        cells = [cell.source for cell in book.cells if cell.cell_type == "code"]
        with monkeypatch.context() as patch, acting(building=True):
            patch.chdir(folder)
            patch.setattr("IPython.display.publish_display_data", shown.append)
            for source in (*(cell for cell in cells if "panel(" not in cell), *questions):
                exec(compile(source, "<cell>", "exec"), names)
        return book, tuple(data[mimetype] for data in shown if mimetype in data)

    monkeypatch.setattr(class_copy, "run_and_ask", run_here)


# ---- making it --------------------------------------------------------------------------------------------


def test_the_copy_holds_few_locked_cells(copy: ClassCopy) -> None:
    book = nbformat.read(copy.notebook, as_version=4)
    nbformat.validate(book)
    for cell in book.cells:
        assert cell.metadata["editable"] is False and cell.metadata["deletable"] is False
    code = [cell.source for cell in book.cells if cell.cell_type == "code"]
    assert code[1:] == [
        "panel(lesson)",
        "exercise(lesson, 'longer-underarm')",
        "exercise(lesson, 'shorter-top')",
        "body_form(lesson)",
        "print_mine(lesson)",
    ]
    assert copy.exercises == ("Longer underarm", "Shorter top") and copy.bodies == ()


def comments(source: str) -> list[str]:
    tokens = tokenize.generate_tokens(io.StringIO(source).readline)
    return [token.string for token in tokens if token.type == tokenize.COMMENT]


def test_no_answer_comment_output_or_saved_value_is_in_any_file(copy: ClassCopy) -> None:
    files = [copy.notebook, *(path for path in copy.lesson.parent.rglob("*") if path.is_file())]
    assert [path.name for path in files] == ["tideline_wrap_top_class.ipynb", LESSON]
    for path in files:
        text = path.read_text(encoding="utf-8")
        for answer in (*ANSWERS, "119", "112.5", "the answer is"):
            assert answer not in text, (path.name, answer)
        assert "answer" not in text
        for cell in nbformat.reads(text, as_version=4).cells:
            assert cell.cell_type != "code" or (not cell.outputs and not comments(cell.source))
    assert copy.lesson.stat().st_mode & 0o222 == 0


def test_goals_are_checked_without_the_answer(copy: ClassCopy, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.chdir(tmp_path)
    lesson = class_lesson(str(copy.lesson))
    assert [each.answer for each in lesson.exercises] == [(), ()]
    view = exercise(lesson, "longer-underarm")
    assert not view.solved and view.answer not in view.children[3].children
    lesson.change(underarm_drop=11.9 * cm)
    assert view.solved
    lesson.save()
    assert sorted(path.name for path in tmp_path.iterdir()) == ["tideline-wrap-top.values.json"]
    again = class_lesson(str(copy.lesson))
    assert again.values["underarm_drop"] == 119.0


def test_chosen_exercises_alone_come_along(tmp_path: Path, without_kernel: None) -> None:
    """The other one is not in the files either; a name is found by title or short name, a wrong one refused."""
    lesson = write_lesson(tmp_path)
    made = make_class_copy(lesson, tmp_path / "out" / "evening.ipynb", exercises=["shorter top"])
    assert made.exercises == ("Shorter top",) and made.lesson == tmp_path / "out" / "evening_lesson" / LESSON
    for path in (made.notebook, made.lesson):
        assert "underarm seam 2 cm longer" not in path.read_text(encoding="utf-8")
    with pytest.raises(KitError, match="Did you mean 'longer-underarm'"):
        make_class_copy(lesson, exercises=["longer-underam"])


def test_private_cells_stay_behind_and_pictures_come_along(tmp_path: Path) -> None:
    lesson = write_lesson(tmp_path)
    (tmp_path / "pictures").mkdir()
    (tmp_path / "pictures" / "flat.png").write_bytes(b"picture")
    (tmp_path.parent / "outside.png").write_bytes(b"outside")
    (tmp_path / "other.values.json").write_text("{}")
    book = nbformat.read(lesson, as_version=4)
    link = "![flat](pictures/flat.png) ![no](../outside.png) ![no](other.values.json) ![no](https://example.com/a.png)"
    for text, tags in ((SECRET, ["notes-to-self"]), (SECRET, ["answer"]), (link, [])):
        book.cells.append(nbformat.v4.new_markdown_cell(text, metadata={"tags": tags}))
    book.cells.append(nbformat.v4.new_code_cell(f"print('{SECRET}')", metadata={"tags": ["answer"]}))
    book.cells.append(nbformat.v4.new_code_cell(f"x = 1  # {SECRET}"))
    nbformat.write(book, lesson)
    files = class_source(lesson, LESSON).files
    assert sorted(files) == [LESSON, "pictures/flat.png"]
    assert SECRET.encode() not in files[LESSON]


def test_nobodys_body_goes_into_the_room(tmp_path: Path, without_kernel: None) -> None:
    """The measurements of whoever wrote the lesson, in a cell and in a file, stay behind, and it is said where; the
    exercises are those of the lesson still."""
    body = (
        "from kit import load_body, make_body\n"
        "mine = make_body({'bust_girth': '97.3 cm', 'waist_girth': '81.7 cm'}, name='Petra Quill')\n"
        "lesson.choose(body=mine)"
    )
    lesson = write_lesson(tmp_path, body, EXERCISES, "hers = 'petra.toml'\nlesson.choose(size='W4')")
    (tmp_path / "petra.toml").write_text('[measured]\nbust_girth = "97.3 cm"\n')
    made = make_class_copy(lesson)
    assert made.exercises == ("Longer underarm", "Shorter top")
    assert set(made.bodies) == {"tideline_wrap_top.ipynb", "petra.toml"}
    files = [made.notebook, *(path for path in made.lesson.parent.rglob("*") if path.is_file())]
    assert "petra.toml" not in [path.name for path in files]
    for path in files:
        text = path.read_text(encoding="utf-8")
        assert not [word for word in ("97.3", "81.7", "Petra", "Quill") if word in text], path.name


def test_a_lesson_that_opens_another_brings_it_along_stripped(tmp_path: Path, without_kernel: None) -> None:
    write_lesson(tmp_path)
    code = "from kit import open_lesson\n\nlesson = open_lesson('tideline_wrap_top.ipynb').variation('Short top')"
    book = nbformat.v4.new_notebook(cells=[nbformat.v4.new_code_cell(code)])
    nbformat.write(book, tmp_path / "short.ipynb")
    made = make_class_copy(tmp_path / "short.ipynb")
    parent = made.lesson.with_name("tideline_wrap_top.ipynb").read_text(encoding="utf-8")
    assert not [answer for answer in ANSWERS if answer in parent]
    assert made.exercises == ("Longer underarm", "Shorter top")


@pytest.mark.parametrize(
    ("cell", "words"),
    [
        (EXERCISES.replace("11.9 * cm", "10 * cm"), "its answer does not solve it: Front: underarm seam"),
        (EXERCISES.replace('underarm_drop": 11.9', 'underarm_drp": 11.9'), "Did you mean 'underarm_drop'"),
        (EXERCISES.replace('"front.opening"', '"front.openin"'), "Did you mean 'opening'"),
        (EXERCISES.replace("11.9 * cm", "drop").replace("from kit", "drop = 11.9 * cm\nfrom kit", 1), "'drop'"),
        (EXERCISES.replace("11.9 * cm", "50 * cm"), "outside its range"),
        (NOTHING_ASKED, "solved before anything is moved"),
        (
            'from kit import grows\ngoals = grows("front.underarm", 2 * cm)\n'
            'lesson.exercise("Hidden", **{"goals": goals, "answer": {"underarm_drop": 119 * mm}})',
            "the answer to 'Hidden' is still in the class copy",
        ),
    ],
)
def test_what_would_not_work_in_class_is_refused_and_nothing_is_written(
    tmp_path: Path, cell: str, words: str, without_kernel: None
) -> None:
    refused(tmp_path, cell, words)


def test_a_refusal_comes_out_of_the_kernel(tmp_path: Path) -> None:
    refused(tmp_path, NOTHING_ASKED, "solved before anything is moved")


def refused(tmp_path: Path, cell: str, words: str) -> None:
    lesson = write_lesson(tmp_path, cell)
    with pytest.raises(KitError, match=re.escape(words)):
        make_class_copy(lesson)
    assert [path.name for path in tmp_path.iterdir()] == [lesson.name]


def test_a_folder_that_is_something_else_is_left_alone(tmp_path: Path) -> None:
    lesson = write_lesson(tmp_path)
    (tmp_path / "tideline_wrap_top_class_lesson").mkdir()
    (tmp_path / "tideline_wrap_top_class_lesson" / "thesis.txt").write_text("years of work")
    with pytest.raises(KitError, match="no class copy"):
        make_class_copy(lesson)
    assert (tmp_path / "tideline_wrap_top_class_lesson" / "thesis.txt").exists()
    assert not (tmp_path / "tideline_wrap_top_class.ipynb").exists()
    for out, words in ((lesson, "take the place of the lesson"), (tmp_path / "copy.txt", "not the name of a notebook")):
        with pytest.raises(KitError, match=words):
            make_class_copy(lesson, out)


# ---- the exercise on the screen ---------------------------------------------------------------------------


def made_exercise(make_lesson: LessonMaker) -> Lesson:
    lesson = make_lesson()
    lesson.exercise(
        "Longer <side>",
        "Lengthen the side & keep the shoulder.",
        goals=[grows("front.side", 2 * cm), keeps("front.shoulder")],
        hints=["One", "Two"],
        answer={"hem_drop": 16 * cm},
    )
    return lesson


def test_hints_come_one_at_a_time_and_texts_are_escaped(make_lesson: LessonMaker) -> None:
    view = exercise(made_exercise(make_lesson), "longer-side")
    assert "Longer &lt;side&gt;" in view.task.value and "side &amp; keep" in view.task.value
    assert view.hints.value == "" and view.hint.description == "Show a hint (2 left)"
    view.hint.click()
    assert "One" in view.hints.value and "Two" not in view.hints.value
    assert view.hint.description == "Show a hint (one left)"
    view.hint.click()
    view.hint.click()
    assert "Two" in view.hints.value and view.hint.disabled


def test_the_teacher_can_see_the_answer(make_lesson: LessonMaker) -> None:
    view = exercise(made_exercise(make_lesson), "longer-side")
    view.answer.click()
    assert "Hem drop: 16 cm (6 5/16 in)" in view.hints.value


def test_it_follows_the_panel_the_body_and_a_start_over(make_lesson: LessonMaker) -> None:
    lesson = made_exercise(make_lesson)
    shown, view = panel(lesson), exercise(lesson, "longer-side")
    assert "to become 2 cm" in view.goals.value
    shown.rows["hem_drop"].slider.value = 15
    assert "longer so far" in view.goals.value and "Well done" not in view.message.value
    lesson.choose(size="W7")  # the lesson's own draft is worked for the same body
    assert "longer so far" in view.goals.value and view.results[1].met
    view.start.click()
    assert lesson.values["hem_drop"] == 140.0 and "to become 2 cm" in view.goals.value
    view.close()
    assert view not in followers(lesson).panels


def test_a_draft_that_cannot_be_drawn_is_told_in_words(make_lesson: LessonMaker) -> None:
    lesson = made_exercise(make_lesson)
    view = exercise(lesson, "longer-side")

    @lesson.step("Break it")
    def broken(front, hem_drop):
        """Break it."""
        if hem_drop > 140:
            raise KitError("the hem is too low.")

    lesson.change(hem_drop=15 * cm)
    assert "cannot be drawn with these values yet" in view.message.value and "too low" in view.message.value
    assert view.results == ()
    lesson.change(hem_drop=13 * cm)
    assert view.message.value == "" and view.results


def test_names_that_are_not_there_are_refused(make_lesson: LessonMaker) -> None:
    with pytest.raises(KitError, match="there is no exercise 'x'"):
        exercise(made_exercise(make_lesson), "x")
    with pytest.raises(KitError, match="belongs to a lesson"):
        exercise("x", "x")  # type: ignore[arg-type]
    with pytest.raises(KitError, match="only a lesson can be printed"):
        print_mine("x")  # type: ignore[arg-type]


# ---- opening it -------------------------------------------------------------------------------------------


def test_an_own_body_comes_back(copy: ClassCopy, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    from kit import make_body

    monkeypatch.chdir(tmp_path)
    path = str(copy.lesson)
    lesson = class_lesson(path)
    body: Body = make_body({"bust_girth": "98 cm"}, lesson.sizes, "Edda")
    lesson.choose(body=body)
    lesson.save()
    assert class_lesson(path).body.name == "Edda"
    assert Path.cwd() == tmp_path
    with pytest.raises(KitError, match="folder that came with the class copy"):
        class_lesson("elsewhere/lesson.ipynb")


# ---- own pages --------------------------------------------------------------------------------------------


def printed(lesson: Lesson, paper: str = "letter", booklet: bool = False) -> printing.PrintMine:
    button = print_mine(lesson)
    button.paper.value, button.booklet.value = paper, booklet
    button.begin()
    assert button.busy and button.make.disabled
    button.wait()
    return button


def test_pages_are_made_and_a_failure_keeps_them(
    copy: ClassCopy, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Without an event loop, as a program would use it."""
    monkeypatch.chdir(tmp_path)
    lesson = class_lesson(str(copy.lesson))
    lesson.choose(size="W2")
    button = printed(lesson)
    assert "Made for W2" in button.message.value and not button.busy
    pages = tmp_path / printing.FOLDER / "pages-letter.pdf"
    good = pages.read_bytes()
    [link] = button.files.children
    shown = link.outputs[0]["data"]["text/html"]
    assert good.startswith(b"%PDF") and "Pattern pages, US Letter" in shown
    assert f"href='{printing.FOLDER}/pages-letter.pdf'" in shown

    @lesson.step("Only here")
    def only_here(front):
        """The notebook does not have this step, nor the value it needs."""

    monkeypatch.setattr(printing, "opened_from", lambda lesson: copy.lesson.with_name("gone.ipynb"))
    button.begin()
    button.wait()
    assert "That did not work" in button.message.value and "there is no notebook" in button.message.value
    assert "from before" in button.message.value and pages.read_bytes() == good
    assert [path.name for path in pages.parent.iterdir()] == ["pages-letter.pdf"]


def test_cancelling_ends_the_job_and_its_kernel(
    copy: ClassCopy, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.chdir(tmp_path)
    lesson = class_lesson(str(copy.lesson))

    async def cancelled() -> printing.PrintMine:
        button = print_mine(lesson)
        button.begin()
        for _ in range(600):
            if button.bar.value:
                break
            await asyncio.sleep(0.05)
        button.stop()
        for _ in range(400):
            if not button.busy:
                break
            await asyncio.sleep(0.05)
        return button

    button = asyncio.run(cancelled())
    assert "Cancelled" in button.message.value and not button.busy
    assert not (tmp_path / printing.FOLDER).exists()


def test_a_notebook_without_a_name_is_told(make_lesson: LessonMaker, monkeypatch: pytest.MonkeyPatch) -> None:
    for variable in ("LESSONKIT_NOTEBOOK", "JPY_SESSION_NAME"):
        monkeypatch.delenv(variable, raising=False)
    button = print_mine(make_lesson())
    button.begin()
    assert "Save it, then press the button again" in button.message.value and not button.busy
