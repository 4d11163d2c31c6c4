"""Which way round a half of a piece is seen.

Seen from in front, the wearer's left is at +x (the viewer's right). A front piece as drafted (x > 0, right side
up) is the wearer's left front; a back piece as drafted is the wearer's right back, for it is seen from behind.
A facing's right side faces the wearer, so it is the other way round.
"""

from __future__ import annotations

from kit.piece.piece import Piece, Side


def is_back(piece: Piece) -> bool:
    """Whether a piece is worn at the back."""
    return piece.worn == "back"


def is_facing(piece: Piece) -> bool:
    """Whether a piece is a facing."""
    return piece.role == "facing"


def as_drafted(piece: Piece, side: Side, wrong_up: bool) -> bool:
    """Whether the half `side` with that face up is seen as it was drafted (else as its mirror image)."""
    drafted = side == "left"
    for turned in (is_back(piece), is_facing(piece), wrong_up):
        drafted ^= turned
    return drafted
