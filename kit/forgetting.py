"""Results that are kept by what they were worked from, and can be forgotten all at once: a process that works for many
people (a class's room) keeps nothing of whoever asked last."""

from __future__ import annotations

from collections.abc import Callable
from functools import lru_cache
from typing import Any, ParamSpec, TypeVar, cast
from weakref import WeakSet

_KEPT: WeakSet[Any] = WeakSet()
P = ParamSpec("P")
T = TypeVar("T")


def forgettable(most: int) -> Callable[[Callable[P, T]], Callable[P, T]]:
    """Keeps the last `most` results of a pure function of a body or of what was drafted for one.

    >>> @forgettable(8)
    ... def plan(body):
    ...     print("worked")
    ...     return body.upper()
    >>> plan("w4"), plan("w4")
    worked
    ('W4', 'W4')
    >>> forget()
    >>> plan("w4")
    worked
    'W4'
    """

    def keep(function: Callable[P, T]) -> Callable[P, T]:
        kept = lru_cache(maxsize=most)(function)
        _KEPT.add(kept)
        return cast("Callable[P, T]", kept)

    return keep


def forget() -> None:
    """Lets go of every result that is kept so."""
    for kept in list(_KEPT):
        kept.cache_clear()
