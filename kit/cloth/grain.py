"""How a piece lies to the grain of the cloth."""

from __future__ import annotations

import math

from kit.geometry import Motion, Vector
from kit.piece.piece import Grain, Piece

_TURN = {"lengthwise": 0.0, "crosswise": math.pi / 2, "bias": math.pi / 4}
"""How far the grainline lies off the lengthwise grain."""


def lengthwise(grain: Grain | None) -> Vector:
    """The direction of the cloth's length on the paper, the way the piece's top points; straight up without a
    grainline. A crosswise or bias grainline is turned clockwise onto the cloth."""
    if grain is None or grain.start.distance(grain.end) < 1e-9:
        return Vector(0.0, 1.0)
    return Motion.rotation(_TURN[grain.kind]).vector((grain.end - grain.start).unit())


def at_fold(piece: Piece, way: Vector) -> bool:
    """Whether the fold of `piece` runs along `way`, the cloth's length."""
    fold = piece.edge(piece.fold).path
    return abs((fold.end - fold.start).unit().cross(way)) < 0.02
