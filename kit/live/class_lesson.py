"""The lesson of a class copy, opened for one student.

The student works in the folder of the class copy, and values, body and printed pages stay in it; the lesson itself is
read and never written to. `lessonkit serve` opens no kernel: its pages are worked by `kit.room`.
"""

from __future__ import annotations

import os
from dataclasses import replace
from pathlib import Path
from typing import Any
from weakref import WeakKeyDictionary

from kit.body.file import load_body, save_body
from kit.diagnostic import message
from kit.errors import KitError
from kit.lesson import sidecar
from kit.lesson.another import open_lesson
from kit.lesson.lesson import Lesson
from kit.live.followers import followers

_BODY = "own-body.toml"


def class_lesson(path: str) -> Lesson:
    """The lesson at `path` beside the class copy, with the student's own values and body. Raises `KitError` when it is
    missing or cannot be worked."""
    student = Path.cwd()
    file = (student / path).resolve()
    if not file.is_file():
        raise KitError(
            message("class_copy.lesson_gone", path=str(path)),
            where=str(student),
            do=message("class_copy.lesson_gone_do"),
        )
    try:
        os.chdir(file.parent)  # what its cells read lies beside it
        lesson = open_lesson(file.name)
    finally:
        os.chdir(student)
    if not isinstance(lesson, Lesson):
        raise KitError(message("class_copy.no_lesson"), where=path, do=message("class_copy.no_lesson_do"))
    for shown in tuple(followers(lesson).panels):
        shown.close()
    _restore(lesson, student)
    _OPENED[lesson] = file, _Keeper(lesson, student)
    followers(lesson).panels.add(_OPENED[lesson][1])
    return lesson


def opened_from(lesson: Lesson) -> Path | None:
    """The notebook a class copy's lesson was opened from; None for a lesson written in the running notebook."""
    return _OPENED[lesson][0] if lesson in _OPENED else None


def _restore(lesson: Lesson, folder: Path) -> None:
    path = sidecar.path_for(lesson.info.slug, folder)
    saved = sidecar.read(path, lesson.info.slug)
    lesson.sitting = replace(lesson.sitting, sidecar=path, saved=saved, opened=saved)
    units: Any = saved.units or None
    lesson.choose(size=saved.size if saved.size in lesson.sizes.names else "", units=units)
    if not saved.size and (folder / _BODY).is_file():
        try:
            lesson.choose(body=load_body(folder / _BODY, lesson.sizes))
        except KitError:
            pass  # the size of the lesson stands; the form says what is wrong when the file is loaded


class _Keeper:
    """Keeps the student's own body, so that it is there again after the page is loaded anew."""

    cell = ""

    def __init__(self, lesson: Lesson, folder: Path) -> None:
        self.lesson, self.folder = lesson, folder
        self._kept = lesson.body

    def refresh(self, *, rewritten: bool = False) -> None:
        body = self.lesson.body
        if body == self._kept:
            return
        self._kept = body
        try:
            if body.name not in self.lesson.sizes.names:
                save_body(self.folder / _BODY, body, self.lesson.units)
            self.lesson.save()
        except KitError:
            pass  # a folder that cannot be written: the body stands as long as the kernel

    def rebind(self, lesson: Lesson) -> None:
        self.lesson = lesson

    def close(self) -> None:
        followers(self.lesson).panels.discard(self)


_OPENED: WeakKeyDictionary[Lesson, tuple[Path, _Keeper]] = WeakKeyDictionary()
