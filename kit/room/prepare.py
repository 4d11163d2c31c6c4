"""What a class is served from, made before it opens and kept for the next one.

    python -m kit.room.prepare CLASS_COPY_LESSON [--pyodide DIR] [--room-alone]

Writes the lesson's page (kit/page), the lesson as the page holds it, and facts for the board into a folder of the
cache, and says on standard output, a JSON line each, what it is doing and at last where that is. What is there already,
of the same lesson and the same kit, is taken as it is. Where the browser's Python (Pyodide) cannot be had, the page is
made without it and this is told: the room works the lesson for every page then.
"""

from __future__ import annotations

import argparse
import hashlib
import json
import os
import shutil
import sys
import tempfile
from collections.abc import Callable, Iterator
from contextlib import suppress
from pathlib import Path
from typing import Any

from kit.atomic import make_folder, write_atomically
from kit.errors import KitError
from kit.page.build import build_page
from kit.page.bundle import unpacked
from kit.page.core import VERSION, cache_folder, core
from kit.page.opened import without_notebook
from kit.resources import templates
from kit.room.engine import RoomEngine

_KEPT = 12
"""Classes that are kept; those opened longest ago go."""


def main(arguments: list[str] | None = None) -> int:
    """Make it, or find it."""
    parser = argparse.ArgumentParser(prog="kit.room.prepare")
    parser.add_argument("lesson", type=Path)
    parser.add_argument("--pyodide", type=Path)
    parser.add_argument("--room-alone", action="store_true")
    options = parser.parse_args(arguments)
    out = os.fdopen(os.dup(1), "w", encoding="utf-8", buffering=1)
    os.dup2(2, 1)

    def tell(**told: Any) -> None:
        print(json.dumps(told), file=out)

    try:
        folder, without = prepared(options.lesson, options.pyodide, options.room_alone, lambda line: tell(doing=line))
    except KitError as error:
        tell(failed=[error.what, error.where, error.do])
        return 1
    tell(folder=str(folder), without=without)
    return 0


def prepared(lesson: Path, pyodide: Path | None, room_alone: bool, progress: Callable[[str], None]) -> tuple[Path, str]:
    """The folder a class of `lesson` is served from (`page/`, `lesson/`, `facts.json`), and why its page is without the
    browser's own Python ("" when it has it). Raises `KitError`, also for a folder `pyodide` that does not hold it."""
    without = "as you asked" if room_alone else ""
    if not room_alone:
        try:
            core(pyodide, progress)
        except KitError as error:
            if pyodide is not None:
                raise
            without = str(error)
    home = cache_folder() / "classes"
    key = _key(lesson.resolve().parent, not without)
    kept = home / key
    if (kept / "facts.json").is_file():
        with suppress(OSError):
            os.utime(kept)
        return kept, without
    make_folder(home)
    made = Path(tempfile.mkdtemp(prefix=".new-", dir=home))
    try:
        try:
            build_page(lesson, made / "page", pyodide=pyodide, own_engine=not without, progress=progress)
        except KitError as error:  # a lesson in the making may have no cloth to reckon with yet
            progress(f"{error} Cloth to buy is left out")
            build_page(lesson, made / "page", pyodide=pyodide, own_engine=not without, cloth=False, progress=progress)
        edition = next((made / "page").glob("edition-*"))
        for name, data in unpacked((edition / "lesson.zip").read_bytes()).items():
            write_atomically(made / "lesson" / name, data)
        write_atomically(made / "facts.json", json.dumps(_facts(made / "lesson" / "lesson.ipynb", edition)))
        if not kept.exists():
            os.rename(made, kept)
    except OSError as error:
        raise KitError(f"the class cannot be kept there ({error.strerror}).", where=str(home)) from None
    finally:
        shutil.rmtree(made, ignore_errors=True)
    _clear(home, kept)
    return kept, without


def _key(folder: Path, own: bool) -> str:
    """Changes with the lesson and what lies beside it, the kit and the browser's Python."""
    told = hashlib.sha256(f"{VERSION} {sys.version} {own} {os.environ.get('LESSONKIT_LANGUAGE', '')}".encode())
    for path in sorted(folder.rglob("*")):
        if path.is_file() and not path.is_symlink():
            told.update(f"\0{path.relative_to(folder)}\0".encode() + hashlib.sha256(path.read_bytes()).digest())
    for path in _house():
        found = path.stat()
        told.update(f"\0{path}\0{found.st_size}\0{found.st_mtime_ns}".encode())
    return told.hexdigest()[:24]


def _house() -> Iterator[Path]:
    for folder, suffixes in ((Path(__file__).resolve().parents[1], (".py", ".toml", ".json")), (templates(), ())):
        for path in sorted(folder.rglob("*")):
            if path.is_file() and (not suffixes or path.suffix in suffixes):
                yield path


def _facts(lesson: Path, edition: Path) -> dict[str, Any]:
    """What the board knows of the lesson, in its own language."""
    without_notebook()
    options = json.loads((edition / "engine.json").read_text("utf-8"))
    before = Path.cwd()
    os.chdir(lesson.parent)
    try:
        engine = RoomEngine(
            Path(lesson.name), offered=options["languages"], sliders=options["sliders"], cloth=options["cloth"]
        )
        about = json.loads(engine.answer(json.dumps({"do": "about"})))
        drawn = json.loads(engine.answer(json.dumps({"do": "draw"})))
        fitted = engine.lesson.definition.fitted(engine.lesson.body)
        presets = [{"title": one.title, "values": fitted.preset_values(one.title)} for one in engine.lesson.presets]
    finally:
        os.chdir(before)
    for told in (about, drawn):
        if not told["ok"]:
            raise KitError(told["said"])
    kept = ("title", "language", "steps", "exercises", "languages")
    return {
        **{key: about[key] for key in kept},
        "sliders": drawn["sliders"],
        "presets": presets,
        "units": engine.lesson.units,
        "edition": edition.name,
    }


def _clear(home: Path, kept: Path) -> None:
    """Only a few classes are kept, and none that is being served: what serves one has read it whole."""
    with suppress(OSError):
        others = [path for path in home.iterdir() if path.is_dir() and path != kept and not path.name.startswith(".")]
        for path in sorted(others, key=lambda path: path.stat().st_mtime, reverse=True)[_KEPT - 1 :]:
            shutil.rmtree(path, ignore_errors=True)


if __name__ == "__main__":
    sys.exit(main())
