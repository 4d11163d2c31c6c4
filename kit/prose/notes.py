"""Cautions, tools, notions and terms for "before you begin": only those a lesson needs."""

from __future__ import annotations

import re
from collections.abc import Iterable
from dataclasses import dataclass
from functools import lru_cache
from typing import TYPE_CHECKING

from kit.body.body import NOBODY
from kit.language import alphabetical, keys, say
from kit.wear.needs import is_child
from kit.wording.needs import listed_as

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


def cautions(pattern: Pattern) -> list[Caution]:
    """The usual cautions for what this lesson does, in a fixed order, then the lesson's own, then the one that
    defers to local rules. Cutting and loose clothing always count; cords when there are strips, and where the body is
    a child's, what the standards ask of them there: EN 14682 (up to 14 years; hood and neck, waist, lower hem, sleeves
    and the rest, tied belts among it) and ASTM F1816 (hood and neck, waist, lower edge), both by their published
    scopes, Tukes, "Cords and drawstrings on children's clothing", and the US CPSC's page on 16 CFR 1120."""
    known = keys("caution")
    wanted = set(_ALWAYS if pattern.body != NOBODY else _ALWAYS[:2])  # loose sleeves: what is drawn on a body is worn
    for record in pattern.sewing:
        for operation in record.operations:
            wanted.update(operation.cautioned(pattern))
            wanted.update({"pins"} & set(operation.tools))
    if pattern.strips:
        wanted.add("cords")
    wanted.update(text for text in pattern.lesson.cautions if text in known)
    if "cords" in wanted and is_child(pattern.body):
        wanted.add("cords_child")
    if "cords_child" in wanted:
        wanted.discard("cords")
    own = [text for text in pattern.lesson.cautions if text not in known]
    found = [Caution(key, say(f"caution.{key}"), say(f"caution_text.{key}")) for key in known if key in wanted]
    found += [Caution("", "", text) for text in own]
    return [*found, Caution("local", "", say("caution_local.text"))]


def tools(pattern: Pattern) -> list[str]:
    """The tools the operations need, in a fixed order, but for those that the lesson's notions name."""
    wanted = {tool for record in pattern.sewing for operation in record.operations for tool in operation.tools}
    if any("scissors" in op.cautioned(pattern) for record in pattern.sewing for op in record.operations):
        wanted.add("scissors")  # what is to be minded is used
    named = " ".join(pattern.lesson.notions).lower()
    wanted = {key for key in wanted if not any(word in named for word in listed_as(key))}
    return [say(f"tool.{key}") for key in keys("tool") if key in wanted]


def notions(pattern: Pattern) -> list[str]:
    """What the operations use up, in a fixed order."""
    wanted = {need for record in pattern.sewing for operation in record.operations for need in operation.notions}
    return [say(f"notion.{key}") for key in keys("notion") if key in wanted]


def terms(texts: Iterable[str]) -> list[Term]:
    """The terms that stand in `texts`, in alphabetical order, matched as whole words."""
    body = "\n".join(texts).lower()
    found = [Term(say(f"term.{key}"), say(f"term_meaning.{key}")) for key in keys("term") if _stands(key, body)]
    return sorted(found, key=lambda term: alphabetical(term.term))


def _stands(key: str, body: str) -> bool:
    """Whether a term stands in a text in small letters. Of its forms those that begin with - are other words, which
    look like it: "tuck in" is no tuck."""
    forms = [form.strip().lower() for form in say(f"term_forms.{key}").split("|")]
    for form in forms:
        if form.startswith("-"):
            body = _whole_word(form[1:]).sub(" ", body)
    return any(_whole_word(form).search(body) for form in forms if not form.startswith("-"))


@lru_cache(maxsize=1024)
def _whole_word(form: str) -> re.Pattern[str]:
    return re.compile(rf"\b{re.escape(form)}\b")
