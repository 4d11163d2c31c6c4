"""What is asked of a roster, as values that travel to other processes and machines."""

from __future__ import annotations

import hashlib
import json
from dataclasses import asdict, dataclass, field, replace
from functools import lru_cache
from pathlib import Path
from typing import Any

from kit.booklet.bodies import People, PersonRow
from kit.booklet.forms import form_named
from kit.errors import KitError
from kit.paper.request import read_papers
from kit.resources import templates
from kit.units import System

NO_BOOKLET = "none"
SUMMARY = "summary.csv"
"""The table of what was made, in the folder of the sets."""


@dataclass(frozen=True)
class Order:
    """A `notebook` and what each set is to hold: the `booklet` in a print form ("none": no booklet), pages for
    `papers`, in `units` (None: as saved beside the notebook) and `language` ("": that of the lesson's own words).
    `timeout` is seconds for a cell, and for a set."""

    notebook: Path
    booklet: str = "a4"
    papers: tuple[str, ...] = ("a4",)
    units: System | None = None
    language: str = ""
    timeout: int = 120

    def text(self) -> str:
        """As JSON."""
        return json.dumps({**asdict(self), "notebook": str(self.notebook)})

    @staticmethod
    def read(text: str) -> Order:
        """What `text` wrote."""
        data = json.loads(text)
        return Order(**{**data, "notebook": Path(data["notebook"]), "papers": tuple(data["papers"])})

    def checked(self) -> Order:
        """This order, its notebook found from anywhere. `KitError` for a form or a paper there is not."""
        if self.booklet != NO_BOOKLET:
            form_named(self.booklet)
        read_papers(self.papers)
        return replace(self, notebook=self.notebook.resolve())


@dataclass(frozen=True)
class Task:
    """One set to make: the `number` of the row in the table, counted from 1, its `line`, what it is called where it
    is refused (`label`), the `folder` it goes to, the body's `values` in mm, and a `digest` of what makes it so."""

    number: int
    line: int
    label: str
    folder: str
    values: tuple[tuple[str, float], ...]
    digest: str = ""
    trouble: str = ""


@dataclass(frozen=True)
class MadeSet:
    """A set: its `files` by name, and what is `told` of it for table and index (JSON)."""

    files: dict[str, bytes] = field(default_factory=dict)
    told: dict[str, Any] = field(default_factory=dict)


def tasks(people: People, order: Order, table: Path, *, named: bool, label: str, out: Path) -> list[Task]:
    """The sets to make for the rows of a table, in folders of `out`. `named`: the folders are called by the people too;
    nothing else ever is. `label` holds {number}. `KitError` when the lesson's folder cannot be read."""
    ground = _ground(order, table, out)
    wide = len(str(len(people.rows)))
    return [_task(row, number, ground, wide, named, label) for number, row in enumerate(people.rows, 1)]


def _task(row: PersonRow, number: int, ground: str, wide: int, named: bool, label: str) -> Task:
    called = f"{number:0{max(wide, 2)}}"
    slug = "".join(sign if sign.isalnum() else "-" for sign in row.name.lower()).strip("-")[:60] if named else ""
    said = label.format(number=number)
    values = (*row.values, *row.more)
    content = json.dumps([ground, said, values], sort_keys=True)
    digest = hashlib.sha256(content.encode()).hexdigest()
    return Task(number, row.line, said, f"{called}-{slug}" if slug else called, values, digest, row.trouble)


# ---- by content -----------------------------------------------------------------------------------------------


def _ground(order: Order, table: Path, out: Path) -> str:
    """A digest of all that every set is made from: what is ordered, the files of the lesson's folder (but for the table
    and what builds and rosters keep there), and the kit itself."""
    folder = order.notebook.parent
    asked = json.dumps([order.notebook.name, order.booklet, order.papers, order.units, order.language])
    found = hashlib.sha256(asked.encode())
    try:
        files = [path for path in sorted(folder.rglob("*")) if _read_by_lessons(path, folder, out)]
        code = "\n".join(path.read_text("utf-8", "replace") for path in files if path.suffix in _NAMING)
        for path in files:
            inside = path.relative_to(folder)
            if path.resolve() == table.resolve() or (path.suffix in _DATA and not _named(inside, code)):
                continue
            found.update(f"{inside}\0".encode())
            found.update(hashlib.sha256(path.read_bytes()).digest())
    except OSError as error:
        raise KitError(f"the lesson's folder cannot be read ({error.strerror}).", where=str(folder)) from None
    found.update(_kit().encode())
    return found.hexdigest()


def _read_by_lessons(path: Path, folder: Path, out: Path) -> bool:
    """Whether a file below `folder` is of a kind lessons read, and is none that a roster made."""
    if any(part.startswith((".", "__")) for part in path.relative_to(folder).parts) or path.suffix not in _READ:
        return False
    home, made = path.resolve(), out.resolve()
    if made in home.parents and (not folder.resolve().is_relative_to(made) or home == made / SUMMARY):
        return False
    return (
        path.is_file()
        and path.name != _SET
        and not path.name.endswith(".lays.json")
        and not (path.parent / _SET).is_file()
    )


def _named(inside: Path, code: str) -> bool:
    """Whether a file of data can be one the lesson reads: its sidecar, or one whose name without the ending, or whose
    folder, the `code` names. Any other is a list or a table that lies there too."""
    if inside.name.endswith(".values.json"):
        return True
    parts = (inside.stem, *inside.parts[:-1])
    return any(part in code or json.dumps(part)[1:-1] in code for part in parts)  # in JSON é may be \u00e9


_SET = "set.json"
_READ = {".ipynb", ".json", ".toml", ".csv", ".svg", ".png", ".jpg", ".jpeg", ".gif", ".webp", ".dxf", ".py", ".po"}
_READ |= {".ttf", ".otf", ".woff2"}
_DATA = {".csv", ".json"}
_NAMING = {".ipynb", ".py", ".toml"}


@lru_cache(maxsize=1)
def _kit() -> str:
    found = hashlib.sha256()
    package = Path(__file__).resolve().parents[1]
    for path in sorted([*package.rglob("*.py"), *(p for p in templates().rglob("*") if p.is_file())]):
        found.update(path.read_bytes())
    return found.hexdigest()
