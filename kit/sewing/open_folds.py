"""Darts, pleats and tucks that open on an edge: they are folded before the edge is closed."""

from __future__ import annotations

from typing import NamedTuple

from kit.diagnostic import Diagnostic, message, named_edge
from kit.piece.piece import Piece, Side
from kit.piece.pleat import taken_up
from kit.sewing.cut import Cut
from kit.sewing.outcome import Fact, Outcome
from kit.sewing.state import State
from kit.sewing.trouble import trouble

_SLACK = 0.5  # mm of a mouth that a closed stretch may touch


class OpenFold(NamedTuple):
    """Where a dart, pleat or tuck opens on an edge, mm along it as drafted."""

    kind: str
    name: str
    label: str
    edge: str
    start: float
    end: float

    def fact(self, piece: str, side: Side) -> Fact:
        """What holds once it is sewn or folded."""
        return ("dart" if self.kind == "dart" else "pleated", piece, side, self.name)


def open_folds(piece: Piece) -> tuple[OpenFold, ...]:
    """Every dart, pleat and tuck of a piece on every edge where it is folded."""
    found = [OpenFold("dart", d.name, d.label, d.edge, d.start, d.end) for d in piece.darts]
    for edge in piece.edges:
        found += [OpenFold(p.kind, p.name, p.label, edge.name, a, b) for a, b, p in taken_up(piece, edge.name)]
    return tuple(found)


def left_open(state: State, outcome: Outcome, pattern: Cut) -> tuple[Diagnostic, ...]:
    """Darts, pleats and tucks still open in a stretch of edge that an operation closes."""
    found: dict[Fact, Diagnostic] = {}
    made = set(outcome.effect.facts) | state.facts
    for closing in outcome.closes:
        span = closing.span
        piece = pattern.piece(span.piece)
        if not piece.darts and not piece.pleats:
            continue
        for mouth in open_folds(piece):
            fact = mouth.fact(piece.name, span.side)
            inside = min(span.end, mouth.end) - max(span.start, mouth.start)
            if mouth.edge == span.edge and inside > _SLACK and fact not in made:
                found[fact] = trouble(
                    "dart_open" if mouth.kind == "dart" else "pleat_open",
                    message("sewing_trouble.fold_open", edge=named_edge(piece.edge(span.edge)), fold=mouth.label),
                    piece.title,
                    message("sewing_trouble.fold_open_do", call=f"make.{mouth.kind}({piece.name})"),
                    amount=inside,
                    piece=piece.name,
                    edge=span.edge,
                )
    return tuple(_once(found))


def _once(found: dict[Fact, Diagnostic]) -> list[Diagnostic]:
    """Both halves alike are told once."""
    return list(dict.fromkeys(found.values()))


def never_folded(state: State, pattern: Cut) -> tuple[tuple[Piece, OpenFold], ...]:
    """Darts, pleats and tucks not folded at the end, in stretches that no operation closes: the others were told of
    when their edge was closed."""
    found = []
    for piece in pattern.pieces:
        for mouth in open_folds(piece):
            missing = [side for side in piece.sides if mouth.fact(piece.name, side) not in state.facts]
            closed = any(
                min(done.span.end, mouth.end) - max(done.span.start, mouth.start) > _SLACK
                for side in missing
                for done in state.on((piece.name, side, mouth.edge))
            )
            if missing and not closed:
                found.append((piece, mouth))
    return tuple(found)
