"""Where a lesson runs: plain Python, the cell of an open notebook, a build, inside another notebook.

The one place that asks the environment and IPython; everything else asks `here`.
"""

from __future__ import annotations

import os
import sys
from collections.abc import Iterator, Mapping
from contextlib import contextmanager
from contextvars import ContextVar
from dataclasses import dataclass, replace
from pathlib import Path
from typing import Any

BUILD = "LESSONKIT_BUILD"
"""Set in a kernel that runs a notebook for the booklet or for reports."""
NOTEBOOK = "LESSONKIT_NOTEBOOK"
"""Set in a kernel to the notebook's file."""
_NOTEBOOK_VARIABLES = (NOTEBOOK, "JPY_SESSION_NAME")


@dataclass(frozen=True)
class Where:
    """`notebook`: the cells of a kernel run, not plain Python; `cell` is the id of the one that runs ("": not known),
    `run` its execution count. `building`: for a booklet or report, nobody looks on. `opening`: the notebooks whose
    cells are being run to open a lesson of theirs, the innermost last. `named`: what the kernel was told its notebook
    is. `following`: no cell asks; the kernel answers the message of a widget, or a view follows what was changed."""

    notebook: bool = False
    cell: str = ""
    run: int = 0
    building: bool = False
    opening: tuple[Path, ...] = ()
    named: tuple[str, ...] = ()
    following: bool = False

    @property
    def shows(self) -> bool:
        """Whether somebody sees what a cell shows under it."""
        return self.notebook and not self.building and not self.opening

    @property
    def unseen(self) -> bool:
        """Whether nobody will ever look at a widget made here: in a build, and in a notebook that is run for its lesson
        alone. What it would show need not be drawn."""
        return self.building or bool(self.opening)

    @property
    def file(self) -> Path | None:
        """The notebook's file, when the kernel was told of it and it is there."""
        return next((Path(name) for name in self.named if name.endswith(".ipynb") and Path(name).is_file()), None)


_ACTING: ContextVar[Mapping[str, Any] | None] = ContextVar("where", default=None)


def here() -> Where:
    """Where the code that asks runs now."""
    ip = shell()
    cell, run, following = ("", 0, False) if ip is None else _running(ip)
    read = Where(
        notebook=ip is not None,
        cell=cell,
        run=run,
        building=bool(os.environ.get(BUILD)),
        following=following,
        named=tuple(filter(None, (os.environ.get(variable) for variable in _NOTEBOOK_VARIABLES))),
    )
    return replace(read, **(_ACTING.get() or {}))


@contextmanager
def acting(**changes: Any) -> Iterator[None]:
    """Inside the block `here` says so: `acting(opening=(path,))`. `changes` are fields of `Where`."""
    token = _ACTING.set({**(_ACTING.get() or {}), **changes})
    try:
        yield
    finally:
        _ACTING.reset(token)


def _running(ip: Any) -> tuple[str, int, bool]:
    """(cell id, execution count) of the cell that a shell is running, and whether it answers a widget instead."""
    try:
        parent = ip.get_parent()
    except AttributeError:
        parent = {}
    following = str(parent.get("header", {}).get("msg_type", "")).startswith("comm_")
    return str(parent.get("metadata", {}).get("cellId") or ""), int(getattr(ip, "execution_count", 0)), following


def shell() -> Any | None:
    """The running IPython kernel's shell, or None in plain Python."""
    if "IPython" not in sys.modules:
        return None
    from IPython.core.getipython import get_ipython

    return get_ipython()
