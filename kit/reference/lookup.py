"""Looking something up: a verb by its name, a word of the trade, what a lesson or the kit itself offers."""

from __future__ import annotations

import inspect
import re
import sys
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from difflib import get_close_matches
from functools import cache
from typing import Any

from kit.body.measures import MEASUREMENTS
from kit.diagnostic import list_of, message
from kit.errors import KitError
from kit.lesson.lesson import Lesson
from kit.reference.entry import VerbEntry, entries, offered_words, trade_words

_NEAR = 4
_WHOLE = 3  # letters of a word that is not the beginning of another


@dataclass(frozen=True)
class Found:
    """What was found for a `topic`: `entries` of that name; `wanted`, uses of the trade that speak of it, each with
    its entries or what is offered for it; `offered`, what a lesson or the kit itself has of that name ("lesson.length"
    -> function or class)."""

    topic: str
    entries: tuple[VerbEntry, ...] = ()
    wanted: Mapping[str, tuple[str, ...]] | None = None
    offered: Mapping[str, Callable[..., Any]] | None = None


def look_up(topic: str) -> Found:
    """What is known of a topic. `KitError` with the near ones when it is nothing."""
    asked = re.sub(r"\(.*", "", topic.strip(), flags=re.DOTALL).strip(" .`\"'")
    every = entries()
    exact = {key: entry for key, entry in every.items() if key == asked}
    name = asked.rpartition(".")[2]
    own = "" if asked.startswith("make.") or asked in every else name
    named = tuple(exact.values()) or tuple(
        entry for entry in every.values() if entry.verb.name == name and (own or entry.kind == "make")
    )
    offered = {key: one for key, one in offered_names().items() if own and key.rpartition(".")[2] == own}
    if not named and not offered and own:
        parts = set(_words(own.replace("_", " ")))
        offered = {
            key: one
            for key, one in offered_names().items()
            if parts and parts <= set(_words(key.rpartition(".")[2].replace("_", " ")))
        }
    wanted = {words: keys for words, keys in trade_words().items() if _speaks(words, asked)}
    wanted = {words: keys for words, keys in wanted.items() if not {one.key for one in named} & set(keys)}
    wanted |= {words: keys for words, keys in offered_words().items() if _speaks(words, asked)}
    if not asked or not (named or offered or wanted):
        raise _unknown(topic)
    return Found(topic, named, wanted, offered)


@cache
def _lesson_methods() -> Mapping[str, Callable[..., Any]]:
    return {
        f"lesson.{name}": member
        for name, member in inspect.getmembers(Lesson, inspect.isfunction)
        if not name.startswith("_") and member.__doc__
    }


def offered_names() -> dict[str, Callable[..., Any]]:
    """What a lesson has (`lesson.length`), and the functions and classes of the kit (`kit.canvas`)."""
    face = sys.modules["kit"]  # above us, and imported before any room of it
    public = {name: getattr(face, name) for name in face.__all__}
    kit = {f"kit.{name}": one for name, one in public.items() if callable(one) and inspect.getdoc(one)}
    return {**_lesson_methods(), **kit}


def _words(text: str) -> list[str]:
    return [re.sub(r"(?<=\w{3})(ing|s)$", "", word) for word in re.findall(r"[a-z]+", text.lower())]


def _speaks(words: str, asked: str) -> bool:
    """Whether a use of the trade speaks of all that is asked for; three letters are a whole word, so that ties are
    no tiers."""
    said = _words(words)
    return bool(asked) and all(
        any(one == word or (len(word) > _WHOLE and one.startswith(word)) for one in said) for word in _words(asked)
    )


def _unknown(topic: str) -> KitError:
    named = {entry.verb.name for entry in entries().values()}
    named |= {key.rpartition(".")[2] for key in offered_names()} | set(MEASUREMENTS)
    words = {word: words for words in trade_words() for word in _long(words)}
    word = topic.rpartition(".")[2].strip().lower()
    close = get_close_matches(word, sorted(named), n=_NEAR, cutoff=0.6)
    close += [words[one] for one in get_close_matches(word, sorted(words), n=_NEAR, cutoff=0.75)]
    close += [one for one in sorted(named) if any(part in one for part in _long(word))]
    close = list(dict.fromkeys(close))[:_NEAR]
    do = message("reference.unknown_near", names=list_of(close, "string")) if close else message("reference.unknown_do")
    return KitError(message("reference.unknown", topic=topic), do=do)


def _long(text: str) -> list[str]:
    return [part for part in re.split(r"[\W_]+", text.lower()) if len(part) > 3]
