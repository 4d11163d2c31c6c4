"""Words that a code cell says, `lesson.words("...")`: after a build's run they stand as markdown behind their cell, so
that everything that reads a notebook's words reads them. And what says which markdown cells show braces on a page.
"""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from kit.booklet.live_values import first_words
from kit.errors import KitError
from kit.placeholder import Placeholder, split

if TYPE_CHECKING:
    from nbformat import NotebookNode

WORDS = "application/vnd.lessonkit.words"
"""The type of data under which a cell's words are handed over, as they are written."""
_PRIVATE = "notes-to-self"
_CODE = re.compile(r"(`+)[^`]*\1")


def with_told_words(book: NotebookNode) -> NotebookNode:
    """`book`, which has been run, with a markdown cell behind each code cell for what it said in words, tagged as the
    code cell is."""
    import nbformat  # here, as a kernel that says words reads the name of their type alone

    cells: list[NotebookNode] = []
    for cell in book.cells:
        cells.append(cell)
        for number, output in enumerate(cell.get("outputs", ()), 1):
            text = output.get("data", {}).get(WORDS)
            if text:
                said = nbformat.v4.new_markdown_cell(text, id=f"{cell.get('id', '')[:50]}-words-{number}")
                said.metadata.tags = list(cell.metadata.get("tags", []))
                cells.append(said)
    book.cells = cells
    return book


def raw_words(book: NotebookNode) -> tuple[str, ...]:
    """A note for each markdown cell of `book`, as it is written, whose live values stand in braces on the page."""
    found = []
    for cell in book.cells:
        if cell.cell_type == "markdown" and _PRIVATE not in cell.metadata.get("tags", []):
            try:
                parts = [part for part in split(_CODE.sub("", cell.source)) if isinstance(part, Placeholder)]
            except KitError:
                continue  # told when the booklet is set
            if parts:
                named = f"{{{parts[0].name}{':' if parts[0].format else ''}{parts[0].format}}}"
                found.append(
                    f"note: Words “{first_words(cell.source)}”: {named} is a number in the booklet, but on the "
                    "notebook's page it stands in its braces. In a code cell, "
                    'lesson.words("""...""") shows the number in both.'
                )
    return tuple(found)
