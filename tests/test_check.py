"""The check itself (.ci/check.py): a part that fails stops no other, is named at the end, and the count is right."""

from __future__ import annotations

import importlib.util
import re
import subprocess
import sys
from collections.abc import Iterator
from pathlib import Path
from types import ModuleType

import pytest

from tests.conftest import LONG

PASSES, FAILS, BROKEN = "def test_one(): pass\n", "def test_two(): assert 1 == 2\n", "import nothing_like_it\n"


@pytest.fixture
def check(root: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Iterator[ModuleType]:
    """.ci/check.py, at work in a folder with three files of tests."""
    spec = importlib.util.spec_from_file_location("kit_check", root / ".ci" / "check.py")
    assert spec is not None and spec.loader is not None
    module = importlib.util.module_from_spec(spec)
    monkeypatch.setitem(sys.modules, "kit_check", module)
    spec.loader.exec_module(module)
    monkeypatch.setattr(module, "ROOT", tmp_path)
    monkeypatch.setattr(module, "OUT", tmp_path / "out")
    monkeypatch.setattr(module.signal, "signal", lambda *_: None)
    monkeypatch.setenv("PYTEST_DISABLE_PLUGIN_AUTOLOAD", "1")  # its few tests use none, and each run would load all
    for name, text in (("passes", PASSES), ("fails", PASSES + FAILS), ("broken", BROKEN)):
        (tmp_path / f"test_{name}.py").write_text(text)
    yield module


def run(check: ModuleType, monkeypatch: pytest.MonkeyPatch, *names: str) -> int:
    pytest_parts = [
        check.Part(name, "a file of tests", (*check.PYTEST, "-q", "-rfE", f"test_{name}.py"), row=number % 2)
        for number, name in enumerate(("broken", "fails", "passes"))
    ]
    plain = check.Part("plain", "no test at all", (check.PYTHON, "-c", "print('fine')"), counted=False)
    monkeypatch.setattr(check, "PARTS", (*pytest_parts, plain))
    return int(check.main(list(names)))


def test_every_part_runs_and_what_failed_is_named(
    check: ModuleType, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    assert run(check, monkeypatch) == 1
    said = capsys.readouterr().out
    lines = said.splitlines()
    assert re.search(r"^   broken +FAILED .* 0 +1 +0$", said, re.M)
    assert re.search(r"^   fails +FAILED .* 1 +1 +0$", said, re.M)
    assert re.search(r"^   passes +passed .* 1 +0 +0$", said, re.M)
    assert re.search(r"^   plain +passed .* 1 +0 +0$", said, re.M)
    assert any(line.startswith("   FAILED test_fails.py::test_two") for line in lines[-12:]), "told again at the end"
    assert lines[-2:] == ["Failed: broken, fails", "3 passed, 2 failed, 0 skipped"]


def test_all_is_well(check: ModuleType, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]) -> None:
    assert run(check, monkeypatch, "plain", "passes") == 0
    assert capsys.readouterr().out.splitlines()[-2:] == ["Every part passed.", "2 passed, 0 failed, 0 skipped"]


BUSY = """
from pathlib import Path

def test_before(): pass

def test_fails_the_first_time():
    tried = Path(__file__).with_name("tried")
    first = not tried.exists()
    tried.touch()
    assert not first
"""


def tried_again(check: ModuleType, monkeypatch: pytest.MonkeyPatch, tmp_path: Path, *names: str) -> int:
    (tmp_path / "test_busy.py").write_text(BUSY)
    parts = [
        check.Part(name, "a file of tests", (*check.PYTEST, "-q", "-rfE", *files), again=True)
        for name, files in {"busy": ("test_busy.py", "test_passes.py"), "broken": ("test_broken.py",)}.items()
    ]
    parts.append(check.Part("fails", "never tried again", (*check.PYTEST, "-q", "-rfE", "test_fails.py")))
    monkeypatch.setattr(check, "PARTS", tuple(parts))
    return int(check.main(list(names)))


def test_a_file_with_a_failure_is_run_once_more_alone(
    check: ModuleType, monkeypatch: pytest.MonkeyPatch, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """The part passes then, and what failed before is named all the same; the whole file runs, and no other."""
    assert tried_again(check, monkeypatch, tmp_path, "busy") == 0
    said = capsys.readouterr().out
    assert "== busy: once more, alone: test_busy.py\n" in said
    assert re.search(
        r"^== busy: failed while all ran, passed alone.*\n   FAILED test_busy.py::test_fails_the", said, re.M
    )
    assert re.search(r"^   busy +passed .* 3 +0 +0$", said, re.M)
    assert said.splitlines()[-2:] == ["Every part passed.", "3 passed, 0 failed, 0 skipped"]


def test_what_fails_again_has_failed(
    check: ModuleType, monkeypatch: pytest.MonkeyPatch, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert tried_again(check, monkeypatch, tmp_path) == 1
    said = capsys.readouterr().out
    assert "fails: once more" not in said and "broken: once more, alone: test_broken.py" not in said
    assert said.splitlines()[-2:] == ["Failed: broken, fails", "4 passed, 2 failed, 0 skipped"]


def test_without_a_second_try(
    check: ModuleType, monkeypatch: pytest.MonkeyPatch, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert tried_again(check, monkeypatch, tmp_path, "--once", "busy") == 1
    assert capsys.readouterr().out.splitlines()[-2:] == ["Failed: busy", "2 passed, 1 failed, 0 skipped"]


def test_many_files_that_fail_are_not_tried_again(check: ModuleType) -> None:
    """Then it is no busy machine."""
    named = [f"FAILED tests/test_{number}.py::test_it[a b.py] - assert" for number in range(check.AGAIN_AT_MOST + 1)]
    outcome = check.Outcome(check.PARTS[-1], status=1, failed=len(named), named=named)
    assert outcome.files[0] == "tests/test_0.py" and len(outcome.files) == len(named)
    check.try_again(outcome)
    assert outcome.status == 1 and outcome.named == named


def test_a_part_that_is_ended_from_outside_says_so(
    check: ModuleType, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    shot = check.Part("shot", "killed", (check.PYTHON, "-c", "import os; os.kill(os.getpid(), 15)"))
    monkeypatch.setattr(check, "PARTS", (shot,))
    assert check.main([]) == 1
    said = capsys.readouterr().out.splitlines()
    assert "== shot failed (ended by SIGTERM): out/checks/shot.log" in said
    assert said[-1] == "0 passed, 1 failed, 0 skipped"


def test_a_part_that_is_not_there(
    check: ModuleType, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    assert run(check, monkeypatch, "passed") == 2
    assert "There is no part passed. Parts: broken, fails, passes, plain." in capsys.readouterr().err


def test_code_is_compiled_once_and_nothing_is_left_beside_it(
    check: ModuleType, monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    (tmp_path / "imported.py").write_text("")
    part = check.Part("one", "an import", (check.PYTHON, "-c", "import imported"), counted=False)
    monkeypatch.setattr(check, "PARTS", (part,))
    monkeypatch.delenv("PYTHONPYCACHEPREFIX", raising=False)
    monkeypatch.setenv("PYTHONDONTWRITEBYTECODE", "1")
    assert check.main([]) == 0
    assert not list(tmp_path.glob("__pycache__"))
    assert [path.name.split(".")[0] for path in (tmp_path / "out" / "bytecode").rglob("imported*.pyc")] == ["imported"]
    monkeypatch.delenv("PYTHONDONTWRITEBYTECODE")
    assert check.main([]) == 0
    assert len(list((tmp_path / "__pycache__").glob("imported*.pyc"))) == 1


def test_what_needs_a_browser_lies_where_its_part_looks(root: Path, check: ModuleType) -> None:
    """That part collects one folder, and all others leave out what is marked."""
    marked = {path for path in (root / "tests").rglob("test_*.py") if "mark.browser" in path.read_text("utf-8")}
    marked -= {path for path in marked if "bench" in path.parts} | {Path(__file__).resolve()}
    folder = {path for path in (root / "tests" / "browser").glob("test_*.py")}
    assert marked == folder != set()
    assert next(part for part in check.PARTS if part.name == "browser").command[-1] == "tests/browser"


def test_files_that_take_long_and_those_with_slow_tests_come_first(root: Path) -> None:
    """Those named are there, and pytest hands them out before any other."""
    assert {path.stem for path in (root / "tests").rglob("test_*.py")} >= LONG
    asked = ["tests/test_units.py", "tests/test_check.py", "tests/test_terminal.py", "tests/page/test_pure_way.py"]
    command = [sys.executable, "-m", "pytest", "-p", "no:nbval", "--collect-only", "-q", *asked]
    told = subprocess.run(command, cwd=root, capture_output=True, text=True, check=True).stdout
    files = dict.fromkeys(line.partition("::")[0] for line in told.splitlines() if "::" in line)
    assert list(files) == ["tests/test_terminal.py", "tests/page/test_pure_way.py", *asked[:2]]
