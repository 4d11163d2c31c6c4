"""Runs of points: where a place lies on one, and which way it goes there."""

from __future__ import annotations

import pytest

from kit.geometry import Point, Vector
from kit.picture.chains import at, dense

BENT = [Point(0.0, 0.0), Point(10.0, 0.0), Point(10.0, 10.0)]


@pytest.mark.parametrize("off", [-1e-12, 0.0, 1e-12])
def test_where_two_parts_meet_the_last_bit_decides_nothing(off: float) -> None:
    """Two Pythons' sums may differ there; a notch at a joint would be drawn across one part or the other."""
    assert at(BENT, 10.0 + off)[1] == Vector(1.0, 0.0)
    assert at(BENT, 10.0 + off)[0].distance(Point(10.0, 0.0)) <= 1e-11


def test_beyond_its_ends_a_chain_stays_at_them() -> None:
    assert at(BENT, -3.0) == (Point(0.0, 0.0), Vector(1.0, 0.0))
    assert at(BENT, 99.0) == (Point(10.0, 10.0), Vector(0.0, 1.0))


@pytest.mark.parametrize("off", [-1e-12, 0.0, 1e-12])
def test_a_line_of_whole_steps_is_parted_alike_whatever_its_last_bit(off: float) -> None:
    assert len(dense([Point(0.0, 0.0), Point(10.0 + off, 0.0)], 5.0)) == 4
