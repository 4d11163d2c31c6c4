"""Setting a booklet's page in type in a process of its own, so that two forms are set at once on two cores.

The page arrives as a file of HTML; the PDF, and what the markup asked for that was left out, go to files beside it.
The child process is this same Python with the current folder off its path, and runs nothing but this module. It loads
what setting takes and no drafting, and looks for no lost circles of values: it ends with the page.
"""

from __future__ import annotations

import gc
import json
import os
import subprocess
import sys
from dataclasses import dataclass
from pathlib import Path
from time import perf_counter

from kit.atomic import write_atomically
from kit.errors import KitError

_KIT = Path(__file__).resolve().parents[2]


@dataclass(frozen=True)
class Set:
    """A booklet set in type: the `pdf`, what the markup asked for that was `left_out`, and the `seconds` it took."""

    pdf: bytes
    left_out: tuple[str, ...]
    seconds: float


def set_in_type(html: str, folder: Path, scratch: Path, name: str) -> Set:
    """`html` as PDF, set in another process that may read pictures in `folder` only; `scratch` takes its files, called
    `name`. Raises `KitError` when it could not be set."""
    began = perf_counter()
    page, pdf, said = (scratch / f"{name}.{ending}" for ending in ("html", "pdf", "json"))
    write_atomically(page, html)
    paths = os.pathsep.join(filter(None, (str(_KIT), os.environ.get("PYTHONPATH", ""))))
    done = subprocess.run(
        [sys.executable, "-P", "-m", __name__, str(page), str(pdf), str(said), str(folder)],
        env={**os.environ, "PYTHONPATH": paths},
        stdin=subprocess.DEVNULL,
        capture_output=True,
        text=True,
        check=False,
    )
    if done.returncode or not said.is_file():
        last = done.stderr.strip().splitlines()[-1:] or ["no reason was given"]
        raise KitError(f"the booklet could not be set in type: {last[0][:300]}.".replace("..", "."), where=name)
    left_out = json.loads(said.read_text(encoding="utf-8"))
    return Set(pdf.read_bytes(), tuple(left_out), perf_counter() - began)


def _child(page: Path, pdf: Path, said: Path, folder: Path) -> None:
    gc.disable()
    from kit.booklet.fetch import THEME_FILE, LessonFolder
    from kit.booklet.render import to_pdf

    lesson, look = LessonFolder(folder), None
    if (folder / THEME_FILE).exists():
        from kit.booklet.theme_file import read_theme

        look = read_theme(lesson)
    write_atomically(pdf, to_pdf(page.read_text(encoding="utf-8"), lesson, look=look))
    write_atomically(said, json.dumps(lesson.left_out, ensure_ascii=False))


if __name__ == "__main__":
    _child(*(Path(argument) for argument in sys.argv[1:5]))
