"""A stand that bends, cut on the fold and reaching beyond the fronts: which part of it lies along which neck."""

from __future__ import annotations

import math

import pytest

from kit.geometry import Arc, Path, Point
from kit.piece.piece import CutPlan, Edge, Piece
from kit.sewing.in_work import shown_scenes
from kit.units import cm, mm

NECK, BEYOND = 40 * math.pi, 20.0
"""mm: the quarter circle of 80 mm radius that each half of front and back neck is; what laps at the front."""
LOW, HIGH = 600.0, 560.0
"""Radii of the stand's two long edges, mm."""


def panel(name: str, cut: CutPlan) -> Piece:
    neck = Path.of(Arc(Point(0, 300), 80, 0, -math.pi / 2))
    corners = (Point(0, 220), Point(0, 0), Point(300, 0), Point(300, 300), Point(80, 300))
    lines = {
        edge: Path.line(a, b)
        for edge, a, b in zip(("centre", "hem", "side", "upper"), corners[:-1], corners[1:], strict=True)
    }
    edges = [Edge(edge, path, 0.0 if edge == cut.fold else 10.0) for edge, path in lines.items()]
    return Piece(name, name.title(), (*edges, Edge("neck", neck, 10.0)), cut=cut)


def stand(name: str) -> Piece:
    """From the fold at the middle of the back to the end beyond the front."""
    turn = (2 * NECK + BEYOND) / LOW
    lower = Path.of(Arc(Point(0, LOW), LOW, -math.pi / 2, turn))
    upper = Path.of(Arc(Point(0, LOW), HIGH, -math.pi / 2 + turn, -turn))
    end, fold = Path.line(lower.end, upper.start), Path.line(upper.end, lower.start)
    paths = {"lower": lower, "end": end, "top": upper, "centre": fold}
    edges = tuple(Edge(edge, path, 0.0 if edge == "centre" else 10.0) for edge, path in paths.items())
    return Piece(name, name.replace("_", " ").title(), edges, cut=CutPlan(fold="centre"))


def seams(make, front, back, **others):
    make.plain_seam(front.upper, back.upper, allowance=1 * cm)
    make.narrow_hem(front.centre, turn=5 * mm)


def ends(make, stand, inner_stand, **others):
    make.seam_band(stand.end + stand.top, inner_stand.end + inner_stand.top, allowance=1 * cm)


def set_on(make, front, back, stand, **others):
    make.set_band(stand.lower, back.neck + front.neck, allowance=1 * cm, overlap=BEYOND * mm, at=stand.end)


def turn(make, stand, inner_stand, **others):
    make.turn_out(stand, inner_stand, through=inner_stand.lower)


def close(make, stand, inner_stand, **others):
    make.close_band(inner_stand.lower, stand.lower, allowance=1 * cm, overlap=BEYOND * mm, at=inner_stand.end)


@pytest.fixture
def pieces() -> tuple[Piece, ...]:
    pair = CutPlan(count=2, mirrored=True)
    return panel("front", pair), panel("back", CutPlan(fold="centre")), stand("stand"), stand("inner_stand")


def hung(found, band: str) -> list[tuple[str, float, float]]:
    """What lies along that band in the pictures of the last operation: its piece, from where to where."""
    shown = [each for scene in shown_scenes(found.pattern, found.last) for each in scene.layers]
    along = [(each.run.piece, each.on) for each in shown if each.on is not None and each.on.piece == band]
    return [(piece, on.start or 0.0, on.end or 0.0) for piece, on in along if piece in ("front", "back")]


def test_closed_the_neck_lies_along_its_own_part_and_nothing_under_what_laps(sewn, pieces) -> None:
    found = sewn(pieces, seams, ends, turn, set_on, close)
    assert found.codes == []
    assert hung(found, "inner_stand") == [("back", 0.0, pytest.approx(NECK))]


def test_along_the_upper_edge_of_the_inner_half_no_neck_hangs(sewn, pieces) -> None:
    def topstitch(make, inner_stand, **others):
        make.topstitch(inner_stand.top, distance=5 * mm)

    found = sewn(pieces, seams, ends, turn, set_on, close, topstitch)
    assert found.codes == [] and hung(found, "inner_stand") == []
