"""Two rulers: one reading a length, whatever it is for; pairs of the trade; sums."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from kit.rulers import SIXTEENTH, Ruling, System, adds_up, bought, reading, ruled
from kit.units import both, show, stacked

# Metric seam and hem allowances and the inches that pattern sheets print beside them: common practice, no source.
TRADE = {3: 2, 6: 4, 10: 6, 12: 8, 13: 8, 15: 10, 16: 10, 20: 12, 25: 16, 50: 32}


@pytest.mark.parametrize(("mm", "sixteenths"), TRADE.items())
def test_round_pairs_of_the_trade(mm: int, sixteenths: int) -> None:
    assert reading(float(mm), "cm")["inch"] == sixteenths


@pytest.mark.parametrize("sixteenths", [2, 4, 6, 10, 12, 16, 32])
def test_the_same_pairs_thought_in_inches(sixteenths: int) -> None:
    with ruled(Ruling("inch")):
        assert TRADE[reading(sixteenths * SIXTEENTH, "inch")["cm"]] == sixteenths


@given(st.floats(0.0, 400.0), st.floats(0.0, 400.0), st.sampled_from(["cm", "inch"]), st.sampled_from(["cm", "inch"]))
def test_what_prints_alike_in_the_own_system_prints_alike_in_the_other(
    one: float, two: float, own: System, first: System
) -> None:
    with ruled(Ruling(own)):
        a, b = (reading(mm, first, style) for mm, style in ((one, "draft"), (two, "allowance")))
    if a[own] == b[own]:
        assert a == b


@given(st.integers(1, 16 * 15))
def test_two_lengths_in_inches_never_print_alike_in_centimetres(sixteenths: int) -> None:
    """Up to 15 in a mark is taken within 1 mm, which is less than a sixteenth."""
    with ruled(Ruling("inch")):
        one, two = (reading(count * SIXTEENTH, "inch")["cm"] for count in (sixteenths, sixteenths + 1))
    assert one < two


@given(st.floats(1.0, 3000.0), st.sampled_from(["cm", "inch"]))
def test_both_readings_are_near_the_length(mm: float, own: System) -> None:
    with ruled(Ruling(own)):
        read = reading(mm, own)
    near = 0.5 + max(1.0, mm * 0.0026)  # a half millimetre, and the round mark; the second follows from the first
    assert abs(read["cm"] - mm) <= (0.5 if own == "cm" else 2 * near)
    assert abs(read["inch"] * SIXTEENTH - mm) <= near


@given(st.floats(10.0, 9000.0))
def test_cloth_is_never_bought_short_nor_too_long(mm: float) -> None:
    metres, yards = bought(mm)["cm"] * 100.0, bought(mm)["inch"] * 914.4 / 8
    assert mm - 0.01 <= metres <= mm + 100.0 and mm - 0.01 <= yards <= mm + 114.3


def test_sums_that_do_not_hold_are_known() -> None:
    """3/8 in and 5/8 in are 1 in; 3/8 in and 3/4 in are not the 1 3/16 in of 3 cm."""
    assert adds_up([10.0, 15.0], 25.0, "cm") == {"cm": True, "inch": True}
    assert adds_up([10.0, 20.0], 30.0, "cm") == {"cm": True, "inch": False}
    with ruled(Ruling("inch")):
        assert adds_up([3 * SIXTEENTH, 3 * SIXTEENTH], 6 * SIXTEENTH, "inch") == {"cm": True, "inch": True}


def test_one_system_alone() -> None:
    with ruled(Ruling("cm", alone=True)):
        assert both(15.0) == "1.5 cm" and both(15.0, "inch") == "5/8 in" and show(15.0, "inch") == "5/8 in"
        assert stacked(900.0, "cm") == "90" and stacked(900.0, "inch") == "35 1/2"
    assert both(15.0) == "1.5 cm (5/8 in)" and stacked(900.0, "cm") == "90\n35 1/2"


def test_sizes_that_are_settled_stand() -> None:
    with ruled(Ruling("cm", agreed={180: 112})):
        assert both(180.0) == "18 cm (7 in)" and both(180.0, "inch") == "7 in (18 cm)"
