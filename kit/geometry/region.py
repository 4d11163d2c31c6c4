"""A flat area with straight sides: what of it lies inside a line, beyond another, or farthest from its edge.

Curves come here as points close beside them. Nothing is compiled, so that a draft can be worked and drawn wherever
Python runs; tests hold every answer to shapely's. Coordinates and lengths are in mm.
"""

from __future__ import annotations

import heapq
import math
from bisect import bisect_right
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from functools import cached_property
from itertools import pairwise

from kit.geometry.point import Point, Vector

Spot = tuple[float, float]
Side = tuple[float, float, float, float]
"""A straight side: x and y of its start, then of its end."""
_Span = tuple[float, float, float, float, float]
"""A side: x and y of its start, how far it runs across and up, and the square of its length."""

_SAME = 1e-7
_JOIN = 1e-5
"""mm between ends that are one corner when sides are chained."""
_TOUCH = 0.05
"""mm that a place may lie outside an area and still counts as lying on its edge."""
_QUARTER = 16
"""Sides of a quarter of a circle where an area is widened round a corner."""


@dataclass(frozen=True)
class Region:
    """The area within `rings`: each a closed line, its first corner not repeated, the inside on its left."""

    rings: tuple[tuple[Spot, ...], ...]

    @classmethod
    def of(cls, points: Iterable[Point]) -> Region:
        """The area within one closed line of points, whichever way it runs round.

        >>> square = Region.of([Point(0, 0), Point(0, 100), Point(100, 100), Point(100, 0)])
        >>> square.area, square.contains(Point(50, 20)), square.distance(Point(130, 50))
        (10000.0, True, 30.0)
        """
        ring = tuple((p.x, p.y) for p in points)
        return cls((ring if _area(ring) >= 0 else ring[::-1],)) if len(ring) > 2 else cls(())

    @property
    def is_empty(self) -> bool:
        return not self.rings

    @cached_property
    def area(self) -> float:
        """mm2."""
        return math.fsum(_area(ring) for ring in self.rings)

    @cached_property
    def bounds(self) -> tuple[float, float, float, float]:
        """(xmin, ymin, xmax, ymax). ValueError of an empty area."""
        xs, ys = zip(*(spot for ring in self.rings for spot in ring), strict=True)
        return min(xs), min(ys), max(xs), max(ys)

    @cached_property
    def sides(self) -> tuple[Side, ...]:
        return tuple((*a, *b) for ring in self.rings for a, b in pairwise((*ring, ring[0])))

    # ---- places -------------------------------------------------------------------------------------------

    def contains(self, point: Point) -> bool:
        """Whether a place lies inside; on the very edge either may be said."""
        return self._holds(point.x, point.y)

    def distance(self, point: Point) -> float:
        """mm from a place to the area; 0 inside."""
        return 0.0 if self._holds(point.x, point.y) else self._off(point.x, point.y)

    def beyond(self, place: Point, outward: Vector) -> float:
        """How far the area reaches from a place in the direction `outward` (of length 1): to where it is left first.
        Of a place outside, its distance, below zero.

        >>> Region.of([Point(0, 0), Point(100, 0), Point(100, 50), Point(0, 50)]).beyond(Point(20, 30), Vector(0, 1))
        20.0
        """
        px, py, ux, uy = place.x, place.y, outward.x, outward.y
        met: list[tuple[float, bool]] = []
        for ring in self.rings:
            # How far each corner lies left of the ray: a side is crossed where that changes its sign.
            left = [ux * (y - py) - uy * (x - px) for x, y in ring]
            before = left[-1]
            for at, now in enumerate(left):
                if (now > 0) != (before > 0):
                    (ax, ay), (bx, by) = ring[at - 1], ring[at]
                    share = before / (before - now)
                    along = (ax + (bx - ax) * share - px) * ux + (ay + (by - ay) * share - py) * uy
                    met.append((along, now > before))
                before = now
        met.sort()
        inside = sum(1 for along, _ in met if along > 0) % 2 == 1
        if not inside and (off := self._off(px, py)) > _TOUCH:
            return -off
        ahead = [one for one in met if one[0] > -_TOUCH]
        for at, (along, leaves) in enumerate(ahead):
            grazed = at + 1 < len(ahead) and ahead[at + 1][0] - along < _TOUCH / 2
            if leaves and not grazed:
                return max(along, 0.0)
        return 0.0

    def roomiest(self, tolerance: float) -> Point:
        """The place farthest from every side (the pole of inaccessibility), within `tolerance` mm.

        Squares are looked at in the order of how far off the edge any place in them could lie, and halved until none
        could hold a better one: a search by branch and bound. Which sides may be the nearest to a place in a square is
        told by how far each lies from its middle, and what lies nearer to the middle than the edge is inside where the
        middle is: so its four quarters are asked of few sides.
        """
        x0, y0, x1, y1 = self.bounds
        half, root = max(x1 - x0, y1 - y0) / 2, math.sqrt(2.0)
        best = (-math.inf, 0.0, 0.0)
        count = 0
        waiting: list[tuple[float, int, float, float, float, float, Sequence[_Span]]] = []
        first = ((x0 + x1) / 2, (y0 + y1) / 2, half), (*self._middle(), 0.0)
        for x, y, size in first:
            count += 1
            off = self._off(x, y)
            off = off if self._holds(x, y) else -off
            heapq.heappush(waiting, (-(off + size * root), count, off, x, y, size, self._spans))
        while waiting:
            most, _, off, x, y, half, spans = heapq.heappop(waiting)
            if off > best[0]:
                best = off, x, y
            if half > 0 and -most - best[0] > tolerance:  # what waits may still be a little better, and is looked at
                reach = half * root
                ordered = sorted(zip(_offs(spans, x, y), spans, strict=True))
                spans = [span for _, span in ordered[: bisect_right(ordered, (abs(off) + 2 * reach + _SAME,))]]
                half /= 2
                reach /= 2
                known = reach < abs(off) - _SAME  # no edge runs between the middle and those of the quarters
                # What is no farther off than the best, and could not be halved either, need not wait.
                enough = best[0] + min(tolerance - reach - _SAME, 0.0)
                for to_x, to_y in ((-half, -half), (half, -half), (-half, half), (half, half)):
                    count += 1
                    ax, ay = x + to_x, y + to_y
                    away = _off(ordered, ax, ay, reach, enough)
                    if away < 0.0:
                        continue
                    here = away if (off > 0.0 if known else self._holds(ax, ay)) else -away
                    if here >= enough:
                        heapq.heappush(waiting, (-(here + reach), count, here, ax, ay, half, spans))
        return Point(best[1], best[2])

    def _middle(self) -> Spot:
        """The middle of the widest stretch inside, halfway up."""
        _, y0, _, y1 = self.bounds
        level = (y0 + y1) / 2
        xs = sorted(
            ax + (bx - ax) * (level - ay) / (by - ay) for ax, ay, bx, by in self.sides if (ay > level) != (by > level)
        )
        if len(xs) < 2:
            return self.sides[0][:2]
        low, high = max(zip(xs[::2], xs[1::2], strict=False), key=lambda pair: pair[1] - pair[0])
        return (low + high) / 2, level

    def _holds(self, x: float, y: float) -> bool:
        inside = False
        for ax, ay, bx, by in self.sides:
            if (ay > y) != (by > y) and x < ax + (bx - ax) * (y - ay) / (by - ay):
                inside = not inside
        return inside

    def _off(self, x: float, y: float) -> float:
        """mm from a place to the nearest side."""
        return min(_offs(self._spans, x, y))

    @cached_property
    def _spans(self) -> tuple[_Span, ...]:
        found = []
        for ax, ay, bx, by in self.sides:
            ex, ey = bx - ax, by - ay
            found.append((ax, ay, ex, ey, ex * ex + ey * ey or 1.0))
        return tuple(found)

    # ---- lines --------------------------------------------------------------------------------------------

    def stretches(self, a: Point, b: Point) -> list[tuple[Point, Point]]:
        """The parts of the straight line from `a` to `b` that lie inside, in its order.

        >>> Region.of([Point(0, 0), Point(10, 0), Point(10, 10), Point(0, 10)]).stretches(Point(-5, 5), Point(4, 5))
        [(Point(x=0.0, y=5.0), Point(x=4.0, y=5.0))]
        """
        line = (a.x, a.y, b.x, b.y)
        shares = sorted({0.0, 1.0, *(at for side in self.sides for at, _ in _crossings(line, side))})
        found: list[tuple[float, float]] = []
        for low, high in pairwise(shares):
            middle = (low + high) / 2
            if high - low > 1e-12 and self._holds(a.x + (b.x - a.x) * middle, a.y + (b.y - a.y) * middle):
                if found and found[-1][1] == low:
                    found[-1] = (found[-1][0], high)
                else:
                    found.append((low, high))
        return [(a + (b - a) * low, a + (b - a) * high) for low, high in found]

    # ---- areas --------------------------------------------------------------------------------------------

    def parted(self, other: Region, slack: float) -> tuple[Region, Region]:
        """What of this area lies within `slack` mm (above 0) of `other` or inside it, and what lies beyond."""
        if self.is_empty or other.is_empty:
            return Region(()), self
        rim = list(_widened(other, slack))
        # Where `other` turns inwards its widened sides run across one another: only what lies a whole `slack` off it
        # is the rim.
        cut_rim = _broken(rim, (*self.sides, *rim))
        own = _broken(self.sides, rim)
        inner = [s for s in cut_rim if self._holds(*_mid(s)) and other._outside(*_mid(s)) > slack * 0.99]
        near: list[Side] = []
        far: list[Side] = []
        for side in own:
            (far if other._outside(*_mid(side)) > slack else near).append(side)
        kept = _chained([*near, *inner])
        off = _chained([*far, *((bx, by, ax, ay) for ax, ay, bx, by in inner)])
        return Region(kept), Region(off)

    def _outside(self, x: float, y: float) -> float:
        """mm that a place lies off the area; 0 inside."""
        return 0.0 if self._holds(x, y) else self._off(x, y)

    def split(self, a: Point, b: Point) -> tuple[Region, Region]:
        """The parts left and right of the endless straight line through two points."""
        ux, uy = (b - a).unit().x, (b - a).unit().y
        left: list[Side] = []
        right: list[Side] = []
        on: list[float] = []
        for ax, ay, bx, by in self.sides:
            one, two = ux * (ay - a.y) - uy * (ax - a.x), ux * (by - a.y) - uy * (bx - a.x)
            if (one > 0) == (two > 0):
                (left if one > 0 else right).append((ax, ay, bx, by))
                continue
            share = one / (one - two)
            x, y = ax + (bx - ax) * share, ay + (by - ay) * share
            on.append((x - a.x) * ux + (y - a.y) * uy)
            first, second = (left, right) if one > 0 else (right, left)
            first.append((ax, ay, x, y))
            second.append((x, y, bx, by))
        on.sort()
        for low, high in zip(on[::2], on[1::2], strict=False):
            x, y, far_x, far_y = a.x + ux * low, a.y + uy * low, a.x + ux * high, a.y + uy * high
            left.append((x, y, far_x, far_y))  # the inside lies left of what is ruled in this direction
            right.append((far_x, far_y, x, y))
        return Region(_chained(left)), Region(_chained(right))


def _offs(spans: Sequence[_Span], x: float, y: float) -> list[float]:
    """How many mm each of `spans` lies from a place."""
    found = []  # the sum is written out here and in `_off`: calling it costs the search an eighth more
    for ax, ay, ex, ey, squared in spans:
        px, py = x - ax, y - ay
        along = (px * ex + py * ey) / squared
        if along >= 1.0:
            px -= ex
            py -= ey
        elif along > 0.0:
            px -= ex * along
            py -= ey * along
        found.append(math.sqrt(px * px + py * py))
    return found


def _off(ordered: Sequence[tuple[float, _Span]], x: float, y: float, away: float, enough: float) -> float:
    """mm from a place to the nearest of some spans, told with how far each lies from a place `away` from this one, the
    nearest first; -1 where it is less than `enough`."""
    least, enough, last = math.inf, enough * enough if enough > 0.0 else -1.0, math.inf
    for from_there, (ax, ay, ex, ey, squared) in ordered:
        if from_there > last:
            break
        px, py = x - ax, y - ay
        along = (px * ex + py * ey) / squared
        if along >= 1.0:
            px -= ex
            py -= ey
        elif along > 0.0:
            px -= ex * along
            py -= ey * along
        off = px * px + py * py
        if off < least:
            if off < enough:
                return -1.0
            least, last = off, math.sqrt(off) + away + _SAME
    return math.sqrt(least)


def inside_length(line: Sequence[Point], area: Region, without: Sequence[Region] = ()) -> float:
    """mm of a line, given as points, that lie in `area` and in none of `without`."""
    total = 0.0
    for a, b in pairwise(line):
        side = (a.x, a.y, b.x, b.y)
        regions = (area, *without)
        shares = sorted({0.0, 1.0, *(at for each in regions for own in each.sides for at, _ in _crossings(side, own))})
        for low, high in pairwise(shares):
            middle = a + (b - a) * ((low + high) / 2)
            if area.contains(middle) and not any(each.contains(middle) for each in without):
                total += a.distance(b) * (high - low)
    return total


# ---- sides --------------------------------------------------------------------------------------------------


def _area(ring: Sequence[Spot]) -> float:
    """Half of Gauss's sum: above zero where the ring runs counter-clockwise."""
    return sum(ax * by - bx * ay for (ax, ay), (bx, by) in zip(ring, (*ring[1:], ring[0]), strict=True)) / 2


def _mid(side: Side) -> Spot:
    return (side[0] + side[2]) / 2, (side[1] + side[3]) / 2


def _crossings(one: Side, other: Side) -> list[tuple[float, float]]:
    """Where two straight lines meet, as shares of both; of lines that lie on one another, the ends in each other."""
    ax, ay, bx, by = one
    cx, cy, dx, dy = other
    ux, uy, vx, vy = bx - ax, by - ay, dx - cx, dy - cy
    turn = ux * vy - uy * vx
    squared = ux * ux + uy * uy
    if abs(turn) <= 1e-12 * math.sqrt(squared * (vx * vx + vy * vy)):
        if not squared or abs(ux * (cy - ay) - uy * (cx - ax)) > _SAME * math.sqrt(squared):
            return []
        spots = (((x - ax) * ux + (y - ay) * uy) / squared for x, y in ((cx, cy), (dx, dy)))
        return [(at, math.nan) for at in spots if 0.0 < at < 1.0]
    at = ((cx - ax) * vy - (cy - ay) * vx) / turn
    on = ((cx - ax) * uy - (cy - ay) * ux) / turn
    return [(at, on)] if -1e-12 <= at <= 1.0 + 1e-12 and -1e-12 <= on <= 1.0 + 1e-12 else []


def _broken(sides: Iterable[Side], others: Sequence[Side]) -> list[Side]:
    """Sides broken wherever one of `others` crosses them."""
    boxed = sorted((min(s[0], s[2]), max(s[0], s[2]), min(s[1], s[3]), max(s[1], s[3]), s) for s in others)
    found: list[Side] = []
    for side in sides:
        ax, ay, bx, by = side
        x0, x1, y0, y1 = min(ax, bx), max(ax, bx), min(ay, by), max(ay, by)
        shares = {0.0, 1.0}
        for low, high, bottom, top, other in boxed:
            if low > x1:
                break
            if high >= x0 and bottom <= y1 and top >= y0 and other is not side:
                shares.update(at for at, _ in _crossings(side, other))
        for low, high in pairwise(sorted(shares)):
            if high - low > 1e-9:
                found.append((ax + (bx - ax) * low, ay + (by - ay) * low, ax + (bx - ax) * high, ay + (by - ay) * high))
    return found


def _widened(area: Region, by: float) -> Iterator[Side]:
    """Every side moved outwards by `by` mm, joined by arcs where the ring turns outwards and straight where it does
    not."""
    for ring in area.rings:
        corners = [spot for at, spot in enumerate(ring) if math.dist(spot, ring[at - 1]) > _SAME]
        moved = []
        for at, (bx, by_) in enumerate(corners):
            ax, ay = corners[at - 1]
            long = math.dist((ax, ay), (bx, by_))
            nx, ny = (by_ - ay) / long * by, (ax - bx) / long * by
            moved.append((ax + nx, ay + ny, bx + nx, by_ + ny))
        for at, side in enumerate(moved):
            yield side
            after = moved[(at + 1) % len(moved)]
            for one, two in pairwise([side[2:], *_round(corners[at], side[2:], after[:2], by), after[:2]]):
                yield (*one, *two)


def _round(hub: Spot, start: Spot, end: Spot, radius: float) -> list[Spot]:
    """Places along the arc from one place to another about a corner that points outwards; none about another."""
    a = math.atan2(start[1] - hub[1], start[0] - hub[0])
    turn = (math.atan2(end[1] - hub[1], end[0] - hub[0]) - a) % math.tau
    if turn > math.pi:
        return []
    steps = math.ceil(turn / (math.pi / 2) * _QUARTER)
    spots = [a + turn * i / steps for i in range(1, steps)]
    return [(hub[0] + radius * math.cos(at), hub[1] + radius * math.sin(at)) for at in spots]


def _chained(sides: Iterable[Side]) -> tuple[tuple[Spot, ...], ...]:
    """Sides put together end to start into rings; what does not close is left out."""
    starts: dict[tuple[int, int], list[Side]] = {}

    def key(x: float, y: float) -> tuple[int, int]:
        return round(x / _JOIN), round(y / _JOIN)

    for side in sides:
        if key(*side[:2]) != key(*side[2:]):
            starts.setdefault(key(*side[:2]), []).append(side)

    def following(x: float, y: float) -> Side | None:
        kx, ky = key(x, y)
        for dx in (0, -1, 1):  # an end may be rounded to the next place of the net
            for dy in (0, -1, 1):
                there = starts.get((kx + dx, ky + dy))
                if there:
                    return there.pop()
        return None

    rings = []
    for place in list(starts):
        while starts[place]:
            side = starts[place].pop()
            ring = [side[:2]]
            while True:
                if key(*side[2:]) == key(*ring[0]) or math.dist(side[2:], ring[0]) < 2 * _JOIN:
                    if len(ring) > 2:
                        rings.append(tuple(ring))
                    break
                ring.append(side[2:])
                after = following(*side[2:])
                if after is None:
                    break
                side = after
    return tuple(rings)
