"""Remedies: what is offered mends, as it is printed; what can be found by trying every value is found."""

from __future__ import annotations

import random
import re
from collections.abc import Callable, Mapping
from dataclasses import replace
from functools import lru_cache
from typing import Any

import pytest
from hypothesis import given
from hypothesis import settings as searching
from hypothesis import strategies as st

import kit
from kit import KitError, Lesson, blank_paper, cm, inch, mm, remedies
from kit.body.body import NOBODY
from kit.language import speaking
from kit.lesson.working import Reworking, work
from kit.pausing import Stopped, pausing
from kit.proof import prove
from kit.proof.mending import mending
from kit.proof.prove import errors
from kit.proof.remedy import Remedy, RemedyChange, heading, latest
from kit.units import parse
from tests.example import EXAMPLE, notebook_names

Values = Mapping[str, float]


def napkin() -> Lesson:
    """A square with its allowances: soundly drafted and proved whatever its size. Tests add steps that refuse."""
    lesson = Lesson("Napkin", start=blank_paper, units="cm")
    lesson.length("width", 40 * cm, least=20 * cm, most=60 * cm)
    lesson.length("turn", 10 * cm, least=0 * cm, most=20 * cm, said="hem turn")
    lesson.share("part", 0.5)
    lesson.count("folds", 4, least=1, most=9)

    @lesson.step("Draw the square", makes="front")
    def square(front, width):
        """Rule a square."""
        a, b, c, d = (front.place(x * width, y * width) for x, y in ((0, 0), (1, 0), (1, 1), (0, 1)))
        front.draw(bottom=a.to(b), one_side=b.to(c), top=c.to(d), other_side=d.to(a))
        front.allow(bottom=1 * cm, one_side=1 * cm, top=1 * cm, other_side=1 * cm)
        front.grain()
        front.cut(1)

    return lesson


def refusing(lesson: Lesson, wrong: Callable[..., bool], *uses: str) -> list[Any]:
    """Add a step that refuses where `wrong` says so of the values it uses; gives what it was asked about."""
    asked: list[Any] = []

    def step(**given: Any) -> None:
        values = [float(given[name]) for name in uses]
        asked.append(values)
        if wrong(*values):
            raise KitError(f"{values} will not do.")

    source = f"def refuse_{'_'.join(uses)}(front, {', '.join(uses)}):\n    step({', '.join(f'{n}={n}' for n in uses)})"
    space: dict[str, Any] = {"step": step}
    exec(source, space)
    lesson.step(f"Look at {', '.join(uses)}")(space[f"refuse_{'_'.join(uses)}"])
    return asked


def sound(lesson: Lesson, values: Values) -> bool:
    try:
        pattern = work(lesson.definition, lesson.body if lesson.measures else NOBODY, values)
    except KitError:
        return False
    return not any(finding.level == "error" for finding in prove(pattern))


def numbers(text: str) -> list[float]:
    """The lengths in a sentence, in mm."""
    return [float(parse(found)) for found in re.findall(r"(?:\d+ )?\d+(?:[./]\d+)? (?:cm|mm|in)\b", text)]


def assert_mends(lesson: Lesson, values: Values, remedy: Remedy) -> None:
    """The remedy mends as it is set, and as each of its printed numbers says."""
    known: dict[tuple[tuple[str, float], ...], bool] = {}  # what is printed is often the very value that is set

    def mends(values: Values) -> bool:
        key = tuple(sorted(values.items()))
        if key not in known:
            known[key] = sound(lesson, values)
        return known[key]

    assert mends({**values, **remedy.values})
    by_name = {p.name: p for p in lesson.parameters}
    for change in remedy.changes:
        assert by_name[change.name].least <= change.value <= by_name[change.name].most
        assert change.value != values[change.name]
    others = {c.name: c.other for c in remedy.changes if c.other is not None}
    assert mends({**values, **remedy.values, **others})
    if remedy.single:
        (change,) = remedy.changes
        said = str(remedy)
        assert change.label in said.lower()
        if change.kind == "length":
            printed = numbers(change.shown)
            assert len(printed) == (1 if change.other is None else 2)
            for number in printed:
                assert mends({**values, change.name: number}), said


# ---- a lesson of a few steps, every value of which can be tried -------------------------------------------


def test_the_least_value_that_mends_is_told_in_both_systems() -> None:
    lesson = napkin()
    refusing(lesson, lambda turn: turn < 57.3, "turn")
    lesson.change(turn=4 * cm)
    (found,) = remedies(lesson)
    assert str(found) == "Hem turn: at least 5.8 cm (2 5/16 in), now 4 cm (1 9/16 in)."
    assert_mends(lesson, lesson.values, found)
    lesson.change(**found.values)
    assert remedies(lesson) == ()


def test_both_directions_and_the_smaller_move() -> None:
    lesson = napkin()
    refusing(lesson, lambda turn: 31 < turn < 89.6, "turn")
    lesson.change(turn=4 * cm)
    (low,) = remedies(lesson)
    assert str(low) == "Hem turn: at most 3.1 cm (1 3/16 in), now 4 cm (1 9/16 in)."
    lesson.change(turn=8.5 * cm)
    (high,) = remedies(lesson)
    assert str(high) == "Hem turn: at least 9 cm (3 9/16 in), now 8.5 cm (3 3/8 in)."


def test_what_does_not_hold_beyond_is_not_called_a_bound() -> None:
    lesson = napkin()
    refusing(lesson, lambda turn: not 80 <= turn <= 120, "turn")
    lesson.change(turn=4 * cm)
    (found,) = remedies(lesson)
    assert str(found) == "Hem turn: 8 cm (3 3/16 in), now 4 cm (1 9/16 in)."


def test_the_lessons_own_value_is_looked_at_however_narrow_it_is() -> None:
    lesson = napkin()
    refusing(lesson, lambda turn: not 99.5 <= turn <= 100.005, "turn")
    lesson.change(turn=3 * cm)
    (found,) = remedies(lesson)
    assert (found.changes[0].value, found.changes[0].way) == (100.0, "to")
    assert found.changes[0].other is None  # no sixteenth of an inch lies in so narrow a place
    assert str(found) == "Hem turn: 10 cm, now 3 cm (1 3/16 in)."


def test_inches_are_counted_in_sixteenths() -> None:
    lesson = napkin()
    refusing(lesson, lambda turn: turn < 57.3, "turn")
    lesson.choose(units="inch")
    lesson.change(turn=1.5 * inch)
    (found,) = remedies(lesson)
    assert str(found) == "Hem turn: at least 2 5/16 in (5.9 cm), now 1 1/2 in (3.8 cm)."
    assert_mends(lesson, lesson.values, found)


def test_shares_and_counts() -> None:
    lesson = napkin()
    refusing(lesson, lambda part, folds: part > 0.334 and folds < 6, "part", "folds")
    assert [str(found) for found in remedies(lesson)] == [
        "Part: at most 33%, now 50%.",
        "Folds: at least 6, now 4.",
    ]


def test_a_failed_proof_has_remedies_too() -> None:
    """The hem takes 1 cm and the turn; the pattern gives it 6 cm (an allowance may be half a millimetre off)."""
    lesson = napkin()

    @lesson.step("Give the hem its allowance")
    def hem(front, width):
        front.allow(bottom=width * 0.15, one_side=0 * cm, top=0 * cm, other_side=0 * cm)

    @lesson.sew("Sew")
    def sewn(make, front, turn):
        make.edge_finish(front.one_side, front.top, front.other_side, leave=True)
        make.hem(front.bottom, first=1 * cm, second=turn - 5 * cm)

    assert sound(lesson, lesson.values)
    lesson.change(width=30 * cm)
    found = remedies(lesson)
    assert [(r.names, r.changes[0].value) for r in found] == [(("width",), 397.0), (("turn",), 85.0)]
    for remedy in found:
        assert_mends(lesson, lesson.values, remedy)


def test_several_values_where_no_single_one_mends() -> None:
    lesson = napkin()
    refusing(lesson, lambda turn: turn < 50, "turn")
    refusing(lesson, lambda folds: folds < 3, "folds")
    values = {**lesson.values, "turn": 20.0, "folds": 2.0}
    found = remedies(lesson, values=values)
    assert [str(each) for each in found] == [
        "Together: hem turn: 5 cm (2 in); folds: 3.",
        "Back to values known to be good: hem turn: 10 cm (3 15/16 in); folds: 4.",
    ]
    assert heading(found).startswith("No single value mends it inside its range. Each of these does:")
    for remedy in found:
        assert_mends(lesson, values, remedy)


def test_three_values_are_changed_together_and_no_more() -> None:
    low = {"turn": (20.0, 50), "folds": (2.0, 3), "part": (0.1, 0.25), "width": (220.0, 250)}

    def told(*names: str) -> list[str]:
        lesson = napkin()
        for name in names:
            refusing(lesson, lambda value, least=low[name][1]: value < least, name)
        values = {**lesson.values, **{name: low[name][0] for name in names}}
        found = remedies(lesson, values=values)
        for remedy in found:
            assert_mends(lesson, values, remedy)
        return [str(remedy) for remedy in found]

    assert told("turn", "folds", "part") == [
        "Together: hem turn: 5 cm (2 in); folds: 3; part: 25%.",
        "Back to values known to be good: hem turn: 10 cm (3 15/16 in); part: 50%; folds: 4.",
    ]
    assert told("turn", "folds", "part", "width") == [
        "Back to values known to be good: width: 40 cm (15 3/4 in); hem turn: 10 cm (3 15/16 in); part: 50%; folds: 4."
    ]


def test_going_back_is_to_the_good_values_given_or_not_offered() -> None:
    lesson = napkin()
    refusing(lesson, lambda turn, folds, part: turn + folds + part < 500, "turn", "folds", "part")
    assert remedies(lesson) == ()  # nothing mends it, the lesson's own values neither
    assert heading(()) == "No value was found, inside its range, that mends it."
    lesson = napkin()
    wrong = {(40.0, 1.0), (40.0, 2.0)}
    refusing(lesson, lambda turn, folds: (turn, folds) not in wrong ^ {(61.3, 7.0)}, "turn", "folds")
    values = {**lesson.values, "turn": 3.0, "folds": 4.0}
    good = {**lesson.values, "turn": 61.3, "folds": 7.0}
    back = list(mending(lesson.definition, NOBODY, values, good=good))[-1]
    assert back.back and back.values == {"turn": 61.3, "folds": 7.0}  # between two steps: exact, for 61 would not do
    assert sound(lesson, {**values, **back.values})


def test_only_what_can_matter_is_tried_and_steps_before_it_are_not_worked_again() -> None:
    lesson = napkin()
    before = refusing(lesson, lambda part: False, "part")
    refusing(lesson, lambda turn: turn < 57.3, "turn")
    after = refusing(lesson, lambda folds: False, "folds")
    lesson.change(turn=4 * cm)
    found = next(mending(lesson.definition, NOBODY, lesson.values, moved="turn"))
    assert found.names == ("turn",)
    assert len(before) == 1  # once, with the values as they are
    assert {folds for (folds,) in after} == {4.0}


def test_the_parameter_moved_last_comes_first() -> None:
    lesson = napkin()
    refusing(lesson, lambda width, turn: width < 300 + turn, "width", "turn")
    values = {**lesson.values, "width": 250.0, "turn": 100.0}
    for name in ("width", "turn"):
        try:
            first = next(mending(lesson.definition, NOBODY, values, moved=name))
        except StopIteration:
            pytest.fail("no remedy")
        assert first.names == ("width",)  # the turn alone cannot mend it
    values = {**lesson.values, "width": 350.0}
    for name in ("width", "turn"):
        assert next(mending(lesson.definition, NOBODY, values, moved=name)).names == (name,)


def test_a_sound_lesson_a_bad_value_and_no_lesson() -> None:
    lesson = napkin()
    assert remedies(lesson) == ()
    assert remedies(lesson, values={**lesson.values, "turn": 999.0}) == ()
    with pytest.raises(KitError, match="for a lesson, not for int"):
        remedies(3)  # type: ignore[arg-type]
    assert kit.remedies is remedies


def test_the_search_can_be_stopped_at_any_breath() -> None:
    lesson = napkin()
    refusing(lesson, lambda turn, folds: turn < 57.3 or folds < 5, "turn", "folds")
    taken = 0

    def count() -> None:
        nonlocal taken
        taken += 1

    with pausing(count):
        list(mending(lesson.definition, NOBODY, lesson.values))
    assert taken > 20
    for at in range(1, taken, 7):
        left = at

        def pause() -> None:
            nonlocal left
            left -= 1
            if left == 0:
                raise Stopped

        with pytest.raises(Stopped), pausing(pause):
            list(mending(lesson.definition, NOBODY, lesson.values))
        assert left == 0  # it drew no breath after it was stopped


@given(
    now=st.integers(0, 200),
    bad=st.tuples(st.floats(-10, 210), st.floats(-10, 210)).map(sorted),
    units=st.sampled_from(["cm", "inch"]),
)
@searching(max_examples=60)
def test_against_trying_every_step(now: int, bad: list[float], units: Any) -> None:
    """Where one stretch is bad, the nearest whole step outside it is found; where it is all bad, nothing is."""
    lesson = napkin()
    low, high = bad
    refusing(lesson, lambda turn: low <= turn <= high, "turn")
    lesson.choose(units=units)
    lesson.change(turn=now * mm)
    step = 1.0 if units == "cm" else 25.4 / 16
    every = [i * step for i in range(200) if i * step <= 200 + 1e-6] + ([200.0] if units == "cm" else [])
    good = [value for value in every if not low <= value <= high]
    found = [r for r in remedies(lesson) if not r.back]
    if not low <= now <= high or not good:
        assert found == []
        return
    (remedy,) = found
    assert_mends(lesson, lesson.values, remedy)
    away = abs(remedy.changes[0].value - now)
    assert away == pytest.approx(min(abs(value - now) for value in good))


def test_words_in_every_language() -> None:
    change = RemedyChange("turn", "hem turn", "length", 40.0, 58.0, "cm", 58.7375, "least")
    said = {}
    for code in ("en", "de", "es", "fr"):
        with speaking(code):
            said[code] = str(Remedy((change,)))
    assert [
        text.replace("\N{NO-BREAK SPACE}", " ").replace("\N{NARROW NO-BREAK SPACE}", " ") for text in said.values()
    ] == [
        "Hem turn: at least 5.8 cm (2 5/16 in), now 4 cm (1 9/16 in).",
        "Hem turn: mindestens 5,8 cm (2 5/16 Zoll), jetzt 4 cm (1 9/16 Zoll).",
        "Hem turn: 5,8 cm (2 5/16 pulg.) como mínimo; ahora 4 cm (1 9/16 pulg.).",
        "Hem turn : au moins 5,8 cm (2 5/16 po), à présent 4 cm (1 9/16 po).",
    ]
    many = Remedy(tuple(RemedyChange(f"p{n}", f"p {n}", "count", 1, 2) for n in range(9)), back=True)
    assert str(many) == "Back to 9 values known to be good."
    report = Remedy((change,)).as_dict()
    assert report["changes"] == [{"parameter": "turn", "from": 40.0, "to": 58.0, "way": "least"}]


def test_reworking_gives_what_working_gives() -> None:
    lesson = wrap_top()
    base = {p.name: p.default for p in lesson.parameters}
    # Without its bounds, so that a step refuses.
    free = tuple(replace(parameter, at_least=None) for parameter in lesson.definition.parameters)
    definition = replace(lesson.definition, parameters=free)
    again = Reworking(definition, lesson.body, base)
    for change in ({"tie_length": 600.0}, {"seam": 12.0}, {"hem_drop": 120.0, "wrap_share": 0.5}, {}):
        pattern, reached, refused = again.work(change)
        assert pattern == work(definition, lesson.body, {**base, **change})
        assert (reached, refused) == (len(definition.entries), "")
    pattern, reached, refused = again.work({"hem_drop": 40.0})
    assert pattern is None and definition.entries[reached].name == "tie_opening"
    with pytest.raises(KitError) as raised:
        work(definition, lesson.body, {**base, "hem_drop": 40.0})
    assert refused == str(raised.value)
    after = Reworking(definition, lesson.body, {**base, "hem_drop": 40.0})
    assert after.work({"seam": 12.0}) == (None, reached, refused)  # used after the step that refused
    assert after.work({"hem_drop": 140.0})[0] == work(definition, lesson.body, base)


def test_reworking_asks_the_bounds_as_working_does() -> None:
    lesson = wrap_top()
    base = {p.name: p.default for p in lesson.parameters}
    again = Reworking(lesson.definition, lesson.body, base)
    with pytest.raises(KitError) as raised:
        work(lesson.definition, lesson.body, {**base, "hem_drop": 40.0})
    assert again.work({"hem_drop": 40.0})[::2] == (None, str(raised.value))
    after = Reworking(lesson.definition, lesson.body, {**base, "hem_drop": 40.0})
    assert (after.pattern, after.refused) == (None, str(raised.value))
    assert after.work({"hem_drop": 140.0})[0] == work(lesson.definition, lesson.body, base)
    less = {"opening_size": 30.0, "hem_rise": 5.0}
    assert after.work(less)[0] == work(lesson.definition, lesson.body, {**base, "hem_drop": 40.0, **less})


# ---- the lessons people open ------------------------------------------------------------------------------


@lru_cache
def opened(name: str) -> Lesson:
    lesson: Lesson = notebook_names(EXAMPLE.with_name(f"{name}.ipynb"))["lesson"]
    return lesson


def sharp(name: str) -> Lesson:
    """An example with its underarm drawn as somebody might who gives no thought to short sleeves: the opening squared
    straight down, and a curve of any radius."""
    lesson = opened(name)

    @lesson.step("Square down the sleeve opening")
    def sleeve_opening(front, upper_arm_girth, sleeve_ease):  # type: ignore[no-untyped-def]
        """Square down {opening_depth}: half the upper arm and {sleeve_ease}."""
        front.draw(opening=front.overarm.square(upper_arm_girth / 2 + sleeve_ease, "down"), after=front.overarm)
        front.measure(opening_depth=front.opening)

    @lesson.step("Draw the underarm curve")
    def underarm_curve(front, underarm_drop):  # type: ignore[no-untyped-def]
        """Join the side {underarm_drop} down."""
        front.draw(underarm=front.opening.curve_into(front.side, at=underarm_drop), instead_of=front.armhole)
        front.join(front.underarm, front.side)

    return lesson


def wrap_top() -> Lesson:
    return sharp("tideline_wrap_top")


def own_values(lesson: Lesson, **changed: float) -> dict[str, float]:
    return {**{p.name: p.default for p in lesson.parameters}, **changed}


@pytest.mark.parametrize(
    ("name", "parameter", "value"),
    [
        ("tideline_wrap_top", "hem_drop", 40.0),
        ("tideline_wrap_top", "sleeve_length", 130.0),
        ("neap_tide_wrap", "sleeve_length", 160.0),
        ("harbour_jacket", "sleeve_length", 150.0),
        ("lantern_bag", "rounding", 75.0),
    ],
)
def test_settings_known_to_fail_are_mended(name: str, parameter: str, value: float) -> None:
    """Each lesson is sound with its own values; the one that was moved is among what mends it, and comes first."""
    lesson = sharp(name) if parameter == "sleeve_length" else opened(name)
    values = own_values(lesson, **{parameter: value})
    assert not sound(lesson, values)
    found = remedies(lesson, values=values)
    assert found[0].names == (parameter,)
    for remedy in found:
        assert_mends(lesson, values, remedy)


def failing(lesson: Lesson, chance: random.Random) -> dict[str, float]:
    """Random values inside the sliders that cannot be drafted or fail the proof."""
    while True:
        values = {}
        for p in lesson.parameters:
            value = chance.uniform(p.least, p.most)
            values[p.name] = float(round(value)) if p.kind != "share" else value
        if not sound(lesson, values):
            return values


def mended_at_random(name: str, seeds: range) -> tuple[int, int]:
    mended = 0
    for seed in seeds:
        lesson = opened(name)
        values = failing(lesson, random.Random(seed))
        found = remedies(lesson, values=values, count=2)
        for remedy in found:
            assert_mends(lesson, values, remedy)
        mended += bool(found)
    return mended, len(seeds)


@pytest.mark.parametrize("name", ["tideline_wrap_top", "harbour_jacket"])
def test_random_settings_that_fail_are_mended(name: str) -> None:
    mended, of = mended_at_random(name, range(2))
    assert mended == of


@pytest.mark.slow
@pytest.mark.parametrize("name", ["tideline_wrap_top", "harbour_jacket", "neap_tide_wrap"])
def test_many_random_settings_that_fail_are_mended(name: str) -> None:
    mended, of = mended_at_random(name, range(100, 108))
    assert mended == of


def test_the_errors_one_by_one_are_those_of_the_proof() -> None:
    lesson = wrap_top()
    pattern = work(lesson.definition, lesson.body, own_values(lesson, sleeve_length=130.0))
    every = list(errors(pattern))
    assert every
    assert {finding for _, finding in every} == {f for f in prove(pattern) if f.level == "error"}
    names = {name for name, _ in every}
    assert list(errors(pattern, names)) == every
    assert list(errors(pattern, {"outlines"})) == []


def test_a_remedy_that_comes_again_takes_the_place_of_the_first() -> None:
    lesson = napkin()
    refusing(lesson, lambda turn, folds: turn < 57.3 and folds < 6, "turn", "folds")
    values = {**lesson.values, "turn": 40.0}
    found = list(mending(lesson.definition, NOBODY, values))
    assert [remedy.names for remedy in found] == [("turn",), ("folds",)] * 2
    assert latest(found) == tuple(found[2:])
    assert found[0].values == found[2].values
