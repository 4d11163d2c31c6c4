"""Operations, what they do and what their pictures show, told in lines of text: to be read beside the garment, and held
to what was read. Lengths are mm; a run is `piece.edge`, `piece.left.edge` on one half, with `[from..to]` for a part."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import MISSING, Field, fields, is_dataclass
from pathlib import Path as File
from typing import Any

import pytest

from kit.geometry import Path, Point
from kit.lesson.pattern import Pattern
from kit.piece.piece import Piece
from kit.sewing.operation import Operation
from kit.sewing.run import Run
from kit.sewing.scene import Scene, Section
from kit.sewing.spans import Span


def told_operation(operation: Operation, pattern: Pattern) -> Iterator[str]:
    """All that an operation says of itself, a line each: the keys and values of its sentences, not their words."""
    yield f"{operation.kind}, {operation.minutes(pattern):.4g} minutes, class {operation.seam_class or '-'}"
    yield f"needs {told(operation.tools)}; minds {told(operation.cautioned(pattern))}; {told(operation.notions)}"
    values = operation.values(pattern)
    for sentence in operation.sentences(pattern):
        more = {name: each[0] for name, each in sentence.values.items() if values.get(name) != each}
        yield f"says {sentence.key} {told(more) if more else ''}".rstrip()
    for name, (value, kind) in sorted(values.items()):
        yield f"tells {name} ({kind}): {told(value)}"
    yield from (f"why {sentence.key}" for sentence in operation.whys(pattern))
    yield from (f"is {told(role)}" for role in operation.roles())
    yield from (f"amount {name}: {told(amount)}" for name, amount in operation.notion_amounts(pattern).items())
    for name in ("opens", "gaps", "wants"):
        yield from (f"{name} {told(each)}" for each in getattr(operation, name)(pattern))
    for name in ("joins", "uses", "effect"):
        value = getattr(operation, name)
        yield f"{name} {told(value(pattern) if callable(value) else value)}"


def told_scene(scene: Scene) -> Iterator[str]:
    """What a picture shows: a line for each layer from below, each row, each thing, and for all else that is not as
    usual."""
    for key in ("layers", "rows", "things"):
        for each in getattr(scene, key):
            yield f"  {key[:-1]} {told(each)}"
    for each in fields(scene):
        value = getattr(scene, each.name)
        if each.name not in ("layers", "rows", "things") and not _usual(each, value):
            yield f"  {each.name} {told(value)}"


def told(value: Any) -> str:
    """A value in short."""
    if isinstance(value, bool | str) or value is None:
        return str(value)
    if isinstance(value, int | float):
        return f"{round(float(value), 1) + 0.0:g}"
    if isinstance(value, Point):
        return f"({told(value.x)}, {told(value.y)})"
    if isinstance(value, Path):
        return f"{told(value.start)} to {told(value.end)}, {told(value.length)} long"
    if isinstance(value, Run):
        part = "" if value.start is None and value.end is None else f"[{told(value.start)}..{told(value.end)}]"
        return ".".join(filter(None, (value.piece, value.side, "+".join(value.edges)))) + part
    if isinstance(value, Span):
        return f"{value.piece}.{value.side}.{value.edge}[{told(value.start)}..{told(value.end)}]"
    if isinstance(value, Section):
        rows = [", ".join(value.through(number)) for number in range(len(value.stitches))]
        return f"{'/'.join(ply.name or ply.stuff for ply in value.plies)}; rows through {' | '.join(rows) or '-'}"
    if isinstance(value, Piece):
        return value.name
    if isinstance(value, Mapping):
        return "{" + ", ".join(f"{told(key)}: {told(each)}" for key, each in value.items()) + "}"
    if isinstance(value, frozenset):
        return told(tuple(sorted(value)))
    if isinstance(value, tuple | list):
        return "(" + ", ".join(map(told, value)) + ")"
    if is_dataclass(value):
        given = [
            f"{each.name}={told(getattr(value, each.name))}"
            for each in fields(value)
            if not _usual(each, getattr(value, each.name))
        ]
        return f"{type(value).__name__}({', '.join(given)})"
    raise TypeError(f"{value!r}: no words for it")


def _usual(each: Field[Any], value: Any) -> bool:
    if each.default is not MISSING:
        return bool(value == each.default)
    return each.default_factory is not MISSING and bool(value == each.default_factory())


class Kept:
    """Blocks of text under titles, in a file. Where the file is not there it is written, to be read: the test fails
    once."""

    def __init__(self, file: File) -> None:
        self._file = file

    def holds(self, found: Mapping[str, str]) -> None:
        """Fails where any block is not as it was read."""
        if not self._file.exists():
            text = "\n\n".join(f"{title}\n{block}" for title, block in found.items())
            self._file.write_text(text + "\n", "utf-8")
            pytest.fail(f"{self._file.name} is written: read it")
        parts = self._file.read_text("utf-8").strip("\n").split("\n\n")
        kept = dict(part.split("\n", 1) for part in parts)
        for title, block in found.items():
            assert block == kept.get(title), title
        assert list(found) == list(kept)
