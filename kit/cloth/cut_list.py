"""The cut list: what is cut from what, how many, on the fold or as a mirrored pair."""

from __future__ import annotations

from dataclasses import dataclass

from kit.cloth.need import Box
from kit.lesson.pattern import Pattern
from kit.piece.allowance import cut_line
from kit.piece.piece import Cloth, Piece, Strip

INTERFACING_WIDTH = 900.0  # mm, a width it is often sold in; from memory


@dataclass(frozen=True)
class Cut:
    """One line of the cut list. `how` is "fold", "pair", "single" or "strip"; the same shape is cut from
    `interfacing` layers of interfacing."""

    number: int
    title: str
    count: int
    how: str
    cloth: Cloth
    edge: str = ""
    interfacing: int = 0


def cut_list(pattern: Pattern) -> tuple[Cut, ...]:
    """Every cut of `pattern` in order of piece number, strips last."""
    lines: list[Cut] = []
    for piece in sorted(pattern.pieces, key=lambda piece: piece.number):
        how, edge = _how(piece)
        plan = piece.cut
        lines.append(Cut(piece.number, piece.title, plan.count, how, plan.cloth, edge, plan.interfacing))
    for strip in pattern.strips:
        lines.append(Cut(strip.number, strip.title, strip.count, "strip", strip.cloth))
    return tuple(lines)


def boxes(pattern: Pattern, cloth: Cloth) -> tuple[Box, ...]:
    """The bounding boxes of everything cut from `cloth`, with allowances, along and across the grain."""
    found: list[Box] = []
    for piece in pattern.pieces:
        count = piece.cut.count if piece.cut.cloth == cloth else 0
        if cloth == "interfacing":
            count = max(count, piece.cut.interfacing)
        if count:
            found.append(_piece_box(piece, count))
    for strip in pattern.strips:
        if strip.cloth == cloth:
            found.append(_strip_box(strip))
    return tuple(found)


def _how(piece: Piece) -> tuple[str, str]:
    if piece.cut.fold:
        return "fold", piece.edge(piece.cut.fold).label
    return ("pair", "") if piece.cut.mirrored else ("single", "")


def _strip_box(strip: Strip) -> Box:
    return Box(strip.title, strip.length, strip.width, strip.count)


def _piece_box(piece: Piece, count: int) -> Box:
    line = cut_line(piece)
    if piece.grain is None or abs(piece.grain.end.x - piece.grain.start.x) < 1e-6:
        left, bottom, right, top = line.bounds()
        return Box(piece.title, top - bottom, right - left, count, bool(piece.cut.fold), piece.cut.mirrored)
    grain = (piece.grain.end - piece.grain.start).unit()
    points = line.points(0.1)
    along = [point.x * grain.x + point.y * grain.y for point in points]
    across = [point.x * grain.y - point.y * grain.x for point in points]
    return Box(
        piece.title,
        max(along) - min(along),
        max(across) - min(across),
        count,
        bool(piece.cut.fold),
        piece.cut.mirrored,
    )
