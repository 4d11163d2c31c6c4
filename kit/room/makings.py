"""Pages and booklets of students, made on the teacher's machine one after another.

Two lanes: pages of everybody go before booklets, so that what is cut from is in hand first. In each lane the order is
that of asking, and each student has one place at most, so nobody's second wish goes before another's first. Each
making is a process of its own with a limit of time; a student's files have a limit of size, and there is a number of
makings in a stretch of time.
"""

from __future__ import annotations

import asyncio
import json
import logging
import os
import shutil
import signal
import sys
import time
from collections.abc import Callable, Mapping
from contextlib import suppress
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path
from typing import Any

from kit.room.rates import Bucket, Clock

PATIENCE = 240.0
"""Seconds that one making may take."""
_OFTEN = (6 / 600, 6.0)  # makings a second, and at once: six in ten minutes
_LARGEST = 80_000_000  # bytes of one student's files
_LEFT = 300_000_000  # bytes of the disk that stay free
_AFTER = 30.0
_LINE = 1 << 20
_log = logging.getLogger(__name__)


@dataclass(frozen=True)
class AskedMaking:
    """What the student in seat `number` wants: pages of a `setting` on `paper`, and the `booklet` after them."""

    number: int
    setting: dict[str, Any]
    paper: str
    booklet: bool


@dataclass
class _Making:
    asked: AskedMaking
    part: str  # "pages" or "booklet"
    process: asyncio.subprocess.Process | None = None
    cancelled: bool = False


class Makings:
    """Makes for the lesson at `lesson` with the engine's options at `options`, `at_once` at a time, into folders
    under `home`. `told(number, what)` is called with whatever a student is to know."""

    def __init__(self, lesson: Path, options: Path, home: Path, at_once: int, clock: Clock = time.monotonic) -> None:
        self.lesson, self.options, self.home, self.at_once = lesson, options, home, at_once
        self.told: Callable[[int, Mapping[str, Any]], None] = lambda number, told: None
        self._clock = clock
        self._pages: list[_Making] = []
        self._booklets: list[_Making] = []
        self._under: list[_Making] = []
        self._often: dict[int, Bucket] = {}
        self._made: dict[int, dict[str, Any]] = {}
        self._bell = asyncio.Event()
        self._loops: list[asyncio.Task[None]] = []

    def start(self) -> None:
        self._loops = [asyncio.create_task(self._run()) for _ in range(self.at_once)]

    async def stop(self) -> None:
        for loop in self._loops:
            loop.cancel()
        await asyncio.gather(*self._loops, return_exceptions=True)

    def folder(self, number: int) -> Path:
        """Where the files of that student are."""
        return self.home / f"student-{number}"

    def made_of(self, number: int) -> dict[str, Any] | None:
        """What was last made for that student."""
        return self._made.get(number)

    def want(self, asked: AskedMaking) -> None:
        """Put it in the queue. The student is told their place, or why not."""
        number = asked.number
        if self.under(number):
            return  # one at a time; the page shows that it is under way
        if not self._often.setdefault(number, Bucket(*_OFTEN, self._clock)).take():
            self._say(number, {"state": "refused", "why": "often"})
            return
        if shutil.disk_usage(self.home).free < _LEFT:
            self._say(number, {"state": "refused", "why": "disk"})
            return
        self._pages.append(_Making(asked, "pages"))
        if asked.booklet:
            self._booklets.append(_Making(asked, "booklet"))
        self._places()
        self._bell.set()

    def cancel(self, number: int) -> None:
        """Nothing more is made for that student; what was made before stays."""
        self._drop(number)
        self._say(number, {"state": "cancelled"})  # in any case: a page that missed the end would wait for it for ever
        self._places()

    def under(self, number: int) -> bool:
        """Whether something is made for that student, or waits to be."""
        return any(not each.cancelled for each in self._of(number))

    def forget(self, number: int) -> None:
        """The student is gone. Their files stay in the folder of the class, which goes with it."""
        self._drop(number)
        self._often.pop(number, None)
        self._made.pop(number, None)
        self._places()

    def _drop(self, number: int) -> None:
        for making in self._of(number):
            making.cancelled = True
            _end(making.process)
        self._pages = [each for each in self._pages if not each.cancelled]
        self._booklets = [each for each in self._booklets if not each.cancelled]

    def _say(self, number: int, told: Mapping[str, Any]) -> None:
        """Tell that student. A page that cannot be told holds nobody up."""
        try:
            self.told(number, told)
        except Exception:
            _log.exception("A student could not be told.")

    def _of(self, number: int) -> list[_Making]:
        return [each for each in (*self._under, *self._pages, *self._booklets) if each.asked.number == number]

    def _places(self) -> None:
        """Tell everybody who waits how many are before them."""
        before = len(self._under)
        seen = {each.asked.number for each in self._under if not each.cancelled}
        for making in (*self._pages, *self._booklets):
            if making.asked.number not in seen:
                self._say(making.asked.number, {"state": "waiting", "place": before})
            seen.add(making.asked.number)
            before += 1

    # ---- one after another --------------------------------------------------------------------------------

    async def _run(self) -> None:
        while True:
            making = self._next()
            if making is None:
                self._bell.clear()
                await self._bell.wait()
                continue
            self._under.append(making)
            self._places()
            told: Mapping[str, Any] = {"failed": ""}
            try:
                told = await self._make(making)
            except Exception:
                _log.exception("A making broke off.")  # the next one has its turn
            finally:
                self._under.remove(making)
                self._bell.set()
            if not making.cancelled:
                try:
                    self._ended(making, told)
                except Exception:
                    _log.exception("What was made could not be put in order.")
                    self._ended(making, {"failed": ""})
            self._places()

    def _next(self) -> _Making | None:
        """Pages first. A student's booklet waits for their pages, and new pages for what was cancelled to be gone: both
        write into one folder."""
        busy = {each.asked.number for each in self._under}
        for lane in (self._pages, self._booklets):
            for making in lane:
                if making.asked.number not in busy:
                    lane.remove(making)
                    return making
        return None

    async def _make(self, making: _Making) -> dict[str, Any]:
        """Do it in a process of its own. Gives {"done": ...} or {"failed": why}."""
        asked, loop = making.asked, asyncio.get_running_loop()
        out = self.folder(asked.number)
        out.mkdir(mode=0o700, parents=True, exist_ok=True)
        process = making.process = await asyncio.create_subprocess_exec(
            *(sys.executable, "-m", "kit.room.making", str(self.lesson), str(self.options)),
            stdin=asyncio.subprocess.PIPE,
            stdout=asyncio.subprocess.PIPE,
            stderr=asyncio.subprocess.DEVNULL,
            limit=_LINE,
            start_new_session=True,
        )
        assert process.stdin is not None and process.stdout is not None
        job = {"setting": asked.setting, "paper": asked.paper, "part": making.part, "out": str(out)}
        last: dict[str, Any] = {}
        until = loop.time() + PATIENCE
        try:
            process.stdin.write(json.dumps(job).encode() + b"\n")
            process.stdin.close()
            if making.cancelled:  # while it was begun
                _end(process)
            while line := await asyncio.wait_for(process.stdout.readline(), max(0.1, until - loop.time())):
                last = json.loads(line)
                if "doing" in last and not making.cancelled:
                    self._say(asked.number, {"state": "doing", "doing": last["doing"], "part": making.part})
        except (TimeoutError, ValueError, ConnectionError):
            last = {}
        finally:
            _end(process)
            with suppress(asyncio.TimeoutError):
                await asyncio.wait_for(asyncio.shield(process.wait()), _AFTER)
            _end(process, signal.SIGKILL if os.name == "posix" else signal.SIGTERM)
        return last if "done" in last or "failed" in last else {"failed": ""}

    def _ended(self, making: _Making, told: Mapping[str, Any]) -> None:
        number = making.asked.number
        if "failed" in told:
            # without pages there is no booklet either
            self._booklets = [each for each in self._booklets if each.asked.number != number]
            self._say(number, {"state": "failed", "why": told["failed"], "made": self._made.get(number)})
            return
        done = told["done"]
        folder = self.folder(number)
        if making.part == "pages":
            for path in folder.glob("*.pdf"):  # those of another paper, and the booklet, are of other values
                if path.name not in done["files"]:
                    path.unlink(missing_ok=True)
        files = sorted((path.name for path in folder.glob("*.pdf")), key=lambda name: (name != "booklet.pdf", name))
        if sum((folder / name).stat().st_size for name in files) > _LARGEST:
            shutil.rmtree(folder, ignore_errors=True)
            self._say(number, {"state": "refused", "why": "large"})
            return
        when = datetime.now().strftime("%H:%M")
        self._made[number] = {"files": files, "who": done["who"], "when": when, "unsound": done["unsound"]}
        more = any(each.asked.number == number for each in (*self._booklets, *self._under))
        self._say(number, {"state": "made", "more": more, "made": self._made[number]})


def _end(process: asyncio.subprocess.Process | None, how: int = signal.SIGTERM) -> None:
    """End it and what it began."""
    if process is None or process.returncode is not None:
        return
    with suppress(ProcessLookupError, PermissionError):
        if os.name == "posix":
            os.killpg(process.pid, how)
        else:
            process.terminate()
