"""Try-ons that change values while a lesson is sewn: which drafts there are."""

from __future__ import annotations

from pathlib import Path

import pytest

from kit.errors import KitError
from kit.lesson.tried import corrected, counting, first_cut, last_corrected
from kit.proof import prove
from kit.units import cm
from tests.fitted import IN, codes, told, top, trial, tunic


@pytest.fixture(autouse=True)
def alone(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.chdir(tmp_path)


# ---- which drafts ----------------------------------------------------------------------------------------------


@pytest.mark.parametrize("present", [25, 28])
def test_both_drafts_are_the_same_whichever_of_the_two_the_slider_stands_at(present: int) -> None:
    lesson = tunic(lambda make: make.try_on("It gapes.", **IN))
    lesson.change(top_width=present * cm)
    pattern = lesson.work()
    (tried,) = pattern.tries
    assert top(pattern) == present * 10
    assert (top(tried.before), top(tried.after)) == (280, 250)
    assert first_cut(pattern)["top_width"] == 280 and last_corrected(pattern)["top_width"] == 250
    assert trial(pattern).stage == "changed"


def test_one_value_alone_starts_from_the_present_one() -> None:
    lesson = tunic(lambda make: make.try_on(top_width=22 * cm), top=26 * cm)
    (tried,) = lesson.work().tries
    assert (top(tried.before), top(tried.after)) == (260, 220)
    lesson.change(top_width=27 * cm)
    (tried,) = lesson.work().tries
    assert (top(tried.before), top(tried.after)) == (270, 220)


def test_whoever_sets_another_value_gets_no_change_and_is_told_so() -> None:
    lesson = tunic(lambda make: make.try_on("It gapes.", **IN))
    lesson.change(top_width=26 * cm)
    pattern = lesson.work()
    assert trial(pattern).stage == "elsewhere" and first_cut(pattern)["top_width"] == 260
    assert "Look for what was found when the first one was tried on: It gapes." in told(pattern)
    assert codes(pattern, "note") == ["tried_on_nothing"] and codes(pattern, "error") == []


def test_two_try_ons_follow_one_another() -> None:
    def both(make):
        make.try_on("It gapes.", top_width=(28 * cm, 25 * cm))
        make.try_on("It gapes still.", top_width=(25 * cm, 24 * cm))

    for present in (28, 25, 24):
        lesson = tunic(both)
        lesson.change(top_width=present * cm)
        pattern = lesson.work()
        one, two = pattern.tries
        assert [top(p) for p in (one.before, one.after, two.before, two.after)] == [280, 250, 250, 240]
        assert last_corrected(pattern)["top_width"] == 240


def test_what_is_sewn_after_it_is_sewn_on_the_second_draft() -> None:
    pattern = tunic(lambda make: make.try_on("It gapes.", **IN)).work()
    assert top(counting(pattern, "shoulders", 0)[0]) == 280
    assert top(counting(pattern, "sides", 0)[0]) == 250
    assert counting(pattern, "trial", 0)[1] is trial(pattern)


def test_a_draft_that_cannot_be_drawn_is_told_and_stops_nothing() -> None:
    lesson = tunic(lambda make: make.try_on("It gapes.", **IN))

    @lesson.step("Only narrow ones")
    def narrow(front, top_width):
        """Nothing is drawn."""
        if top_width > 27 * cm:
            raise KitError("no paper is that wide.")

    pattern = lesson.work()
    assert trial(pattern).stage == "refused" and "try_on_refused" in codes(pattern, "error")
    assert any("no paper is that wide" in finding.what for finding in prove(pattern))


@pytest.mark.parametrize(
    ("write", "says"),
    [
        (lambda make: make.try_on(top_width=(28, 25)), "cm"),
        (lambda make: make.try_on(top_width=(28 * cm, 25 * cm, 24 * cm)), "two values"),
        (lambda make: make.try_on(top_widht=25 * cm), "top_width"),
        (lambda make: make.try_on(top_width=(28 * cm, 80 * cm)), "80 cm"),
        (lambda make: make.try_on("It gapes.", note="It pulls."), "twice"),
        (lambda make: make.try_on(7), "mark"),
    ],
)
def test_what_is_written_wrong_is_told_plainly(write, says: str) -> None:
    with pytest.raises(KitError, match="Try it on") as caught:
        tunic(write).work()
    assert says in str(caught.value)


# ---- the buyer's -----------------------------------------------------------------------------------------------


def test_the_corrected_pattern_says_what_was_found_and_changes_nothing() -> None:
    pattern = corrected(tunic(lambda make: make.try_on("It gapes.", **IN)).work())
    assert told(pattern)[1:] == [
        "When the first one was tried on, this was found: It gapes. The pattern has it corrected already."
    ]
    assert not pattern.tries and codes(pattern, "note") == []


def test_worked_again_for_other_values_the_drafts_follow() -> None:
    """What looks for remedies works a lesson again from the first step that uses a changed value."""
    from kit.body.body import NOBODY
    from kit.lesson.working import Reworking

    lesson = tunic(lambda make: make.try_on("It gapes.", **IN))
    again = Reworking(lesson.definition, NOBODY, lesson.values)
    assert again.pattern is not None and trial(again.pattern).stage == "changed"
    pattern, _, refused = again.work({"top_width": 280.0})
    assert refused == "" and pattern is not None
    (tried,) = pattern.tries
    assert (top(pattern), top(tried.before), top(tried.after)) == (280, 280, 250)
    pattern, _, _ = again.work({"top_width": 262.0})
    assert pattern is not None and trial(pattern).stage == "elsewhere"
