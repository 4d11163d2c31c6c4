"""Curves square to edges. The shape of an underarm is common practice, no source; the circle is geometry."""

from __future__ import annotations

import math

import pytest

from kit.errors import KitError
from kit.geometry import DOWN, LEFT, Path, Point, square_curve

OPENING = Path.line(Point(420, 330), Point(420, 190))  # a sleeve opening, ruled down from the overarm
SIDE = Path.line(Point(240, 60), Point(240, -160))  # the side seam below the underarm
HEM = Path.line(Point(240, -160), Point(0, -160))


def test_underarm_leaves_square_and_runs_in_without_a_corner() -> None:
    curve = square_curve(OPENING.end, OPENING, SIDE.start, SIDE, "smooth")
    assert (curve.tangent(0) - LEFT).length < 1e-9
    assert Path.of(curve, *SIDE.curves).corners == ()


def test_square_at_both_ends() -> None:
    curve = square_curve(OPENING.end, OPENING, Point(200, -160), HEM, "square")
    assert (curve.tangent(0) - LEFT).length < 1e-9 and (curve.tangent(1) - DOWN).length < 1e-9


@pytest.mark.parametrize("turn_opening", [False, True])
@pytest.mark.parametrize("turn_side", [False, True])
def test_the_way_an_edge_was_drawn_does_not_matter(turn_opening: bool, turn_side: bool) -> None:
    opening = OPENING.reversed() if turn_opening else OPENING
    side = SIDE.reversed() if turn_side else SIDE
    want = square_curve(OPENING.end, OPENING, SIDE.start, SIDE, "smooth")
    assert square_curve(OPENING.end, opening, SIDE.start, side, "smooth") == want


def test_square_to_two_spokes_is_the_circle() -> None:
    """Square to two radii of a circle is the circle itself."""
    centre = Point(10, 10)
    a = Path.line(centre, Point(110, 10))
    b = Path.line(centre, Point(10 + 100 * math.cos(1.2), 10 + 100 * math.sin(1.2)))
    curve = square_curve(a.end, a, b.end, b)
    assert max(abs(curve.point(i / 50).distance(centre) - 100) for i in range(51)) < 0.3


def test_refusals_say_what_and_where() -> None:
    with pytest.raises(KitError, match="no room") as caught:
        square_curve(SIDE.start, OPENING, SIDE.start, SIDE, "smooth", where="underarm curve")
    assert caught.value.where == "underarm curve"
    steep = Path.line(Point(200, 0), Point(200.4, -100))
    with pytest.raises(KitError, match=r"double back on itself with a fullness of 2.9") as caught:
        square_curve(Point(0, 0), OPENING, Point(200, 0), steep, "smooth", fullness=2.9)
    assert "20 cm (7 7/8 in) apart across" in str(caught.value) and caught.value.do
