"""What a body asks for beside a size. Thresholds are common practice, no source; that the upper chest chooses where the
bust is 2 in or more fuller is from Principles of Pattern Alteration (extension text)."""

from __future__ import annotations

import pytest

from kit import cm, inch, make_body, workshop_chart
from kit.body.advice import advise
from kit.body.proposed import LENGTH, SEAT, SHOULDER, proposals
from kit.language import speaking
from kit.lesson.fit_change import FIT_CHANGES

CHART = workshop_chart()
SIZE = CHART["W4"]


def asked(**off: float) -> dict[str, float]:
    """The changes for a body that is `off` (mm) from W4 in these measurements, chosen by the upper chest."""
    taken = {name: SIZE[name] + by for name, by in off.items()}
    return {one.name: one.amount for one in proposals(taken, SIZE, by_bust=False)}


def test_the_size_itself_asks_for_nothing():
    taken = {name: SIZE[name] for name in CHART.table}
    assert proposals(taken, SIZE, by_bust=False) == ()


@pytest.mark.parametrize(
    "off, changes",
    [
        ({"bust_girth": 60}, {"full_bust": 60}),
        ({"bust_girth": -30}, {"small_bust": 30}),
        ({"bust_girth": 19}, {}),
        ({"back_waist_length": LENGTH, "front_waist_length": LENGTH}, {"lengthen_above_waist": LENGTH}),
        ({"back_waist_length": -15}, {"shorten_above_waist": 15}),
        ({"back_waist_length": 15, "front_waist_length": 0}, {"round_back": 15}),
        ({"back_waist_length": 30, "front_waist_length": 15}, {"round_back": 15, "lengthen_above_waist": 15}),
        ({"body_rise": 12}, {"long_rise": 12}),
        ({"body_rise": -12}, {"short_rise": 12}),
        ({"waist_to_hip": 15}, {"lengthen_above_hip": 15}),
        ({"arm_length": 30}, {"lengthen_above_elbow": 15, "lengthen_below_elbow": 15}),
        ({"inside_leg_length": -40}, {"shorten_above_knee": 20, "shorten_below_knee": 20}),
        ({"shoulder_length": SHOULDER}, {"broad_shoulder": SHOULDER}),
        ({"shoulder_length": -8}, {"narrow_shoulder": 8}),
        ({"upper_arm_girth": 20}, {"full_upper_arm": 20}),
        ({"upper_arm_girth": -20}, {}),
        ({"armscye_depth": 12}, {"lower_underarm": 12}),
        ({"armscye_depth": -12}, {"raise_underarm": 12}),
        ({"total_crotch_length": 2 * SEAT, "body_rise": 0}, {"full_seat": SEAT}),
        ({"total_crotch_length": 30, "body_rise": 15}, {"long_rise": 15}),
        ({"total_crotch_length": -30, "body_rise": 0}, {"flat_seat": 15}),
    ],
)
def test_a_difference_worth_altering_is_named_with_its_amount(off, changes):
    assert asked(**off) == pytest.approx(changes)


def test_every_proposal_is_a_change_there_is():
    measures = [name for name in CHART.table]
    for by in (60.0, -60.0):
        for name in measures:
            for change in asked(**{name: by}):
                assert change in FIT_CHANGES


def test_a_full_bust_is_advised_by_the_upper_chest_and_only_then():
    body = make_body({"upper_chest_girth": 88 * cm, "bust_girth": 88 * cm + 2 * inch + 5 * cm}, CHART)
    advice = advise(body, CHART)
    assert [change.name for change in advice.changes] == ["full_bust"]
    off = body["bust_girth"] - CHART[advice.size]["bust_girth"]
    assert advice.changes[0].amount == pytest.approx(off)
    assert str(advice).endswith(f"Fit changes for size {advice.size}: Full bust: 8.1 cm (3 3/16 in).")
    plain = advise(make_body({"bust_girth": 95 * cm}, CHART), CHART)
    assert plain.changes == ()


def test_estimates_ask_for_nothing():
    assert advise(make_body({"bust_girth": 94 * cm}, CHART), CHART).changes == ()


@pytest.mark.parametrize(
    "code, words", [("de", "Volle Brust: "), ("es", "Busto grande: "), ("fr", "Poitrine forte : ")]
)
def test_it_is_said_in_every_language(code, words):
    body = make_body({"upper_chest_girth": 88 * cm, "bust_girth": 98 * cm}, CHART)
    with speaking(code):
        assert words in advise(body, CHART).sentences[-1]
