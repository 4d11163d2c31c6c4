"""What a class takes of the teacher's machine, as `lessonkit serve` opens it: files, board, engine, memory.

    python tests/bench/class_room.py [--students 100] [--engine 30] [--seconds 20]

Pages without a browser speak to the running command over HTTP and websockets. Told, as rows: `--students` who come
within 10 s and fetch the whole page, seconds until each had it (the aim: 2); all of them on the board, each reporting
once a second, and a step that is sent to all ten times, milliseconds from the board to each page (p95: 200);
`--engine` of them on the room's engine, each moving a slider once a second and asking for the proof a third of a second
later, as the page does, milliseconds from the move to the picture (p95: 120, on two cores that do nothing else); PSS of
server and workers (400 MB in all). Other work on the machine makes every wait longer: the load stands in each row.
"""

from __future__ import annotations

import argparse
import asyncio
import json
import os
import random
import re
import statistics
import sys
import tempfile
import time
from collections.abc import Sequence
from pathlib import Path
from typing import Any

import tornado.simple_httpclient
from tornado.httpclient import AsyncHTTPClient, HTTPRequest
from tornado.websocket import WebSocketClientConnection, websocket_connect

sys.path.insert(0, str(Path(__file__).resolve().parents[1]))
from open_room import Room, running_room

from kit.page.build import SCRIPTS

PATIENCE = 300.0
REST = 0.35  # seconds after which a page asks for the proof


class Page:
    """A page without a browser, of a student or the board."""

    def __init__(self, room: Room) -> None:
        self.room, self.cookie, self.line = room, "", None
        self.waiting: dict[int, asyncio.Future[dict[str, Any]]] = {}
        self.taken: list[float] = []
        self.proofs = 0
        self.number = 0

    async def get(self, address: str) -> Any:
        asked = HTTPRequest(
            address,
            headers={"Cookie": self.cookie, "Accept-Encoding": "gzip"},
            follow_redirects=False,
            request_timeout=PATIENCE,
            connect_timeout=PATIENCE,
            decompress_response=False,
        )
        answer = await AsyncHTTPClient().fetch(asked, raise_error=False)
        for cookie in answer.headers.get_list("Set-Cookie"):
            self.cookie = cookie.split(";")[0]
        return answer

    async def enter(self, link: str, files: Sequence[str] = ()) -> tuple[float, int]:
        """Come in and fetch the page with its `files`: seconds, and bytes."""
        began, size = time.perf_counter(), 0
        await self.get(link)
        for path in ("/", "/room/student.js", "/room/words.json", *files):
            answer = await self.get(f"{self.room.address}{path}")
            if answer.code != 200:
                raise RuntimeError(f"{path}: {answer.code}")
            size += len(answer.body)
        return time.perf_counter() - began, size

    async def open(self, path: str) -> None:
        head = {"Cookie": self.cookie, "Origin": self.room.address}
        address = f"{self.room.address.replace('http', 'ws', 1)}{path}"
        self.line = await websocket_connect(HTTPRequest(address, headers=head))
        self.reading = asyncio.create_task(self._read(self.line))

    async def _read(self, line: WebSocketClientConnection) -> None:
        while isinstance(text := await line.read_message(), str):
            now, told = time.perf_counter(), json.loads(text)
            if told["is"] == "take":
                self.taken.append(now)
            elif told["is"] == "answer" and told["id"] in self.waiting:
                waits = self.waiting.pop(told["id"])
                if not waits.done():
                    waits.set_result(told)

    async def say(self, **told: Any) -> None:
        assert self.line is not None
        await self.line.write_message(json.dumps(told))

    async def ask(self, **asked: Any) -> float:
        """Seconds until the engine has answered."""
        self.number += 1
        waits = self.waiting[self.number] = asyncio.get_running_loop().create_future()
        began = time.perf_counter()
        await self.say(**{"is": "ask", "id": self.number, "text": json.dumps(asked)})
        told = await asyncio.wait_for(waits, PATIENCE)
        if "text" not in told or not json.loads(told["text"])["ok"]:
            raise RuntimeError(str(told)[:300])
        return time.perf_counter() - began

    async def report(self, seconds: float) -> None:
        """Tell once a second where one is."""
        until = time.perf_counter() + seconds
        await asyncio.sleep(random.uniform(0, 1))
        while time.perf_counter() < until:
            await self.say(**{"is": "here", "step": "draft:x", "number": random.randint(1, 20), "steps": 20})
            await asyncio.sleep(1)

    async def move(self, seconds: float) -> list[float]:
        """Move a slider once a second, and ask for the proof in between; the next move takes its place."""
        waits = []
        tick = time.perf_counter() + random.uniform(0, 1)
        until = tick + seconds
        while tick < until:
            await asyncio.sleep(max(0.0, tick - time.perf_counter()))
            values = {"sleeve_length": round(random.uniform(100, 400))}
            await self.ask(do="draw", values=values, room=[390, 371])
            waits.append(time.perf_counter() - tick)
            await asyncio.sleep(REST)
            proof = asyncio.create_task(self.ask(do="prove", values=values))
            tick = max(tick + 1, time.perf_counter())
            done, _ = await asyncio.wait([proof], timeout=tick - time.perf_counter())
            self.proofs += len(done)
            proof.cancel()
        return waits


def megabytes(process: int) -> float:
    text = Path(f"/proc/{process}/smaps_rollup").read_text()
    return int(next(line for line in text.splitlines() if line.startswith("Pss:")).split()[1]) / 1024


def children(process: int) -> list[int]:
    return [int(pid) for pid in Path(f"/proc/{process}/task/{process}/children").read_text().split()]


def cut(waits: Sequence[float], share: int) -> float:
    return statistics.quantiles(waits, n=100)[share - 1]


def row(what: str, told: str) -> None:
    print(f"| {what} | {told} | {os.getloadavg()[0]:.1f} |", flush=True)


async def measure(room: Room, count: int, engine: int, seconds: float) -> None:
    pages = [Page(room) for _ in range(count)]
    first = Page(room)
    await first.enter(room.link)
    index = (await first.get(f"{room.address}/")).body
    text = index.decode() if index[:2] != b"\x1f\x8b" else __import__("gzip").decompress(index).decode()
    edition = re.search(r"edition-[0-9a-f]+", text)
    assert edition is not None
    python = (
        "kit.zip.lzma",
        "python.zip.lzma",
        "lesson.zip",
        "lock.json",
        "engine.json",
        "pyodide.mjs",
        "pyodide.asm.mjs",
    )
    own = 'data-own="yes"' in text
    names = (*SCRIPTS, "page.json", *((*python, "pyodide.asm.wasm.lzma") if own else ()))
    files = [f"/{edition[0]}/{name}" for name in names]

    async def come(page: Page) -> tuple[float, int]:
        await asyncio.sleep(random.uniform(0, 10))
        return await page.enter(room.link, files)

    came = await asyncio.gather(*(come(page) for page in pages))
    waits = [wait for wait, _ in came]
    row(
        f"{count} come within 10 s, {came[0][1] / 1e6:.1f} MB each",
        f"p50 {statistics.median(waits):.2f} s, p95 {cut(waits, 95):.2f} s, worst {max(waits):.2f} s",
    )
    await asyncio.gather(*(page.open("/line") for page in pages))
    board = Page(room)
    await board.get(room.board)
    await board.open("/board/line")
    reports = [asyncio.create_task(page.report(seconds)) for page in pages]
    pushes: list[float] = []
    for _ in range(10):
        await asyncio.sleep(seconds / 12)
        for page in pages:
            page.taken.clear()
        began = time.perf_counter()
        await board.say(**{"is": "send", "step": {"kind": "draft", "key": "x"}, "values": {}})
        while not all(page.taken for page in pages):
            await asyncio.sleep(0.01)
        pushes += [page.taken[0] - began for page in pages]
    await asyncio.gather(*reports)
    row(
        f"{count} on the board, a push to all",
        f"p50 {statistics.median(pushes) * 1e3:.0f} ms, p95 {cut(pushes, 95) * 1e3:.0f} ms, "
        f"worst {max(pushes) * 1e3:.0f} ms",
    )
    moved = await asyncio.gather(*(page.move(seconds) for page in pages[:engine]))
    moves = [wait for each in moved for wait in each]
    row(
        f"{engine} on the room's engine, a move a second",
        f"{len(moves) / seconds:.0f} a second and {sum(page.proofs for page in pages) / seconds:.0f} proofs, "
        f"p50 {statistics.median(moves) * 1e3:.0f} ms, "
        f"p95 {cut(moves, 95) * 1e3:.0f} ms, worst {max(moves) * 1e3:.0f} ms",
    )
    workers = [megabytes(pid) for pid in children(room.process)]
    server = megabytes(room.process)
    each = ", ".join(f"{size:.0f}" for size in workers)
    row("memory (PSS)", f"server {server:.0f} MB, workers {each} MB, in all {server + sum(workers):.0f} MB")


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--students", type=int, default=100)
    parser.add_argument("--engine", type=int, default=30)
    parser.add_argument("--seconds", type=float, default=20.0)
    parser.add_argument("--room-alone", action="store_true", help="without the browser's Python")
    options = parser.parse_args()
    AsyncHTTPClient.configure(tornado.simple_httpclient.SimpleAsyncHTTPClient, max_clients=200, max_body_size=1 << 26)
    more = ("--room-alone",) if options.room_alone else ()
    print("opening the class; the first time its page is built, which takes a minute or more", flush=True)
    with tempfile.TemporaryDirectory() as base:
        with running_room(Path(base), "--students", str(options.students + 5), *more) as room:
            print("| what | measured | load |\n|---|---|---:|")
            asyncio.run(measure(room, options.students, options.engine, options.seconds))


if __name__ == "__main__":
    main()
