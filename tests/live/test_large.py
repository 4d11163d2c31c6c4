"""A lesson shown large: chosen sliders, pictures gone through, and what cannot be drafted."""

from __future__ import annotations

import re

import pytest

from kit import Lesson, bodice_block, cm, show_large
from kit.errors import KitError
from kit.lesson.where import acting
from kit.live.large import LOOKS
from kit.live.panel import panel
from kit.picture.filming import GROUNDS, filming
from kit.picture.theme import ACCENT, contrast
from kit.resources import templates

from .conftest import LessonMaker


def test_it_begins_with_the_whole_draft_and_goes_through_the_steps(make_lesson: LessonMaker) -> None:
    shown = show_large(make_lesson())
    assert (shown.shown["index"], shown.shown["count"], shown.shown["title"]) == (0, 2, "Landing vest")
    assert shown.shown["words"] and shown.shown["words"][0].startswith("Hem, all round: ")
    assert shown.shown["svg"].count("<path") > 4
    shown.index = 1
    assert shown.shown["title"] == "Lower the <hem>" and "14 cm (5½ in)" in shown.shown["words"][0]
    shown.index = 99
    assert shown.shown["index"] == 2, "past the last it stays at the last"


def test_chosen_sliders_and_no_more_than_three(make_lesson: LessonMaker) -> None:
    lesson = make_lesson()
    assert [one["name"] for one in show_large(lesson).sliders] == ["hem_drop", "wrap_share", "buttons"]
    shown = show_large(lesson, "buttons", "hem_drop")
    assert [(one["label"], one["text"]) for one in shown.sliders] == [("Buttons", "5"), ("Hem drop", "14 cm (5½ in)")]
    assert (shown.sliders[1]["least"], shown.sliders[1]["most"], shown.sliders[1]["number"]) == (4.0, 20.0, 14.0)


@pytest.mark.parametrize(
    ("names", "told"), [(("hem_dorp",), "Did you mean 'hem_drop'"), (("hem_drop",) * 4, "4 sliders are named")]
)
def test_what_cannot_be_shown_is_refused(make_lesson: LessonMaker, names: tuple[str, ...], told: str) -> None:
    with pytest.raises(KitError, match=re.escape(told)):
        show_large(make_lesson(), *names)
    with pytest.raises(KitError, match="shows a lesson, not int"):
        show_large(7)  # type: ignore[arg-type]


def test_a_moved_slider_moves_everything_that_follows(make_lesson: LessonMaker) -> None:
    lesson = make_lesson()
    beside, shown = panel(lesson), show_large(lesson, "hem_drop")
    before = shown.shown["svg"]
    shown._heard(None, {"do": "move", "name": "hem_drop", "number": 11.0, "turn": 4}, [])
    assert lesson.values["hem_drop"] == 110.0 and beside.rows["hem_drop"].box.value == "11 cm"
    assert shown.shown["turn"] == 4 and shown.shown["svg"] != before and shown.sliders[0]["number"] == 11.0
    beside.rows["hem_drop"].box.value = "12 cm"
    assert shown.sliders[0]["number"] == 12.0
    for nonsense in (
        {"do": "move", "name": "nothing", "number": 1},
        {"do": "move", "name": "hem_drop", "number": "x"},
        3,
    ):
        shown._heard(None, nonsense, [])
    assert lesson.values["hem_drop"] == 120.0


def test_what_cannot_be_drafted_keeps_the_old_picture_and_says_so() -> None:
    lesson = Lesson("Stuck vest", start=bodice_block, time_limit=0.3)
    lesson.length("flare", 50 * cm, least=10 * cm, most=90 * cm)

    @lesson.step("Flare")
    def flare_it(front, flare):  # type: ignore[no-untyped-def]
        """Flare it by {flare}."""
        while flare > 60 * cm:
            pass

    shown = show_large(lesson)
    before = shown.shown["svg"]
    shown._heard(None, {"do": "move", "name": "flare", "number": 70.0, "turn": 1}, [])
    assert "Flare" in shown.message and "This picture is older" in shown.message
    assert (shown.shown["svg"], shown.shown["stale"], shown.shown["turn"]) == (before, True, 1)
    shown._heard(None, {"do": "move", "name": "flare", "number": 55.0, "turn": 2}, [])
    assert (shown.message, shown.shown["stale"]) == ("", False)


def test_the_looks_are_dark_light_and_two_to_key_out(make_lesson: LessonMaker) -> None:
    shown = show_large(make_lesson())
    grounds = {name: colour for name, _, colour in shown.looks}
    assert tuple(grounds) == tuple(LOOKS) == ("light", "dark", "green", "blue")
    assert (grounds["green"], grounds["blue"]) == (GROUNDS["green"], GROUNDS["blue"])
    for look in LOOKS:
        shown.look = look
        assert shown.shown["svg"]


def test_the_number_of_a_stroke_stays_white_on_its_sign() -> None:
    """WCAG 2.2, success criterion 1.4.3: 4.5 to 1."""
    for ground in GROUNDS.values():
        assert contrast(filming(ground).texts["order"].colour, ACCENT) >= 4.5


def test_a_new_run_of_its_cell_takes_its_place(make_lesson: LessonMaker) -> None:
    lesson = make_lesson()
    with acting(notebook=False, cell="c", run=1):
        first = show_large(lesson)
    with acting(notebook=False, cell="c", run=2):
        show_large(lesson)
    assert first.comm is None, "closed"


def test_type_is_large_enough_on_a_screen_1080_high() -> None:
    """28 px at least: each size in the full window is a share of the shorter side."""
    style = (templates() / "live" / "large.css").read_text(encoding="utf-8")
    full = re.findall(
        r"\.lessonkit-large-full \.lessonkit-large-(label|words|message\S*|row) \{ font-size: max\((.*)\); \}", style
    )
    assert len(full) == 4
    for part, sizes in full:
        least = max(float(size) for size in re.findall(r"([\d.]+)vmin", sizes))
        assert least / 100 * 1080 >= 28, part
