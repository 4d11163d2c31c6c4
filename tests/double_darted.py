"""A back of 220 mm by 500 with darts of two points in it."""

from __future__ import annotations

from kit.geometry import Path, Point
from kit.piece.double_dart import around
from kit.piece.piece import CutPlan, Edge, Mark, Piece

WIDE, HIGH = 220.0, 500.0


def back(*marks: Mark, **more: object) -> Piece:
    corners = [Point(0, 0), Point(WIDE, 0), Point(WIDE, HIGH), Point(0, HIGH)]
    edges = tuple(
        Edge(name, Path.line(a, b), 10.0)
        for name, a, b in zip(("hem", "side", "neck", "centre"), corners, corners[1:] + corners[:1], strict=True)
    )
    return Piece("back", "Back", edges, cut=CutPlan(count=2, mirrored=True), marks=marks, **more)  # type: ignore[arg-type]


def dart(name="waist_dart", x=100.0, intake=30.0, top=430.0, widest=280.0, bottom=130.0, aside=0.0) -> Mark:
    half = intake / 2
    path = around(Point(x, top), Point(x + aside - half, widest), Point(x, bottom), Point(x + aside + half, widest))
    return Mark(name, "dart", path=path)
