"""Which steps share a page, and how tall their pictures are, so that pages come out full.

A step is never split from its picture. Left to themselves such steps leave half-empty pages; here the heights of a
part's pictures are chosen page by page, a little smaller or larger than their usual room, so that each page is as
full as it can be. Among all ways to share the steps out the one with least white and least shrinking is taken
(dynamic programming over page breaks, as lines are broken into paragraphs).
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

LEAST, MOST = 0.58, 2.2  # shares of a picture's usual room
_WHITE, _SHRUNK, _GROWN, _LAST, _PAGE, _PARTED = 10.0, 3.0, 0.8, 1.0, 0.3, 20.0


@dataclass(frozen=True)
class Tall:
    """A picture: `room` is the height (mm) it may take at its usual share, `wide` the height at which it is as wide as
    its column and grows no more; its frame and caption add `around`."""

    room: float
    wide: float
    around: float = 0.0

    def at(self, share: float) -> float:
        return min(self.room * share, self.wide) + self.around


@dataclass(frozen=True)
class Unit:
    """What must stay on one page: `fixed` mm of text and space under or over its rows of pictures, and at least
    `beside` mm where text stands next to them. `keeps`: the page should not break after it (words that lead
    on to what follows)."""

    fixed: float
    rows: tuple[tuple[Tall, ...], ...] = ()
    beside: float = 0.0
    keeps: bool = False

    def height(self, share: float) -> float:
        """Height in mm with the pictures at `share` of their room."""
        return self.fixed + max(self.beside, sum(max(picture.at(share) for picture in row) for row in self.rows))


@dataclass(frozen=True)
class Placing:
    """How one unit is set: the `share` of its pictures' room, and whether it `breaks` to a new page."""

    share: float
    breaks: bool


def share_out(units: Sequence[Unit], depth: float, first: float | None = None) -> tuple[Placing, ...]:
    """Placings for `units` on pages `depth` mm deep, the first of which has `first` mm left. A unit taller than a page
    even when small has a page to itself (and flows on)."""
    count = len(units)
    if not count:
        return ()
    # The best way to fill the first n units' pages is the best way for the first m, and one page of the rest: found for
    # every n in turn (as text is broken into lines by Knuth and Plass, Software: Practice and Experience 11, 1981). A
    # page's cost is in `_filled`; trying fewer units a page stops where even the smallest pictures overflow.
    best: list[tuple[float, int, float]] = [(0.0, 0, 1.0)] + [(float("inf"), 0, 1.0)] * count
    for end in range(1, count + 1):
        parted = _PARTED if units[end - 1].keeps and end < count else 0.0
        for start in range(end - 1, -1, -1):
            room = depth if start or first is None else first
            page = units[start:end]
            if len(page) > 1 and sum(unit.height(LEAST) for unit in page) > room:
                break
            share, cost = _filled(page, room, last=end == count)
            if best[start][0] + cost + parted < best[end][0]:
                best[end] = (best[start][0] + cost + parted, start, share)
    placings: list[Placing] = []
    end = count
    while end > 0:
        _, start, share = best[end]
        placings[:0] = [Placing(share, i == start and start > 0) for i in range(start, end)]
        end = start
    return tuple(placings)


def _filled(page: Sequence[Unit], room: float, *, last: bool) -> tuple[float, float]:
    """The share that fills `room` best, and what is lost with it."""

    def used(share: float) -> float:
        return sum(unit.height(share) for unit in page)

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
    cost = _PAGE + (_LAST if last else _WHITE) * white**2 + 100 * over
    cost += (_SHRUNK if share < 1 else _GROWN) * (1 - share) ** 2 * sum(bool(unit.rows) for unit in page) / 3
    return share, cost
