"""Seams walked along the stitch line: equal lengths, and ease on purpose."""

from __future__ import annotations

from kit.diagnostic import Diagnostic, measured, message
from kit.errors import KitError
from kit.lesson.pattern import Pattern, SewRecord
from kit.sewing.named import row
from kit.sewing.operations.bands import SeamBand
from kit.sewing.operations.closed_bands import ends_deeper
from kit.sewing.operations.facings import AttachFacing
from kit.sewing.operations.joined import Seam, length_gap
from kit.sewing.order import operations
from kit.sewing.run import Run

TOLERANCE = 0.5  # mm along the stitch line


def seam_lengths(pattern: Pattern) -> list[Diagnostic]:
    """Runs sewn together that are not equally long, nor eased by what is said."""
    found: list[Diagnostic] = []
    for record, operation in operations(pattern):
        if not isinstance(operation, Seam):
            continue
        try:
            gaps = length_gap(pattern, operation)
        except KitError:
            continue  # told by the sewing order
        total = sum(gap for _, _, gap in gaps)
        if operation.ease:
            if abs(abs(total) - operation.ease) > TOLERANCE:
                found.append(_eased_wrong(pattern, record, operation, total))
            continue
        for a, b, gap in gaps:
            meant = ends_deeper(pattern, operation) if isinstance(operation, SeamBand) else 0.0
            if not -TOLERANCE - meant <= gap <= TOLERANCE:
                found.append(_unequal(pattern, record, operation, a, b, gap))
    return found


def _unequal(
    pattern: Pattern, record: SewRecord, operation: Seam, a: tuple[Run, ...], b: tuple[Run, ...], gap: float
) -> Diagnostic:
    longer, shorter = (a, b) if gap > 0 else (b, a)
    facing = isinstance(operation, AttachFacing)
    return Diagnostic(
        "facing_length" if facing else "seam_length",
        "error",
        message(
            "proof.seam_length",
            longer=row(pattern, longer),
            shorter=row(pattern, shorter),
            amount=measured(abs(gap)),
        ),
        message("proof.where_step", piece=pattern.piece(longer[0].piece).title, step=record.title),
        amount=abs(gap),
        can=message("proof.facing_length_do" if facing else "proof.seam_length_do"),
        step=record.key,
        piece=longer[0].piece,
        edge=longer[0].edges[0],
    )


def _eased_wrong(pattern: Pattern, record: SewRecord, operation: Seam, total: float) -> Diagnostic:
    return Diagnostic(
        "ease_amount",
        "error",
        message("proof.ease_amount", ease=measured(operation.ease), amount=measured(abs(total))),
        message("proof.where_step", piece=pattern.piece(operation.a[0].piece).title, step=record.title),
        amount=abs(abs(total) - operation.ease),
        can=message("proof.ease_amount_do"),
        step=record.key,
        piece=operation.a[0].piece,
        edge=operation.a[0].edges[0],
    )
