"""Widgets speak the language of their lesson, where the kit has a catalogue for it, else English.

The language is set for a stretch of work (kit.language), so everything that begins by itself, a constructor, a
callback, the work that waits for rest, sets it anew.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from contextlib import contextmanager
from functools import wraps
from typing import Any, TypeVar

from kit.diagnostic import reading
from kit.language import speaking, spoken_for
from kit.lesson.lesson import Lesson

R = TypeVar("R")


def spoken_by(lesson: Lesson) -> str:
    """The code of the language its widgets speak: with its region, "de-AT"."""
    return spoken_for(lesson.info.language)


@contextmanager
def in_words_of(lesson: Lesson) -> Iterator[None]:
    """Inside the block everything is said in the lesson's language, lengths in the system chosen for it first."""
    with speaking(spoken_by(lesson)), reading(lesson.units):
        yield


def spoken(act: Callable[..., R]) -> Callable[..., R]:
    """A method of a widget that has a `lesson`: it speaks the lesson's language."""

    @wraps(act)
    def speaks(self: Any, *given: Any, **named: Any) -> R:
        with in_words_of(self.lesson):
            return act(self, *given, **named)

    return speaks
