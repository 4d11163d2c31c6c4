"""Keeping up with a moving slider.

Moves arrive as messages on the kernel's event loop, sometimes faster than a lesson can be worked and drawn.
`Latest` takes in every message that is already waiting and then works once, so nothing drawn is out of date;
`Settled` waits until the moves have stopped, and may be cut in parts between which a new move is let in; `Aside`
works longer things out in a thread and shows what was found on the loop.
Without a running loop (plain Python) they work at once. On the loop nobody's cell asks for what they do (`here`), also
while a cell waits there for something of its own.
"""

from __future__ import annotations

import asyncio
import atexit
import contextlib
import threading
import time
from collections.abc import Callable, Iterator
from contextvars import copy_context
from weakref import WeakSet

from kit.lesson.where import acting
from kit.pausing import Stopped, pause_here, pausing

_QUIET_TURNS = 3
"""Turns of the loop without a new move that count as quiet: one reads a message, one hands it on, one spare."""
_LONGEST_WAIT = 0.03
"""Seconds after which a picture is drawn though moves are still coming, so that it follows a long drag."""


def running_loop() -> asyncio.AbstractEventLoop | None:
    """The event loop this code runs in, or None."""
    try:
        return asyncio.get_running_loop()
    except RuntimeError:
        return None


class Latest:
    """Calls `work` once for all the moves that have arrived; never twice at a time, though moves may arrive in two
    threads, each with a loop (what is drawn last would be what was begun last, but not what was asked for last)."""

    def __init__(self, work: Callable[[], None]) -> None:
        self._work = work
        self._quiet = 0
        self._since = 0.0
        self._lock = threading.Lock()
        self._waiting = self._working = self._again = False

    def ask(self) -> None:
        """A move has arrived."""
        loop = running_loop()
        if loop is None:
            self._work()
            return
        with self._lock:
            self._quiet = _QUIET_TURNS
            if self._waiting:
                return
            self._waiting = True
            self._since = time.monotonic()
        loop.call_soon(self._turn, loop)

    def _turn(self, loop: asyncio.AbstractEventLoop) -> None:
        self._quiet -= 1
        if self._quiet > 0 and time.monotonic() - self._since < _LONGEST_WAIT:
            loop.call_soon(self._turn, loop)
            return
        with self._lock:
            self._waiting = False
            self._again = self._working  # then whoever works does it once more
            if self._again:
                return
            self._working = True
        try:
            with acting(following=True):
                self._work()
        finally:
            with self._lock:
                self._working, again = False, self._again
                self._again = False
            if again:
                self.ask()


class Settled:
    """Calls `work` when nothing was asked for `wait` seconds. When `work` gives an iterator, each of its parts
    runs in a turn of its own, and a new move drops the parts that are left."""

    def __init__(self, work: Callable[[], Iterator[None] | None], wait: float) -> None:
        self._work = work
        self._wait = wait
        self._handle: asyncio.Handle | None = None
        self._parts: Iterator[None] | None = None

    @property
    def pending(self) -> bool:
        """Whether something asked for is not finished yet."""
        return self._handle is not None

    def ask(self) -> None:
        """A move has arrived."""
        self.drop()
        loop = running_loop()
        if loop is None:
            self.now()
        else:
            self._handle = loop.call_later(self._wait, self._begin, loop)

    def drop(self) -> None:
        """Forget what was asked."""
        if self._handle is not None:
            self._handle.cancel()
        self._handle = None
        self._parts = None

    def now(self) -> None:
        """Do it all at once."""
        self.drop()
        for _ in self._work() or ():
            pass

    def _begin(self, loop: asyncio.AbstractEventLoop) -> None:
        self._handle = None
        with acting(following=True):
            self._parts = self._work()
        if self._parts is not None:
            self._handle = loop.call_soon(self._next, loop)

    def _next(self, loop: asyncio.AbstractEventLoop) -> None:
        self._handle = None
        parts = self._parts
        if parts is None:
            return
        try:
            with acting(following=True):
                next(parts)
        except StopIteration:
            self._parts = None
            return
        if self._parts is parts:
            self._handle = loop.call_later(0.002, self._next, loop)


Show = Callable[[], None]
_ONE_AT_A_TIME = threading.Lock()
_LAST_WAIT = 1.0
"""Seconds that a kernel which ends waits for work aside to stop."""


class Aside:
    """Calls `work` in a thread when nothing was asked for `wait` seconds. What it yields are functions that show what
    it found; they are called on the loop. A new move or `drop` stops the work at its next `pause_here` and
    keeps what it found from being shown. `patient`: without a running loop it waits for `now`."""

    def __init__(self, work: Callable[[], Iterator[Show]], wait: float, *, patient: bool = False) -> None:
        self._work = work
        self._wait = wait
        self._patient = patient
        self._handle: asyncio.Handle | None = None
        self._stop = threading.Event()
        self._stop.set()
        self._cut = False
        _asides.add(self)

    @property
    def pending(self) -> bool:
        """Whether something asked for is not finished yet."""
        return self._handle is not None or not self._stop.is_set()

    @property
    def stopped(self) -> bool:
        """Whether the last thing asked for was dropped before it was finished."""
        return self._cut

    def ask(self) -> None:
        """A move has arrived."""
        self.drop()
        self._cut = False
        loop = running_loop()
        if loop is not None:
            self._handle = loop.call_later(self._wait, self._begin, loop)
        elif not self._patient:
            self.now()

    def drop(self) -> None:
        """Forget what was asked."""
        if self._handle is not None:
            self._handle.cancel()
        self._cut = self._cut or self.pending
        self._handle = None
        self._stop.set()

    def now(self) -> None:
        """Do it all at once."""
        self.drop()
        self._cut = False
        for show in self._work():
            show()

    def _begin(self, loop: asyncio.AbstractEventLoop) -> None:
        self._handle = None
        self._stop = threading.Event()
        run = copy_context().run
        threading.Thread(target=run, args=(self._run, loop, self._stop), daemon=True, name="lessonkit-aside").start()

    def _run(self, loop: asyncio.AbstractEventLoop, stop: threading.Event) -> None:
        def pause() -> None:
            if stop.is_set():
                raise Stopped

        def show(found: Show) -> None:
            if not stop.is_set():
                found()

        # A loop that is closed takes nothing more: there is nobody left to show it to.
        with contextlib.suppress(Stopped, RuntimeError), _ONE_AT_A_TIME, pausing(pause), acting(following=True):
            pause_here()
            for found in self._work():
                pause_here()
                loop.call_soon_threadsafe(show, found)
            loop.call_soon_threadsafe(stop.set)


_asides: WeakSet[Aside] = WeakSet()


@atexit.register
def _stop_all() -> None:
    """A kernel that ends stops its work aside first. A thread that goes on writes to a stream whose own thread has
    ended by then, in the middle of what the kernel itself still sends, and the page gets a message it cannot read."""
    for one in tuple(_asides):
        one.drop()
    if _ONE_AT_A_TIME.acquire(timeout=_LAST_WAIT):
        _ONE_AT_A_TIME.release()
