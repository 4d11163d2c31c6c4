"""Asked in the kernel of a lesson that is made into a class copy: which exercises it has, and whether their answers
solve them. The answers themselves are not told."""

from __future__ import annotations

import json
from collections.abc import Mapping
from typing import Any

from kit.errors import KitError, near
from kit.family.attempted import attempt_of, own_draft
from kit.lesson.another import find_lesson
from kit.lesson.exercise import Exercise
from kit.lesson.lesson import Lesson
from kit.live.class_copy import MIMETYPE


def tell(namespace: Mapping[str, Any]) -> None:
    """Display the lesson's title, language, measurements and exercises as JSON, or {"refused": why}."""
    from IPython.display import publish_display_data

    try:
        told = about(find_lesson(namespace))
    except KitError as error:
        told = {"refused": str(error)}
    publish_display_data({MIMETYPE: json.dumps(told)})


def about(lesson: Lesson) -> dict[str, Any]:
    """What a class copy needs to know. Raises `KitError` for an exercise whose goals name something that is not
    drawn, that is solved before anything is moved, or whose answer does not solve it."""
    before = own_draft(lesson)
    for exercise in lesson.exercises:
        where = f"Exercise '{exercise.title}'"
        untouched = attempt_of(lesson, {p.name: p.default for p in lesson.parameters}, before)
        if all(result.met for result in exercise.results(untouched)):
            raise KitError("it is solved before anything is moved.", where=where, do="Ask for a change.")
        if exercise.answer:
            _solved(lesson, exercise)
    return {
        "title": lesson.info.title,
        "language": getattr(lesson.info, "language", "en"),
        "measures": list(lesson.measures),
        "exercises": [
            {"key": each.key, "title": each.title, "answered": bool(each.answer)} for each in lesson.exercises
        ],
    }


def _solved(lesson: Lesson, exercise: Exercise) -> None:
    where = f"Exercise '{exercise.title}'"
    by_name = {p.name: p for p in lesson.parameters}
    values = {p.name: p.default for p in lesson.parameters}
    for name, value in exercise.answer:
        if name not in by_name:
            raise KitError(f"the answer names '{name}', which is no parameter.", where=where, do=near(name, by_name))
        try:
            values[name] = by_name[name].checked(value)
        except KitError as error:
            raise error.at(where) from None
    for result in exercise.results(attempt_of(lesson, values, own_draft(lesson))):
        if not result.met:
            raise KitError(
                f"its answer does not solve it: {result.said}", where=where, do="Correct the answer, or the goal."
            )
