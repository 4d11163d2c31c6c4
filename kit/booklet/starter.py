"""Starting a lesson: a small notebook that runs, to be changed into one's own."""

from __future__ import annotations

import json
import re
from pathlib import Path

import nbformat

from kit.atomic import write_atomically
from kit.errors import KitError
from kit.resources import templates


def start(name: str, folder: Path) -> Path:
    """Write a starter notebook for a lesson called `name` into `folder`; the new file's path. Raises
    `KitError` for a name that gives no file name, and when the file is already there."""
    title = re.sub(r"\.ipynb\Z", "", " ".join(name.split()))
    if "/" in title or "\\" in title:
        raise KitError(f"'{name}' names a folder.", do="Go to that folder first, then give only the lesson's name.")
    stem = re.sub(r"\W+", "_", title.lower()).strip("_")
    if not stem:
        raise KitError(f"'{name}' gives no file name.", do='Use letters, for example: lessonkit new "Dune skirt".')
    path = folder / f"{stem}.ipynb"
    if path.exists():
        raise KitError(f"there is already a notebook '{path.name}'.", do="It was left alone. Choose another name.")
    source = (templates() / "starter" / "lesson.ipynb").read_text(encoding="utf-8")
    book = nbformat.reads(source, as_version=4)
    title = title.replace("_", " ") if title.islower() or "_" in title else title
    title = title[:1].upper() + title[1:]
    for cell in book.cells:
        quoted = json.dumps(title, ensure_ascii=False)
        if cell.cell_type == "code":
            cell.source = cell.source.replace('"LESSON TITLE"', quoted)
        else:
            cell.source = cell.source.replace("LESSON TITLE", title)
    return write_atomically(path, nbformat.writes(book) + "\n")
