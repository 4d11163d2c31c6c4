"""Cutting layouts of a lesson in all its sizes, which agree with each other.

Every size is laid with as many tries as any other, by itself; then the orders that did well in one size are tried in
all, and pieces are moved apart from where they lay there. What is found depends on the sizes alone, not on whose they
are, so that every booklet and table tells the same of a size. A smaller size should take no more cloth than a larger
one: where its pieces lie free at the places found for the larger, that layout is taken over, and where they do not, it
is searched for longer. If it is longer even then, it is so, and `falls` tells it.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from kit.cloth.arranged import FEW, HINTED, Hints, Try
from kit.cloth.kept_lays import Kept, content
from kit.cloth.lay import CLOTHS, CuttingTable, Lay, TooNarrow, lost, price, widths
from kit.cloth.side_by_side import LayJob, SideBySide
from kit.cloth.taken_over import taken_over
from kit.lesson.pattern import Pattern
from kit.piece.piece import Cloth

TRIES = 300
"""Shapes laid in the tries of one way to lay one size: the orders found for the other sizes come to them."""
LONGER = 5
"""Times as many tries for a size that would take more cloth than a larger one."""
NEAR = 0.02
"""So much denser must a layout be to be tried before that of a size which is one nearer."""


@dataclass(frozen=True)
class SizeLaid:
    """One `size` on one `cloth` of a `width`: its `lays`, the folded one first where there are two, and the `length` of
    the shortest, all in mm; none where the cloth is too narrow, and `trouble` says for what."""

    size: str
    cloth: Cloth
    width: float
    lays: tuple[Lay, ...] = ()
    length: float = 0.0
    trouble: str = ""


@dataclass(frozen=True)
class _Group:
    """One cloth at one width: the `tables` of the sizes that are laid, and those of the `others`, which have the sizes
    to go by. `all` are the patterns with their table, or why there is none."""

    cloth: Cloth
    width: float
    all: tuple[tuple[Pattern, CuttingTable | TooNarrow], ...]
    tables: tuple[CuttingTable, ...]
    others: tuple[CuttingTable, ...]

    def keys(self) -> tuple[str, str]:
        """What is known of the sizes, and of the others, is kept under these."""
        sizes = content(self.width, self.tables)
        return sizes, f"{sizes}+{content(self.width, self.others)}"


def range_lays(
    patterns: Sequence[Pattern], others: Sequence[Pattern] = (), kept: Kept | None = None, placed: int = TRIES
) -> tuple[SizeLaid, ...]:
    """The lays of one worked lesson in several sizes, smallest first: for every cloth and width each size. `others` are
    bodies beside the chart, laid after the sizes with what was found for them, and come after them. What is `kept`
    already is not searched for again; `placed` says how many shapes may be laid in the tries of one way to lay one
    size. Raises `KitError` when a piece has no allowances yet."""
    kept = kept or Kept()
    groups = _groups(patterns, others)
    keys = [group.keys() for group in groups]
    sizes = [kept.of(key, group.tables) for (key, _), group in zip(keys, groups, strict=True)]
    own = [kept.of(key, group.others) if group.others else [] for (_, key), group in zip(keys, groups, strict=True)]
    with SideBySide() as beside:
        new = [at for at, known in enumerate(sizes) if known is None]
        for at, found in zip(new, _searched([groups[at] for at in new], placed, beside), strict=True):
            sizes[at] = found
            kept.keep(keys[at][0], found)
        for at, group in enumerate(groups):
            if own[at] is None:
                own[at] = _others(group, sizes[at] or [], placed, beside)
                kept.keep(keys[at][1], own[at] or [])
    kept.write()
    laid: list[SizeLaid] = []
    for group, one, two in zip(groups, sizes, own, strict=True):
        tries = iter([*(one or []), *(two or [])])
        for pattern, table in group.all:
            size = pattern.body.name
            if isinstance(table, TooNarrow):
                laid.append(SizeLaid(size, group.cloth, group.width, trouble=str(table)))
                continue
            made = next(tries)
            lays = table.laid(made, group.width, lost(pattern, group.cloth))
            laid.append(SizeLaid(size, group.cloth, group.width, lays, min(each.length for each in made)))
    return tuple(laid)


def _groups(patterns: Sequence[Pattern], others: Sequence[Pattern]) -> list[_Group]:
    found = []
    for cloth in CLOTHS:
        cut = [(pattern, CuttingTable.of(pattern, cloth)) for pattern in (*patterns, *others)]
        every = [(pattern, table) for pattern, table in cut if table.rough]
        for width in widths(every[0][0], cloth) if every else ():
            fitting = tuple((pattern, table.narrow(width) or table) for pattern, table in every)
            sides: tuple[list[CuttingTable], list[CuttingTable]] = ([], [])
            for pattern, table in fitting:
                if isinstance(table, CuttingTable):
                    sides[not any(pattern is each for each in patterns)].append(table)
            found.append(_Group(cloth, width, fitting, tuple(sides[0]), tuple(sides[1])))
    return found


def _searched(groups: Sequence[_Group], placed: int, beside: SideBySide) -> list[list[tuple[Try, ...]]]:
    """Lay every size alone; then each with the orders that did well in any; then smaller ones as larger ones lie."""
    flat = [(group, at, table) for group in groups for at, table in enumerate(group.tables)]
    # Each size tries orders of its own, so that there are more to share.
    alone = beside.work([LayJob(table, group.width, placed, seed=at + 1) for group, at, table in flat])
    first = _parted(alone, groups)
    hints = [_hints(found) for found in first]
    jobs = [
        LayJob(table, group.width, HINTED, _hints(found, at))
        for group, found in zip(groups, first, strict=True)
        for at, table in enumerate(group.tables)
        if len(group.tables) > 1
    ]
    again = iter(beside.work(jobs))
    for at, group in enumerate(groups):
        if len(group.tables) > 1:
            first[at] = [_better(made, next(again)) for made in first[at]]
            _agreed(group, first[at], placed, hints[at])
    return first


def _parted(found: Sequence[tuple[Try, ...]], groups: Sequence[_Group]) -> list[list[tuple[Try, ...]]]:
    every = iter(found)
    return [[next(every) for _ in group.tables] for group in groups]


def _hints(found: Sequence[tuple[Try, ...]], near: int | None = None) -> dict[str, Hints]:
    """The orders that did best in each size, each once. Where many shapes are laid, those of the densest layouts come
    first, of about as dense ones those of the sizes next to the one at `near`."""
    hints: dict[str, Hints] = {}
    for key in ("flat", "folded"):
        made = [(at, each) for at, tries in enumerate(found) for each in tries if _key(each) == key]
        if any(len(each.lying) > FEW for _, each in made):
            made.sort(key=lambda one: _thin(one[1]) * (1.0 + (0.0 if near is None else NEAR * abs(one[0] - near))))
        orders = [each.orders for _, each in made]
        parts = max((len(each) for each in orders), default=0)
        hints[key] = tuple(
            tuple(dict.fromkeys(each[part] for each in orders if len(each) > part)) for part in range(parts)
        )
    return hints


def _thin(made: Try) -> float:
    return made.length / made.area if made.area else 0.0


def _key(made: Try) -> str:
    return "flat" if made.fold == "flat" else "folded"


def _better(one: tuple[Try, ...], two: tuple[Try, ...]) -> tuple[Try, ...]:
    """The shorter of each way to lay; `one` where they are as long."""
    return tuple(min(pair, key=lambda each: each.length) for pair in zip(one, two, strict=True))


def _agreed(group: _Group, found: list[tuple[Try, ...]], placed: int, hints: dict[str, Hints]) -> None:
    """Have no size take more than a larger one, as far as that is so, from the largest down."""
    for at in range(len(found) - 2, -1, -1):
        table, larger = group.tables[at], found[at + 1 :]
        found[at] = _adopted(table, group.width, found[at], larger)
        if _length(found[at]) > min(map(_length, larger)) + 1e-6 and _falls(found[at], larger):
            more = table.tries(group.width, LONGER * placed, hints)
            found[at] = _better(found[at], more)


def _adopted(
    table: CuttingTable, width: float, own: tuple[Try, ...], larger: Sequence[tuple[Try, ...]]
) -> tuple[Try, ...]:
    """Each way to lay as a larger size lies, where that is shorter."""
    found = []
    for made in own:
        shorter = sorted(
            (each for tries in larger for each in tries if _key(each) == _key(made) and each.length < made.length),
            key=lambda each: each.length,
        )
        over = (taken_over(table, each, width) for each in shorter)
        found.append(next((each for each in over if each is not None), made))
    return tuple(found)


def _length(tries: tuple[Try, ...]) -> float:
    return min(made.length for made in tries)


def _falls(own: tuple[Try, ...], larger: Sequence[tuple[Try, ...]]) -> bool:
    """Whether more is bought for this size than for a larger one."""
    costs = price(_length(own))
    return any(mine > theirs for tries in larger for mine, theirs in zip(costs, price(_length(tries)), strict=True))


def _others(group: _Group, sizes: Sequence[tuple[Try, ...]], placed: int, beside: SideBySide) -> list[tuple[Try, ...]]:
    """Bodies beside the chart, each alone, then with what did well in the sizes, then as a size lies."""
    jobs = [LayJob(table, group.width, placed, _hints(sizes)) for table in group.others]
    return [
        _adopted(table, group.width, made, sizes) for table, made in zip(group.others, beside.work(jobs), strict=True)
    ]
