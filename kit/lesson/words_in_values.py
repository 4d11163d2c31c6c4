"""The words of a lesson inside the values that hold them: every text that people read, said in reading order.

Whoever collects the texts and whoever translates them goes the same way, so that nothing is translated that was not
collected. What the kit itself says (titles of its blocks' pieces, names of edges) is not the lesson's.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, fields, is_dataclass, replace
from functools import lru_cache
from typing import Any

from kit.body.body import Body
from kit.body.measures import MEASUREMENTS, Measurement
from kit.diagnostic import Message
from kit.errors import KitError
from kit.language import SOURCE, keys, languages, say, says, speaking
from kit.lesson.fit_change import FIT_CHANGES
from kit.lesson.fit_steps import fit_said, part_label, words_of
from kit.lesson.fitting import Fitting
from kit.lesson.markdown_blocks import Speak
from kit.lesson.pattern import LessonInfo, ParameterValue, Pattern, Photo, SewRecord, StepMeasure, StepRecord
from kit.piece.darts_and_pleats import Dart, Pleat
from kit.piece.piece import Edge, Mark, Piece, Strip
from kit.sewing.operation import Operation

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
_UNREAD = ((Pattern, "start"), (Pattern, "measured_on"))
"""What no author is asked to translate: the block's own pieces, which the worksheet alone shows, and mere names. Words
that stand in the lesson as well are said there as here."""


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


def _finished(title: str) -> str:
    return f"Finished measurement '{title}'"


@dataclass(frozen=True)
class _Kept:
    """A value and what became of it; the value is held so that its id stays its own."""

    was: Any
    now: Any


class WordsWalk:
    """Goes through frozen values and says every text of the lesson's in them."""

    def __init__(self, speak: Speak, language: str = "", known: Callable[[str], str] | None = None) -> None:
        self._speak = speak
        self._known = known
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
            if field.name not in changes:
                value = getattr(thing, field.name)
                new = self._unread(value) if (type(thing), field.name) in _UNREAD else self.of(value)
                if new is not value:
                    changes[field.name] = new
        self._pattern, self._place = before
        return replace(thing, **changes) if changes else thing

    def _unread(self, thing: Any) -> Any:
        """`thing` with those of its texts that are `known`."""
        known = self._known
        return thing if known is None else WordsWalk(lambda text, *_: known(text), self._language).of(thing)

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
            case Piece() if kit_title(thing.title):  # of a block: no author need translate it
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


def kit_title(title: str, language: str = SOURCE) -> str:
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
