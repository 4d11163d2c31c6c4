"""Where several pieces stand in one picture: in a line, or in rows that fill a booklet page."""

from __future__ import annotations

import math
from collections.abc import Iterable

from kit.geometry import Path, Point
from kit.picture.place import Scaling
from kit.piece.piece import Piece

GAP = 0.14
_LEAST = 0.3
_MAGNIFY = 3.0
_PAGE = (640.0, 700.0)
Bounds = tuple[float, float, float, float]


def bounds_of_paths(paths: Iterable[Path]) -> Bounds:
    boxes = [path.bounds() for path in paths]
    if not boxes:
        return (0.0, 0.0, 100.0, 100.0)
    return (min(b[0] for b in boxes), min(b[1] for b in boxes), max(b[2] for b in boxes), max(b[3] for b in boxes))


def in_rows(pieces: list[tuple[Piece, Bounds]]) -> tuple[list[tuple[Piece, Bounds, Scaling]], float]:
    """Pieces in as many rows as show them largest on a page: (piece, bounds, where it is put), and the measure that
    offsets of text are taken from."""
    if not pieces:
        return [], 100.0
    sizes = [max(b[2] - b[0], b[3] - b[1], 1.0) for _, b in pieces]
    largest = max(sizes)
    # A small piece beside a large one is drawn larger, up to _MAGNIFY times, or its names would have no room. Then
    # every number of rows is tried; one more must show the pieces 2 per cent larger, so that fewer rows win a draw.
    factors = [min(_MAGNIFY, max(1.0, largest * 0.45 / size)) for size in sizes]
    boxes = [((b[2] - b[0]) * f, (b[3] - b[1]) * f) for (_, b), f in zip(pieces, factors, strict=True)]
    best: tuple[float, list[list[int]]] = (0.0, [])
    for count in range(1, len(pieces) + 1):
        each = math.ceil(len(pieces) / count)
        rows = [list(range(i, min(i + each, len(pieces)))) for i in range(0, len(pieces), each)]
        gap = largest * GAP
        wide = max(sum(max(boxes[i][0], largest * _LEAST) + gap for i in row) for row in rows)
        high = sum(max(boxes[i][1] for i in row) + gap for row in rows)
        scale = min(_PAGE[0] / wide, _PAGE[1] / high)
        if scale > best[0] * 1.02:
            best = (scale, rows)
    reach = min(largest, 0.7 * max(_PAGE) / best[0])
    if len(pieces) > 1:
        reach = max(reach, 0.75 * _PAGE[0] / best[0])
    out: list[tuple[Piece, Bounds, Scaling]] = []
    y = 0.0
    for row in best[1]:
        x = 0.0
        for i in row:
            piece, b = pieces[i]
            wide = max(boxes[i][0], largest * _LEAST)
            f = factors[i]
            left = x + (wide - boxes[i][0]) / 2
            out.append((piece, b, Scaling(f, Point(left - b[0] * f, y - b[3] * f))))
            x += wide + largest * GAP
        y -= max(boxes[i][1] for i in row) + largest * GAP
    return out, reach


def side_by_side(pieces: list[tuple[Piece, Bounds]]) -> list[tuple[Piece, Bounds, float]]:
    """Pieces from left to right with room between them for dimensions: (piece, bounds, shift in x)."""
    reach = max((max(b[2] - b[0], b[3] - b[1]) for _, b in pieces), default=0.0)
    out, x = [], 0.0
    for piece, bounds in pieces:
        wide = max(bounds[2] - bounds[0], reach * _LEAST)
        out.append((piece, bounds, x + (wide - bounds[2] + bounds[0]) / 2 - bounds[0]))
        x += wide + reach * GAP
    return out
