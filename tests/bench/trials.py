"""One trial of a mutant: the change made in a copy of the tree, the tests that run through its line, quickest first.

Which tests run through which line is measured once for a test file (coverage.py, one context a test) and kept until
it changes or a file of the room does. The quickest of them are tried first, then the others as far as time allows. A
line that runs on import alone, as that of a constant does, is tried with the tests that run through what names it. The
map credits a value that tests share (a fixture of the session, a cache) to the test that made it, so that a fault may
count as unnoticed that another test would have noticed: the score is a lower bound, and `--thorough` tries such a
mutant with the whole folder.
"""

from __future__ import annotations

import ast
import hashlib
import json
import os
import select
import shutil
import signal
import subprocess
import sys
import time
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from difflib import unified_diff
from pathlib import Path
from typing import Any

import cosmic_ray.plugins
from cosmic_ray.mutating import mutate_code

ROOT = Path(__file__).resolve().parent.parent.parent
KEPT = ROOT / "out" / "mutants"
_AT_ONCE = 8  # test files measured in one go
FIRST_TESTS = 60
"""Tests through one line that a trial runs before all others, the quickest: most mutants are caught by one of them."""
MOST_SECONDS = 20.0
"""What the tests through one line may take together beyond those."""
_COPIED = ("kit", "templates", "tests", "example_notebooks", "pyproject.toml", "README.md", "DEVELOPERS.md")
_PYTEST = ("-x", "-q", "-m", "not browser", "-p", "no:cacheprovider")
_WARM = """
import importlib, json, os, sys
import pytest
for name in json.loads(sys.argv[1]):
    try:
        importlib.import_module(name)
    except Exception:
        pass
for line in sys.stdin:
    child = os.fork()
    if not child:
        os.setsid()
        null = os.open(os.devnull, os.O_RDWR)
        for stream in (0, 1, 2):
            os.dup2(null, stream)
        os._exit(int(pytest.main(json.loads(line))))
    print(child, flush=True)
    print(os.waitstatus_to_exitcode(os.waitpid(child, 0)[1]), flush=True)
"""
_WATCHED = """
import coverage, json, os, pytest, sys, time
cov = coverage.Coverage(data_file=None, source=[os.path.join(os.getcwd(), "kit", os.environ["WATCHED_ROOM"])])
took = {}
def pytest_sessionstart(session):
    cov.start()
@pytest.hookimpl(wrapper=True)
def pytest_runtest_protocol(item, nextitem):
    cov.switch_context(item.nodeid)
    began = time.perf_counter()
    try:
        return (yield)
    finally:
        took[item.nodeid] = time.perf_counter() - began
        cov.switch_context("")
def pytest_sessionfinish(session):
    cov.stop()
    data = cov.get_data()
    lines = {os.path.relpath(f): {n: [c for c in cs if c] for n, cs in data.contexts_by_lineno(f).items()}
             for f in data.measured_files()}
    own = ("kit", "tests", "conftest", "watched_plugin", "__main__", "coverage")
    modules = [name for name in list(sys.modules) if name.split(".")[0] not in own and "/" not in name]
    with open("watched.json", "w") as out:
        json.dump({"took": took, "lines": lines, "modules": modules}, out)
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
    `was` and as it `becomes`, and how many tests were at hand (`tests`)."""

    mutant: Mutant
    outcome: str
    seconds: float
    was: str
    becomes: str
    tests: int


def stamp(*texts: str) -> str:
    """A short fingerprint of texts."""
    return hashlib.sha256("\0".join(texts).encode()).hexdigest()[:16]


def stamp_of(folder: Path) -> str:
    """A fingerprint of every file under a folder but those that Python compiled: what is held in texts and data says as
    much as the tests do."""
    files = [path for path in sorted(folder.rglob("*")) if path.is_file() and path.suffix != ".pyc"]
    return stamp(*(path.read_text("utf-8", "replace") for path in files))


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


def watched(room: str, tree: Path, without: Sequence[str] = ()) -> tuple[dict[str, dict[str, list[str]]], list[str]]:
    """({module: {line: the tests through it, quickest first}}, the libraries' modules they load) of a room by its own
    test folder, the test files of the names `without` left out. A test file is measured once, until it, the room or
    what the folder's tests share changes."""
    kept = KEPT / f"lines_{room}.json"
    folder = ROOT / "tests" / room
    shared = [path.read_text("utf-8") for path in sorted(folder.rglob("*.py")) if not path.name.startswith("test_")]
    base = stamp(stamp_of(ROOT / "kit" / room), *shared)
    marks = {
        path.relative_to(ROOT).as_posix(): stamp(base, path.read_text("utf-8"))
        for path in folder.rglob("test_*.py")
        if path.stem not in without
    }
    known: dict[str, dict[str, Any]] = json.loads(kept.read_text("utf-8")) if kept.exists() else {}
    known = {file: seen for file, seen in known.items() if seen.get("of") == marks.get(file)}
    new = sorted(marks.keys() - known.keys())
    for some in (new[at : at + _AT_ONCE] for at in range(0, len(new), _AT_ONCE)):
        for file, seen in _measured(room, tree, some).items():
            known[file] = {"of": marks[file], **seen}
        KEPT.mkdir(parents=True, exist_ok=True)
        kept.write_text(json.dumps(known), "utf-8")
    took = {test: seconds for seen in known.values() for test, seconds in seen["took"].items()}
    found: dict[str, dict[str, list[str]]] = {}
    for seen in known.values():
        for module, through in seen["lines"].items():
            for line, tests in through.items():
                found.setdefault(module, {}).setdefault(line, []).extend(tests)
    quick = {module: {line: _within(tests, took) for line, tests in at.items()} for module, at in found.items()}
    return quick, list(dict.fromkeys(name for seen in known.values() for name in seen["modules"]))


def _within(tests: Iterable[str], took: Mapping[str, float]) -> list[str]:
    """The quickest tests: the first of them whatever they take, and more while all together take no longer than
    `MOST_SECONDS`."""
    order = sorted(tests, key=took.__getitem__)
    spent, count = 0.0, 0
    for count, test in enumerate(order, 1):
        spent += took[test]
        if count >= FIRST_TESTS and spent > MOST_SECONDS:
            break
    return order[:count]


def _measured(room: str, tree: Path, files: Sequence[str]) -> dict[str, dict[str, Any]]:
    """What `_WATCHED` notes of a room while some of its test files run, file by file."""
    (tree / "watched_plugin.py").write_text(_WATCHED, "utf-8")
    command = [part for part in _PYTEST if part != "-x"]
    done = subprocess.run(
        [sys.executable, "-m", "pytest", *command, "-p", "watched_plugin", *files],
        cwd=tree,
        env=_environment(tree, WATCHED_ROOM=room),
        capture_output=True,
        text=True,
    )
    if done.returncode != 0:
        raise SystemExit(f"the tests of {room} fail before any change is made:\n{done.stdout[-3000:]}{done.stderr}")
    seen: dict[str, Any] = json.loads((tree / "watched.json").read_text("utf-8"))
    noted: dict[str, dict[str, Any]] = {}
    for file in files:
        mine = {test: took for test, took in seen["took"].items() if test.split("::")[0] == file}
        lines = {
            module: {line: [test for test in tests if test in mine] for line, tests in through.items()}
            for module, through in seen["lines"].items()
        }
        noted[file] = {"took": mine, "lines": lines, "modules": seen["modules"]}
    return noted


def whole_folder(module: str, without: Sequence[str] = ()) -> list[str]:
    """The test files of the nearest folder but those `without`, that of the module's own name first."""
    folder = folder_of(module)
    own = sorted(folder.glob(f"test_{Path(module).stem}*.py"))
    rest = [path for path in sorted(folder.glob("test_*.py")) if path not in own]
    return [str(path.relative_to(ROOT)) for path in (*own, *rest) if path.stem not in without]


class Bench:
    """A copy of the tree at `folder`, and a process that has the libraries (not the kit) loaded and splits off a child
    for each trial: loading them anew takes longer than most trials."""

    def __init__(self, folder: Path, modules: Sequence[str]) -> None:
        self.folder = folder
        self._warm = subprocess.Popen(
            [sys.executable, "-c", _WARM, json.dumps(modules)],
            cwd=folder,
            env=_environment(folder),
            stdin=subprocess.PIPE,
            stdout=subprocess.PIPE,
            stderr=subprocess.DEVNULL,
            text=True,
        )

    def passes(self, tests: list[str], most: float) -> bool | None:
        """Whether the tests pass in the tree as it is; None where they take more than `most` seconds."""
        assert self._warm.stdin is not None and self._warm.stdout is not None
        self._warm.stdin.write(json.dumps([*_PYTEST, *tests]) + "\n")
        self._warm.stdin.flush()
        child = int(self._warm.stdout.readline())
        late = not select.select([self._warm.stdout], [], [], most)[0]
        if late:
            os.killpg(child, signal.SIGKILL)
        code = int(self._warm.stdout.readline())
        return None if late else code == 0

    def close(self) -> None:
        """Ends the process."""
        self._warm.terminate()
        self._warm.communicate()


def tried(
    mutant: Mutant,
    bench: Bench,
    lines: dict[str, dict[str, list[str]]],
    most: float,
    thorough: bool,
    without: Sequence[str] = (),
) -> Tried:
    """Makes the change in the copy of the tree, runs the tests through its line there, and takes it back."""
    target = bench.folder / mutant.module
    before = target.read_text("utf-8")
    after, was, becomes = changed(mutant, before)
    through = lines.get(mutant.module, {}).get(str(mutant.line))
    near = through or near_by(before, mutant.line, lines.get(mutant.module, {}))
    rounds = [near[:FIRST_TESTS], near[FIRST_TESTS:]]
    if thorough:
        rounds = [[file] for file in whole_folder(mutant.module, without)]
    rounds = [tests for tests in rounds if tests]
    tests = sum(map(len, rounds))
    if not tests:
        return Tried(mutant, "survived", 0.0, was, becomes, 0)
    began = time.monotonic()
    target.write_text(after, "utf-8")
    _forget(target)
    try:
        passed = bench.passes(rounds[0], most)
        for others in rounds[1:]:
            # Many tests may be late without the change as well: only those that fail in time have noticed it.
            passed = passed and bench.passes(others, most) is not False
    finally:
        target.write_text(before, "utf-8")
        _forget(target)
    outcome = {True: "survived", False: "caught", None: "too long"}[passed]
    return Tried(mutant, outcome, time.monotonic() - began, was, becomes, tests)


def near_by(source: str, line: int, through: dict[str, list[str]]) -> list[str]:
    """The tests for a line that none is noted for. Within a statement of several lines those through the others; of a
    constant those through the lines that name it, of a function's default those through the function, of what else runs
    on import alone (a function that makes fields or rules) those through the module. None for a line that never runs.
    """
    tree = ast.parse(source)
    around = [n for n in ast.walk(tree) if isinstance(n, ast.stmt) and n.lineno <= line <= (n.end_lineno or 0)]
    whole = max(around, key=lambda n: (n.lineno, -(n.end_lineno or 0)), default=None)
    if whole is None:
        return []
    body = getattr(whole, "body", None)
    own = range(whole.lineno, body[0].lineno if body else (whole.end_lineno or 0) + 1)
    found = _through(own, through)
    if found:
        return found
    inside = [n for n in around if isinstance(n, ast.FunctionDef)]
    if any(node.body[0].lineno <= line for node in inside) and not any(str(at) in through for at in own):
        return []
    lines: set[int] = set()
    if inside:
        lines = set(range(inside[-1].lineno, (inside[-1].end_lineno or 0) + 1))
    else:
        targets = [
            t for n in around for t in (n.targets if isinstance(n, ast.Assign) else [getattr(n, "target", None)])
        ]
        names = {t.id for t in targets if isinstance(t, ast.Name)}
        for node in ast.walk(tree):
            named = getattr(node, "id", "") if isinstance(node, ast.Name) else getattr(node, "attr", "")
            if named in names and node.lineno != line:  # type: ignore[attr-defined]
                lines.add(node.lineno)  # type: ignore[attr-defined]
    return _through(lines, through) or list(dict.fromkeys(test for tests in through.values() for test in tests))


def _through(lines: Iterable[int], through: dict[str, list[str]]) -> list[str]:
    return list(dict.fromkeys(test for at in sorted(lines) for test in through.get(str(at), ())))


def _forget(module: Path) -> None:
    """Python takes a compiled module for current by its second and its size, which a change may leave alike."""
    for compiled in (module.parent / "__pycache__").glob(f"{module.stem}.*.pyc"):
        compiled.unlink()
