"""Allowances: from the stitch line to the cut line, and notches on the cut edge.

The lines themselves are made in `kit.piece.offset`, the shapes of their corners in `kit.piece.turned_end`.
"""

from __future__ import annotations

import math
from collections.abc import Collection
from dataclasses import dataclass

from kit.diagnostic import measured, message, named_edge
from kit.errors import KitError
from kit.forgetting import forgettable
from kit.geometry import Line
from kit.piece.offset import MITRE_LIMIT, CutLine, inside_left, offset_line
from kit.piece.piece import Edge, Notch, Piece

__all__ = [
    "MITRE_LIMIT",
    "NOTCH_LENGTH",
    "CutLine",
    "NotchLine",
    "allowance_of",
    "cut_line",
    "cut_width",
    "has_allowances",
    "hem_edges",
    "notch_lines",
    "offset_line",
]

NOTCH_LENGTH = 5.0
_NOTCH_SPACING = 6.0
_SAME = 0.01


@dataclass(frozen=True)
class NotchLine:
    """A notch on the cut line: `lines` run from the cut line square into the allowance (two for a double one)."""

    notch: Notch
    lines: tuple[Line, ...]


def hem_edges(piece: Piece) -> tuple[str, ...]:
    """Names of the edges whose role is hem, but for one on the fold."""
    return tuple(edge.name for edge in piece.with_role("hem") if edge.name != piece.fold)


def has_allowances(piece: Piece) -> bool:
    """Whether every edge has its allowance, so that `cut_line` can be drawn."""
    return all(edge.allowance is not None or edge.name == piece.fold for edge in piece.edges)


def allowance_of(piece: Piece, edge: Edge) -> float:
    """The edge's allowance in mm, 0 on the fold. `KitError` when it has none yet or it is less than zero.

    >>> from kit import bodice_block, workshop_chart
    >>> front, back = bodice_block(workshop_chart()["W4"])
    >>> front.fold, allowance_of(front, front.edge(front.fold))
    ('centre', 0.0)
    """
    if edge.name == piece.fold:
        return 0.0
    if edge.allowance is None:
        raise KitError(
            message("refusal.allowance_missing", edge=named_edge(edge)),
            where=piece.title,
            do=message("refusal.allowance_missing_do"),
        )
    value = float(edge.allowance)
    if not math.isfinite(value) or value < 0:
        raise KitError(
            message("refusal.allowance_negative", edge=named_edge(edge), value=measured(value, "allowance")),
            where=piece.title,
            do=message("refusal.allowance_negative_do"),
        )
    return value


def cut_width(piece: Piece, edge: Edge) -> float:
    """How far outside the stitch line the edge is cut, in mm: its allowance and its extra cloth to fit with. `KitError`
    as `allowance_of`."""
    return 0.0 if edge.name == piece.fold else allowance_of(piece, edge) + edge.extra


def cut_line(piece: Piece, hems: Collection[str] | None = None) -> CutLine:
    """The cut line of `piece`: every edge's parallel at its allowance and its extra cloth to fit with, none on the
    fold, joined at the corners.

    Corners are joined as `Piece.corners` says. `hems` names the edges whose ends are turned back like the seam
    beside them where no corner says otherwise (None: `hem_edges`).
    Raises `KitError` naming piece, edge and values when an allowance is missing, when an edge bends tighter than
    its allowance, or when the allowances of two neighbours run into each other.

    >>> from kit.geometry import Path, Point
    >>> corners = [Point(0, 0), Point(100, 0), Point(100, 50), Point(0, 50)]
    >>> paths = [Path.line(a, b) for a, b in zip(corners, corners[1:] + corners[:1])]
    >>> patch = Piece("patch", "Patch", tuple(Edge(n, p, 10.0) for n, p in zip("abcd", paths)))
    >>> cut_line(patch).bounds(), cut_line(patch).length
    ((-10.0, -10.0, 110.0, 60.0), 380.0)
    """
    return _cut_line(piece, None if hems is None else frozenset(hems))


@forgettable(256)
def _cut_line(piece: Piece, hems: frozenset[str] | None) -> CutLine:
    """Drawn once for all who look at the same piece: proof, lays, pages and pictures of a build ask some hundred times
    for the lines of a dozen."""
    widths = {edge.name: cut_width(piece, edge) for edge in piece.edges}
    return offset_line(piece, widths, hem_edges(piece) if hems is None else hems)


def notch_lines(piece: Piece, length: float = NOTCH_LENGTH) -> tuple[NotchLine, ...]:
    """Where each notch is cut: lines of `length` mm (at most two thirds of the allowance) from the cut line
    towards the stitch line, square to it. Raises `KitError` for a notch that does not lie on its edge."""
    out = []
    sign = inside_left(piece)
    for notch in piece.notches:
        edge = piece.edge(notch.edge)
        width = cut_width(piece, edge)
        deep = min(length, width * 2 / 3) if width > 0 else length * 0.8
        spots = (
            (notch.distance,)
            if notch.kind == "single"
            else (notch.distance - _NOTCH_SPACING / 2, notch.distance + _NOTCH_SPACING / 2)
        )
        whole = edge.path.length
        if not -_SAME <= notch.distance <= whole + _SAME:
            raise KitError(
                message(
                    "refusal.notch_off", at=measured(notch.distance), edge=named_edge(edge), length=measured(whole)
                ),
                where=piece.title,
                do=message("refusal.notch_off_do"),
            )
        lines = []
        for spot in spots:
            along = min(max(spot, 0.0), whole)
            foot = edge.path.at(along)
            out_of = edge.path.normal_at(along) * -sign
            lines.append(Line(foot + out_of * width, foot + out_of * (width - deep)))
        out.append(NotchLine(notch, tuple(lines)))
    return tuple(out)
