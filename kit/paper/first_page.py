"""What comes before the pattern pages: test squares, printer gauges, what to tell the printer, the page plan, how to
join the pages and how to cut them safely.

It is one page on paper of A4 or US Letter and larger, held either way, and several on smaller paper. Room for things
is found first (`front`), so that it can be asked where a square stands; lengths are mm as they leave the printer.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass

from reportlab.pdfgen.canvas import Canvas

from kit.diagnostic import message
from kit.errors import KitError
from kit.language import say
from kit.lesson.pattern import Pattern
from kit.paper.gauge import (
    GAUGE_LENGTH,
    GAUGE_WIDTH,
    INCH_SIDE,
    METRIC_SIDE,
    class_banner,
    draw_gauge,
    draw_square,
    gauge_side,
    how_to_gauge,
    square_sides,
)
from kit.paper.head import edition_line
from kit.paper.papers import Paper
from kit.paper.pdf_pen import MM, Ink, fitted, rule, set_ink, text_width, wrap, write
from kit.paper.plan import PagePlan, Tile
from kit.paper.request import PageRequest
from kit.paper.sheet import Sheet

_TEXT = 2.2
_LINE = 3.9
_CAPTION = 9.0
_HEADING = 6.0
_TOP = 22.0  # the title block

# The notes of the first page, by the keys of their messages.
_OVERLAP = ("join_plan", "join_trim", "join_glue", "join_rows")
_BUTT = ("join_plan", "join_trim_all", "join_tape", "join_rows")
_CUT = ("cut_line", "cut_blades")
_PRACTICE = ("practise_smaller", "practise_blades")


@dataclass(frozen=True)
class PageBox:
    """Something on a front page: lower left corner, width and height in mm, page counted from 0."""

    page: int
    x: float
    y: float
    width: float
    height: float


@dataclass(frozen=True)
class Front:
    """Where things stand on the front pages: both squares, the gauges along the page's width and height, text blocks
    by name ("print", "join", "cut") and the rooms the page plan may take."""

    pages: int
    metric: PageBox
    inch: PageBox
    across: PageBox
    upright: PageBox
    notes: dict[str, PageBox]
    plans: tuple[PageBox, ...]


def print_notes(paper: Paper, request: PageRequest) -> tuple[str, ...]:
    """What to tell the printer."""
    metric, inch = (name for _, name, _ in square_sides(request))
    return (
        say("paper.print_first_common" if paper.common else "paper.print_first"),
        say("paper.print_measure", metric=metric, inch=inch),
        *how_to_gauge(request),
        say("paper.print_others"),
    )


def _said(keys: Iterable[str]) -> tuple[str, ...]:
    return tuple(say(f"paper.{key}") for key in keys)


def front(held: Paper, request: PageRequest) -> Front:
    """The room on the front pages of `held`, a paper as it leaves the printer.

    There are three arrangements, tried from the roomiest: upright paper of about A4, with the squares under one
    another and a gauge beside them; paper on its side, with the squares side by side and the plan at the foot and to
    the right; and smaller paper, which takes several pages. The limits are the least sizes at which nothing of an
    arrangement runs into another thing.

    A box is told by its lower left corner, and y is measured upward as in a PDF, so that what stands under something
    is that thing's y less its own height. The squares are drawn so much larger or smaller that they leave the
    printer true. The gauges are there to measure the printer and are drawn uncorrected, so that their length on the
    page carries its error (divided by `enlarged`)."""
    width, height = held.area
    left, top = held.margin_x, held.margin_y + height
    enlarged = request.enlarged(held)
    across, upright = GAUGE_LENGTH / enlarged[0], GAUGE_LENGTH / enlarged[1]
    y = top - _TOP
    metric, inch = (_beneath(side, request) for side, _, _ in square_sides(request))
    if width >= 181 and height >= max(250.0, _TOP + METRIC_SIDE + INCH_SIDE + 6 + GAUGE_WIDTH):
        right = width - INCH_SIDE - 6
        aside = left + INCH_SIDE + 6
        join = right - GAUGE_WIDTH - 3
        return Front(
            1,
            PageBox(0, left, y - METRIC_SIDE, METRIC_SIDE, METRIC_SIDE),
            PageBox(0, left, y - METRIC_SIDE - 5 - INCH_SIDE, INCH_SIDE, INCH_SIDE),
            PageBox(0, left, y - METRIC_SIDE - INCH_SIDE - 7 - GAUGE_WIDTH, across, GAUGE_WIDTH),
            PageBox(0, left + width - GAUGE_WIDTH, y - upright, GAUGE_WIDTH, upright),
            {
                "print": PageBox(0, left + 6, y - METRIC_SIDE + 8, METRIC_SIDE - 12, metric),
                "cut": PageBox(0, left + 6, y - METRIC_SIDE - 5 - INCH_SIDE + 8, INCH_SIDE - 12, inch),
                "join": PageBox(0, aside, y - upright, join, upright),
            },
            (
                PageBox(
                    0,
                    aside,
                    held.margin_y + 2,
                    right - max(0.0, across - INCH_SIDE - 5),
                    y - upright - 6 - held.margin_y,
                ),
            ),
        )
    if width >= 235 and height >= 171:
        foot = y - INCH_SIDE - 4
        return Front(
            1,
            PageBox(0, left, y - METRIC_SIDE, METRIC_SIDE, METRIC_SIDE),
            PageBox(0, left + METRIC_SIDE + 4, y - INCH_SIDE, INCH_SIDE, INCH_SIDE),
            PageBox(0, left, foot - GAUGE_WIDTH, across, GAUGE_WIDTH),
            PageBox(0, left + METRIC_SIDE + INCH_SIDE + 7, y - upright, GAUGE_WIDTH, upright),
            {
                "print": PageBox(0, left + 6, y - METRIC_SIDE + 8, METRIC_SIDE - 12, metric),
                "cut": PageBox(0, left + METRIC_SIDE + 10, y - INCH_SIDE + 8, INCH_SIDE - 12, inch),
                "join": PageBox(0, left, held.margin_y, across - 4, foot - GAUGE_WIDTH - 4 - held.margin_y),
            },
            (
                PageBox(0, left + across + 3, held.margin_y + 1, width - across - 3, foot - held.margin_y - 1),
                PageBox(
                    0,
                    left + METRIC_SIDE + INCH_SIDE + 10 + GAUGE_WIDTH,
                    held.margin_y + 1,
                    width - METRIC_SIDE - INCH_SIDE - 10 - GAUGE_WIDTH,
                    y - held.margin_y - 1,
                ),
            ),
        )
    return _small(held, request)


def _beneath(side: float, request: PageRequest) -> float:
    """Room for notes in a square's room: below its name, at class scales below the square."""
    return METRIC_SIDE - 30 if request.full_size else METRIC_SIDE - side - 12


def _small(held: Paper, request: PageRequest) -> Front:
    """Front pages of small paper: one thing or two on each. Raises `KitError` when a square or a gauge finds no
    room."""
    width, height = held.area
    left, bottom = held.margin_x, held.margin_y
    enlarged = request.enlarged(held)
    across, upright = GAUGE_LENGTH / enlarged[0], GAUGE_LENGTH / enlarged[1]
    if width < max(across, INCH_SIDE) or height < max(upright, INCH_SIDE):
        raise KitError(
            message("paper.margins_eat", width=round(width), height=round(height)),
            where=message("paper.paper_place", paper=held.title),
            do=message("paper.margins_eat_do", least=round(GAUGE_LENGTH + 1)),
        )
    top = bottom + height
    metric = _beneath(square_sides(request)[0][0], request)
    square = PageBox(1, left, top - METRIC_SIDE, METRIC_SIDE, METRIC_SIDE)
    other = PageBox(2, left, top - INCH_SIDE, INCH_SIDE, INCH_SIDE)
    beside, below = width - INCH_SIDE - 4, height - INCH_SIDE - 4
    room = PageBox(2, other.x + INCH_SIDE + 4, bottom + 1, beside, height - 1)
    if below > beside:
        room = PageBox(2, left, bottom + 1, width, below - 1)
    return Front(
        4,
        square,
        other,
        PageBox(0, left, bottom, across, GAUGE_WIDTH),
        PageBox(3, left, top - upright, GAUGE_WIDTH, upright),
        {
            "print": PageBox(0, left, bottom + GAUGE_WIDTH + 2, width, height - _TOP - GAUGE_WIDTH - 2),
            "cut": PageBox(1, square.x + 6, square.y + 8, METRIC_SIDE - 12, metric),
            "join": PageBox(3, left + GAUGE_WIDTH + 4, bottom, width - GAUGE_WIDTH - 4, height),
        },
        (room,),
    )


def draw_front(
    canvas: Canvas,
    pattern: Pattern,
    laid: Sheet,
    pages: PagePlan,
    request: PageRequest,
    about: str,
    begin: Callable[[], None],
    bare: str = "",
) -> int:
    """Draw the front pages and end each; `begin` prepares the canvas for a page. `about` is the line below the title,
    `bare` a note on pieces that have no paper. Gives how many there were."""
    held = pages.paper
    room = front(held, request)
    squares = square_sides(request)
    texts = {
        "print": (say("paper.print"), print_notes(held, request)),
        "join": (say("paper.join"), _said(_BUTT if request.joining == "butt" else _OVERLAP)),
        "cut": (say("paper.cut"), _said(_CUT)) if request.full_size else (say("paper.practise"), _said(_PRACTICE)),
    }
    if bare:
        heading, notes = texts["cut"]
        # Where nothing follows there is no line to cut along, and no scale to measure.
        texts = texts | {"cut": (heading, (bare, *notes))} if pages.tiles else {"cut": (heading, (bare, *notes[1:]))}
    enlarged = request.enlarged(held)
    for number in range(room.pages):
        begin()
        if number == 0:
            _title(canvas, pattern, held, about, class_banner(request))
        else:
            words = [pattern.lesson.title, edition_line(pattern), class_banner(request).upper()]
            line = " · ".join(part for part in words if part)
            y = held.margin_y - 4.1 if held.margin_y >= _CAPTION else held.margin_y
            bold = not request.full_size
            write(canvas, line, held.margin_x, y, fitted(line, 1.9, held.area[0], bold=bold), bold=bold)
        for key, spot in room.notes.items():
            if spot.page == number and key in texts:
                _notes(canvas, *texts[key], spot)
        if not pages.tiles:
            canvas.showPage()
            continue
        for spot, (side, name, said) in zip((room.metric, room.inch), squares, strict=True):
            if spot.page == number:
                _square(canvas, spot, side, name, said, request.full_size)
        if room.across.page == number:
            spot = room.across
            draw_gauge(canvas, spot.x, spot.y, enlarged[0], gauge_side(True, held.landscape))
        if room.upright.page == number:
            spot = room.upright
            draw_gauge(canvas, spot.x, spot.y, enlarged[1], gauge_side(False, held.landscape), upright=True)
        if room.plans[0].page == number:
            _map(canvas, laid, pages, max(room.plans, key=lambda spot: _map_scale(pages, spot)))
        canvas.showPage()
    return room.pages


def _title(canvas: Canvas, pattern: Pattern, held: Paper, about: str, banner: str) -> None:
    left, right = held.margin_x, held.width - held.margin_x
    top = held.height - held.margin_y
    across = right - left
    if banner:
        letters = fitted(banner.upper(), 3.2, across * 0.55, bold=True)
        width = text_width(banner.upper(), letters, bold=True) + 5
        set_ink(canvas, Ink(0.4))
        canvas.rect((right - width) * MM, (top - 8.5) * MM, width * MM, 6.5 * MM, stroke=1, fill=0)
        write(canvas, banner.upper(), right - width / 2, top - 5.25 - letters / 2, letters, bold=True, anchor="middle")
        across -= width + 4
    size = fitted(pattern.lesson.title, 6.0, across, bold=True)
    write(canvas, pattern.lesson.title, left, top - 7, size, bold=True)
    line = f"{edition_line(pattern)} · {about}"
    write(canvas, line, left, top - 13.5, fitted(line, 2.6, right - left))
    rule(canvas, left, top - 17, right, top - 17, Ink(0.3))


def _square(canvas: Canvas, spot: PageBox, side: float, name: str, said: str, full: bool) -> None:
    """The square in the upper left of its room; what it is, inside it where there is space."""
    top = spot.y + spot.height
    draw_square(canvas, spot.x, top - side, side, 0.0 if full else side / 10 if side % 5 == 0 else side / 8)
    if full:
        write(canvas, name, spot.x + side / 2, top - 14, 7.0, bold=True, anchor="middle")
        write(canvas, said, spot.x + side / 2, top - 19.5, fitted(said, 2.4, side - 8), anchor="middle")
        return
    write(canvas, name, spot.x + side / 2, top - side / 2 - 1, min(5.0, side * 0.1), bold=True, anchor="middle")
    for number, line in enumerate(wrap(said, 2.2, spot.width - side - 6)):
        write(canvas, line, spot.x + side + 3, top - 4 - number * _LINE, 2.2)


def _notes(canvas: Canvas, heading: str, notes: tuple[str, ...], spot: PageBox) -> None:
    """Numbered notes under a heading, from the top of their room downward, smaller where they must be."""
    size = _TEXT
    while size > 1.6 and _tall(notes, size, spot.width) > spot.height:
        size -= 0.1
    line = _LINE * size / _TEXT
    y = spot.y + spot.height - 3.0
    write(canvas, heading, spot.x, y, 3.0 * size / _TEXT, bold=True)
    y -= 1.4
    for number, note in enumerate(notes, 1):
        write(canvas, f"{number}", spot.x, y - line, size, bold=True, grey=0.3)
        for text in wrap(note, size, spot.width - 4.5):
            y -= line
            write(canvas, text, spot.x + 4.5, y, size)
        y -= 0.9


def _tall(notes: tuple[str, ...], size: float, width: float) -> float:
    lines = sum(len(wrap(note, size, width - 4.5)) for note in notes)
    return 4.4 + lines * _LINE * size / _TEXT + 0.9 * len(notes)


def _map_scale(pages: PagePlan, spot: PageBox) -> float:
    tiles = pages.tiles
    wide = max(tile.right for tile in tiles) - min(tile.left for tile in tiles)
    high = max(tile.top for tile in tiles) - min(tile.bottom for tile in tiles)
    return min(spot.width / wide, (spot.height - _HEADING - 5.0) / high)


def _map(canvas: Canvas, laid: Sheet, pages: PagePlan, spot: PageBox) -> None:
    """The page plan: printed pages framed and named, with the outlines of the pieces, to fit the given room. Pages
    that are joined touch; between others there is a gap."""
    tiles = pages.tiles
    low, high = min(tile.bottom for tile in tiles), max(tile.top for tile in tiles)
    near, far = min(tile.left for tile in tiles), max(tile.right for tile in tiles)
    write(canvas, say("paper.plan"), spot.x, spot.y + spot.height - 3.0, 3.0, bold=True)
    scale = _map_scale(pages, spot)
    x = spot.x + (spot.width - scale * (far - near)) / 2
    base = spot.y + spot.height - _HEADING - scale * (high - low)

    def at(sheet_x: float, sheet_y: float) -> tuple[float, float]:
        return (x + (sheet_x - near) * scale) * MM, (base + (sheet_y - low) * scale) * MM

    for placement in laid.placements:
        path = canvas.beginPath()
        points = [at(point.x, point.y) for point in placement.outline]
        path.moveTo(*points[0])
        for point in points[1:]:
            path.lineTo(*point)
        path.close()
        set_ink(canvas, Ink(0.2, 0.3))
        canvas.setFillGray(0.86)
        canvas.drawPath(path, stroke=1, fill=1)
    for tile in tiles:
        left, bottom, right, top = tile_frame(pages, tile, 0.5 / scale)
        x0, y0 = at(left, bottom)
        x1, y1 = at(right, top)
        set_ink(canvas, Ink(0.3, 0.0))
        canvas.rect(x0, y0, x1 - x0, y1 - y0, stroke=1, fill=0)
    side = min(pages.paper.step) * scale
    size = max(1.3, min(4.0, side * 0.3))
    for tile in tiles:
        px, py = at((tile.left + tile.right) / 2, (tile.bottom + tile.top) / 2)
        if text_width(tile.name, size, bold=True) < pages.paper.step[0] * scale:
            write(canvas, tile.name, px / MM, py / MM - size * 0.5, size, bold=True, anchor="middle")
    note = plan_note(pages)
    write(canvas, note, x + scale * (far - near) / 2, base - 3.6, fitted(note, 1.9, spot.width), anchor="middle")


def tile_frame(pages: PagePlan, tile: Tile, gap: float) -> tuple[float, float, float, float]:
    """The tile's left, bottom, right and top, drawn in by `gap` where it is not joined."""
    return (
        tile.left + (0.0 if pages.joined(tile, 0, -1) else gap),
        tile.bottom + (0.0 if pages.joined(tile, 1, 0) else gap),
        tile.right - (0.0 if pages.joined(tile, 0, 1) else gap),
        tile.top - (0.0 if pages.joined(tile, -1, 0) else gap),
    )


def plan_note(pages: PagePlan) -> str:
    """How many pages there are, what they make and what was left out, in words."""
    count, patches = len(pages.tiles), pages.groups
    plan = say(
        "paper.plan_grid",
        pages=say("paper.plan_pages", count=count),
        rows=say("paper.plan_rows", count=pages.rows),
        columns=say("paper.plan_columns", count=pages.columns),
    )
    if 1 < patches < count:
        plan = say("paper.plan_patches", plan=plan, patches=patches)
    elif patches == count > 1:
        plan = say("paper.plan_single", plan=plan)
    out = pages.rows * pages.columns - count
    return say("paper.plan_blank", plan=plan, count=out) if out else plan
