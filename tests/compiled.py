"""Several processes of tests that start together compile the code once, each a part of it.

In a clean clone each would compile all of the kit and all tests, and rewrite the tests' assertions, at the same time as
the others: eight seconds of work for each process. Here each begins at another place of the list and leaves out what is
there already, so that all are through with the whole list when about everything was made once.
"""

from __future__ import annotations

import py_compile
import sys
from contextlib import suppress
from importlib.util import cache_from_source
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parent.parent


def compile_together(config: pytest.Config) -> None:
    """Compile what is missing, in a process that is one of several; alone, code is compiled as it is imported."""
    told = getattr(config, "workerinput", None)
    if told is None or sys.dont_write_bytecode:
        return
    number, count = int(told["workerid"].removeprefix("gw")), told["workercount"]
    files = sorted([*(ROOT / "kit").rglob("*.py"), *(ROOT / "tests").rglob("*.py")])
    files = [path for path in files if "bench" not in path.parts]
    start = len(files) * number // count
    for path in (*files[start:], *files[:start]):
        with suppress(Exception):  # what is wrong with a file is told when it is imported
            if path.name.startswith("test_") or path.name == "conftest.py":
                _rewrite(path, config)
            elif not Path(cache_from_source(str(path))).exists():
                py_compile.compile(str(path), quiet=2)


def _rewrite(path: Path, config: pytest.Config) -> None:
    """As pytest does when it imports a file of tests; another version of pytest may do it otherwise, and then does it
    as it imports."""
    from _pytest.assertion import rewrite

    folder = rewrite.get_cache_dir(path)
    file = folder / f"{path.stem}{rewrite.PYC_TAIL}"
    if not file.exists() and rewrite.try_makedirs(folder):
        told, code = rewrite._rewrite_test(path, config)
        rewrite._write_pyc(config.stash[rewrite.assertstate_key], code, told, file)
