"""Work that makes much and throws little away, done without Python looking through all of it for lost circles of
values every few hundred: in a booklet's composing that is a seventh of the work."""

from __future__ import annotations

import gc
from collections.abc import Iterator
from contextlib import contextmanager
from threading import Lock

_SELDOM = (100_000, 50, 100)
_lock = Lock()
_usual: list[tuple[int, int, int]] = []  # how often it looked before the first of those at work, once for each


@contextmanager
def undisturbed() -> Iterator[None]:
    """Python looks seldom inside, however many are inside at once, and as before when the last has left.

    >>> before = gc.get_threshold()
    >>> with undisturbed(), undisturbed():
    ...     gc.get_threshold()
    (100000, 50, 100)
    >>> gc.get_threshold() == before
    True
    """
    with _lock:
        _usual.append(_usual[0] if _usual else gc.get_threshold())
        gc.set_threshold(*_SELDOM)
    try:
        yield
    finally:
        with _lock:
            usual = _usual.pop()
            if not _usual:
                gc.set_threshold(*usual)
