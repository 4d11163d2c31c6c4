"""Where a page opens: as it was asked for when it was built."""

from __future__ import annotations

import subprocess
import sys
from pathlib import Path

import pytest

from kit import cm, open_lesson
from kit.body.make import make_body
from kit.booklet.asked_draft import AskedDraft
from kit.booklet.handover import work
from kit.errors import KitError
from kit.page import build
from kit.page.opening import opening

ROOT = Path(__file__).parents[2]
SKIRT = ROOT / "example_notebooks" / "dune_skirt.ipynb"


def test_size_units_and_values_that_were_asked_for() -> None:
    lesson = open_lesson(SKIRT)
    asked = AskedDraft(values=(("hem_allowance", "1 in"),))
    begins = opening(work(lesson, "W6", "inch", asked=asked), asked)
    assert begins.told == {"size": "W6", "units": "inch", "values": {"hem_allowance": 25.4}} and begins.note == ""


def test_nothing_asked_for_is_the_lessons_own() -> None:
    lesson = open_lesson(SKIRT)
    begins = opening(work(lesson, None, None), None)
    assert begins.told == {"size": lesson.body.name, "units": lesson.units, "values": {}}


def test_values_that_only_stand_are_the_authors_own() -> None:
    lesson = open_lesson(SKIRT)
    lesson.change(hem_allowance=3 * cm)
    assert opening(work(lesson, None, None), None).values == {}


def test_somebodys_body_stays_out() -> None:
    lesson = open_lesson(SKIRT)
    lesson.choose(body=make_body({"waist_girth": "80 cm", "hip_girth": "104 cm"}, name="Ines"))
    begins = opening(work(lesson, None, None), None)
    assert begins.size == "" and "not for Ines" in begins.note


def test_the_command_takes_them() -> None:
    ran = subprocess.run([sys.executable, "-m", "kit.cli", "live", "--help"], capture_output=True, text=True, cwd=ROOT)
    assert all(option in ran.stdout for option in ("--size", "--units", "--values", "--preset"))


def test_the_page_is_tried_where_it_opens() -> None:
    """Where it opens with a value the lesson cannot have, nothing is built."""
    from kit.live.class_source import class_source

    files = build.kept_kit(("en",))
    lesson = dict(class_source(SKIRT, "lesson.ipynb").files)
    options = {"languages": ["en"], "sliders": None, "cloth": {}}
    begins = {"size": "W6", "units": "inch", "values": {"hem_allowance": 30.0}}
    assert build._try(files, lesson, {**options, "opening": begins})
    with pytest.raises(KitError, match="cannot be worked in a browser"):
        build._try(files, lesson, {**options, "opening": {**begins, "values": {"hem_allowance": 9000.0}}})
    with_a_fit_change = {**begins, "values": {"lengthen_above_hip": 10.0}}
    assert build._try(files, lesson, {**options, "opening": with_a_fit_change})
