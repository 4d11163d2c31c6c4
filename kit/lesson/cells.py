"""Where a step was written: the running notebook cell, and the order of cells in the saved notebook.

The kernel does not know its notebook. It knows the id of the cell it is running (sent with each execution)
and, from the environment, the notebook's path; the saved file gives the order of cells.
"""

from __future__ import annotations

import json
import os
import sys
from functools import lru_cache
from pathlib import Path
from typing import Any

NOTEBOOK_VARIABLES = ("LESSONKIT_NOTEBOOK", "JPY_SESSION_NAME")


def shell() -> Any | None:
    """The running IPython kernel's shell, or None in plain Python."""
    if "IPython" not in sys.modules:
        return None
    from IPython.core.getipython import get_ipython

    return get_ipython()


def running_cell() -> tuple[str, int]:
    """(cell id, execution count) of the cell being run; ("", 0) in plain Python."""
    ip = shell()
    if ip is None:
        return "", 0
    try:
        metadata = ip.get_parent().get("metadata", {})
    except AttributeError:
        metadata = {}
    return str(metadata.get("cellId") or ""), int(getattr(ip, "execution_count", 0))


def notebook_path() -> Path | None:
    """The notebook's file when the kernel was told of it."""
    for variable in NOTEBOOK_VARIABLES:
        named = os.environ.get(variable)
        if named and named.endswith(".ipynb") and Path(named).is_file():
            return Path(named)
    return None


def saved_cells() -> dict[str, str]:
    """Cell id -> source for the code cells of the saved notebook, in order; empty when it cannot be read."""
    path = notebook_path()
    if path is None:
        return {}
    try:
        return dict(_cells(str(path), path.stat().st_mtime_ns))
    except (OSError, ValueError, KeyError, TypeError):
        return {}


@lru_cache(maxsize=8)
def _cells(path: str, _changed: int) -> tuple[tuple[str, str], ...]:
    with open(path, encoding="utf-8") as file:
        cells = json.load(file)["cells"]
    return tuple(
        (str(cell.get("id", "")), "".join(cell.get("source", ""))) for cell in cells if cell.get("cell_type") == "code"
    )
