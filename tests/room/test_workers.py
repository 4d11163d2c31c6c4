"""Warm workers: whose turn it is, what does not end, and that nothing of whoever asked stays."""

from __future__ import annotations

import asyncio
import errno
import json
import os
import signal
import subprocess
import sys
from contextlib import suppress
from pathlib import Path
from typing import Any

import nbformat
import pytest

from kit.room import workers as module
from kit.room.engine import RoomEngine
from kit.room.workers import NoAnswer, TooMany, Workers

ECHO = """\
import json, sys, time
print(json.dumps({"ready": True}), flush=True)
for line in sys.stdin:
    asked = json.loads(line)
    if asked.get("die"):
        sys.exit(1)
    while asked.get("ever"):
        time.sleep(0.05)
    print(json.dumps(asked), flush=True)
"""


SLOW = """\
import json, sys, time
print(json.dumps({"ready": True}), flush=True)
for line in sys.stdin:
    time.sleep(json.loads(line)["for"])
    print("{}", flush=True)
"""


def stub(text: str = ECHO) -> tuple[str, ...]:
    return sys.executable, "-I", "-c", text


def test_turns_go_round_and_drawings_before_proofs() -> None:
    """One who asks much does not keep another waiting: after each answer it is the next one's turn."""

    async def room() -> list[str]:
        workers, order = Workers(stub(), 1), []
        assert await workers.start() == ""

        async def ask(who: str, name: str, slow: bool = False) -> None:
            await workers.ask(who, json.dumps({"name": name}), slow)
            order.append(name)

        asked = [ask("a", f"a{n}") for n in range(3)] + [ask("b", "slow", True), ask("c", "c0"), ask("d", "d0")]
        await asyncio.gather(*asked)
        await workers.stop()
        return order

    assert asyncio.run(room()) == ["a0", "c0", "d0", "a1", "a2", "slow"]


def test_one_may_have_a_few_waiting_and_no_more() -> None:
    async def room() -> int:
        workers = Workers(stub(), 1)
        await workers.start()
        asked = [asyncio.create_task(workers.ask("a", "{}")) for _ in range(30)]
        done = await asyncio.gather(*asked, return_exceptions=True)
        assert await workers.ask("b", '{"name":"b"}') == '{"name": "b"}\n'
        await workers.stop()
        return sum(isinstance(each, TooMany) for each in done)

    assert asyncio.run(room()) == 26


@pytest.mark.parametrize("what", [{"ever": True}, {"die": True}])
def test_what_does_not_end_is_stopped_and_costs_its_own_share(what: dict[str, bool]) -> None:
    async def room() -> None:
        workers = Workers(stub(), 1, patience=1.0)
        await workers.start()
        before = set(workers.processes)
        with pytest.raises(NoAnswer):
            await workers.ask("a", json.dumps(what))
        with pytest.raises(TooMany):  # who asked it waits
            await workers.ask("a", "{}")
        assert await workers.ask("b", "{}") == "{}\n"  # nobody else does
        assert workers.processes and not workers.processes & before
        await workers.stop()
        assert not workers.processes

    asyncio.run(room())


def test_coming_back_does_not_shorten_the_wait_and_good_answers_end_it() -> None:
    async def room() -> None:
        now = [0.0]
        workers = Workers(stub(), 1, patience=1.0, clock=lambda: now[0])
        await workers.start()

        async def refused() -> float:
            """Seconds that who asked what does not end is refused for."""
            with pytest.raises(NoAnswer):
                await workers.ask("a", '{"ever":true}')
            begun = now[0]
            while True:
                try:
                    await workers.ask("a", "{}")
                except TooMany:
                    now[0] += 1.0
                else:
                    return now[0] - begun

        first = await refused()
        workers.drop("a")  # the last page of theirs is closed
        assert first > 0 and await refused() == 2 * first
        now[0] += 61.0
        await workers.ask("a", "{}")
        assert await refused() == first
        with pytest.raises(NoAnswer):
            await workers.ask("a", '{"die":true}')
        workers.forget("a")  # the seat is somebody else's now
        assert await workers.ask("a", "{}") == "{}\n"
        await workers.stop()

    asyncio.run(room())


def test_what_takes_longer_has_more_time() -> None:
    """Slow work is ended too, but not within the time of a drawing."""

    async def room() -> None:
        workers = Workers(stub(SLOW), 1, patience=1.0)
        await workers.start()
        assert await workers.ask("a", '{"for":2}', slow=True) == "{}\n"
        with pytest.raises(NoAnswer):
            await workers.ask("a", '{"for":600}', slow=True)
        await workers.stop()

    asyncio.run(room())


def test_who_comes_after_a_worker_died_is_answered() -> None:
    async def room() -> None:
        workers = Workers(stub(), 1)
        await workers.start()
        (before,) = workers.processes
        os.kill(before, signal.SIGTERM)
        while _lives(before):
            await asyncio.sleep(0.02)
        asked = [asyncio.create_task(workers.ask("a", json.dumps({"n": n}))) for n in range(2)]
        assert await asyncio.gather(*asked) == ['{"n": 0}\n', '{"n": 1}\n']
        assert before not in workers.processes
        await workers.stop()

    asyncio.run(asyncio.wait_for(room(), 120))


def _lives(process: int) -> bool:
    with suppress(ProcessLookupError):
        os.kill(process, 0)  # succeeds until the process was waited for
        return True
    return False


def test_a_worker_is_tried_again_where_the_machine_had_no_room(monkeypatch: pytest.MonkeyPatch) -> None:
    begin, failed = asyncio.create_subprocess_exec, []

    async def instead(*command: str, **more: Any) -> Any:
        if len(failed) == 1:
            failed.append("again")
            raise OSError(errno.EMFILE, os.strerror(errno.EMFILE))
        failed.append("")
        return await begin(*command, **more)

    monkeypatch.setattr(module.asyncio, "create_subprocess_exec", instead)

    async def room() -> list[str]:
        told: list[str] = []
        workers = Workers(stub(), 1, tell=told.append)
        await workers.start()
        with pytest.raises(NoAnswer):
            await workers.ask("a", '{"die":true}')
        assert await workers.ask("b", "{}") == "{}\n"
        await workers.stop()
        return told

    told = asyncio.run(asyncio.wait_for(room(), 120))
    assert len(told) == 1 and os.strerror(errno.EMFILE) in told[0]


def test_a_worker_that_cannot_be_opened_says_why() -> None:
    async def room() -> str:
        workers = Workers(stub("""print('{"failed": "no lesson"}')"""), 1)
        why = await workers.start()
        await workers.stop()
        return why

    assert asyncio.run(room()) == "no lesson"


KEPT = """\
import gc, json, os
from pathlib import Path
from kit.page.opened import without_notebook
without_notebook()
from kit.body.body import Body
from kit.room.engine import RoomEngine
engine = RoomEngine(Path("NOTEBOOK"))
fresh = engine.answer('{"do": "draw"}')
body = {"name": "Kunigunde", "typed": {"bust_girth": "104.2 cm", "waist_girth": "83.1 cm"}}
told = [json.loads(engine.answer(json.dumps({"do": do, "body": body, "values": VALUES})))["ok"]
        for do in ("draw", "prove", "outlines", "body", "write", "mend")]
gc.collect()
left = [one.name for one in gc.get_objects() if isinstance(one, Body) and one.name == "Kunigunde"]
values = [value for value in engine.lesson.values.values() if value in VALUES.values()]
print(json.dumps([told, left, values, engine.answer('{"do": "draw"}') == fresh]))
"""


@pytest.mark.parametrize(
    ("lesson", "slider", "to"),
    [
        ("tideline_wrap_top", "sleeve_length", 233.0),
        ("dune_skirt", "skirt_length", 533.0),
        ("slack_water_trousers", "leg_ease", 33.0),
    ],
)
def test_nothing_of_whoever_asked_stays_in_the_engine(lesson: str, slider: str, to: float, root: Path) -> None:
    """No body of theirs is anywhere in the process when the answer is given; each block is asked in a lesson that
    starts from it."""
    assert left_behind(root / "example_notebooks", f"{lesson}.ipynb", {slider: to}) == [[True] * 6, [], [], True]


@pytest.mark.parametrize(
    ("block", "slider", "to"),
    [
        ("bodice_block", "hip_ease", 133.0),
        ("darted_bodice_block", "bust_ease", 77.0),
        ("skirt_block", "skirt_length", 533.0),
        ("trouser_block", "knee_ease", 133.0),
        ("with_sleeve(darted_bodice_block)", "cap_ease", 23.0),
    ],
)
def test_nothing_stays_of_whoever_drafts_a_block_itself(block: str, slider: str, to: float, tmp_path: Path) -> None:
    """A block's own lesson, drafted step by step; the body is not in the process, whatever the slider was set to."""
    book = nbformat.v4.new_notebook()
    book.cells = [nbformat.v4.new_code_cell(f"from kit import *\n\nlesson = Lesson.of({block})")]
    (tmp_path / "sheet.ipynb").write_text(nbformat.writes(book), encoding="utf-8")
    told, *left = left_behind(tmp_path, "sheet.ipynb", {slider: to})
    assert told[0] and left == [[], [], True]


def left_behind(folder: Path, notebook: str, values: dict[str, float]) -> list[Any]:
    """Which answers were given, what of the body and the values is left, and whether the lesson is as it was."""
    code = KEPT.replace("NOTEBOOK", notebook).replace("VALUES", repr(values))
    ran = subprocess.run([sys.executable, "-c", code], cwd=folder, capture_output=True, text=True, check=True)
    found: list[Any] = json.loads(ran.stdout.splitlines()[-1])
    return found


def test_outlines_are_the_pieces_as_drafted(root: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.chdir(root / "example_notebooks")
    engine = RoomEngine(Path("tideline_wrap_top.ipynb"))
    told = json.loads(engine.answer('{"do": "outlines", "values": {"sleeve_length": 300}}'))
    pattern = engine.pattern({"values": {"sleeve_length": 300}})
    assert [piece["name"] for piece in told["pieces"]] == [piece.name for piece in pattern.pieces]
    for told_piece, piece in zip(told["pieces"], pattern.pieces, strict=True):
        left, _, _, top = piece.outline.bounds()
        xs, ys = zip(*told_piece["points"], strict=True)
        assert min(xs) == pytest.approx(left, abs=0.6) and max(ys) == pytest.approx(top, abs=0.6)
