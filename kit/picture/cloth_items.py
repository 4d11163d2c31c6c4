"""What is painted of one layer of cloth: its face, its edges cut or folded, what is turned over, its darts, the rows
that hold it by now."""

from __future__ import annotations

from itertools import groupby

from kit.errors import KitError
from kit.geometry import Curve, Line, Motion, Path, beside
from kit.picture.darts_shut import ShutFold, all_of, warped
from kit.picture.drawing import Fill, FillRole, Item, Stroke, StrokeRole
from kit.picture.layer_outline import cut_back
from kit.picture.place import is_facing, layer_line, polyline, widths_of
from kit.picture.placed import PlacedLayer, half_motion
from kit.piece.allowance import notch_lines
from kit.piece.dart import darts_lying, legs
from kit.piece.piece import Notch, Side
from kit.sewing.scene import Face

_FILLS: dict[tuple[str, str], FillRole] = {
    ("main", "right"): "right_side",
    ("main", "wrong"): "wrong_side",
    ("facing", "right"): "facing",
    ("facing", "wrong"): "wrong_side",
    ("interfacing", "right"): "interfacing",
    ("interfacing", "wrong"): "interfacing",
    ("lining", "right"): "lining",
    ("lining", "wrong"): "wrong_side",
    ("strip", "right"): "strip",
    ("strip", "wrong"): "strip",
}
OTHER: dict[Face, Face] = {"right": "wrong", "wrong": "right"}


def cloth(p: PlacedLayer, face: str) -> FillRole:
    """The fill of a layer's face: one that is already interfaced shows its interfacing on the wrong side."""
    stuff: str = p.layer.stuff
    if face == "wrong" and (p.layer.fused or (stuff == "facing" and p.piece.cut.interfacing)):
        return "interfacing"
    if stuff == "main" and p.piece.cut.cloth != "main":
        stuff = p.piece.cut.cloth
    elif stuff == "main" and is_facing(p.piece):
        stuff = "facing"
    return _FILLS[stuff, face]


def layer_items(p: PlacedLayer, below: list[PlacedLayer], folds: tuple[str, ...], covered: bool = False) -> list[Item]:
    """One layer as it lies over those `below`; the darts and pleats among `folds` are sewn in this step. It is
    `covered` where a layer above is trimmed with it."""
    layer = p.layer
    items: list[Item] = [Fill(p.outline, cloth(p, layer.up), name=p.piece.name)]
    items += _edges(p)
    for number, flap in enumerate(p.flaps):
        # Pressed to one side, what lies on top is the other piece's allowance: it runs on over the seam unturned.
        face = layer.up if number in p.lain else OTHER[layer.up]
        items.append(Fill(flap, cloth(p, face), name=f"{p.piece.name}.turned"))
        items += edges_off_fold(p, flap, f"{p.piece.name}.flap")
    items += trimmed_items(p, covered)
    items += notch_items(p)
    items += open_darts(p)
    items += _held(p)
    items += _gathers(p)
    items += fold_items(p, folds)
    under = [q for q in below if q.layer.ring and q.base is p]
    if p.base is not None and layer.how != "open" and layer.place is None and not layer.ring:
        under = [q for q in below if q is p.base or q.base is p]
    items += [Stroke(q.outline, "hidden", closed=True, name=f"below {q.piece.name}") for q in under]
    return items


def edges_off_fold(p: PlacedLayer, ring: tuple[Curve, ...], name: str) -> list[Item]:
    """The edges of what lies on a piece; on the piece's fold there is none, it goes on to the other half."""
    if not p.piece.fold:
        return [Stroke(ring, "edge", closed=True, name=name)]
    fold = p.lay(p.piece.edge(p.piece.fold).path)
    way = (fold.end - fold.start).unit()

    def on_fold(curve: Curve) -> bool:
        return all(abs(way.cross(q - fold.start)) < 0.3 for q in (curve.start, curve.end))

    first = next((i for i in range(len(ring)) if on_fold(ring[i - 1]) and not on_fold(ring[i])), None)
    if first is None:
        return [Stroke(ring, "edge", closed=True, name=name)]
    ordered = [*ring[first:], *ring[:first]]
    return [Stroke(tuple(curves), "edge", name=name) for there, curves in groupby(ordered, key=on_fold) if not there]


def _edges(p: PlacedLayer) -> list[Item]:
    """The outline, stretch by stretch: cut edges thin, folds strong."""
    return [
        Stroke(tuple(c for bit in bits for c in bit.curves), kind, name=f"{p.piece.name}.{side}.{edge}")
        for (kind, side, edge), bits in groupby(p.bits, key=lambda bit: (bit.kind, bit.side, bit.edge))
    ]


def trimmed_items(p: PlacedLayer, covered: bool) -> list[Item]:
    """Where this step trims an allowance: the new cut, unless it is `covered` by that of the layer above, and pale the
    edge that falls away."""
    items: list[Item] = []
    for side in _halves(p):
        cut = cut_back(p, p.layer.trimmed, side)
        if not cut:
            continue
        before, after = layer_line(p.piece), layer_line(p.piece, cut)
        for name in cut:
            there = f"{p.piece.name}.{name}"
            items.append(Stroke(p.lay(before.edge(name), side).curves, "removed", name=f"trimmed {there}"))
            if not covered:
                items.append(Stroke(p.lay(after.edge(name), side).curves, "new", name=f"trim {there}"))
    return items


def notch_items(p: PlacedLayer) -> list[Item]:
    """The notches of the layer where its edge is still a cut edge."""
    if p.layer.stuff == "interfacing" or p.layer.ring or p.layer.fold is not None:
        return []
    try:
        notches = notch_lines(p.piece)
    except KitError:  # it does not lie on its edge: the proof tells of it
        return []
    items: list[Item] = []
    for notch in notches:
        for side in _halves(p):
            if not notch_is_seen(p, notch.notch, side):
                continue
            for line in notch.lines:
                cut = Path((line,))
                if notch.notch.edge in p.opened:  # on its allowance, which lies back on the piece
                    path = p.piece.edge(notch.notch.edge).path
                    at = path.nearest(line.start)
                    foot = path.at(at)
                    cut = cut.moved(Motion.reflection(foot, foot + path.tangent_at(at)))
                if p.shows(cut):
                    items.append(
                        Stroke(p.lay(cut, side).curves, "notch", name=f"notch {p.piece.name}.{notch.notch.edge}")
                    )
    return items


def open_darts(p: PlacedLayer) -> list[Item]:
    """The legs of darts that are still to be sewn."""
    if p.layer.stuff == "interfacing" or p.layer.fold is not None or p.layer.along is not None:
        return []
    return [
        Stroke(p.lay(leg, side).curves, "mark", name=f"leg {p.piece.name}.{dart.name}")
        for dart in darts_lying(p.piece)
        if dart.name not in p.layer.shut
        for side in _halves(p)
        for leg in legs(p.piece, dart)
    ]


def notch_is_seen(p: PlacedLayer, notch: Notch, side: Side) -> bool:
    """Whether a notch lies on an edge that is neither sewn nor turned there, nor trimmed away."""
    edge, at = notch.edge, notch.distance
    layer = p.layer
    if edge in p.opened and (layer.up == "right" or layer.lain is not None):
        return False
    if any(edge == name for name, _ in layer.turn):
        return False
    if any(edge in run.edges for run, _ in (*layer.back, *layer.trimmed, *layer.creased)):
        return False
    return not any(lie.edge == edge and lie.start - 1.0 <= at <= lie.end + 1.0 for lie in p.layer.lies)


def _halves(p: PlacedLayer) -> tuple[Side, ...]:
    return p.piece.sides if p.piece.fold else (p.side,)


def _held(p: PlacedLayer) -> list[Item]:
    """Rows of earlier steps that hold what is turned."""
    items: list[Item] = []
    now = {name for name, _ in p.layer.turn}
    for lie in p.layer.lies:
        if lie.row <= 0 or lie.edge in now:
            continue
        path = p.piece.edge(lie.edge).path.between(lie.start, lie.end)
        left = path.normal_at(path.length / 2).dot(p.inner(path)[1]) > 0
        row = beside(path, lie.row if left else -lie.row)
        for side in _halves(p):
            items.append(Stroke(p.lay(row, side).curves, "old_row", name=f"held {p.piece.name}.{lie.edge}"))
    return items


def _gathers(p: PlacedLayer) -> list[Item]:
    """Short lines along edges that are gathered."""
    return [
        Stroke(p.lay(line, side).curves, "symbol", name=f"{p.piece.name} gathers")
        for each in p.gathers
        for side in _halves(p)
        for line in each.lines(p.piece.edge(each.edge).path)
    ]


def fold_items(p: PlacedLayer, new: tuple[str, ...]) -> list[Item]:
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
    p: PlacedLayer, fold: ShutFold, after: tuple[ShutFold, ...], allowance: float, side: Side, new: bool
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
