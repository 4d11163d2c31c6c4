"""How far an arm goes up in a sleeve that is cut on, against triangles worked by hand."""

from __future__ import annotations

import math
import re

import numpy
import pytest

from kit.body.chart import workshop_chart
from kit.body.make import make_body
from kit.diagnostic import Diagnostic
from kit.language import speaking
from kit.proof.causes import parameters_of
from kit.sewing.order import sew
from kit.wear.cut_on import LEVEL, Raised, goes_up, raised, way_on_body
from kit.wear.girth import Worn
from kit.wear.moved import ARMPIT, LIFTS
from kit.wear.worn import worn
from tests.body.bdims import some_women
from tests.wear.garments import lesson_of

HALF, NECK, TOP = 90 / 4 + 4, 12.0, 40.0
"""cm of the drawing: half of the front, from the centre to the neck's end, and how high that lies."""


def top(slope: float, underarm: float) -> tuple[tuple[str, str], ...]:
    return (
        ('lesson.length("slope", 10 * cm', f'lesson.length("slope", {slope} * cm'),
        ('lesson.length("underarm_up", 14 * cm', f'lesson.length("underarm_up", {underarm} * cm'),
    )


def told(*changes: tuple[str, str]) -> list[Diagnostic]:
    pattern = lesson_of("kimono", changes).work()
    return worn(pattern, sew(pattern)[0])


def measured_of(*changes: tuple[str, str]) -> Raised:
    pattern = lesson_of("kimono", changes).work()
    found = raised(Worn(pattern, sew(pattern)[0]))
    assert found is not None
    return found


def by_hand(slope: float, underarm: float) -> tuple[float, float]:
    """cm that the garment has, and that a level arm of size W4 wants."""
    run = math.sqrt(56**2 - slope**2)
    end = (NECK + run - 17 * slope / 56, TOP - slope - 17 * run / 56)
    has = underarm + math.hypot(end[0] - HALF, end[1] - underarm)
    body = workshop_chart()["W4"]
    reach = 56 + NECK - body["neck_base_girth"] / 50 - body["shoulder_length"] / 10 - ARMPIT / 10
    return has, math.hypot((body["back_waist_length"] - body["armscye_depth"]) / 10, reach)


@pytest.mark.parametrize(("slope", "underarm"), [(44.0, 2.0), (30.0, 4.0), (10.0, 14.0), (0.0, 8.0)])
def test_the_two_ways_are_those_of_the_drawing_and_of_a_right_angled_triangle(slope: float, underarm: float) -> None:
    has, need = by_hand(slope, underarm)
    found = measured_of(*top(slope, underarm))
    assert (found.has / 10, found.need / 10) == (pytest.approx(has, abs=0.15), pytest.approx(need, abs=0.05))
    assert (found.before >= LEVEL) == (has >= need)


def test_the_amount_is_what_is_missing_beyond_what_may_lift() -> None:
    has, need = by_hand(44, 2)
    (found,) = told(*top(44, 2))
    assert found.amount == pytest.approx(10 * (need - has) - LIFTS, abs=1.5)
    assert (found.code, found.level, found.piece, found.edge) == ("arm_raised", "warning", "front", "underarm")


def test_an_underarm_as_much_higher_as_told_mends() -> None:
    """Raised to where side and underarm have grown by the amount (found on the drawing), nothing is told; a centimetre
    lower it still is."""
    (found,) = told(*top(30, 4))
    assert found.amount
    more = next(
        step / 10 for step in range(40, 200) if by_hand(30, step / 10)[0] >= by_hand(30, 4)[0] + found.amount / 10
    )
    assert told(*top(30, more + 0.2)) == []
    assert [each.code for each in told(*top(30, more - 1))] == ["arm_raised"]


def test_the_way_is_the_length_of_the_difference_of_two_vectors() -> None:
    """Against numpy: one points down, the other along the arm."""
    for angle in (0.0, 30.0, 90.0, 137.0, 180.0):
        arm = 410.0 * numpy.array([math.sin(math.radians(angle)), -math.cos(math.radians(angle))])
        way = float(numpy.linalg.norm(arm - numpy.array([0.0, -220.0])))
        assert way_on_body(220.0, 410.0, angle) == pytest.approx(way)
        assert goes_up(220.0, 410.0, way) == pytest.approx(angle, abs=1e-3)


def test_the_sliders_that_draw_the_underarm_are_named() -> None:
    lesson = lesson_of("kimono", top(44, 2))
    pattern = lesson.work()
    (found,) = worn(pattern, sew(pattern)[0])
    names = [parameter.name for parameter in lesson.definition.parameters]
    assert {"underarm_up", "slope"} <= set(parameters_of(found, pattern, lesson.definition.entries, names))


@pytest.mark.parametrize("language", ["en", "de", "es", "fr"])
def test_it_says_how_far_the_arm_goes(language: str) -> None:
    with speaking(language):
        (found,) = told(*top(44, 2))
        assert re.search(rf"\b{round(measured_of(*top(44, 2)).before)}\b", found.what) and "90" in found.what
        assert not re.search(r"[{}_]|wear[.-]", found.what + found.do)


@pytest.mark.parametrize("base", ["tideline_wrap_top", "neap_tide_wrap", "harbour_jacket"])
def test_no_false_alarm_and_a_level_arm_in_every_size_and_for_measured_women(base: str) -> None:
    """Each fortieth of the 260 women of `bdims`; the sleeves of the three are cut on."""
    lesson = lesson_of(base)
    women = [make_body(woman, name=f"woman {number}") for number, woman in enumerate(some_women(False)[::4])]
    for body in (*(workshop_chart()[size] for size in ("W1", "W4", "W7", "W10")), *women):
        pattern = lesson.work(body)
        found = raised(Worn(pattern, sew(pattern)[0]))
        assert found is not None and found.has >= found.need - LIFTS, (body.name, found)


def test_a_set_in_sleeve_is_no_sleeve_cut_on() -> None:
    pattern = lesson_of("t_top").work()
    assert raised(Worn(pattern, sew(pattern)[0])) is None
