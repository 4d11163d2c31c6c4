"""Undo and redo of a lesson's values.

What is kept of a change is each value before and after it, by name. Moves of the same values that follow one another
closely, as a slider or a handle gives them while it is held, count as one change.
"""

from __future__ import annotations

import time
from collections.abc import Mapping
from dataclasses import dataclass

from kit.lesson.fit_change import FIT_CHANGES

_TOGETHER = 0.8  # seconds between two moves of one drag
_KEPT = 200


@dataclass(frozen=True)
class HistoryEntry:
    """Values before and after, by the names that differ (mm, share or count)."""

    before: Mapping[str, float]
    after: Mapping[str, float]


def with_changes_at_nothing(
    before: Mapping[str, float], after: Mapping[str, float]
) -> tuple[Mapping[str, float], Mapping[str, float]]:
    """Values before and after, each with the fit changes that only the other has: what is not set stands at nothing.

    >>> with_changes_at_nothing({}, {"full_seat": 20.0})
    ({'full_seat': 0.0}, {'full_seat': 20.0})
    """
    changes = dict.fromkeys((name for name in (*before, *after) if name in FIT_CHANGES), 0.0)
    return {**changes, **before}, {**changes, **after}


class History:
    """Changes done, and changes undone that can be done again."""

    def __init__(self) -> None:
        self._done: list[HistoryEntry] = []
        self._undone: list[HistoryEntry] = []
        self._at = 0.0
        self._open = False

    @property
    def can_undo(self) -> bool:
        return bool(self._done)

    @property
    def can_redo(self) -> bool:
        return bool(self._undone)

    def note(self, before: Mapping[str, float], after: Mapping[str, float]) -> None:
        """Values went from `before` to `after`. Nothing is kept where they agree."""
        names = [name for name in after if name in before and before[name] != after[name]]
        if not names:
            return
        change = HistoryEntry({n: before[n] for n in names}, {n: after[n] for n in names})
        now = time.monotonic()
        last = self._done[-1] if self._done and self._open else None
        if last is not None and now - self._at < _TOGETHER and set(last.after) == set(names):
            self._done[-1] = HistoryEntry(last.before, change.after)
            if self._done[-1].before == change.after:
                self._done.pop()
                self._open = False
        else:
            self._done = [*self._done[-_KEPT + 1 :], change]
            self._open = True
        self._undone = []
        self._at = now

    def seal(self) -> None:
        """The next move is a change of its own, however soon it comes."""
        self._open = False

    def undo(self) -> Mapping[str, float] | None:
        """The values to go back to; None when there is nothing to undo."""
        self.seal()
        if not self._done:
            return None
        change = self._done.pop()
        self._undone.append(change)
        return change.before

    def redo(self) -> Mapping[str, float] | None:
        """The values to go forward to; None when nothing was undone."""
        self.seal()
        if not self._undone:
            return None
        change = self._undone.pop()
        self._done.append(change)
        return change.after
