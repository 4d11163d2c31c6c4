"""The compiled packages with which a page lays and writes its reader's own pages.

They are not of the kit. A folder of Pyodide's own distribution is given, with its list `pyodide-lock.json`; every file
is compared with the hash that stands there, and the list must be that of the core (kit/page/core.py). What is taken are
the packages named here and those they stand on. What is in plain Python (reportlab) comes from the Python that builds.
"""

from __future__ import annotations

import hashlib
import json
import re
from collections.abc import Mapping
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from kit.errors import KitError
from kit.page.core import LOCK, VERSION

NEEDED = ("numpy", "pillow", "shapely")
"""Compiled packages, by their names in the list."""
LIST = "pyodide-lock.json"
_NAME = re.compile(r"[\w.+-]+")
_HOW = (
    f"Load pyodide-{VERSION}.tar.bz2 from https://github.com/pyodide/pyodide/releases, unpack it and name its folder "
    "with --packages. Without --packages a page sends its reader's body file to whoever prints."
)


@dataclass(frozen=True)
class Packages:
    """The packages that travel: their `files` in `folder`, and the part of the list that names them (`lock`, JSON as
    the browser's Python takes it)."""

    folder: Path
    files: tuple[str, ...]
    lock: str

    def bytes_of(self, name: str) -> bytes:
        return (self.folder / name).read_bytes()


def packages(folder: Path) -> Packages:
    """The packages that pages need, from `folder`. Raises `KitError` that says what is missing there and how to get
    it."""
    if not folder.is_dir():
        raise KitError(f"there is no folder '{folder}'.", where="--packages", do=_HOW)
    listed = _read(folder / LIST)
    known = {name.lower().replace("_", "-"): entry for name, entry in listed["packages"].items()}
    taken: dict[str, Mapping[str, Any]] = {}
    waiting, unknown = list(NEEDED), []
    while waiting:
        name = waiting.pop(0).lower().replace("_", "-")
        if name in taken or name in unknown:
            continue
        entry = known.get(name)
        if not isinstance(entry, dict) or not _is_sound(entry):
            unknown.append(name)
            continue
        taken[name] = entry
        waiting += entry.get("depends", [])
    if unknown:
        raise KitError(f"{LIST} in '{folder}' does not name {', '.join(unknown)}.", where="--packages", do=_HOW)
    files = tuple(sorted({str(entry["file_name"]) for entry in taken.values()}))
    missing = [name for name in files if not (folder / name).is_file()]
    if missing:
        raise KitError(f"'{folder}' lacks {', '.join(missing)}.", where="--packages", do=_HOW)
    told = {str(entry["file_name"]): entry["sha256"] for entry in taken.values()}
    wrong = [name for name in files if hashlib.sha256((folder / name).read_bytes()).hexdigest() != told[name]]
    if wrong:
        raise KitError(
            f"{', '.join(wrong)} in '{folder}' {'is' if len(wrong) == 1 else 'are'} damaged: the hash is not the one "
            f"that {LIST} names.",
            where="--packages",
            do=_HOW,
        )
    lock = {"info": listed["info"], "packages": {name: dict(taken[name]) for name in sorted(taken)}}
    return Packages(folder, files, json.dumps(lock, sort_keys=True, separators=(",", ":")))


def _read(path: Path) -> dict[str, Any]:
    """The list, which must be that of the core."""
    try:
        listed = json.loads(path.read_text("utf-8"))
    except OSError:
        raise KitError(
            f"'{path.parent}' lacks {LIST}, the list of its packages.", where="--packages", do=_HOW
        ) from None
    except ValueError:
        listed = None
    info = listed.get("info") if isinstance(listed, dict) else None
    if not isinstance(info, dict) or not isinstance(listed.get("packages"), dict):
        raise KitError(f"{LIST} in '{path.parent}' cannot be read.", where="--packages", do=_HOW)
    wanted = json.loads(LOCK)["info"]
    for key in ("version", "python", "arch", "abi_version"):
        if info.get(key) != wanted[key]:
            raise KitError(
                f"the packages in '{path.parent}' are of Pyodide {info.get('version', '?')} ({key} "
                f"{info.get(key, 'is not told')}); the page's Python is {VERSION} ({key} {wanted[key]}).",
                where="--packages",
                do=_HOW,
            )
    return listed


def _is_sound(entry: Mapping[str, Any]) -> bool:
    """Whether a package names a file beside the list and nothing elsewhere, and its hash."""
    name, told, depends = entry.get("file_name"), entry.get("sha256"), entry.get("depends", [])
    return (
        isinstance(name, str)
        and _NAME.fullmatch(name) is not None
        and isinstance(told, str)
        and isinstance(depends, list)
        and all(isinstance(each, str) for each in depends)
    )
