"""The lesson drafted for one setting after another, sooner where they differ by a slider alone."""

from __future__ import annotations

from collections.abc import Iterable, Mapping

from kit.body.body import Body
from kit.lesson.definition import Definition
from kit.lesson.pattern import Pattern
from kit.lesson.working import Reworking


class Drafts:
    """While one slider moves, what comes before the first step that uses it is taken over from a draft before: it is
    the same step on the same pieces with the same numbers."""

    def __init__(self) -> None:
        self._again: Reworking | None = None
        self._of: tuple[Definition, Body] | None = None
        self._last: dict[str, float] = {}

    def pattern(self, definition: Definition, body: Body, values: Mapping[str, float]) -> Pattern:
        """What `kit.lesson.working.work` gives for the very same, every parameter among the `values`. Raises `KitError`
        as it does."""
        again, of = self._again, (definition, body)
        if again is None or self._of != of:
            return self._anew(definition, body, values)
        moved = [name for name, value in values.items() if value != self._last[name]]
        changed = {name: value for name, value in values.items() if value != again.values[name]}
        if _first(again, changed) < _first(again, moved):  # what was moved before stands in the way of this slider
            return self._anew(definition, body, values)
        pattern, _, _ = again.work(changed)
        if pattern is None:
            assert again.error is not None
            raise again.error
        self._last = dict(values)
        return pattern

    def _anew(self, definition: Definition, body: Body, values: Mapping[str, float]) -> Pattern:
        self._again = None
        again = Reworking(definition, body, values)
        if again.pattern is None:
            assert again.error is not None
            raise again.error
        self._again, self._of, self._last = again, (definition, body), dict(values)
        return again.pattern


def _first(again: Reworking, names: Iterable[str]) -> int:
    return min(map(again.first_use, names), default=len(again.definition.entries))
