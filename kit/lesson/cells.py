"""Which notebook cell is being run, and the order of the notebook's cells.

The kernel does not know its notebook. It knows the id of the cell it is running (sent with each execution)
and, from the environment, the notebook's path; the saved file gives the order of cells. Where a page tells of its
cells as they change (kit/live/notebook_watch.py), they count until the notebook is saved after that.

What a cell adds to a lesson carries the cell's id and the number of the run, so that running the cell again replaces
what it wrote before. Outside a notebook things are known by their names alone.
"""

from __future__ import annotations

import json
import time
from collections.abc import Callable, Iterable
from functools import lru_cache
from typing import Protocol, TypeVar

from kit.lesson.where import here


class FromCell(Protocol):
    """What a cell wrote: the `cell`'s id ("" in plain Python) and the `run` (execution count) that wrote it."""

    @property
    def cell(self) -> str: ...

    @property
    def run(self) -> int: ...


T = TypeVar("T", bound=FromCell)


def running_cell() -> tuple[str, int]:
    """(cell id, execution count) of the cell being run; ("", 0) in plain Python."""
    where = here()
    return where.cell, where.run


def earlier(one: FromCell, cell: str, run: int) -> bool:
    """Whether `one` was written by an earlier run of that cell."""
    return bool(cell) and one.cell == cell and one.run != run


def added(them: tuple[T, ...], new: T, key: Callable[[T], object]) -> tuple[T, ...]:
    """`them` with `new` put where it belongs: in the place of what its cell wrote in an earlier run, or of the one
    with the same `key` from elsewhere (a cell cut and pasted, or plain Python run again); else behind what the same
    run wrote, or at the end."""
    gone = replaced(them, new, key)
    kept = tuple(one for one in them if one not in gone)
    if gone:
        at = sum(1 for one in them[: them.index(gone[0])] if one in kept)
    else:
        at = max((i + 1 for i, one in enumerate(kept) if new.cell and one.cell == new.cell), default=len(kept))
    return (*kept[:at], new, *kept[at:])


def replaced(them: tuple[T, ...], new: T, key: Callable[[T], object]) -> tuple[T, ...]:
    """Those of `them` that give way to `new`, the earlier runs of its cell first."""
    old = [one for one in them if earlier(one, new.cell, new.run)]
    return (*old, *(one for one in them if key(one) == key(new) and one not in old))


def saved_cells() -> dict[str, str]:
    """Cell id -> source for the code cells of the notebook as it stands on the page, or as it was saved, whichever is
    newer, in order; empty when neither is known."""
    path = here().file
    told, at = _TOLD[0]
    try:
        if path is not None and path.stat().st_mtime_ns > at:
            return dict(_cells(str(path), path.stat().st_mtime_ns))
    except (OSError, ValueError, KeyError, TypeError):
        pass
    return dict(told)


def note_cells(cells: Iterable[tuple[str, str]]) -> None:
    """The page tells of its code cells: (id, source) in order."""
    _TOLD[0] = (tuple(cells), time.time_ns())


_TOLD: list[tuple[tuple[tuple[str, str], ...], int]] = [((), 0)]


@lru_cache(maxsize=8)
def _cells(path: str, _changed: int) -> tuple[tuple[str, str], ...]:
    with open(path, encoding="utf-8") as file:
        cells = json.load(file)["cells"]
    return tuple(
        (str(cell.get("id", "")), "".join(cell.get("source", ""))) for cell in cells if cell.get("cell_type") == "code"
    )
