"""The lay plan: where each piece and strip lies on the cloth, with its true cut outline and on its grain.

Two ways to lay are tried: the cloth opened out flat, and folded lengthwise with right sides together (pieces on the
fold at the fold, pairs cut through both layers), what is cut single lying on the opened cloth below. Each is packed by
`kit.cloth.length_cost` and, as a bound, laid in the simple rows of `kit.cloth.need`. The shortest says what is bought;
where the folded one, which is quicker to cut, costs no more in the shop, both are shown. Places are in mm: x across the
cloth (from the fold where it is folded), y along it, the tops of the pieces upward unless they are turned.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, replace
from typing import Literal

from kit.cloth.arranged import Arranging, Fold, Hints, Item, Try
from kit.cloth.cut_list import INTERFACING_WIDTH, boxes
from kit.cloth.need import Box, need
from kit.cloth.parts import motion_of, moved, napped, parts
from kit.errors import KitError
from kit.geometry import Curve, Motion, Point, Vector
from kit.lesson.pattern import Pattern
from kit.piece.piece import Cloth

CLOTHS: tuple[Cloth, ...] = ("main", "lining", "interfacing")
PLACED = 600
"""Shapes laid in all the tries of one way to fold."""
TENTH, EIGHTH = 100.0, 914.4 / 8
"""mm: cloth is sold by tenths of a metre and eighths of a yard."""
_NO_HINTS: Mapping[str, Hints] = {}


@dataclass(frozen=True)
class LaidPiece:
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
    placed: tuple[LaidPiece, ...]
    waste: float
    folded: float = 0.0
    nap: bool = False


class TooNarrow(KitError):
    """A piece is wider than the cloth."""


def lays(pattern: Pattern, placed: int = PLACED) -> tuple[Lay, ...]:
    """The lays of each cloth at each width it is sold in, main cloth first, interfacing at its usual width: at each
    width one, or a folded one and a flat one of the same price. A width that is too narrow for a piece has none. These
    are the lays of one size alone; `kit.cloth.range_lay` lays it together with the other sizes. Raises `KitError` when
    a piece has no allowances yet."""
    found: list[Lay] = []
    for cloth in CLOTHS:
        table = CuttingTable.of(pattern, cloth)
        if table.rough:
            for width in widths(pattern, cloth):
                try:
                    found += table.laid(table.tries(width, placed), width, lost(pattern, cloth))
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


def lost(pattern: Pattern, cloth: Cloth) -> float:
    """The share of its length that `cloth` loses in washing; interfacing is not washed before it is cut."""
    return 0.0 if cloth == "interfacing" else pattern.lesson.shrinkage


@dataclass(frozen=True)
class CuttingTable(Arranging):
    """What is cut from one cloth, ready to be laid at any width; `rough` are its bounding boxes."""

    rough: tuple[Box, ...] = ()

    @classmethod
    def of(cls, pattern: Pattern, cloth: Cloth) -> CuttingTable:
        """Raises `KitError` when a piece has no allowances yet."""
        return cls(cloth, napped(pattern, cloth), parts(pattern, cloth), rough=boxes(pattern, cloth))

    def narrow(self, width: float) -> TooNarrow | None:
        """Why cloth of this `width` is too narrow, if it is."""
        try:
            need(self.rough, width)
        except KitError as error:
            return TooNarrow(error.told.says, where=error.told.at, do=error.told.can)
        return None

    def tries(
        self, width: float, placed: int = PLACED, hints: Mapping[str, Hints] = _NO_HINTS, seed: int = 1
    ) -> tuple[Try, ...]:
        """The best found of each way to lay at this `width`, flat and, where it can be, folded; `hints` by "flat" and
        "folded", another `seed` tries other orders. Raises `TooNarrow`."""
        if narrow := self.narrow(width):
            raise narrow
        # Boxes laid in rows need no search, and their length can always be reached: what was packed counts only where
        # it is no longer than that.
        flat = min(self.flat(width, placed, hints.get("flat", ()), seed), self.flat(width, 0), key=_long)
        rows = self.folded(width, 0)
        folded = rows and self.folded(width, placed, hints.get("folded", ()), seed, flat.length)
        return (flat, min(folded, rows, key=_long)) if folded and rows else (flat,)

    def lay(self, width: float, placed: int = PLACED) -> Lay:
        """The shortest lay found at this `width`. Raises `TooNarrow`."""
        return self.made(min(self.tries(width, placed), key=lambda each: each.length), width)

    def laid(self, found: Iterable[Try], width: float, lost: float = 0.0) -> tuple[Lay, ...]:
        """The lays that cost least in the shop, of cloth that loses the share `lost` in washing: the folded one, which
        is quicker to cut, beside the flat one where it is no dearer."""
        ranked = sorted(found, key=lambda each: (each.fold == "flat", each.length))
        cheapest = min(price(each.length, lost) for each in ranked)
        shown = [each for each in ranked if price(each.length, lost) == cheapest]
        if self.cloth == "interfacing":
            shown = shown[:1]  # nobody minds how it lies
        return tuple(self.made(each, width) for each in shown)

    def made(self, best: Try, width: float) -> Lay:
        """`best` as a lay on cloth `width` mm wide."""
        waste = 1.0 - best.area / (width * best.length) if best.length else 0.0
        laid = _numbered([_settled(*each) for each in best.lying])
        return Lay(self.cloth, width, best.length, best.fold, laid, waste, best.folded, self.nap)


def _long(made: Try) -> float:
    return made.length


def price(length: float, lost: float = 0.0) -> tuple[float, float]:
    """What a lay of `length` mm costs: the tenths of a metre and the eighths of a yard that are bought, of cloth that
    loses the share `lost` of its length."""
    bought = length / (1.0 - lost)
    return math.ceil(bought / TENTH - 1e-6), math.ceil(bought / EIGHTH - 1e-6)


def _settled(item: Item, way: int, corner: Point) -> LaidPiece:
    part, (turn, over) = item.part, item.ways[way]
    x0, y0, _, _ = part.bounds(item.half, turn, over)
    motion = motion_of(turn, over != (item.half and part.over)).then(
        Motion.translation(Vector(corner.x - x0, corner.y - y0))
    )
    return LaidPiece(
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


def _numbered(placed: Sequence[LaidPiece]) -> tuple[LaidPiece, ...]:
    """Every placed piece with the number of the first copy it gives."""
    given: dict[str, int] = {}
    found = []
    for each in placed:
        found.append(replace(each, copy=given.get(each.piece, 0) + 1))
        given[each.piece] = given.get(each.piece, 0) + each.gives
    return tuple(found)
