"""A page that came out mostly white takes from the page before it, where a page may end.

No source outside the project: what is a full page is the project's own rule; the pages here are made by hand, and how
full each becomes is reckoned from the heights written in them.
"""

from __future__ import annotations

import pytest

from kit.booklet.fetch import LessonFolder
from kit.booklet.render import document

DEPTH = 200  # mm of the made pages
PAGE = f"""@page {{ size: 150mm {DEPTH + 20}mm; margin: 10mm }} body {{ margin: 0 }} h2, p {{ margin: 0 }}
.new-page {{ break-before: page }} h2 {{ break-after: avoid; height: 20mm }} div {{ break-inside: avoid }}"""


def block(name: str, high: int, kind: str = "tabled") -> str:
    """A block that stays whole, `high` mm, its last line at its foot."""
    return f'<div class="{kind}" id="{name}" style="padding-top: {high - 10}mm"><p style="height: 10mm">x</p></div>'


def chapter(name: str, *blocks: str, kind: str = "part") -> str:
    return f'<section class="{kind}" id="{name}"><h2>{name}</h2>{"".join(blocks)}</section>'


@pytest.fixture
def pages(tmp_path):
    """The names of what begins on each page of a booklet of such chapters."""

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
