"""Plain pieces in sizes, for tests of what several sizes share."""

from __future__ import annotations

from itertools import pairwise

from kit.body.body import Body, Measure
from kit.geometry import Line, Path, Point
from kit.lesson.pattern import LessonInfo, Pattern
from kit.piece.piece import CutPlan, Edge, Grain, Piece, Strip


def box(name: str, wide: float, high: float, fold: bool = False) -> Piece:
    """A rectangle with allowances of 10 mm, its left edge on the fold if asked."""
    corners = [Point(0, 0), Point(wide, 0), Point(wide, high), Point(0, high)]
    edges = tuple(
        Edge(side, Path((Line(a, b),)), 0 if fold and side == "left" else 10)
        for side, (a, b) in zip(("hem", "right", "top", "left"), pairwise([*corners, corners[0]]), strict=True)
    )
    cut = CutPlan(1, fold="left") if fold else CutPlan(2)
    return Piece(name, name.title(), edges, 1, cut, Grain(Point(20, 20), Point(20, high - 20)))


def boxes(size: str, *pieces: Piece) -> Pattern:
    """A pattern of such pieces and a tie for the body called `size`."""
    strips = (Strip("tie", "Tie", 500.0, 60, 1),)
    body = Body(size, (Measure("bust_girth", 900.0),))
    return Pattern(LessonInfo("Dune skirt", "dune-skirt"), body, (), pieces, strips, (), ())
