"""A layout on cloth made shorter: its ground is cut a little shorter, what then lies over one another is moved apart.

Orders alone leave room that no order would fill: each shape lies where it ends soonest when it is laid, and never
makes way for one that comes after it. Here all shapes lie at once (`kit.pack.untangle`), on coarse cells. What comes
out is laid again exactly, on fine columns and rows of 1 mm: from the beginning of the cloth on, each in its way and
about the place across where it came to lie, as near the beginning as it goes, and what is small last, wherever it goes.
That is an order of the usual kind, whose shapes are held to a place (`kit.cloth.held`), and it tells other sizes of the
same lesson where to begin.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import replace
from random import Random

from kit.cloth.held import held_at
from kit.cloth.length_cost import COLUMN, FINE, ROW, ClothWay, pack_on_cloth
from kit.pack.overlaps import Overlaps, shares_of
from kit.pack.packing import Packed, Place
from kit.pack.untangle import Loose, Untangling

_CELL = 4, round(4 * FINE / ROW)
"""Fine columns and rows to a coarse cell, which is as high as it is wide."""
_STEP = 0.01
"""Of the length: so much shorter is tried. Where that was soon had, twice as much is tried next."""
_ATTEMPT, _SOON = 6, 3
"""Moves a shape in one attempt, and in one that was soon done."""
_SMALL = 0.02
"""Of the area of all shapes: what is smaller finds a place between the others."""
_NEARLY = 15.0
"""Coarse cells: what lies more over one another than that is not laid, for it would be longer."""
_VAIN = 3
"""Attempts, none of which made it shorter, after which it is given up."""
_ANEW = 0.5
"""Of the attempts after one that failed: those that begin anywhere, not with two shapes changed about."""


def closer(
    shapes: Sequence[Sequence[ClothWay]],
    found: Packed,
    across: float,
    moves: int,
    least: int,
    chance: Random,
    begins: Sequence[Mapping[int, Place]] = (),
) -> Packed:
    """`found`, or a shorter packing of the `shapes`, on columns of `FINE` mm. About so many `moves` may be made; where
    `least` rows are used it is short enough. It `begins` at these places of the shapes, as they were found for other
    sizes, or where there are none anywhere. `across` as for `pack_on_cloth`."""
    if moves < 1 or found.rows <= least:
        return found
    ways = list(dict.fromkeys(way for each in shapes for way in each))
    shares = [shares_of(way.footprint, _CELL) for way in ways]
    sizes = [int(shares[ways.index(each[0])].sum()) for each in shapes]
    bulky = [each for each, size in enumerate(sizes) if size >= _SMALL * sum(sizes)]
    if len(bulky) < 2:
        return found
    small = sorted(set(range(len(shapes))) - set(bulky), key=lambda each: (-sizes[each], each))
    loose = [[_loose(way, ways.index(way), across) for way in shapes[each]] for each in bulky]
    field = Untangling(Overlaps(shares), loose, chance)
    best, good, step = found, [_coarse(found.places[each]) for each in bulky], _STEP
    ahead = [[_coarse(places[each]) for each in bulky] for places in begins if all(each in places for each in bulky)]
    begin = ahead.pop(0) if ahead else field.scattered(best.rows / _CELL[1])
    attempts = 0
    while moves > 0 and best.rows > least and (best is not found or attempts < _VAIN):
        rows = max(least, best.rows * (1.0 - step)) / _CELL[1]
        apart, over, used = field.apart(begin, rows, min(moves, _ATTEMPT * len(bulky)))
        moves -= max(used, 1)
        attempts += 1
        shorter = None
        if over <= _NEARLY:
            shorter = _laid(shapes, dict(zip(bulky, apart, strict=True)), small, across, best.rows - 1)
        if shorter is not None:
            best, begin, good = shorter, apart, apart
            step = _STEP if used > _SOON * len(bulky) else 2 * step
        elif ahead:
            begin = ahead.pop(0)
        elif step > _STEP:
            begin, step = good, _STEP
        elif chance.random() < _ANEW:
            begin = field.scattered(rows)
        else:
            begin = field.swapped(good)
    return best


def on_fine_columns(found: Packed) -> Packed:
    """What was packed on columns of `COLUMN` mm, on those of `FINE`."""
    finer = round(COLUMN / FINE)
    return replace(found, places=tuple((way, row, column * finer) for way, row, column in found.places))


def _loose(way: ClothWay, shape: int, across: float) -> Loose:
    columns = way.columns(across)
    if not columns:
        return Loose(shape, 0, -1, 0.0)
    last = columns[-1] // _CELL[0]
    return Loose(shape, min(-(-columns[0] // _CELL[0]), last), last, way.footprint.rows / _CELL[1])


def _coarse(place: Place) -> Place:
    way, row, column = place
    return way, row // _CELL[1], column // _CELL[0]


def _laid(
    shapes: Sequence[Sequence[ClothWay]], places: Mapping[int, Place], small: Sequence[int], across: float, rows: int
) -> Packed | None:
    """Those in `places` from the beginning on, each held about there, then the `small` ones; None where it takes more
    than so many `rows`."""
    order = []
    for each in sorted(places, key=lambda each: (places[each][1], each)):
        way, row, column = places[each]
        order.append(each + len(shapes) * held_at((way, row * _CELL[1], column * _CELL[0]), len(shapes[each])))
    return pack_on_cloth(shapes, [*order, *small], across, rows)
