"""One trial of a mutant: the change made in a copy of the tree, the test files nearest to it until one fails.

A file that fails says something of the change only if it passes without it: each is run in the tree as it is before it
is first used, and what came of it is kept until the tree or the file changes. Files that fail there are left out and
told. What is far (`nearness.py`) is tried as far as seconds allow, so that a fault may count as unnoticed that another
test would have noticed: the score is a lower bound, and `thorough` tries a mutant with everything.
"""

from __future__ import annotations

import hashlib
import json
import math
import os
import select
import shutil
import signal
import subprocess
import sys
import time
from collections.abc import Callable, Sequence
from dataclasses import asdict, dataclass, field
from difflib import unified_diff
from pathlib import Path
from threading import Lock
from typing import Literal

import cosmic_ray.plugins
from cosmic_ray.mutating import mutate_code
from nearness import rounds

ROOT = Path(__file__).resolve().parent.parent.parent
KEPT = ROOT / "out" / "mutants"
_COPIED = ("kit", "templates", "tests", "example_notebooks", "pyproject.toml", "README.md", "DEVELOPERS.md")
_PYTEST = ("-q", "-m", "not browser and not slow", "-p", "no:cacheprovider", "--continue-on-collection-errors")
_NONE = 5  # pytest's word for no tests at all
_PATIENCE = 30.0  # seconds that a trial may take beyond five times what its files take without the change
_WARM = """
import importlib, json, os, sys
import pytest

class Noted:
    def __init__(self, file):
        self.file = open(file, "w")
    def note(self, **row):
        print(json.dumps(row), file=self.file, flush=True)
    def pytest_collectreport(self, report):
        if report.failed:
            self.note(test=report.nodeid, seconds=0.0, failed=True)
    def pytest_runtest_logstart(self, nodeid):
        self.note(test=nodeid, seconds=0.0, failed=False)
    def pytest_runtest_logreport(self, report):
        self.note(test=report.nodeid, seconds=report.duration, failed=report.failed)
    def pytest_sessionfinish(self):
        own = ("kit", "tests", "conftest", "__main__")
        self.note(modules=[name for name in list(sys.modules) if name.split(".")[0] not in own and "/" not in name])

for line in sys.stdin:
    asked = json.loads(line)
    for name in asked.get("load", ()):
        try:
            importlib.import_module(name)
        except Exception:
            pass
    if "load" in asked:
        continue
    child = os.fork()
    if not child:
        os.setsid()
        null = os.open(os.devnull, os.O_RDWR)
        for stream in (0, 1, 2):
            os.dup2(null, stream)
        os._exit(int(pytest.main(asked["run"], plugins=[Noted(asked["note"])])))
    print(child, flush=True)
    print(os.waitstatus_to_exitcode(os.waitpid(child, 0)[1]), flush=True)
"""


@dataclass(frozen=True)
class Mutant:
    """One change: `operator` of Cosmic Ray at its `occurrence` in `module` (a path in the tree), on `line`."""

    module: str
    operator: str
    occurrence: int
    line: int


@dataclass(frozen=True)
class Tried:
    """What became of a mutant: "caught", "survived", "too long" (counted as caught) after `seconds`; the line as it
    `was` and as it `becomes`, how many test `files` were tried, and the first test that failed (`by`)."""

    mutant: Mutant
    outcome: str
    seconds: float
    was: str
    becomes: str
    files: int
    by: str = ""


def stamp(*texts: str) -> str:
    """A short fingerprint of texts."""
    return hashlib.sha256("\0".join(texts).encode()).hexdigest()[:16]


def stamp_of(folder: Path, but: Callable[[Path], bool] = lambda path: False) -> str:
    """A fingerprint of every file under a folder (or of a file) `but` some and those that Python compiled: what is held
    in texts and data says as much as the tests do."""
    files = [path for path in (folder, *sorted(folder.rglob("*"))) if path.is_file() and path.suffix != ".pyc"]
    return stamp(*(path.read_text("utf-8", "replace") for path in files if not but(path)))


def copied(into: Path) -> Path:
    """A copy of the tree to make changes in."""
    for name in _COPIED:
        source = ROOT / name
        if source.is_dir():
            shutil.copytree(source, into / name, ignore=shutil.ignore_patterns("__pycache__"))
        else:
            shutil.copy2(source, into / name)
    return into


def changed(mutant: Mutant, source: str) -> tuple[str, str, str]:
    """(the module's text with the change made, its line before, its line after)."""
    changer = cosmic_ray.plugins.get_operator(mutant.operator)()
    after = mutate_code(source, changer, mutant.occurrence) or source
    lines = [
        line
        for line in unified_diff(source.splitlines(), after.splitlines(), n=0, lineterm="")
        if line[:3] not in _HEADS
    ]
    was = " ".join(line[1:].strip() for line in lines if line.startswith("-"))
    return after, was, " ".join(line[1:].strip() for line in lines if line.startswith("+"))


_HEADS = ("---", "+++")


def folder_of(module: str) -> Path:
    """The nearest test folder of a module."""
    return ROOT / "tests" / module.split("/")[1]


def _environment(tree: Path, **more: str) -> dict[str, str]:
    return {
        **os.environ,
        "PYTHONPATH": str(tree),
        "KIT_HYPOTHESIS": "mutants",
        "PYTEST_DISABLE_PLUGIN_AUTOLOAD": "1",
        **more,
    }


@dataclass(frozen=True)
class Ran:
    """One run of test files: how it ended, the tests that failed in their order, the seconds that the tests of each
    file took, the file it was at last, and the libraries' modules that were loaded."""

    end: Literal["passed", "failed", "late"]
    failed: tuple[str, ...]
    seconds: dict[str, float]
    last: str
    modules: tuple[str, ...]


class Bench:
    """A copy of the tree at `folder`, and a process that has the libraries (not the kit) loaded and splits off a child
    for each run: loading them anew takes longer than most trials."""

    def __init__(self, folder: Path) -> None:
        self.folder = folder
        self._note = folder / "noted.jsonl"
        self._loaded: set[str] = set()
        self._warm = subprocess.Popen(
            [sys.executable, "-c", _WARM],
            cwd=folder,
            env=_environment(folder),
            stdin=subprocess.PIPE,
            stdout=subprocess.PIPE,
            stderr=subprocess.DEVNULL,
            text=True,
        )

    def load(self, modules: Sequence[str]) -> None:
        """Loads libraries' modules for the runs to come."""
        new = [name for name in modules if name not in self._loaded]
        if new:
            self._loaded |= set(new)
            self._ask({"load": new})

    def run(self, files: Sequence[str], most: float, *options: str) -> Ran:
        """Runs test files in the tree as it stands, for `most` seconds."""
        self._note.unlink(missing_ok=True)
        self._ask({"run": [*_PYTEST, *options, *files], "note": str(self._note)})
        assert self._warm.stdout is not None
        child = int(self._warm.stdout.readline())
        late = not select.select([self._warm.stdout], [], [], most)[0]
        if late:
            os.killpg(child, signal.SIGKILL)
        code = int(self._warm.stdout.readline())
        rows = [json.loads(row) for row in self._note.read_text("utf-8").splitlines()] if self._note.exists() else []
        tests = [row for row in rows if "test" in row]
        seconds: dict[str, float] = {}
        for row in tests:
            file = row["test"].split("::")[0]
            seconds[file] = seconds.get(file, 0.0) + row["seconds"]
        return Ran(
            "late" if late else "passed" if code in (0, _NONE) else "failed",
            tuple(dict.fromkeys(row["test"] for row in tests if row["failed"])),
            seconds,
            tests[-1]["test"].split("::")[0] if tests else "",
            tuple(name for row in rows for name in row.get("modules", ())),
        )

    def _ask(self, what: dict[str, object]) -> None:
        assert self._warm.stdin is not None
        self._warm.stdin.write(json.dumps(what) + "\n")
        self._warm.stdin.flush()

    def close(self) -> None:
        """Ends the process."""
        self._warm.terminate()
        self._warm.communicate()


@dataclass(frozen=True)
class Untouched:
    """What a test file does in the tree as it is: its fingerprint with that of the tree (`of`), the `seconds` its tests
    take, and what `fails` ("" where it passes)."""

    of: str
    seconds: float
    fails: str


class Unchanged:
    """What test files do in the tree as it is, each run once for it and kept from slice to slice. One that takes more
    than `most` seconds counts as failing."""

    def __init__(self, most: float) -> None:
        self._most = most
        self._kept = KEPT / "unchanged.json"
        rows = json.loads(self._kept.read_text("utf-8")) if self._kept.exists() else {}
        self._known = {file: Untouched(**row) for file, row in rows.items()}
        self._tree = stamp(*(stamp_of(ROOT / name, _is_test_file) for name in _COPIED))
        self._lock = Lock()
        self._alone: dict[str, bool] = {}

    def seconds(self, file: str) -> float:
        """What a file took when it last ran without a change, in this tree or an older; infinite if it never did."""
        return self._known[file].seconds if file in self._known else math.inf

    def sound(self, files: Sequence[str], bench: Bench) -> list[str]:
        """Those of some test files that pass in the tree as it is, which is how `bench` must stand now."""
        with self._lock:
            new = [file for file in files if self._of(file) is None]
            if new:
                self._learn(new, bench)
            return [file for file in files if (found := self._of(file)) is not None and not found.fails]

    def alone(self, file: str, bench: Bench) -> bool:
        """Whether a file passes with no other beside it in the tree as it is, looked at once in a slice."""
        with self._lock:
            if file not in self._alone:
                self._alone[file] = bench.run([file], self._most).end == "passed"
            return self._alone[file]

    def failing(self) -> dict[str, str]:
        """{file: what fails there} of every file that was run in this tree and does not pass."""
        return {
            file: one.fails
            for file, one in self._known.items()
            if (ROOT / file).exists() and self._of(file) and one.fails
        }

    def _mark(self, file: str) -> str:
        return stamp(self._tree, (ROOT / file).read_text("utf-8"))

    def _of(self, file: str) -> Untouched | None:
        found = self._known.get(file)
        return found if found is not None and found.of == self._mark(file) else None

    def _learn(self, files: Sequence[str], bench: Bench) -> None:
        ran = bench.run(files, self._most)
        bench.load(ran.modules)
        late, dumb = ran.end == "late", ran.end == "failed" and not ran.failed
        ended = [file for file in files if file in ran.seconds and file != ran.last] if late else list(files)
        if (dumb or (late and not ended)) and len(files) > 1:  # nobody knows which is to blame
            for file in files:
                self._learn([file], bench)
            return
        for file in ended or files:
            fails = next((test for test in ran.failed if test.split("::")[0] == file), "")
            if late and not ended:
                fails = f"{file} takes more than {self._most:.0f} s"
            elif dumb:
                fails = f"{file} ends without a word"
            seconds = self._most if late and not ended else ran.seconds.get(file, 0.0)
            self._known[file] = Untouched(self._mark(file), seconds, fails)
        KEPT.mkdir(parents=True, exist_ok=True)
        self._kept.write_text(json.dumps({file: asdict(one) for file, one in sorted(self._known.items())}), "utf-8")
        left = [file for file in files if ended and file not in ended]
        if left:
            self._learn(left, bench)


def _is_test_file(path: Path) -> bool:
    return path.name.startswith("test_") and path.suffix == ".py"


@dataclass(frozen=True)
class Reach:
    """How far a trial goes: test files farther than near ones as long as all together take no more than `within`
    seconds, and none that takes longer alone; all of them where it is `thorough`. No run longer than `most` seconds;
    files of the names `without` left out."""

    within: float
    most: float
    thorough: bool = False
    without: tuple[str, ...] = field(default=())


def tried(mutant: Mutant, bench: Bench, unchanged: Unchanged, reach: Reach) -> Tried:
    """Makes the change in the copy of the tree, runs the test files nearest to it until one fails; takes it back."""
    target = bench.folder / mutant.module
    before = target.read_text("utf-8")
    after, was, becomes = changed(mutant, before)
    began, spent, count = time.monotonic(), 0.0, 0
    for some in rounds(ROOT, mutant.module, unchanged.seconds, reach.without):
        left = math.inf if some.near or reach.thorough else reach.within - spent
        longest = math.inf if reach.thorough else reach.within
        sound = unchanged.sound([f for f in some.files if _fits(unchanged.seconds(f), left, longest)], bench)
        files: list[str] = []
        for file in sound:
            took = unchanged.seconds(file)
            if took <= min(left, longest):
                files.append(file)
                left, spent = left - took, spent + took
        if not files:
            continue
        count += len(files)
        while files:
            ran = _with(after, target, bench, files, unchanged, reach, "-x")
            if ran.end == "passed":
                break
            file = ran.failed[0].split("::")[0] if ran.failed else ran.last or files[0]
            # Some tests fail only in company of others, with the change or without: alone it must fail as well.
            alone = ran if len(files) == 1 else _with(after, target, bench, [file], unchanged, reach, "-x")
            if alone.end != "passed" and unchanged.alone(file, bench):
                outcome = "too long" if alone.end == "late" else "caught"
                return Tried(
                    mutant,
                    outcome,
                    time.monotonic() - began,
                    was,
                    becomes,
                    count,
                    (*alone.failed, f"{file} as such")[0],
                )
            files = [other for other in files if other != file]
    return Tried(mutant, "survived", time.monotonic() - began, was, becomes, count)


def _with(
    after: str, target: Path, bench: Bench, files: Sequence[str], unchanged: Unchanged, reach: Reach, *options: str
) -> Ran:
    """A run of test files with the text `after` in the module."""
    before = target.read_text("utf-8")
    target.write_text(after, "utf-8")
    _forget(target)
    try:
        usual = sum(map(unchanged.seconds, files))
        return bench.run(files, min(reach.most, _PATIENCE + 5 * usual), *options)
    finally:
        target.write_text(before, "utf-8")
        _forget(target)


def _fits(seconds: float, left: float, longest: float) -> bool:
    """Whether a file is worth a look: one that never ran is, as long as there is any time."""
    return left > 0 if math.isinf(seconds) else seconds <= min(left, longest)


def _forget(module: Path) -> None:
    """Python takes a compiled module for current by its second and its size, which a change may leave alike."""
    for compiled in (module.parent / "__pycache__").glob(f"{module.stem}.*.pyc"):
        compiled.unlink()
