"""Cut lines of straight pieces, corner by corner, by coordinates worked by hand.

A parallel of a straight edge lies its width away; where two of them meet, run past each other or step is elementary
geometry (two equations of lines), so that each corner is known to the hundredth. What is done at which corner: common
practice, no source.
"""

from __future__ import annotations

import math
from dataclasses import replace

import pytest

from kit.errors import KitError
from kit.geometry import Arc, Path, Point
from kit.piece.corner import Corner, Rule
from kit.piece.offset import MITRE_LIMIT, CutLine, inside_left, offset_line
from kit.piece.piece import Edge, Piece
from kit.piece.turned_end import FARTHEST, FLATTEST

At = tuple[float, float]


def piece_of(corners: list[At], rules: tuple[Corner, ...] = ()) -> Piece:
    """Straight edges e0, e1 ... , each from its corner to the next."""
    points = [Point(*corner) for corner in corners]
    ends = [*points[1:], points[0]]
    edges = tuple(Edge(f"e{i}", Path.line(a, b)) for i, (a, b) in enumerate(zip(points, ends, strict=True)))
    return Piece("piece", "Piece", edges, corners=rules)


def cut(corners: list[At], widths: list[float], rules: tuple[Corner, ...] = ()) -> CutLine:
    piece = piece_of(corners, rules)
    return offset_line(piece, {f"e{i}": width for i, width in enumerate(widths)})


def corners_of(line: CutLine) -> list[At]:
    return [(curve.start.x, curve.start.y) for curve in line.curves]


def about(expected: list[At]) -> list[object]:
    return [pytest.approx(at, abs=1e-6) for at in expected]


def around(line: CutLine, before: str, after: str) -> list[At]:
    """The corner points between two edges' own parts, with the ends of those parts."""
    (joined,) = (found for one, two, found in line.joins if (one, two) == (before, after))
    ends = [line.edge(before).end, *(curve.end for curve in joined)]
    return [(p.x, p.y) for p in ends]


# left round (the piece to the left of its edges): hem, right side, top, left side
OBLONG = [(0.0, 0.0), (100.0, 0.0), (100.0, 60.0), (0.0, 60.0)]
WIDTHS = [5.0, 10.0, 20.0, 40.0]


def test_four_widths_around_an_oblong() -> None:
    line = cut(OBLONG, WIDTHS)
    # the parallel of each edge itself ends where its edge does; the tips close the gaps
    assert [(p.start, p.end) for _, p in line.edges] == [
        (Point(0, -5), Point(100, -5)),
        (Point(110, 0), Point(110, 60)),
        (Point(100, 80), Point(0, 80)),
        (Point(-40, 60), Point(-40, 0)),
    ]
    assert around(line, "e0", "e1") == about([(100, -5), (110, -5), (110, 0)])
    assert around(line, "e3", "e0") == about([(-40, 0), (-40, -5), (0, -5)])
    # in the whole line what runs on is one line
    assert sorted(corners_of(line)) == about(sorted([(-40, -5), (110, -5), (110, 80), (-40, 80)]))
    assert line.bounds() == pytest.approx((-40, -5, 110, 80))
    assert line.length == pytest.approx(2 * (150 + 85))
    assert line.polygon().area == pytest.approx(150 * 85)
    assert len(line.points()) == 4  # the first is not repeated


def test_walked_the_other_way_round_the_cut_line_is_the_same() -> None:
    other = cut(OBLONG[::-1], [20.0, 10.0, 5.0, 40.0])  # top, right side, hem, left side
    assert sorted(corners_of(other)) == about(sorted([(-40, -5), (110, -5), (110, 80), (-40, 80)]))
    assert inside_left(piece_of(OBLONG)) == 1.0
    assert inside_left(piece_of(OBLONG[::-1])) == -1.0


def test_a_negative_width_lies_inside() -> None:
    line = cut(OBLONG, [-5.0, -10.0, -5.0, 0.0])
    assert sorted(corners_of(line)) == about(sorted([(0, 5), (90, 5), (90, 55), (0, 55)]))


def test_a_part_is_asked_for_by_the_name_of_its_edge() -> None:
    line = cut(OBLONG, WIDTHS)
    assert line.edge("e2").length == pytest.approx(100)
    with pytest.raises(KitError, match="no edge 'e9' on the cut line"):
        line.edge("e9")


def arrow(half_angle: float, width: float) -> tuple[CutLine, float]:
    """A point at (0, 0), the piece to its right, its sides `half_angle` to either side; (cut line, how far the tip of
    the mitre lies from it)."""
    far = 200.0
    up = far * math.tan(half_angle)
    line = cut([(0.0, 0.0), (far, -up), (far, up)], [width, 0.0, width])
    return line, width / math.sin(half_angle)


def test_a_mitre_runs_three_widths_out_and_no_farther() -> None:
    assert MITRE_LIMIT == 3.0
    line, reach = arrow(math.asin(1 / 2.99), 10.0)
    assert around(line, "e2", "e0")[1] == pytest.approx((-reach, 0.0)) and reach == pytest.approx(29.9)

    half = math.asin(1 / 3.01)
    line, _ = arrow(half, 10.0)
    _, above, below, _ = around(line, "e2", "e0")
    # square across the middle, 30 mm out: the parallel lies 10 mm off the side, which bends away by the half angle
    high = (10.0 - 30.0 * math.sin(half)) / math.cos(half)
    assert above == pytest.approx((-30.0, high)) and below == pytest.approx((-30.0, -high))
    assert high == pytest.approx(0.0351, abs=1e-3)


def test_a_far_tip_of_two_widths_is_cut_square_by_the_wider() -> None:
    half = math.radians(12.0)
    far = 200.0
    up = far * math.tan(half)
    line = cut([(0.0, 0.0), (far, -up), (far, up)], [5.0, 0.0, 10.0])
    _, above, below, _ = around(line, "e2", "e0")
    for at, side, width in ((above, 1.0, 10.0), (below, -1.0, 5.0)):
        # distance from the side's own line, carried on
        assert abs(at[0] * math.sin(half) - side * at[1] * math.cos(half)) == pytest.approx(width)
    # the cut is 30 mm from the corner, square to the way to where the tip would be
    tip = _meeting(half, 10.0, 5.0)
    size = math.hypot(*tip)
    for at in (above, below):
        assert (at[0] * tip[0] + at[1] * tip[1]) / size == pytest.approx(30.0)


def _meeting(half: float, upper: float, lower: float) -> At:
    """Where lines `upper` above and `lower` below two sides that leave (0, 0) at +half and -half meet."""
    # -x sin + y cos = upper;  -x sin - y cos = lower
    return -(upper + lower) / (2 * math.sin(half)), (upper - lower) / (2 * math.cos(half))


# an L: the corner at (60, 40) is concave
ELL = [(0.0, 0.0), (100.0, 0.0), (100.0, 40.0), (60.0, 40.0), (60.0, 100.0), (0.0, 100.0)]


@pytest.mark.parametrize(("lower", "right"), [(10.0, 10.0), (5.0, 20.0), (20.0, 5.0), (0.0, 10.0)])
def test_in_a_concave_corner_both_are_cut_off_where_they_cross(lower: float, right: float) -> None:
    line = cut(ELL, [10.0, 10.0, lower, right, 10.0, 10.0])
    assert around(line, "e2", "e3") == about([(60 + right, 40 + lower)])
    assert line.edge("e2").start == Point(100, 40 + lower)
    assert line.edge("e3").end == Point(60 + right, 100)


def test_a_concave_corner_whose_cut_lines_do_not_cross_is_refused_with_both_widths() -> None:
    slot = [(0.0, 0.0), (100.0, 0.0), (100.0, 40.0), (80.0, 40.0), (60.0, 70.0), (60.0, 100.0), (0.0, 100.0)]
    with pytest.raises(KitError) as told:
        cut(slot, [10.0, 10.0, 10.0, 60.0, 10.0, 10.0, 10.0])
    words = str(told.value)
    assert words.startswith("Piece: ") and "e3" in words and "6 cm" in words
    assert "e4" in words or "e2" in words


def level(turn: float, one: float, two: float) -> CutLine:
    """Two edges below the piece that follow one another at (100, 0) with a small turn (degrees), convex above zero."""
    up = 100.0 * math.tan(math.radians(turn))
    return cut([(0.0, 0.0), (100.0, 0.0), (200.0, up), (200.0, 100.0), (0.0, 100.0)], [one, two, 10.0, 10.0, 10.0])


def test_two_widths_on_a_line_that_runs_on_make_a_step() -> None:
    assert around(level(0.0, 10.0, 20.0), "e0", "e1") == about([(100, -10), (100, -20)])
    assert around(level(0.0, 10.0, 10.005), "e0", "e1")[0] == pytest.approx((100.0, -10.0), abs=0.01)  # the same


@pytest.mark.parametrize("turn", [2.5, -2.5])
def test_equal_widths_on_a_line_that_hardly_turns_meet_in_one_point(turn: float) -> None:
    line = level(turn, 10.0, 10.0)
    on = 10.0 * math.tan(math.radians(turn) / 2)  # the mitre of a small turn
    assert around(line, "e0", "e1") == about([(100 + on, -10)])


def test_up_to_three_degrees_it_runs_on_beyond_it_is_a_corner() -> None:
    assert len(around(level(2.9, 10.0, 20.0), "e0", "e1")) == 2  # a step
    sharp = around(level(3.1, 10.0, 20.0), "e0", "e1")
    on = (20.0 - 10.0 * math.cos(math.radians(3.1))) / math.sin(math.radians(3.1))
    assert on > 100  # the lines would meet far beyond, more than three widths: a step as well
    assert len(sharp) == 2


def test_very_different_widths_in_a_hollow_step_where_it_is_nearly_smooth_and_are_refused_where_it_is_not() -> None:
    """The cut lines 10 and 60 mm out would cross more than 115 mm back along an edge of 100 mm: never."""
    shallow = math.radians(24.0)
    assert (60.0 - 10.0 * math.cos(shallow)) / math.sin(shallow) > 115
    out = (100 - 60 * math.sin(shallow), -60 * math.cos(shallow))
    assert around(level(-24.0, 10.0, 60.0), "e0", "e1") == about([(100, -10), out])
    with pytest.raises(KitError, match=r"e0 .1 cm.*e1 .6 cm.*run into each other"):
        level(-26.0, 10.0, 60.0)


# ---- corners that are asked for -------------------------------------------------------------------------------


def right_angle(rule: Rule, one: float = 10.0, two: float = 10.0, size: float = 0.0, **more: object) -> CutLine:
    """The corner of the oblong at (100, 0), between hem (e0) and right side (e1)."""
    rules = (Corner("e0", "e1", rule, size=size, **more),)  # type: ignore[arg-type]
    return cut(OBLONG, [one, two, 10.0, 10.0], rules)


@pytest.mark.parametrize("size", [0.0, 10.0, 12.0, 14.0])
def test_clipped_so_far_from_the_corner(size: float) -> None:
    """Out along the middle, (1, -1) / sqrt 2: on y = -10 the cut is at x = size sqrt 2 - 10 beyond the corner."""
    at = (size or 10.0) * math.sqrt(2) - 10.0
    assert around(right_angle("clipped", size=size), "e0", "e1") == about([(100 + at, -10), (110, -at)])


def test_nothing_is_clipped_beyond_the_tip() -> None:
    for size in (14.2, 50.0):
        assert around(right_angle("clipped", size=size), "e0", "e1")[1] == pytest.approx((110, -10))


@pytest.mark.parametrize(("one", "two", "size", "radius"), [(10, 10, 0, 10), (10, 20, 0, 20), (10, 20, 5, 20)])
def test_rounded_about_the_corner_never_narrower_than_the_wider(
    one: float, two: float, size: float, radius: float
) -> None:
    line = right_angle("rounded", one, two, size)
    (joined,) = (found for before, after, found in line.joins if (before, after) == ("e0", "e1"))
    (arc,) = (curve for curve in joined if isinstance(curve, Arc))
    assert arc.centre == Point(100, 0) and arc.radius == radius
    assert (arc.start.x, arc.start.y) == pytest.approx((100 + math.sqrt(radius**2 - one**2), -one))
    assert (arc.end.x, arc.end.y) == pytest.approx((100 + two, -math.sqrt(max(radius**2 - two**2, 0.0))), abs=1e-6)


def test_rounded_beyond_the_tip_is_a_mitre() -> None:
    assert around(right_angle("rounded", size=15.0), "e0", "e1")[1] == pytest.approx((110, -10))


def lean(by: float) -> list[At]:
    """The oblong with its right side leaning out by `by` mm over its 60 mm of height, seen from the hem up."""
    return [(0.0, 0.0), (100.0, 0.0), (100.0 + by, 60.0), (0.0, 60.0)]


@pytest.mark.parametrize("by", [20.0, 0.0, -20.0])
def test_a_squared_end_stands_where_the_stitch_line_runs_out(by: float) -> None:
    """The hem's stitch line y = 0 meets the side's cut line, 10 mm from the side, at 10 / cos of its lean."""
    out = 10.0 * math.hypot(1.0, by / 60.0)
    line = cut(lean(by), [30.0, 10.0, 10.0, 10.0], (Corner("e0", "e1", "squared", turned="e0"),))
    found = around(line, "e0", "e1")
    assert (100 + out, -30) in [pytest.approx(at) for at in found] or found[0] == pytest.approx((100 + out, -30))
    assert any(at == pytest.approx((100 + out, 0.0), abs=1e-6) for at in found)


@pytest.mark.parametrize("by", [20.0, -20.0])
def test_a_turned_end_mirrors_the_side_in_the_hem(by: float) -> None:
    out, slope = 10.0 * math.hypot(1.0, by / 60.0), by / 60.0
    line = cut(lean(by), [30.0, 10.0, 10.0, 10.0], (Corner("e0", "e1", "turned", turned="e0", folds=(0.0,)),))
    found = around(line, "e0", "e1")
    assert any(at == pytest.approx((100 + out, 0.0), abs=1e-6) for at in found)
    assert any(at == pytest.approx((100 + out + slope * 30, -30.0), abs=1e-6) for at in found)


def test_a_fold_beyond_the_allowance_turns_nothing() -> None:
    for fold in (30.0, 29.9999999, 45.0):
        rule = Corner("e0", "e1", "turned", turned="e0", folds=(fold,))
        assert around(cut(lean(20.0), [30.0, 10.0, 10.0, 10.0], (rule,)), "e0", "e1") == around(
            cut(lean(20.0), [30.0, 10.0, 10.0, 10.0]), "e0", "e1"
        )


@pytest.mark.parametrize(("sine", "turned"), [(FLATTEST + 0.01, True), (FLATTEST - 0.01, False)])
def test_a_side_that_meets_the_hem_too_flat_is_mitred(sine: float, turned: bool) -> None:
    """Too flat: its mirror image would run far along the hem."""
    angle = math.asin(sine)
    corners = [(0.0, 0.0), (300.0, 0.0), (300.0 + 100 / math.tan(angle), 100.0), (0.0, 100.0)]
    rule = Corner("e0", "e1", "turned", turned="e0", folds=(0.0,))
    one, two = (around(cut(corners, [10.0, 10.0, 10.0, 10.0], rules), "e0", "e1") for rules in ((rule,), ()))
    assert (one != two) is turned


def test_an_end_that_would_eat_half_of_the_hem_is_mitred() -> None:
    """The side leans in, so that its mirror image runs back along the hem by 30 mm of depth for each of lean."""
    rule = Corner("e0", "e1", "turned", turned="e0", folds=(0.0,))
    for wide, turned in ((60.0, True), (30.0, False)):
        # lean in at 45 degrees: the end is carried back by its depth, 30, less the 14.1 that the cut line lies out
        corners = [(0.0, 0.0), (wide, 0.0), (wide - 20.0, 20.0), (0.0, 20.0)]
        one, two = (around(cut(corners, [30.0, 10.0, 10.0, 10.0], rules), "e0", "e1") for rules in ((rule,), ()))
        assert (one != two) is turned, wide
    assert FARTHEST == 3.0


def test_a_rule_is_for_two_edges_in_either_order_and_for_no_others() -> None:
    named = [cut(OBLONG, [10.0] * 4, (Corner(one, two, "clipped"),)) for one, two in (("e0", "e1"), ("e1", "e0"))]
    assert corners_of(named[0]) == corners_of(named[1]) and len(corners_of(named[0])) == 5


def test_a_rule_holds_where_the_width_is_that_declared() -> None:
    piece = piece_of(OBLONG, (Corner("e0", "e1", "clipped"),))
    edge = replace(piece.edge("e0"), allowance=10.0)
    piece = piece.with_edges(e0=edge)
    for width, corners in ((10.0, 5), (10.005, 5), (12.0, 4), (0.0, 4)):
        line = offset_line(piece, {"e0": width, "e1": 10.0, "e2": 10.0, "e3": 10.0})
        assert len(corners_of(line)) == corners, width


def test_the_end_of_a_hem_is_turned_without_a_rule() -> None:
    piece = piece_of(lean(20.0))
    widths = {"e0": 30.0, "e1": 10.0, "e2": 10.0, "e3": 10.0}
    rule = Corner("e0", "e1", "turned", turned="e0")
    asked = offset_line(replace(piece, corners=(rule,)), widths)
    assert around(offset_line(piece, widths, hems=["e0"]), "e0", "e1") == around(asked, "e0", "e1")
    # of two hems side by side neither is turned
    both = offset_line(piece, widths, hems=["e0", "e1"])
    assert around(both, "e0", "e1") == around(offset_line(piece, widths), "e0", "e1")
