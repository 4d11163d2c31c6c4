"""A lesson's own words: what may stand in a picture or on a page without coming from the catalogue."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from contextlib import contextmanager
from typing import Any

import pytest
from fluent.runtime import FluentBundle

from kit.body import MEASUREMENTS
from kit.language import keys, say
from kit.lesson.lesson import Lesson
from kit.lesson.pattern import Pattern
from kit.piece.piece import Piece
from tests.example import lesson_notebooks, notebook_names
from tests.pseudo import escaped

UNITS = ("mm", "cm", "m", "in", "yd")
CHOICES = {
    "left",
    "right",
    "both",
    "wrong",
    "single",
    "double",
    "fold",
    "mirrored",
    "plain",
    "interfacing",
    "main",
    "i",
    "other",
}
"""What messages choose between; it is not said."""


def example_lessons() -> dict[str, Lesson]:
    """The lesson of every example notebook, by the notebook's name; the last one where it makes several."""
    found = {}
    for notebook in lesson_notebooks():
        (*_, found[notebook.stem]) = [v for v in notebook_names(notebook).values() if isinstance(v, Lesson)]
    return found


def own_words(*patterns: Pattern) -> set[str]:
    """Titles, names and the words given to edges, marks, darts and pleats of the patterns, units and measurements, as
    they are written: names with blanks, titles also with a small first letter."""
    found = {*UNITS, *(row.said for row in MEASUREMENTS.values())}
    for pattern in patterns:
        found |= {pattern.lesson.title, pattern.body.name, *(strip.title for strip in pattern.strips)}
        found |= {record.title for record in (*pattern.steps, *pattern.sewing)}
        found |= {title for title, _ in pattern.finished}
        for piece in pattern.pieces:
            found |= set(of_piece(piece))
        for step in pattern.steps:
            for piece in step.pieces:
                found |= set(of_piece(piece))
            found |= {strip.title for strip in step.strips} | {spot.label or spot.name for spot in step.spots}
            found |= {name for _, name, _ in (*step.new, *step.removed, *step.new_points)}
            found |= {mark.label for _, mark in step.new_marks}
    plain = {word.replace("_", " ") for word in found}
    return plain | {word[:1].lower() + word[1:] for word in plain}


def of_piece(piece: Piece) -> Iterable[str]:
    yield from (piece.name, piece.title)
    for part in (*piece.edges, *piece.marks, *piece.darts, *piece.pleats):
        yield from (part.name, part.label)
    yield from (say(f"edge.{edge.name}") for edge in piece.edges if not edge.said and edge.name in keys("edge"))
    for name, _ in (*piece.guides, *piece.points):
        yield name


@contextmanager
def filled() -> Iterator[set[str]]:
    """The texts that fill the places of messages inside the block, but for what messages choose between: a word in one
    of them stands inside a message and would not be seen from outside."""
    found: set[str] = set()
    plain = FluentBundle.format_pattern

    def watched(bundle: FluentBundle, pattern: Any, given: dict[str, Any] | None = None) -> Any:
        found.update(value for value in (given or {}).values() if isinstance(value, str) and value not in CHOICES)
        return plain(bundle, pattern, given)

    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(FluentBundle, "format_pattern", watched)
        yield found


def strangers(values: Iterable[str], allowed: set[str]) -> list[str]:
    """Of texts that filled places those with a word from elsewhere: neither said, allowed, nor one of the small words
    and edges' names that the pseudo-language leaves plain."""
    plain = allowed | {"and"} | {say(f"edge.{name}") for name in keys("edge")}
    return [value for value in values if escaped(value, plain)]
