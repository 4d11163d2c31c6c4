"""The words a sewing step may write: every operation registers its own, as its class or as a function beside it."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any, TypeVar

VERBS: dict[str, Callable[..., Any]] = {}
F = TypeVar("F", bound=Callable[..., Any])


def verb(function: F) -> F:
    """Makes `function(make, ...)` a method of `make`: it reads its arguments with `make` and gives the operation."""
    VERBS[function.__name__] = function
    return function
