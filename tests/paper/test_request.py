"""What people ask of the pages, as they type it, and what is refused in plain words."""

from __future__ import annotations

import math

import pytest

from kit.errors import KitError
from kit.lesson.pattern import Pattern
from kit.paper.gauge import gauge_place, how_to_gauge
from kit.paper.papers import A4, LETTER, paper
from kit.paper.printing import print_files
from kit.paper.request import (
    PageRequest,
    read_class_scale,
    read_margins,
    read_papers,
    read_printer_scale,
)


def test_papers_are_read_by_name_or_size_each_once() -> None:
    assert [each.name for each in read_papers([])] == ["a4", "letter"]
    assert [each.name for each in read_papers(["A3", "a3", "300 x 500 mm", "US Letter"])] == [
        "a3",
        "300x500mm",
        "letter",
    ]


@pytest.mark.parametrize(
    ("text", "found"),
    [("97%", (0.97, 0.97)), ("97", (0.97, 0.97)), ("97%,98.5%", (0.97, 0.985)), (" 101.2 % , 99 % ", (1.012, 0.99))],
)
def test_printer_scale_is_read(text: str, found: tuple[float, float]) -> None:
    assert read_printer_scale(text) == pytest.approx(found)


@pytest.mark.parametrize(("text", "found"), [("8mm", (8, 8)), ("6mm,1.5cm", (6, 15)), ("1/2 in", (12.7, 12.7))])
def test_margins_are_read(text: str, found: tuple[float, float]) -> None:
    assert read_margins(text) == pytest.approx(found)


@pytest.mark.parametrize(("text", "found"), [("1/2", 0.5), ("quarter", 0.25), ("1", 1.0)])
def test_class_scales_are_read(text: str, found: float) -> None:
    assert read_class_scale(text) == found


@pytest.mark.parametrize(
    ("call", "said"),
    [
        (lambda: read_printer_scale("small"), "'small' does not say how large"),
        (lambda: read_printer_scale("97%,98%,99%"), "97%,98%,99%"),
        (lambda: PageRequest(printer_scale=(0.5, 1.0)), "prints at 50%"),
        (lambda: PageRequest(printer_scale=(math.nan, 1.0)), "too far from true scale"),
        (lambda: read_margins("8"), "'8' has no unit"),
        (lambda: read_margins("1mm,2mm,3mm"), "is not a margin"),
        (lambda: PageRequest(margins=(2.0, 2.0)), "margin of 2 mm"),
        (lambda: PageRequest(margins=(90.0, 90.0)), "too little of the page"),
        (lambda: read_class_scale("1/3"), "'1/3'"),
        (lambda: PageRequest(class_scale=0.3), "'0.3' is not a scale"),
        (lambda: PageRequest(papers=()), "no paper"),
        (lambda: paper("300x500"), "does not say its unit"),
        (lambda: paper("300mmx20in"), "mixes two units"),
        (lambda: paper("100x148mm"), "too small"),
        (lambda: paper("1x9000mm"), "too small"),
        (lambda: paper("900x9000mm"), "longer than a page"),
        (lambda: paper("tabliod"), "Did you mean 'tabloid'"),
    ],
)
def test_what_cannot_be_is_refused_plainly(call, said: str) -> None:  # type: ignore[no-untyped-def]
    with pytest.raises(KitError) as caught:
        call()
    assert said in str(caught.value)
    assert caught.value.do


def test_small_paper_with_wide_margins_is_refused_before_anything_is_drawn(garment: Pattern) -> None:
    with pytest.raises(KitError, match="too little for the test squares"):
        print_files(garment, PageRequest((paper("135x175mm"),), margins=(30.0, 30.0)))


def test_paper_is_held_as_asked() -> None:
    auto, upright, sideways = (
        PageRequest((A4,), orientation=each).ways(A4) for each in ("auto", "upright", "sideways")
    )
    assert [way.landscape for way in auto] == [False, True]
    assert [way.landscape for way in upright] == [False]
    assert [way.landscape for way in sideways] == [True]
    assert len(PageRequest((paper("roll-36in"),)).ways(paper("roll-36in"))) == 1


def test_butted_pages_carry_more_than_overlapping_ones() -> None:
    (overlap,), (butt,) = (PageRequest((A4,), "upright", joining).ways(A4) for joining in ("overlap", "butt"))
    assert butt.step == (190.0, 277.0) and overlap.step == (180.0, 267.0)


def test_a_correction_stays_with_the_sides_of_the_paper() -> None:
    # The short side prints at 97 %, whichever way the page is held.
    request = PageRequest((LETTER,), printer_scale=(0.97, 0.99))
    upright, sideways = request.ways(LETTER)
    assert upright.width == pytest.approx(LETTER.width * 0.97) and upright.height == pytest.approx(279.4 * 0.99)
    assert sideways.height == pytest.approx(LETTER.width * 0.97) and sideways.width == pytest.approx(279.4 * 0.99)
    assert request.enlarged(upright) == pytest.approx((1 / 0.97, 1 / 0.99))
    assert request.enlarged(sideways) == pytest.approx((1 / 0.99, 1 / 0.97))


@pytest.mark.parametrize("share", [94, 97, 100, 106])
def test_the_gauge_puts_its_line_under_the_ruler(share: int) -> None:
    for length in (100.0, 101.6):
        assert gauge_place(share, length) * share / 100 == pytest.approx(length)


def test_the_gauge_says_what_to_do() -> None:
    assert "97 mm your printer printed at 97 %" in how_to_gauge(PageRequest())[0]
    assert "97 % along the paper's short side and 98.5 %" in how_to_gauge(PageRequest(printer_scale=(0.97, 0.985)))[0]
