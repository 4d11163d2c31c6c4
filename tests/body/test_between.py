"""A size between two: one above the waist, another below it, drafted as one."""

from __future__ import annotations

import pytest

from kit import (
    Body,
    KitError,
    SizeChart,
    advise,
    bodice_block,
    cm,
    make_body,
    skirt_block,
    trouser_block,
    workshop_chart,
)
from kit.body.between import parts
from kit.body.measures import MEASUREMENTS
from kit.lesson.lesson import Lesson
from kit.piece.piece import Piece

CHART = workshop_chart()


def edges(pieces: tuple[Piece, ...], *names: str) -> list[float]:
    return [piece.edge(name).path.length for piece in pieces for name in names if piece.has_edge(name)]


def test_above_the_waist_it_is_one_size_and_below_it_the_other() -> None:
    body = CHART["W4/W6"]
    assert body.name == "W4/W6"
    assert set(measure.name for measure in body.measures) == set(CHART.measures)
    small, large = CHART["W4"], CHART["W6"]
    for name in ("bust_girth", "back_width", "armscye_depth", "back_waist_length", "arm_length", "neck_base_girth"):
        assert body[name] == small[name]
    for name in ("hip_girth", "waist_to_hip", "thigh_girth", "body_rise", "inside_leg_length"):
        assert body[name] == large[name]
    assert body["waist_girth"] == (small["waist_girth"] + large["waist_girth"]) / 2
    assert CHART["W4/W5/W6"]["waist_girth"] == CHART["W5"]["waist_girth"]
    assert all(name in MEASUREMENTS for name in CHART.measures)


def test_the_draft_is_one_size_above_and_the_other_below() -> None:
    """A bodice keeps its neck and shoulder, a skirt its hem; the armhole, which meets the side seam square, keeps its
    length within 2 mm; seams of front and back are equal all the same."""
    between, small, large = (bodice_block(CHART[size]) for size in ("W4/W6", "W4", "W6"))
    assert edges(between, "neck", "shoulder") == pytest.approx(edges(small, "neck", "shoulder"))
    assert edges(between, "armhole") == pytest.approx(edges(small, "armhole"), abs=2)
    assert edges(between, "hip") == pytest.approx(edges(large, "hip"))
    front, back = between
    assert front.edge("side").path.length == pytest.approx(back.edge("side").path.length, abs=0.5)
    skirts = [skirt_block(CHART[size]) for size in ("W4/W6", "W6")]
    assert edges(skirts[0], "hem") == pytest.approx(edges(skirts[1], "hem"))
    assert trouser_block(CHART["W6/W4"])


def test_its_names() -> None:
    assert "W4/W6" in CHART and "W6/W4" in CHART and " W4 / W6 " in CHART
    for name in ("W4/W4", "W4/", "/W4", "W4/W99", "W4/W5/W6/W7", "W4W6", ""):
        assert name not in CHART
        with pytest.raises(KitError, match="there is no size"):
            CHART[name]
    assert CHART.ordered(["W6", "W6/W4", "W5", "W4/W6", "W4"]) == ("W4", "W4/W6", "W6/W4", "W5", "W6")
    double = SizeChart("Double", ("36/38", "40/42"), (("bust_girth", (840.0, 920.0)),))
    assert double["36/38"]["bust_girth"] == 840.0
    assert parts("36/38/40/42", double.sizes) is None


def test_a_lesson_takes_it_and_remembers_it() -> None:
    lesson = Lesson("Vest", start=bodice_block)
    lesson.choose(size="W4/W6")
    assert lesson.body == CHART["W4/W6"] and lesson.work().body.name == "W4/W6"
    with pytest.raises(KitError, match="there is no size 'W4/W66'"):
        lesson.choose(size="W4/W66")


def body(bust: float, waist: float, hip: float) -> Body:
    return make_body({"bust_girth": bust * cm, "waist_girth": waist * cm, "hip_girth": hip * cm})


def test_advice_names_it() -> None:
    assert "that is size W4/W6." in str(advise(body(90, 80.5, 104.5), CHART))
    assert "that is size W4/W5/W6." in str(advise(body(90, 75.5, 104.5), CHART))
    assert "Drawn as one" not in str(advise(body(90, 71.5, 96), CHART))
