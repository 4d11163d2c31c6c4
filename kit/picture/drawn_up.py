"""Cloth that elastic or gathering draws up: the finished garment laid flat is as narrow there as the elastic is long,
or the edge that a gathered one was sewn to, and full beside it."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass, replace

from kit.geometry import Line, Point, Vector
from kit.lesson.pattern import Pattern
from kit.picture.chains import Chain, at, inside, length
from kit.picture.drawing import Item, Stroke
from kit.picture.flat_piece import Flat
from kit.sewing.facts import edge_facts, facts_of
from kit.sewing.order import of_kind
from kit.sewing.places import sewn_length
from kit.sewing.run import Run
from kit.sewing.state import State

FULL = 180.0
"""mm from the casing on which the cloth is drawn in less and less (a drawing's, no measure)."""
EVERY = 9.0  # mm between the lines of the gathers
_CENTRE = 20.0  # mm from the centre line within which a row goes on over it


@dataclass(frozen=True)
class _Narrow:
    """Round x = `middle` everything from the level `y` on is `share` as wide, on its `below` or above side full
    again."""

    y: float
    below: bool
    middle: float
    share: float

    def __call__(self, p: Point) -> Point:
        off = (self.y - p.y) if self.below else (p.y - self.y)
        along = min(max(off / FULL, 0.0), 1.0)
        wide = self.share + (1.0 - self.share) * along * along * (3 - 2 * along)
        return Point(self.middle + (p.x - self.middle) * wide, p.y)


@dataclass(frozen=True)
class _Drawn:
    """Edges drawn up to a `share` of their length, the cloth narrow for `deep` mm from them."""

    edges: tuple[Run, ...]
    share: float
    deep: float


def drawn_up(flats: list[Flat], pattern: Pattern, state: State) -> list[Flat]:
    """The flats as narrow as the elastic that runs in their casings by now draws them, or the edge that they are
    gathered to."""
    for drawn in _elastic(pattern, state):
        flats = [_narrowed(flat, pattern, drawn) for flat in flats]
    for drawn in _gathered(pattern, state):
        flats = [_narrowed(flat, pattern, drawn) for flat in flats]
    return flats


def _elastic(pattern: Pattern, state: State | None = None) -> Iterator[_Drawn]:
    """Edges with elastic in their casing, by now where there is a state."""
    in_by_now = {fact[:4] for fact in state.facts} if state is not None else set()  # it tells a width besides
    for elastic in of_kind(pattern, "thread_elastic"):
        if state is not None and in_by_now.isdisjoint(edge_facts(pattern, elastic.edges, "elastic_in")):
            continue
        share = elastic.worn / max(sewn_length(pattern, elastic.edges), 1.0)
        yield _Drawn(elastic.edges, min(share, 1.0), _depth(pattern, elastic))


def _gathered(pattern: Pattern, state: State | None = None) -> Iterator[_Drawn]:
    """Edges on a fold gathered to fit another one, as a tier or a skirt on a yoke is, by now where there is a state."""
    for gather in of_kind(pattern, "gather"):
        drawn, full = gather.drawn(pattern), gather.full(pattern)
        if not gather.fit or not drawn or not gather.across(pattern) or full <= 0:
            continue
        if state is None or any(map(state.touches, facts_of(pattern, gather.along, "gathered"))):
            yield _Drawn(gather.along, min(drawn / full, 1.0), 0.0)


def _narrowed(flat: Flat, pattern: Pattern, drawn: _Drawn) -> Flat:
    chains = _chains(flat, pattern, drawn)
    if not chains:
        return flat
    points = [p for chain in chains for p in chain]
    level, middle = sum(p.y for p in points) / len(points), (min(p.x for p in points) + max(p.x for p in points)) / 2
    low, high = min(p.y for p in flat.ring), max(p.y for p in flat.ring)
    below = level > (low + high) / 2
    centre = (
        0.0
        if min(abs(p.x) for p in points) < _CENTRE or min(p.x for p in points) < 0 < max(p.x for p in points)
        else middle
    )
    edge = min(p.y for p in points) - drawn.deep if below else max(p.y for p in points) + drawn.deep
    narrow, first = _Narrow(edge, below, centre, drawn.share), flat.bent
    return replace(flat, bent=_then(first, narrow))


def _then(first: Callable[[Point], Point] | None, second: Callable[[Point], Point]) -> Callable[[Point], Point]:
    return second if first is None else lambda p: second(first(p))


def _depth(pattern: Pattern, elastic: object) -> float:
    """How deep the casing is that an elastic runs in."""
    edges = {(run.piece, name) for run in elastic.edges for name in run.edges}  # type: ignore[attr-defined]
    for casing in of_kind(pattern, "casing"):
        if any((run.piece, name) in edges for run in casing.edges for name in run.edges):
            return float(casing.depth)
    for channel in of_kind(pattern, "channel"):
        if any((run.piece, name) in edges for run in channel.edges for name in run.edges):
            return float(channel.far)
    return float(elastic.width)  # type: ignore[attr-defined]


def _chains(flat: Flat, pattern: Pattern, drawn: _Drawn) -> list[Chain]:
    runs = (run for run in drawn.edges if run.piece == flat.piece.name)
    return [chain for run in runs for chain in flat.run(pattern, run)]


def gathers(flat: Flat, pattern: Pattern) -> Iterator[Item]:
    """Short lines in and under the casings that elastic runs through, and along gathered edges."""
    for drawn in (*_elastic(pattern), *_gathered(pattern)):
        for chain in _chains(flat, pattern, drawn):
            here, way = at(chain, length(chain) / 2)
            into = way.left() if inside(here + way.left() * 2.0, flat.ring) else way.left() * -1.0
            yield from _lines(chain, into, drawn.deep, flat.piece.name)


def _lines(chain: Chain, into: Vector, deep: float, name: str) -> Iterator[Item]:
    long = length(chain)
    count = max(int(long / EVERY), 3)
    for number in range(1, count):
        foot = at(chain, long * number / count)[0]
        far = deep + (26.0, 12.0, 40.0, 18.0)[number % 4]
        for start, end in ((deep * 0.15, deep * 0.7), (deep * 1.05, far))[0 if deep else 1 :]:
            yield Stroke((Line(foot + into * start, foot + into * end),), "symbol", name=f"{name} gathers")
