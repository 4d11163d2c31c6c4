"""Parameters that follow from the body until they are moved."""

from __future__ import annotations

import math
from dataclasses import dataclass

import pytest

from kit import Lesson, blank_paper, bodice_block, cm, make_body, mm, workshop_chart
from kit.booklet.tables import choice_table
from kit.errors import KitError
from kit.language import speaking
from kit.lesson.following import told
from kit.lesson.lesson import values_for
from kit.proof.ranges import drawn, reaches
from kit.wording.worded import worded


@pytest.fixture(autouse=True)
def _own_folder(tmp_path, monkeypatch) -> None:
    monkeypatch.chdir(tmp_path)


def cape() -> Lesson:
    lesson = Lesson("Cape", start=bodice_block, size="W4")
    lesson.length("tie", lambda waist_girth: waist_girth / 2, least=20 * cm, most=60 * cm, why="to tie it")
    lesson.length("pocket", [12 * cm] * 5 + [13 * cm] * 5, least=8 * cm, most=16 * cm)
    lesson.count("buttons", {size: 4 + at // 3 for at, size in enumerate(lesson.sizes.names)}, least=2, most=9)
    return lesson


def test_a_value_follows_from_a_measurement_in_every_size() -> None:
    lesson = cape()
    chart = workshop_chart()
    for size in chart.names:
        values = {value.name: value.value for value in lesson.work(body=chart[size]).values}
        assert values["tie"] == pytest.approx(chart[size]["waist_girth"] / 2, abs=0.51)
        assert values["pocket"] == (120.0 if size in "W1 W2 W3 W4 W5" else 130.0) or size == "W10"
        lesson.choose(size=size)
        assert lesson.values == values


def test_a_body_for_whom_a_value_cannot_be_worked_out_is_not_put_in() -> None:
    lesson = Lesson("Cape", start=bodice_block, size="W4")
    lesson.length("tie", lambda waist_girth: math.sqrt(1300 - float(waist_girth)) * cm, least=5 * cm, most=60 * cm)
    before = lesson.values
    with pytest.raises(KitError, match="'tie'"):
        lesson.choose(body=make_body({"bust_girth": 150 * cm, "waist_girth": 140 * cm}, name="Ann"))
    assert lesson.body.name == "W4" and lesson.values == before


def test_between_sizes_a_value_by_size_is_read_straight() -> None:
    lesson = cape()
    lesson.choose(body=make_body({"bust_girth": 96.5 * cm}, name="Ann"))  # halfway from W5 to W6
    assert lesson.values["pocket"] == pytest.approx(125.0, abs=0.51)


def test_once_moved_it_stays_and_set_back_it_follows_again() -> None:
    lesson = cape()
    lesson.change(tie=48 * cm)
    lesson.choose(size="W9")
    assert lesson.values["tie"] == 480.0
    assert [value.follows is None for value in lesson.work().values] == [True, False, False]
    lesson.change(tie=lesson.parameters[0].default * mm)
    lesson.choose(size="W1")
    assert lesson.values["tie"] == pytest.approx(302.5, abs=0.51)
    lesson.change(tie=50 * cm)
    lesson.reset()
    assert lesson.values["tie"] == pytest.approx(302.5, abs=0.51)


def test_a_preset_that_does_not_name_it_lets_it_follow() -> None:
    lesson = cape()
    lesson.preset("Big pocket", pocket=15 * cm)
    lesson.change(tie=50 * cm)
    lesson.use_preset("Big pocket")
    lesson.choose(size="W1")
    assert lesson.values["tie"] == pytest.approx(302.5, abs=0.51) and lesson.values["pocket"] == 150.0


def test_only_what_was_moved_is_saved() -> None:
    lesson = cape()
    lesson.change(pocket=15 * cm)
    lesson.save()
    again = cape()
    assert again.values["pocket"] == 150.0
    again.choose(size="W1")
    assert again.values["tie"] == pytest.approx(302.5, abs=0.51)


def test_the_measurement_counts_as_used_and_the_range_is_kept() -> None:
    lesson = Lesson("Apron", start=blank_paper, size="W4")
    lesson.length("tie", lambda waist_girth: waist_girth / 2, least=20 * cm, most=60 * cm)
    assert "waist_girth" in lesson.measures
    lesson.choose(body=make_body({"bust_girth": 150 * cm, "waist_girth": 140 * cm}, name="Ann"))
    assert lesson.values["tie"] == 600.0


def test_an_object_that_is_called_need_not_be_fit_for_a_key() -> None:
    @dataclass
    class Part:
        share: float

        def __call__(self, waist_girth: float) -> float:
            return waist_girth * self.share

    lesson = Lesson("Apron", start=blank_paper, size="W4")
    lesson.length("tie", Part(0.5), least=20 * cm, most=60 * cm)
    assert "waist_girth" in lesson.measures and 300 < lesson.values["tie"] < 450


def test_ranges_are_tried_from_the_value_that_follows() -> None:
    lesson = Lesson("Cape", start=bodice_block, size="W4")
    lesson.length("tie", lambda waist_girth: waist_girth / 2, least=20 * cm, most=60 * cm)

    @lesson.step("Allowances")
    def allowances(front, back):
        """All round."""
        for piece in (front, back):
            piece.allow(neck=6 * mm, shoulder=1 * cm, armhole=5 * mm, side=1 * cm, hip=3 * cm)

    body = workshop_chart()["W9"]
    (reach,) = reaches(lesson.definition, body, values_for(lesson, body), samples=3)
    assert reach.whole
    import random

    assert 200.0 <= drawn(lesson.definition, body, random.Random(1))["tie"] <= 600.0


@pytest.mark.parametrize("language", ["en", "de", "es", "fr"])
def test_it_is_said_in_the_booklet_and_on_the_panel(language: str) -> None:
    lesson = cape()
    with speaking(language):
        table = choice_table(lesson.work())
        said = [worded(each) for p in lesson.parameters if (each := told(p, lesson.sizes))]
        assert table is not None and len(said) == 3
        assert all(text in row[3] for text, row in zip(said, table.rows, strict=True))
        assert lesson.parameters[0].why in table.rows[0][3]
    if language == "en":
        assert said[0] == "Follows from your waist girth."


def test_the_panel_says_so_until_it_is_moved() -> None:
    from kit import panel

    lesson = cape()
    shown = panel(lesson)
    row = shown.rows["tie"]
    assert "Follows from your waist girth." in row._why.value
    lesson.choose(size="W9")
    assert shown.rows["tie"] is row and row.box.value.startswith("50")
    lesson.change(tie=40 * cm)
    assert "Follows" not in row._why.value
    shown.close()


@pytest.mark.parametrize(
    ("default", "words"),
    [
        (lambda: 3 * cm, "name the measurements"),
        (lambda waste_girth: waste_girth, "waist_girth"),
        (lambda waist_girth: 3, "unit"),
        (lambda waist_girth: waist_girth * 4, r"size W1 it comes to 242 cm"),
        (lambda waist_girth: 1 / 0 * cm, "ZeroDivisionError"),
        ({"W1": 30 * cm}, "have no value"),
        ([30 * cm, 31 * cm], "2 values for 10 sizes"),
    ],
)
def test_what_is_refused(default, words: str) -> None:
    lesson = Lesson("Cape", start=bodice_block)
    with pytest.raises(KitError, match=words):
        lesson.length("tie", default, least=20 * cm, most=60 * cm)
