"""What was begun and never finished: darts and pleats left open, seams that never meet the iron."""

from __future__ import annotations

from kit.lesson.pattern import Pattern
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
    return found
