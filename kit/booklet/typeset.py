"""Setting a booklet's page in type in a process of its own, so that two forms are set at once on two cores.

The page arrives as a file of HTML, named in a line of JSON on standard input; the PDF, and what the markup asked for
that was left out, go to files beside it. A process may be begun before there is a page (`WaitingTypesetter`): it loads
meanwhile.
The child process is this same Python with the current folder off its path, and runs nothing but this module. It loads
what setting takes and no drafting, and looks for no lost circles of values: it ends with the page, and with the process
that asked for it, however that ends: its standard input is closed then.
"""

from __future__ import annotations

import gc
import json
import os
import select
import subprocess
import sys
import threading
from collections.abc import Sequence
from contextlib import suppress
from dataclasses import dataclass
from pathlib import Path
from time import perf_counter

from kit.atomic import write_atomically
from kit.booklet.typesetter import is_missing, load_typesetter, missing
from kit.cores import usable_cores
from kit.errors import KitError

_KIT = Path(__file__).resolve().parents[2]


@dataclass(frozen=True)
class Set:
    """A booklet set in type: the `pdf`, what the markup asked for that was `left_out`, and the `seconds` it took."""

    pdf: bytes
    left_out: tuple[str, ...]
    seconds: float


class WaitingTypesetter:
    """A process that loads the typesetter and its fonts, which takes most of a second, and waits for its page. Used as
    a context in which it may be begun: when it is left, a process that got no page ends."""

    def __init__(self) -> None:
        self._child: subprocess.Popen[str] | None = None

    def __enter__(self) -> WaitingTypesetter:
        return self

    def begin(self) -> None:
        """Begin the process."""
        self._child = _started()

    def taken(self) -> subprocess.Popen[str] | None:
        """The process, for one page; None the second time, or where it was not begun."""
        child, self._child = self._child, None
        return child

    def __exit__(self, *_: object) -> None:
        child = self.taken()
        if child is not None:
            with child:
                child.kill()


def at_once() -> int:
    """How many forms are set in type at once."""
    return min(usable_cores(), 4)


def set_in_type(html: str, folder: Path, scratch: Path, name: str, waiting: WaitingTypesetter | None = None) -> Set:
    """`html` as PDF, set in another process that may read pictures in `folder` only; `scratch` takes its files, called
    `name`. A process that is `waiting` sets it, where there is one. Raises `KitError` when it could not be set."""
    began = perf_counter()
    page, pdf, said = (scratch / f"{name}.{ending}" for ending in ("html", "pdf", "json"))
    write_atomically(page, html)
    child = waiting.taken() if waiting else None
    status, complaint = _asked(child or _started(), [str(page), str(pdf), str(said), str(folder)])
    if status or not said.is_file():
        last = complaint.strip().splitlines()[-1:] or [_ENDED.get(status, "no reason was given")]
        if is_missing(complaint):
            raise missing()
        raise KitError(
            f"the booklet could not be set in type: {last[0][:300]}.".replace("..", "."),
            where=name,
            do="The earlier booklet is untouched. Build again; where memory is short, close other programs first.",
        )
    left_out = json.loads(said.read_text(encoding="utf-8"))
    return Set(pdf.read_bytes(), tuple(left_out), perf_counter() - began)


_ENDED = {-9: "its process was ended, perhaps because the memory was used up"}


def _started() -> subprocess.Popen[str]:
    """A process that runs this module."""
    paths = os.pathsep.join(filter(None, (str(_KIT), os.environ.get("PYTHONPATH", ""))))
    return subprocess.Popen(
        [sys.executable, "-P", "-m", __name__],
        env={**os.environ, "PYTHONPATH": paths},
        stdin=subprocess.PIPE,
        stdout=subprocess.DEVNULL,
        stderr=subprocess.PIPE,
        text=True,
        errors="replace",
    )


def _asked(process: subprocess.Popen[str], files: Sequence[str]) -> tuple[int, str]:
    """Have it set the page of these files: its exit status, and what it said of an error."""
    with process as child:
        assert child.stdin is not None and child.stderr is not None
        try:
            with suppress(BrokenPipeError):  # it ended while loading, and has said why
                child.stdin.write(json.dumps(list(files)) + "\n")
                child.stdin.flush()
            complaint = child.stderr.read()
            return child.wait(), complaint
        except BaseException:
            child.kill()
            raise


def _question() -> list[str]:
    """The files of the page, from standard input; none where the asking process is gone."""
    line = b""
    while not line.endswith(b"\n"):
        more = os.read(0, 65536)
        if not more:
            return []
        line += more
    found: list[str] = json.loads(line)
    return found


def _end_with_parent() -> None:
    def watch() -> None:
        os.read(0, 1)  # nobody writes there: it returns when the other end is gone
        os._exit(1)

    threading.Thread(target=watch, daemon=True).start()


def _child() -> None:
    gc.disable()
    load_typesetter()
    from kit.booklet.fetch import THEME_FILE, LessonFolder
    from kit.booklet.render import to_pdf, warmed

    if os.name == "posix" and not select.select([0], [], [], 0)[0]:
        warmed()
    files = _question()
    if not files:
        return
    _end_with_parent()
    page, pdf, said, folder = map(Path, files)
    lesson, look = LessonFolder(folder), None
    if (folder / THEME_FILE).exists():
        from kit.booklet.theme_file import read_theme

        look = read_theme(lesson)
    write_atomically(pdf, to_pdf(page.read_text(encoding="utf-8"), lesson, look=look))
    write_atomically(said, json.dumps(lesson.left_out, ensure_ascii=False))


if __name__ == "__main__":
    _child()
