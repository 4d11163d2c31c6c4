"""Shapes that lie over one another are moved apart, on a ground that is not to grow.

This is guided local search, as it was published for cutting irregular shapes from a strip (Egeblad, Nielsen, Odgaard
2007, "Fast neighborhood search for two- and three-dimensional nesting problems"; Imamichi, Yagiura, Nagamochi 2009, "An
iterated local search algorithm based on nonlinear programming for the irregular strip packing problem"; Umetani and
others 2009, "Solving the irregular strip packing problem via guided local search for overlap minimization"). One shape
after another that overlaps goes to the place, anywhere on the ground and in any of its ways, where it overlaps least.
That alone soon comes to rest with shapes still over one another. So each two shapes have a weight by which their
overlap counts, and it grows with every round that they lie so: until one of them finds it cheaper to be elsewhere.

No clock is asked: a search may move so many shapes, and where places are equally good, chance from a fixed seed takes
one of them.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from random import Random
from typing import Any

import numpy as np

from kit.pack.overlaps import SHARES, Overlaps
from kit.pack.packing import Place
from kit.pausing import pause_here

_GROWS, _GROWS_MORE, _FALLS = 1.2, 0.8, 0.95
"""A weight grows in a round by the first, and with the worst overlap by both; without overlap it falls."""
_HEAVIEST = 1e6
APART = float(SHARES * SHARES)
"""So much may be in common and shapes count as apart: a coarse cell. They are laid exactly in the end."""


@dataclass(frozen=True)
class Loose:
    """One way for a shape to lie: its number among those whose overlaps are known, the columns from `first` to `last`
    in which its corner may lie, and how many rows it is `long`, in which the last one need not be whole."""

    shape: int
    first: int
    last: int
    long: float


class Untangling:
    """The `shapes`, each in one of its ways, to be moved apart."""

    def __init__(self, overlaps: Overlaps, shapes: Sequence[Sequence[Loose]], chance: Random) -> None:
        self._overlaps = overlaps
        self._shapes = shapes
        self._chance = chance

    def within(self, places: Sequence[Place], rows: float) -> list[Place]:
        """The places, brought back onto a ground of so many `rows` where they reach over it."""
        found = []
        for ways, (way, row, column) in zip(self._shapes, places, strict=True):
            last = max(0, int(rows - ways[way].long))
            found.append((way, max(0, min(row, last)), max(ways[way].first, min(column, ways[way].last))))
        return found

    def scattered(self, rows: float) -> list[Place]:
        """Places by chance, on a ground of so many `rows`."""
        found = []
        for ways in self._shapes:
            fitting = [number for number, each in enumerate(ways) if each.first <= each.last]
            way = fitting[self._chance.randrange(len(fitting))]
            row = self._chance.randrange(max(1, int(rows - ways[way].long) + 1))
            found.append((way, row, self._chance.randint(ways[way].first, ways[way].last)))
        return found

    def swapped(self, places: Sequence[Place]) -> list[Place]:
        """Two of them changed about."""
        found = list(places)
        one, two = self._chance.randrange(len(found)), self._chance.randrange(len(found))
        (way, *here), (other, *there) = found[one], found[two]
        found[one], found[two] = (way, there[0], there[1]), (other, here[0], here[1])
        return found

    def apart(self, places: Sequence[Place], rows: float, moves: int) -> tuple[list[Place], float, int]:
        """From these `places` on, with at most so many `moves` or a round more, on a ground of `rows`: the places of
        the least overlap, how much that is in coarse cells, and how many moves were made."""
        now = self.within(places, rows)
        count, used = len(now), 0
        weights = np.ones((count, count), dtype=np.float32)
        common = np.zeros((count, count), dtype=np.float32)
        for each in range(count):
            self._reckon(common, now, each)
        best, least = list(now), float(common.sum(dtype=np.float64)) / 2
        while used < moves and least > APART:
            pause_here()
            over = [each for each in range(count) if common[each].any()]
            self._chance.shuffle(over)
            for each in over:
                if common[each].any():
                    now[each] = self._moved(now, each, weights[each], rows)
                    self._reckon(common, now, each)
                    used += 1
            total = float(common.sum(dtype=np.float64)) / 2
            if total < least:
                best, least = list(now), total
            worst = float(common.max())
            if worst:
                factor = np.where(common > 0, _GROWS + _GROWS_MORE / worst * common, _FALLS)
                weights = np.clip(weights * factor, 1.0, _HEAVIEST).astype(np.float32)
        return best, least / APART, used

    def _reckon(self, common: Any, now: Sequence[Place], each: int) -> None:
        way, here, beside = now[each]
        one = self._shapes[each][way].shape
        rows, columns = self._overlaps.shapes[one].shape
        known, between = self._overlaps.known, self._overlaps.between
        for other, (its, there, aside) in enumerate(now):
            if other == each:
                continue
            row, column = here - there + rows - 1, beside - aside + columns - 1
            found = 0.0
            if row >= 0 and column >= 0:
                pair = one, self._shapes[other][its].shape
                both = known[pair] if pair in known else between(*pair)
                if row < both.shape[0] and column < both.shape[1]:
                    found = both[row, column]
            common[each, other] = common[other, each] = found

    def _moved(self, now: Sequence[Place], each: int, weights: Any, rows: float) -> Place:
        """Where the shape overlaps least, as it is weighed. It stays where there is no room for it at all."""
        least, place = np.inf, now[each]
        others = [
            (self._shapes[other][its].shape, row, column, weights[other])
            for other, (its, row, column) in enumerate(now)
            if other != each
        ]
        for number, way in enumerate(self._shapes[each]):
            down, across = int(rows - way.long) + 1, way.last - way.first + 1
            if rows < way.long or across < 1:
                continue
            cost = np.zeros((down, across), dtype=np.float32)
            known, between = self._overlaps.known, self._overlaps.between
            high, wide = self._overlaps.shapes[way.shape].shape
            for other, row, column, weight in others:
                common = known.get((way.shape, other))
                if common is None:
                    common = between(way.shape, other)
                # Where in `cost` the first place of `common` comes to lie, and as much of it as lies in there.
                top, left = row - high + 1, column - wide + 1 - way.first
                if top < 0:
                    common, top = common[-top:], 0
                if left < 0:
                    common, left = common[:, -left:], 0
                part = cost[top : top + len(common), left : left + common.shape[1]]
                if part.size:
                    part += weight * common[: part.shape[0], : part.shape[1]]
            lowest = cost.min()
            if lowest > least or (lowest == least and self._chance.random() < 0.5):
                continue
            free = (cost == lowest).ravel().nonzero()[0]
            row, column = divmod(int(free[self._chance.randrange(len(free))]), across)
            least, place = lowest, (number, row, column + way.first)
        return place
