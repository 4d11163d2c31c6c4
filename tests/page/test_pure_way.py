"""The way from values to drawing, sentence, measures, findings, remedies and exercises needs nothing compiled: every
example lesson goes it with all other packages locked out."""

from __future__ import annotations

import json
import subprocess
import sys
from pathlib import Path

ROOT = Path(__file__).parents[2]
LESSONS = ("tideline_wrap_top", "harbour_jacket", "dune_skirt", "ferry_tote", "lantern_bag", "neap_tide_wrap")


def test_every_lesson_without_packages() -> None:
    notebooks = [str(ROOT / "example_notebooks" / f"{name}.ipynb") for name in LESSONS]
    script = Path(__file__).with_name("without_packages.py")
    ran = subprocess.run(
        [sys.executable, str(script), *notebooks], capture_output=True, text=True, cwd=ROOT, timeout=240
    )
    assert ran.returncode == 0, ran.stderr
    *told, loaded = map(json.loads, ran.stdout.splitlines())
    assert loaded == [] and len(told) == len(LESSONS)
    for name, each in zip(LESSONS, told, strict=True):
        assert each["refused"] == [], name
        assert each["drawn"] > 8 and each["asked"] > each["drawn"], name
    assert told[0]["exercises"] and told[0]["finished"] > 3
