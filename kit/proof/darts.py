"""Darts: legs that are equally long, a point inside the piece, an edge that runs smooth when the dart is shut."""

from __future__ import annotations

import math

from kit.diagnostic import Diagnostic, Level, Told, measured, message
from kit.errors import KitError
from kit.piece.dart import LEGS_AGREE, cap, closed_stretches, darts_on, legs, mouth_path, sewn_point
from kit.piece.darts_and_pleats import Dart
from kit.piece.piece import Piece
from kit.sewing.named import edge_of

TRUE_ANGLE = 3.0  # degrees
CAP_GAP = 0.5  # mm


def darts(pieces: tuple[Piece, ...]) -> list[Diagnostic]:
    """Darts that do not lie on their edge, whose legs differ, that point outside the piece, or whose edge bends or
    has no cap when they are folded shut."""
    found: list[Diagnostic] = []
    for piece in pieces:
        sound = True
        if piece.spared and not piece.darts:
            says, can = message("proof.dart_spared"), message("proof.dart_spared_do")
            found.append(Diagnostic("dart_spared", "note", says, piece.title, can=can, piece=piece.name))
        for dart in piece.darts:
            fault = _fault(piece, dart)
            if fault is not None:
                sound = False
                found.append(fault)
        if sound:
            for name in dict.fromkeys(dart.edge for dart in piece.darts):
                found += _closed(piece, name)
    return found


def _finding(
    piece: Piece, dart: Dart, code: str, level: Level, what: Told, do: Told, amount: float = 0.0
) -> Diagnostic:
    return Diagnostic(code, level, what, piece.title, amount=amount, can=do, piece=piece.name, edge=dart.edge)


def _fault(piece: Piece, dart: Dart) -> Diagnostic | None:
    try:
        one, two = legs(piece, dart)
    except KitError as error:
        return _finding(
            piece, dart, "dart_not_closed", "error", error.told.says, error.told.can or message("proof.dart_again_do")
        )
    gap = abs(one.length - two.length)
    if gap > LEGS_AGREE:
        return _finding(
            piece,
            dart,
            "dart_legs",
            "error",
            message("proof.dart_legs", dart=dart.label, one=measured(one.length), other=measured(two.length)),
            message("proof.dart_legs_do"),
            gap,
        )
    if not piece.outline.contains(sewn_point(piece, dart)):
        return _finding(
            piece,
            dart,
            "dart_not_closed",
            "error",
            message("proof.dart_point_outside", dart=dart.label),
            message("proof.dart_point_outside_do"),
        )
    return None


def _closed(piece: Piece, edge: str) -> list[Diagnostic]:
    found = []
    parts = closed_stretches(piece, edge)
    for dart in darts_on(piece, edge):
        before = next((part for _, end, part in parts if abs(end - dart.start) < 1e-3), None)
        after = next((part for start, _, part in parts if abs(start - dart.end) < 1e-3), None)
        if before is None or after is None:
            continue
        bend = abs(math.degrees(before.end_tangent.turn_to(after.start_tangent)))
        if bend > TRUE_ANGLE:
            found.append(
                _finding(
                    piece,
                    dart,
                    "dart_not_true",
                    "warning",
                    message("proof.dart_not_true", edge=edge_of(piece, edge), degrees=round(bend), dart=dart.label),
                    message("proof.dart_not_true_do"),
                )
            )
    for dart in darts_on(piece, edge):
        short = _uncovered(piece, dart)
        if short > CAP_GAP:
            found.append(
                _finding(
                    piece,
                    dart,
                    "dart_cap",
                    "warning",
                    message("proof.no_cap", fold=dart.label, amount=measured(short)),
                    message("proof.no_cap_do", call=f'{piece.name}.true_dart("{dart.name}")'),
                    short,
                )
            )
    return found


def _uncovered(piece: Piece, dart: Dart) -> float:
    """How far the tip of the mouth lies short of the tip of the cap, mm."""
    try:
        wanted = cap(piece, dart)
    except KitError:
        return 0.0
    drawn = mouth_path(piece, dart)
    tip = wanted.at(wanted.length / 2)
    return tip.distance(drawn.at(drawn.nearest(tip)))
