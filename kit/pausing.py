"""Long searches that can be stopped.

A search says `pause_here()` between its tries. Who runs it in the background puts a pause there
(`with pausing(pause)`): it may raise `Stopped`, or let others have their turn. Otherwise the place costs nothing.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from contextlib import contextmanager
from contextvars import ContextVar

_pause: ContextVar[Callable[[], None] | None] = ContextVar("pause", default=None)


class Stopped(BaseException):
    """The result is not wanted any more. Not an `Exception`, so that nothing on the way takes it for a failure."""


def pause_here() -> None:
    """A place where a long search may be stopped."""
    pause = _pause.get()
    if pause is not None:
        pause()


def can_be_stopped() -> bool:
    """Whether this is a search that its owner stops when it is not wanted any more."""
    return _pause.get() is not None


@contextmanager
def pausing(pause: Callable[[], None]) -> Iterator[None]:
    """Call `pause` at each such place inside the block."""
    token = _pause.set(pause)
    try:
        yield
    finally:
        _pause.reset(token)
