"""A lesson opened where there is no notebook: its cells run, and what they would show is left out."""

from __future__ import annotations

from importlib import import_module
from pathlib import Path

from kit.lesson.another import open_lesson
from kit.lesson.lesson import Lesson

_LIVE = "kit.live"


class Unseen:
    """What stands for a widget of a notebook: nobody sees it, and whatever a cell does with it does nothing."""

    def __call__(self, *given: object, **named: object) -> Unseen:
        return self

    def __getattr__(self, name: str) -> Unseen:
        if name.startswith("__"):
            raise AttributeError(name)
        return self


def without_notebook() -> None:
    """From now on `from kit import Lesson` gives the lesson alone, and panel, canvas, player and the other widgets do
    nothing: what they need is not there. For a process of its own; nothing takes it back."""
    public = import_module("kit")  # the names a notebook knows
    for name, home in public._HOMES.items():
        if home == _LIVE or home.startswith(f"{_LIVE}."):
            setattr(public, name, Lesson if name == "Lesson" else Unseen())


def opened(path: Path) -> Lesson:
    """The lesson of the notebook at `path`. Raises `KitError` when a cell fails or it has no lesson."""
    lesson: Lesson = open_lesson(path)
    return lesson
