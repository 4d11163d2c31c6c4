"""Slits: that each opens on an edge and ends within the piece, and that none is left raw."""

from __future__ import annotations

from kit.diagnostic import Diagnostic, measured, message
from kit.lesson.pattern import Pattern
from kit.piece.piece import Piece
from kit.piece.slit import CLEAR, room, slit_of
from kit.sewing.state import State


def drawn(pieces: tuple[Piece, ...]) -> list[Diagnostic]:
    """Slits that open on no edge, and those that leave no cloth beyond their end."""
    found = []
    for piece in pieces:
        for mark in piece.marks:
            if mark.kind != "slit":
                continue
            slit = slit_of(piece, mark)
            if slit is None:
                says, do = message("proof.slit_adrift", slit=mark.label), message("proof.slit_adrift_do")
                found.append(Diagnostic("slit_adrift", "error", says, piece.title, can=do, piece=piece.name))
            elif (left := room(piece, slit)) < CLEAR - 0.5:
                says = message("proof.slit_long", slit=mark.label, room=measured(left))
                do = message("proof.slit_long_do", least=measured(CLEAR))
                found.append(
                    Diagnostic("slit_long", "error", says, piece.title, left, do, piece=piece.name, edge=slit.edge)
                )
    return found


def left_raw(pattern: Pattern, state: State) -> list[Diagnostic]:
    """Slits that no placket finishes, on whichever half."""
    return [
        Diagnostic(
            "slit_raw",
            "error",
            message("proof.slit_raw", slit=mark.label),
            piece.title,
            can=message("proof.slit_raw_do", call=f"make.bound_placket(strip, slit={piece.name}.{mark.name})"),
            piece=piece.name,
        )
        for piece in pattern.pieces
        for mark in piece.marks
        if mark.kind == "slit"
        and any(("slit_finished", piece.name, side, mark.name) not in state.facts for side in piece.sides)
    ]
