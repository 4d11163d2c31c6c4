"""Raw edges that stay inside: nothing is wrong with the sewing, but unlined woven cloth frays there in the wash."""

from __future__ import annotations

from kit.diagnostic import Diagnostic, list_of, message
from kit.lesson.pattern import Pattern
from kit.piece.role import PieceRole
from kit.sewing.facts import facts_of
from kit.sewing.named import edge_of
from kit.sewing.operation import Operation
from kit.sewing.order import operations
from kit.sewing.run import Run
from kit.sewing.spans import sides_of
from kit.sewing.state import EdgeKey, State

_BETWEEN: frozenset[PieceRole] = frozenset(
    {"facing", "lining", "interfacing", "collar", "cuff", "band", "flap", "strip"}
)
"""Roles of pieces whose seams come to lie between two layers."""


def raw_inside(pattern: Pattern, state: State) -> list[Diagnostic]:
    """A note on each piece of an unlined garment whose allowances or turned edges are left as they were cut. Left out
    is what an enclosed seam shuts in, what lies in a band, a collar or behind a facing, what is turned out through a
    gap, and what is overcast in an operation of its own, before or after."""
    if any(piece.role == "lining" for piece in pattern.pieces):
        return []
    hidden = {fact[1] for fact in state.facts if fact[0] == "turned_out"}
    done = {key for run in _overcast(pattern) for key in _keys(pattern, run)}
    found: dict[str, tuple[str, list[str]]] = {}
    for record, operation in operations(pattern):
        for run in _left(operation):
            piece = pattern.piece(run.piece)
            if piece.role in _BETWEEN or piece.name in hidden:
                continue
            shut = {fact[1:4] for fact in facts_of(pattern, (run,), "shut_in") if state.holds(fact)}
            for key in _keys(pattern, run):
                names = found.setdefault(piece.name, (record.key, []))[1]
                if key not in done and key not in shut and key[2] not in names:
                    names.append(key[2])
    return [
        Diagnostic(
            "raw_inside",
            "note",
            message("proof.raw_inside", edges=list_of(edge_of(pattern.piece(name), edge) for edge in edges)),
            pattern.piece(name).title,
            can=message("proof.raw_inside_do"),
            step=step,
            piece=name,
            edge=edges[0],
        )
        for name, (step, edges) in found.items()
        if edges
    ]


def _left(operation: Operation) -> tuple[Run, ...]:
    """The runs whose raw edge an operation leaves as it was cut: it says so, and turns nothing under."""
    if getattr(operation, "finish", "") != "none" or getattr(operation, "second", 0) or getattr(operation, "turn", 0):
        return ()
    return operation.runs()


def _overcast(pattern: Pattern) -> list[Run]:
    return [
        run
        for record in pattern.sewing
        for operation in record.operations
        if operation.kind == "edge_finish"
        for run in operation.runs()
    ]


def _keys(pattern: Pattern, run: Run) -> list[EdgeKey]:
    return [(run.piece, side, edge) for side in sides_of(pattern, run) for edge in run.edges]
