"""How what is found of a worn garment is told."""

from __future__ import annotations

from kit.diagnostic import Diagnostic, Level, Message, message


def told(
    code: str,
    level: Level,
    says: Message,
    can: Message,
    *,
    amount: float | None = None,
    step: str = "",
    piece: str = "",
    edge: str = "",
    measures: tuple[str, ...] = (),
) -> Diagnostic:
    """A finding of the garment on the body."""
    return Diagnostic(
        code, level, says, message("wear.where"), amount, can, step=step, piece=piece, edge=edge, measures=measures
    )
