"""What it costs to lie somewhere on a length of cloth: a piece shall end as soon as it can, so that little is bought.

The packing is `kit.pack`'s. Its ground is the cloth, or half of it where it is folded, with columns of 8 mm across and
rows of 1 mm along: across the cloth a few millimetres more or less change little, along it every one is paid for. What
the cloth asks of a piece is settled before: its grain by turning its outline (`kit.cloth.parts`), a nap or the twins of
a pair by the ways it is given (`kit.cloth.lay`), the fold by tying it to the first column.

One packing is soon made and rarely the best, so `shortest` makes many in different orders. The first ones are those
that do well by experience (large pieces first, long ones first, what is on the fold first); the others are near the
best one yet, which is left for a better one whenever one turns up. Where columns are narrower, slants fit closer and
what only just fails to go side by side does; that costs as many times more as there are more columns, so only the best
order is laid so again.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from functools import cached_property
from random import Random
from typing import Any

from kit.cloth.held import held
from kit.pack.footprint import Footprint
from kit.pack.orders import attempts, chance, near
from kit.pack.packing import Fit, Packed, pack
from kit.pack.taken import Taken

COLUMN = 8.0
FINE = 4.0
"""mm: columns of the ground on which many orders are tried, and of that on which the best one is laid again."""
ROW = 1.0
_MOVED, _ALSO_HELD = 0.55, 0.3
"""Of the tries: those that change the order, and of these those that hold a shape to a way or a side besides."""
MARGIN = 0.15  # mm a polygon may lie inside the curves it stands for, and an arc of a grown corner inside its circle


@dataclass(frozen=True, eq=False)
class ClothWay:
    """One way for a shape to lie: its `footprint`, grown by half a gap, on columns `column` mm wide; `width` is that of
    the grown shape in mm, which may be less than its columns. `tied`: it lies at the fold, in the first column.
    Otherwise it keeps `off` mm from there. `rightmost`: of places as near the beginning the one farthest right.
    `about`: it begins so many mm across, or at most `COLUMN` mm beside that."""

    footprint: Footprint
    width: float
    column: float = COLUMN
    tied: bool = False
    off: float = 0.0
    rightmost: bool = False
    about: float | None = None

    @classmethod
    def of(cls, shape: Any, gap: float, column: float = COLUMN, *, tied: bool = False, off: float = 0.0) -> ClothWay:
        """`shape` (a shapely polygon, mm, y along the cloth) grown by half the `gap` (mm) and marked on the cloth. A
        tied one begins half a gap beside its own edge, exactly, so that the edge comes to lie on the fold.

        >>> import shapely
        >>> way = ClothWay.of(shapely.box(0, 0, 70, 300), gap=10.0)
        >>> way.footprint.columns, way.footprint.rows, round(way.width, 1)
        (11, 311, 80.3)
        """
        grown = shape.buffer(gap / 2 + MARGIN, quad_segs=6)
        left, low, right, high = grown.bounds
        if tied:
            left = shape.bounds[0] - gap / 2
        footprint = Footprint.of(grown, (column, ROW), (left, low, right, high))
        return cls(footprint, right - left, column, tied, off)

    def columns(self, across: float) -> Sequence[int]:
        """The columns it may begin in, on a strip `across` mm wide, in the order in which they are asked."""
        last = math.floor((across - self.width) / self.column + 1e-6)
        found = range(min(0, last) + 1) if self.tied else range(math.ceil(self.off / self.column), last + 1)
        if self.about is not None and found:
            place, beside = round(self.about / self.column), int(COLUMN / self.column)
            near = sorted(range(-beside, beside + 1), key=abs)
            return list(dict.fromkeys(min(max(place + each, found[0]), found[-1]) for each in near))
        return found[::-1] if self.rightmost else found

    @cached_property
    def to_right(self) -> ClothWay:
        """The same, lying at the right."""
        return replace(self, rightmost=True)

    def near(self, about: float) -> ClothWay:
        """The same, beginning `about` so many mm across."""
        return replace(self, about=about)


class LengthCost:
    """A `kit.pack.packing.Cost`: the row in which a shape ends, on a strip `across` mm wide; of equal ones the leftmost
    column, or the rightmost for what lies so. Nothing may end after row `at_most`."""

    def __init__(self, across: float, at_most: int) -> None:
        self._across = across
        self._at_most = at_most

    def best(self, way: ClothWay, taken: Taken, than: Fit | None) -> Fit | None:
        rows = way.footprint.rows
        end = self._at_most + 1 if than is None else than.worth
        found = taken.soonest(way.footprint, way.columns(self._across), end - rows)
        return None if found is None else Fit(found[0] + rows, *found)

    def lay(self, way: ClothWay, fit: Fit) -> bool:
        return True


def pack_on_cloth(
    shapes: Sequence[Sequence[ClothWay]], order: Sequence[int], across: float, at_most: int | None = None
) -> Packed | None:
    """Lay one of the ways of each of `shapes` on a strip of cloth, in `order`. `across` is its width in mm and a gap
    more, since shapes are grown by half a gap on either side; all ways have the same columns. None when one is too
    wide, or when more than `at_most` rows (mm) would be used."""
    if at_most is None:
        at_most = sum(max(way.footprint.rows for way in ways) for ways in shapes)
    column, count = shapes[0][0].column if shapes else COLUMN, len(shapes)
    laid, skipped = list(shapes), [0] * count
    for number in order:
        each = number % count
        skipped[each], laid[each] = _held(number // count, shapes[each])
    plain = [number % count for number in order]
    found = pack(laid, plain, math.ceil(across / column) + 1, LengthCost(across, at_most))
    if found is None or plain == list(order):
        return found
    places = tuple((way + skip, row, at) for (way, row, at), skip in zip(found.places, skipped, strict=True))
    return replace(found, places=places, order=tuple(order))


def _held(choice: int, ways: Sequence[ClothWay]) -> tuple[int, Sequence[ClothWay]]:
    """Those of the `ways` to which an order holds a shape, and how many come before them."""
    says = held(choice, len(ways))
    skipped, some = (0, ways) if says.way is None else (says.way, ways[says.way : says.way + 1])
    if says.place is not None:
        return skipped, [some[0].near(says.place[2] * FINE)]
    return skipped, [each.to_right for each in some] if says.rightmost else some


def shortest(
    shapes: Sequence[Sequence[ClothWay]],
    areas: Sequence[float],
    across: float,
    tries: int,
    least: int = 0,
    hints: Sequence[Sequence[int]] = (),
    seed: int = 1,
) -> Packed | None:
    """The shortest packing of so many `tries`: shapes in the order of their `areas`, lengths and widths, and in the
    orders of `hints` (not counted as tries), then in orders near the best one yet. Stops when no more than `least`
    rows are used. `across` as in `pack_on_cloth`; another `seed` tries other orders. None when a shape is too wide.

    >>> import shapely
    >>> boxes = [shapely.box(0, 0, *size) for size in ((300, 400), (280, 250), (280, 150))]
    >>> ways = [[ClothWay.of(box, gap=10.0)] for box in boxes]
    >>> found = shortest(ways, [box.area for box in boxes], across=620.0, tries=5)
    >>> found.rows, [row for _, row, _ in found.places]
    (422, [0, 0, 261])
    """
    if not shapes:
        return Packed((), 0, ())
    random = chance(seed)
    first = [*(tuple(hint) for hint in hints if len(hint) == len(shapes)), *_likely(shapes, areas)]
    best: Packed | None = None

    def orders() -> Iterator[tuple[int, ...]]:
        for number in range(tries + len(hints)):
            if number < len(first):
                yield first[number]
            else:
                yield _near(best.order if best else range(len(shapes)), shapes, random)

    for order in attempts(orders()):
        found = pack_on_cloth(shapes, order, across, None if best is None else best.rows)
        if found is None:
            if best is None:
                return None
            continue
        if best is None or _worth(found, areas) < _worth(best, areas):
            best = found
        if best.rows <= least:
            break
    return best


def _near(order: Sequence[int], shapes: Sequence[Sequence[ClothWay]], chance: Random) -> tuple[int, ...]:
    """An order near this one: two shapes changed about, one taken elsewhere, or one held to a way or a side."""
    moved = chance.random() < _MOVED
    changed = list(near(order, chance) if moved else order)
    if not moved or chance.random() < _ALSO_HELD:
        at = chance.randrange(len(changed))
        each = changed[at] % len(shapes)
        changed[at] = each + len(shapes) * chance.randrange(2 * (len(shapes[each]) + 1))
    return tuple(changed)


def _likely(shapes: Sequence[Sequence[ClothWay]], areas: Sequence[float]) -> list[tuple[int, ...]]:
    """Orders that do well by experience."""
    places = range(len(shapes))
    loose = [not ways[0].tied for ways in shapes]  # what is tied to the fold comes before what is not
    rows = [ways[0].footprint.rows for ways in shapes]
    keys: tuple[list[tuple[float, ...]], ...] = (
        [(-areas[at], at) for at in places],
        [(loose[at], -rows[at], -areas[at], at) for at in places],
        [(loose[at], -areas[at], at) for at in places],
        [(-rows[at], -areas[at], at) for at in places],
        [(loose[at], -shapes[at][0].width, -areas[at], at) for at in places],
    )
    return [tuple(sorted(places, key=key.__getitem__)) for key in keys]


def _worth(found: Packed, areas: Sequence[float]) -> tuple[float, float]:
    """Shorter is better; of equals the one that has its cloth near the beginning."""
    return found.rows, sum(row * area for (_, row, _), area in zip(found.places, areas, strict=True))
