"""Pieces that are the same on paper: printed once, with both their names and the cuts of both."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from typing import Any

from kit.piece.allowance import cut_line, has_allowances
from kit.piece.piece import Piece

_NBSP = "\N{NO-BREAK SPACE}"


def printed_once(pieces: Sequence[Piece]) -> tuple[Piece, ...]:
    """`pieces` with those that are drawn and cut alike made one: it has the names of all and is cut as often as they
    are together. Alike are pieces equal in all that is drawn on them; what their edges are called is not.

    >>> from kit import bodice_block, workshop_chart
    >>> front, back = bodice_block(workshop_chart()["W4"])
    >>> other = replace(front, name="other", title="Other", number=7)
    >>> [(p.title, p.cut.count) for p in printed_once((front, back, other))]
    [('Front bodice · 7\\xa0 Other', 2), ('Back bodice', 1)]
    """
    groups: dict[Any, list[Piece]] = {}
    for piece in pieces:
        groups.setdefault(_drawn(piece), []).append(piece)
    return tuple(_together(group) for group in groups.values())


def _together(group: Sequence[Piece]) -> Piece:
    first = group[0]
    if len(group) == 1:
        return first
    names = [first.title, *(f"{each.number}{_NBSP} {each.title}" if each.number else each.title for each in group[1:])]
    cut = replace(first.cut, count=sum(each.cut.count for each in group))
    cut = replace(cut, interfacing=sum(each.cut.interfacing for each in group))
    return replace(first, title=" · ".join(names), cut=cut)


def _drawn(piece: Piece) -> Any:
    """All of a piece that its paper shows, as a value to compare by."""
    at = {edge.name: place for place, edge in enumerate(piece.edges)}
    plan = replace(piece.cut, count=1, interfacing=min(piece.cut.interfacing, 1), fold="")
    return (
        # What the corners are for may differ where their lines do not: the cut line itself is compared.
        tuple((edge.path, edge.allowance, edge.extra, edge.role) for edge in piece.edges),
        plan,
        at.get(piece.cut.fold),
        piece.grain,
        tuple((at.get(each.edge), each.distance, each.kind) for each in piece.notches),
        tuple((each.kind, each.label, each.path, each.point, at.get(each.edge), each.start) for each in piece.marks),
        tuple((each.end, each.said) for each in piece.marks),
        piece.darts,
        piece.pleats,
        _cut(piece),
        piece.lengthen,
        piece.source if piece.cut.cloth == "interfacing" else "",
    )


def _cut(piece: Piece) -> Any:
    if not has_allowances(piece):
        return None
    return tuple((round(point.x, 2), round(point.y, 2)) for point in cut_line(piece).points(0.1))
