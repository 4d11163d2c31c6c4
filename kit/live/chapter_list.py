"""The times of a film as the player keeps them.

They stand in the lesson's sidecar, for the booklet, and as a list of chapters beside the notebook. A second film begins
a list of its own once it has a time to note; the earlier list, and what was written for that film, stay in files.
"""

from __future__ import annotations

import os
from contextlib import suppress
from dataclasses import replace
from pathlib import Path
from typing import TYPE_CHECKING, Any

from kit.atomic import write_atomically
from kit.lesson import sidecar
from kit.lesson.publishing import seconds
from kit.live.film import LEAST, Showing, chapters, clock, corrected, marks, showings

if TYPE_CHECKING:
    from kit.lesson.lesson import Lesson


class ChapterList:
    """The marks of `lesson`, by step: `times`. `take` names the film whose clock was heard last."""

    def __init__(self, lesson: Lesson) -> None:
        self.lesson = lesson
        self.take = ""
        kept = dict(lesson.sitting.saved.marks)
        video = lesson.sitting.saved.more.get("video")
        clocked: dict[str, Any] = video if isinstance(video, dict) else {}
        self.shown: tuple[Showing, ...] = showings(clocked.get("shown"))
        self.brief = clocked.get("brief") is True
        self._clocked: dict[str, float] = marks(self.shown, self.least) if self.shown else kept
        # What differs from the clock was put in by hand.
        self._by_hand: dict[str, float | None] = {
            key: kept.get(key) for key in (*kept, *self._clocked) if kept.get(key) != self._clocked.get(key)
        }
        self._begun = not self.times

    @property
    def least(self) -> float:
        """Seconds a step must be on show to count."""
        return 0.0 if self.brief else LEAST

    @property
    def times(self) -> dict[str, float]:
        return corrected(self._clocked, self._by_hand)

    @property
    def folder(self) -> Path:
        """Where the captions and lists of the film are written."""
        return self.lesson.sitting.sidecar.with_name(f"{self.lesson.info.slug}-film")

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
        shown = showings(seen)
        found = marks(shown, self.least)
        if take != self.take:
            self.take, self._begun = take, not self.times
        if not found:
            return False
        if not self._begun:
            self._set_aside()
            self._begun, self._by_hand, self._clocked = True, {}, {}
        self.shown = shown
        if found == self._clocked:
            return False
        self._clocked = found
        return True

    def count_brief(self, brief: bool) -> bool:
        """Whether steps shown briefly count from now on, in what the clock has noted too; whether a time changed."""
        before, self.brief = self.times, brief
        if self.shown:
            self._clocked = marks(self.shown, self.least)
        return self.times != before

    def correct(self, key: str, text: str) -> None:
        """Put a step's time right; an empty text takes it out. `KitError` for what is no time."""
        title = next((entry.title for entry in self.lesson.entries if entry.name == key), key)
        self._by_hand[key] = seconds(text, title) if text.strip() else None

    def write(self) -> None:
        """Keep the times in both files. `KitError` when one cannot be written."""
        times = self.times
        sitting = self.lesson.sitting
        clocked = {"brief": self.brief, "shown": [[one.key, one.start, one.end] for one in self.shown]}
        sidecar.write_marks(sitting.sidecar, self.lesson.info.slug, times, book=sitting.book, clock=clocked)
        more = {**sitting.saved.more, "video": {**clocked, "marks": times}}
        self.lesson.sitting = replace(sitting, saved=replace(sitting.saved, marks=times, more=more))
        write_atomically(self.file, self.text())

    def _set_aside(self) -> None:
        """Keep the list of the film before, and what was written for it, under names of their own."""
        slug, number = self.lesson.info.slug, 1
        while (kept := self.file.with_name(f"{slug}.chapters-{number}.txt")).exists() or self._put_by(number).exists():
            number += 1
        if self.file.is_file():
            write_atomically(kept, self.file.read_bytes())
        if self.folder.is_dir():
            # A folder that is held open stays where it is; its files are then written anew.
            with suppress(OSError):
                os.replace(self.folder, self._put_by(number))

    def _put_by(self, number: int) -> Path:
        return self.folder.with_name(f"{self.folder.name}-{number}")
