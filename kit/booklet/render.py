"""The booklet's page set in type."""

from __future__ import annotations

import logging
from pathlib import Path

from weasyprint import CSS, HTML
from weasyprint.document import Document
from weasyprint.text.fonts import FontConfiguration

from kit.booklet.fetch import FONT_SCHEME, LessonFolder
from kit.booklet.fetcher import Fetcher
from kit.booklet.html import to_html
from kit.booklet.tagging import finish
from kit.booklet.theme_file import BookTheme
from kit.booklet.type import FACES

__all__ = ["document", "font_files", "to_html", "to_pdf"]


def document(html: str, lesson: LessonFolder, style: str = "", look: BookTheme | None = None) -> Document:
    """The page laid out, not written yet. Reads only inside the lesson's folder; `style` is CSS added to the booklet's
    own."""
    look = look or BookTheme()
    fetcher = Fetcher(lesson, font_files(look))
    fonts = FontConfiguration()
    logging.getLogger("weasyprint").setLevel(logging.ERROR)
    faces = CSS(string=_font_faces(look), url_fetcher=fetcher, font_config=fonts)
    sheets = [faces, CSS(string=style, url_fetcher=fetcher)] if style else [faces]
    page = HTML(string=html, base_url=lesson.folder.as_uri() + "/", url_fetcher=fetcher)
    return page.render(stylesheets=sheets, font_config=fonts, pdf_variant="pdf/ua-1")


def to_pdf(html: str, lesson: LessonFolder, style: str = "", look: BookTheme | None = None) -> bytes:
    """The page as PDF/UA-1 (ISO 14289-1): tagged, with title, language and bookmarks from its headings, every
    letter's font inside. Reads as `document` does."""
    pdf = document(html, lesson, style, look).write_pdf(pdf_variant="pdf/ua-1")
    assert isinstance(pdf, bytes)
    return finish(pdf)


def font_files(look: BookTheme) -> dict[str, Path]:
    """The booklet's font files by name, the author's own among them."""
    return {str(path): path for *_, path in FACES} | {str(path): path for _, path in look.fonts}


def _font_faces(look: BookTheme) -> str:
    faces = [*FACES, *((family, 400, "normal", path) for family, path in look.fonts)]
    return "".join(
        f"@font-face{{font-family:'{family}';font-weight:{weight};font-style:{style};src:url('{FONT_SCHEME}:{path}')}}"
        for family, weight, style, path in faces
    )
