"""Cutting out and marking, a step of its own before the sewing: the allowances in a line, and for each piece every
notch, mark, dart and pleat, and its interfacing."""

from __future__ import annotations

from collections import Counter

from kit.booklet.model import Marking, Table
from kit.language import say
from kit.lesson.pattern import Pattern
from kit.piece.dart import darts_lying
from kit.piece.piece import Piece
from kit.prose.on_one_half import marks_on_one_half, marks_said_of
from kit.sewing.operations.casings import Casing
from kit.sewing.operations.faced_hems import FacedHem
from kit.sewing.operations.hems import Hem
from kit.sewing.operations.pockets import PocketHem
from kit.sewing.order import operations
from kit.units import both
from kit.wording.lists import listed, strung
from kit.wording.names import edge_label

_SNIP = 3.0
"""mm that a notch is snipped, at most (common practice, no source)."""
_STEPS = ("cut_out", "notch", "mark", "interface")


def marking(pattern: Pattern) -> Marking:
    """What is done between the cutting layout and the first seam; a step is left out that no piece asks for."""
    pieces = sorted(pattern.pieces, key=lambda piece: piece.number)
    rows = tuple(
        (str(piece.number), piece.title, _notches(piece), _marks(piece, pattern), _interfaced(piece))
        for piece in pieces
    )
    asked = (True, *(any(row[i] for row in rows) for i in (2, 3, 4)))
    deep = both(_SNIP, pattern.lesson.units, "allowance")
    steps = tuple(say(f"booklet.marking_{key}", deep=deep) for key, wanted in zip(_STEPS, asked, strict=True) if wanted)
    columns = [0, 1, *(i for i in (2, 3, 4) if asked[i - 1])]
    heads = [say(f"booklet.{key}") for key in ("no", "piece", "notches", "marks", "interfacing")]
    kept = tuple(tuple(row[i] or "–" for i in columns) for row in rows)
    table = Table(say("booklet.marking_table"), tuple(heads[i] for i in columns), kept) if any(asked[1:]) else None
    return Marking(_allowances(pattern), steps, table)


def _allowances(pattern: Pattern) -> str:
    """The allowances of seams and of hems in one line; nothing where there are none yet."""
    system = pattern.lesson.units
    hemmed = {
        (run.piece, edge)
        for _, operation in operations(pattern)
        if isinstance(operation, Hem | FacedHem | PocketHem | Casing)
        for run in operation.runs()
        for edge in run.edges
    }
    found: dict[bool, list[float]] = {True: [], False: []}
    for piece in pattern.pieces:
        for edge in piece.edges:
            if edge.allowance and edge.name != piece.fold:
                found[edge.role == "hem" or (piece.name, edge.name) in hemmed].append(edge.allowance + edge.extra)
    # Widths a hair apart read the same on a ruler, and are told once.
    read = {hem: dict.fromkeys(both(mm, system, "allowance") for mm in sorted(mms)) for hem, mms in found.items()}
    said = {hem: listed(list(widths)) for hem, widths in read.items()}
    if not (said[True] or said[False]):
        return ""
    if not said[True] or not said[False]:
        return say("booklet.allowances_line", seams=said[True] or said[False])
    return say("booklet.allowances_line_hems", seams=said[False], hems=said[True])


def _notches(piece: Piece) -> str:
    """Its notches, edge by edge: how many, and whether they are double."""
    counted = Counter((notch.edge, notch.kind) for notch in piece.notches if piece.has_edge(notch.edge))
    return strung(
        [
            say("booklet.notches_on", edge=edge_label(piece.edge(edge)), kind=kind, count=count)
            for (edge, kind), count in counted.items()
        ]
    )


def _marks(piece: Piece, pattern: Pattern) -> str:
    """The names of what is marked inside it, and on which half where it is one alone."""
    names = marks_said_of(piece, pattern)
    names += [edge_label(dart) for dart in darts_lying(piece)]
    names += [edge_label(pleat) for pleat in piece.pleats]
    parted = any(
        name == piece.name for name, _ in marks_on_one_half(pattern)
    )  # what is of a half has commas of its own
    return strung(list(dict.fromkeys(names)), "parted" if parted else "more")


def _interfaced(piece: Piece) -> str:
    plan = piece.cut
    if plan.cloth == "interfacing":
        return say("booklet.is_interfacing")
    return say("booklet.interfaced_layers", count=plan.interfacing) if plan.interfacing else ""
