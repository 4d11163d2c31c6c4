"""A lesson's own words in other languages.

What the kit says comes from its catalogues. What the lesson says (titles, words of steps, names of edges, markdown)
is its author's, and is translated in a gettext PO file beside the notebook, `<notebook>.<language>.po`. A text is
looked up whole; markdown is looked up block by block. What has no translation, or one marked fuzzy, stays as it is with
a visible mark, such as " [en]". File format: GNU gettext manual, "The Format of PO Files".
"""

from __future__ import annotations

import re
from collections.abc import Callable, Sequence
from dataclasses import dataclass, fields, is_dataclass, replace
from functools import lru_cache
from typing import Any, NamedTuple, TypeVar

from babel.messages.catalog import Catalog

from kit.body.body import Body
from kit.body.measures import MEASUREMENTS, Measurement
from kit.diagnostic import Message
from kit.errors import KitError
from kit.grammar import split_gender
from kit.language import SOURCE, keys, languages, say, says, speaking
from kit.lesson.fit_change import FIT_CHANGES
from kit.lesson.fit_steps import fit_said, part_label, words_of
from kit.lesson.fitting import Fitting
from kit.lesson.pattern import LessonInfo, ParameterValue, Pattern, Photo, SewRecord, StepMeasure, StepRecord
from kit.piece.darts_and_pleats import Dart, Pleat
from kit.piece.piece import Edge, Mark, Piece, Strip
from kit.placeholder import Placeholder, name_of, split
from kit.sewing.operation import Operation

T = TypeVar("T")

_INFO = (
    *(
        "title",
        "summary",
        "level",
        "cloth",
        "fibre",
        "weight",
        "drape",
        "avoid",
        "prewash",
        "care",
        "licence",
        "cover_alt",
    ),
    *("notions", "cautions", "credits", "start_notes"),
)
_UNREAD = ((Pattern, "start"),)  # the block's own pieces, which the booklet does not show
_FENCE = re.compile(r" {0,3}(`{3,}(?=[^`]*$)|~{3,})")
_HEADING = re.compile(r"(\s{0,3}#{1,6}\s+)(\S.*?)(?:\s+#+)?\s*")
_CODE = re.compile(r"(?<!`)(`+)(?!`).*?(?<!`)\1(?!`)", re.DOTALL)
_NAMED = re.compile(r"(?<!\{)\{\s*([A-Za-z_]\w*)\s*((?::\s*\w+\s*)?)\}(?!\})")


class OwnText(NamedTuple):
    """A text of the lesson's that people read, and where it stands."""

    text: str
    where: str


Speak = Callable[[str, str, bool], str]
"""Says a text: the text, where it stands, and whether it is markdown with placeholders."""


def own_texts(lesson: Any, markdown: Sequence[str] = ()) -> list[OwnText]:
    """Every text of a lesson that people read, in reading order, each once for each place. `lesson` is its pattern (or
    anything that holds patterns), `markdown` its markdown cells."""
    found: dict[OwnText, None] = {}

    def note(text: str, where: str, _: bool) -> str:
        found.setdefault(OwnText(text, where))
        return text

    _WordsWalk(note).of(lesson)
    for number, source in enumerate(markdown, 1):
        _blocks_said(source, f"Markdown cell {number}", note)
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
        self._walk = _WordsWalk(self.text, language)
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

        return _NAMED.sub(renamed, _blocks_said(source, where, self.text))

    def text(self, text: str, where: str = "", filled: bool = False) -> str:
        """One text, or the text itself with a mark. `filled`: it is markdown with placeholders."""
        if not text.strip() or not self._foreign:
            return text
        said = self._found(text) or _kit_title(text, self._language)
        if not said:
            self._missing.setdefault(text, OwnText(text, where))
            return _marked(text, f" [{self._source}]", filled)
        if filled:
            self._check(text, said, where)
        return said

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
            title: self._found(title) or _marked(title, f" [{self._source}]", False) for title, _ in pattern.finished
        }
        return {name_of(title): name_of(new) for title, new in said.items() if name_of(title) not in taken}


def names_of(pattern: Pattern) -> tuple[str, ...]:
    """The points and lines of a lesson that have only a name in its code and that the kit has no words for."""
    found: dict[str, None] = {}
    for step in pattern.steps:
        lines = [name for _, name, _ in (*step.new, *step.removed)]
        labelled = {edge.name for piece in step.pieces for edge in piece.edges}
        points = [name for _, name, _ in step.new_points]
        points += [name for piece in step.pieces for name, _ in (*piece.points, *piece.guides)]
        found |= dict.fromkeys(name for name in [*lines, *points] if name not in labelled)
    with speaking(SOURCE):
        return tuple(name for name in found if not says(f"worksheet.name.{name}") and not says(f"edge.{name}"))


def _listed(found: Sequence[str]) -> str:
    return ", ".join(f"{{{name}}}" for name in found)


def _finished(title: str) -> str:
    return f"Finished measurement '{title}'"


def _placeholders(text: str) -> set[str]:
    found = (part for part in split(_CODE.sub("", _unfenced(text))) if isinstance(part, Placeholder))
    return {f"{part.name}:{part.format}" if part.format else part.name for part in found}


def _pattern_in(thing: Any) -> Pattern:
    if isinstance(thing, Pattern):
        return thing
    found = getattr(thing, "pattern", None)
    if not isinstance(found, Pattern):
        raise TypeError(f"{type(thing).__name__} holds no pattern")
    return found


# ---- the words inside values ------------------------------------------------------------------------------


@dataclass(frozen=True)
class _Kept:
    """A value and what became of it; the value is held so that its id stays its own."""

    was: Any
    now: Any


class _WordsWalk:
    """Goes through frozen values and says every text of the lesson's in them."""

    def __init__(self, speak: Speak, language: str = "") -> None:
        self._speak = speak
        self._language = language
        self._memo: dict[int, _Kept] = {}
        self._pattern: Pattern | None = None
        self._place = ""

    def of(self, thing: Any) -> Any:
        """`thing` with its texts as said; the same object where nothing changed."""
        if not (is_dataclass(thing) or type(thing) in (tuple, list, dict)) or _without_words(thing):
            return thing
        kept = self._memo.get(id(thing))
        if kept is None:
            kept = self._memo[id(thing)] = _Kept(thing, self._made(thing))
        return kept.now

    def _made(self, thing: Any) -> Any:
        if isinstance(thing, tuple | list):
            made = [self.of(item) for item in thing]
            return thing if all(a is b for a, b in zip(made, thing, strict=True)) else type(thing)(made)
        if isinstance(thing, dict):
            pairs = {key: self.of(value) for key, value in thing.items()}
            return thing if all(pairs[key] is thing[key] for key in thing) else pairs
        # Walks any value and gives the same object back where nothing in it changed, so that what is shared stays
        # shared and a booklet without translations costs a walk and no copies. The place told to a translator is that
        # of the nearest value that has one.
        before = self._pattern, self._place
        if isinstance(thing, Pattern):
            self._pattern = thing
        self._place = _place_of(thing) or self._place
        changes = {name: text for name, text in self._own(thing).items() if text != getattr(thing, name)}
        for field in fields(thing):
            if field.name not in changes and (type(thing), field.name) not in _UNREAD:
                value = getattr(thing, field.name)
                new = self.of(value)
                if new is not value:
                    changes[field.name] = new
        self._pattern, self._place = before
        return replace(thing, **changes) if changes else thing

    def _say(self, text: str, what: str, filled: bool = False) -> str:
        where = f"{self._place}, {what}" if self._place else what[:1].upper() + what[1:]
        return self._speak(text, where, filled) if text.strip() else text

    def _label(self, thing: Edge | Mark | Dart | Pleat, what: str) -> dict[str, Any]:
        said = self._say(thing.label, f"{what} '{thing.name}'")
        return {"said": said} if said != thing.label else {}

    def _own(self, thing: Any) -> dict[str, Any]:
        """The fields of `thing` that are words, as said."""
        match thing:
            case LessonInfo():
                return self._info(thing)
            case Photo():
                return self._said(thing, "alt", "caption")
            case Measurement():
                return {"title": self._say(thing.title, "name"), "text": self._say(thing.text, "how it is taken")}
            case StepRecord() if (
                words := words_of(thing.key, self._language, thing.text)
            ) is not None:  # the kit's own words
                return dict(words)
            case StepRecord() | SewRecord():
                text = self._say(thing.text, "words", True)
                return {"title": self._say(thing.title, "title"), "text": text}
            case Piece() if _kit_title(thing.title):  # of a block: no author need translate it
                return self._said(thing, "title") if self._language in languages() else {}
            case Piece() | Strip():
                return self._said(thing, "title")
            case Edge():
                known = _kit_words(thing.name)
                if known and thing.said in ("", known):
                    return {"said": _kit_words(thing.name, self._language)} if self._language in languages() else {}
                return self._label(thing, "edge")
            case Mark():
                return self._label(thing, "mark")
            case Dart():
                return self._label(thing, "dart")
            case Pleat():
                return self._label(thing, "pleat or tuck")
            case ParameterValue() if thing.name in FIT_CHANGES:
                return {"said": said} if (said := fit_said(thing.name, self._language)) != thing.said else {}
            case StepMeasure() if (label := part_label(thing.name, self._language)) is not None:
                return {"label": label}
            case ParameterValue():
                said = self._say(thing.label, "name")
                return {"said": said if said != thing.label else thing.said, "why": self._say(thing.why, "why")}
            case StepMeasure():
                kits = thing.edge or thing.name in MEASUREMENTS  # said when it is shown
                return {"label": thing.label if kits else self._say(thing.label, "measure")}
            case Fitting():
                return self._said(thing, "title", "why")
            case Pattern():
                for field in fields(thing):  # in reading order: what was measured comes last
                    if (Pattern, field.name) not in _UNREAD:
                        self.of(getattr(thing, field.name))
                for name in names_of(thing):
                    self._speak(name.replace("_", " "), f"Point or line '{name}'", False)
                titles = {title: self._speak(title, _finished(title), False) for title, _ in thing.finished}
                finished = tuple((titles[title], mm) for title, mm in thing.finished)
                return {"finished": finished, "over": tuple((titles.get(t, t), name) for t, name in thing.over)}
            case Operation():
                return self._operation(thing)
        return {}

    def _said(self, thing: Any, *names: str) -> dict[str, Any]:
        return {name: self._say(getattr(thing, name), name) for name in names}

    def _info(self, info: LessonInfo) -> dict[str, Any]:
        known = {"cautions": keys("caution"), "notions": keys("notion")}
        made: dict[str, Any] = {}
        for name in _INFO:
            given = getattr(info, name)
            if isinstance(given, str):
                made[name] = self._say(given, name.replace("_", " "))
            else:
                kept = known.get(name, ())
                what = name.replace("_", " ")
                made[name] = tuple(t if isinstance(t, Message) or t in kept else self._say(t, what) for t in given)
        made["variations"] = tuple((self._say(t, "variations"), self._say(w, "variations")) for t, w in info.variations)
        if self._language:
            made["language"] = self._language
        return made

    def _operation(self, operation: Operation) -> dict[str, Any]:
        """An operation's own texts: what its sentences call a text and its fields hold."""
        if self._pattern is None:
            return {}
        try:
            sentences = operation.sentences(self._pattern)
        except KitError:  # the proof tells what is wrong with it
            return {}
        texts = {str(value) for found in sentences for value, kind in found.values.values() if kind == "text" and value}
        held = {field.name: getattr(operation, field.name) for field in fields(operation)}
        return {
            name: self._say(value, name) for name, value in held.items() if isinstance(value, str) and value in texts
        }


@lru_cache(maxsize=256)
def _kit_words(edge: str, language: str = SOURCE) -> str:
    """What the kit itself calls an edge of that name; empty where it has no words for it."""
    with speaking(language):
        return say(f"edge.{edge}") if says(f"edge.{edge}") else ""


@lru_cache(maxsize=8)
def _kit_titles(language: str) -> dict[str, str]:
    """The titles of the pieces of the kit's own blocks in `language`, by what they are in the source."""
    with speaking(SOURCE):
        titles = {key: say(f"block.{key}") for key in keys("block")}
    with speaking(language):
        return {title: say(f"block.{key}") for key, title in titles.items()}


def _kit_title(title: str, language: str = SOURCE) -> str:
    """A title in `language` that is one of the kit's own; empty where it is the lesson's."""
    return _kit_titles(language).get(title, "") if language in languages() else ""


def _without_words(thing: Any) -> bool:
    """Geometry and bodies hold nothing of the lesson's words."""
    return isinstance(thing, Body) or type(thing).__module__.startswith("kit.geometry")


def _place_of(thing: Any) -> str:
    match thing:
        case Pattern() | LessonInfo():
            return "Lesson"
        case StepRecord() | SewRecord():
            return f"Step '{thing.key}'"
        case Piece():
            return f"Piece '{thing.name}'"
        case Strip():
            return f"Strip '{thing.name}'"
        case ParameterValue():
            return f"Parameter '{thing.name}'"
        case Measurement():
            return f"Measurement '{thing.name}'"
        case Photo():
            return f"Photo '{thing.file}'"
        case Fitting():
            return "Fitting"
    return ""


# ---- markdown ---------------------------------------------------------------------------------------------


def split_blocks(source: str) -> list[str]:
    """Markdown as blocks and what lies between them, by turns: [block, blank lines, block, ...]. Blocks are split at
    blank lines outside fenced code; joined, they are the source."""
    parts = [""]
    fence = ""
    for line in source.splitlines(keepends=True):
        blank = not line.strip() and not fence
        if blank == (len(parts) % 2 == 1):  # a block is an even part, what lies between an odd one
            parts.append("")
        parts[-1] += line
        found = _FENCE.match(line.rstrip("\n"))
        if fence:
            closing = line.strip()
            fence = "" if closing.startswith(fence) and not closing.strip(fence[0]) else fence
        elif found:
            fence = found[1]
    return parts


def _unfenced(source: str) -> str:
    return "\n\n".join(block for block in split_blocks(source)[::2] if not _FENCE.match(block.split("\n")[0]))


def _blocks_said(source: str, where: str, speak: Speak) -> str:
    made = []
    for at, part in enumerate(split_blocks(source)):
        body = part.rstrip()
        if at % 2 or not any(letter.isalpha() for letter in body):
            made.append(part)
            continue
        heading = _HEADING.fullmatch(body) if "\n" not in body else None
        if heading:
            made.append(heading[1] + speak(heading[2], where, True) + part[len(body) :])
        else:
            made.append(speak(body, where, True) + part[len(body) :])
    return "".join(made)


def _marked(text: str, mark: str, markdown: bool) -> str:
    """`text` with a visible mark at its end, where markdown shows it."""
    if not markdown:
        return text + mark
    last = text.rstrip().split("\n")[-1]
    if _FENCE.match(last) or last.rstrip().endswith("|") or re.fullmatch(r"\s*(=+|-+)\s*", last) or last[:4] == "    ":
        return f"{text.rstrip()}\n\n{mark.strip()}"
    return text.rstrip() + mark
