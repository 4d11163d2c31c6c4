"""How much cloth to buy: for every cloth, width and size the length of a lay that exists, and what it loses in
washing.

Cloth that shrinks by a share s of its length leaves length x (1 - s), so laid length / (1 - s) is bought. Sizes other
than the reader's are laid with fewer tries; each length still belongs to a real lay, found by `kit.cloth.lay`.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass

from kit.cloth.lay import CLOTHS, HINTED, PLACED, CuttingTable, Hints, Lay, TooNarrow, widths
from kit.cloth.need import GAP, nap_note
from kit.errors import KitError
from kit.language import say
from kit.lesson.pattern import Pattern
from kit.piece.piece import Cloth
from kit.units import System, both, percent

QUICK = 120
"""Shapes laid in all the tries of one way to fold, for sizes that are not the reader's."""


@dataclass(frozen=True)
class Amount:
    """What one `size` takes: `laid` mm of lay, `length` mm to buy. Both are 0 where the cloth is too narrow, and
    `trouble` says for what."""

    size: str
    laid: float
    length: float
    trouble: str = ""

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
    patterns: Sequence[Pattern], plans: Mapping[str, Iterable[Lay]] | None = None, placed: int = QUICK
) -> tuple[Yardage, ...]:
    """Cloth for each of `patterns`, one worked lesson in several sizes: one `Yardage` for every cloth and width, main
    cloth first. `plans` holds lays already made, by size, so that a printed plan and this table agree; `placed` says
    how many shapes may be laid in trying for the others. Raises `KitError` when a piece has no allowances yet."""
    known = {size: tuple(made) for size, made in (plans or {}).items()}
    found: list[Yardage] = []
    for cloth in CLOTHS:
        hints: Hints = {}
        every = [(pattern, CuttingTable.of(pattern, cloth, hints)) for pattern in patterns]
        tables = [(pattern, table) for pattern, table in every if table.rough]
        if not tables:
            continue
        for width in widths(tables[0][0], cloth):
            amounts: dict[int, Amount] = {}
            middle = len(tables) // 2
            # From the middle outwards, so that what does well there is tried in the sizes beside it.
            for at in sorted(range(len(tables)), key=lambda at: abs(at - middle)):
                amounts[at] = _amount(*tables[at], width, known, max(placed, PLACED) if at == middle else placed)
            for at, (pattern, table) in enumerate(tables):
                if pattern.body.name not in known:
                    again = _amount(pattern, table, width, known, HINTED)  # the orders found meanwhile
                    amounts[at] = min(amounts[at], again, key=lambda amount: amount.laid)
            found.append(Yardage(cloth, width, tuple(amounts[at] for at in sorted(amounts))))
    return tuple(found)


def _amount(
    pattern: Pattern, table: CuttingTable, width: float, known: Mapping[str, Sequence[Lay]], placed: int
) -> Amount:
    size = pattern.body.name
    made = next((lay for lay in known.get(size, ()) if (lay.cloth, lay.width) == (table.cloth, width)), None)
    if made is None:
        try:
            made = table.lay(width, placed)
        except TooNarrow as error:
            return Amount(size, 0.0, 0.0, str(error))
    # Interfacing is not washed before it is cut.
    lost = 0.0 if table.cloth == "interfacing" else pattern.lesson.shrinkage
    return Amount(size, made.length, to_buy(made.length, lost))


def notes(pattern: Pattern) -> tuple[str, ...]:
    """What must be known of these lengths: how they were found, what shrinks, what a nap asks."""
    found = [say("lay.yardage_note", apart=both(GAP, pattern.lesson.units))]
    if pattern.lesson.shrinkage > 0:
        found.append(say("lay.yardage_shrinkage", share=percent(pattern.lesson.shrinkage, 1)))
    else:
        found.append(say("lay.yardage_unwashed"))
    more = nap_note(pattern.lesson.nap)
    return (*found, more) if more else tuple(found)
