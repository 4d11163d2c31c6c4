"""Runs of points, as the picture of a finished garment is put together from them: pure Python, so that it can be drawn
live. A chain is a list of points in mm; a ring is one whose last point goes on to its first.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from itertools import pairwise

from kit.geometry import Line, Point, Vector

Chain = list[Point]
_MITRE = 2.0  # how many times its distance a corner of a line beside another may reach out
_TOUCH = 0.6  # mm between ends that are one
_HAIR = 1e-6  # mm


def drawn(chain: Sequence[Point], closed: bool = False) -> tuple[Line, ...]:
    """The chain as lines, without those of no length.

    >>> [line.length for line in drawn([Point(0, 0), Point(3, 4), Point(3, 4)])]
    [5.0]
    """
    points = [*chain, chain[0]] if closed and chain else chain
    return tuple(Line(a, b) for a, b in pairwise(points) if a.distance(b) > 1e-9)


def length(chain: Sequence[Point]) -> float:
    """mm along a chain."""
    return sum(a.distance(b) for a, b in pairwise(chain))


def at(chain: Sequence[Point], distance: float) -> tuple[Point, Vector]:
    """The place so many mm along a chain (its ends beyond them), and the way it goes there; where two parts meet, that
    of the first, also where the last bits of a sum carried it a hair past."""
    for a, b in pairwise(chain):
        step = a.distance(b)
        if step > 1e-9 and distance <= step + _HAIR:
            return a.lerp(b, min(max(distance, 0.0) / step, 1.0)), (b - a) / step
        distance -= step
    a, b = next(((a, b) for a, b in reversed(list(pairwise(chain))) if a.distance(b) > 1e-9), (chain[0], chain[-1]))
    return chain[-1], (b - a).unit() if a.distance(b) > 1e-9 else Vector(1.0, 0.0)


def part(chain: Sequence[Point], start: float, end: float) -> Chain:
    """The chain from `start` to `end`, mm along it."""
    found, walked = [at(chain, start)[0]], 0.0
    for a, b in pairwise(chain):
        walked += a.distance(b)
        if start < walked < end:
            found.append(b)
    return [*found, at(chain, end)[0]]


def whole_steps(length: float, step: float) -> int:
    """How many whole steps go into a length of the same unit. One that is a whole number of them but for its last bits
    is that number: sums of two Pythons may differ there.

    >>> whole_steps(9.9, 5.0), whole_steps(10.0 - 1e-12, 5.0)
    (1, 2)
    """
    return int(length / step + 1e-9)


def dense(chain: Sequence[Point], step: float) -> Chain:
    """The chain with no two points further apart than `step` mm, for a line that is going to be bent."""
    found: Chain = list(chain[:1])
    for a, b in pairwise(chain):
        count = whole_steps(a.distance(b), step) + 1
        found += [a.lerp(b, i / count) for i in range(1, count)] + [b]
    return found


def joined(chains: Iterable[Chain]) -> list[Chain]:
    """Chains that touch at their ends made one, whichever way round they run."""
    waiting = [list(chain) for chain in chains if len(chain) > 1]
    done: list[Chain] = []
    while waiting:
        one = waiting.pop(0)
        grown = True
        while grown:
            grown = False
            for other in waiting:
                for way in (other, other[::-1]):
                    if one[-1].distance(way[0]) < _TOUCH:
                        one = one + way[1:]
                    elif way[-1].distance(one[0]) < _TOUCH:
                        one = way + one[1:]
                    else:
                        continue
                    waiting.remove(other)
                    grown = True
                    break
                if grown:
                    break
        done.append(one)
    return done


def beside(chain: Sequence[Point], distance: float) -> Chain:
    """The chain `distance` mm to its left (negative: to its right), corners mitred. What would come nearer to the chain
    than that, where it bends more tightly, is left out."""
    points = [chain[0], *(b for a, b in pairwise(chain) if a.distance(b) > 1e-6)]
    if len(points) < 2:
        return list(points)
    sides = [(b - a).unit().left() for a, b in pairwise(points)]
    found: Chain = [points[0] + sides[0] * distance]
    for one, two, p in zip(sides, sides[1:], points[1:-1], strict=False):
        both = one + two
        if both.length < 1e-6:
            found += [p + one * distance, p + two * distance]
            continue
        way = both.unit()
        reach = 1.0 / max(way.dot(one), 1.0 / _MITRE)
        found.append(p + way * (distance * reach))
    found.append(points[-1] + sides[-1] * distance)
    clear = abs(distance) * 0.985
    nothing_near = _free_of(points, clear)
    return [p for i, p in enumerate(found) if i in (0, len(found) - 1) or nothing_near(p)]


def _free_of(chain: Sequence[Point], clear: float) -> Callable[[Point], bool]:
    """What tells of a point whether it is no nearer to the chain than `clear` mm: `away` as it is, for no more than the
    parts of the chain in whose box, so much wider, the point lies."""
    wide = clear * 1.001 + 1e-6
    parts = [
        (min(a.x, b.x) - wide, max(a.x, b.x) + wide, min(a.y, b.y) - wide, max(a.y, b.y) + wide, (a, b))
        for a, b in pairwise(chain)
    ]

    def free(p: Point) -> bool:
        x, y = p.x, p.y
        for left, right, low, top, part in parts:
            if left <= x <= right and low <= y <= top and away(p, part) < clear:
                return False
        return True

    return free


def away(p: Point, chain: Sequence[Point]) -> float:
    """How far a point lies from a chain, mm."""
    best = float("inf")
    for a, b in pairwise(chain):
        dx, dy = b.x - a.x, b.y - a.y
        size = dx * dx + dy * dy
        t = 0.0 if size < 1e-12 else min(1.0, max(0.0, ((p.x - a.x) * dx + (p.y - a.y) * dy) / size))
        off = (p.x - a.x - t * dx) ** 2 + (p.y - a.y - t * dy) ** 2
        best = min(best, off)
    return float(best**0.5)


def inside(p: Point, ring: Sequence[Point]) -> bool:
    """Whether a point lies inside a ring."""
    odd = False
    for a, b in zip(ring, (*ring[1:], ring[0]), strict=True):
        if (a.y > p.y) != (b.y > p.y) and p.x < a.x + (b.x - a.x) * (p.y - a.y) / (b.y - a.y):
            odd = not odd
    return odd


def crossings(ring: Sequence[Point], y: float) -> list[float]:
    """Where a ring meets the level `y`: the x of each place, from the left."""
    found = []
    for a, b in zip(ring, (*ring[1:], ring[0]), strict=True):
        if (a.y > y) != (b.y > y):
            found.append(a.x + (b.x - a.x) * (y - a.y) / (b.y - a.y))
    return sorted(found)


def box(chains: Iterable[Sequence[Point]]) -> tuple[float, float, float, float]:
    """The smallest upright box around chains."""
    points = [p for chain in chains for p in chain]
    return min(p.x for p in points), min(p.y for p in points), max(p.x for p in points), max(p.y for p in points)
