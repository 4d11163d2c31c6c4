"""The way a dart is pressed, said by a direction of the paper."""

from __future__ import annotations

import pytest

from kit.geometry import Path, Point
from kit.lesson.bench import BenchPiece, opened
from kit.lesson.dart_verbs import pressed_way
from kit.piece.piece import Piece
from kit.units import mm

LOW, HIGH = Point(200.0, 10.0), Point(160.0, 180.0)


@pytest.mark.parametrize(
    ("start", "end", "ways"),
    [
        (LOW, HIGH, {"up": "end", "down": "start", "centre": "end", "side": "start"}),
        (HIGH, LOW, {"up": "start", "down": "end", "centre": "start", "side": "end"}),
        # left of the centre the same words mean the other way across, and up is up
        (Point(-200.0, 10.0), Point(-160.0, 180.0), {"up": "end", "down": "start", "centre": "end", "side": "start"}),
        (Point(-160.0, 180.0), Point(-200.0, 10.0), {"up": "start", "down": "end", "centre": "start", "side": "end"}),
    ],
)
def test_a_direction_is_the_end_of_the_edge_that_lies_there(start: Point, end: Point, ways: dict[str, str]) -> None:
    """Up is where the paper is higher, the centre where it is nearer to the middle line at x = 0."""
    piece = BenchPiece(Piece("front", "Front", ()))
    a, b = (piece.place(p.x * mm, p.y * mm) for p in (start, end))
    piece.draw(side=a.to(b))
    for word, way in (ways | {"start": "start", "end": "end"}).items():
        assert pressed_way(opened(piece), "side", word) == way, word
    assert opened(piece).path("side") == Path.line(start, end)
