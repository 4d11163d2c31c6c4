"""Ease of finished measurements over the body."""

from __future__ import annotations

import pytest

from kit.blocks.blank import blank_paper
from kit.booklet.handover import work
from kit.errors import KitError
from kit.lesson.ease import ease
from kit.lesson.lesson import Lesson
from kit.units import cm


def test_ease_is_what_the_cloth_has_more_than_the_body(tideline: Lesson) -> None:
    body = tideline.sizes["W4"]
    pattern = tideline.work(body=body, values={})
    found = {title: (name, size) for title, name, size in ease(pattern)}
    # What is measured under the arms lies below the bust: its ease there is told of the garment itself (kit/wear).
    # The opening is drafted as the upper arm and twice the ease in it.
    assert found["Sleeve opening, all round"] == ("upper_arm_girth", pytest.approx(2 * 30.0))
    assert set(found) == {"Sleeve opening, all round"}
    assert pattern.over == tuple((title, name) for title, (name, _) in found.items())


def test_every_size_row_has_the_measurement_gone_over(tideline: Lesson) -> None:
    for row in work(tideline, None, None).chart:
        measures = dict(row.measures)
        assert {"bust_girth", "upper_arm_girth"} <= set(measures), row.name
        assert dict(row.finished)["Sleeve opening, all round"] - measures["upper_arm_girth"] == pytest.approx(60.0)


def test_a_lesson_on_blank_paper_asks_for_the_measurement_it_goes_over() -> None:
    lesson = Lesson("Belt", start=blank_paper, size="W4")

    @lesson.step("Draw the belt", makes="belt")
    def belt(belt):
        """A long rectangle."""
        a, b = belt.place(0, 0), belt.place(100 * cm, 0)
        c, d = belt.place(100 * cm, 4 * cm), belt.place(0, 4 * cm)
        belt.draw(low=a.to(b), end=b.to(c), top=c.to(d), begin=d.to(a))

    @lesson.finished("Belt", over="waist_girth")
    def long(belt):
        return belt.low.length

    assert lesson.measures == ("waist_girth",)
    (found,) = ease(lesson.work())
    assert found == ("Belt", "waist_girth", pytest.approx(1000.0 - lesson.sizes["W4"]["waist_girth"]))
    rows = work(lesson, None, None).chart
    assert all("waist_girth" in dict(row.measures) for row in rows) and len(rows) == len(lesson.sizes.names)


def test_an_unknown_measurement_is_refused_with_the_near_one(tideline: Lesson) -> None:
    with pytest.raises(KitError, match="bust_girth") as refused:
        tideline.finished("Chest", over="bust_girt")
    assert "Chest" in refused.value.where and "bust_girt'" in refused.value.what


def test_a_body_without_the_measurement_has_no_ease_to_tell(tideline: Lesson) -> None:
    from dataclasses import replace

    pattern = tideline.work(values={})
    kept = tuple(m for m in pattern.body.measures if m.name != "bust_girth")
    less = replace(pattern, body=replace(pattern.body, measures=kept))
    assert [name for _, name, _ in ease(less)] == ["upper_arm_girth"]
