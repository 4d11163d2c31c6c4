"""Cloth that elastic, a cord or gathering draws up: the finished garment laid flat is as narrow there as the elastic is
long, the waist that a cord is tied round, or the edge that a gathered one was sewn to, and full beside it."""

from __future__ import annotations

from collections.abc import Callable, Collection, Iterable, Iterator
from dataclasses import dataclass, replace

from kit.geometry import Line, Point, Vector
from kit.lesson.pattern import Pattern
from kit.picture.chains import Chain, at, inside, length, whole_steps
from kit.picture.chains import drawn as chain_drawn
from kit.picture.drawing import Item, Stroke
from kit.picture.flat_piece import Flat
from kit.piece.piece import Piece
from kit.sewing.facts import edge_facts, facts_of
from kit.sewing.order import of_kind
from kit.sewing.places import sewn_length
from kit.sewing.run import Run
from kit.sewing.spans import path_of, sides_of
from kit.sewing.state import State

CORDS = ("thread_cord", "thread_strip")
"""What draws a cord through a casing."""
DRAWS_IN = ("elastic_in", "cord_in", "gathered")
"""The facts of a state by which cloth is narrower than it was."""
FULL = 180.0
"""mm from the casing on which the cloth is drawn in less and less (a drawing's, no measure)."""
EVERY = 9.0  # mm between the lines of the gathers
_FOLDS = 7  # long folds on each half of an edge
_BEGINS, _FOLD_STEP = 50.0, 15.0  # mm below what draws the cloth up that they begin, and between their points
_FALL = (0.9, 0.55, 0.75, 0.95, 0.6)
"""How far down the piece they fall, of all of it."""
_ON_LINE = 30.0  # mm from the waistline within which an edge is worn there
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
    """The flats as narrow as the elastic or the cord that runs in their casings by now draws them, or as far as they
    are gathered."""
    for drawn in _all(pattern, state):
        flats = [_narrowed(flat, pattern, drawn) for flat in flats]
    return flats


def _all(pattern: Pattern, state: State | None = None) -> Iterator[_Drawn]:
    """All that is drawn up, by now where there is a state."""
    yield from _elastic(pattern, state)
    yield from _corded(pattern, state)
    yield from _gathered(pattern, state)


def _elastic(pattern: Pattern, state: State | None = None) -> Iterator[_Drawn]:
    """Edges with elastic in their casing, by now where there is a state."""
    in_by_now = {fact[:4] for fact in state.facts} if state is not None else set()  # it tells a width besides
    for elastic in of_kind(pattern, "thread_elastic"):
        if state is not None and in_by_now.isdisjoint(edge_facts(pattern, elastic.edges, "elastic_in")):
            continue
        share = elastic.worn / max(sewn_length(pattern, elastic.edges), 1.0)
        yield _Drawn(elastic.edges, min(share, 1.0), _depth(pattern, elastic))


def _corded(pattern: Pattern, state: State | None = None) -> Iterator[_Drawn]:
    """Edges worn at the waist with a cord in their casing, by now where there is a state: it is tied as the garment is
    worn, so that they lie on the waist. How far a cord is drawn up elsewhere nobody has said. Beside elastic, or beside
    another cord, it draws in nothing more."""
    in_by_now = {fact[:4] for fact in state.facts} if state is not None else set()  # it tells a width besides
    narrow = {edge for drawn in _elastic(pattern, state) for edge in _edges(drawn.edges)}
    for cord in of_kind(pattern, *CORDS):
        if state is not None and in_by_now.isdisjoint(edge_facts(pattern, cord.edges, "cord_in")):
            continue
        if not narrow.isdisjoint(_edges(cord.edges)):
            continue
        if "waist_girth" in pattern.body and all(_at_waist(pattern.piece(run.piece), run) for run in cord.edges):
            share = pattern.body["waist_girth"] / max(sewn_length(pattern, cord.edges), 1.0)
            if share < 1.0:
                narrow |= _edges(cord.edges)
                yield _Drawn(cord.edges, share, _depth(pattern, cord))


def _edges(runs: Iterable[Run]) -> set[tuple[str, str]]:
    """The (piece, edge) that runs lie on."""
    return {(run.piece, name) for run in runs for name in run.edges}


def _at_waist(piece: Piece, run: Run) -> bool:
    """Whether the edges of a run are worn at the waist."""
    line = piece.guide_of("waist_line")
    edges = [piece.edge(name) for name in run.edges]
    return all(
        edge.role == "waist" or (line is not None and line.distance_to(edge.path.at(edge.path.length / 2)) < _ON_LINE)
        for edge in edges
    )


def _gathered(pattern: Pattern, state: State | None = None) -> Iterator[_Drawn]:
    """Edges all across a piece that are gathered, to fit another one as a tier or a skirt on a yoke is or to a length,
    by now where there is a state."""
    for gather in of_kind(pattern, "gather"):
        drawn, full = gather.drawn(pattern), gather.full(pattern)
        whole = len(gather.whole) == len(gather.along)
        whole = whole and (gather.across(pattern) or all(_is_level(pattern, run) for run in gather.along))
        if not drawn or not whole or full <= 0:
            continue
        if state is None or any(map(state.touches, facts_of(pattern, gather.along, "gathered"))):
            yield _Drawn(gather.along, min(drawn / full, 1.0), 0.0)


def _is_level(pattern: Pattern, run: Run) -> bool:
    """Whether a run is an edge of a piece cut whole and unfolded that goes across the piece."""
    path = path_of(pattern, run)
    way = path.end - path.start
    return len(pattern.piece(run.piece).sides) == 1 and abs(way.x) > 2 * abs(way.y)


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
    return float(getattr(elastic, "width", 0.0))


def _chains(flat: Flat, pattern: Pattern, drawn: _Drawn) -> list[Chain]:
    runs = (run for run in drawn.edges if run.piece == flat.piece.name)
    return [chain for run in runs for chain in flat.run(pattern, run)]


def gathers(flat: Flat, pattern: Pattern) -> Iterator[Item]:
    """Short lines in and under the casings that elastic runs through, and along gathered edges."""
    for drawn in _all(pattern):
        for chain in _chains(flat, pattern, drawn):
            here, way = at(chain, length(chain) / 2)
            into = way.left() if inside(here + way.left() * 2.0, flat.ring) else way.left() * -1.0
            yield from _lines(chain, into, drawn.deep, flat.piece.name)


def folds(flat: Flat, pattern: Pattern) -> Iterator[Item]:
    """Long lines in which drawn-up cloth falls from where it is drawn up, straight across the piece."""
    outline = flat.piece.outline
    if any(edge.role in ("inseam", "crotch") for edge in flat.piece.edges):
        return  # round a leg it hangs by the leg's own lines
    for drawn in _all(pattern):
        for run, side in ((each, half) for each in drawn.edges for half in sides_of(pattern, each)):
            if run.piece != flat.piece.name or side not in flat.sides:
                continue
            path = path_of(pattern, run)
            for number in range(_FOLDS):
                along = path.length * (number + 0.5) / _FOLDS
                foot, into = path.at(along), path.normal_at(along)
                into = into if outline.contains(foot + into * 2.0) else into * -1.0
                far = _BEGINS + drawn.deep
                while outline.contains(foot + into * (far + _FOLD_STEP)):
                    far += _FOLD_STEP
                start, end = _BEGINS + drawn.deep, far * _FALL[number % len(_FALL)]
                if end - start > 2 * _FOLD_STEP:
                    count = whole_steps(end - start, _FOLD_STEP)
                    places = (start + (end - start) * i / count for i in range(count + 1))
                    line = [flat.put(foot + into * at, side) for at in places]
                    yield Stroke(chain_drawn(line), "kept", name=f"{flat.piece.name} folds")


def draws_all(pattern: Pattern, pieces: Collection[str]) -> bool:
    """Whether all that draws up those pieces is drawn so: gathers, elastic, a cord at the waist."""
    known = {edge for drawn in _all(pattern) for edge in _edges(drawn.edges)}
    asked = {
        (run.piece, name)
        for each in of_kind(pattern, "gather", "thread_elastic", *CORDS)
        for run in (each.along if each.kind == "gather" else each.edges)
        for name in run.edges
        if run.piece in pieces
    }
    return asked <= known


def _lines(chain: Chain, into: Vector, deep: float, name: str) -> Iterator[Item]:
    long = length(chain)
    count = max(int(long / EVERY), 3)
    for number in range(1, count):
        foot = at(chain, long * number / count)[0]
        far = deep + (26.0, 12.0, 40.0, 18.0)[number % 4]
        for start, end in ((deep * 0.15, deep * 0.7), (deep * 1.05, far))[0 if deep else 1 :]:
            yield Stroke((Line(foot + into * start, foot + into * end),), "symbol", name=f"{name} gathers")
