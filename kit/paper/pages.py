"""Pattern pages for a home printer.

The sheet is drawn once and becomes one form XObject; each page refers to it, shifted and clipped to its tile.
Only what is a page's own is drawn per page: trim lines, joining marks, glue areas and the page's place.

A page is cut at its trim lines, left and top, and laid on the glue area of the page before it. Joining marks
sit across the border two pages share: a ring with two diagonals, halved by the cut. Pushed along the border
the ring breaks, pulled apart or pushed over the diagonals no longer meet in its centre, so the mark shows an
error in both directions.
"""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import dataclass
from io import BytesIO
from typing import Any

import numpy as np
import pikepdf
import shapely
from reportlab.pdfgen.canvas import Canvas

from kit.lesson.pattern import Pattern
from kit.paper.first_page import first_page
from kit.paper.papers import Paper
from kit.paper.pdf_pen import INKS, MM, Ink, new_canvas, rule, set_ink, text_width, write
from kit.paper.plan import PagePlan, Tile, plan_pages
from kit.paper.sheet import Sheet, edition_line, finish

RING = 3.5
_GLUE = 0.92
_ASIDE = (0.0, -0.04, 0.04, -0.08, 0.08, -0.12, 0.12, -0.16, 0.16)
_MARK = Ink(0.25, 0.15)


@dataclass(frozen=True)
class Joint:
    """Two pages that are glued together: `before` (left or upper) and `after`, with the number printed on both
    and the places of the marks on the sheet, in mm."""

    number: int
    before: Tile
    after: Tile
    marks: tuple[tuple[float, float], ...]

    @property
    def upright(self) -> bool:
        """True when the border between the pages runs up and down."""
        return self.before.row == self.after.row


def plan(laid: Sheet, paper: Paper) -> PagePlan:
    """The pages of `paper` the sheet falls on, blank ones left out, the paper held the way that takes fewest."""
    return plan_pages(laid.ink, laid.width, laid.height, paper)


def joints(laid: Sheet, pages: PagePlan) -> tuple[Joint, ...]:
    """The borders shared by two printed pages, numbered in page order, two marks on each: near the quarters of
    the border, moved aside where lines or text of a piece would run through them."""
    written = shapely.GeometryCollection([placement.written for placement in laid.placements])
    shapely.prepare(written)
    found = []
    for number, (before, after) in enumerate(pages.borders, 1):
        upright = before.row == after.row
        low, high = (before.bottom, before.top) if upright else (before.left, before.right)
        marks = []
        for quarter in (0.75, 0.25) if upright else (0.25, 0.75):
            along = [low + (high - low) * (quarter + aside) for aside in _ASIDE]
            places = [(after.left, each) if upright else (each, after.top) for each in along]
            room = np.minimum(shapely.distance(shapely.points(places), written), RING + 5.0)
            marks.append(places[int(room.argmax())])
        found.append(Joint(number, before, after, tuple(marks)))
    return tuple(found)


def page_origin(tile: Tile, paper: Paper) -> tuple[float, float]:
    """Where the sheet's origin lies on the tile's page, in mm from the page's lower left corner."""
    return paper.margin - tile.left, paper.height - paper.margin - tile.top


def tile(
    content: bytes,
    laid: Sheet,
    pattern: Pattern,
    paper: Paper,
    second: Callable[[Canvas, PagePlan], None] | None = None,
    on_each: Callable[[Canvas, Paper], None] | None = None,
) -> bytes:
    """The pages as a PDF: the first page, then every page that carries paper of a piece, in reading order.

    `content` is the one-page PDF of `sheet_content`; it is embedded once. The same input gives the same bytes.
    `second` draws a page of its own after the first one; `on_each` adds to the margin of every page of pattern.
    """
    pages = plan(laid, paper)
    held = pages.paper
    links = joints(laid, pages)
    before = 1 if second is None else 2
    total = len(pages.tiles) + before
    target = BytesIO()
    canvas = new_canvas(
        target, held.width, held.height, f"{pattern.lesson.title}, {edition_line(pattern)}, pages on {paper.title}"
    )
    first_page(canvas, pattern, laid, pages, before + 1)
    canvas.showPage()
    if second is not None:
        second(canvas, pages)
        canvas.showPage()
    for number, each in enumerate(pages.tiles, before + 1):
        _furniture(canvas, pattern, pages, links, each, f"page {number} of {total}")
        if on_each is not None:
            on_each(canvas, held)
        canvas.showPage()
    canvas.save()

    with pikepdf.open(BytesIO(content)) as sheet, pikepdf.open(BytesIO(target.getvalue())) as document:
        form = document.copy_foreign(sheet.pages[0].as_form_xobject())
        for page, each in zip(list(document.pages)[before:], pages.tiles, strict=True):
            page.add_resource(form, pikepdf.Name.XObject, pikepdf.Name.Sheet)
            page.contents_add(_placed(pages, each), prepend=True)
        return finish(document)


def _placed(pages: PagePlan, each: Tile) -> bytes:
    """The page's part of the sheet: glue areas, then the sheet clipped to the printed area."""
    paper = pages.paper
    width, height = paper.area
    out = [f"{_GLUE} g"]
    for left, bottom, right, top in _glue_areas(pages, each):
        out.append(f"{left * MM:.4f} {bottom * MM:.4f} {(right - left) * MM:.4f} {(top - bottom) * MM:.4f} re f")
    x, y = page_origin(each, paper)
    clip = f"{paper.margin * MM:.4f} {paper.margin * MM:.4f} {width * MM:.4f} {height * MM:.4f} re W n"
    out.append(f"q {clip} 1 0 0 1 {x * MM:.4f} {y * MM:.4f} cm /Sheet Do Q\n")
    return ("\n".join(["q", *out, "Q"]) + "\n").encode("ascii")


def _glue_areas(pages: PagePlan, each: Tile) -> list[tuple[float, float, float, float]]:
    """Where the next pages are glued on, in mm of the page (left, bottom, right, top)."""
    paper = pages.paper
    left, bottom = paper.margin, paper.margin
    right, top = paper.width - paper.margin, paper.height - paper.margin
    found = []
    if pages.at(each.row, each.column + 1):
        found.append((right - paper.overlap, bottom, right, top))
        right -= paper.overlap
    if pages.at(each.row + 1, each.column):
        found.append((left, bottom, right, bottom + paper.overlap))
    return found


def _furniture(
    canvas: Canvas, pattern: Pattern, pages: PagePlan, links: tuple[Joint, ...], each: Tile, count: str
) -> None:
    paper = pages.paper
    left, bottom = paper.margin, paper.margin
    right, top = paper.width - paper.margin, paper.height - paper.margin
    before, above = pages.at(each.row, each.column - 1), pages.at(each.row - 1, each.column)
    after, below = pages.at(each.row, each.column + 1), pages.at(each.row + 1, each.column)

    plain, trim = INKS["page"], INKS["trim"]
    rule(canvas, left, bottom, left, top, trim if before else plain)
    rule(canvas, left, top, right, top, trim if above else plain)
    rule(canvas, right, bottom, right, top, plain)
    rule(canvas, left, bottom, right, bottom, plain)
    if before:
        rule(canvas, left, bottom - 4, left, top + 4, trim)
        _scissors(canvas, left, (bottom + top) / 2, math.pi / 2)
    if above:
        rule(canvas, left - 4, top, right + 4, top, trim)
        _scissors(canvas, (left + right) / 2, top, 0.0)

    if after:
        across = right - paper.overlap / 2 + 0.9
        write(
            canvas,
            f"glue {after.name} here",
            across,
            (bottom + top) / 2,
            1.9,
            grey=0.4,
            anchor="middle",
            angle=math.pi / 2,
        )
    if below:
        write(
            canvas,
            f"glue {below.name} here",
            (left + right) / 2,
            bottom + paper.overlap / 2 - 0.9,
            1.9,
            grey=0.4,
            anchor="middle",
        )

    for link in links:
        if each in (link.before, link.after):
            _joint(canvas, link, each, page_origin(each, paper))
    _badge(canvas, each.name, left + 8.5, top - 8.5)

    place = f"row {each.row + 1}, column {each.column_letters}"
    line = f"{pattern.lesson.title} · {edition_line(pattern)} · {place}"
    width = right - left - text_width(count, 1.9) - 9
    size = 1.9
    while text_width(line, size) > width and size > 1.2:
        size -= 0.05
    write(canvas, line, left + 3, bottom - 3.6, size, grey=0.25)
    write(canvas, count, right, bottom - 3.6, 1.9, grey=0.25, anchor="end")


def _scissors(canvas: Canvas, x: float, y: float, angle: float) -> None:
    shift = 2.25
    write(
        canvas,
        "\N{BLACK SCISSORS}",
        x + shift * math.sin(angle),
        y - shift * math.cos(angle),
        4.5,
        grey=0.25,
        angle=angle,
    )


def _badge(canvas: Canvas, name: str, x: float, y: float) -> None:
    """The page's place in the grid, kept on the page after trimming."""
    set_ink(canvas, Ink(0.3, 0.45))
    canvas.roundRect((x - 6) * MM, (y - 4) * MM, 12 * MM, 8 * MM, 2 * MM, stroke=1, fill=0)
    size = 4.0 if len(name) < 3 else 3.2
    write(canvas, name, x, y - size / 2, size, bold=True, grey=0.45, anchor="middle")


def _joint(canvas: Any, link: Joint, each: Tile, origin: tuple[float, float]) -> None:
    """Both marks of a shared border, whole on both pages; the cut halves them. The number stands on the half
    that is this page's own."""
    set_ink(canvas, _MARK)
    arm = RING * 1.35 * math.sqrt(0.5)
    first = each == link.before
    for sheet_x, sheet_y in link.marks:
        x, y = origin[0] + sheet_x, origin[1] + sheet_y
        set_ink(canvas, _MARK)
        canvas.circle(x * MM, y * MM, RING * MM, stroke=1, fill=0)
        canvas.line((x - arm) * MM, (y - arm) * MM, (x + arm) * MM, (y + arm) * MM)
        canvas.line((x - arm) * MM, (y + arm) * MM, (x + arm) * MM, (y - arm) * MM)
        if link.upright:
            side = -1 if first else 1
            write(
                canvas,
                str(link.number),
                x + side * (RING + 1.2),
                y - 1.25,
                2.5,
                grey=0.15,
                anchor="end" if first else "start",
            )
        else:
            write(
                canvas,
                str(link.number),
                x,
                y + RING + 1.2 if first else y - RING - 3.7,
                2.5,
                grey=0.15,
                anchor="middle",
            )
