"""The stage: three views of one lesson that share values, body and step, made when asked for, resting when not seen."""

from __future__ import annotations

import re
from typing import Any

import pytest

from kit import canvas, cm, panel, player, stage
from kit.errors import KitError
from kit.lesson.where import acting
from kit.live.followers import followers
from kit.live.stage import VIEWS, LessonStage

from .conftest import LessonMaker


def on_show(shown: LessonStage) -> list[str]:
    return [name for name, view in shown._views.items() if view.layout.display != "none"]


def test_it_begins_with_the_panel_and_makes_the_other_views_when_they_are_asked_for(make_lesson: LessonMaker) -> None:
    shown = stage(make_lesson())
    assert (shown.view, list(shown._views), on_show(shown)) == ("panel", ["panel"], ["panel"])
    for name in ("canvas", "player", "panel"):
        shown.view = name
        assert on_show(shown) == [name]
    assert list(shown._views) == list(VIEWS)
    assert shown.children == (shown.bar, shown.panel, shown.canvas, shown.player), "made once and kept"


def test_a_value_moved_in_one_view_stands_in_every_other(make_lesson: LessonMaker) -> None:
    lesson = make_lesson()
    shown = stage(lesson)
    shown.view = "player"
    shown.view = "canvas"
    shown.canvas.move("hem_drop", 110.0)
    shown.view = "panel"
    assert shown.panel.rows["hem_drop"].box.value == "11 cm"
    shown.panel.rows["hem_drop"].box.value = "12 cm"
    shown.panel.choices.size.value = "W8"
    shown.panel.choices.units.value = "inch"
    shown.view = "player"
    shown.player.index = 0
    assert "4¾ in" in " ".join(shown.player.shots[0]["words"]) and shown.player.pattern is not None
    assert shown.player.pattern.body.name == "W8"
    shown.view = "canvas"
    assert shown.canvas.answer["units"] == "inch" and shown.canvas.answer["values"]["hem_drop"]["value"] == 120.0


def test_a_view_that_is_not_seen_is_not_drawn_until_it_is(make_lesson: LessonMaker) -> None:
    lesson = make_lesson()
    shown = stage(lesson)
    shown.view = "player"
    drawn, made = shown.panel.drawn, shown.player.version
    lesson.change(hem_drop=9 * cm)
    lesson.change(hem_drop=10 * cm)
    assert (shown.panel.drawn, shown.player.version) == (drawn, made + 2)
    shown.view = "panel"
    assert shown.panel.drawn == drawn + 1 and shown.panel.rows["hem_drop"].box.value == "10 cm"


def test_the_step_goes_with_the_reader_from_view_to_view(make_lesson: LessonMaker) -> None:
    shown = stage(make_lesson())
    assert shown.bar.told == "The draft"
    shown.panel.view.value = ("step", "mark_share")
    assert shown.bar.told == "Drafting step 2: Mark a share of the waist"
    shown.view = "canvas"
    assert shown.canvas.step == "mark_share"
    shown.canvas.step = "lower_hem"
    shown.view = "player"
    assert shown.player.index == 0 and shown.place == ("draft", "lower_hem", 1)
    shown.player.index = 1
    shown.bar.large = True
    assert on_show(shown) == ["player"], "shown large, the player is the player"
    shown.view = "panel"
    assert on_show(shown) == ["large"], "and the panel gives way to one picture with its sentence"
    large: Any = shown._views["large"]
    assert large.shown["title"] == "Mark a share of the waist"
    large.index = 0
    shown.bar.large = False
    assert on_show(shown) == ["panel"] and shown.panel.view.value == ("draft", "")


def test_a_step_that_arrives_late_is_gone_to_in_the_view_on_show(make_lesson: LessonMaker) -> None:
    """The page sends one change at a time of each view, so that the player's last one may come after the change of
    view."""
    shown = stage(make_lesson(), view="player")
    shown.view = "panel"
    shown.player.index = 1
    assert shown.place == ("draft", "mark_share", 1) and shown.panel.view.value == ("step", "mark_share")
    assert shown.bar.told == "Drafting step 2: Mark a share of the waist"


def test_a_sewing_step_waits_while_a_view_without_it_is_on_show(make_lesson: LessonMaker) -> None:
    lesson = make_lesson()

    @lesson.sew("Sew the side")
    def sew_side(make, front, back):  # type: ignore[no-untyped-def]
        make.plain_seam(front.side, back.side, allowance=1 * cm)

    shown = stage(lesson, view="player")
    shown.player.index = len(shown.player.shots) - 1
    assert shown.place[:2] == ("sew", "sew_side") and shown.bar.told == "Sewing step 1: Sew the side"
    shown.view = "panel"
    assert shown.panel.view.value == ("draft", "") and shown.bar.told == "The draft"
    shown.view = "player"
    assert shown.player.place[:2] == ("sew", "sew_side")


def test_the_sliders_named_are_at_hand_when_it_is_shown_large(make_lesson: LessonMaker) -> None:
    shown = stage(make_lesson(), "buttons")
    shown.bar.large = True
    large: Any = shown._views["large"]
    assert [one["name"] for one in large.sliders] == ["buttons"]


@pytest.mark.parametrize(
    ("names", "view", "told"),
    [
        (("hem_dorp",), "panel", "Did you mean 'hem_drop'"),
        (("hem_drop",) * 4, "panel", "4 sliders are named"),
        ((), "plaer", "Did you mean 'player'"),
    ],
)
def test_what_cannot_be_shown_is_refused(
    make_lesson: LessonMaker, names: tuple[str, ...], view: str, told: str
) -> None:
    with pytest.raises(KitError, match=re.escape(told)):
        stage(make_lesson(), *names, view=view)
    with pytest.raises(KitError, match="shows a lesson, not int"):
        stage(7)  # type: ignore[arg-type]
    with pytest.raises(KitError, match="Did you mean 'canvas'"):
        stage(make_lesson()).view = "canvs"


def test_the_views_stand_alone_too_and_one_beside_a_stage_follows_it(make_lesson: LessonMaker) -> None:
    lesson = make_lesson()
    alone = panel(lesson), canvas(lesson), player(lesson)
    shown = stage(lesson)
    shown.panel.rows["hem_drop"].box.value = "9 cm"
    assert alone[0].rows["hem_drop"].box.value == "9 cm"
    assert alone[1].answer["values"]["hem_drop"]["value"] == 90.0
    assert "9 cm" in alone[2].shots[0]["words"][0]


def test_a_new_run_of_its_cell_takes_its_place_and_a_panel_in_the_same_cell_does_not(make_lesson: LessonMaker) -> None:
    lesson = make_lesson()
    with acting(notebook=False, cell="c", run=1):
        first = stage(lesson)
    with acting(notebook=False, cell="c", run=2):
        second = stage(lesson)
        panel(lesson)
    assert first.comm is None and first.panel.comm is None, "closed with its views"
    assert second.comm is not None and second.panel.comm is not None
    second.close()
    assert len(list(followers(lesson))) == 1


def test_a_lesson_made_anew_keeps_its_stage(make_lesson: LessonMaker) -> None:
    from kit.live.beside import beside

    former = make_lesson()
    shown = stage(former, view="canvas")
    shown.view = "player"
    shown.player.index = 1
    lesson = make_lesson()
    beside(lesson).go_on(former)
    assert shown.lesson is lesson and shown.player.lesson is lesson and shown.canvas.lesson is lesson
    drafts = shown.canvas.answer["draft"]
    lesson.change(hem_drop=8 * cm)
    assert shown.canvas.answer["draft"] == drafts, "the canvas still rests"
    shown.view = "canvas"
    assert shown.canvas.answer["values"]["hem_drop"]["value"] == 80.0


def test_a_deleted_step_gives_way_to_the_whole_draft(make_lesson: LessonMaker) -> None:
    lesson = make_lesson()
    shown = stage(lesson)
    shown.panel.view.value = ("step", "mark_share")
    lesson.remove("mark_share")
    assert shown.place == ("", "", 0) and shown.bar.told == "The draft"
    assert shown.panel.view.value == ("draft", "")


def test_without_a_kernel_it_shows_the_view_that_was_on_show(make_lesson: LessonMaker) -> None:
    shown = stage(make_lesson(), view="player")
    data, more = shown._repr_mimebundle_()
    assert data["application/vnd.jupyter.widget-view+json"]["model_id"] == shown.model_id
    assert data["image/svg+xml"].startswith("<svg") and "Lower the <hem>" in data["text/plain"]
    assert more["image/png"]["alt"]
