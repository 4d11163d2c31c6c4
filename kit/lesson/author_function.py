"""A function that an author writes for a parameter: what it follows from are its arguments, by name, and what it gives
back is a length, a share or a count."""

from __future__ import annotations

import inspect
from collections.abc import Callable
from functools import lru_cache
from typing import Any, cast

from kit.errors import KitError
from kit.lesson.parameter import Kind
from kit.units import Size, length


def names_of(function: Callable[..., Any]) -> tuple[str, ...]:
    """The names of what a function follows from.

    >>> names_of(lambda waist_girth, hem_rise: waist_girth)
    ('waist_girth', 'hem_rise')
    """
    try:
        return _names(function)
    except TypeError:  # an object that is called and cannot be a key of the cache
        return tuple(inspect.signature(function).parameters)


@lru_cache(maxsize=1024)  # a draft asks for each several times
def _names(function: Callable[..., Any]) -> tuple[str, ...]:
    return tuple(inspect.signature(function).parameters)


def check_names(function: Callable[..., Any], what: str, where: str, do: str) -> None:
    """`KitError` with those words for a function that does not name each thing it follows from."""
    arguments = inspect.signature(function).parameters.values()
    if not arguments or any(one.kind is not one.POSITIONAL_OR_KEYWORD for one in arguments):
        raise KitError(what, where=where, do=do)


def given_by(function: Callable[..., Any], value_of: Callable[[str], Any], kind: Kind, where: str) -> float:
    """What a function gives back when each of its arguments has its `value_of`: mm, share or count. `KitError` for a
    function that stops or gives no such value.

    >>> given_by(lambda waist_girth: waist_girth / 2, {"waist_girth": 700.0}.get, "count", "Parameter 'tie'")
    350.0
    """
    try:
        return number(function(*map(value_of, names_of(function))), kind, where)
    except KitError as error:
        raise error if error.where else error.at(where) from None
    except Exception as error:
        raise KitError(
            f"it stopped with {type(error).__name__}: {error}.",
            where=where,
            do="Give back a length with its unit, or a number.",
        ) from None


def number(value: Any, kind: Kind, where: str) -> float:
    """A parameter's value as an author wrote it: mm, share or count. `KitError` for what is none."""
    if kind == "length":
        return float(length(cast("Size", value), where))
    if isinstance(value, bool) or not isinstance(value, int | float):
        raise KitError(f"it is {value!r}, not a number.", where=where, do="Write a number, such as 3 or 0.5.")
    return float(value)
