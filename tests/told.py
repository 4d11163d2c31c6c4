"""Values of the kit told in lines of text: to be read beside the garment or the draft, and held to what was read.

Lengths are mm to a tenth, shares to a thousandth; a run is `piece.edge`, `piece.left.edge` on one half, with
`[from..to]` for a part.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import MISSING, Field, fields, is_dataclass
from pathlib import Path as File
from typing import Any

import pytest

from kit.geometry import Path, Point
from kit.piece.piece import Piece
from kit.piece.recut import EdgeChange
from kit.sewing.run import Run
from kit.sewing.scene import Section
from kit.sewing.spans import Span


def told(value: Any) -> str:
    """A value in short."""
    if isinstance(value, bool | str) or value is None:
        return str(value)
    if isinstance(value, int | float):
        return f"{round(float(value), 1 if abs(value) >= 1 else 3) + 0.0:g}"
    if isinstance(value, Point):
        return f"({told(value.x)}, {told(value.y)})"
    if isinstance(value, Path):
        way = "" if value.is_straight else f"by {told(value.at(value.length / 2))} "
        return f"{told(value.start)} {way}to {told(value.end)}, {told(value.length)} long"
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
    if isinstance(value, EdgeChange):
        off = ", ".join(told(at.off) for at in (value.start, value.most, value.end))
        return f"{value.was or '-'} -> {value.edge} between {value.before} and {value.after}: {value.shape} ({off})"
    if isinstance(value, Mapping):
        return "{" + ", ".join(f"{told(key)}: {told(each)}" for key, each in value.items()) + "}"
    if isinstance(value, frozenset):
        return told(tuple(sorted(value)))
    if isinstance(value, tuple | list):
        return "(" + ", ".join(map(told, value)) + ")"
    if callable(value):
        return f"function {getattr(value, '__name__', '')}"
    if is_dataclass(value):
        given = [
            f"{each.name}={told(getattr(value, each.name))}"
            for each in fields(value)
            if each.repr and not usual(each, getattr(value, each.name))
        ]
        return f"{type(value).__name__}({', '.join(given)})"
    raise TypeError(f"{value!r}: no words for it")


def usual(each: Field[Any], value: Any) -> bool:
    """Whether a field holds its default."""
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
            self._file.parent.mkdir(exist_ok=True)
            text = "\n\n".join(f"{title}\n{block}" for title, block in found.items())
            self._file.write_text(text + "\n", "utf-8")
            pytest.fail(f"{self._file.name} is written: read it")
        parts = self._file.read_text("utf-8").strip("\n").split("\n\n")
        kept = dict(part.split("\n", 1) for part in parts)
        for title, block in found.items():
            assert block == kept.get(title), title
        assert list(found) == list(kept)
