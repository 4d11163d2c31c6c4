"""Cut sizes of strips, joins and bias, against pieces of cloth laid out with shapely."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st
from shapely import affinity
from shapely.geometry import Polygon, box
from shapely.ops import unary_union

from kit.errors import KitError
from kit.piece import strips


def test_cut_widths() -> None:
    """Common practice, no source."""
    assert strips.in_four(20.0) == 80.0
    assert strips.in_two(30.0, 10.0) == 80.0 and 80.0 / 2 - 10.0 == 30.0
    assert strips.binding(10.0) == 40.0
    assert strips.binding(10.0, double=True) == 60.0
    assert strips.band(700.0, 40.0, 10.0, overlap=30.0) == (750.0, 100.0)


def test_joins_by_hand() -> None:
    # Two pieces of 1000 joined with 10 mm allowances give 1980 mm.
    assert strips.pieced(1980.0, 1000.0, strips.join_cost("straight", 10.0, 60.0)) == strips.Pieced(2, 1, 1000.0)
    found = strips.pieced(2500.0, 1000.0, 20.0)
    assert (found.pieces, found.joins) == (3, 2) and found.each == pytest.approx(2540.0 / 3)
    assert strips.pieced(900.0, 1000.0, 20.0) == strips.Pieced(1, 0, 900.0)
    with pytest.raises(KitError, match="used up by joins"):
        strips.pieced(900.0, 15.0, 20.0)


@given(st.floats(50, 20000), st.floats(100, 3000), st.floats(0, 60))
def test_pieces_give_the_length_and_one_fewer_would_not(length: float, longest: float, cost: float) -> None:
    found = strips.pieced(length, longest, cost)
    assert found.pieces * found.each - found.joins * cost == pytest.approx(length)
    assert found.each <= longest + 1e-6
    if found.joins:
        assert (found.pieces - 1) * longest - (found.joins - 1) * cost < length + 1e-3


def test_a_diagonal_join_costs_what_the_laid_strips_say() -> None:
    """Two strips laid as for sewing; what lies beyond the seam on each is its loss, measured along its middle."""
    width, allowance = 40.0, 6.0
    # On the bias the end slants at 45 degrees: the stitch line lies `allowance` from it, square to the end.
    along_middle = allowance / math.cos(math.radians(45))
    assert strips.join_cost("diagonal", allowance, width, bias=True) == pytest.approx(2 * along_middle)
    # With square ends: one strip level, ending at x = width; one upright; the seam runs across their shared square.
    level = box(-500.0, 0.0, width, width)
    upright = box(0.0, -500.0, width, width)
    beyond = Polygon([(0.0, width), (width, 0.0), (width, width)])
    lost = level.intersection(beyond).area + upright.intersection(beyond).area
    assert strips.join_cost("diagonal", allowance, width) == pytest.approx(lost / width)


def _tube(across: float, along: float, allowance: float) -> Polygon:
    """The net cloth of a bias tube, opened flat between its stitch lines: a corner cut off at 45 degrees is sewn to
    the opposite end stitch line on stitch line, and the sides along the grain lose an allowance each."""
    rest = Polygon([(0, 0), (across, across), (across, along), (0, along)])
    corner = Polygon([(0, 0), (across, 0), (across, across)])
    # The corner's lower edge goes above the rest's upper edge; both give an allowance, and it slides along the seam
    # until the ends of the two stitch lines lie on one another.
    net_rest = rest.intersection(box(-1, -1, across + 1, along - allowance))
    net_corner = corner.intersection(box(-1, allowance, across + 1, across + 1))
    moved = affinity.translate(net_corner, -allowance, along - 2 * allowance)
    whole = unary_union([net_rest.buffer(1e-7), moved.buffer(1e-7)])
    # Sides along the grain: what both parts share from left to right, less an allowance each.
    return whole.intersection(box(allowance, -1, across - 2 * allowance, 3 * along))


@pytest.mark.parametrize("across,along", [(500.0, 500.0), (600.0, 900.0), (350.0, 1200.0)])
@pytest.mark.parametrize("allowance", [0.0, 6.0, 10.0])
def test_continuous_bias_fills_the_tube(across: float, along: float, allowance: float) -> None:
    width = 37.0
    cloth = _tube(across, along, allowance)
    assert isinstance(cloth, Polygon)
    strip = strips.continuous_bias(across, along, width, allowance) * width
    one_round = math.sqrt(2) * (across - 3 * allowance) * width
    assert cloth.area - one_round < strip <= cloth.area + 1.0


def test_without_seams_the_yield_is_area_by_width() -> None:
    """The usual rule (common practice, no source), exact where whole lines fit."""
    width = 500.0 / math.sqrt(2) / 9
    assert strips.continuous_bias(500.0, 500.0, width, 0.0) == pytest.approx(500.0**2 / width)


@given(st.floats(200, 20000), st.floats(15, 80), st.floats(0, 12))
def test_the_square_gives_the_length_and_a_smaller_one_does_not(length: float, width: float, allowance: float) -> None:
    side = strips.square_for_bias(length, width, allowance)
    assert strips.continuous_bias(side + 1e-6, side + 1e-6, width, allowance) >= length - 1e-2
    less = side - 0.01
    assert strips.continuous_bias(less, less, width, allowance) < length


def test_bias_from_selvedge_to_selvedge() -> None:
    assert strips.bias_across(1400.0) == pytest.approx(1380.0 * math.sqrt(2))
    along, across = strips.bias_cloth(3, 1000.0, 40.0)
    assert across == pytest.approx(1000.0 / math.sqrt(2))
    assert along == pytest.approx(across + 3 * 40.0 * math.sqrt(2))


def test_nothing_has_no_bias() -> None:
    for wrong in (lambda: strips.continuous_bias(500, 500, 0, 6), lambda: strips.square_for_bias(0, 40, 6)):
        with pytest.raises(KitError, match="above zero"):
            wrong()
