"""The body measurements are looked up by name: each of the table stands in the terminal's list and in the notebook."""

from __future__ import annotations

import pytest

from kit import workshop_chart
from kit.body.measures import MEASUREMENTS
from kit.errors import KitError
from kit.language import speaking
from kit.reference.measurements import measurements_table
from kit.reference.told import help_on
from kit.resources import examples


@pytest.mark.parametrize("topic", ["measurements", "Body measurements", "measurement"])
def test_the_terminal_lists_them_all(topic: str) -> None:
    said = help_on(topic)
    lines = {line.split()[0] for line in said.splitlines() if line.startswith("  ") and line.strip()}
    assert set(MEASUREMENTS) <= lines and "lesson.measurement" in said


def test_one_is_told_with_how_it_is_taken_and_its_size() -> None:
    said = " ".join(help_on("head_girth").split())
    assert MEASUREMENTS["head_girth"].note in said and "hip_girth" not in said
    assert f"{workshop_chart()['W4']['head_girth'] / 10:.1f}" in said


def test_a_name_that_is_none_is_met_with_the_near_ones() -> None:
    with pytest.raises(KitError, match="hip_girth"):
        help_on("hips_girth")


def test_the_notebook_has_the_same_table() -> None:
    text = (examples() / "reference_drafting.ipynb").read_text(encoding="utf-8")
    for row in measurements_table().splitlines():
        assert row.replace('"', '\\"') in text


@pytest.mark.parametrize("language", ["de", "es", "fr"])
def test_they_are_told_in_every_language(language: str) -> None:
    english = help_on("hip_girth")
    with speaking(language):
        said = help_on("hip_girth")
    assert said != english and "hip_girth" in said


def test_an_example_in_a_lessons_own_entry_stands_as_it_is_typed() -> None:
    assert "\n>>> lesson = Lesson(" in help_on("lesson.measurement")
