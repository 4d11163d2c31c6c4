"""A lesson's own words in other languages.

What the kit says comes from its catalogues. What the lesson says (titles, words of steps, names of edges, markdown)
is its author's, and is translated in a gettext PO file beside the notebook, `<notebook>.<language>.po`. A text is
looked up whole; markdown is looked up block by block. What has no translation, or one marked fuzzy, stays as it is with
a visible mark, such as " [en]". File format: GNU gettext manual, "The Format of PO Files".
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import Any, NamedTuple, TypeVar

from babel.messages.catalog import Catalog

from kit.errors import KitError
from kit.grammar import split_gender
from kit.lesson.markdown_blocks import blocks_said, marked, unfenced
from kit.lesson.pattern import Pattern
from kit.lesson.words_in_values import WordsWalk, kit_title, names_of
from kit.placeholder import Placeholder, name_of, split

T = TypeVar("T")

_CODE = re.compile(r"(?<!`)(`+)(?!`).*?(?<!`)\1(?!`)", re.DOTALL)
_NAMED = re.compile(r"(?<!\{)\{\s*([A-Za-z_]\w*)\s*((?::\s*\w+\s*)?)\}(?!\})")


class OwnText(NamedTuple):
    """A text of the lesson's that people read, and where it stands."""

    text: str
    where: str


def own_texts(lesson: Any, markdown: Sequence[str] = ()) -> list[OwnText]:
    """Every text of a lesson that people read, in reading order, each once for each place. `lesson` is its pattern (or
    anything that holds patterns), `markdown` its markdown cells."""
    found: dict[OwnText, None] = {}

    def note(text: str, where: str, _: bool) -> str:
        found.setdefault(OwnText(text, where))
        return text

    WordsWalk(note).of(lesson)
    for number, source in enumerate(markdown, 1):
        blocks_said(source, f"Markdown cell {number}", note)
    return list(found)


def translate(thing: T, catalogue: Catalog | None, language: str, file: str = "") -> tuple[T, tuple[OwnText, ...]]:
    """`thing` (a pattern, or a value that holds patterns) with the lesson's own words in `language`, and the texts that
    have no translation. Names and keys never change; what was shared stays shared. `file` is named in messages.
    `KitError` for a translation whose placeholders are not those of its original."""
    translator = Translator(catalogue, language, thing, file)
    return translator.of(thing), translator.missing


def translate_markdown(
    source: str, catalogue: Catalog | None, lesson: Any, language: str, file: str = ""
) -> tuple[str, tuple[OwnText, ...]]:
    """A markdown cell in `language`, and its blocks that have no translation."""
    translator = Translator(catalogue, language, lesson, file)
    return translator.markdown(source), translator.missing


class Translator:
    """Puts the words of one `lesson` (its pattern, or a value that holds it) into `language`, and remembers what was
    `missing`, and the `genders` of names whose translation tells it by a letter at its end ("Godet {n}"). A catalogue
    of None has no translation of anything."""

    def __init__(self, catalogue: Catalog | None, language: str, lesson: Any, file: str = "") -> None:
        self._catalogue = catalogue
        self._file = file or f"{language}.po"
        self._language = language
        self._missing: dict[str, OwnText] = {}
        self.genders: dict[str, str] = {}
        pattern = _pattern_in(lesson)
        self._source = pattern.lesson.language
        self._walk = WordsWalk(self.text, language, self._known)
        self._finished = self._slugs(pattern) if self._foreign else {}

    @property
    def _foreign(self) -> bool:
        return self._language != self._source

    @property
    def missing(self) -> tuple[OwnText, ...]:
        """Every text met so far that has no translation."""
        return tuple(self._missing.values())

    def of(self, thing: T) -> T:
        """`thing` with all the lesson's words in it translated."""
        return self._walk.of(thing) if self._foreign else thing

    def names(self, pattern: Pattern) -> dict[str, str]:
        """What the points and lines of `pattern` that have only a name in code are called."""
        if not self._foreign:
            return {}
        return {name: self.text(name.replace("_", " "), f"Point or line '{name}'") for name in names_of(pattern)}

    def markdown(self, source: str, where: str = "Markdown cell") -> str:
        """A markdown cell, block by block. Finished measurements are named by their translated titles in it."""
        if not self._foreign:
            return source

        def renamed(found: re.Match[str]) -> str:
            return f"{{{self._finished.get(found[1], found[1])}{found[2].replace(' ', '')}}}"

        return _NAMED.sub(renamed, blocks_said(source, where, self.text))

    def text(self, text: str, where: str = "", filled: bool = False) -> str:
        """One text, or the text itself with a mark. `filled`: it is markdown with placeholders."""
        if not text.strip() or not self._foreign:
            return text
        said = self._found(text) or kit_title(text, self._language)
        if not said:
            self._missing.setdefault(text, OwnText(text, where))
            return marked(text, f" [{self._source}]", filled)
        if filled:
            self._check(text, said, where)
        return said

    def _known(self, text: str) -> str:
        """A text that no author is asked for: translated where it can be, and never missing."""
        return self._found(text) or kit_title(text, self._language) or text

    def _found(self, text: str) -> str:
        """The translation of a text; empty for none."""
        found = self._catalogue.get(text) if self._catalogue is not None else None
        said = found.string if found is not None and not found.fuzzy else ""
        if not isinstance(said, str) or not said.strip():
            return ""
        name, gender = split_gender(said, self._language)
        if not gender or f"{{{gender}}}" in text:  # a place of the original
            return said
        self.genders[name] = gender
        return name

    def _check(self, text: str, said: str, where: str) -> None:
        entry = f"{self._file}, entry “{' '.join(text.split())[:48]}”"
        original = _placeholders(text)
        try:
            given = _placeholders(said)
        except KitError as error:
            raise error.at(entry) from None
        if original == given:
            return
        more, less = sorted(given - original), sorted(original - given)
        wrong = [f"it names {_listed(more)}, which the original does not"] if more else []
        wrong += [f"it leaves out {_listed(less)}"] if less else []
        raise KitError(
            f"the translation does not have the places of its original: {', and '.join(wrong)}.",
            where=entry,
            do=f"Keep what stands between braces as it is ({where})." if where else "Keep them as they are.",
        )

    def _slugs(self, pattern: Pattern) -> dict[str, str]:
        taken = {*(value.name for value in pattern.values), *(measure.name for measure in pattern.body.measures)}
        said = {
            title: self._found(title) or marked(title, f" [{self._source}]", False) for title, _ in pattern.finished
        }
        return {name_of(title): name_of(new) for title, new in said.items() if name_of(title) not in taken}


def _listed(found: Sequence[str]) -> str:
    return ", ".join(f"{{{name}}}" for name in found)


def _placeholders(text: str) -> set[str]:
    found = (part for part in split(_CODE.sub("", unfenced(text))) if isinstance(part, Placeholder))
    return {f"{part.name}:{part.format}" if part.format else part.name for part in found}


def _pattern_in(thing: Any) -> Pattern:
    if isinstance(thing, Pattern):
        return thing
    found = getattr(thing, "pattern", None)
    if not isinstance(found, Pattern):
        raise TypeError(f"{type(thing).__name__} holds no pattern")
    return found
