"""Paper against its standards."""

from __future__ import annotations

import math

import pytest

from kit.errors import KitError
from kit.paper.papers import A0, A3, A4, COMMON, LETTER, TABLOID, Paper, paper
from kit.paper.pdf_pen import MM

# ISO 216:2007, main A series, trimmed sizes in mm.
ISO_216 = {"a0": (841, 1189), "a3": (297, 420), "a4": (210, 297)}


@pytest.mark.parametrize("name", sorted(ISO_216))
def test_a_sizes_are_iso_216(name: str) -> None:
    assert (paper(name).width, paper(name).height) == ISO_216[name]


def test_a_series_halves_and_keeps_its_shape() -> None:
    # ISO 216: sides in the ratio 1 to the square root of 2, each size half the one before, rounded down to a mm.
    for each in (A0, A3, A4):
        assert each.height / each.width == pytest.approx(math.sqrt(2), abs=0.005)
    assert (A4.height, A4.width) == (A3.width, math.floor(A3.height / 2))


def test_letter_is_eight_and_a_half_by_eleven_inches() -> None:
    # The inch is exactly 25.4 mm (international yard and pound agreement, 1959); Letter: ANSI/ASME Y14.1, size A.
    assert pytest.approx((215.9, 279.4), abs=1e-9) == (LETTER.width, LETTER.height)


def test_a_point_is_a_seventy_second_of_an_inch() -> None:
    # ISO 32000-1, 8.3.2.3: default user space is 1/72 in.
    assert pytest.approx(72, abs=1e-12) == 25.4 * MM


def test_turned_paper_keeps_its_size() -> None:
    assert (A4.turned.width, A4.turned.height) == (297, 210)
    assert A4.turned.landscape and not A4.landscape


def test_unknown_paper_names_the_near_one() -> None:
    with pytest.raises(KitError, match="Did you mean 'letter'"):
        paper("leter")


def test_margins_that_leave_nothing_are_refused() -> None:
    with pytest.raises(KitError, match="margin of 80 mm"):
        Paper("a4", "A4", 210, 297, 80, 80)
    with pytest.raises(KitError, match="margin of 2 mm"):
        Paper("a4", "A4", 210, 297, 2, 2)


def test_papers_in_inches() -> None:
    # ANSI/ASME Y14.1, size B: 11 x 17 in. A roll of 36 in is 914.4 mm, not the 914 mm roll.
    assert pytest.approx((279.4, 431.8)) == (TABLOID.width, TABLOID.height)
    assert paper("36in").width == pytest.approx(914.4) and paper("914 mm roll").width == 914
    assert paper("13x19in").width == pytest.approx(13 * 25.4)


def test_pages_for_both_fit_on_both() -> None:
    assert COMMON.width <= min(A4.width, LETTER.width) and COMMON.height <= min(A4.height, LETTER.height)
    assert COMMON.area == (A4.area[0], LETTER.area[1])
    assert paper("a4+letter") == paper("a4-or-letter") == COMMON


def test_a_size_of_ones_own_lies_upright() -> None:
    assert (paper("500x300mm").width, paper("500x300mm").height) == (300, 500)
    assert paper("30 x 50 cm").area == (280, 480)
    assert paper("600x900mm").kind == "sheet" and paper("300x500mm").kind == "page"
