"""An edge that a fit change left bent where its darts are folded shut, drawn as one smooth curve through them.

At the table the darts are folded, the line is drawn smooth over them, and they are opened again (common practice, no
source). Folding lays the edge out like a chain: it is redrawn there, and each stretch is then carried back by the
motion that laid it. So both legs of a dart end at one place of the curve and stay equal by themselves.
"""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import replace
from itertools import pairwise

from kit.diagnostic import message
from kit.errors import KitError
from kit.geometry import Cubic, Path, Vector
from kit.lesson.moves import true_dart
from kit.lesson.redrawn import put, swung
from kit.lesson.slash import with_path
from kit.piece.dart import darts_on, mouth_path, sewn_length, sewn_point
from kit.piece.folded import Folded, corner_at, folded
from kit.piece.piece import Piece
from kit.piece.pleat import taken_up

BENT = 1.0
"""Degrees by which an edge may bend where a dart is shut before it is redrawn; three are told of as a finding."""
_PIN = 0.01


def most_bent(piece: Piece, edge: str) -> float:
    """Degrees by which an edge bends most within itself, its darts shut: at a dart, or at a joint between two curves.
    Nothing on an edge without darts."""
    if not darts_on(piece, edge) or taken_up(piece, edge):
        return 0.0
    try:
        path = folded(piece, (edge,)).path
    except KitError:
        return 0.0  # legs that differ: told of elsewhere
    curves = [curve for curve in path.curves if curve.length > _PIN]
    return max(
        (abs(math.degrees(a.tangent(1.0).turn_to(b.tangent(0.0)))) for a, b in pairwise(curves)),
        default=0.0,
    )


def run_smooth(piece: Piece, before: Piece, edge: str) -> Piece:
    """The piece with this edge drawn as one curve from end to end, its darts shut. At its ends it leaves its neighbours
    as steeply as it did `before`; the ends stay. `KitError` where it cannot be laid through its darts."""
    run = folded(piece, (edge,))
    darts = darts_on(piece, edge)
    if len(run.stretches) != len(darts) + 1:  # one opens at an end of the edge
        return piece
    start, end = run.path.start, run.path.end
    leaving, arriving = _leaving(run, before, edge, False), _leaving(run, before, edge, True)
    # Handles with which a cubic that turns evenly is all but an arc.
    third = start.distance(end) / 3 / math.cos(leaving.turn_to(arriving * -1.0) / 4) ** 2
    curve = Path((Cubic(start, start + leaving * third, end + arriving * third, end),))
    marks = [0.0]
    for dart, part in zip(darts, run.stretches, strict=False):
        apex = part.motion(sewn_point(piece, dart))
        node = run.path.at(part.at + part.length)
        way = (node - apex).unit()
        met = Path.line(apex + way * _PIN, apex + way * (apex.distance(node) * 3)).crossings(curve)
        if not met:
            return piece
        marks.append(curve.nearest(min(met, key=node.distance)))
    marks.append(curve.length)
    if any(b - a < 1.0 for a, b in pairwise(marks)):
        return piece
    stretches = [
        curve.between(a, b).moved(part.motion.inverse())
        for (a, b), part in zip(pairwise(marks), run.stretches, strict=True)
    ]
    whole: list[Path] = []
    places: list[tuple[float, float]] = []
    at = 0.0
    for number, bit in enumerate(stretches):
        if number:
            mouth = Path.line(whole[-1].end, bit.start)
            places.append((at, at + mouth.length))
            whole.append(mouth)
            at += mouth.length
        whole.append(bit)
        at += bit.length
    # What is marked on a stretch keeps its share of it; what lies in a mouth, its share of the mouth.
    old = [d for dart in darts for d in (dart.start, dart.end)]
    new = [d for place in places for d in place]
    scale = _from_to([0.0, *old, piece.edge(edge).path.length], [0.0, *new, at])
    capped = [dart.name for dart in darts if not mouth_path(piece, dart).is_straight]
    piece = with_path(piece, edge, Path.of(*whole), scale)
    for name in capped:
        piece = true_dart(piece, name)
    return piece


def _from_to(old: list[float], new: list[float]) -> Callable[[float], float]:
    def there(d: float) -> float:
        for (a, b), (c, e) in zip(pairwise(old), pairwise(new), strict=True):
            if d <= b:
                return c + (max(d, a) - a) * (e - c) / (b - a) if b > a else c
        return new[-1]

    return there


def _leaving(run: Folded, before: Piece, edge: str, end: bool) -> Vector:
    """The direction in which the run leaves its end, inward: at the angle to its neighbour that it had before."""
    way = run.path.end_tangent * -1.0 if end else run.path.start_tangent
    now, was = corner_at(run, end), corner_at(folded(before, (edge,)), end)
    if now is None or was is None:
        return way
    off = now.angle - was.angle
    return way.rotated(off if run.cloth_left != end else -off)


def made_smooth(piece: Piece, before: Piece) -> Piece:
    """The piece with every edge that a change left bent at its darts drawn smooth, sewn as long as the change made it;
    an edge that bent as much `before` was meant to."""
    for edge in dict.fromkeys(dart.edge for dart in piece.darts):
        if not before.has_edge(edge) or most_bent(piece, edge) <= max(BENT, most_bent(before, edge) + BENT):
            continue
        run = folded(piece, (edge,))
        piece = smooth_as_long(piece, before, edge, darts_on(piece, edge)[0].name, run.length, 0.0)
    return piece


def smooth_as_long(piece: Piece, before: Piece, edge: str, dart: str, length: float, by: float) -> Piece:
    """The edge drawn smooth through its darts, sewn `length` mm long: the dart takes up as much more as that needs,
    about `by` mm."""
    made = piece
    # Within a few mm the sewn length follows the dart one to one, so that each round takes off what is left.
    for _ in range(8):
        made = run_smooth(widened(piece, dart, by), before, edge)
        off = sewn_length(made, edge) - length
        if abs(off) < 0.01:
            break
        by += off
    return made


def widened(piece: Piece, name: str, by: float) -> Piece:
    """A dart that takes up `by` mm more (less where it is under nothing): its legs as long as they were, the edge on
    either side drawn to them. One that would take up nothing is left out."""
    dart = next(d for d in piece.darts if d.name == name)
    path = piece.edge(dart.edge).path
    capped = not mouth_path(piece, dart).is_straight
    one, two = path.at(dart.start), path.at(dart.end)
    wide = one.distance(two) + by
    long = dart.apex.distance(one)
    if wide < 0 or wide > long:
        raise KitError(message("fit.dart", dart=dart.label, piece=piece.title))
    axis = (one.mid(two) - dart.apex).unit()
    half = math.asin(wide / 2 / long)
    way = 1.0 if (one - dart.apex).cross(two - dart.apex) > 0 else -1.0
    new_one, new_two = (dart.apex + axis.rotated(side * way * half) * long for side in (-1.0, 1.0))
    others = sorted((d.start, d.end) for d in piece.darts if d.edge == dart.edge and d.name != name)
    low = max([0.0, *(end for _, end in others if end <= dart.start)])
    high = min([path.length, *(start for start, _ in others if start >= dart.end)])
    parts = [path.between(0.0, low)] if low > 1e-6 else []
    parts.append(swung(path.between(low, dart.start), new_one))
    parts.append(Path.line(new_one, new_two))
    parts.append(swung(path.between(dart.end, high).reversed(), new_two).reversed())
    parts += [path.between(high, path.length)] if path.length - high > 1e-6 else []
    new = Path.of(*parts)
    start = new.nearest(new_one)
    grown = new.length - path.length
    piece = put(piece, {dart.edge: new}, {dart.edge: lambda d: d if d < dart.start else d + grown})
    place = replace(dart, start=start, end=start + new_one.distance(new_two))
    piece = replace(piece, darts=tuple(place if d.name == name else d for d in piece.darts))
    return true_dart(piece, name) if capped else piece
