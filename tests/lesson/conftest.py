"""Small lessons to work with, run outside a notebook."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest

from kit.blocks.bodice import bodice_block
from kit.lesson.lesson import Lesson
from kit.units import cm
from tests.example import EXAMPLE, notebook_names


@pytest.fixture(scope="session")
def tideline() -> Lesson:
    lesson = notebook_names(EXAMPLE)["lesson"]
    assert isinstance(lesson, Lesson)
    lesson.reset()
    return lesson


@pytest.fixture
def make_lesson(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Callable[[], Lesson]:
    """A small lesson: the block with its hem lowered, in a folder of its own."""
    monkeypatch.chdir(tmp_path)

    def make() -> Lesson:
        lesson = Lesson("Short block", start=bodice_block, size="W4")
        lesson.length("hem_drop", 8 * cm, least=2 * cm, most=18 * cm, why="length")

        @lesson.step("Lower the hem")
        def lower(front, hem_drop):
            """Rule the hem {hem_drop} below the waist."""
            front.draw(hem=front.waist.parallel(hem_drop, "down"), instead_of=front.hip)
            front.join(front.side, front.hem)
            front.join(front.hem, front.centre)

        return lesson

    return make
