"""How a parameter stands on a slider, is read from a text box and is held to its range; the arithmetic is that of whole
millimetres and sixteenths of an inch (an inch is 25.4 mm, the international yard and pound agreement of 1959)."""

from __future__ import annotations

from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from kit.errors import KitError
from kit.lesson.parameter import Parameter, given_values, in_units, parameter_of, with_parameter
from kit.lesson.pattern import ParameterValue
from kit.lesson.presets import same_values
from kit.lesson.scale import Scale
from kit.units import Length, cm, inch, mm

LONG = Parameter("hem_drop", "length", 80.0, 20.3, 180.4, why="how long", said="drop of the hem")
PART = Parameter("part", "share", 0.5, 0.25, 0.75)
FOLDS = Parameter("folds", "count", 4.0, 1.0, 9.0)
SIXTEENTH = 25.4 / 16


@pytest.mark.parametrize(
    ("parameter", "system", "per_unit", "unit", "step", "least", "most"),
    [
        (LONG, "cm", 10, 10.0, 0.1, 2.0, 18.1),  # outward to whole millimetres
        (LONG, "inch", 16, 25.4, 0.0625, 12 / 16, 114 / 16),  # 12.79 and 113.6 sixteenths
        (PART, "cm", 1, 0.01, 1.0, 25.0, 75.0),
        (FOLDS, "inch", 1, 1.0, 1.0, 1.0, 9.0),
    ],
)
def test_its_steps_and_ends(parameter, system, per_unit, unit, step, least, most) -> None:
    scale = Scale(parameter, system)
    assert (scale.per_unit, scale.unit, scale.step) == (per_unit, pytest.approx(unit), pytest.approx(step))
    assert (scale.least, scale.most) == (pytest.approx(least), pytest.approx(most))


def test_ends_on_a_whole_step_stay_there() -> None:
    scale = Scale(Parameter("a", "length", 50.0, 20.0, 180.0), "cm")
    assert (scale.least, scale.most) == (2.0, 18.0)
    inches = Scale(Parameter("a", "length", 50.8, 25.4, 25.4 * 4), "inch")
    assert (inches.least, inches.most) == (1.0, 4.0)
    assert list(scale.within(20.0, 22.0)) == [20, 21, 22]


@pytest.mark.parametrize(
    ("parameter", "system", "value", "number"),
    [
        (LONG, "cm", 80.0, 8.0),
        (LONG, "cm", 80.4, 8.0),
        (LONG, "cm", 80.6, 8.1),
        (LONG, "cm", 5.0, 2.0),
        (LONG, "cm", 500.0, 18.1),
        (LONG, "inch", 50.8, 2.0),
        (LONG, "inch", 50.8 + 0.4 * SIXTEENTH, 2.0),
        (LONG, "inch", 50.8 + 0.6 * SIXTEENTH, 2.0625),
        (PART, "cm", 0.333, 33.0),
        (PART, "cm", 0.9, 75.0),
        (FOLDS, "cm", 6.0, 6.0),
    ],
)
def test_where_a_value_stands(parameter, system, value, number) -> None:
    assert Scale(parameter, system).number(value) == pytest.approx(number)


@pytest.mark.parametrize(
    ("parameter", "system", "number", "value"),
    [
        (LONG, "cm", 8.1, 81.0),
        (LONG, "cm", 2.0, 20.3),  # the ends of a slider are the range's own
        (LONG, "cm", 18.1, 180.4),
        (LONG, "inch", 2.0625, 33 * SIXTEENTH),
        (PART, "cm", 33.0, 0.33),
        (FOLDS, "cm", 7.0, 7.0),
    ],
)
def test_what_a_place_stands_for(parameter, system, number, value) -> None:
    assert Scale(parameter, system).value(number) == pytest.approx(value, abs=1e-9)


@given(st.integers(3, 18), st.sampled_from(["cm", "inch"]))
def test_a_step_and_its_value_are_one(steps: int, system: Any) -> None:
    for parameter, size in ((LONG, 1.0 if system == "cm" else SIXTEENTH), (PART, 0.01), (FOLDS, 1.0)):
        scale = Scale(parameter, system)
        assert scale.at(steps) == pytest.approx(steps * size)
        assert list(scale.within(scale.at(steps), scale.at(steps + 2))) == [steps, steps + 1, steps + 2]
        assert list(scale.within(scale.at(steps) + size / 10, scale.at(steps + 2) - size / 10)) == [steps + 1]


@pytest.mark.parametrize(("off", "same"), [(0.0, True), (0.02, True), (-0.02, True), (0.03, False), (-0.1, False)])
def test_the_same_place_is_within_a_quarter_of_a_step(off: float, same: bool) -> None:
    assert Scale(LONG, "cm").same(8.0, 8.0 + off) is same


def test_texts_in_both_systems() -> None:
    assert Scale(LONG, "cm").text(81.0) == "8.1 cm" and Scale(LONG, "cm").other(81.0) == "3 3/16 in"
    assert Scale(LONG, "inch").text(81.0) == "3 3/16 in" and Scale(LONG, "inch").other(81.0) == "8.1 cm"
    assert Scale(PART, "cm").text(0.33) == "33%" and Scale(PART, "cm").other(0.33) == ""
    assert Scale(FOLDS, "inch").text(3.0) == "3" and Scale(FOLDS, "inch").other(3.0) == ""


@pytest.mark.parametrize(
    ("parameter", "system", "typed", "value"),
    [
        (LONG, "cm", "9.5", 95.0),
        (LONG, "cm", "95 mm", 95.0),
        (LONG, "inch", "3 1/2", 88.9),
        (LONG, "inch", "8 cm", 80.0),
        (PART, "cm", "70 %", 0.7),
        (PART, "cm", " 33,5%", 0.335),
        (FOLDS, "cm", " 5 ", 5.0),
    ],
)
def test_what_is_typed(parameter, system, typed, value) -> None:
    assert Scale(parameter, system).read(typed) == pytest.approx(value)


@pytest.mark.parametrize(
    ("parameter", "typed", "words"),
    [
        (LONG, "2 cm", "Drop of the hem: .*2 cm .*2.*18"),
        (LONG, "181 mm", "Drop of the hem"),
        (PART, "some", "Part"),
        (PART, "nan", "Part"),
        (PART, "80%", "Part: .*80%.*25%.*75%"),
        (FOLDS, "2.5", "Folds"),
        (FOLDS, "inf", "Folds"),
        (FOLDS, "10", "Folds: .*10.*1.*9"),
    ],
)
def test_what_cannot_be_read(parameter, typed, words) -> None:
    with pytest.raises(KitError, match=words) as error:
        Scale(parameter, "cm").read(typed)
    assert error.value.do


# ---- parameters -------------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("value", "fits"), [(20.3, True), (180.4, True), (20.2, False), (180.5, False), (20.3 - 1e-9, True), (99.0, True)]
)
def test_the_range_holds_its_ends(value: float, fits: bool) -> None:
    if fits:
        assert LONG.checked(value) == value
    else:
        with pytest.raises(KitError, match="drop of the hem"):
            LONG.checked(value)


def test_how_values_are_shown() -> None:
    assert LONG.show(81.0) == "8.1 cm (3 3/16 in)" and LONG.show(81.0, "inch") == "3 3/16 in (8.1 cm)"
    assert PART.show(0.335) in ("33%", "34%") and PART.show(0.5) == "50%" and FOLDS.show(3.0) == "3"
    assert LONG.label == "drop of the hem" and FOLDS.label == "folds"
    assert Parameter("hem_drop", "length", 1, 0, 2).label == "hem drop"
    valued = LONG.valued(90.0)
    assert valued == ParameterValue("hem_drop", 90.0, "length", 80.0, 20.3, 180.4, "how long", "drop of the hem")


def test_what_is_no_parameter() -> None:
    for given_, words in (
        (("two words", "length", 1, 0, 2), "cannot be used as a name"),
        (("turn", "length", 1, 3, 2), "least value is larger"),
        (("turn", "length", 5, 0, 2), "Parameter 'turn'"),
        (("turn", "count", 0, 1, 2), "Parameter 'turn'"),
    ):
        with pytest.raises(KitError, match=words):
            parameter_of(*given_)  # type: ignore[arg-type]
    assert parameter_of("turn", "length", 2, 2, 2) == Parameter("turn", "length", 2.0, 2.0, 2.0)


def test_a_parameter_of_the_same_name_takes_the_place() -> None:
    wider = Parameter("part", "share", 0.5, 0.0, 1.0)
    assert with_parameter((LONG, PART, FOLDS), wider) == (LONG, wider, FOLDS)
    assert with_parameter((LONG, FOLDS), wider) == (LONG, FOLDS, wider)


def test_values_with_and_without_units() -> None:
    every = (LONG, PART, FOLDS)
    found = given_values(every, {"hem_drop": 9 * cm, "part": 0.3, "folds": 2})
    assert found == {"hem_drop": 90.0, "part": 0.3, "folds": 2.0}
    back = in_units(every, {**found, "gone": 3.0})
    assert back == {"hem_drop": 90 * mm, "part": 0.3, "folds": 2.0} and isinstance(back["hem_drop"], Length)
    assert given_values(every, {"hem_drop": 2 * inch}) == {"hem_drop": pytest.approx(50.8)}
    for wrong in ({"hem_drop": 90.0}, {"hem_drap": 9 * cm}, {"hem_drop": 90 * cm}, {"part": 0.9}):
        with pytest.raises(KitError):
            given_values(every, wrong)
    with pytest.raises(KitError):
        in_units(every, {"folds": 10.0})


@pytest.mark.parametrize(("off", "same"), [(0.0, True), (9e-4, True), (1.1e-3, False), (-5.0, False)])
def test_sets_of_values_agree_to_a_thousandth(off: float, same: bool) -> None:
    one = {"a": 1.0, "b": 2.0}
    assert same_values(one, {"a": 1.0, "b": 2.0 + off}, ["a", "b"]) is same
    assert same_values(one, {"a": 1.0, "b": 2.0 + off}, ["a"]) is True
    assert same_values(one, {"a": 1.0}, ["a", "b"]) is True
