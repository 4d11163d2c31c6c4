"""How near the upper end of a zip an edge may be closed before it: the limits from both sides."""

from __future__ import annotations

from types import SimpleNamespace
from typing import Any

import pytest

from kit.body.body import Body
from kit.geometry import Path, Point
from kit.lesson.pattern import LessonInfo, Pattern
from kit.piece.piece import Edge, Piece
from kit.sewing.operations.zips import closed_above
from kit.sewing.run import Run

CORNERS = (Point(0, 0), Point(0, 300), Point(100, 300), Point(100, 0))
EDGES = tuple(
    Edge(name, Path.line(start, end))
    for name, start, end in zip(("side", "neck", "centre", "hem"), CORNERS, (*CORNERS[1:], CORNERS[0]), strict=True)
)
PIECE = Piece("front", "Front", EDGES)
PATTERN = Pattern(LessonInfo("Trial", "trial"), Body("W4", ()), (), (PIECE,), (), (), ())


def closed(low: float, high: float) -> Any:
    """A garment whose neck alone is closed from `low` to `high` mm along it."""
    there = [SimpleNamespace(span=SimpleNamespace(start=low, end=high))]
    return SimpleNamespace(on=lambda key: there if key[2] == "neck" else [])


@pytest.mark.parametrize(
    ("low", "high", "refused"),
    [
        (0.0, 100.0, True),
        (0.5, 100.0, True),  # half a mm from the end of the zip counts as at it
        (0.51, 100.0, False),
        (20.0, 100.0, False),
    ],
)
def test_the_neck_beside_the_start_of_a_zip(low: float, high: float, refused: bool) -> None:
    """The side runs up to the neck, which begins there; the zip lies along the upper part of the side."""
    zip_on = SimpleNamespace(sides=(Run("front", ("side",), None, 150.0, 300.0),))
    assert bool(list(closed_above(zip_on, closed(low, high), PATTERN))) is refused  # type: ignore[arg-type]


@pytest.mark.parametrize(
    ("low", "high", "refused"), [(0.0, 100.0, True), (0.0, 99.5, True), (0.0, 99.49, False), (0.0, 50.0, False)]
)
def test_the_neck_beside_the_end_of_a_zip(low: float, high: float, refused: bool) -> None:
    """The neck ends where the centre begins, so the zip's upper end lies at its far end."""
    zip_on = SimpleNamespace(sides=(Run("front", ("centre",), None, 0.0, 150.0),))
    assert bool(list(closed_above(zip_on, closed(low, high), PATTERN))) is refused  # type: ignore[arg-type]


def test_a_zip_that_parts_and_one_in_the_middle_have_no_upper_end() -> None:
    for start, end in ((0.0, 300.0), (50.0, 250.0)):
        zip_on = SimpleNamespace(sides=(Run("front", ("side",), None, start, end),))
        assert not list(closed_above(zip_on, closed(0.0, 100.0), PATTERN))  # type: ignore[arg-type]
