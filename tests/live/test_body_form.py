"""The body form without a browser: what is typed, estimated, told, saved and loaded."""

from __future__ import annotations

from pathlib import Path

import pytest

from kit import KitError, body_form, load_body, make_body, panel

from .conftest import LessonMaker


def test_typed_measures_estimates_and_use(make_lesson: LessonMaker) -> None:
    lesson = make_lesson()
    shown = panel(lesson)
    form = body_form(lesson)
    assert form.body is None and form.message.value == ""
    form.who.value = "Edda"
    form.boxes["bust_girth"].value = "96"
    form.boxes["waist_girth"].value = "31 1/2 in"
    assert form.boxes["bust_girth"].value == "96 cm"
    assert "37.6 cm" in form.hints["neck_base_girth"].value
    assert "estimated" in form.hints["neck_base_girth"].value
    assert "estimated" not in form.hints["waist_girth"].value
    form.use.click()
    assert lesson.body == make_body({"bust_girth": "96 cm", "waist_girth": "31 1/2 in"}, name="Edda")
    assert "drafted for Edda" in form.message.value
    assert "Edda (own measurements)" in [label for label, _ in shown.size.options]


def test_switching_units_changes_no_measurement(make_lesson: LessonMaker) -> None:
    form = body_form(make_lesson())
    form.boxes["bust_girth"].value = "96"
    before = form.body
    form.units.value = "inch"
    assert form.body == before and form.boxes["bust_girth"].value == "96 cm"
    form.boxes["hip_girth"].value = "41"
    assert form.boxes["hip_girth"].value == "41 in"
    assert form.body is not None and form.body["hip_girth"] == pytest.approx(41 * 25.4)
    assert "14 13/16 in (37.6 cm)" in form.hints["neck_base_girth"].value


@pytest.mark.parametrize(
    ("typed", "words"),
    [("ninety", "cannot be read"), ("9", "cannot be right"), ("<b>9", "&lt;b&gt;9"), ("-90 cm", "cannot be right")],
)
def test_a_slip_is_told_beside_its_box_and_the_rest_goes_on(make_lesson: LessonMaker, typed: str, words: str) -> None:
    lesson = make_lesson()
    form = body_form(lesson)
    form.boxes["waist_girth"].value = "80"
    form.boxes["bust_girth"].value = typed
    assert words in form.hints["bust_girth"].value
    assert form.body is not None and form.body["waist_girth"] == 800
    size = lesson.body
    form.use.click()
    assert lesson.body is size and "bust girth" in form.message.value
    assert "Traceback" not in form.message.value


def test_checks_and_advice_are_shown(make_lesson: LessonMaker) -> None:
    form = body_form(make_lesson())
    form.boxes["bust_girth"].value = "90"
    assert "Draw size W4" in form.advice.value
    form.boxes["waist_girth"].value = "130"
    assert "larger by far" in form.advice.value


def test_save_and_load(make_lesson: LessonMaker, tmp_path: Path) -> None:
    lesson = make_lesson()
    form = body_form(lesson)
    form.save.click()
    assert "no girth" in form.message.value and not list(tmp_path.glob("*.toml"))
    form.who.value = "Edda"
    form.boxes["bust_girth"].value = "37 3/4 in"
    form.boxes["knee_girth"].value = "38"
    form.file.value = "edda"
    form.save.click()
    assert "load_body" in form.message.value
    body = load_body(tmp_path / "edda.toml")
    assert body.name == "Edda" and body["knee_girth"] == 380
    other = body_form(lesson)
    other.file.value = "edda.toml"
    other.load.click()
    assert other.who.value == "Edda" and other.boxes["bust_girth"].value == "37 3/4 in"
    assert "knee_girth" in other.shown and other.body == body


def test_a_file_that_is_no_body_is_neither_read_nor_written_over(make_lesson: LessonMaker, tmp_path: Path) -> None:
    (tmp_path / "project.toml").write_text("[tool]\nx = 1\n")
    form = body_form(make_lesson())
    form.boxes["bust_girth"].value = "90"
    form.file.value = "project.toml"
    form.save.click()
    assert "not a body" in form.message.value
    form.load.click()
    assert "does not belong in a body file" in form.message.value
    assert (tmp_path / "project.toml").read_text() == "[tool]\nx = 1\n"
    form.file.value = "none"
    form.load.click()
    assert "no such file" in form.message.value


def test_every_measurement_can_be_shown_with_its_number_in_the_figure(make_lesson: LessonMaker) -> None:
    form = body_form(make_lesson())
    assert "knee_girth" not in form.shown
    form.more.value = True
    assert "knee_girth" in form.shown
    number = form.shown.index("knee_girth") + 1
    assert form.boxes["knee_girth"].description.startswith(f"{number} ")
    assert f"{number} knee girth" in form._figure.value


def test_a_size_name_is_refused_and_so_is_something_else(make_lesson: LessonMaker) -> None:
    lesson = make_lesson()
    form = body_form(lesson)
    form.who.value = "W4"
    form.boxes["bust_girth"].value = "99"
    form.use.click()
    assert "name of a size" in form.message.value and lesson.body["bust_girth"] == 900
    with pytest.raises(KitError, match="needs a lesson"):
        body_form("Tideline")  # type: ignore[arg-type]


def test_an_own_body_is_there_when_the_form_opens(make_lesson: LessonMaker) -> None:
    lesson = make_lesson()
    lesson.choose(body=make_body({"bust_girth": "36 1/2 in"}, name="Mara"))
    form = body_form(lesson)
    assert form.who.value == "Mara" and form.boxes["bust_girth"].value == "36 1/2 in" and form.body == lesson.body


def test_the_panel_says_what_is_estimated(make_lesson: LessonMaker) -> None:
    lesson = make_lesson()
    shown = panel(lesson)
    assert "Estimated" not in shown.notes.value
    lesson.choose(body=make_body({"bust_girth": "92 cm", "back_width": "35 cm"}, name="Mara"))
    assert "Estimated from the size chart for Mara, not measured: waist girth" in shown.notes.value
    assert "back width" not in shown.notes.value and "knee girth" not in shown.notes.value
