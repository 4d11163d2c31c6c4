"""The panel and the forms speak the language of the lesson, and no word of them escapes the catalogue."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import replace
from html import unescape
from pathlib import Path
from typing import Any

import ipywidgets as widgets
import pytest

from kit import Lesson, body_form, cm, name_edges, panel, read_traced
from kit.lesson.lesson import rewrite
from kit.live import speech
from tests.pseudo import CODE, escaped, pseudo

from .conftest import LessonMaker
from .test_panel_choices import seams


def texts(widget: Any) -> Iterator[str]:
    """Every text a widget and what it holds give to the reader; the words of pictures are theirs, not the panel's."""
    for name in ("description", "tooltip", "placeholder"):
        if isinstance(getattr(widget, name, None), str):
            yield getattr(widget, name)
    if isinstance(widget, widgets.HTML | widgets.Label):
        html = re.sub(r"<svg.*?</svg>|<pre.*?</pre>", " ", widget.value, flags=re.S)
        yield from re.findall(r'title="([^"]*)"', html)
        yield unescape(re.sub(r"<[^>]+>", " ", html))
    if isinstance(widget, widgets.Button | widgets.ToggleButton):
        yield str(widget.tooltip)
    if isinstance(widget, widgets.ToggleButtons):
        yield from (*(label for label, _ in widget.options), *widget.tooltips)
    elif isinstance(widget, widgets.Dropdown):
        yield from (label for label, _ in widget.options)
    for child in getattr(widget, "children", ()):
        yield from texts(child)


def outside(widget: Any, given: list[str]) -> list[str]:
    # Unit signs stay plain in the made-up language.
    return [
        word for text in texts(widget) for word in escaped(text, [*given, "cm", "mm", "in", "m", "yd", "inch"]) if word
    ]


def spoken_in_pseudo(lesson: Lesson) -> Lesson:
    rewrite(lesson, info=replace(lesson.info, language=CODE))
    return lesson


def given(lesson: Lesson) -> list[str]:
    """The lesson's own words: titles, names and reasons."""
    own = [word for p in lesson.parameters for word in (p.label, p.label.capitalize(), p.why)]
    return [*own, *(e.title for e in lesson.entries), *lesson.sizes.names]


def test_no_word_of_the_panel_escapes_the_catalogue(make_lesson: LessonMaker) -> None:
    with pseudo():
        lesson = spoken_in_pseudo(seams(make_lesson()))
        lesson.preset("Cropped", hem_drop=5 * cm)
        from kit.language import speaking

        with speaking("en"):  # as in a notebook: the lesson's language comes from the lesson
            shown = panel(lesson)
            shown.rows["hem_drop"].slider.value = 11
            shown.figures.now()
            mine = [*given(lesson), "Cropped"]
            assert outside(shown, mine) == []
            shown.rows["hem_drop"].slider.value = 12  # the figures are old ones now
            shown.tried_on.open.value = True
            shown.tried_on.name.value = "Toile"
            shown.tried_on.begin.click()
            shown.rows["wrap_share"].slider.value = 50
            titles = [piece.title for piece in lesson.work().pieces]
            assert outside(shown, [*mine, "Toile", *titles]) == []
            shown.tried_on.keep.click()
            assert outside(shown, [*mine, "Toile", *titles]) == []
            assert sum("«" in text for text in texts(shown)) > 40


def test_no_word_of_the_body_form_escapes_the_catalogue(make_lesson: LessonMaker) -> None:
    with pseudo():
        lesson = spoken_in_pseudo(make_lesson())
        from kit.body.measures import MEASUREMENTS
        from kit.language import speaking

        with speaking("en"):
            form = body_form(lesson)
            form.boxes["bust_girth"].value = "97 cm"
            form.more.value = True
            form.use.click()
            names = [word for row in MEASUREMENTS.values() for word in (row.said, row.said.capitalize())]
        # The advice on sizes and bodies is not the form's.
        form.advice.value = ""
        assert outside(form, names) == []
        assert sum("«" in text for text in texts(form)) > 20


def test_no_word_of_the_form_for_edges_escapes_the_catalogue(tmp_path: Path) -> None:
    drawing = tmp_path / "top.svg"
    drawing.write_text(
        '<svg xmlns="http://www.w3.org/2000/svg" width="200mm" height="300mm" viewBox="0 0 200 300">'
        '<path id="front" d="M20 20 L150 20 L150 260 L20 260 Z"/></svg>'
    )
    with pseudo():
        form = name_edges(read_traced(str(drawing)))
        form.children[0].value = ""  # what reading the drawing had to say
        form.message.value = ""  # a refusal
        assert outside(form, ["front"]) == []
        assert sum("«" in text for text in texts(form)) > 6


@pytest.mark.parametrize(("language", "spoken"), [("en", "en"), ("en-GB", "en-GB"), ("xx", "en")])
def test_a_language_without_a_catalogue_is_spoken_in_english(
    make_lesson: LessonMaker, language: str, spoken: str
) -> None:
    lesson = make_lesson()
    rewrite(lesson, info=replace(lesson.info, language=language))
    assert speech.spoken_by(lesson) == spoken


def test_a_typed_value_is_read_and_shown_as_the_language_writes_it(make_lesson: LessonMaker) -> None:
    """German has a decimal comma (CLDR, as babel gives it)."""
    lesson = make_lesson()
    rewrite(lesson, info=replace(lesson.info, language="de"))
    shown = panel(lesson)
    shown.rows["hem_drop"].box.value = "6,4 cm"
    assert lesson.values["hem_drop"] == 64.0
    assert shown.rows["hem_drop"].box.value == "6,4 cm"
    shown.rows["hem_drop"].box.value = "9½ Zoll"
    assert "außerhalb des Bereichs" in shown.message.value
    shown.rows["hem_drop"].box.value = "5½ Zoll"
    assert lesson.values["hem_drop"] == pytest.approx(139.7)
