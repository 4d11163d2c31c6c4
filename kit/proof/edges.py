"""Every raw edge closed once, every allowance taken, every piece, strip and interfacing used, the order sound."""

from __future__ import annotations

from collections import defaultdict

from kit.errors import KitError
from kit.language import say
from kit.lesson.pattern import Pattern
from kit.piece.piece import Piece
from kit.proof.finding import Finding
from kit.sewing.order import Refusal
from kit.sewing.state import State
from kit.sewing.told import edge_told, listed, side_told, title_told
from kit.units import both

TOLERANCE = 0.5  # mm


def raw_edges(pattern: Pattern, state: State) -> list[Finding]:
    """Stretches of edge that no operation closes. Both halves alike are told once."""
    found: list[Finding] = []
    for piece in pattern.pieces:
        if _fused_on(pattern, piece, state):
            continue
        for edge in piece.edges:
            by_side = {side: state.raw(piece, side, edge.name) for side in piece.sides}
            stretches = [tuple((span.start, span.end) for span in spans) for spans in by_side.values()]
            alike = len(set(stretches)) == 1
            for side, spans in by_side.items():
                if alike and side != piece.sides[0]:
                    continue
                name = edge_told(edge) if alike else side_told(piece, side, edge.name)
                whole = edge.path.length
                for span in spans:
                    if span.length > whole - TOLERANCE:
                        what = say("proof.edge_never_sewn", edge=name, length=both(whole))
                    else:
                        what = say(
                            "proof.edge_left_raw",
                            edge=name,
                            start=both(span.start),
                            end=both(span.end),
                            part=both(span.length),
                            length=both(whole),
                        )
                    found.append(
                        Finding(
                            "raw_edge",
                            "error",
                            what,
                            piece.title,
                            amount=span.length,
                            do=say("proof.raw_edge_do"),
                            piece=piece.name,
                            edge=edge.name,
                        )
                    )
    return found


def allowances(pattern: Pattern) -> list[Finding]:
    """Allowances on the pattern that differ from what the operations take."""
    takes: dict[tuple[str, str], list[tuple[float, str, str]]] = defaultdict(list)
    for record in pattern.sewing:
        for operation in record.operations:
            try:
                for key, amount in operation.takes(pattern).items():
                    takes[key].append((amount, record.key, record.title))
            except KitError:
                continue  # told by the sewing order
    found: list[Finding] = []
    for piece in pattern.pieces:
        for edge in piece.edges:
            if edge.allowance is None or edge.name == piece.fold:
                continue
            seen: set[float] = set()
            for amount, key, title in takes.get((piece.name, edge.name), ()):
                off = float(edge.allowance) - amount
                if abs(off) <= TOLERANCE or round(amount, 3) in seen:
                    continue
                seen.add(round(amount, 3))
                found.append(
                    Finding(
                        "allowance",
                        "error",
                        say(
                            "proof.allowance_too_wide" if off > 0 else "proof.allowance_too_narrow",
                            edge=edge_told(edge),
                            given=both(edge.allowance, style="allowance"),
                            taken=both(amount, style="allowance"),
                            amount=both(abs(off)),
                        ),
                        say("proof.where_step", piece=piece.title, step=title),
                        amount=abs(off),
                        do=say("proof.allowance_do"),
                        step=key,
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


def used(pattern: Pattern, state: State) -> list[Finding]:
    """Pieces, strips and interfacing that are cut and never used, or used short; pieces that stay loose."""
    found: list[Finding] = []
    for piece in pattern.pieces:
        if _fused_on(pattern, piece, state):
            if piece.source not in state.fused:
                found.append(
                    Finding(
                        "interfacing_unused",
                        "error",
                        say("proof.interfacing_piece_unused", piece=title_told(pattern.piece(piece.source).title)),
                        piece.title,
                        do=say("proof.interfacing_piece_unused_do"),
                        piece=piece.name,
                    )
                )
            continue
        if piece.name not in state.handled:
            found.append(
                Finding(
                    "piece_unused",
                    "error",
                    say("proof.piece_unused"),
                    piece.title,
                    do=say("proof.piece_unused_do"),
                    piece=piece.name,
                )
            )
        if piece.cut.interfacing and piece.name not in state.fused:
            found.append(
                Finding(
                    "interfacing_unused",
                    "error",
                    say("proof.interfacing_unused"),
                    piece.title,
                    do=say("proof.interfacing_unused_do"),
                    piece=piece.name,
                )
            )
        if piece.cut.interfacing % max(1, piece.cut.count):
            found.append(
                Finding(
                    "interfacing_count",
                    "error",
                    say("proof.interfacing_count", cloth=piece.cut.count, interfacing=piece.cut.interfacing),
                    piece.title,
                    do=say("proof.interfacing_count_do", call=f"interfacing={piece.cut.count}"),
                    piece=piece.name,
                )
            )
    for strip in pattern.strips:
        made, count = strip.name in state.made, state.count(strip.name)
        if not made or (count < strip.count and not strip.loose):
            key = "strip_never_made" if not made else "strip_too_few" if count else "strip_never_attached"
            found.append(
                Finding(
                    "strip_unused",
                    "error",
                    say(f"proof.{key}", count=count, cut=strip.count),
                    strip.title,
                    do=say("proof.strip_unused_do"),
                )
            )
    return found + _loose(pattern, state)


def _loose(pattern: Pattern, state: State) -> list[Finding]:
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
            Finding(
                "loose_piece",
                "error",
                say("proof.loose_piece", count=len(set(names)), pieces=listed(names)),
                pattern.piece(piece).title,
                do=say("proof.loose_piece_do"),
                piece=piece,
            )
        )
    return found


def _part_title(piece: Piece, side: str) -> str:
    title = title_told(piece.title)
    if piece.cut.mirrored:
        return say("phrase.piece_on_side", side=say(f"word.{side}"), piece=title)
    return say("phrase.piece", piece=title)


WARNINGS = frozenset({"fused_late"})


def order(pattern: Pattern, refusals: tuple[Refusal, ...]) -> list[Finding]:
    """What sewing in this order met, step by step."""
    return [
        Finding(
            trouble.code,
            "warning" if trouble.code in WARNINGS else "error",
            trouble.what,
            say("proof.where_step", piece=trouble.where, step=title)
            if trouble.where
            else say("proof.where_step_alone", step=title),
            amount=trouble.amount,
            do=trouble.do,
            step=key,
            piece=trouble.piece,
            edge=trouble.edge,
        )
        for trouble, key, title in refusals
    ]
