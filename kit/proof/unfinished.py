"""What was begun and never finished: darts and pleats left open, seams that never meet the iron, buttonholes without a
button, casings that stay empty."""

from __future__ import annotations

from kit.errors import KitError
from kit.lesson.pattern import Pattern
from kit.piece.piece import Piece
from kit.proof.finding import Finding
from kit.sewing.mouths import never_folded
from kit.sewing.state import State


def unfinished(pattern: Pattern, state: State) -> list[Finding]:
    """Darts, pleats and tucks never sewn or folded (those in an edge that is closed are told with the sewing order),
    and seams left for pressing later that are never pressed."""
    found = [
        Finding(
            "never_folded",
            "error",
            f"the {mouth.label} is never {'folded' if mouth.kind == 'pleat' else 'sewn'}.",
            piece.title,
            do=f"Sew it: make.{mouth.kind}({piece.name}).",
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
            f"the seam along the {pattern.piece(piece).edge(edge).label} was left to be pressed later and never is.",
            pattern.piece(piece).title,
            do=f"Add make.press({piece}.{edge}).",
            piece=piece,
            edge=edge,
        )
        for piece, edge in edges
    ]
    return found + _wanted(pattern, state)


_WANTED = {
    # fact: (what is wrong, what to do); {place} is the edge or mark
    "turned_out": ("it is sewn to be turned right side out and never is", "Add make.turn_out(...)."),
    "band_closed": ("the band set on along {place} is never closed over the seam", "Add make.close_band(...)."),
    "buttoned": ("{place} has no button to go through it", "Add make.buttons(..., holes=...)."),
    "eyelet_used": ("no cord comes out at {place}", "Thread a cord: make.thread_cord(...)."),
    "threaded": ("the casing at {place} stays empty", "Thread elastic or a cord through it."),
    "bag_closed": ("the bag of its pocket is never closed", "Sew the two bags together."),
    "pocket_edge_sewn": ("{place} is pressed under and never sewn down", "Sew the pocket on: make.patch_pocket(...)."),
    "basting_out": ("the basting along {place} is never taken out", "Add make.remove_basting(...)."),
}


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
                what, do = _WANTED.get(name, ("what '{place}' was prepared for is never done", "Finish it."))
                key = (name, piece_name, place)
                found.setdefault(
                    key,
                    Finding(
                        "never_used",
                        "error",
                        f"{what.replace('{place}', place)}.",
                        f"{piece.title}, step '{record.title}'",
                        do=do,
                        step=record.key,
                        piece=piece_name,
                        edge=fact[-1] if piece.has_edge(fact[-1]) else "",
                    ),
                )
    return list(found.values())


def _place(piece: Piece, name: str) -> str:
    """An edge or mark as people say it."""
    if piece.has_edge(name):
        return f"the {piece.edge(name).label}"
    return next((f"the {mark.label}" for mark in piece.marks if mark.name == name), f"the {name.replace('_', ' ')}")
