"""A skirt panel, plain and with a pleat folded into it, for the tests of pleats."""

from __future__ import annotations

from typing import Any

from kit.geometry import Path, Point, Vector
from kit.lesson import pleating
from kit.piece.piece import CutPlan, Edge, Grain, Piece


def panel(rise: float = 0.0, lean: float = 40.0, fold: bool = True) -> Piece:
    """A skirt panel: its waist rises by `rise` from centre to side."""
    corners = [Point(0, 0), Point(300, 0), Point(300 - lean, 500 + rise), Point(0, 500)]
    names = ("hem", "side", "waist", "centre")
    edges = tuple(
        Edge(n, Path.line(a, b), 10.0) for n, a, b in zip(names, corners, [*corners[1:], corners[0]], strict=True)
    )
    grain = Grain(Point(30, 100), Point(30, 400))
    return Piece("skirt", "Skirt front", edges, grain=grain, cut=CutPlan(1, fold="centre" if fold else ""))


def pleated(piece: Piece, at: float = 100.0, wide: float = 60.0, **more: Any) -> Piece:
    way = Vector(0.0, 1.0)
    return pleating.add_pleat(piece, "pleat", ("waist", at), pleating.across(piece, "waist", at, way), wide, **more)
