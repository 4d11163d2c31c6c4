"""Cloth needed, against lays worked by hand."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from kit.cloth.need import GAP, SELVEDGE, Box, need
from kit.errors import KitError

FOLD = Box("Back", along=600.0, across=250.0, on_fold=True)
PAIR = Box("Front", along=600.0, across=350.0, count=2, mirrored=True)


def test_a_fold_piece_and_a_pair_lie_side_by_side_on_folded_cloth() -> None:
    # 250 + 10 + 350 = 610 mm fits the half width of 1400 mm cloth, 690 mm: one row of 600 mm.
    assert need((FOLD, PAIR), 1400.0).length == pytest.approx(600.0)
    assert need((FOLD, PAIR), 1400.0).lay == "folded"


def test_narrow_cloth_takes_two_rows() -> None:
    # Half of 1120 mm less the selvedge is 550 mm: folded, the pair goes below the back, 600 + 10 + 600 mm.
    # Flat, 1100 mm take the opened back (500 mm) beside one front, the other front below: as long.
    found = need((FOLD, PAIR), 1120.0)
    assert found.length == pytest.approx(1200.0 + GAP)
    assert found.lay == "folded"


def test_a_single_piece_is_laid_below_on_opened_cloth() -> None:
    single = Box("Pocket", along=200.0, across=150.0)
    flat = need((single,), 1400.0)
    assert (flat.length, flat.lay) == (200.0, "flat")
    # Flat: the opened back, two fronts and it (500 + 350 + 350 + 150) with three gaps just fill 1380 mm.
    assert need((FOLD, PAIR, single), 1400.0).length == pytest.approx(600.0)


def test_a_piece_wider_than_the_cloth_is_refused() -> None:
    with pytest.raises(KitError, match=r"Cape is 150 cm .* wide, more than cloth of 140 cm"):
        need((Box("Cape", along=500.0, across=750.0, on_fold=True),), 1400.0)


def test_nothing_needs_nothing() -> None:
    assert need((), 1400.0).length == 0.0


boxes = st.lists(
    st.builds(
        Box,
        name=st.just("Piece"),
        along=st.floats(20.0, 1500.0),
        across=st.floats(20.0, 500.0),
        count=st.integers(1, 3),
        on_fold=st.booleans(),
    ),
    min_size=1,
    max_size=8,
)


@given(boxes)
def test_never_less_than_the_area_or_the_longest_piece(given_boxes: list[Box]) -> None:
    width = 1400.0
    area = sum(box.along * box.across * box.count * (2 if box.on_fold else 1) for box in given_boxes)
    found = need(tuple(given_boxes), width)
    assert found.length >= area / (width - 2 * SELVEDGE) - 1e-6
    assert found.length >= max(box.along for box in given_boxes) - 1e-6
    total = sum((box.along + GAP) * box.count for box in given_boxes)
    assert found.length <= total + 1e-6
