"""A few warm workers and whose turn it is.

Who asks has one message with the workers at a time, and they take turns round the room. Drawings go before what takes
longer (proofs, remedies), and one worker is always left for drawings. What does not end is stopped with its worker,
another one takes its place, and who asked it waits a while before they are answered again.
"""

from __future__ import annotations

import asyncio
import json
import sys
import time
from collections import OrderedDict, deque
from collections.abc import Callable, Sequence
from contextlib import suppress
from dataclasses import dataclass, field

from kit.room.rates import Clock

PATIENCE = 12.0
"""Seconds that one drawing may take; a lesson's own time limit is 5."""
_OPENING = 120.0
_QUEUED = 4  # messages of one that may wait
_LONGEST = 8 << 20  # bytes of an answer
_SLOW = 4  # times as long for what takes longer: remedies try several values
_PAUSE, _LONGEST_PAUSE = 5.0, 120.0
_GOOD = 60.0  # seconds after which an answer clears who was put off


class TooMany(Exception):
    """Who asks has as much waiting as one may, or had something stopped just now."""


class NoAnswer(Exception):
    """The answer did not come to an end."""


@dataclass
class _Task:
    who: str
    text: str
    slow: bool
    answer: asyncio.Future[str]
    again: bool = False


@dataclass(frozen=True)
class _Lane:
    """Who waits, in turn, and with what."""

    of: OrderedDict[str, deque[_Task]] = field(default_factory=OrderedDict)

    def put(self, task: _Task) -> None:
        self.of.setdefault(task.who, deque()).append(task)

    def put_back(self, task: _Task) -> None:
        """Put it where it was taken from: it is the next one's."""
        self.of.setdefault(task.who, deque()).appendleft(task)
        self.of.move_to_end(task.who, last=False)

    def count(self, who: str) -> int:
        return sum(not task.answer.done() for task in self.of.get(who, ()))

    def next(self, busy: set[str]) -> _Task | None:
        """The next one whose turn it is; who had a turn goes to the end."""
        for who in self.of:
            if who in busy:
                continue
            waiting = self.of.pop(who)
            task = waiting.popleft()
            if waiting:
                self.of[who] = waiting
            return task
        return None

    def forget(self, who: str) -> None:
        for task in self.of.pop(who, ()):
            task.answer.cancel()


class Workers:
    """`count` processes of `command`, begun with `start` and ended with `stop`."""

    def __init__(
        self,
        command: Sequence[str],
        count: int,
        *,
        patience: float = PATIENCE,
        clock: Clock = time.monotonic,
        tell: Callable[[str], None] = lambda line: None,
    ) -> None:
        self.command, self.count, self.patience = tuple(command), count, patience
        self._clock, self._tell = clock, tell
        self._quick, self._slow = _Lane(), _Lane()
        self._busy: set[str] = set()
        self._slow_under = 0
        self._bell = asyncio.Event()
        self._stopped: dict[str, tuple[float, float]] = {}
        self._loops: list[asyncio.Task[None]] = []
        self._ready: list[asyncio.Future[str]] = []
        self.processes: set[int] = set()

    async def start(self) -> str:
        """Open all; gives back why they could not be opened, or ""."""
        loop = asyncio.get_running_loop()
        self._ready = [loop.create_future() for _ in range(self.count)]
        self._loops = [asyncio.create_task(self._run(each)) for each in self._ready]
        told = await asyncio.gather(*self._ready)
        return next((why for why in told if why), "")

    async def stop(self) -> None:
        """End all; what was asked is not answered."""
        for loop in self._loops:
            loop.cancel()
        await asyncio.gather(*self._loops, return_exceptions=True)

    async def ask(self, who: str, text: str, slow: bool = False) -> str:
        """The answer to one line of JSON. Raises `TooMany` and `NoAnswer`."""
        until, _ = self._stopped.get(who, (0.0, 0.0))
        if self._clock() < until or self._quick.count(who) + self._slow.count(who) >= _QUEUED:
            raise TooMany
        task = _Task(who, text, slow, asyncio.get_running_loop().create_future())
        (self._slow if slow else self._quick).put(task)
        self._bell.set()
        return await task.answer

    def forget(self, who: str) -> None:
        """They are gone for good, and nothing of them is remembered."""
        self.drop(who)
        self._stopped.pop(who, None)

    def drop(self, who: str) -> None:
        """What waits for them is not worked any more. Who was put off stays so: coming back does not shorten it."""
        self._quick.forget(who)
        self._slow.forget(who)

    # ---- one worker ---------------------------------------------------------------------------------------

    async def _run(self, ready: asyncio.Future[str]) -> None:
        while True:
            process = await self._open(ready)
            try:
                while await self._one(process):
                    pass
            finally:
                await self._end(process)

    async def _open(self, ready: asyncio.Future[str]) -> asyncio.subprocess.Process:
        """A process that is ready to answer; tried again, less and less often, where it does not become so."""
        pause = 0.5
        while True:
            process: asyncio.subprocess.Process | None = None
            why = "it ended without a word"
            try:
                process = await asyncio.create_subprocess_exec(
                    *self.command,
                    stdin=asyncio.subprocess.PIPE,
                    stdout=asyncio.subprocess.PIPE,
                    stderr=asyncio.subprocess.DEVNULL,
                    limit=_LONGEST,
                    start_new_session=True,
                )
                self.processes.add(process.pid)
                assert process.stdout is not None
                said = await asyncio.wait_for(process.stdout.readline(), _OPENING)
                told = json.loads(said) if said else {}
                if told.get("ready"):
                    if not ready.done():
                        ready.set_result("")
                    return process
                why = str(told.get("failed") or why)
            except (TimeoutError, ValueError):
                pass
            except OSError as error:  # no memory, or too many files, just now
                why = error.strerror or why
            except asyncio.CancelledError:
                if process is not None:
                    await self._end(process)
                raise
            if process is not None:
                await self._end(process)
            if not ready.done():
                ready.set_result(why)
            self._tell(f"A worker could not be opened: {why}")
            await asyncio.sleep(pause)
            pause = min(30.0, pause * 2)

    async def _end(self, process: asyncio.subprocess.Process) -> None:
        self.processes.discard(process.pid)
        with suppress(ProcessLookupError):
            process.kill()
        with suppress(Exception):
            await process.wait()

    async def _one(self, process: asyncio.subprocess.Process) -> bool:
        """Wait for one task and do it; False when the worker has to be replaced."""
        task = await self._next()
        assert process.stdin is not None and process.stdout is not None
        died = False
        try:
            process.stdin.write(task.text.encode("utf-8") + b"\n")
            await process.stdin.drain()
            said = await asyncio.wait_for(process.stdout.readline(), self.patience * (_SLOW if task.slow else 1))
            died = not said.endswith(b"\n")
        except ConnectionError:
            said, died = b"", True
        except (TimeoutError, ValueError):  # ValueError: an answer that is too long
            said = b""
        finally:
            self._free(task)
        if died and not task.again:
            # It may have died while nobody asked, and nothing tells which of the two came first. Whoever comes next is
            # not to blame: another worker is asked once more.
            task.again = True
            (self._slow if task.slow else self._quick).put_back(task)
            self._bell.set()
            return False
        if not said.endswith(b"\n"):
            self._put_off(task.who)
            if not task.answer.done():
                task.answer.set_exception(NoAnswer())
            return False
        if not task.answer.done():
            task.answer.set_result(said.decode("utf-8"))
        until, _ = self._stopped.get(task.who, (0.0, 0.0))
        if task.who in self._stopped and self._clock() > until + _GOOD:
            del self._stopped[task.who]
        return True

    def _free(self, task: _Task) -> None:
        self._busy.discard(task.who)
        self._slow_under -= task.slow
        self._bell.set()

    async def _next(self) -> _Task:
        while True:
            task = self._quick.next(self._busy)
            if task is None and self._slow_under < max(1, self.count - 1):
                task = self._slow.next(self._busy)
            if task is not None:
                if task.answer.done():
                    continue  # who asked is gone
                self._busy.add(task.who)
                self._slow_under += task.slow
                return task
            self._bell.clear()
            await self._bell.wait()

    def _put_off(self, who: str) -> None:
        """Whose task was stopped waits, twice as long each time."""
        _, before = self._stopped.get(who, (0.0, 0.0))
        pause = min(_LONGEST_PAUSE, before * 2) if before else _PAUSE
        self._stopped[who] = self._clock() + pause, pause


def command(lesson: str, options: str) -> tuple[str, ...]:
    """How a worker for that lesson is begun."""
    return sys.executable, "-m", "kit.room.worker", lesson, options
