"""What `from kit import ...` offers, and that it is quick."""

from __future__ import annotations

import json
import subprocess
import sys
from pathlib import Path

import kit

HEAVY = ("IPython", "ipywidgets", "matplotlib", "nbconvert", "numpy", "pikepdf", "reportlab", "shapely", "weasyprint")


def loaded(code: str) -> list[str]:
    """The heavy modules a new Python holds after `code`."""
    answer = subprocess.run(
        [
            sys.executable,
            "-c",
            f"{code}\nimport json, sys\nprint(json.dumps([m for m in {HEAVY!r} if m in sys.modules]))",
        ],
        capture_output=True,
        text=True,
        check=True,
    )
    found: list[str] = json.loads(answer.stdout)
    return found


def test_every_name_can_be_fetched() -> None:
    for name in kit.__all__:
        assert getattr(kit, name) is not None
    assert dir(kit) == sorted(kit.__all__)


def test_the_version_is_the_projects(root: Path) -> None:
    import tomllib

    project = tomllib.loads((root / "pyproject.toml").read_text(encoding="utf-8"))["project"]
    assert kit.__version__ == project["version"]


def test_an_unknown_name_is_an_attribute_error() -> None:
    assert not hasattr(kit, "leson")


def test_a_lesson_needs_nothing_heavy() -> None:
    assert loaded("import kit") == []
    assert loaded("from kit import Lesson, bodice_block, cm") == []


def test_the_panel_needs_widgets_alone() -> None:
    assert set(loaded("from kit import panel")) <= {"ipywidgets", "IPython"}
