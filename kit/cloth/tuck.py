"""Laying shapes close together on a long strip, so that a facing lies in the bend of an underarm.

The strip is cut into columns of 8 mm. A shape, grown by half the gap, is a run of whole millimetres in
each column it touches, so what fits here fits on the cloth. What is taken of a column is one whole number, a bit for
each millimetre; beside it stand the same bits smeared over 2, 4, 8 ... millimetres, so that all places where a run
would strike something come from two shifts. Shapes are laid one after another, each where it ends soonest; then other
orders are tried, from a fixed seed and a fixed number of times, never by a clock: the same shapes always lie the same
way.
"""

from __future__ import annotations

import math
import random
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any

import numpy as np
import shapely

from kit.pausing import pause_here

COLUMN = 8.0
MARGIN = 0.15  # mm a polygon may lie inside the curves it stands for, and an arc of a grown corner inside its circle
_SEED = 1


@dataclass(frozen=True, eq=False)
class Mask:
    """A grown shape on the columns: for each run its column, the smear to look at and two shifts (`probes`), and its
    first bit and length (`runs`). `left` and `low` are the corner of the grown shape in mm, `wide` its width;
    `rows` its length in whole mm. `column` ties it to one column, -1 to none; `first` is the first column it may
    begin in."""

    probes: tuple[tuple[int, int, int, int], ...]
    runs: tuple[tuple[int, int, int], ...]
    left: float
    low: float
    wide: float
    rows: int
    columns: int
    column: int = -1
    first: int = 0


@dataclass(frozen=True)
class Tucked:
    """Where the shapes lie, in the order given: (which of its ways, column, row); the `rows` in use, and the `order` in
    which they were laid."""

    places: tuple[tuple[int, int, int], ...]
    rows: int
    order: tuple[int, ...] = ()


def mask(shape: Any, gap: float, column: int = -1, first: int = 0) -> Mask:
    """`shape` (a shapely polygon, mm, y along the strip) grown by half the `gap` and marked on the columns."""
    grown = shape.buffer(gap / 2 + MARGIN, quad_segs=6)
    left, low, right, high = grown.bounds
    if column >= 0:
        left = shape.bounds[0] - gap / 2
    columns = max(1, math.ceil((right - left) / COLUMN - 1e-6))
    edges = left + COLUMN * np.arange(columns + 1)
    strips = shapely.intersection(grown, shapely.box(edges[:-1], low - 1.0, edges[1:], high + 1.0))
    parts, at = shapely.get_parts(strips, return_index=True)
    bounds = shapely.bounds(parts)
    runs: list[tuple[int, int, int]] = []
    for column_, (_, bottom, _, top) in sorted(zip(at.tolist(), bounds.tolist(), strict=True)):
        start, end = math.floor(bottom - low + 1e-6), math.ceil(top - low - 1e-6)
        if end <= start:
            continue
        if runs and runs[-1][0] == column_ and start <= runs[-1][1] + runs[-1][2]:
            _, begun, length = runs.pop()
            start, end = begun, max(end, begun + length)
        runs.append((column_, start, end - start))
    probes = []
    for column_, start, length in sorted(runs, key=lambda run: (-run[2], run)):
        level = length.bit_length() - 1
        probes.append((column_, level, start, start + length - (1 << level)))
    return Mask(
        tuple(probes), tuple(runs), left, low, right - left, math.ceil(high - low - 1e-6), columns, column, first
    )


def tuck(
    shapes: Sequence[Sequence[Mask]], order: Sequence[int], across: float, at_most: int | None = None
) -> Tucked | None:
    """Lay one of the ways of each of `shapes` on a strip whose grown width is `across` mm, in `order`. None when one
    is too wide, or when more than `at_most` rows would be used."""
    columns = math.ceil(across / COLUMN) + 1
    taken: list[int] = [0] * columns
    smears: list[list[int] | None] = [None] * columns
    places: list[tuple[int, int, int]] = [(0, 0, 0)] * len(shapes)
    used = 0
    ceiling = sum(max(way.rows for way in ways) for ways in shapes) if at_most is None else at_most
    for each in order:
        best: tuple[int, int, int, int] | None = None
        end = ceiling + 1
        for which, way in enumerate(shapes[each]):
            last = math.floor((across - way.wide) / COLUMN + 1e-6)
            span = (way.column,) if way.column >= 0 else range(way.first, last + 1)
            for column in span:
                if column > last or end <= way.rows:
                    break
                wanted = (1 << (end - way.rows)) - 1  # only rows that end sooner than the best yet
                struck = 0
                for at, level, one, two in way.probes:
                    smear = smears[column + at]
                    if smear is not None:
                        while len(smear) <= level:  # only as far as somebody looks
                            smear.append(smear[-1] | (smear[-1] >> (1 << len(smear) - 1)))
                        bits = smear[level]
                        struck |= (bits >> one) | (bits >> two)
                        if struck & wanted == wanted:
                            break
                else:
                    row = (~struck & (struck + 1)).bit_length() - 1
                    end = row + way.rows
                    best = (end, which, column, row)
        if best is None:
            return None
        _, which, column, row = best
        way = shapes[each][which]
        places[each] = (which, column, row)
        used = max(used, end)
        for at, start, length in way.runs:
            bits = taken[column + at] = taken[column + at] | (((1 << length) - 1) << (row + start))
            smears[column + at] = [bits]
    return Tucked(tuple(places), used, tuple(order))


def best_tuck(
    shapes: Sequence[Sequence[Mask]],
    areas: Sequence[float],
    across: float,
    tries: int,
    least: int = 0,
    hints: Sequence[Sequence[int]] = (),
) -> Tucked | None:
    """The shortest of so many `tries`: shapes in the order of their areas, lengths and widths, and in the orders of
    `hints` (not counted as tries), then in orders near the best one yet. Stops when no more than `least` rows
    are used. None when a shape is too wide."""
    if not shapes:
        return Tucked((), 0)
    places = range(len(shapes))
    loose = [ways[0].column < 0 for ways in shapes]
    orders = [
        *(list(hint) for hint in hints if len(hint) == len(shapes)),
        sorted(places, key=lambda at: (-areas[at], at)),
        sorted(places, key=lambda at: (loose[at], -shapes[at][0].rows, -areas[at], at)),
        sorted(places, key=lambda at: (loose[at], -areas[at], at)),
        sorted(places, key=lambda at: (-shapes[at][0].rows, -areas[at], at)),
        sorted(places, key=lambda at: (loose[at], -shapes[at][0].wide, -areas[at], at)),
    ]
    chance = random.Random(_SEED)
    seen: set[tuple[int, ...]] = set()
    best: Tucked | None = None
    for number in range(tries + len(hints)):
        order: Sequence[int] = (
            orders[number] if number < len(orders) else _near(best.order if best else list(places), chance)
        )
        alike = tuple(order)
        if alike in seen:
            continue
        seen.add(alike)
        pause_here()
        found = tuck(shapes, order, across, None if best is None else best.rows)
        if found is None:
            if best is None:
                return None
            continue
        if best is None or _worth(found, areas) < _worth(best, areas):
            best = found
        if best.rows <= least:
            break
    return best


def _worth(found: Tucked, areas: Sequence[float]) -> tuple[float, float]:
    """Shorter is better; of equals the one that has its cloth near the beginning."""
    return found.rows, sum(row * area for (_, _, row), area in zip(found.places, areas, strict=True))


def _near(order: Sequence[int], chance: random.Random) -> list[int]:
    """`order` with two places changed about, or one taken to another place."""
    changed = list(order)
    one, two = chance.randrange(len(changed)), chance.randrange(len(changed))
    if chance.random() < 0.5:
        changed[one], changed[two] = changed[two], changed[one]
    else:
        changed.insert(two, changed.pop(one))
    return changed
