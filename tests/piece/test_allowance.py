"""Cut lines against shapely's buffer, by properties, and by what a pattern maker would draw at each corner."""

from __future__ import annotations

import math
from dataclasses import replace
from itertools import pairwise

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from shapely.geometry import LineString
from shapely.geometry import Point as Spot

from kit.errors import KitError
from kit.geometry import Arc, Cubic, Line, Path, Point
from kit.piece.allowance import MITRE_LIMIT, cut_line, hem_edges, notch_lines
from kit.piece.piece import CutPlan, Edge, Notch, Piece


def polygon_piece(corners: list[tuple[float, float]], widths: list[float | None], **more: object) -> Piece:
    points = [Point(*corner) for corner in corners]
    edges = tuple(
        Edge(f"e{i}", Path.line(points[i], points[(i + 1) % len(points)]), widths[i]) for i in range(len(points))
    )
    return Piece("piece", "Piece", edges, **more)  # type: ignore[arg-type]


SQUARE = [(0.0, 0.0), (0.0, 100.0), (100.0, 100.0), (100.0, 0.0)]


@pytest.mark.parametrize("turn", [1, -1])
def test_equal_allowances_are_shapelys_mitred_buffer(turn: int) -> None:
    """Reference: shapely (GEOS) buffer with mitre joins."""
    corners = [(0.0, 0.0), (-20.0, 90.0), (60.0, 140.0), (150.0, 80.0), (110.0, -10.0)][::turn]
    piece = polygon_piece(corners, [12.0] * 5)
    made = cut_line(piece, hems=()).polygon(0.01)
    wanted = piece.outline.polygon(0.01).buffer(12.0, join_style="mitre", mitre_limit=10.0)
    assert made.exterior.hausdorff_distance(wanted.exterior) < 0.02


def test_curved_outline_is_shapelys_buffer() -> None:
    """Reference: shapely (GEOS) buffer; a half disc with a curved side."""
    top = Path((Cubic(Point(0, 0), Point(20, 90), Point(140, 110), Point(200, 0)),))
    piece = Piece("p", "P", (Edge("top", top, 15.0), Edge("base", Path.line(Point(200, 0), Point(0, 0)), 15.0)))
    line = cut_line(piece, hems=())
    wanted = piece.outline.polygon(0.001).buffer(15.0, join_style="mitre", mitre_limit=10.0, quad_segs=64)
    path = line.edge("top")
    for i in range(101):
        p = path.at(path.length * i / 100)
        assert wanted.exterior.distance(Spot(p.x, p.y)) < 0.02
    made = line.polygon(0.005)  # shapely's corners lean with the first chord of its polyline: a sliver each
    assert made.symmetric_difference(wanted).area < wanted.area * 3e-4


def test_no_allowance_on_the_fold_and_the_cut_line_runs_along_it() -> None:
    piece = polygon_piece(SQUARE, [0.0, 10.0, 15.0, 30.0], cut=CutPlan(1, fold="e0"))
    line = cut_line(piece, hems=())
    assert line.bounds() == pytest.approx((0.0, -30.0, 115.0, 110.0))
    assert line.polygon().area == pytest.approx(115 * 140)


def test_different_allowances_meet_where_both_lines_meet() -> None:
    line = cut_line(polygon_piece(SQUARE, [5.0, 10.0, 15.0, 20.0]), hems=())
    corners = {(round(c.start.x, 3), round(c.start.y, 3)) for c in line.curves}
    assert corners == {(-5.0, -20.0), (-5.0, 110.0), (115.0, 110.0), (115.0, -20.0)}


def test_concave_corner_is_trimmed_not_crossed() -> None:
    corners = [(0, 0), (0, 100), (100, 100), (100, 50), (50, 50), (50, 0)]
    piece = polygon_piece([(float(x), float(y)) for x, y in corners], [10.0] * 6)
    made = cut_line(piece, hems=()).polygon(0.01)
    wanted = piece.outline.polygon().buffer(10.0, join_style="mitre")
    assert made.is_valid
    assert made.symmetric_difference(wanted).area < 0.5


def test_smooth_joint_of_different_allowances_is_a_step() -> None:
    corners = [(0.0, 0.0), (0.0, 50.0), (0.0, 100.0), (100.0, 100.0), (100.0, 0.0)]
    line = cut_line(polygon_piece(corners, [10.0, 25.0, 10.0, 10.0, 10.0]), hems=())
    steps = [c for c in line.curves if abs(c.start.y - 50) < 1e-6 and abs(c.end.y - 50) < 1e-6]
    assert len(steps) == 1
    assert steps[0].length == pytest.approx(15.0)
    assert line.polygon().is_valid


def test_acute_corner_is_cut_square_within_the_limit() -> None:
    piece = polygon_piece([(0.0, 0.0), (300.0, 20.0), (300.0, -20.0)], [10.0] * 3)
    points = cut_line(piece, hems=()).points()
    assert max(p.distance(Point(0, 0)) for p in points if p.x < 0) < 10.0 * MITRE_LIMIT * 1.1
    assert min(p.x for p in points) == pytest.approx(-10.0 * MITRE_LIMIT, abs=0.01)


def test_hem_ends_mirror_the_seam_above_the_hem() -> None:
    """Turned up at the hem line, the end of the allowance lies on the seam's own cut line."""
    points = [Point(0, 0), Point(0, 100), Point(80, 100), Point(100, 0)]
    names = ("centre", "top", "side", "hem")
    widths = (0.0, 10.0, 10.0, 30.0)
    edges = tuple(Edge(n, Path.line(points[i], points[(i + 1) % 4]), widths[i]) for i, n in enumerate(names))
    piece = Piece("skirt", "Skirt", edges, cut=CutPlan(1, fold="centre"))
    assert hem_edges(piece) == ("hem",)
    line = cut_line(piece)
    low = max((p for p in line.points() if p.y < -29.9), key=lambda p: p.x)
    mirrored = Point(low.x, -low.y)
    side = cut_line(piece).edge("side")
    assert side.distance_to(mirrored) < 0.02
    plain = max(p.x for p in cut_line(piece, hems=()).points())
    assert low.x < plain


def test_an_edge_that_bends_tighter_than_its_allowance_is_named() -> None:
    arc = Path((Arc(Point(50, 100), 8.0, math.pi, math.pi),))
    edges = (
        Edge("left", Path.line(Point(0, 0), Point(0, 100)), 10.0),
        Edge("top_left", Path.line(Point(0, 100), Point(42, 100)), 10.0),
        Edge("scoop", arc, 15.0, "scooped neck"),
        Edge("top_right", Path.line(Point(58, 100), Point(100, 100)), 10.0),
        Edge("right", Path.line(Point(100, 100), Point(100, 0)), 10.0),
        Edge("base", Path.line(Point(100, 0), Point(0, 0)), 10.0),
    )
    with pytest.raises(KitError) as caught:
        cut_line(Piece("yoke", "Back yoke", edges))
    assert "Back yoke" in str(caught.value)
    assert "scooped neck" in str(caught.value)
    assert "1.5 cm" in str(caught.value)


@pytest.mark.parametrize(("width", "word"), [(None, "no allowance yet"), (-4.0, "less than nothing")])
def test_missing_and_negative_allowances_are_refused(width: float | None, word: str) -> None:
    with pytest.raises(KitError, match=word):
        cut_line(polygon_piece(SQUARE, [10.0, width, 10.0, 10.0]))


@st.composite
def convex(draw: st.DrawFn) -> tuple[list[tuple[float, float]], list[float]]:
    count = draw(st.integers(3, 9))
    shares = [draw(st.floats(0.5, 1.0)) for _ in range(count)]
    total = sum(shares)
    angle, corners = 0.0, []
    rx, ry = draw(st.floats(150, 400)), draw(st.floats(150, 400))
    for share in shares:
        corners.append((rx * math.cos(angle), ry * math.sin(angle)))
        angle += share / total * 2 * math.pi
    if draw(st.booleans()):
        corners.reverse()
    return corners, [draw(st.floats(0.0, 30.0)) for _ in range(count)]


def test_an_allowance_of_next_to_nothing_keeps_its_corner() -> None:
    """A width of a rounding error squares off no corner: its tip lies on the corner itself."""
    corners = [(299.0, 27.0), (27.0, 193.0), (-293.0, 92.0), (-152.0, -189.0), (109.0, -133.0)]
    piece = polygon_piece(corners, [0.0, 0.0, 0.0, 0.0, 3.5e-15])
    assert cut_line(piece, hems=()).polygon().area == pytest.approx(piece.outline.polygon().area)


@settings(max_examples=150, deadline=None)
@given(convex())
def test_convex_outlines_grow_and_never_cross(case: tuple[list[tuple[float, float]], list[float]]) -> None:
    corners, widths = case
    piece = polygon_piece(corners, list(widths))
    line = cut_line(piece, hems=())
    made, inner = line.polygon(), piece.outline.polygon()
    assert made.is_valid
    assert made.area >= inner.area - 1e-6
    assert made.buffer(0.02).contains(inner)
    widest = max(widths)
    assert inner.buffer(MITRE_LIMIT * widest * 1.2 + 0.1).contains(made)
    ends = [*line.curves, line.curves[0]]
    assert all(a.end.distance(b.start) < 1e-6 for a, b in pairwise(ends))


def test_notches_start_on_the_cut_line_and_point_inwards() -> None:
    piece = polygon_piece(SQUARE, [10.0, 12.0, 15.0, 30.0])
    piece = replace(piece, notches=(Notch("e2", 40.0), Notch("e0", 60.0, "double")))
    cut = cut_line(piece, hems=()).polygon().exterior
    for notch in notch_lines(piece):
        assert len(notch.lines) == (1 if notch.notch.kind == "single" else 2)
        for line in notch.lines:
            assert cut.distance(Spot(line.start.x, line.start.y)) < 0.01
            assert 3.0 < line.length <= 5.0
            assert not piece.outline.contains(line.end)
    assert notch_lines(piece)[0].lines[0].start.close_to(Point(115, 60))
    # the two of a double notch lie 6 mm apart, 3 to each side of 60 mm along the left edge, on its cut line 10 mm out
    double = [line.start for line in notch_lines(piece)[1].lines]
    assert [(p.x, p.y) for p in double] == [pytest.approx((-10.0, 57.0)), pytest.approx((-10.0, 63.0))]


@pytest.mark.parametrize("turn", [0.0, 0.02, -0.02])
def test_allowances_of_two_edges_that_run_on_smoothly_meet_in_one_point(turn: float) -> None:
    """A straight edge drawn on in a curve, `turn` radians off at the joint: the two parallels are knit together where
    shapely's offset of the whole line runs, with nothing drawn between them."""
    knee = Point(100.0, 0.0)
    curve = Cubic(knee, Point(70.0, 30.0 * math.tan(turn)), Point(20.0, 10.0), Point(0.0, 40.0))
    corners = [Point(0.0, 40.0), Point(0.0, 200.0), Point(200.0, 200.0), Point(200.0, 0.0), knee]
    paths = [Path.line(a, b) for a, b in pairwise(corners)] + [Path((curve,))]
    names = ("centre", "waist", "side", "hem", "hem_on")
    edges = tuple(Edge(n, p, 15.0 if "hem" in n else 10.0) for n, p in zip(names, paths, strict=True))
    line = cut_line(Piece("panel", "Panel", edges), hems=())
    before, after = line.edge("hem"), line.edge("hem_on")
    assert before.end.close_to(after.start, 1e-9)
    assert not [found for one, two, found in line.joins if (one, two) == ("hem", "hem_on") and found]
    stitch = LineString([(p.x, p.y) for path in paths[3:] for p in path.points(0.001)])
    wide = stitch.offset_curve(15.0)
    if wide.distance(Spot(150.0, -15.0)) > 0.01:
        wide = stitch.offset_curve(-15.0)
    assert max(wide.distance(Spot(p.x, p.y)) for path in (before, after) for p in path.points(0.01)[3:-3]) < 0.05


def test_a_notch_beyond_its_edge_is_refused() -> None:
    piece = replace(polygon_piece(SQUARE, [10.0] * 4), notches=(Notch("e1", 140.0),))
    with pytest.raises(KitError, match="lies 14 cm"):
        notch_lines(piece)


def test_lines_of_the_cut_line_are_merged() -> None:
    line = cut_line(polygon_piece(SQUARE, [10.0] * 4), hems=())
    assert len(line.curves) == 4
    assert all(isinstance(curve, Line) for curve in line.curves)
