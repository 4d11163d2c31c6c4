"""The queue of pages and booklets: pages before booklets, one place for each, limits, and what may be cancelled."""

from __future__ import annotations

import asyncio
import sys
from collections.abc import Callable, Mapping
from pathlib import Path
from typing import Any

import pytest

from kit.room import makings as module
from kit.room.makings import AskedMaking, Makings

STUB = """\
import json, pathlib, sys, time
job = json.loads(sys.stdin.readline())
print(json.dumps({"doing": "print_run"}), flush=True)
name = "booklet.pdf" if job["part"] == "booklet" else "pages-a4.pdf"
while job["setting"].get("ever"):
    time.sleep(0.05)
if job["setting"].get("fails"):
    print(json.dumps({"failed": "no hem"}), flush=True)
    sys.exit(1)
pathlib.Path(job["out"], name).write_bytes(b"x" * job["setting"].get("size", 10))
print(json.dumps({"done": {"files": [name], "who": "W4", "unsound": False}}), flush=True)
"""
Told = list[tuple[int, Mapping[str, Any]]]


@pytest.fixture(autouse=True)
def stub(monkeypatch: pytest.MonkeyPatch) -> None:
    """A making that only writes its file."""
    begin = asyncio.create_subprocess_exec

    async def instead(*command: str, **more: Any) -> Any:
        return await begin(sys.executable, "-I", "-c", STUB, **more)

    monkeypatch.setattr(module.asyncio, "create_subprocess_exec", instead)


def run(tmp_path: Path, ask: Callable[[Makings], None], until: Callable[[Told], bool], at_once: int = 1) -> Told:
    """What students were told until something had happened."""

    async def room() -> Told:
        told: Told = []
        queue = Makings(Path("lesson.ipynb"), Path("engine.json"), tmp_path, at_once)
        queue.told = lambda number, what: told.append((number, what))
        ask(queue)
        queue.start()
        while not until(told):
            await asyncio.sleep(0.02)
        await queue.stop()
        return told

    return asyncio.run(asyncio.wait_for(room(), 120))


def made(told: Told) -> list[tuple[int, tuple[str, ...]]]:
    return [(number, tuple(what["made"]["files"])) for number, what in told if what["state"] == "made"]


def test_pages_of_everybody_come_before_booklets(tmp_path: Path) -> None:
    def ask(queue: Makings) -> None:
        for number in (1, 2, 3):
            queue.want(AskedMaking(number, {}, "a4", True))
        queue.want(AskedMaking(1, {}, "a4", True))  # asked again while it waits: one place

    told = run(tmp_path, ask, lambda told: len(made(told)) == 6)
    both = ("booklet.pdf", "pages-a4.pdf")
    assert made(told) == [(n, ("pages-a4.pdf",)) for n in (1, 2, 3)] + [(n, both) for n in (1, 2, 3)]
    places = [what["place"] for number, what in told if number == 3 and what["state"] == "waiting"]
    assert places[:3] == [2, 2, 1] or places == sorted(places, reverse=True)
    assert (tmp_path / "student-2" / "booklet.pdf").is_file()


def test_what_runs_and_what_waits_can_be_cancelled(tmp_path: Path) -> None:
    queues: list[Makings] = []

    def ask(queue: Makings) -> None:
        queues.append(queue)
        queue.want(AskedMaking(1, {"ever": True}, "a4", True))
        queue.want(AskedMaking(2, {}, "a4", False))

    def until(told: Told) -> bool:
        if any(number == 1 and what["state"] == "doing" for number, what in told):
            queues[0].cancel(1)
        return bool(made(told))

    told = run(tmp_path, ask, until)
    assert (1, {"state": "cancelled"}) in told and made(told) == [(2, ("pages-a4.pdf",))]


def test_who_cancels_may_have_pages_made_again_at_once(tmp_path: Path) -> None:
    """The new making waits until the cancelled one is gone: both would write into one folder."""
    queues: list[Makings] = []

    def ask(queue: Makings) -> None:
        queues.append(queue)
        queue.want(AskedMaking(1, {"ever": True}, "a4", False))

    def until(told: Told) -> bool:
        if told[-1][1]["state"] == "doing" and not any(what["state"] == "cancelled" for _, what in told):
            queues[0].cancel(1)
            assert not queues[0].under(1)
            queues[0].want(AskedMaking(1, {}, "a4", False))
            assert queues[0].under(1)
        return bool(made(told))

    told = run(tmp_path, ask, until, at_once=2)
    states = [what["state"] for _, what in told]
    assert states.count("cancelled") == 1 and states[-1] == "made"
    assert "waiting" in states[states.index("cancelled") :]  # it is told its place


def test_cancelling_is_always_answered(tmp_path: Path) -> None:
    told = run(tmp_path, lambda queue: queue.cancel(1), bool)
    assert told == [(1, {"state": "cancelled"})]


def test_a_making_that_breaks_off_does_not_end_the_queue(tmp_path: Path) -> None:
    """The first one's folder cannot be made, the second's page cannot be told: second and third have theirs made."""
    (tmp_path / "student-1").write_text("no folder")

    async def room() -> Told:
        told: Told = []

        def tell(number: int, what: Mapping[str, Any]) -> None:
            told.append((number, what))
            if number == 2:
                raise UnicodeEncodeError("utf-8", "\ud800", 0, 1, "half a character")

        queue = Makings(Path("lesson.ipynb"), Path("engine.json"), tmp_path, 1)
        queue.told = tell
        for number in (1, 2, 3):
            queue.want(AskedMaking(number, {}, "a4", False))
        queue.start()
        while not made([each for each in told if each[0] == 3]):
            await asyncio.sleep(0.02)
        await queue.stop()
        return told

    told = asyncio.run(asyncio.wait_for(room(), 120))
    assert [what["why"] for number, what in told if number == 1 and what["state"] == "failed"] == [""]
    assert made([each for each in told if each[0] == 2]) == [(2, ("pages-a4.pdf",))]


def test_a_making_that_fails_takes_its_booklet_along_and_leaves_the_files(tmp_path: Path) -> None:
    (tmp_path / "student-1").mkdir()
    (tmp_path / "student-1" / "pages-a4.pdf").write_bytes(b"before")
    told = run(
        tmp_path, lambda q: q.want(AskedMaking(1, {"fails": True}, "a4", True)), lambda t: t[-1][1]["state"] == "failed"
    )
    assert told[-1][1]["why"] == "no hem"
    assert (tmp_path / "student-1" / "pages-a4.pdf").read_bytes() == b"before"


def test_what_takes_too_long_is_ended(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(module, "PATIENCE", 2.0)
    told = run(
        tmp_path, lambda q: q.want(AskedMaking(1, {"ever": True}, "a4", True)), lambda t: t[-1][1]["state"] == "failed"
    )
    assert told[-1][1]["why"] == ""


def test_number_and_size_have_limits(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(module, "_LARGEST", 1000)
    told = run(
        tmp_path,
        lambda q: q.want(AskedMaking(1, {"size": 2000}, "a4", False)),
        lambda t: t[-1][1]["state"] == "refused",
    )
    assert told[-1][1]["why"] == "large" and not list(tmp_path.rglob("*.pdf"))

    def ask(queue: Makings) -> None:
        for _ in range(7):
            queue.want(AskedMaking(1, {}, "a4", False))
            queue.cancel(1)

    told = run(tmp_path, ask, bool)
    states = [what["state"] for _, what in told]
    assert states == ["waiting", "cancelled"] * 6 + ["refused", "cancelled"] and told[-2][1]["why"] == "often"
    monkeypatch.setattr(module, "_LEFT", 1 << 60)
    told = run(tmp_path, lambda q: q.want(AskedMaking(2, {}, "a4", False)), lambda t: bool(t))
    assert told[-1][1] == {"state": "refused", "why": "disk"}
