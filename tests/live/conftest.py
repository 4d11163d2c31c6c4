"""A small lesson of our own for the live tests: a bodice whose hem and side a reader may move."""

from __future__ import annotations

import asyncio
import time
from collections.abc import Callable
from pathlib import Path

import pytest

from kit import Lesson, bodice_block, cm

LessonMaker = Callable[[], Lesson]
PATIENCE = 120.0
"""Seconds within which a busy machine does anything that is waited for; what is waited for is a state."""


async def until(true: Callable[[], object]) -> None:
    """Let the loop go on until something is `true`."""
    end = time.monotonic() + PATIENCE
    while not true():
        assert time.monotonic() < end, "it did not come"
        await asyncio.sleep(0.005)


def small_lesson() -> Lesson:
    lesson = Lesson("Landing vest", start=bodice_block, units="cm", size="W4", edition="1", date="2026-11")
    lesson.length("hem_drop", 14 * cm, least=4 * cm, most=20 * cm, why="how far it reaches <below> the waist")
    lesson.share("wrap_share", 0.7, least=0.3, most=1.0, why="how far it wraps")
    lesson.count("buttons", 5, least=0, most=9)

    @lesson.step("Lower the <hem>")
    def lower_hem(front, hem_drop):
        """Rule the hem {hem_drop} below the waistline."""
        front.draw(hem=front.waist.parallel(hem_drop, "down"), instead_of=front.hip)
        front.join(front.side, front.hem)
        front.join(front.hem, front.centre)

    @lesson.step("Mark a share of the waist")
    def mark_share(front, wrap_share, buttons):
        """Mark {wrap_share} of the waistline; {buttons} buttons."""
        front.mark(corner=front.waist.share(wrap_share))

    @lesson.finished("Hem, all round")
    def hem_round(front):
        return front.hem.length * 4

    return lesson


@pytest.fixture
def make_lesson(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> LessonMaker:
    """Makes the small lesson, its sidecar in a folder of the test's own."""
    monkeypatch.chdir(tmp_path)
    monkeypatch.delenv("LESSONKIT_BUILD", raising=False)
    return small_lesson
