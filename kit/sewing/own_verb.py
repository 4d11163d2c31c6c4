"""The class of an operation as its own verb: the function made of its fields, with its docstring."""

from __future__ import annotations

import inspect
from collections.abc import Callable
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

    def write(reader: Reader, *given: Any, **named: Any) -> Any:
        bound = signature.bind(reader, *given, **named)
        bound.apply_defaults()
        where = cls.called or name.replace("_", " ")
        asked = Asked(
            reader, where, {field: bound.arguments.get(how.argument or field) for field, how in reads.items()}, {}
        )
        for field, how in reads.items():
            asked.read[field] = how.read(asked.given[field], asked, how.argument or field)
        cls.agree(asked)
        made, rows = cls.made(asked), bound.arguments.get("rows") if cls.stages else None
        return made if rows is None else until(made, rows)

    write.__name__ = write.__qualname__ = name
    write.__doc__ = _told(cls)
    write.__module__ = fields.__name__  # where the names in its annotations come from
    write.__signature__ = signature  # type: ignore[attr-defined]
    write.needed = tuple(how.argument or field for field, how in reads.items() if how.needed)  # type: ignore[attr-defined]
    write.makes = cls  # type: ignore[attr-defined]
    return write


def _told(cls: Any) -> str:
    """The docstring of the class, with what `rows` means where it has stages."""
    doc = str(cls.__doc__)
    if not cls.stages:
        return doc
    head, mark, example = doc.partition("\n\n    Example::")
    return f"{head}\n    `rows`: no further than that stage; `make.finish` goes on.{mark}{example}"


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
