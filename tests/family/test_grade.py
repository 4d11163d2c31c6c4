"""A grade that runs evenly is told as even; a planted slip is found where it was planted, and nowhere else."""

from __future__ import annotations

import csv
import io
from collections.abc import Callable
from dataclasses import replace
from functools import cache
from itertools import pairwise
from pathlib import Path

import pytest

from kit import KitError, SizeChart, bodice_block, skirt_block, workshop_chart
from kit.family.edition import Edition, edition_of
from kit.family.files import grade_files
from kit.family.grade_told import grade_csv, grade_html, grade_json, grade_told, lines
from kit.family.grading import Grading, grade
from kit.language import languages, speaking
from kit.lesson.lesson import Lesson
from kit.live.grade_table import grade_table
from tests.example import EXAMPLE, notebook_names
from tests.family.vest import vest


def editions(lesson: Lesson) -> list[Edition]:
    return [edition_of(lesson.work(lesson.sizes[n]), "en", lesson.measures) for n in lesson.sizes.names]


@cache
def vests() -> tuple[Edition, ...]:
    return tuple(editions(vest()))


def with_measure(name: str, change: Callable[[str, float], float]) -> SizeChart:
    """The workshop chart with one measurement changed: size and value in mm -> value."""
    chart = workshop_chart()
    rows = tuple(
        (row, tuple(change(*each) for each in zip(chart.sizes, values, strict=True)) if row == name else values)
        for row, values in chart.rows
    )
    return replace(chart, rows=rows)


def told_of(found: Grading) -> list[tuple[str, str, str]]:
    return [(each.why, found.sizes[each.at], each.row.name) for each in found.slips]


def test_the_workshop_chart_grades_evenly() -> None:
    """An invented chart whose steps change pace twice (40, 50, 60 mm); lessons and blocks drafted from it."""
    lessons = [
        notebook_names(EXAMPLE)["lesson"],
        notebook_names(EXAMPLE.parent / "dune_skirt.ipynb")["lesson"],
        Lesson("Skirt", start=skirt_block),
    ]
    for lesson in lessons:
        found = grade(editions(lesson))
        assert not found.uneven, (lesson.info.title, found.uneven)


@pytest.mark.parametrize("size", ["W2", "W3", "W5", "W7", "W9"])
@pytest.mark.parametrize("by", [-20.0, 12.0, 35.0])
def test_a_slip_in_the_chart_is_found_and_what_follows_told_apart(size: str, by: float) -> None:
    """From 12 mm on; where the chart changes its pace by 10 mm, 8 mm more in that size could be meant."""
    sizes = with_measure("bust_girth", lambda name, value: value + by if name == size else value)
    found = grade(editions(Lesson("Vest", start=bodice_block, sizes=sizes)))
    assert told_of(found) == [("off", size, "bust_girth")]
    assert found.slips[0].step == pytest.approx(by, abs=6)  # a change of pace beside it tells in the middle
    follows = [each for each in found.uneven if each.row.of != "body"]
    assert {each.follows for each in follows} <= {"bust_girth"}
    if by > 30:
        assert "armhole" in {each.row.name for each in follows}
    page = grade_told(found, edition_of(vest().work(), "en"), "cm")
    assert len(page.uneven) == 1 and page.uneven[0].startswith(f"Bust girth: {size} is ")
    assert all(text.endswith("So does the measurement: Bust girth.") for text in page.follows)


def test_two_figures_changed_round_are_found() -> None:
    """86.0 typed as 68.0."""
    rows = [
        replace(edition, body=(("bust_girth", 680.0 if edition.size == "W3" else value),))
        for edition in vests()
        for name, value in edition.body
        if name == "bust_girth"
    ]
    assert told_of(grade(rows)) == [("off", "W3", "bust_girth")]


def test_a_slip_in_the_last_size_is_found() -> None:
    """Beside it there is one step only: it is told when it is unlike every other."""
    rows = [replace(each, finished=(("Length", 600.0 + 8 * n + 40 * (n == 9)),)) for n, each in enumerate(vests())]
    assert told_of(grade(rows)) == [("jump", "W10", "Length")]


def test_what_should_not_scale_is_told() -> None:
    def wider(number: int, edition: Edition) -> Edition:
        front, back = edition.pieces
        edges = tuple(replace(e, allowance=15.0 + number) if e.name == "side" else e for e in front.edges)
        return replace(edition, pieces=(replace(front, edges=edges), back))

    found = grade([wider(number, edition) for number, edition in enumerate(vests())])
    assert told_of(found) == [("scales", "W2", "side")]
    page = grade_told(found, vests()[0], "cm")
    assert page.uneven == (
        "Front bodice: Side seam, seam allowance: it is not the same in W1 and W2 (+1 mm (1/16 in)). If it is meant to "
        "be, take out what makes it follow the size.",
    )


def test_a_jump_of_the_draft_alone_is_told() -> None:
    """An edge that is 2 cm longer in one size while the body runs evenly."""

    def finished(number: int, edition: Edition) -> Edition:
        return replace(edition, finished=(("Length", 600.0 + 8 * number + (20 if number == 5 else 0)),))

    found = grade([finished(number, edition) for number, edition in enumerate(vests())])
    assert told_of(found) == [("off", "W6", "Length")]


def test_a_declared_break_is_no_jump() -> None:
    def pace(number: int, edition: Edition) -> Edition:
        steps = [8.0] * number
        if number >= 6:
            steps[5] = 30.0
        return replace(edition, finished=(("Length", 600.0 + sum(steps)),))

    paced = [pace(number, edition) for number, edition in enumerate(vests())]
    assert told_of(grade(paced)) == [("jump", "W7", "Length")]
    assert not grade(paced, ["W6", "W7"]).uneven
    with pytest.raises(KitError, match="there is no size 'W77'"):
        grade(paced, ["W77"])


def test_a_break_at_a_size_that_cannot_be_drafted_is_at_the_next() -> None:
    paced = [replace(each, finished=(("Length", 600.0 + 8 * n + 30 * (n > 5)),)) for n, each in enumerate(vests())]
    names = [edition.size for edition in vests()]
    without = [edition for edition in paced if edition.size != "W7"]
    assert not grade(without, ["W6", "W7", "W9"], names).uneven
    assert grade(without, ["W7"], names).breaks == ("W8",)


def test_another_measurement_explains_nothing() -> None:
    """The body's bust is off in W3; a length that jumps at W5 has another cause."""

    def off(number: int, edition: Edition) -> Edition:
        bust = 780.0 + 40 * number + (20 if number == 2 else 0)
        length = 600.0 + 8 * number + (25 if number >= 4 else 0)
        return replace(edition, body=(("bust_girth", bust),), finished=(("Length", length),))

    found = grade([off(number, edition) for number, edition in enumerate(vests())])
    assert told_of(found) == [("off", "W3", "bust_girth"), ("jump", "W5", "Length")]


def test_what_one_size_lacks_is_told() -> None:
    def fewer(number: int, edition: Edition) -> Edition:
        return edition if number < 7 else replace(edition, finished=())

    lengths = [replace(edition, finished=(("Length", 600.0),)) for edition in vests()]
    found = grade([fewer(number, edition) for number, edition in enumerate(lengths)])
    assert told_of(found) == [("missing", "W8", "Length")]


def test_one_size_has_no_grade() -> None:
    with pytest.raises(KitError, match="one size"):
        grade(vests()[:1])
    with pytest.raises(KitError, match="one size"):
        grade_table(notebook_names(EXAMPLE.parent / "ferry_tote.ipynb")["lesson"])


# ---- told --------------------------------------------------------------------------------------------------


def test_a_row_read_aloud_adds_up() -> None:
    page = grade_told(grade(vests()), vests()[0], "cm")
    for name, cells in page.rows:
        values = [float(value) for value, _ in cells]
        for (before, after), (_, step) in zip(pairwise(values), cells[1:], strict=True):
            assert after - before == pytest.approx(float(step.replace("−", "-")), abs=1e-6), name


def test_it_is_told_in_every_language_and_escaped() -> None:
    lesson = vest("<b>Vest</b>")
    found = grade(editions(lesson))
    for code in languages():
        with speaking(code):
            page = grade_told(found, vests()[0], "inch")
            html = grade_html(page, "inch")
            text = "\n".join(lines(page))
        assert "<b>" not in html and "&lt;b&gt;Vest" in html
        assert "[en]" not in text
    assert "<b>" not in grade_table(lesson)._repr_html_()


def test_as_a_table_and_as_data() -> None:
    found = grade(vests())
    rows = list(csv.reader(io.StringIO(grade_csv(found, vests()[0]))))
    assert rows[0][3:] == list(found.sizes)
    bust = next(row for row in rows if row[0] == "Bust girth")
    assert [float(value) for value in bust[3:]] == [edition.body[0][1] for edition in vests()]
    data = grade_json(found)
    assert data["sizes"] == list(found.sizes) and len(data["rows"]) == len(found.rows)
    hostile = [replace(edition, finished=(("=1+1", 600.0 + n),)) for n, edition in enumerate(vests())]
    assert "\r\n'=1+1" in grade_csv(grade(hostile), hostile[0])


@pytest.mark.slow
def test_its_files(tmp_path: Path) -> None:
    found = grade(vests())
    made = grade_files(found, grade_told(found, vests()[0], "cm"), vests()[0], "cm")
    assert sorted(made) == ["grade.csv", "grade.json", "grade.pdf"]
    assert made["grade.pdf"].startswith(b"%PDF")
