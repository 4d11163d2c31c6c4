"""Bodies from taken measurements: what is kept, what is estimated, what is refused."""

from __future__ import annotations

import pickle

import pytest
from hypothesis import given
from hypothesis import strategies as st

from kit.body import MEASUREMENTS, make_body, workshop_chart
from kit.body.make import HIP_ABOVE
from kit.errors import KitError
from kit.units import Length, cm, inch
from tests.body import survey
from tests.body.bdims import women


def test_given_measures_are_kept_and_others_marked_estimated() -> None:
    body = make_body({"bust_girth": 92 * cm, "waist_girth": "29 1/2 in"}, name="Edda")
    assert body.name == "Edda"
    assert body["bust_girth"] == pytest.approx(920)
    assert body["waist_girth"] == pytest.approx(29.5 * 25.4)
    assert {m.name for m in body.estimated} == set(MEASUREMENTS) - {"bust_girth", "waist_girth"}
    assert body["hip_girth"] == pytest.approx((960 + 1000) / 2)
    assert pickle.loads(pickle.dumps(body)) == body


def test_a_size_measured_comes_back_as_that_size() -> None:
    chart = workshop_chart()
    for size in chart.names:
        body = make_body({"bust_girth": Length(chart[size]["bust_girth"])}, chart)
        for measure in chart[size].measures:
            assert body[measure.name] == pytest.approx(measure.value)


def test_the_first_girth_known_leads() -> None:
    led_by_bust = make_body({"bust_girth": 90 * cm, "hip_girth": 121 * cm})
    assert led_by_bust["neck_base_girth"] == pytest.approx(363)
    led_by_hip = make_body({"hip_girth": 121 * cm, "waist_girth": 71.5 * cm})
    assert led_by_hip["neck_base_girth"] == pytest.approx(413)
    assert make_body({"waist_girth": 71.5 * cm})["bust_girth"] == pytest.approx(900)


def test_upper_chest_is_never_taken_for_bust() -> None:
    body = make_body({"upper_chest_girth": 105 * cm})
    assert body["upper_chest_girth"] == pytest.approx(1050)
    assert body["bust_girth"] == pytest.approx(1100)
    assert "bust_girth" in {m.name for m in body.estimated}
    both_given = make_body({"upper_chest_girth": 105 * cm, "bust_girth": 100 * cm})
    assert (both_given["upper_chest_girth"], both_given["bust_girth"]) == pytest.approx((1050, 1000))


def test_a_tall_person_has_longer_lengths_and_the_same_girths() -> None:
    usual = make_body({"bust_girth": 90 * cm})
    tall = make_body({"bust_girth": 90 * cm, "height": 183.7 * cm})
    for name in ("back_waist_length", "armscye_depth", "arm_length", "waist_to_hip"):
        assert tall[name] == pytest.approx(1.1 * usual[name])
    for name in ("hip_girth", "neck_base_girth", "shoulder_length", "back_width"):
        assert tall[name] == pytest.approx(usual[name])


@given(st.floats(500, 1800))
def test_every_bust_gives_plausible_measures(bust: float) -> None:
    for measure in make_body({"bust_girth": Length(bust)}).measures:
        row = MEASUREMENTS[measure.name]
        assert row.least <= measure.value <= row.most


@pytest.mark.parametrize(
    ("values", "words"),
    [
        ({"bust_grith": 90 * cm}, ["bust_grith", "Did you mean 'bust_girth'"]),
        ({"bust_girth": 90}, ["Edda", "bust girth", "no unit"]),
        ({"bust_girth": "ninety"}, ["bust girth", "'ninety'"]),
        ({"bust_girth": 9 * cm}, ["bust girth", "9 cm", "3 9/16 in", "50 cm", "180 cm", "typed as mm"]),
        ({"bust_girth": 36 * cm}, ["inches typed as cm"]),
        ({"bust_girth": 3000 * cm}, ["3000 cm"]),
        ({"waist_girth": -70 * cm}, ["waist girth"]),
        ({"bust_girth": Length(float("nan"))}, ["bust girth", "finite"]),
        ({"height": 170 * cm}, ["girth", "Measure at least the bust girth"]),
        ({}, ["bust girth"]),
    ],
)
def test_bad_measurements_are_refused(values: dict, words: list[str]) -> None:
    with pytest.raises(KitError) as caught:
        make_body(values, name="Edda")
    for word in words:
        assert word in str(caught.value)


def test_every_row_of_the_table_reads_well() -> None:
    for name, row in MEASUREMENTS.items():
        assert name == row.name and row.least < row.most and row.kind in ("girth", "width", "height")
        assert row.note.endswith(".") and row.said.replace("-", " ") == name.replace("_", " ")


def test_the_measured_women() -> None:
    """Counts and means of `bdims` women (Heinz et al. 2003): 260, mean upper chest 86.06 cm, height 164.87 cm."""
    rows = women()
    assert len(rows) == 260
    assert float(sum(row["upper_chest_girth"] for row in rows)) / 260 == pytest.approx(860.6, abs=0.1)
    assert float(sum(row["height"] for row in rows)) / 260 == pytest.approx(1648.7, abs=0.1)
    for row in rows:
        body = make_body(row)
        assert not {m.name for m in body.estimated} & set(row)
        assert "bust_girth" in {m.name for m in body.estimated}


def test_inches_and_centimetres_agree() -> None:
    assert make_body({"bust_girth": 36 * inch}).measures == make_body({"bust_girth": "91.44 cm"}).measures


def test_every_block_has_its_measurements() -> None:
    """Bodice, sleeve, skirt and trousers (common practice, no source); a name that was not checked says so."""
    wanted = "bust_point_width elbow_girth thigh_girth knee_girth ankle_girth body_rise total_crotch_length"
    for name in (*wanted.split(), "waist_height", "outside_leg_length", "inside_leg_length"):
        assert MEASUREMENTS[name].named in ("ISO 8559-1", "ISO 8559-1, from memory", "common practice")
        assert name in workshop_chart().measures


@pytest.mark.parametrize("size", workshop_chart().names)
def test_legs_hang_together(size: str) -> None:
    """Waist height less inside leg is near the body rise (a sitting person's seat is pressed flat); the crotch
    tape is longer than the rise twice over (geometry, no source)."""
    body = workshop_chart()[size]
    assert body["waist_height"] - body["inside_leg_length"] == pytest.approx(body["body_rise"], abs=15)
    assert body["total_crotch_length"] > 2 * body["body_rise"]
    assert body["outside_leg_length"] > body["waist_height"] > body["inside_leg_length"]
    assert body["ankle_girth"] < body["calf_girth"] < body["thigh_girth"] < body["hip_girth"]
    assert body["ankle_girth"] < body["knee_girth"] < body["thigh_girth"]


def test_an_estimated_hip_lies_above_the_crotch_of_a_rise_that_is_known() -> None:
    """A short rise between two heights, of a tall person whose chart puts the hip below it; a measured hip stays."""
    heights = {"bust_girth": 90 * cm, "height": 178 * cm, "waist_height": 98 * cm, "inside_leg_length": 79 * cm}
    body = make_body(heights, name="short rise")
    assert body["body_rise"] == pytest.approx(190.0)
    assert body["waist_to_hip"] == pytest.approx(HIP_ABOVE * 190.0)
    assert make_body({**heights, "waist_to_hip": 18 * cm}, name="measured")["waist_to_hip"] == pytest.approx(180.0)
    for size in workshop_chart().bodies():
        assert size["waist_to_hip"] < HIP_ABOVE * size["body_rise"], "no size of the chart is touched"


@pytest.mark.skipif(not survey.rows(), reason=survey.ABSENT)
def test_the_hip_of_measured_women_lies_where_the_estimate_may_put_it() -> None:
    """Fullest of the seat below the waist, as a part of waist to crotch, both from the floor: 993 women of the 2012
    Anthropometric Survey of U.S. Army Personnel (Gordon et al., NATICK/TR-15/007, 2014)."""
    shares = sorted(
        (row["waistheightomphalion"] - row["buttockheight"]) / (row["waistheightomphalion"] - row["crotchheight"])
        for row in survey.rows()
    )
    middle = shares[len(shares) // 2]
    assert middle == pytest.approx(0.74, abs=0.02) and middle < HIP_ABOVE < shares[len(shares) * 9 // 10]
