"""Enlarged corners: a change too small to be seen on the page is shown again, larger, in a round window beside the
piece, joined to its place by a thin line and marked with how many times it is enlarged.

The page meant is A4, where a step's picture stands beside its text; what is under 2 mm there is lost under the ticks of
its own dimension (common practice, no source).
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, replace

from kit.geometry import Arc, Line, Point, Vector
from kit.language import say
from kit.lesson.pattern import StepRecord
from kit.picture.clipped import RoundWindow, clipped
from kit.picture.drawing import Dot, Item, Label, Stroke
from kit.picture.hand_order import numbered
from kit.picture.place import Scaling
from kit.picture.rows import Bounds, bounds_of_paths, print_scale
from kit.picture.step_lines import lines_of, new_lines, traced_edges
from kit.picture.step_texts import (
    DrawnMeasure,
    Telling,
    dimension,
    line_names,
    measures_of,
    order_numbers,
    point_names,
)
from kit.piece.allowance import CutLine
from kit.piece.piece import Edge, Piece

CROWDED = 14.0
"""mm of print within which three strokes and more are told apart in an enlarged corner alone."""
LEAST, LARGE = 2.5, 20.0
"""mm of print under which a change is enlarged, and mm on the piece from which on it never is."""
_LENS = 13.0  # mm of print
_MOST, _TIMES = 3, 8
_BETTER = 1.12


@dataclass(frozen=True)
class EnlargedCorner:
    """A place of a piece to be enlarged: about `middle`, `radius` mm of the piece, with the measures it shows."""

    piece: Piece
    middle: Point
    radius: float
    measures: tuple[DrawnMeasure, ...]


@dataclass(frozen=True)
class Lens:
    """A corner enlarged so many `times`: its round window about `at` with `radius` in the drawing, and the scale in
    it."""

    corner: EnlargedCorner
    at: Point
    radius: float
    times: int
    put: Scaling

    def takes(self, place: Point, put: Scaling) -> bool:
        """Whether what stands at a place of the drawing is shown in the window instead."""
        return put.point(self.corner.middle).distance(place) <= self.corner.radius * put.factor * 1.02


def small_corners(
    placed: Sequence[tuple[Piece, Scaling]], record: StepRecord, tell: Telling, scale: float
) -> list[EnlargedCorner]:
    """The places of a step whose change is under 2 mm on the page; the same change on a second piece is shown once."""
    found: list[EnlargedCorner] = []
    seen: set[tuple[str, float]] = set()
    for piece, put in placed:
        for measure in measures_of(piece, record, tell):
            key = (
                measure.name.rsplit(".", 2)[0] if measure.name.startswith(piece.name) else measure.name,
                measure.value,
            )
            if not _is_small(measure, put.factor * scale) or measure.allowance or key in seen:
                continue
            seen.add(key)
            middle, size = measure.start.mid(measure.end), measure.start.distance(measure.end)
            near = next((c for c in found if c.piece is piece and c.middle.distance(middle) < c.radius * 0.6), None)
            if near is not None:
                found[found.index(near)] = replace(near, measures=(*near.measures, measure))
            else:
                found.append(EnlargedCorner(piece, middle, max(size * 1.9, 6.0), (measure,)))
    for piece, put in placed:
        corner = _crowded(piece, record, tell, put.factor * scale)
        if corner is not None and not any(one.piece is piece for one in found):
            found.append(corner)
    # One corner tells how an allowance is added; that of the last piece, beside which there is room.
    for piece, put in reversed([pair for pair in placed if pair[0].name in record.allowed]):
        corner = _allowance_corner(piece, tell, put.factor * scale)
        if corner is not None:
            found.append(corner)
            break
    return found[:_MOST]


def _crowded(piece: Piece, record: StepRecord, tell: Telling, scale: float) -> EnlargedCorner | None:
    """The place of several strokes that all lie within a fingertip of the page."""
    taken = traced_edges(piece, record)
    lines = [path for name, path in new_lines(piece, record) if name not in taken]
    moves = numbered(piece, record)
    if not lines or len(moves) < 3 or piece.name in record.allowed:
        return None
    spots = [p for move in moves if move.kind not in ("trace", "mirror") for p in (move.start, move.end)]
    x0, y0, x1, y1 = bounds_of_paths(lines)
    x0, y0 = min((x0, *(p.x for p in spots))), min((y0, *(p.y for p in spots)))
    x1, y1 = max((x1, *(p.x for p in spots))), max((y1, *(p.y for p in spots)))
    if max(x1 - x0, y1 - y0) * scale > CROWDED:
        return None
    here = RoundWindow(Point((x0 + x1) / 2, (y0 + y1) / 2), math.hypot(x1 - x0, y1 - y0) * 0.62)
    inside = (m for m in measures_of(piece, record, tell) if here.holds(m.start) and here.holds(m.end))
    return EnlargedCorner(piece, here.middle, here.radius, tuple(m for m in inside if not _is_small(m, scale)))


def _is_small(measure: DrawnMeasure, scale: float) -> bool:
    size = measure.start.distance(measure.end)
    return measure.is_length and 0.05 < measure.value < LARGE and size * scale < LEAST


def _allowance_corner(piece: Piece, tell: Telling, scale: float) -> EnlargedCorner | None:
    """The corner at which two different allowances meet, where they are too small to be seen."""
    pairs = []
    for i, edge in enumerate(piece.edges):
        before = piece.edges[i - 1]
        widths = [e.allowance or 0.0 for e in (before, edge)]
        if min(widths) > 0 and piece.fold not in (before.name, edge.name):
            pairs.append((abs(widths[0] - widths[1]), i, before, edge))
    if not pairs:
        return None
    # Of several such corners the one at the lower right, where the window stands.
    _, _, before, edge = max(pairs, key=lambda pair: (round(pair[0], 2), pair[3].path.start.x - pair[3].path.start.y))
    widths = [e.allowance or 0.0 for e in (before, edge)]
    if min(widths) * scale >= LEAST or min(widths) >= LARGE:
        return None
    radius = max(max(widths) * 1.2, min(widths) * 2.2)
    way = -1.0 if piece.outline.area > 0 else 1.0
    measures = tuple(
        _width(one, min(radius * 0.55, one.path.length / 2), end, way, tell)
        for one, end in ((before, True), (edge, False))
    )
    return EnlargedCorner(piece, edge.path.start, radius, measures)


def _width(edge: Edge, off: float, from_end: bool, way: float, tell: Telling) -> DrawnMeasure:
    at = edge.path.length - off if from_end else off
    start, size = edge.path.at(at), edge.allowance or 0.0
    end = start + edge.path.normal_at(at) * (way * size)
    return DrawnMeasure(f"{edge.name}_allowance", tell.length(size), size, start, end, bare=True, allowance=True)


def lenses(
    corners: Sequence[EnlargedCorner], placed: Mapping[str, Scaling], box: Bounds, scale: float
) -> tuple[list[Lens], Bounds]:
    """Where the enlarged corners stand: right of an upright picture, below a wide one; and the box of it all."""
    if not corners:
        return [], box
    x0, y0, x1, y1 = box
    wide, high = x1 - x0, y1 - y0
    radius = min(_LENS / scale, max(wide, high) * 0.3)
    gap = radius * 0.45
    # Beside the pieces or below them, where they stay larger; below, unless that costs much, for the lines that join a
    # window to its place are shorter then.
    more = 2 * radius + gap
    beside, below = print_scale(wide + more, high), print_scale(wide, high + more + gap * 0.9)
    upright = beside > below * _BETTER
    span = high if upright else wide
    each = 2 * radius + gap * 1.6
    if each * len(corners) > span:
        radius *= span / (each * len(corners))
        gap, each = radius * 0.45, 2 * radius + radius * 0.72
    wanted = []
    for corner in corners:
        place = placed[corner.piece.name].point(corner.middle)
        wanted.append(-place.y if upright else place.x)
    low, top = (-y1, -y0) if upright else (x0, x1)
    order = sorted(range(len(corners)), key=lambda i: wanted[i])
    places = dict(zip(order, _spread([wanted[i] for i in order], each, low + radius, top - radius), strict=True))
    found = []
    for i, corner in enumerate(corners):
        at = Point(x1 + gap + radius, -places[i]) if upright else Point(places[i], y0 - gap - radius)
        put = placed[corner.piece.name]
        times = min(max(2, math.floor(radius / (corner.radius * put.factor) + 1e-6)), _TIMES)
        factor = put.factor * times
        inner = Scaling(factor, Point(at.x - corner.middle.x * factor, at.y - corner.middle.y * factor))
        found.append(Lens(replace(corner, radius=radius / factor), at, radius, times, inner))
    tail = gap * 0.9  # for the words below the window
    grown = (x0, y0, x1 + gap + 2 * radius, y1) if upright else (x0, y0 - gap - 2 * radius - tail, x1, y1)
    return found, grown


def _spread(wanted: Sequence[float], each: float, low: float, top: float) -> list[float]:
    """Places near where they are wanted, in their order and none on another."""
    found: list[float] = []
    for place in wanted:
        found.append(max(place, found[-1] + each) if found else max(place, low))
    over = found[-1] - max(top, low)
    if over > 0:
        found[-1] -= over
        for i in range(len(found) - 2, -1, -1):
            found[i] = max(low, min(found[i], found[i + 1] - each))
    return found


def lens_items(
    lens: Lens,
    record: StepRecord,
    tell: Telling,
    place: Scaling,
    layers: Sequence[tuple[Piece, CutLine | None]],
    middle: Point,
) -> Iterable[Item]:
    """One enlarged corner: the lines in it of all pieces that lie there (with their cut lines), its measures and
    points, its rim, and its place on the piece."""
    corner, piece = lens.corner, lens.corner.piece
    window = RoundWindow(lens.at, lens.radius)
    for item in (item for layer, cut in layers for item in lines_of(layer, record, lens.put, tell.reach, cut)):
        if isinstance(item, Stroke):
            curves = item.curves
            if item.closed and curves and curves[-1].end.distance(curves[0].start) > 0.02:
                curves = (*curves, Line(curves[-1].end, curves[0].start))
            for run in clipped(curves, window):
                yield replace(item, curves=run, closed=False, name=f"lens.{item.name}")
        elif isinstance(item, Dot) and window.holds(item.at):
            yield replace(item, name=f"lens.{item.name}")
    name = corner.measures[0].name if corner.measures else piece.name
    spot = place.point(corner.middle)
    small = max(corner.radius * place.factor, tell.reach * 0.012)
    yield Stroke(_circle(lens.at, lens.radius), "lens", closed=True, name=f"enlarged.{name}")
    yield Stroke(_circle(spot, small), "lens", closed=True, name=f"{piece.name}.enlarged_place")
    way = (lens.at - spot).unit()
    yield Stroke((Line(spot + way * small, lens.at - way * lens.radius),), "lens", name=f"{piece.name}.enlarged_leader")
    for measure in corner.measures:
        yield dimension(measure, middle, lens.put, tell.reach, 0.03)
    named = line_names(piece, record, middle, lens.put, tell.reach)
    for label in (*named, *point_names(piece, record, tell, middle, lens.put), *order_numbers(piece, record, lens.put)):
        if window.holds(label.of if isinstance(label.of, Point) else label.at):
            yield label
    below = lens.at - Vector(0.0, lens.radius + tell.reach * 0.03)
    yield Label(say("picture.enlarged", times=lens.times), below, "small")


def _circle(at: Point, radius: float) -> tuple[Arc, ...]:
    return (Arc(at, radius, 0.0, 2 * math.pi),)
