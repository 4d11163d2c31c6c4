"""The time that drafting may take. A step whose code never ends is stopped, and named.

In the main thread of a system that has interval timers the timer's signal stops it. Elsewhere (a thread, Windows, a
program that uses the timer itself) a thread looks on five times a second and has Python raise the stop in the thread
that drafts. Both come between two steps of Python's own, so one call into a library that never returns goes on; where
no thread can be started nothing is stopped. The same stop serves *Interrupt* in a notebook, which a kernel hears only
while it runs a cell: a slider's drafting listens by itself.
"""

from __future__ import annotations

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
from kit.lesson.own_code import line_at
from kit.lesson.steps import Entry
from kit.lesson.where import here

TIME_LIMIT = 5.0
"""Seconds that drafting may take when a lesson says nothing else."""
TRIED = 1.0
"""Seconds that a draft which is only tried, one of many in a search, may take at least."""
LONGEST = 3600.0
_AGAIN = 0.05  # seconds after which a stop that the step's own code caught comes again
_LOOK = 0.2  # seconds between two looks of the thread
_KEPT = 8
_REMEMBERED = 30.0  # seconds; what was slow once (a busy machine, a first import) is tried again after them
_clock = time.monotonic


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
    """Looks on while a lesson is drafted for at most `seconds`. `over` once it is done."""

    def __init__(self, seconds: float) -> None:
        self.seconds = seconds
        self.over = False
        self.until = time.monotonic() + seconds
        self.thread = threading.get_ident()
        self._why = ""
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
        return self._why == "interrupt"

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


Asked = tuple[tuple[Entry, ...], Body, Mapping[str, float]]


@contextmanager
def within(seconds: float, entries: tuple[Entry, ...], body: Body, values: Mapping[str, float]) -> Iterator[None]:
    """Draft inside the block for `seconds` at most. Drafting inside drafting has no limit of its own. What once ran out
    of time is refused at once when the same is asked again within half a minute. Raises `KitError` naming the step when
    the time is up, or `DraftingInterrupted` when a cell that drafts is interrupted."""
    if _WATCH.get() is not None:
        yield
        return
    asked = (entries, body, values)
    if (known := _spent(asked, seconds)) is not None:
        raise known
    watch = Watch(seconds)
    token = _WATCH.set(watch)
    in_cell = False
    try:
        guard = _Guard(watch)
        in_cell = guard.in_cell
        try:
            yield
        finally:
            watch.over = True
            guard.take_down()
    except _Cut as cut:
        refusal = watch.refusal(cut)
        if not watch.interrupted:
            _remember(asked, seconds, watch.culprit(), refusal)
        elif in_cell:
            raise DraftingInterrupted(refusal) from None
        raise refusal from None
    finally:
        _WATCH.reset(token)


# ---- what ran out of time before --------------------------------------------------------------------------

_SPENT: list[tuple[Asked, float, KitError, float]] = []


def _remember(asked: Asked, seconds: float, culprit: Entry | None, refusal: KitError) -> None:
    """A lesson whose step does not end is asked for again by every cell and every view; each would wait anew."""
    entries, body, values = asked
    upto = entries.index(culprit) + 1 if culprit in entries else len(entries)
    _SPENT.append(((entries[:upto], body, dict(values)), seconds, refusal, _clock()))
    del _SPENT[:-_KEPT]


def _spent(asked: Asked, seconds: float) -> KitError | None:
    entries, body, values = asked
    oldest = _clock() - _REMEMBERED
    for (spent, spent_body, spent_values), limit, refusal, since in _SPENT:
        if since < oldest:
            continue
        if seconds <= limit and spent_values == dict(values) and entries[: len(spent)] == spent and spent_body == body:
            return refusal
    return None


# ---- how it is stopped ------------------------------------------------------------------------------------


class _Guard:
    """What stops a `watch` in time, and hears *Interrupt*. `in_cell`: a kernel runs a cell, which ends with it."""

    def __init__(self, watch: Watch) -> None:
        self._watch = watch
        self._timer: Any = None
        self._stops: Any = None
        self.in_cell = False
        mine = threading.current_thread() is threading.main_thread()
        if mine and here().notebook and not here().building:
            stops = signal.getsignal(signal.SIGINT)
            if stops in (signal.default_int_handler, signal.SIG_IGN):
                self.in_cell = stops is signal.default_int_handler
                self._stops = stops
                signal.signal(signal.SIGINT, lambda *_: watch.cut("interrupt"))
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
                    if now >= watch.until:
                        watch.give_up("time")
                quiet = 0 if self._watches else quiet + 1
                self._running = quiet < 25


_LOOKER = _Looker()


def _raise_in(thread: int, *, nothing: bool = False) -> None:
    """Have Python raise `_Cut` in that thread, or take back what has not been raised yet."""
    ctypes.pythonapi.PyThreadState_SetAsyncExc(ctypes.c_ulong(thread), None if nothing else ctypes.py_object(_Cut))
