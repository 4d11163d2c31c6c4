"""The worksheet's first part, the block a lesson starts from, in the language of the rest."""

from __future__ import annotations

import pytest

from kit.body.measures import FROM_WAIST, MEASUREMENTS
from kit.booklet.handover import Handover, SizeRow
from kit.booklet.own_language import spoken
from kit.booklet.run_notebook import read_notebook
from kit.booklet.tables import ease_table, steady
from kit.language import say, speaking
from kit.lesson.another import open_lesson
from kit.prose.worksheet import worksheet
from kit.resources import examples
from kit.wear.finished import fitted


def test_the_block_s_darts_are_called_as_in_the_steps() -> None:
    path = examples() / "dune_skirt.ipynb"
    given = Handover(open_lesson(path).work())
    with speaking("de"):
        german, _, notes = spoken(given, read_notebook(path), path, "de")
        said = " ".join(line.words for sheet in worksheet(german.pattern)[0].sheets for line in sheet.lines)
    assert notes == () and "Waist dart" not in said and "Taillenabnäher" in said


def test_a_point_at_the_crossing_is_told_as_that() -> None:
    points = [
        point for step in worksheet(open_lesson(examples() / "dune_skirt.ipynb").work()) for sheet in step.sheets
        for point in sheet.points
    ]  # fmt: skip
    at_origin = [point.words for point in points if not point.at.x and not point.at.y]
    assert at_origin and all(words.endswith("at O.") for words in at_origin)
    assert sum("on the level line" in point.words for point in points) > 0


def test_the_waist_tape_is_asked_for_by_the_measurements_that_speak_of_it() -> None:
    speaking_of_it = {name for name in MEASUREMENTS if "waist tape" in say(f"measure_note.{name}")}
    assert speaking_of_it | {"waist_girth"} == FROM_WAIST


@pytest.mark.parametrize("lacking", [True, False])
def test_a_girth_that_some_size_lacks_is_told_in_none(lacking: bool) -> None:
    pattern = open_lesson(examples() / "dune_skirt.ipynb").work()
    (hip,) = fitted(pattern)
    other = (("waist_girth", 700.0),) if lacking else (("waist_girth", 700.0), ("hip_girth", 990.0))
    chart = (SizeRow("W4", (), worn=(("hip_girth", hip.girth),)), SizeRow("W5", (), worn=other))
    told = steady(Handover(pattern, chart=chart))
    assert told == (() if lacking else (hip,))
    table = ease_table(pattern, told)
    assert table is not None and any("hip" in row[0] for row in table.rows) is not lacking
