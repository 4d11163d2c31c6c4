"""What rows of stitching have joined: stretches of edges, each with what lies opposite it.

An edge is seldom sewn to one other edge all along: a slit is left below, a pocket takes the middle of it, half of a
seam is sewn later. A `Join` is of one stretch of one edge and one stretch of another; what lies opposite a place of
the one follows in proportion.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import replace
from itertools import pairwise
from typing import NamedTuple

from kit.piece.piece import Side
from kit.sewing.cut import Cut
from kit.sewing.run import Run
from kit.sewing.spans import Span, runs_opposed, sides_of, walked_spans

EdgeKey = tuple[str, Side, str]
SLIVER = 3.0
"""mm up to which the ends of edges that are sewn past one another do not count as sewn to each other."""
_AT = 0.5  # mm from a place that are still that place


class Join(NamedTuple):
    """`a` and `b` lie on each other; `opposed`: drafted the other way round. `left`: the row stops there and leaves an
    opening of the finished garment, or a gap."""

    a: Span
    b: Span
    opposed: bool = False
    left: bool = False

    @property
    def keys(self) -> frozenset[EdgeKey]:
        return frozenset((self.a.key, self.b.key))

    def across(self, span: Span) -> Span | None:
        """What lies opposite a stretch, of what of it is sewn here."""
        for own, other in ((self.a, self.b), (self.b, self.a)):
            if own.overlap(span) > _AT and not self.left:
                return _opposite(own, other, self.opposed, span)
        return None

    def meets(self, one: EdgeKey, at: float, two: EdgeKey, to: float) -> bool:
        """Whether the place `at` of one edge and the place `to` of another are sewn here."""
        ends = ((self.a, self.b), (self.b, self.a))
        return not self.left and any(
            (own.key, other.key) == (one, two) and own.holds(at, _AT) and other.holds(to, _AT) for own, other in ends
        )


def _opposite(own: Span, other: Span, opposed: bool, span: Span) -> Span:
    scale = other.length / own.length
    low, high = ((max(span.start, own.start) - own.start) * scale, (min(span.end, own.end) - own.start) * scale)
    if opposed:
        low, high = other.length - high, other.length - low
    return replace(other, start=other.start + low, end=other.start + high)


def joins_of(pattern: Cut, a: Run, b: Run, left: Iterable[Span] = ()) -> Iterator[Join]:
    """The joins of two runs: left to left and right to right, unless a half is named; edge by edge along the row. What
    of them is `left` is told apart."""
    out = tuple(left)
    first, second = sides_of(pattern, a), sides_of(pattern, b)
    back = runs_opposed(pattern, a, b)
    for i in first:
        for j in second:
            if i == j or len(first) == 1 or len(second) == 1:
                ones, twos = walked_spans(pattern, a, i), walked_spans(pattern, b, j)
                if back:
                    twos = tuple((span, not forward) for span, forward in reversed(twos))
                for join in _edge_by_edge(ones, twos):
                    yield from _parted(join, out)


def _edge_by_edge(ones: Sequence[tuple[Span, bool]], twos: Sequence[tuple[Span, bool]]) -> Iterator[Join]:
    if len(ones) == len(twos):
        for (one, on), (two, to) in zip(ones, twos, strict=True):
            yield Join(one, two, on != to)
        return
    whole = sum(one.length for one, _ in ones) / max(sum(two.length for two, _ in twos), 1e-6)
    walked = 0.0
    for one, on in ones:
        at = 0.0
        for two, to in twos:
            low, high = max(at, walked), min(at + two.length * whole, walked + one.length)
            if high - low > SLIVER:
                share = ((low - at) / whole, (high - at) / whole)
                yield Join(_part(one, on, low - walked, high - walked), _part(two, to, *share), on != to)
            at += two.length * whole
        walked += one.length


def _part(span: Span, forward: bool, low: float, high: float) -> Span:
    """From `low` to `high` mm along a span as it is walked."""
    if forward:
        return replace(span, start=span.start + low, end=span.start + high)
    return replace(span, start=span.end - high, end=span.end - low)


def _parted(join: Join, left: tuple[Span, ...]) -> Iterator[Join]:
    """A join as its stretches that are sewn and those that are left."""
    back = Join(join.b, join.a, join.opposed)
    out = [span for span in left if span.overlap(join.a) > _AT]
    out += [found for span in left if span.overlap(join.b) > _AT and (found := back.across(span)) is not None]
    edges = sorted({join.a.start, join.a.end, *(min(max(p, join.a.start), join.a.end) for s in out for p in s.ends)})
    for low, high in pairwise(edges):
        if high - low > _AT:
            part = replace(join.a, start=low, end=high)
            gone = any(span.overlap(part) > part.length / 2 for span in out)
            yield Join(part, _opposite(join.a, join.b, join.opposed, part), join.opposed, gone)
