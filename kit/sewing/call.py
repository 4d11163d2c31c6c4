"""Calling a verb: what it is told, before it reads anything. What is missing or not known is named all at once."""

from __future__ import annotations

import inspect
from collections.abc import Callable, Mapping, Sequence
from functools import cache, wraps
from typing import Any, TypeVar

from kit.errors import KitError, near

T = TypeVar("T")


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


@cache
def _names(function: Callable[..., Any]) -> tuple[tuple[str, ...], frozenset[str], frozenset[str]] | None:
    """The names of what may be given in its place, those that may be named, and those that are needed; None where a
    verb takes rows or words of the author's own."""
    own = _arguments(function)
    if any(one.kind in (one.VAR_POSITIONAL, one.VAR_KEYWORD) for one in own):
        return None
    in_place = tuple(one.name for one in own if one.kind in (one.POSITIONAL_ONLY, one.POSITIONAL_OR_KEYWORD))
    by_name = frozenset(one.name for one in own if one.kind in (one.POSITIONAL_OR_KEYWORD, one.KEYWORD_ONLY))
    return in_place, by_name, frozenset(one.name for one in own if one.default is one.empty)


def _plainly(function: Callable[..., Any], given: int, named: Mapping[str, Any]) -> bool:
    """Whether a call is seen at once to be as the signature says: a draft calls verbs by the hundred."""
    names = _names(function)
    if names is None:
        return False
    in_place, by_name, needed = names
    written = in_place[:given]
    return (
        given <= len(in_place)
        and by_name.issuperset(named)
        and not any(name in named for name in written)
        and all(name in named or name in written for name in needed)
    )


def check_call(function: Callable[..., Any], given: Sequence[Any], named: Mapping[str, Any]) -> None:
    """Raises `CallError` where a verb is not called as its signature says: every argument that is missing is named at
    once, with the verb's example. A row (`*edges`) may be empty, unless it is in `function.needed`; it is told of
    only when something else is missing too."""
    if _plainly(function, len(given), named):
        return
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
        several = "argument" if len(given) == 1 else "arguments"
        says = f"{function.__name__} is given {len(given)} {several} without a name and takes {len(in_place)}."
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


def answered(error: KitError, function: Callable[..., Any]) -> KitError:
    """A refusal out of the call of a verb, which ends with the verb's example and where to read more of it; one that
    the values of a draft bring (a message, said to students too) as it is."""
    if not isinstance(error.told.says, str):
        return error
    example = "" if "For example: " in error.do else example_of(function)
    shown = f"For example: {example} " if example else ""
    return error.showing(f'{shown}(more: lesson.help("{function.__name__}"))')


def answering(kind: type[T]) -> type[T]:
    """Makes every verb among the methods of a class refuse with its example (`answered`)."""
    for name, method in list(vars(kind).items()):
        if inspect.isfunction(method) and not name.startswith("_") and "Example::" in (method.__doc__ or ""):
            setattr(kind, name, _answering(method))
    return kind


def _answering(method: Callable[..., Any]) -> Callable[..., Any]:
    @wraps(method)
    def call(self: Any, /, *given: Any, **named: Any) -> Any:
        try:
            return method(self, *given, **named)
        except KitError as error:
            raise answered(error, method) from error.__cause__
        except TypeError:
            try:
                check_call(method, given, named)  # what is missing or too much, in words
            except CallError as error:
                raise answered(error, method) from None
            raise

    return call


def _shown(do: str, function: Callable[..., Any]) -> str:
    example = example_of(function)
    return f"{do} For example: {example}" if example else do


def _and(words: Sequence[str]) -> str:
    return " and ".join([", ".join(words[:-1]), words[-1]] if len(words) > 1 else words)
