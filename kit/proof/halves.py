"""Left to left and right to right: front and back of a garment are sewn together half by half."""

from __future__ import annotations

from kit.diagnostic import Diagnostic, message, titled
from kit.lesson.pattern import Pattern
from kit.piece.piece import Piece
from kit.sewing.named import edge_on
from kit.sewing.operations.joined import Seam
from kit.sewing.order import operations
from kit.sewing.run import Run

_FACING = frozenset({"front", "back"})


def crossed_halves(pattern: Pattern) -> list[Diagnostic]:
    """Seams that join one half of a front to the other half of a back, along any edge but their centres: one of the two
    then lies wrong side out. Centre seams and seams within one piece may meet so."""
    found = []
    for record, operation in operations(pattern):
        if not isinstance(operation, Seam):
            continue
        for one, other in operation.joins:
            if one.side is None or other.side is None or one.side == other.side:
                continue
            first, second = pattern.piece(one.piece), pattern.piece(other.piece)
            if {first.role, second.role} != _FACING or _centre(first, one) or _centre(second, other):
                continue
            found.append(
                Diagnostic(
                    "halves_crossed",
                    "error",
                    message(
                        "proof.halves_crossed",
                        edge=edge_on(first, one.side, one.edges[0]),
                        other=edge_on(second, other.side, other.edges[0]),
                        piece=titled(second.title),
                    ),
                    message("proof.where_step", piece=first.title, step=record.title),
                    can=message("proof.halves_crossed_do"),
                    step=record.key,
                    piece=first.name,
                    edge=one.edges[0],
                )
            )
    return found


def _centre(piece: Piece, run: Run) -> bool:
    return any(piece.edge(name).role == "centre" for name in run.edges)
