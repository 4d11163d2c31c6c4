"""Layouts that were found, kept by content beside the notebook, so that the same pieces are not laid twice.

A small JSON file, `<lesson>.lays.json`. What is laid is known by a digest of its outlines, of the cloth, and of the
code that lays, never by names or words: a build that changed words alone finds all, one that moved a line finds
nothing of the sizes it changed. Each entry carries a digest of itself; one that is damaged, and a file that cannot be
read or written, is as good as none, for all can be found again.
"""

from __future__ import annotations

import contextlib
import hashlib
import json
import struct
from collections.abc import Iterable, Sequence
from functools import cache
from pathlib import Path
from typing import Any

import numpy as np
import shapely

from kit.atomic import write_atomically
from kit.cloth.arranged import Try
from kit.cloth.lay import CuttingTable
from kit.cloth.parts import TOLERANCE
from kit.errors import KitError
from kit.geometry import Curve, Point

ENDING = ".lays.json"
_CODE = ("cloth", "pack")


class Kept:
    """The layouts in the file at `path`; None keeps them for as long as this lives."""

    def __init__(self, path: Path | None = None) -> None:
        self.path = path
        self._known: dict[str, Any] | None = None if path else {}
        self._used: dict[str, Any] = {}

    @classmethod
    def beside(cls, folder: Path, slug: str) -> Kept:
        """Those of the lesson called `slug`, whose notebook is in `folder`."""
        return cls(folder / f"{slug}{ENDING}")

    def of(self, key: str, tables: Sequence[CuttingTable]) -> list[tuple[Try, ...]] | None:
        """What was found for these tables, in their order; None when it is not known."""
        if self._known is None:
            self._known = _read(self.path)
        entry = self._known.get(key)
        if not isinstance(entry, dict) or entry.get("sum") != _sum(entry.get("tries")):
            return None
        self._used[key] = entry
        return [
            tuple(_unpacked(each, table) for each in tries) for tries, table in zip(entry["tries"], tables, strict=True)
        ]

    def keep(self, key: str, found: Iterable[Iterable[Try]]) -> None:
        """Remember what was found."""
        tries = [[_packed(each) for each in one] for one in found]
        self._used[key] = {"tries": tries, "sum": _sum(tries)}
        if self._known is not None:
            self._known[key] = self._used[key]

    def write(self) -> None:
        """Write what was used since it was read, and nothing else. Where that cannot be, nothing is lost but time."""
        if self.path is None or not self._used or self._used == _read(self.path):
            return
        text = json.dumps(self._used, separators=(",", ":"), sort_keys=True).replace('},"', '},\n"')
        with contextlib.suppress(KitError):
            write_atomically(self.path, text + "\n")


def content(width: float, tables: Iterable[CuttingTable]) -> str:
    """A digest of all that what is found depends on."""
    digest = hashlib.sha256(_code())
    digest.update(struct.pack("<d", width))
    for table in tables:
        digest.update(f"{table.cloth} {table.nap} {len(table.parts)}\n".encode())
        for part in table.parts:
            digest.update(f"{part.copies} {part.over} {part.doubles} {part.right_side_up}\n".encode())
            for curves in (part.whole, part.half):
                digest.update(_outline(curves))
    return digest.hexdigest()


def _outline(curves: Sequence[Curve]) -> bytes:
    """The places of an outline as they are laid, and the box around each of its curves."""
    numbers: list[float] = []
    for curve in curves:
        numbers += [value for point in curve.points(TOLERANCE) for value in (point.x, point.y)]
        numbers += curve.bounds()
    return struct.pack(f"<q{len(numbers)}d", len(numbers), *numbers)


@cache
def _code() -> bytes:
    """A digest of the code that lays, and of the libraries it lays with."""
    digest = hashlib.sha256(f"{shapely.__version__} {shapely.geos_version} {np.__version__}".encode())
    for room in _CODE:
        for path in sorted((Path(__file__).resolve().parents[1] / room).glob("*.py")):
            digest.update(path.read_bytes())
    return digest.digest()


def _read(path: Path | None) -> dict[str, Any]:
    try:
        found = json.loads(path.read_text(encoding="utf-8")) if path else {}
    except (OSError, ValueError):
        return {}
    return found if isinstance(found, dict) else {}


def _sum(tries: Any) -> str:
    return hashlib.sha256(json.dumps(tries).encode()).hexdigest()


def _packed(made: Try) -> list[Any]:
    lying = [[way, at.x, at.y] for _, way, at in made.lying]
    return [made.fold, made.length, made.folded, lying, [list(order) for order in made.orders]]


def _unpacked(data: list[Any], table: CuttingTable) -> Try:
    fold, length, folded, lying, orders = data
    if fold == "flat":
        items = table.flat_items()
    else:
        doubled, single = table.folded_items()
        items = [*doubled, *single]
    placed = tuple((item, way, Point(x, y)) for item, (way, x, y) in zip(items, lying, strict=True))
    return Try(length, fold, placed, folded, tuple(tuple(order) for order in orders))
