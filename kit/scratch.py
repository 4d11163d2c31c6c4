"""Folders that work is done in before its files take their place, and the lock of a folder that several may write to.

A scratch folder is locked as long as its owner lives: the system lets go of the lock however the process ends, so what
a killed one left is known to be nobody's and is cleared away by the next. Where locks are not to be had (Windows, some
network drives), folders are cleared away once they are a day old.
"""

from __future__ import annotations

import os
import shutil
import tempfile
import time
from collections.abc import Callable, Iterator
from contextlib import ExitStack, contextmanager, suppress
from pathlib import Path

from kit.errors import KitError

try:
    import fcntl
except ImportError:  # Windows
    fcntl = None  # type: ignore[assignment]

_OLD = 24 * 3600.0
_FRESH = ".new-lessonkit-"
_SOCKET = 90
"""Bytes: a whole socket path may have 103 on some systems, 107 on others; behind a folder stand 13."""


@contextmanager
def scratch(prefix: str, folder: Path | None = None, left: Callable[[Path], None] | None = None) -> Iterator[Path]:
    """A new folder in `folder` (None: where the system keeps such) whose name begins with `prefix`; it is removed at
    the end. First what dead processes left there of the same prefix is removed, each after `left` was called with it.
    Raises `KitError` when no folder can be made."""
    home = folder or Path(tempfile.gettempdir())
    _clear(home, prefix, left)
    try:
        # Under its final name a folder is locked from the start, so nobody takes it for one that was left.
        fresh = Path(tempfile.mkdtemp(prefix=_FRESH, dir=home))
        lock = _lock(fresh, wait=False)
        path = fresh.with_name(prefix + fresh.name.removeprefix(_FRESH))
        os.replace(fresh, path)
    except OSError as error:
        raise KitError(
            f"no folder to work in can be made there ({(error.strerror or str(error)).lower()}).",
            where=str(home),
            do="Make room on the disk, choose another folder, or make this one writable.",
        ) from error
    try:
        yield path
    finally:
        shutil.rmtree(path, ignore_errors=True)
        _unlock(lock)


@contextmanager
def for_sockets(folder: Path) -> Iterator[Path | None]:
    """`folder`, where the path of a socket in it is short enough for the system; else a new one in /tmp, private as
    every scratch folder is, removed at the end. None where that cannot be had either."""
    if len(os.fsencode(folder)) <= _SOCKET:
        yield folder
        return
    with ExitStack() as stack:
        short: Path | None = None
        with suppress(KitError):
            short = stack.enter_context(scratch("lessonkit-run-", Path("/tmp")))
        yield short


@contextmanager
def alone_in(folder: Path) -> Iterator[None]:
    """Inside the block no other process that asks the same is in it for `folder`; waits for the one that is."""
    lock = _lock(folder, wait=True)
    try:
        yield
    finally:
        _unlock(lock)


def _clear(home: Path, prefix: str, left: Callable[[Path], None] | None) -> None:
    try:
        found = [path for path in home.iterdir() if path.name.startswith((prefix, _FRESH)) and path.is_dir()]
    except OSError:
        return
    for path in found:
        named = path.name.startswith(prefix)
        with suppress(OSError):
            mine = not hasattr(os, "getuid") or path.stat().st_uid == os.getuid()
            old = time.time() - path.stat().st_mtime > _OLD
            lock = _lock(path, wait=False) if mine and (named or old) else None
            if lock is None and not (mine and old and fcntl is None):
                continue
            try:
                if named and left is not None:
                    left(path)
                shutil.rmtree(path, ignore_errors=True)
            finally:
                _unlock(lock)


def _lock(folder: Path, *, wait: bool) -> int | None:
    """The lock of `folder`, to be let go with `_unlock`; None where somebody has it or there are no locks."""
    if fcntl is None:
        return None
    number = None
    try:
        number = os.open(folder, os.O_RDONLY)
        fcntl.flock(number, fcntl.LOCK_EX | (0 if wait else fcntl.LOCK_NB))
    except OSError:
        if number is not None:
            os.close(number)
        return None
    return number


def _unlock(lock: int | None) -> None:
    if lock is not None:
        os.close(lock)
