"""Goals and exercises: what they say of a draft, checked against lengths worked out by hand."""

from __future__ import annotations

import math
from pathlib import Path

import pytest

from kit import (
    KitError,
    Lesson,
    at_least,
    at_most,
    blank_paper,
    cm,
    grows,
    inch,
    is_length,
    keeps,
    mm,
    moves,
    passes_proof,
    shrinks,
)
from kit.lesson.goals import Attempt, Goal
from kit.proof import prove


@pytest.fixture
def lesson(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Lesson:
    """A rectangle of `wide` by 30 cm whose top right corner may be moved: every length is known without the kit."""
    monkeypatch.chdir(tmp_path)
    made = Lesson("Napkin", start=blank_paper)
    made.length("wide", 40 * cm, least=1 * cm, most=90 * cm)
    made.length("slope", 0 * cm, least=-10 * cm, most=10 * cm)

    @made.step("Draw it", makes="napkin")
    def draw(napkin, wide, slope):
        """Draw it {wide} wide; {slope}."""
        a, b = napkin.place(0 * mm, 0 * mm), napkin.place(wide, 0 * mm)
        top, d = napkin.place(wide, 30 * cm + slope), napkin.place(0 * mm, 30 * cm)
        napkin.draw(hem=a.to(b), side=b.to(top), top=top.to(d), fold=d.to(a))
        napkin.mark(tip=top)
        napkin.say(hem="hem edge")
        napkin.cut(1, title="Napkin")

    @made.finished("Hem in all")
    def hem(napkin):
        return napkin.hem.length * 2

    return made


def attempt(lesson: Lesson, **values: float) -> Attempt:
    return Attempt(lesson.work(values={}), lesson.work(values=values), "cm", prove)


def said(lesson: Lesson, goal: Goal, **values: float) -> str:
    result = goal.result(attempt(lesson, **values))
    return f"{'met' if result.met else 'open'}: {result.said}"


@pytest.mark.parametrize(
    ("wide", "words"),
    [
        (400.0, "open: Napkin: hem edge – not longer yet; 2 cm (3/4 in) missing."),
        (414.0, "open: Napkin: hem edge – 1.4 cm (9/16 in) longer so far; 6 mm (1/4 in) missing."),
        (418.0, "met: Napkin: hem edge – 1.8 cm (11/16 in) longer, as asked."),
        (420.0, "met: Napkin: hem edge – 2 cm (3/4 in) longer, as asked."),
        (426.0, "open: Napkin: hem edge – 2.6 cm (1 in) longer; that is 6 mm (1/4 in) too much."),
        (390.0, "open: Napkin: hem edge – 1 cm (3/8 in) shorter now; it should become 2 cm (3/4 in) longer."),
    ],
)
def test_grows_says_how_much_is_missing(lesson: Lesson, wide: float, words: str) -> None:
    assert said(lesson, grows("napkin.hem", 2 * cm), wide=wide) == words


def test_shrinks_is_the_other_way_round(lesson: Lesson) -> None:
    goal = shrinks("napkin.hem", 1 * inch)
    assert said(lesson, goal, wide=385.0).endswith("1.5 cm (5/8 in) shorter so far; 1 cm (3/8 in) missing.")
    assert said(lesson, goal, wide=374.6).startswith("met")
    assert "longer now; it should become" in said(lesson, goal, wide=420.0)


def test_keeps_minds_length_and_place(lesson: Lesson) -> None:
    """With the corner raised by 3 cm the top is longer by sqrt(400² + 30²) - 400 = 1.1 mm; moved sideways the right
    side stays 30 cm long but lies elsewhere."""
    assert said(lesson, keeps("napkin.fold"), wide=420.0, slope=30.0).startswith("met")
    longer = math.hypot(400, 30) - 400
    assert longer == pytest.approx(1.12, abs=0.01)
    assert said(lesson, keeps("napkin.top"), slope=30.0).endswith("1 mm (1/16 in) longer; it should stay as it was.")
    assert said(lesson, keeps("napkin.side"), wide=420.0) == (
        "open: Napkin: side – moved by 2 cm (3/4 in); it should stay where it was."
    )
    assert said(lesson, keeps("napkin.top", within=3 * cm), slope=20.0).startswith("met")


def test_lengths_of_finished_measurements_and_runs_of_edges(lesson: Lesson) -> None:
    assert said(lesson, is_length("Hem in all", 90 * cm), wide=430.0) == (
        "open: Hem in all – 86 cm (33 7/8 in); 4 cm (1 9/16 in) missing."
    )
    assert said(lesson, is_length("Hem in all", 90 * cm), wide=450.0).startswith("met")
    assert said(lesson, is_length("napkin.hem + napkin.side", 75 * cm), wide=450.0) == (
        "met: Napkin: hem edge and side – 75 cm (29 1/2 in), as asked."
    )
    assert said(lesson, at_least("napkin.hem", 50 * cm), wide=400.0).endswith(
        "40 cm (15 3/4 in); 10 cm (3 15/16 in) missing."
    )
    assert said(lesson, at_most("napkin.hem", 35 * cm), wide=400.0).endswith("40 cm (15 3/4 in); 5 cm (2 in) too much.")
    assert said(lesson, at_most("napkin.hem", 40 * cm), wide=400.0).startswith("met")


def test_moves_names_both_ways(lesson: Lesson) -> None:
    goal = moves("napkin.tip", up=2 * cm, out=1 * cm)
    assert (
        said(lesson, goal, slope=0.0) == "open: Napkin: tip – still to move 2 cm (3/4 in) up and 1 cm (3/8 in) outward."
    )
    assert said(lesson, goal, slope=30.0, wide=410.0) == "open: Napkin: tip – still to move 1 cm (3/8 in) down."
    assert said(lesson, goal, slope=20.0, wide=410.0).startswith("met")


def test_the_proof_can_be_a_goal(lesson: Lesson) -> None:
    """The napkin has no grainline and no allowances, which the proof says."""
    words = said(lesson, passes_proof())
    assert words.startswith("open: The proof finds")
    clean = Attempt(lesson.work(), lesson.work(), "cm", lambda pattern: ())
    assert passes_proof().result(clean).met


@pytest.mark.parametrize(
    ("goal", "words"),
    [
        (grows("napkin.hemm", 1 * cm), "Did you mean 'hem'?"),
        (grows("napkn.hem", 1 * cm), "Did you mean 'napkin'?"),
        (keeps("napkin.tpo"), "Did you mean 'top'?"),
        (at_least("Hem in al", 1 * cm), "Did you mean 'Hem in all'?"),
        (moves("napkin.tp", up=1 * cm), "Did you mean 'tip'?"),
        (moves("tip", up=1 * cm), "does not name a point"),
    ],
)
def test_a_name_that_is_not_drawn_is_refused_with_the_near_one(lesson: Lesson, goal: Goal, words: str) -> None:
    exercise = lesson.exercise("Try", goals=goal)
    with pytest.raises(KitError, match="Exercise 'Try'") as refused:
        exercise.results(attempt(lesson))
    assert words in str(refused.value)


def test_what_is_no_goal_is_refused(lesson: Lesson) -> None:
    for make, words in (
        (lambda: grows("napkin.hem", 2), "2 has no unit"),
        (lambda: grows("napkin.hem", 0 * cm), "not a length to ask for"),
        (lambda: moves("napkin.tip"), "nowhere"),
        (lambda: lesson.exercise("", goals=keeps("napkin.hem")), "needs a title"),
        (lambda: lesson.exercise("Try", goals=()), "nothing says when it is done"),
        (lambda: lesson.exercise("Try", goals=["longer"]), "is not a goal"),
        (lambda: lesson.exercise("Try", goals=keeps("napkin.hem"), answer={"wide": [1]}), "is not a value for wide"),
    ):
        with pytest.raises(KitError, match=words):
            make()


def test_an_exercise_written_again_takes_its_place(lesson: Lesson) -> None:
    lesson.exercise("First", goals=keeps("napkin.hem"))
    lesson.exercise("Second", goals=keeps("napkin.hem"))
    lesson.exercise("First", "Now with a task.", goals=keeps("napkin.top"), hints="Look.", answer={"wide": 10 * mm})
    assert [e.title for e in lesson.exercises] == ["First", "Second"]
    assert lesson.exercises[0].hints == ("Look.",) and lesson.exercises[0].answer == (("wide", 10.0),)
    assert lesson.definition.exercise_called("first").task == "Now with a task."
    with pytest.raises(KitError, match="Did you mean 'second'"):
        lesson.definition.exercise_called("secnd")
    assert lesson.variation("Other").exercises == lesson.exercises
