"""What a type checker sees of the kit: an author's mistakes are flagged, a right lesson is not, and editors find the
verbs with what they take."""

from __future__ import annotations

import os
import re
import shutil
import subprocess
import sys
import tomllib
from contextlib import suppress
from pathlib import Path

import jedi
import pytest

HERE = Path(__file__).resolve().parent
STRICT = """
[mypy-kit]
implicit_reexport = False
[mypy-mistakes,sample_lesson]
check_untyped_defs = True
disallow_any_generics = True
disallow_incomplete_defs = True
disallow_subclassing_any = True
disallow_untyped_calls = True
disallow_untyped_decorators = True
disallow_untyped_defs = True
extra_checks = True
implicit_reexport = False
strict_equality = True
warn_return_any = True
warn_unused_ignores = True
"""
"""What `strict` asks of a lesson, and of what it imports from the kit."""
_FLAGGED = re.compile(r"^.*?(?P<file>\w+\.py):(?P<line>\d+): error: (?P<text>.*)  \[(?P<code>[\w-]+)\]$")
_MARK = re.compile(r"# ! (?P<code>[\w-]+): .+$")


def as_checked(root: Path) -> str:
    """How the kit itself is checked (pyproject.toml), for its modules: mypy takes over what it knows of a module where
    it is asked the same of it."""
    told = tomllib.loads((root / "pyproject.toml").read_text(encoding="utf-8"))["tool"]["mypy"]
    lines = ["[mypy]", *(f"{name} = {value}" for name, value in told.items() if name not in ("files", "overrides"))]
    for other in told["overrides"]:
        lines.append(f"[mypy-{','.join(other['module'])}]")
        lines += [f"{name} = {value}" for name, value in other.items() if name != "module"]
    return "\n".join(lines)


@pytest.fixture(scope="module")
def flagged(tmp_path_factory: pytest.TempPathFactory, root: Path) -> dict[str, dict[int, list[str]]]:
    """What mypy says, strictly, of the two lessons beside this file: file -> line -> codes. What a check of the kit has
    left of its modules is used, a copy of it."""
    folder = tmp_path_factory.mktemp("mypy")
    (folder / "mypy.ini").write_text(as_checked(root) + STRICT, encoding="utf-8")
    if (root / ".mypy_cache").is_dir():
        with suppress(OSError, shutil.Error):  # it may be written this very moment, and then is partly known
            shutil.copytree(root / ".mypy_cache", folder / "cache")
    answer = subprocess.run(
        [sys.executable, "-m", "mypy", "--config-file", str(folder / "mypy.ini"), "--cache-dir", str(folder / "cache")]
        + ["--no-error-summary", "--no-pretty", str(HERE / "mistakes.py"), str(HERE / "sample_lesson.py")],
        capture_output=True,
        text=True,
        cwd=folder,
        env={**os.environ, "MYPYPATH": str(root)},
    )
    assert answer.returncode in (0, 1), answer.stderr
    found: dict[str, dict[int, list[str]]] = {}
    for line in answer.stdout.splitlines():
        if match := _FLAGGED.match(line):
            found.setdefault(match["file"], {}).setdefault(int(match["line"]), []).append(match["code"])
        else:
            assert ": note: " in line, line
    return found


def test_mypy_flags_the_mistakes_and_nothing_else(flagged: dict[str, dict[int, list[str]]]) -> None:
    lines = (HERE / "mistakes.py").read_text(encoding="utf-8").splitlines()
    wanted = {number: [found["code"]] for number, line in enumerate(lines, 1) if (found := _MARK.search(line))}
    assert len(wanted) >= 20
    assert flagged["mistakes.py"] == wanted


def test_a_right_lesson_passes_strictly(flagged: dict[str, dict[int, list[str]]]) -> None:
    assert "sample_lesson.py" not in flagged


@pytest.mark.parametrize(
    ("written", "offered"),
    [
        ("front.move_da", {"move_dart"}),
        ("front.side.curve_", {"curve_into", "curve_square_to", "curve_to"}),
        ("front.point('neck_point').u", {"up"}),
        ("make.plain", {"plain_seam"}),
        ("make.ru", set()),
    ],
)
def test_an_editor_offers_the_verbs(written: str, offered: set[str]) -> None:
    code = f"from kit import BenchPiece, Make\ndef step(front: BenchPiece, make: Make):\n    {written}"
    assert {found.name for found in jedi.Script(code).complete()} == offered


def test_an_editor_shows_a_verbs_arguments_and_what_it_does() -> None:
    code = "from kit import BenchPiece, Make\ndef step(front: BenchPiece, make: Make):\n    "
    (dart,) = jedi.Script(f"{code}front.move_dart(").get_signatures()
    assert [p.name for p in dart.params] == ["name", "to", "at", "way", "pressed", "true"]
    assert "Move a dart to any edge" in dart.docstring()
    (seam,) = jedi.Script(f"{code}make.french_seam(").get_signatures()
    assert [p.name for p in seam.params] == ["a", "b", "first", "second", "press", "ease", "trim", "opening", "rows"]
    assert "wrong sides together" in seam.docstring()
