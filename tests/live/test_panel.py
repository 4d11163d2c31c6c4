"""The panel without a browser: what its widgets hold after a move."""

from __future__ import annotations

import asyncio
import json
import re
from dataclasses import replace
from pathlib import Path

import nbformat
import pytest

from kit import Body, KitError, cm, make_body, open_lesson, panel
from kit.booklet.starter import start
from kit.live import fragments, pace
from kit.live.canvas.widget import Canvas
from kit.live.followers import followers
from kit.live.panel import Panel
from kit.live.player import Player
from kit.units import inch

from .conftest import LessonMaker, until


def outline(html: str) -> list[str]:
    return re.findall(r' d="([^"]+)"', html)


def test_a_move_redraws_saves_and_updates_the_measurements(make_lesson: LessonMaker) -> None:
    lesson = make_lesson()
    shown = panel(lesson)
    before, finished = shown.picture.value, shown.finished.value
    shown.rows["hem_drop"].slider.value = 9.5
    assert lesson.values["hem_drop"] == 95.0
    assert outline(shown.picture.value) != outline(before)
    assert shown.finished.value != finished
    assert shown.rows["hem_drop"].box.value == "9.5 cm"
    assert shown.rows["hem_drop"].other.value == "3 3/4 in"
    assert json.loads(lesson.sitting.sidecar.read_text())["values"]["hem_drop"] == 95.0
    assert shown.message.value == ""


def test_the_picture_is_the_lesson_worked_for_the_new_value(make_lesson: LessonMaker) -> None:
    """The hem in the picture lies as far below the waistline (y = 0) as the slider says."""
    lesson = make_lesson()
    shown = panel(lesson)
    shown.rows["hem_drop"].slider.value = 11.3
    hem = re.search(r'data-name="front.hem" d="M[-\d.]+ ([-\d.]+)L[-\d.]+ ([-\d.]+)"', shown.picture.value)
    assert hem is not None
    assert [float(y) for y in hem.groups()] == pytest.approx([113.0, 113.0])  # y grows downward in SVG


def test_values_come_back_in_a_new_lesson(make_lesson: LessonMaker) -> None:
    shown = panel(make_lesson())
    shown.rows["hem_drop"].slider.value = 7
    shown.rows["wrap_share"].slider.value = 45
    shown.rows["buttons"].slider.value = 3
    shown.size.value = "W7"
    shown.units.value = "inch"
    later = make_lesson()
    assert later.values == {"hem_drop": 70.0, "wrap_share": 0.45, "buttons": 3.0}
    assert (later.body.name, later.units) == ("W7", "inch")
    again = panel(later)
    assert again.rows["hem_drop"].box.value == "2 3/4 in"
    assert again.size.value == "W7"
    assert again.units.value == "inch"


def test_switching_units_changes_no_value(make_lesson: LessonMaker) -> None:
    lesson = make_lesson()
    lesson.change(hem_drop=cm * 13.7, wrap_share=0.333)
    shown = panel(lesson)
    exact = dict(lesson.values)
    for _ in range(7):
        for units in ("inch", "cm"):
            shown.units.value = units
            assert lesson.values == exact
    slider = shown.rows["hem_drop"].slider
    assert (slider.min, slider.max, slider.value) == pytest.approx((4, 20, 13.7))
    shown.units.value = "inch"
    slider = shown.rows["hem_drop"].slider
    assert slider.step == 1 / 16
    assert slider.value == 5 + 6 / 16  # 137 mm is 5.394 in
    # Rounded outward to sixteenths: 40 mm is 1.575 in, 200 mm is 7.874 in.
    assert (slider.min, slider.max) == (1 + 9 / 16, 7 + 14 / 16)
    assert slider.min * 25.4 <= 40 and slider.max * 25.4 >= 200


def test_a_browser_slider_that_reports_its_step_changes_no_value(make_lesson: LessonMaker) -> None:
    """Browsers move a slider to its nearest step, to a few decimals, and report that as a move."""
    lesson = make_lesson()
    shown = panel(lesson)
    row = shown.rows["hem_drop"]
    row.box.value = "4 1/2 in"
    assert row.slider.value == 11.4
    row.slider.value = 11.4000001
    assert lesson.values["hem_drop"] == pytest.approx(114.3)
    row.slider.value = 11.5
    assert lesson.values["hem_drop"] == 115.0
    row.slider.value = 11.4
    assert lesson.values["hem_drop"] == 114.0, "moved there by hand"
    shown.units.value = "inch"
    row.slider.value = round(row.slider.value, 2)
    assert lesson.values["hem_drop"] == 114.0


def test_a_late_report_is_read_in_the_unit_it_was_made_in(make_lesson: LessonMaker) -> None:
    """A move still on its way from the browser when the units are switched."""
    lesson = make_lesson()
    shown = panel(lesson)
    in_cm = shown.rows["hem_drop"].slider
    shown.units.value = "inch"
    in_cm.value = 12.5
    assert lesson.values["hem_drop"] == 125.0
    assert shown.rows["hem_drop"].box.value == "4 15/16 in"
    assert shown.rows["hem_drop"].slider.value == 4 + 15 / 16


def test_an_inch_slider_gives_exact_sixteenths_and_its_ends_the_range(make_lesson: LessonMaker) -> None:
    lesson = make_lesson()
    shown = panel(lesson)
    shown.units.value = "inch"
    slider = shown.rows["hem_drop"].slider
    slider.value = 5 + 3 / 16
    assert lesson.values["hem_drop"] == 83 * 25.4 / 16
    slider.value = slider.max
    assert lesson.values["hem_drop"] == 200.0
    slider.value = slider.min
    assert lesson.values["hem_drop"] == 40.0


def test_typed_values(make_lesson: LessonMaker) -> None:
    lesson = make_lesson()
    shown = panel(lesson)
    box = shown.rows["hem_drop"].box
    for typed, value in (("5 1/2 in", 5.5 * 25.4), ("12", 120.0), ("65mm", 65.0), ("6,4 cm", 64.0)):
        box.value = typed
        assert lesson.values["hem_drop"] == pytest.approx(value, abs=1e-9)
    shown.rows["wrap_share"].box.value = "55 %"
    assert lesson.values["wrap_share"] == 0.55
    shown.rows["buttons"].box.value = "8"
    assert lesson.values["buttons"] == 8
    assert shown.message.value == ""


@pytest.mark.parametrize(
    ("row", "typed", "said"),
    [
        ("hem_drop", "<b>long</b>", "&#x27;&lt;b&gt;long&lt;/b&gt;&#x27; cannot be read as a length"),
        ("hem_drop", "95 cm", "hem drop is 95 cm (37 3/8 in), outside its range of 4 cm (1 9/16 in)"),
        ("wrap_share", "lots", "cannot be read as a share"),
        ("wrap_share", "130 %", "130%"),
        ("buttons", "2.5", "cannot be read as a whole number"),
        ("hem_drop", "nan", "cannot be read as a length"),
    ],
)
def test_what_cannot_be_used_is_said_and_changes_nothing(
    make_lesson: LessonMaker, row: str, typed: str, said: str
) -> None:
    lesson = make_lesson()
    shown = panel(lesson)
    values, text, picture = dict(lesson.values), shown.rows[row].box.value, shown.picture.value
    shown.rows[row].box.value = typed
    assert said in shown.message.value
    assert "<b>" not in shown.message.value
    assert lesson.values == values
    assert shown.rows[row].box.value == text
    assert shown.picture.value == picture
    shown.rows["hem_drop"].slider.value = 8
    assert shown.message.value == ""


def test_a_draft_that_fails_is_told_and_the_last_good_picture_stays(make_lesson: LessonMaker) -> None:
    lesson = make_lesson()

    @lesson.step("Put in a notch")
    def notch(front, hem_drop):
        """A notch {hem_drop} along the shoulder."""
        front.notch("shoulder", hem_drop)

    lesson.change(hem_drop=5 * cm)
    shown = panel(lesson)
    good = shown.picture.value
    assert shown.message.value == ""
    shown.rows["hem_drop"].slider.value = 19
    assert "Step &#x27;Put in a notch&#x27;" in shown.message.value
    assert "19 cm" in shown.message.value
    assert "Traceback" not in shown.message.value
    assert shown.picture.value == fragments.old(good)
    assert "opacity:.35" in shown.picture.value
    assert "opacity:.35" in shown.finished.value
    assert lesson.values["hem_drop"] == 190.0, "the value moved to is kept"
    shown.rows["hem_drop"].slider.value = 5
    assert shown.message.value == ""
    assert shown.picture.value == good


def test_the_steps_own_mistake_is_told_with_its_line(make_lesson: LessonMaker) -> None:
    lesson = make_lesson()
    shown = panel(lesson)

    @lesson.step("Divide by nothing")
    def divide(front, buttons):
        """Words."""
        return 1 / (buttons - 5)

    assert "ZeroDivisionError" in shown.message.value
    assert "return 1 / (buttons - 5)" in shown.message.value
    assert shown.picture.value.count("<svg") == 1


def test_text_of_a_lesson_is_escaped(make_lesson: LessonMaker) -> None:
    lesson = make_lesson()
    shown = panel(lesson)
    assert "reaches &lt;below&gt; the waist" in shown.rows["hem_drop"].widget.children[2].value
    shown.view.value = ("step", "lower_hem")
    assert "<hem>" not in shown.picture.value
    html = fragments.step(lesson.work().steps[0], "cm")
    assert "<hem>" not in html and "Lower the &lt;hem&gt;" in html
    assert "14 cm" in html


def test_views(make_lesson: LessonMaker) -> None:
    shown = panel(make_lesson())
    pictures = {shown.picture.value}
    for _, value in shown.view.options[1:]:
        shown.view.value = value
        assert shown.message.value == "", value
        assert "<svg" in shown.picture.value
        pictures.add(shown.picture.value)
    assert len(pictures) == len(shown.view.options)
    last = shown.picture.value
    shown.rows["hem_drop"].slider.value = 6
    assert shown.picture.value != last


def test_changes_made_in_code_reach_the_panel(make_lesson: LessonMaker) -> None:
    lesson = make_lesson()
    shown, second = panel(lesson), panel(lesson)
    lesson.change(hem_drop=3.5 * inch)
    for one in (shown, second):
        assert one.rows["hem_drop"].slider.value == pytest.approx(8.9)
        assert one.rows["hem_drop"].box.value == "8.9 cm"
    second.rows["hem_drop"].slider.value = 15
    assert shown.rows["hem_drop"].slider.value == 15
    assert shown.picture.value == second.picture.value
    second.close()
    assert list(followers(lesson).panels) == [shown]


def test_reset_puts_every_value_back(make_lesson: LessonMaker) -> None:
    lesson = make_lesson()
    shown = panel(lesson)
    at_first = shown.picture.value
    shown.rows["hem_drop"].slider.value = 6
    shown.rows["wrap_share"].slider.value = 40
    shown.reset.click()
    assert lesson.values == {"hem_drop": 140.0, "wrap_share": 0.7, "buttons": 5.0}
    assert shown.picture.value == at_first
    assert shown.rows["hem_drop"].slider.value == 14


def test_own_measurements_can_be_left_and_come_back(make_lesson: LessonMaker) -> None:
    lesson = make_lesson()
    own: Body = make_body({"bust_girth": 97 * cm}, name="Ola <3")
    lesson.choose(body=own)
    shown = panel(lesson)
    mine = shown.picture.value
    assert "Ola <3" not in mine
    shown.size.value = "W2"
    assert lesson.body.name == "W2"
    assert shown.picture.value != mine
    shown.size.value = shown.size.options[-1][1]
    assert lesson.body == own
    assert shown.picture.value == mine


def test_a_broken_sidecar_is_told_and_kept(make_lesson: LessonMaker) -> None:
    lesson = make_lesson()
    lesson.sitting.sidecar.write_text("{not json")
    lesson = make_lesson()
    shown = panel(lesson)
    assert "cannot be read" in shown.notes.value
    assert lesson.values["hem_drop"] == 140.0
    shown.rows["hem_drop"].slider.value = 6
    assert lesson.sitting.sidecar.with_suffix(".json.broken").read_text() == "{not json"


def test_a_folder_that_cannot_be_written_is_told(make_lesson: LessonMaker, monkeypatch: pytest.MonkeyPatch) -> None:
    lesson = make_lesson()
    shown = panel(lesson)
    sidecar = lesson.sitting.sidecar / "not-a-folder" / "x.json"
    lesson.sitting = replace(lesson.sitting, sidecar=sidecar)
    lesson.sitting.sidecar.parents[1].write_text("a file where a folder should be")
    shown.rows["hem_drop"].slider.value = 6
    assert "cannot be made" in shown.message.value or "cannot be written" in shown.message.value
    assert shown.picture.value.startswith("<svg")


def test_new_parameters_and_steps_appear(make_lesson: LessonMaker) -> None:
    lesson = make_lesson()
    shown = panel(lesson)
    kept = shown.rows["hem_drop"]
    lesson.length("loop", 4 * cm, least=1 * cm, most=9 * cm, why="a loop")
    assert list(shown.rows) == ["hem_drop", "wrap_share", "buttons", "loop"]
    assert shown.rows["hem_drop"] is kept
    lesson.length("hem_drop", 14 * cm, least=2 * cm, most=20 * cm)
    assert shown.rows["hem_drop"].slider.min == 2
    lesson.remove("mark_share")
    assert [value for _, value in shown.view.options if value[0] == "step"] == [("step", "lower_hem")]


def test_a_draft_being_written_is_shown_with_what_is_open(make_lesson: LessonMaker) -> None:
    lesson = make_lesson()
    shown = panel(lesson)

    @lesson.step("Lift the shoulder")
    def lift(front):
        """Lift it."""
        front.draw(over=front.neck_point.through(front.shoulder_tip.up(3 * cm)), instead_of=front.shoulder)

    assert "over" in shown.message.value
    assert 'data-name="front.over"' in shown.picture.value
    assert "opacity:.35" not in shown.picture.value


def test_panel_wants_a_lesson() -> None:
    with pytest.raises(KitError, match="a panel shows a lesson, not str"):
        panel("lesson")  # type: ignore[arg-type]


# ---- keeping up -------------------------------------------------------------------------------------------


def test_moves_that_arrive_together_are_drawn_once_and_saved_once(
    make_lesson: LessonMaker, monkeypatch: pytest.MonkeyPatch
) -> None:
    lesson = make_lesson()
    shown = panel(lesson)
    saves: list[float] = []
    save = lesson.save
    monkeypatch.setattr(lesson, "save", lambda: (saves.append(lesson.values["hem_drop"]), save()))

    async def drag() -> None:
        start = shown.drawn
        for step in range(50):
            shown.rows["hem_drop"].slider.value = 5 + step / 10
        assert shown.drawn == start, "nothing is drawn while messages are waiting"
        await until(lambda: shown.drawn > start)
        assert shown.drawn == start + 1
        assert "Checking" in shown.proof.value
        assert saves == []
        await until(lambda: saves and "Checking" not in shown.proof.value)
        assert saves == [99.0]

    asyncio.run(drag())
    assert shown.rows["hem_drop"].box.value == "9.9 cm"
    assert json.loads(lesson.sitting.sidecar.read_text())["values"]["hem_drop"] == 99.0


def test_a_long_drag_is_drawn_on_the_way(make_lesson: LessonMaker) -> None:
    shown = panel(make_lesson())

    async def drag() -> None:
        start = shown.drawn
        for step in range(60):
            shown.rows["hem_drop"].slider.value = 5 + step / 10
            await asyncio.sleep(0.004)
        assert shown.drawn > start + 3

    asyncio.run(drag())


def test_the_proof_waits_for_a_moving_slider(make_lesson: LessonMaker) -> None:
    parts: list[int] = []

    def work():  # type: ignore[no-untyped-def]
        for part in range(3):
            parts.append(part)
            if len(parts) == 5:
                settled.drop()  # a move comes in the middle of the second time
            yield

    settled = pace.Settled(work, 1.0)

    async def moves() -> None:
        for _ in range(5):
            settled.ask()
            await asyncio.sleep(0.005)
        assert parts == []
        await until(lambda: parts == [0, 1, 2])
        settled.ask()
        await until(lambda: len(parts) == 5)
        await asyncio.sleep(0.05)
        assert parts == [0, 1, 2, 0, 1]

    asyncio.run(moves())


def test_a_panel_closed_right_after_a_move_has_saved_it(make_lesson: LessonMaker) -> None:
    lesson = make_lesson()
    shown = panel(lesson)

    async def move() -> None:
        shown.rows["hem_drop"].slider.value = 8.8
        assert not lesson.sitting.sidecar.exists()
        shown.close()
        assert json.loads(lesson.sitting.sidecar.read_text())["values"]["hem_drop"] == 88.0

    asyncio.run(move())


def test_a_default_changed_in_the_notebook_counts_unless_the_slider_was_moved(make_lesson: LessonMaker) -> None:
    lesson = make_lesson()
    shown = panel(lesson)
    shown.rows["wrap_share"].slider.value = 45
    later = make_lesson()
    later.length("hem_drop", 12 * cm, least=4 * cm, most=20 * cm)
    later.share("wrap_share", 0.8, least=0.3, most=1.0)
    assert later.values["hem_drop"] == 120.0
    assert later.values["wrap_share"] == 0.45
    panel(later).reset.click()
    assert make_lesson().values["wrap_share"] == 0.7


def test_where_nobody_looks_on_nothing_is_drawn(
    make_lesson: LessonMaker, monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    """In a build, and in a notebook that another opens for its lesson; in plain Python it is."""
    lesson = make_lesson()
    monkeypatch.setenv("LESSONKIT_BUILD", "1")
    shown = panel(lesson)
    lesson.change(hem_drop=9 * cm)
    assert shown.drawn == 0
    monkeypatch.delenv("LESSONKIT_BUILD")
    lesson.change(hem_drop=10 * cm)
    assert shown.drawn == 1 and "<svg" in shown.picture.value

    drawn: list[str] = []
    for kind in (Panel, Canvas, Player):
        monkeypatch.setattr(kind, "_draw", lambda shown: drawn.append(type(shown).__name__))
    book = start("Pebble top", tmp_path)
    read = nbformat.read(book, as_version=4)
    (at,) = (number for number, cell in enumerate(read.cells) if cell.id == "panel")
    read.cells[at].source = "from kit import canvas, panel, player\npanel(lesson), canvas(lesson), player(lesson)"
    nbformat.write(read, book)
    opened = open_lesson(book)
    assert drawn == [] and len(opened.entries) > 1
    opened.change(length_below_waist=12 * cm)
    assert sorted(drawn) == ["Canvas", "Panel", "Player"]


def test_notes_do_not_spoil_a_proof_that_passed() -> None:
    from kit.live import fragments
    from kit.proof import Finding

    note, warning = Finding("x", "note", "mind the hem."), Finding("x", "warning", "look here.")
    assert "Every check passed" in fragments.findings([])
    assert "Every check passed" in fragments.findings([note]) and "mind the hem" in fragments.findings([note])
    assert "Every check passed" not in fragments.findings([warning, note])


def test_on_a_telephone_the_picture_is_drawn_for_its_room(make_lesson: LessonMaker) -> None:
    """Letters keep their size on the glass: a picture made for 760 px and shown in 270 has them a third as high."""
    shown = panel(make_lesson())
    wide = shown.picture.value

    def sides() -> tuple[float, float]:
        found = re.search(r'width="([\d.]+)" height="([\d.]+)"', shown.picture.value)
        assert found
        return float(found[1]), float(found[2])

    def letters() -> float:
        """The smallest letters in CSS px: lengths inside the picture are in mm."""
        box = re.search(r'viewBox="\S+ \S+ (\S+) ', shown.picture.value)
        assert box
        sizes = re.findall(r'font-size="([\d.]+)"', shown.picture.value)
        return min(float(size) for size in sizes) * sides()[0] / float(box[1])

    assert letters() >= 10
    shown._watch._heard(None, {"room": [270, 300]}, [])
    assert sides()[0] <= 270 and sides()[1] <= 300 and letters() >= 10
    for nonsense in ({"room": [1]}, {"room": "x"}, {"room": ["a", None]}, 3, {}):
        shown._watch._heard(None, nonsense, [])
    assert sides()[0] <= 270
    shown._watch._heard(None, {"room": [900, 700]}, [])
    assert shown.picture.value == wide
