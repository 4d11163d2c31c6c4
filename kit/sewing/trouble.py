"""What speaks against a sewing operation."""

from __future__ import annotations

from kit.diagnostic import Diagnostic, Level, Told
from kit.sewing.cut import Cut
from kit.sewing.run import Run


def trouble(
    code: str,
    says: Told,
    at: Told = "",
    can: Told = "",
    *,
    amount: float | None = None,
    piece: str = "",
    edge: str = "",
    level: Level = "error",
) -> Diagnostic:
    """A diagnostic of an operation; `sew` adds the step it is met in."""
    return Diagnostic(code, level, says, at, amount, can, piece=piece, edge=edge)


def refuse(
    pattern: Cut, run: Run, code: str, what: Told, do: Told, amount: float | None = None, level: Level = "error"
) -> Diagnostic:
    """A refusal told of a run."""
    piece = pattern.piece(run.piece)
    edge = run.edges[0] if piece.has_edge(run.edges[0]) else ""
    return trouble(code, what, piece.title, do, amount=amount, piece=piece.name, edge=edge, level=level)
