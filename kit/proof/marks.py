"""Notches and opening marks: does each meet its partner when the seam is laid together."""

from __future__ import annotations

from kit.diagnostic import Diagnostic, measured, message
from kit.errors import KitError
from kit.lesson.pattern import Pattern, SewRecord
from kit.piece.folded import Folded
from kit.piece.piece import Mark, Piece
from kit.sewing.named import edge_of, placed
from kit.sewing.operation import Operation
from kit.sewing.operations.joined import Seam
from kit.sewing.order import operations
from kit.sewing.run import Run
from kit.sewing.seam_walk import as_sewn, walk_folded
from kit.sewing.spans import Span, spans
from kit.sewing.state import State

TOLERANCE = 0.5  # mm along the stitch line
_UNSEWN = State()


def notches(pattern: Pattern) -> list[Diagnostic]:
    """Notches of one run without a partner on the other, walked along the seam; an eased seam may shift them
    by its ease."""
    found: dict[tuple[str, str, float], Diagnostic] = {}
    for record, operation in operations(pattern):
        if not isinstance(operation, Seam) or len(operation.a) != len(operation.b):
            continue
        for a, b in zip(operation.a, operation.b, strict=True):
            try:
                found |= _unmatched(pattern, record, a, b, operation.ease)
            except KitError:
                continue  # told by the sewing order
    return list(found.values())


def _places(run: Folded) -> list[tuple[float, str]]:
    """(mm along the run as sewn, edge) of its notches, but for those between which its own fullness lies: the edge it
    is sewn to has none there."""
    own = {(mark.edge, at) for mark in run.piece.marks if mark.kind == "line" for at in (mark.start, mark.end)}
    notches = [n for n in run.piece.notches if n.edge in run.edges and (n.edge, n.distance) not in own]
    found = [(run.sewn(notch.edge, notch.distance), notch.edge) for notch in notches]
    return [(at, edge) for at, edge in found if at is not None]


def _unmatched(
    pattern: Pattern, record: SewRecord, a: Run, b: Run, ease: float
) -> dict[tuple[str, str, float], Diagnostic]:
    found: dict[tuple[str, str, float], Diagnostic] = {}
    walk = walk_folded(as_sewn(pattern.piece(a.piece), a), as_sewn(pattern.piece(b.piece), b))
    first, second = _places(walk.a), _places(walk.b)
    for run, other, mine, theirs in ((a, b, first, second), (b, a, second, first)):
        for at, edge in mine:
            off = min((abs(at - place) for place, _ in theirs), default=None)
            if off is not None and off <= TOLERANCE + ease:
                continue
            piece = pattern.piece(run.piece)
            values = {"at": measured(at), "run": placed(pattern, run), "other": placed(pattern, other)}
            found[(run.piece, edge, round(at, 1))] = Diagnostic(
                "notch_unmatched",
                "warning",
                message("proof.notch_alone", **values)
                if off is None
                else message("proof.notch_misses", **values, amount=measured(off)),
                message("proof.where_step", piece=piece.title, step=record.title),
                amount=off,
                can=message("proof.notch_do"),
                step=record.key,
                piece=run.piece,
                edge=edge,
            )
    return found


def _opens(operation: Operation, pattern: Pattern) -> tuple[Span, ...]:
    """The stretches an operation leaves open, for good or for turning."""
    raw = (span for run in operation.gaps(pattern) for span in spans(pattern, run))
    return (*operation.opens(pattern), *raw)


def _meant(piece: Piece, span: Span) -> list[Mark]:
    """The openings marked on an edge that a stretch left open may be: those it overlaps, else the one that lies
    nearest."""
    marks = [mark for mark in piece.marks if mark.kind == "opening" and mark.edge == span.edge]
    there = [mark for mark in marks if min(mark.end, span.end) - max(mark.start, span.start) > TOLERANCE]
    return there or sorted(marks, key=lambda mark: abs(mark.start + mark.end - span.start - span.end))[:1]


def _hemmed(piece: Piece, mark: Mark, state: State) -> bool:
    """Whether an opening that no seam leaves is one all the same: the seam stops beside it, and its edge is hemmed,
    faced or bound by itself."""
    size = piece.edge(mark.edge).path.length
    for side in piece.sides:
        done = [each.span for each in state.on((piece.name, side, mark.edge)) if each.how in ("hemmed", "faced")]
        own = Span(piece.name, side, mark.edge, mark.start, mark.end)
        held = sum(span.overlap(own) for span in done)
        if held > own.length - TOLERANCE and sum(span.length for span in done) < size - TOLERANCE:
            return True
    return False


def openings(pattern: Pattern, state: State = _UNSEWN) -> list[Diagnostic]:
    """Openings marked on a piece that no seam leaves open, and marks that differ on the two sides of a seam."""
    # Both ways are walked: from the seams to the marks (is what a seam leaves open what was marked?), noting which
    # marks were met, and then over all marks: one that no seam met is sewn shut.
    found: list[Diagnostic] = []
    left_open: set[tuple[str, str]] = set()
    for record, operation in operations(pattern):
        try:
            for span in _opens(operation, pattern):
                piece = pattern.piece(span.piece)
                for mark in _meant(piece, span):
                    left_open.add((piece.name, mark.name))
                    off = max(abs(mark.start - span.start), abs(mark.end - span.end))
                    if off > TOLERANCE:
                        found.append(
                            Diagnostic(
                                "opening_moved",
                                "error",
                                message(
                                    "proof.opening_moved",
                                    mark=mark.label,
                                    start=measured(mark.start),
                                    end=measured(mark.end),
                                    edge=edge_of(piece, span.edge),
                                    left=measured(span.start),
                                    right=measured(span.end),
                                ),
                                message("proof.where_step", piece=piece.title, step=record.title),
                                amount=off,
                                can=message("proof.opening_moved_do"),
                                step=record.key,
                                piece=piece.name,
                                edge=span.edge,
                            )
                        )
        except KitError:
            continue  # told by the sewing order
    for piece in pattern.pieces:
        for mark in piece.marks:
            met = mark.kind != "opening" or (piece.name, mark.name) in left_open
            if not met and not _hemmed(piece, mark, state):
                found.append(
                    Diagnostic(
                        "opening_sewn_shut",
                        "warning",
                        message("proof.opening_sewn_shut", mark=mark.label),
                        piece.title,
                        can=message("proof.opening_sewn_shut_do"),
                        piece=piece.name,
                        edge=mark.edge,
                    )
                )
    return found
