"""The placer: where every text of a picture stands, found for all of them at once.

Each text brings the places it may stand at, with what each costs by itself: nothing where it belongs, more the farther
it is from what it names, more with a leader, most as a number that a list below the picture explains. What a place
costs besides is what it covers (lines, cloth, the picture's edge) and what two places do to each other (texts on one
another, leaders across texts and leaders). The sum over the picture is made small: first each text in turn, the one
with the least choice first, takes what costs least beside those that stand; then each looks again at all its places,
and pairs in each other's way move together, until nothing gets better. Everything runs in a fixed order, so that the
same picture gets the same places.

Costs are in ems of the text, so that a picture is lettered alike at every scale.
"""

from __future__ import annotations

import math
from bisect import insort
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass, field
from itertools import count, pairwise

from kit.geometry.region import Spot
from kit.picture.drawn_lines import DrawnLines
from kit.picture.free_places import (
    LEADER_TEXT,
    ON_TEXT,
    OVER_TEXT,
    Around,
    Covers,
    Priced,
    TextPlace,
    WaitingText,
    crosses_box,
)
from kit.picture.lettering import Box, Turned, text_box, turned_overlap

__all__ = ["TextPlace", "WaitingText", "arrange", "taking_room"]

WIDER = 60.0
"""What it costs to take room from the lines at a side: this times the square of the share of the picture it takes."""
LEADERS = 18.0
_FEW, _MANY = 8, 40
"""So many of its best places a text chooses from at first, and where it found none that is free."""
_TOGETHER = 20
"""So many of their places two texts look at that move together."""
_CRAMPED = 8.0
_ROUNDS = 6
_NOWHERE: Box = (math.inf, math.inf, -math.inf, -math.inf)


@dataclass
class _Text:
    """A text with its best places, each with what it costs beside lines, edge and standing texts. Most texts stand at
    one of their first, so a place is looked for when somebody asks for it, and of all no more than `most`."""

    em: float
    coming: Iterator[Priced]
    most: int
    options: list[Priced] = field(default_factory=list)
    at: int = 0

    @property
    def place(self) -> TextPlace:
        return self.options[self.at][1]

    def has(self, number: int) -> bool:
        """Whether there is a place of that number; it is among the `options` then."""
        while len(self.options) <= number < self.most:
            found = next(self.coming, None)
            if found is None:
                self.most = len(self.options)
                break
            self.options.append(found)
        return number < len(self.options)

    def every(self) -> int:
        """How many places there are."""
        self.has(self.most - 1)
        return len(self.options)


def arrange(
    waiting: Sequence[WaitingText],
    lines: DrawnLines,
    limits: Box | None = None,
    standing: Sequence[Turned] = (),
    covered: Covers | None = None,
    grows: Callable[[TextPlace], float] | None = None,
    roughly: bool = False,
) -> list[tuple[TextPlace, float]]:
    """A place for every text, in their order, with what it costs there. `limits` is the edge of the picture, `standing`
    are texts that have their place already, `grows` what it costs that a picture grows by a place,
    `covered` tells of a box how much of it lies where no text may. `roughly` is enough to see how far texts will reach.

    >>> lines = DrawnLines(8.0)
    >>> lines.add(((0.0, 0.0), (100.0, 0.0)), 1.0)
    >>> here, above = TextPlace(50, 0, 30, 4, 0, cost=0.0), TextPlace(50, 4, 30, 4, 0, cost=1.0)
    >>> [(place, cost)] = arrange([WaitingText(lambda: (here, above), em=4.0)], lines)
    >>> place.y, cost
    (4, 1.0)
    """
    around = Around(lines, limits, standing, covered, grows)
    if roughly:
        return [(place, cost) for cost, place in map(around.roughly, waiting)]
    texts = [_Text(text.em, around.one_after_another(text, _FEW), _FEW) for text in waiting]
    everyone = list(range(len(texts)))
    # The text that loses most by its second place is set first.
    order = sorted(everyone, key=lambda i: (-_regret(texts[i]), i))
    pairs = _Pairs(texts, standing=False)
    for i in order:
        pairs.put(i, pairs.best(i)[0])
    _settle(texts, pairs, order)
    cramped = [i for i in everyone if pairs.cost(i, texts[i].at) > _CRAMPED]
    if cramped:
        for i in cramped:
            kept = texts[i].options[texts[i].at]
            more = texts[i] = _Text(waiting[i].em, iter(()), 0, around.best(waiting[i], _MANY))
            if all(place != kept[1] for _, place in more.options):  # of places that cost alike another was taken
                more.options.append(kept)
            more.at = next(k for k, (_, place) in enumerate(more.options) if place == kept[1])
        pairs = _Pairs(texts, standing=True)
        _settle(texts, pairs, order)
    return [(text.place, pairs.cost(i, text.at)) for i, text in enumerate(texts)]


def _settle(texts: Sequence[_Text], pairs: _Pairs, order: Sequence[int]) -> None:
    """Lets every text look for a better place beside all others until none finds one."""
    for _ in range(_ROUNDS):
        changed = False
        for i in order:
            at, cost = pairs.best(i)
            if at != texts[i].at and cost < pairs.cost(i, texts[i].at) - 1e-9:
                pairs.put(i, at)
                changed = True
        changed |= _move_pairs(texts, pairs)
        if not changed:
            break


def _regret(text: _Text) -> float:
    text.has(3)
    return text.options[min(3, len(text.options) - 1)][0] - text.options[0][0]


def taking_room(drawn: Box, wide: float, high: float) -> Callable[[TextPlace], float]:
    """What it costs that a text reaches beyond the lines (`drawn`) of a picture `wide` and `high` mm, 0 where it may be
    as large as it likes: so much less room is left for them."""

    def cost(place: TextPlace) -> float:
        x, y, half_x, half_y = place.x, place.y, place.wide / 2, place.high / 2
        if place.angle:
            x0, y0, x1, y1 = text_box(*place.box)
        else:
            x0, y0, x1, y1 = x - half_x, y - half_y, x + half_x, y + half_y
        if x0 >= drawn[0] and x1 <= drawn[2] and y0 >= drawn[1] and y1 <= drawn[3]:
            return 0.0
        across = max(0.0, drawn[0] - x0, x1 - drawn[2]) / wide if wide else 0.0
        up = max(0.0, drawn[1] - y0, y1 - drawn[3]) / high if high else 0.0
        return WIDER * (across * across + up * up)

    return cost


class _Pairs:
    """What two places do to each other, worked out once for each pair, and what every text does to the others where
    they stand now."""

    def __init__(self, texts: Sequence[_Text], standing: bool) -> None:
        self.texts = texts
        self._known: dict[tuple[int, int, int, int], float] = {}
        self._boxes: list[list[Box]] = [[] for _ in texts]
        # Only texts whose places come near each other are ever asked about.
        self._whole = [_NOWHERE for _ in texts]
        self._near: list[list[int]] = [[] for _ in texts]
        for i in range(len(texts)):
            self._reaches(i)
        self._now = [boxes[text.at] if standing else _NOWHERE for text, boxes in zip(texts, self._boxes, strict=True)]

    def _reaches(self, i: int) -> None:
        """Takes up the places of text i that were found since."""
        boxes, options = self._boxes[i], self.texts[i].options
        if len(boxes) == len(options):
            return
        boxes += [_reach(place) for _, place in options[len(boxes) :]]
        self._whole[i] = left, low, right, top = _round(boxes)
        near = self._near[i]
        for j, (x0, y0, x1, y1) in enumerate(self._whole):
            if j not in near and j != i and left < x1 and x0 < right and low < y1 and y0 < top:
                insort(near, j)
                insort(self._near[j], i)

    def has(self, i: int, at: int) -> bool:
        """Whether text i has a place of that number."""
        found = self.texts[i].has(at)
        self._reaches(i)
        return found

    def every(self, i: int) -> int:
        """How many places text i has."""
        count = self.texts[i].every()
        self._reaches(i)
        return count

    def put(self, i: int, at: int) -> None:
        self.texts[i].at = at
        self._now[i] = self._boxes[i][at]

    def away(self, i: int) -> None:
        """Text i stands nowhere until it is put again."""
        self._now[i] = _NOWHERE

    def between(self, i: int, a: int, j: int, b: int) -> float:
        one, two = self._boxes[i][a], self._boxes[j][b]
        if one[0] >= two[2] or two[0] >= one[2] or one[1] >= two[3] or two[1] >= one[3]:
            return 0.0
        if i > j:
            i, a, j, b = j, b, i, a
        key = (i, a, j, b)
        cost = self._known.get(key)
        if cost is None:
            first, second = self.texts[i], self.texts[j]
            cost = self._known[key] = _clash(first.options[a][1], second.options[b][1], min(first.em, second.em))
        return cost

    def cost(self, i: int, at: int, enough: float = math.inf) -> float:
        """What text i costs at a place beside all others where they stand; of more than `enough` only so much that it
        is more."""
        texts, now = self.texts, self._now
        total = texts[i].options[at][0]
        x0, y0, x1, y1 = self._boxes[i][at]
        for j in self._near[i]:
            left, low, right, top = now[j]
            if left < x1 and x0 < right and low < y1 and y0 < top:
                total += self.between(i, at, j, texts[j].at)
                if total >= enough:
                    break
        return total

    def best(self, i: int) -> tuple[int, float]:
        """The place of text i that costs least beside the others."""
        found, least = 0, math.inf
        options = self.texts[i].options
        for at in count():
            if not self.has(i, at) or options[at][0] >= least:
                break
            cost = self.cost(i, at, least - 1e-9)
            if cost < least - 1e-9:
                found, least = at, cost
        return found, least

    def clashing(self) -> list[tuple[int, int]]:
        texts = self.texts
        return [
            (i, j)
            for i, near in enumerate(self._near)
            for j in near
            if i < j and self.between(i, texts[i].at, j, texts[j].at) > 0.0
        ]


def _move_pairs(texts: Sequence[_Text], pairs: _Pairs) -> bool:
    """Moves two texts together that are in each other's way, or one and whoever stands where it would go."""
    changed = False
    for i, j in pairs.clashing():
        one, two = texts[i].at, texts[j].at
        pairs.away(i)
        pairs.away(j)
        own = [pairs.cost(i, at) for at in range(max(one + 1, min(pairs.every(i), _TOGETHER)))]
        its = [pairs.cost(j, at) for at in range(max(two + 1, min(pairs.every(j), _TOGETHER)))]
        now = own[one] + its[two] + pairs.between(i, one, j, two)
        best = (now - 1e-9, one, two)
        for a, cost in enumerate(own):
            for b, other in enumerate(its):
                if cost + other < best[0]:
                    best = min(best, (cost + other + pairs.between(i, a, j, b), a, b))
        changed |= (best[1], best[2]) != (one, two)
        pairs.put(i, best[1])
        pairs.put(j, best[2])
    return changed


# ---- what is in the way -----------------------------------------------------------------------------------


def _clash(a: TextPlace, b: TextPlace, em: float) -> float:
    cost = 0.0
    shared = turned_overlap(a.box, b.box)
    if shared > 1e-9:
        cost += ON_TEXT + OVER_TEXT * shared / em**2
    for p, q in pairwise(a.leader):
        cost += LEADER_TEXT * crosses_box(p, q, b.box)
        for r, s in pairwise(b.leader):
            cost += LEADERS * _cross(p, q, r, s)
    for p, q in pairwise(b.leader):
        cost += LEADER_TEXT * crosses_box(p, q, a.box)
    return cost


def _reach(place: TextPlace) -> Box:
    """All that a text may touch at a place, its leader with it."""
    x0, y0, x1, y1 = text_box(*place.box)
    for x, y in place.leader:
        x0, y0, x1, y1 = min(x0, x), min(y0, y), max(x1, x), max(y1, y)
    return (x0, y0, x1, y1)


def _round(boxes: Sequence[Box]) -> Box:
    """The box round boxes."""
    return (min(b[0] for b in boxes), min(b[1] for b in boxes), max(b[2] for b in boxes), max(b[3] for b in boxes))


def _cross(p: Spot, q: Spot, r: Spot, s: Spot) -> bool:
    """Whether two straight lines cross, or run on one another."""

    def side(a: Spot, b: Spot, c: Spot) -> float:
        return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0])

    one, two, three, four = side(p, q, r), side(p, q, s), side(r, s, p), side(r, s, q)
    return one * two < 0.0 and three * four < 0.0
