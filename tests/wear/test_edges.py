"""The loops of edge that are left of sewn garments, against lengths worked by hand from their straight lines."""

from __future__ import annotations

from dataclasses import replace

import pytest

from kit.geometry import Path, Point
from kit.piece.piece import Mark
from kit.sewing.order import sew
from kit.units import mm
from kit.wear.edges import GarmentLoops
from tests.wear.garments import lesson_of


def left(pattern) -> GarmentLoops:
    return GarmentLoops(pattern, sew(pattern)[0])


def lengths(loops) -> list[float]:
    return sorted(round(loop.length, 1) for loop in loops)


def test_a_skirt_with_a_zip(garments) -> None:
    """Its waist is closed by a band of 830 mm whose ends, 70 mm high as cut, are left; the zip opens 200 mm."""
    edges = left(garments.SKIRT.pattern())
    hem = 2 * 250.0 * 2
    # Along the band: its other long edge, both ends, and the 30 mm that reach beyond the garment's edge.
    band = 830.0 + 2 * 70 + 30
    assert lengths(edges.shut) == [hem, band]
    assert lengths(edges.open) == [hem, band + 2 * 200]
    assert edges.parts[0] == {"front", "back", "waistband"}


def test_a_jacket_that_opens_in_front_has_one_long_edge_and_two_cuffs(garments) -> None:
    """The neck has a standing band, the sleeves cuffs that open over 60 mm of the underarm seam."""
    edges = left(garments.JACKET.pattern())
    ends = [loop for loop in edges.shut if "cuff" in loop.pieces]
    rest = [loop for loop in edges.shut if not loop.arm]
    assert [len(ends), len(rest)] == [2, 1]
    # Cuff: inner edge 210, two ends of 100, the 30 mm overlap; and both sides of the opening.
    assert lengths(ends) == [pytest.approx(210 + 200 + 30 + 2 * 60, abs=0.5)] * 2
    fronts = 2 * 460
    hem = 2 * (220 + 240)
    assert rest[0].length > fronts + hem
    assert {"hem", "centre", "neck"} - rest[0].roles <= {"centre"}  # its front edge has no word of the trade for a name


def test_an_edge_on_the_fold_goes_on_to_the_other_half() -> None:
    edges = left(lesson_of("full_skirt").work())
    assert lengths(edges.shut) == [1500.0, 1500.0]
    assert sorted(next(iter(loop.roles)) for loop in edges.shut) == ["hem", "waist"]


def test_a_slit_left_in_a_seam_is_a_loop_of_its_own() -> None:
    edges = left(lesson_of("tideline_wrap_top").work())
    slots = [loop for loop in edges.shut if loop.roles == {"side"}]
    assert lengths(slots) == [80.0]  # both sides of 40 mm
    assert lengths(loop for loop in edges.shut if loop.roles == {"opening"}) == [342.0, 342.0]
    long = next(loop for loop in edges.shut if {"neck", "hem"} <= loop.roles)
    # Neck 80 and 490.8, wrap edge 140, hem 400.1 and 246.9, twice: the figures the lesson's edges have at W4.
    assert long.length == pytest.approx(2 * (80.0 + 490.8 + 140.0 + 400.1 + 246.9), abs=1.0)


def test_crotch_seams_part_the_legs() -> None:
    edges = left(lesson_of("trousers").work())
    assert [sorted(loop.roles) for loop in edges.shut].count(["hem"]) == 2


def test_a_gathered_edge_is_as_long_as_its_threads_draw_it() -> None:
    changes = (("    make.casing(front.waist, back.waist, first=1 * cm, depth=3 * cm, gap=gap)\n", ""),)
    changes += (
        (
            "    make.thread_elastic(front.waist, back.waist, length=elastic + 2 * cm, width=25 * mm, gap=gap)\n",
            "    make.gather(front.waist, to=17 * cm)\n    make.gather(back.waist, to=17 * cm)\n"
            "    make.narrow_hem(front.waist, back.waist, turn=6 * mm)\n",
        ),
    )
    edges = left(lesson_of("full_skirt", changes).work())
    assert lengths(edges.shut) == [pytest.approx(4 * 170.0), 1500.0]


def test_a_slit_opens_the_edge_it_is_cut_into(garments) -> None:
    """Both its sides, 80 mm each, belong to the wrist; the wrist itself is parted there and meets round its end."""
    slit = Mark("cuff_slit", "slit", path=Path.line(Point(30, -300), Point(30, -220)))
    sleeve = replace(garments.SLEEVE, marks=(slit,))
    steps = (
        ("Seams", lambda t: t.make.plain_seam(t.sleeve.front_underarm, t.sleeve.back_underarm, allowance=15 * mm)),
    )
    pattern = garments.Garment((sleeve,), (), steps).pattern()
    wrists = [loop for loop in left(pattern).shut if "wrist" in loop.roles]
    assert lengths(wrists) == [220.0 + 2 * 80.0] * 2
    assert all(loop.arm for loop in wrists)
