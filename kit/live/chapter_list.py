"""The times of a film as the player keeps them.

They stand in the lesson's sidecar, for the booklet, and as a list of chapters beside the notebook. A second film begins
a list of its own once it has a time to note; the earlier list stays in a file.
"""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path
from typing import TYPE_CHECKING

from kit.atomic import write_atomically
from kit.lesson import sidecar
from kit.lesson.publishing import seconds
from kit.live.film import chapters, clock, corrected, marks, showings

if TYPE_CHECKING:
    from kit.lesson.lesson import Lesson


class ChapterList:
    """The marks of `lesson`, by step: `times`. `take` names the film whose clock was heard last."""

    def __init__(self, lesson: Lesson) -> None:
        self.lesson = lesson
        self.take = ""
        self._clocked: dict[str, float] = dict(lesson.sitting.saved.marks)
        self._by_hand: dict[str, float | None] = {}
        self._begun = not self._clocked

    @property
    def times(self) -> dict[str, float]:
        return corrected(self._clocked, self._by_hand)

    @property
    def file(self) -> Path:
        return self.lesson.sitting.sidecar.with_name(f"{self.lesson.info.slug}.chapters.txt")

    def text(self) -> str:
        titles = {entry.name: entry.title for entry in self.lesson.entries}
        return chapters(self.times, titles, self.lesson.info.title)

    def rows(self) -> list[list[str]]:
        """[step, title, time] of every step, time "" where it has none."""
        times = self.times
        entries = [entry for entry in self.lesson.definition.entries if entry.kind in ("step", "sew")]
        entries.sort(key=lambda entry: entry.kind != "step")
        return [[e.name, e.title, clock(times[e.name]) if e.name in times else ""] for e in entries]

    def hear(self, take: str, seen: object) -> bool:
        """What the clock of the film `take` says so far; whether a time changed."""
        found = marks(showings(seen))
        if take != self.take:
            self.take, self._begun = take, not self.times
        if not found:
            return False
        if not self._begun:
            self._set_aside()
            self._begun, self._by_hand, self._clocked = True, {}, {}
        if found == self._clocked:
            return False
        self._clocked = found
        return True

    def correct(self, key: str, text: str) -> None:
        """Put a step's time right; an empty text takes it out. `KitError` for what is no time."""
        title = next((entry.title for entry in self.lesson.entries if entry.name == key), key)
        self._by_hand[key] = seconds(text, title) if text.strip() else None

    def write(self) -> None:
        """Keep the times in both files. `KitError` when one cannot be written."""
        times = self.times
        sitting = self.lesson.sitting
        sidecar.write_marks(sitting.sidecar, self.lesson.info.slug, times, book=sitting.book)
        self.lesson.sitting = replace(sitting, saved=replace(sitting.saved, marks=times))
        write_atomically(self.file, self.text())

    def _set_aside(self) -> None:
        """Keep the list of the film before under a name of its own."""
        if not self.file.is_file():
            return
        number = 1
        while (kept := self.file.with_name(f"{self.lesson.info.slug}.chapters-{number}.txt")).exists():
            number += 1
        write_atomically(kept, self.file.read_bytes())
