"""A lesson from another notebook, so that a variation of it can have a notebook of its own.

The other notebook's code cells are run from top to bottom in a namespace of their own, as its author would run them;
nothing of it is shown. Its steps count as written by the cell that opens it.
"""

from __future__ import annotations

import ast
import json
import os
from collections.abc import Iterator, Mapping
from contextlib import contextmanager, nullcontext
from pathlib import Path
from typing import Any

from kit.errors import KitError
from kit.lesson.lesson import Lesson
from kit.lesson.where import acting, here


def open_lesson(path: str | os.PathLike[str]) -> Any:
    """The lesson of the notebook at `path` (as seen from this notebook's folder), to read or to vary:
    `jacket = open_lesson("top.ipynb").variation("Harbour jacket")`.

    Runs that notebook's code. Raises `KitError` when the file is missing or broken, when a cell fails, when it has no
    lesson or several, and when two notebooks open each other.

    >>> open_lesson("example_notebooks/ferry_tote.ipynb").variation("Beach tote")
    <Lesson 'Beach tote': 10 steps>
    """
    opened = here().opening
    file = ((opened[-1].parent if opened else Path()) / path).resolve()
    if file in opened:
        raise KitError(
            f"'{file.name}' opens itself, by way of {' and '.join(p.name for p in opened)}.",
            do="Let one notebook start from the other, not both.",
        )
    own = here().file
    if own is not None and own.resolve() == file:
        raise KitError(f"'{file.name}' is this notebook itself.", do="Write lesson.variation(...) here.")
    namespace: dict[str, Any] = {"__name__": "__lesson__"}
    with _running(file):
        for number, source in enumerate(_cells(file), 1):
            try:
                exec(compile(source, f"{file.name}, code cell {number}", "exec"), namespace)
            except KitError as error:
                raise error.at(f"'{file.name}', code cell {number}") from None
            except Exception as error:
                raise KitError(
                    f"code cell {number} stops with {type(error).__name__}: {error}.",
                    where=f"'{file.name}'",
                    do="Open that notebook and run it from the top.",
                ) from error
    try:
        return find_lesson(namespace)
    except KitError as error:
        raise error.at(f"'{file.name}'") from None


@contextmanager
def _running(file: Path) -> Iterator[None]:
    """Marks that cells of another notebook run, in its own folder's name, their displays thrown away."""
    quiet: Any = nullcontext()
    if here().notebook:
        from IPython.utils.capture import capture_output

        quiet = capture_output()
    with acting(opening=(*here().opening, file)), quiet:
        yield


def _cells(file: Path) -> list[str]:
    """The sources of a notebook's code cells, magics put into plain Python."""
    try:
        book = json.loads(file.read_text(encoding="utf-8"))
        cells = [
            "".join(cell["source"])
            for cell in book["cells"]
            if cell["cell_type"] == "code" and "exercise" not in cell.get("metadata", {}).get("tags", ())
        ]
    except FileNotFoundError:
        near = sorted(found.name for found in file.parent.glob("*.ipynb"))
        raise KitError(
            f"there is no notebook '{file.name}'.",
            where=str(file.parent),
            do=f"There are: {', '.join(near)}." if near else "Put it beside this one.",
        ) from None
    except (OSError, UnicodeDecodeError) as error:
        raise KitError(f"'{file.name}' cannot be read ({error}).", do="Check the file.") from None
    except (ValueError, KeyError, TypeError):
        raise KitError(
            f"'{file.name}' is broken: it is not a notebook.", do="Open it in JupyterLab and save it again."
        ) from None
    return [plain_python(source) for source in cells]


def plain_python(source: str) -> str:
    """A cell's code as plain Python: as it stands, or, where it holds a notebook's own commands, written anew."""
    try:
        ast.parse(source)
    except SyntaxError:
        try:
            from IPython.core.inputtransformer2 import TransformerManager
        except ModuleNotFoundError:
            return source
        return str(TransformerManager().transform_cell(source))
    return source


def find_lessons(namespace: Mapping[str, Any]) -> list[tuple[str, Any]]:
    """The lessons among a notebook's names that no other is derived from, each with its name. Raises `KitError` when
    there is none."""
    found: dict[int, tuple[str, Any]] = {}
    for name, thing in namespace.items():
        if isinstance(thing, Lesson) and not name.startswith("_"):
            found.setdefault(id(thing), (name, thing))
    if not found:
        raise KitError(
            "this notebook has no lesson.",
            do='Begin one with lesson = Lesson("Name of it", start=bodice_block), or run `lessonkit new NAME`.',
        )
    parents = {id(lesson.parent) for _, lesson in found.values()}
    return [(name, lesson) for key, (name, lesson) in found.items() if key not in parents]


def find_lesson(namespace: Mapping[str, Any]) -> Any:
    """The one lesson among a notebook's names. A variation counts as the lesson when its parent is there
    too. Raises `KitError` when there is none, or more than one that nobody else is derived from."""
    last = find_lessons(namespace)
    if len(last) != 1:
        names = ", ".join(f"{name} ({lesson.info.title})" for name, lesson in last)
        raise KitError(
            f"this notebook has {len(last)} lessons: {names}.", do="Keep one lesson in a notebook; move the others out."
        )
    return last[0][1]
