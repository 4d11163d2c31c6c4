"""What passes a garment that is put on, against rules of the trade that others have published."""

from __future__ import annotations

import pytest

from kit.body.chart import workshop_chart
from kit.sewing.order import sew
from kit.wear.girth import Worn
from kit.wear.needs import MEANS, arm_girth
from kit.wear.passage import slits, ways_on
from tests.body import survey
from tests.wear.garments import lesson_of, text_of

INCH = 25.4


def put_on(base: str, size: str = "W4", zip_length: float | None = None) -> Worn:
    """The garment on a body; its zip of another length, whatever its slider allows."""
    changes = ()
    if zip_length is not None:
        _, text = text_of(base)
        line = next(line for line in text.splitlines() if line.startswith('lesson.length("zip_length"'))
        why = line[line.index("why=") :]
        put = f'lesson.length("zip_length", {zip_length} * mm, least=1 * cm, most=70 * cm, {why}'
        changes = ((line, put),)
    pattern = lesson_of(base, changes).work(workshop_chart()[size])
    return Worn(pattern, sew(pattern)[0])


def test_a_neck_slit_is_half_of_what_the_neckline_wants_of_the_head() -> None:
    """At least (head girth - neckline girth) / 2: geometry, also in an examination text for dressmaking."""
    neck = sum(
        stretch.length for loop in put_on("shift").edges.shut if "neck" in loop.roles for stretch in loop.stretches
    )
    least = (workshop_chart()["W4"]["head_girth"] - neck) / 2

    def head_sticks(zip_length: float) -> bool:
        over = ways_on(put_on("shift", zip_length=zip_length))["over"]
        return any(narrow.part == "head_girth" for narrow in over)

    assert head_sticks(least - 5.0)
    assert not head_sticks(least)


@pytest.mark.parametrize("size", workshop_chart().names)
def test_a_placket_of_nine_inches_lets_every_size_into_a_skirt(size: str) -> None:
    """9 to 12 in, long enough to slip over the head: School Sewing (1916, public domain), paragraph 159."""
    worn = put_on("dune_skirt", size, zip_length=9 * INCH)
    assert ways_on(worn)["into"] == ()


@pytest.mark.parametrize("size", workshop_chart().names)
def test_a_placket_of_two_inches_lets_nobody_in(size: str) -> None:
    assert ways_on(put_on("dune_skirt", size, zip_length=2 * INCH))["into"]


def test_a_slit_opens_most_at_its_open_end_and_nothing_at_its_shut_one() -> None:
    (slit,) = slits(put_on("dune_skirt"))
    assert slit.high_open and not slit.low_open
    assert slit.opens(slit.low) == 0.0
    assert slit.opens(slit.high) == pytest.approx(2 * 180.0, abs=5.0)  # along the leaning side seam
    assert slit.opens(slit.low - 1.0) == 0.0


def test_a_longer_zip_never_makes_it_worse() -> None:
    missing = []
    for length in (30.0, 60.0, 90.0, 120.0):
        narrow = ways_on(put_on("trousers", zip_length=length))["into"]
        missing.append(sum(each.missing for each in narrow))
    assert missing == sorted(missing, reverse=True)
    assert missing[0] > 100.0


def test_heads_hands_and_heels_of_the_chart_are_those_of_measured_women() -> None:
    """2012 Anthropometric Survey of U.S. Army Personnel, women: head 532 to 597 mm, hand 173 to 202, heel and ankle 287
    to 337 (5th to 95th percentile); the chart's middle sizes lie within, its ends within a finger's breadth."""
    ranges = {"head_girth": (532, 597), "hand_girth": (173, 202), "heel_girth": (287, 337)}
    for name, (low, high) in ranges.items():
        values = [body[name] for body in workshop_chart().bodies()]
        assert values == sorted(values)
        assert low <= values[3] <= high and low <= MEANS[name] <= high
        assert low - 15 <= values[0] and values[-1] <= high + 15


@pytest.mark.skipif(not survey.rows(), reason=survey.ABSENT)
def test_means_of_the_survey() -> None:
    """Of 993 women of the same survey (Gordon et al., NATICK/TR-15/007, 2014); the hand is the palm's girth there."""
    rows = survey.rows()
    column = next((name for name in rows[0] if "head" in name.lower() and "circ" in name.lower()), None)
    if column is None:
        pytest.skip("that half of the survey has no head girth")
    mean = sum(row[column] for row in rows) / len(rows)
    assert mean == pytest.approx(MEANS["head_girth"], abs=3.0)


def test_an_arm_is_thick_as_far_as_the_elbow_and_runs_down_to_the_wrist() -> None:
    body = workshop_chart()["W4"]
    assert arm_girth(body, 0.0) == arm_girth(body, 300.0) == body["upper_arm_girth"]
    assert arm_girth(body, body["arm_length"]) == pytest.approx(body["wrist_girth"])
    down = [arm_girth(body, at) for at in range(0, 600, 20)]
    assert down == sorted(down, reverse=True)
