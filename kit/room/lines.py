"""The open lines (websockets) of pages and boards. Messages are 64 KB at most and as many as a seat's rate allows; a
page that does not read what it is told is hung up on."""

from __future__ import annotations

import asyncio
import json
from collections.abc import Callable, Mapping
from contextlib import suppress
from typing import Any
from urllib.parse import urlsplit

import tornado.web
from tornado.iostream import StreamBufferFullError
from tornado.log import app_log
from tornado.websocket import WebSocketClosedError, WebSocketHandler

from kit.room import said
from kit.room.gate import Door
from kit.room.rates import Bucket
from kit.room.seats import Seat

_UNREAD = 8 << 20  # bytes that may wait for a page to read them
_PATIENCE = 100
"""Messages over the rate before the line is closed."""
_BOARD = (40.0, 200.0)  # messages of a board a second, and at once
_BUSY = 16  # messages of one line that are under way


class _Open(WebSocketHandler):
    """What both kinds of line share."""

    seat: Seat | None = None

    @property
    def door(self) -> Door:
        door: Door = self.settings["door"]
        return door

    def check_origin(self, origin: str) -> bool:
        """Only a page of this class may speak: its address is the one that was asked for."""
        return urlsplit(origin).netloc.lower() == self.request.host.lower()

    def prepare(self) -> None:
        if not self.request.headers.get("Origin"):
            raise tornado.web.HTTPError(403)  # every browser tells it

    def open(self, *args: str, **kwargs: str) -> None:
        self._tasks: set[asyncio.Task[None]] = set()
        self._over = 0
        stream = getattr(self.ws_connection, "stream", None)
        if stream is not None:
            stream.max_write_buffer_size = _UNREAD

    def say(self, text: str) -> None:
        """Send it on; nothing is waited for."""
        with suppress(WebSocketClosedError):
            try:
                self.write_message(text)
            except StreamBufferFullError:
                # nothing more fits in, not even a farewell
                stream = getattr(self.ws_connection, "stream", None)
                if stream is not None:
                    stream.close()

    def begin(self, work: Any) -> None:
        """Do it beside what comes next."""
        if len(self._tasks) >= _BUSY:
            work.close()
            return
        task = asyncio.ensure_future(work)
        self._tasks.add(task)
        task.add_done_callback(self._done)

    def _done(self, task: asyncio.Task[None]) -> None:
        self._tasks.discard(task)
        if not task.cancelled():
            task.exception()

    def end(self) -> None:
        for task in tuple(getattr(self, "_tasks", ())):
            task.cancel()

    def heard(self, message: str | bytes, rate: Bucket, read: Callable[[str], Any]) -> Any:
        """The message as a value; None when it is to be left."""
        if not rate.take():
            self._over += 1
            if self._over > _PATIENCE:
                self.close(1008, "rate")
            return None
        if not isinstance(message, str):
            self.close(1003)
            return None
        try:
            return read(message)
        except said.Unsaid:
            return None

    def log_exception(self, kind: Any, value: Any, trace: Any) -> None:
        """What went wrong, without the address."""
        if not isinstance(value, tornado.web.HTTPError | WebSocketClosedError):
            app_log.error("%s %s", self.request.method, self.request.path, exc_info=(kind, value, trace))

    def write_error(self, status_code: int, **kwargs: Any) -> None:
        self.finish()


class StudentLine(_Open):
    """A student's page."""

    def open(self, *args: str, **kwargs: str) -> None:
        super().open()
        self.seat = self.door.seat(self.request)
        if self.seat is None or not self.door.gathering.arrive(self.seat, self.say):
            self.close(1008, "lines")

    def on_message(self, message: str | bytes) -> None:
        seat = self.seat
        if seat is None or self.door.gathering.seats.find(seat.token) is not seat:
            self.close(1008, "seat")
            return
        told = self.heard(message, seat.messages, said.read_student)
        if told is not None:
            self.begin(self.door.gathering.heard(seat, self.say, told))
        elif self._over:
            self._too_fast(message)

    def _too_fast(self, message: str | bytes) -> None:
        """Who asks the engine gets an answer in any case, so that a page does not wait for ever."""
        with suppress(ValueError, TypeError, AttributeError):
            asked = json.loads(message)
            if asked.get("is") == "ask" and isinstance(asked.get("id"), int):
                self.say(json.dumps({"is": "answer", "id": asked["id"], "why": "too_many"}))

    def on_close(self) -> None:
        self.end()
        if self.seat is not None:
            self.door.gathering.leave(self.seat, self.say)


class BoardLine(_Open):
    """A teacher's board."""

    def initialize(self, facts: Mapping[str, Any]) -> None:
        self.facts = facts
        self._rate = Bucket(*_BOARD)

    def open(self, *args: str, **kwargs: str) -> None:
        super().open()
        self.door.gathering.board_arrives(self.say, self.facts)

    def on_message(self, message: str | bytes) -> None:
        told = self.heard(message, self._rate, said.read_board)
        if told is not None:
            self.begin(self.door.gathering.board_heard(self.say, told))

    def on_close(self) -> None:
        self.end()
        self.door.gathering.board_leaves(self.say)
