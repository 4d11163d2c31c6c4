"""Preview pictures for a shop page: pages of the finished booklet as pixels, so that what is shown is what is sold.

The cover, the first sewing step and the table of sizes are found by the bookmarks of the PDF. Pages are painted by
PDFium.
"""

from __future__ import annotations

import io
from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise
from typing import Any

from PIL import Image, ImageChops

from kit.booklet.html import sizes_title
from kit.booklet.model import Booklet
from kit.language import say
from kit.lesson.pattern import Pattern

HIGH = 1400  # px
_ROOM = 14  # px of white about what is cut out
_FOOT = 0.06  # of a page, its number


@dataclass(frozen=True)
class Preview:
    """A picture as PNG `data`, called `name`, and what it shows in words."""

    name: str
    data: bytes
    alt: str


def previews(pdf: bytes, book: Booklet, pattern: Pattern) -> tuple[Preview, ...]:
    """The pictures of the `pdf` of a lesson's booklet: its cover whole, of the other pages what stands under the
    heading. A lesson that sews nothing shows its first drafting step."""
    import pypdfium2

    document = pypdfium2.PdfDocument(pdf)
    try:
        marks = [_mark(mark) for mark in document.get_toc()]
        title = pattern.lesson.title
        found: list[tuple[str, _Mark, str]] = [
            ("cover", _Mark(0, title, 0, 0.0), say("release.preview_cover", title=title))
        ]
        steps = [*(record.title for record in pattern.sewing), *(record.title for record in pattern.steps)]
        step = _first_step(marks, (book.sewing.title, book.drafting.title))
        if step is not None:
            name = next((known for known in steps if step.title.lstrip("0123456789").startswith(known)), step.title)
            found.append(("step", step, say("release.preview_step", step=name)))
        sizes = [mark for mark in marks if mark.title == sizes_title(book)]
        if sizes:
            found.append(("sizes", sizes[0], say("release.preview_sizes")))
        return tuple(Preview(f"{name}.png", _painted(document[mark.page], mark.top), alt) for name, mark, alt in found)
    finally:
        document.close()


@dataclass(frozen=True)
class _Mark:
    """A bookmark: its level, its title, the page it leads to and how far down there, 0..1."""

    level: int
    title: str
    page: int
    top: float


def _mark(mark: Any) -> _Mark:
    place = mark.get_dest()
    if place is None:
        return _Mark(mark.level, mark.get_title(), 0, 0.0)
    page = place.get_index()
    _, where = place.get_view()
    high = place.pdf.get_page_size(page)[1]
    top = 1.0 - where[1] / high if len(where) > 1 and where[1] is not None else 0.0
    return _Mark(mark.level, mark.get_title(), page, min(max(top, 0.0), 1.0))


def _first_step(marks: Sequence[_Mark], chapters: Sequence[str]) -> _Mark | None:
    """The first step in the first of `chapters` that has one."""
    for chapter in chapters:
        for mark, after in pairwise(marks):
            if mark.title == chapter and after.level > mark.level:
                return after
    return None


def _painted(page: Any, top: float) -> bytes:
    """The page from `top` down, without the white below what stands there; from the very top all of it."""
    image = page.render(scale=HIGH / page.get_height()).to_pil().convert("RGB")
    if top > 0.0:
        foot = _FOOT * image.height
        body = image.crop((0, max(0, int(top * image.height) - _ROOM), image.width, int(image.height - foot)))
        box = ImageChops.difference(body, Image.new("RGB", body.size, "white")).getbbox()
        image = body.crop((0, 0, body.width, min(body.height, box[3] + _ROOM))) if box else image
    out = io.BytesIO()
    image.save(out, "PNG", optimize=True)
    return out.getvalue()
