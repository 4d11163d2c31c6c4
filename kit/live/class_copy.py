"""The class copy of a lesson: a small notebook for students, and the lesson it opens.

    tideline_wrap_top_class.ipynb            the panel, own body, the exercises and the button that prints
    tideline_wrap_top_class_lesson/          the lesson without answers, comments and notes-to-self; read only

Every cell of the notebook is locked: what students change are the widgets. Answers are in none of the files. The
goals of an exercise do not need them, for they compare with the lesson's own draft.
"""

from __future__ import annotations

import contextlib
import json
import os
import shutil
import stat
import tempfile
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import nbformat
from nbformat import NotebookNode

from kit.atomic import make_folder, write_atomically
from kit.booklet.run_notebook import read_notebook, run_and_ask
from kit.errors import KitError, near
from kit.language import catalogue_of, say, speaking
from kit.live.class_source import Source, class_source

Told = dict[str, Any]
"""What a lesson says of itself, as `kit.live.class_answers` tells it."""
MIMETYPE = "application/vnd.lessonkit.exercises+json"
LESSON = "lesson.ipynb"
_ASK = "import kit.live.class_answers\nkit.live.class_answers.tell(globals())"


@dataclass(frozen=True)
class ClassCopy:
    """What was made: the `notebook` for students, the `lesson` it opens, titles of its `exercises`, and the files where
    a size of the chart stands in the place of somebody's body (`bodies`)."""

    notebook: Path
    lesson: Path
    exercises: tuple[str, ...]
    bodies: tuple[str, ...] = ()


def make_class_copy(
    notebook: Path,
    out: Path | None = None,
    *,
    exercises: Sequence[str] | None = None,
    timeout: int = 120,
    progress: Callable[[str], None] = lambda line: None,
) -> ClassCopy:
    """Write the class copy of `notebook` to the file `out` (NAME_class.ipynb beside it when None) and the lesson it
    opens into a folder beside that. `exercises` are titles or short names; None: all of the lesson's.

    Nobody's body goes into the room: a size of the chart stands where a cell makes or loads one, and body files stay
    behind. Runs the notebook. Raises `KitError` for an unknown exercise, for a goal that names nothing drawn, for an
    answer that does not solve its exercise; nothing has changed then.
    """
    target = out or notebook.with_name(f"{notebook.stem}_class.ipynb")
    if target.suffix != ".ipynb":
        raise KitError(
            f"'{target.name}' is not the name of a notebook.",
            where="--out",
            do="Let it end in .ipynb, or leave it out.",
        )
    if target.resolve() == notebook.resolve():
        raise KitError("the class copy would take the place of the lesson.", where="--out", do="Choose another name.")
    folder = target.with_name(f"{target.stem}_lesson")
    _check_free(folder)  # before the lesson is run, which takes its time
    book = read_notebook(notebook)
    progress(f"Running {notebook.name} from the top and trying the answers")
    told = _told(book, notebook.resolve().parent, notebook.name, timeout)
    chosen = _chosen(told, exercises)
    wanted = None if exercises is None else [each["key"] for each in chosen]
    source = class_source(notebook, LESSON, wanted, public=True)
    progress("Trying the copy")
    _try(source, chosen, timeout)
    with _in_language(told["language"]):
        made = _notebook(told, chosen, folder.name)
    _write(source, folder)
    write_atomically(target, nbformat.writes(made) + "\n")
    bodies = tuple(dict.fromkeys(source.bodies))
    return ClassCopy(target, folder / LESSON, tuple(each["title"] for each in chosen), bodies)


def _in_language(code: str) -> contextlib.AbstractContextManager[None]:
    return speaking(code) if catalogue_of(code) else contextlib.nullcontext()


# ---- asking the lesson ------------------------------------------------------------------------------------


def _told(book: NotebookNode, folder: Path, name: str, timeout: int) -> Told:
    """What the lesson says of itself and its exercises: see `kit.live.class_answers`."""
    _, (answer,) = run_and_ask(book, folder, [_ASK], MIMETYPE, name=name, timeout=timeout)
    if not answer:
        raise KitError("the notebook ran, but said nothing of its exercises.", do="Run it from the top in JupyterLab.")
    told: Told = json.loads(answer)
    if "refused" in told:
        raise KitError(str(told["refused"]))
    return told


def _chosen(told: Told, exercises: Sequence[str] | None) -> list[Told]:
    there = {each["key"]: each for each in told["exercises"]}
    if exercises is None:
        return list(there.values())
    chosen = []
    for name in exercises:
        key = next((k for k, each in there.items() if name.strip().lower() in (k, each["title"].lower())), "")
        if not key:
            raise KitError(f"there is no exercise '{name}'.", where="--exercises", do=near(name, there))
        if there[key] not in chosen:
            chosen.append(there[key])
    return chosen


def _try(source: Source, chosen: Sequence[Told], timeout: int) -> None:
    """Run the stripped lesson as students will: it must still work, hold the exercises, and know no answer."""
    with tempfile.TemporaryDirectory(prefix="lessonkit-class-") as scratch:
        for name, data in source.files.items():
            write_atomically(Path(scratch) / name, data)
        copy = Path(scratch) / LESSON
        told = _told(read_notebook(copy), Path(scratch), LESSON, timeout)
    keys = [each["key"] for each in told["exercises"]]
    lost = [each["title"] for each in chosen if each["key"] not in keys]
    if lost:
        raise KitError(
            f"the exercise '{lost[0]}' is lost in the class copy.",
            do="Write it in a cell of its own, as lesson.exercise(...), without the tag 'answer'.",
        )
    known = [each["title"] for each in told["exercises"] if each["answered"]]
    if known:
        raise KitError(
            f"the answer to '{known[0]}' is still in the class copy.",
            do="Write answer={...} right in lesson.exercise(...).",
        )


# ---- the notebook -----------------------------------------------------------------------------------------


def _notebook(told: Told, chosen: Sequence[Told], folder: str) -> NotebookNode:
    path = f"{folder}/{LESSON}"
    cells = [
        _words(f"# {say('class_copy.title', title=told['title'])}\n\n{say('class_copy.welcome')}"),
        _code(
            f"from kit import body_form, class_lesson, exercise, panel, print_mine\n\nlesson = class_lesson({path!r})"
        ),
        _words(f"## {say('class_copy.values')}"),
        _code("panel(lesson)"),
    ]
    if chosen:
        cells.append(_words(f"## {say('class_copy.exercises')}"))
        cells += [_code(f"exercise(lesson, {each['key']!r})") for each in chosen]
    if told["measures"]:
        cells += [_words(f"## {say('class_copy.body')}"), _code("body_form(lesson)")]
    cells += [_words(f"## {say('class_copy.print')}"), _code("print_mine(lesson)")]
    spec = {"kernelspec": {"display_name": "Python 3 (ipykernel)", "language": "python", "name": "python3"}}
    about = {"lessonkit": {"class_copy": path, "title": told["title"]}}
    book = nbformat.v4.new_notebook(cells=cells, metadata={**spec, **about})
    for number, cell in enumerate(book.cells, 1):
        cell.id = f"class-{number}"
    return book


def _words(text: str) -> NotebookNode:
    return nbformat.v4.new_markdown_cell(text, metadata={"editable": False, "deletable": False})


def _code(text: str) -> NotebookNode:
    hidden = {"jupyter": {"source_hidden": True}}
    return nbformat.v4.new_code_cell(text, metadata={"editable": False, "deletable": False, **hidden})


# ---- the lesson beside it ---------------------------------------------------------------------------------


def _check_free(folder: Path) -> None:
    if folder.exists() and not (folder / LESSON).is_file():
        raise KitError(
            "there is a folder of that name that is no class copy.",
            where=str(folder),
            do="It is left as it was. Choose another name with --out.",
        )


def _write(source: Source, folder: Path) -> None:
    """Put the lesson's files into `folder`, read only, in the place of an earlier class copy's. A folder that holds
    something else is refused."""
    make_folder(folder.parent)
    _check_free(folder)
    try:
        made = Path(tempfile.mkdtemp(prefix=f".{folder.name}-", dir=folder.parent))
    except OSError as error:
        raise KitError(f"nothing can be written there ({error.strerror}).", where=str(folder.parent)) from None
    try:
        made.chmod(0o755)
        for name, data in source.files.items():
            written = write_atomically(made / name, data)
            written.chmod(stat.S_IRUSR | stat.S_IRGRP | stat.S_IROTH)
        before = made.with_name(f"{made.name}-before")
        if folder.exists():
            os.rename(folder, before)
        os.rename(made, folder)
        shutil.rmtree(before, ignore_errors=True)
    except OSError as error:
        raise KitError(f"the lesson cannot be put there ({error.strerror}).", where=str(folder)) from None
    finally:
        shutil.rmtree(made, ignore_errors=True)
