"""What a verb refuses, read from its own rules and code: every message it can give, with an ellipsis for each value.

An operation of sewing has rules, each with its message; what else it checks, and what a verb of the bench checks, are
the refusals raised by its function and the functions of the same rooms it calls.
"""

from __future__ import annotations

import ast
import inspect
import re
import sys
import textwrap
from collections.abc import Callable, Iterator, Mapping
from functools import cache
from typing import Any

from kit.language import say, says, variables
from kit.lesson.open_piece import OpenPiece
from kit.sewing.operation import Operation
from kit.sewing.own_verb import reads_of
from kit.sewing.rules import Rule

GAP = "\N{HORIZONTAL ELLIPSIS}"
_DEPTH = 3
_PLACES = {
    "place": "edge",
    "edge": "edge",
    "edges": "edges",
    "piece": "piece",
    "pieces": "pieces",
    "strip": "strip",
    "tube": "casing",
}
_ROOMS = ("kit.lesson.", "kit.sewing.", "kit.piece.")
_OF_ALL = frozenset({"distance", "edge_name", "place_on", "point_on", "opened", "line_on", "near", "length", "freeze"})
"""What every verb reads its arguments with: a length without its unit, a name that is not there. It is said once, in
front of the reference."""


def refused(verb: Callable[..., Any]) -> tuple[str, ...]:
    """The refusals of a verb, each as one text that says what is wrong and what to do."""
    made = getattr(verb, "makes", None) or _given(verb)
    found = [*_of_operation(made)] if made is not None else []
    found += [] if hasattr(verb, "makes") else [*_of_function(verb, _DEPTH)]
    return tuple(dict.fromkeys(text for text in found if text))


def _given(verb: Callable[..., Any]) -> type[Operation] | None:
    """The class of the operation that a function under `@verb` gives."""
    named = str(getattr(verb, "__annotations__", {}).get("return", ""))
    found = getattr(verb, "__globals__", {}).get(named)
    return found if inspect.isclass(found) and issubclass(found, Operation) and found is not Operation else None


def _of_operation(made: type[Operation]) -> Iterator[str]:
    yield from _of_rules((*made.rules, *(rule for stage in made.stages for rule in stage.rules)))
    for read in reads_of(made).values():
        if read.read.__module__.startswith("kit.sewing.operations"):
            yield from _of_function(read.read, 1)
    for one in made.__mro__:
        tree = _tree(one) if one.__module__.startswith("kit.sewing.operations") else None
        if tree is None:
            continue
        yield from _of_tree(tree)
        names = vars(sys.modules[one.__module__])
        for node in ast.walk(tree):
            if isinstance(node, ast.Name):
                yield from _of_rules(names.get(node.id))
        for called in dict.fromkeys(_called(tree, names, "self", one)):
            if called.__qualname__.partition(".")[0] != one.__name__:
                yield from _of_function(called, 1)


def _of_rules(given: object) -> Iterator[str]:
    """What is said of a rule, or of each of a row of them; nothing of anything else."""
    for rule in given if isinstance(given, tuple) else (given,):
        if isinstance(rule, Rule):
            says = f"sewing_trouble.{rule.says or rule.code}"
            yield _two(says, f"sewing_trouble.{rule.do}" if rule.do else f"{says}_do")


def _of_function(function: Callable[..., Any], depth: int) -> Iterator[str]:
    function = inspect.unwrap(function)
    tree = _tree(function)
    if tree is None:
        return
    yield from _of_tree(tree)
    if not depth:
        return
    first = next(iter(inspect.signature(function).parameters), "")
    home = _home(function, first)
    for called in dict.fromkeys(_called(tree, getattr(function, "__globals__", {}), first, home)):
        if called.__name__ not in _OF_ALL and called is not function:
            yield from _of_function(called, depth - 1)


def _called(tree: ast.AST, names: Mapping[str, Any], first: str, home: Any) -> Iterator[Callable[..., Any]]:
    """The kit's own functions that a piece of code calls: by one of its `names`, by the name of their module, or as a
    method of its `first` argument, which is of the class `home`."""
    for node in ast.walk(tree):
        if not isinstance(node, ast.Call):
            continue
        found = None
        if isinstance(node.func, ast.Name):
            found = names.get(node.func.id)
        elif isinstance(node.func, ast.Attribute) and isinstance(node.func.value, ast.Name):
            of = node.func.value.id
            owner = home if of == first else names.get(of)
            found = getattr(owner, node.func.attr, None) if owner is not None else None
        if inspect.isfunction(found) and found.__module__.startswith(_ROOMS):
            yield found


def _home(function: Callable[..., Any], first: str) -> Any:
    """The class that the first argument of a verb is of."""
    if first == "bench":
        return OpenPiece
    return getattr(inspect.getmodule(function), function.__qualname__.rpartition(".")[0] or "-", None)


@cache
def _tree(one: Any) -> ast.AST | None:
    try:
        return ast.parse(textwrap.dedent(inspect.getsource(one)))
    except (OSError, TypeError, SyntaxError):  # a lambda's source is part of a line
        return None


def _of_tree(tree: ast.AST | None) -> Iterator[str]:
    for node in ast.walk(tree) if tree is not None else ():
        if not isinstance(node, ast.Call):
            continue
        name = node.func.id if isinstance(node.func, ast.Name) else ""
        if name in ("KitError", "CallError") and node.args:
            do = next((word.value for word in node.keywords if word.arg == "do"), None)
            what = _text(node.args[0])
            yield _joined(what, _text(do)) if what else ""
        elif name in ("refuse", "trouble"):
            keys = [_text(argument) for argument in node.args if _is_message(argument)]
            yield _joined(*keys) if keys else ""


def _is_message(node: ast.expr) -> bool:
    return isinstance(node, ast.Call) and isinstance(node.func, ast.Name) and node.func.id == "message"


def _text(node: ast.expr | None) -> str:
    """A text or message written in code, its values left open; "" where it is worked out elsewhere."""
    if isinstance(node, ast.Constant) and isinstance(node.value, str):
        return node.value
    if isinstance(node, ast.JoinedStr):
        return "".join(str(part.value) if isinstance(part, ast.Constant) else GAP for part in node.values)
    if node is not None and _is_message(node) and isinstance(node, ast.Call) and isinstance(node.args[0], ast.Constant):
        return _worded(str(node.args[0].value))
    return ""


def _two(says_key: str, do_key: str) -> str:
    return _joined(_worded(says_key), _worded(do_key))


def _worded(key: str) -> str:
    """A message of the catalogue with words of its kind for places, an ellipsis for other values."""
    if not says(key):
        return ""
    given = {name: _PLACES.get(name, GAP) for name in variables(key)}
    return say(key, **given)


def _joined(*parts: str) -> str:
    text = re.sub(r"\s+", " ", " ".join(part for part in parts if part)).strip()
    return text[:1].upper() + text[1:]
