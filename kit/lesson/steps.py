"""The ordered list of what a lesson teaches: drafting steps, sewing steps and finished measurements.

Entries are keyed by the notebook cell that wrote them, so that a cell can be run again, in any order:
running a cell replaces what it wrote before, in the same place. Outside a notebook they are keyed by name.
"""

from __future__ import annotations

import inspect
from collections.abc import Callable
from dataclasses import dataclass, replace
from typing import Any, Literal

from kit.errors import KitError, near
from kit.lesson.cells import saved_cells
from kit.lesson.pattern import Words

Kind = Literal["step", "sew", "finished"]


@dataclass(frozen=True)
class Entry:
    """One function a lesson holds: its `kind`, `name` (the function's), `title`, the names it `uses`, the
    pieces and strips it `makes`, and the `cell` and `run` (execution count) that wrote it. `placed` is the cell whose
    place it takes in the order instead of its own: that of a step it replaces in a variation, or follows. `words` says
    where the text of a sewing step stands, `over` which body measurement a finished one goes over."""

    kind: Kind
    name: str
    title: str
    function: Callable[..., Any]
    uses: tuple[str, ...]
    makes: tuple[str, ...] = ()
    strips: tuple[str, ...] = ()
    cell: str = ""
    run: int = 0
    placed: str = ""
    words: Words = "before"
    over: str = ""

    @property
    def text(self) -> str:
        return inspect.cleandoc(self.function.__doc__ or "")


def arguments(function: Callable[..., Any], title: str) -> tuple[str, ...]:
    """The names a step's arguments ask for."""
    names = []
    for name, parameter in inspect.signature(function).parameters.items():
        if parameter.kind not in (parameter.POSITIONAL_OR_KEYWORD, parameter.KEYWORD_ONLY):
            raise KitError(
                f"'*{name}' is not a name of a piece, parameter or measurement.",
                where=f"Step '{title}'",
                do="List each thing the step uses by name.",
            )
        names.append(name)
    return tuple(names)


def following(entries: tuple[Entry, ...], new: Entry, name: str) -> tuple[Entry, ...]:
    """`entries` with `new` put right after the entry of that name, wherever its own cell stands. `KitError` when there
    is none."""
    before = [e for e in entries if e.name == name]
    if not before:
        raise KitError(
            f"there is no step '{name}' to follow.",
            where=f"Step '{new.title}'",
            do=near(name, [e.name for e in entries]),
        )
    new = replace(new, placed=before[-1].placed or before[-1].cell)
    kept = [
        e
        for e in entries
        if (e.kind, e.name) != (new.kind, new.name) and not (new.cell and e.cell == new.cell and e.run != new.run)
    ]
    at = kept.index(before[-1]) + 1
    return (*kept[:at], new, *kept[at:])


def added(entries: tuple[Entry, ...], new: Entry) -> tuple[Entry, ...]:
    """`entries` with `new` put where it belongs.

    What the same cell wrote in an earlier run gives way to it; so does an entry of the same kind and name
    from elsewhere (a cell cut and pasted, or plain Python run again).
    """
    old_run = [e for e in entries if new.cell and e.cell == new.cell and e.run != new.run]
    same_name = [e for e in entries if (e.kind, e.name) == (new.kind, new.name)]
    gone = old_run or same_name
    kept = tuple(e for e in entries if e not in old_run and e not in same_name)
    if gone:
        first = entries.index(gone[0])
        at = sum(1 for e in entries[:first] if e in kept)
        if gone[0].placed and not new.placed:
            new = replace(new, placed=gone[0].placed)
        return (*kept[:at], new, *kept[at:])
    siblings = [i for i, e in enumerate(kept) if new.cell and e.cell == new.cell]
    at = siblings[-1] + 1 if siblings else len(kept)
    return (*kept[:at], new, *kept[at:])


def ordered(entries: tuple[Entry, ...]) -> tuple[Entry, ...]:
    """`entries` in the order of the saved notebook's cells, where they are all known there."""
    order = {cell: position for position, cell in enumerate(saved_cells())}
    if not order or any((e.placed or e.cell) not in order for e in entries):
        return entries
    return tuple(sorted(entries, key=lambda e: order[e.placed or e.cell]))


def stale(entries: tuple[Entry, ...]) -> tuple[Entry, ...]:
    """The entries whose cell is no longer in the saved notebook (deleted, or not saved yet)."""
    cells = saved_cells()
    return tuple(e for e in entries if cells and e.cell and e.cell not in cells)
