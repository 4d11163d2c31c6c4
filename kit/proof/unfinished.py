"""What was begun and never finished: darts and pleats left open, seams that never meet the iron, buttonholes without a
button, casings that stay empty."""

from __future__ import annotations

from kit.errors import KitError
from kit.language import say
from kit.lesson.pattern import Pattern
from kit.piece.piece import Piece
from kit.proof.finding import Finding
from kit.sewing.mouths import never_folded
from kit.sewing.state import State
from kit.sewing.told import name_told


def unfinished(pattern: Pattern, state: State) -> list[Finding]:
    """Darts, pleats and tucks never sewn or folded (those in an edge that is closed are told with the sewing order),
    and seams left for pressing later that are never pressed."""
    found = [
        Finding(
            "never_folded",
            "error",
            say("proof.never_folded" if mouth.kind == "pleat" else "proof.never_sewn", fold=mouth.label),
            piece.title,
            do=say("proof.never_folded_do", call=f"make.{mouth.kind}({piece.name})"),
            piece=piece.name,
            edge=mouth.edge,
        )
        for piece, mouth in never_folded(state, pattern)
    ]
    edges = sorted({(piece, edge) for piece, _, edge in state.unpressed})
    found += [
        Finding(
            "never_pressed",
            "error",
            say("proof.never_pressed", edge=name_told(pattern.piece(piece), edge)),
            pattern.piece(piece).title,
            do=say("proof.never_pressed_do", call=f"make.press({piece}.{edge})"),
            piece=piece,
            edge=edge,
        )
        for piece, edge in edges
    ]
    return found + _wanted(pattern, state)


_WANTED = frozenset(
    {
        "turned_out",
        "band_closed",
        "buttoned",
        "eyelet_used",
        "threaded",
        "bag_closed",
        "pocket_edge_sewn",
        "basting_out",
    }
)
"""Facts whose want has messages of its own."""


def _wanted(pattern: Pattern, state: State) -> list[Finding]:
    """What an operation prepared and no later one used. Both halves alike are told once."""
    found: dict[tuple[str, ...], Finding] = {}
    for record in pattern.sewing:
        for operation in record.operations:
            try:
                facts = operation.wants(pattern)
            except KitError:
                continue  # told by the sewing order
            for fact in facts:
                if fact in state.facts:
                    continue
                name, piece_name, *_ = fact
                piece = pattern.piece(piece_name)
                place = _place(piece, fact[-1]) if len(fact) > 2 else ""
                wanted = f"proof.never_{name if name in _WANTED else 'used'}"
                key = (name, piece_name, place)
                found.setdefault(
                    key,
                    Finding(
                        "never_used",
                        "error",
                        say(wanted, place=place),
                        say("proof.where_step", piece=piece.title, step=record.title),
                        do=say(f"{wanted}_do"),
                        step=record.key,
                        piece=piece_name,
                        edge=fact[-1] if piece.has_edge(fact[-1]) else "",
                    ),
                )
    return list(found.values())


def _place(piece: Piece, name: str) -> str:
    """An edge or mark as people say it."""
    if piece.has_edge(name):
        return name_told(piece, name)
    return next((mark.label for mark in piece.marks if mark.name == name), name.replace("_", " "))
