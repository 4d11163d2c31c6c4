"""A plain packing to compare with: boxes on shelves, tallest first (next-fit decreasing height; Coffman, Garey, Johnson
and Tarjan, SIAM Journal on Computing 9, 1980)."""

from __future__ import annotations

from shapely import affinity

from kit.paper.papers import Paper
from kit.paper.plan import plan_pages
from kit.paper.sheet import GAP, Sheet

_EDGE = 2.0


def shelf_pages(laid: Sheet, paper: Paper) -> int:
    """Pages of `paper` the same pieces take on shelves one to five pages wide, as drafted, the best of them."""
    pieces = [affinity.affine_transform(each.ink, _undone(each.matrix)) for each in laid.placements]
    pieces.sort(key=lambda shape: shape.bounds[1] - shape.bounds[3])
    widest = max(shape.bounds[2] - shape.bounds[0] for shape in pieces) + 2 * _EDGE
    best = None
    for held in (paper, paper.turned):
        for columns in range(1, 6):
            width = max(widest, columns * held.step[0])
            moved, x, top, tall = [], _EDGE, -_EDGE, 0.0
            for shape in pieces:
                left, bottom, right, high = shape.bounds
                if x > _EDGE and x + right - left > width - _EDGE:
                    x, top, tall = _EDGE, top - tall - GAP, 0.0
                moved.append(affinity.translate(shape, x - left, top - high))
                x += right - left + GAP
                tall = max(tall, high - bottom)
            height = tall - top + _EDGE
            lifted = [affinity.translate(shape, 0, height) for shape in moved]
            count = len(plan_pages(lifted, width, height, paper, (held,)).tiles)
            best = count if best is None else min(best, count)
    assert best is not None
    return best


def _undone(matrix: list[float]) -> list[float]:
    a, b, d, e, x, y = matrix
    det = a * e - b * d
    a, b, d, e = e / det, -b / det, -d / det, a / det
    return [a, b, d, e, -(a * x + b * y), -(d * x + e * y)]
