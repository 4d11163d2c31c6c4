"""What every test shares."""

from __future__ import annotations

import os
from pathlib import Path

import pytest
from hypothesis import Phase, settings

ROOT = Path(__file__).resolve().parent.parent

# The shared machine's speed is not what these tests are about. By hand hypothesis searches anew each time; the
# shared check repeats one search, so that a failure there tells of a change.
settings.register_profile("kit", deadline=None, print_blob=True, derandomize=bool(os.environ.get("CI")))
# A trial of small faults runs the same few examples each time and asks whether one fails, never which is the smallest.
settings.register_profile(
    "mutants", deadline=None, derandomize=True, database=None, max_examples=20, phases=(Phase.explicit, Phase.generate)
)
settings.load_profile(os.environ.get("KIT_HYPOTHESIS", "kit"))


@pytest.fixture(scope="session")
def root() -> Path:
    """The checkout."""
    return ROOT


@pytest.fixture(scope="session")
def out_folder() -> Path:
    """Where tests leave pictures and pages for people to look at: out/test-artefacts."""
    folder = ROOT / "out" / "test-artefacts"
    folder.mkdir(parents=True, exist_ok=True)
    return folder
