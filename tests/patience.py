"""A draft has time in tests: what a lesson's limit of five seconds by the clock stops on a busy machine is no draft
that never ends. A draft stopped so is refused like any other, so a range looks too wide and a remedy of no use, and
what asks for the same within half a minute is refused at once, in whichever test. Limits under a second, which tests
set of their own, hold as they are; tests of limits themselves (tests/lesson/test_time_limit.py) go by the clock."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from contextlib import AbstractContextManager, contextmanager

import pytest

from kit.body.body import Body
from kit.lesson import working
from kit.lesson.steps import Entry
from kit.lesson.time_limit import TRIED, within

PATIENCE = 30.0
"""Seconds that a draft may take which has a second or more."""


@contextmanager
def drafting_patiently() -> Iterator[None]:
    """Drafts inside the block are given time."""

    def patient(
        seconds: float, entries: tuple[Entry, ...], body: Body, values: Mapping[str, float]
    ) -> AbstractContextManager[None]:
        return within(max(seconds, PATIENCE) if seconds >= TRIED else seconds, entries, body, values)

    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(working, "within", patient)
        yield


@contextmanager
def by_the_clock() -> Iterator[None]:
    """Limits hold as they are given."""
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(working, "within", within)
        yield
