"""Sliders of the panel end where the other values end them."""

from __future__ import annotations

from pathlib import Path

import pytest
from ipywidgets import FloatSlider

from kit import Lesson, blank_paper, cm, mm, panel


@pytest.fixture
def bag(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Lesson:
    """A rectangle whose gap and two roundings must find room in its width."""
    monkeypatch.chdir(tmp_path)
    lesson = Lesson("Bag", start=blank_paper)
    lesson.length("width", 26 * cm, least=18 * cm, most=40 * cm, at_least=lambda gap, rounding: gap + rounding * 2)
    lesson.length("rounding", 6 * cm, least=3 * cm, most=9 * cm, at_most=lambda width, gap: (width - gap) / 2)
    lesson.length("gap", 12 * cm, least=8 * cm, most=14 * cm)

    @lesson.step("Draw the front", makes="front")
    def draw(front, width):  # type: ignore[no-untyped-def]
        """Rule a square {width} wide."""
        a, b = front.place(0 * mm, 0 * mm), front.place(width, 0 * mm)
        c, d = front.place(width, width), front.place(0 * mm, width)
        front.draw(bottom=a.to(b), right=b.to(c), top=c.to(d), left=d.to(a))

    return lesson


def ends(shown: object, name: str) -> tuple[float, float]:
    slider = shown.rows[name].slider  # type: ignore[attr-defined]
    return slider.min, slider.max


def test_an_end_moves_with_the_values_it_follows_from(bag: Lesson) -> None:
    shown = panel(bag)
    assert ends(shown, "width") == (24.0, 40.0)  # 12 and twice 6
    assert ends(shown, "rounding") == (3.0, 7.0)  # (26 - 12) / 2
    assert ends(shown, "gap") == (8.0, 14.0)  # it has no bound of its own
    shown.rows["width"].slider.value = 30.0
    assert ends(shown, "rounding") == (3.0, 9.0)
    shown.rows["rounding"].slider.value = 8.5
    assert ends(shown, "width") == (29.0, 40.0)
    assert shown.message.value == "" and bag.values["rounding"] == 85.0


def test_a_value_that_is_left_outside_stays_where_it_is_and_is_told(bag: Lesson) -> None:
    """The gap of 14 cm leaves 6 on either side, and the rounding of 7 stands: the slider shows it, and the message says
    how far it may go."""
    shown = panel(bag)
    shown.rows["rounding"].slider.value = 7.0
    shown.rows["gap"].slider.value = 14.0
    assert bag.values["rounding"] == 70.0 and shown.rows["rounding"].slider.value == 7.0
    assert ends(shown, "rounding") == (3.0, 7.0)
    assert ends(shown, "width") == (26.0, 40.0)
    assert "6 cm" in shown.message.value or "28 cm" in shown.message.value
    shown.rows["rounding"].slider.value = 5.0
    assert ends(shown, "rounding") == (3.0, 6.0) and shown.message.value == ""


def test_a_value_typed_from_outside_its_ends_to_within_is_the_value(bag: Lesson) -> None:
    """From where the bound left it outside, a typed value lands where it was typed, not on the end of the slider."""
    shown = panel(bag)
    shown.rows["rounding"].box.value = "9 cm"
    assert "at least 30 cm" in shown.message.value and ends(shown, "rounding") == (3.0, 9.0)
    shown.rows["rounding"].box.value = "5 cm"
    assert bag.values["rounding"] == 50.0 and shown.rows["rounding"].slider.value == 5.0
    assert ends(shown, "rounding") == (3.0, 7.0) and shown.message.value == ""
    shown.rows["width"].box.value = "20 cm"
    assert "at least 22 cm" in shown.message.value and ends(shown, "width") == (20.0, 40.0)
    shown.rows["width"].box.value = "32 cm"
    assert bag.values["width"] == 320.0 and shown.rows["width"].slider.value == 32.0
    assert ends(shown, "width") == (22.0, 40.0) and shown.message.value == ""


def test_an_end_in_inches_is_the_last_step_inside_the_bound(bag: Lesson) -> None:
    """7 cm is 2.756 in: the last sixteenth inside is 2 3/4."""
    shown = panel(bag)
    shown.units.value = "inch"
    low, high = ends(shown, "rounding")
    assert high == 2.75 and low == pytest.approx(30 / 25.4, abs=1 / 16)
    shown.rows["rounding"].slider.value = high
    assert shown.message.value == ""
    shown.units.value = "cm"
    assert ends(shown, "rounding") == (3.0, 7.0)


def test_an_end_moves_with_the_body(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.chdir(tmp_path)
    lesson = Lesson("Tie", start=blank_paper, size="W4")
    lesson.length("tie", 100 * cm, least=30 * cm, most=120 * cm, at_least=lambda waist_girth: waist_girth / 2 + 20 * cm)

    @lesson.step("Draw it", makes="front")
    def draw(front, tie):  # type: ignore[no-untyped-def]
        """Rule a square {tie} wide."""
        a, b = front.place(0 * mm, 0 * mm), front.place(tie, 0 * mm)
        c, d = front.place(tie, tie), front.place(0 * mm, tie)
        front.draw(bottom=a.to(b), right=b.to(c), top=c.to(d), left=d.to(a))

    shown = panel(lesson)
    assert ends(shown, "tie") == (55.8, 120.0)  # half of 71.5 and 20, on a whole mm
    lesson.choose(size="W10")
    assert ends(shown, "tie") == (73.5, 120.0)


class Browser:
    """A slider as the page keeps it, after ipywidgets' own script (jupyterlab-widgets 3, widget_float.ts): it keeps
    all that a message brings, then follows it name by name; where the slider comes to stand at another place than it
    was sent to, it reports that, if it reports while it moves. Names come in the worst order."""

    def __init__(self, slider: FloatSlider) -> None:
        self.model = slider.get_state()
        self.range = self.model["min"], self.model["max"]
        self.reports: list[float] = []
        slider.send_state = self.sent  # type: ignore[method-assign]
        self.slider = slider

    def sent(self, key: object = None) -> None:
        told = self.slider.get_state(key=key)
        changed = [name for name in sorted(told, reverse=True) if self.model[name] != told[name]]  # value, min, max
        self.model |= told
        for name in changed:
            if name in ("min", "max"):
                self.range = self.model["min"], self.model["max"]
            if name in ("min", "max", "value"):
                self.stand()

    def stand(self) -> None:
        low, high = self.range
        steps = round((min(max(self.model["value"], low), high) - low) / self.model["step"])
        stands = low + steps * self.model["step"]
        if self.model["continuous_update"] and stands != self.model["value"]:
            self.model["value"] = stands
            self.reports.append(stands)


def test_what_was_typed_is_not_taken_back_by_the_browsers_slider(bag: Lesson) -> None:
    """Also where the other values leave less (24 cm and more)."""
    shown = panel(bag)
    row = shown.rows["width"]
    browser = Browser(row.slider)
    for text in ("19 cm", "33.3 cm", "18.7 cm", "24 cm", "39.9 cm", "20.1 cm"):
        row.box.value = text
        assert browser.reports == []
        assert browser.model["value"] == row.slider.value == pytest.approx(float(text.split()[0]))
        assert row.box.value == text
    shown.rows["gap"].box.value = "14 cm"
    assert browser.reports == [] and row.slider.continuous_update and browser.model["continuous_update"]
