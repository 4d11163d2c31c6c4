"""The outline of a layer as it lies: its edges cut, sewn, turned or folded, its darts shut, a band along its run."""

from __future__ import annotations

from dataclasses import replace

from kit.geometry import Curve, Line, Motion, Path
from kit.lesson.pattern import Pattern
from kit.picture.bent import across, bent
from kit.picture.cloth_edges import Bit, Flap, closed_ring, flaps_of, folded_line, half_bits, mirrored
from kit.picture.place import fold_mirror, in_two, moved_curves, polyline, widths_of
from kit.picture.placed import PlacedLayer
from kit.piece.piece import Piece, Side
from kit.sewing.run import Run
from kit.sewing.scene import Along, EdgeLie
from kit.sewing.spans import path_of, spans

_STEP = 6.0  # mm between the points of a band's outline along its run
_ON = 400.0  # mm that a band is drawn on where it goes on beyond the picture


def _lies(p: PlacedLayer, pattern: Pattern, side: Side) -> list[tuple[EdgeLie, bool]]:
    """How the edges of one half lie, and whether what is folded back of each is seen: what is turned in this picture
    always, what was before and allowances that lie open only from the wrong side."""
    layer, piece = p.layer, p.piece
    widths = widths_of(piece)
    wrong = layer.up == "wrong" and layer.stuff != "interfacing"
    found: list[tuple[EdgeLie, bool]] = []

    def add(edge: str, way: str, deep: float, seen: bool) -> None:
        size = piece.edge(edge).path.length
        parts = p.parts.get(edge)
        if parts is not None and side not in parts:
            return
        low, high = parts[side] if parts is not None else (0.0, size)
        found.append((EdgeLie(edge, low, high, way, deep), seen))  # type: ignore[arg-type]

    for run, depth in layer.back:
        for span in spans(pattern, replace(run, side=run.side or side)):
            if span.side == side:
                found.append((EdgeLie(span.edge, span.start, span.end, "turned", depth), wrong))
    for name, depth in layer.turn:
        add(name, "turned", depth, not layer.ring)
    for edge in piece.edges:  # a set has an order of its own
        if edge.name in p.opened and edge.name not in {lie.edge for lie, _ in found}:
            lain = widths[edge.name] if layer.lain is None else layer.lain
            add(edge.name, "seamed", lain, wrong or layer.lain is not None)
    for lie in layer.lies:
        taken = [each for each, _ in found if each.edge == lie.edge]
        if taken and lie.start < 0.5 and lie.end > piece.edge(lie.edge).path.length - 0.5:
            found = [(each, seen) for each, seen in found if each.edge != lie.edge or each.way == "turned"]
            taken = [each for each, _ in found if each.edge == lie.edge]
        if not any(each.start < lie.end and lie.start < each.end for each in taken):
            found.append((lie, wrong and lie.way != "hung"))
    return found


def cut_back(p: PlacedLayer, given: tuple[tuple[Run, float], ...], side: Side) -> dict[str, float]:
    """{edge: mm outside its stitch line} of the edges of one half that are `trimmed` or `creased` from end to end."""
    return {
        name: to for run, to in given for name in run.edges if run.side in (None, side) and not parted(p.piece, run)
    }


def parted(piece: Piece, run: Run) -> bool:
    """Whether a run takes a part of its edges only."""
    size = sum(piece.edge(name).path.length for name in run.edges)
    return (run.start or 0.0) > 0.5 or (run.end is not None and run.end < size - 0.5)


def outline(p: PlacedLayer, pattern: Pattern) -> None:
    """The layer's outline and what is folded back at its edges: a hem folds on its stitch line, and an allowance
    pressed open, seen from the wrong side, lies back on its own piece."""
    halves: tuple[Side, ...] = (p.side,)
    if p.piece.fold:
        halves = (p.side, "left" if p.side == "right" else "right")
    layer_of = p.layer
    bits: list[Bit] = []
    before: tuple[list[tuple[EdgeLie, bool]], list[Bit], list[Flap]] | None = None
    for number, side in enumerate(halves):
        lies = _lies(p, pattern, side)
        if before is not None and before[0] == lies:  # both halves lie alike
            own, shown = [replace(bit, side=side) for bit in before[1]], before[2]
        else:
            all_lies = [lie for lie, _ in lies]
            creased = cut_back(p, layer_of.creased, side)
            line = folded_line(p.piece, all_lies, cut_back(p, layer_of.trimmed, side) | creased)
            own = [
                replace(bit, kind="crease") if bit.edge in creased else bit
                for bit in half_bits(p.piece, side, all_lies, line)
            ]
            shown = flaps_of(p.piece, side, all_lies, [lie for lie, seen in lies if seen], line)
            before = lies, own, shown
        for flap in shown:
            p.flaps.append(p.lay(Path(flap.curves), side).curves)
            if p.layer.lain and flap.edge in p.opened:
                p.lain.add(len(p.flaps) - 1)
        bits += mirrored(own, p.piece) if number else own
    if p.layer.fold is None:
        # the other half of a piece on the fold comes mirrored in the draft; its darts are taken at its own half
        p.bits = [replace(bit, curves=_as_it_lies(p, bit)) for bit in bits]
        p.outline = closed_ring(p.bits)
        return
    draft, over = folded_over(closed_ring(bits), p.layer.fold)
    p.flaps.extend(moved_curves(part, p.motion) for part in over)
    p.outline = moved_curves(draft, p.motion)
    if not over:
        p.bits = [replace(bit, curves=moved_curves(bit.curves, p.motion)) for bit in bits]
        return
    fold = p.layer.fold.moved(p.motion)
    way = (fold.end - fold.start).unit()
    for curve in p.outline:
        there = all(abs(way.cross(q - fold.start)) < 0.05 for q in (curve.start, curve.end))
        p.bits.append(Bit((curve,), "", p.side, "crease" if there else "edge"))


def _as_it_lies(p: PlacedLayer, bit: Bit) -> tuple[Curve, ...]:
    path = Path(bit.curves)
    if p.piece.fold and bit.side != p.side:
        path = path.moved(fold_mirror(p.piece))  # back to the half as drafted, from where the layer takes it
    return p.lay(path, bit.side).curves


def folded_over(outline: tuple[Curve, ...], fold: Path) -> tuple[tuple[Curve, ...], list[tuple[Curve, ...]]]:
    """A closed outline folded along a straight line: what lies left of it stays, what lies right of it is turned over.
    Gives the outline that stays and the parts turned over, as lines at most 0.2 mm off the curves; the outline itself
    and nothing when the fold misses it."""
    mirror = Motion.reflection(fold.start, fold.end)
    stays, over = in_two(outline, fold.start, fold.end)
    if not stays or not over:
        return outline, []
    return stays[0], [moved_curves(ring, mirror) for ring in over] + stays[1:]


def _over_fold(base: PlacedLayer, on: Run, under: Path, along: Along) -> tuple[Path, Along]:
    """Where a band lies along a run: where it goes on over the fold of the piece, along the other half as well."""
    laid = base.lay(under, on.side)
    if not base.piece.fold or on.start is not None or on.end is not None:
        return laid, along
    fold = base.piece.edge(base.piece.fold).path
    at_start, at_end = (fold.distance_to(end) < 0.5 for end in (under.start, under.end))
    if at_start == at_end or along.beyond[1 if at_end else 0] != 0.0:
        return laid, along
    other = base.lay(under, "left" if on.side == "right" else "right").reversed()
    size = along.end - along.start
    if at_end:
        return _bridged(laid, other), replace(along, end=along.end + size)
    return _bridged(other, laid), replace(along, start=along.start - size)


def _bridged(one: Path, two: Path) -> Path:
    """Two lines as one, a small gap between them closed."""
    gap = (Line(one.end, two.start),) if one.end.distance(two.start) > 1e-6 else ()
    return Path(one.curves + gap + two.curves)


def band(p: PlacedLayer, pattern: Pattern, slip: float = 0.0) -> None:
    """A straight band along the run it is sewn to, single or folded along its middle, slid `slip` mm into the cloth."""
    along, on, base = p.layer.along, p.layer.on, p.base
    assert along is not None and on is not None and base is not None
    own, under = path_of(pattern, replace(p.layer.run, start=None, end=None)), path_of(pattern, on)
    inward = p.inner(own)[1]
    target, along = _over_fold(base, on, under, along)
    bend = bent(own, inward, target, base.inward(under, on.side), along, slip)
    p.bend = bend
    p.slid = Motion.translation(base.inward(under, on.side) * slip)
    step = 1.0 if along.end > along.start else -1.0
    before, after = (_ON if beyond is None else beyond for beyond in along.beyond)
    low, high = along.start - step * before, along.end + step * after
    p.seen = own.start, (own.end - own.start).unit(), min(low, high), max(low, high)
    count = max(int(abs(high - low) / _STEP), 2)

    def line(v: float) -> Path:
        return Path(polyline([bend(across(own, inward, low + (high - low) * i / count, v)) for i in range(count + 1)]))

    near, far = along.depth
    folded_back = along.middle > 0 and near < 0  # the far edge lies on the near one
    first, last = line(near), line(far).reversed()
    p.bits = [
        Bit(first.curves, "far" if folded_back else p.layer.run.edges[0], p.side, "edge" if near < 0 else "crease"),
        Bit((Line(first.end, last.start),), "end", p.side, "edge" if along.raw[1] else "crease"),
        Bit(last.curves, "far", p.side, "crease" if along.middle > 0 else "edge"),
        Bit((Line(last.end, first.start),), "start", p.side, "edge" if along.raw[0] else "crease"),
    ]
    p.outline = closed_ring(p.bits)
