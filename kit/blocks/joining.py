"""Strokes joined into closed outlines: small gaps are closed and told, others are left open and told."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass

from kit.blocks.strokes import Sketch, SketchStroke, ended
from kit.errors import KitError
from kit.geometry import Curve, Path, Point

_SNUG = 0.05
_ROUNDING = 0.005


@dataclass(frozen=True)
class JoinedStrokes:
    """Closed outlines and open runs, each a stroke with the names of all it was made of."""

    loops: tuple[SketchStroke, ...]
    open: tuple[SketchStroke, ...]
    messages: tuple[str, ...]


def join(sketch: Sketch, gap: float) -> JoinedStrokes:
    """The strokes joined end to end. Ends up to `gap` mm apart are brought together at the middle, with a message
    from 0.05 mm on; a line drawn twice counts once. `KitError` where three ends meet, since no one can tell which
    line is the outline."""
    messages: list[str] = []
    loops: list[SketchStroke] = []
    runs: list[SketchStroke] = []
    known: dict[tuple[int, int], list[Path]] = {}
    for stroke in sketch.strokes:
        middle = stroke.path.start.mid(stroke.path.end)
        if any(_same(stroke.path, other) for cell in _around(middle, 1.0) for other in known.get(cell, ())):
            messages.append(f"A line at {sketch.place(stroke.path.start)} is drawn twice; it counts once.")
        elif _whole(stroke.path):
            loops.append(stroke)
        else:
            runs.append(stroke)
        known.setdefault(_cell(middle, 1.0), []).append(stroke.path)
    partner = _pairs(sketch, runs, gap)
    seen: set[int] = set()
    opened: list[SketchStroke] = []
    heads = [(i, side) for i in range(len(runs)) for side in (0, 1) if (i, side) not in partner]
    for head in [*heads, *((i, 0) for i in range(len(runs)))]:
        if head[0] in seen:
            continue
        chain, closed = _walk(head, partner, seen)
        stroke, told = _made(sketch, runs, chain, closed)
        messages += told
        (loops if closed else opened).append(stroke)
    return JoinedStrokes(tuple(loops), tuple(opened), tuple(messages))


def _whole(path: Path) -> bool:
    return path.start.distance(path.end) <= _ROUNDING and path.length > 1.0


def _same(a: Path, b: Path) -> bool:
    if abs(a.length - b.length) > _SNUG:
        return False
    straight = a.start.close_to(b.start, _SNUG) and a.end.close_to(b.end, _SNUG)
    turned = a.start.close_to(b.end, _SNUG) and a.end.close_to(b.start, _SNUG)
    shares = (0.25, 0.5, 0.75)
    return (straight and all(a.at(a.length * s).close_to(b.at(b.length * s), _SNUG) for s in shares)) or (
        turned and all(a.at(a.length * s).close_to(b.at(b.length * (1 - s)), _SNUG) for s in shares)
    )


def _cell(p: Point, size: float) -> tuple[int, int]:
    return math.floor(p.x / size), math.floor(p.y / size)


def _around(p: Point, size: float) -> Iterator[tuple[int, int]]:
    """The cells in which anything within `size` of `p` lies."""
    x, y = _cell(p, size)
    return ((x + i, y + j) for i in (-1, 0, 1) for j in (-1, 0, 1))


def _tip(runs: list[SketchStroke], end: tuple[int, int]) -> Point:
    path = runs[end[0]].path
    return path.end if end[1] else path.start


def _pairs(sketch: Sketch, runs: list[SketchStroke], gap: float) -> dict[tuple[int, int], tuple[int, int]]:
    """Each run end and the end it joins, nearest first."""
    ends = [(i, side) for i in range(len(runs)) for side in (0, 1)]
    cells: dict[tuple[int, int], list[tuple[int, int]]] = {}
    # Ends are sorted into square cells as wide as the gap, so that each is compared with its nine cells alone and a
    # file of thousands of strokes takes no longer than its size. Then the nearest two join first: with several
    # candidates a greedy choice by distance is what the eye makes too.
    near = []
    for a in ends:
        p = _tip(runs, a)
        for b in (b for cell in _around(p, gap) for b in cells.get(cell, ())):
            apart = p.distance(_tip(runs, b))
            if apart <= gap and not (a[0] == b[0] and runs[a[0]].path.length <= 3 * gap):
                near.append((apart, b, a))
        cells.setdefault(_cell(p, gap), []).append(a)
    near.sort()
    partner: dict[tuple[int, int], tuple[int, int]] = {}
    for apart, a, b in near:
        if a not in partner and b not in partner:
            partner[a], partner[b] = b, a
        elif partner.get(a) != b and apart <= _SNUG:
            raise KitError(
                f"three lines or more meet at {sketch.place(_tip(runs, a))}, so the outline cannot be told from the "
                "others.",
                where=sketch.file,
                do="Put the outline on a layer of its own and give its name: layer='outline'.",
            )
    return partner


def _walk(
    head: tuple[int, int], partner: dict[tuple[int, int], tuple[int, int]], seen: set[int]
) -> tuple[list[tuple[int, int]], bool]:
    """The runs from `head` on, each with the end it is entered by, and whether they come back to it."""
    chain = []
    at: tuple[int, int] | None = head
    while at is not None and at[0] not in seen:
        seen.add(at[0])
        chain.append(at)
        at = partner.get((at[0], 1 - at[1]))
    return chain, at == head


def _made(
    sketch: Sketch, runs: list[SketchStroke], chain: list[tuple[int, int]], closed: bool
) -> tuple[SketchStroke, list[str]]:
    parts = [runs[i].path if side == 0 else runs[i].path.reversed() for i, side in chain]
    names = tuple(dict.fromkeys(name for i, _ in chain for name in runs[i].names))
    curves: list[list[Curve]] = [list(part.curves) for part in parts]
    told = []
    for k in range(0 if closed else 1, len(curves)):
        before, after = curves[k - 1][-1], curves[k][0]
        gap = before.end.distance(after.start)
        if gap <= _ROUNDING:
            continue
        middle = before.end.mid(after.start)
        if gap > _SNUG:
            told.append(f"A gap of {gap:.2f} mm at {sketch.place(middle)} was closed.")
        curves[k - 1][-1] = ended(curves[k - 1][-1], middle)
        curves[k][0] = ended(curves[k][0].reversed(), middle).reversed()
    return SketchStroke(names, Path(tuple(c for part in curves for c in part))), told


def _without_specks(path: Path) -> Path:
    """The closed path without lone curves too short to see, which would count as two corners."""
    curves = list(path.curves)
    for i in range(len(curves) - 1, -1, -1):
        before, after = curves[i - 1], curves[(i + 1) % len(curves)]
        if len(curves) > 2 and curves[i].length <= _SNUG < min(before.length, after.length):
            curves[i - 1] = ended(before, curves[i].end)
            del curves[i]
    return Path(tuple(curves))


def loop_from_corner(path: Path, turn: float) -> tuple[Path, tuple[float, ...]]:
    """A closed path run clockwise from its lowest left corner, and the distances of its corners (joints turning
    by more than `turn` degrees). Without a corner it starts at its lowest joint and the distances are none."""
    path = _without_specks(path)
    if math.fsum(curve.area_term() for curve in path.curves) > 0:
        path = path.reversed()
    curves = path.curves
    bends = [abs(curves[i - 1].tangent(1.0).turn_to(curves[i].tangent(0.0))) for i in range(len(curves))]
    at = [i for i, bend in enumerate(bends) if bend > math.radians(turn)]
    first = (
        min(at, key=lambda i: curves[i].start.x + curves[i].start.y)
        if at
        else min(range(len(curves)), key=lambda i: curves[i].start.y)
    )
    turned = Path(curves[first:] + curves[:first])
    return turned, tuple(
        turned.marks[(i - first) % len(curves)] for i in at[at.index(first) :] + at[: at.index(first)]
    ) if at else ()
