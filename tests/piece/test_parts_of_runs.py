"""A part of a run of edges as it is sewn: where it begins on each edge. On a square of 100 mm."""

from __future__ import annotations

from dataclasses import replace

import pytest

from kit.geometry import Path, Point
from kit.piece.darts_and_pleats import Dart
from kit.piece.folded import folded
from kit.piece.piece import Edge, Piece


def square(**more: object) -> Piece:
    at = [Point(0, 0), Point(100, 0), Point(100, 100), Point(0, 100)]
    edges = tuple(Edge(n, Path.line(a, b)) for n, a, b in zip("abcd", at, [*at[1:], at[0]], strict=True))
    return replace(Piece("square", "Square", edges), **more)  # type: ignore[arg-type]


def test_a_part_over_a_corner() -> None:
    part = folded(square(), ("a", "b")).part(70.0, 150.0)
    assert [(s.edge, s.low, s.high, s.at) for s in part.stretches] == [("a", 70.0, 100.0, 0.0), ("b", 0.0, 50.0, 30.0)]
    assert part.length == pytest.approx(80.0) and part.path.start == Point(70, 0) and part.path.end == Point(100, 50)
    assert part.sewn("b", 20.0) == pytest.approx(50.0) and part.drafted(50.0) == ("b", pytest.approx(20.0))
    assert part.sewn("a", 10.0) is None and part.edges == ("a", "b")
    one = folded(square(), ("a", "b")).part(110.0, 150.0)
    assert one.edges == ("b",) and [(s.low, s.high, s.at) for s in one.stretches] == [(10.0, 50.0, 0.0)]


def test_a_part_walked_back() -> None:
    part = folded(square(), ("b", "a")).part(70.0, 150.0)
    assert [(s.edge, s.low, s.high, s.at) for s in part.stretches] == [("b", 0.0, 30.0, 0.0), ("a", 50.0, 100.0, 30.0)]
    assert part.sewn("a", 60.0) == pytest.approx(70.0) and part.drafted(70.0) == ("a", pytest.approx(60.0))


@pytest.mark.parametrize(
    ("start", "end", "folds"), [(10.0, 60.0, [30.0]), (40.0, 60.0, [0.0]), (41.0, 60.0, []), (10.0, 39.0, [])]
)
def test_a_part_keeps_the_folds_in_it(start: float, end: float, folds: list[float]) -> None:
    """A dart of 20 mm opens 40 mm along: shut, it lies at 40."""
    piece = square(darts=(Dart("dart", "a", Point(50, 60), 40.0, 60.0),))
    part = folded(piece, ("a",)).part(start, end)
    assert [fold.at for fold in part.folds] == pytest.approx(folds) and part.length == pytest.approx(end - start)
