"""Every raw edge closed once, every allowance taken, every piece, strip and interfacing used, the order sound."""

from __future__ import annotations

from collections import defaultdict

from kit.diagnostic import Diagnostic, Value, list_of, measured, message, named_edge, titled
from kit.errors import KitError
from kit.lesson.pattern import Pattern
from kit.piece.piece import Piece
from kit.sewing.named import edge_on, stretch_of
from kit.sewing.order import operations
from kit.sewing.state import State

TOLERANCE = 0.5  # mm


def raw_edges(pattern: Pattern, state: State) -> list[Diagnostic]:
    """Stretches of edge that no operation closes. Both halves alike are told once."""
    found: list[Diagnostic] = []
    for piece in pattern.pieces:
        if _fused_on(pattern, piece, state):
            continue
        for edge in piece.edges:
            by_side = {side: state.raw(piece, side, edge.name) for side in piece.sides}
            # The two halves of a mirrored piece mostly fail alike; then the edge is told once, without a side.
            stretches = [tuple((span.start, span.end) for span in spans) for spans in by_side.values()]
            alike = len(set(stretches)) == 1
            for side, spans in by_side.items():
                if alike and side != piece.sides[0]:
                    continue
                name = named_edge(edge) if alike else edge_on(piece, side, edge.name)
                whole = edge.path.length
                for span in spans:
                    if span.length > whole - TOLERANCE:
                        what = message("proof.edge_never_sewn", edge=name, length=measured(whole))
                    else:
                        what = message(
                            "proof.edge_left_raw",
                            edge=name,
                            stretch=stretch_of(pattern, span),
                            part=measured(span.length),
                            length=measured(whole),
                        )
                    found.append(
                        Diagnostic(
                            "raw_edge",
                            "error",
                            what,
                            piece.title,
                            amount=span.length,
                            can=message("proof.raw_edge_do"),
                            piece=piece.name,
                            edge=edge.name,
                        )
                    )
    return found


def allowances(pattern: Pattern) -> list[Diagnostic]:
    """Allowances on the pattern that differ from what the operations take."""
    takes: dict[tuple[str, str], list[tuple[float, str, str]]] = defaultdict(list)
    for record, operation in operations(pattern):
        try:
            for key, amount in operation.takes(pattern).items():
                takes[key].append((amount, record.key, record.title))
        except KitError:
            continue  # told by the sewing order
    found: list[Diagnostic] = []
    for piece in pattern.pieces:
        for edge in piece.edges:
            if edge.allowance is None or edge.name == piece.fold:
                continue
            seen: set[float] = set()
            for amount, step, title in takes.get((piece.name, edge.name), ()):
                off = float(edge.allowance) - amount
                if abs(off) <= TOLERANCE or round(amount, 3) in seen:
                    continue
                seen.add(round(amount, 3))
                found.append(
                    Diagnostic(
                        "allowance",
                        "error",
                        message(
                            "proof.allowance_too_wide" if off > 0 else "proof.allowance_too_narrow",
                            edge=named_edge(edge),
                            given=measured(edge.allowance, "allowance"),
                            taken=measured(amount, "allowance"),
                            amount=measured(abs(off)),
                        ),
                        message("proof.where_step", piece=piece.title, step=title),
                        amount=abs(off),
                        can=message("proof.allowance_do"),
                        step=step,
                        piece=piece.name,
                        edge=edge.name,
                    )
                )
    return found


def _fused_on(pattern: Pattern, piece: Piece, state: State) -> bool:
    """Whether the piece is interfacing drawn from another, fused with it rather than sewn by itself."""
    return (
        piece.cut.cloth == "interfacing"
        and piece.name not in state.handled
        and any(other.name == piece.source for other in pattern.pieces)
    )


def used(pattern: Pattern, state: State) -> list[Diagnostic]:
    """Pieces, strips and interfacing that are cut and never used, or used short; pieces that stay loose."""
    found = [*_unused_pieces(pattern, state), *_unused_strips(pattern, state)]
    return found + _loose(pattern, state)


def _unused_pieces(pattern: Pattern, state: State) -> list[Diagnostic]:
    found: list[Diagnostic] = []
    for piece in pattern.pieces:
        # Interfacing drawn as a piece of its own is used when the piece it was drawn from is fused; no operation ever
        # names it, so that it would always be told as unused.
        if _fused_on(pattern, piece, state):
            if piece.source not in state.fused:
                found.append(
                    Diagnostic(
                        "interfacing_unused",
                        "error",
                        message("proof.interfacing_piece_unused", piece=titled(pattern.piece(piece.source).title)),
                        piece.title,
                        can=message("proof.interfacing_piece_unused_do"),
                        piece=piece.name,
                    )
                )
            continue
        if piece.name not in state.handled:
            found.append(
                Diagnostic(
                    "piece_unused",
                    "error",
                    message("proof.piece_unused"),
                    piece.title,
                    can=message("proof.piece_unused_do"),
                    piece=piece.name,
                )
            )
        if piece.cut.interfacing and piece.name not in state.fused:
            found.append(
                Diagnostic(
                    "interfacing_unused",
                    "error",
                    message("proof.interfacing_unused"),
                    piece.title,
                    can=message("proof.interfacing_unused_do"),
                    piece=piece.name,
                )
            )
        # Two fronts and one interfacing leave one front soft: every cut piece has the same number of them.
        if piece.cut.interfacing % max(1, piece.cut.count):
            found.append(
                Diagnostic(
                    "interfacing_count",
                    "error",
                    message("proof.interfacing_count", cloth=piece.cut.count, interfacing=piece.cut.interfacing),
                    piece.title,
                    can=message("proof.interfacing_count_do", call=f"interfacing={piece.cut.count}"),
                    piece=piece.name,
                )
            )
    return found


def _unused_strips(pattern: Pattern, state: State) -> list[Diagnostic]:
    """Strips told as what went wrong first: never made up, made but never attached, attached fewer times than cut. A
    loose one (a tie, a belt) need not be attached."""
    found: list[Diagnostic] = []
    for strip in pattern.strips:
        made, count = strip.name in state.made, state.count(strip.name)
        if not made or (count < strip.count and not strip.loose):
            key = "strip_never_made" if not made else "strip_too_few" if count else "strip_never_attached"
            found.append(
                Diagnostic(
                    "strip_unused",
                    "error",
                    message(f"proof.{key}", count=count, cut=strip.count),
                    strip.title,
                    can=message("proof.strip_unused_do"),
                )
            )
    return found


def _loose(pattern: Pattern, state: State) -> list[Diagnostic]:
    parts = tuple((piece.name, side) for piece in pattern.pieces for side in piece.sides)
    folds = frozenset(piece.name for piece in pattern.pieces if piece.fold)
    groups = [group for group in state.groups(parts, folds) if any(piece in state.handled for piece, _ in group)]
    if len(groups) < 2:
        return []
    main = max(groups, key=lambda group: (len(group), sorted(group)))
    found = []
    for group in sorted(groups, key=sorted):
        if group is main:
            continue
        names = [_part_title(pattern.piece(piece), side) for piece, side in sorted(group)]
        piece = sorted(group)[0][0]
        found.append(
            Diagnostic(
                "loose_piece",
                "error",
                message("proof.loose_piece", count=len(set(names)), pieces=list_of(names)),
                pattern.piece(piece).title,
                can=message("proof.loose_piece_do"),
                piece=piece,
            )
        )
    return found


def _part_title(piece: Piece, side: str) -> Value:
    return Value((piece.title, side if piece.cut.mirrored else ""), "piece")


def order(refusals: tuple[Diagnostic, ...]) -> list[Diagnostic]:
    """What sewing in this order met, step by step."""
    return list(refusals)
