"""Fit changes on the panel: proposed for a body, set by hand, kept beside the notebook, undone."""

from __future__ import annotations

import pytest

from kit import Lesson, cm, darted_bodice_block, make_body, skirt_block
from kit.live.panel import Panel, panel


@pytest.fixture(autouse=True)
def _own_folder(tmp_path, monkeypatch):
    monkeypatch.chdir(tmp_path)


def shown(lesson: Lesson) -> Panel:
    made = panel(lesson)
    made.refresh()
    made._draw()
    return made


def test_a_change_chosen_by_hand_gets_its_slider_and_is_undone():
    lesson = Lesson("Skirt", start=skirt_block)
    seen = shown(lesson)
    assert seen.rows == {}
    seen.fit.open.value = True
    assert [name for _, name in seen.fit.choice.options if name][:2] == ["lengthen_above_hip", "shorten_above_hip"]
    seen.fit.choice.value = "full_seat"
    seen.fit.add.click()
    seen._draw()
    assert lesson.values == {"full_seat": 10.0}
    assert list(seen.rows) == ["full_seat"]
    lesson.change(full_seat=2 * cm)
    assert lesson.undo()
    assert lesson.values == {"full_seat": 10.0}
    assert lesson.undo()
    assert lesson.values == {}
    assert lesson.redo()
    assert lesson.values == {"full_seat": 10.0}
    lesson.save()
    assert Lesson("Skirt", start=skirt_block).values == {"full_seat": 10.0}


def test_what_a_body_asks_for_is_set_with_its_size():
    lesson = Lesson("Blouse", start=darted_bodice_block)
    seen = shown(lesson)
    seen.fit.open.value = True
    assert "by itself" in seen.fit.advice.value
    lesson.choose(
        body=make_body({"upper_chest_girth": 88 * cm, "bust_girth": 98 * cm, "arm_length": 64 * cm}, name="Me")
    )
    seen._draw()
    assert "Full bust: 6.1 cm" not in seen.fit.choice.options
    assert "Full bust" in seen.fit.advice.value
    assert seen.fit.take.description == f"Draw size {seen.fit._advice.size} with this change"
    seen.fit.take.click()
    assert lesson.body.name == seen.fit._advice.size if seen.fit._advice else lesson.body.name in lesson.sizes
    (value,) = lesson.values.values()
    assert list(lesson.values) == ["full_bust"]
    assert value > 50
    assert lesson.work().steps[0].title == "Full bust"


def test_a_body_far_off_is_altered_as_far_as_can_be():
    lesson = Lesson("Blouse", start=darted_bodice_block)
    lesson.choose(body=make_body({"upper_chest_girth": 80 * cm, "bust_girth": 110 * cm}, name="Me"))
    seen = shown(lesson)
    seen.fit.open.value = True
    assert seen.fit._asked() == {"full_bust": 120.0}
    assert "Set only to the most it takes: Full bust: 12 cm" in seen.fit.advice.value
    lesson.choose(body=make_body({"upper_chest_girth": 88 * cm, "bust_girth": 98 * cm}, name="Me"))
    seen.refresh()
    seen._draw()
    assert "Full bust" in seen.fit.advice.value and "Set only" not in seen.fit.advice.value
