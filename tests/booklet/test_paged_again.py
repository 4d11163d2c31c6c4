"""Pages laid again only where they change are those of a page laid whole, to the byte; the numbers of other pages are
right on them.

Outside source: WeasyPrint's own way, which lays everything again; pypdfium2 reads what is printed.
"""

from __future__ import annotations

import pypdfium2
import pytest

from kit.booklet import paged_again, render
from kit.booklet.fetch import LessonFolder
from kit.booklet.render import document

pytestmark = pytest.mark.skipif(
    not paged_again.pages_again(), reason="leans on the inside of other versions of WeasyPrint, such as make lowest has"
)

PAGE = """@page { size: 150mm 220mm; margin: 10mm; @bottom-left { content: counter(page) } }
body { margin: 0; font: 4mm/5mm "Booklet Sans" } h2, p { margin: 0 } .flows > p { break-after: auto !important }
.new-page, #begin { break-before: page } .flows { break-before: auto !important }
h2 { break-after: avoid; height: 20mm } .words { break-after: avoid; height: 15mm } .tabled { break-inside: avoid }
a::after { content: " " target-counter(attr(href), page) } .tabled p { height: 10mm }"""
PAGE += "".join(f".h{high} {{ padding-top: {high - 10}mm }} " for high in range(40, 180, 10))


def block(name: str, high: int) -> str:
    return f'<div class="tabled h{high}" id="{name}"><p>{name}</p></div>'


def nameless(high: int) -> str:
    return f'<div class="tabled h{high}"><p>x</p></div>'  # WeasyPrint gives those that look alike one style


def chapter(name: str, *blocks: str) -> str:
    return f'<section class="part" id="{name}"><h2>{name}</h2>{"".join(blocks)}</section>'


def booklet(*chapters: str) -> str:
    told = "".join(f'<p><a href="#{name}">{name}</a></p>' for name in ("one", "two", "three", "four", "last"))
    contents = f'<section class="part" id="contents">{told}</section>'
    back = '<section class="part" id="last"><p><a href="#one">one</a>, <a href="#contents">contents</a></p></section>'
    return f"<html><head><title>x</title></head><body>{contents}{''.join(chapters)}{back}</body></html>"


AS_IT_IS = (chapter(name, block(name[0], 150)) for name in ("one", "two", "three", "four"))
NEW_PAGE = (
    chapter("one", block("a", 60), block("b", 40)),
    chapter("two", block("c", 40), block("d", 40)),
    chapter("three", block("e", 170)),
    chapter("four", block("f", 150)),
)
BLOCK = (
    chapter("one", block("two", 40), nameless(40), nameless(70), nameless(70)),
    chapter("three", block("e", 170)),
    chapter("four", block("f", 150)),
)
PUT_BACK = (
    chapter("one", block("a", 150)) + block("b", 40),
    '<section class="part" id="begin"><h2>begin</h2>' + block("two", 60) + block("d", 40) + "</section>",
    '<section class="part new-page" id="three"><h2>three</h2>' + block("four", 60) + "</section>",
)
TWICE = (
    chapter("one", block("a", 80), block("b", 80)),
    '<section class="part" id="two"><h2>two</h2><p class="words">two</p>' + block("c", 170) + "</section>",
    chapter("three", block("d", 60), block("e", 40)) + chapter("four", block("f", 40), block("g", 50)),
    chapter("five", block("h", 170)),
)
MADE = {
    "as it is": tuple(AS_IT_IS),
    "new page": NEW_PAGE,
    "a block of several alike": BLOCK,
    "put back": PUT_BACK,
    "looked through twice": TWICE,
}


@pytest.mark.parametrize("chapters", MADE.values(), ids=list(MADE))
def test_the_bytes_are_those_of_a_page_laid_whole(tmp_path, monkeypatch, chapters):
    assert paged_again.pages_again()
    html = booklet(*chapters)
    found = document(html, LessonFolder(tmp_path), PAGE).write_pdf(pdf_variant="pdf/ua-1")
    monkeypatch.setattr(render, "pages_again", lambda: False)
    monkeypatch.setattr(paged_again.layout, "make_all_pages", paged_again.layout.make_all_pages.slow)
    assert found == document(html, LessonFolder(tmp_path), PAGE).write_pdf(pdf_variant="pdf/ua-1")


@pytest.mark.parametrize("chapters", MADE.values(), ids=list(MADE))
def test_the_pages_named_are_those_where_it_stands(tmp_path, chapters):
    made = document(booklet(*chapters), LessonFolder(tmp_path), PAGE)
    at = {}
    for number, page in enumerate(made.pages, 1):
        for name in page.anchors:
            at.setdefault(name, number)
    read = pypdfium2.PdfDocument(made.write_pdf())
    texts = [" ".join(page.get_textpage().get_text_range().split()) for page in read]
    told = texts[0]
    for name in ("one", "two", "three", "four", "last"):
        assert f"{name} {at[name]}" in told
    assert f"one {at['one']}, contents 1" in texts[-1]


def test_no_page_is_made_three_times(tmp_path, monkeypatch):
    made: list[int] = []
    once = paged_again.layout.page.remake_page

    def counted(number, *rest):
        made.append(number)
        return once(number, *rest)

    monkeypatch.setattr(paged_again.layout.page, "remake_page", counted)
    pages = len(document(booklet(*MADE["as it is"]), LessonFolder(tmp_path), PAGE).pages)
    assert max(made.count(number) for number in range(pages)) == 2
    made.clear()
    document(booklet(*NEW_PAGE), LessonFolder(tmp_path), PAGE)
    assert made.count(0) <= 3 and len(made) < 3 * pages


def test_another_version_lays_the_whole_page_again(monkeypatch):
    monkeypatch.setattr(paged_again, "__version__", "71.0")
    assert not paged_again.pages_again()
