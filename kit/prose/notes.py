"""Cautions, tools, notions and terms for "before you begin": only those a lesson needs."""

from __future__ import annotations

import re
from collections.abc import Iterable
from dataclasses import dataclass
from typing import TYPE_CHECKING

from kit.prose.phrases import word_table

if TYPE_CHECKING:
    from kit.lesson.pattern import Pattern


@dataclass(frozen=True)
class Caution:
    """A caution with its key; `key` is empty for the lesson's own words."""

    key: str
    title: str
    text: str


@dataclass(frozen=True)
class Term:
    """A term and what it means, in our own words."""

    term: str
    meaning: str


_ALWAYS = ("rotary", "scissors", "flame")


def cautions(pattern: Pattern, language: str = "en") -> list[Caution]:
    """The usual cautions for what this lesson does, in a fixed order, then the lesson's own, then the one that
    defers to local rules. Cutting and loose clothing always count; cords when there are strips."""
    table = word_table(language)
    wanted = set(_ALWAYS)
    for record in pattern.sewing:
        for operation in record.operations:
            wanted.update(operation.cautions)
            wanted.update({"pins"} & set(operation.tools))
    if pattern.strips:
        wanted.add("cords")
    own = [text for text in pattern.lesson.cautions if text not in table["cautions"]]
    wanted.update(text for text in pattern.lesson.cautions if text in table["cautions"])
    found = [
        Caution(key, str(entry["title"]), str(entry["text"]))
        for key, entry in table["cautions"].items()
        if key in wanted
    ]
    found += [Caution("", "", text) for text in own]
    return [*found, Caution("local", "", str(table["local"]["text"]))]


def tools(pattern: Pattern, language: str = "en") -> list[str]:
    """The tools the operations need, in a fixed order."""
    wanted = {tool for record in pattern.sewing for operation in record.operations for tool in operation.tools}
    return [str(name) for key, name in word_table(language)["tools"].items() if key in wanted]


def notions(pattern: Pattern, language: str = "en") -> list[str]:
    """What the operations use up, in a fixed order."""
    wanted = {need for record in pattern.sewing for operation in record.operations for need in operation.notions}
    return [str(name) for key, name in word_table(language)["notions"].items() if key in wanted]


def terms(texts: Iterable[str], language: str = "en") -> list[Term]:
    """The terms that stand in `texts`, in alphabetical order, matched as whole words."""
    body = "\n".join(texts).lower()
    found = [
        Term(str(entry["term"]), str(entry["meaning"]))
        for entry in word_table(language)["terms"]
        if any(re.search(rf"\b{re.escape(str(form).lower())}\b", body) for form in entry["forms"])
    ]
    return sorted(found, key=lambda term: term.term.lower())
