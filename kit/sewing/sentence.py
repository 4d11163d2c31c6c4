"""What an operation says, as keys and values; put into words by `kit.prose`."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from typing import Any, NamedTuple

from kit.sewing.cut import Cut


class Sentence(NamedTuple):
    """`key` of a sentence in templates/language, and what fills it: name -> (value, kind). Kinds: length and allowance
    (mm), part (mm; the parts of one operation are rounded so that they add up), count, edge (runs), place (runs with
    their piece), mark (places), landmarks (`NamedLandmark`s), piece (names), strip (name), word (key of a word), names
    (what several things are called), spot and spots ((run, mm along it, ...), told by the edge they are measured
    from), stretch ((run, start, end), told so too), text (the teacher's own)."""

    key: str
    values: Mapping[str, tuple[Any, str]]


Said = str | Sentence
"""The key of a sentence, filled by the operation that says it, or a sentence as it is; "" is none."""


class Say(NamedTuple):
    """A sentence that is said only `when` that is true of the operation; where it is not, the `other`."""

    key: Said
    when: Callable[[Any], Any]
    other: Said = ""


class Also(NamedTuple):
    """What fills a place in sentences besides the fields: the place's `name`, the value or a function of (operation,
    pattern) that gives it (None: nothing fills it), its kind."""

    name: str
    value: Any
    kind: str = "allowance"


Telling = Callable[[Any, Cut], Said | Iterable[Said]]
"""Sentences that no key alone can give: (operation, pattern) -> them or their keys."""
Keys = tuple[Said | Say | Telling, ...]
"""The type of `says`, written in a class that others build on."""
PRESS_LATER = Say(Sentence("press_later", {}), lambda made: made.press == "later")
"""Of an operation whose seam waits for the iron."""
