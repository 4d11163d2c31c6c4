"""Lengths: typed, kept, printed."""

from __future__ import annotations

import math
import pickle
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from kit.errors import KitError
from kit.units import Length, both, cm, inch, length, mixed, mm, parse, show, show_inch, show_metric


def test_one_inch_is_exactly_25_4_mm() -> None:
    """International yard and pound agreement, 1959."""
    assert float(inch) == 25.4
    assert float(parse("1 yd")) == pytest.approx(914.4, abs=1e-9)


@pytest.mark.parametrize(
    ("text", "value"),
    [
        ("2.5 cm", 25.0),
        ("2,5 cm", 25.0),
        ("25mm", 25.0),
        ("1.2 m", 1200.0),
        ("1 1/2 in", 38.1),
        ("1-1/2 in", 38.1),
        ("1½ in", 38.1),
        ('3/8"', 9.525),
        ("3/8 in.", 9.525),
        ("⅞ inch", 22.225),
        ("9 1/2 inches", 241.3),
        ("-1 cm", -10.0),
        (" 0 mm ", 0.0),
    ],
)
def test_what_people_type(text: str, value: float) -> None:
    assert float(parse(text)) == pytest.approx(value, abs=1e-9)


@pytest.mark.parametrize("text", ["", "cm", "two cm", "1/0 in", "1 cm 2", "1..2 cm", "2 feet", "3 / cm", "1e3 cm"])
def test_what_cannot_be_read_says_so(text: str) -> None:
    with pytest.raises(KitError) as error:
        parse(text)
    assert "'" + text.strip() in str(error.value) and error.value.do


def test_a_number_without_unit_needs_a_default() -> None:
    assert float(parse("9 1/2", "inch")) == pytest.approx(241.3)
    assert float(parse("24", "cm")) == 240.0
    with pytest.raises(KitError, match="has no unit"):
        parse("24")


def test_a_bare_number_is_refused_with_the_way_out() -> None:
    with pytest.raises(KitError, match=r"Write 23 \* cm, 23 \* mm or 23 \* inch"):
        length(23)
    with pytest.raises(KitError, match="2 has no unit"):
        _ = 3 * cm + 2
    with pytest.raises(KitError, match=r"0.5 has no unit"):
        _ = 0.5 - 3 * cm
    with pytest.raises(KitError, match=r"millimetres: write \(\.\.\.\) \* mm"):
        length(50 * cm * (80 * cm - 9 * mm) / (80 * cm))  # 494.375, and no cm
    assert length(0) == 0 and length("1 in") == 25.4
    for wrong in (True, None, [1], math.nan * mm, math.inf * cm):
        with pytest.raises(KitError):
            length(wrong)


def test_arithmetic_keeps_the_unit() -> None:
    assert isinstance(2 * cm + 3 * mm, Length) and 2 * cm + 3 * mm == 23.0
    assert isinstance(sum([1 * cm, 2 * cm]), Length)
    assert isinstance((10 * cm) / 4, Length)
    assert not isinstance((10 * cm) / (1 * cm), Length)
    assert isinstance(-(1 * cm), Length) and abs(-1 * cm) == 10.0
    named = Length(12.0, "shoulder_lift")
    copy = pickle.loads(pickle.dumps(named))
    assert copy == named and copy.name == "shoulder_lift"


@pytest.mark.parametrize(
    ("value", "style", "metric", "inches"),
    [
        (25.0, "draft", "2.5 cm", "1 in"),
        (12.0, "draft", "1.2 cm", "1/2 in"),
        (230.0, "draft", "23 cm", "9 1/16 in"),
        (10.0, "allowance", "1 cm", "3/8 in"),
        (6.0, "allowance", "6 mm", "1/4 in"),
        (15.0, "allowance", "1.5 cm", "5/8 in"),
        (929.8, "finished", "93 cm", "36 5/8 in"),
        (1530.0, "shop", "1.6 m", "1 3/4 yd"),
        (-25.4, "draft", "-2.5 cm", "-1 in"),
        (0.2, "draft", "0 mm", "0 in"),
        (9.6, "draft", "1 cm", "3/8 in"),
    ],
)
def test_rounding_as_the_trade_does(value: float, style: str, metric: str, inches: str) -> None:
    """1 cm is given as 3/8 in, 1.5 cm as 5/8 in, 6 mm as 1/4 in: common practice, no source."""
    assert show_metric(value, style) == metric  # type: ignore[arg-type]
    assert show_inch(value, style) == inches  # type: ignore[arg-type]


def test_the_lessons_own_unit_comes_first() -> None:
    assert both(25.0) == "2.5 cm (1 in)"
    assert both(25.4, "inch") == "1 in (2.5 cm)"


def test_printed_parts_add_up() -> None:
    """6 mm + 4 mm = 1 cm; 1/4 in + 1/8 in = 3/8 in (common practice, no source)."""
    assert [show(p, "cm", "allowance") for p in (6.0, 4.0, 10.0)] == ["6 mm", "4 mm", "1 cm"]
    assert [show(p, "inch", "allowance") for p in (6.0, 4.0, 10.0)] == ["1/4 in", "1/8 in", "3/8 in"]


@given(st.integers(0, 16 * 90))
def test_inches_read_back_as_printed(sixteenths: int) -> None:
    value = sixteenths * 25.4 / 16
    assert float(parse(show_inch(value))) == pytest.approx(value, abs=1e-9)
    assert mixed(Fraction(sixteenths, 16)) == show_inch(value).removesuffix(" in")
