"""What a measure in a step's picture is called."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING

from kit.body.measures import MEASUREMENTS
from kit.body.measures import said as measure_said
from kit.language import SOURCE, called, language, say
from kit.wording.names import edge_said

if TYPE_CHECKING:
    from kit.lesson.pattern import StepMeasure
    from kit.piece.piece import Piece


def place_said(spot: StepMeasure, pieces: Sequence[Piece]) -> str:
    """A measure as people call it: the lesson's words for it, a body measurement's name, or the allowance (or
    the extra cloth) of an edge by what that edge is called on `pieces` (in the source by its name in code)."""
    if spot.edge:
        edges = [edge for piece in pieces if piece.name == spot.piece for edge in piece.edges if edge.name == spot.edge]
        named = language() == SOURCE or not edges
        key = "picture.extra_of" if spot.extra else "picture.allowance_of"
        return say(key, edge=called(spot.edge) if named else edge_said(edges[0]))
    bare = spot.name.replace("_", " ")
    if spot.label in ("", bare):
        return measure_said(spot.name) if spot.name in MEASUREMENTS else spot.label or called(spot.name)
    return spot.label
