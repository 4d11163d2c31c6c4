"""After try-on: what a fitting changed is recorded with its reason, shown before and after, and can be taken back."""

from __future__ import annotations

import asyncio
import json
import re

import pytest

from kit import Lesson, cm, mm, panel
from kit.live.panel import Panel
from kit.picture.fitting import fitting_drawing
from kit.picture.overlay import most_moved, overlay_drawing
from kit.units import inch

from .conftest import LessonMaker, until


def started(lesson: Lesson, title: str = "First toile") -> Panel:
    shown = panel(lesson)
    shown.tried_on.open.value = True
    shown.tried_on.name.value = title
    shown.tried_on.begin.click()
    return shown


def seen(part: object) -> bool:
    return part.layout.display != "none"  # type: ignore[attr-defined]


def test_it_is_out_of_the_way_until_it_is_wanted(make_lesson: LessonMaker) -> None:
    shown = panel(make_lesson())
    assert not seen(shown.tried_on.widget)
    shown.tried_on.open.value = True
    assert seen(shown.tried_on.widget)
    assert (shown.tried_on.name.value, shown.tried_on.name.placeholder) == ("", "Try-on 1")
    assert 'data-name="front.hem.before"' not in shown.picture.value
    shown.tried_on.open.value = False
    assert not seen(shown.tried_on.widget)


def test_a_name_that_arrives_after_the_button_is_not_lost(make_lesson: LessonMaker) -> None:
    """While the kernel works the page holds back what is typed, and the button overtakes it."""
    lesson = make_lesson()
    shown = panel(lesson)
    shown.tried_on.open.value = True
    shown.tried_on.begin.click()
    shown.tried_on.name.value = "Evening toile"
    assert lesson.sitting.begun is not None and lesson.sitting.begun.title == "Evening toile"
    assert "Evening toile" in shown.tried_on.going.value


def test_values_that_differ_are_shown_with_both(make_lesson: LessonMaker) -> None:
    shown = started(make_lesson())
    assert "Nothing has changed yet" in shown.tried_on.changes.value
    shown.rows["hem_drop"].slider.value = 11
    shown.rows["wrap_share"].slider.value = 60
    changes = shown.tried_on.changes.value
    assert "Hem drop: 14 cm (5 1/2 in) → <strong>11 cm (4 5/16 in)</strong>" in changes
    assert "Wrap share: 70% → <strong>60%</strong>" in changes
    assert "was 14 cm" in shown.rows["hem_drop"].other.value
    assert "was" not in shown.rows["buttons"].other.value
    shown.rows["hem_drop"].slider.value = 14
    assert "Hem drop" not in shown.tried_on.changes.value
    assert shown.rows["hem_drop"].other.value == "5 1/2 in"


def test_the_picture_shows_before_and_after_measured(make_lesson: LessonMaker) -> None:
    """The hem was raised from 14 cm below the waistline to 11 cm: 3 cm."""
    lesson = make_lesson()
    shown = started(lesson)
    shown.rows["hem_drop"].slider.value = 11
    assert 'data-name="front.hem.before"' in shown.picture.value
    assert 'data-name="front.hem"' in shown.picture.value
    assert ">3 cm (1³⁄₁₆ in)<" in shown.picture.value
    before = lesson.work(values={**lesson.values, "hem_drop": 140.0})
    drawing = fitting_drawing(before, lesson.work(), "front", "cm")
    assert drawing.alt in shown.picture.value.replace("&#x27;", "'")


def test_while_a_slider_moves_only_lines_are_drawn_in_the_same_place(make_lesson: LessonMaker) -> None:
    lesson = make_lesson()
    shown = started(lesson)
    box: list[str] = []
    measuring = shown.tried_on._measuring

    async def drag() -> None:
        waits, measuring._wait = measuring._wait, 60.0  # however slow the machine, the slider still moves
        for value in (13, 12, 11):
            drawn = shown.drawn
            shown.rows["hem_drop"].slider.value = value
            await until(lambda: shown.drawn > drawn)  # noqa: B023
        assert 'data-name="front.hem.before"' in shown.picture.value
        assert "3 cm" not in shown.picture.value
        box.extend(re.findall(r'viewBox="([^"]+)"', shown.picture.value))
        measured = shown.tried_on.drawn_measured
        assert measuring.pending
        measuring._wait = waits
        measuring.ask()
        await until(lambda: shown.tried_on.drawn_measured > measured)
        assert shown.tried_on.drawn_measured == measured + 1
        box.extend(re.findall(r'viewBox="([^"]+)"', shown.picture.value))

    asyncio.run(drag())
    assert ">3 cm (1³⁄₁₆ in)<" in shown.picture.value
    assert len(box) == 2 and box[0] == box[1], "the picture must not jump when the sizes come"


def test_the_piece_can_be_chosen(make_lesson: LessonMaker) -> None:
    lesson = make_lesson()
    before = lesson.work()
    after = lesson.work(values={**lesson.values, "hem_drop": 110.0})
    assert most_moved(before, after) == "front"
    assert most_moved(before, before) == ""
    shown = started(lesson)
    shown.rows["hem_drop"].slider.value = 11
    shown.tried_on.piece.value = "back"
    assert 'data-name="back.side"' in shown.picture.value and 'data-name="front.hem"' not in shown.picture.value
    drawing = overlay_drawing(before, after, "back")
    assert drawing is not None and all(getattr(item, "role", "") != "new" for item in drawing.items)


def test_keep_records_it_beside_the_notebook_and_a_restart_brings_it_back(make_lesson: LessonMaker) -> None:
    lesson = make_lesson()
    shown = started(lesson)
    shown.rows["hem_drop"].slider.value = 11
    shown.tried_on.why.value = "It hung <too> long."
    shown.tried_on.keep.click()
    assert shown.message.value == ""
    (kept,) = json.loads(lesson.sitting.sidecar.read_text())["fittings"]
    assert (kept["title"], kept["why"]) == ("First toile", "It hung <too> long.")
    assert kept["changes"] == [{"parameter": "hem_drop", "before": 140.0, "after": 110.0}]
    assert shown.tried_on.begun is None
    assert 'data-name="front.hem.before"' in shown.picture.value, "before and after stay to be looked at"
    later = make_lesson()
    assert [fitting.title for fitting in later.fittings] == ["First toile"]
    assert later.values["hem_drop"] == 110.0
    again = panel(later)
    again.tried_on.open.value = True
    assert [label.split(",")[0] for label, _ in again.tried_on.kept.options] == ["choose a fitting", "First toile"]
    again.tried_on.kept.value = 0
    assert ">3 cm (1³⁄₁₆ in)<" in again.picture.value


def test_the_line_for_the_notebook_says_the_same(make_lesson: LessonMaker) -> None:
    """Run as a cell, it records the very fitting, which is then not told twice."""
    lesson = make_lesson()
    shown = started(lesson)
    shown.rows["hem_drop"].box.value = "4 1/2 in"
    shown.rows["buttons"].slider.value = 4
    shown.tried_on.why.value = 'It "rode" up.'
    shown.tried_on.keep.click()
    (code,) = re.findall(r"<pre[^>]*>(.*?)</pre>", shown.tried_on.code.value, re.S)
    for sign, plain in (("&#x27;", "'"), ("&quot;", '"'), ("&lt;", "<"), ("&gt;", ">"), ("&amp;", "&")):
        code = code.replace(sign, plain)
    (kept,) = lesson.fittings
    exec(code, {"lesson": lesson, "cm": cm, "mm": mm, "inch": inch})
    (written,) = lesson.fittings
    assert (written.title, written.why, written.date) == (kept.title, kept.why, kept.date)
    for one, other in zip(written.changes, kept.changes, strict=True):
        assert (one.parameter, one.before, one.after) == pytest.approx((other.parameter, other.before, other.after))
    assert lesson.sitting.kept_fittings(lesson.definition) == ()


def test_a_moved_slider_leaves_the_fitting_that_was_looked_at(make_lesson: LessonMaker) -> None:
    shown = started(make_lesson())
    shown.rows["hem_drop"].slider.value = 11
    shown.tried_on.keep.click()
    shown.rows["wrap_share"].slider.value = 50
    assert shown.tried_on.kept.value == -1
    assert 'data-name="front.hem.before"' not in shown.picture.value


def test_cancel_puts_the_values_back(make_lesson: LessonMaker) -> None:
    lesson = make_lesson()
    lesson.change(hem_drop=13 * cm)
    shown = started(lesson)
    shown.rows["hem_drop"].slider.value = 9
    shown.rows["buttons"].slider.value = 2
    shown.tried_on.cancel.click()
    assert lesson.values == {"hem_drop": 130.0, "wrap_share": 0.7, "buttons": 5.0}
    assert shown.rows["hem_drop"].slider.value == 13
    assert lesson.fittings == () and lesson.sitting.begun is None
    assert 'data-name="front.hem.before"' not in shown.picture.value


def test_take_back_puts_its_values_back_and_can_be_undone(make_lesson: LessonMaker) -> None:
    lesson = make_lesson()
    shown = started(lesson)
    shown.rows["hem_drop"].slider.value = 11
    shown.tried_on.keep.click()
    assert seen(shown.tried_on.back)
    shown.tried_on.back.click()
    assert lesson.values["hem_drop"] == 140.0
    assert lesson.fittings == ()
    assert json.loads(lesson.sitting.sidecar.read_text())["fittings"] == []
    assert not seen(shown.tried_on.kept)
    shown.choices.undo.click()
    assert lesson.values["hem_drop"] == 110.0


@pytest.mark.parametrize("step", ["nothing changed", "no title", "written"])
def test_what_cannot_be_done_is_said(make_lesson: LessonMaker, step: str) -> None:
    lesson = make_lesson()
    if step == "written":
        lesson.fitting("First toile", "Long.", hem_drop=(15 * cm, 14 * cm))
        shown = panel(lesson)
        shown.tried_on.open.value = True
        shown.tried_on.kept.value = 0
        assert shown.tried_on.code.value == "", "it stands in the notebook already"
        shown.tried_on.back.click()
        assert "Delete its cell there" in shown.message.value
        assert len(lesson.fittings) == 1
    elif step == "no title":
        shown = started(lesson, " ")
        assert "a fitting needs a title" in shown.message.value
    else:
        shown = started(lesson)
        shown.tried_on.keep.click()
        assert "nothing has changed since it began" in shown.message.value
        assert lesson.sitting.begun is not None


def test_two_panels_of_one_lesson_show_the_same_fitting(make_lesson: LessonMaker) -> None:
    lesson = make_lesson()
    second = panel(lesson)
    shown = started(lesson)
    shown.rows["hem_drop"].slider.value = 11
    assert second.tried_on.open.value
    assert "Hem drop: 14 cm" in second.tried_on.changes.value
    second.tried_on.keep.click()
    shown.rows["buttons"].slider.value = 3
    assert seen(shown.tried_on._idle) and not seen(shown.tried_on._on)


def test_what_is_typed_while_the_kernel_works_is_never_written_over(make_lesson: LessonMaker) -> None:
    """Once the box may be typed in, nothing but its typist changes it, whatever is shown again meanwhile."""
    lesson = make_lesson()
    shown = panel(lesson)
    shown.tried_on.open.value = True
    written: list[object] = []
    shown.tried_on.name.observe(lambda change: written.append(change.new), "value")
    lesson.change(hem_drop=11 * cm)
    shown.refresh(rewritten=True)
    assert written == []
    shown.tried_on.begin.click()
    assert lesson.sitting.begun is not None and lesson.sitting.begun.title == "Try-on 1"
    shown.tried_on.name.value = "Typed before the button was pressed"
    assert lesson.sitting.begun.title == "Typed before the button was pressed"
