"""A ring and what is sewn to it, seen as they stand: a hat's crown with its top, a brim round a crown, a bag's round
bottom in its side.

Laid flat such pieces touch at one place only, and a picture of them tells neither what is sewn nor what has been. So
they are shown as the surfaces they are by then: each goes from the circle of the edge that is worked at to that of its
edge across, both as long as the cloth is there, and on from there goes what is sewn to it already. Whether an edge is
closed to a ring is asked of the state.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, replace

from kit.piece.piece import Edge, Piece, Side
from kit.sewing.cut import Cut
from kit.sewing.lying import Lying
from kit.sewing.operation import Operation
from kit.sewing.run import Run
from kit.sewing.scene import Face, Layer, RoundLie, Scene, Stuff
from kit.sewing.spans import Span, sides_of
from kit.sewing.state import EdgeKey, State

_ROUND = 0.15  # share of its chord that an edge bows, from which on its piece does not lie flat beside another
_LEVEL = 0.5  # share of its width by which a ring goes out or in, from which on it is drawn level
_INSIDE = ("facing", "lining")
_OTHER: dict[Face, Face] = {"right": "wrong", "wrong": "right"}


@dataclass(frozen=True)
class _Ring:
    """A piece closed to a ring: `around` mm along the `edge` it is looked at from, `across` mm along its `others`,
    `wide` mm between them, its own `seam`. A round piece has neither others nor seam."""

    piece: Piece
    edge: str
    around: float
    across: float = 0.0
    wide: float = 0.0
    others: tuple[str, ...] = ()
    seam: str = ""
    raw: tuple[bool, bool] = (True, True)

    @property
    def level(self) -> bool:
        """Whether it is drawn level: a round piece, and a ring that is more a disc than a tube."""
        return not self.others or abs(self.around - self.across) / (2 * math.pi) > _LEVEL * self.wide

    def away(self, radius: float) -> float:
        """The radius of its edge across, where the circle that it starts from has the one given."""
        return radius + (self.across - self.around) / (2 * math.pi) if self.others else 0.0

    def rise(self, radius: float) -> float:
        """How high it stands, mm."""
        if self.level:
            return 0.0
        out = self.away(radius) - radius
        return math.sqrt(max(self.wide * self.wide - out * out, 0.0))


def in_the_round(pattern: Cut, lying: Lying, operation: Operation, scene: Scene) -> Scene:
    """The scene as seen in the round, where its pieces are rings by now that do not lie flat beside one another and the
    work goes all round; else the scene as it is."""
    focus, layers = scene.focus, scene.layers
    if focus is None or scene.things or scene.strip or not 1 <= len(layers) <= 2:
        return scene
    if scene.arrows and _own(operation, focus):
        return scene
    if any(_otherwise(layer) for layer in layers) or not _all_round(pattern, operation, focus):
        return scene
    rings = [_ring(pattern, lying, layer.run) for layer in layers]
    found = [ring for ring in rings if ring is not None]
    if len(found) < len(layers) or not any(ring.seam for ring in found):
        return scene
    if not any(_bowed(ring.piece.edge(ring.edge)) for ring in found):
        return scene
    if len(layers) == 1:
        return replace(scene, layers=tuple(_alone(pattern, lying, layers[0], found[0])))
    if layers[1].how != "together":
        return scene
    if not found[1].level and found[0].level and found[0].others:  # turned over, so that the whole row is seen
        low, up = layers
        layers = (
            replace(up, up=_OTHER[up.up], on=None, how="flat"),
            replace(low, up=_OTHER[low.up], on=up.run, how="together"),
        )
        found = found[::-1]
    return replace(scene, layers=tuple(_both(pattern, lying, layers, found)))


def _otherwise(layer: Layer) -> bool:
    """Whether a layer is shown in a way of its own."""
    own = (layer.along, layer.fold, layer.place, layer.lain)
    told = layer.turn or layer.back or layer.trimmed or layer.creased or layer.ring
    return layer.stuff == "interfacing" or layer.how == "open" or bool(told) or any(each is not None for each in own)


def _all_round(pattern: Cut, operation: Operation, focus: Run) -> bool:
    """Whether an operation works along all of the focus's edges, on each half. What it does not sew itself, as a seam
    that is rolled to the edge, it shows whole."""
    if not _own(operation, focus):
        return focus.start is None and focus.end is None
    halves: set[Side] = set()
    for run in operation.runs():
        if run.piece == focus.piece and set(run.edges) == set(focus.edges) and run.start is None and run.end is None:
            halves |= set(sides_of(pattern, run))
    return halves == set(pattern.piece(focus.piece).sides)


def _own(operation: Operation, focus: Run) -> bool:
    """Whether an operation works at the edges of the focus itself."""
    return any(run.piece == focus.piece and set(run.edges) & set(focus.edges) for run in operation.runs())


def _ring(pattern: Cut, lying: Lying, run: Run) -> _Ring | None:
    """The ring that a run's piece is by now, from the run's edge; None where it is none, or its edge is only a part of
    what goes round."""
    piece = pattern.piece(run.piece)
    if len(run.edges) != 1 or run.start is not None or run.end is not None:
        return None
    if len(piece.sides) == 2 and not piece.fold:
        return None
    halves = 2.0 if piece.fold else 1.0
    edge = piece.edge(run.edges[0])
    closing = _closing(lying, piece)
    rest = [each for each in piece.edges if each.name not in (edge.name, piece.fold) and each.name not in closing]
    around = edge.path.length * halves
    raw = _is_cut(lying, piece, edge)
    if not rest:
        return _Ring(piece, edge.name, around, raw=(raw, False)) if not closing else None
    if not closing or edge.name in closing or len(rest) != 1:
        return None
    first = rest[0].path.start
    wide = first.distance(edge.path.at(edge.path.nearest(first)))
    across = rest[0].path.length * halves
    return _Ring(
        piece, edge.name, around, across, wide, (rest[0].name,), min(closing), (raw, _is_cut(lying, piece, rest[0]))
    )


def _closing(lying: Lying, piece: Piece) -> set[str]:
    """The edges that the ends of a piece are sewn together by, from end to end."""
    found: set[str] = set()
    for seam in lying.state.seams:
        keys = tuple(seam)
        if all(key[0] == piece.name for key in keys) and all(_shut(lying, piece, key) for key in keys):
            found |= {key[2] for key in keys}
    return found


def _is_cut(lying: Lying, piece: Piece, edge: Edge) -> bool:
    """Whether most of an edge is a cut edge still."""
    left = sum(span.length for side in piece.sides for span in lying.state.raw(piece, side, edge.name))
    return left > edge.path.length * len(piece.sides) / 2


def _shut(lying: Lying, piece: Piece, key: EdgeKey) -> bool:
    whole = Span(*key, 0.0, piece.edge(key[2]).path.length)
    return not lying.state.raw(piece, key[1], key[2]) and not lying.open_at(whole)


def _bowed(edge: Edge) -> bool:
    chord = edge.path.end - edge.path.start
    if chord.length < 1.0:
        return True
    off = (edge.path.at(edge.path.length * share) - edge.path.start for share in (0.25, 0.5, 0.75))
    return max(abs(chord.unit().cross(each)) for each in off) > _ROUND * chord.length


# ---- how they lie ---------------------------------------------------------------------------------------------


def _lie(ring: _Ring, radius: float, height: float, way: float, work: bool = False) -> RoundLie:
    """A ring from a circle, standing up from it (`way` 1) or hanging down (-1)."""
    far = (ring.away(radius), height + way * ring.rise(radius))
    return RoundLie((radius, height), far, ring.edge, ring.others, ring.seam, work, raw=ring.raw)


def _alone(pattern: Cut, lying: Lying, layer: Layer, ring: _Ring) -> Iterator[Layer]:
    """One ring. Level and with its right side up it lies on the table, and what is sewn to it stands on it; else it
    hangs from the edge that is worked at."""
    radius = ring.around / (2 * math.pi)
    layer = replace(layer, on=None, how="flat")
    if ring.level and layer.up == "right":
        yield replace(layer, round=_lie(ring, radius, 0.0, 1.0, True))
        yield from _further(pattern, lying, ring, radius, 1.0, layer.up, {ring.piece.name})
        return
    out = _below(ring, radius, layer.up) if ring.level else layer.up
    more = _further(pattern, lying, ring, radius, -1.0, out, {ring.piece.name})
    yield from _by_height(more)
    yield replace(layer, round=_lie(ring, radius, 0.0, -1.0, True))


def _both(pattern: Cut, lying: Lying, layers: tuple[Layer, ...], rings: list[_Ring]) -> Iterator[Layer]:
    """Two rings laid edge on edge. A round piece that is the lower one lies on the table, and the other stands on it;
    else the upper one lies level over the lower, which hangs from it, or is a tube round it."""
    (low, up), (below, above) = layers, rings
    radius = min(ring.around for ring in rings) / (2 * math.pi)
    names = {ring.piece.name for ring in rings}
    if not below.others and not above.level:
        yield replace(low, round=_lie(below, radius, 0.0, 1.0, True))
        yield replace(up, round=_lie(above, radius, 0.0, 1.0, True))
        yield from _further(pattern, lying, above, radius, 1.0, up.up, names)
        return
    upper = replace(up, round=_lie(above, radius, 0.0, -1.0, True))
    lower = replace(low, round=_lie(below, radius, 0.0, -1.0, True))
    if not above.level:
        yield _looked_into(lower)
        yield from _by_height(_further(pattern, lying, above, radius, -1.0, up.up, names))
        yield upper
        return
    inner = list(_further(pattern, lying, above, radius, -1.0, _below(above, radius, up.up), names))
    if not below.level:  # both allowances point away from where the upper one lies
        lower = replace(lower, up=_below(above, radius, low.up))
    outer = _further(
        pattern, lying, below, radius, -1.0, lower.up if not below.level else _below(below, radius, low.up), names
    )
    around = [*outer] if below.level else [*outer, lower]
    seen_into = next((layer for layer in inner if _stands(layer)), None)
    yield from (layer for layer in (*inner, *around) if not _stands(layer))
    for layer in around:
        if _stands(layer):
            yield layer
    if seen_into is not None:
        yield _looked_into(seen_into)
    if below.level:
        yield lower
    yield upper


def _below(ring: _Ring, radius: float, up: Face) -> Face:
    """Which face a wall shows outside that hangs from a level ring whose upper side is `up`: one that goes outward
    turns it out, one that goes inward turns it in."""
    return up if ring.others and ring.away(radius) > radius else _OTHER[up]


def _by_height(layers: Iterable[Layer]) -> list[Layer]:
    """What lies level first: it is the bottom."""
    return sorted(layers, key=_stands)


def _stands(layer: Layer) -> bool:
    return layer.round is not None and not layer.round.level


def _looked_into(layer: Layer) -> Layer:
    """A tube of which one sees the inside alone."""
    assert layer.round is not None
    return replace(layer, up=_OTHER[layer.up], round=replace(layer.round, inside=True))


def _further(
    pattern: Cut, lying: Lying, ring: _Ring, radius: float, way: float, out: Face, there: set[str]
) -> Iterator[Layer]:
    """What is sewn to a ring's edge across already, and on from there; `out` is the face it shows outside."""
    start = _lie(ring, radius, 0.0, way).far
    return _on_from(pattern, lying, ring, start, way, out, there)


def _on_from(
    pattern: Cut, lying: Lying, ring: _Ring, at: tuple[float, float], way: float, out: Face, there: set[str]
) -> Iterator[Layer]:
    for name in ring.others:
        key = (ring.piece.name, ring.piece.sides[-1], name)
        for partner in lying.partners(key):
            run = Run(partner[0], (partner[2],), partner[1])
            more = _ring(pattern, lying, run) if partner[0] not in there else None
            if more is None:
                continue
            there.add(partner[0])
            stuff: Stuff = "facing" if more.piece.role == "facing" else "main"
            lie = _lie(more, *at, way)
            on = Run(key[0], (name,), key[1])
            yield Layer(run, up=out, stuff=stuff, on=on, how="open", fused=lying.fused(partner[0]), round=lie)
            yield from _on_from(pattern, lying, more, lie.far, way, out, there)


def standing(pattern: Cut, state: State, run: Run) -> tuple[Layer, ...]:
    """The ring that a run lies on with all that is sewn to it by now, as it is worn or used; () where its piece is
    none, or lies flat as well as it stands."""
    lying, own = Lying(state), pattern.piece(run.piece)
    rings = (_ring(pattern, lying, Run(own.name, (edge.name,), run.side or own.sides[-1])) for edge in own.edges)
    ring = next((each for each in rings if each is not None and each.seam), None)
    if ring is None:
        return ()
    there = {own.name}
    while (more := _next(pattern, lying, ring, there, own)) is not None and more.others:
        ring = more
    end = _ring(pattern, lying, Run(ring.piece.name, ring.others, ring.piece.sides[-1]))
    if end is None:
        return ()
    chain, there = [end], {end.piece.name}
    while (more := _next(pattern, lying, chain[-1], there, own)) is not None:
        chain.append(more)
    if not any(_bowed(each.piece.edge(each.edge)) for each in chain) or len(chain) < 2:
        return ()
    way = 1.0 if any(each.piece.guide_of("head_line") for each in chain) else -1.0  # a hat on its brim, a bag hanging
    at, layers = (end.around / (2 * math.pi), 0.0), []
    for each in chain:
        lie = _lie(each, *at, way)
        layers.append(Layer(Run(each.piece.name, (each.edge,), each.piece.sides[-1]), round=lie))
        at = lie.far
    return tuple(layers)


def _next(pattern: Cut, lying: Lying, ring: _Ring, there: set[str], like: Piece) -> _Ring | None:
    """The ring sewn to another's far edge, of those that lie outside or inside the garment as the piece `like` does."""
    for name in ring.others:
        for partner in lying.partners((ring.piece.name, ring.piece.sides[-1], name)):
            other = pattern.piece(partner[0])
            if other.name in there or (other.role in _INSIDE) != (like.role in _INSIDE):
                continue
            more = _ring(pattern, lying, Run(partner[0], (partner[2],), partner[1]))
            if more is not None:
                there.add(other.name)
                return more
    return None
