"""The ordered list of what a lesson teaches: drafting steps, sewing steps and finished measurements.

Entries are keyed by the notebook cell that wrote them, so that a cell can be run again, in any order:
running a cell replaces what it wrote before, in the same place. Outside a notebook they are keyed by name.
"""

from __future__ import annotations

import inspect
from collections.abc import Callable, Collection, Iterable
from dataclasses import dataclass, replace
from functools import lru_cache
from typing import Any, Literal

from kit.errors import KitError, near
from kit.lesson import cells
from kit.lesson.pattern import Words

Kind = Literal["step", "sew", "finished"]


@dataclass(frozen=True)
class Entry:
    """One function a lesson holds: its `kind`, `name` (the function's), `title`, the names it `uses`, the
    pieces and strips it `makes`, and the `cell` and `run` (execution count) that wrote it. `placed` is the cell whose
    place it takes in the order instead of its own: that of a step it replaces in a variation, or follows. `words` says
    where the text of a sewing step stands, `over` which body measurement a finished one goes over, `fit` the fit change
    that the step is."""

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
    fit: str = ""

    @property
    def text(self) -> str:
        return _plain(self.function.__doc__ or "")


@lru_cache(maxsize=1024)  # a draft asks for each several times
def _plain(doc: str) -> str:
    return inspect.cleandoc(doc)


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


def entry_of(
    kind: Kind,
    title: str,
    function: Callable[..., Any],
    makes: tuple[str, ...] = (),
    strips: tuple[str, ...] = (),
    *,
    cell: str = "",
    run: int = 0,
    words: Words = "before",
    over: str = "",
) -> Entry:
    """The entry of a function as its author wrote it. `KitError` when it does not take what it makes."""
    uses = arguments(function, title)
    for name in (*makes, *strips):
        if name not in uses:
            raise KitError(
                f"the step makes '{name}' but does not take it as an argument.",
                where=f"Step '{title}'",
                do=f"Add {name} to the function's arguments.",
            )
    return Entry(kind, function.__name__, title, function, uses, makes, strips, cell, run, "", words, over)


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
    kept = [e for e in entries if kind_and_name(e) != kind_and_name(new) and not cells.earlier(e, new.cell, new.run)]
    at = kept.index(before[-1]) + 1
    return (*kept[:at], new, *kept[at:])


def kind_and_name(entry: Entry) -> tuple[str, str]:
    """What an entry is known by."""
    return entry.kind, entry.name


def added(entries: tuple[Entry, ...], new: Entry) -> tuple[Entry, ...]:
    """`entries` with `new` put where it belongs (`cells.added`). It keeps the place of the one it replaces."""
    gone = cells.replaced(entries, new, kind_and_name)
    if gone and gone[0].placed and not new.placed:
        new = replace(new, placed=gone[0].placed)
    return cells.added(entries, new, kind_and_name)


def ordered(entries: tuple[Entry, ...], saved: Iterable[str]) -> tuple[Entry, ...]:
    """`entries` in the order of the `saved` notebook's cells (their ids), where they are all known there."""
    order = {cell: position for position, cell in enumerate(saved)}
    if not order or any((e.placed or e.cell) not in order for e in entries):
        return entries
    return tuple(sorted(entries, key=lambda e: order[e.placed or e.cell]))


def stale(entries: tuple[Entry, ...], saved: Collection[str]) -> tuple[Entry, ...]:
    """The entries whose cell is not among the `saved` notebook's (deleted, or not saved yet)."""
    return tuple(e for e in entries if saved and e.cell and e.cell not in saved)
