"""Steps as blocks of a page: their words, their pictures, and how tall they come out.

The heights here answer to the style sheet (`templates/booklet/booklet.css.j2`): when a size changes there, it changes
here, and `tests/booklet/test_paging.py` compares both on the finished page.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, replace
from functools import cached_property

from markupsafe import Markup

from kit.booklet.forms import PX, Form, PictureRoom
from kit.booklet.model import Block, DraftStep, FilmMark, SewStep, ShownPhoto, ToldOperation, Words
from kit.booklet.paging import Placing, Tall, Unit, Way
from kit.booklet.pictures import Inks
from kit.booklet.step_shown import drafted, sewn, step_numbers
from kit.booklet.type import SERIF, lines
from kit.language import say
from kit.lesson.pattern import Pattern, SewRecord, StepRecord
from kit.picture.lettered import Growth
from kit.picture.step_texts import Letters
from kit.prose import about_minutes
from kit.prose.worksheet import letters_of, worksheet

MM = 25.4 / 72  # mm in a pt
LEADING = 1.42
_FRAME = 5.0  # mm that the frame of a picture adds to its height
_AFTER, _BETWEEN = 7.0, 4.5  # mm under a step, between its operations
_HEAD = 1.32  # size of a step's title, in the size of the text
_CAPTION = 4.6
_BLOCK = re.compile(r"<(h[1-6]|p|li|pre)\b[^>]*>(.*?)</\1>", re.DOTALL)


Fill = Callable[[str, Sequence[tuple[str, float, str]], str], Markup]
"""Words of the teacher's with live values, as safe HTML: the text, the values it may name, and where it stands."""


@dataclass(frozen=True)
class Planned:
    """A block that waits for its place: the `units` it is made of, and the block for their placings."""

    units: tuple[Unit, ...]
    block: Callable[[Sequence[Placing]], Block]


@dataclass(frozen=True)
class Setter:
    """Sets the steps of one lesson in one form. `fill` puts live values and cross references into words; `fitting_of`
    says what an operation, by its step's key and its number in it, refers to in the fitting chapter ("": nothing)."""

    pattern: Pattern
    form: Form
    inks: Inks
    fill: Fill
    markdown: Callable[[str, dict[str, object]], Markup]
    title: Callable[[str], str]
    photos_of: Callable[[str], tuple[ShownPhoto, ...]]
    marks_of: Callable[[str], tuple[FilmMark, ...]]
    fitting_of: Callable[[str, int], str] = lambda key, number: ""

    @cached_property
    def _letters(self) -> Mapping[str, Letters]:
        """The letters of the points on the worksheet, which is read together with the pictures of the steps."""
        return letters_of(worksheet(self.pattern))

    # ---- heights ----------------------------------------------------------------------------------------

    def _line(self, size: float = 1.0) -> float:
        return self.form.size * size * LEADING * MM

    def _indent(self) -> float:
        return 9.0 if self.form.beside else 0.0

    def text_height(self, text: str, measure: float, size: float = 1.0) -> float:
        """Height in mm of paragraphs, which a blank line parts."""
        found = [part for part in text.split("\n\n") if part.strip()]
        height = sum(lines(part, measure, self.form.size * size) * self._line(size) for part in found)
        return height + 0.55 * self.form.size * size * MM * len(found)

    def written_height(self, html: Markup, measure: float) -> float:
        """Height in mm of a teacher's words: paragraphs, points of a list, and headings with the space over all but the
        first of them."""
        height, at = 0.0, 0
        for found in _BLOCK.finditer(html):
            height += self.text_height(Markup(html[at : found.start()]).striptags(), measure)
            text, at = Markup(found[2]).striptags(), found.end()
            if found[1].startswith("h"):
                size = self.form.size * (1.2 if found[1] in ("h1", "h2", "h3") else 1.0)
                # The space over it and that after a paragraph are one, the larger of them.
                space = (1.4 * size - 0.55 * self.form.size if height else 0.4 * size) * MM
                height += lines(text, measure, size, SERIF) * size * 1.22 * MM + space
            else:
                height += self.text_height(text, measure)
        return height + self.text_height(Markup(html[at:]).striptags(), measure)

    def part_head(self, title: str) -> float:
        """Height in mm of the heading of a part."""
        size = self.form.size * 2
        return lines(title, self.form.measure, size, SERIF) * size * 1.22 * MM + 9.0

    def content_height(self, count: int) -> float:
        """Height in mm of a line of contents of so many lines."""
        return self._line() + 2 * self.form.content_gap_of(count) + 0.2

    def _head_height(self, title: str) -> float:
        size = self.form.size * _HEAD
        measure = self.form.measure - (9.0 if self.form.beside else 12.0)
        return lines(title, measure, size, SERIF) * size * 1.22 * MM + 2.4

    def _numbers_height(self, count: int, beside: bool) -> float:
        if not count:
            return 0.0
        each = 2 * self._line(0.84) + 1.8
        return 2.5 + (count if beside else -(-count // self._numbers_across())) * each

    def _numbers_across(self) -> int:
        return max(1, int((self.form.measure - self._indent()) // (self.form.size * 4.6)))

    def _row(self, growths: Sequence[Growth], room: PictureRoom, around: float) -> tuple[Tall, ...]:
        """A row of pictures that grow so, drawn in `room`, each with so much `around` it."""
        narrows = self.form.narrows
        return tuple(
            Tall(room.height / PX, growth.at(room.width) / PX, around, growth.over / PX, narrows) for growth in growths
        )

    def _most(self, growth: Growth, room: PictureRoom, share: float) -> float:
        """The most height in CSS px of a picture that grows so, with that share of its room: what `Tall` reckons."""
        return growth.at(room.width) * (min(share, 1.0) if self.form.narrows else 1.0)

    # ---- words ------------------------------------------------------------------------------------------

    def words(self, html: Markup) -> Planned:
        """A teacher's words between steps."""
        height = self.written_height(html, min(self.form.measure, 140.0)) + 5.0

        def block(placed: Sequence[Placing]) -> Words:
            return Words(html, placed[0].breaks)

        return Planned((Unit(height, keeps=True),), block)

    def _extras_height(self, photos: Sequence[ShownPhoto], marks: Sequence[FilmMark]) -> float:
        rows = -(-len(photos) // 2) if self.form.measure > 120 else len(photos)
        return rows * 66.0 + (self._line() + 1.0 if marks else 0.0)

    # ---- drafting ---------------------------------------------------------------------------------------

    def draft(self, record: StepRecord, count: int) -> Planned:
        """A drafting step."""
        form = self.form
        shown = drafted(record, self.pattern, form, self._letters.get(record.key), f"draft{count}")
        sketch, across, room = shown.sketch, shown.across, shown.sketch.room
        growth = sketch.growth(self.inks)
        values = step_numbers(record, self.pattern)
        text = self.fill(record.text, record.values, f"step {record.title}")
        photos, marks = self.photos_of(record.key), self.marks_of(record.key)
        measure = form.measure - self._indent() - (0.0 if across else form.picture_width + 6.0)
        written = self.written_height(text, measure) + self._numbers_height(len(values), not across)
        fixed = self._head_height(record.title) + _AFTER + self._extras_height(photos, marks)
        row = self._row([growth], room, _FRAME)
        unit = Unit(fixed + written + 3.0, (row,)) if across else Unit(fixed, (row,), written)

        def block(placed: Sequence[Placing]) -> DraftStep:
            (place,) = placed
            picture = sketch.inked(self.inks, place.share, self._most(growth, room, place.share))
            return DraftStep(
                count, record.key, record.title, text, values, picture, across, photos, marks, place.breaks
            )

        return Planned((unit,), block)

    # ---- sewing -----------------------------------------------------------------------------------------

    def sew(self, record: SewRecord, count: int) -> Planned:
        """A sewing step, each operation a unit of its own."""
        pattern = self.pattern
        text = self.fill(record.text, record.values, f"step {record.title}") if record.text else Markup()
        minutes = sum(operation.minutes(pattern) for operation in record.operations)
        time = about_minutes(minutes) if minutes else ""
        photos, marks = self.photos_of(record.key), self.marks_of(record.key)
        parts = [self._operation(record, i, f"sew{count}-{i}") for i in range(len(record.operations))]
        teacher = self.written_height(text, self.form.measure - self._indent()) + 3.0 if text else 0.0
        extras = self._extras_height(photos, marks)
        units = [part.unit for part in parts] or [Unit(0.0)]
        first, last = units[0], units[-1]
        before = self._head_height(record.title) + (0.0 if record.words == "after" else teacher)
        units[0] = replace(first, fixed=first.fixed + before)
        last = units[-1]
        units[-1] = replace(
            last, fixed=last.fixed + _AFTER - _BETWEEN + extras + (teacher if record.words == "after" else 0.0)
        )

        def block(placed: Sequence[Placing]) -> SewStep:
            operations = tuple(part.made(place) for part, place in zip(parts, placed, strict=False))
            breaks = placed[0].breaks
            if operations:
                operations = (replace(operations[0], breaks=False), *operations[1:])
            return SewStep(count, record.key, record.title, text, operations, time, record.words, photos, marks, breaks)

        return Planned(tuple(units), block)

    def _operation(self, record: SewRecord, number: int, name: str) -> _Part:
        form = self.form
        shown = sewn(record, number, self.pattern, form, name)
        text, why, sketches, single = shown.text, shown.why, shown.sketches, shown.single
        room = form.step if single else form.stage
        growths = [sketch.growth(self.inks) for sketch in sketches]
        grown: dict[Way, tuple[PictureRoom, list[Growth]]] = {
            "": (room, growths),
            "stacked": (PictureRoom(form.across.width, room.height), growths),
        }
        narrow = single and form.beside
        measure = form.measure - self._indent() - (form.picture_width + 6.0 if narrow else 0.0)
        fitting = self.fitting_of(record.key, number)
        see = say("booklet.see_fitting") + say("booklet.comma_page") + "00" if fitting else ""
        written = self.text_height("\n\n".join(part for part in (text, why, see) if part), measure)
        # One picture stands beside its text where the form is wide enough, so both share the height; several stand
        # under it in rows, two in a row where they fit, and the row may be parted from the text by a page's end.
        if narrow:
            unit = Unit(_BETWEEN, (self._row(growths, room, _FRAME),), written)
        else:
            each = 2 if form.paired and not single else 1
            around = _FRAME + (0.0 if single else _CAPTION)
            rows = [self._row(growths[i : i + each], room, around) for i in range(0, len(growths), each)]
            near: list[tuple[Tall, ...]] = []
            if each == 2 and -(-len(sketches) // 3) < len(rows):  # three in a row make fewer rows
                nearer = [replace(sketch, room=form.close).growth(self.inks) for sketch in sketches]
                near = [self._row(nearer[i : i + 3], form.close, around) for i in range(0, len(nearer), 3)]
                grown["close"] = form.close, nearer
            unit = Unit(
                _BETWEEN + written + (2.5 if rows else 0.0),
                tuple(rows),
                stacked=self._row(growths, grown["stacked"][0], around) if each == 2 else (),
                between=5.0,
                close=tuple(near),
                parts=form.letters > 1,
            )

        def finished(place: Placing) -> ToldOperation:
            over, growing = grown[place.way]
            pictures = [
                replace(sketch, room=over).inked(self.inks, place.share, self._most(growth, over, place.share))
                for sketch, growth in zip(sketches, growing, strict=True)
            ]
            return ToldOperation(text, tuple(pictures), why, place.breaks, fitting, place.way, place.parted)

        return _Part(unit, finished)


@dataclass(frozen=True)
class _Part:
    unit: Unit
    made: Callable[[Placing], ToldOperation]
