"""How a verb made of an operation's class reads its call: as Python binds it."""

from __future__ import annotations

import inspect
from random import Random
from typing import Any

import pytest

from kit.sewing.own_verb import _arguments


def plain(reader: Any, one: Any, two: Any = "two", *, press: Any = "open", inset: Any) -> None: ...
def row(reader: Any, one: Any, *rest: Any, first: Any, press: Any = None) -> None: ...
def loose(reader: Any, *rest: Any, press: Any = None) -> None: ...
def none(reader: Any) -> None: ...


@pytest.mark.parametrize("function", [plain, row, loose, none])
def test_it_binds_as_python_does(function: Any) -> None:
    """Reference: inspect.Signature.bind; calls drawn at random, most of them wrong."""
    random, signature = Random(3), inspect.signature(function)
    told, right, wrong = _arguments(signature), 0, 0
    for _ in range(400):
        given = tuple(range(random.randint(0, 3)))
        words = ("one", "two", "press", "inset", "first", "rest", "size")
        named = {word: word.upper() for word in random.sample(words, random.randint(0, 3))}
        try:
            bound = signature.bind("reader", *given, **named)
        except TypeError as error:
            with pytest.raises(TypeError) as raised:
                told("reader", given, named)
            assert str(raised.value) == str(error)
            wrong += 1
            continue
        bound.apply_defaults()
        assert {"reader": "reader", **told("reader", given, named)} == bound.arguments
        right += 1
    assert right > 5 and wrong > 5
