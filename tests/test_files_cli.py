"""Commands that make and tidy an author's files: what `new` writes is a sound lesson whatever it starts from, examples
are copied once, and a cleaned notebook holds what was written and nothing of a run."""

from __future__ import annotations

import json
import re
from pathlib import Path

import nbformat
import pytest

import kit
from kit import Lesson
from kit.booklet.forms import FORMS
from kit.booklet.starter import FROM, OF_BLOCK, start
from kit.booklet.step_shown import sewn
from kit.cli import main
from kit.files_cli import STARTS as STARTED
from kit.lesson.goals import Attempt
from kit.proof import prove
from kit.resources import examples
from tests.example import notebook_names

STARTS = tuple(FROM)


def refused(capsys: pytest.CaptureFixture[str], *arguments: str) -> str:
    assert main(arguments) == 2
    said = capsys.readouterr()
    assert "Traceback" not in said.err + said.out
    return said.err.strip()


def new(folder: Path, monkeypatch: pytest.MonkeyPatch, name: str, *more: str) -> Path:
    monkeypatch.chdir(folder)
    assert main(["new", name, *more]) == 0
    (path,) = folder.glob(f"{name.lower().replace(' ', '_')}.ipynb")
    return path


@pytest.mark.parametrize("start", STARTS)
def test_a_new_lesson_is_sound_and_has_panel_try_on_and_an_exercise_that_can_be_solved(
    start: str, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    path = new(tmp_path, monkeypatch, "Quay top", "--from", start)
    sources = [cell.source for cell in nbformat.read(path, as_version=4).cells]
    assert "panel(lesson)" in sources
    assert not any(word in source for source in sources for word in ("LESSON TITLE", "DRAWING", "PARAMETERS", "WAIST"))
    lesson = notebook_names(path)["lesson"]
    assert isinstance(lesson, Lesson) and lesson.info.title == "Quay top"
    pattern = lesson.work()
    assert [str(one) for one in prove(pattern) if one.level != "note"] == []
    assert any(operation.kind == "try_on" for record in pattern.sewing for operation in record.operations)
    for record in pattern.sewing:  # every step can be drawn
        assert all(sewn(record, number, pattern, FORMS["a4"], "step") for number in range(len(record.operations)))
    (exercise,) = lesson.exercises
    solved = lesson.work(values={**lesson.values, **{name: float(value) for name, value in exercise.answer}})
    assert not all(result.met for result in exercise.results(Attempt(pattern, pattern, lesson.units, prove)))
    assert all(result.met for result in exercise.results(Attempt(pattern, solved, lesson.units, prove)))


def test_a_new_lesson_tells_of_the_booklet_without_a_terminal(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    path = new(tmp_path, monkeypatch, "Quay top")
    (notes,) = [
        c.source for c in nbformat.read(path, as_version=4).cells if "notes-to-self" in c.metadata.get("tags", ())
    ]
    said = " ".join(notes.split())
    assert "*File > Save and Export Notebook As > Booklet*" in said
    assert "canvas(lesson)" in said and "lesson.help(" in said


def test_a_new_lesson_from_another_is_a_variation(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    parent = tmp_path / "ferry_tote.ipynb"
    parent.write_bytes((examples() / parent.name).read_bytes())
    path = new(tmp_path, monkeypatch, "Market tote", "--from", parent.name)
    lesson = notebook_names(path)["lesson"]
    assert lesson.info.title == "Market tote" and lesson.parent.info.title == "Ferry tote"
    words = "".join(cell.source for cell in nbformat.read(path, as_version=4).cells if cell.cell_type == "markdown")
    assert all(f"`{entry.name}`" in words for entry in lesson.entries if entry.kind != "finished")


def test_every_block_has_a_lesson_that_starts_from_it(tmp_path: Path) -> None:
    """Whatever `from kit import` gives to start from is found by its name, as a cell says it or short."""
    offered = {name for name in kit.__all__ if name.endswith("_block") or name in ("with_sleeve", "blank_paper")}
    assert offered | {"read_traced"} == set(OF_BLOCK) and set(OF_BLOCK.values()) == set(FROM)
    assert set(STARTED) == set(FROM), "what the command offers is what there is"
    for number, name in enumerate((*OF_BLOCK, "trouser", "darted bodice", "Skirt")):
        text = start(f"Number {number}", tmp_path, name).read_text("utf-8")
        block = {"trouser": "trouser_block", "darted bodice": "darted_bodice_block", "Skirt": "skirt_block"}.get(
            name, name
        )
        assert re.search(rf"start={block}\b|start = {block}\b|{block}\(", text), name


def test_what_cannot_be_started_from(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.chdir(tmp_path)
    assert "nothing called 'moon'" in refused(capsys, "new", "Top", "--from", "moon")
    assert "no notebook 'moon.ipynb'" in refused(capsys, "new", "Top", "--from", "moon.ipynb")
    assert list(tmp_path.iterdir()) == []


@pytest.mark.parametrize(("typed", "start"), [("3", "blank"), ("4", "skirt"), ("traced", "traced"), ("", "block")])
def test_new_asks_where_somebody_sits(
    typed: str, start: str, tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.setattr("sys.stdin.isatty", lambda: True)
    monkeypatch.setattr("sys.stdout.isatty", lambda: True)
    monkeypatch.setattr("builtins.input", lambda asked: typed)
    said = new(tmp_path, monkeypatch, "Top").read_text("utf-8")
    assert {"block": "bodice_block", "traced": "read_traced", "blank": "blank_paper", "skirt": "skirt_block"}[
        start
    ] in said
    assert all(f"  {number}  " in capsys.readouterr().out or number for number in (1, 2, 3))


def test_examples_are_copied_and_what_is_there_is_left(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    folder = tmp_path / "lessons"
    folder.mkdir()
    mine = folder / "ferry_tote.ipynb"
    mine.write_text("mine")
    assert main(["examples", str(folder)]) == 0
    said = capsys.readouterr().out
    assert mine.read_text() == "mine" and "ferry_tote.ipynb" in said
    for path in (*examples().glob("*.ipynb"), *examples().glob("*.po")):
        if path.name != mine.name:
            assert (folder / path.name).read_bytes() == path.read_bytes()
    (tmp_path / "file").write_text("")
    assert "is a file" in refused(capsys, "examples", str(tmp_path / "file"))


def test_clean_takes_out_what_running_left(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    source = examples() / "ferry_tote.ipynb"
    book = nbformat.read(source, as_version=4)
    for number, cell in enumerate(cell for cell in book.cells if cell.cell_type == "code"):
        cell.execution_count = number + 1
        cell.metadata["execution"] = {"iopub.execute_input": "2026-11-30T12:00:00Z"}
        cell.outputs = [nbformat.v4.new_output("display_data", {"text/html": "<svg>" + "x" * 9000})]
    book.metadata["widgets"] = {"application/vnd.jupyter.widget-state+json": {"state": {}}}
    path = tmp_path / "tote.ipynb"
    nbformat.write(book, path)
    assert main(["clean", str(path)]) == 0
    assert "kB, now " in capsys.readouterr().out
    assert json.loads(path.read_text("utf-8")) == json.loads(source.read_text("utf-8"))
    before = path.stat().st_mtime_ns
    assert main(["clean", str(path)]) == 0
    assert path.stat().st_mtime_ns == before and "nothing to take out" in capsys.readouterr().out
    (tmp_path / "a.txt").write_text("")
    assert "is no notebook" in refused(capsys, "clean", str(tmp_path / "a.txt"))
