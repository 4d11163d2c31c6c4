"""A page that came out mostly white takes from the page before it, where a page may end.

No source outside the project: what is a full page is the project's own rule; the pages here are made by hand, and how
full each becomes is reckoned from the heights written in them.
"""

from __future__ import annotations

import pytest

from kit.booklet import render
from kit.booklet.fetch import LessonFolder
from kit.booklet.render import document

DEPTH = 200  # mm of the made pages
PAGE = f"""@page {{ size: 150mm {DEPTH + 20}mm; margin: 10mm }} body {{ margin: 0 }} h2, p {{ margin: 0 }}
.new-page, #begin {{ break-before: page }} .flows {{ break-before: auto !important }}
section > p {{ break-after: avoid }} .flows > p {{ break-after: auto !important }}
h2 {{ break-after: avoid; height: 20mm }} div {{ break-inside: avoid }}"""


def block(name: str, high: int, kind: str = "tabled") -> str:
    """A block that stays whole, `high` mm, its last line at its foot."""
    return f'<div class="{kind}" id="{name}" style="padding-top: {high - 10}mm"><p style="height: 10mm">x</p></div>'


def chapter(name: str, *blocks: str, kind: str = "part") -> str:
    return f'<section class="{kind}" id="{name}"><h2>{name}</h2>{"".join(blocks)}</section>'


@pytest.fixture(params=["only what changes", "all"])
def pages(tmp_path, request, monkeypatch):
    """The names of what begins on each page of a booklet of such chapters, where only the pages that change are laid
    again, and where all are, as with a typesetter whose inside is not known."""
    if request.param == "all":
        monkeypatch.setattr(render, "pages_again", lambda: False)

    def laid(*chapters: str) -> list[list[str]]:
        html = f"<html><head><title>x</title></head><body>{''.join(chapters)}</body></html>"
        made = document(html, LessonFolder(tmp_path), PAGE)
        seen: set[str] = set()
        found = []
        for page in made.pages:
            found.append([name for name in page.anchors if name not in seen])
            seen.update(page.anchors)
        return found

    return laid


def test_a_chapter_goes_over_whole_where_both_pages_stay_full(pages):
    first = chapter("one", block("a", 60), block("b", 40))  # 120 mm
    second = chapter("two", block("c", 40), block("d", 50))  # d no longer fits: its page would be a quarter full
    found = pages(first, second, chapter("three", block("e", 170)), chapter("four", block("f", 100)))
    assert found == [["one", "a", "b"], ["two", "c", "d"], ["three", "e"], ["four", "f"]]


def test_else_only_blocks_that_stand_on_their_own(pages):
    first = chapter("one", block("a", 60), block("b", 30), block("c", 70))  # 180 mm, no chapter begins further down
    found = pages(first + block("d", 40), chapter("three", block("e", 170)), chapter("four", block("f", 100)))
    assert found == [["one", "a", "b"], ["c", "d"], ["three", "e"], ["four", "f"]]


def test_the_only_block_below_a_heading_stays_with_it(pages):
    found = pages(chapter("one", block("a", 160)) + block("b", 60), chapter("three", block("e", 170)))
    assert found == [["one", "a"], ["b"], ["three", "e"]]


def test_no_page_is_robbed(pages):
    """Without b, which would make the second page full, 80 of 200 mm were left on the first, which is too few."""
    first = chapter("one", block("a", 60), block("b", 115)) + block("c", 60)
    assert pages(first, chapter("three", block("e", 170)))[:2] == [["one", "a", "b"], ["c"]]


def test_full_pages_and_the_last_are_left_alone(pages):
    assert pages(chapter("one", block("a", 90)), chapter("two", block("b", 90)), chapter("three", block("c", 20))) == [
        ["one", "a"],
        ["two", "b", "three", "c"],
    ]


def test_steps_are_never_moved(pages):
    """Theirs were shared out before; a page of theirs that is short stays so."""
    steps = chapter("one", *(block(name, 60, "step") for name in "abcd"), kind="part steps")
    assert pages(steps, chapter("two", block("e", 170)), chapter("three", block("f", 100))) == [
        ["one", "a", "b", "c"],
        ["d"],
        ["two", "e"],
        ["three", "f"],
    ]


def test_a_chapter_that_would_begin_a_page_begins_on_a_short_one(pages):
    first = chapter("one", block("a", 150)) + block("b", 40)  # 40 mm on the second page, and nothing to take over
    begin = chapter("begin", block("c", 60), block("d", 90))
    assert pages(first, begin, chapter("three", block("e", 170))) == [
        ["one", "a"],
        ["b", "begin", "c"],
        ["d"],
        ["three", "e"],
    ]
    # What is left below a full page begins its own.
    assert pages(chapter("one", block("a", 150)), begin) == [["one", "a"], ["begin", "c", "d"]]


def test_a_chapter_s_first_words_stay_on_a_short_page_when_what_follows_has_no_room(pages):
    first = chapter("one", block("a", 150)) + block("b", 40)
    words = '<p style="height: 60mm">x</p>'
    second = f'<section class="part" id="two"><h2>two</h2>{words}{block("c", 110)}</section>'
    last = chapter("three", block("e", 170))
    assert pages(first, second, last) == [["one", "a"], ["b", "two"], ["c"], ["three", "e"]]


def test_what_would_leave_more_white_stays_as_it_was(pages):
    first = chapter("one", block("a", 150)) + block("b", 40)
    begin = chapter("begin", block("c", 60), block("d", 40))  # with c gone, d would stand alone on its page
    steps = chapter("steps", block("e", 60), kind="part new-page")
    assert pages(first, begin, steps)[1:3] == [["b", "begin", "c", "d"], ["steps", "e"]]


def test_a_last_page_is_no_scrap_of_the_page_before_it(pages):
    """Of 40 + 30 mm of a last chapter the 30 went over alone, 15 in a hundred of a page."""
    first = chapter("one", block("a", 100))
    assert pages(first, chapter("two", block("b", 40), block("c", 30))) == [["one", "a"], ["two", "b", "c"]]
    # 60 mm are enough for a last page; and a page that would be left mostly white itself gives nothing.
    assert pages(first, chapter("two", block("b", 40), block("c", 60))) == [["one", "a", "two", "b"], ["c"]]
    short = chapter("one", block("a", 60))
    assert pages(short, chapter("two", block("b", 100), block("c", 30))) == [["one", "a", "two", "b"], ["c"]]


def test_the_first_words_of_a_chapter_do_not_stand_alone_on_a_page(pages):
    """A first step as tall as a page leaves 50 of 200 mm on the page before it; 120 are full on the one before that."""
    first = chapter("one", block("a", 100))
    words = '<section class="part" id="begin"><h2>begin</h2><p style="height: 30mm">x</p>'
    steps = f'{words}<div class="step new-page" id="s" style="height: 170mm"><p>x</p></div></section>'
    last = chapter("three", block("e", 150))
    assert pages(first, steps, last) == [["one", "a", "begin"], ["s"], ["three", "e"]]
    # Where they have no room there they keep their page.
    full = chapter("one", block("a", 150))
    assert pages(full, steps, last) == [["one", "a"], ["begin"], ["s"], ["three", "e"]]


def test_what_a_move_leaves_short_is_looked_through_once_more(pages):
    """b goes over to the first words of the second chapter, which go on to a page of their own; there, by then, they
    have room beside b. Elsewhere a chapter goes over whole, so that no more pages are short than were."""
    first = chapter("one", block("a", 80), block("b", 80))  # 180 mm
    second = chapter("two", '<p style="height: 10mm">x</p>', block("c", 185))  # its words never share a page with c
    third = chapter("three", block("d", 60), block("e", 40)) + chapter("four", block("f", 40), block("g", 50))
    found = pages(first, second, third, chapter("five", block("h", 170)), chapter("six", block("i", 100)))
    assert found == [
        *(["one", "a"], ["b", "two"], ["c"]),
        *(["three", "d", "e"], ["four", "f", "g"], ["five", "h"], ["six", "i"]),
    ]


def test_drafting_begins_on_the_page_before_with_its_first_words_alone(pages):
    """Its first step takes a page. Where step and words share the page they were shared out for, it begins its own,
    however white the page before."""
    words = '<section class="part steps" id="begin"><h2>begin</h2><p style="height: 20mm">x</p>'
    step = '<div class="step{}" id="s" style="padding-top: {}mm"><p style="height: 10mm">x</p></div></section>'
    last = chapter("three", block("e", 150))
    first = chapter("one", block("a", 100))
    assert pages(first, words + step.format(" new-page", 160), last) == [["one", "a", "begin"], ["s"], ["three", "e"]]
    first = chapter("one", block("a", 150)) + block("b", 50)
    assert pages(first, words + step.format("", 130), last) == [["one", "a"], ["b"], ["begin", "s"], ["three", "e"]]
