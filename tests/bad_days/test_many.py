"""Very many of what there are usually few: it is read and worked, or refused in words."""

from __future__ import annotations

from pathlib import Path

import pytest

from kit import Lesson, blank_paper, cm
from kit.booklet.bodies import read_people

pytestmark = pytest.mark.slow


def test_a_table_of_a_hundred_thousand_rows_is_read_each_row_on_its_own(tmp_path: Path) -> None:
    table = tmp_path / "all.csv"
    table.write_text("name,bust\n" + "".join(f"P{i},{80 + i % 40}\n" for i in range(100_000)) + "Last,ninety\n")
    people = read_people(table, "cm")
    assert len(people.rows) == 100_001
    assert [row.line for row in people.rows if row.trouble] == [100_002]


def test_a_lesson_of_three_thousand_steps_is_worked() -> None:
    lesson = Lesson("Many", start=blank_paper, time_limit=60)

    @lesson.step("Draw", makes="front")
    def draw(front):
        """Rule a triangle."""
        a, b, c = front.place(0 * cm, 0 * cm), front.place(10 * cm, 0 * cm), front.place(5 * cm, 10 * cm)
        front.draw(base=a.to(b), one=b.to(c), other=c.to(a))

    for number in range(2999):
        space: dict[str, object] = {"lesson": lesson}
        exec(f'@lesson.step(\'Look {number}\')\ndef look_{number}(front):\n    """Look."""', space)
    pattern = lesson.work()
    assert len(pattern.steps) == 3000 and pattern.steps[-1].title == "Look 2998"
