"""How roles pass on while a lesson is drafted: to an edge from the one it stands instead of, to a piece from what it is
derived from. Words an author says later, a title or how an edge is called, add what was not known; they take nothing
back, and a role set by hand stays. Pure functions."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from kit.geometry import Path
from kit.piece.changed import changed
from kit.piece.piece import Edge, Piece
from kit.piece.role import EdgeRole, PieceRole, edge_role, piece_role

_STUFF = ("facing", "lining", "interfacing")
_BODY = ("", "front", "back")


def drawn(lines: Mapping[str, Path], instead_of: Sequence[Edge]) -> dict[str, Edge]:
    """New edges by name with their roles: that of the edge of the same name, else what the name says, else that of the
    one it stands instead of. As many new as old ones follow each other in order; otherwise what all the old ones
    are."""
    old = {edge.name: edge for edge in instead_of}
    common = {edge.role for edge in instead_of}
    found = {}
    for place, (name, path) in enumerate(lines.items()):
        if name in old:
            found[name] = Edge(name, path, role=old[name].role, by_hand=old[name].by_hand)
            continue
        made = Edge(name, path)
        if not made.role and instead_of:
            role: EdgeRole | None = ""
            if len(lines) == len(instead_of):
                role = instead_of[place].role
            elif len(common) == 1:
                (role,) = common
            made = changed(made, role=role)
        found[name] = made
    return found


def said_as(edge: Edge, said: str) -> Edge:
    """The edge as people say it. The words tell its role where it has none, and that it is a hem."""
    role = edge_role(said)
    if not edge.by_hand and (role == "hem" or not edge.role):
        edge = changed(edge, role=role or edge.role)
    return changed(edge, said=said)


def titled(piece: Piece, title: str) -> Piece:
    """The piece with its printed title. The words tell what it is and where it is worn where that is not known, and
    that it is a facing or lining."""
    if not piece.by_hand:
        role, worn = piece_role(title)
        piece = changed(
            piece,
            role=role if role in _STUFF and piece.role not in _STUFF else piece.role or role,
            worn=piece.worn or worn,
        )
    return changed(piece, title=title)


def derived(piece: Piece, role: PieceRole, source: Piece) -> Piece:
    """`piece` as a facing, lining or interfacing drawn from `source`, worn where that is. A facing's interfacing lies
    as the facing does and is one, cut from other cloth."""
    if piece.by_hand:
        return piece
    if role == "interfacing" and source.role == "facing":
        role = "facing"
    return changed(piece, role=role if piece.role in _BODY else piece.role, worn=piece.worn or source.worn)
