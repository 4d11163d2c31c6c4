"""What passes between pages and board: who is here, pushes, going along, drafts that are allowed, and forgetting."""

from __future__ import annotations

import asyncio
import json
from collections.abc import Awaitable, Callable
from pathlib import Path
from typing import Any

from kit.room import said
from kit.room.gathering import Gathering, message
from kit.room.makings import Makings
from kit.room.seats import Seat, Seats


class Heard:
    """A page that notes what it is told."""

    def __init__(self) -> None:
        self.told: list[dict[str, Any]] = []

    def __call__(self, text: str) -> None:
        self.told.append(json.loads(text))

    def of(self, kind: str) -> list[dict[str, Any]]:
        return [each for each in self.told if each["is"] == kind]


class Engine:
    """Workers that answer at once, and note what they were asked."""

    def __init__(self) -> None:
        self.asked: list[tuple[str, dict[str, Any]]] = []

    async def ask(self, who: str, text: str, slow: bool = False) -> str:
        asked = json.loads(text)
        self.asked.append((who, asked))
        return json.dumps({"ok": True, "svg": "<svg/>", "pieces": [asked["values"]], "secret": 1, "sliders": []})

    def forget(self, who: str) -> None: ...

    def drop(self, who: str) -> None: ...


Class = tuple[Gathering, Engine, list[Seat], list[Heard], Heard]


def run(tmp_path: Path, work: Callable[[Class], Awaitable[None]], count: int = 2) -> None:
    """A class with `count` students whose pages are open, and a board."""

    async def room() -> None:
        engine, seats = Engine(), Seats(10)
        gathering = Gathering(seats, engine, Makings(Path("a"), Path("b"), tmp_path, 1))  # type: ignore[arg-type]
        taken = [seats.take("device") for _ in range(count)]
        lines, board = [Heard() for _ in taken], Heard()
        gathering.board_arrives(board, {"title": "Top"})
        students = [seat for seat in taken if isinstance(seat, Seat)]
        for seat, line in zip(students, lines, strict=True):
            assert gathering.arrive(seat, line)
        await work((gathering, engine, students, lines, board))

    asyncio.run(room())


def test_the_board_hears_where_everybody_is(tmp_path: Path) -> None:
    async def work(room: Class) -> None:
        gathering, _, seats, lines, board = room
        await gathering.heard(seats[0], lines[0], said.Report("draft:hem", 2, 9, ("a",), 0, 1, "own"))
        await gathering.heard(seats[0], lines[0], said.Named("Ines"))
        await gathering.heard(seats[1], lines[1], said.Hand(True))
        gathering.tick()
        rows = {row["number"]: row for row in board.of("people")[-1]["rows"]}
        assert (rows[1]["name"], rows[1]["step"], rows[1]["solved"], rows[1]["warnings"]) == (
            "Ines",
            "draft:hem",
            ["a"],
            1,
        )
        assert rows[2]["hand"] > 0 and rows[2]["name"] == ""
        assert all(seat.token not in json.dumps(board.told) for seat in seats)
        said_before = len(board.told)
        gathering.tick()
        assert len(board.told) == said_before  # nothing new, nothing said
        await gathering.board_heard(board, said.Lower(2))
        assert lines[1].of("hand")[-1] == {"is": "hand", "up": False}

    run(tmp_path, work)


def test_what_is_sent_reaches_all_and_pages_go_along_until_the_board_is_gone(tmp_path: Path) -> None:
    async def work(room: Class) -> None:
        gathering, _, _, lines, board = room
        step = {"kind": "draft", "key": "hem", "picture": 1}
        await gathering.board_heard(board, said.Send(step, {"a": 10.0}, "Long"))
        for line in lines:
            assert line.of("take") == [{"is": "take", "step": step, "values": {"a": 10.0}, "title": "Long"}]
        assert board.of("sent") == [{"is": "sent", "count": 2}]
        await gathering.board_heard(board, said.At(step))
        assert not lines[0].of("follow")  # nobody is led yet
        await gathering.board_heard(board, said.Follow(True))
        assert lines[0].of("follow")[-1] == {"is": "follow", "on": True, "step": step}
        late = gathering.seats.take("device")
        assert isinstance(late, Seat)
        line = Heard()
        gathering.arrive(late, line)
        assert line.of("welcome")[0]["follow"] == {"on": True, "step": step}
        gathering.board_leaves(board)
        assert line.of("follow")[-1]["on"] is False

    run(tmp_path, work)


def test_a_draft_is_looked_at_only_while_it_is_allowed(tmp_path: Path) -> None:
    async def work(room: Class) -> None:
        gathering, engine, seats, lines, board = room
        await gathering.board_heard(board, said.LookAtDraft(1))
        assert not lines[0].of("look") and board.of("looked")[-1]["drawn"] is None  # the page is not even asked
        await gathering.heard(seats[0], lines[0], said.MayLook(True))

        async def look(setting: dict[str, Any] | None, by: int = 0) -> Any:
            looking = asyncio.create_task(gathering.board_heard(board, said.LookAtDraft(1)))
            while not lines[0].of("look"):
                await asyncio.sleep(0.01)
            number = lines[0].told.pop()["for"]
            await gathering.heard(seats[by], lines[by], said.Draft(number, {"values": {"x": 666}} if by else setting))
            if by:  # another page cannot answer in its place
                assert not looking.done()
                await gathering.heard(seats[0], lines[0], said.Draft(number, setting))
            await looking
            return board.of("looked")[-1]["drawn"]

        shown = await look({"values": {"a": 1.0}})
        assert shown["svg"] == "<svg/>" and "secret" not in shown
        assert engine.asked[-1] == ("look 1", {"values": {"a": 1.0}, "do": "draw"})
        assert await look(None) is None
        await look({"values": {"a": 2.0}}, by=1)
        assert engine.asked[-1][1]["values"] == {"a": 2.0}
        await gathering.heard(seats[0], lines[0], said.MayLook(False))
        asked = len(engine.asked)
        await gathering.board_heard(board, said.Over())
        assert board.of("over")[-1]["count"] == 0 and len(engine.asked) == asked

    run(tmp_path, work)


def test_whose_seat_is_freed_is_forgotten(tmp_path: Path) -> None:
    async def work(room: Class) -> None:
        gathering, _, seats, lines, board = room
        await gathering.heard(seats[0], lines[0], said.Named("Ines"))
        await gathering.board_heard(board, said.LetGo(1))
        gathering.tick()
        assert board.of("people")[-1]["gone"] == [1]
        assert lines[0].of("let_go") and gathering.seats.find(seats[0].token) is None
        assert "Ines" not in repr(vars(gathering))
        gathering.leave(seats[0], lines[0])  # its line closes afterwards
        assert gathering.seats.find(seats[1].token) is seats[1]

    run(tmp_path, work)


def test_a_page_that_comes_back_hears_whether_its_pages_are_under_way(tmp_path: Path) -> None:
    async def work(room: Class) -> None:
        gathering, _, seats, lines, _ = room
        assert lines[0].of("welcome")[0]["making"] is False
        await gathering.heard(seats[0], lines[0], said.MakePages({}, "a4", True))
        gathering.leave(seats[0], lines[0])
        back = Heard()
        gathering.arrive(seats[0], back)
        assert back.of("welcome")[0]["making"] is True
        await gathering.heard(seats[0], back, said.Cancel())
        gathering.leave(seats[0], back)
        gathering.arrive(seats[0], back)
        assert back.of("welcome")[-1]["making"] is False

    run(tmp_path, work)


def test_what_a_page_asks_takes_the_place_of_what_it_asked_before(tmp_path: Path) -> None:
    """The answer to the question before is not told any more; another page's is."""

    async def work(room: Class) -> None:
        gathering, engine, seats, lines, _ = room
        begun, go = [], asyncio.Event()

        async def ask(who: str, text: str, slow: bool = False) -> str:
            begun.append(text)
            await go.wait()
            return text

        engine.ask = ask  # type: ignore[method-assign]
        first = asyncio.create_task(gathering.heard(seats[0], lines[0], said.Ask(1, "proof", True)))
        other = asyncio.create_task(gathering.heard(seats[1], lines[1], said.Ask(1, "other", True)))
        await asyncio.sleep(0)
        second = asyncio.create_task(gathering.heard(seats[0], lines[0], said.Ask(2, "draw", False)))
        await asyncio.sleep(0)
        go.set()
        await asyncio.gather(first, other, second, return_exceptions=True)
        assert begun == ["proof", "other", "draw"]
        assert first.cancelled() and not second.cancelled()
        assert [(each["id"], each["text"]) for each in lines[0].of("answer")] == [(2, "draw")]
        assert [each["text"] for each in lines[1].of("answer")] == ["other"]

    run(tmp_path, work)


def test_a_message_can_be_sent_whatever_stands_in_it() -> None:
    text = message("making", why="\ud800 \u00e9")
    assert json.loads(text.encode("utf-8"))["why"] == "\ud800 \u00e9"


def test_one_student_has_a_few_pages_open_at_most(tmp_path: Path) -> None:
    async def work(room: Class) -> None:
        gathering, _, seats, _, _ = room
        assert [gathering.arrive(seats[0], Heard()) for _ in range(5)] == [True] * 3 + [False] * 2

    run(tmp_path, work, 1)
