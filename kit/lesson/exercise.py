"""Exercises: what a student is asked to change, said as goals that can be checked without knowing the answer
(kit/lesson/goals.py).

    lesson.exercise(
        "Longer underarm",
        "Make the underarm seam 2 cm longer without moving the sleeve opening.",
        goals=[grows("front.underarm", 2 * cm), keeps("front.opening")],
        hints=["Which measure says where the underarm curve joins the side?"],
        answer={"underarm_drop": 11.4 * cm},
    )
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass

from kit.errors import KitError, near
from kit.lesson.goals import Attempt, Goal, Result
from kit.lesson.parameter import Setting
from kit.units import length


def short_name(title: str) -> str:
    """A title as it is typed on the command line: "Longer underarm" -> "longer-underarm"."""
    return re.sub(r"[^\w]+", "-", title.lower()).strip("-")


@dataclass(frozen=True)
class Exercise:
    """One exercise: `task` in the teacher's words, `goals` that must all be met, `hints` shown one at a time, and the
    teacher's `answer`, (parameter, value in mm, share or count); a class copy has none."""

    title: str
    task: str
    goals: tuple[Goal, ...]
    hints: tuple[str, ...] = ()
    answer: tuple[tuple[str, float], ...] = ()
    cell: str = ""
    run: int = 0

    @property
    def key(self) -> str:
        """The title as a short name: "longer-underarm"."""
        return short_name(self.title)

    def results(self, attempt: Attempt) -> tuple[Result, ...]:
        """How far each goal is. Raises `KitError` with the exercise's title for a name that is not drawn."""
        try:
            return tuple(goal.result(attempt) for goal in self.goals)
        except KitError as error:
            raise error.at(f"Exercise '{self.title}'") from None

    def asked(self, attempt: Attempt) -> tuple[str, ...]:
        """What each goal asks. Raises as `results` does."""
        try:
            return tuple(goal.asked(attempt) for goal in self.goals)
        except KitError as error:
            raise error.at(f"Exercise '{self.title}'") from None

    def __repr__(self) -> str:
        return f"<Exercise '{self.title}': {len(self.goals)} goals, {len(self.hints)} hints>"

    def _ipython_display_(self) -> None:
        """Nothing: the live lesson shows the exercise itself."""


def exercise_of(
    title: str,
    task: str,
    goals: Iterable[Goal] | Goal,
    hints: Iterable[str] | str,
    answer: Mapping[str, Setting] | None,
    cell: str = "",
    run: int = 0,
) -> Exercise:
    """An exercise as its author wrote it, `answer` with lengths in their unit. `KitError` for one without a title or
    goals, and for what is no goal or no value."""
    where = f"Exercise '{title}'"
    wanted = tuple(goals) if isinstance(goals, Iterable) else (goals,)
    if not title.strip():
        raise KitError("an exercise needs a title.", do='Write lesson.exercise("Longer underarm", ...).')
    if not wanted:
        raise KitError("nothing says when it is done.", where=where, do='Add goals=[grows("front.underarm", 2 * cm)].')
    for goal in wanted:
        if not (hasattr(goal, "asked") and hasattr(goal, "result")):
            raise KitError(
                f"{goal!r} is not a goal.", where=where, do='Goals are made by grows("front.underarm", 2 * cm) ...'
            )
    values = tuple((name, _plain(name, value, where)) for name, value in (answer or {}).items())
    told = (hints,) if isinstance(hints, str) else tuple(hints)
    return Exercise(title.strip(), " ".join(task.split()), wanted, told, values, cell, run)


def exercise_called(name: str, exercises: Sequence[Exercise]) -> Exercise:
    """The exercise of that title or short name. `KitError` with the near name."""
    for exercise in exercises:
        if name.strip().lower() in (exercise.title.lower(), exercise.key):
            return exercise
    raise KitError(f"there is no exercise '{name}'.", do=near(name, [e.key for e in exercises]))


def _plain(name: str, value: Setting, where: str) -> float:
    """A value of an answer: a length with its unit, a share or a count."""
    if isinstance(value, str):
        return float(length(value, f"{where}, {name}"))
    if isinstance(value, int | float) and not isinstance(value, bool):
        return float(value)
    raise KitError(f"{value!r} is not a value for {name}.", where=where, do="Write, say, 4 * cm.")
