"""The nouns a language's names are made of, and their genders."""

from __future__ import annotations

import re
import tomllib
from collections.abc import Iterator, Mapping
from contextlib import contextmanager
from contextvars import ContextVar
from functools import lru_cache
from types import MappingProxyType
from typing import Any

from kit.resources import templates

GENDERS = {"de": ("m", "f", "n", "p"), "fr": ("m", "f", "mp", "fp"), "es": ("m", "f", "mp", "fp")}
"""The letters a language tells genders with: masculine, feminine, neuter, and a p for the plural."""

_LETTER = re.compile(r"\s*\{\s*(mp|fp|m|f|n|p)\s*\}\s*$")
_known: ContextVar[Mapping[str, str]] = ContextVar("known", default=MappingProxyType({}))


@contextmanager
def knowing(genders: Mapping[str, str]) -> Iterator[None]:
    """Inside the block the names that are keys of `genders` have the gender that is their value."""
    token = _known.set({name.casefold(): gender for name, gender in genders.items()})
    try:
        yield
    finally:
        _known.reset(token)


def told(name: str) -> str:
    """The gender that was told of this very name, or ""."""
    return _known.get().get(name.casefold(), "")


def starting(text: Any) -> str:
    """Words that a sentence begins with."""
    return str(text)[:1].upper() + str(text)[1:]


def split_gender(text: str, code: str) -> tuple[str, str]:
    """A translated name and the gender written behind it, "" where none is or the language has no such gender.

    >>> split_gender("Vorderteil {n}", "de"), split_gender("Saum", "de"), split_gender("devant {n}", "fr")
    (('Vorderteil', 'n'), ('Saum', ''), ('devant {n}', ''))
    """
    found = _LETTER.search(text)
    if not found or found[1] not in GENDERS.get(code, ()):
        return text, ""
    return text[: found.start()], found[1]


@lru_cache(maxsize=4)
def nouns(code: str) -> Mapping[str, str]:
    """The gender of every noun of the language's list, by the noun in small letters."""
    read = tomllib.loads((templates() / "language" / code / "nouns.toml").read_text(encoding="utf-8"))
    return {word.casefold(): gender for gender in GENDERS[code] for word in read.get(gender, "").split()}
