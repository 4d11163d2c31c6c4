"""In which order a booklet is read: by one who turns its pages, and by one who listens to it.

Chapters stand in the order of use. In each step, card, fit change and part of the worksheet comes first what it is
about, then what to do, then what is to be seen (WCAG 2.2, 1.3.2, "meaningful sequence": what a screen reader meets in
the source is what it reads). The order of chapters is that of printed instructions (common practice, no source).
"""

from __future__ import annotations

from functools import cache
from xml.etree.ElementTree import Element

import pytest

from kit.booklet.compose import compose
from kit.booklet.fetch import LessonFolder
from kit.booklet.forms import FORMS, SCREEN
from kit.booklet.html import contents, to_html
from kit.booklet.model import Booklet
from kit.booklet.xhtml import name, parse, text
from tests.example import GARMENTS
from tests.ran import ran_example
from tests.unplaced import texts_unplaced

IN_USE = (
    *("about", "begin", "printing", "reading", "measuring", "sizes", "fit-changes", "cloth", "lays", "marking"),
    *("pieces", "drafting", "worksheet", "sewing", "fitting", "care", "variations", "closing", "terms", "index"),
)
PRINTED = (("dune_skirt", "a4"), ("ferry_tote", "a5"), ("tideline_wrap_top", "a4-large"))
"""Forms to print, each asked of one lesson: whether a picture stands beside its words or below goes by the form."""

pytestmark = pytest.mark.slow


@cache
def page(lesson: str, form: str) -> tuple[Booklet, Element]:
    """A lesson's booklet, and its page as a tree."""
    ran = ran_example(lesson)
    shape = SCREEN if form == "screen" else FORMS[form]
    with texts_unplaced(words_alone=True):
        book = compose(ran.handover, ran.notebook, LessonFolder(ran.folder), form=shape)
    return book, parse(to_html(book, shape))


def classes(element: Element) -> set[str]:
    return set((element.get("class") or "").split())


def of_class(root: Element, wanted: str) -> list[Element]:
    return [each for each in root.iter() if wanted in classes(each)]


def heard(block: Element) -> list[str]:
    """What is met in a block, in turn: "title", "words", "picture"."""
    found = []
    for each in block.iter():
        here = classes(each)
        if name(each) == "figure" and "photo" not in here:
            found.append("picture")
        elif name(each) in ("h3", "h4") or "card-title" in here:
            found.append("title")
        elif name(each) in ("p", "li") and text(each) and "video" not in here:
            found.append("words")
    return found


@pytest.mark.parametrize("lesson", GARMENTS)
def test_chapters_stand_in_the_order_of_use_and_so_do_the_contents(lesson: str) -> None:
    book, root = page(lesson, "screen")
    found = [each.get("id") or "" for each in of_class(root, "part") if each.get("id") != "left-out"]
    assert found == [part for part in IN_USE if part in found]
    assert [target for target, _ in contents(book) if target != "left-out"] == found[1:]
    assert {"marking", "pieces", "cloth", "sewing"} <= set(found)


@pytest.mark.parametrize("lesson", GARMENTS)
def test_what_to_cut_is_told_where_it_is_cut(lesson: str) -> None:
    """Allowances in one line, then how many of which, then how, then what to mark; nobody chalks a strip before its
    measures are read."""
    book, root = page(lesson, "screen")
    (chapter,) = (each for each in of_class(root, "part") if each.get("id") == "marking")
    said = text(chapter)
    steps = [said.index(" ".join(line.split())[:24]) for line in book.marking.steps]
    assert said.index(" ".join(book.marking.allowances.split())[:24]) < said.index(book.cut_table.title) < steps[0]
    assert steps == sorted(steps)
    if book.strip_table is not None:
        assert said.index(book.cut_table.title) < said.index(book.strip_table.head[3]) < steps[0]
    if book.marking.table is not None:
        assert steps[-1] < said.index(book.marking.table.title)


@pytest.mark.parametrize(("lesson", "form"), [*((each, "screen") for each in GARMENTS), *PRINTED])
def test_words_come_before_their_picture(lesson: str, form: str) -> None:
    _, root = page(lesson, form)
    blocks = [
        (kind, each)
        for kind in ("operation", "step", "card", "fit-change", "sheet-piece")
        for each in of_class(root, kind)
        if kind != "step" or "sew" not in classes(each)
    ]
    assert {kind for kind, _ in blocks} >= {"operation", "card"}
    pictured = 0
    for kind, block in blocks:
        met = heard(block)
        if "picture" not in met:
            continue
        pictured += 1
        first = met.index("picture")
        assert "words" in met[:first], (kind, text(block)[:80], met)
        assert kind in ("operation", "sheet-piece") or met[0] == "title", (kind, text(block)[:80], met)
    assert pictured > 5


@pytest.mark.parametrize("lesson", GARMENTS)
def test_a_picture_tells_whoever_listens_what_it_shows(lesson: str) -> None:
    """Its description stands in it, by the id that it is labelled by or in its title."""
    _, root = page(lesson, "screen")
    pictures = [each for each in root.iter() if name(each) == "svg" and each.get("aria-hidden") != "true"]
    assert pictures
    for each in pictures:
        titles = [child for child in each if name(child) in ("title", "desc") and (child.text or "").strip()]
        assert each.get("role") == "img" and titles, each.attrib


@pytest.mark.parametrize(("lesson", "form"), [*((each, "screen") for each in GARMENTS), *PRINTED])
def test_body_chart_and_finished_measures_stand_side_by_side(lesson: str, form: str) -> None:
    """One below the other with the same sizes in the same columns, also where a narrow page parts them."""
    book, root = page(lesson, form)
    (chapter,) = (each for each in of_class(root, "part") if each.get("id") == "sizes")
    heads = [
        (text(table).split(sizes[0])[0], sizes)
        for table in of_class(chapter, "chart")
        if (sizes := tuple(text(th) for th in table.iter() if name(th) == "th" and th.get("scope") == "col")[1:])
    ]
    if not (book.size_tables and book.finished_tables):
        assert lesson in ("ferry_tote", "lantern_bag", "oyster_apron"), heads  # made in one size
        return
    assert len(heads) == 2 * len(book.size_tables)
    for chart, finished in zip(heads[::2], heads[1::2], strict=True):
        assert chart[1] == finished[1]
