"""What of a lesson goes into a class copy: its cells without answers, comments, notes-to-self and outputs, and the
files they use.

Code cells are written anew from their syntax tree, so that no comment is left; each exercise's answer is taken out of
its call. Cells tagged `answer` or `notes-to-self` do not come along.
"""

from __future__ import annotations

import ast
import re
import tomllib
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field
from pathlib import Path, PurePosixPath
from typing import Any
from urllib.parse import unquote

import nbformat
from nbformat import NotebookNode

from kit.booklet.bodies_out import bodies_out
from kit.booklet.run_notebook import place, read_notebook
from kit.errors import KitError
from kit.lesson.exercise import short_name

LEFT_OUT = ("answer", "notes-to-self")
_UNITS = {"mm", "cm", "inch"}
_LINKED = re.compile(r"\]\(\s*<?([^)>\s]+)|\bsrc\s*=\s*[\"']([^\"']+)")
_MOST = 40_000_000  # bytes of one file


@dataclass(frozen=True)
class Source:
    """A lesson made ready for a class copy: files by their path beside it, the notebook itself first, and what each
    exercise's `answers` were written as, to be looked for afterwards; `bodies`: where one was left behind."""

    files: dict[str, bytes] = field(default_factory=dict)
    answers: list[str] = field(default_factory=list)
    bodies: list[str] = field(default_factory=list)


def class_source(notebook: Path, name: str, exercises: Sequence[str] | None = None, *, public: bool = False) -> Source:
    """`notebook` stripped, as the file `name`, with the pictures and other files of its folder that it names, and
    other lessons it opens, stripped as well. `exercises` are the short names of those that come along, None: all.
    `public`: a size of the chart stands in the place of every body, and no body file comes along.

    Raises `KitError` for a cell that cannot be read, and for an answer that is not written out in its exercise.
    """
    made = Source()
    folder = notebook.resolve().parent
    waiting = [(notebook.resolve(), name)]
    while waiting:
        path, called = waiting.pop(0)
        book = read_notebook(path)
        wanted = exercises if called == name else None
        stripped = _stripped(book, made, wanted)
        if public:
            made.bodies.extend([path.name] * _without_bodies(stripped))
        made.files[called] = (nbformat.writes(stripped) + "\n").encode("utf-8")
        for used in dict.fromkeys(_named(stripped)):
            found = _inside(folder, used)
            if found is None or used in made.files:
                continue
            if found.suffix == ".ipynb":
                if found != notebook.resolve() and used not in [other for _, other in waiting]:
                    waiting.append((found, used))
            elif public and _is_body(found):
                made.bodies.append(used)
            elif found.stat().st_size <= _MOST:
                made.files[used] = found.read_bytes()
    return made


# ---- cells ------------------------------------------------------------------------------------------------


def _stripped(book: NotebookNode, made: Source, exercises: Sequence[str] | None) -> NotebookNode:
    cells = []
    for index, cell in enumerate(book.cells):
        tags = list(cell.metadata.get("tags", []))
        if any(tag in LEFT_OUT for tag in tags) or cell.cell_type == "raw":
            continue
        kept = nbformat.v4.new_markdown_cell(cell.source)
        if cell.cell_type == "code":
            source, has_exercise = _code(cell.source, place(book, index), made, exercises)
            kept = nbformat.v4.new_code_cell(source)
            if has_exercise:
                tags = [tag for tag in tags if tag != "exercise"]
        elif "attachments" in cell:
            kept.attachments = cell.attachments
        kept.id = cell.get("id", kept.id)
        kept.metadata = {"editable": False, "deletable": False, **({"tags": tags} if tags else {})}
        cells.append(kept)
    spec = {"kernelspec": {"display_name": "Python 3 (ipykernel)", "language": "python", "name": "python3"}}
    return nbformat.v4.new_notebook(cells=cells, metadata=spec)


def _code(source: str, where: str, made: Source, exercises: Sequence[str] | None) -> tuple[str, bool]:
    """The code without comments and answers, and whether it holds an exercise."""
    from IPython.core.inputtransformer2 import TransformerManager

    try:
        tree = ast.parse(TransformerManager().transform_cell(source))
    except SyntaxError as error:
        raise KitError(f"its code cannot be read ({error.msg}).", where=where, do="Correct that cell.") from None
    calls = [node for node in ast.walk(tree) if _is_exercise(node)]
    for call in calls:
        assert isinstance(call, ast.Call)
        for keyword in call.keywords:
            if keyword.arg == "answer" and not _empty(keyword.value):
                made.answers.append(_written_out(keyword.value, where))
        call.keywords = [keyword for keyword in call.keywords if keyword.arg != "answer"]
    if exercises is not None:
        tree.body = [line for line in tree.body if not _unwanted(line, exercises)]
    return ast.unparse(tree), bool(calls)


def _without_bodies(book: NotebookNode) -> int:
    code = [cell for cell in book.cells if cell.cell_type == "code"]
    sources, count = bodies_out([cell.source for cell in code])
    for cell, source in zip(code, sources, strict=True):
        cell.source = source
    return count


def _is_exercise(node: ast.AST) -> bool:
    return isinstance(node, ast.Call) and isinstance(node.func, ast.Attribute) and node.func.attr == "exercise"


def _empty(value: ast.expr) -> bool:
    return isinstance(value, ast.Constant) and value.value is None


def _written_out(value: ast.expr, where: str) -> str:
    """The answer as written. Refused when part of it stands elsewhere, since that part would come along."""
    names = {node.id for node in ast.walk(value) if isinstance(node, ast.Name)}
    strange = sorted(names - _UNITS)
    if strange or any(isinstance(node, ast.Call | ast.Attribute) for node in ast.walk(value)):
        raise KitError(
            f"the answer uses '{strange[0] if strange else ast.unparse(value)}', which is worked out elsewhere and "
            "would be left in the class copy.",
            where=where,
            do='Write the answer out where it stands: answer={"underarm_drop": 11 * cm}.',
        )
    return ast.unparse(value)


def _unwanted(line: ast.stmt, exercises: Sequence[str]) -> bool:
    """Whether a statement is an exercise that is not among those chosen."""
    value = line.value if isinstance(line, ast.Expr | ast.Assign) else None
    if value is None or not _is_exercise(value):
        return False
    assert isinstance(value, ast.Call)
    given = value.args[0] if value.args else next((k.value for k in value.keywords if k.arg == "title"), None)
    if not (isinstance(given, ast.Constant) and isinstance(given.value, str)):
        return False
    return short_name(given.value) not in exercises


# ---- files ------------------------------------------------------------------------------------------------


def _named(book: NotebookNode) -> Iterator[str]:
    """Every text in a notebook that might be the name of a file beside it."""
    for cell in book.cells:
        if cell.cell_type == "code":
            for node in ast.walk(ast.parse(cell.source)):
                if isinstance(node, ast.Constant) and isinstance(node.value, str) and len(node.value) < 200:
                    yield node.value
        else:
            for found in _LINKED.finditer(cell.source):
                yield unquote(found[1] or found[2])


def _is_body(path: Path) -> bool:
    """Whether the file holds somebody's measurements, as `save_body` writes them."""
    if path.suffix != ".toml":
        return False
    try:
        return bool({"measured", "own"} & tomllib.loads(path.read_text("utf-8")).keys())
    except (OSError, ValueError):
        return True  # a broken one may still be read by a person


def _inside(folder: Path, name: str) -> Path | None:
    """The file of that name inside `folder`, links followed to their end; None when there is none. Saved values stay
    behind: they may hold what somebody tried."""
    parts: Any = PurePosixPath(name)
    if not name.strip() or "\n" in name or "\0" in name or parts.is_absolute() or ".." in parts.parts:
        return None
    if name.endswith(".values.json") or parts.name.startswith("."):
        return None
    try:
        path = (folder / name).resolve()
        return path if path.is_relative_to(folder) and path.is_file() else None
    except (OSError, ValueError, RuntimeError):
        return None
