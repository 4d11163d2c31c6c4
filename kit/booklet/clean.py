"""A notebook without what running it left: outputs, counts and the state of widgets. It is then as small as what was
written, and two people's copies differ only where they wrote otherwise."""

from __future__ import annotations

from pathlib import Path

import nbformat
from nbformat import NotebookNode

from kit.atomic import write_atomically
from kit.booklet.run_notebook import read_notebook
from kit.errors import KitError

_LEFT_BY_RUNNING = ("execution", "ExecuteTime", "scrolled", "collapsed")


def clean(path: Path) -> tuple[int, int]:
    """Take out what running left in the notebook; its size before and after, in bytes. Nothing is written where there
    is nothing to take out. `KitError` for what is no notebook."""
    if path.suffix != ".ipynb":
        raise KitError(f"'{path}' is no notebook.", do="Name the notebook itself; its name ends in .ipynb.")
    book = read_notebook(path)
    before = path.stat().st_size
    text = path.read_text(encoding="utf-8-sig")
    cleaned = nbformat.writes(without_outputs(book)) + "\n"
    if cleaned.strip() != text.strip():
        write_atomically(path, cleaned)
    return before, path.stat().st_size


def without_outputs(book: NotebookNode) -> NotebookNode:
    """The notebook itself, with what running left taken out."""
    for cell in book.cells:
        for word in _LEFT_BY_RUNNING:
            cell.metadata.pop(word, None)
        if cell.cell_type == "code":
            cell.outputs, cell.execution_count = [], None
    book.metadata.pop("widgets", None)
    return book
