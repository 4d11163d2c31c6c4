"""Every raw edge closed once, every allowance taken, every piece, strip and interfacing used, the order sound."""

from __future__ import annotations

from collections import defaultdict

from kit.errors import KitError
from kit.lesson.pattern import Pattern
from kit.piece.piece import Piece
from kit.proof.finding import Finding
from kit.sewing.state import Refusal, State, side_words
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
                words = "" if alike else side_words(piece, side)
                whole = edge.path.length
                for span in spans:
                    if span.length > whole - TOLERANCE:
                        what = f"the {words}{edge.label} is never sewn, faced or hemmed ({both(whole)})."
                    else:
                        what = (
                            f"the {words}{edge.label} is left raw from {both(span.start)} to {both(span.end)} along "
                            f"it, {both(span.length)} of {both(whole)}."
                        )
                    found.append(
                        Finding(
                            "raw_edge",
                            "error",
                            what,
                            piece.title,
                            amount=span.length,
                            do="Add the seam, facing or hem that closes it, or finish it with leave=True.",
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
                        f"the pattern gives the {edge.label} {both(edge.allowance, style='allowance')}, but the sewing "
                        f"takes {both(amount, style='allowance')}: {both(abs(off))} too "
                        f"{'much' if off > 0 else 'little'}.",
                        f"{piece.title}, step '{title}'",
                        amount=abs(off),
                        do="Change the allowance on the pattern, or the widths in the sewing step.",
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
                        f"it is cut for the {pattern.piece(piece.source).title.lower()}, but never fused.",
                        piece.title,
                        do="Add the fusing as the first step of that piece, or take it off the pattern.",
                        piece=piece.name,
                    )
                )
            continue
        if piece.name not in state.handled:
            found.append(
                Finding(
                    "piece_unused",
                    "error",
                    "it is cut, but no sewing step uses it.",
                    piece.title,
                    do="Sew it, or take it off the pattern.",
                    piece=piece.name,
                )
            )
        if piece.cut.interfacing and piece.name not in state.fused:
            found.append(
                Finding(
                    "interfacing_unused",
                    "error",
                    "interfacing is cut for it, but never fused.",
                    piece.title,
                    do="Add the fusing as the first step of this piece, or cut no interfacing.",
                    piece=piece.name,
                )
            )
        if piece.cut.interfacing % max(1, piece.cut.count):
            found.append(
                Finding(
                    "interfacing_count",
                    "error",
                    f"{piece.cut.count} are cut of cloth, but {piece.cut.interfacing} of interfacing.",
                    piece.title,
                    do=f"Cut interfacing for each: interfacing={piece.cut.count}.",
                    piece=piece.name,
                )
            )
    for strip in pattern.strips:
        made, count = strip.name in state.made, state.count(strip.name)
        if not made or (count < strip.count and not strip.loose):
            done = f"only {count} of {strip.count} attached" if count else "never attached"
            found.append(
                Finding(
                    "strip_unused",
                    "error",
                    f"it is cut, but {'never made' if not made else done}.",
                    strip.title,
                    do="Make and attach it, or take it off the cutting list.",
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
                f"{' and '.join(dict.fromkeys(names))} is never joined to the rest.",
                pattern.piece(piece).title,
                do="Add the seam that joins it.",
                piece=piece,
            )
        )
    return found


def _part_title(piece: Piece, side: str) -> str:
    return f"the {side} {piece.title.lower()}" if piece.cut.mirrored else f"the {piece.title.lower()}"


WARNINGS = frozenset({"fused_late"})


def order(pattern: Pattern, refusals: tuple[Refusal, ...]) -> list[Finding]:
    """What sewing in this order met, step by step."""
    return [
        Finding(
            trouble.code,
            "warning" if trouble.code in WARNINGS else "error",
            trouble.what,
            f"{trouble.where}, step '{title}'" if trouble.where else f"step '{title}'",
            amount=trouble.amount,
            do=trouble.do,
            step=key,
            piece=trouble.piece,
            edge=trouble.edge,
        )
        for trouble, key, title in refusals
    ]
