"""What speaks against a sewing operation."""

from __future__ import annotations

from kit.diagnostic import Diagnostic, Level, Told


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
