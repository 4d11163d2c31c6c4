"""What the sewing makes of pieces and edges whose role nothing else has told: what is hemmed is a hem, what is attached
as a facing is a facing, and it is worn where the piece is that it lies on. A role that is known stays."""

from __future__ import annotations

from kit.errors import KitError
from kit.lesson.pattern import Pattern
from kit.piece.changed import changed
from kit.piece.piece import Piece
from kit.piece.role import PieceRole, Worn
from kit.sewing.order import operations

_UNTOLD = ("", "hip")  # a block that ends at the hip has its lower edge there, and what is drawn instead may be the hem
_WHOLE = 0.5  # mm; an edge is hemmed as a whole when no more than this is left at either end


def with_sewn_roles(pattern: Pattern) -> Pattern:
    """The pattern with the roles its sewing gives, on its pieces and on those of its drafting steps."""
    hems: set[tuple[str, str]] = set()
    roles: dict[str, PieceRole] = {}
    lies_on: dict[str, set[str]] = {}
    for _, operation in operations(pattern):
        try:
            closed = operation.closes(pattern)
        except KitError:
            closed = ()  # told by the sewing order
        for closing in closed:
            span = closing.span
            if closing.how != "hemmed" or span.start >= _WHOLE:
                continue
            if span.end > pattern.piece(span.piece).edge(span.edge).path.length - _WHOLE:
                hems.add((span.piece, span.edge))
        for name, role, under in operation.roles():
            roles.setdefault(name, role)
            if under:
                lies_on.setdefault(name, set()).add(under)
    worn = {
        name: found.pop()
        for name, on in lies_on.items()
        if len(found := {pattern.piece(o).worn or "" for o in on}) == 1
    }

    def known(piece: Piece) -> Piece:
        return _known(piece, hems, roles.get(piece.name, ""), worn.get(piece.name, ""))

    return changed(
        pattern,
        pieces=tuple(known(piece) for piece in pattern.pieces),
        steps=tuple(changed(step, pieces=tuple(known(piece) for piece in step.pieces)) for step in pattern.steps),
    )


def _known(piece: Piece, hems: set[tuple[str, str]], role: PieceRole, worn: Worn) -> Piece:
    """The piece with what was not known of it filled in; the very same piece where nothing is."""
    fresh = {
        edge.name: changed(edge, role="hem")
        for edge in piece.edges
        if edge.role in _UNTOLD and not edge.by_hand and (piece.name, edge.name) in hems
    }
    if fresh:
        piece = piece.with_edges(**fresh)
    if piece.by_hand or not ((role and not piece.role) or (worn and not piece.worn)):
        return piece
    return changed(piece, role=piece.role or role, worn=piece.worn or worn)
