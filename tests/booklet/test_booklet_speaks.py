"""Every word of a booklet comes from a catalogue: the kit's, or the lesson's own words in the reader's language."""

from __future__ import annotations

import re
from functools import cache
from html import unescape

import pytest
from babel.messages.catalog import Catalog

from kit.body.measures import MEASUREMENTS
from kit.booklet.compose import compose
from kit.booklet.fetch import LessonFolder
from kit.booklet.forms import FORMS, SCREEN
from kit.booklet.html import to_html
from kit.booklet.own_language import in_language, markdown_cells
from kit.booklet.run_notebook import Ran
from kit.language import keys, languages, say, speaking
from kit.lesson.own_words import own_texts
from kit.proof import prove
from tests.pseudo import CODE, OPEN, SHUT, escaped, pseudo
from tests.ran import ran_example
from tests.unplaced import texts_unplaced

UNITS = ("mm", "cm", "m", "in", "yd")
SMALL = {*UNITS, "and", "left", "right", "about", "minutes"}  # units and phrases stay plain in the made-up language


def written(html: str) -> list[str]:
    """Every text a reader meets: between tags, and in titles, labels and alternative texts."""
    html = re.sub(r"<(style|script)\b.*?</\1>", "", html, flags=re.DOTALL)
    said = re.findall(r'\b(?:aria-label|alt|content)="([^"]*)"', html)
    return [unescape(text) for text in [*said, re.sub(r"<[^>]*>", " ", html)]]


ran_lesson = cache(ran_example)


def wrapped_words(ran: Ran) -> Catalog:
    """A translation that puts every text of the lesson between guillemets."""
    catalogue = Catalog(locale="de")
    for text, _ in own_texts(ran.handover, markdown_cells(ran.notebook)):
        catalogue.add(text, f"{OPEN}{text}{SHUT}")
    return catalogue


@pytest.mark.slow
@pytest.mark.parametrize(
    ("lesson", "form"),
    [("tideline_wrap_top", "a4"), ("harbour_jacket", "screen"), ("dune_skirt", "screen"), ("ferry_tote", "a5")],
)
def test_no_word_of_a_booklet_escapes_the_catalogues(lesson, form):
    ran = ran_lesson(lesson)
    with pseudo():
        given, notebook, missing = in_language(ran.handover, ran.notebook, wrapped_words(ran), CODE)
        assert not missing
        shape = SCREEN if form == "screen" else FORMS[form]
        findings = prove(given.pattern)
        with texts_unplaced(words_alone=True):
            html = to_html(compose(given, notebook, LessonFolder(ran.folder), findings, shape), shape)
        plain = SMALL | {given.pattern.lesson.author}
        for key in [*(f"measure.{name}" for name in MEASUREMENTS), *(f"edge.{name}" for name in keys("edge"))]:
            plain |= {say(key), say(key)[:1].upper() + say(key)[1:]}
    strays = [word for text in written(html) for word in escaped(text, plain)]
    known = {"utf-8", "width=device-width,", "initial-scale=1", "pattern-lesson-kit"}
    sizes = re.compile(r"W\d+,?|[\dA-Za-z]{1,2}[.,;:)]*|.*\d.*")
    left = [word for word in strays if word not in known and not sizes.fullmatch(word)]
    assert not left, " ".join(left)


@pytest.mark.slow
@pytest.mark.parametrize("code", [code for code in languages() if code != "en"])
@pytest.mark.parametrize("lesson", ["tideline_wrap_top", "dune_skirt"])
def test_nothing_of_the_kits_own_is_said_in_english(lesson, code):
    """A message that a language lacks is marked "[en]"; so is a text of the lesson without a translation: here all of
    them have one."""
    ran = ran_lesson(lesson)
    with speaking(code), texts_unplaced(words_alone=True):
        given, notebook, _ = in_language(ran.handover, ran.notebook, wrapped_words(ran), code)
        html = to_html(compose(given, notebook, LessonFolder(ran.folder), prove(given.pattern)))
    assert "[en]" not in html
    assert f'<html lang="{code}">' in html
    if code in ("de", "es", "fr"):
        plain = re.sub(r"<[^>]+>|«[^«»]*»", " ", html)
        assert re.search(r"\d,\d cm", plain) and not re.search(r"\d\.\d cm", plain)
