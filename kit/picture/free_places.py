"""The best places of one text of a picture: what each costs beside the lines, the edge, the cloth and the texts that
stand already. Places wait in the order of what they cost at least, as far as they were looked at; most are never looked
at closely.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass
from heapq import heappop, heappush, heapreplace
from itertools import pairwise
from operator import itemgetter
from typing import NamedTuple

from kit.geometry.region import Spot
from kit.picture.drawn_lines import DrawnLines, inside_share
from kit.picture.lettering import Box, Turned, turned_overlap

LINE, TOUCHED = 5.0, 4.0
"""What an em of line under a text costs, and what a line costs that is touched at all."""
OVER_TEXT, ON_TEXT = 30.0, 25.0
"""What an em2 of one text on another costs, and what it costs that they touch at all."""
OUTSIDE, CUT, ON_CLOTH = 60.0, 6.0, 12.0
LEADER_LINE, LEADER_TEXT = 0.8, 14.0
_QUICKLY, _NEAR_LINES, _SOME_LINES, _LINES, _ALL = range(5)
"""How far a place was looked at: quickly; lines may run under it, how many is not known; some of these counted; all
counted; all of it."""
_HAIR = 1e-9
"""By so much less a place is held to cost than its quick bound: two sums of the same lengths must not decide which of
two places that cost alike comes first."""


class TextPlace(NamedTuple):
    """Where a text may stand: the middle, size and angle of its box, what it costs by itself, the points of its leader
    from the text to what it names, and in which `form` it stands there (0 as written)."""

    x: float
    y: float
    wide: float
    high: float
    angle: float
    cost: float
    leader: tuple[Spot, ...] = ()
    form: int = 0

    @property
    def box(self) -> Turned:
        return (self.x, self.y, self.wide, self.high, self.angle)


Priced = tuple[float, TextPlace]
"""A place and what it costs."""


@dataclass(frozen=True)
class WaitingText:
    """A text that waits for its place. `places` gives one after another, with rising cost up to `rising`; those that
    cost more may come in any order, and are thought of only where the ones before them are not enough. Lines of `owner`
    are its own and may run under it."""

    places: Callable[[], Iterable[TextPlace]]
    em: float
    owner: int = -2
    rising: float = math.inf


Covers = Callable[[Turned], float]
"""How much (0..1) of a box of text lies where none may: on cloth."""


@dataclass(frozen=True)
class Around:
    """What stands in the way of a text: `lines`, the edge of the picture (`limits`), texts that are `standing`, what of
    a box is `covered`, and what it costs that the picture `grows` by a place."""

    lines: DrawnLines
    limits: Box | None = None
    standing: Sequence[Turned] = ()
    covered: Covers | None = None
    grows: Callable[[TextPlace], float] | None = None

    def best(self, text: WaitingText, most: int) -> list[Priced]:
        """The `most` best places, by rising cost."""
        em, lines = text.em, self.lines
        found: list[tuple[float, int, TextPlace]] = []
        worst: list[float] = []  # of the best so far, the worst first (negative: a heap)
        queue: list[tuple[float, int, float, bool, TextPlace]] = []
        places = iter(text.places())
        coming = next(places, None)
        count, enough = 0, math.inf
        while True:
            while coming is not None and coming.cost < enough and not (queue and queue[0][0] <= coming.cost):
                place, coming = coming, next(places, None)
                count += 1
                cost = self._quickly(place, em)
                if cost >= enough:
                    continue
                least, highest = self._between(place, text)
                at_least = cost + TOUCHED + LINE * least / em if least else cost
                if at_least < enough:
                    heappush(queue, (at_least, count, cost, highest > 0.0, place))
            if not queue or queue[0][0] >= enough:
                break
            _, number, cost, near, place = heappop(queue)
            if near:
                wide, left = place.wide + em * 0.2, (enough - cost) / LINE * em
                under = lines.under(place.x, place.y, wide, place.high, place.angle, text.owner, left)
                if under:
                    cost += TOUCHED + LINE * under / em
            if cost < enough:
                cost = self._closely(place, cost, text)
            if cost >= enough:
                continue
            found.append((cost, number, place))
            if len(worst) < most:
                heappush(worst, -cost)
            else:
                heapreplace(worst, -cost)
            if len(worst) == most:
                enough = -worst[0]
        found.sort(key=itemgetter(0, 1))
        return [(cost, place) for cost, _, place in found[:most]]

    def one_after_another(self, text: WaitingText, most: int) -> Iterator[Priced]:
        """The `most` best places, by rising cost: each is looked for when somebody asks for it."""
        em, given = text.em, 0
        queue: list[tuple[float, int, int, float, TextPlace]] = []
        places = iter(text.places())
        coming = next(places, None)
        count = 0
        while given < most:
            while coming is not None and not (queue and queue[0][0] <= coming.cost):
                place, coming = coming, next(places, None)
                count += 1
                cost = self._quickly(place, em)
                heappush(queue, (cost, count, _QUICKLY, cost, place))
            if not queue:
                return
            at_least, number, known, cost, place = heappop(queue)
            if at_least > text.rising:
                yield from self.best(text, most)[given:]
                return
            if known == _QUICKLY:
                least, highest = self._between(place, text)
                known = _NEAR_LINES if highest > 0.0 else _LINES
                if least:
                    heappush(queue, (cost + TOUCHED + LINE * least / em - _HAIR, number, known, cost, place))
                    continue
            if known in (_NEAR_LINES, _SOME_LINES):
                # Of most places it is enough to know that others cost less; their lines are counted on if they come up
                # again.
                wide, enough = place.wide + em * 0.2, math.inf
                if known == _NEAR_LINES and queue:
                    least = queue[0][0] if coming is None else min(queue[0][0], coming.cost)
                    enough = max(least - cost - TOUCHED, 0.0) / LINE * em
                under = self.lines.under(place.x, place.y, wide, place.high, place.angle, text.owner, enough)
                if under > enough:
                    heappush(queue, (cost + TOUCHED + LINE * under / em, number, _SOME_LINES, cost, place))
                    continue
                known = _LINES
                if under:
                    cost += TOUCHED + LINE * under / em
                    if queue and queue[0] < (cost, number):
                        heappush(queue, (cost, number, known, cost, place))
                        continue
            if known == _LINES:
                cost = self._closely(place, cost, text)
                dearer = coming is not None and coming.cost < cost
                if dearer or cost > text.rising or (queue and queue[0] < (cost, number)):
                    heappush(queue, (cost, number, _ALL, cost, place))
                    continue
            given += 1
            yield cost, place

    def roughly(self, text: WaitingText) -> Priced:
        """The place that costs least as far as is quickly known, and what it costs at least."""
        em = text.em
        queue: list[tuple[float, int, TextPlace]] = []
        places = iter(text.places())
        coming = next(places, None)
        while coming is not None and not (queue and queue[0][0] <= coming.cost):
            place, coming = coming, next(places, None)
            cost = self._quickly(place, em)
            least, _ = self._between(place, text)
            heappush(queue, (cost + TOUCHED + LINE * least / em if least else cost, len(queue), place))
        at_least, _, place = queue[0]
        return at_least, place

    def _quickly(self, place: TextPlace, em: float) -> float:
        """What a place costs by itself, at the edge of the picture and on standing texts."""
        cost = place.cost
        if self.limits is not None:
            beyond = _beyond(place, self.limits)
            if beyond:
                cost += OUTSIDE * beyond + (CUT if beyond > 0.005 else 0.0)
        if self.grows is not None:
            cost += self.grows(place)
        for other in self.standing:
            shared = turned_overlap(place.box, other)
            if shared > 1e-9:
                cost += ON_TEXT + OVER_TEXT * shared / em**2
        return cost

    def _between(self, place: TextPlace, text: WaitingText) -> Spot:
        """The least and the most of line under a place, with a hair of paper round the text: a line that touches it is
        read as part of a letter."""
        wide = place.wide + text.em * 0.2
        return self.lines.between(place.x, place.y, wide, place.high, place.angle, text.owner)

    def _closely(self, place: TextPlace, cost: float, text: WaitingText) -> float:
        """`cost` with that of the cloth under a place and of what its leader crosses."""
        em = text.em
        if self.covered is not None:
            share = self.covered(place.box)
            cost += share and ON_CLOTH * (0.5 + share)
        for (ax, ay), (bx, by) in pairwise(place.leader):
            size = math.hypot(bx - ax, by - ay)
            if size > 1e-9:
                middle = (ax + bx) / 2, (ay + by) / 2
                run = self.lines.under(*middle, size, em * 0.3, math.atan2(by - ay, bx - ax), text.owner)
                cost += LEADER_LINE * run / em
                for other in self.standing:
                    cost += LEADER_TEXT * crosses_box((ax, ay), (bx, by), other)
        return cost


def _beyond(place: TextPlace, limits: Box) -> float:
    """How much of a box lies outside the picture (0..1)."""
    wide, high = place.wide, place.high
    if place.angle:
        c, s = abs(math.cos(place.angle)), abs(math.sin(place.angle))
        wide, high = wide * c + high * s, wide * s + high * c
    x, y = place.x, place.y
    if (
        x - wide / 2 >= limits[0]
        and x + wide / 2 <= limits[2]
        and y - high / 2 >= limits[1]
        and y + high / 2 <= limits[3]
    ):
        return 0.0
    across = min(place.x + wide / 2, limits[2]) - max(place.x - wide / 2, limits[0])
    up = min(place.y + high / 2, limits[3]) - max(place.y - high / 2, limits[1])
    if across <= 0.0 or up <= 0.0:
        return 1.0
    return max(0.0, 1.0 - across * up / (wide * high) if wide * high else 0.0)


def crosses_box(p: Spot, q: Spot, box: Turned) -> bool:
    """Whether a straight line runs through a box."""
    x, y, wide, high, angle = box
    c, s = math.cos(angle), math.sin(angle)
    ax, ay, bx, by = p[0] - x, p[1] - y, q[0] - x, q[1] - y
    ax, ay = ax * c + ay * s, ay * c - ax * s
    bx, by = bx * c + by * s, by * c - bx * s
    return inside_share(ax, ay, bx, by, -wide / 2, -high / 2, wide / 2, high / 2) > 0.0
