"""What was begun and never finished: rows left out, darts and pleats left open, seams that never meet the iron,
buttonholes without a button, casings that stay empty."""

from __future__ import annotations

from kit.diagnostic import Diagnostic, Value, as_value, message, own, titled
from kit.errors import KitError
from kit.lesson.pattern import Pattern
from kit.piece.piece import Piece
from kit.sewing import stretches
from kit.sewing.named import edge_of, row
from kit.sewing.open_folds import never_folded
from kit.sewing.portion import begun
from kit.sewing.run import Run
from kit.sewing.state import State


def unfinished(pattern: Pattern, state: State) -> list[Diagnostic]:
    """Darts, pleats and tucks never sewn or folded (those in an edge that is closed are told with the sewing order),
    and seams left for pressing later that are never pressed."""
    found = [
        Diagnostic(
            "never_folded",
            "error",
            message("proof.never_folded" if mouth.kind == "pleat" else "proof.never_sewn", fold=mouth.label),
            piece.title,
            can=message("proof.never_folded_do", call=f"make.{mouth.kind}({piece.name})"),
            piece=piece.name,
            edge=mouth.edge,
        )
        for piece, mouth in never_folded(state, pattern)
    ]
    waiting = {key for key in state.edges("unpressed") if not state.touches(("half_sewn", *key))}
    edges = sorted({(piece, edge) for piece, _, edge in waiting})
    found += [
        Diagnostic(
            "never_pressed",
            "error",
            message("proof.never_pressed", edge=edge_of(pattern.piece(piece), edge)),
            pattern.piece(piece).title,
            can=message("proof.never_pressed_do", call=f"make.press({piece}.{edge})"),
            piece=piece,
            edge=edge,
        )
        for piece, edge in edges
    ]
    return found + _begun(pattern) + _wanted(pattern, state)


def _begun(pattern: Pattern) -> list[Diagnostic]:
    """Operations of several rows that were begun and whose other rows are never sewn."""
    found = []
    sewn = [(operation, record) for record in pattern.sewing for operation in record.operations]
    for portion in begun(operation for operation, _ in sewn):
        runs, record = portion.named(), next(record for operation, record in sewn if operation is portion)
        if not runs:  # a strip by itself
            name = next(iter(portion.of.uses.strips))
            title = pattern.strip(name).title
            found.append(
                Diagnostic(
                    "never_finished",
                    "error",
                    message("proof.never_finished", place=titled(title)),
                    message("proof.where_step", piece=title, step=record.title),
                    can=message("proof.never_finished_do", call=f"make.finish({name})"),
                    step=record.key,
                )
            )
            continue
        found.append(
            Diagnostic(
                "never_finished",
                "error",
                message("proof.never_finished", place=row(pattern, runs)),
                message("proof.where_step", piece=pattern.piece(runs[0].piece).title, step=record.title),
                can=message("proof.never_finished_do", call=f"make.finish({', '.join(map(_written, runs))})"),
                step=record.key,
                piece=runs[0].piece,
                edge=runs[0].edges[0],
            )
        )
    return found


def _written(run: Run) -> str:
    """A run as a sewing step writes it."""
    edges = [f"{run.piece}{f'.{run.side}' if run.side else ''}.{edge}" for edge in run.edges]
    return " + ".join(edges)


_WANTED = frozenset(
    {
        "turned_out",
        "band_closed",
        "buttoned",
        "eyelet_used",
        "threaded",
        "row_gap_closed",
        "bag_closed",
        "pocket_edge_sewn",
        "basting_out",
    }
)
"""Facts whose want has messages of its own."""


def _wanted(pattern: Pattern, state: State) -> list[Diagnostic]:
    """What an operation prepared and no later one used. Both halves alike are told once."""
    found: dict[tuple[str, str, Value], Diagnostic] = {}
    for record in pattern.sewing:
        for operation in record.operations:
            try:
                facts = operation.wants(pattern)
            except KitError:
                continue  # told by the sewing order
            for fact in facts:
                if state.holds(fact):
                    continue
                fact, _ = stretches.parted(fact)
                name, piece_name, *_ = fact
                piece = pattern.piece(piece_name)
                place = _place(piece, fact[-1]) if len(fact) > 2 else as_value("")
                wanted = f"proof.never_{name if name in _WANTED else 'used'}"
                key = (name, piece_name, place)
                found.setdefault(
                    key,
                    Diagnostic(
                        "never_used",
                        "error",
                        message(wanted, place=place),
                        message("proof.where_step", piece=piece.title, step=record.title),
                        can=message(f"{wanted}_do"),
                        step=record.key,
                        piece=piece_name,
                        edge=fact[-1] if piece.has_edge(fact[-1]) else "",
                    ),
                )
    return list(found.values())


def _place(piece: Piece, name: str) -> Value:
    """An edge or a mark."""
    if piece.has_edge(name):
        return edge_of(piece, name)
    return next((as_value(mark.label) for mark in piece.marks if mark.name == name), own(name))
