"""What goes wrong with one page does not end the class."""

from __future__ import annotations

import asyncio
from types import SimpleNamespace
from typing import Any

import pytest
from tornado.httputil import parse_cookie
from tornado.iostream import StreamBufferFullError

from kit.room import running
from kit.room.gate import Door
from kit.room.lines import StudentLine


def test_boards_are_told_again_after_a_telling_that_failed(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(running, "TICK", 0.0)
    ticks: list[int] = []

    async def room() -> None:
        done = asyncio.Event()

        def tick() -> None:
            ticks.append(1)
            if len(ticks) == 1:
                raise UnicodeEncodeError("utf-8", "\ud800", 0, 1, "half a character")
            done.set()

        ticking = asyncio.create_task(running._tick(SimpleNamespace(tick=tick)))  # type: ignore[arg-type]
        await asyncio.wait_for(done.wait(), 60)
        ticking.cancel()

    asyncio.run(room())
    assert len(ticks) >= 2


def test_a_page_that_reads_nothing_is_hung_up_on() -> None:
    """A farewell would not fit in either: the stream itself is closed."""
    closed: list[bool] = []

    class Full:
        stream = SimpleNamespace(close=lambda: closed.append(True))

        def is_closing(self) -> bool:
            return False

        def write_message(self, *_: Any, **__: Any) -> None:
            raise StreamBufferFullError("Reached maximum write buffer size")

        def close(self, *_: Any) -> None:
            raise StreamBufferFullError("Reached maximum write buffer size")

    line = StudentLine.__new__(StudentLine)
    line.ws_connection = Full()  # type: ignore[assignment]
    line.say("{}")
    assert closed == [True]


def test_a_board_cookie_beyond_ascii_is_only_wrong() -> None:
    door = Door(SimpleNamespace(), frozenset(), 8866)  # type: ignore[arg-type]
    token = door.new_board()

    def brings(value: str) -> bool:
        cookies = {
            name: SimpleNamespace(value=text) for name, text in parse_cookie(f"{door.board_cookie}={value}").items()
        }
        return door.is_teacher(SimpleNamespace(cookies=cookies))  # type: ignore[arg-type]

    assert brings(token) and not brings("é" * 22) and not brings(token[:-1] + "é") and not brings(token + "A")
