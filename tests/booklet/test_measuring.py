"""The page "How to measure": figure, numbers and notes agree; estimated measures are marked."""

from __future__ import annotations

import re
from dataclasses import replace

from kit.body import MEASUREMENTS, make_body, workshop_chart
from kit.booklet.forms import SCREEN
from kit.booklet.handover import Handover, SizeRow
from kit.booklet.measuring import measuring, used_measures
from kit.booklet.model import Measuring
from kit.booklet.pictures import Inks
from kit.booklet.step_shown import step_numbers
from kit.lesson.pattern import LessonInfo, Pattern, StepRecord
from kit.picture.theme import THEME
from kit.units import cm
from tests.lesson_words import example_lessons

USED = ("hip_girth", "bust_girth", "back_waist_length", "back_width")


def handed(body, measures=USED) -> Handover:
    pattern = Pattern(LessonInfo("Pebble top", "pebble-top"), body, (), (), (), (), ())
    chart = tuple(SizeRow(size.name, tuple((n, size[n]) for n in measures)) for size in workshop_chart().bodies())
    return Handover(pattern, chart)


def told(given: Handover) -> Measuring | None:
    return measuring(given, SCREEN, Inks.of(THEME, SCREEN))


def test_only_what_the_lesson_uses_is_told_in_the_tables_order() -> None:
    given = handed(workshop_chart()["W4"])
    assert used_measures(given) == ("bust_girth", "hip_girth", "back_width", "back_waist_length")
    page = told(given)
    assert page is not None and page.front is not None and page.back is not None
    assert [tape.number for tape in page.tapes] == [1, 2, 3, 4]
    assert [tape.note for tape in page.tapes] == [MEASUREMENTS[name].note for name in used_measures(given)]
    for number, name in ((1, "bust girth"), (3, "back width"), (4, "back waist length")):
        assert f"{number} {name}" in page.back.alt
    assert "back width" not in page.front.alt
    assert re.search(r">3</text>", page.back.svg)


def test_a_size_has_no_values_an_own_body_has_and_estimates_are_marked() -> None:
    page = told(handed(workshop_chart()["W4"]))
    assert page is not None and {tape.value for tape in page.tapes} == {""}
    body = make_body({"bust_girth": 96 * cm, "hip_girth": "104 cm"}, name="Mara")
    page = told(handed(body))
    assert page is not None
    assert [tape.estimated for tape in page.tapes] == [False, False, True, True]
    assert page.tapes[0].value == "96 cm (37 3/4 in)"


def test_a_lesson_without_measurements_has_no_such_page() -> None:
    given = handed(workshop_chart()["W4"], ())
    assert told(given) is None
    assert told(replace(given, chart=())) is None


def test_one_side_is_enough_when_the_other_shows_nothing() -> None:
    page = told(handed(workshop_chart()["W4"], ("back_width",)))
    assert page is not None and page.front is None and page.back is not None


def test_a_step_marks_the_estimated_measures_it_uses() -> None:
    body = make_body({"bust_girth": 96 * cm}, name="Mara")
    values = (("bust_girth", 960.0, "length"), ("hip_girth", body["hip_girth"], "length"))
    uses = ("bust_girth", "hip_girth")
    record = StepRecord("s", "Quarter", "Take {bust_girth} and {hip_girth}.", "c", uses, values, (), (), (), (), ())
    numbers = dict(step_numbers(record, replace(handed(body).pattern, steps=(record,))))
    assert "estimated" not in numbers["Bust girth"]
    assert numbers["Hip girth"].endswith(", estimated")


def test_a_measurement_of_the_lessons_own_is_said_not_to_be_in_the_figure() -> None:
    """Its number would be looked for there."""
    page = told(Handover(example_lessons()["limpet_hat"].work(values={})))
    assert page is not None
    assert [(tape.key, tape.drawn) for tape in page.tapes] == [("head_girth", True), ("crown_height", False)]


def test_where_there_is_no_figure_nothing_is_said_of_one() -> None:
    """A bag for a bottle asks for measurements of its own alone, and no figure is drawn."""
    hat = Handover(example_lessons()["limpet_hat"].work(values={}))
    steps = tuple(replace(step, uses=tuple(n for n in step.uses if n == "crown_height")) for step in hat.pattern.steps)
    page = told(replace(hat, pattern=replace(hat.pattern, steps=steps)))
    assert page is not None and page.front is None and page.back is None
    assert [(tape.key, tape.drawn) for tape in page.tapes] == [("crown_height", True)]
