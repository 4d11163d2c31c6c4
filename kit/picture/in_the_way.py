"""What is in the way of a picture's text: its lines as they are seen, its dots, its dimension lines, and its cloth."""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence

from kit.geometry import Curve, Line
from kit.picture.dimension_line import dimension_curves
from kit.picture.drawing import Dimension, Dot, Drawing, Fill, Stroke
from kit.picture.drawn_lines import Box, DrawnLines, Spot
from kit.picture.lettering import Turned
from kit.picture.standing import within

Runs = Callable[[int, Sequence[Curve]], Sequence[Sequence[Spot]]]
"""The curves of the item of that index as lines of points."""

_WEIGHTS = {
    "new": 2.0, "cut": 1.6, "edge": 1.6, "fold": 1.5, "row": 1.6, "baste": 1.5, "hand": 1.5, "press": 1.6,
    "kept": 1.2, "hidden": 0.9, "old_row": 1.0, "removed": 0.8, "guide": 0.12, "leader": 0.5, "page": 0.8,
}  # fmt: skip
_OTHER, _PLY, _DOT = 1.2, 2.0, 1.5
_DOT_SIZE = 3.0  # CSS px from its middle
_CLOTH = frozenset(("right_side", "wrong_side", "interfacing", "facing", "strip", "lining"))


def lines_in_the_way(drawing: Drawing, unit: float, em: float, runs: Runs) -> DrawnLines:
    """All that text should keep off, at `unit` mm per CSS px and type of `em` mm. What a later sheet of paper lies on
    (an upright rectangle with the role "frame") is not seen and in nobody's way."""
    lines = DrawnLines(1.6 * em)
    items = drawing.items
    papers = [(i, _upright(item)) for i, item in enumerate(items) if isinstance(item, Fill) and item.role == "frame"]
    covers = [(i, box) for i, box in papers if box is not None]
    for i, item in enumerate(items):
        over = [box for k, box in covers if k > i]
        if isinstance(item, Stroke):
            found = runs(i, item.curves)
            if item.thickness:
                for run in found:
                    for side in (-0.5, 0.0, 0.5):
                        lines.add(_parallel(run, item.thickness * side), _PLY, i, over)
                continue
            weight = _WEIGHTS.get(item.role, _OTHER)
            for run in found:
                lines.add(run, weight, i, over)
            if item.closed and len(found) == 1 and found[0][0] != found[0][-1]:
                lines.add((found[0][-1], found[0][0]), weight, i, over)
        elif isinstance(item, Dot):
            r, x, y = _DOT_SIZE * unit, item.at.x, item.at.y
            lines.add(((x - r, y), (x + r, y)), _DOT, i)
            lines.add(((x, y - r), (x, y + r)), _DOT, i)
        elif isinstance(item, Dimension):
            curves = dimension_curves(item)
            for run in runs(i, curves) if curves else ():
                lines.add(run, _OTHER, i)
            if item.offset and curves:
                for p, q in ((item.start, curves[0].start), (item.end, curves[-1].end)):
                    lines.add(((p.x, p.y), (q.x, q.y)), _WEIGHTS["hidden"], i)
    return lines


def flattened(curves: Sequence[Curve], tolerance: float) -> list[tuple[Spot, ...]]:
    """The curves as lines of points, parted where one does not begin at the end of the last."""
    runs: list[list[Spot]] = []
    for curve in curves:
        if isinstance(curve, Line):
            points = [(curve.start.x, curve.start.y), (curve.end.x, curve.end.y)]
        else:
            points = [(p.x, p.y) for p in curve.points(tolerance)]
        if runs and math.dist(runs[-1][-1], points[0]) < 0.02:
            runs[-1].extend(points[1:])
        else:
            runs.append(points)
    return [tuple(run) for run in runs if len(run) > 1]


def _parallel(points: Sequence[Spot], away: float) -> Sequence[Spot]:
    """About the parallel of a line, by moving each point square to the line there."""
    if not away:
        return points
    out = []
    for i, (x, y) in enumerate(points):
        (ax, ay), (bx, by) = points[max(i - 1, 0)], points[min(i + 1, len(points) - 1)]
        size = math.hypot(bx - ax, by - ay) or 1.0
        out.append((x - (by - ay) / size * away, y + (bx - ax) / size * away))
    return out


def _upright(item: Fill) -> Box | None:
    """The box of an area that is an upright rectangle."""
    if len(item.curves) > 5 or not all(isinstance(curve, Line) for curve in item.curves):
        return None
    xs = sorted({round(p.x, 6) for curve in item.curves for p in (curve.start, curve.end)})
    ys = sorted({round(p.y, 6) for curve in item.curves for p in (curve.start, curve.end)})
    return (xs[0], ys[0], xs[1], ys[1]) if len(xs) == 2 and len(ys) == 2 else None


class SeenCloth:
    """Where cloth is seen, asked at a few places of a box of text."""

    def __init__(self, drawing: Drawing) -> None:
        self.any = any(isinstance(item, Fill) and item.role in _CLOTH for item in drawing.items)
        self.areas: list[tuple[bool, Box, Sequence[Spot]]] = []
        for item in drawing.items if self.any else ():
            if isinstance(item, Fill):
                (*_, outline) = flattened(item.curves, 1.0) or [()]
                if len(outline) > 2:
                    xs, ys = [p[0] for p in outline], [p[1] for p in outline]
                    box = (min(xs), min(ys), max(xs), max(ys))
                    self.areas.append((item.role in _CLOTH, box, outline))
        self.areas.reverse()

    def share(self, box: Turned) -> float:
        x, y, wide, high, angle = box
        c, s = math.cos(angle), math.sin(angle)
        hits = 0
        for across in (-0.5, -0.25, 0.0, 0.25, 0.5):
            for up in (-0.5, 0.5):
                a, b = across * wide, up * high
                hits += self._on_cloth(x + a * c - b * s, y + a * s + b * c)
        return hits / 10

    def _on_cloth(self, x: float, y: float) -> bool:
        for cloth, box, outline in self.areas:  # the uppermost first
            if box[0] <= x <= box[2] and box[1] <= y <= box[3] and within(outline, x, y):
                return cloth
        return False
