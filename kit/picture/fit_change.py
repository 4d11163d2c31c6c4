"""A fit change as a picture: the pieces it alters side by side, as they were (dashed) and as they become, and an arrow
over the place that is spread, folded or moved, from where it was to where it comes to lie. No numbers: how much it is,
the body says.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import replace

from kit.geometry import Line, Motion, Vector
from kit.language import say
from kit.lesson.fit_change import Altered
from kit.picture.dart import in_step
from kit.picture.drawing import Drawing, Item, Stroke, StrokeRole
from kit.picture.rows import bounds_of_paths
from kit.piece.piece import Piece

_GAP = 0.12
"""Between two pieces, as a share of the larger one's reach."""
_ARROW = 0.09
"""The least length of the arrow, as a share of the reach: on a small picture an amount of 2 cm shows no way."""


def fit_drawing(before: Mapping[str, Piece], made: Altered, title: str) -> Drawing:
    """The pieces of a change before and after."""
    items: list[Item] = []
    boxes = [bounds_of_paths(edge.path for p in (before[new.name], new) for edge in p.edges) for new in made.pieces]
    reach = max((max(box[2] - box[0], box[3] - box[1]) for box in boxes), default=1.0)
    sizes = [(box[2] - box[0], box[3] - box[1]) for box in boxes]
    for new, box, (x, y) in zip(made.pieces, boxes, _places(sizes, reach * _GAP), strict=True):
        slide = Motion.translation(Vector(x - box[0], y - box[1]))
        items += _moved(_drawn(before[new.name], new), slide)
        items += _moved(_arrows(new.name, made, reach), slide)
    pieces = ", ".join(new.title for new in made.pieces)
    return Drawing(tuple(items), say("fit.picture", title=title, pieces=pieces), title)


def _places(sizes: Sequence[tuple[float, float]], gap: float) -> list[tuple[float, float]]:
    """The lower left corners of pieces in as many rows as show them largest: the picture has about the form of a
    square."""
    best: tuple[float, list[tuple[float, float]]] = (math.inf, [])
    for count in range(1, len(sizes) + 1):
        each = math.ceil(len(sizes) / count)
        found: list[tuple[float, float]] = []
        wide = y = 0.0
        for first in range(0, len(sizes), each):
            row = sizes[first : first + each]
            y -= max(high for _, high in row) + (gap if first else 0.0)
            x = 0.0
            for size in row:
                found.append((x, y))
                x += size[0] + gap
            wide = max(wide, x - gap)
        if max(wide, -y) < best[0] - 0.5:
            best = (max(wide, -y), found)
    return best[1]


def _drawn(was: Piece, now: Piece) -> Iterable[Stroke]:
    for edge in was.edges:
        if now.edge(edge.name).path != edge.path:
            yield Stroke(edge.path.curves, "removed", name=f"{was.name}.{edge.name}.before")
    for dart in was.darts:
        if dart not in now.darts:
            yield from _strokes(in_step(was, dart, "removed"))
    for edge in now.edges:
        role: StrokeRole = "new" if was.edge(edge.name).path != edge.path else "kept"
        role = "fold" if edge.name == now.fold and role == "kept" else role
        yield Stroke(edge.path.curves, role, name=f"{now.name}.{edge.name}")
    for dart in now.darts:
        yield from _strokes(in_step(now, dart, "kept" if dart in was.darts else "new"))


def _strokes(items: Sequence[Item]) -> Iterable[Stroke]:
    return (item for item in items if isinstance(item, Stroke))


def _arrows(piece: str, made: Altered, reach: float) -> Iterable[Stroke]:
    for owner, start, end in made.spots:
        if owner == piece and start.distance(end) > 1e-6:
            way = (end - start).unit()
            long = max(start.distance(end), reach * _ARROW)
            tail = end - way * long
            yield Stroke((Line(tail, end),), "press", arrow="end", name=f"{piece}.amount")


def _moved(strokes: Iterable[Stroke], slide: Motion) -> list[Item]:
    return [replace(stroke, curves=tuple(curve.moved(slide) for curve in stroke.curves)) for stroke in strokes]
