"""Corners of the allowances: turned, squared, clipped and rounded, against shapely, by folding and by properties."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st
from shapely import LineString
from shapely.geometry import Point as Spot

from kit.errors import KitError
from kit.geometry import Cubic, Line, Path, Point, Vector, parallel
from kit.piece.allowance import MITRE_LIMIT, cut_line
from kit.piece.corner import Corner, Rule
from kit.piece.offset import CutLine
from kit.piece.piece import CutPlan, Edge, Piece
from kit.units import inch

SQUARE = [(0.0, 0.0), (0.0, 100.0), (100.0, 100.0), (100.0, 0.0)]


def polygon_piece(corners: list[tuple[float, float]], widths: list[float], rules: tuple[Corner, ...] = ()) -> Piece:
    points = [Point(*corner) for corner in corners]
    count = len(points)
    edges = tuple(Edge(f"e{i}", Path.line(points[i], points[(i + 1) % count]), widths[i]) for i in range(count))
    return Piece("piece", "Piece", edges, corners=rules)


def skirt(lean: float, side: float, hem: float, folds: tuple[float, ...], *, curved: bool = False) -> Piece:
    """A half on the fold, 100 wide above, its side leaning out by `lean` mm over 200."""
    top, low = Point(100, 200), Point(100 + lean, 0)
    path = Path((Cubic(top, Point(110 + lean, 130), Point(100 + lean * 1.2, 60), low),)) if curved else None
    edges = (
        Edge("centre", Path.line(Point(0, 0), Point(0, 200)), 0.0),
        Edge("waist", Path.line(Point(0, 200), top), 10.0),
        Edge("side", path or Path.line(top, low), side),
        Edge("hem", Path.line(low, Point(0, 0)), hem),
    )
    corner = Corner("side", "hem", "turned", turned="hem", folds=folds)
    return Piece("skirt", "Skirt", edges, cut=CutPlan(1, fold="centre"), corners=(corner,))


def join(line: CutLine, before: str, after: str) -> list[Point]:
    (curves,) = (found for one, two, found in line.joins if (one, two) == (before, after))
    return [p for curve in curves for p in curve.points(0.02)]


def folded_up(p: Point, folds: tuple[float, ...]) -> Point:
    """A point below the hem line y = 0 folded back at y = -fold, outermost fold first."""
    for fold in reversed([fold for fold in folds if fold < -p.y - 1e-9]):
        p = Point(p.x, -2 * fold - p.y)
    return p


@pytest.mark.parametrize("lean", [-70.0, -20.0, 0.0, 25.0, 80.0])
@pytest.mark.parametrize("folds", [(0.0,), (0.0, 25.0), (15.0,), (0.0, 12.0, 24.0)])
@pytest.mark.parametrize("curved", [False, True])
def test_the_turned_end_lies_on_the_neighbours_cut_line(lean: float, folds: tuple[float, ...], curved: bool) -> None:
    """Folded by hand here, against the neighbour's own parallel by shapely (GEOS) offset_curve."""
    piece = skirt(lean, 12.0, 40.0, folds, curved=curved)
    line = cut_line(piece)
    assert line.polygon(0.01).is_valid
    stitch = [(p.x, p.y) for p in piece.edge("side").path.points(0.001)]
    side = LineString(stitch).offset_curve(12.0)
    (x0, y0), (x1, y1) = side.coords[-2:]
    far = 100 / math.hypot(x1 - x0, y1 - y0)
    side = LineString([*side.coords, (x1 + (x1 - x0) * far, y1 + (y1 - y0) * far)])
    ends = [p for p in join(line, "side", "hem") if -40.0 - 1e-6 <= p.y < -folds[0]]
    beyond = [p for p in ends if p.y > -40.0 + 1e-6] + [max((p for p in ends if p.y < -39.999), key=lambda p: p.x)]
    assert beyond
    assert max(side.distance(Spot(q.x, q.y)) for q in (folded_up(p, folds) for p in beyond)) < 0.05


@pytest.mark.parametrize("first", [0.0, 5.0, 60.0])
@pytest.mark.parametrize("rise", [4.0, 12.0])
def test_the_turned_end_runs_into_the_cut_line_of_a_curved_hem(first: float, rise: float) -> None:
    """A flared side on a hem that is straight for its `first` mm and then rises to the fold: the end is the side's cut
    line mirrored in the hem at the corner, as far as where the hem's own allowance (by shapely) ends."""
    piece = skirt(120.0, 12.0, 40.0, (0.0,))
    corner = piece.edge("hem").path.start
    knee = Point(corner.x - first, 0.0)
    curve = Cubic(knee, Point(knee.x * 0.7, 0.0), Point(knee.x * 0.3, rise), Point(0.0, rise))
    hem = Path.of(Line(corner, knee), curve) if first else Path((curve,))
    piece = piece.with_edges(
        hem=replace(piece.edge("hem"), path=hem),
        centre=replace(piece.edge("centre"), path=Path.line(Point(0.0, rise), Point(0.0, 200.0))),
    )
    line = cut_line(piece)
    assert line.polygon(0.01).is_valid
    start, end = piece.edge("side").path.start, piece.edge("side").path.end
    further = end + (end - start)
    side = LineString([(start.x, start.y), (further.x, further.y)]).offset_curve(12.0)
    stitch = LineString([(p.x, p.y) for p in hem.points(0.001)])
    ends = [p for p in join(line, "side", "hem") if p.y < -0.1]
    assert ends
    # the straight end and its mirror image in y = 0: both on the neighbour's cut line
    assert max(side.distance(Spot(p.x, -p.y)) for p in ends) < 0.05
    low = min(ends, key=lambda p: p.y)
    assert stitch.distance(Spot(low.x, low.y)) == pytest.approx(40.0, abs=0.02)
    assert low.close_to(line.edge("hem").start, 1e-6)


def test_a_hem_turned_twice_runs_in_a_zigzag() -> None:
    """A flared side: in as far as the second fold, out again beyond it."""
    piece = skirt(80.0, 12.0, 40.0, (0.0, 25.0))
    corners = [p for p in join(cut_line(piece), "side", "hem") if p.x > 120]
    at = {round(p.y, 3): p.x for p in corners}
    assert at[-25.0] < at[0.0]
    assert at[-25.0] < max(p.x for p in corners if p.y < -39.9)


def test_a_crease_beyond_the_stitch_line_is_reached_straight() -> None:
    """The side of a French seam that is pressed away from its piece."""
    piece = skirt(80.0, 12.0, 12.0, (5.0,))
    line = cut_line(piece)
    side = line.edge("side")
    on = [p for p in join(line, "side", "hem") if p.y > -5.0 - 1e-6]
    carried = side.extended(50.0)
    assert min(p.y for p in on) == pytest.approx(-5.0)
    assert all(carried.distance_to(p) < 1e-6 for p in on)


def test_rounded_corners_are_shapelys_round_buffer() -> None:
    """Reference: shapely (GEOS) buffer with round joins."""
    corners = [(0.0, 0.0), (-20.0, 90.0), (60.0, 140.0), (150.0, 80.0), (110.0, -10.0)]
    rules = tuple(Corner(f"e{i}", f"e{(i + 1) % 5}", "rounded", size=12.0) for i in range(5))
    piece = polygon_piece(corners, [12.0] * 5, rules)
    wanted = piece.outline.polygon(0.01).buffer(12.0, join_style="round", quad_segs=256)
    made = cut_line(piece).polygon(0.001)
    assert made.exterior.hausdorff_distance(wanted.exterior) < 0.02


@pytest.mark.parametrize("turn", [1, -1])
def test_squared_ends_stand_square_where_the_stitch_line_runs_out(turn: int) -> None:
    corners = [(0.0, 0.0), (-30.0, 100.0), (100.0, 100.0), (140.0, 0.0)][::turn]
    piece = polygon_piece(corners, [10.0, 10.0, 10.0, 30.0], (Corner("e2", "e3", "squared", turned="e3"),))
    line = cut_line(piece)
    base = piece.edge("e3").path
    corner, away = base.start, base.start_tangent
    points = [corner, *join(line, "e2", "e3")]
    heights = [abs((p - corner).cross(away)) for p in points]
    ends = [(p - corner).dot(away) for p, h in zip(points, heights, strict=True) if 1e-6 < h < 30.0 + 1e-6]
    foot = min(ends)
    on_stitch = corner + away * foot
    assert line.edge("e2").extended(60.0).distance_to(on_stitch) < 1e-6  # from the neighbour's cut line
    assert max(heights) == pytest.approx(30.0)
    assert all(abs(e - foot) < 1e-6 for e, h in zip(ends, heights, strict=False) if 1.0 < h < 29.0)
    assert line.polygon().is_valid


def test_clipped_cuts_the_point_off_square_to_its_middle() -> None:
    piece = polygon_piece(SQUARE, [10.0] * 4, (Corner("e0", "e1", "clipped", size=12.0),))
    made = cut_line(piece).polygon()
    tip = 10.0 * math.sqrt(2)
    assert made.area == pytest.approx(120.0**2 - (tip - 12.0) ** 2)
    assert made.exterior.distance(Spot(0, 100)) == pytest.approx(10.0)
    way = Vector(-1, 1).unit()
    on = Point(0, 100) + way * 12.0
    assert made.exterior.distance(Spot(on.x, on.y)) < 1e-6


def test_a_size_that_cuts_nothing_off_and_a_concave_corner_are_mitres() -> None:
    far = polygon_piece(SQUARE, [10.0] * 4, (Corner("e0", "e1", "clipped", size=40.0),))
    assert cut_line(far).polygon().area == pytest.approx(120.0**2)
    shape = [(0.0, 0.0), (0.0, 100.0), (100.0, 100.0), (100.0, 50.0), (50.0, 50.0), (50.0, 0.0)]
    plain = polygon_piece(shape, [10.0] * 6)
    turned = replace(plain, corners=(Corner("e3", "e4", "turned", turned="e4"),))
    assert cut_line(turned).points() == cut_line(plain).points()


def test_a_rule_holds_for_the_allowance_as_declared_and_never_on_the_fold() -> None:
    piece = skirt(40.0, 12.0, 40.0, (0.0,))
    bare = replace(piece, corners=())
    flat = replace(piece, corners=(Corner("hem", "centre", "turned", turned="hem"),))
    assert cut_line(flat, ()).points() == cut_line(bare, ()).points()
    assert cut_line(piece).bounds()[0] == pytest.approx(0.0)  # no allowance at a centre on the fold: common practice


def test_trade_widths() -> None:
    """Common practice, no source: a 1 in hem turned twice takes 2 in, a narrow 1/4 in one takes 1/2 in."""
    for turn, takes in ((1 * inch, 2 * inch), (0.25 * inch, 0.5 * inch)):
        piece = skirt(30.0, 10.0, float(takes), (0.0, float(turn)))
        line = cut_line(piece)
        assert -line.bounds()[1] == pytest.approx(float(takes))
        low = [p for p in line.points(0.01) if p.y < -float(takes) + 1e-6]
        assert all(folded_up(p, (0.0, float(turn))).y == pytest.approx(0.0, abs=1e-6) for p in low)


RULES: tuple[Rule, ...] = ("mitre", "squared", "turned", "clipped", "rounded")


@st.composite
def star(draw: st.DrawFn) -> tuple[Piece, list[float]]:
    """A star-shaped outline with straight and curved edges, random allowances and random corner rules."""
    count = draw(st.integers(3, 8))
    shares = [draw(st.floats(0.6, 1.0)) for _ in range(count)]
    total, angle, points = sum(shares), 0.0, []
    for share in shares:
        radius = draw(st.floats(160.0, 420.0))
        points.append(Point(radius * math.cos(angle), radius * math.sin(angle)))
        angle += share / total * 2 * math.pi
    if draw(st.booleans()):
        points.reverse()
    widths = [draw(st.sampled_from([0.0, 6.0, 10.0, 15.0, 25.0, 40.0])) for _ in range(count)]
    edges = []
    for i in range(count):
        a, b = points[i], points[(i + 1) % count]
        path = Path.line(a, b)
        if draw(st.booleans()):
            bow = (b - a).left() * draw(st.floats(-0.12, 0.12))
            path = Path((Cubic(a, a.lerp(b, 0.33) + bow, a.lerp(b, 0.67) + bow, b),))
        edges.append(Edge(f"e{i}", path, widths[i]))
    rules = []
    for i in range(count):
        before, after = f"e{i}", f"e{(i + 1) % count}"
        rule = draw(st.sampled_from(RULES))
        turned = draw(st.sampled_from([before, after]))
        folds = draw(st.sampled_from([(0.0,), (0.0, 8.0), (5.0,), (0.0, 15.0)]))
        rules.append(Corner(before, after, rule, turned, folds, draw(st.sampled_from([0.0, 5.0, 12.0, 30.0]))))
    return Piece("piece", "Piece", tuple(edges), corners=tuple(rules)), widths


@settings(max_examples=250, deadline=None)
@given(star())
def test_random_outlines_grow_never_cross_and_are_nowhere_too_narrow(case: tuple[Piece, list[float]]) -> None:
    piece, widths = case
    inner = piece.outline.polygon(0.05)
    assume(inner.is_valid and piece.outline.self_crossing() is None)
    try:
        plain = cut_line(replace(piece, corners=()), ()).polygon(0.05)
    except KitError:
        with pytest.raises(KitError):
            cut_line(piece, ())
        return  # refused in words whatever the corners are
    assume(plain.is_valid)  # allowances of far parts of a star may run into each other
    line = cut_line(piece, ())
    made = line.polygon(0.05)
    assert made.is_valid
    assert made.area >= inner.area - 1e-6
    assert made.buffer(0.05).contains(inner)
    count = len(piece.edges)
    for i, edge in enumerate(piece.edges):
        reach = [6 * max(widths[i], widths[i - 1]) + 45.0, 6 * max(widths[i], widths[(i + 1) % count]) + 45.0]
        length = edge.path.length
        if length - sum(reach) < 5.0:
            continue  # all of it is corner
        middle = edge.path.between(reach[0], length - reach[1])
        for p in middle.points(1.0):
            assert made.exterior.distance(Spot(p.x, p.y)) > widths[i] - 0.06


@settings(max_examples=150, deadline=None)
@given(star())
def test_mitred_outlines_are_nowhere_narrower_than_their_width(case: tuple[Piece, list[float]]) -> None:
    """With mitres alone every point of the stitch line keeps the least width around it; at the step between two widths
    in a nearly smooth corner, that width seen at the slant of the corner (at most 25 degrees)."""
    piece, widths = replace(case[0], corners=()), case[1]
    try:
        made = cut_line(piece, ()).polygon(0.05)
    except KitError:
        return
    assume(made.is_valid and piece.outline.self_crossing() is None)
    for edge in piece.edges:
        for p in edge.path.between(0.5, edge.path.length - 0.5).points(1.0):
            nearest = made.exterior.distance(Spot(p.x, p.y))
            assert nearest > min(widths) * math.cos(math.radians(25.0)) - 0.06
    assert piece.outline.polygon().buffer(MITRE_LIMIT * max(widths) * 1.2 + 0.1).contains(made)


@settings(max_examples=150, deadline=None)
@given(st.floats(-70, 120), st.floats(4, 25), st.floats(8, 60), st.floats(0.15, 0.85), st.booleans(), st.booleans())
def test_folded_back_the_end_lands_on_the_cut_line(
    lean: float, side: float, hem: float, second: float, twice: bool, curved: bool
) -> None:
    folds = (0.0, hem * max(second, 0.5)) if twice else (0.0,)
    piece = skirt(lean, side, hem, folds, curved=curved)
    line = cut_line(piece)
    points = [p for p in join(line, "side", "hem") if p.y < -1e-6]
    plain = cut_line(replace(piece, corners=()), ()).points()
    assume(line.points() != plain)  # an angle too sharp to mirror is a mitre
    reference = parallel(piece.edge("side").path, side if piece.outline.area < 0 else -side)
    reference = reference.extended(500.0).extended(500.0, end="start")
    foot = max((p for p in points if p.y < -hem + 1e-6), key=lambda p: p.x)
    for p in [*(p for p in points if p.y > -hem + 1e-6), foot]:
        assert reference.distance_to(folded_up(p, folds)) < 0.05
