"""Fit changes by hand: for every change that can be made to this pattern, its picture and how it is done on paper.

The pictures are of the lesson's own pieces, or of the block's where a change is made before the pieces take their
shape. Lengths stand in none of them: how much is altered is told by the body.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from kit.booklet.forms import Form
from kit.booklet.model import FitNote
from kit.booklet.pictures import Inks, picture
from kit.errors import KitError
from kit.lesson.fit_change import FIT_CHANGES, Altered, FitChange, altered, has_sleeve
from kit.lesson.pattern import Pattern
from kit.picture.fit_change import fit_drawing
from kit.piece.piece import Piece

_SHOWN = (1.0, 0.8, 0.6, 0.4)
"""Shares of the amount that pictures of a change are drawn with; less could not be told from a redrawn line."""


def fit_notes(pattern: Pattern, form: Form, inks: Inks) -> tuple[FitNote, ...]:
    """A note for each change that this pattern, or the block it begins with, can be altered by."""
    found: list[FitNote] = []
    for name, change in FIT_CHANGES.items():
        made = shown_on(pattern, change)
        if made is None:
            continue
        before, result = made
        drawn = picture(fit_drawing(before, result, change.title), f"fit-{name}", form.fit, inks)
        how = change.told(sleeve=has_sleeve(before.values()))
        found.append(FitNote(f"fit-{name}", change.title, how, drawn))
    return tuple(found)


def shown_on(pattern: Pattern, change: FitChange) -> tuple[Mapping[str, Piece], Altered] | None:
    """The change made to the pieces of the pattern, less of it where they have no room for as much as is usually shown,
    else to those of the block; None where neither can be."""
    for pieces in (pattern.pieces, pattern.start):
        before = _called(pieces)
        for share in _SHOWN:
            try:
                return before, altered(before, change, change.shown * share, pattern.body)
            except KitError:
                continue
    return None


def _called(pieces: Sequence[Piece]) -> dict[str, Piece]:
    return {piece.name: piece for piece in pieces}
