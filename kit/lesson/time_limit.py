"""The time that drafting may take. A step whose code never ends is stopped, and named.

In the main thread of a system that has interval timers the timer's signal stops it. Elsewhere (a thread, Windows, a
program that uses the timer itself) a thread looks on five times a second and has Python raise the stop in the thread
that drafts. Both come between two steps of Python's own, so one call into a library that never returns goes on; where
no thread can be started nothing is stopped.

The same stop serves *Interrupt* in a notebook, which a kernel hears only while its main thread runs a cell. A slider's
drafting listens by itself there. JupyterLab has sliders answered in a thread beside the main one (a subshell of the
kernel), where no signal is ever heard: once a lesson is made, the main thread hears the signal when it has nothing to
do (`hear_interrupts`), and the thread that looks on stops what is drafted elsewhere.
"""

from __future__ import annotations

import asyncio
import ctypes
import signal
import threading
import time
from collections.abc import Iterator, Mapping
from contextlib import contextmanager, suppress
from contextvars import ContextVar
from typing import Any

from kit.body.body import Body
from kit.diagnostic import message, number
from kit.errors import KitError
from kit.lesson.halted import ended, halt, halted, leash
from kit.lesson.own_code import line_at
from kit.lesson.steps import Entry
from kit.lesson.where import here
from kit.pausing import can_be_stopped

TIME_LIMIT = 5.0
"""Seconds that drafting may take when a lesson says nothing else."""
TRIED = 1.0
"""Seconds that a draft which is only tried, one of many in a search, may take at least."""
LONGEST = 3600.0
_AGAIN = 0.05  # seconds after which a stop that the step's own code caught comes again
_LOOK = 0.2  # seconds between two looks of the thread


class _Cut(BaseException):
    """Drafting is to stop. Not an `Exception`, so that no step takes it for a failure of its own."""


class DraftingInterrupted(KeyboardInterrupt):
    """Somebody interrupted the cell while its drafting was at work; told in one sentence."""

    def __init__(self, refusal: KitError) -> None:
        super().__init__(str(refusal))
        self.refusal = refusal

    def _render_traceback_(self) -> list[str]:
        """What a notebook shows instead of a traceback."""
        return [str(self.refusal)]


class Watch:
    """Looks on while a lesson is drafted for at most `seconds`. `over` once it is done. `interrupted`: it was, or
    somebody has just interrupted what this draft is more of. `asked`: it is what somebody wants to see, and no try of a
    search."""

    def __init__(self, seconds: float, *, interrupted: bool = False, asked: bool = True) -> None:
        self.seconds = seconds
        self.asked = asked
        self.over = False
        self.until = time.monotonic() + seconds
        self.thread = threading.get_ident()
        self._why = ""
        self._hurried = interrupted
        self._entry: Entry | None = None
        self._since = time.monotonic()
        self._longest: tuple[float, Entry | None] = (0.0, None)

    def begins(self, entry: Entry) -> None:
        """`entry` is at work from now on."""
        self._count()
        self._entry = entry

    def _count(self) -> None:
        now = time.monotonic()
        took, self._since = now - self._since, now
        if took > self._longest[0]:
            self._longest = (took, self._entry)

    def cut(self, why: str) -> None:
        """Stop the drafting, in its own thread: the "time" is up, or there was an "interrupt". Raises unless it is over
        already."""
        if not self.over:
            self._why = self._why or why
            raise _Cut

    def give_up(self, why: str) -> None:
        """Stop the drafting from another thread."""
        if not self.over:
            self._why = self._why or why
            _raise_in(self.thread)

    @property
    def interrupted(self) -> bool:
        return self._hurried or self.pressed

    @property
    def pressed(self) -> bool:
        """Whether it was interrupted itself."""
        return self._why == "interrupt"

    @property
    def took(self) -> float:
        """Seconds since it was begun."""
        return time.monotonic() - self.until + self.seconds

    def culprit(self) -> Entry | None:
        """What took the longest: the step at work, as a rule; None is the block."""
        return self._longest[1]

    def refusal(self, cut: BaseException) -> KitError:
        """What is told of it: the step that took the longest, with the line at work when it is at work."""
        self._count()
        took, entry = self._longest
        where = _place(entry)
        if entry is not None and entry is self._entry and (line := line_at(cut, entry.function)):
            where = message("refusal.at_line", place=where, line=line)
        if self.interrupted:
            return KitError(message("refusal.interrupted"), where=where, do=message("refusal.interrupted_do"))
        what = message("refusal.endless", seconds=number(self.seconds), took=number(round(min(took, self.seconds), 1)))
        return KitError(what, where=where, do=message("refusal.endless_do"))


def _place(entry: Entry | None) -> Any:
    if entry is None:
        return message("refusal.block")
    if entry.kind == "finished":
        return message("refusal.finished", title=entry.title)
    return message("refusal.step", step=entry.title)


_WATCH: ContextVar[Watch | None] = ContextVar("watch", default=None)


def begins(entry: Entry) -> None:
    """Tell whoever looks on that `entry` is at work."""
    watch = _WATCH.get()
    if watch is not None:
        watch.begins(entry)


def checked_limit(seconds: object, title: str) -> float:
    """A time limit in seconds as it is given to a lesson. `KitError` for what is none."""
    if isinstance(seconds, int | float) and not isinstance(seconds, bool) and 0 < seconds <= LONGEST:
        return float(seconds)
    raise KitError(
        f"time_limit is {seconds!r}.", where=title, do=f"Give seconds as a number up to {LONGEST:g}: time_limit=20."
    )


@contextmanager
def within(seconds: float, entries: tuple[Entry, ...], body: Body, values: Mapping[str, float]) -> Iterator[None]:
    """Draft inside the block for `seconds` at most. Drafting inside drafting has no limit of its own. What was stopped
    is refused at once when the same is asked again (see `kit/lesson/halted.py`). Raises `KitError` naming the step when
    the time is up or a draft that no cell asks for is interrupted, `DraftingInterrupted` when a cell that drafts is."""
    if _WATCH.get() is not None:
        yield
        return
    asked = (entries, body, values)
    hearing = _Hearing()
    if (known := halted(asked, seconds, follows=hearing.follows)) is not None:
        raise known
    held = leash(asked) if hearing.follows and hearing.asked else seconds
    watch = Watch(min(held, seconds), interrupted=held < seconds, asked=hearing.asked)
    token = _WATCH.set(watch)
    try:
        guard = _Guard(watch, hearing)
        try:
            yield
        finally:
            watch.over = True
            guard.take_down()
        ended(asked, watch.took, seen=watch.asked)
    except _Cut as cut:
        refusal = watch.refusal(cut)
        if watch.interrupted:
            halt(asked, watch.culprit(), refusal, pressed=watch.pressed)
            if hearing.in_cell:
                raise DraftingInterrupted(refusal) from None
        else:
            halt(asked, watch.culprit(), refusal, seconds, tried=not watch.asked)
        raise refusal from None
    finally:
        _WATCH.reset(token)


# ---- how it is stopped ------------------------------------------------------------------------------------


class _Hearing:
    """Who asks for a draft, and whether *Interrupt* can be heard. `in_cell`: a kernel runs a cell, which ends with it.
    `follows`: in a kernel, where no cell asks; a widget answers its message, or a view follows by itself. `mine`: this
    is the main thread, which alone hears signals; `asked`: it is to be shown, and no try of a search."""

    def __init__(self) -> None:
        where = here()
        kernel = where.notebook and not where.building
        self.mine = threading.current_thread() is threading.main_thread()
        stops = signal.getsignal(signal.SIGINT)
        # While a kernel answers any message it lets SIGINT raise; between them it ignores it.
        self.stops = stops if stops in (signal.default_int_handler, signal.SIG_IGN, _heard) else None
        self.asked = kernel and not can_be_stopped()
        self.hears = kernel and self.mine and self.stops is not None
        self.in_cell = self.hears and stops is signal.default_int_handler and not where.following
        self.follows = kernel and (not self.mine or stops in (signal.SIG_IGN, _heard) or where.following)


class _Guard:
    """What stops a `watch` in time, and hears *Interrupt*."""

    def __init__(self, watch: Watch, hearing: _Hearing) -> None:
        self._watch = watch
        self._timer: Any = None
        self._stops: Any = None
        if hearing.hears:
            self._stops = hearing.stops
            signal.signal(signal.SIGINT, lambda *_: watch.cut("interrupt"))
        mine = hearing.mine
        # A timer that somebody else has wound up is left alone.
        if mine and hasattr(signal, "setitimer") and signal.getitimer(signal.ITIMER_REAL)[0] == 0:
            self._timer = signal.signal(signal.SIGALRM, lambda *_: watch.cut("time"))
            signal.setitimer(signal.ITIMER_REAL, watch.seconds, _AGAIN)
        else:
            _LOOKER.add(watch)

    def take_down(self) -> None:
        if self._timer is not None:
            signal.setitimer(signal.ITIMER_REAL, 0)
            signal.signal(signal.SIGALRM, self._timer)
        else:
            _LOOKER.discard(self._watch)
        if self._stops is not None:
            signal.signal(signal.SIGINT, self._stops)


class _Looker:
    """A thread that looks on while somebody drafts without a timer; it ends when nobody did for a while."""

    def __init__(self) -> None:
        self._lock = threading.Lock()
        self._watches: set[Watch] = set()
        self._running = False
        self.interrupted = -1.0  # when *Interrupt* was heard last

    def add(self, watch: Watch) -> None:
        with self._lock:
            self._watches.add(watch)
            if not self._running:
                with suppress(RuntimeError):  # no threads here: nothing is stopped
                    threading.Thread(target=self._look, daemon=True, name="lessonkit-time-limit").start()
                    self._running = True

    def discard(self, watch: Watch) -> None:
        with self._lock:
            self._watches.discard(watch)
            if watch._why:
                _raise_in(watch.thread, nothing=True)

    def _look(self) -> None:
        quiet = 0
        while quiet < 25:
            time.sleep(_LOOK)
            with self._lock:
                now = time.monotonic()
                for watch in self._watches:
                    if watch.asked and watch.until - watch.seconds <= self.interrupted:
                        watch.give_up("interrupt")
                    elif now >= watch.until:
                        watch.give_up("time")
                quiet = 0 if self._watches else quiet + 1
                self._running = quiet < 25


_LOOKER = _Looker()


def _heard(*_: Any) -> None:
    """*Interrupt*, while the main thread has nothing to do: what is drafted in other threads is to stop."""
    _LOOKER.interrupted = time.monotonic()


def hear_interrupts() -> None:
    """From now on *Interrupt* is heard also where the kernel's main thread, which is to ask for it, has nothing to do.
    Does nothing outside a kernel."""
    mine = threading.current_thread() is threading.main_thread()
    if mine and here().shows:
        with suppress(RuntimeError):  # no loop runs: this is no kernel
            _hear(asyncio.get_running_loop())


def _hear(loop: asyncio.AbstractEventLoop) -> None:
    stops = signal.getsignal(signal.SIGINT)
    if stops is signal.SIG_IGN:
        signal.signal(signal.SIGINT, _heard)
    elif stops is not _heard:  # a cell runs; what it found is put back after it
        loop.call_later(_LOOK, _hear, loop)


def _raise_in(thread: int, *, nothing: bool = False) -> None:
    """Have Python raise `_Cut` in that thread, or take back what has not been raised yet."""
    ctypes.pythonapi.PyThreadState_SetAsyncExc(ctypes.c_ulong(thread), None if nothing else ctypes.py_object(_Cut))
