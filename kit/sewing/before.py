"""The garment as it is just before one operation of its order: what its sentences may speak of."""

from __future__ import annotations

from kit.errors import KitError
from kit.sewing.cut import Cut
from kit.sewing.operation import Operation
from kit.sewing.state import State


def state_before(pattern: Cut, made: Operation) -> State:
    """The state after all that comes before an operation in the pattern's order, whatever speaks against it; of an
    operation that is in no order, a garment not begun. Of one sewn in several steps it is the garment before the first
    of them."""
    return _until(pattern, made) or State()


def state_after(pattern: Cut) -> State:
    """The garment once all its operations are done, whatever speaks against them."""
    return _until(pattern, None) or State()


def _until(pattern: Cut, made: Operation | None) -> State | None:
    """The state before an operation, or at the end; None where it is never done."""
    state = State()
    for record in getattr(pattern, "sewing", ()):
        for each in record.operations:
            if made is not None and made in (each, each.entire):
                return state
            try:
                state = state.after(each.outcome(pattern), pattern, record.title)
            except KitError:  # it names what is gone: the proof tells of it
                continue
    return None if made is not None else state
