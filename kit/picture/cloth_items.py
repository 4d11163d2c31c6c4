"""What is painted of one layer of cloth: its face, its edges cut or folded, what is turned over, its darts, the rows
that hold it by now."""

from __future__ import annotations

from itertools import groupby

from kit.geometry import Line, parallel
from kit.picture.darts_shut import ShutFold, all_of, warped
from kit.picture.drawing import Fill, FillRole, Item, Stroke, StrokeRole
from kit.picture.place import is_facing, polyline, widths_of
from kit.picture.placed import Placed, half_motion
from kit.piece.piece import Side
from kit.sewing.scene import Face

_FILLS: dict[tuple[str, str], FillRole] = {
    ("main", "right"): "right_side",
    ("main", "wrong"): "wrong_side",
    ("facing", "right"): "facing",
    ("facing", "wrong"): "wrong_side",
    ("interfacing", "right"): "interfacing",
    ("interfacing", "wrong"): "interfacing",
    ("lining", "right"): "lining",
    ("lining", "wrong"): "lining",
    ("strip", "right"): "strip",
    ("strip", "wrong"): "strip",
}
OTHER: dict[Face, Face] = {"right": "wrong", "wrong": "right"}


def cloth(p: Placed, face: str) -> FillRole:
    """The fill of a layer's face: one that is already interfaced shows its interfacing on the wrong side."""
    stuff: str = p.layer.stuff
    if face == "wrong" and (p.layer.fused or (stuff == "facing" and p.piece.cut.interfacing)):
        return "interfacing"
    if stuff == "main" and p.piece.cut.cloth != "main":
        stuff = p.piece.cut.cloth
    elif stuff == "main" and is_facing(p.piece):
        stuff = "facing"
    return _FILLS[stuff, face]


def layer_items(p: Placed, below: list[Placed], folds: tuple[str, ...]) -> list[Item]:
    """One layer as it lies over those `below`; the darts and pleats among `folds` are sewn in this step."""
    layer = p.layer
    items: list[Item] = [Fill(p.outline, cloth(p, layer.up), name=p.piece.name)]
    items += _edges(p)
    for flap in p.flaps:
        items.append(Fill(flap, cloth(p, OTHER[layer.up]), name=f"{p.piece.name}.turned"))
        items.append(Stroke(flap, "edge", closed=True, name=f"{p.piece.name}.flap"))
    items += _held(p)
    items += fold_items(p, folds)
    under = [q for q in below if q.layer.ring and q.base is p]
    if p.base is not None and layer.how != "open" and layer.place is None and not layer.ring:
        under = [q for q in below if q is p.base or q.base is p]
    items += [Stroke(q.outline, "hidden", closed=True, name=f"below {q.piece.name}") for q in under]
    return items


def _edges(p: Placed) -> list[Item]:
    """The outline, stretch by stretch: cut edges thin, folds strong."""
    return [
        Stroke(tuple(c for bit in bits for c in bit.curves), kind, name=f"{p.piece.name}.{side}.{edge}")
        for (kind, side, edge), bits in groupby(p.bits, key=lambda bit: (bit.kind, bit.side, bit.edge))
    ]


def _halves(p: Placed) -> tuple[Side, ...]:
    return p.piece.sides if p.piece.fold else (p.side,)


def _held(p: Placed) -> list[Item]:
    """Rows of earlier steps that hold what is turned."""
    items: list[Item] = []
    now = {name for name, _ in p.layer.turn}
    for lie in p.layer.lies:
        if lie.row <= 0 or lie.edge in now:
            continue
        path = p.piece.edge(lie.edge).path.between(lie.start, lie.end)
        left = path.normal_at(path.length / 2).dot(p.inner(path)[1]) > 0
        row = parallel(path, lie.row if left else -lie.row)
        for side in _halves(p):
            items.append(Stroke(p.lay(row, side).curves, "old_row", name=f"held {p.piece.name}.{lie.edge}"))
    return items


def fold_items(p: Placed, new: tuple[str, ...]) -> list[Item]:
    """Darts and pleats that are shut: the row, and from the wrong side what is folded away, pressed to its side, with
    arrows where this step does it."""
    items: list[Item] = []
    edges = {dart.name: dart.edge for dart in p.piece.darts} | {pleat.name: pleat.edge for pleat in p.piece.pleats}
    for fold in p.folds:
        after = tuple(other for other in p.folds if other is not fold)
        allowance = widths_of(p.piece).get(edges.get(fold.name, ""), 0.0)
        for side in _halves(p):
            items += _one_fold(p, fold, after, allowance, side, fold.name in new)
    return items


def _one_fold(
    p: Placed, fold: ShutFold, after: tuple[ShutFold, ...], allowance: float, side: Side, new: bool
) -> list[Item]:
    motion, warp, follow = half_motion(p, side), all_of(after), p.follow or (lambda q: q)
    name = f"dart {p.piece.name}.{fold.name}"
    items: list[Item] = []
    seam = warped(warped(fold.seam, warp).moved(motion), follow)
    if p.layer.up == "wrong" and p.layer.stuff != "interfacing":
        point, foot, over = (follow(motion(warp(q))) for q in fold.wedge(allowance))
        ring = polyline([point, foot, over, point])
        items += [Fill(ring, cloth(p, "wrong"), name=f"{name}.wedge"), Stroke(ring[2:], "crease", name=name)]
        items.append(Stroke(ring[1:2], "edge", name=f"{name}.cut"))
        if new:
            for share in (0.35, 0.6):
                a, b = foot.lerp(point, share), over.lerp(point, share)
                reach = (b - a).unit() * max(a.distance(b) * 1.4, fold.depth * 0.11)
                items.append(Stroke((Line(a, a + reach),), "press", arrow="end", name="press in"))
    role: StrokeRole = "row" if new else "old_row"
    if p.layer.up == "wrong" or new:
        items.append(Stroke(seam.curves, role, name=name))
    else:
        items.append(Stroke(seam.curves, "edge", name=name))
    return items
