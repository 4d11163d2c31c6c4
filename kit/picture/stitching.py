"""Rows of stitching in a sewing picture: machine rows, zigzag, basting and gathering, hand stitches."""

from __future__ import annotations

from itertools import pairwise

from kit.geometry import Curve, Line, Motion, Path, Point, beside
from kit.lesson.pattern import Pattern
from kit.picture.drawing import Dot, Item, Stroke, StrokeRole
from kit.picture.placed import Box, PlacedLayer, with_run
from kit.piece.piece import Side
from kit.sewing.scene import Row
from kit.sewing.spans import path_of

ROLES: dict[str, StrokeRole] = {
    "machine": "row",
    "zigzag": "row",
    "baste": "baste",
    "gather": "baste",
    "hand": "hand",
    "box": "row",
}
"""How each style of row is drawn."""
_WITHIN = 2.0  # mm from a strip's edges to the box that holds it


def row_items(row: Row, placed: list[PlacedLayer], pattern: Pattern, extent: float, window: Box) -> list[Item]:
    """The stitches of a row where they lie in the picture: on top of the layers they go through. A row of this step
    shows where it starts (a dot), which way it goes and where it ends, as far as the `window` shows them."""
    items: list[Item] = []
    role: StrokeRole = "old_row" if row.ink == "old" else ROLES[row.style]
    tops: dict[Side, PlacedLayer] = {}
    for p in with_run(placed, row.run):
        tops[p.side] = p
    for p in tops.values():
        above = [q for q in placed if q.base is p and q.layer.how != "open" and not q.layer.ring]
        slid = above[-1].slid if above else Motion.identity()
        sides: tuple[Side | None, ...] = (row.run.side,)
        if row.run.side is None:
            sides = p.piece.sides if p.piece.fold else (p.side,)
        elif row.run.side != p.side and not p.piece.fold:
            continue
        path = path_of(pattern, row.run) if row.line is None else row.line
        into = p.inner(path)[1]
        left = path.normal_at(path.length / 2).dot(into) > 0  # an inset counts from the edge into the cloth
        line = beside(path, row.inset if left else -row.inset) if row.inset else path
        for side in sides:
            if row.style == "box":
                shapes = _box(p.lay(path, side).moved(slid), p.lay(line, side).moved(slid))
                items += [Stroke(curves, role, name=row.run.said) for curves in shapes]
                if row.ink == "new":
                    items.append(Dot(shapes[0][0].start, "new", START))
                continue
            if row.ink == "new" and row.inset < 0 and row.line is None and not row.goes_on:
                stitch = p.shown(path) if p.shows(path) else path  # where the seam itself will run
                items.append(
                    Stroke(p.lay(stitch, side).moved(slid).curves, "stitch", name=f"stitch line {row.run.said}")
                )
            for part in _gapped(line, row.gap, path.length):
                if not p.shows(part):
                    continue
                part = p.shown(part).reversed() if row.folded == "start" else p.shown(part)
                lies = p.lay(part, side).moved(slid)
                zigzag = row.zigzag or row.style == "zigzag"
                curves = _zigzag(lies, extent * 0.006) if zigzag else lies.curves
                if row.ink == "new":
                    items.append(Stroke(curves, "row_ground"))
                items.append(Stroke(curves, role, name=row.run.said))
                if row.ink == "new" and not row.goes_on:
                    items += row_signs(lies, extent, window, ends=not row.folded)
    return items


START, WAY, END = "row start", "row way", "row end"
"""The names of the signs of a row."""
_SHARES = tuple(i / 20 for i in range(21))


def row_signs(path: Path, extent: float, window: Box, ends: bool = True) -> list[Item]:
    """A dot where a row starts, an arrow head on the part that is seen, a stroke across its end if it `ends` there."""
    seen = [share for share in _SHARES if _within(path.at(path.length * share), window)]
    if not seen:
        return []
    size = extent * 0.016
    items: list[Item] = [Dot(path.start, "new", START)] if seen[0] == 0.0 else []
    at = path.length * (seen[0] + seen[-1]) / 2
    tip, way, square = path.at(at), path.tangent_at(at), path.normal_at(at)
    for side in (1.0, -1.0):
        back = tip - way * size + square * (size * 0.6 * side)
        items.append(Stroke((Line(back, tip),), "row_sign", name=WAY))
    if seen[-1] == 1.0 and ends:
        across = path.normal_at(path.length) * (size * 0.6)
        items.append(Stroke((Line(path.end - across, path.end + across),), "row_sign", name=END))
    return items


def _within(p: Point, window: Box) -> bool:
    return window[0] <= p.x <= window[2] and window[1] <= p.y <= window[3]


def _box(edge: Path, middle: Path) -> tuple[tuple[Curve, ...], ...]:
    """A box with a cross in it between an edge and as far beyond the line in its middle: once round and across one
    diagonal in one row, then the other diagonal."""
    start, end = min(_WITHIN, edge.length / 4), max(edge.length - _WITHIN, edge.length * 0.75)
    corners = []
    for at, share in ((start, 0.0), (end, 0.0), (end, 2.0), (start, 2.0)):
        near, half = edge.at(at), middle.at(at / edge.length * middle.length) - edge.at(at)
        depth = half.length * share
        kept = min(max(depth, _WITHIN), max(2 * half.length - _WITHIN, _WITHIN))
        corners.append(near + half.unit() * kept)
    a, b, c, d = corners
    around = tuple(Line(p, q) for p, q in pairwise((a, b, c, d, a, c)))
    return around, (Line(b, d),)


def _gapped(path: Path, gap: tuple[float, float] | None, whole: float) -> list[Path]:
    if gap is None:
        return [path]
    scale = path.length / whole
    low, high = max(gap[0], 0.0) * scale, min(gap[1], whole) * scale
    out = []
    if low > 0.5:
        out.append(path.between(0.0, low))
    if high < path.length - 0.5:
        out.append(path.between(high, path.length))
    return out


def _zigzag(path: Path, half: float) -> tuple[Curve, ...]:
    count = max(int(path.length / (half * 2)), 2)
    points = []
    for i in range(count + 1):
        d = path.length * i / count
        points.append(path.at(d) + path.normal_at(d) * (half if i % 2 else -half))
    return tuple(Line(a, b) for a, b in pairwise(points))
