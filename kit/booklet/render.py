"""The booklet's page set in type."""

from __future__ import annotations

import logging
from pathlib import Path
from typing import TYPE_CHECKING
from xml.etree.ElementTree import XML, Element, ParseError

from cssselect2 import ElementWrapper
from weasyprint import CSS, HTML
from weasyprint.document import Document
from weasyprint.text.fonts import FontConfiguration

from kit.booklet.drawn_apart import taken_out
from kit.booklet.evened import ROUNDS, short_pages, wanted
from kit.booklet.fetch import FONT_SCHEME, LessonFolder
from kit.booklet.fetcher import Fetcher
from kit.booklet.paged_again import Evening, pages_again
from kit.booklet.quick_drawing import quick_drawing
from kit.booklet.tagging import finish
from kit.booklet.type import FACES, SANS, SERIF, SIGNS

if TYPE_CHECKING:
    from kit.booklet.theme_file import BookTheme


def document(html: str, lesson: LessonFolder, style: str = "", look: BookTheme | None = None) -> Document:
    """The page laid out, not written yet. Reads only inside the lesson's folder; `style` is CSS added to the booklet's
    own. Where a page comes out mostly white that may have more, it is laid out once more (kit/booklet/evened.py)."""
    quick_drawing()
    fetcher = Fetcher(lesson, font_files(look))
    fonts = FontConfiguration()
    logging.getLogger("weasyprint").setLevel(logging.ERROR)
    faces = CSS(string=_font_faces(look), url_fetcher=fetcher, font_config=fonts)
    sheets = [faces, CSS(string=style, url_fetcher=fetcher)] if style else [faces]
    page = _page(html, lesson.folder.as_uri() + "/", fetcher)
    kept: dict[str, object] = {}  # pictures that were read, for the second time
    if pages_again():
        page.evening = Evening(page.etree_element)
        return page.render(stylesheets=sheets, font_config=fonts, pdf_variant="pdf/ua-1", cache=kept)
    root, moved = page.etree_element, set[Element]()
    laid = page.render(stylesheets=sheets, font_config=fonts, pdf_variant="pdf/ua-1", cache=kept)
    for _ in range(ROUNDS):
        boxes = [each._page_box for each in laid.pages]
        changed = wanted(boxes, root, moved)
        if not changed:
            break
        for each in changed:
            each.element.set("class", f"{each.element.get('class', '')} {each.name}".strip())
            moved.add(each.element)
        page.wrapper_element = ElementWrapper.from_html_root(root, content_language=None)
        again = page.render(stylesheets=sheets, font_config=fonts, pdf_variant="pdf/ua-1", cache=kept)
        if short_pages([each._page_box for each in again.pages], root) > short_pages(boxes, root):
            break
        laid = again
    return laid


def _page(html: str, base: str, fetcher: Fetcher) -> HTML:
    """The page as the typesetter takes it. Reading it as a browser does, which forgives everything, is a tenth of all
    typesetting. The booklet's template is well-formed XML as well (HTML Living Standard, "the XML syntax"), which is
    read in no time; where something an author brought is not, the page is read as HTML."""
    try:
        root = XML(html)
    except ParseError:
        page = HTML(string=html, base_url=base, url_fetcher=fetcher)
        root = page.etree_element
    else:
        root.text = root[-1].tail = None  # blanks outside head and body are nothing
        page = HTML(string="<html></html>", base_url=base, url_fetcher=fetcher)
    fetcher.drawings |= taken_out(root)
    page.wrapper_element = ElementWrapper.from_html_root(root, content_language=None)
    page.etree_element = page.wrapper_element.etree_element
    return page


def to_pdf(html: str, lesson: LessonFolder, style: str = "", look: BookTheme | None = None) -> bytes:
    """The page as PDF/UA-1 (ISO 14289-1): tagged, with title, language and bookmarks from its headings, every
    letter's font inside. Reads as `document` does."""
    pdf = document(html, lesson, style, look).write_pdf(pdf_variant="pdf/ua-1")
    assert isinstance(pdf, bytes)
    return finish(pdf)


def warmed() -> None:
    """Have everything read that the first page of a process waits for (fonts, hyphenation, style sheets of its own)."""
    words = "<b>bold</b> <i>italic</i> <b><i>both</i></b> <code>1/2 \N{BLACK SCISSORS}</code>"
    text = f"<h1>{words}</h1><p style='hyphens: auto; width: 9mm'>hyphenation {words}</p><svg width='9' height='9'/>"
    style = f'body {{ font-family: "{SANS}", "{SIGNS}" }} h1 {{ font-family: "{SERIF}" }}'
    to_pdf(f'<html lang="en"><head><title>x</title></head><body>{text}</body></html>', LessonFolder(Path.cwd()), style)


def font_files(look: BookTheme | None = None) -> dict[str, Path]:
    """The booklet's font files by name, the author's own among them."""
    own = look.fonts if look else ()
    return {str(path): path for *_, path in FACES} | {str(path): path for _, path in own}


def _font_faces(look: BookTheme | None) -> str:
    own = look.fonts if look else ()
    faces = [*FACES, *((family, 400, "normal", path) for family, path in own)]
    return "".join(
        f"@font-face{{font-family:'{family}';font-weight:{weight};font-style:{style};src:url('{FONT_SCHEME}:{path}')}}"
        for family, weight, style, path in faces
    )
