"""A side let out takes along what is drawn from it: lines keep their other end, points on it go with it."""

from __future__ import annotations

import pytest

from kit.geometry import Path, Point
from kit.lesson.fit_shoulders import let_out
from kit.piece.piece import CutPlan, Edge, Piece

GUIDES = {
    "from_side": Path.line(Point(200, 150), Point(0, 150)),
    "to_side": Path.line(Point(0, 200), Point(200, 200)),
    "ends_on_it": Path.line(Point(199.5, 100), Point(200, 140)),
    "near": Path.line(Point(0, 250), Point(199, 250)),
    "across_centre": Path.line(Point(-20, 100), Point(20, 100)),
}


def skirt() -> Piece:
    corners = [Point(0, 0), Point(200, 0), Point(200, 300), Point(0, 300)]
    edges = tuple(
        Edge(name, Path.line(a, b), 10.0, role=name)  # type: ignore[arg-type]
        for name, a, b in zip(("hem", "side", "waist", "centre"), corners, [*corners[1:], corners[0]], strict=True)
    )
    points = (("hip_point", Point(200, 120)), ("middle", Point(0, 120)))
    return Piece("front", "Front", edges, cut=CutPlan(fold="centre"), guides=tuple(GUIDES.items()), points=points)


@pytest.mark.parametrize("amount", [15.0, -15.0])
def test_lines_and_points_on_the_side_go_with_it(amount: float) -> None:
    made = let_out(skirt(), amount)
    out = 200.0 + amount
    assert dict(made.guides) == {
        "from_side": Path.line(Point(out, 150), Point(0, 150)),
        "to_side": Path.line(Point(0, 200), Point(out, 200)),
        "ends_on_it": Path.line(Point(199.5, 100), Point(out, 140)),
        "near": GUIDES["near"],
        "across_centre": GUIDES["across_centre"],
    }
    assert dict(made.points) == {"hip_point": Point(out, 120), "middle": Point(0, 120)}
    assert made.edge("side").path == Path.line(Point(out, 0), Point(out, 300))
