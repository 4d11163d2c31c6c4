"""Size charts: reading, refusing, placing between sizes; the workshop's invented chart against published ones."""

from __future__ import annotations

import pytest

from kit.body import MEASUREMENTS, SizeChart, load_chart, make_body, read_chart, workshop_chart
from kit.errors import KitError
from kit.units import cm, inch
from tests.body.published import astm, misses, needed

SMALL = "measure,S,M,L\nbust_girth,80,90,102\nwaist_girth,62,70,84\nback_waist_length,40,41,42\n"


def test_the_workshop_chart_has_every_measurement_and_ten_sizes() -> None:
    chart = workshop_chart()
    assert chart.names == tuple(f"W{n}" for n in range(1, 11))
    assert set(chart.measures) == set(MEASUREMENTS)
    assert chart is workshop_chart()
    assert chart["W4"]["bust_girth"] == pytest.approx(900)
    assert not chart["W4"].estimated


@pytest.mark.parametrize("size", workshop_chart().names)
def test_the_workshop_bodies_hang_together(size: str) -> None:
    """Relations of the trade (common practice, no source)."""
    body = workshop_chart()[size]
    assert body["waist_girth"] < body["bust_girth"] < body["hip_girth"]
    assert body["under_bust_girth"] < body["bust_girth"]
    assert body["waist_girth"] < body["hip_girth"]
    assert body["front_width"] < body["back_width"]
    assert 0.42 < body["armscye_depth"] / body["back_waist_length"] < 0.58
    assert body["wrist_girth"] < body["upper_arm_girth"] < body["neck_base_girth"]
    assert body["back_waist_length"] + body["waist_to_hip"] < 0.42 * body["height"]


@needed
@pytest.mark.parametrize("size", ["0", "2", "4", "6", "8", "10", "12", "14", "16", "18", "20"])
def test_the_workshop_chart_stands_near_astm(size: str) -> None:
    """ASTM D5585-11e1 Table 1 girths; at the same bust the invented chart differs by 1 1/4 in at most (its waist
    from the nearer of the straight and the curvy)."""
    column = astm()[size]
    body = make_body({"bust_girth": column["bust girth"]})
    for ours, printed in (
        ("neck_base_girth", "neck base girth"),
        ("upper_chest_girth", "upper-chest girth"),
        ("under_bust_girth", "under-bust girth"),
    ):
        assert body[ours] == pytest.approx(float(column[printed]), abs=1.25 * 25.4), ours
    straight, curvy = (float(column[f"waist girth ({shape})"]) for shape in ("straight", "curvy"))
    assert curvy - 31.75 < body["waist_girth"] < straight + 31.75


@needed
@pytest.mark.parametrize("size", ["6", "8", "10", "12", "14", "16", "18", "20"])
def test_the_workshop_chart_stands_near_the_misses_chart(size: str) -> None:
    """The Misses chart of printed patterns (reprinted 2011-02-28): hip within 1 1/4 in and back waist length
    within 1/2 in at the same bust."""
    row = misses()[size]
    body = make_body({"bust_girth": row["bust_girth"]})
    assert body["hip_girth"] == pytest.approx(float(row["hip_girth"]), abs=31.75)
    assert body["back_waist_length"] == pytest.approx(float(row["back_waist_length"]), abs=12.7)


def test_values_between_and_beyond_the_sizes() -> None:
    chart = read_chart(SMALL, "Small")
    assert chart.place("bust_girth", 850) == pytest.approx(0.5)
    assert chart.read("waist_girth", 0.5) == pytest.approx(660)
    assert chart.place("bust_girth", 1080) == pytest.approx(2.5)
    assert chart.read("waist_girth", 2.5) == pytest.approx(910)
    assert chart.place("bust_girth", 780) == pytest.approx(-0.2)
    assert chart.read("waist_girth", -0.2) == pytest.approx(604)
    for column, size in enumerate(chart.names):
        assert chart.place("bust_girth", chart[size]["bust_girth"]) == pytest.approx(column)


def test_one_size_is_a_chart_too() -> None:
    chart = read_chart("measure,One\nbust_girth,92\nhip_girth,98\n", "One size")
    assert make_body({"bust_girth": 95 * cm}, chart)["hip_girth"] == pytest.approx(980)


def test_units_of_a_chart_file() -> None:
    assert read_chart("unit,inch\nmeasure,A\nbust_girth,36 1/2\n", "x")["A"]["bust_girth"] == pytest.approx(36.5 * 25.4)
    assert read_chart("unit,mm\nmeasure,A\nbust_girth,905.5\n", "x")["A"]["bust_girth"] == pytest.approx(905.5)
    assert read_chart("# ours\n\nmeasure,A\nbust_girth,36 in\n", "x")["A"]["bust_girth"] == pytest.approx(914.4)
    assert read_chart("unit,mm\nmeasure,A\nbust_girth,90 cm\n", "x")["A"]["bust_girth"] == pytest.approx(900)


def test_the_nearest_size() -> None:
    chart = workshop_chart()
    for size in chart.names:
        assert chart.nearest(chart[size]).name == size
    assert chart.nearest(make_body({"bust_girth": 36 * inch})).name == "W4"
    assert chart.nearest(make_body({"bust_girth": 150 * cm})).name == "W10"


def test_loading_a_file(tmp_path) -> None:
    path = tmp_path / "ours.csv"
    path.write_text("\ufeff" + SMALL, "utf-8")
    assert load_chart(path).title == "ours.csv"
    with pytest.raises(KitError, match="no such file"):
        load_chart(tmp_path / "none.csv")
    with pytest.raises(KitError, match="cannot be read"):
        load_chart(tmp_path)
    path.write_bytes(b"\xff\xfe\x00\x81")
    with pytest.raises(KitError, match="not plain text"):
        load_chart(path)


@pytest.mark.parametrize(
    ("text", "words"),
    [
        ("", ["not 'measure'"]),
        ("size,S\nbust_girth,80\n", ["headed 'size'", "measure"]),
        ("measure\nbust_girth\n", ["no sizes"]),
        ("measure,S,S\nbust_girth,80,90\n", ["'S'", "twice"]),
        ("measure,S,M\nbust_grith,80,90\n", ["bust_grith", "bust_girth"]),
        ("measure,S,M\nbust_girth,80,79\n", ["bust girth", "falls", "80 cm", "79 cm", "size M"]),
        ("measure,S,M\nbust_girth,80,80\n", ["stays"]),
        ("measure,S,M\nbust_girth,80\n", ["line 2", "column M", "missing"]),
        ("measure,S,M\nbust_girth,80,90,100\n", ["3 values for 2 sizes"]),
        ("measure,S,M\nbust_girth,80,ninety\n", ["line 2", "column M", "'ninety'"]),
        ("measure,S,M\nbust_girth,80,900\n", ["size M", "bust girth", "900 cm", "mm typed as cm"]),
        ("measure,S,M\nback_width,30,31\n", ["no girth", "head_girth"]),
        ("measure,S\nbust_girth,80\nbust_girth,81\n", ["stands twice"]),
        ("unit,ell\nmeasure,S\nbust_girth,80\n", ["'ell'"]),
    ],
)
def test_a_faulty_chart_is_refused(text: str, words: list[str]) -> None:
    with pytest.raises(KitError) as caught:
        read_chart(text, "Ours")
    for word in words:
        assert word in str(caught.value)


def test_an_unknown_size_names_the_near_one() -> None:
    with pytest.raises(KitError, match="Did you mean 'W4'"):
        workshop_chart()["W44"]


def test_rows_of_uneven_length_are_refused() -> None:
    with pytest.raises(KitError, match="1 values for 2 sizes"):
        SizeChart("x", ("S", "M"), (("bust_girth", (800.0,)),))


def test_a_chart_for_small_children_is_read() -> None:
    """A child 92 cm tall, from memory of charts for children's clothes: neck to waist 23 cm, arm 31, inside leg 38."""
    chart = read_chart(
        "measure,92\nheight,92\nback_waist_length,23\nneck_base_girth,25\nshoulder_length,7\narm_length,29\n"
        "thigh_girth,29\nknee_girth,21\ncalf_girth,19\nankle_girth,13.5\nwaist_height,53\noutside_leg_length,54\n"
        "inside_leg_length,38\nback_width,19.5\nfront_waist_length,25",
        "Small",
    )
    assert float(chart["92"]["back_waist_length"]) == 230.0
    with pytest.raises(KitError, match="typed as cm"):  # 16 in is a grown person's
        read_chart("measure,92\nback_waist_length,16", "Small")
