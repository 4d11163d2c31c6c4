"""Who listens to a lesson: told of everything that is written on it and of every value that moves.

A lesson has one listener. The notebook's side (kit/live/beside.py) shows what a cell wrote, keeps pictures and widgets
in step, and knows how to undo; in plain Python nobody needs to listen. This floor cannot know the floors above, so the
notebook's side takes the seat itself when it is imported.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from typing import Any, Protocol

from kit.lesson.exercise import Exercise
from kit.lesson.steps import Entry


@dataclass(frozen=True)
class AskedWalk:
    """What a walk is asked for: edge `second` rolled along edge `first`, `turned` said by hand; `ease` in mm."""

    first: str
    second: str
    turned: bool | None
    ease: float


class Listener(Protocol):
    """What a lesson tells, each time after it has happened."""

    def began(self) -> None:
        """The lesson has been made, and stands empty."""

    def wrote(self, entry: Entry) -> None:
        """A step, sewing step or finished measurement was written."""

    def wrote_exercise(self, exercise: Exercise) -> None:
        """An exercise was written."""

    def rewritten(self) -> None:
        """Something else was written or taken out: a parameter, a preset, steps."""

    def moved(self, before: Mapping[str, float], *, whole: bool) -> None:
        """Values moved, from `before`; or body or units were chosen. `whole`: a change of its own, not part of a
        drag."""

    def walk(self, walk: AskedWalk) -> None:
        """A walk is to be shown."""

    def asked(self, topic: str) -> None:
        """Help on a topic is to be shown."""

    def words(self, text: str) -> None:
        """Words with live values are to be shown."""

    def undo(self) -> bool:
        """The last change of values is to be taken back; whether there was one."""

    def redo(self) -> bool:
        """The change taken back last is to be made again; whether there was one."""


class Nobody:
    """Nobody listens."""

    def began(self) -> None: ...

    def wrote(self, entry: Entry) -> None: ...

    def wrote_exercise(self, exercise: Exercise) -> None: ...

    def rewritten(self) -> None: ...

    def moved(self, before: Mapping[str, float], *, whole: bool) -> None: ...

    def walk(self, walk: AskedWalk) -> None: ...

    def asked(self, topic: str) -> None: ...

    def words(self, text: str) -> None: ...

    def undo(self) -> bool:
        return False

    def redo(self) -> bool:
        return False


_seat: Callable[[Any], Listener] | None = None  # it is given the lesson


def take_seat(make: Callable[[Any], Listener]) -> None:
    """From now on every lesson that is made gets the listener that `make` gives."""
    global _seat
    _seat = make


def listener_of(lesson: Any) -> Listener:
    """A listener for a lesson just made."""
    return _seat(lesson) if _seat is not None else Nobody()
