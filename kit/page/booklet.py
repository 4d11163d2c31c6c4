"""What of a booklet follows the body: asked by the booklet in the reader's browser, part by part.

The page keeps the booklet as it was built and puts what is answered here in the place of what stood for the size it was
drawn in. The parts are made by the code that makes them at home (kit/booklet); what that needs compiled packages for,
cutting layouts and the pictures of pattern pieces, is not among them. The engine loads this when it is first asked for
a booklet, so that a page without one need not carry it.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import asdict
from typing import Any

from kit.body.chart import SizeChart
from kit.booklet.fine_setting import fine_text
from kit.booklet.forms import SCREEN
from kit.booklet.garment_shown import cover_views, finished_picture, for_whom, on_body
from kit.booklet.handover import Handover, SizeRow
from kit.booklet.live_values import live, of_step, said_anew
from kit.booklet.marking import marking
from kit.booklet.model import Table
from kit.booklet.pictures import Inks, Picture
from kit.booklet.step_shown import drafted, sewn, step_numbers
from kit.booklet.tables import (
    body_table,
    choice_table,
    cut_sentence,
    cut_table,
    drafted_note,
    ease_table,
    finished_table,
    measured_table,
    steady,
    strip_size,
    strip_table,
)
from kit.cloth.cut_list import cut_list
from kit.diagnostic import message
from kit.errors import KitError
from kit.language import say
from kit.lesson.pattern import Pattern
from kit.picture.theme import Theme
from kit.prose.readings import ruling_of
from kit.prose.worksheet import letters_of, worksheet
from kit.rulers import ruled
from kit.units import both

Answer = dict[str, Any]


class BookletParts:
    """The parts of one worked lesson, which asks for the body `measures` named; `sized`: the body is a size of its
    `chart`. `cloth` are the lengths to buy as
    `kit.page.told.bought` tells them, `theme` the inks of the booklet's pictures."""

    def __init__(
        self,
        pattern: Pattern,
        chart: SizeChart,
        measures: Sequence[str],
        sized: bool,
        cloth: Mapping[str, Any],
        theme: Theme,
    ) -> None:
        self.pattern, self.sized, self.cloth = pattern, sized, cloth
        rows = [(size, [(name, chart[size][name]) for name in measures if name in chart[size]]) for size in chart.names]
        self.chart = () if sized or not measures else tuple(SizeRow(size, tuple(row)) for size, row in rows)
        self.inks = Inks.of(theme, SCREEN)
        self._letters: Mapping[str, Any] | None = None

    def answer(self, asked: Mapping[str, Any]) -> Answer:
        """The whole, or one step ("step", of which "part" is nothing). "live" lists the marks of numbers in words
        (kit/booklet/live_values.py) that are to be said anew. Raises `KitError` for a step there is not."""
        with ruled(ruling_of(self.pattern)):
            made: Answer = _finely(self._answer(asked))
            return made

    def _answer(self, asked: Mapping[str, Any]) -> Answer:
        marks = asked.get("live")
        marks = [mark for mark in marks if isinstance(mark, str)] if isinstance(marks, list) else []
        step = asked.get("step")
        if not isinstance(step, dict):
            return self._whole(marks)
        key = str(step.get("key"))
        for number, record in enumerate(self.pattern.steps, 1):
            if step.get("kind") == "draft" and record.key == key:
                return {
                    "live": said_anew(marks, of_step(record.values, live(self.pattern))),
                    "numbers": step_numbers(record, self.pattern),
                    "operations": [{"text": "", "why": "", "pictures": [self._drafted(number)]}],
                }
        for number, sewing in enumerate(self.pattern.sewing, 1):
            if step.get("kind") == "sew" and sewing.key == key:
                return {
                    "live": said_anew(marks, of_step(sewing.values, live(self.pattern))),
                    "numbers": [],
                    "operations": [self._sewn(number, at) for at in range(len(sewing.operations))],
                }
        raise KitError(message("page.not_asked"), do=message("page.again_do"))

    def _drafted(self, number: int) -> Answer:
        record = self.pattern.steps[number - 1]
        if self._letters is None:
            self._letters = letters_of(worksheet(self.pattern))
        shown = drafted(record, self.pattern, SCREEN, self._letters.get(record.key), f"mine-draft{number}")
        return _picture(shown.sketch.inked(self.inks))

    def _sewn(self, number: int, at: int) -> Answer:
        told = sewn(self.pattern.sewing[number - 1], at, self.pattern, SCREEN, f"mine-sew{number}-{at}")
        pictures = [_picture(sketch.inked(self.inks)) for sketch in told.sketches]
        return {"text": told.text, "why": told.why, "pictures": pictures}

    def _whole(self, marks: Sequence[str]) -> Answer:
        pattern, given = self.pattern, Handover(self.pattern, self.chart)
        system, name = pattern.lesson.units, pattern.body.name
        size = name if self.sized else ""
        cut = marking(pattern)
        guessed = {measure.name for measure in pattern.body.estimated}
        tables = {
            "body": None if self.sized else body_table(given),
            "finished": finished_table(given),
            "ease": ease_table(pattern, steady(given)),
            "choices": choice_table(pattern),
            "lengths": self._lengths(),
            "cut": cut_table(pattern),
            "measured": measured_table(pattern),
            "strips": strip_table(pattern),
            "marking": cut.table,
        }
        pictures = {
            "views": cover_views(pattern, SCREEN, self.inks),
            "on_body": on_body(pattern, SCREEN, self.inks, SCREEN.depth),
            "laid_flat": finished_picture(pattern, SCREEN, self.inks),
        }
        return {
            "for": for_whom(pattern) if self.sized else name,
            "live": said_anew(marks, live(pattern)),
            "sizes": {"mine": size, "note": drafted_note(system, size, name)},
            "tables": {name: None if table is None else asdict(table) for name, table in tables.items()},
            "pictures": {name: None if shown is None else _picture(shown) for name, shown in pictures.items()},
            "allowances": cut.allowances,
            "tapes": {
                measure.name: [both(measure.value, system), say("booklet.estimated") if measure.name in guessed else ""]
                for measure in pattern.body.measures
            },
            "cards": self._cards(),
        }

    def _lengths(self) -> Table | None:
        rows = tuple((row["cloth"], row["width"], row["length"]) for row in self.cloth.get("rows", ()))
        if not rows:
            return None
        head = tuple(say(f"booklet.{key}") for key in ("cloth", "width", "to_buy"))
        return Table(say("booklet.cloth_to_buy"), head, rows, note=str(self.cloth["note"]))

    def _cards(self) -> dict[str, list[str]]:
        """How each piece is cut, by the number on its card; a strip with its size."""
        system = self.pattern.lesson.units
        told: dict[str, list[str]] = {}
        for cut in cut_list(self.pattern):
            told.setdefault(str(cut.number), []).append(cut_sentence(cut, system))
        for strip in self.pattern.strips:
            told.setdefault(str(strip.number), []).append(strip_size(strip, system))
        return told


def _finely(value: Any) -> Any:
    """What is answered as it is set in a booklet; pictures set their own texts."""
    if isinstance(value, str):
        return value if value.startswith("<svg") else fine_text(value)
    if isinstance(value, dict):
        return {key: _finely(each) for key, each in value.items()}
    return [_finely(each) for each in value] if isinstance(value, list | tuple) else value


def _picture(shown: Picture) -> Answer:
    return {"svg": str(shown.svg), "phone": str(shown.phone), "caption": shown.caption}
