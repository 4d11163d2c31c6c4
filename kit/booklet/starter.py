"""Starting a lesson: a small notebook that runs, to be changed into one's own."""

from __future__ import annotations

import json
import re
from pathlib import Path

import nbformat

from kit.atomic import write_atomically
from kit.booklet.run_notebook import read_notebook
from kit.errors import KitError
from kit.resources import examples, templates

FROM = {
    "block": "lesson.ipynb",
    "traced": "traced.ipynb",
    "blank": "blank.ipynb",
    "skirt": "skirt.ipynb",
    "trousers": "trousers.ipynb",
    "sleeve": "sleeve.ipynb",
    "darted": "darted.ipynb",
}
"""What a lesson may start from, and the notebook it is written from."""
OF_BLOCK = {
    "bodice_block": "block",
    "darted_bodice_block": "darted",
    "skirt_block": "skirt",
    "trouser_block": "trousers",
    "with_sleeve": "sleeve",
    "read_traced": "traced",
    "blank_paper": "blank",
}
"""What a cell calls a block (or paper) that lessons start from, and the key of `FROM` that begins with it; with or
without "_block", with spaces or underscores, it may be asked for by that name too."""
_DRAWING = "my_top.svg"


def start(name: str, folder: Path, origin: str = "block") -> Path:
    """Write a starter notebook for a lesson called `name` into `folder`; the new file's path. `origin` is a key of
    `FROM` (for "traced" a drawing is put beside it), or the notebook of another lesson. Raises `KitError` for a name
    that gives no file name, when the file is already there, and for an origin that is none."""
    origin = _meant(origin)
    title = re.sub(r"\.ipynb\Z", "", " ".join(name.split()))
    if "/" in title or "\\" in title:
        raise KitError(f"'{name}' names a folder.", do="Go to that folder first, then give only the lesson's name.")
    stem = re.sub(r"\W+", "_", title.lower()).strip("_")
    if not stem:
        raise KitError(f"'{name}' gives no file name.", do='Use letters, for example: lessonkit new "Dune skirt".')
    path = folder / f"{stem}.ipynb"
    if path.exists():
        raise KitError(f"there is already a notebook '{path.name}'.", do="It was left alone. Choose another name.")
    title = title.replace("_", " ") if title.islower() or "_" in title else title
    words = {"LESSON TITLE": title[:1].upper() + title[1:]}
    file = FROM.get(origin, "another.ipynb")
    if origin == "traced":
        words["DRAWING.svg"] = _put_drawing(folder, stem).name
    elif origin not in FROM:
        words |= _of_another(origin, folder)
    book = nbformat.reads((templates() / "starter" / file).read_text(encoding="utf-8"), as_version=4)
    for cell in book.cells:
        for word, text in words.items():
            if cell.cell_type == "code":
                cell.source = cell.source.replace(f'"{word}"', json.dumps(text, ensure_ascii=False))
            else:
                cell.source = cell.source.replace(word, text)
    return write_atomically(path, nbformat.writes(book) + "\n")


def _meant(origin: str) -> str:
    """The key of `FROM` that a block's name stands for; anything else as it is."""
    said = re.sub(r"[\s-]+", "_", origin.strip().lower())
    names = {short: key for block, key in OF_BLOCK.items() for short in (block, block.removesuffix("_block"))}
    return said if said in FROM else names.get(said, origin)


def _put_drawing(folder: Path, stem: str) -> Path:
    """The drawing that stands in for the author's own, beside the notebook; one that is there already is left alone."""
    path = folder / f"{stem}.svg"
    if not path.exists():
        write_atomically(path, (templates() / "starter" / _DRAWING).read_text(encoding="utf-8"))
    return path


def _of_another(origin: str, folder: Path) -> dict[str, str]:
    """What is filled in of the lesson that this one is a variation of."""
    if not origin.endswith(".ipynb"):
        do = f"Write --from {', --from '.join(FROM)}, or name a notebook, such as --from tideline_wrap_top.ipynb."
        raise KitError(f"there is nothing called '{origin}' to start from.", do=do)
    there = folder / origin
    if not there.is_file():
        raise KitError(f"there is no notebook '{origin}'.", where=str(folder), do="Check the name and the folder.")
    steps = [
        f"`{name}`"
        for cell in read_notebook(there).cells
        if cell.cell_type == "code"
        for name in _STEP.findall(cell.source)
    ]
    return {"OTHER LESSON": origin, "STEPS": ", ".join(steps) or "none of its own"}


_STEP = re.compile(r"^@\w+\.(?:step|sew)\(.*?\)\s*\ndef (\w+)\(", re.MULTILINE | re.DOTALL)


def copy_examples(folder: Path) -> tuple[list[Path], list[Path]]:
    """Copy the example lessons with what lies beside them into `folder`; the files made, and those left as they are
    because they are there already. `KitError` when `folder` is a file."""
    if folder.is_file():
        raise KitError(f"'{folder}' is a file.", do="Name a folder, or leave it out.")
    made: list[Path] = []
    kept: list[Path] = []
    for source in sorted(path for path in examples().rglob("*") if path.is_file()):
        if any(part.startswith((".", "__")) for part in source.relative_to(examples()).parts):
            continue
        if source.suffix not in (".ipynb", ".po", ".png", ".jpg", ".svg", ".toml"):
            continue
        target = folder / source.relative_to(examples())
        (kept if target.exists() else made).append(target)
        if not target.exists():
            target.parent.mkdir(parents=True, exist_ok=True)
            write_atomically(target, source.read_bytes())
    return made, kept
