"""What went wrong in an author's own code, in words that need no knowledge of Python's messages."""

from __future__ import annotations

import inspect
import linecache
import re
from collections.abc import Callable, Iterable, Mapping
from typing import Any

from kit.diagnostic import Told, message
from kit.errors import KitError, near, nearest

_CALL = r"(?:\w+\.)*?(\w+)(?:\.__init__)?\(\)"
_MISSING = re.compile(_CALL + r" missing \d+ required (?:keyword-only|positional) arguments?: (.+)")
_UNEXPECTED = re.compile(_CALL + r" got an unexpected keyword argument '(\w+)'")
_UNKNOWN = re.compile(r"name '(\w+)' is not defined")
_THINGS = {"PaperLine": "a line", "PaperPoint": "a point", "PaperDart": "a dart", "Length": "a length"}
"""What a step is handed, by the name of its class."""
_QUOTED = re.compile(r"'(\w+)'")


def told(kind: str, message: str, known: Mapping[str, Any], line: str = "") -> tuple[str, str] | None:
    """What is wrong and what to do, for Python's `message` of an error of the type named `kind`; None where it is of
    another sort. `known` are the names in reach there (name -> object); they find the name that was meant. `line` is
    the line at work: a verb called there (`front.notch(...)`) is not a step that has the same name."""
    if kind == "TypeError" and (found := _MISSING.match(message)):
        names = _QUOTED.findall(found[2])
        given = " and ".join(f"{name}=..." for name in names)
        return f"{found[1]} is not told its {' and '.join(names)}.", f"Write {given} between its brackets."
    if kind == "TypeError" and (found := _UNEXPECTED.match(message)):
        arguments = _arguments(found[1], known, f".{found[1]}(" in line)
        do = near(found[2], arguments) if arguments else "Check its spelling."
        return f"{found[1]} knows no argument '{found[2]}'.", do
    if kind in ("NameError", "UnboundLocalError") and (found := _UNKNOWN.search(message)):
        meant = nearest(found[1], known)
        do = (
            f"Did you mean '{meant}'?" if meant else "Put words in quotation marks; a measure must be an argument here."
        )
        return f"nothing is called '{found[1]}' here.", do
    return None


def stopped(error: Exception, function: Callable[..., Any], where: Told) -> KitError:
    """The refusal for an error that `function`, a step of a lesson, ran into; it names the line of the step that was
    at work."""
    line, locals_ = _line(error, function)
    named = {**_constants(function), **locals_}
    at = message("refusal.at_line", place=where, line=line) if line else where
    if isinstance(error, KitError):
        return KitError(error.told.says, where=at, do=error.told.can).showing(error.example)
    sentence = told(type(error).__name__, str(error), named, line) or _not_had(error)
    if sentence is not None:
        return KitError(sentence[0], where=at, do=sentence[1])
    what = f"the step's own code stopped: {type(error).__name__}: {error}."
    return KitError(
        what, where=at, do="Correct that line in the cell." if line else "Look at the cell that defines it."
    )


def _not_had(error: Exception) -> tuple[str, str] | None:
    """What is wrong where a thing of the bench was asked for what it has not; None for any other error."""
    if not isinstance(error, AttributeError) or not error.name:
        return None
    kind = next((said for of in type(error.obj).__mro__ if (said := _THINGS.get(of.__name__))), "")
    if not kind or not type(error.obj).__module__.startswith("kit."):
        return None
    return f"{kind} has no '{error.name}'.", near(error.name, [name for name in dir(error.obj) if name[0] != "_"])


def line_at(error: BaseException, function: Callable[..., Any]) -> str:
    """The line of `function`'s own file that was at work when `error` came up; "" where it was not at work."""
    return _line(error, function)[0]


def _line(error: BaseException, function: Callable[..., Any]) -> tuple[str, dict[str, Any]]:
    """The line of `function`'s own file that was at work, as it is written, and the names it saw."""
    file = inspect.unwrap(function).__code__.co_filename
    text, names = "", {}
    trace = error.__traceback__
    while trace is not None:
        if trace.tb_frame.f_code.co_filename == file:
            text = linecache.getline(file, trace.tb_lineno).strip()
            names = dict(trace.tb_frame.f_locals)
        trace = trace.tb_next
    return (text if len(text) <= 70 else text[:69].rstrip() + "…"), names


def _constants(function: Callable[..., Any]) -> dict[str, Any]:
    return {name: value for name, value in inspect.unwrap(function).__globals__.items() if not name.startswith("_")}


def _arguments(name: str, known: Mapping[str, Any], method: bool) -> Iterable[str]:
    """The keyword arguments of what is called `name`: a thing in reach, or what a thing in reach can do (of the two a
    `method`)."""
    owners = [value if isinstance(value, type) else type(value) for value in known.values()]
    for thing in (None if method else known.get(name), *(getattr(owner, name, None) for owner in owners)):
        if callable(thing):
            try:
                parameters = inspect.signature(thing).parameters.values()
            except (TypeError, ValueError):
                continue
            unsaid = ("self", "bench", "reader")
            return [p.name for p in parameters if p.name not in unsaid and p.kind is not p.VAR_KEYWORD]
    return []
