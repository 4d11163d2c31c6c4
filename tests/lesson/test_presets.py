"""Presets: named sets of values, refused in words when they cannot be used."""

from __future__ import annotations

import json
from pathlib import Path

import pytest

from kit import KitError, bodice_block, cm
from kit.lesson.lesson import Lesson


@pytest.fixture
def lesson(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Lesson:
    monkeypatch.chdir(tmp_path)
    return made()


def made() -> Lesson:
    lesson = Lesson("Landing vest", start=bodice_block)
    lesson.length("sleeve_length", 23 * cm, least=5 * cm, most=60 * cm)
    lesson.share("wrap_share", 0.7, least=0.3, most=1.0)
    lesson.count("buttons", 5, least=0, most=9)
    return lesson


def test_what_a_preset_does_not_name_stands_at_the_lessons_own_value(lesson: Lesson) -> None:
    lesson.preset("Long sleeve", sleeve_length=45 * cm, buttons=3)
    lesson.change(wrap_share=0.9, buttons=1)
    assert lesson.definition.preset_values("Long sleeve") == {"sleeve_length": 450.0, "wrap_share": 0.7, "buttons": 3.0}
    assert lesson.values["wrap_share"] == 0.9, "offering one changes nothing"
    lesson.use_preset("Long sleeve")
    assert lesson.values == {"sleeve_length": 450.0, "wrap_share": 0.7, "buttons": 3.0}


def test_the_same_title_replaces_it_in_its_place(lesson: Lesson) -> None:
    lesson.preset("Long sleeve", sleeve_length="45 cm")
    lesson.preset("Short sleeve", sleeve_length=10 * cm)
    lesson.preset("Long sleeve", sleeve_length=50 * cm)
    assert [(one.title, one.named) for one in lesson.presets] == [
        ("Long sleeve", (("sleeve_length", 500.0),)),
        ("Short sleeve", (("sleeve_length", 100.0),)),
    ]


def test_a_cell_run_again_replaces_what_it_wrote(lesson: Lesson, monkeypatch: pytest.MonkeyPatch) -> None:
    where = {"cell": ("a", 1)}
    monkeypatch.setattr("kit.lesson.lesson.running_cell", lambda: where["cell"])
    lesson.preset("Long", sleeve_length=45 * cm)
    lesson.preset("Longer", sleeve_length=50 * cm)
    where["cell"] = ("b", 2)
    lesson.preset("Short", sleeve_length=10 * cm)
    where["cell"] = ("a", 3)
    lesson.preset("Very long", sleeve_length=55 * cm)
    assert [one.title for one in lesson.presets] == ["Very long", "Short"]


@pytest.mark.parametrize(
    ("values", "said"),
    [
        ({}, "Preset 'Long': it names no value"),
        ({"sleeve_lenght": 45 * cm}, "there is no parameter 'sleeve_lenght'.*sleeve_length"),
        ({"sleeve_length": 95 * cm}, "Preset 'Long': sleeve length is 95 cm.*outside its range of 5 cm"),
        ({"sleeve_length": 45}, "45 has no unit"),
        ({"wrap_share": "lots"}, "wrap share is 'lots', not a number"),
        ({"buttons": 2.5}, "buttons is 2.5, not a whole number"),
        ({"buttons": float("nan")}, "buttons is nan, not a whole number"),
    ],
)
def test_what_cannot_be_used_is_refused_in_words(lesson: Lesson, values: dict[str, object], said: str) -> None:
    with pytest.raises(KitError, match=f"(?s){said}"):
        lesson.preset("Long", **values)
    assert lesson.presets == ()


def test_a_title_is_needed_and_a_near_one_offered(lesson: Lesson) -> None:
    with pytest.raises(KitError, match="a preset needs a title"):
        lesson.preset(" ", sleeve_length=45 * cm)
    lesson.preset("Long sleeve", sleeve_length=45 * cm)
    with pytest.raises(KitError, match=r"(?s)no preset 'Long sleve'.*Long sleeve"):
        lesson.use_preset("Long sleve")


def test_a_range_narrowed_later_is_told_and_nothing_is_set(lesson: Lesson) -> None:
    lesson.preset("Long sleeve", sleeve_length=45 * cm, buttons=3)
    lesson.length("sleeve_length", 23 * cm, least=5 * cm, most=40 * cm)
    before = lesson.values
    with pytest.raises(KitError, match="Preset 'Long sleeve': sleeve length is 45 cm"):
        lesson.use_preset("Long sleeve")
    assert lesson.values == before


def test_values_as_the_last_session_left_them(lesson: Lesson) -> None:
    lesson.change(sleeve_length=30 * cm)
    lesson.save()
    later = made()
    later.change(sleeve_length=40 * cm)
    later.save()
    later.reset()
    assert later.sitting.opened_values(later.parameters)["sleeve_length"] == 300.0
    assert json.loads(later.sitting.sidecar.read_text())["values"] == {"sleeve_length": 400.0}


def test_a_variation_keeps_presets_and_adds_its_own(lesson: Lesson) -> None:
    lesson.preset("Long sleeve", sleeve_length=45 * cm)
    jacket = lesson.variation("Harbour jacket")
    jacket.preset("Short jacket", sleeve_length=8 * cm)
    assert [one.title for one in jacket.presets] == ["Long sleeve", "Short jacket"]
    assert [one.title for one in lesson.presets] == ["Long sleeve"]
