"""Which pieces of a pattern are cut by their measures and have no paper: what the author chose, or whoever builds."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from kit.diagnostic import message
from kit.errors import KitError, near
from kit.lesson.pattern import Pattern
from kit.piece.piece import Piece
from kit.piece.rectangle import rectangle

RECTANGLES = "rectangles"


def no_paper(pattern: Pattern) -> tuple[Piece, ...]:
    """The pieces of `pattern` that are cut by their measures, in order of number. `LessonInfo.no_paper` names them, or
    says "rectangles" for all that can be. Raises `KitError` for a name that is no piece's and for a piece whose cut
    outline and marks no measures tell."""
    chosen = pattern.lesson.no_paper
    known = {piece.name: piece for piece in pattern.pieces}
    for name in chosen:
        if name == RECTANGLES:
            continue
        if name not in known:
            raise KitError(
                message("paper.no_such_piece", name=name), where="no_paper", do=near(name, [*known, RECTANGLES])
            )
        if rectangle(known[name]) is None:
            raise KitError(message("paper.needs_paper", piece=known[name].title), do=message("paper.needs_paper_do"))
    every = RECTANGLES in chosen
    found = [p for p in pattern.pieces if p.name in chosen or (every and rectangle(p) is not None)]
    return tuple(sorted(found, key=lambda piece: piece.number))


def on_paper(pattern: Pattern) -> Pattern:
    """The pattern with the pieces alone that have paper."""
    left_out = {piece.name for piece in no_paper(pattern)}
    if not left_out:
        return pattern
    return replace(pattern, pieces=tuple(piece for piece in pattern.pieces if piece.name not in left_out))


def choosing(pattern: Pattern, chosen: Sequence[str] | None) -> Pattern:
    """The pattern with another choice of pieces without paper; None leaves the author's."""
    if chosen is None:
        return pattern
    return replace(pattern, lesson=replace(pattern.lesson, no_paper=tuple(chosen)))


def read_no_paper(text: str | None) -> tuple[str, ...] | None:
    """What is typed: "rectangles", names of pieces such as "collar, cuff", or "none" for paper for every piece. None
    where nothing is.

    >>> read_no_paper("collar, cuff"), read_no_paper("none"), read_no_paper(None)
    (('collar', 'cuff'), (), None)
    """
    if text is None:
        return None
    names = tuple(dict.fromkeys(part.strip() for part in text.split(",") if part.strip()))
    return () if names == ("none",) else names
