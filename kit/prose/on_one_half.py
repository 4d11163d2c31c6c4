"""On which half of a pair a mark is meant, as the sewing has it: of two fronts cut by one piece one gets the
buttonholes and the other the buttons, and what is printed on the piece and told of it says which."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import fields, is_dataclass
from functools import cache
from itertools import groupby
from typing import Any

from kit.language import say
from kit.lesson.pattern import Pattern
from kit.piece.piece import Piece, Side
from kit.prose.say import SERIES, numbered
from kit.sewing.marked import Place
from kit.sewing.order import operations
from kit.wording.lists import strung
from kit.wording.names import edge_label, side_word, title_said

_BELOW = ("kit.piece.", "kit.geometry.", "kit.body.", "kit.units")


def marks_on_one_half(pattern: Pattern) -> Mapping[tuple[str, str], Side]:
    """(piece, mark) -> its half, for every mark that the whole sewing names on one half only. A mark of a piece without
    two halves, or that nothing is sewn at, is not among them."""
    named: dict[tuple[str, str], set[Side | None]] = {}
    for _, operation in operations(pattern):
        for place in _places(operation):
            named.setdefault((place.piece, place.mark.name), set()).add(place.side)
    pairs = {piece.name for piece in pattern.pieces if len(piece.sides) == 2}
    return {
        key: side
        for key, (side, *others) in ((key, tuple(sides)) for key, sides in named.items())
        if side is not None and not others and key[0] in pairs
    }


def _places(value: Any) -> Iterator[Place]:
    """All marks that a value names, also as the end of a run."""
    if isinstance(value, Place):
        yield value
    elif isinstance(value, tuple | list):
        for each in value:
            yield from _places(each)
    else:
        for name in _fields(value.__class__):
            yield from _places(getattr(value, name))


@cache
def _fields(kind: type) -> tuple[str, ...]:
    """What a value of this type may name marks in: its fields, when it has any. What a run carries of pieces and lines,
    most of an operation by far, knows of no sewing."""
    if not is_dataclass(kind) or kind.__module__.startswith(_BELOW):
        return ()
    return tuple(field.name for field in fields(kind))


def on_half(said: str, piece: Piece, side: Side | None) -> str:
    """A mark (in words) with the half it is for: "buttonhole 1: right front only"; as it is for both.

    >>> from kit.piece.piece import CutPlan
    >>> front = Piece("front", "Front", (), cut=CutPlan(2, mirrored=True))
    >>> on_half("buttonhole 1", front, "right"), on_half("button 1", front, None)
    ('buttonhole 1: right front only', 'button 1')
    """
    return said if side is None else say("picture.mark_on_one", mark=said, half=half_said(piece, side))


def half_said(piece: Piece, side: Side) -> str:
    """One half, where it alone is meant: "right front only", or "right half only" of a piece cut on the fold."""
    if piece.cut.fold:
        return say("picture.one_half", side=side)
    return say("picture.one_of_pair", piece=title_said(piece.title), side=side_word(side))


def marks_said_of(piece: Piece, pattern: Pattern) -> list[str]:
    """The names of what is marked inside a piece, many in a row by the first and the last; those of one half together
    behind its name: "right front only: buttonhole 1 to 5"."""
    halves = marks_on_one_half(pattern)
    found = []
    for side, row in groupby(piece.marks, lambda mark: halves.get((piece.name, mark.name))):
        names = list(dict.fromkeys(edge_label(mark) for mark in row))
        if side is None:
            found += names
        else:
            found.append(say("booklet.marks_on_one", half=half_said(piece, side), marks=strung(_in_series(names))))
    return found


def _in_series(names: list[str]) -> list[str]:
    """Of several names numbered one after another the first and the last in one: "buttonhole 1 to 6"."""
    rows: list[list[str]] = []
    for name in names:
        words, number = numbered(name)
        if rows and number > 1 and numbered(rows[-1][-1]) == (words, number - 1):
            rows[-1].append(name)
        else:
            rows.append([name])
    return [each for row in rows for each in (row if len(row) < SERIES else [_from_to(row)])]


def _from_to(row: list[str]) -> str:
    (words, first), (_, last) = numbered(row[0]), numbered(row[-1])
    return say("phrase.numbered_row", name=words, first=str(first), last=str(last))
