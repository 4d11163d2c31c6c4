"""Pattern pages for a home printer.

The sheet is drawn once and becomes one form XObject; each page refers to it, shifted and clipped to its tile.
Only what is a page's own is drawn per page: trim lines, joining marks, glue areas and the page's place.

Overlapping pages are cut at their trim lines, left and top, and laid on the glue area of the page before; butted pages
are cut on every side that is joined and taped edge to edge. Joining marks sit across the border two pages share: a
ring with two diagonals, halved by the cut. Pushed along the border the ring breaks, pulled apart or pushed over the
diagonals no longer meet in its centre, so the mark shows an error in both directions.

Everything is laid out in the millimetres that leave the printer. For a printer that prints at 97 % the whole page is
drawn 1/0.97 as large, and holds less.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from io import BytesIO
from typing import Any

import numpy as np
import shapely
from reportlab.pdfgen.canvas import Canvas

from kit.diagnostic import message
from kit.diagnostic import number as decimal
from kit.errors import KitError
from kit.language import say
from kit.lesson.pattern import Pattern
from kit.paper.first_page import draw_front
from kit.paper.gauge import class_banner
from kit.paper.head import draw_head, edition_line
from kit.paper.page_place import draw_place, find_places
from kit.paper.papers import Paper
from kit.paper.pdf_pen import INKS, MM, Ink, declare, new_canvas, rule, set_ink, text_width, write
from kit.paper.plan import PagePlan, Tile, plan_pages
from kit.paper.request import PageRequest
from kit.paper.sheet import Sheet, draw_sheet, finish
from kit.paper.without_paper import also_without, without_paper

RING = 3.5
_FORM = "Sheet"
SCALE_LINE = 50.0
_GLUE = 0.92
_ASIDE = (0.0, -0.04, 0.04, -0.08, 0.08, -0.12, 0.12, -0.16, 0.16)
_MARK = Ink(0.25, 0.15)
_CAPTION = 9.0  # a margin this wide takes the caption
_BLEED = 1.5  # how far the drawing runs over a cut that is butted, so that no white shows beside the blade


@dataclass(frozen=True)
class Joint:
    """Two pages that are joined: `before` (left or upper) and `after`, with the number printed on both
    and the places of the marks on the sheet, in mm."""

    number: int
    before: Tile
    after: Tile
    marks: tuple[tuple[float, float], ...]

    @property
    def upright(self) -> bool:
        """True when the border between the pages runs up and down."""
        return self.before.row == self.after.row


def plan(laid: Sheet, paper: Paper, request: PageRequest | None = None) -> PagePlan:
    """The pages of `paper` the sheet falls on, blank ones left out, the paper held the way that takes fewest (or as
    the request says). The plan's paper is measured as it leaves the printer."""
    asked = request or PageRequest((paper,))
    ways = asked.ways(paper)
    if paper.kind == "roll":
        ways = tuple(replace(way, height=_cut_length(way, laid)) for way in ways)
    return plan_pages(laid.everything, laid.width, laid.height, paper, ways)


def _cut_length(roll: Paper, laid: Sheet) -> float:
    length = laid.height + 2 * roll.margin_y
    if length > roll.height:
        raise KitError(
            message("paper.roll_long", length=decimal(length / 1000), roll=roll.title),
            where="--paper",
            do=message("paper.roll_long_do", most=decimal(roll.height / 1000)),
        )
    return length


def joints(laid: Sheet, pages: PagePlan) -> tuple[Joint, ...]:
    """The borders of joined pages, numbered in page order, two marks on each: near the quarters of
    the border, moved aside where lines or text of a piece would run through them."""
    tree = shapely.STRtree(laid.things)
    found = []
    for number, (before, after) in enumerate(pages.borders, 1):
        upright = before.row == after.row
        low, high = (before.bottom, before.top) if upright else (before.left, before.right)
        marks = []
        for quarter in (0.75, 0.25) if upright else (0.25, 0.75):
            along = [low + (high - low) * (quarter + aside) for aside in _ASIDE]
            places = [(after.left, each) if upright else (each, after.top) for each in along]
            marks.append(places[int(_room(places, tree).argmax())])
        found.append(Joint(number, before, after, tuple(marks)))
    return tuple(found)


def _room(places: Sequence[tuple[float, float]], things: shapely.STRtree) -> Any:
    """How far each of `places` is from the next of `things`, as far as it matters to a mark (array of mm)."""
    points = shapely.points(places)
    room = np.full(len(places), RING + 5.0)
    near, thing = things.query(points, predicate="dwithin", distance=RING + 5.0)
    np.minimum.at(room, near, shapely.distance(points[near], things.geometries[thing]))
    return room


def page_origin(tile: Tile, paper: Paper) -> tuple[float, float]:
    """Where the sheet's origin lies on the tile's page, in mm from the page's lower left corner."""
    return paper.margin_x - tile.left, paper.height - paper.margin_y - tile.top


def pages_pdf(laid: Sheet, pattern: Pattern, paper: Paper, request: PageRequest | None = None) -> bytes:
    """The pages as a PDF: the front page or pages, then every page that carries paper of a piece, in reading order.
    A sheet with a title block (`laid.head`) needs no front page: the block stands on the sheet.

    The drawing is held once in the file, as a form, and every page is a window on it: a file of thirty pages is hardly
    larger than the sheet. It comes before what else is on a page, so that frames and marks are painted over it. No
    other PDF is read, so this needs no pikepdf: a reader's browser can do it (kit/page/pages.py). The same input gives
    the same bytes.
    """
    asked = request or PageRequest((paper,))
    pages = plan(laid, paper, asked)
    canvas, target = _begun(pattern, pages, paper, asked)
    declare(canvas, tray=not paper.common)
    canvas.beginForm(_FORM, 0, 0, laid.width * MM, laid.height * MM)
    draw_sheet(canvas, laid)
    canvas.endForm()

    def under(each: Tile) -> None:
        before, after = _placed(pages, each, asked.enlarged(pages.paper), asked)
        canvas.addLiteral(before)
        canvas.doForm(_FORM)
        canvas.addLiteral(after)

    _all_pages(canvas, laid, pattern, pages, asked, under)
    canvas.save()
    return target.getvalue()


def tile(
    content: bytes, laid: Sheet, pattern: Pattern, paper: Paper, request: PageRequest | None = None, between: int = 0
) -> bytes:
    """What `pages_pdf` gives, with a drawing that somebody else made: `content` is a PDF of one page as large as the
    sheet, such as several sizes on their layers; it is embedded once.

    So many pages `between`, made by others, come after the front pages and are counted. The same input gives the same
    bytes.
    """
    import pikepdf

    asked = request or PageRequest((paper,))
    pages = plan(laid, paper, asked)
    canvas, target = _begun(pattern, pages, paper, asked)
    before = _all_pages(canvas, laid, pattern, pages, asked, lambda each: None, between)
    canvas.save()
    with pikepdf.open(BytesIO(content)) as sheet, pikepdf.open(BytesIO(target.getvalue())) as document:
        form = document.copy_foreign(sheet.pages[0].as_form_xobject())
        for page, each in zip(list(document.pages)[before:], pages.tiles, strict=True):
            page.add_resource(form, pikepdf.Name.XObject, pikepdf.Name.Sheet)
            first, last = _placed(pages, each, asked.enlarged(pages.paper), asked)
            page.contents_add(f"{first}\n/Sheet Do\n{last}\n".encode("ascii"), prepend=True)
        return finish(document, tray=not paper.common)


def _begun(pattern: Pattern, pages: PagePlan, paper: Paper, asked: PageRequest) -> tuple[Canvas, BytesIO]:
    enlarged = asked.enlarged(pages.paper)
    target = BytesIO()
    title = say("paper.document_pages", title=pattern.lesson.title, edition=edition_line(pattern), paper=paper.said)
    return new_canvas(target, pages.paper.width * enlarged[0], pages.paper.height * enlarged[1], title), target


def _all_pages(
    canvas: Canvas,
    laid: Sheet,
    pattern: Pattern,
    pages: PagePlan,
    asked: PageRequest,
    under: Callable[[Tile], None],
    between: int = 0,
) -> int:
    """Draw every page with all that is its own; `under` draws what lies beneath. Returns how many front pages came
    before the first that carries a piece."""
    held, paper = pages.paper, pages.paper
    links = joints(laid, pages)
    enlarged = asked.enlarged(held)

    def begin() -> None:
        if asked.corrected:
            canvas.scale(*enlarged)

    key = "paper.about_sideways" if held.landscape else "paper.about_upright"
    about = say(key, paper=paper.said, count=len(pages.tiles) + between)
    if not pages.tiles:
        about = say("paper.about_no_pages", paper=paper.said)
    bare = without_paper(pattern, laid, by_size=between > 0)
    before = 0 if laid.head else draw_front(canvas, pattern, laid, pages, asked, about, begin, bare)
    total = len(pages.tiles) + before
    places = find_places(laid, pages, [(link.after, mark) for link in links for mark in link.marks])
    for number, each in enumerate(pages.tiles, before + between + 1):
        under(each)
        begin()
        count = say("paper.sheet_of" if laid.head else "paper.page_of", page=number, pages=total + between)
        _furniture(canvas, pattern, pages, links, each, asked, count)
        x, y = page_origin(each, held)
        if total > 1:
            draw_place(canvas, pages, each, places[each], (x, y), class_banner(asked))
        if laid.head and each.left <= laid.head[0] < each.right and each.bottom <= laid.head[1] < each.top:
            corner = (laid.head[0] + x, laid.head[1] + y)
            about = say("paper.on_sheets", pieces=say("paper.pieces", count=len(laid.placements)), count=total)
            draw_head(canvas, pattern, corner, also_without(about, pattern, laid), asked, enlarged, held.landscape)
        canvas.showPage()
    return before


def _placed(pages: PagePlan, each: Tile, enlarged: tuple[float, float], request: PageRequest) -> tuple[str, str]:
    """The page's part of the sheet: glue areas, then the sheet clipped to the printed area. What comes before the sheet
    is painted, and what comes after."""
    out = [f"q {enlarged[0]:.8f} 0 0 {enlarged[1]:.8f} 0 0 cm", f"{_GLUE} g"]
    for left, bottom, right, top in _glue_areas(pages, each):
        out.append(f"{left * MM:.4f} {bottom * MM:.4f} {(right - left) * MM:.4f} {(top - bottom) * MM:.4f} re f")
    left, bottom, right, top = _clip(pages, each, request)
    x, y = page_origin(each, pages.paper)
    clip = f"{left * MM:.4f} {bottom * MM:.4f} {(right - left) * MM:.4f} {(top - bottom) * MM:.4f} re W n"
    out.append(f"q {clip} 1 0 0 1 {x * MM:.4f} {y * MM:.4f} cm")
    return "\n".join(out), "Q Q"


def _frame(paper: Paper) -> tuple[float, float, float, float]:
    """The printed area: left, bottom, right and top in mm of the page."""
    return paper.margin_x, paper.margin_y, paper.width - paper.margin_x, paper.height - paper.margin_y


def _clip(pages: PagePlan, each: Tile, request: PageRequest) -> tuple[float, float, float, float]:
    left, bottom, right, top = _frame(pages.paper)
    x, y = page_origin(each, pages.paper)
    if not pages.joined(each, 0, 1):  # a neighbour that is not joined shows nothing here
        right = min(right, each.right + x)
    if not pages.joined(each, 1, 0):
        bottom = max(bottom, each.bottom + y)
    if request.joining == "butt":
        left -= _BLEED if pages.joined(each, 0, -1) else 0.0
        right += _BLEED if pages.joined(each, 0, 1) else 0.0
        bottom -= _BLEED if pages.joined(each, 1, 0) else 0.0
        top += _BLEED if pages.joined(each, -1, 0) else 0.0
    return left, bottom, right, top


def _glue_areas(pages: PagePlan, each: Tile) -> list[tuple[float, float, float, float]]:
    """Where the next pages are glued on, in mm of the page (left, bottom, right, top)."""
    paper = pages.paper
    if not paper.overlap:
        return []
    left, bottom, right, top = _frame(paper)
    found = []
    if pages.joined(each, 0, 1):
        found.append((right - paper.overlap, bottom, right, top))
        right -= paper.overlap
    if pages.joined(each, 1, 0):
        found.append((left, bottom, right, bottom + paper.overlap))
    return found


def _furniture(
    canvas: Canvas,
    pattern: Pattern,
    pages: PagePlan,
    links: tuple[Joint, ...],
    each: Tile,
    request: PageRequest,
    count: str,
) -> None:
    paper = pages.paper
    butt = request.joining == "butt"
    left, bottom, right, top = _frame(paper)
    before, above = pages.joined(each, 0, -1), pages.joined(each, -1, 0)
    after, below = pages.joined(each, 0, 1), pages.joined(each, 1, 0)

    _side(canvas, (left, bottom, left, top), cut=bool(before))
    _side(canvas, (left, top, right, top), cut=bool(above))
    _side(canvas, (right, bottom, right, top), cut=butt and bool(after))
    _side(canvas, (left, bottom, right, bottom), cut=butt and bool(below))
    for x, y, angle, cut in (
        (left, (bottom + top) / 2, math.pi / 2, before),
        ((left + right) / 2, top, 0.0, above),
        (right, (bottom + top) / 2, math.pi / 2, butt and after),
        ((left + right) / 2, bottom, 0.0, butt and below),
    ):
        if cut:
            _scissors(canvas, x, y, angle)

    if not butt:
        middle_x, middle_y = (left + right) / 2, (bottom + top) / 2
        if after:
            x = right - paper.overlap / 2 + 0.9
            glue = say("paper.glue", page=after.name)
            write(canvas, glue, x, middle_y, 1.9, grey=0.4, anchor="middle", angle=math.pi / 2)
        if below:
            y = bottom + paper.overlap / 2 - 0.9
            write(canvas, say("paper.glue", page=below.name), middle_x, y, 1.9, grey=0.4, anchor="middle")
    for link in links:
        if each in (link.before, link.after):
            _joint(canvas, link, each, page_origin(each, paper))
    _caption(canvas, pattern, paper, each, count, class_banner(request))


def _side(canvas: Canvas, ends: tuple[float, float, float, float], cut: bool) -> None:
    """One side of the printed area: a thin line, or a trim line that reaches into the margins."""
    x0, y0, x1, y1 = ends
    if not cut:
        rule(canvas, x0, y0, x1, y1, INKS["page"])
    elif x0 == x1:
        rule(canvas, x0, y0 - 4, x1, y1 + 4, INKS["trim"])
    else:
        rule(canvas, x0 - 4, y0, x1 + 4, y1, INKS["trim"])


def _caption(canvas: Canvas, pattern: Pattern, paper: Paper, each: Tile, count: str, banner: str) -> None:
    """Lesson, size, edition and place, a scale line and the page number, in the margin below the printed area or, in a
    narrow margin, just inside it; what a class scale must say stands at the right."""
    left, bottom, right, top = _frame(paper)
    roomy = paper.margin_y >= _CAPTION
    y = bottom - 4.1 if roomy else bottom + 1.4
    inches = pattern.lesson.units == "inch"
    name = 50.8 if inches else SCALE_LINE
    unit = say("unit.in", amount="2") if inches else say("unit.mm", amount="50")
    end = right - text_width(count, 1.9) - 5
    start = end - name
    set_ink(canvas, Ink(0.2))
    canvas.line(start * MM, (y + 0.6) * MM, end * MM, (y + 0.6) * MM)
    for tick in range(6 if name == SCALE_LINE else 5):
        x = start + tick * name / (5 if name == SCALE_LINE else 4)
        canvas.line(x * MM, (y + 0.6) * MM, x * MM, (y + (2.0 if tick else 2.4)) * MM)
    write(canvas, unit, start - 1.5, y, 1.7, grey=0.2, anchor="end")
    write(canvas, count, right, y, 1.9, grey=0.2, anchor="end")
    place = say("paper.place", row=str(each.row + 1), column=each.column_letters)
    line = f"{pattern.lesson.title} · {edition_line(pattern)} · {place}"
    width = start - 14 - left - 3
    size = 1.9
    while text_width(line, size) > width and size > 1.2:
        size -= 0.05
    write(canvas, line, left + 3, y, size, grey=0.2)
    if banner:
        said = banner.upper()
        room = (top - bottom) / 4 - 10
        size = min(2.4, 2.4 * room / text_width(said, 2.4, bold=True))
        x = right + 4.5 if paper.margin_x >= _CAPTION else right - 1.5
        write(canvas, said, x, bottom + (top - bottom) * 0.375, size, bold=True, anchor="middle", angle=math.pi / 2)


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


def _joint(canvas: Any, link: Joint, each: Tile, origin: tuple[float, float]) -> None:
    """Both marks of a shared border, whole on both pages; the cut halves them. The number stands on the half
    that is this page's own."""
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
            x += side * (RING + 1.2)
            write(canvas, str(link.number), x, y - 1.25, 2.5, grey=0.15, anchor="end" if first else "start")
        else:
            y += RING + 1.2 if first else -RING - 3.7
            write(canvas, str(link.number), x, y, 2.5, grey=0.15, anchor="middle")
