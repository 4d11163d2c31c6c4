"""Messages that choose by number, and whether they are given one: a text would always choose the last form."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from contextlib import contextmanager
from functools import lru_cache
from typing import Any

import pytest
from fluent.syntax import FluentParser, ast
from fluent.syntax.visitor import Visitor

from kit import language
from kit.resources import templates

FORMS = {"zero", "one", "two", "few", "many"}
"""Besides "other", which also stands where a message chooses by a word (Unicode CLDR, plural rules)."""


class _Choices(Visitor):
    def __init__(self) -> None:
        self.numbers: set[str] = set()

    def visit_SelectExpression(self, node: ast.SelectExpression) -> None:
        by_number = any(
            isinstance(variant.key, ast.NumberLiteral)
            or (isinstance(variant.key, ast.Identifier) and variant.key.name in FORMS)
            for variant in node.variants
        )
        if by_number and isinstance(node.selector, ast.VariableReference):
            self.numbers.add(node.selector.id.name)
        self.generic_visit(node)


def chosen_by_number(catalogue: str) -> dict[str, set[str]]:
    """The places of each message of a Fluent file by whose number it chooses its words."""
    found = {}
    for entry in FluentParser(with_spans=False).parse(catalogue).body:
        if isinstance(entry, ast.Message):
            choices = _Choices()
            choices.visit(entry)
            if choices.numbers:
                found[entry.id.name] = choices.numbers
    return found


@lru_cache(maxsize=1)
def numbers() -> dict[str, set[str]]:
    """The same for every message, in whichever language it is one."""
    found: dict[str, set[str]] = {}
    for path in (templates() / "language").glob("*/*.ftl"):
        for name, places in chosen_by_number(path.read_text("utf-8")).items():
            found.setdefault(name, set()).update(places)
    return found


@contextmanager
def watched() -> Iterator[dict[str, list[str]]]:
    """Inside the block, what is said is watched: "texts" are places that wanted a number and got a text, "said" the
    messages that chose by number."""
    found: dict[str, list[str]] = {"texts": [], "said": []}
    wanted, plain = numbers(), language._Catalogue.said

    def said(catalogue: language._Catalogue, name: str, given: Mapping[str, Any]) -> tuple[str, list[Any]]:
        for place in wanted.get(name, ()):
            found["said"].append(name)
            if place in given and not isinstance(given[place], int):
                found["texts"].append(f"{name}: {place} = {given[place]!r}")
        return plain(catalogue, name, given)

    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(language._Catalogue, "said", said)
        yield found
