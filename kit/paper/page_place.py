"""A page's place, written on what is left of it after trimming: its name and a small plan of all pages with this one
filled in. It stands where nothing of a piece is drawn, if there is such a place."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

import numpy as np
import shapely
from reportlab.pdfgen.canvas import Canvas

from kit.paper.first_page import tile_frame
from kit.paper.pdf_pen import MM, Ink, set_ink, text_width, write
from kit.paper.plan import PagePlan, Tile
from kit.paper.sheet import Sheet

PLACE = (36.0, 14.0)
"""Width and height in mm of the page's name, the plan beside it and the line below."""
INSET = (17.0, 13.0)
_CLEAR = 1.0
_INSIDE = 5.0
_STEP = 6.0
_ASKED = (8, 32, 128)  # how many places for it are looked at first, and then
_GREY = 0.4


def find_places(
    laid: Sheet, pages: PagePlan, marks: Sequence[tuple[Tile, tuple[float, float]]]
) -> dict[Tile, tuple[float, float]]:
    """For each tile the lower left corner, on the sheet, of room for its place: clear of lines, text and joining
    marks, as far up and left as can be; where all is taken, the place that fewest things run through."""
    beside = [shapely.box(x - 8, y - 8, x + 8, y + 8) for _, (x, y) in marks]
    tree = shapely.STRtree([*laid.things, *beside])
    wide, high = PLACE
    found = {}
    for tile in pages.tiles:
        right = tile.right - _INSIDE
        xs = np.arange(tile.left + _INSIDE, max(tile.left + _INSIDE + 0.1, right - wide), _STEP)
        ys = np.arange(tile.top - _INSIDE - high, tile.bottom + _INSIDE, -_STEP)
        if not len(ys):
            ys = np.array([tile.top - _INSIDE - high])
        y, x = (grid.ravel() for grid in np.meshgrid(ys, xs, indexing="ij"))
        rooms = shapely.box(x - _CLEAR, y - _CLEAR, x + wide + _CLEAR, y + high + _CLEAR)
        # The upper left corner first, then along the top and down the side.
        order = np.argsort((x - x.min()) + (y.max() - y), kind="stable")
        at = int(_emptiest(rooms, order, tree))
        found[tile] = (float(x[at]), float(y[at]))
    return found


def _emptiest(rooms: Any, order: Any, tree: shapely.STRtree) -> Any:
    """The first of `rooms`, in that `order`, that fewest things run through. All are asked for only where the first
    ones are not free."""
    hits = np.empty(len(rooms), dtype=int)
    asked = 0
    for end in (*_ASKED, len(order)):
        some = order[asked:end]
        if not len(some):
            break
        hits[some] = np.bincount(tree.query(rooms[some], predicate="intersects")[0], minlength=len(some))
        free = some[hits[some] == 0]
        if len(free):
            return free[0]
        asked = end
    return order[hits[order].argmin()]


def draw_place(
    canvas: Canvas,
    pages: PagePlan,
    each: Tile,
    place: tuple[float, float],
    origin: tuple[float, float],
    banner: str,
) -> None:
    """Write the tile's name, the plan and, at a class scale, what must be said on every page; `origin` is where the
    sheet's lies on the page."""
    x, y = place[0] + origin[0], place[1] + origin[1]
    if banner:
        size = min(1.6, 1.6 * PLACE[0] / text_width(banner, 1.6, bold=True))
        write(canvas, banner, x, y + 0.5, size, bold=True, grey=0.2)
        y += 2.6
    high = PLACE[1] - (2.6 if banner else 0.0)
    set_ink(canvas, Ink(0.3, _GREY))
    canvas.roundRect(x * MM, (y + high - 8) * MM, 12 * MM, 8 * MM, 2 * MM, stroke=1, fill=0)
    size = 4.0 if len(each.name) < 3 else 3.2
    write(canvas, each.name, x + 6, y + high - 4 - size / 2, size, bold=True, grey=_GREY, anchor="middle")
    _inset(canvas, pages, each, x + 14.5, y, high)


def _inset(canvas: Canvas, pages: PagePlan, each: Tile, x: float, y: float, high: float) -> None:
    tiles = pages.tiles
    left, right = min(tile.left for tile in tiles), max(tile.right for tile in tiles)
    bottom, top = min(tile.bottom for tile in tiles), max(tile.top for tile in tiles)
    scale = min(INSET[0] / (right - left), min(INSET[1], high) / (top - bottom))
    set_ink(canvas, Ink(0.12, _GREY))
    for tile in tiles:
        x0, y0, x1, y1 = tile_frame(pages, tile, 0.18 / scale)
        canvas.setFillGray(0.55 if tile == each else 1.0)
        canvas.rect(
            (x + (x0 - left) * scale) * MM,
            (y + high - (top - y0) * scale) * MM,
            (x1 - x0) * scale * MM,
            (y1 - y0) * scale * MM,
            stroke=1,
            fill=1 if tile == each else 0,
        )
