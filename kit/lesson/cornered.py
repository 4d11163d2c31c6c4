"""The corners of a whole pattern: what its sewing order makes of them, put on its pieces and on those of its steps."""

from __future__ import annotations

from kit.lesson.pattern import Pattern
from kit.piece.changed import changed
from kit.piece.piece import Piece
from kit.sewing.ends import Turnings, sewn_corners, turnings


def with_corners(pattern: Pattern) -> Pattern:
    """The pattern with the corners its sewing order calls for, on its pieces and on those of its drafting steps that
    have allowances already. Without sewing operations nothing is said."""
    found = turnings(pattern)
    if not found:
        return pattern
    pieces = tuple(changed(piece, corners=sewn_corners(piece, found)) for piece in pattern.pieces)
    steps = tuple(
        changed(step, pieces=tuple(_cornered(piece, found) for piece in step.pieces))
        if any(edge.allowance for piece in step.pieces for edge in piece.edges)
        else step
        for step in pattern.steps
    )
    return changed(pattern, pieces=pieces, steps=steps)


def _cornered(piece: Piece, found: Turnings) -> Piece:
    if any(edge.allowance for edge in piece.edges):
        return changed(piece, corners=sewn_corners(piece, found))
    return piece
