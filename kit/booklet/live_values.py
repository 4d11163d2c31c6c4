"""Live values in a teacher's words: `{hem_drop}`, `{waist_girth}`, `{finished_length}`, and references to steps and
pieces, `{lower_hem:step}`, `{front:piece}`.

A markdown cell may name every parameter, body measurement and finished measurement of the lesson; a step's own words
name what the step uses. Values are found once and shown as text; whoever renders them escapes them.
"""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from contextlib import suppress
from dataclasses import dataclass, replace

from markupsafe import Markup, escape

from kit.errors import KitError, near
from kit.language import say
from kit.lesson.pattern import Pattern
from kit.placeholder import REFERENCES, Placeholder, fill, name_of
from kit.prose.words import worded
from kit.units import System

Numbers = Sequence[tuple[str, float, str]]

_LITERAL = "Write {{ and }} for braces meant literally."


@dataclass(frozen=True)
class Live:
    """What words may name: `values` (name, value, kind), the `numbers` of steps by key, the `pieces` (number, title) by
    name. `finished` are the names that are shown as finished measurements. `where` says in messages which words these
    are; `marked`: each value in HTML tells what it is, for a page that puts another in its place."""

    values: tuple[tuple[str, float, str], ...]
    numbers: Mapping[str, int]
    pieces: Mapping[str, tuple[int, str]]
    system: System = "cm"
    finished: frozenset[str] = frozenset()
    where: str = ""
    marked: bool = False

    def text(self, found: Placeholder) -> str:
        """What stands for a placeholder, as plain text. `KitError` for a name or format there is not."""
        try:
            if found.format in REFERENCES:
                return self._referred(found)
            if found.name in self.finished and not found.format:
                found = replace(found, format="finished")
            return worded(found, self.values, self.system)
        except KitError as error:
            what = error.what.replace(", which this step does not know", ", which is nothing here")
            raise KitError(what, where=self.where, do=f"{error.do} {_LITERAL}".strip()) from None

    def html(self, found: Placeholder) -> Markup:
        """The same, escaped; a reference is a link to its step or piece."""
        text = escape(self.text(found))
        if found.format not in REFERENCES:
            if not self.marked:
                return text
            return Markup('<span data-live="{}|{}">{}</span>').format(found.name, found.format, text)
        return Markup('<a class="ref" href="#{}-{}">{}</a>').format(found.format, found.name, text)

    def _referred(self, found: Placeholder) -> str:
        if found.format == "step":
            if found.name in self.numbers:
                return say("booklet.in_step", number=self.numbers[found.name])
        elif found.name in self.pieces:
            number, title = self.pieces[found.name]
            return f"{number} {title}"
        known = self.numbers if found.format == "step" else self.pieces
        raise KitError(
            f"the text names {{{found.name}:{found.format}}}, but there is no {found.format} '{found.name}'.",
            do=near(found.name, known),
        )


def live(pattern: Pattern, numbers: Mapping[str, int] | None = None) -> Live:
    """What a markdown cell may name. A parameter goes before a body measurement, and that before a finished measurement
    of the same name. `numbers` are those of the steps by key; without them they are counted through drafting and
    sewing."""
    values: dict[str, tuple[str, float, str]] = {}
    names = [(name_of(title), mm) for title, mm in pattern.finished]
    for name, mm in names:
        values[name] = (name, mm, "length")
    for measure in pattern.body.measures:
        values[measure.name] = (measure.name, measure.value, "length")
    for value in pattern.values:
        values[value.name] = (value.name, value.value, value.kind)
    taken = {*(measure.name for measure in pattern.body.measures), *(value.name for value in pattern.values)}
    if numbers is None:
        keys = [*(step.key for step in pattern.steps), *(record.key for record in pattern.sewing)]
        numbers = {key: keys.index(key) + 1 for key in keys}
    strips = {strip.name: (strip.number, strip.title) for strip in pattern.strips}
    pieces = {piece.name: (piece.number, piece.title) for piece in pattern.pieces}
    return Live(
        tuple(values.values()),
        numbers,
        strips | pieces,
        pattern.lesson.units,
        frozenset(name for name, _ in names if name not in taken),
    )


def said_anew(marks: Sequence[str], known: Live) -> dict[str, str]:
    """What stands now where `marked` values stood, by what each told; one that is not known any more is left out."""
    made = {}
    for mark in marks:
        name, _, form = mark.partition("|")
        with suppress(KitError):
            made[mark] = known.text(Placeholder(name, form))
    return made


def of_step(values: Numbers, known: Live, where: str = "") -> Live:
    """What a step's own words may name: its `values` alone, and every step and piece."""
    return replace(known, values=tuple(values), finished=frozenset(), where=where)


def first_words(source: str) -> str:
    """The first words of a markdown cell, as a message names it."""
    plain = re.sub(r"^[#>*\-\s]+", "", source).split()
    line = " ".join(plain[:7])
    line = line if len(line) <= 48 else f"{line[:47].rstrip()}…"
    return f"{line} …" if len(plain) > 7 else line


def fill_title(text: str, known: Live) -> str:
    """A heading with its values, as plain text."""
    known = replace(known, where=known.where or f"Words “{first_words(text)}”")
    try:
        return fill(text, known.text)
    except KitError as error:
        raise (error if error.where else error.at(known.where)) from None
