"""Darts with two points: legs that are alike, points that run out within the piece and softly enough, darts that do not
cross, and that each is sewn."""

from __future__ import annotations

from itertools import combinations

from kit.diagnostic import Diagnostic, Level, Told, measured, message
from kit.lesson.pattern import Pattern
from kit.piece.dart import LEGS_AGREE
from kit.piece.double_dart import DoubleDart, double_darts
from kit.piece.piece import Piece
from kit.sewing.named import edge_of
from kit.sewing.state import State

SHARPEST = 30.0
"""Degrees at a point beyond which the cloth cannot be pressed flat there and stands up in a bubble (common practice,
no source)."""
CLEAR = 4.0  # mm: a point nearer than this to the stitch line is in its seam


def drawn(pieces: tuple[Piece, ...]) -> list[Diagnostic]:
    """What is wrong with them on paper."""
    found: list[Diagnostic] = []
    for piece in pieces:
        darts = double_darts(piece)
        for dart in darts:
            found += _faults(piece, dart)
        for one, two in combinations(darts, 2):
            if one.mark.path and two.mark.path and one.mark.path.crossings(two.mark.path):
                says = message("proof.double_darts_cross", dart=one.label, other=two.label)
                found.append(
                    _finding(piece, "double_darts_cross", "error", says, message("proof.double_darts_cross_do"))
                )
    return found


def _finding(piece: Piece, code: str, level: Level, what: Told, do: Told, amount: float = 0.0) -> Diagnostic:
    return Diagnostic(code, level, what, piece.title, amount=amount, can=do, piece=piece.name)


def _faults(piece: Piece, dart: DoubleDart) -> list[Diagnostic]:
    for corner in (dart.top, dart.bottom, dart.one, dart.other):
        edge = min(piece.edges, key=lambda each: each.path.distance_to(corner))
        if not piece.outline.contains(corner) or edge.path.distance_to(corner) < CLEAR:
            says = message("proof.double_dart_edge", dart=dart.label, edge=edge_of(piece, edge.name))
            return [_finding(piece, "double_dart_edge", "error", says, message("proof.double_dart_edge_do"))]
    if (pair := dart.unlike) is not None and abs(pair[0] - pair[1]) > LEGS_AGREE:
        says = message("proof.dart_legs", dart=dart.label, one=measured(pair[0]), other=measured(pair[1]))
        return [
            _finding(piece, "dart_legs", "error", says, message("proof.double_dart_legs_do"), abs(pair[0] - pair[1]))
        ]
    if dart.sharpest > SHARPEST:
        says = message(
            "proof.double_dart_sharp",
            dart=dart.label,
            intake=measured(dart.intake),
            length=measured(min(dart.up, dart.down)),
        )
        return [_finding(piece, "double_dart_sharp", "warning", says, message("proof.double_dart_sharp_do"))]
    return []


def never_sewn(pattern: Pattern, state: State) -> list[Diagnostic]:
    """Those that are drawn and that no operation sews, on whichever half. A lining has them from the piece it lines and
    hangs wide where they stay open, as one cut with ease does: that is told and stops nothing."""
    return [
        Diagnostic(
            "never_folded",
            "warning" if piece.role == "lining" else "error",
            message("proof.never_sewn", fold=dart.label),
            piece.title,
            can=message("proof.never_folded_do", call=f"make.double_dart({piece.name}.{dart.mark.name})"),
            piece=piece.name,
        )
        for piece in pattern.pieces
        for dart in double_darts(piece)
        if any(("double_dart", piece.name, side, dart.mark.name) not in state.facts for side in piece.sides)
    ]
