"""Cross-checks and between-size advice."""

from __future__ import annotations

import pytest

from kit.body import Body, Measure, advise, check_body, make_body, read_chart, workshop_chart
from kit.errors import KitError
from kit.units import cm
from tests.body.bdims import women
from tests.body.published import astm_bodies, misses, needed

W4 = {"bust_girth": "90 cm", "waist_girth": "71.5 cm", "hip_girth": "96 cm"}


@pytest.mark.parametrize("size", workshop_chart().names)
def test_no_size_of_the_workshop_is_doubted(size: str) -> None:
    assert check_body(workshop_chart()[size]) == ()


@needed
def test_published_sizes_are_not_doubted() -> None:
    """ASTM D5585-11e1 girths and the Misses chart (reprinted 2011-02-28)."""
    for column in (*astm_bodies().values(), *misses().values()):
        assert check_body(make_body(column)) == ()


def test_few_measured_women_are_doubted() -> None:
    """`bdims` (Heinz et al. 2003): real bodies are not called odd."""
    doubted = [doubt for woman in women() for doubt in check_body(make_body(woman))]
    assert len(doubted) <= 0.02 * 260


@pytest.mark.parametrize(
    ("change", "words"),
    [
        ({"waist_girth": "125 cm"}, ["waist girth, 125 cm (49 1/4 in)", "larger by far", "hip girth, 96 cm"]),
        ({"waist_girth": "44 cm"}, ["very small beside"]),
        ({"upper_chest_girth": "99 cm"}, ["bust girth, 90 cm", "is smaller than the upper chest girth, 99 cm"]),
        ({"under_bust_girth": "93 cm"}, ["under-bust girth", "is larger than the bust girth"]),
        (
            {"shoulder_length": "18 cm", "back_width": "33 cm", "neck_base_girth": "36 cm"},
            ["shoulder length, 18 cm", "does not go with the back width, 33 cm", "narrow"],
        ),
        (
            {"shoulder_length": "9 cm", "back_width": "42 cm", "neck_base_girth": "36 cm"},
            ["does not go with the back width", "wide"],
        ),
        ({"back_waist_length": "41 cm", "waist_height": "92 cm", "height": "168 cm"}, ["do not reach the nape"]),
        ({"waist_height": "104 cm", "inside_leg_length": "66 cm", "body_rise": "27 cm"}, ["38 cm", "27 cm"]),
        ({"back_waist_length": "41 cm", "armscye_depth": "28 cm"}, ["armscye depth, 28 cm", "is long beside"]),
    ],
)
def test_what_does_not_go_together_is_flagged(change: dict[str, str], words: list[str]) -> None:
    doubts = check_body(make_body({**W4, **change}))
    assert doubts
    assert set(change) & {name for doubt in doubts for name in doubt.measures}
    for word in words:
        assert word in " ".join(map(str, doubts))


def test_estimates_are_not_compared() -> None:
    assert check_body(make_body({"waist_girth": "125 cm"})) == ()


def test_inches_first() -> None:
    (doubt, *_) = check_body(make_body({**W4, "waist_girth": "125 cm"}), "inch")
    assert "49 1/4 in (125 cm)" in doubt.what


# ---- advice -----------------------------------------------------------------------------------------------


@pytest.mark.parametrize("size", workshop_chart().names)
def test_a_size_is_told_to_draw_itself(size: str) -> None:
    advice = advise(workshop_chart()[size], workshop_chart())
    assert advice.size == size
    assert advice.sentences == (advice.sentences[0],)
    assert {fit.size for fit in advice.fits} == {size}


def test_blending_down_the_side_seam() -> None:
    advice = advise(
        make_body({"bust_girth": "90.5 cm", "waist_girth": "81 cm", "hip_girth": "93 cm"}), workshop_chart()
    )
    assert advice.size == "W4"
    assert str(advice).startswith("Draw size W4 by the bust girth, 90.5 cm")
    assert "below the underarm blend the side seam out to W6 at the waist" in str(advice)
    assert "below the waist blend the side seam in to W3 at the hip" in str(advice)


def test_between_two_sizes() -> None:
    advice = advise(make_body({"bust_girth": "92 cm"}), workshop_chart())
    assert advice.size == "W5"
    assert "lies between W4 and W5" in str(advice) and "take W5" in str(advice)


def test_a_full_bust_is_drawn_by_the_upper_chest() -> None:
    advice = advise(make_body({"bust_girth": "100 cm", "upper_chest_girth": "89 cm"}), workshop_chart())
    assert advice.size == "W4"
    assert "10 cm (3 15/16 in) fuller" in str(advice) and "add at the bust" in str(advice)


def test_beyond_the_chart() -> None:
    assert "Beyond the largest size" in str(advise(make_body({"bust_girth": "140 cm"}), workshop_chart()))
    assert "Below the smallest size" in str(advise(make_body({"bust_girth": "70 cm"}), workshop_chart()))


def test_lengths_are_altered() -> None:
    advice = advise(make_body({"bust_girth": "90 cm", "back_waist_length": "43.4 cm"}), workshop_chart())
    assert "Back waist length: lengthen by 2 cm (3/4 in) between armpit and waist." in advice.sentences


def test_no_girth_no_advice_and_one_size_is_enough() -> None:
    with pytest.raises(KitError, match="without a girth"):
        advise(Body("x", (Measure("height", 1700.0),)), workshop_chart())
    one = read_chart("measure,One\nbust_girth,92\n", "One size")
    assert advise(make_body({"bust_girth": 93 * cm}), one).size == "One"
