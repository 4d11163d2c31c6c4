"""The booklet's model as a web page and as a printed page."""

from __future__ import annotations

import logging
from pathlib import Path

import matplotlib
from jinja2 import Environment, FileSystemLoader, StrictUndefined
from markupsafe import Markup
from weasyprint import CSS, HTML
from weasyprint.text.fonts import FontConfiguration

from kit.booklet.fetch import FONT_SCHEME, Fetcher, LessonFolder
from kit.booklet.model import Booklet
from kit.resources import templates

# The letters of the booklet travel with matplotlib, so that a page breaks the same way on every machine.
_FACES = (
    ("Booklet Sans", "normal", "normal", "DejaVuSans.ttf"),
    ("Booklet Sans", "bold", "normal", "DejaVuSans-Bold.ttf"),
    ("Booklet Sans", "normal", "italic", "DejaVuSans-Oblique.ttf"),
    ("Booklet Sans", "bold", "italic", "DejaVuSans-BoldOblique.ttf"),
    ("Booklet Serif", "normal", "normal", "DejaVuSerif.ttf"),
    ("Booklet Serif", "bold", "normal", "DejaVuSerif-Bold.ttf"),
    ("Booklet Serif", "normal", "italic", "DejaVuSerif-Italic.ttf"),
)


def to_html(book: Booklet) -> str:
    """The booklet as one self-contained HTML page: style sheet and pictures inside it."""
    folder = templates() / "booklet"
    environment = Environment(
        loader=FileSystemLoader(folder),
        autoescape=True,
        undefined=StrictUndefined,
        trim_blocks=True,
        lstrip_blocks=True,
    )
    css = (folder / "booklet.css").read_text(encoding="utf-8")
    page = environment.get_template("booklet.html.j2")
    return page.render(book=book, css=Markup(css), contents=_contents(book))


def to_pdf(html: str, lesson: LessonFolder, style: str = "") -> bytes:
    """The page as PDF, tagged, with bookmarks from its headings. Reads only inside the lesson's folder;
    `style` is CSS added to the booklet's own."""
    fonts = matplotlib_fonts()
    fetcher = Fetcher(lesson, fonts)
    configuration = FontConfiguration()
    logging.getLogger("weasyprint").setLevel(logging.ERROR)
    faces = CSS(string=_font_faces(), url_fetcher=fetcher, font_config=configuration)
    sheets = [faces, CSS(string=style, url_fetcher=fetcher)] if style else [faces]
    page = HTML(string=html, base_url=lesson.folder.as_uri() + "/", url_fetcher=fetcher)
    pdf = page.write_pdf(stylesheets=sheets, font_config=configuration, pdf_tags=True)
    assert isinstance(pdf, bytes)
    return pdf


def matplotlib_fonts() -> dict[str, Path]:
    """The booklet's font files by name."""
    folder = Path(matplotlib.get_data_path()) / "fonts" / "ttf"
    return {file: folder / file for *_, file in _FACES if (folder / file).is_file()}


def _font_faces() -> str:
    return "".join(
        f"@font-face{{font-family:'{family}';font-weight:{weight};font-style:{style};src:url({FONT_SCHEME}:{file})}}"
        for family, weight, style, file in _FACES
    )


def _contents(book: Booklet) -> list[tuple[str, str]]:
    entries = [("sizes", "Sizes and finished measurements")]
    entries += [("measuring", "How to measure")] if book.measuring else []
    entries += [("cloth", "Cloth and notions"), ("pieces", "Pieces")]
    parts = (("drafting", book.drafting), ("sewing", book.sewing), ("closing", book.closing))
    entries += [(name, part.title) for name, part in parts if part.blocks]
    return [*entries, ("printing", "Printing the pattern pages")]
