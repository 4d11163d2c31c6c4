"""Which steps share a page, and how tall their pictures are, so that pages come out full.

A step is never split from its picture. Left to themselves such steps leave half-empty pages; here the heights of a
part's pictures are chosen page by page, a little smaller or larger than their usual room, so that each page is as
full as it can be. Among all ways to share the steps out the one with least white and least shrinking is taken
(dynamic programming over page breaks, as lines are broken into paragraphs).
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from typing import Literal

LEAST, MOST = 0.58, 2.2  # shares of a picture's usual room
_WHITE, _SHRUNK, _GROWN, _LAST, _PAGE, _PARTED = 10.0, 6.0, 1.2, 1.0, 0.4, 20.0
_OVER = 1.5  # what a unit costs some of whose pictures stand on the next page
_SCRAP, _FEW = 1.5, 0.25  # what a last page with nothing on it would cost more, and from which share on none does
_ROOMY = 0.08  # share of a page left white from which stacking its pictures is tried
_STACKED = 1.0  # least share of stacked pictures: smaller, they would gain nothing by it
_CLOSE = 0.92  # share below which closer rows of pictures are tried

Way = Literal["", "stacked", "close"]
"""How the pictures of a unit stand: in its rows, `stacked` one below the other, or in fewer rows, `close` together."""


@dataclass(frozen=True)
class Tall:
    """A picture: `room` is the height (mm) it may take at its usual share, `wide` the height at which it is as wide as
    its column and grows no more; its frame and caption add `around`. Of its height, `text` does not grow. Where it
    `narrows`, a share under 1 is one of the height it has as a rule, so that one as wide as its column gets narrower
    with the others."""

    room: float
    wide: float
    around: float = 0.0
    text: float = 0.0
    narrows: bool = False

    def at(self, share: float) -> float:
        return self._high(share) + self.around

    def lines(self, share: float) -> float:
        """The height in mm that is left for what is drawn."""
        return max(self._high(share) - self.text, 0.0)

    def _high(self, share: float) -> float:
        return min(self.room * share, self.wide * (min(share, 1.0) if self.narrows else 1.0))


@dataclass(frozen=True)
class Unit:
    """What must stay on one page: `fixed` mm of text and space under or over its rows of pictures, and at least
    `beside` mm where text stands next to them. `keeps`: the page should not break after it (words that lead
    on to what follows). `stacked` are its pictures with the whole measure each, one below the other, and `close` fewer
    rows of narrower ones, where they may stand so; `between` mm part one row from the next. `parts`: its last rows may
    stand on the next page, where the rest of it fills this one."""

    fixed: float
    rows: tuple[tuple[Tall, ...], ...] = ()
    beside: float = 0.0
    keeps: bool = False
    stacked: tuple[Tall, ...] = ()
    between: float = 0.0
    close: tuple[tuple[Tall, ...], ...] = ()
    parts: bool = False

    def height(self, share: float, way: Way = "") -> float:
        """Height in mm with the pictures at `share` of their room."""
        rows = self.standing(way)
        pictures = sum(max(picture.at(share) for picture in row) for row in rows)
        return self.fixed + max(self.beside, pictures + self.between * (len(rows) - 1))

    def standing(self, way: Way) -> tuple[tuple[Tall, ...], ...]:
        """The rows of its pictures where they stand in that `way`; its own where they cannot."""
        if way == "stacked" and self.stacked:
            return tuple((picture,) for picture in self.stacked)
        return self.close if way == "close" and self.close else self.rows

    def size(self, share: float, way: Way = "") -> float:
        """How large what is drawn in its pictures is, in that of its usual rows at their usual share."""
        usual, found = (
            sum(picture.lines(at) for row in rows for picture in row)
            for rows, at in ((self.rows, 1.0), (self.standing(way), share))
        )
        return found / max(usual, 1.0)

    @property
    def least(self) -> float:
        """The height in mm of the smallest way it may be set."""
        return min(self.height(LEAST), self.height(LEAST, "close"))


@dataclass(frozen=True)
class Placing:
    """How one unit is set: the `share` of its pictures' room, whether it `breaks` to a new page, the `way` its
    pictures stand, and whether it is `parted`, with its last rows on the next page."""

    share: float
    breaks: bool
    way: Way = ""
    parted: bool = False


def spread_over_pages(units: Sequence[Unit], depth: float, first: float | None = None) -> tuple[Placing, ...]:
    """Placings for `units` on pages `depth` mm deep, the first of which has `first` mm left. A unit taller than a page
    even when small has a page to itself (and flows on)."""
    count = len(units)
    if not count:
        return ()
    # The best way to fill the first n units' pages is the best way for the first m, and one page of the rest: found for
    # every n in turn (as text is broken into lines by Knuth and Plass, Software: Practice and Experience 11, 1981). A
    # page's cost is in `_filled`; trying fewer units a page stops where even the smallest pictures overflow.
    best = [_Best(0.0, 0, 1.0)] + [_Best(float("inf"), 0, 1.0)] * count
    for end in range(1, count + 1):
        kept = _PARTED if units[end - 1].keeps and end < count else 0.0
        for start in range(end - 1, -1, -1):
            whole, over, page = depth if start or first is None else first, best[start].over, units[start:end]
            ends = _ends(page)
            if len(page) > 1 and all(_least(tried) > whole for tried, _ in ends):
                break
            # Below what is left of a unit that was parted, or on a page of its own.
            rooms = [(whole - over, False, 0.0)] if over else []
            rooms.append((whole, start > 0, _WHITE * (1 - over / whole) ** 2 if over else 0.0))
            for room, breaks, white in rooms:
                for tried, rest in ends:
                    if (len(page) > 1 or room < whole or rest) and _least(tried) > room:
                        continue
                    share, ways, cost = _filled(tried, room, last=end == count and not rest)
                    cost += best[start].cost + white + kept
                    left = sum(max(picture.at(share) for picture in row) + page[-1].between for row in rest)
                    if left > depth:
                        continue  # it would need two pages
                    if rest:
                        cost += _OVER + (_last_page(left, depth) if end == count else 0.0)
                    if cost < best[end].cost:
                        best[end] = _Best(cost, start, share, ways, breaks, left)
    placings: list[Placing] = []
    end = count
    while end > 0:
        found = best[end]
        start = found.start
        placings[:0] = [
            Placing(found.share, i == start and found.breaks, found.ways[i - start], i == end - 1 and found.over > 0)
            for i in range(start, end)
        ]
        end = start
    return tuple(placings)


@dataclass(frozen=True)
class _Best:
    """The best pages up to some unit: what they cost, where the last one starts, the share of its pictures, the ways of
    its units, whether it begins a new page, and how many mm of its last unit stand over on the next page."""

    cost: float
    start: int
    share: float
    ways: Sequence[Way] = ()
    breaks: bool = False
    over: float = 0.0


def _ends(page: Sequence[Unit]) -> list[tuple[Sequence[Unit], tuple[tuple[Tall, ...], ...]]]:
    """How a page of units may end: whole, or with fewer rows of the last one, and those that stand over."""
    found: list[tuple[Sequence[Unit], tuple[tuple[Tall, ...], ...]]] = [(page, ())]
    last = page[-1]
    if last.parts:
        for count in range(len(last.rows) - 1, 0, -1):
            found.append(([*page[:-1], replace(last, rows=last.rows[:count], stacked=(), close=())], last.rows[count:]))
    return found


def _least(page: Sequence[Unit]) -> float:
    return sum(unit.least for unit in page)


def _last_page(used: float, room: float) -> float:
    """What it costs that a last page has so many mm on it: it may be short, but a few lines by themselves are worse
    than smaller pictures or a step beside them."""
    white = max(0.0, room - used) / room
    return _PAGE + _LAST * white**2 + _SCRAP * max(0.0, 1.0 - used / (_FEW * room))


def _filled(page: Sequence[Unit], room: float, *, last: bool) -> tuple[float, Sequence[Way], float]:
    """The share that fills `room` best, the ways of the units for it, and what is lost with it."""
    ways: list[Way] = [""] * len(page)
    share, cost = _share_of(page, room, ways, last=last)
    found = share, ways, cost
    used = sum(unit.height(share) for unit in page)
    if share < _CLOSE:
        # Pictures made small in many rows are larger in fewer: tried for one unit more at a time.
        for i, unit in enumerate(page):
            if unit.close:
                tried = [*found[1]]
                tried[i] = "close"
                share, cost = _share_of(page, room, tried, last=last)
                if share > found[0] and cost < found[2]:
                    found = share, tried, cost
        return found
    if last or used > (1 - _ROOMY) * room:
        return found
    # Pictures that stand side by side as wide as they may leave white below them. One below the other each is larger:
    # tried for one unit more at a time, the first ones first, while it makes the page better.
    for i, unit in enumerate(page):
        if unit.stacked:
            tried = [*found[1]]
            tried[i] = "stacked"
            share, cost = _share_of(page, room, tried, last=last)
            if share > _STACKED and cost < found[2]:
                found = share, tried, cost
    return found


def _share_of(page: Sequence[Unit], room: float, ways: Sequence[Way], *, last: bool) -> tuple[float, float]:
    """The share that fills `room` best with the units standing in those `ways`, and what is lost with it."""

    def used(share: float) -> float:
        return sum(unit.height(share, way) for unit, way in zip(page, ways, strict=True))

    most = 1.0 if last else MOST
    if used(LEAST) >= room:
        share = LEAST
    elif used(most) <= room:
        share = most
    else:
        low, high = LEAST, most
        for _ in range(30):
            middle = (low + high) / 2
            low, high = (middle, high) if used(middle) <= room else (low, middle)
        share = low
    over = max(0.0, used(share) - room) / room
    white = max(0.0, room - used(share)) / room
    cost = (_last_page(used(share), room) if last else _PAGE + _WHITE * white**2) + 100 * over
    for unit, way in zip(page, ways, strict=True):
        if unit.rows:
            size = unit.size(share, way)
            cost += (_SHRUNK if size < 1 else _GROWN) * (1 - size) ** 2 / 3
    return share, cost
