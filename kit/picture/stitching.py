"""Rows of stitching in a sewing picture: machine rows, zigzag, basting and gathering, hand stitches."""

from __future__ import annotations

from itertools import pairwise

from kit.geometry import Curve, Line, Motion, Path, parallel
from kit.lesson.pattern import Pattern
from kit.picture.drawing import Item, Stroke, StrokeRole
from kit.picture.laid import Placed, half_motion
from kit.piece.piece import Side
from kit.sewing.scene import Row
from kit.sewing.spans import path_of

_ROLES: dict[str, StrokeRole] = {
    "machine": "row",
    "zigzag": "row",
    "baste": "baste",
    "gather": "baste",
    "hand": "hand",
    "box": "row",
}
_WITHIN = 2.0  # mm from a strip's edges to the box that holds it


def row_items(row: Row, placed: list[Placed], pattern: Pattern, extent: float) -> list[Item]:
    """The stitches of a row where they lie in the picture: on top of the layers they go through."""
    items: list[Item] = []
    role: StrokeRole = "old_row" if row.ink == "old" else _ROLES[row.style]
    same = [p for p in placed if p.piece.name == row.run.piece]
    tops: dict[Side, Placed] = {}
    for p in same:
        tops[p.side] = p
    for p in tops.values():
        above = [q for q in placed if q.layer.on is not None and q.layer.on.piece == row.run.piece and q is not p]
        slid = above[-1].shift if above else Motion.identity()
        sides: tuple[Side | None, ...] = (row.run.side,)
        if row.run.side is None:
            sides = p.piece.sides if p.piece.fold else (p.side,)
        elif row.run.side != p.side and not p.piece.fold:
            continue
        path = path_of(pattern, row.run) if row.line is None else row.line
        inward = p.inward(path)
        for side in sides:
            motion = half_motion(p, side).then(slid)
            # An inset counts from the edge into the cloth. Which side of the path that is depends on the way the edge
            # was drawn, and a half that is turned over has it the other way; so it is asked of the laid piece.
            left = p.motion.vector(path.normal_at(path.length / 2)).dot(inward) > 0
            line = parallel(path, row.inset if left else -row.inset) if row.inset else path
            if row.style == "box":
                items += [Stroke(curves, role, name=row.run.said) for curves in _box(path, line, motion)]
                continue
            for part in _gapped(line, row.gap, path.length):
                if row.zigzag or row.style == "zigzag":
                    curves = _zigzag(part.moved(motion), extent * 0.006)
                else:
                    curves = part.moved(motion).curves
                items.append(Stroke(curves, role, name=row.run.said))
    return items


def _box(edge: Path, middle: Path, motion: Motion) -> tuple[tuple[Curve, ...], ...]:
    """A box with a cross in it between an edge and as far beyond the line in its middle: once round and across one
    diagonal in one row, then the other diagonal."""
    start, end = min(_WITHIN, edge.length / 4), max(edge.length - _WITHIN, edge.length * 0.75)
    corners = []
    for at, share in ((start, 0.0), (end, 0.0), (end, 2.0), (start, 2.0)):
        near, half = edge.at(at), middle.at(at / edge.length * middle.length) - edge.at(at)
        depth = half.length * share
        kept = min(max(depth, _WITHIN), max(2 * half.length - _WITHIN, _WITHIN))
        corners.append(motion(near + half.unit() * kept))
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
