"""What every test shares."""

from __future__ import annotations

import gc
import os
from collections import Counter
from collections.abc import Iterator
from pathlib import Path

import pytest
from hypothesis import Phase, settings

from kit.quick_start import leave_out_address_grammar
from tests.laid import sharing

leave_out_address_grammar()  # most tests read notebooks; none asks for it

# Values hardly ever hold one another in a circle, and a run of tests keeps much alive: looking for lost circles after
# every 700 new objects costs a tenth of the time and finds next to nothing.
gc.set_threshold(50_000, 20, 100)

ROOT = Path(__file__).resolve().parent.parent

# The shared machine's speed is not what these tests are about. By hand hypothesis searches anew each time; the
# whole check repeats one search, so that a failure there tells of a change (`.ci/check.py` asks for "check").
settings.register_profile("kit", deadline=None, print_blob=True, derandomize=bool(os.environ.get("CI")))
settings.register_profile("check", deadline=None, print_blob=True, derandomize=True)
# A trial of small faults runs the same few examples each time and asks whether one fails, never which is the smallest.
settings.register_profile(
    "mutants", deadline=None, derandomize=True, database=None, max_examples=20, phases=(Phase.explicit, Phase.generate)
)
settings.load_profile(os.environ.get("KIT_HYPOTHESIS", "kit"))


def pytest_collection_modifyitems(items: list[pytest.Item]) -> None:
    """Files with slow tests come first, then those with most tests. On several cores a whole file goes to whoever is
    free, and a long one taken up last would leave the others with nothing to do."""
    tests = Counter(item.path for item in items)
    slow = {item.path for item in items if item.get_closest_marker("slow")}
    items.sort(key=lambda item: (item.path not in slow, -tests[item.path], item.path))


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


@pytest.fixture(scope="session", autouse=True)
def layouts_shared(tmp_path_factory: pytest.TempPathFactory) -> Iterator[None]:
    """Cloth is laid once for all tests and their processes."""
    base = tmp_path_factory.getbasetemp()
    with sharing((base.parent if "PYTEST_XDIST_WORKER" in os.environ else base) / "layouts"):
        yield
