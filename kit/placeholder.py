"""Placeholders in a teacher's words: `{name}` or `{name:format}`, and nothing more.

A small parser of our own, never `str.format`: no attribute access, no indexing, no code. `{{` and `}}` are
literal braces. The formats "step" and "piece" refer to a step or a piece instead of showing a value.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import dataclass
from functools import lru_cache

from kit.errors import KitError

REFERENCES = ("step", "piece")

_TOKEN = re.compile(r"\{\{|\}\}|\{([^{}]*)\}|\{|\}")
_INSIDE = re.compile(r"\s*([A-Za-z_]\w*)\s*(?::\s*([A-Za-z_]\w*)\s*)?")


@dataclass(frozen=True)
class Placeholder:
    """A name and an optional format, as written between braces."""

    name: str
    format: str = ""


def split(text: str) -> list[str | Placeholder]:
    """`text` as literal strings and placeholders, in order. Raises `KitError` for a brace left open or
    something between braces that is not a name."""
    return list(_split(text))


@lru_cache(maxsize=1024)  # the words of a lesson are asked again whenever it is worked
def _split(text: str) -> tuple[str | Placeholder, ...]:
    found: list[str | Placeholder] = []
    last = 0
    for token in _TOKEN.finditer(text):
        if token.start() > last:
            found.append(text[last : token.start()])
        last = token.end()
        if token[0] in ("{{", "}}"):
            found.append(token[0][0])
            continue
        if token[1] is None:
            raise KitError(
                f"a brace stands alone near '{text[max(0, token.start() - 15) : token.end() + 15]}'.",
                do="Write {name} for a number, or {{ and }} for a brace you want printed.",
            )
        inside = _INSIDE.fullmatch(token[1])
        if not inside:
            raise KitError(
                f"'{{{token[1]}}}' is not a name.", do="Between braces goes a name, such as {sleeve_length}."
            )
        found.append(Placeholder(inside[1], inside[2] or ""))
    if last < len(text):
        found.append(text[last:])
    return tuple(found)


def names(text: str) -> list[str]:
    """The names of the values in `text`, in order of first use; references to steps and pieces are not among them."""
    found = (part for part in split(text) if isinstance(part, Placeholder))
    return list(dict.fromkeys(part.name for part in found if part.format not in REFERENCES))


def references(text: str) -> list[Placeholder]:
    """The references in `text`, `{name:step}` and `{name:piece}`, in order, each once."""
    found = (part for part in split(text) if isinstance(part, Placeholder))
    return list(dict.fromkeys(part for part in found if part.format in REFERENCES))


def fill(text: str, value_of: Callable[[Placeholder], str]) -> str:
    """`text` with every placeholder replaced by what `value_of` gives for it."""
    return "".join(part if isinstance(part, str) else value_of(part) for part in split(text))


def name_of(title: str) -> str:
    """A title as the name that stands for it between braces: "Finished length" -> "finished_length"."""
    name = re.sub(r"\W+", "_", title.lower()).strip("_")
    return name if name[:1].isascii() and name[:1].isalpha() else f"_{name}"
