"""The way from values to drawing, sentence, measures, findings, remedies and exercises needs nothing compiled: every
example lesson goes it with all other packages locked out."""

from __future__ import annotations

import json
import subprocess
import sys
from pathlib import Path

from tests.example import GARMENTS

ROOT = Path(__file__).parents[2]


def test_every_lesson_without_packages() -> None:
    notebooks = [str(ROOT / "example_notebooks" / f"{name}.ipynb") for name in GARMENTS]
    script = Path(__file__).with_name("without_packages.py")
    # The limit is for a lesson that never ends; on a busy machine all of them together take more than four minutes.
    ran = subprocess.run(
        [sys.executable, str(script), *notebooks], capture_output=True, text=True, cwd=ROOT, timeout=900
    )
    assert ran.returncode == 0, ran.stderr
    *told, loaded = map(json.loads, ran.stdout.splitlines())
    assert loaded == [] and len(told) == len(GARMENTS)
    by_name = dict(zip(GARMENTS, told, strict=True))
    for name, each in by_name.items():
        assert each["refused"] == [], name
        assert each["drawn"] > 8 and each["asked"] > each["drawn"], name
    assert by_name["tideline_wrap_top"]["exercises"] and by_name["tideline_wrap_top"]["finished"] > 3
