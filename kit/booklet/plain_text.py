"""A lesson kept as plain text: a Python file with `# %%` before each cell, or Markdown with code between fences.

Both are in common use for notebooks kept as text: the percent marks are read by several editors, fences are those of
CommonMark (https://spec.commonmark.org/0.31.2/#fenced-code-blocks). They are only read here; the text stays the source.
"""

from __future__ import annotations

import re
from pathlib import Path

import nbformat
from nbformat import NotebookNode

from kit.errors import KitError

SUFFIXES = (".py", ".md")
_CELL = re.compile(r"^# ?%%(?P<rest>.*)$")
_KIND = re.compile(r"\[(markdown|md|raw)\]")
_TAGS = re.compile(r"tags\s*=\s*\[(?P<tags>[^\]]*)\]")
_FENCE = re.compile(r"^(?P<fence>`{3,}|~{3,})\s*\{?\s*(?P<word>[\w.-]*)")
_CODE = ("python", "py", "python3", "ipython", "ipython3", "code-cell")


def cells_of_text(text: str, path: Path) -> NotebookNode:
    """The notebook that a text is, each cell with an id by its place. `KitError` where it holds no cell of code."""
    lines = _without_header(text.removeprefix("\ufeff").splitlines(), path.suffix)
    cells = _percent(lines) if path.suffix == ".py" else _fenced(lines)
    book = nbformat.v4.new_notebook()
    for number, (kind, source, tags) in enumerate(cells, start=1):
        make = nbformat.v4.new_markdown_cell if kind == "markdown" else nbformat.v4.new_code_cell
        cell = make(source, metadata={"tags": tags} if tags else {})
        cell["id"] = f"cell-{number}"
        book.cells.append(cell)
    if not any(cell.cell_type == "code" for cell in book.cells):
        mark = "# %% alone on a line before each cell" if path.suffix == ".py" else "```python before each cell of code"
        raise KitError(
            f"'{path}' holds no cells.", do=f"Write {mark}, or name the notebook itself; its name ends in .ipynb."
        )
    return book


def _without_header(lines: list[str], suffix: str) -> list[str]:
    """The lines without the header that tools write at the top, between two lines of three dashes."""
    dashes = "# ---" if suffix == ".py" else "---"
    if lines and lines[0].rstrip() == dashes:
        for at, line in enumerate(lines[1:], start=1):
            if line.rstrip() == dashes:
                return lines[at + 1 :]
    return lines


def _percent(lines: list[str]) -> list[tuple[str, str, list[str]]]:
    found: list[tuple[str, list[str], list[str]]] = []
    before: list[str] = []
    for line in lines:
        mark = _CELL.match(line)
        if mark:
            kind = _KIND.search(mark["rest"])
            tags = _TAGS.search(mark["rest"])
            named = re.findall(r"[\w-]+", tags["tags"]) if tags else []
            found.append(("markdown" if kind else "code", [], named))
        elif found:
            found[-1][1].append(line)
        else:
            before.append(line)
    if found and "\n".join(before).strip():  # without a single mark the file is no lesson
        found.insert(0, ("code", before, []))
    return [
        (kind, text, tags)
        for kind, inside, tags in found
        if (text := (_uncommented(inside) if kind == "markdown" else "\n".join(inside)).strip("\n"))
    ]


def _uncommented(lines: list[str]) -> str:
    text = "\n".join(lines).strip()
    for quotes in ('"""', "'''"):
        if text.startswith(quotes) and text.endswith(quotes) and len(text) > 5:
            return text[3:-3].strip("\n")
    return "\n".join(re.sub(r"^# ?", "", line) for line in lines)


def _fenced(lines: list[str]) -> list[tuple[str, str, list[str]]]:
    found: list[tuple[str, str, list[str]]] = []
    prose: list[str] = []
    code: list[str] | None = None
    closing = ""
    for line in lines:
        if code is None:
            fence = _FENCE.match(line)
            if fence and fence["word"].lower() in _CODE:
                _put(found, "markdown", prose)
                prose, code, closing = [], [], fence["fence"]
            else:
                prose.append(line)
        elif line.startswith(closing) and not line.strip(closing[0] + " "):
            _put(found, "code", code)
            code = None
        else:
            code.append(line)
    _put(found, "code" if code is not None else "markdown", code if code is not None else prose)
    return found


def _put(found: list[tuple[str, str, list[str]]], kind: str, lines: list[str]) -> None:
    text = "\n".join(lines).strip("\n")
    if text.strip():
        found.append((kind, text, []))
