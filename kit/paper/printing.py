"""The files a page request asks for: one PDF of pages, or of sheets for a copy shop, for each paper."""

from __future__ import annotations

from collections.abc import Callable

from kit.lesson.pattern import Pattern
from kit.paper.pages import tile
from kit.paper.request import PageRequest
from kit.paper.sheet import sheet, sheet_content

Progress = Callable[[str], None]


def print_files(pattern: Pattern, request: PageRequest, progress: Progress | None = None) -> dict[str, bytes]:
    """The PDFs by file name, such as "pages-a4.pdf" or "sheet-a0.pdf". `progress` is told in a few words what is
    being made. Raises `KitError` for a pattern that cannot be printed."""
    tell = progress or (lambda text: None)
    made: dict[str, bytes] = {}
    for paper in request.papers:
        tell(f"Making the {paper.title} pages")
        laid = sheet(pattern, (paper,))
        made[f"pages-{paper.name}.pdf"] = tile(sheet_content(laid, pattern), laid, pattern, paper)
    return made
