"""Where several pieces stand in one picture: in a line, or in rows that fill a booklet page."""

from __future__ import annotations

import math
from collections.abc import Iterable

from kit.geometry import Path, Point
from kit.picture.place import Scaling
from kit.piece.piece import Piece

GAP = 0.17
_LEAST = 0.3
_LEVEL = 1.08
STEP, ACROSS, FULL = (97.6, 78.0), (165.6, 86.0), (165.6, 158.0)
"""The room of a step's picture on A4 in mm: beside its text, across the page, and for the cut lines of many pieces."""
WIDE = 1.75
"""How much wider than high a picture is that goes across the page."""
_TEXT = 0.86  # of the room, what is left for lines beside the texts
Bounds = tuple[float, float, float, float]


def bounds_of_paths(paths: Iterable[Path]) -> Bounds:
    boxes = [path.bounds() for path in paths]
    if not boxes:
        return (0.0, 0.0, 100.0, 100.0)
    return (min(b[0] for b in boxes), min(b[1] for b in boxes), max(b[2] for b in boxes), max(b[3] for b in boxes))


def print_scale(wide: float, high: float, many: bool = False) -> float:
    """Millimetres on an A4 page for one of a picture so wide and high, with some room for its texts; `many` pieces with
    their cut lines get most of a page."""
    wide, high = max(wide, 1.0), max(high, 1.0)
    room = FULL if many else ACROSS if wide > WIDE * high else STEP
    return min(room[0] / wide, room[1] / high) * _TEXT


def in_rows(
    pieces: list[tuple[Piece, Bounds]], many: bool = False
) -> tuple[list[tuple[Piece, Bounds, Scaling]], float]:
    """Pieces in as many rows as show them largest on an A4 page: (piece, bounds, where it is put), and the measure that
    offsets of text and sizes of signs are taken from, the height of a step's picture there.

    All have one scale: drawn larger, a pocket would be taken for another one. What lies at one level on the paper lies
    at one level in a row, where that costs little height."""
    if not pieces:
        return [], 100.0
    boxes = [(max(b[2] - b[0], 1.0), max(b[3] - b[1], 1.0)) for _, b in pieces]
    gap = max(max(box) for box in boxes) * GAP
    best: tuple[float, list[list[int]]] = (0.0, [])
    for count in range(1, len(pieces) + 1):  # one more row must show them 2 per cent larger, so that fewer win a draw
        each = math.ceil(len(pieces) / count)
        rows = [list(range(i, min(i + each, len(pieces)))) for i in range(0, len(pieces), each)]
        wide = max(sum(boxes[i][0] + gap for i in row) for row in rows) - gap
        high = sum(max(boxes[i][1] for i in row) + gap for row in rows) - gap
        scale = print_scale(wide, high, many)
        if scale > best[0] * 1.02:
            best = (scale, rows)
    out: list[tuple[Piece, Bounds, Scaling]] = []
    y = 0.0
    for row in best[1]:
        x = 0.0
        tall = max(boxes[i][1] for i in row)
        top, low = max(pieces[i][1][3] for i in row), min(pieces[i][1][1] for i in row)
        level = top - low <= tall * _LEVEL
        for i in row:
            piece, b = pieces[i]
            out.append((piece, b, Scaling(1.0, Point(x - b[0], y - (top if level else b[3])))))
            x += boxes[i][0] + gap
        y -= (top - low if level else tall) + gap
    return out, STEP[1] / best[0]


def side_by_side(pieces: list[tuple[Piece, Bounds]]) -> list[tuple[Piece, Bounds, float]]:
    """Pieces from left to right with room between them for dimensions: (piece, bounds, shift in x)."""
    reach = max((max(b[2] - b[0], b[3] - b[1]) for _, b in pieces), default=0.0)
    out, x = [], 0.0
    for piece, bounds in pieces:
        wide = max(bounds[2] - bounds[0], reach * _LEAST)
        out.append((piece, bounds, x + (wide - bounds[2] + bounds[0]) / 2 - bounds[0]))
        x += wide + reach * GAP
    return out
