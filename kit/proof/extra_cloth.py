"""Cloth that is cut to fit with: that it can be drawn, and that it is trimmed."""

from __future__ import annotations

from collections.abc import Collection, Iterator

from kit.diagnostic import Diagnostic, measured, message, named_edge
from kit.errors import KitError
from kit.lesson.pattern import Pattern
from kit.piece.allowance import cut_line, has_allowances
from kit.piece.recut import without_extra
from kit.proof.pieces import cut_lines
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
            cut_line(without_extra(piece))
        except KitError:
            continue  # told of the allowances
        found += cut_lines((piece,))
    return found


def extra_cloth(pattern: Pattern, state: State) -> list[Diagnostic]:
    """Edges whose extra cloth is never trimmed, and those sewn while it is still there. Both halves alike are told
    once."""
    return [*_sewn_wide(pattern), *_never_trimmed(pattern, state)]


def _sewn_wide(pattern: Pattern) -> Iterator[Diagnostic]:
    """Operations that measure from a raw edge which has its extra cloth still: their row would lie that much too far
    out."""
    extra = {(piece.name, edge.name): edge.extra for piece in pattern.pieces for edge in piece.edges if edge.extra > 0}
    trimmed: set[tuple[str, str]] = set()
    for record in pattern.sewing if extra else ():
        for operation in record.operations:
            if operation.kind == "trim_to_fit":
                trimmed |= {(run.piece, edge) for run in operation.runs() for edge in run.edges}
                continue
            try:
                taken = operation.takes(pattern)
            except KitError:
                continue  # told by the sewing order
            for key in taken:
                if key not in extra or key in trimmed:
                    continue
                trimmed.add(key)  # told once
                piece = pattern.piece(key[0])
                yield Diagnostic(
                    "extra_sewn",
                    "error",
                    message(
                        "proof.extra_sewn",
                        edge=named_edge(piece.edge(key[1])),
                        amount=measured(extra[key], "allowance"),
                    ),
                    message("proof.where_step", piece=piece.title, step=record.title),
                    amount=extra[key],
                    can=message("proof.extra_sewn_do", call=f"make.trim_to_fit({key[0]}.{key[1]})"),
                    step=record.key,
                    piece=key[0],
                    edge=key[1],
                )


def _never_trimmed(pattern: Pattern, state: State) -> list[Diagnostic]:
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
