"""What a page has beside it to write its reader's own pattern pages: a folder that is loaded only when they are asked
for, with a whole standard library, the kit with what writes pages, and the compiled packages that were given."""

from __future__ import annotations

from collections.abc import Mapping
from importlib.util import find_spec
from pathlib import Path
from typing import Any

from kit.errors import KitError
from kit.page.alone import AloneError, answer_alone
from kit.page.bundle import COMPILED, zipped
from kit.page.core import Core
from kit.page.packages import Packages
from kit.page.packed import packed
from kit.resources import templates

BESIDE = "packages/"
"""The folder, inside the edition's."""
PAGES_LOCK = f"{BESIDE}lock.json"
OFFERED = ("a4", "letter", "a3", "tabloid")
"""Papers to choose from."""
_SCRIPTS = ("pages.js", "pages_worker.js")
_PATIENCE = 600.0  # seconds


def page_parts(given: Packages, taken: Core, kit: Mapping[str, bytes]) -> dict[str, bytes]:
    """The files by name: the packages `given`, the library of the core `taken` and the `kit` that writes pages, as
    source (it is compiled when it is loaded)."""
    return {
        **{name: (templates() / "page" / name).read_bytes() for name in _SCRIPTS},
        **{f"{BESIDE}{name}": given.bytes_of(name) for name in given.files},
        PAGES_LOCK: given.lock.encode("utf-8"),
        f"{BESIDE}python_stdlib.zip": taken.bytes_of("python_stdlib.zip"),
        f"{BESIDE}kit.zip.lzma": packed(zipped(dict(kit), stored=True)),
    }


def megabytes(parts: Mapping[str, bytes]) -> int:
    """What asking for pages loads, at least 1."""
    return max(1, round(sum(len(data) for name, data in parts.items() if name.startswith(BESIDE)) / 1e6))


def try_pages(kit: Mapping[str, bytes], lesson: Mapping[str, bytes], options: Mapping[str, Any]) -> dict[str, str]:
    """The page's kit writes pages in a Python that has no package but those that travel (numpy, Pillow and shapely are
    this Python's own, and nothing else of it). Returns the files' bytes as base64 by name. Raises `KitError`."""
    homes = [str(Path(spec.origin).parents[1]) for spec in map(find_spec, COMPILED) if spec and spec.origin]
    given = {"homes": homes, "compiled": COMPILED, "languages": options["languages"]}
    try:
        made = answer_alone(_TRIAL, kit, lesson, given, seconds=_PATIENCE)
    except AloneError as error:
        if error.late:
            raise KitError(
                f"the reader's own pages were not written within {_PATIENCE:g} seconds.",
                where="--packages",
                do="Build without --packages.",
            ) from None
        made = {"ok": False, "said": str(error)}
    if not made["ok"]:
        raise KitError(
            f"the reader's own pages cannot be written: {made['said']}",
            where="--packages",
            do="Correct that, or build without --packages.",
        )
    return {each["name"]: each["data"] for each in made["files"]}


_TRIAL = """
import json, os, sys
kit, told = sys.argv[1], json.loads(sys.argv[2])
class Locked:
    def find_spec(self, name, path=None, target=None):
        head = name.partition(".")[0]
        if head not in known and head not in sys.stdlib_module_names and not head.startswith("_sysconfigdata"):
            raise ModuleNotFoundError(f"no module named {name!r} in a page", name=name)
known = {*told["compiled"], *(name.partition(".")[0] for name in os.listdir(kit))}
sys.path[:0] = [kit]
sys.path += told["homes"]
sys.meta_path.insert(0, Locked())
from pathlib import Path
from kit.page.opened import without_notebook
without_notebook()
from kit.page.engine import Engine
engine = Engine(Path("lesson.ipynb"), offered=told["languages"])
print(engine.answer(json.dumps({"do": "pages", "language": told["languages"][0], "paper": "a4"})))
"""
