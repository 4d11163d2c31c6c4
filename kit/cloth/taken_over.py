"""The layout of a larger size taken over for a smaller one.

Each piece of the smaller size is set into the box that the larger one filled, at one of nine places in it (its corners,
the middles of its sides, its middle). Where it lies within the larger outline there, it is free, for that one was.
Where it does not, as at a neckline that is cut deeper in larger sizes, it must keep its distance from what is set
already and from the larger outlines of what is not.
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import product
from typing import Any

from kit.cloth.arranged import Arranging, Item, Lying, Try
from kit.cloth.need import GAP
from kit.geometry import Point
from kit.piece.strips import SELVEDGE

_WITHIN = 0.05  # mm a polygon may lie off the curves it stands for
_SHARES = tuple(product((0.0, 1.0, 0.5), repeat=2))


def taken_over(table: Arranging, larger: Try, width: float) -> Try | None:
    """What is cut from `table` as the `larger` size lies on cloth `width` mm wide; None where it does not go so."""
    if larger.fold == "flat":
        items, doubled = table.flat_items(), 0
    else:
        pairs, singles = table.folded_items()
        items, doubled = [*pairs, *singles], len(pairs)
    if [(item.part.name, item.half, item.ways) for item in items] != [
        (item.part.name, item.half, item.ways) for item, _, _ in larger.lying
    ]:
        return None
    outlines = [item.outline(way, corner) for item, way, corner in larger.lying]
    found: list[Lying] = []
    for at, item in enumerate(items):
        others = [outline for number, outline in enumerate(outlines) if number != at]
        room = (0.0, width / 2 - SELVEDGE) if at < doubled else (SELVEDGE, width - SELVEDGE)
        begin, end = (0.0, larger.folded) if at < doubled else (larger.folded and larger.folded + GAP, larger.length)
        place = _place(item, larger.lying[at], outlines[at], others, (room[0], begin, room[1], end))
        if place is None:
            return None
        found.append(place)
        outlines[at] = item.outline(place[1], place[2])
    length = max((corner.y + item.size(way)[1] for item, way, corner in found), default=0.0)
    folded = length if larger.fold == "lengthwise" else larger.folded
    return Try(length, larger.fold, tuple(found), folded, larger.orders)


def _place(
    item: Item, model: Lying, within: Any, others: Sequence[Any], room: tuple[float, float, float, float]
) -> Lying | None:
    """A free place for `item` about where the larger `model` lies, within its outline if that can be."""
    larger, way, corner = model
    (across, along), (wide, high) = larger.size(way), item.size(way)
    grown = within.buffer(_WITHIN)
    corners = []
    for x, y in _SHARES:
        if item.half and x:
            continue  # at the fold
        left = 0.0 if item.half else corner.x + x * (across - wide)
        corners.append(Point(left, corner.y + y * (along - high)))
    for at in corners:
        if grown.covers(item.outline(way, at)):
            return item, way, at
    for at in corners:
        if (
            at.x < room[0] - 1e-6
            or at.x + wide > room[2] + 1e-6
            or at.y < room[1] - 1e-6
            or at.y + high > room[3] + 1e-6
        ):
            continue
        outline = item.outline(way, at)
        if all(outline.distance(other) >= GAP - 1e-6 for other in others):
            return item, way, at
    return None
