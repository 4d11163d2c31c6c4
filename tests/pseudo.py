"""A language made up for tests: English with every message of the catalogue between guillemets, «like this».

What is said in it and lies outside the guillemets did not come from the catalogue, so that no translation could reach
it. Units, measurements, edges, small words and phrases stay plain, as they fill the places of other messages.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator
from contextlib import contextmanager
from functools import cache
from pathlib import Path
from shutil import copytree
from tempfile import TemporaryDirectory

import pytest
from fluent.syntax import FluentParser, FluentSerializer, ast

from kit import language, units
from kit.resources import templates

CODE = "qps"
"""Of the codes set apart for private use (ISO 639-2: qaa to qtz)."""
OPEN, SHUT = "«", "»"
PLAIN = ("unit-", "measure-", "edge-", "word-", "phrase-", "term_forms-")


@contextmanager
def pseudo() -> Iterator[None]:
    """Everything said inside the block is said in the pseudo-language; before and after it as always."""
    with TemporaryDirectory() as folder, pytest.MonkeyPatch.context() as patch:
        catalogues = Path(folder) / "language"
        copytree(templates() / "language" / language.SOURCE, catalogues / language.SOURCE)
        (catalogues / CODE).mkdir()
        for source in (catalogues / language.SOURCE).glob("*.ftl"):
            (catalogues / CODE / source.name).write_text(wrapped(source.read_text("utf-8")), encoding="utf-8")
        decimal = units.get_decimal_symbol
        patch.setattr(language, "templates", lambda: Path(folder))
        patch.setattr(units, "get_decimal_symbol", lambda code: decimal(language.SOURCE if code == CODE else code))
        _forget()
        try:
            with language.speaking(CODE):
                yield
        finally:
            _forget()


def _forget() -> None:
    for cached in (language.languages, language._catalogue, units._decimal, units._unit):
        cached.cache_clear()


@cache
def wrapped(catalogue: str) -> str:
    """The text of a Fluent file with each message, but for the plain ones, between guillemets."""
    tree = FluentParser(with_spans=False).parse(catalogue)
    for entry in tree.body:
        if isinstance(entry, ast.Message) and entry.value and not entry.id.name.startswith(PLAIN):
            entry.value.elements[:0] = [ast.TextElement(OPEN)]
            entry.value.elements.append(ast.TextElement(SHUT))
    return FluentSerializer().serialize(tree)


def escaped(text: str, allowed: Iterable[str] = ()) -> list[str]:
    """The words of `text` outside all guillemets that hold letters, but for those that stand in `allowed` (names and
    titles as given, of one or several words)."""
    for name in sorted((name for name in allowed if name), key=len, reverse=True):
        text = re.sub(rf"(?<!\w){re.escape(name)}(?!\w)", " ", text)
    outside: list[str] = []
    depth = 0
    for sign in text:
        if sign == OPEN:
            depth += 1
        outside.append(" " if depth or sign == SHUT else sign)
        if sign == SHUT:
            depth = max(0, depth - 1)
    return [word for word in "".join(outside).split() if any(sign.isalpha() for sign in word)]
