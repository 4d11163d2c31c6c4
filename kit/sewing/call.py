"""Calling a verb: what it is told, before it reads anything. What is missing or not known is named all at once."""

from __future__ import annotations

import inspect
from collections.abc import Callable, Mapping, Sequence
from functools import cache
from typing import Any

from kit.errors import KitError, near


class CallError(KitError):
    """A verb was called with arguments it has not, or without some that it needs."""


def example_of(function: Callable[..., Any]) -> str:
    """The last call of the example in a verb's docstring, on one line; "" where there is none."""
    _, _, after = inspect.cleandoc(function.__doc__ or "").partition("Example::")
    lines = [line.strip() for line in after.splitlines() if line.strip()]
    start = max((i for i, line in enumerate(lines) if f".{function.__name__}(" in line), default=len(lines))
    return " ".join(lines[start:])


@cache
def _arguments(function: Callable[..., Any]) -> tuple[inspect.Parameter, ...]:
    """What a step writes: all but the first, who reads."""
    return tuple(inspect.signature(function).parameters.values())[1:]


def check_call(function: Callable[..., Any], given: Sequence[Any], named: Mapping[str, Any]) -> None:
    """Raises `CallError` where a verb is not called as its signature says: every argument that is missing is named at
    once, with the verb's example. A row (`*edges`) may be empty, unless it is in `function.needed`; it is told of
    only when something else is missing too."""
    own = _arguments(function)
    rows = [one for one in own if one.kind is one.VAR_POSITIONAL]
    in_place = [one for one in own if one.kind in (one.POSITIONAL_ONLY, one.POSITIONAL_OR_KEYWORD)]
    by_name = [one.name for one in own if one.kind in (one.POSITIONAL_OR_KEYWORD, one.KEYWORD_ONLY)]
    if not any(one.kind is one.VAR_KEYWORD for one in own):
        for word in named:
            if word not in by_name:
                raise CallError(f"{function.__name__} knows no argument '{word}'.", do=near(word, by_name))
    written = {one.name for one in in_place[: len(given)]}
    for word in (word for word in named if word in written):
        raise CallError(f"{function.__name__} is told its {word} twice.", do=_shown("Write it once.", function))
    if len(given) > len(in_place) and not rows:
        says = f"{function.__name__} is given {len(given)} arguments without a name and takes {len(in_place)}."
        raise CallError(says, do=_shown("Write the others with their names.", function))
    needed = getattr(function, "needed", ())
    written |= set(named)
    asked = [one for one in own if one.default is one.empty and one.kind not in (one.VAR_POSITIONAL, one.VAR_KEYWORD)]
    missing = [one for one in asked if one.name not in written]
    if missing:
        lack = [one for one in own if one in missing or (one in rows and one.name in needed and not given)]
        names = _and([one.name for one in lack])
        call = _and([one.name if one in rows else f"{one.name}=..." for one in lack])
        raise CallError(
            f"{function.__name__} is not told its {names}.", do=_shown(f"Write {call} between its brackets.", function)
        )


def _shown(do: str, function: Callable[..., Any]) -> str:
    example = example_of(function)
    return f"{do} For example: {example}" if example else do


def _and(words: Sequence[str]) -> str:
    return " and ".join([", ".join(words[:-1]), words[-1]] if len(words) > 1 else words)
