"""The signs of a drafting picture: the small square in a square corner, the two short bars where a line runs into
another without a corner, and the equal sign of what must be equal.

A square sign is that of geometry (ISO 128 leaves it to the trade; common practice, no source); where the corner is
square to the level of the paper and no line lies there, the level is drawn as a short guide.
"""

from __future__ import annotations

from collections.abc import Iterable

from kit.geometry import Line, Point, Vector
from kit.lesson.hand import HandMove, Sign
from kit.picture.drawing import Item, Stroke
from kit.picture.place import Scaling

SQUARE = 0.026
"""The side of a square sign, as a share of the picture's reach: some 2 mm of print."""
_RAIL, _OFF = 0.03, 0.011
_EQUAL, _APART = 0.024, 0.009


def move_signs(moves: Iterable[HandMove], put: Scaling, reach: float) -> list[Item]:
    """All signs of the moves on one piece, numbered in their names."""
    items: list[Item] = []
    number = 0
    for move in moves:
        for sign in move.signs:
            number += 1
            items += _sign(sign, f"{move.piece}.{sign.kind}.{number}", put, reach, _room(move, put))
    return items


def _room(move: HandMove, put: Scaling) -> float:
    """How long the move's line is in the picture: its sign must stay smaller."""
    return move.start.distance(move.end) * put.factor


def _sign(sign: Sign, name: str, put: Scaling, reach: float, room: float) -> list[Item]:
    at = put.point(sign.at)
    if sign.kind == "tangent":
        return _rails(at, sign.way, name, reach)
    side = min(reach * SQUARE, room * 0.6)
    a, b = at + sign.way * side, at + sign.other * side
    corner = a + sign.other * side
    items: list[Item] = [Stroke((Line(a, corner), Line(corner, b)), "sign", name=name)]
    if not sign.to:
        level = Line(at - sign.other * (side * 1.5), at + sign.other * (side * 2.5))
        items.insert(0, Stroke((level,), "guide", name=f"{name}.level"))
    return items


def _rails(at: Point, way: Vector, name: str, reach: float) -> list[Item]:
    """Two short bars on both sides of a line, along it: it goes on here as it came."""
    half, off = way * (reach * _RAIL / 2), way.left() * (reach * _OFF)
    bars = (Line(at - half + off, at + half + off), Line(at - half - off, at + half - off))
    return [Stroke((bar,), "sign", name=name) for bar in bars]


def equal_sign(at: Point, along: Vector, name: str, reach: float) -> list[Item]:
    """An equal sign lying along a line: this one and that which bears the same sign are equally long."""
    half, step = along * (reach * _EQUAL / 2), along.left() * (reach * _APART / 2)
    return [
        Stroke((Line(at + shift - half, at + shift + half),), "check", name=f"{name}.equal")
        for shift in (step, step * -1.0)
    ]
