"""What Tab offers inside a step of a lesson: the edges, points and verbs of its pieces, each with a line about it.

A matcher for IPython's completer. The place at the cursor is read from the cell's text (kit/live/half_written.py), the
names from the lesson as it stands (kit/live/within_reach.py). Where the cursor is in no step of a lesson, or anything
goes wrong, it offers nothing and IPython's own matches stay.
"""

from __future__ import annotations

import builtins
import keyword
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from typing import Any

from kit.lesson.lesson import Lesson
from kit.live.half_written import Cursor, OpenCall, at_cursor
from kit.live.speech import in_words_of
from kit.live.within_reach import NamedThing, Reach, after_the_dot
from kit.reference.verb_help import Verb, told


@dataclass(frozen=True)
class Offer:
    """A name to complete to, what it is and a line about it: "edge: 12 cm (4 3/4 in)"."""

    text: str
    line: str


@dataclass(frozen=True)
class Offers:
    """What may stand in place of the `word` typed so far; no offers where we know of none."""

    word: str
    offers: tuple[Offer, ...] = ()


def offers(code: str, cursor: int, namespace: Mapping[str, Any]) -> Offers:
    """What may be written at position `cursor` of a cell's text, with the notebook's `namespace`."""
    place = at_cursor(code, cursor)
    lesson = namespace.get(place.step.lesson) if place else None
    if place is None or not isinstance(lesson, Lesson):
        return Offers("")
    with in_words_of(lesson):
        reach = Reach(lesson, place)
        if place.zone == "arguments":
            return _said(place, {n: t for n, t in reach.offered.items() if n not in place.step.uses})
        if place.owner:
            thing = reach.thing(place.owner)
            return _said(place, after_the_dot(thing) if thing else {})
        return _bare(place, reach, namespace)


def _said(place: Cursor, named: Mapping[str, NamedThing | Verb]) -> Offers:
    found = [Offer(name, _line(what)) for name, what in named.items()]
    return Offers(place.word, _beginning(found, place.word))


def _line(what: NamedThing | Verb) -> str:
    return what.line if isinstance(what, NamedThing) else f"{what.gives if what.quality else 'verb'}: {what.line}"


def _beginning(found: Iterable[Offer], word: str) -> tuple[Offer, ...]:
    return tuple(offer for offer in found if offer.text.startswith(word))


def _bare(place: Cursor, reach: Reach, namespace: Mapping[str, Any]) -> Offers:
    """A name that follows no dot: the keywords of the verb it stands in, what the step asked for and named, and once a
    letter is typed what Python and the notebook know, so that nothing else need be asked."""
    called = reach.verb(place.call.called) if place.call and not place.call.filled else None
    found = _keywords(place.call, called[1]) if place.call and called else []
    if not place.word and not place.call:
        return Offers("")
    found += [Offer(name, thing.line) for name, thing in reach.things.items()]
    if place.word:
        found += [Offer(name, "in this notebook") for name in sorted(namespace) if not name.startswith("_")]
        found += [Offer(name, "in Python") for name in (*keyword.kwlist, *sorted(dir(builtins)))]
    first = {offer.text: offer for offer in reversed(_beginning(found, place.word))}
    return Offers(place.word, tuple(reversed(first.values())))


def _keywords(call: OpenCall, verb: Verb) -> list[Offer]:
    """The arguments of a verb not given yet that may be given by name, those that only go by name first."""
    found = []
    for number, argument in enumerate(verb.arguments):
        by_place = argument.kind is argument.POSITIONAL_OR_KEYWORD
        if argument.name in call.given or not (by_place or argument.kind is argument.KEYWORD_ONLY):
            continue
        if not by_place or number >= call.position:
            found.append((by_place, Offer(f"{argument.name}=", f"argument: {told(argument, verb)}")))
    return [offer for _, offer in sorted(found, key=lambda pair: pair[0])]
