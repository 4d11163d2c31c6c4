"""What two shapes have in common, held to shapely and to counting cell by cell."""

from __future__ import annotations

import numpy as np
import pytest
import shapely
from hypothesis import given, settings
from hypothesis import strategies as st
from shapely import affinity

from kit.pack.footprint import Footprint
from kit.pack.overlaps import SHARES, Overlaps, shares_of

FULL = SHARES * SHARES

shares = st.tuples(st.integers(1, 6), st.integers(1, 6), st.randoms(use_true_random=False)).map(
    lambda drawn: np.array([[drawn[2].randint(0, SHARES) for _ in range(drawn[1])] for _ in range(drawn[0])])
)


@settings(max_examples=60, deadline=None)
@given(shares, shares, st.integers(-8, 8), st.integers(-8, 8))
def test_as_counted_cell_by_cell(one: np.ndarray, other: np.ndarray, row: int, column: int) -> None:
    overlaps = Overlaps((one, other))
    ground = np.zeros((30, 30)), np.zeros((30, 30))
    ground[0][10 + row : 10 + row + one.shape[0], 10 + column : 10 + column + one.shape[1]] = one
    ground[1][10 : 10 + other.shape[0], 10 : 10 + other.shape[1]] = other
    counted = float((ground[0] * ground[1]).sum())
    assert overlaps.at(0, (row, column), 1, (0, 0)) == counted
    assert overlaps.at(1, (0, 0), 0, (row, column)) == counted
    assert overlaps.between(0, 1).sum() == one.sum() * other.sum()  # every pair of cells meets in one place


def test_the_area_that_shapely_finds() -> None:
    corner = shapely.Polygon([(0, 0), (240, 0), (240, 80), (80, 80), (80, 320), (0, 320)])
    slant = shapely.Polygon([(0, 0), (160, 0), (400, 320), (240, 320)])
    cell = (4, 16)  # of footprint cells 4 mm wide and 1 mm high: 16 mm both ways
    overlaps = Overlaps([shares_of(Footprint.of(each, (4.0, 1.0)), cell) for each in (corner, slant)])
    for row in range(-20, 21, 3):
        for column in range(-20, 21, 3):
            moved = affinity.translate(corner, column * 16.0, row * 16.0)
            area = moved.intersection(slant).area / 16.0**2
            found = overlaps.at(0, (row, column), 1, (0, 0)) / FULL
            # A slanting edge takes cells by shares, which multiplied are not quite the area in them.
            assert found == pytest.approx(area, abs=0.05 * area + 6.0)
            assert found >= 0 and (area > 0 or found < 6.0)


def test_a_cell_counts_by_its_shares() -> None:
    half = Footprint.of(shapely.box(0, 0, 2, 32), (1.0, 1.0))
    assert shares_of(half, (4, 16)).tolist() == [[2], [2]]
    assert shares_of(half, (2, 32)).tolist() == [[SHARES]]
    assert shares_of(half, (1, 64)).tolist() == [[2, 2]]
