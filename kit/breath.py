"""Long searches that can be stopped.

A search says `breathe()` between its tries. Who runs it in the background puts a pause there (`with breathing(pause)`):
it may raise `Stopped`, or let others have their turn. Otherwise a breath costs nothing.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from contextlib import contextmanager
from contextvars import ContextVar

_pause: ContextVar[Callable[[], None] | None] = ContextVar("pause", default=None)


class Stopped(BaseException):
    """The result is not wanted any more. Not an `Exception`, so that nothing on the way takes it for a failure."""


def breathe() -> None:
    """A place where a long search may be stopped."""
    pause = _pause.get()
    if pause is not None:
        pause()


@contextmanager
def breathing(pause: Callable[[], None]) -> Iterator[None]:
    """Call `pause` at each breath inside the block."""
    token = _pause.set(pause)
    try:
        yield
    finally:
        _pause.reset(token)
