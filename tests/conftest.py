"""What every test shares."""

from __future__ import annotations

import gc
import os
import sys
from collections import Counter
from collections.abc import Iterator
from pathlib import Path

import pytest
from hypothesis import Phase, settings

from kit.quick_start import leave_out_address_grammar
from tests.compiled import compile_together
from tests.kept import keeping
from tests.laid import sharing
from tests.patience import drafting_patiently

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


LONG = {
    "test_cells",
    "test_class_cli",
    "test_class_copy",
    "test_cli",
    "test_compose",
    "test_crowding",
    "test_endless_step",
    "test_findings_speak",
    "test_mutants",
    "test_pages_speak",
    "test_plain_text",
    "test_plurals",
    "test_pure_way",
    "test_refusals_speak",
    "test_release",
    "test_render",
    "test_run_notebook",
    "test_safety",
    "test_serve",
    "test_slips",
    "test_still",
    "test_terminal",
    "test_tried_on",
    "test_typing_help",
}
"""Files of few tests that take four seconds of work and more without being marked slow."""


def pytest_sessionstart(session: pytest.Session) -> None:
    compile_together(session.config)


def pytest_collection_finish() -> None:
    """Twelve thousand tests and all modules are there to the end; no look for lost circles need go through them."""
    gc.freeze()


def pytest_collection_modifyitems(items: list[pytest.Item]) -> None:
    """Files with slow tests come first, and those that take long with few, then those with most tests. On several cores
    a whole file goes to whoever is free, and a long one taken up last would leave the others with nothing to do."""
    tests = Counter(item.path for item in items)
    first = {item.path for item in items if item.get_closest_marker("slow") or item.path.stem in LONG}
    items.sort(key=lambda item: (item.path not in first, -tests[item.path], item.path))


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
def found_once(tmp_path_factory: pytest.TempPathFactory) -> Iterator[None]:
    """Cloth is laid, and what several files ask for is found, once for all tests and their processes."""
    base = tmp_path_factory.getbasetemp()
    base = base.parent if "PYTEST_XDIST_WORKER" in os.environ else base
    with sharing(base / "layouts"), keeping(base / "kept"):
        yield


@pytest.fixture(scope="session", autouse=True)
def time_to_draft() -> Iterator[None]:
    """No draft is stopped because other work keeps the machine busy."""
    with drafting_patiently():
        yield


@pytest.fixture(scope="session", autouse=True)
def kernels_ready() -> Iterator[None]:
    """A kernel is forked from one that has loaded what all of them load; where no file of tests begins one, Jupyter is
    not loaded either."""
    if "jupyter_client" not in sys.modules:
        yield
        return
    from tests.forked_kernels import kernels_forked

    with kernels_forked():
        yield
