"""The exercises of a page: their tasks and hints, and how far a setting is. Their answers are not here: a goal compares
with the lesson's own draft (kit/lesson/goals.py)."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from kit.errors import KitError
from kit.family.attempted import attempt_of, own_draft
from kit.language import say
from kit.lesson.lesson import Lesson
from kit.lesson.pattern import Pattern


class Exercises:
    """Those of a `lesson`; its own draft is worked anew only when the body changes."""

    def __init__(self, lesson: Lesson) -> None:
        self._known: tuple[object, Pattern] | None = None

    def tasks(self, lesson: Lesson) -> list[dict[str, Any]]:
        """The title, task and hints of each."""
        return [
            {
                "key": each.key,
                "heading": say("class_copy.exercise", title=each.title),
                "task": each.task,
                "hints": list(each.hints),
                "done": say("class_copy.done", title=each.title),
            }
            for each in lesson.exercises
        ]

    def results(self, lesson: Lesson, values: Mapping[str, float]) -> list[dict[str, Any]]:
        """How far each is: whether it is `solved`, and for each goal whether it is `met` and a sentence."""
        if not lesson.exercises:
            return []
        attempt = attempt_of(lesson, dict(values), self._before(lesson))
        made = []
        for exercise in lesson.exercises:
            try:
                results, asked = exercise.results(attempt), exercise.asked(attempt)
            except KitError as error:
                made.append({"key": exercise.key, "solved": False, "goals": [], "trouble": str(error)})
                continue
            untouched = attempt.before.values == attempt.after.values
            goals = [
                {
                    "met": result.met,
                    "state": say("class_copy.goal_met" if result.met else "class_copy.goal_open"),
                    "said": wanted if untouched else result.said,
                }
                for result, wanted in zip(results, asked, strict=True)
            ]
            solved = all(result.met for result in results)
            made.append({"key": exercise.key, "solved": solved, "goals": goals, "trouble": ""})
        return made

    def _before(self, lesson: Lesson) -> Pattern:
        place = lesson.body, lesson.units
        if self._known is None or self._known[0] != place:
            self._known = place, own_draft(lesson)
        return self._known[1]
