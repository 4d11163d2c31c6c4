"""The first of the pattern pages: test squares, what to tell the printer, the page plan, how to join the pages
and how to cut them safely. It is laid out for the paper held either way."""

from __future__ import annotations

from reportlab.pdfgen.canvas import Canvas

from kit.lesson.pattern import Pattern
from kit.paper.pdf_pen import MM, Ink, rule, set_ink, text_width, wrap, write
from kit.paper.plan import PagePlan
from kit.paper.sheet import Sheet, draw_square, edition_line

METRIC_SIDE = 100.0
INCH_SIDE = 101.6
_TEXT = 2.2
_LINE = 4.1

PRINT = (
    "Print this page first, at 100 % (actual size), with no scaling and no fitting to the page.",
    "Measure a square before you cut: the metric one measures 100 mm on each side, the other 4 in. If yours do "
    "not, change the printer's scaling and print this page again.",
    "Then print the other pages with the same settings.",
)
JOIN = (
    "Lay the pages out as in the page plan. Rows have numbers, columns letters.",
    "Cut each page along its broken trim lines (\N{BLACK SCISSORS}), at the left and at the top. Pages without such "
    "a line there stay as they are.",
    "Glue or tape the cut page on the grey area of the page before it. Bring halves with the same number together: "
    "the ring must close and its diagonals must cross in the centre.",
    "Join the pages of each row first, then row to row.",
)
CUT = (
    "Cut the pieces on the heavy solid line.",
    "Blades are sharp. Cut away from your fingers and yourself, close a rotary cutter each time you put it down, "
    "use it on a cutting mat, and keep blades and pins away from children. The maker's instructions and the rules "
    "of your workroom come first.",
)


def square_places(paper_width: float, paper_height: float, margin: float) -> tuple[tuple[float, float], ...]:
    """Lower left corners of the 100 mm and the 4 in square on the first page, in mm from its lower left."""
    top = paper_height - margin - 22
    if paper_width > paper_height:
        return (margin, top - METRIC_SIDE), (margin + METRIC_SIDE + 5, top - INCH_SIDE)
    return (margin, top - METRIC_SIDE), (margin, top - METRIC_SIDE - 6 - INCH_SIDE)


def first_page(canvas: Canvas, pattern: Pattern, laid: Sheet, pages: PagePlan, number: int = 2) -> None:
    """Draw the first page of `pages` on `canvas`, whose page is that paper. `number` is the page its first tile is
    printed on."""
    paper = pages.paper
    left, right = paper.margin, paper.width - paper.margin
    top = paper.height - paper.margin
    lesson = pattern.lesson

    size = 6.0
    while text_width(lesson.title, size, bold=True) > right - left and size > 2.5:
        size -= 0.25
    write(canvas, lesson.title, left, top - 7, size, bold=True)
    count = len(pages.tiles) + number - 1
    held = "on its side" if paper.landscape else "upright"
    about = f"{edition_line(pattern)} · pattern pages on {paper.title}, {held} · page 1 of {count}"
    write(canvas, about, left, top - 13.5, _fitted(about, 2.6, right - left))
    rule(canvas, left, top - 17, right, top - 17, Ink(0.3))

    (x100, y100), (x4, y4) = square_places(paper.width, paper.height, paper.margin)
    for x, y, side, name, steps in (
        (x100, y100, METRIC_SIDE, "100 mm", "ticks every 10 mm"),
        (x4, y4, INCH_SIDE, "4 in", "ticks every 1/2 in"),
    ):
        draw_square(canvas, x, y, side)
        write(canvas, name, x + side / 2, y + side / 2 + 4, 8.0, bold=True, anchor="middle")
        write(canvas, "test square: measure it before you cut", x + side / 2, y + side / 2 - 5, 2.4, anchor="middle")
        write(canvas, steps, x + side / 2, y + side / 2 - 10, 2.0, anchor="middle", grey=0.3)

    if paper.landscape:
        aside = x4 + INCH_SIDE + 6
        _heading(canvas, "Page plan", aside, top - 24)
        _map(canvas, laid, pages, number, aside, y4, right - aside, top - 28 - y4)
        columns = [left + (right - left + 6) / 3 * place for place in range(3)]
        width = (right - left - 12) / 3
        for x, heading, notes in zip(columns, ("Print", "Join", "Cut"), (PRINT, JOIN, CUT), strict=True):
            _notes(canvas, heading, notes, x, y4 - 9, width)
    else:
        aside = x4 + INCH_SIDE + 7
        y = top - 24.0
        for heading, notes in (("Print", PRINT), ("Join", JOIN), ("Cut", CUT)):
            y = _notes(canvas, heading, notes, aside, y, right - aside) - 5.5
        _heading(canvas, "Page plan", aside, y)
        _map(canvas, laid, pages, number, aside, paper.margin, right - aside, y - 5 - paper.margin)


def _fitted(text: str, size: float, width: float) -> float:
    return min(size, size * width / text_width(text, size))


def _heading(canvas: Canvas, text: str, x: float, y: float) -> None:
    write(canvas, text, x, y, 3.0, bold=True)


def _notes(canvas: Canvas, heading: str, notes: tuple[str, ...], x: float, y: float, width: float) -> float:
    """Numbered notes under a heading, from `y` downward; gives the baseline of the last line."""
    _heading(canvas, heading, x, y)
    y -= 1.6
    for number, note in enumerate(notes, 1):
        lines = wrap(note, _TEXT, width - 4.5)
        write(canvas, f"{number}", x, y - _LINE, _TEXT, bold=True, grey=0.3)
        for line in lines:
            y -= _LINE
            write(canvas, line, x + 4.5, y, _TEXT)
        y -= 0.9
    return y


def _map(
    canvas: Canvas, laid: Sheet, pages: PagePlan, first: int, x: float, y: float, width: float, height: float
) -> None:
    """The page plan: printed pages framed and named, with the outlines of the pieces, to fit the given box."""
    tiles = pages.tiles
    low, high = min(tile.bottom for tile in tiles), max(tile.top for tile in tiles)
    near, far = min(tile.left for tile in tiles), max(tile.right for tile in tiles)
    caption = 5.0
    scale = min(width / (far - near), (height - caption) / (high - low))
    x += (width - scale * (far - near)) / 2
    base = y + height - scale * (high - low)

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
        x0, y0 = at(tile.left, tile.bottom)
        x1, y1 = at(tile.right, tile.top)
        set_ink(canvas, Ink(0.3, 0.0))
        canvas.rect(x0, y0, x1 - x0, y1 - y0, stroke=1, fill=0)
    side = min(pages.paper.step) * scale
    size = max(1.3, min(4.0, side * 0.3))
    for number, tile in enumerate(tiles, first):
        px, py = at((tile.left + tile.right) / 2, (tile.bottom + tile.top) / 2)
        write(canvas, tile.name, px / MM, py / MM - size * 0.35, size, bold=True, anchor="middle")
        if size > 2:
            write(canvas, f"page {number}", px / MM, py / MM - size * 1.15, size * 0.5, anchor="middle")
    out = pages.rows * pages.columns - len(tiles)
    note = f"{len(tiles)} pages, {pages.rows} rows by {pages.columns} columns"
    if out:
        note += f"; {out} blank {'page is' if out == 1 else 'pages are'} left out"
    write(canvas, note, x + scale * (far - near) / 2, base - 3.6, _fitted(note, 1.9, width), grey=0.25, anchor="middle")
