"""How many students a machine bears: memory of each kernel, and the wait from a slider to its picture.

    python tests/bench/class_room.py [1 5 10 20 30] [--moves 8] [--pause 2.0]

Opens the class copy of the example lesson as `lessonkit serve` does and speaks to it over HTTP and websockets as
pages do, without a browser to paint. Students come in together; then each moves a slider again and again, `pause`
seconds apart and not in step. Told for each number of students: seconds until all pages were there; PSS of a kernel,
the largest RSS, and PSS of all with the server; milliseconds until the picture came; processor time of a move, that of
the kernel with the proof and the exercises that follow, and that of the server. Other work on the machine makes the
waits longer, not the processor time: watch the load.
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
import uuid
from pathlib import Path
from typing import Any

import tornado.simple_httpclient
from tornado.httpclient import AsyncHTTPClient, HTTPRequest
from tornado.websocket import WebSocketClientConnection, websocket_connect

sys.path.insert(0, str(Path(__file__).resolve().parents[1]))
from room import Room, running_room

SLIDER = "sleeve length"
PAGE = 600.0  # seconds a page may take


class Student:
    """A page without a browser."""

    def __init__(self, room: Room) -> None:
        self.room = room
        self.cookies: dict[str, str] = {}
        self.socket: WebSocketClientConnection | None = None
        self.slider = self.picture = self.box = ""
        self.value = 26.0

    async def _get(self, address: str, follow: bool = True) -> Any:
        head = {"Cookie": "; ".join(f"{name}={value}" for name, value in self.cookies.items())}
        asked = HTTPRequest(address, headers=head, follow_redirects=follow, request_timeout=PAGE, connect_timeout=PAGE)
        answer = await AsyncHTTPClient().fetch(asked, raise_error=False)
        for cookie in answer.headers.get_list("Set-Cookie"):
            name, value = cookie.split(";")[0].split("=", 1)
            self.cookies[name] = value
        return answer

    async def enter(self) -> None:
        """Open the page and learn the ids of the slider and the picture."""
        await self._get(self.room.link, follow=False)
        page = await self._get(f"{self.room.address}/")
        text = page.body.decode()
        kernel = re.search(r'"kernelId": "([\w-]+)"', text)
        if page.code != 200 or kernel is None:
            raise RuntimeError(f"no page: {page.code} {text[:300]}")
        address = f"{self.room.address.replace('http', 'ws')}/api/kernels/{kernel[1]}/channels?session_id=bench"
        cookies = "; ".join(f"{name}={value}" for name, value in self.cookies.items())
        self.socket = await websocket_connect(HTTPRequest(address, headers={"Cookie": cookies}))
        control = uuid.uuid4().hex
        opening = {"comm_id": control, "target_name": "jupyter.widget.control", "data": {}}
        await self._send("comm_open", opening, {"version": "1.0.0"})
        await self._send("comm_msg", {"comm_id": control, "data": {"method": "request_states"}})
        while True:
            said = await self._read()
            data = said.get("content", {}).get("data", {})
            if data.get("method") == "update_states":
                break
        for name, model in data["states"].items():
            state = model["state"]
            if model["model_name"] == "FloatSliderModel" and str(state.get("tooltip")).lower().startswith(SLIDER):
                self.slider = name
            if model["model_name"] == "TextModel" and str(state.get("tooltip")).lower().startswith(SLIDER):
                self.box = name
            if "lessonkit-picture" in state.get("_dom_classes", ()):
                self.picture = name
        if not (self.slider and self.picture and self.box):
            raise RuntimeError("the page has no such slider or picture")

    async def _send(self, kind: str, content: dict[str, Any], metadata: dict[str, Any] | None = None) -> None:
        assert self.socket is not None
        header = {"msg_id": uuid.uuid4().hex, "msg_type": kind, "username": "", "session": "bench", "version": "5.3"}
        told = {"header": {**header, "date": ""}, "parent_header": {}, "metadata": metadata or {}, "content": content}
        await self.socket.write_message(json.dumps({**told, "channel": "shell", "buffers": []}))

    async def _read(self) -> dict[str, Any]:
        assert self.socket is not None
        while True:
            said = await self.socket.read_message()
            if said is None:
                raise RuntimeError("the kernel is gone")
            if isinstance(said, str):
                found: dict[str, Any] = json.loads(said)
                return found

    async def move(self) -> float:
        """Seconds from moving the slider until the new picture is there and the box, written after it, shows the
        value: a picture of an earlier move does not count."""
        self.value = round(random.uniform(10, 40), 1)
        drawn, began = False, time.perf_counter()
        update = {"method": "update", "state": {"value": self.value}, "buffer_paths": []}
        await self._send("comm_msg", {"comm_id": self.slider, "data": update})
        while True:
            content = (await self._read()).get("content", {})
            shown = str(content.get("data", {}).get("state", {}).get("value", ""))
            drawn |= content.get("comm_id") == self.picture and "<svg" in shown
            if drawn and content.get("comm_id") == self.box and shown == f"{self.value:g} cm":
                return time.perf_counter() - began

    async def work(self, moves: int, pause: float) -> list[float]:
        await asyncio.sleep(random.uniform(0, pause))
        waits = []
        for _ in range(moves):
            waits.append(await self.move())
            await asyncio.sleep(random.uniform(0.5, 1.5) * pause)
        return waits


def kernels_of(serving: int) -> list[int]:
    """The processes of the kernels that `serving` started."""
    found = []
    for path in Path("/proc").glob("[0-9]*/stat"):
        try:
            parent = int(path.read_text().rsplit(")", 1)[1].split()[1])
            command = (path.parent / "cmdline").read_bytes()
        except (OSError, IndexError):
            continue
        if parent == serving and b"ipykernel" in command:
            found.append(int(path.parent.name))
    return found


def seconds(process: int) -> float:
    """Processor time a process has used."""
    parts = Path(f"/proc/{process}/stat").read_text().rsplit(")", 1)[1].split()
    return (int(parts[11]) + int(parts[12])) / os.sysconf("SC_CLK_TCK")


def megabytes(process: int, what: str = "Pss") -> float:
    text = Path(f"/proc/{process}/smaps_rollup").read_text()
    line = next(line for line in text.splitlines() if line.startswith(f"{what}:"))
    return int(line.split()[1]) / 1024


async def measure(room: Room, count: int, moves: int, pause: float) -> str:
    students = [Student(room) for _ in range(count)]
    began = time.perf_counter()
    await asyncio.gather(*(student.enter() for student in students))
    opened = time.perf_counter() - began
    await asyncio.gather(*(student.move() for student in students))  # warm
    before = {process: seconds(process) for process in (*kernels_of(room.process), room.process)}
    waits = sorted(wait for each in await asyncio.gather(*(s.work(moves, pause) for s in students)) for wait in each)
    await asyncio.sleep(2)  # the proof and the exercises come after the last move
    kernels = kernels_of(room.process)
    spent = sum(seconds(process) - before[process] for process in kernels) / len(waits)
    passed_on = (seconds(room.process) - before[room.process]) / len(waits)
    sizes = [megabytes(kernel) for kernel in kernels]
    resident = [megabytes(kernel, "Rss") for kernel in kernels]
    total = sum(sizes) + megabytes(room.process)
    for student in students:
        assert student.socket is not None
        student.socket.close()
    cuts = statistics.quantiles(waits, n=20)
    return (
        f"| {count:>2} | {opened:5.1f} s | {statistics.median(sizes):4.0f} MB | {max(resident):4.0f} MB "
        f"| {total / 1024:4.2f} GB | {statistics.median(waits) * 1e3:4.0f} ms | {cuts[18] * 1e3:4.0f} ms "
        f"| {waits[-1] * 1e3:5.0f} ms | {spent * 1e3:4.0f} + {passed_on * 1e3:3.0f} ms | {os.getloadavg()[0]:4.1f} |"
    )


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("counts", nargs="*", type=int, default=[1, 5, 10, 20, 30])
    parser.add_argument("--moves", type=int, default=8)
    parser.add_argument("--pause", type=float, default=2.0)
    options = parser.parse_args()
    AsyncHTTPClient.configure(tornado.simple_httpclient.SimpleAsyncHTTPClient, max_clients=100)
    print(
        "| students | all pages there | kernel PSS | largest RSS | in all | p50 | p95 | worst | work of a move | load |"
    )
    print("|---:|---:|---:|---:|---:|---:|---:|---:|---:|---:|")
    for count in options.counts:
        with tempfile.TemporaryDirectory() as base, running_room(Path(base), "--students", str(count)) as room:
            print(asyncio.run(measure(room, count, options.moves, options.pause)), flush=True)


if __name__ == "__main__":
    main()
