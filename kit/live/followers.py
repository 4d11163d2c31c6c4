"""What shows a lesson and follows its changes: panels, canvases, players, exercises.

They are known weakly, so one that is closed is forgotten. One that nobody sees at present, as the views of a stage that
are not on show, may rest: what it misses it is told when it wakes.
"""

from __future__ import annotations

import time
from collections.abc import Iterator
from typing import Protocol
from weakref import WeakKeyDictionary, WeakSet

from kit.lesson.lesson import Lesson
from kit.lesson.pattern import Pattern

_FRESH = 1.0
"""Seconds that a view may take over what another has just worked: cells run later may change what a step reads."""


class Follower(Protocol):
    """What shows a lesson and follows its changes. `cell` is the cell that made it."""

    cell: str

    def refresh(self, *, rewritten: bool = False) -> None:
        """Something changed: values, or (`rewritten`) steps and parameters."""

    def rebind(self, lesson: Lesson) -> None:
        """Show `lesson`, which took the place of the one shown so far."""

    def close(self) -> None:
        """Go off the page."""


class Followers:
    """The `canvases` that follow a lesson, and its other followers: `panels`, players and exercises."""

    def __init__(self) -> None:
        self.canvases: WeakSet[Follower] = WeakSet()
        self.panels: WeakSet[Follower] = WeakSet()
        # Who rests -> the strongest change missed: None for none, False for values, True for steps or parameters.
        self._resting: WeakKeyDictionary[Follower, bool | None] = WeakKeyDictionary()
        self._handed: tuple[float, tuple[object, ...], Pattern] | None = None

    def tell(self, *, rewritten: bool = False) -> None:
        """Something changed: values, or (`rewritten`) steps and parameters. Those who rest are told when they wake."""
        for follower in tuple(self):
            if follower in self._resting:
                self._resting[follower] = bool(self._resting[follower]) or rewritten
            else:
                follower.refresh(rewritten=rewritten)

    def hand(self, lesson: Lesson, pattern: Pattern) -> None:
        """A view has just worked the lesson as it is set now: the next to draw it may take that over."""
        self._handed = (time.monotonic(), _set(lesson), pattern)

    def handed(self, lesson: Lesson) -> Pattern | None:
        """What another view has just worked of the lesson as it is set now, given once."""
        handed, self._handed = self._handed, None
        if handed is None:
            return None
        when, was, pattern = handed
        return pattern if time.monotonic() - when < _FRESH and was == _set(lesson) else None

    def rest(self, follower: Follower) -> None:
        """`follower` is not on show: it is told of nothing until it wakes."""
        self._resting.setdefault(follower, None)

    def wake(self, follower: Follower) -> None:
        """`follower` is on show again, and told what it missed."""
        missed = self._resting.pop(follower, None)
        if missed is not None:
            follower.refresh(rewritten=missed)

    def __iter__(self) -> Iterator[Follower]:
        return iter((*self.canvases, *self.panels))


def _set(lesson: Lesson) -> tuple[object, ...]:
    """What a pattern follows from. Steps are the very same as long as no cell of theirs ran."""
    return lesson.start, lesson.entries, lesson.parameters, lesson.body, tuple(lesson.values.items())


def followers(lesson: Lesson) -> Followers:
    """Those who follow a lesson."""
    return _FOLLOWERS.setdefault(lesson, Followers())


_FOLLOWERS: WeakKeyDictionary[Lesson, Followers] = WeakKeyDictionary()
