"""Guides are notebooks of under forty cells that begin with what one will have at the end; their lessons work, their
exercises are unsolved as they stand and solved by their answer. The README's tour runs as it is pasted."""

from __future__ import annotations

import json
import re
import shlex
import shutil
import subprocess
from pathlib import Path
from typing import Any

import nbformat
import pytest

from kit import Lesson
from kit.cli import main, parser, subcommands
from kit.language import speaking
from kit.lesson.goals import Attempt
from kit.proof import prove
from kit.resources import examples
from tests.example import lesson_notebooks, notebook_names

GUIDES = sorted(examples().glob("guide_*.ipynb"))
EXERCISED = (*GUIDES, *(path for path in lesson_notebooks() if "lesson.exercise(" in path.read_text("utf-8")))
"""Every notebook that asks something of its reader; a guide asks once at least."""
NAMES = (
    *("first_evening", "from_a_block", "from_a_top_that_fits", "fitting"),
    *("sizes_and_release", "on_camera", "in_class", "words_and_languages"),
)


def test_the_guides_are_there() -> None:
    assert sorted(path.stem.removeprefix("guide_") for path in GUIDES) == sorted(NAMES)


@pytest.mark.parametrize("path", GUIDES, ids=lambda path: path.stem)
def test_a_guide_begins_with_what_one_will_have_and_stays_short(path: Path) -> None:
    book = nbformat.read(path, as_version=4)
    nbformat.validate(book)
    assert 8 <= len(book.cells) < 40
    first = book.cells[0].source
    assert first.startswith("# ") and "At the end you will" in first
    assert all(not cell.outputs and cell.execution_count is None for cell in book.cells if cell.cell_type == "code")
    if path.stem == "guide_first_evening":
        assert sum(cell.cell_type == "code" for cell in book.cells) == 12


@pytest.mark.parametrize("path", EXERCISED, ids=lambda path: path.stem)
def test_a_lesson_works_and_its_exercises_are_solved_by_their_answers(path: Path) -> None:
    lesson = notebook_names(path)["lesson"]
    assert isinstance(lesson, Lesson)
    before = lesson.work()
    assert lesson.exercises
    for exercise in lesson.exercises:
        after = lesson.work(values={**lesson.values, **dict(exercise.answer)})
        with speaking("en"):
            assert not all(one.met for one in exercise.results(Attempt(before, before, lesson.units, prove)))
            results = exercise.results(Attempt(before, after, lesson.units, prove))
        assert [one.said for one in results if not one.met] == []


@pytest.mark.parametrize("path", GUIDES, ids=lambda path: path.stem)
def test_what_a_guide_links_to_is_there(path: Path) -> None:
    text = "".join("".join(cell["source"]) for cell in json.loads(path.read_text("utf-8"))["cells"])
    for link in re.findall(r"\]\(([^)#]+)", text):
        assert link.startswith("http") or (path.parent / link).exists(), link


def fenced(text: str, *languages: str) -> list[str]:
    """The blocks of code in one of the languages ("": none named)."""
    found: list[tuple[str, list[str]]] = []
    inside = False
    for line in text.splitlines():
        if line.startswith("```"):
            inside = not inside
            if inside:
                found.append((line.strip("`").strip(), []))
        elif inside:
            found[-1][1].append(line)
    return ["\n".join(lines) + "\n" for language, lines in found if language in languages]


@pytest.fixture(scope="module")
def readme(root: Path) -> str:
    return (root / "README.md").read_text(encoding="utf-8")


def test_the_readme_is_short_and_its_links_lead_somewhere(readme: str, root: Path) -> None:
    assert len(readme.splitlines()) <= 150
    for link in re.findall(r"\]\(([^)#]+)", readme):
        assert (root / link).exists(), link
    assert all(f"guide_{name}.ipynb" in readme for name in NAMES)


def test_the_readmes_python_runs_as_it_is_pasted(readme: str) -> None:
    names: dict[str, Any] = {}
    for block in fenced(readme, "python"):
        exec(block, names)
    lesson = names["lesson"]
    pattern = lesson.work()
    assert [record.title for record in pattern.sewing] == ["Join the shoulders"]
    assert not [str(one) for one in prove(pattern) if one.code in ("unclosed", "crossed")]
    assert lesson.body.name == "Mine"


def test_the_readmes_and_guides_commands_are_understood(readme: str) -> None:
    told = [readme]
    for path in GUIDES:
        told += ["".join(cell["source"]) for cell in json.loads(path.read_text("utf-8"))["cells"]]
    known = subcommands(parser())
    seen = set()
    for text in told:
        for block in fenced(text, "sh", ""):
            for line in block.splitlines():
                words = shlex.split(line, comments=True)
                if words[:1] == ["lessonkit"]:
                    parser().parse_args(words[1:])
                    seen.add(words[1])
        for command in re.findall(r"`lessonkit ([a-z-]+)", text):
            assert command in known, command
    assert {"check", "build", "new", "pages", "class-copy", "serve"} <= seen


@pytest.mark.skipif(shutil.which("make") is None, reason="no make here")
def test_lab_has_the_command_on_its_path(root: Path) -> None:
    """What JupyterLab hands on to its terminals and kernels."""
    done = subprocess.run(["make", "-n", "lab"], cwd=root, capture_output=True, text=True)
    (line,) = [line for line in done.stdout.splitlines() if "jupyter lab" in line]
    assert line.startswith(f'PATH="{root}/.venv/bin:$PATH" ')


@pytest.mark.slow
def test_the_readmes_tour_runs_in_a_shell(
    readme: str, root: Path, tmp_path: Path, capsys: Any, monkeypatch: Any
) -> None:
    tour = readme.partition("## A five-minute tour")[2].partition("## Where to go next")[0]
    (tmp_path / "example_notebooks").symlink_to(root / "example_notebooks")
    monkeypatch.chdir(tmp_path)
    for block in fenced(tour, "sh"):
        for line in block.splitlines():
            words = shlex.split(line, comments=True)
            if words[1] == "build":
                words += ["--forms", "html"]
            assert main(words[1:]) == 0, line
    assert (tmp_path / "out" / "mine" / "pages-a4.pdf").is_file() and (tmp_path / "my_blouse.ipynb").is_file()
