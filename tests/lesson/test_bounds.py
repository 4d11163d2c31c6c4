"""Bounds that follow from other values: refused before drafting, by the slider's name and how far it may go."""

from __future__ import annotations

import random

import pytest

from kit import KitError, Lesson, blank_paper, bodice_block, cm, mm, remedies, workshop_chart
from kit.language import languages, speaking
from kit.lesson.bounds import Known, narrowed
from kit.proof.ranges import drawn


def flag() -> Lesson:
    """A rectangle with a slit in its side: the slit must leave 2 cm."""
    lesson = Lesson("Flag", start=blank_paper)
    lesson.length("long", 30 * cm, least=10 * cm, most=60 * cm)
    lesson.length(
        "slit", 5 * cm, least=1 * cm, most=40 * cm, at_most=lambda long: long - 2 * cm, said="slit at the side"
    )

    @lesson.step("Rule the flag", makes="flag")
    def rule(flag, long, slit):  # type: ignore[no-untyped-def]
        a, b = flag.place(0 * mm, 0 * mm), flag.place(long, 0 * mm)
        c, d = flag.place(long, 10 * cm), flag.place(0 * mm, 10 * cm)
        flag.draw(bottom=a.to(b), right=b.to(c), top=c.to(d), left=d.to(a))
        flag.leave_open("slit", "bottom", at=0 * mm, size=slit)
        flag.allow(bottom=1 * cm, right=1 * cm, top=1 * cm, left=1 * cm)
        flag.cut(1, title="Flag")

    return lesson


def test_a_setting_that_breaks_it_is_refused_with_name_value_and_cause() -> None:
    lesson = flag()
    with pytest.raises(KitError) as caught:
        lesson.work(values={**lesson.values, "slit": 290.0})
    said = str(caught.value)
    assert "slit at the side" in said and "29 cm" in said and "long 30 cm" in said and "at most 28 cm" in said
    assert lesson.work(values={**lesson.values, "slit": 280.0}).pieces
    assert lesson.work(values={**lesson.values, "slit": 290.0, "long": 310.0}).pieces


def test_it_is_said_in_the_readers_language() -> None:
    lesson = flag()
    for code in languages():
        with speaking(code), pytest.raises(KitError) as caught:
            lesson.work(values={**lesson.values, "slit": 290.0})
        with speaking(code):
            assert "[en]" not in str(caught.value) and "slit at the side" in str(caught.value)


def test_both_the_slider_and_what_it_follows_from_are_remedies() -> None:
    lesson = flag()
    found = {remedy.names: remedy for remedy in remedies(lesson, values={**lesson.values, "slit": 290.0})}
    assert found[("slit",)].changes[0].value == pytest.approx(280)
    assert found[("long",)].changes[0].value == pytest.approx(310)


def test_the_bound_is_told_on_the_side_that_keeps_it() -> None:
    """What a refusal names can be set: 27.96 cm left are 27.9 cm at most, 2.04 cm needed 2.1 cm at least."""
    lesson = Lesson("Vest", start=bodice_block)
    lesson.length("a", 20.4 * mm, least=1 * cm, most=9 * cm)
    lesson.length("low", 3 * cm, least=0 * cm, most=9 * cm, at_least=lambda a: a)
    lesson.length("high", 1 * cm, least=0 * cm, most=9 * cm, at_most=lambda a: a)
    for values, told, good in (({"low": 10.0}, "2.1 cm", {"low": 21.0}), ({"high": 30.0}, "2 cm", {"high": 20.0})):
        with pytest.raises(KitError, match=told):
            lesson.work(values={**lesson.values, **values})
        assert lesson.work(values={**lesson.values, **good}).pieces


def test_the_other_system_keeps_it_too() -> None:
    """5.8 cm are 2.28 in: at least 2 5/16, at most 2 1/4. Either text can be set (1 in is 25.4 mm)."""
    lesson = Lesson("Vest", start=bodice_block)
    lesson.length("a", 58 * mm, least=1 * cm, most=9 * cm)
    lesson.length("low", 6 * cm, least=0 * cm, most=9 * cm, at_least=lambda a: a)
    lesson.length("high", 1 * cm, least=0 * cm, most=9 * cm, at_most=lambda a: a)
    for values, told, good in (
        ({"low": 40.0}, "2 5/16 in", {"low": 2.3125 * 25.4}),
        ({"high": 80.0}, "2 1/4 in", {"high": 2.25 * 25.4}),
    ):
        with pytest.raises(KitError, match=told):
            lesson.work(values={**lesson.values, **values})
        assert lesson.work(values={**lesson.values, **good}).pieces


def test_a_measurement_may_be_what_it_follows_from() -> None:
    lesson = Lesson("Vest", start=bodice_block)
    lesson.length("tie", 90 * cm, least=10 * cm, most=200 * cm, at_least=lambda waist_girth: waist_girth + 10 * cm)
    chart = workshop_chart()
    assert lesson.work(body=chart["W4"]).pieces
    with pytest.raises(KitError, match="waist girth"):
        lesson.work(body=chart["W10"])


@pytest.mark.parametrize(
    ("bound", "why"),
    [
        (30 * cm, "not a function"),
        (lambda: 3 * cm, "must name the values"),
        (lambda *every: 3 * cm, "must name the values"),
        (lambda slit: slit, "follows from 'slit' itself"),
    ],
)
def test_what_is_no_bound_is_refused_where_it_is_written(bound: object, why: str) -> None:
    with pytest.raises(KitError, match=why):
        Lesson("Vest", start=blank_paper).length("slit", 5 * cm, least=0 * cm, most=9 * cm, at_most=bound)  # type: ignore[arg-type]


@pytest.mark.parametrize(
    ("bound", "why"),
    [
        (lambda lonh: lonh, "'lonh'.*long"),
        (lambda long: 30.0, "unit"),
        (lambda long: long / 0, "stopped with ZeroDivisionError"),
    ],
)
def test_a_bound_that_cannot_be_asked_says_why(bound: object, why: str) -> None:
    lesson = flag()
    lesson.length("slit", 5 * cm, least=1 * cm, most=40 * cm, at_most=bound)  # type: ignore[arg-type]
    with pytest.raises(KitError, match=why):
        lesson.work()


def test_draws_keep_every_bound_and_reach_both_ends() -> None:
    definition = flag().definition
    body, chance = workshop_chart()["W4"], random.Random(3)
    settings = [drawn(definition, body, chance) for _ in range(300)]
    room = [values["long"] - 20 - values["slit"] for values in settings]
    assert min(room) >= -1e-6 and min(room) < 15 and max(values["slit"] for values in settings) > 350


def test_a_slider_is_narrowed_to_what_the_other_values_leave() -> None:
    definition = flag().definition
    by_name = {parameter.name: parameter for parameter in definition.parameters}
    left = narrowed(by_name["slit"], Known(by_name, {"long": 150.0, "slit": 50.0}, workshop_chart()["W4"]))
    assert (left.least, left.most) == (10.0, 130.0)
