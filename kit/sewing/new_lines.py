"""How the lines of a new draft run beside those that cloth was cut and sewn on, in words' keys and values."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from typing import Any

from kit.piece.recut import CutStation, EdgeChange, PieceChange
from kit.sewing.cut import Cut
from kit.sewing.refit import Refit
from kit.sewing.run import Run

NEAR = 0.08
"""A place within this share of an edge's length counts as its end."""


@dataclass(frozen=True)
class NewLine:
    """One way a new line runs, told of all edges that it is true of."""

    key: str
    runs: list[Run]
    values: dict[str, tuple[Any, str]]


def runs_there(pattern: Cut, found: Iterable[Run]) -> tuple[Run, ...]:
    """The runs whose edge this draft has: sentences may be asked of either of the two."""
    pieces = {piece.name: piece for piece in pattern.pieces}
    return tuple(run for run in found if run.piece in pieces and pieces[run.piece].has_edge(run.edges[0]))


def new_lines(change: Refit, pattern: Cut) -> list[NewLine]:
    """How each new line runs, those that are alike (a front and its back) told as one."""
    found: dict[tuple[Any, ...], NewLine] = {}
    for piece, edge in change.edges():
        runs = runs_there(pattern, [Run(piece.now.name, (edge.edge,))])
        if not runs:
            continue
        _tell(found, edge, runs, *_told(piece, edge, pattern))
    return list(found.values())


def narrow_places(change: Refit, pattern: Cut) -> list[NewLine]:
    """Where less than the allowance is left outside a new line, told in the same way."""
    found: dict[tuple[Any, ...], NewLine] = {}
    for piece, edge in change.edges():
        at = edge.shortest
        runs = runs_there(pattern, [Run(piece.now.name, (edge.edge,))])
        if at is not None and at.left is not None and at.left >= 0 and runs:
            values = {"left": (at.left, "allowance"), **_spot(piece, edge, at, pattern)}
            _tell(found, edge, runs, "left_far" if "far" in values else "left", values)
    return list(found.values())


def _tell(
    found: dict[tuple[Any, ...], NewLine],
    edge: EdgeChange,
    runs: tuple[Run, ...],
    key: str,
    values: dict[str, tuple[Any, str]],
) -> None:
    like = (key, edge.edge, *(_rounded(name, value, kind) for name, (value, kind) in values.items()))
    found.setdefault(like, NewLine(key, [], values)).runs.extend(runs)


def _rounded(name: str, value: Any, kind: str) -> tuple[str, Any]:
    if kind in ("length", "allowance"):
        return name, round(value)
    return name, tuple(run.edges for run in value) if kind == "edge" else value


def _told(piece: PieceChange, edge: EdgeChange, pattern: Cut) -> tuple[str, dict[str, tuple[Any, str]]]:
    """The key of how a line runs, and what fills it."""

    def end(at: CutStation) -> tuple[Any, str]:
        return _edge(piece, edge.before if at is edge.start else edge.after, pattern), "edge"

    def size(at: CutStation) -> tuple[Any, str]:
        return abs(at.off), "length"

    shape = edge.shape
    if shape == "crossing":
        one, two = sorted((edge.inward, edge.outward), key=lambda at: at.along)
        way = "in_out" if one is edge.inward else "out_in"
        return f"crossing_{way}", {"size": size(one), "other": size(two), "at": end(edge.start)}
    way = "in" if edge.most.off < 0 else "out"
    if shape == "all_along":
        return f"all_along_{way}", {"size": size(edge.most)}
    low, high = sorted((edge.start, edge.end), key=lambda at: abs(at.off))
    if shape == "middle":
        far = edge.most.along
        return f"middle_{way}", {"size": size(edge.most), "far": (far, "length"), "at": end(edge.start)}
    if shape == "unequal":
        return f"unequal_{way}", {"size": size(high), "at": end(high), "other": size(low), "to": end(low)}
    first, last = edge.parts_at
    reach = last if high is edge.start else edge.new.length - first
    if reach < edge.new.length * (1 - NEAR):
        return f"early_{way}", {"size": size(high), "at": end(high), "far": (reach, "length")}
    return f"to_nothing_{way}", {"size": size(high), "at": end(high), "to": end(low)}


def _edge(piece: PieceChange, name: str, pattern: Cut) -> tuple[Run, ...]:
    return runs_there(pattern, [Run(piece.now.name, (name,))])


def _spot(piece: PieceChange, edge: EdgeChange, at: CutStation, pattern: Cut) -> dict[str, tuple[Any, str]]:
    """Where along an edge a place is: at the edge it meets, or so far from one."""
    length = edge.new.length
    near = at.along <= length / 2
    name = edge.before if near else edge.after
    far = at.along if near else length - at.along
    values: dict[str, tuple[Any, str]] = {"at": (_edge(piece, name, pattern), "edge")}
    return values if far < length * NEAR else {**values, "far": (far, "length")}
