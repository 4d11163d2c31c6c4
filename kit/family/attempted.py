"""A student's draft beside the lesson's own, for the goals of an exercise."""

from __future__ import annotations

from kit.body.body import NOBODY
from kit.lesson.goals import Attempt
from kit.lesson.lesson import Lesson
from kit.lesson.pattern import Pattern
from kit.lesson.working import work
from kit.proof import prove


def own_draft(lesson: Lesson) -> Pattern:
    """The lesson at the teacher's values, for the body chosen. Raises `KitError` as working does."""
    body = lesson.body if lesson.measures else NOBODY
    return work(lesson.definition, body, {p.name: p.default for p in lesson.parameters}, whole=False)


def attempt_of(lesson: Lesson, values: dict[str, float], before: Pattern) -> Attempt:
    """The lesson worked for `values` beside its own draft. Raises `KitError` as working does."""
    body = lesson.body if lesson.measures else NOBODY
    return Attempt(before, work(lesson.definition, body, values, whole=False), lesson.units, prove)
