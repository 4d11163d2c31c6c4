"""What sewing pictures show is the garment as it lies by then: labels, and rules over every picture of the lessons."""

from __future__ import annotations

import tomllib
from pathlib import Path
from typing import Any

import pytest

from kit.body import workshop_chart
from kit.lesson.lesson import Lesson
from tests.example import lesson_notebooks
from tests.lesson_words import example_lessons
from tests.picture.sewn_rules import LOOSE, STRICT, Picture, against, counted, pictures

LABELS: list[dict[str, Any]] = tomllib.loads((Path(__file__).parent / "data" / "sewn_state.toml").read_text())["label"]
SEWN = [path.stem for path in lesson_notebooks() if path.stem != "blocks_and_moves"]
ALLOWED = {name: 0 for name in STRICT} | {name: 2 for name in LOOSE}
"""How many of a hundred pictures may break a rule, those in `SMALL` not counted."""
SMALL = ("buttonholes", "buttons", "band_ends", "hooks")
"""Operations whose work is small beside what it must be seen with, the whole end of a band, a hook and the band it lies
on: rule 1 is not asked."""


@pytest.fixture(scope="module")
def lessons() -> dict[str, Lesson]:
    return example_lessons()


@pytest.fixture(scope="module")
def middle(lessons: dict[str, Lesson]) -> dict[str, list[Picture]]:
    """The pictures of every lesson in the size W4."""
    body = workshop_chart()["W4"]
    return {name: list(pictures(lessons[name].work(body), name)) for name in SEWN}


@pytest.mark.parametrize("label", LABELS, ids=[f"{label['at']} {label['picture']}" for label in LABELS])
def test_a_picture_shows_what_its_label_says(label: dict[str, Any], middle: dict[str, list[Picture]]) -> None:
    mine = [each for each in middle[label["at"].split()[0]] if each.key == label["at"]]
    assert mine, "there is no such picture"
    assert list(against(mine[label["picture"]], label)) == [], label["why"]


def over_allowed(counts: dict[str, int], told: list[str], of: int) -> dict[str, int]:
    """The rules broken by more pictures than are allowed."""
    left = {name: len({line.split(": ")[1] for line in told if line.startswith(f"{name}: ")}) for name in counts}
    small = sum(line.startswith("1 framing") and line.split()[4] in SMALL for line in told)
    left["1 framing"] -= small
    return {name: count for name, count in left.items() if count > ALLOWED[name] * of / 100}


def table(counts: dict[str, int], of: int) -> str:
    return "\n".join([f"{of} pictures", *(f"{count:4} {name}" for name, count in counts.items())])


def test_the_rules_hold_in_one_size(middle: dict[str, list[Picture]]) -> None:
    found = [picture for each in middle.values() for picture in each]
    counts, told = counted(found)
    print(table(counts, len(found)), *told, sep="\n")
    assert len(found) > 80
    assert over_allowed(counts, told, len(found)) == {}, "\n".join(told)


@pytest.mark.slow
@pytest.mark.parametrize("size", ["W1", "W10"])
def test_the_rules_hold_in_the_least_and_the_largest_size(size: str, lessons: dict[str, Lesson]) -> None:
    body = workshop_chart()[size]
    found = [picture for name in SEWN for picture in pictures(lessons[name].work(body), name)]
    counts, told = counted(found)
    print(table(counts, len(found)), *told, sep="\n")
    assert over_allowed(counts, told, len(found)) == {}, "\n".join(told)
