"""Fittings written in a notebook's cells, in a real kernel."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest

from tests.lesson.test_cells import LESSON, Kernel, errors

FITTING = """
lesson.fitting("First toile", "It rode up.", hem_drop=(12 * cm, 14 * cm))
"""
SECOND = """
lesson.fitting("Second toile", "Still short.", hem_drop=(14 * cm, 15 * cm))
"""
FOUND = "[(f.title, f.changes[0].before) for f in lesson.fittings]"


@pytest.fixture(scope="module")
def kernel(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Kernel]:
    folder: Path = tmp_path_factory.mktemp("fittings")
    kernel = Kernel(folder, {"LESSONKIT_BUILD": ""})
    yield kernel
    kernel.client.stop_channels()
    kernel.manager.shutdown_kernel(now=True)


@pytest.fixture
def taught(kernel: Kernel) -> Kernel:
    """The kernel with the lesson's cell run; the same one for every test, each of which writes fittings of its own."""
    assert not errors(kernel.run("lesson", LESSON))
    return kernel


def test_cells_run_again_in_any_order_keep_one_of_each(taught: Kernel) -> None:
    kernel = taught
    for cell, code in (("first", FITTING), ("second", SECOND)):
        answers = kernel.run(cell, code)
        assert not errors(answers)
    assert not [a for a in answers if a["msg_type"] in ("execute_result", "display_data")], "nothing is printed"
    kernel.run("first", FITTING.replace("First toile", "Paper fitting").replace("12 *", "13 *"))
    assert kernel.value(FOUND) == [["Paper fitting", 130.0], ["Second toile", 140.0]]
    kernel.run("lesson", LESSON)  # the lesson's own cell again: what other cells wrote stays
    assert kernel.value(FOUND) == [["Paper fitting", 130.0], ["Second toile", 140.0]]
    kernel.run("second", SECOND)
    assert kernel.value(FOUND) == [["Paper fitting", 130.0], ["Second toile", 140.0]]


def test_a_refusal_is_shown_in_one_line(taught: Kernel) -> None:
    (error,) = errors(taught.run("third", 'lesson.fitting("Third", "why", hem_dorp=(1 * cm, 2 * cm))'))
    assert "Did you mean 'hem_drop'?" in "".join(error["traceback"]) and len(error["traceback"]) == 1
