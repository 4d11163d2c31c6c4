"""The files a page request asks for: one PDF of pages, or of sheets for a copy shop, for each paper."""

from __future__ import annotations

from collections.abc import Callable

from kit.language import say
from kit.lesson.pattern import Pattern
from kit.paper.head import head_room
from kit.paper.pages import pages_pdf, plan
from kit.paper.papers import A0, Paper
from kit.paper.request import PageRequest
from kit.paper.sheet import GAP, Drawn, Sheet, drawn_pieces, sheet
from kit.paper.whole_words import words_whole
from kit.units import plain

Progress = Callable[[str], None]


def print_files(
    pattern: Pattern, request: PageRequest, progress: Progress | None = None, drawn: Drawn | None = None
) -> dict[str, bytes]:
    """The PDFs by file name, such as "pages-a4.pdf" or "sheet-a0.pdf". `progress` is told in a few words what is
    being made; `drawn` is what `drawn_pieces` gave. Raises `KitError` for a pattern that cannot be printed."""
    tell = progress or (lambda text: None)
    drawn = drawn_pieces(pattern, request) if drawn is None else drawn
    made: dict[str, bytes] = {}
    for paper in request.papers:
        laid = laid_for(pattern, paper, request, drawn)
        pages = plan(laid, paper, request)
        amount = pages_said(laid, paper, len(pages.tiles), pages.rows * pages.columns)
        tell(say("paper.doing_paper", paper=paper.said, amount=amount))
        made[file_name(paper, request)] = pages_pdf(laid, pattern, paper, request)
    return made


def laid_for(pattern: Pattern, paper: Paper, request: PageRequest, drawn: Drawn | None = None) -> Sheet:
    """The pieces laid for fewest pages of `paper`, no words cut by a join where one page has room for them; on sheets
    and rolls with room for a title block. Raises `KitError` for a pattern without pieces."""
    ways = request.ways(paper)
    if paper.kind == "page":
        limit = max(A0.width, 3 * max(way.step[0] for way in ways))
        laid = sheet(pattern, (paper,), GAP, limit, request, drawn=drawn)
        return words_whole(laid, pattern, plan(laid, paper, request), request)
    rooms = [head_room(request.enlarged(way)) for way in ways]
    head = max(room[0] for room in rooms), max(room[1] for room in rooms)
    laid = sheet(pattern, (paper,), GAP, max(way.area[0] for way in ways), request, head, drawn)
    return words_whole(laid, pattern, plan(laid, paper, request), request)


def file_name(paper: Paper, request: PageRequest) -> str:
    """pages-a4.pdf, sheet-a0.pdf, pages-letter-half.pdf ..."""
    scale = {1.0: "", 0.5: "-half", 0.25: "-quarter"}[request.class_scale]
    return f"{'pages' if paper.kind == 'page' else 'sheet'}-{paper.name}{scale}.pdf"


def pages_said(laid: Sheet, paper: Paper, count: int, of: int) -> str:
    """How much paper it takes, in words."""
    if paper.kind == "roll":
        metres = plain((laid.height + 2 * paper.margin_y) / 1000, 2)
        return say("paper.amount_roll", length=say("unit.m", amount=metres))
    said = say("paper.amount_pages" if paper.kind == "page" else "paper.amount_sheets", count=count)
    blank = of - count
    return say("paper.amount_blank", amount=said, blank=blank) if blank else said
