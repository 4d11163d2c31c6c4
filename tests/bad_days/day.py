"""A day on which something goes wrong: the folder it happens in, what lies there before, and what must lie there after.

A `Fault` is one row of the table: what happens, what is kept, and a function that makes it happen and gives what the
user reads. Nothing it wants kept may have changed when it is over.
"""

from __future__ import annotations

import os
import pickle
import shutil
import subprocess
import sys
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass, field, replace
from functools import cache
from pathlib import Path
from tempfile import TemporaryDirectory

import nbformat
import pytest

from kit.booklet import build as building
from kit.booklet.build import build
from kit.booklet.run_notebook import Ran, read_notebook, run_notebook
from kit.errors import KitError
from tests.booklet.conftest import code, markdown
from tests.roster.conftest import NAPKIN

ROOT = Path(__file__).resolve().parents[2]
GOOD = ("booklet.html", "pages-a4.pdf", "pattern.json", "findings.json")
SIDECAR = "pebble-napkin.values.json"


@dataclass(frozen=True)
class Fault:
    """`what` happens, in which `kind` of place; what is `kept`; `do` makes it happen and gives what the user reads.
    `quick`: the one of its kind that every `make test` rehearses."""

    kind: str
    what: str
    kept: str
    do: Callable[[Day], str]
    quick: bool = False


FAULTS: list[Fault] = []


def fault(
    kind: str, what: str, kept: str, quick: bool = False
) -> Callable[[Callable[[Day], str]], Callable[[Day], str]]:
    def known(do: Callable[[Day], str]) -> Callable[[Day], str]:
        FAULTS.append(Fault(kind, what, kept, do, quick))
        return do

    return known


@dataclass
class Day:
    """The `folder` it happens in and what it `patch`es; `wanted` are the files that must be as they were."""

    folder: Path
    patch: pytest.MonkeyPatch
    wanted: dict[Path, bytes] = field(default_factory=dict)
    notebook: Path = Path()
    out: Path = Path()

    def keeps(self, path: Path, content: bytes | str) -> Path:
        """Write a file that must outlive the day as it is."""
        path.parent.mkdir(parents=True, exist_ok=True)
        data = content.encode() if isinstance(content, str) else content
        path.write_bytes(data)
        self.wanted[path] = data
        return path

    def lost(self) -> list[str]:
        return [str(p) for p, data in self.wanted.items() if not p.is_file() or p.read_bytes() != data]

    def lesson(self, *cells: str) -> Path:
        """The napkin's notebook, with more code cells; it must be there at the end."""
        home = self.folder / "lesson"
        home.mkdir(exist_ok=True)
        book = nbformat.v4.new_notebook(cells=[markdown("A napkin."), code(NAPKIN), *map(code, cells)])
        self.notebook = self.keeps(home / "pebble_napkin.ipynb", nbformat.writes(book))
        return self.notebook

    def last_good(self, out: Path | None = None) -> Path:
        """The output of an earlier build, to be kept."""
        self.out = out or self.folder / "out"
        for name in GOOD:
            self.keeps(self.out / name, f"the last good {name}")
        return self.out

    def built(
        self, forms: str = "html", at: str = "", then: Callable[[], object] = lambda: None, *, ran: bool = True
    ) -> str:
        """Build into `out`, and as soon as it is told that `at` begins, do `then`; what the user reads. `ran`: the
        notebook has run before, where its kernel plays no part."""
        if ran:
            self.patch.setattr(building, "run_notebook", lambda *given, **named: replace(_ran(), folder=given[1]))

        def progress(line: str) -> None:
            if at and line.strip().startswith(at):
                then()

        return said(lambda: build(self.notebook, self.out, forms=forms, progress=progress, timeout=20) and "built")

    def replaced(self) -> str:
        """The next build makes new files in the place of the last good ones; "" when it did."""
        for name in GOOD:
            self.wanted.pop(self.out / name, None)
        answer = self.built()
        rest = [path.name for path in self.out.iterdir() if path.name.startswith(".")]
        whole = (self.out / "booklet.html").read_bytes().startswith(b"<!DOCTYPE") or answer
        return "" if answer == "built" and not rest and whole else f"THE NEXT BUILD: {answer}, left {rest}"


def said(work: Callable[[], object]) -> str:
    """What a person reads of it: the refusal in its words. Anything else that is raised goes on."""
    try:
        return str(work())
    except KitError as error:
        return str(error)


@cache
def _ran() -> Ran:
    """The napkin, run once."""
    with TemporaryDirectory() as made, pytest.MonkeyPatch.context() as patch:
        day = Day(Path(made), patch)
        path = day.lesson()
        return run_notebook(read_notebook(path), path.parent, name=path.name)


@cache
def _ran_text() -> bytes:
    return pickle.dumps(_ran())


def ended(day: Day, where: str, forms: str = "html") -> int:
    """Build in a process of its own that kills itself where `where` (code that has `end` and `building`) says; gives
    its exit status."""
    kept = day.folder / "ran.pickle"
    kept.write_bytes(_ran_text())
    program = f"""
import os, pickle, signal
from dataclasses import replace
from pathlib import Path
from kit.booklet import build as building
from kit.booklet import writing
ran = pickle.loads(Path({str(kept)!r}).read_bytes())
def end(*given, **named):
    os.kill(os.getpid(), signal.SIGKILL)
building.run_notebook = lambda *given, **named: replace(ran, folder=given[1])
{where}
building.build(Path({str(day.notebook)!r}), Path({str(day.out)!r}), forms={forms!r})
"""
    environment = {**os.environ, "PYTHONPATH": str(ROOT)}
    return subprocess.run([sys.executable, "-c", program], env=environment, capture_output=True, check=False).returncode


@contextmanager
def small_disk(day: Day, size: str = "6m", *, way: str = "rw") -> Iterator[Path]:
    """A disk of its own; skipped where none can be mounted."""
    at = day.folder / "disk"
    at.mkdir(exist_ok=True)
    if not (hasattr(os, "getuid") and os.getuid() == 0 and shutil.which("mount")):
        pytest.skip("a disk of its own takes a superuser")
    if subprocess.run(["mount", "-t", "tmpfs", "-o", f"size={size},{way}", "none", at], check=False).returncode:
        pytest.skip("no disk can be mounted here")
    try:
        yield at
        assert day.lost() == []
        day.wanted = {path: data for path, data in day.wanted.items() if at not in path.parents}
    finally:
        subprocess.run(["umount", "-l", at], check=True)


def fill(disk: Path) -> None:
    """Write until nothing more goes on it."""
    with (disk / "filling").open("wb", buffering=0) as file:
        for size in (1 << 20, 1 << 12, 1):
            try:
                while True:
                    file.write(b"0" * size)
            except OSError:
                pass
