"""Where a garment fastens: hooks with their bars or eyes, the halves of snaps, eyelets, marked as what they are."""

from __future__ import annotations

from typing import Literal

from kit.diagnostic import message
from kit.errors import KitError, near
from kit.geometry import Path, Point
from kit.lesson.headings import distance
from kit.lesson.open_piece import OpenPiece
from kit.lesson.pencil import PaperLine, PaperPoint
from kit.lesson.verb import verb
from kit.piece.piece import Mark, Piece
from kit.units import Size, mm

KINDS = ("hook", "bar", "eye", "snap", "socket", "eyelet")
_POINTED = ("hook", "bar", "eye")
LONG = 10 * mm
"""A hook, bar or eye of middle size (common practice, no source)."""


@verb
def fastener(
    bench: OpenPiece,
    name: str,
    point: PaperPoint,
    *,
    kind: Literal["hook", "bar", "eye", "snap", "socket", "eyelet"],
    size: Size = LONG,
    toward: str | PaperLine | None = None,
    said: str = "",
) -> None:
    """A hook, the bar or eye it goes into, a "snap" (its ball half) or its "socket", an eyelet: marked and printed as
    what it is, its middle at the point. Hooks and eyes point `toward` an edge, the nearest where none is named, and a
    bar lies along it, each `size` long. `make.fasteners(...)` and `make.eyelets(...)` sew them on.

    Example::

        front.fastener("hook", front.shoulder.middle.down(3 * cm), kind="hook", toward="shoulder")
    """
    if kind not in KINDS:
        raise KitError(f"'{kind}' is no fastener.", where=bench.where, do=near(str(kind), KINDS))
    if any(name == one.name for one in bench.piece.marks):
        raise KitError(f"'{name}' is already marked.", where=bench.where, do="Give it another name.")
    piece, at = bench.freeze(), point.point
    if kind not in _POINTED:
        _inside(piece, at)
        mark = Mark(name, kind, point=at, said=said)
    else:
        long = float(distance(size, f"{bench.where}, size"))
        if long <= 0:
            raise KitError(message("refusal.zero"), where=bench.where, do=message("refusal.zero_do"))
        edge = bench.path(bench.edge_name(toward)) if toward is not None else _nearest(piece, at)
        foot = edge.nearest(at)
        out = edge.at(foot) - at
        way = edge.tangent_at(foot) if kind == "bar" or out.length < 0.1 else out.unit()
        path = Path.line(at - way * (long / 2), at + way * (long / 2))
        for end in (path.start, path.end)[: 1 if kind == "eye" else 2]:  # the loop of an eye may reach beyond the edge
            _inside(piece, end)
        mark = Mark(name, kind, path=path, said=said)
    bench.change(marks=(*bench.piece.marks, mark))


def _nearest(piece: Piece, at: Point) -> Path:
    return min((edge.path for edge in piece.edges if edge.name != piece.fold), key=lambda path: path.distance_to(at))


def _inside(piece: Piece, point: Point) -> None:
    if not piece.outline.contains(point) and min(edge.path.distance_to(point) for edge in piece.edges) > 0.01:
        raise KitError(message("refusal.outside_piece"), where=piece.title, do=message("refusal.outside_piece_do"))
