"""How much cloth to buy: for every cloth, width and size the length of a lay that exists, and what it loses in
washing.

Cloth that shrinks by a share s of its length leaves length x (1 - s), so laid length / (1 - s) is bought. Each length
belongs to a real lay, found for all sizes together by `kit.cloth.range_lay`, so that a size has the same length whoever
reads it.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from itertools import pairwise

from kit.cloth.kept_lays import Kept
from kit.cloth.lay import Fold, lost, price
from kit.cloth.need import GAP, nap_note
from kit.cloth.pieced import OVERLAP, pieced
from kit.cloth.range_lay import SizeLaid, range_lays
from kit.errors import KitError
from kit.language import say
from kit.lesson.pattern import Pattern
from kit.piece.piece import Cloth
from kit.units import System, both, percent
from kit.wording.lists import listed


@dataclass(frozen=True)
class Amount:
    """What one `size` takes: `laid` mm of lay, `length` mm to buy. Both are 0 where the cloth is too narrow, and
    `trouble` says for what. `folds` are the ways to lay it that cost no more than that, the folded one first."""

    size: str
    laid: float
    length: float
    trouble: str = ""
    folds: tuple[Fold, ...] = ()

    def shown(self, system: System = "cm") -> str:
        """The length to buy in both systems, rounded up as cloth is sold; empty where the cloth is too narrow."""
        return "" if self.trouble else both(self.length, system, "shop")


@dataclass(frozen=True)
class Yardage:
    """One `cloth` at one `width` (mm): the amounts in the order of the sizes given."""

    cloth: Cloth
    width: float
    amounts: tuple[Amount, ...]

    def of(self, size: str) -> Amount:
        """`KitError` for a size that was not laid."""
        for amount in self.amounts:
            if amount.size == size:
                return amount
        raise KitError(f"size {size} was not laid.", where="Cloth to buy", do="Work the lesson in that size.")


def to_buy(laid: float, shrinkage: float) -> float:
    """Length to buy (mm) for a lay of `laid` mm on cloth that loses the share `shrinkage` of its length. `KitError`
    for a share that is not from 0 to below 1.

    >>> to_buy(1900.0, 0.05)  # cloth that loses five in a hundred
    2000.0
    """
    if not 0.0 <= shrinkage < 1.0:
        raise KitError(
            f"cloth cannot shrink by {percent(shrinkage)}.",
            where="shrinkage",
            do="Give the share of its length that is lost, such as 0.05 for 5 in a hundred.",
        )
    return laid / (1.0 - shrinkage)


def yardage(
    patterns: Sequence[Pattern], others: Sequence[Pattern] = (), kept: Kept | None = None
) -> tuple[Yardage, ...]:
    """Cloth for each of `patterns`, one worked lesson in several sizes, and for the `others`, bodies beside the chart:
    one `Yardage` for every cloth and width, main cloth first. Raises `KitError` when a piece has no allowances yet."""
    return amounts(range_lays(patterns, others, kept), (*patterns, *others))


def amounts(laid: Iterable[SizeLaid], patterns: Sequence[Pattern]) -> tuple[Yardage, ...]:
    """The lengths to buy for what was `laid` of these patterns, by `range_lays`."""
    found: dict[tuple[Cloth, float], list[Amount]] = {}
    for each in laid:
        share = lost(patterns[0], each.cloth)
        folds = tuple(lay.fold for lay in each.lays)
        amount = Amount(each.size, each.length, to_buy(each.length, share), each.trouble, folds)
        found.setdefault((each.cloth, each.width), []).append(amount)
    return tuple(Yardage(cloth, width, tuple(rows)) for (cloth, width), rows in found.items())


def falls(entry: Yardage, sizes: Sequence[str]) -> tuple[tuple[str, str], ...]:
    """Where less is bought for a larger size than for a smaller one: neighbours (smaller, larger) of `sizes`. Their
    layouts were searched for longer, and the smaller pieces do not go together as the larger ones do."""
    rows = [amount for amount in entry.amounts if amount.size in sizes and not amount.trouble]
    pairs = pairwise(rows)
    return tuple(
        (one.size, two.size)
        for one, two in pairs
        if any(mine > theirs for mine, theirs in zip(price(one.length), price(two.length), strict=True))
    )


def notes(pattern: Pattern) -> tuple[str, ...]:
    """What must be known of these lengths: how they were found, what shrinks, what a nap asks."""
    found = [say("lay.yardage_note", apart=both(GAP, pattern.lesson.units))]
    if pattern.lesson.shrinkage > 0:
        found.append(say("lay.yardage_shrinkage", share=percent(pattern.lesson.shrinkage, 1)))
    else:
        found.append(say("lay.yardage_unwashed"))
    if two := pieced(pattern):
        titles = listed([piece.title for piece in two])
        overlap = both(OVERLAP, pattern.lesson.units, "allowance")
        found.append(say("lay.interfacing_pieced", pieces=titles, overlap=overlap))
    more = nap_note(pattern.lesson.nap)
    return (*found, more) if more else tuple(found)
