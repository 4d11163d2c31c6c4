"""Cloth that is cut to fit with: that it can be drawn, and that it is trimmed."""

from __future__ import annotations

from collections.abc import Collection

from kit.diagnostic import Diagnostic, measured, message, named_edge
from kit.errors import KitError
from kit.lesson.pattern import Pattern
from kit.piece.allowance import has_allowances
from kit.piece.recut import without_extra
from kit.proof.pieces import cut_line_of, cut_lines
from kit.sewing.operations.extra_cloth import untrimmed
from kit.sewing.state import State


def extra_lines(pattern: Pattern, broken: Collection[Diagnostic]) -> list[Diagnostic]:
    """Cut lines that can be drawn at the allowances, but not with the extra cloth. `broken` are outlines that do not
    close."""
    skip = {finding.piece for finding in broken}
    found: list[Diagnostic] = []
    for piece in pattern.pieces:
        if piece.name in skip or not has_allowances(piece) or not any(edge.extra for edge in piece.edges):
            continue
        try:
            cut_line_of(without_extra(piece))
        except KitError:
            continue  # told of the allowances
        found += cut_lines((piece,))
    return found


def extra_cloth(pattern: Pattern, state: State) -> list[Diagnostic]:
    """Edges whose extra cloth is never trimmed. Both halves alike are told once."""
    return [
        Diagnostic(
            "extra_left",
            "error",
            message(
                "proof.extra_left",
                edge=named_edge(piece.edge(edge)),
                amount=measured(piece.edge(edge).extra, "allowance"),
            ),
            piece.title,
            amount=piece.edge(edge).extra,
            can=message("proof.extra_left_do", call=f"make.trim_to_fit({piece.name}.{edge})"),
            piece=piece.name,
            edge=edge,
        )
        for piece, edge in untrimmed(pattern.pieces, state)
    ]
