"""Cloth that is cut, after a try-on: the old stitch line, the new one, what is trimmed off, and the distances.

The cloth that stays shows its wrong side, on which lines are chalked; what is trimmed is hatched on white. Where cloth
lacks its outline is dashed. All is drawn from the same values as the sentences (kit/piece/recut.py).
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from itertools import pairwise

from kit.geometry import Curve, Line, Point, Region
from kit.language import say
from kit.picture.drawing import Area, Dimension, Dot, Drawing, Fill, Item, Label, Stroke, StrokeRole
from kit.piece.allowance import cut_line, has_allowances
from kit.piece.piece import Piece
from kit.piece.recut import SLACK, Areas, CutStation, EdgeChange, PieceChange, areas, without_extra
from kit.units import System, both

_HATCH = 0.02
"""From line to line of the hatching, as a share of the piece's reach."""
_ROOM = (0.22, 0.12)
"""Paper left beside and above the piece for the texts, as shares of its reach."""
_LEAST = 4.0  # mm2 of cloth worth drawing
_FAR = 500.0  # mm


def recut_drawing(change: PieceChange, system: System = "cm", *, sewn: Iterable[str] = (), title: str = "") -> Drawing:
    """One piece as it was cut, with its old and its new lines. `sewn` names edges that a row lies along: there the old
    line is drawn as stitching."""
    cloth = areas(change)
    key = "recut" if change.edges else "trim_extra"
    was, now = change.was, change.now
    name = title or now.title
    x0, y0, x1, y1 = _box(change, cloth)
    reach = max(x1 - x0, y1 - y0, 1.0)
    middle = Point((x0 + x1) / 2, (y0 + y1) / 2)
    items: list[Item] = []
    if cloth is not None:
        items += [Fill(ring, "wrong_side", name=f"{now.name}.cloth") for ring in _rings(cloth.kept)]
        for ring in _rings(cloth.off):
            items.append(Fill(ring, "frame", name=f"{now.name}.trimmed"))
        items += [Stroke((line,), "leader", name=f"{now.name}.hatch") for line in _hatched(cloth.off, reach * _HATCH)]
        items += [Stroke(ring, "hidden", closed=True, name=f"{now.name}.lack") for ring in _rings(cloth.lack)]
        items += [Stroke((curve,), "kept", name=f"{now.name}.cut.before") for curve in _cut(was)]
        if has_allowances(now) and cloth.off.area > _LEAST:
            items += [Stroke((curve,), "cut", name=f"{now.name}.cut") for curve in _cut(without_extra(now))]
    resewn = set(sewn)
    for edge in change.edges:
        if edge.moved:
            old: StrokeRole = "old_row" if edge.edge in resewn else "hidden"
            items.append(Stroke(edge.old.curves, old, name=f"{now.name}.{edge.edge}.before"))
    moved = {edge.edge for edge in change.moved}
    for line in now.edges:
        role: StrokeRole = "new" if line.name in moved else "fold" if line.name == now.fold else "stitch"
        items.append(Stroke(line.path.curves, role, name=f"{now.name}.{line.name}"))
    items.append(
        Label(
            name,
            now.outline.label_point(),
            "name",
            of=Area(tuple(curve for edge in now.edges for curve in edge.path.curves)),
        )
    )
    for each in change.moved:
        for at in told_at(each):
            items += _distance(each, at, system, reach, middle)
        if each.shortest is not None:
            items += _left(each, each.shortest, system, reach, middle)
    wide, high = reach * _ROOM[0], reach * _ROOM[1]
    over = high * 2.2 if any(edge.shortest for edge in change.moved) else high
    bounds = (x0 - wide, y0 - high, x1 + wide, y1 + over)
    return Drawing(tuple(items), say(f"picture.{key}_alt", piece=name), say(f"picture.{key}", piece=name), bounds)


def told_at(edge: EdgeChange) -> tuple[CutStation, ...]:
    """The places of an edge whose distance is dimensioned: those its sentence tells."""
    match edge.shape:
        case "crossing":
            return (edge.inward, edge.outward)
        case "middle":
            return (edge.most,)
        case "all_along":
            return (edge.stations[len(edge.stations) // 2],)
        case "unequal":
            return (edge.start, edge.end)
    return (edge.start if abs(edge.start.off) > abs(edge.end.off) else edge.end,)


def _distance(edge: EdgeChange, at: CutStation, system: System, reach: float, middle: Point) -> Iterator[Item]:
    a, b = edge.foot(at), edge.place(at)
    yield Dot(a, "kept", f"{edge.edge}.before")
    yield Dot(b, "new", edge.edge)
    if (b - a).cross(a.mid(b) - middle) < 0:  # its text stands on the far side of the piece's middle
        a, b = b, a
    yield Dimension(a, b, both(abs(at.off), system), offset=reach * 0.07, name=f"{edge.edge}.moved")


def _left(edge: EdgeChange, at: CutStation, system: System, reach: float, middle: Point) -> Iterator[Item]:
    """What is left of the allowance where it is least, or how far the line lies beyond the cloth."""
    if at.left is None:
        return
    place = edge.place(at)
    outward = edge.new.normal_at(at.along)
    if outward.dot(place - middle) < 0:
        outward = outward * -1.0
    end = place + outward * at.left
    if (end - place).cross(place.mid(end) - middle) < 0:
        place, end = end, place
    key = "picture.recut_left" if at.left >= 0 else "picture.recut_lack"
    text = say(key, size=both(abs(at.left), system, "allowance"))
    yield Dimension(place, end, text, offset=reach * 0.16, name=f"{edge.edge}.left")


def _box(change: PieceChange, cloth: Areas | None) -> tuple[float, float, float, float]:
    boxes = [edge.path.bounds() for piece in (change.was, change.now) for edge in piece.edges]
    if cloth is not None:
        boxes += [cloth.cut.bounds, cloth.wanted.bounds]
    return (
        min(box[0] for box in boxes),
        min(box[1] for box in boxes),
        max(box[2] for box in boxes),
        max(box[3] for box in boxes),
    )


def _cut(piece: Piece) -> Iterator[Curve]:
    """The cut line, but for what lies along the fold, where nothing is cut."""
    fold = piece.edge(piece.fold).path if piece.fold and piece.has_edge(piece.fold) else None
    line = fold.extended(_FAR, "start").extended(_FAR, "end") if fold else None
    for curve in cut_line(piece).curves:
        places = (curve.start, curve.point(0.5), curve.end)
        if line is None or any(line.distance_to(place) > SLACK for place in places):
            yield curve


def _rings(area: Region) -> Iterator[tuple[Curve, ...]]:
    """The outlines of an area, each as lines once around."""
    for ring in area.rings:
        if Region((ring,)).area >= _LEAST:
            corners = [Point(x, y) for x, y in (*ring, ring[0])]
            yield tuple(Line(a, b) for a, b in pairwise(corners) if a.distance(b) > 1e-6)


def _hatched(area: Region, every: float) -> Iterator[Line]:
    """Slanted lines across an area."""
    if area.is_empty or area.area < _LEAST:
        return
    x0, y0, x1, y1 = area.bounds
    at = x0 - (y1 - y0)
    while at < x1:
        for a, b in area.stretches(Point(at, y0), Point(at + (y1 - y0), y1)):
            if a.distance(b) > 0.5:
                yield Line(a, b)
        at += every
