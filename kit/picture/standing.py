"""Where a text may stand, by what it names: along a line, round a point, inside an area, at a dimension; and beside
the picture with a leader.

Everything here is in mm of the drawing; `em` is the type size there. Places come cheapest first. A leader leaves its
text at the middle of a side and runs level, upright or at 45 degrees, for so the eye follows it through a drawing of
slanting lines (common practice in technical illustration, no source).
"""

from __future__ import annotations

import math
from bisect import bisect_right, insort
from collections.abc import Callable, Iterable, Iterator, Sequence
from functools import partial
from itertools import accumulate, pairwise
from operator import itemgetter

from kit.geometry.region import Spot
from kit.picture.drawn_lines import Box
from kit.picture.free_places import TextPlace
from kit.picture.lettering import upright

Size = tuple[float, float]
"""Width and height of a text."""
NEAR, LED, ASIDE, NUMBERED = 0.0, 5.0, 6.0, 8.0
"""What the kinds of places cost to begin with: beside what is named, led to it, in the margin, as a number."""

_D = math.sqrt(0.5)
_OVER = 2.5  # what a leader costs that crosses the whole of a window
END = 0.06
"""ems that the box of a text is longer at each end than its letters."""
_WAYS: Sequence[Spot] = ((1, 0), (-1, 0), (0, 1), (0, -1), (_D, _D), (-_D, _D), (_D, -_D), (-_D, -_D))

_FAR, _ASLANT = 0.28, 0.3
"""What an em of leader costs, and what it costs that it is neither level nor upright."""
_LEADERS = sorted(
    [(far, *way) for far in (1.6, 2.6, 4.0, 5.5, 7.5, 10.0) for way in _WAYS],
    key=lambda one: one[0] * _FAR + (_ASLANT if one[1] and one[2] else 0.0),
)
"""How long a leader is and which way it runs, in the order of what that costs: few of them are ever asked for."""


class WalkedLine:
    """A line as it is walked: its points, and the place and direction at any distance along it."""

    def __init__(self, points: Sequence[Spot]) -> None:
        self.points = points
        steps = [math.dist(a, b) for a, b in pairwise(points)]
        self.marks = [0.0, *accumulate(steps)]
        self.length = self.marks[-1]

    def at(self, along: float) -> Spot:
        i = min(max(bisect_right(self.marks, along) - 1, 0), len(self.points) - 2)
        (ax, ay), (bx, by) = self.points[i], self.points[i + 1]
        size = self.marks[i + 1] - self.marks[i]
        t = (along - self.marks[i]) / size if size > 1e-12 else 0.0
        return (ax + (bx - ax) * t, ay + (by - ay) * t)

    def chord(self, along: float, wide: float) -> tuple[Spot, float, float, float]:
        """The stretch of the line that a text of that width lies along: the middle of its chord, its angle, and how far
        the line bulges to the left and right of the chord."""
        low, high = along - wide / 2, along + wide / 2
        a, b = self.at(low), self.at(high)
        size = math.dist(a, b)
        if size < 1e-9:
            return a, 0.0, 0.0, 0.0
        dx, dy = (b[0] - a[0]) / size, (b[1] - a[1]) / size
        left = right = 0.0
        i, j = bisect_right(self.marks, low), bisect_right(self.marks, high)
        for x, y in self.points[i:j]:
            off = dx * (y - a[1]) - dy * (x - a[0])
            left, right = max(left, off), max(right, -off)
        return ((a[0] + b[0]) / 2, (a[1] + b[1]) / 2), math.atan2(dy, dx), left, right


def near_first(
    near: Iterable[TextPlace], floor: float, *later: Callable[[], Iterable[TextPlace]]
) -> Iterator[TextPlace]:
    """Places by rising cost; those of `later`, which cost at least `floor`, are thought of only when need be."""
    rest = iter(near)
    for place in rest:
        if place.cost > floor:
            yield from _merged((place, *rest), *(places() for places in later))
            return
        yield place
    yield from _merged(*(places() for places in later))


def _merged(*ways: Iterable[TextPlace]) -> Iterator[TextPlace]:
    """Places of several ways, each by rising cost, together by rising cost; of those that cost alike the ones of an
    earlier way first, as `heapq.merge` gives them: a picture asks for hundreds and hears of few."""
    heads: list[tuple[float, int, TextPlace, Iterator[TextPlace]]] = []
    for number, way in enumerate(ways):
        places = iter(way)
        first = next(places, None)
        if first is not None:
            heads.append((first.cost, number, first, places))
    heads.sort(key=_first)
    while len(heads) > 1:
        _, number, place, places = heads.pop(0)
        coming: TextPlace | None = place
        limit = heads[0][:2]
        while coming is not None and (coming.cost, number) < limit:
            yield coming
            coming = next(places, None)
        if coming is not None:
            insort(heads, (coming.cost, number, coming, places), key=_first)
    for _, _, place, places in heads:
        yield place
        yield from places


def _first(head: tuple[float, int, TextPlace, Iterator[TextPlace]]) -> tuple[float, int]:
    return head[:2]


def along_line(way: WalkedLine, size: Size, em: float, outward: Spot | None = None) -> Iterator[TextPlace]:
    """Along a line on either side of it, `outward` first (a direction); where the line is shorter than the text,
    beside its middle; then level; then with a leader."""
    wide, high = size
    shares = (0.5, 0.38, 0.62, 0.27, 0.73, 0.16, 0.84)
    found: list[TextPlace] = []
    short = max(0.0, wide - way.length) / em
    for share in shares:
        (x, y), angle, left, right = way.chord(way.length * share, min(wide, way.length))
        lie, sx, sy = upright(angle), -math.sin(angle), math.cos(angle)
        for side, bulge in ((1.0, left), (-1.0, right)):
            nx, ny = sx * side, sy * side
            inner = outward is not None and nx * outward[0] + ny * outward[1] < 0
            cost = abs(share - 0.5) * 2.0 + inner * 0.7 + short * 0.5 + bulge / em * 0.3
            for gap in (0.2, 0.75):
                away = bulge + high / 2 + gap * em
                found.append(TextPlace(x + nx * away, y + ny * away, wide, high, lie, NEAR + cost + (gap - 0.2) * 1.5))
    for share in (0.5, 0.3, 0.7):
        (x, y), angle, _, _ = way.chord(way.length * share, em)
        for side in (1.0, -1.0):
            nx, ny = -math.sin(angle) * side, math.cos(angle) * side
            reach = abs(nx) * wide / 2 + abs(ny) * high / 2 + 0.35 * em
            inner = outward is not None and nx * outward[0] + ny * outward[1] < 0
            cost = 1.0 + abs(share - 0.5) * 2.0 + inner * 0.7
            found.append(TextPlace(x + nx * reach, y + ny * reach, wide, high, 0.0, NEAR + cost))
    far = (partial(led, way.at(way.length * share), size, em, abs(share - 0.5)) for share in (0.5, 0.25, 0.75))
    yield from near_first(sorted(found, key=_cost), LED, *far)


def round_point(spot: Spot, size: Size, em: float, outward: Spot | None = None) -> Iterator[TextPlace]:
    """On any side of a point, `outward` first, then farther off, then with a leader."""
    wide, high = size
    x, y = spot
    found = []
    for gap in (0.42, 0.85):
        for dx, dy in _WAYS:
            away = 0.0 if outward is None else 0.6 * (1 - dx * outward[0] - dy * outward[1])
            sx = (dx > 0.1) - (dx < -0.1)
            sy = (dy > 0.1) - (dy < -0.1)
            to = TextPlace(
                x + sx * wide / 2 + dx * gap * em, y + sy * high / 2 + dy * gap * em, wide, high, 0.0,
                NEAR + away + (gap - 0.42) * 2.5,
            )  # fmt: skip
            found.append(to)
    yield from near_first(sorted(found, key=_cost), LED, partial(led, spot, size, em))


def in_area(points: Sequence[Spot], size: Size, em: float, most: int = 11) -> Iterator[TextPlace]:
    """Inside an outline, its middle first, level."""
    wide, high = size
    xs, ys = [p[0] for p in points], [p[1] for p in points]
    x0, x1, y0, y1 = min(xs), max(xs), min(ys), max(ys)
    cx, cy = centre(points)
    found = []
    columns = max(1, min(most, int((x1 - x0 - wide) / (0.6 * em)) + 1))
    rows = max(1, min(most, int((y1 - y0 - high) / (0.8 * high)) + 1))
    for x in _spread(x0 + wide / 2, x1 - wide / 2, columns, cx):
        for y in _spread(y0 + high / 2, y1 - high / 2, rows, cy):
            found.append((NEAR + 0.06 * math.hypot(x - cx, y - cy) / em, x, y, True))
    found += [(3.0, cx, y0 - high, False), (3.2, cx, y1 + high, False)]
    found.sort(key=itemgetter(0))
    for cost, x, y, inside in found:
        if not inside or within(points, x, y):
            yield TextPlace(x, y, wide, high, 0.0, cost)


def _spread(low: float, high: float, count: int, middle: float) -> list[float]:
    if high <= low or count < 2:
        return [middle]
    return [*((low + (high - low) * i / (count - 1)) for i in range(count)), middle]


def at_dimension(way: WalkedLine, size: Size, em: float, heads: float, near: float) -> Iterator[TextPlace]:
    """On the line of a dimension, where it is long enough beside its arrow heads; else beside it or behind an end of
    it, never more than `near` from it."""
    wide, high = size
    found: list[TextPlace] = []
    room = way.length - 2 * heads
    shares = (0.5, 0.36, 0.64, 0.25, 0.75)
    if room > wide:
        for share in shares:
            if way.length * min(share, 1 - share) < wide / 2 + heads:
                continue
            (x, y), angle, left, right = way.chord(way.length * share, wide)
            if max(left, right) < high * 0.3:
                found.append(TextPlace(x, y, wide, high, upright(angle), abs(share - 0.5) * 2.0))
    gap = min(0.22 * em, near * 0.9)
    half = wide / 2 - END * em  # white is reckoned from the letters, at their ends too
    for share in shares:
        (x, y), angle, left, right = way.chord(way.length * share, min(wide, way.length))
        over = max(0.0, wide - way.length) / em
        for side, bulge in ((1.0, left), (-1.0, right)):
            nx, ny = -math.sin(angle) * side, math.cos(angle) * side
            away = bulge + high / 2 + gap
            cost = 0.8 + abs(share - 0.5) * 2.0 + over * 0.4 + bulge / em * 0.3
            found.append(TextPlace(x + nx * away, y + ny * away, wide, high, upright(angle), cost))
        (x, y), angle, _, _ = way.chord(way.length * share, em)
        for side in (1.0, -1.0):
            nx, ny = -math.sin(angle) * side, math.cos(angle) * side
            reach = abs(nx) * half + abs(ny) * high / 2 + gap
            cost = 0.9 + abs(share - 0.5) * 2.0 + abs(ny) * 0.5
            found.append(TextPlace(x + nx * reach, y + ny * reach, wide, high, 0.0, cost))
    for along, sign in ((0.0, -1.0), (way.length, 1.0)):
        x, y = way.at(along)
        _, angle, _, _ = way.chord(min(max(along, em / 4), way.length), em / 2)
        dx, dy = math.cos(angle) * sign, math.sin(angle) * sign
        reach = half + gap
        found.append(TextPlace(x + dx * reach, y + dy * reach, wide, high, upright(angle), 1.3))
        for sx, sy in ((0.0, 0.0), (dy, -dx), (-dy, dx)):
            vx, vy = dx + sx, dy + sy
            off = gap * 0.7 if sx or sy else gap
            reach_x = vx and (half + off) * (1 if vx > 0 else -1) * min(1.0, abs(vx) * 1.2)
            reach_y = vy and (high / 2 + off) * (1 if vy > 0 else -1) * min(1.0, abs(vy) * 1.2)
            found.append(TextPlace(x + reach_x, y + reach_y, wide, high, 0.0, 1.5 + 0.3 * bool(sx or sy)))
    middle = way.at(way.length / 2)
    yield from near_first(sorted(found, key=_cost), LED, partial(led, middle, size, em, 0.5))


def where_it_was_put(x: float, y: float, angle: float, size: Size, em: float) -> Iterator[TextPlace]:
    """At its own place, then on ever wider rings round it."""
    wide, high = size
    c, s = math.cos(angle), math.sin(angle)
    found = [TextPlace(x, y, wide, high, angle, 0.0)]
    for along, across in (
        (0.0, 1.1), (0.0, -1.1), (0.3, 0.0), (-0.3, 0.0), (0.55, 0.0), (-0.55, 0.0), (0.55, 1.1), (-0.55, 1.1),
        (0.55, -1.1), (-0.55, -1.1), (0.0, 2.2), (0.0, -2.2), (1.1, 0.0), (-1.1, 0.0),
    ):  # fmt: skip
        a, b = along * wide, across * high
        far = math.hypot(a, b) / em
        found.append(TextPlace(x + a * c - b * s, y + a * s + b * c, wide, high, angle, 0.4 + far * 0.35))
    for ring in (1.6, 2.6, 3.6, 5.0):
        for turn in range(12):
            way = turn * math.pi / 6
            a, b = math.cos(way) * (wide * 0.35 + high * ring), math.sin(way) * high * ring
            for lie in (angle, 0.0) if angle else (0.0,):
                cl, sl = math.cos(lie), math.sin(lie)
                cost = 1.0 + math.hypot(a, b) / em * 0.5
                found.append(TextPlace(x + a * cl - b * sl, y + a * sl + b * cl, wide, high, lie, cost))
    yield from sorted(found, key=_cost)


def led(spot: Spot, size: Size, em: float, more: float = 0.0) -> Iterator[TextPlace]:
    """Ever farther from a point, with a straight leader to it in one of eight directions."""
    wide, high = size
    x, y = spot
    for far, dx, dy in _LEADERS:
        tip = (x + dx * 0.28 * em, y + dy * 0.28 * em)
        root = (x + dx * far * em, y + dy * far * em)
        # The text hangs on the end of its leader by the side that is turned to it.
        if abs(dx) > 0.1:
            to_x, to_y = root[0] + math.copysign(wide / 2 + 0.15 * em, dx), root[1]
        else:
            to_x, to_y = root[0], root[1] + math.copysign(high / 2, dy)
        cost = LED + more + far * _FAR + (_ASLANT if dx and dy else 0.0)
        yield TextPlace(to_x, to_y, wide, high, 0.0, cost, (root, tip))


def in_margin(spot: Spot, size: Size, em: float, content: Box, rows: int = 7) -> Iterator[TextPlace]:
    """Left and right of everything drawn (`content`), with a leader that runs level and then at 45 degrees to the
    point, or the other way round."""
    wide, high = size
    x, y = spot
    found = []
    for side in (-1.0, 1.0):
        edge = content[0] if side < 0 else content[2]
        root_x = edge + side * 0.6 * em
        for row in range(-rows, rows + 1):
            at = y + row * high * 1.15
            rise, run = abs(at - y), abs(root_x - x)
            if rise > run:
                continue
            bend = (x + side * rise, at)
            leader = ((root_x, at), bend, spot) if rise > 1e-9 else ((root_x, at), spot)
            cost = ASIDE + 0.05 * run / em + 0.12 * rise / em
            found.append(TextPlace(root_x + side * (wide / 2 + 0.15 * em), at, wide, high, 0.0, cost, leader))
    yield from sorted(found, key=_cost)


def round_window(
    spots: Sequence[tuple[Spot, float]], size: Size, em: float, window: Box, drawn: Box
) -> Iterator[TextPlace]:
    """Beside a window onto cloth, with a leader to a point in it: left or right where nothing else is drawn there, else
    above or below. `spots` are the points for a text at the left, below, at the right and above, with the share of the
    window that a leader from there crosses before what it means. Costs rise with that, with the length of the leader
    and with how far it leaves the level. No leader runs past a side of the window where a plan or a cross-section
    stands: it would cross them."""
    wide, high = size
    found = []
    left, right = drawn[0] > window[0] - em, drawn[2] < window[2] + em
    low, top = drawn[1] > window[1] - em, drawn[3] < window[3] + em
    for side, edge, free, ((x, y), over) in ((-1.0, window[0], left, spots[0]), (1.0, window[2], right, spots[2])):
        root_x = edge + side * 0.5 * em
        for row in range(-9, 10) if free else ():
            at = y + row * high * 0.55
            rise, run = abs(at - y), abs(root_x - x)
            if rise <= run and _kept_off(at, (window[1], window[3]), (low, top)):
                leader = ((root_x, at), (x + side * rise, at), (x, y)) if row else ((root_x, at), (x, y))
                cost = 1.0 + 0.06 * run / em + 0.12 * rise / em + over * _OVER
                found.append(TextPlace(root_x + side * (wide / 2 + 0.15 * em), at, wide, high, 0.0, cost, leader))
    for side, edge, free, ((x, y), over) in ((-1.0, window[1], low, spots[1]), (1.0, window[3], top, spots[3])):
        root_y = edge + side * 0.4 * em
        for column in range(-8, 9) if free else ():
            at = x + column * 1.2 * em
            run, rise = abs(at - x), abs(root_y - y)
            if run <= rise and _kept_off(at, (window[0], window[2]), (left, right)):
                leader = ((at, root_y), (at, y + side * run), (x, y)) if column else ((at, root_y), (x, y))
                cost = 1.4 + 0.06 * rise / em + 0.12 * run / em + over * _OVER
                for hang in (0.0, -0.5, 0.5):  # the text over the end of its leader, or to one side of it
                    middle = at + hang * (wide - em)
                    place = TextPlace(middle, root_y + side * high / 2, wide, high, 0.0, cost + abs(hang) * 0.3, leader)
                    found.append(place)
    yield from sorted(found, key=_cost)


def _kept_off(at: float, window: tuple[float, float], free: tuple[bool, bool]) -> bool:
    """Whether a leader that begins `at` a place along one side of a window runs inside it, or beyond an end of it where
    all is free."""
    return (free[0] or at >= window[0]) and (free[1] or at <= window[1])


def as_number(places: Iterable[TextPlace], most: float = 30.0) -> Iterator[TextPlace]:
    """The places of a short number that stands for the text (form 1), which a list explains."""
    for place in places:
        if place.cost > most:
            return
        yield place._replace(cost=place.cost + NUMBERED, form=1)


def _cost(place: TextPlace) -> float:
    return place.cost


# ---- areas ------------------------------------------------------------------------------------------------


def within(points: Sequence[Spot], x: float, y: float) -> bool:
    """Whether a place lies inside the outline through `points` (even-odd)."""
    inside = False
    ax, ay = points[-1]
    for bx, by in points:
        if (ay > y) != (by > y) and x < ax + (bx - ax) * (y - ay) / (by - ay):
            inside = not inside
        ax, ay = bx, by
    return inside


def centre(points: Sequence[Spot]) -> Spot:
    """The centre of an area, or of its points where it has none."""
    area = cx = cy = 0.0
    ax, ay = points[-1]
    for bx, by in points:
        cross = ax * by - bx * ay
        area += cross
        cx += (ax + bx) * cross
        cy += (ay + by) * cross
        ax, ay = bx, by
    if abs(area) < 1e-9:
        return (sum(p[0] for p in points) / len(points), sum(p[1] for p in points) / len(points))
    return (cx / (3 * area), cy / (3 * area))
