"""A class on a bad day: the network is cut, an engine or the teacher is lost, a clock is set back, the disk is full.

The small lesson of `tests/open_room.py` is served as `lessonkit serve` does, and spoken to as a student's browser would
over HTTP and its line; what a student reads is looked up in the words the page was given.
"""

from __future__ import annotations

import asyncio
import atexit
import json
import os
import signal
import socket
import struct
import time
from collections.abc import Awaitable, Callable, Iterator
from contextlib import ExitStack, contextmanager
from functools import cache
from pathlib import Path
from tempfile import TemporaryDirectory
from typing import Any

import psutil
import pytest
import requests
from tornado.httpclient import HTTPRequest
from tornado.ioloop import IOLoop
from tornado.websocket import WebSocketClientConnection, websocket_connect

from kit.room import said
from kit.room.gathering import Gathering
from kit.room.makings import Makings
from kit.room.seats import Seat, Seats
from tests.open_room import SMALL, Room, running_room

from .day import Day, fault, fill, small_disk

PATIENCE = 120  # seconds within which a busy machine answers; what is asked is what, not how fast
SEAT = "the student's place, name and hand; values and measurements, which are in the browser"
MAKE = json.dumps({"is": "make", "setting": {}, "paper": "a4", "booklet": False})


class Student:
    """A browser with the class code. Its cookie stays with it when its line is lost."""

    def __init__(self, room: Room) -> None:
        self.room = room
        self.session = requests.Session()
        self.session.get(room.link, allow_redirects=False, timeout=PATIENCE)

    def words(self, key: str) -> str:
        """What the page says at `key`, in the class's first language."""
        told = self.session.get(f"{self.room.address}/room/words.json", timeout=PATIENCE).json()
        first: dict[str, str] = next(iter(told.values()))
        return first[key]

    async def line(self) -> WebSocketClientConnection:
        cookies = "; ".join(f"{cookie.name}={cookie.value}" for cookie in self.session.cookies)
        head = {"Cookie": cookies, "Origin": self.room.address}
        return await websocket_connect(HTTPRequest(f"{self.room.address.replace('http', 'ws', 1)}/line", headers=head))


async def told(line: WebSocketClientConnection, kind: str) -> dict[str, Any]:
    """The next message of that kind."""
    while True:
        text = await line.read_message()
        assert isinstance(text, str), "the line was closed"
        message: dict[str, Any] = json.loads(text)
        if message["is"] == kind:
            return message


async def asked(line: WebSocketClientConnection, number: int) -> dict[str, Any]:
    """What the room's engine answers to a drawing; one that is put off is asked again, as the page does."""
    while True:
        await line.write_message(json.dumps({"is": "ask", "id": number, "text": json.dumps({"do": "draw"})}))
        answer = await told(line, "answer")
        if answer.get("why") != "too_many":
            return answer
        await asyncio.sleep(0.5)


def cut(line: WebSocketClientConnection) -> None:
    """The cable is pulled: no goodbye, the next packet is answered by nobody."""
    assert line.protocol is not None
    there = line.protocol.stream.socket  # type: ignore[attr-defined]
    there.setsockopt(socket.SOL_SOCKET, socket.SO_LINGER, struct.pack("ii", 1, 0))
    line.protocol.stream.close()  # type: ignore[attr-defined]


def engines(room: Room, module: str = "kit.room.worker") -> list[psutil.Process]:
    """The processes that work for the class."""
    found = []
    for child in psutil.Process(room.process).children(recursive=True):
        try:
            if module in child.cmdline():
                found.append(child)
        except psutil.Error:
            pass
    return found


ALLOWANCES = """\
@lesson.step("Add allowances")
def allowances(front, back):
    '''Add 1 cm all round.'''
    for piece in (front, back):
        piece.allow(neck=1 * cm, shoulder=1 * cm, armhole=1 * cm, side=1 * cm, hem=1 * cm)

lesson.exercise("""
"""Makes a lesson of the small one whose pages can be printed."""


@contextmanager
def open_class(folder: Path) -> Iterator[Room]:
    given = ("--local-network", "--students", "20", "--per-device", "20", "--room-alone", "--workers", "1")
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr("tests.open_room.SMALL", SMALL.replace("lesson.exercise(", ALLOWANCES, 1))
        with running_room(folder, *given, small=True) as room:
            yield room


_OPEN = ExitStack()
atexit.register(_OPEN.close)


@cache
def shared() -> Room:
    """A class that several bad things happen in, one after the other: it must be whole after each."""
    return _OPEN.enter_context(open_class(Path(_OPEN.enter_context(TemporaryDirectory()))))


def spoken(work: Callable[[], Awaitable[str]]) -> str:
    text: str = IOLoop().run_sync(work, timeout=PATIENCE)  # type: ignore[arg-type]
    return text


@fault("Class", "the network is cut while a student works", SEAT)
def network_cut(day: Day) -> str:
    room = shared()
    student, other = Student(room), Student(room)

    async def work() -> str:
        beside, line = await other.line(), await student.line()
        number = (await told(line, "welcome"))["number"]
        for message in ({"is": "name", "name": "Ines"}, {"is": "hand", "up": True}):
            await line.write_message(json.dumps(message))
        await told(line, "hand")
        cut(line)
        assert (await asked(beside, 1))["text"]  # the others go on
        again = await student.line()
        back = await told(again, "welcome")
        assert (back["number"], back["name"], back["hand"]) == (number, "Ines", True)
        assert json.loads((await asked(again, 2))["text"])["svg"].startswith("<svg")
        return student.words("lost")

    return spoken(work)


@fault("Class", "the engine that works for the students is killed between two of their moves", SEAT)
def engine_killed(day: Day) -> str:
    room = shared()
    student = Student(room)

    async def work() -> str:
        line = await student.line()
        await asked(line, 1)
        (before,) = engines(room)
        before.kill()
        before.wait(PATIENCE)
        assert json.loads((await asked(line, 2))["text"])["ok"]
        assert before not in engines(room)
        return "(nothing: the next move is drawn by another engine)"

    return spoken(work)


@fault("Class", "the engine is killed in the middle of a move", SEAT)
def engine_killed_at_work(day: Day) -> str:
    room = shared()
    student, other = Student(room), Student(room)

    async def work() -> str:
        line, beside = await student.line(), await other.line()
        await asked(line, 1)
        (engine,) = engines(room)
        engine.suspend()  # so that it surely is in the middle
        mine = asyncio.ensure_future(asked(line, 2))
        await asyncio.sleep(0.5)
        engine.kill()
        assert (await mine)["why"] == "stopped"
        assert (await asked(beside, 1))["text"]  # nobody else waits
        assert (await asked(line, 3))["text"]
        return _page_words("stopped")

    return spoken(work)


def _page_words(key: str) -> str:
    from kit.language import say

    return say(f"page.{key}")


@fault(
    "Class",
    "the teacher's own process is killed",
    "pages that were made (--keep), what stands in the students' browsers; no engine lives on",
)
def teacher_killed(day: Day) -> str:
    with open_class(day.folder) as room:
        student = Student(room)
        lost = student.words("lost")
        kept = day.keeps(room.sessions / "student-1" / "pages-a4.pdf", "%PDF made before")
        left = engines(room)
        assert left
        os.kill(room.process, signal.SIGKILL)
        gone, alive = psutil.wait_procs(left, timeout=PATIENCE)
        assert len(gone) == len(left) and not alive
        assert kept.is_file()
    return lost


@fault(
    "Class",
    "the process that makes a student's pages is killed",
    "the pages made before; everybody else's; asked again they are made",
)
def making_killed(day: Day) -> str:
    room = shared()
    student = Student(room)

    async def work() -> str:
        line = await student.line()
        await line.write_message(MAKE)
        while not (found := engines(room, "kit.room.making")):
            await asyncio.sleep(0.02)
        found[0].kill()
        while (making := await told(line, "making"))["state"] != "failed":
            assert making["state"] in ("waiting", "doing")
        assert making["why"] == ""
        await line.write_message(MAKE)
        while (making := await told(line, "making"))["state"] != "made":
            assert making["state"] in ("waiting", "doing")
        assert making["made"]["files"] == ["pages-a4.pdf"]
        return student.words("print_lost")

    return spoken(work)


@fault(
    "Class",
    "the disk becomes full while a student's pages are made",
    "the pages made before; the class goes on; with room on the disk they are made",
)
def no_room_for_pages(day: Day) -> str:
    (day.folder / "sessions").symlink_to(day.folder / "disk")
    with small_disk(day, "340m") as disk, open_class(day.folder) as room:
        student = Student(room)

        async def work() -> str:
            line = await student.line()
            await line.write_message(MAKE)
            while not (found := engines(room, "kit.room.making")):
                await asyncio.sleep(0.02)
            found[0].suspend()
            fill(disk)
            found[0].resume()
            while (making := await told(line, "making"))["state"] != "failed":
                assert making["state"] in ("waiting", "doing")
            assert (await asked(line, 1))["text"]
            await line.write_message(MAKE)
            assert (await told(line, "making"))["why"] == "disk"  # nobody is let begin where little room is left
            (disk / "filling").unlink()
            await line.write_message(MAKE)
            while (again := await told(line, "making"))["state"] != "made":
                assert again["state"] in ("waiting", "doing")
            assert str(disk) not in making["why"], "a student reads where the teacher keeps files"
            return student.words("print_failed").replace("{why}", making["why"])

        return spoken(work)


@fault("Class", "the clock of the teacher's machine is set back by ten years", "who raised a hand first is first", True)
def clock_back(day: Day) -> str:
    real = time.time

    class Idle:
        def drop(self, who: str) -> None: ...

    seats = Seats(10)
    makings = Makings(Path("a"), Path("b"), day.folder, 1)
    gathering = Gathering(seats, Idle(), makings)  # type: ignore[arg-type]
    rows: list[dict[str, Any]] = []

    def board(text: str) -> None:
        message = json.loads(text)
        rows[:] = message["rows"] if message["is"] == "people" else rows

    async def work() -> None:
        gathering.board_arrives(board, {})
        for turn in range(3):
            seat = seats.take(f"device {turn}")
            assert isinstance(seat, Seat)
            day.patch.setattr(time, "time", lambda turn=turn: real() - 315_000_000 * turn)
            assert gathering.arrive(seat, lambda text: None)
            await gathering.heard(seat, lambda text: None, said.Hand(True))
        gathering.tick()

    asyncio.run(work())
    up = sorted((row for row in rows if row["hand"]), key=lambda row: row["hand"])
    assert [row["number"] for row in up] == [1, 2, 3]
    return "(nothing: the class goes on)"
