"""Words of a piece that would be cut by the joins of pages are written again where one page holds them whole.

Pieces are lettered before anyone knows how they will lie on pages. Once they lie there, a piece whose words run over a
join is lettered anew with the joins as lines that no text may cross. What fits on no page stays where it was.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from typing import Any

import numpy as np
import shapely

from kit.geometry import Line, Point
from kit.lesson.pattern import Pattern
from kit.paper.nested import Nest, NestedPiece, lettered
from kit.paper.pages import plan
from kit.paper.plan import PagePlan
from kit.paper.request import PageRequest
from kit.paper.sheet import CLASS_TEXT, Placement, Sheet, text_corners
from kit.picture.drawing import Item, Label, Stroke
from kit.picture.fitted import PieceRoom
from kit.picture.piece_sheet import piece_words
from kit.piece.allowance import cut_line, has_allowances

_MORE = 1.0  # mm²
_BESIDE = 2.5  # mm that the name of a size in its line may stand out beyond it, which takes no more paper


def words_whole(laid: Sheet, pattern: Pattern, pages: PagePlan, request: PageRequest) -> Sheet:
    """`laid` with every piece's words off the joins of `pages`, where there is room. The paper of no piece changes, so
    the pages stay as planned."""
    if len(pages.tiles) < 2:
        return laid
    return replace(laid, placements=tuple(_relettered(each, pattern, pages, request) for each in laid.placements))


def nest_whole(made: Nest, laid: Sheet, pages: PagePlan, request: PageRequest) -> tuple[Nest, Sheet]:
    """The same for several sizes over one another, which lie on the sheet as `laid`: the words of each piece, and the
    orders of its bunched lines. The name of a size in its line may run over a join; it stands there again."""
    if len(pages.tiles) < 2 or not made.several:
        return made, laid
    pieces, placements = [], []
    for each, placed in zip(made.pieces, laid.placements, strict=True):
        joins = _joins(placed, pages)
        cut = _cut(_led(each), joins)
        if cut:
            anew = lettered(each, made, [_stroke(join) for join in joins])
            changed = replace(placed, items=anew.items)
            fewer = _cut(_led(anew), joins) < cut and _said(anew.text) >= _said(each.text)
            if fewer and placed.ink.buffer(_BESIDE).covers(changed.ink):
                each, placed = anew, changed
        pieces.append(each)
        placements.append(placed)
    whole = replace(laid, placements=tuple(placements))
    if _pages_of(plan(whole, pages.paper, request)) != _pages_of(pages):
        return made, laid
    return replace(made, pieces=tuple(pieces)), whole


def _pages_of(pages: PagePlan) -> set[tuple[int, int]]:
    return {(each.row, each.column) for each in pages.tiles}


def _led(each: NestedPiece) -> list[Item]:
    return [*each.text, *(item for part in each.orders for item in part.items)]


def _relettered(placed: Placement, pattern: Pattern, pages: PagePlan, request: PageRequest) -> Placement:
    joins = _joins(placed, pages)
    cut = _cut(placed.items, joins)
    if not cut:
        return placed
    piece = placed.piece
    lines = [item for item in placed.items if _is_line(item)]
    inner = piece.outline.polygon(0.2).buffer(0)
    whole = has_allowances(piece)
    area = shapely.Polygon([(p.x, p.y) for p in cut_line(piece).points(0.2)]).buffer(0) if whole else inner
    letters = 1.0 if request.full_size else CLASS_TEXT / placed.scale
    room = PieceRoom(area, inner, [*lines, *(_stroke(join) for join in joins)], letters)
    items = (*lines, *piece_words(piece, pattern, room, pattern.lesson.units, letters))
    # Fewer texts cut, nothing said less, and no paper that the layout has not kept free, or all stays as it was.
    if _cut(items, joins) >= cut or _said(items) < _said(placed.items):
        return placed
    changed = replace(placed, items=items)
    # A line as short as nothing is none once it is turned on the sheet; the GEOS of shapely 2.0.6 takes offence at it.
    more = shapely.make_valid(changed.ink).difference(shapely.make_valid(placed.ink))
    return changed if more.area < _MORE else placed


def _joins(placed: Placement, pages: PagePlan) -> list[Any]:
    """The joins that run through the piece, as shapely lines in the piece's own millimetres."""
    a, b, d, e, x, y = placed.matrix
    back = np.linalg.inv(np.array([[a, b], [d, e]]))
    lines = []
    for before, after in pages.borders:
        if before.row == after.row:
            ends = [(after.left, before.bottom), (after.left, before.top)]
        else:
            ends = [(before.left, after.top), (before.right, after.top)]
        lines.append(shapely.LineString([back @ (np.array(end) - (x, y)) for end in ends]))
    box = shapely.box(*shapely.Polygon([(p.x, p.y) for p in placed.corners]).bounds)
    return [line for line in lines if line.intersects(box)]


def _cut(items: Sequence[Item], joins: Sequence[Any]) -> int:
    """How many texts run over a join."""
    labels = [item for item in items if isinstance(item, Label)]
    if not labels or not joins:
        return 0
    return int(shapely.intersects(shapely.polygons(text_corners(labels)), shapely.MultiLineString(joins)).sum())


def _stroke(join: Any) -> Stroke:
    (x0, y0), (x1, y1) = join.coords
    return Stroke((Line(Point(x0, y0), Point(x1, y1)),), "cut")


def _is_line(item: Item) -> bool:
    return not isinstance(item, Label) and not (isinstance(item, Stroke) and item.role == "leader")


def _said(items: Sequence[Item]) -> int:
    """How many letters and figures are written."""
    return sum(character.isalnum() for item in items if isinstance(item, Label) for character in item.text)
