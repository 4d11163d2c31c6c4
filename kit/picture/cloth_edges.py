"""The outline of one layer of cloth in bits, each told by its edge and by what it is there: cut, or a fold.

An edge that is sewn already ends on its stitch line, where the cloth folds back; the rest of it, and every other edge,
ends on its cut line. Where an edge is sewn only in part the outline steps in from the one to the other. What is folded
back lies over the wrong side and is drawn from there.
"""

from __future__ import annotations

from collections.abc import Collection, Iterable, Mapping, Sequence
from dataclasses import dataclass
from typing import Literal

from kit.errors import KitError
from kit.geometry import Curve, Line, Path, parallel
from kit.picture.place import fold_mirror, in_two, layer_line
from kit.piece.allowance import CutLine
from kit.piece.piece import Piece, Side
from kit.sewing.scene import EdgeLie

BitKind = Literal["edge", "crease"]
_SAME = 0.5  # mm between places along an edge that are one
_SAG = 0.5  # mm beyond an edge that are seen
_LEVEL = 0.3  # the sine of the angle between two edges from which on they make a corner


@dataclass(frozen=True)
class Bit:
    """Curves of an outline along one edge of one half: a cut "edge", or a "crease" where the cloth folds back."""

    curves: tuple[Curve, ...]
    edge: str
    side: Side
    kind: BitKind


@dataclass(frozen=True)
class Flap:
    """A closed shape of cloth folded over to the wrong side along an edge of one half."""

    curves: tuple[Curve, ...]
    edge: str
    side: Side


def whole(piece: Piece, lie: EdgeLie) -> bool:
    """Whether a lie takes in all of its edge."""
    return lie.start < _SAME and lie.end > piece.edge(lie.edge).path.length - _SAME


def _entire(piece: Piece, lies: Iterable[EdgeLie]) -> set[str]:
    """The edges that are sewn from end to end, in one way or in several that follow one another."""
    reached: dict[str, float] = {}
    for lie in sorted(lies, key=lambda lie: lie.start):
        if lie.start <= reached.get(lie.edge, 0.0) + _SAME:
            reached[lie.edge] = max(reached.get(lie.edge, 0.0), lie.end)
    return {name for name, end in reached.items() if end > piece.edge(name).path.length - _SAME}


def folded_line(piece: Piece, lies: Iterable[EdgeLie], trimmed: Mapping[str, float] | None = None) -> CutLine:
    """The cut line of a drafted half, on the stitch line where an edge is sewn from end to end; allowances `trimmed` to
    so many mm are cut back."""
    return layer_line(piece, dict(trimmed or {}) | dict.fromkeys(_entire(piece, lies), 0.0))


def half_bits(piece: Piece, side: Side, lies: Sequence[EdgeLie], line: CutLine) -> list[Bit]:
    """The outline of a drafted half in bits, in order round it, from its `folded_line`; none along the fold."""
    entire = _entire(piece, lies)
    joins = {before: curves for before, _, curves in line.joins}
    names = [name for name, _ in line.edges]
    if piece.fold in names:
        at = names.index(piece.fold)
        names = names[at + 1 :] + names[:at]
    bits: list[Bit] = []
    for name in names:
        some = sorted((lie for lie in lies if lie.edge == name and name not in entire), key=lambda lie: lie.start)
        bits += _along(piece, side, name, line, some, "crease" if name in entire else "edge")
        corner = tuple(c for c in joins.get(name, ()) if not _on_fold(piece, c))
        after = names[(names.index(name) + 1) % len(names)]
        inside = _sewn_at(piece, name, lies, line, "end") and _sewn_at(piece, after, lies, line, "start")
        if corner and (not inside or {name, after} <= entire):
            bits.append(Bit(corner, name, side, "crease" if name in entire else "edge"))
    return _cornered(bits)


def _sewn_at(piece: Piece, name: str, lies: Iterable[EdgeLie], line: CutLine, end: Literal["start", "end"]) -> bool:
    """Whether an edge is sewn at that end of it, as the outline goes round."""
    stitched, cut = piece.edge(name).path, line.edge(name)
    forward = (cut.end - cut.start).dot(stitched.end - stitched.start) >= 0
    if (end == "start") == forward:
        return any(lie.edge == name and lie.start < _SAME for lie in lies)
    return any(lie.edge == name and lie.end > stitched.length - _SAME for lie in lies)


_BEYOND = 120.0  # mm, more than any allowance that is crossed


def _cornered(bits: list[Bit]) -> list[Bit]:
    """Where only the end of an edge is sewn, its stitch line runs on straight over the allowance of the next edge,
    which is folded back with it: the outline goes there, and the corner beyond is left out."""
    for number, bit in enumerate(bits):
        if bit.kind != "crease":
            continue
        before, after = bits[number - 1], bits[(number + 1) % len(bits)]
        path = Path(bit.curves)
        if before.kind == "edge" and before.edge != bit.edge:
            bits = _met(bits, number, Path.line(path.start, path.start - path.start_tangent * _BEYOND), -1)
        if after.kind == "edge" and after.edge != bit.edge:
            bits = _met(bits, number, Path.line(path.end, path.end + path.end_tangent * _BEYOND), 1)
    return bits


def _met(bits: list[Bit], number: int, ray: Path, step: int) -> list[Bit]:
    """The bits with those next to one, in the direction `step`, cut off where a ray from its end meets them."""
    for reach in (1, 2, 3):
        at = (number + reach * step) % len(bits)
        path = Path(bits[at].curves)
        met = path.crossings(ray)
        if not met:
            continue
        point = min(met, key=ray.start.distance)
        along = path.nearest(point)
        size = path.length
        if not 0.05 < along < size - 0.05:
            return bits
        kept = path.between(0.0, along) if step < 0 else path.between(along, size)
        way = (point, ray.start) if step < 0 else (ray.start, point)
        bridge = Bit((Line(*way),), bits[at].edge, bits[at].side, "edge")
        gone = {(number + k * step) % len(bits) for k in range(1, reach)}
        found: list[Bit] = []
        for i, bit in enumerate(bits):
            if i in gone:
                continue
            if i == at:
                whole = Bit(kept.curves, bit.edge, bit.side, bit.kind)
                found += [whole, bridge] if step < 0 else [bridge, whole]
            else:
                found.append(bit)
        return found if len(found) >= len(bits) - reach else bits
    return bits


def _on_fold(piece: Piece, curve: Curve) -> bool:
    if not piece.fold or not isinstance(curve, Line):
        return False
    fold = piece.edge(piece.fold).path
    way = (fold.end - fold.start).unit()
    return all(abs(way.cross(p - fold.start)) < 0.05 for p in (curve.start, curve.end))


def _along(piece: Piece, side: Side, name: str, line: CutLine, some: Sequence[EdgeLie], kind: BitKind) -> list[Bit]:
    """The bits of one edge: all of one kind, or cut and folded stretches with the steps between them."""
    cut, stitched = line.edge(name), piece.edge(name).path
    if not some:
        return [Bit(cut.curves, name, side, kind)]
    forward = (cut.end - cut.start).dot(stitched.end - stitched.start) >= 0
    inside = stitched if forward else stitched.reversed()
    size = stitched.length
    stretches = [(lie.start, lie.end) if forward else (size - lie.end, size - lie.start) for lie in some]
    bits: list[Bit] = []
    here = 0.0  # mm along the cut line
    for low, high in sorted(stretches):
        reach, back = cut.nearest(inside.at(low)), cut.nearest(inside.at(high))
        if low > _SAME and reach - here > 0.1:
            bits.append(Bit(cut.between(here, reach).curves, name, side, "edge"))
        start = cut.at(reach)
        if low > _SAME and start.distance(inside.at(low)) > 0.05:
            bits.append(Bit((Line(start, inside.at(low)),), name, side, "edge"))
        bits.append(Bit(inside.between(low, high).curves, name, side, "crease"))
        end = cut.at(back)
        if high < size - _SAME and end.distance(inside.at(high)) > 0.05:
            bits.append(Bit((Line(inside.at(high), end),), name, side, "edge"))
        here = back if high < size - _SAME else cut.length
    if cut.length - here > 0.1:
        bits.append(Bit(cut.between(here, cut.length).curves, name, side, "edge"))
    return bits


def flaps_of(piece: Piece, side: Side, lies: Sequence[EdgeLie], seen: Iterable[EdgeLie], line: CutLine) -> list[Flap]:
    """What lies over the wrong side along those edges folded back that are `seen`; `line` is the `folded_line`."""
    all_lies = sorted((lie for lie in seen if lie.deep > 0), key=lambda lie: lie.way == "turned")  # hems lie on seams
    entire = _entire(piece, lies)
    zero = dict.fromkeys(entire, 0.0)
    found: list[Flap] = []
    turned = {each.edge for each in all_lies if each.way == "turned" and whole(piece, each)}
    for lie in all_lies:
        try:
            if whole(piece, lie):
                outer = line.edge(lie.edge)
                inner = layer_line(piece, zero | {lie.edge: -lie.deep}).edge(lie.edge)
                outer = _as_wide(outer, inner)
            else:
                outer = piece.edge(lie.edge).path.between(lie.start, lie.end)
                into = outer.normal_at(outer.length / 2)
                left = piece.outline.contains(outer.at(outer.length / 2) + into * 2.0)
                inner = parallel(outer, lie.deep if left else -lie.deep)
        except KitError:
            continue  # it bends tighter than it is turned: the proof tells of it
        back = inner.reversed()
        ring = (*outer.curves, Line(outer.end, back.start), *back.curves, Line(back.end, outer.start))
        found.append(Flap(_folded_with(ring, piece, lie.edge, turned), lie.edge, side))
    return found


def _folded_with(ring: tuple[Curve, ...], piece: Piece, edge: str, turned: Collection[str]) -> tuple[Curve, ...]:
    """What is folded back along an edge, without what lies beyond an edge beside it that is folded back as well: at a
    sharp corner that goes under with it."""
    names = [each.name for each in piece.edges]
    at, own = names.index(edge), piece.edge(edge).path
    for other in dict.fromkeys((names[at - 1], names[(at + 1) % len(names)])):
        if other == edge or other not in turned:
            continue
        path = piece.edge(other).path
        at_start = min(path.start.distance(q) for q in (own.start, own.end)) < _SAME
        corner = path.start if at_start else path.end
        way = (path.start_tangent if at_start else path.end_tangent).unit()
        mine = own.start_tangent if corner.distance(own.start) < corner.distance(own.end) else own.end_tangent
        inside = 1.0 if piece.outline.area > 0 else -1.0
        if abs(way.cross(mine.unit())) < _LEVEL or not any(
            inside * way.cross(curve.start - corner) < -_SAG for curve in ring
        ):
            continue
        left, right = in_two(ring, corner, corner + way * 10.0)
        kept = left if inside > 0 else right
        if kept:
            ring = kept[0]
    return ring


def _as_wide(outer: Path, inner: Path) -> Path:
    """`outer` carried on straight at its ends as far as `inner` reaches."""
    curves = list(outer.curves)
    after = (inner.end - outer.end).dot(outer.end_tangent)
    before = (outer.start - inner.start).dot(outer.start_tangent)
    if after > 0.05:
        curves.append(Line(outer.end, outer.end + outer.end_tangent * after))
    if before > 0.05:
        curves.insert(0, Line(outer.start - outer.start_tangent * before, outer.start))
    return Path(tuple(curves))


def mirrored(bits: Iterable[Bit], piece: Piece) -> list[Bit]:
    """Bits of a half as those of the other half of a piece on the fold, in order going on from it."""
    mirror = fold_mirror(piece)
    return [
        Bit(tuple(c.reversed().moved(mirror) for c in reversed(bit.curves)), bit.edge, bit.side, bit.kind)
        for bit in reversed(list(bits))
    ]


def closed_ring(bits: Iterable[Bit]) -> tuple[Curve, ...]:
    """The bits as one closed line, small gaps between them bridged."""
    out: list[Curve] = []
    for bit in bits:
        for curve in bit.curves:
            if out and out[-1].end.distance(curve.start) > 1e-6:
                out.append(Line(out[-1].end, curve.start))
            out.append(curve)
    if out and out[-1].end.distance(out[0].start) > 1e-6:
        out.append(Line(out[-1].end, out[0].start))
    return tuple(out)
