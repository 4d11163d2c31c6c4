"""The title block of a sheet for the copy shop: both test squares with what must be read inside them, and a printer
gauge along the sheet and across it."""

from __future__ import annotations

from typing import Any

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
    how_to_gauge,
    square_sides,
)
from kit.paper.pdf_pen import text_width, wrap, write
from kit.paper.request import PageRequest

_GAP = 5.0


def edition_line(pattern: Pattern) -> str:
    """Size, edition and date as printed on every page."""
    lesson = pattern.lesson
    edition = say("paper.edition", edition=lesson.edition) if lesson.edition else ""
    parts = [pattern.body.said, edition, lesson.date]
    return " · ".join(part for part in parts if part)


def head_room(enlarged: tuple[float, float] = (1.0, 1.0)) -> tuple[float, float]:
    """Width and height in mm of the title block on a sheet drawn `enlarged` times, across and down."""
    return (
        METRIC_SIDE + INCH_SIDE + 2 * _GAP + GAUGE_WIDTH,
        max(INCH_SIDE, GAUGE_LENGTH / enlarged[1]) + _GAP + GAUGE_WIDTH,
    )


def head_squares(corner: tuple[float, float], enlarged: tuple[float, float] = (1.0, 1.0)) -> tuple[Any, Any]:
    """Upper left corners of the metric and the inch square in a title block whose lower left corner is `corner`."""
    top = corner[1] + head_room(enlarged)[1]
    return (corner[0], top), (corner[0] + METRIC_SIDE + _GAP, top)


def draw_head(
    canvas: Any,
    pattern: Pattern,
    corner: tuple[float, float],
    about: str,
    request: PageRequest,
    enlarged: tuple[float, float] = (1.0, 1.0),
    landscape: bool = False,
) -> None:
    """Draw the block with its lower left corner at `corner` mm. `about` says in a few words what the sheet holds."""
    x, y = corner
    places = head_squares(corner, enlarged)
    for (left, top), (side, name, _) in zip(places, square_sides(request), strict=True):
        step = 0.0 if request.full_size else side / 10 if side % 5 == 0 else side / 8
        draw_square(canvas, left, top - side, side, step)
        write(canvas, name, left + side / 2, top - side + 7, min(5.0, side * 0.1), bold=True, anchor="middle")
    (first, top), (second, _) = places
    aside = 0.0 if request.full_size else max(side for side, _, _ in square_sides(request))
    width = METRIC_SIDE - aside - 12
    size = 6.0
    while text_width(pattern.lesson.title, size, bold=True) > width and size > 2.2:
        size -= 0.2
    write(canvas, pattern.lesson.title, first + aside + 6, top - 14, size, bold=True)
    line = top - 16.0
    banner = class_banner(request)
    for text, height in ((edition_line(pattern), 2.6), (about, 2.3), (banner.upper(), 3.0)):
        for part in wrap(text, height, width, bold=text == banner.upper()) if text else []:
            line -= height * 2
            write(canvas, part, first + aside + 6, line, height, bold=bool(banner) and text == banner.upper())
    metric, inch = square_sides(request)
    said = (
        say("paper.head_print"),
        say("paper.head_measure", metric=metric[1], inch=inch[1]) if request.full_size else f"{metric[2]} {inch[2]}",
        *how_to_gauge(request),
        say("paper.head_blades"),
    )
    line = top - 8.0
    for text in said:
        for part in wrap(text, 2.2, width):
            line -= 4.0
            write(canvas, part, second + aside + 6, line, 2.2)
        line -= 1.2
    sides = ("sheet_width", "sheet_height")
    if request.corrected:
        sides = ("sheet_long", "sheet_short") if landscape else ("sheet_short", "sheet_long")
    draw_gauge(canvas, x, y, enlarged[0], say(f"paper.gauge_{sides[0]}"))
    draw_gauge(
        canvas,
        x + METRIC_SIDE + INCH_SIDE + 2 * _GAP,
        top - GAUGE_LENGTH / enlarged[1],
        enlarged[1],
        say(f"paper.gauge_{sides[1]}"),
        upright=True,
    )
