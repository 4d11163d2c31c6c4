"""How a step says by hand what happens at a corner of the allowances."""

from __future__ import annotations


class CornerVerbs:
    """Verbs of a bench piece for its corners."""
