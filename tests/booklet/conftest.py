"""A small lesson of the tests' own: the starter notebook, with words and pictures added to it."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial
from pathlib import Path

import nbformat
import pytest
from nbformat import NotebookNode

from kit.booklet.compose import compose
from kit.booklet.fetch import LessonFolder
from kit.booklet.forms import FORMS, SCREEN
from kit.booklet.html import to_html
from kit.booklet.run_notebook import read_notebook, run_notebook
from kit.booklet.starter import start
from kit.booklet.theme_file import read_theme
from kit.booklet.typesetter import load_typesetter
from kit.language import speaking
from kit.proof import prove

load_typesetter()  # before a file of tests imports it

# A 2 x 2 PNG, grey.
PNG = bytes.fromhex(
    "89504e470d0a1a0a0000000d4948445200000002000000020800000000"
    "57dd52f80000000e49444154789c63686868686800000605020133c2f1ad0000000049454e44ae426082"
)


def markdown(source: str, *tags: str) -> NotebookNode:
    """A markdown cell with tags."""
    return nbformat.v4.new_markdown_cell(source, metadata={"tags": list(tags)} if tags else {})


def code(source: str) -> NotebookNode:
    """A code cell."""
    return nbformat.v4.new_code_cell(source)


Writer = Callable[..., Path]


def lesson_at(
    folder: Path,
    before: dict[str, list[NotebookNode]] | None = None,
    change: Callable[[NotebookNode], None] | None = None,
) -> Path:
    """A lesson notebook in a new folder `lesson` of `folder`; `before` maps a starter cell id to cells put
    before it ("end": after the last), `change` edits the notebook."""
    home = folder / "lesson"
    home.mkdir()
    path = start("Pebble top", home)
    book = nbformat.read(path, as_version=4)
    cells = []
    for cell in book.cells:
        if cell.id in ("panel", "try-on", "exercise-words", "exercise"):
            continue
        cells += [*(before or {}).get(cell.id, []), cell]
    book.cells = [*cells, *(before or {}).get("end", [])]
    for cell in book.cells:
        cell.source = cell.source.replace(", mm, panel", ", mm")
    if change:
        change(book)
    nbformat.write(book, path)
    return path


@pytest.fixture
def write_lesson(tmp_path: Path) -> Writer:
    """`lesson_at` in the test's own folder."""
    return partial(lesson_at, tmp_path)


def pages_html(path: Path, *keys: str, code: str = "en") -> list[str]:
    """The booklet of the lesson notebook at `path` in size W4, as HTML in the forms `keys` ("screen": the screen page,
    before its script is put in)."""
    ran = run_notebook(read_notebook(path), path.parent, name=path.name, size="W4", units="cm")
    lesson = LessonFolder(path.parent)
    look = read_theme(lesson)
    with speaking(code):
        findings = prove(ran.handover.pattern)
        forms = [SCREEN if key == SCREEN.key else FORMS[key] for key in keys]
        books = [compose(ran.handover, ran.notebook, lesson, findings, form, look) for form in forms]
        return [to_html(book, form, look) for book, form in zip(books, forms, strict=True)]


def screen_html(path: Path) -> str:
    """The screen page of the lesson notebook at `path`, before its script is put in, in size W4."""
    return pages_html(path, SCREEN.key)[0]
