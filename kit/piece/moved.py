"""A piece moved as a whole: every line, mark, point and fold of it by the same motion."""

from __future__ import annotations

from dataclasses import replace

from kit.geometry import Motion
from kit.piece.piece import Piece


def moved_piece(piece: Piece, motion: Motion) -> Piece:
    """The piece where `motion` takes it, the grainline and what is drawn inside it with its outline.

    >>> from kit import bodice_block, workshop_chart
    >>> from kit.geometry import Vector
    >>> front, _ = bodice_block(workshop_chart()["W4"])
    >>> there = moved_piece(front, Motion.translation(Vector(30, 0)))
    >>> there.outline.area == front.outline.area, there.edge("side").path.start.x - front.edge("side").path.start.x
    (True, 30.0)
    """
    return replace(
        piece,
        edges=tuple(replace(edge, path=edge.path.moved(motion)) for edge in piece.edges),
        grain=piece.grain and replace(piece.grain, start=motion(piece.grain.start), end=motion(piece.grain.end)),
        marks=tuple(
            replace(mark, path=mark.path and mark.path.moved(motion), point=mark.point and motion(mark.point))
            for mark in piece.marks
        ),
        points=tuple((name, motion(point)) for name, point in piece.points),
        guides=tuple((name, path.moved(motion)) for name, path in piece.guides),
        darts=tuple(replace(dart, apex=motion(dart.apex)) for dart in piece.darts),
        pleats=tuple(
            replace(pleat, lines=(pleat.lines[0].moved(motion), pleat.lines[1].moved(motion))) for pleat in piece.pleats
        ),
    )
