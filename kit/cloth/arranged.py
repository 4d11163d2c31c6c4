"""The ways to lay everything on the cloth: opened out flat, and folded lengthwise with what is single below.

An item is one laying of a part, a piece or a strip: its whole outline through one layer or through two, or its half at
the fold. What is found is a `Try`: where each item lies, in which of its ways, and in which order they were laid, which
is worth trying again for the same lesson in another size.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass, field
from typing import Any, Literal

from shapely import affinity

from kit.cloth.closer import closer, on_fine_columns
from kit.cloth.held import places_in
from kit.cloth.length_cost import COLUMN, FINE, ROW, ClothWay, pack_on_cloth, shortest
from kit.cloth.need import GAP, rows
from kit.cloth.parts import LayPart, turns
from kit.geometry import Point
from kit.pack.orders import chance, tries
from kit.pack.packing import Packed, Place
from kit.pausing import pause_here
from kit.piece.piece import Cloth
from kit.piece.strips import SELVEDGE

Fold = Literal["lengthwise", "flat", "part"]
Order = tuple[int, ...]
_FEWEST = 3
ORDERED, FEW = 3, 4
"""So many items lie well in one of their orders; of more than so many, orders get a share of the tries alone."""
ORDERS = 2
"""One of so many shapes that may be laid is laid in trying orders, where items are more than a few."""
MOVES = 1.0
"""Moves for each shape that may be laid, in moving apart what a shorter cloth has over one another."""
HINTED_MOVES = 150
"""And moves where orders from elsewhere are tried."""
AMONG, BEGINS = 5, 3
"""So many orders from elsewhere are tried as they are where they are many, and of so many the places are begun with."""
_FAR = 1.1
"""So many times as long as flat, a folded lay is no choice any more."""
HINTED = 1
"""In place of a number of shapes to lay: only the orders that did well elsewhere are tried."""


@dataclass(frozen=True)
class Item:
    """One laying: `part`, its half at the fold or its whole, through so many layers; `ways` are (turn, over)."""

    part: LayPart
    half: bool
    layers: int
    sides: tuple[str, ...]
    ways: tuple[tuple[int, bool], ...]

    def size(self, way: int) -> tuple[float, float]:
        """(across, along) the cloth in mm, lying in that of its ways."""
        x0, y0, x1, y1 = self.part.bounds(self.half, *self.ways[way])
        return x1 - x0, y1 - y0

    def outline(self, way: int, corner: Point) -> Any:
        """As a shapely polygon, the lower left corner of the box around it at `corner`."""
        x0, y0, _, _ = self.part.bounds(self.half, *self.ways[way])
        return affinity.translate(self.part.lying(self.half, *self.ways[way]), corner.x - x0, corner.y - y0)


Lying = tuple[Item, int, Point]
"""An item, the place of its way among its ways, and the lower left corner of the box around it."""


@dataclass(frozen=True)
class Try:
    """One way to lay everything: it takes `length` mm. `fold`: the whole length folded, opened out flat, or folded in
    part, up to `folded` mm of its length, and opened out beyond. `orders` are those in which the items of its one or
    two parts were packed; none where their boxes lie in rows."""

    length: float
    fold: Fold
    lying: tuple[Lying, ...]
    folded: float = 0.0
    orders: tuple[Order, ...] = ()

    @property
    def area(self) -> float:
        """mm² of cloth that is cut out."""
        return sum(item.part.area(item.half) * item.layers for item, _, _ in self.lying)


Hints = tuple[Sequence[Order], ...]
"""Orders that did well, for each part of a way to lay."""


@dataclass(frozen=True)
class Arranging:
    """What is cut from one cloth, ready to be laid at any width. `ways` and `finer` keep what has been worked out: how
    each piece may lie, and orders laid on fine columns."""

    cloth: Cloth
    nap: bool
    parts: tuple[LayPart, ...]
    ways: dict[tuple[Any, ...], ClothWay] = field(default_factory=dict, compare=False, repr=False)
    finer: dict[tuple[Any, ...], Packed | None] = field(default_factory=dict, compare=False, repr=False)

    # ---- the two ways to fold ---------------------------------------------------------------------------------

    def flat(self, width: float, placed: int, hints: Hints = (), seed: int = 1) -> Try:
        """Opened out, on cloth `width` mm wide; `placed` says how many shapes may be laid in trying, 0 that only their
        boxes are laid in rows. `hints` are tried besides; another `seed` tries other orders."""
        items = self.flat_items()
        lying, length, order = self._lay_out(items, SELVEDGE, width - SELVEDGE, 0.0, placed, hints[:1], seed)
        return Try(length, "flat", lying, orders=(order,) if order else ())

    def folded(self, width: float, placed: int, hints: Hints = (), seed: int = 1, flat: float = math.inf) -> Try | None:
        """Folded, with what is single below it; None when a piece is too wide for half the cloth or nothing is cut
        from both layers. `placed`, `hints` and `seed` as for `flat`. Opened out it takes so much, and where folded it
        takes far more, nothing is moved to make it shorter: nobody would cut it so."""
        doubled, single = self.folded_items()
        half = width / 2 - SELVEDGE
        if not doubled or any(item.part.width(item.half) > half + 1e-6 for item in doubled):
            return None
        most = _FAR * flat
        below = max((item.size(0)[1] + GAP for item in single), default=0.0)
        lying, length, order = self._lay_out(doubled, 0.0, half, 0.0, placed, hints[:1], seed, most - below)
        if not single:
            return Try(length, "lengthwise", lying, length, (order,) if order else ())
        begin = length + GAP
        rest, end, other = self._lay_out(single, SELVEDGE, width - SELVEDGE, begin, placed, hints[1:], seed, most)
        return Try(end, "part", (*lying, *rest), length, (order, other) if order and other else ())

    def flat_items(self) -> list[Item]:
        """What lies on cloth that is opened out."""
        return [self._single(part, copy) for part in self.parts for copy in range(len(part.copies))]

    def folded_items(self) -> tuple[list[Item], list[Item]]:
        """What lies on folded cloth, and what is single below it."""
        doubled: list[Item] = []
        single: list[Item] = []
        for part in self.parts:
            count = len(part.copies)
            if part.half:
                # Turned round, a half has its fold on the wrong side; its paper turned over as well, it lies at the
                # fold again.
                ways = tuple((turn, part.over != (turn == 180)) for turn in turns(self.nap))
                doubled += [Item(part, True, 2, ("right", "left"), ways)] * count
                continue
            # Each laying on double cloth gives two; an odd one over, or what gives no pair, is cut from one layer
            # below.
            pairs = count // 2 if part.doubles else 0
            doubled += [self._double(part, pair) for pair in range(pairs)]
            single += [self._single(part, copy) for copy in range(2 * pairs, count)]
        return doubled, single

    def _single(self, part: LayPart, copy: int) -> Item:
        side = part.copies[copy]
        sides = ("right", "left") if part.half else (side,)
        return Item(part, False, 1, sides, tuple((turn, side == "left") for turn in turns(self.nap)))

    def _double(self, part: LayPart, pair: int) -> Item:
        over = (False, True) if part.paired else (False,)
        ways = tuple((turn, flip) for flip in over for turn in turns(self.nap))
        return Item(part, False, 2, part.copies[2 * pair : 2 * pair + 2], ways)

    # ---- laying -----------------------------------------------------------------------------------------------

    def _lay_out(
        self,
        items: Sequence[Item],
        left: float,
        right: float,
        begin: float,
        placed: int,
        hints: Hints,
        seed: int,
        most: float = math.inf,
    ) -> tuple[tuple[Lying, ...], float, Order]:
        """`items` between `left` and `right` from `begin` on: where each lies, where the last one ends, and the order
        they were packed in. Without any shapes to try (`placed` 0) their boxes are laid in rows."""
        if not placed:
            sizes = []
            for item in items:
                x0, y0, x1, y1 = item.part.bounds(item.half)
                sizes.append((y1 - y0, x1 - x0, item.half))
            corners = [Point(left + x, begin + y) for x, y in rows(sizes, right - left)]
            return *_ended(items, [0] * len(items), corners), ()
        single = not any(item.layers == 2 for item in items)
        off = 0.0 if single else GAP  # what is not on the fold keeps off it
        ways = self._ways(items, off, COLUMN)
        areas = [item.part.area(item.half) for item in items]
        across = right - left + GAP
        longest = max((each[0].footprint.rows for each in ways), default=0)
        share = placed if len(items) <= FEW else placed // ORDERS
        count = 0 if placed == HINTED else tries(share, len(items), _FEWEST)
        told = (hints[0] if hints else ())[: None if len(items) <= FEW else AMONG]
        found = shortest(ways, areas, across, count, longest, told, seed)
        if found is None:
            return self._lay_out(items, left, right, begin, 0, (), seed)
        corner = Point(left - GAP / 2, begin)
        lying = [(*_lying(items, ways, found, corner), found.order)]
        # Many orders are tried on coarse columns and only the best one again on fine columns, which cost several
        # times as much. Where the cloth is no longer than its longest piece, nothing is to be gained.
        if found.rows > longest:
            finer = self._ways(items, off, FINE)
            packed = self._on_fine(items, finer, found, across, off) or on_fine_columns(found)
            if len(items) > ORDERED and lying[0][1] <= most:
                moves = HINTED_MOVES if placed == HINTED else int(MOVES * placed)
                begins = self._begins(items, hints)
                packed = closer(finer, packed, across, moves, longest, chance(seed), begins)
            lying.append((*_lying(items, finer, packed, corner), packed.order))
        return min(lying, key=lambda each: each[1])

    def _on_fine(
        self, items: Sequence[Item], finer: Sequence[Sequence[ClothWay]], found: Packed, across: float, off: float
    ) -> Packed | None:
        """The same order laid on fine columns; None where it is longer so."""
        same = (across, off, *((item.part.name, item.half, item.ways) for item in items), found.order)
        if same not in self.finer:
            pause_here()
            self.finer[same] = pack_on_cloth(finer, found.order, across, found.rows)
        return self.finer[same]

    def _begins(self, items: Sequence[Item], hints: Hints) -> list[dict[int, Place]]:
        """The places that the first of the orders tell."""
        counts = [len(item.ways) for item in items]
        told = (places_in(order, counts) for order in (hints[0] if hints else ()) if len(order) == len(items))
        return [places for places in told if places][:BEGINS]

    def _ways(self, items: Sequence[Item], off: float, column: float) -> list[list[ClothWay]]:
        """Each item's ways, marked on columns of so many mm; what is not on the fold keeps `off` mm from it."""
        return [[self._way(item, way, off, column) for way in item.ways] for item in items]

    def _way(self, item: Item, way: tuple[int, bool], off: float, column: float) -> ClothWay:
        key = (item.part.name, item.half, *way, off, column)
        if key not in self.ways:
            shape = item.part.lying(item.half, *way)
            self.ways[key] = ClothWay.of(shape, GAP, column, tied=item.half, off=off)
        return self.ways[key]


def _lying(
    items: Sequence[Item], ways: Sequence[Sequence[ClothWay]], found: Packed, corner: Point
) -> tuple[tuple[Lying, ...], float]:
    """Each item as it was packed on ground that begins at `corner`, all moved up so that the first begins there; and
    where the last one ends."""
    corners = []
    for item, each, (way, row, column) in zip(items, ways, found.places, strict=True):
        x0, y0, _, _ = item.part.bounds(item.half, *item.ways[way])
        marked = each[way]
        x = corner.x + column * marked.column + x0 - marked.footprint.left
        corners.append(Point(x, corner.y + row * ROW + y0 - marked.footprint.low))
    up = min((each.y for each in corners), default=corner.y) - corner.y
    return _ended(items, [way for way, _, _ in found.places], [Point(each.x, each.y - up) for each in corners])


def _ended(items: Sequence[Item], which: Sequence[int], corners: Sequence[Point]) -> tuple[tuple[Lying, ...], float]:
    """Each item with its way and its corner, and where the last one ends."""
    end = 0.0
    for item, way, corner in zip(items, which, corners, strict=True):
        _, y0, _, y1 = item.part.bounds(item.half, *item.ways[way])
        end = max(end, corner.y + y1 - y0)
    return tuple(zip(items, which, corners, strict=True)), end
