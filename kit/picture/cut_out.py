"""How the line to cut along is drawn, and the bracket at the edge that is laid on the fold, where nothing is cut."""

from __future__ import annotations

from kit.geometry import Curve, Line, Path, Point
from kit.picture.drawing import Stroke, StrokeRole
from kit.piece.allowance import CutLine
from kit.piece.piece import Piece


def cut_strokes(piece: Piece, line: CutLine, role: StrokeRole = "cut") -> list[Stroke]:
    """The cut line, and along the fold, where nothing is cut, the fold line in its place."""
    curves = line.curves
    name = f"{piece.name}.cut"
    if not piece.fold:
        return [Stroke(curves, role, closed=True, name=name)]
    edge = piece.edge(piece.fold).path
    along = Line(edge.start, edge.end)
    on = [_lies_on(curve, edge, along) for curve in curves]
    if not any(on) or all(on):
        return [
            Stroke(curves, role, closed=True, name=name),
            Stroke(edge.curves, "fold", name=f"{piece.name}.{piece.fold}"),
        ]
    first = next(i for i in range(len(on)) if on[i - 1] and not on[i])
    order = [*range(first, len(on)), *range(first)]
    return [
        Stroke(tuple(curves[i] for i in order if not on[i]), role, name=name),
        Stroke(tuple(curves[i] for i in order if on[i]), "fold", name=f"{piece.name}.{piece.fold}"),
    ]


def _lies_on(curve: Curve, edge: Path, along: Line) -> bool:
    """Whether a part of the cut line lies on the fold `edge` or, where that is straight, on its run into an
    allowance."""
    places = (curve.start, curve.point(0.5), curve.end)
    if edge.is_straight:
        way = (along.end - along.start).unit()
        return all(abs(way.cross(place - along.start)) < 0.05 for place in places)
    return all(edge.distance_to(place) < 0.05 for place in places)


def fold_bracket(piece: Piece, letters: float) -> tuple[Point, Point, Point, Point]:
    """The corners of the bracket whose two arrows point at the fold."""
    path = piece.edge(piece.fold).path
    sign = 1.0 if piece.outline.area > 0 else -1.0
    length = path.length
    deep = min(12.0 * max(letters, 1.0), length * 0.1)
    a, b = path.at(length * 0.25), path.at(length * 0.75)
    return a, a + path.normal_at(length * 0.25) * (sign * deep), b + path.normal_at(length * 0.75) * (sign * deep), b
