"""A piece of which a step changes a level strip alone, such as its hem: the strip is drawn as large as the page allows,
and a small outline of the piece beside it shows where it lies."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace

from kit.geometry import Line, Point
from kit.lesson.pattern import StepRecord
from kit.picture.clipped import Band, clipped
from kit.picture.drawing import Dot, Item, Stroke
from kit.picture.hand_order import moves_on
from kit.picture.place import Scaling, rectangle
from kit.picture.rows import Bounds, bounds_of_paths
from kit.picture.step_lines import new_lines
from kit.piece.dart import darts_lying, legs
from kit.piece.piece import Piece

_SMALL = 0.16
"""The share of a piece's height that is cropped to: the lower 3 cm of a bodice, the hem of a skirt."""
_BROAD = 0.5
"""The share of its width that such a strip takes up at least; a corner is enlarged instead."""
_AROUND = 0.09
_BESIDE = 0.06


def strip_of(piece: Piece, record: StepRecord) -> Band | None:
    """The level strip, in mm of the piece, that holds all a step changes on it, with some of the piece around it; None
    where that is not a small part of the piece."""
    moves = moves_on(piece, record)
    marked = any(owner == piece.name for owner, _ in (*record.new_notches, *record.new_marks))
    if piece.name in record.allowed or marked or any(m.kind in ("trace", "mirror", "place") for m in moves):
        return None
    lines = [path for _, path in new_lines(piece, record)]
    if not lines or not piece.edges:
        return None
    spots = [p for s in record.spots if s.piece == piece.name for p in (s.start, s.end)]
    spots += [p for move in moves for p in (move.start, move.end)]
    fresh = {name for name, _ in new_lines(piece, record)}
    folds = [leg for dart in darts_lying(piece) if dart.edge in fresh for leg in legs(piece, dart)]
    folds += [line for pleat in piece.pleats if pleat.edge in fresh for line in pleat.lines]
    spots += [p for path in folds for p in (path.start, path.end)]
    x0, y0, x1, y1 = bounds_of_paths(lines)
    low, high = min((y0, *(p.y for p in spots))), max((y1, *(p.y for p in spots)))
    left, bottom, right, top = bounds_of_paths(edge.path for edge in piece.edges)
    if high - low > _SMALL * (top - bottom) or x1 - x0 < _BROAD * (right - left):
        return None
    room = (top - bottom) * _AROUND
    return Band(max(low - room, bottom - room), min(high + room, top + room))


def strip_bounds(piece: Piece, strip: Band, bounds: Bounds) -> Bounds:
    """What a cropped piece takes up in the picture, its small outline included."""
    high = strip.high - strip.low
    inside = [curve.bounds() for edge in piece.edges for run in clipped(edge.path.curves, strip) for curve in run]
    left = min((box[0] for box in inside), default=bounds[0])
    right = max((box[2] for box in inside), default=bounds[2])
    return (left, strip.low, right + high * (_BESIDE * 5 + _aspect(piece)), strip.high)


def _aspect(piece: Piece) -> float:
    left, low, right, high = bounds_of_paths(edge.path for edge in piece.edges)
    return (right - left) / max(high - low, 1.0)


def cut_to(items: Iterable[Item], strip: Band, put: Scaling) -> Iterable[Item]:
    """The lines and points of a piece that lie in its strip."""
    window = Band(strip.low * put.factor + put.to.y, strip.high * put.factor + put.to.y)
    for item in items:
        if isinstance(item, Stroke):
            curves = item.curves
            if item.closed and curves and curves[-1].end.distance(curves[0].start) > 0.02:
                curves = (*curves, Line(curves[-1].end, curves[0].start))
            for run in clipped(curves, window):
                yield replace(item, curves=run, closed=False)
        elif not isinstance(item, Dot) or window.holds(item.at):
            yield item


def locator(piece: Piece, record: StepRecord, strip: Band, bounds: Bounds, put: Scaling) -> Iterable[Item]:
    """The whole piece, small, at the right of its strip, with the strip framed and what is new in it."""
    left, low, right, high = bounds_of_paths(edge.path for edge in piece.edges)
    tall = strip.high - strip.low
    factor = tall / max(high - low, 1.0)
    corner = Point(bounds[2] - (right - left) * factor, strip.low)
    small = Scaling(factor, Point(corner.x - left * factor, corner.y - low * factor))

    name = f"lens.{piece.name}.locator"
    for edge in piece.edges:
        yield Stroke(put.curves(small.curves(edge.path.curves)), "kept", name=name)
    for _, path in new_lines(piece, record):
        yield Stroke(put.curves(small.curves(path.curves)), "new", name=name)
    frame = rectangle(left - 12.0, max(strip.low, low - 12.0), right + 12.0, min(strip.high, high + 12.0))
    yield Stroke(put.curves(small.curves(frame)), "lens", closed=True, name=name)


def in_strip(label_at: Point, strip: Band, put: Scaling) -> bool:
    """Whether a place of the drawing lies in the strip of a piece that is put there."""
    y = (label_at.y - put.to.y) / put.factor
    return strip.low - 1e-6 <= y <= strip.high + 1e-6
