"""Interfacing that may be pieced: of a long, straight band it is cut in two lengths that overlap.

Bought by the length of a band it would cost as much cloth as the band is long, for a strip a hand wide. Two lengths lie
side by side. That interfacing is joined by an overlap, where a seam would be too thick, is common practice, no source;
so are the sizes below.
"""

from __future__ import annotations

from dataclasses import dataclass

from kit.cloth.grain import lengthwise
from kit.geometry import Vector
from kit.lesson.pattern import Pattern
from kit.piece.allowance import cut_line
from kit.piece.piece import Piece

OVERLAP = 10.0  # mm
_LONG, _NARROW = 500.0, 220.0
_TRUE = 0.05  # mm its corners may lie off those of a rectangle


@dataclass(frozen=True)
class Lengths:
    """Two lengths, each `along` mm along the grain and `across` mm wide."""

    along: float
    across: float


def in_two(piece: Piece) -> Lengths | None:
    """The lengths in which the interfacing of `piece` is cut; None where it is cut in one: what is no rectangle, lies
    on a fold, is short or wide. Raises `KitError` as `cut_line` does."""
    if not piece.cut.interfacing or piece.cut.cloth == "interfacing" or piece.fold:
        return None
    way = lengthwise(piece.grain)
    side = Vector(way.y, -way.x)
    points = cut_line(piece).points(_TRUE)
    places = [(point.x * way.x + point.y * way.y, point.x * side.x + point.y * side.y) for point in points]
    (low, high), (left, right) = ((min(each), max(each)) for each in zip(*places, strict=True))
    along, across = high - low, right - left
    if along < _LONG or across > _NARROW:
        return None
    if not all(min(x - low, high - x, y - left, right - y) < _TRUE for x, y in places):
        return None
    corners = [(x, y) for x in (low, high) for y in (left, right)]
    if not all(any(abs(x - a) + abs(y - b) < 2 * _TRUE for x, y in places) for a, b in corners):
        return None
    return Lengths((along + OVERLAP) / 2, across)


def pieced(pattern: Pattern) -> tuple[Piece, ...]:
    """The pieces of `pattern` whose interfacing is cut in two."""
    return tuple(piece for piece in pattern.pieces if in_two(piece))
