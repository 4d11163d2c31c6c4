"""What the canvas shows: the draft or one step, and where on the sheet each piece lies.

Pieces keep their place while values move, so that a point under the pointer goes where the pointer goes; they are
laid out anew when others are shown or when two have grown into each other.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass

from kit.geometry import Vector
from kit.lesson.pattern import Pattern, StepRecord
from kit.picture.rows import Bounds, bounds_of_paths
from kit.piece.piece import Piece
from kit.units import System

LAYERS = ("grid", "body", "block", "ghost", "stitch", "cut", "dims")
"""What can be switched on and off, in painting order."""
SHOWN_FIRST = frozenset({"grid", "ghost", "stitch", "cut", "dims"})

_GAP = 0.12
_WIDE = 1.7  # how much wider than high the sheet is laid out

Places = Mapping[str, Vector]


@dataclass(frozen=True)
class View:
    """How the canvas looks at a pattern: the key of a `step` ("" is the whole draft), the units read first, the layers
    switched on, and where pieces already lie (mm added to their own coordinates). `corners` shows the corners that have
    no name of their own, to be chosen."""

    step: str = ""
    system: System = "cm"
    layers: frozenset[str] = SHOWN_FIRST
    places: tuple[tuple[str, Vector], ...] = ()
    corners: bool = False


@dataclass(frozen=True)
class ShownPieces:
    """The pieces of a view. `before` are those of the step before, by name; `record` is the step itself."""

    pieces: tuple[Piece, ...]
    before: Mapping[str, Piece]
    record: StepRecord | None


def shown(pattern: Pattern, step: str = "", block: Sequence[Piece] = ()) -> ShownPieces:
    """The pieces of `pattern` as they stand after the step of that key, or in the end. `block` is what the lesson
    starts from. A key the pattern has not shows the whole draft."""
    laid = {piece.name: piece for piece in block}
    before = dict(laid)
    for record in pattern.steps:
        earlier = dict(laid)
        laid.update((piece.name, piece) for piece in record.pieces)
        if record.new or record.removed or record.key == step:
            before = earlier
        if record.key == step:
            here = [laid[piece.name] for piece in record.pieces]
            rest = [piece for piece in laid.values() if piece.name not in {p.name for p in here}]
            touched = [p for p in rest if any(p.name in {q.name for q in r.pieces} for r in pattern.steps)]
            return ShownPieces(tuple(p for p in (*here, *touched) if p.edges or p.guides), before, record)
    return ShownPieces(tuple(piece for piece in pattern.pieces if piece.edges), before, None)


def labels(pattern: Pattern) -> dict[tuple[str, str], str]:
    """(piece, edge) -> how people say it, as the finished draft has it."""
    from kit.wording.names import edge_said

    return {(piece.name, edge.name): edge_said(edge) for piece in pattern.pieces for edge in piece.edges}


def arranged(pieces: Iterable[Piece], former: Places, *, held: bool = False) -> dict[str, Vector]:
    """Where each piece lies. `former` places are kept while the same pieces are shown and stay clear of each other;
    `held` keeps them in any case, as during a drag."""
    boxes = {piece.name: _bounds(piece) for piece in pieces}
    if set(boxes) == set(former) and (held or not _crowded(boxes, former)):
        return {name: former[name] for name in boxes}
    return _in_rows(boxes)


def _bounds(piece: Piece) -> Bounds:
    x0, y0, x1, y1 = bounds_of_paths(edge.path for edge in piece.edges)
    room = max(((edge.allowance or 0.0) + edge.extra for edge in piece.edges), default=0.0)
    return (x0 - room, y0 - room, x1 + room, y1 + room)


def _crowded(boxes: Mapping[str, Bounds], places: Places) -> bool:
    laid = [(b[0] + places[n].x, b[1] + places[n].y, b[2] + places[n].x, b[3] + places[n].y) for n, b in boxes.items()]
    return any(
        a[0] < b[2] and b[0] < a[2] and a[1] < b[3] and b[1] < a[3] for i, a in enumerate(laid) for b in laid[i + 1 :]
    )


def _in_rows(boxes: Mapping[str, Bounds]) -> dict[str, Vector]:
    """All at one scale, in as many rows as fill the sheet best; the first piece of a row lies at its left."""
    names = list(boxes)
    if not names:
        return {}
    sizes = {name: (b[2] - b[0], b[3] - b[1]) for name, b in boxes.items()}
    gap = _GAP * max(max(size) for size in sizes.values())
    # Every number of pieces a row is tried; the sheet is _WIDE times as wide as high, so the larger of the two needs
    # counts. Two per cent better, or the rows stay: a slider must not make pieces jump between rows.
    best: tuple[float, list[list[str]]] = (float("inf"), [names])
    for each in range(1, len(names) + 1):
        rows = [names[i : i + each] for i in range(0, len(names), each)]
        wide = max(sum(sizes[name][0] + gap for name in row) for row in rows)
        high = sum(max(sizes[name][1] for name in row) + gap for row in rows)
        need = max(wide / _WIDE, high)
        if need < best[0] * 0.98:
            best = (need, rows)
    out: dict[str, Vector] = {}
    y = 0.0
    for row in best[1]:
        x = 0.0
        for name in row:
            box = boxes[name]
            out[name] = Vector(x - box[0], y - box[3])
            x += sizes[name][0] + gap
        y -= max(sizes[name][1] for name in row) + gap
    return out
