"""One sheet for a projector above the cutting table: 1:1, heavy lines, dark on light or light on dark.

The picture's long side runs along the table and the cloth, so pieces lie with their grain along it, tops all to the
right; a piece cut on the crosswise grain or on the bias is turned to suit. Before them stands what the projector is
set up with: a big square measured in centimetres and one in inches, each filled with its grid, with the diagonals that
show a leaning picture. Lines every 10 cm go on faintly under the pieces, so that the scale can be checked anywhere.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from io import BytesIO
from typing import Any

import pikepdf
import shapely
from reportlab.pdfgen.canvas import Canvas
from shapely import affinity

from kit.diagnostic import measured, message, number
from kit.errors import KitError
from kit.geometry import Motion
from kit.language import say
from kit.lesson.pattern import Pattern
from kit.paper.head import edition_line
from kit.paper.papers import LONGEST
from kit.paper.pdf_pen import INKS, MM, Ink, Look, draw, fitted, new_canvas, rule, text_width, write
from kit.paper.sheet import _written as written
from kit.paper.sheet import finish
from kit.picture.drawing import Item
from kit.picture.piece_sheet import moved, piece_items
from kit.piece.allowance import cut_line
from kit.piece.moved import moved_piece
from kit.piece.piece import Piece
from kit.units import plain

GAP = 20.0
EDGE = 20.0
_HEAVY = 3.2
_DASH = 2.2
_LETTERS = 1.8
_FITTED = 1600.0  # widest sheet that is fitted to the pieces: what is projected on a large table
_SIDES = ((500.0, 508.0), (300.0, 304.8), (200.0, 203.2), (100.0, 101.6))  # mm, inches: 20, 12, 8, 4
_INCH = 25.4
_CAPTION = 26.0


@dataclass(frozen=True)
class Projected:
    """A piece as it lies on the projector's sheet: its items and its paper (shapely), in the sheet's mm."""

    piece: Piece
    items: tuple[Item, ...]
    paper: Any


@dataclass(frozen=True)
class ProjectorSheet:
    """A sheet of `width` x `height` mm. `squares` are the sides in mm of the calibration squares, which stand at the
    upper left; the pieces lie below `top`."""

    pieces: tuple[Projected, ...]
    width: float
    height: float
    top: float
    squares: tuple[float, float]


def projector_sheet(pattern: Pattern, size: tuple[float, float] | None = None) -> ProjectorSheet:
    """The pieces laid for a projector, on a sheet fitted to them or of `size` (mm, width and height).

    Raises `KitError` for a pattern without pieces, a sheet they do not fit on, and one too large for a PDF page.
    """
    if not pattern.pieces:
        raise KitError(
            message("paper.no_pieces"),
            where=pattern.lesson.title,
            do=message("paper.no_pieces_do"),
        )
    drawn = []
    for piece in pattern.pieces:
        lying = moved_piece(piece, along_cloth(piece))
        items = piece_items(lying, pattern, pattern.lesson.units, letters=_LETTERS)
        points = cut_line(lying).points(0.1)
        drawn.append((piece, items, shapely.make_valid(shapely.Polygon([(p.x, p.y) for p in points]))))
    boxes = [shapely.union_all([paper, *_outside(items)]).bounds for _, items, paper in drawn]
    widest = max(x1 - x0 for x0, _, x1, _ in boxes) + 2 * EDGE
    if size is None:
        width = _best_width(boxes, max(widest, _square_width(0)))
        places, low = _rows(boxes, width)
        sides = _SIDES[0]
        height = low + EDGE + _head(sides)
    else:
        width, height = size
        places, low = _rows(boxes, width) if widest <= width else ([], math.inf)
        fitting = [
            each for each in _SIDES if 2 * EDGE + GAP + sum(each) <= width and low + EDGE + _head(each) <= height
        ]
        if not places or not fitting:
            need = _head(_SIDES[-1]) + EDGE + (low if places else 0.0)
            room, least = ("low", need) if places else ("narrow", widest)
            raise KitError(
                message(
                    f"paper.projector_{room}", width=measured(width), height=measured(height), least=measured(least)
                ),
                where="--projector",
                do=message("paper.projector_small_do"),
            )
        sides = fitting[0]
    if max(width, height) > LONGEST:
        raise KitError(
            message("paper.projector_long", size=measured(max(width, height))),
            where="--projector",
            do=message("paper.projector_long_do", most=number(LONGEST / 1000)),
        )
    # Rows are counted downward from the head with the squares, the sheet upward from its foot.
    top = height - _head(sides)
    pieces = []
    for (piece, items, paper), (x, down), box in zip(drawn, places, boxes, strict=True):
        slide = Motion(dx=x - box[0], dy=top - down - box[3])
        pieces.append(Projected(piece, moved(items, slide), affinity.translate(paper, slide.dx, slide.dy)))
    return ProjectorSheet(tuple(pieces), width, height, top, sides)


def projector_pdf(laid: ProjectorSheet, pattern: Pattern, dark: bool = False) -> bytes:
    """The sheet as a PDF of one page, exactly its size; `dark` for light lines on black."""
    target = BytesIO()
    title = say("paper.document_projector", title=pattern.lesson.title, edition=edition_line(pattern))
    canvas = new_canvas(target, laid.width, laid.height, title)
    look = heavy(dark)
    if dark:
        canvas.setFillGray(0.0)
        canvas.rect(0, 0, laid.width * MM, laid.height * MM, stroke=0, fill=1)
    _under(canvas, laid, look)
    _calibration(canvas, laid, pattern, look)
    for each in laid.pieces:
        draw(canvas, each.items, look)
    canvas.showPage()
    canvas.save()
    with pikepdf.open(BytesIO(target.getvalue())) as document:
        return finish(document)


def heavy(dark: bool) -> Look:
    """Lines that can be seen from a projector two metres up: about three times as heavy as on paper, none pale."""
    inks = {
        role: Ink(max(ink.width * _HEAVY, 0.8), min(ink.grey, 0.3), tuple(part * _DASH for part in ink.dash))
        for role, ink in INKS.items()
    }
    return Look(inks, dark, head=12.0)


def along_cloth(piece: Piece) -> Motion:
    """The turn that lays a piece with the cloth's lengthwise grain from left to right, its top to the right."""
    if piece.grain is None:
        return Motion.rotation(-math.pi / 2)
    way = piece.grain.end - piece.grain.start
    to = {"lengthwise": 0.0, "crosswise": math.pi / 2, "bias": math.pi / 4}[piece.grain.kind]
    angle = to - math.atan2(way.y, way.x)
    return Motion.rotation(math.remainder(angle, 2 * math.pi))


# ---- laying ------------------------------------------------------------------------------------------------


def _outside(items: Sequence[Item]) -> list[Any]:
    """The room of everything drawn and written, leaders too (shapely)."""
    return [written(items).envelope]


def _rows(boxes: Sequence[tuple[float, ...]], width: float) -> tuple[list[tuple[float, float]], float]:
    """Upper left corners (x, mm down) of the boxes in rows on a sheet of `width`, tallest first, each at the leftmost
    place of the highest row or shelf that has room; and how far down they reach."""
    places: list[tuple[float, float]] = [(0.0, 0.0)] * len(boxes)
    taken: list[tuple[float, float, float, float]] = []
    order = sorted(range(len(boxes)), key=lambda i: (boxes[i][1] - boxes[i][3], boxes[i][0] - boxes[i][2], i))
    for i in order:
        wide, high = boxes[i][2] - boxes[i][0], boxes[i][3] - boxes[i][1]
        xs = sorted({EDGE, *(x1 + GAP for _, _, x1, _ in taken)})
        downs = sorted({0.0, *(y1 + GAP for _, _, _, y1 in taken)})
        x, down = next(
            (x, down)
            for down in downs
            for x in xs
            if x + wide + EDGE <= width + 1e-6
            and all(
                x >= x1 + GAP - 1e-6
                or x + wide <= x0 - GAP + 1e-6
                or down >= y1 + GAP - 1e-6
                or down + high <= y0 - GAP + 1e-6
                for x0, y0, x1, y1 in taken
            )
        )
        places[i] = (x, down)
        taken.append((x, down, x + wide, down + high))
    return places, max(y1 for *_, y1 in taken)


def _best_width(boxes: Sequence[tuple[float, ...]], widest: float) -> float:
    """The width from `widest` up to `_FITTED` that makes the smallest sheet, the narrowest of equals."""
    tries = [widest + step * 50.0 for step in range(max(1, int((_FITTED - widest) / 50.0) + 1))]
    return min(tries, key=lambda width: (round((_rows(boxes, width)[1] + _head(_SIDES[0])) * width), width))


def _square_width(place: int) -> float:
    return 2 * EDGE + GAP + sum(_SIDES[place])


def _head(sides: tuple[float, float]) -> float:
    """The height of the calibration squares with what is written over and under them."""
    return EDGE + _CAPTION + max(sides) + GAP


# ---- calibration -------------------------------------------------------------------------------------------


def _under(canvas: Canvas, laid: ProjectorSheet, look: Look) -> None:
    """Lines every 10 cm over the whole sheet, from its lower left corner."""
    ink = Ink(0.4, look.grey(0.78))
    for step in range(1, math.ceil(laid.width / 100.0)):
        rule(canvas, step * 100.0, 0.0, step * 100.0, laid.top, ink)
    for step in range(1, math.ceil(laid.top / 100.0)):
        rule(canvas, 0.0, step * 100.0, laid.width, step * 100.0, ink)


def _calibration(canvas: Canvas, laid: ProjectorSheet, pattern: Pattern, look: Look) -> None:
    metric, inches = laid.squares
    top = laid.height - EDGE - _CAPTION
    black = look.grey(0.0)
    write(canvas, pattern.lesson.title, EDGE, laid.height - EDGE - 8, 9.0, bold=True, grey=black)
    about = say("paper.projector_about", edition=edition_line(pattern))
    write(canvas, about, EDGE, laid.height - EDGE - 18, 4.5, grey=black)
    _square(canvas, EDGE, top, metric, 10.0, 10, say("unit.cm", amount=plain(metric / 10)), look)
    _square(canvas, EDGE + metric + GAP, top, inches, _INCH, 4, say("unit.in", amount=plain(inches / _INCH)), look)


def _square(
    canvas: Canvas, left: float, top: float, side: float, step: float, heavy_every: int, said: str, look: Look
) -> None:
    """A square of `side` mm measured along the middle of its line, its grid, its diagonals and its measure."""
    bottom = top - side
    for count in range(1, round(side / step)):
        strong = count % heavy_every == 0
        ink = Ink(0.8 if strong else 0.35, look.grey(0.35 if strong else 0.6))
        at = count * step
        rule(canvas, left + at, bottom, left + at, top, ink)
        rule(canvas, left, bottom + at, left + side, bottom + at, ink)
    thin = Ink(0.5, look.grey(0.35), (6.0, 4.0))
    rule(canvas, left, bottom, left + side, top, thin)
    rule(canvas, left, top, left + side, bottom, thin)
    canvas.setDash([])
    canvas.setLineJoin(0)
    canvas.setLineWidth(1.6 * MM)
    canvas.setStrokeGray(look.grey(0.0))
    canvas.rect(left * MM, bottom * MM, side * MM, side * MM, stroke=1, fill=0)
    size = min(12.0, side / 14)
    measure = say("paper.projector_measure")
    small = fitted(measure, size * 0.42, side - 2 * size)
    wide = max(text_width(said, size, bold=True), text_width(measure, small)) + size
    canvas.setFillGray(look.grey(1.0))
    middle = left + side / 2, bottom + side / 2
    canvas.rect((middle[0] - wide / 2) * MM, (middle[1] - size * 2) * MM, wide * MM, size * 4 * MM, stroke=0, fill=1)
    write(canvas, said, middle[0], middle[1] + size * 0.3, size, bold=True, grey=look.grey(0.0), anchor="middle")
    write(
        canvas,
        measure,
        middle[0],
        middle[1] - size * 1.2,
        small,
        grey=look.grey(0.0),
        anchor="middle",
    )
