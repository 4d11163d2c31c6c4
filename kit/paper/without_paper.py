"""What a page says of the pieces that it does not hold because they are cut by their measures."""

from __future__ import annotations

from kit.language import say
from kit.lesson.no_paper import no_paper
from kit.lesson.pattern import Pattern
from kit.paper.sheet import Sheet
from kit.piece.piece import Piece
from kit.prose.by_measures import measured_size
from kit.wording.lists import strung
from kit.wording.names import edge_label

_NBSP = "\N{NO-BREAK SPACE}"


def left_out(pattern: Pattern, laid: Sheet) -> tuple[Piece, ...]:
    """The pieces of `pattern` that are cut by their measures and do not lie on the sheet."""
    there = {placement.piece.name for placement in laid.placements}
    return tuple(piece for piece in no_paper(pattern) if piece.name not in there)


def without_paper(pattern: Pattern, laid: Sheet, *, by_size: bool = False) -> str:
    """The note of a first page on them: their cut sizes, or where those stand when there is one for every size;
    nothing where all pieces have paper."""
    pieces = left_out(pattern, laid)
    if not pieces:
        return ""
    if by_size:
        return say("paper.by_measures_sizes", pieces=strung([_name(piece) for piece in pieces]))
    said = [
        say("paper.by_measures_one", piece=_name(piece), size=measured_size(piece, pattern.lesson.units))
        for piece in pieces
    ]
    return say("paper.by_measures", pieces=strung(said, "parted"))


def also_without(about: str, pattern: Pattern, laid: Sheet) -> str:
    """What a sheet holds, and what it does not."""
    pieces = left_out(pattern, laid)
    if not pieces:
        return about
    return say("paper.by_measures_also", about=about, pieces=strung([_name(piece) for piece in pieces]))


def name_with_fold(piece: Piece) -> str:
    """The piece's title, and that its measures are of the half on the fold where they are."""
    if not piece.fold:
        return piece.title
    return strung([piece.title, say("paper.measures_fold", edge=edge_label(piece.edge(piece.fold)))])


def _name(piece: Piece) -> str:
    return f"{piece.number}{_NBSP}{piece.title}" if piece.number else piece.title
