"""The class of an operation as its own verb: the function made of its fields, with its docstring."""

from __future__ import annotations

import inspect
from collections.abc import Callable, Mapping
from typing import Any

from kit.sewing import fields
from kit.sewing.fields import Asked, Reads, reads_of
from kit.sewing.portion import until
from kit.sewing.reading import Reader


def verb_of(cls: Any, name: str) -> Callable[..., Any]:
    """The function behind the word of an operation's class: it reads the arguments, field by field in the order of the
    class, and gives the operation, or with `rows=` the part of it up to that stage."""
    reads = reads_of(cls)
    first = inspect.Parameter("reader", inspect.Parameter.POSITIONAL_OR_KEYWORD, annotation="Reader")
    signature = inspect.Signature([first, *_parameters(cls)])
    told = _arguments(signature)

    def write(reader: Reader, *given: Any, **named: Any) -> Any:
        arguments = told(reader, given, named)
        where = cls.called or name.replace("_", " ")
        asked = Asked(reader, where, {field: arguments.get(how.argument or field) for field, how in reads.items()}, {})
        for field, how in reads.items():
            asked.read[field] = how.read(asked.given[field], asked, how.argument or field)
        cls.agree(asked)
        made, rows = cls.made(asked), arguments.get("rows") if cls.stages else None
        return made if rows is None else until(made, rows)

    write.__name__ = write.__qualname__ = name
    write.__doc__ = _told(cls)
    write.__module__ = fields.__name__  # where the names in its annotations come from
    write.__signature__ = signature  # type: ignore[attr-defined]
    write.needed = tuple(how.argument or field for field, how in reads.items() if how.needed)  # type: ignore[attr-defined]
    write.makes = cls  # type: ignore[attr-defined]
    return write


def _arguments(signature: inspect.Signature) -> Callable[[Any, tuple[Any, ...], dict[str, Any]], Mapping[str, Any]]:
    """What a call says, by the names of the arguments, those left out with their defaults: as `Signature.bind` tells it
    and raises, which takes several times as long."""
    kinds = [(one.name, one.kind, one.default) for one in signature.parameters.values()][1:]
    in_place = [name for name, kind, _ in kinds if kind is inspect.Parameter.POSITIONAL_OR_KEYWORD]
    rest = next((name for name, kind, _ in kinds if kind is inspect.Parameter.VAR_POSITIONAL), None)
    left = {name: () if name == rest else default for name, _, default in kinds}
    known = left.keys() - {rest}
    needed = [name for name, value in left.items() if value is inspect.Parameter.empty]

    def told(reader: Any, given: tuple[Any, ...], named: dict[str, Any]) -> Mapping[str, Any]:
        written = in_place[: len(given)]
        strange = len(given) > len(in_place) and rest is None
        if strange or not named.keys() <= known or any(name in named for name in written):
            return _bound(signature, reader, given, named)
        arguments = {**left, **dict(zip(written, given, strict=False)), **named}
        if rest is not None:
            arguments[rest] = given[len(in_place) :]
        if any(arguments[name] is inspect.Parameter.empty for name in needed):
            return _bound(signature, reader, given, named)
        return arguments

    return told


def _bound(
    signature: inspect.Signature, reader: Any, given: tuple[Any, ...], named: dict[str, Any]
) -> Mapping[str, Any]:
    bound = signature.bind(reader, *given, **named)
    bound.apply_defaults()
    return bound.arguments


def _told(cls: Any) -> str:
    """The docstring of the class, with what `rows` means where it has stages."""
    doc = inspect.cleandoc(str(cls.__doc__))  # from Python 3.13 on it comes without the indentation of the class
    if not cls.stages:
        return doc
    head, mark, example = doc.partition("\n\nExample::")
    return f"{head}\n`rows`: no further than that stage; `make.finish` goes on.{mark}{example}"


def _parameters(cls: Any) -> list[inspect.Parameter]:
    """The arguments of a verb: those in their place as the fields stand, a row, those by name that are needed, then
    those that may be left out, each as they stand, what the class adds before what it has from another."""
    ways = {"place": inspect.Parameter.POSITIONAL_OR_KEYWORD, "rest": inspect.Parameter.VAR_POSITIONAL}
    homes = [list(vars(each).get("__annotations__", {})) for each in cls.__mro__]
    order = list(dict.fromkeys(name for home in homes for name in home))
    found: dict[str, inspect.Parameter] = {}

    def place(item: tuple[str, Reads]) -> int:
        return -1 if item[1].way == "place" else order.index(item[0])

    for field, how in sorted(reads_of(cls).items(), key=place):
        if how.way == "none":
            continue
        name = how.argument or field
        found[name] = inspect.Parameter(
            name,
            ways.get(how.way, inspect.Parameter.KEYWORD_ONLY),
            default=fields.EMPTY if how.way == "rest" else how.default,
            annotation=how.annotation,
        )
    names = ", ".join(repr(stage.name) for stage in cls.stages)
    if names:
        kind = inspect.Parameter.KEYWORD_ONLY
        found["rows"] = inspect.Parameter("rows", kind, default=None, annotation=f"Literal[{names}] | None")

    def order_of(one: inspect.Parameter) -> tuple[int, bool]:
        return one.kind, one.kind is one.KEYWORD_ONLY and one.default is not one.empty

    return sorted(found.values(), key=order_of)
