"""Lengthened and shortened: paper cut across square to the grain and spread, or folded, in every piece that is sewn
together there. Pure functions from piece to piece.
"""

from __future__ import annotations

from dataclasses import replace

from kit.diagnostic import measured, message
from kit.errors import KitError
from kit.geometry import Motion, Path, Point
from kit.lesson.lengthen_lines import height_of, upward
from kit.lesson.redrawn import aimed, blended, lacking, rejoined, ruled
from kit.lesson.slash import STAY, AlongEdge, SlashedPart, rearranged
from kit.piece.piece import Piece

_FAR = 5000.0
BLEND = 30.0
"""mm on either side of the cut within which a curved seam is redrawn, and as much again as it was spread (common
practice, no source)."""


def crossed(piece: Piece, height: float) -> tuple[AlongEdge, AlongEdge]:
    """Where a line square to the grain meets the outline, as the outline runs: from the second place on to the first
    lies what is above the line. `KitError` where it meets it otherwise than twice."""
    up = upward(piece)
    middle = Point(0.0, 0.0) + up * height
    side = up.left() * -1.0
    line = Path.line(middle - side * _FAR, middle + side * _FAR)
    met = [
        (side.dot(p - middle), (edge.name, edge.path.nearest(p)))
        for edge in piece.edges
        for p in line.crossings(edge.path)
    ]
    met.sort(key=lambda item: item[0])
    if len(met) != 2:
        raise lacking(piece)
    left, right = met[0][1], met[1][1]
    return (left, right) if piece.outline.area > 0 else (right, left)


def lengthened(piece: Piece, height: float, amount: float, *, lower_stays: bool) -> Piece:
    """The piece cut through at a height and spread by `amount` mm along its grain, or folded by as much where it is
    less than nothing. Straight edges are ruled anew from end to end, others blended over the cut. `KitError` where the
    line does not cross the piece from one edge to another."""
    up = upward(piece)
    straight = {edge.name for edge in piece.edges if edge.path.is_straight}
    if amount >= 0:
        one, two = crossed(piece, height)
        above, below = (two, one), (one, two)
        cuts: tuple[Path, ...] = (Path.line(_point(piece, one), _point(piece, two)),)
    else:
        low, high = crossed(piece, height + amount / 2), crossed(piece, height - amount / 2)
        if [name for name, _ in low] != [name for name, _ in high]:
            raise KitError(message("fit.too_short", amount=measured(-amount), piece=piece.title))
        above, below = (high[1], high[0]), low
        cuts = tuple(Path.line(_point(piece, a), _point(piece, b)) for a, b in (low, high))
    slide = Motion.translation(up * (amount if lower_stays else -amount))
    parts = (
        SlashedPart(*above, slide if lower_stays else STAY),
        SlashedPart(*below, STAY if lower_stays else slide),
    )
    result, where = rearranged(piece, parts, cuts)
    for name, at in below:
        top = next(there for other, there in above if other == name)
        low_at, high_at = sorted((where(name, at, at < top), where(name, top, top < at)))
        if amount >= 0:
            low_at, high_at = sorted((where(name, at, False), where(name, at, True)))
        if name in straight:
            result = ruled(result, name)
            continue
        result = blended(result, name, low_at, high_at, BLEND + abs(amount))
    for dart in piece.darts:
        if (height_of(piece, dart.apex) > height) == lower_stays:
            result = aimed(result, dart.name, slide(dart.apex))
    if piece.grain is not None:
        ends = [
            slide(p) if (height_of(piece, p) > height) == lower_stays else p
            for p in (piece.grain.start, piece.grain.end)
        ]
        result = replace(result, grain=replace(piece.grain, start=ends[0], end=ends[1]))
    return rejoined(result, piece)


def _point(piece: Piece, place: AlongEdge) -> Point:
    return piece.edge(place[0]).path.at(place[1])
