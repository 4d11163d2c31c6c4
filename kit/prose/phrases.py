"""Small words, phrases and lists in the language that is spoken."""

from __future__ import annotations

from collections.abc import Mapping

from kit.language import say as say_plainly


def say(key: str, values: Mapping[str, object]) -> str:
    """The sentence of a dotted key, filled; keys without a family stand in "common". `KitError` when there is none."""
    return say_plainly(key if "." in key else f"common.{key}", values)


def word(key: str) -> str:
    """A small word by its key; `KitError` when there is none."""
    return say_plainly(f"word.{key}")


def phrase(key: str, **values: object) -> str:
    """A phrase such as "{edge} of the {piece}", filled."""
    return say_plainly(f"phrase.{key}", values)
