"""What is told of a piece that is cut by its measures: its size as cut, how it lies, and what is marked on it."""

from __future__ import annotations

from kit.language import say
from kit.lesson.pattern import Pattern
from kit.piece.allowance import cut_width
from kit.piece.piece import Piece
from kit.piece.rectangle import MeasuredSpot, Rectangle, rectangle
from kit.prose.on_one_half import marks_on_one_half, on_half
from kit.units import System, both
from kit.wording.lists import strung
from kit.wording.names import edge_label


def measured_size(piece: Piece, system: System) -> str:
    """Length along the grain by width, allowances included, and how the rectangle lies on the cloth where that is not
    simply along it. The piece must have a `rectangle`."""
    found = _measures(piece)
    said = [say("booklet.length_by_width", length=both(found.length, system), width=both(found.width, system))]
    if piece.grain is not None and piece.grain.kind == "crosswise":
        said.append(say("booklet.strip_crosswise"))
    if piece.fold:
        said.append(say("paper.measures_fold", edge=edge_label(piece.edge(piece.fold))))
    return strung(said, "parted")


def measured_marks(piece: Piece, pattern: Pattern) -> tuple[str, ...]:
    """What else has to be known, a sentence each: which edges run along the length, which end is the top where the
    cloth has one, the allowances, and every notch and mark from the cut edges."""
    found, system = _measures(piece), pattern.lesson.units

    def named(name: str) -> str:
        return edge_label(piece.edge(name))

    said = [say("paper.measures_along", edges=strung([named(name) for name in found.beside]))]
    if pattern.lesson.nap != "none" or (piece.grain is not None and piece.grain.one_way):
        said.append(say("paper.measures_top", edge=named(found.ends[1])))
    widths = {edge.name: cut_width(piece, edge) for edge in piece.edges if edge.name != piece.fold}
    if len(set(widths.values())) == 1:
        said.append(say("paper.measures_allowance", width=both(next(iter(widths.values())), system, "allowance")))
    else:
        each = [
            say("paper.measures_edge", edge=named(name), width=both(width, system, "allowance"))
            for name, width in widths.items()
        ]
        said.append(say("paper.measures_allowances", edges=strung(each)))
    notches: dict[tuple[str, str, str], list[str]] = {}
    for spot in sorted(found.spots, key=lambda spot: spot.at):
        if spot.kind in ("notch", "double"):
            notches.setdefault((spot.kind, spot.edge, spot.start), []).append(both(spot.at, system))
    for (kind, edge, start), at in notches.items():
        values = {"edge": named(edge), "at": strung(at), "count": len(at), "start": named(start)}
        said.append(say(f"paper.measures_{kind}", values))
    halves = marks_on_one_half(pattern)
    sides = {mark.label: halves.get((piece.name, mark.name)) for mark in piece.marks}
    marks = [spot for spot in found.spots if spot.kind not in ("notch", "double")]
    return (*said, *(_told(spot, on_half(spot.said, piece, sides.get(spot.said)), piece, system) for spot in marks))


def _told(spot: MeasuredSpot, mark: str, piece: Piece, system: System) -> str:
    values = {"mark": mark, "start": edge_label(piece.edge(spot.start)), "at": both(spot.at, system)}
    if spot.edge:
        values["edge"] = edge_label(piece.edge(spot.edge))
    values |= {"to": both(spot.to, system), "up": both(spot.up, system)}
    return say(f"paper.measures_{spot.kind}", values)


def _measures(piece: Piece) -> Rectangle:
    found = rectangle(piece)
    assert found is not None  # kit.lesson.no_paper chooses only pieces that have one
    return found
