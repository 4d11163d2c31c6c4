"""The lay plan: where each piece and strip lies on the cloth, with its true cut outline and on its grain.

Two ways to lay are tried: the cloth opened out flat, and folded lengthwise with right sides together (pieces on the
fold at the fold, pairs cut through both layers), what is cut single lying on the opened cloth below. Each is packed by
`kit.cloth.length_cost` and, as a bound, laid in the simple rows of `kit.cloth.need`; the shortest counts, and of lays
that cost the same in the shop the folded one, which is quicker to cut. Places are in mm: x across the cloth (from the
fold where it is folded), y along it, the tops of the pieces upward unless they are turned.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass, field, replace
from typing import Any, Literal

from kit.cloth.cut_list import INTERFACING_WIDTH, boxes
from kit.cloth.length_cost import COLUMN, FINE, ROW, ClothWay, pack_on_cloth, shortest
from kit.cloth.need import GAP, Box, need, rows
from kit.cloth.parts import Part, motion_of, moved, napped, parts, turns
from kit.errors import KitError
from kit.geometry import Curve, Motion, Point, Vector
from kit.lesson.pattern import Pattern
from kit.pack.orders import tries
from kit.pack.packing import Packed
from kit.pausing import pause_here
from kit.piece.piece import Cloth
from kit.piece.strips import SELVEDGE

Fold = Literal["lengthwise", "flat", "part"]
CLOTHS: tuple[Cloth, ...] = ("main", "lining", "interfacing")
_FEWEST, _HINTS = 3, 6
PLACED = 600
"""Shapes laid in all the tries of one way to fold."""
HINTED = 1
"""In place of such a number: only the orders that did well elsewhere are tried."""
_SHOP = 100.0  # mm: cloth is sold by tenths of a metre


@dataclass(frozen=True)
class Placed:
    """One piece or strip on the cloth. `copy` counts those of the same name from 1; `sides` are the halves it gives
    ("right" as drafted, "left" mirrored). `at` is the lower left corner of the box around it, `turn` is 0 or 180
    degrees; `turned_over`: its paper lies printed side down. It is cut through so many `layers`, which gives `gives`
    cut pieces. `opened`: it lies on cloth that is opened out, one layer. `outline` is its cut line on the cloth (half
    of it `on_fold`, which lies at x = 0), `grain` its grainline there, `axis` the fold line of a piece whose paper is
    a half but which is laid whole."""

    piece: str
    title: str
    number: int
    kind: Literal["piece", "strip"]
    copy: int
    sides: tuple[str, ...]
    at: Point
    turn: int
    turned_over: bool
    on_fold: bool
    layers: int
    gives: int
    opened: bool
    outline: tuple[Curve, ...]
    grain: tuple[Point, Point] | None = None
    axis: tuple[Point, Point] | None = None


@dataclass(frozen=True)
class Lay:
    """All of one `cloth` laid at a `width`: it takes `length` mm. `fold`: the whole length folded, opened out flat, or
    folded in part, up to `folded` mm of its length, and opened out beyond. `waste` is the share (0..1) of the cloth
    that no piece covers. `nap`: no piece is turned round."""

    cloth: Cloth
    width: float
    length: float
    fold: Fold
    placed: tuple[Placed, ...]
    waste: float
    folded: float = 0.0
    nap: bool = False


class TooNarrow(KitError):
    """A piece is wider than the cloth."""


def lays(pattern: Pattern, placed: int = PLACED) -> tuple[Lay, ...]:
    """The lay of each cloth at each width it is sold in, main cloth first, interfacing at its usual width. A width that
    is too narrow for a piece has none. Raises `KitError` when a piece has no allowances yet."""
    found: list[Lay] = []
    for cloth in CLOTHS:
        table = CuttingTable.of(pattern, cloth)
        if table.rough:
            for width in widths(pattern, cloth):
                try:
                    found.append(table.lay(width, placed))
                except TooNarrow:
                    continue
    return tuple(found)


def lay(pattern: Pattern, cloth: Cloth, width: float, placed: int = PLACED) -> Lay:
    """The best lay found of what is cut from `cloth` on cloth `width` mm wide; `placed` says how many shapes may be
    laid in trying. Raises `TooNarrow`, a `KitError`, when a piece is wider than the cloth."""
    return CuttingTable.of(pattern, cloth).lay(width, placed)


def widths(pattern: Pattern, cloth: Cloth) -> tuple[float, ...]:
    """The widths (mm) in which `cloth` is bought."""
    return (INTERFACING_WIDTH,) if cloth == "interfacing" else pattern.lesson.cloth_widths


@dataclass(frozen=True)
class _Item:
    """One laying: `part`, its half at the fold or its whole, through so many layers; `ways` are (turn, over)."""

    part: Part
    half: bool
    layers: int
    sides: tuple[str, ...]
    ways: tuple[tuple[int, bool], ...]


_Lying = tuple[_Item, int, Point]
"""An item, the place of its way among its ways, and the lower left corner of the box around it."""


@dataclass(frozen=True)
class _Try:
    """One way to lay everything: `length`, `fold` and `folded` as a `Lay` has them."""

    length: float
    fold: Fold
    lying: tuple[_Lying, ...]
    folded: float = 0.0


Hints = dict[tuple[Cloth, float, str], list[tuple[int, ...]]]
"""Orders of laying that did well, by cloth, width of the room, and how it is folded."""


@dataclass(frozen=True)
class CuttingTable:
    """What is cut from one cloth, ready to be laid at any width; `rough` are its bounding boxes. `ways` and `finer`
    keep what has been worked out: how each piece may lie, and orders laid on fine columns. `hints` are orders that did
    well."""

    cloth: Cloth
    nap: bool
    parts: tuple[Part, ...]
    rough: tuple[Box, ...]
    ways: dict[tuple[Any, ...], ClothWay] = field(default_factory=dict, compare=False)
    finer: dict[tuple[Any, ...], Packed | None] = field(default_factory=dict, compare=False)
    hints: Hints = field(default_factory=dict, compare=False)

    @classmethod
    def of(cls, pattern: Pattern, cloth: Cloth, hints: Hints | None = None) -> CuttingTable:
        """`hints` are shared with the same lesson in other sizes: orders that did well are tried again. Raises
        `KitError` when a piece has no allowances yet."""
        return cls(
            cloth,
            napped(pattern, cloth),
            parts(pattern, cloth),
            boxes(pattern, cloth),
            hints={} if hints is None else hints,
        )

    def lay(self, width: float, placed: int = PLACED) -> Lay:
        """The best lay found at this `width`. Raises `TooNarrow`."""
        try:
            need(self.rough, width)
        except KitError as error:
            raise TooNarrow(error.told.says, where=error.told.at, do=error.told.can) from None
        # Boxes laid in rows need no search, and their length can always be reached: what was packed counts only where
        # it is no longer than that.
        simple = [self._flat(width, 0), self._folded(width, 0)]
        bound = min(made.length for made in simple if made is not None)
        found = [made for made in (*simple, self._flat(width, placed), self._folded(width, placed)) if made is not None]
        best = min((made for made in found if made.length <= bound + 1e-6), key=_worth)
        return self._made(best, width)

    def _made(self, best: _Try, width: float) -> Lay:
        area = sum(item.part.area(item.half) * item.layers for item, _, _ in best.lying)
        waste = 1.0 - area / (width * best.length) if best.length else 0.0
        laid = _numbered([_settled(*each) for each in best.lying])
        return Lay(self.cloth, width, best.length, best.fold, laid, waste, best.folded, self.nap)

    # ---- the two ways to fold ---------------------------------------------------------------------------------

    def _flat(self, width: float, placed: int) -> _Try:
        items = [self._single(part, copy) for part in self.parts for copy in range(len(part.copies))]
        lying, length = self._lay_out(items, SELVEDGE, width - SELVEDGE, 0.0, placed)
        return _Try(length, "flat", lying)

    def _folded(self, width: float, placed: int) -> _Try | None:
        """Folded, with what is single below it; None when a piece is too wide for half the cloth or nothing is cut
        from both layers."""
        doubled: list[_Item] = []
        single: list[_Item] = []
        for part in self.parts:
            count = len(part.copies)
            if part.half:
                # Turned round, a half has its fold on the wrong side; its paper turned over as well, it lies at the
                # fold again.
                ways = tuple((turn, part.over != (turn == 180)) for turn in turns(self.nap))
                doubled += [_Item(part, True, 2, ("right", "left"), ways)] * count
                continue
            # Each laying on double cloth gives two; an odd one over, or what gives no pair, is cut from one layer
            # below.
            pairs = count // 2 if part.doubles else 0
            doubled += [self._double(part, pair) for pair in range(pairs)]
            single += [self._single(part, copy) for copy in range(2 * pairs, count)]
        half = width / 2 - SELVEDGE
        if not doubled or any(item.part.width(item.half) > half + 1e-6 for item in doubled):
            return None
        lying, length = self._lay_out(doubled, 0.0, half, 0.0, placed)
        if not single:
            return _Try(length, "lengthwise", lying, length)
        below, end = self._lay_out(single, SELVEDGE, width - SELVEDGE, length + GAP, placed)
        return _Try(end, "part", (*lying, *below), length)

    def _single(self, part: Part, copy: int) -> _Item:
        side = part.copies[copy]
        sides = ("right", "left") if part.half else (side,)
        return _Item(part, False, 1, sides, tuple((turn, side == "left") for turn in turns(self.nap)))

    def _double(self, part: Part, pair: int) -> _Item:
        over = (False, True) if part.paired else (False,)
        ways = tuple((turn, flip) for flip in over for turn in turns(self.nap))
        return _Item(part, False, 2, part.copies[2 * pair : 2 * pair + 2], ways)

    # ---- laying -----------------------------------------------------------------------------------------------

    def _lay_out(
        self, items: Sequence[_Item], left: float, right: float, begin: float, placed: int
    ) -> tuple[tuple[_Lying, ...], float]:
        """`items` between `left` and `right` from `begin` on: where each lies, and where the last one ends. Without
        any shapes to try (`placed` 0) their boxes are laid in rows."""
        if not placed:
            sizes = []
            for item in items:
                x0, y0, x1, y1 = item.part.bounds(item.half)
                sizes.append((y1 - y0, x1 - x0, item.half))
            corners = [Point(left + x, begin + y) for x, y in rows(sizes, right - left)]
            return _ended(items, [0] * len(items), corners)
        single = not any(item.layers == 2 for item in items)
        off = 0.0 if single else GAP  # what is not on the fold keeps off it
        ways = self._ways(items, off, COLUMN)
        areas = [item.part.area(item.half) for item in items]
        across = right - left + GAP
        longest = max((each[0].footprint.rows for each in ways), default=0)
        key = (self.cloth, across, "single" if single else "double")
        known = self.hints.setdefault(key, [])
        count = 0 if placed == HINTED else tries(placed, len(items), _FEWEST)
        found = shortest(ways, areas, across, count, longest, known)
        if found is None:
            return self._lay_out(items, left, right, begin, 0)
        if found.order not in known:
            known[:] = [found.order, *known[: _HINTS - 1]]
        corner = Point(left - GAP / 2, begin)
        lying = [_lying(items, ways, found, corner)]
        # Many orders are tried on coarse columns and only the best one again on fine columns, which cost several
        # times as much. Where the cloth is no longer than its longest piece, nothing is to be gained.
        if found.rows > longest:
            finer = self._ways(items, off, FINE)
            same = (across, off, *((item.part.name, item.half, item.ways) for item in items), found.order)
            if same not in self.finer:
                pause_here()
                self.finer[same] = pack_on_cloth(finer, found.order, across, found.rows)
            again = self.finer[same]
            if again is not None:
                lying.append(_lying(items, finer, again, corner))
        return min(lying, key=lambda each: each[1])

    def _ways(self, items: Sequence[_Item], off: float, column: float) -> list[list[ClothWay]]:
        """Each item's ways, marked on columns of so many mm; what is not on the fold keeps `off` mm from it."""
        return [[self._way(item, way, off, column) for way in item.ways] for item in items]

    def _way(self, item: _Item, way: tuple[int, bool], off: float, column: float) -> ClothWay:
        key = (item.part.name, item.half, *way, off, column)
        if key not in self.ways:
            shape = item.part.lying(item.half, *way)
            self.ways[key] = ClothWay.of(shape, GAP, column, tied=item.half, off=off)
        return self.ways[key]


def _lying(
    items: Sequence[_Item], ways: Sequence[Sequence[ClothWay]], found: Packed, corner: Point
) -> tuple[tuple[_Lying, ...], float]:
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


def _ended(items: Sequence[_Item], which: Sequence[int], corners: Sequence[Point]) -> tuple[tuple[_Lying, ...], float]:
    """Each item with its way and its corner, and where the last one ends."""
    end = 0.0
    for item, way, corner in zip(items, which, corners, strict=True):
        _, y0, _, y1 = item.part.bounds(item.half, *item.ways[way])
        end = max(end, corner.y + y1 - y0)
    return tuple(zip(items, which, corners, strict=True)), end


def _settled(item: _Item, way: int, corner: Point) -> Placed:
    part, (turn, over) = item.part, item.ways[way]
    x0, y0, _, _ = part.bounds(item.half, turn, over)
    motion = motion_of(turn, over != (item.half and part.over)).then(
        Motion.translation(Vector(corner.x - x0, corner.y - y0))
    )
    return Placed(
        part.name,
        part.title,
        part.number,
        part.kind,
        1,
        item.sides,
        corner,
        turn,
        over,
        item.half,
        item.layers,
        part.gives * (1 if item.half else item.layers),
        item.layers == 1,
        moved(part.half if item.half else part.whole, motion),
        part.grain_on(item.half, motion),
        None if item.half else part.axis_on(motion),
    )


def _numbered(placed: Sequence[Placed]) -> tuple[Placed, ...]:
    """Every placed piece with the number of the first copy it gives."""
    given: dict[str, int] = {}
    found = []
    for each in placed:
        found.append(replace(each, copy=given.get(each.piece, 0) + 1))
        given[each.piece] = given.get(each.piece, 0) + each.gives
    return tuple(found)


def _worth(made: _Try) -> tuple[float, bool, float]:
    """Cheaper in the shop first, then what is quicker to cut, then the shorter one."""
    return math.ceil(made.length / _SHOP - 1e-6), made.fold == "flat", made.length
