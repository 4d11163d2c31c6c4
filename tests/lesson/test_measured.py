"""What `measure` is told: two points or a line, and nothing else."""

from __future__ import annotations

import pytest

from kit import Lesson, skirt_block
from kit.errors import KitError


def test_a_measure_that_is_neither_line_nor_points_is_told_so() -> None:
    lesson = Lesson("Skirt", start=skirt_block, size="W4")

    @lesson.step("Measure")
    def measure(front):  # type: ignore[no-untyped-def]
        front.measure(half_waist=front.waist.length * 2)

    with pytest.raises(KitError, match=r"'half_waist' was given Length.*two points"):
        lesson.work()
