"""What Shift-Tab shows inside a step of a lesson: a verb with its arguments, units, defaults and an example; an edge,
piece, parameter or measurement with what it measures now."""

from __future__ import annotations

import re
import textwrap
from collections.abc import Mapping
from typing import Any

from kit.lesson.lesson import Lesson
from kit.live.half_written import at_cursor
from kit.live.speech import in_words_of
from kit.live.within_reach import NamedThing, Reach
from kit.reference.verb_help import in_full, verbs_of

_REST_OF_NAME = re.compile(r"\w*")
_MANY = 12  # names listed of a piece
_WIDE = 78


def help_at(code: str, cursor: int, namespace: Mapping[str, Any]) -> str:
    """What to read about the name at position `cursor` of a cell's text, else about the call it stands in; "" where
    that is nothing of a lesson's step."""
    rest = _REST_OF_NAME.match(code, cursor)
    end = rest.end() if rest else cursor
    found = _help(code, end, namespace)
    if not found and code[:cursor].endswith(")"):
        found = _help(code, cursor - 1, namespace, name=False)  # right behind a call: the call is meant
    return found


def _help(code: str, cursor: int, namespace: Mapping[str, Any], name: bool = True) -> str:
    """Help on the `name` before the cursor, where that is asked for, else on the call it stands in."""
    place = at_cursor(code, cursor)
    lesson = namespace.get(place.step.lesson) if place else None
    if place is None or not isinstance(lesson, Lesson):
        return ""
    with in_words_of(lesson):
        reach = Reach(lesson, place)
        if place.zone == "arguments":
            thing = reach.offered.get(place.word)
            return _thing(thing, place.word) if thing else ""
        written = f"{place.owner}.{place.word}" if place.owner else place.word
        found = _told(reach, written, called=False) if name and place.word else ""
        return found or (_told(reach, place.call.called, called=True) if place.call else "")


def _told(reach: Reach, expression: str, *, called: bool) -> str:
    found = reach.verb(expression, called=called)
    if found is not None:
        return in_full(found[1], _owner(expression, found[0]))
    thing = reach.thing(expression)
    return _thing(thing, expression) if thing else ""


def _owner(expression: str, thing: NamedThing) -> str:
    """How the thing a verb belongs to is written, where that is short; else its kind."""
    owner = expression.rpartition(".")[0]
    return owner if re.fullmatch(r"[\w.]+", owner) else str(thing.kind).replace(" ", "_")


def _thing(thing: NamedThing, written: str) -> str:
    parts = [f"{written}\n{thing.line}"]
    for word in dict.fromkeys(one.word for one in thing.inside.values()):
        parts.append(
            _listed(
                f"{word}s" if not word.endswith("s") else word, [n for n, t in thing.inside.items() if t.word == word]
            )
        )
    if verbs := verbs_of(thing.kind):
        parts.append(_listed("verbs", list(verbs), many=len(verbs)))
    return "\n\n".join(parts)


def _listed(word: str, names: list[str], many: int = _MANY) -> str:
    text = f"{word}: {', '.join(names[:many])}{', ...' if len(names) > many else ''}"
    return "\n".join(textwrap.wrap(text, _WIDE, subsequent_indent="  "))
