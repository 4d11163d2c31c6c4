"""What a page or the board says to the room: JSON that is read into a value, or refused.

Whoever has the code may send anything, so nothing is taken on trust: kinds, lengths and numbers are checked here, and
what a setting means is checked by the engine that works it.
"""

from __future__ import annotations

import json
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

MOST = 64 * 1024
"""Bytes of one message."""
NAME = 30
"""Characters of a first name."""
_KEY = 120
_LIST = 200
_SETTING = ("language", "units", "body", "values", "step", "room")
Step = Mapping[str, Any]


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
    told = _object(text)
    what = told.get("is")
    if what == "here":
        solved = told.get("solved", [])
        if not isinstance(solved, list) or len(solved) > _LIST:
            raise Unsaid("solved")
        step = told.get("step", "")
        engine = told.get("engine")
        return Report(
            _text(step, _KEY),
            _count(told.get("number", 0)),
            _count(told.get("steps", 0)),
            tuple(_text(key, _KEY) for key in solved),
            _count(told.get("errors", -1), -1),
            _count(told.get("warnings", -1), -1),
            engine if engine in ("own", "room") else "",
        )
    if what == "name":
        return Named(clean_name(_text(told.get("name", ""), 400)))
    if what == "hand":
        return Hand(told.get("up") is True)
    if what == "may_look":
        return MayLook(told.get("yes") is True)
    if what == "draft":
        setting = told.get("setting")
        return Draft(_count(told.get("for")), None if setting is None else read_setting(setting))
    if what == "ask":
        return _ask(told)
    if what == "make":
        return MakePages(read_setting(told.get("setting")), _text(told.get("paper"), 20), told.get("booklet") is True)
    if what == "cancel":
        return Cancel()
    raise Unsaid("what")


def read_board(text: str) -> BoardSaid:
    """What the teacher's board says. Raises `Unsaid`."""
    told = _object(text)
    what = told.get("is")
    if what == "send":
        values = told.get("values", {})
        if not isinstance(values, dict) or len(values) > _LIST:
            raise Unsaid("values")
        step = told.get("step")
        known = {_text(name, _KEY): _number(value) for name, value in values.items()}
        return Send(None if step is None else _step(step), known, _text(told.get("title", ""), _KEY))
    if what == "follow":
        return Follow(told.get("on") is True)
    if what == "at":
        return At(_step(told.get("step")))
    if what == "look":
        return LookAtDraft(_count(told.get("number")))
    if what == "over":
        return Over()
    if what == "lower":
        return Lower(_count(told.get("number")))
    if what == "let_go":
        return LetGo(_count(told.get("number")))
    if what == "ask":
        return _ask(told)
    raise Unsaid("what")


def clean_name(text: str) -> str:
    """A first name on one line, without what cannot be seen or turns a line about."""
    seen = "".join(c if c.isprintable() else " " for c in text)
    return " ".join(seen.split())[:NAME].strip()


def read_setting(told: object) -> dict[str, Any]:
    """The parts of a setting that the engine knows, unchecked otherwise. Raises `Unsaid`."""
    if not isinstance(told, dict):
        raise Unsaid("setting")
    return {key: told[key] for key in _SETTING if key in told}


def _ask(told: Mapping[str, Any]) -> Ask:
    text = told.get("text")
    if not isinstance(text, str):
        raise Unsaid("text")
    try:
        asked = json.loads(text)
    except (ValueError, RecursionError):
        raise Unsaid("text") from None
    if not isinstance(asked, dict):
        raise Unsaid("text")
    return Ask(_count(told.get("id")), one_line(asked), asked.get("do") in ("prove", "mend"))


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
