"""What shows a lesson and follows its changes: panels, canvases, players, exercises.

They are known weakly, so one that is closed is forgotten.
"""

from __future__ import annotations

from collections.abc import Iterator
from typing import Protocol
from weakref import WeakKeyDictionary, WeakSet

from kit.lesson.lesson import Lesson


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

    def __iter__(self) -> Iterator[Follower]:
        return iter((*self.canvases, *self.panels))


def followers(lesson: Lesson) -> Followers:
    """Those who follow a lesson."""
    return _FOLLOWERS.setdefault(lesson, Followers())


_FOLLOWERS: WeakKeyDictionary[Lesson, Followers] = WeakKeyDictionary()
