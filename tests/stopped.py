"""A long search that is stopped, as a slider that moves on stops it."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager

import pytest

from kit.pausing import Stopped, pausing


@contextmanager
def stopped_at(pause: int) -> Iterator[None]:
    """What is inside is stopped at that pause, counted from 1; fails where it makes fewer, or goes on after it."""
    made = 0

    def one() -> None:
        nonlocal made
        made += 1
        if made == pause:
            raise Stopped

    with pausing(one), pytest.raises(Stopped):
        yield
    assert made == pause
