"""Remedies on the panel, without a browser: what is shown for a refusal and a failed proof, what a button does."""

from __future__ import annotations

import asyncio
from collections.abc import Callable

import pytest
from ipywidgets.widgets.widget import _instances

from kit import KitError, Lesson, blank_paper, cm, mm, panel
from kit.live.panel import Panel

from .conftest import LessonMaker, until

Made = Callable[..., Lesson]


def notebook_case(language: str = "en", least: float = 57.3) -> Lesson:
    """A case with a flap that must be deep enough, and must not take more than its allowance."""
    lesson = Lesson("Notebook <case>", start=blank_paper, units="cm", language=language, notions=("thread",))
    lesson.length("flap", 10 * cm, least=2 * cm, most=20 * cm, said="flap <depth>")
    lesson.length("hem", 3 * cm, least=1 * cm, most=6 * cm)
    lesson.count("cards", 4, least=1, most=9)

    @lesson.step("Draw the case", makes="case")
    def case(case, flap, cards):
        """Rule it."""
        if flap < least * mm:
            raise KitError("the flap is too short to stay shut.")
        if cards > 6 and flap < 15 * cm:
            raise KitError("so many cards fall out.")
        a, b, c, d = (case.place(x * cm, y * cm) for x, y in ((0, 0), (20, 0), (20, 30), (0, 30)))
        case.draw(bottom=a.to(b), one_side=b.to(c), top=c.to(d), other_side=d.to(a))
        case.allow(bottom=4 * cm, one_side=0 * cm, top=0 * cm, other_side=0 * cm)
        case.grain()
        case.cut(1)

    @lesson.sew("Hem it")
    def hemmed(make, case, hem):
        make.edge_finish(case.one_side, case.top, case.other_side, leave=True)
        make.hem(case.bottom, first=1 * cm, second=hem)

    return lesson


@pytest.fixture
def made(tmp_path, monkeypatch: pytest.MonkeyPatch) -> Made:
    monkeypatch.chdir(tmp_path)
    monkeypatch.delenv("LESSONKIT_BUILD", raising=False)
    return notebook_case


def sentences(shown: Panel) -> list[str]:
    return [line.sentence.value for line in shown.remedies._lines.values()]


def hidden(shown: Panel) -> bool:
    return bool(shown.remedies.widget.layout.display == "none")


def test_a_refused_draft_says_what_mends_it_and_a_button_sets_it(made: Made) -> None:
    lesson = made()
    shown = panel(lesson)
    assert hidden(shown)
    shown.rows["flap"].slider.value = 4
    assert not hidden(shown) and "Looking for values" in shown.remedies._head.value and sentences(shown) == []
    shown.remedies.now()
    assert "This mends it, all other values as they are:" in shown.remedies._head.value
    (said,) = sentences(shown)
    assert "Flap &lt;depth&gt;: at least 5.8 cm (2 5/16 in), now 4 cm (1 9/16 in)." in said
    (line,) = shown.remedies._lines.values()
    assert line.button.description == "Set it" and "at least 5.8 cm" in line.button.tooltip
    assert line.widget in shown.remedies._list.children
    line.button.click()
    assert lesson.values["flap"] == 58.0 and shown.rows["flap"].slider.value == 5.8
    assert shown.message.value == "" and hidden(shown) and sentences(shown) == []
    assert "5.8" in lesson.sitting.sidecar.read_text() or '"flap": 58.0' in lesson.sitting.sidecar.read_text()
    lesson.undo()
    assert lesson.values["flap"] == 40.0  # one change, taken back by itself
    assert not hidden(shown)


def test_a_failed_proof_says_what_mends_it(made: Made) -> None:
    lesson = made()
    shown = panel(lesson)
    shown.rows["hem"].slider.value = 4.2
    assert "To put right" in shown.proof.value
    shown.remedies.now()
    (said,) = sentences(shown)
    assert "Hem: 3 cm (1 3/16 in), now 4.2 cm (1 5/8 in)." in said
    next(iter(shown.remedies._lines.values())).button.click()
    assert "To put right" not in shown.proof.value and hidden(shown)


def test_what_no_value_mends_is_told_for_a_refusal_and_left_to_the_proof(made: Made) -> None:
    lesson = made(least=999.0)
    shown = panel(lesson)
    shown.remedies.now()
    assert "No value was found, inside its range, that mends it." in shown.remedies._head.value
    lesson = made()

    @lesson.step("Draw a scrap", makes="scrap")
    def scrap(scrap):
        a, b, c = (scrap.place(x * cm, y * cm) for x, y in ((0, 0), (20, 0), (20, 30)))
        scrap.draw(one=a.to(b), two=b.to(c), three=c.to(a))

    shown = panel(lesson)
    assert "To put right" in shown.proof.value
    shown.remedies.now()
    assert hidden(shown)


def test_going_back_is_to_the_values_that_passed_last(made: Made) -> None:
    lesson = made()
    shown = panel(lesson)
    shown.rows["flap"].slider.value = 18
    lesson.change(flap=3 * cm, cards=8, hem=5 * cm)
    shown.remedies.now()
    assert "No single value mends it inside its range." in shown.remedies._head.value
    together, back = shown.remedies._lines.values()
    assert "Together:" in together.sentence.value
    assert back.button.description == "Go back"
    assert "flap &lt;depth&gt;: 18 cm" in back.sentence.value and "cards: 4" in back.sentence.value
    back.button.click()
    assert lesson.values == {"flap": 180.0, "hem": 30.0, "cards": 4.0}
    assert hidden(shown)


def test_a_button_in_use_stays_when_more_is_known(made: Made) -> None:
    shown = panel(made())
    shown.rows["flap"].slider.value = 4
    asked = shown.remedies
    buttons = []
    for show in asked._search():
        show()
        buttons += [id(line.button) for line in asked._lines.values()]
    assert len(buttons) == 3 and len(set(buttons)) == 1  # found, told how far it holds, and the end


def test_a_new_move_stops_the_search_and_the_next_one_is_for_the_new_values(made: Made) -> None:
    async def drag() -> Panel:
        shown = panel(made())
        shown.rows["flap"].slider.value = 4
        for _ in range(20):
            await asyncio.sleep(0.01)
        shown.rows["flap"].slider.value = 4.6
        await until(lambda: not shown._latest._waiting and not shown.remedies._searching.pending and sentences(shown))
        return shown

    shown = asyncio.run(drag())
    (said,) = sentences(shown)
    assert "now 4.6 cm" in said and "at least 5.8 cm" in said
    assert shown.remedies.remedies[0].changes[0].way == "least"


def test_the_buttons_speak_the_language_of_the_lesson_and_read_in_its_units(made: Made) -> None:
    lesson = made(language="de")
    lesson.choose(units="inch")
    shown = panel(lesson)
    lesson.change(flap=4 * cm)
    shown.remedies.now()
    (line,) = shown.remedies._lines.values()
    assert line.button.description == "Einstellen"
    assert "mindestens 2 5/16" in line.sentence.value and "(5,9" in line.sentence.value


def test_closing_the_panel_stops_the_search_and_a_build_has_none(
    make_lesson: LessonMaker, made: Made, monkeypatch: pytest.MonkeyPatch
) -> None:
    before = set(_instances)
    shown = panel(made())
    shown.rows["flap"].slider.value = 4
    shown.remedies.now()
    assert shown.remedies._lines
    shown.remedies.seek("flap", refused=True)
    shown.close()
    assert not shown.remedies._searching.pending
    left = [one for key, one in _instances.items() if key not in before]
    assert left
    for one in left:  # a page that is opened asks for all of them at once, and a closed child would leave it empty
        one.get_state()
    monkeypatch.setenv("LESSONKIT_BUILD", "1")
    built = panel(make_lesson())
    assert hidden(built)
