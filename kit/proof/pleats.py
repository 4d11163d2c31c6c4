"""Pleats and tucks: on their edges, apart from each other and from darts, with lines that lie on each other."""

from __future__ import annotations

import math
from itertools import pairwise

from kit.diagnostic import Diagnostic, Level, Told, measured, message, named_edge
from kit.errors import KitError
from kit.piece.dart import closed_stretches
from kit.piece.darts_and_pleats import Pleat
from kit.piece.piece import Piece
from kit.piece.pleat import LINES_AGREE, cap, lies, stretches, taken_up
from kit.sewing.named import edge_of

TRUE_ANGLE = 3.0  # degrees
CAP_GAP = 0.5  # mm
OVERLAP = 0.1  # mm


def pleats(pieces: tuple[Piece, ...]) -> list[Diagnostic]:
    """Pleats and tucks that lie off their edges, whose lines differ or do not start at the edge, that lie over each
    other or over a dart, or whose edge bends or misses its seam when they are folded."""
    found: list[Diagnostic] = []
    for piece in pieces:
        faults = [fault for pleat in piece.pleats if (fault := _fault(piece, pleat)) is not None]
        faults += _overlapping(piece)
        found += faults
        if not faults:
            for name in dict.fromkeys(e for p in piece.pleats for e in (p.edge, p.far) if e):
                found += _closed(piece, name)
    return found


def _finding(
    piece: Piece, pleat: Pleat, code: str, level: Level, what: Told, do: Told, amount: float = 0.0, edge: str = ""
) -> Diagnostic:
    return Diagnostic(code, level, what, piece.title, amount=amount, can=do, piece=piece.name, edge=edge or pleat.edge)


def _fault(piece: Piece, pleat: Pleat) -> Diagnostic | None:
    if not lies(piece, pleat):
        return _finding(
            piece,
            pleat,
            "pleat_off_edge",
            "error",
            message(
                "proof.pleat_off_edge",
                fold=pleat.label,
                start=measured(pleat.start),
                end=measured(pleat.end),
                edge=pleat.edge,
            ),
            message("proof.pleat_off_edge_do"),
        )
    one, two = pleat.lines
    gap = abs(one.length - two.length)
    if gap > LINES_AGREE:
        return _finding(
            piece,
            pleat,
            "pleat_lines",
            "error",
            message("proof.pleat_lines", fold=pleat.label, one=measured(one.length), other=measured(two.length)),
            message("proof.pleat_lines_do"),
            gap,
        )
    path = piece.edge(pleat.edge).path
    off = max(
        one.start.distance(path.at(max(pleat.start, 0.0))), two.start.distance(path.at(min(pleat.end, path.length)))
    )
    if off > LINES_AGREE:
        return _finding(
            piece,
            pleat,
            "pleat_lines",
            "error",
            message("proof.pleat_moved", fold=pleat.label, amount=measured(off), edge=edge_of(piece, pleat.edge)),
            message("proof.pleat_moved_do"),
            off,
        )
    return None


def _overlapping(piece: Piece) -> list[Diagnostic]:
    found = []
    for edge in piece.edges:
        taken = [(a, b, p.label, p) for a, b, p in stretches(piece, edge.name)]
        if not taken:
            continue
        every = [(a, b, label) for a, b, label, _ in taken]
        every += [(d.start, d.end, d.label) for d in piece.darts if d.edge == edge.name]
        for (_, end, first), (start, _, second) in pairwise(sorted(every)):
            if end - start > OVERLAP:
                found.append(
                    _finding(
                        piece,
                        taken[0][3],
                        "pleats_overlap",
                        "error",
                        message(
                            "proof.pleats_overlap",
                            fold=first,
                            other=second,
                            amount=measured(end - start),
                            edge=named_edge(edge),
                        ),
                        message("proof.pleats_overlap_do"),
                        end - start,
                        edge.name,
                    )
                )
    return found


def _closed(piece: Piece, edge: str) -> list[Diagnostic]:
    found = []
    try:
        parts = closed_stretches(piece, edge)
    except KitError:
        return []  # a dart on the same edge does not close; the proof of darts says so
    for (_, end, before), (start, _, after) in pairwise(parts):
        between = [p for a, b, p in taken_up(piece, edge) if end - 1e-3 <= a and b <= start + 1e-3]
        bend = abs(math.degrees(before.end_tangent.turn_to(after.start_tangent)))
        if between and bend > TRUE_ANGLE:
            found.append(
                _finding(
                    piece,
                    between[0],
                    "pleat_not_true",
                    "warning",
                    message(
                        "proof.pleat_not_true",
                        edge=edge_of(piece, edge),
                        degrees=round(bend),
                        fold=between[0].label,
                    ),
                    message("proof.pleat_not_true_do"),
                    edge=edge,
                )
            )
    for start, end, pleat in stretches(piece, edge):
        far = pleat.far == edge and (start, end) == (pleat.far_start, pleat.far_end)
        try:
            wanted = cap(piece, pleat, far)
        except KitError:
            continue
        drawn = piece.edge(edge).path.between(max(start, 0.0), min(end, piece.edge(edge).path.length))
        tip = wanted.at(wanted.length / 2)
        short = tip.distance(drawn.at(drawn.nearest(tip)))
        if short > CAP_GAP:
            found.append(
                _finding(
                    piece,
                    pleat,
                    "pleat_cap",
                    "warning",
                    message("proof.no_cap", fold=pleat.label, amount=measured(short)),
                    message("proof.no_cap_do", call=f'{piece.name}.true_pleat("{pleat.name}")'),
                    short,
                    edge,
                )
            )
    return found
