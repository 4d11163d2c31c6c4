"""Presets, undo and redo on the panel, and what the proof says beside the value that causes it."""

from __future__ import annotations

import asyncio
import json
import re

import pytest

from kit import Lesson, cm, panel
from kit.lesson.steps import Entry
from kit.live.panel import Panel
from kit.proof import Finding
from kit.proof.causes import Moves, parameters_of

from .conftest import LessonMaker, until


def offered(shown: Panel) -> dict[str, str]:
    return {label: key for label, key in shown.preset.options}


def choose(shown: Panel, label: str) -> None:
    shown.preset.value = offered(shown)[label]


# ---- presets, undo and redo -------------------------------------------------------------------------------


def test_a_preset_is_chosen_and_named_while_it_stands(make_lesson: LessonMaker) -> None:
    lesson = make_lesson()
    shown = panel(lesson)
    assert shown.preset.label == "The lesson's own"
    lesson.preset("Cropped", hem_drop=5 * cm, buttons=3)
    assert list(offered(shown)) == ["as on the sliders", "The lesson's own", "As the last session left them", "Cropped"]
    shown.rows["wrap_share"].slider.value = 50
    assert shown.preset.label == "as on the sliders"
    choose(shown, "Cropped")
    assert lesson.values == {"hem_drop": 50.0, "wrap_share": 0.7, "buttons": 3.0}
    assert shown.preset.label == "Cropped"
    assert shown.rows["hem_drop"].box.value == "5 cm"
    assert json.loads(lesson.sitting.sidecar.read_text())["values"] == {"hem_drop": 50.0, "buttons": 3.0}
    choose(shown, "as on the sliders")
    assert shown.preset.label == "Cropped" and lesson.values["hem_drop"] == 50.0


def test_the_last_sessions_values_come_back(make_lesson: LessonMaker) -> None:
    panel(make_lesson()).rows["hem_drop"].slider.value = 7
    lesson = make_lesson()
    shown = panel(lesson)
    assert shown.preset.label == "As the last session left them"
    shown.reset.click()
    assert lesson.values["hem_drop"] == 140.0
    choose(shown, "As the last session left them")
    assert lesson.values["hem_drop"] == 70.0


def test_a_preset_out_of_range_is_told_and_changes_nothing(make_lesson: LessonMaker) -> None:
    lesson = make_lesson()
    lesson.preset("Long", hem_drop=19 * cm)
    lesson.length("hem_drop", 14 * cm, least=4 * cm, most=16 * cm)
    shown = panel(lesson)
    choose(shown, "Long")
    assert "Preset &#x27;Long&#x27;: hem drop is 19 cm" in shown.message.value
    assert lesson.values["hem_drop"] == 140.0
    assert shown.preset.label == "The lesson's own"


def test_undo_and_redo_share_the_lessons_history(make_lesson: LessonMaker) -> None:
    lesson = make_lesson()
    shown, other = panel(lesson), panel(lesson)
    undo, redo = shown.choices.undo, shown.choices.redo
    assert undo.disabled and redo.disabled
    shown.rows["hem_drop"].slider.value = 9
    other.rows["buttons"].slider.value = 3
    lesson.change(wrap_share=0.5)
    assert not undo.disabled
    undo.click()
    assert lesson.values == {"hem_drop": 90.0, "wrap_share": 0.7, "buttons": 3.0}
    assert shown.rows["wrap_share"].slider.value == 70
    undo.click()
    undo.click()
    assert lesson.values == {"hem_drop": 140.0, "wrap_share": 0.7, "buttons": 5.0}
    assert undo.disabled and not redo.disabled
    other.choices.redo.click()
    assert lesson.values["hem_drop"] == 90.0
    assert json.loads(lesson.sitting.sidecar.read_text())["values"] == {"hem_drop": 90.0}


def test_a_drag_is_one_change_and_a_preset_another(make_lesson: LessonMaker) -> None:
    lesson = make_lesson()
    lesson.preset("Cropped", hem_drop=5 * cm)
    shown = panel(lesson)
    for step in range(20):
        shown.rows["hem_drop"].slider.value = 10 + step / 10
    choose(shown, "Cropped")
    shown.reset.click()
    undone = []
    while lesson.undo():
        undone.append(lesson.values["hem_drop"])
    assert undone == [pytest.approx(50.0), pytest.approx(119.0), 140.0]


@pytest.mark.parametrize(
    ("typed", "value"),
    [("9 1/2 in", 241.3), ("24 cm", 240.0), ("9½ Zoll", 241.3), ('9½"', 241.3), ("9-1/2 inches", 241.3), ("24", 240.0)],
)
def test_a_length_is_typed_in_either_unit(make_lesson: LessonMaker, typed: str, value: float) -> None:
    lesson = make_lesson()
    lesson.length("loop", 20 * cm, least=1 * cm, most=30 * cm)
    panel(lesson).rows["loop"].box.value = typed
    assert lesson.values["loop"] == pytest.approx(value)


# ---- findings beside their values -------------------------------------------------------------------------


def seams(lesson: Lesson) -> Lesson:
    """A front and back that are sewn at the side, whose sides are as long as each other only at the usual hem."""

    @lesson.step("Allowances")
    def allowances(front, back):
        """Words."""
        front.allow(neck=1 * cm, shoulder=1 * cm, armhole=0.6 * cm, side=1 * cm, hem=1 * cm)
        back.allow(neck=1 * cm, shoulder=1 * cm, armhole=0.6 * cm, side=1 * cm, hip=1 * cm)
        for piece in (front, back):
            piece.cut(1, fold="centre")
            piece.grain()

    @lesson.sew("Sew the sides")
    def sides(make, front, back):
        """Words."""
        make.plain_seam(front.side, back.side, allowance=1 * cm, press="open")

    return lesson


def test_a_finding_names_what_it_depends_on_and_marks_those_rows(make_lesson: LessonMaker) -> None:
    shown = panel(seams(make_lesson()))
    assert "Depends on: " in shown.proof.value and "hem drop" in shown.proof.value
    mark = shown.rows["hem_drop"].marked
    assert mark is not None and not mark.brought
    assert shown.rows["hem_drop"].widget.layout.border_left != shown.rows["buttons"].widget.layout.border_left


def test_the_move_that_brought_a_finding_is_marked_strongest(make_lesson: LessonMaker) -> None:
    lesson = seams(make_lesson())
    fitting = lesson.values["hem_drop"]
    shown = panel(lesson)
    seam = [line for line in re.findall(r"<li.*?</li>", shown.proof.value, re.S) if "Sew the sides" in line]
    shown.rows["hem_drop"].slider.value = 6
    mark = shown.rows["hem_drop"].marked
    worse = [line for line in re.findall(r"<li.*?</li>", shown.proof.value, re.S) if "Sew the sides" in line]
    assert worse != seam
    assert mark is not None and mark.brought
    assert mark.text.startswith(("To put right: ", "Look again: "))
    assert mark.text in shown.rows["hem_drop"]._why.value.replace("&#x27;", "'").replace("&quot;", '"')
    shown.rows["buttons"].slider.value = 3
    again = shown.rows["hem_drop"].marked
    assert again is not None and again.brought, "it stays where it came from until it is gone"
    assert fitting == 140.0


def test_a_draft_that_fails_marks_the_value_that_was_moved(make_lesson: LessonMaker) -> None:
    lesson = make_lesson()

    @lesson.step("Put in a notch")
    def notch(front, hem_drop):
        """A notch {hem_drop} along the shoulder."""
        front.notch("shoulder", hem_drop)

    lesson.change(hem_drop=5 * cm)
    shown = panel(lesson)
    assert not any(row.marked and row.marked.brought for row in shown.rows.values())
    shown.rows["hem_drop"].slider.value = 19
    mark = shown.rows["hem_drop"].marked
    assert mark is not None and mark.brought and "Put in a notch" in mark.text
    shown.rows["hem_drop"].slider.value = 5
    mark = shown.rows["hem_drop"].marked
    assert mark is None or not mark.brought


def test_a_mark_leaves_the_row_its_height(make_lesson: LessonMaker) -> None:
    """The reason stays in the row, unseen, and keeps its room under what the proof says."""
    shown = panel(seams(make_lesson()))
    html = shown.rows["hem_drop"]._why.value
    assert "visibility:hidden" in html and "reaches &lt;below&gt; the waist" in html and "position:absolute" in html


def test_parameters_of_a_finding(make_lesson: LessonMaker) -> None:
    lesson = make_lesson()
    pattern, entries = lesson.work(), lesson.entries
    names = [parameter.name for parameter in lesson.parameters]

    def of(**given: str) -> tuple[str, ...]:
        return parameters_of(Finding("x", "warning", "what", **given), pattern, entries, names)

    assert of(step="mark_share") == ("wrap_share", "buttons")
    assert of(piece="front", edge="hem") == ("hem_drop",)
    assert of(piece="front", edge="neck") == ()
    assert of(piece="front") == ("hem_drop",)
    assert of(step="gone") == ()
    assert isinstance(entries[0], Entry)


def test_what_brought_a_finding() -> None:
    short, longer = (Finding("gap", "error", "w", amount=mm, piece="front", edge="side") for mm in (1.0, 4.0))
    moves = Moves()
    moves.note([short], {"a": 1.0, "b": 1.0})
    assert moves.brought(short) == (), "it was there before anything moved"
    moves.note([longer], {"a": 2.0, "b": 1.0})
    assert moves.brought(longer) == ("a",)
    moves.note([longer], {"a": 2.0, "b": 3.0})
    assert moves.brought(longer) == ("a",)
    moves.note([], {"a": 1.0, "b": 3.0})
    moves.note([short], {"a": 1.0, "b": 4.0})
    assert moves.brought(short) == ("b",)


# ---- the proof aside --------------------------------------------------------------------------------------


def test_the_last_proof_stands_by_until_the_new_one_comes(make_lesson: LessonMaker) -> None:
    shown = panel(seams(make_lesson()))
    before = shown.proof.value
    assert "Sew the sides" in before

    async def move() -> None:
        shown.rows["hem_drop"].slider.value = 12
        await until(lambda: "Checking" in shown.proof.value)
        assert "opacity:.35" in shown.proof.value
        assert "Sew the sides" in shown.proof.value
        await until(lambda: "Checking" not in shown.proof.value)

    asyncio.run(move())
    assert "opacity:.35" not in shown.proof.value


def test_a_proof_that_is_not_wanted_any_more_is_not_shown(
    make_lesson: LessonMaker, monkeypatch: pytest.MonkeyPatch
) -> None:
    """The second move comes while the proof of the first is being worked."""
    import kit.proof

    begun: list[float] = []
    proved: list[float] = []
    true = kit.proof.prove
    shown = panel(make_lesson())

    def slow(pattern):  # type: ignore[no-untyped-def]
        import time

        from kit.pausing import pause_here

        begun.append(pattern.value("hem_drop"))
        for _ in range(60):
            time.sleep(0.005)
            pause_here()
        proved.append(pattern.value("hem_drop"))
        return true(pattern)

    monkeypatch.setattr(kit.proof, "prove", slow)

    async def moves() -> None:
        shown.rows["hem_drop"].slider.value = 12
        await until(lambda: begun)
        shown.rows["hem_drop"].slider.value = 9
        await until(lambda: proved and "Checking" not in shown.proof.value)

    asyncio.run(moves())
    assert begun == [120.0, 90.0] and proved == [90.0]


def test_looking_at_another_view_asks_for_no_new_proof(make_lesson: LessonMaker) -> None:
    shown = panel(make_lesson())
    before = shown.proof.value
    shown.proof.value = "untouched"
    shown.view.value = ("flat", "front")
    assert shown.proof.value == "untouched" != before


def test_a_refusal_is_told_until_something_else_is_set(make_lesson: LessonMaker) -> None:
    """Typed while the proof of the draft before was still at work: what it finds a moment later stands behind it."""
    shown = panel(seams(make_lesson()))
    row = shown.rows["hem_drop"]
    found = row.marked
    row.box.value = "13 bananas"
    assert row.marked is not None and "bananas" in row.marked.text and row.box.value != "13 bananas"
    shown._found((), {}, "")
    assert "bananas" in row._why.value
    row.mark(found)
    assert "bananas" in row._why.value
    shown.rows["buttons"].slider.value = 3
    assert row.marked is not None and "bananas" not in row.marked.text + row._why.value
