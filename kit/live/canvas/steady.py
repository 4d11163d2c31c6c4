"""A line as a number of cubic segments that stays the same while values move.

A parallel is fitted with as many cubics as it needs, and one more or less would keep the browser from moving the line
by itself. So each smooth bend of a line is cut, exactly, into `SEGMENTS` pieces; one that has more (only parallels
do) is drawn anew through so many of its points with its own tangents, to a few hundredths of a millimetre.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from itertools import pairwise

from kit.geometry import Cubic, Curve, Line, Point

SEGMENTS = 16
_SMOOTH = math.radians(3)


def steady(curves: Iterable[Curve]) -> list[Cubic]:
    """The same line: straight parts as they are, every smooth bend in `SEGMENTS` pieces."""
    out: list[Cubic] = []
    bend: list[Cubic] = []
    for curve in curves:
        if isinstance(curve, Line):
            out += _cut(bend)
            bend = []
            out += curve.as_cubics()
            continue
        for drawn in curve.as_cubics():
            cubic = Cubic(drawn.start, drawn.c1, drawn.c2, drawn.end)
            if bend and _corner(bend[-1], cubic):
                out += _cut(bend)
                bend = []
            bend.append(cubic)
    return out + _cut(bend)


def _corner(one: Cubic, other: Cubic) -> bool:
    before, after = one.tangent(1.0), other.tangent(0.0)
    return abs(before.turn_to(after)) > _SMOOTH


def _cut(bend: Sequence[Cubic]) -> list[Cubic]:
    if not bend:
        return []
    long = [_reach(cubic) for cubic in bend]
    if len(bend) > SEGMENTS:
        return _through(bend, long)
    counts = [1] * len(bend)
    for _ in range(SEGMENTS - len(bend)):
        # Parts of a circle are equally long but for rounding: the first of them, so that the cuts stay where they are.
        most = max(part / count for part, count in zip(long, counts, strict=True)) * (1 - 1e-6)
        counts[next(i for i, part in enumerate(long) if part / counts[i] >= most)] += 1
    return [piece for cubic, count in zip(bend, counts, strict=True) for piece in _pieces(cubic, count)]


def _reach(cubic: Cubic) -> float:
    return cubic.start.distance(cubic.c1) + cubic.c1.distance(cubic.c2) + cubic.c2.distance(cubic.end)


def _pieces(cubic: Cubic, count: int) -> list[Cubic]:
    """Cut at even steps of its parameter, by de Casteljau's construction."""
    out: list[Cubic] = []
    rest = cubic
    for left in range(count, 1, -1):
        t = 1 / left
        a, b, c = rest.start.lerp(rest.c1, t), rest.c1.lerp(rest.c2, t), rest.c2.lerp(rest.end, t)
        d, e = a.lerp(b, t), b.lerp(c, t)
        at: Point = d.lerp(e, t)
        out.append(Cubic(rest.start, a, d, at))
        rest = Cubic(at, e, c, rest.end)
    return [*out, rest]


def _through(bend: Sequence[Cubic], long: Sequence[float]) -> list[Cubic]:
    """Cubics through points evenly along the bend, in its own directions there."""
    each = sum(long) / SEGMENTS
    stations = []
    at, passed = 0, 0.0
    for number in range(SEGMENTS + 1):
        wanted = number * each
        while at < len(bend) - 1 and passed + long[at] < wanted:
            passed += long[at]
            at += 1
        t = min(max((wanted - passed) / long[at], 0.0), 1.0) if long[at] else 0.0
        stations.append((bend[at].point(t), bend[at].tangent(t)))
    third = each / 3
    return [Cubic(p, p + way * third, q + onward * -third, q) for (p, way), (q, onward) in pairwise(stations)]
