"""The ends of strips that a later seam is to catch are caught by one (common practice, no source: an end let run into
an allowance stays raw unless a seam is sewn over it)."""

from __future__ import annotations

from kit.diagnostic import Diagnostic, message
from kit.errors import KitError
from kit.lesson.pattern import Pattern
from kit.sewing.named import placed
from kit.sewing.operations.bindings import EdgeStrip
from kit.sewing.order import operations


def strip_ends(pattern: Pattern) -> list[Diagnostic]:
    """Bindings and bias facings whose ends are told to be caught where, by the end of the sewing, no seam has been sewn
    over them; each told once, of the first such end."""
    found: dict[object, Diagnostic] = {}
    for record, each in operations(pattern):
        made = each.entire
        if not isinstance(made, EdgeStrip):
            continue
        try:
            left = made.uncaught(pattern)
        except KitError:
            continue  # told by the sewing order
        if left == ():
            continue
        key = "ends_of_ring_caught" if left is None else "ends_not_caught"
        run = made.edges[0] if left is None else left[0]
        title = pattern.piece(run.piece).title
        found.setdefault(
            made,
            Diagnostic(
                key,
                "warning",
                message(f"proof.{key}", place=placed(pattern, run)),
                message("proof.where_step", piece=title, step=record.title),
                can=message(f"proof.{key}_do"),
                step=record.key,
                piece=run.piece,
                edge=run.edges[0],
            ),
        )
    return list(found.values())
