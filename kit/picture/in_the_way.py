"""What is in the way of a picture's text: its lines as they are seen, its dots, its dimension lines, and its cloth."""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence
from itertools import accumulate
from operator import add

from kit.geometry import Curve, Line
from kit.geometry.region import Spot
from kit.picture.dimension_line import dimension_curves
from kit.picture.drawing import Dimension, Dot, Drawing, Fill, Stroke
from kit.picture.drawn_lines import Box, DrawnLines
from kit.picture.lettering import Turned

Runs = Callable[[int, Sequence[Curve]], Sequence[Sequence[Spot]]]
"""The curves of the item of that index as lines of points."""

_WEIGHTS = {
    "new": 2.0, "cut": 1.6, "edge": 1.6, "fold": 1.5, "row": 1.6, "baste": 1.5, "hand": 1.5, "press": 1.6,
    "kept": 1.2, "hidden": 0.9, "old_row": 1.0, "removed": 0.8, "guide": 0.12, "leader": 0.5, "page": 0.8,
    "row_ground": 0.0,
}  # fmt: skip
_OTHER, _PLY, _DOT = 1.2, 2.0, 1.5
_CELLS = 160
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
    """Where cloth is seen, on a grid: how much of a box of text lies on it. `cell` is the side of its cells in mm."""

    def __init__(self, drawing: Drawing, cell: float) -> None:
        self.any = any(isinstance(item, Fill) and item.role in _CLOTH for item in drawing.items)
        outlines = []
        for item in drawing.items if self.any else ():
            if isinstance(item, Fill):
                (*_, outline) = flattened(item.curves, 1.0) or [()]
                if len(outline) > 2:
                    outlines.append((item.role in _CLOTH, outline))
        cloth = [spot for is_cloth, outline in outlines if is_cloth for spot in outline]
        self.any = bool(cloth)
        self.sums: list[list[int]] = []  # made when it is first asked: who looks roughly never does
        if not cloth:
            return
        self._outlines = outlines
        self.x, self.y = min(x for x, _ in cloth), min(y for _, y in cloth)
        wide, high = max(x for x, _ in cloth) - self.x, max(y for _, y in cloth) - self.y
        self.cell = cell = max(cell, wide / _CELLS, high / _CELLS)
        self.columns, self.rows = int(wide / cell) + 1, int(high / cell) + 1

    def _summed(self) -> None:
        """Paints the cloth and counts its cells from a corner on."""
        seen = [bytearray(self.columns) for _ in range(self.rows)]
        for is_cloth, outline in self._outlines:
            self._paint(seen, outline, is_cloth)
        sums = [0] * (self.columns + 1)
        self.sums = [sums]
        for row in seen:
            sums = list(map(add, sums, accumulate(row, initial=0)))
            self.sums.append(sums)

    def _paint(self, seen: Sequence[bytearray], outline: Sequence[Spot], cloth: bool) -> None:
        """The cells whose middle lies inside the outline (even-odd), over what was painted before."""
        cell, left, low = self.cell, self.x, self.y
        crossings: list[list[float]] = [[] for _ in range(self.rows)]
        ax, ay = outline[-1]
        for bx, by in outline:
            if ay != by:
                y0, y1 = (ay, by) if ay < by else (by, ay)
                first = max(math.ceil((y0 - low) / cell - 0.5), 0)
                last = min(math.ceil((y1 - low) / cell - 0.5), self.rows)
                slope = (bx - ax) / (by - ay)
                for row in range(first, last):
                    crossings[row].append(ax + (low + (row + 0.5) * cell - ay) * slope)
            ax, ay = bx, by
        ink = b"\1" if cloth else b"\0"
        for line, found in zip(seen, crossings, strict=True):
            found.sort()
            for x0, x1 in zip(found[::2], found[1::2], strict=False):
                first = max(math.ceil((x0 - left) / cell - 0.5), 0)
                last = min(math.ceil((x1 - left) / cell - 0.5), self.columns)
                if first < last:
                    line[first:last] = ink * (last - first)

    def share(self, box: Turned) -> float:
        """How much (0..1) of the level box round a box of text is cloth."""
        x, y, wide, high, angle = box
        if angle:
            c, s = abs(math.cos(angle)), abs(math.sin(angle))
            wide, high = c * wide + s * high, s * wide + c * high
        cell = self.cell
        x, y = x - self.x, y - self.y
        i0, i1 = max(int((x - wide / 2) // cell), 0), min(math.ceil((x + wide / 2) / cell), self.columns)
        j0, j1 = max(int((y - high / 2) // cell), 0), min(math.ceil((y + high / 2) / cell), self.rows)
        if i0 >= i1 or j0 >= j1:
            return 0.0
        if not self.sums:
            self._summed()
        low, top = self.sums[j0], self.sums[j1]
        return min(1.0, (top[i1] - top[i0] - low[i1] + low[i0]) * cell * cell / (wide * high))
