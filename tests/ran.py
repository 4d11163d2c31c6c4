"""Example notebooks as a build runs them, in a kernel of their own: each once in a run of tests."""

from __future__ import annotations

from kit.booklet.run_notebook import Ran, read_notebook, run_notebook
from tests.example import EXAMPLE
from tests.kept import kept


def ran_example(name: str) -> Ran:
    """The notebook of that name with its cells as executed, and what it hands over, in its own size."""
    path = EXAMPLE.with_name(f"{name}.ipynb")
    return kept(f"run of {name}", (path,), lambda: run_notebook(read_notebook(path), path.parent, name=path.name))
