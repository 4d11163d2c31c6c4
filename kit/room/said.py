"""What a page or the board says to the room: JSON that is read into a value, or refused.

Whoever has the code may send anything, so nothing is taken on trust: kinds, lengths and numbers are checked here, and
what a setting means is checked by the engine that works it.
"""

from __future__ import annotations

import json
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from typing import Any, NamedTuple, TypeVar

MOST = 64 * 1024
"""Bytes of one message."""
NAME = 30
"""Characters of a first name."""
_NAME_GIVEN = 400  # characters, before what cannot be seen is taken out
_PAPER = 20
_KEY = 120
_LIST = 200
_SETTING = ("language", "units", "body", "values", "step", "room")
Step = Mapping[str, Any]
M = TypeVar("M")
T = TypeVar("T")


class Unsaid(ValueError):
    """A message that says nothing the room knows."""


@dataclass(frozen=True)
class Report:
    """Where a student is: the `step` by kind and key, its `number` of `steps`, the exercises `solved` by key, the
    count of `errors` and `warnings` found (-1: not known yet), and whose `engine` works the page: "own" or "room"."""

    step: str = ""
    number: int = 0
    steps: int = 0
    solved: tuple[str, ...] = ()
    errors: int = -1
    warnings: int = -1
    engine: str = ""


@dataclass(frozen=True)
class Named:
    name: str


@dataclass(frozen=True)
class Hand:
    up: bool


@dataclass(frozen=True)
class MayLook:
    yes: bool


@dataclass(frozen=True)
class Draft:
    """A student's setting, for the question of that `number`; None where the page does not show it."""

    number: int
    setting: Mapping[str, Any] | None


@dataclass(frozen=True)
class Ask:
    """A message for the engine, as JSON `text`; `slow` when a drawing may go before it."""

    number: int
    text: str
    slow: bool


@dataclass(frozen=True)
class MakePages:
    """Pages of a `setting` on `paper`, and the `booklet` after them."""

    setting: Mapping[str, Any]
    paper: str
    booklet: bool


@dataclass(frozen=True)
class Cancel:
    pass


@dataclass(frozen=True)
class Send:
    """To all: a `step`, `values` by parameter, or both; `title` is what a preset is called."""

    step: Step | None
    values: Mapping[str, float]
    title: str


@dataclass(frozen=True)
class Follow:
    """Pages go along with the board, or are let go."""

    on: bool


@dataclass(frozen=True)
class At:
    """The board stands at that step."""

    step: Step


@dataclass(frozen=True)
class LookAtDraft:
    """Show the draft of the student with that seat's `number`."""

    number: int


@dataclass(frozen=True)
class Over:
    """Show all drafts over one another."""


@dataclass(frozen=True)
class Lower:
    """The hand of that seat was seen."""

    number: int


@dataclass(frozen=True)
class LetGo:
    """That seat is free again."""

    number: int


Said = Report | Named | Hand | MayLook | Draft | Ask | MakePages | Cancel
BoardSaid = Send | Follow | At | LookAtDraft | Over | Lower | LetGo | Ask


def read_student(text: str) -> Said:
    """What a student's page says. Raises `Unsaid`."""
    return _read(_STUDENT, text)


def read_board(text: str) -> BoardSaid:
    """What the teacher's board says. Raises `Unsaid`."""
    return _read(_BOARD, text)


def _read(kinds: Mapping[str, tuple[Callable[..., M], tuple[_Told, ...]]], text: str) -> M:
    """The value that a message gives, by what it says it is; what `kinds` does not name is not looked at."""
    told = _object(text)
    kind = told.get("is")
    if not isinstance(kind, str) or kind not in kinds:
        raise Unsaid("what")
    make, parts = kinds[kind]
    return make(*(part.read(told.get(part.key, part.otherwise)) for part in parts))


def clean_name(text: str) -> str:
    """A first name on one line, without what cannot be seen or turns a line about."""
    seen = "".join(c if c.isprintable() else " " for c in text)
    return " ".join(seen.split())[:NAME].strip()


def read_setting(told: object) -> dict[str, Any]:
    """The parts of a setting that the engine knows, unchecked otherwise. Raises `Unsaid`."""
    if not isinstance(told, dict):
        raise Unsaid("setting")
    return {key: told[key] for key in _SETTING if key in told}


def one_line(asked: Mapping[str, Any]) -> str:
    """JSON on one line, as the workers are told it."""
    return json.dumps(asked, ensure_ascii=True, separators=(",", ":"))


def _object(text: str) -> dict[str, Any]:
    if len(text) > MOST:
        raise Unsaid("length")
    try:
        told = json.loads(text)
    except (ValueError, RecursionError):
        raise Unsaid("json") from None
    if not isinstance(told, dict):
        raise Unsaid("object")
    return told


def _text(value: object, most: int) -> str:
    if not isinstance(value, str) or len(value) > most or any("\ud800" <= c <= "\udfff" for c in value):
        raise Unsaid("a text")
    return value


def _count(value: object, least: int = 0) -> int:
    if isinstance(value, bool) or not isinstance(value, int) or not least <= value <= 1_000_000_000:
        raise Unsaid("a count")
    return value


def _number(value: object) -> float:
    if isinstance(value, bool) or not isinstance(value, int | float) or not -1e6 < value < 1e6:
        raise Unsaid("a number")
    return float(value)


def _step(told: object) -> dict[str, Any]:
    if not isinstance(told, dict) or told.get("kind") not in ("draft", "sew"):
        raise Unsaid("step")
    made: dict[str, Any] = {"kind": told["kind"], "key": _text(told.get("key"), _KEY)}
    picture = told.get("picture", 1)
    made["picture"] = -1 if picture == -1 else max(1, _count(picture))
    return made


def _yes(value: object) -> bool:
    return value is True


def _short(value: object) -> str:
    return _text(value, _KEY)


def _known(value: object) -> int:
    return _count(value, -1)


def _solved(value: object) -> tuple[str, ...]:
    if not isinstance(value, list) or len(value) > _LIST:
        raise Unsaid("solved")
    return tuple(_short(key) for key in value)


def _values(value: object) -> dict[str, float]:
    if not isinstance(value, dict) or len(value) > _LIST:
        raise Unsaid("values")
    return {_short(name): _number(each) for name, each in value.items()}


def _or_none(read: Callable[[object], T]) -> Callable[[object], T | None]:
    return lambda value: None if value is None else read(value)


def _question(value: object) -> dict[str, Any]:
    """The JSON in a text that is meant for the engine."""
    if not isinstance(value, str):
        raise Unsaid("text")
    try:
        asked = json.loads(value)
    except (ValueError, RecursionError):
        raise Unsaid("text") from None
    if not isinstance(asked, dict):
        raise Unsaid("text")
    return asked


def _asked(number: int, question: Mapping[str, Any]) -> Ask:
    return Ask(number, one_line(question), question.get("do") in ("prove", "mend"))


# ---- what each message holds, in the order of its value's fields ------------------------------------------


class _Told(NamedTuple):
    """One part of a message: the `key` it stands under, how it is `read`, and what counts where it is not said."""

    key: str
    read: Callable[[Any], Any]
    otherwise: object = None


_ASK = (_Told("id", _count), _Told("text", _question))
_SEAT = (_Told("number", _count),)
_STUDENT: Mapping[str, tuple[Callable[..., Said], tuple[_Told, ...]]] = {
    "here": (
        Report,
        (
            _Told("step", _short, ""),
            _Told("number", _count, 0),
            _Told("steps", _count, 0),
            _Told("solved", _solved, []),
            _Told("errors", _known, -1),
            _Told("warnings", _known, -1),
            _Told("engine", lambda value: value if value in ("own", "room") else ""),
        ),
    ),
    "name": (Named, (_Told("name", lambda value: clean_name(_text(value, _NAME_GIVEN)), ""),)),
    "hand": (Hand, (_Told("up", _yes),)),
    "may_look": (MayLook, (_Told("yes", _yes),)),
    "draft": (Draft, (_Told("for", _count), _Told("setting", _or_none(read_setting)))),
    "ask": (_asked, _ASK),
    "make": (
        MakePages,
        (_Told("setting", read_setting), _Told("paper", lambda value: _text(value, _PAPER)), _Told("booklet", _yes)),
    ),
    "cancel": (Cancel, ()),
}
_BOARD: Mapping[str, tuple[Callable[..., BoardSaid], tuple[_Told, ...]]] = {
    "send": (Send, (_Told("step", _or_none(_step)), _Told("values", _values, {}), _Told("title", _short, ""))),
    "follow": (Follow, (_Told("on", _yes),)),
    "at": (At, (_Told("step", _step),)),
    "look": (LookAtDraft, _SEAT),
    "over": (Over, ()),
    "lower": (Lower, _SEAT),
    "let_go": (LetGo, _SEAT),
    "ask": (_asked, _ASK),
}
