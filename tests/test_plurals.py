"""What a message counts is given to it as a whole number, wherever a lesson is told, drawn, proved or put on a page."""

from __future__ import annotations

import pytest
from babel import Locale

from kit.body import workshop_chart
from kit.booklet.compose import compose
from kit.booklet.fetch import LessonFolder
from kit.booklet.html import to_html
from kit.booklet.screen import screen
from kit.booklet.tables import cut_sentence
from kit.cloth.cut_list import cut_list
from kit.language import languages, say, speaking
from kit.paper.papers import A4
from kit.paper.printing import print_files
from kit.paper.request import PageRequest
from kit.picture.flat import laid_flat
from kit.picture.piece_sheet import piece_drawing
from kit.picture.sewing import scene_drawing
from kit.proof import prove
from kit.prose import about_minutes, scene_alt, sentences, step_alt, whys
from kit.prose.worksheet import worksheet
from kit.sewing.in_work import shown_scenes
from kit.sewing.order import sew
from tests.example import EXAMPLE
from tests.lesson_words import example_lessons
from tests.plurals import FORMS, chosen_by_number, numbers, watched
from tests.ran import ran_example
from tests.sewing import wrap_top as wrap
from tests.unplaced import texts_unplaced


def test_the_forms_are_those_of_plural_rules() -> None:
    """Unicode CLDR, through Babel: no language of ours has a form besides."""
    for code in languages():
        assert set(Locale.parse(code).plural_form.tags) - {"other"} <= FORMS


def test_a_text_in_the_place_of_a_number_is_found() -> None:
    assert chosen_by_number("a = { $n ->\n    [one] { $n } pin\n   *[other] { $n } pins\n  }\n") == {"a": {"n"}}
    assert chosen_by_number("a = { $side ->\n    [left] l\n   *[other] r\n  }\n") == {}
    assert numbers()["paper-pieces"] == {"count"}
    with watched() as found:
        say("paper.pieces", count=1)
        say("paper.pieces", count="1")
    assert found["texts"] == ["paper-pieces: count = '1'"]


def test_every_number_of_the_example_lessons_is_one() -> None:
    with watched() as found:
        for lesson in example_lessons().values():
            pattern = lesson.work(workshop_chart()["W4"])
            list(map(str, prove(pattern)))
            list(map(cut_sentence, cut_list(pattern)))
            worksheet(pattern)
            laid_flat(pattern, "front", "cm")
            for piece in pattern.pieces:
                piece_drawing(piece, pattern)
            for step in pattern.steps:
                step_alt(step, "cm")
            for record in pattern.sewing:
                about_minutes(sum(operation.minutes(pattern) for operation in record.operations))
                for operation in record.operations:
                    sentences(pattern, operation)
                    whys(pattern, operation)
                    for scene in shown_scenes(pattern, operation):
                        scene_alt(pattern, scene)
                        scene_drawing(scene, pattern)
    assert found["texts"] == []
    assert set(found["said"]) >= {"phrase-minutes", "worksheet-strip"}


def test_every_number_of_a_booklet_and_its_pages_is_one() -> None:
    ran = ran_example(EXAMPLE.stem)
    with watched() as found, texts_unplaced():  # where a text stands says nothing of it
        book = compose(ran.handover, ran.notebook, LessonFolder(EXAMPLE.parent), ())
        screen(to_html(book))
        print_files(ran.handover.pattern, PageRequest((A4,)))
    assert found["texts"] == []
    assert {"paper-plan_pages", "lay-alt_piece"} & set(found["said"])


def test_too_many_strips_are_counted() -> None:
    steps = [*wrap.whole_order(), ("Third tie", lambda t: t.make.attach_strip(t.tie, t.front.left.wrap_edge))]
    with watched() as found:
        (refusal,) = sew(wrap.pattern_of(steps))[1]
        told = refusal.what
    assert found["texts"] == [] and found["said"].count("sewing_trouble-too_few_strips")
    assert told == say("sewing_trouble.too_few_strips", count=3, cut=2)


@pytest.mark.parametrize("code", languages())
def test_one_strip_is_told_as_one(code: str) -> None:
    with speaking(code):
        one, three = (say("sewing_trouble.too_few_strips", count=count, cut=1) for count in (1, 3))
    assert "1" in one and "3" in three
    assert one.replace("1", "3", 1) != three
