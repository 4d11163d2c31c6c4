"""Who is in the class, and what passes between their pages and the board. It knows no web server: lines are callables
that take a message, the workers and the makings are handed in.
"""

from __future__ import annotations

import asyncio
import json
import time
from collections.abc import Callable, Mapping
from contextlib import suppress
from dataclasses import dataclass, field
from typing import Any

from kit.room import said
from kit.room.makings import AskedMaking, Makings
from kit.room.rates import Clock
from kit.room.seats import Seat, Seats
from kit.room.workers import NoAnswer, TooMany, Workers

Line = Callable[[str], None]
"""Says a message (JSON) to one page."""
TICK = 0.1
"""Seconds between two tellings of who is where; a push to the pages does not wait for one."""
_LOOK = 8.0  # seconds a page has to show its draft
_OVER = 60  # drafts over one another at most
_LINES = 4  # pages of one student


@dataclass
class Student:
    """One seat as the class sees it. Forgotten with the seat, and when the class closes."""

    seat: Seat
    name: str = ""
    hand: float = 0.0  # since when, by a clock that nobody sets: whose is up longest comes first
    may_look: bool = False
    report: said.Report = field(default_factory=said.Report)
    lines: list[Line] = field(default_factory=list)

    def row(self) -> dict[str, Any]:
        """What the board shows of it."""
        return {
            "number": self.seat.number,
            "name": self.name,
            "here": bool(self.lines),
            "hand": self.hand,
            "may_look": self.may_look,
            "step": self.report.step,
            "at": self.report.number,
            "steps": self.report.steps,
            "solved": list(self.report.solved),
            "errors": self.report.errors,
            "warnings": self.report.warnings,
            "engine": self.report.engine,
        }


def message(what: str, /, **told: Any) -> str:
    """A message as JSON, in ASCII: what a page said may hold half a character, which no line can carry otherwise."""
    return json.dumps({"is": what, **told}, separators=(",", ":"))


class Gathering:
    """The class. `seats` are those let in; `workers` work what a page cannot, `makings` make pages and booklets."""

    def __init__(self, seats: Seats, workers: Workers, makings: Makings, clock: Clock = time.monotonic) -> None:
        self.seats, self.workers, self.makings, self._clock = seats, workers, makings, clock
        self.students: dict[str, Student] = {}
        self.boards: list[Line] = []
        self.at: Mapping[str, Any] | None = None
        self.following = False
        self._changed: set[str] = set()
        self._gone: list[int] = []
        self._looks: dict[int, tuple[str, asyncio.Future[Mapping[str, Any] | None]]] = {}
        self._number = 0
        self._asking: dict[Line, asyncio.Task[Any]] = {}
        makings.told = self._making

    # ---- coming and going ---------------------------------------------------------------------------------

    def student(self, seat: Seat) -> Student:
        """The student of that seat."""
        if seat.token not in self.students:
            self.students[seat.token] = Student(seat)
        return self.students[seat.token]

    def arrive(self, seat: Seat, line: Line) -> bool:
        """A page opens its line; False when that student has too many open."""
        student = self.student(seat)
        if len(student.lines) >= _LINES:
            return False
        student.lines.append(line)
        seat.lines, seat.used = len(student.lines), True
        self.seats.touch(seat)
        self._changed.add(seat.token)
        follow = {"on": self.following, "step": self.at} if self.following else {"on": False}
        line(
            message(
                "welcome",
                number=seat.number,
                name=student.name,
                hand=bool(student.hand),
                may_look=student.may_look,
                follow=follow,
                made=self.makings.made_of(seat.number),
                making=self.makings.under(seat.number),
            )
        )
        return True

    def leave(self, seat: Seat, line: Line) -> None:
        """A page's line is closed."""
        student = self.students.get(seat.token)
        if student is None or line not in student.lines:
            return
        student.lines.remove(line)
        seat.lines = len(student.lines)
        self.seats.touch(seat)
        self._changed.add(seat.token)
        if not student.lines:
            self.workers.drop(f"student {seat.number}")

    def forget_lost(self) -> None:
        """Students whose seat was given on are forgotten."""
        for token, student in tuple(self.students.items()):
            if self.seats.find(token) is None:
                self.let_go(student)

    def let_go(self, student: Student) -> None:
        """The student's seat is free, and nothing of them is kept."""
        for line in tuple(student.lines):
            line(message("let_go"))
        self.seats.leave(student.seat)
        self.students.pop(student.seat.token, None)
        self._changed.discard(student.seat.token)
        self._gone.append(student.seat.number)
        for what in ("student", "look", "over"):
            self.workers.forget(f"{what} {student.seat.number}")
        self.makings.forget(student.seat.number)

    def board_arrives(self, line: Line, facts: Mapping[str, Any]) -> None:
        """A board opens its line."""
        self.boards.append(line)
        rows = [student.row() for student in self.students.values()]
        line(message("class", facts=facts, people=rows, following=self.following, at=self.at))

    def board_leaves(self, line: Line) -> None:
        """A board's line is closed; with the last one, nobody is led any more."""
        if line in self.boards:
            self.boards.remove(line)
        if not self.boards and self.following:
            self._follow(False)

    # ---- what a page says ---------------------------------------------------------------------------------

    async def heard(self, seat: Seat, line: Line, told: said.Said) -> None:
        """What a student's page says."""
        student = self.student(seat)
        self.seats.touch(seat)
        match told:
            case said.Report():
                student.report = told
            case said.Named(name):
                student.name = name
            case said.Hand(up):
                student.hand = (student.hand or self._clock()) if up else 0.0
                self._to(student, message("hand", up=up))
            case said.MayLook(yes):
                student.may_look = yes
            case said.Draft(number, setting):
                who, waits = self._looks.get(number, ("", None))
                if who == seat.token and waits is not None and not waits.done():
                    waits.set_result(setting)
                return
            case said.Ask():
                await self._answer_last(f"student {seat.number}", line, told)
                return
            case said.MakePages():
                self.makings.want(AskedMaking(seat.number, dict(told.setting), told.paper, told.booklet))
                return
            case said.Cancel():
                self.makings.cancel(seat.number)
                return
        self._changed.add(seat.token)

    async def _answer_last(self, who: str, line: Line, told: said.Ask) -> None:
        """A page waits for one answer: what it asked before, and has not been told, need not be worked any more."""
        before, own = self._asking.get(line), asyncio.current_task()
        assert own is not None
        if before is not None:
            before.cancel()
        self._asking[line] = own
        try:
            await self._answer(who, line, told)
        finally:
            if self._asking.get(line) is own:
                del self._asking[line]

    async def _answer(self, who: str, line: Line, told: said.Ask) -> None:
        try:
            line(message("answer", id=told.number, text=await self.workers.ask(who, told.text, told.slow)))
        except TooMany:
            line(message("answer", id=told.number, why="too_many"))
        except NoAnswer:
            line(message("answer", id=told.number, why="stopped"))

    def _making(self, number: int, told: Mapping[str, Any]) -> None:
        for student in self.students.values():
            if student.seat.number == number:
                self._to(student, message("making", **told))

    def _to(self, student: Student, text: str) -> None:
        for line in tuple(student.lines):
            line(text)

    def _to_all(self, text: str) -> None:
        for student in self.students.values():
            self._to(student, text)

    # ---- what the board says ------------------------------------------------------------------------------

    async def board_heard(self, line: Line, told: said.BoardSaid) -> None:
        """What the teacher's board says."""
        match told:
            case said.Send(step, values, title):
                self._to_all(message("take", step=step, values=dict(values), title=title))
                line(message("sent", count=sum(bool(student.lines) for student in self.students.values())))
            case said.Follow(on):
                self._follow(on)
            case said.At(step):
                self.at = step
                if self.following:
                    self._to_all(message("follow", on=True, step=step))
            case said.LookAtDraft(number):
                await self._look(line, number)
            case said.Over():
                await self._over(line)
            case said.Lower(number):
                student = self._numbered(number)
                if student is not None:
                    student.hand = 0.0
                    self._to(student, message("hand", up=False))
                    self._changed.add(student.seat.token)
            case said.LetGo(number):
                student = self._numbered(number)
                if student is not None:
                    self.let_go(student)
            case said.Ask():
                await self._answer("board", line, told)

    def _follow(self, on: bool) -> None:
        self.following = on
        self._to_all(message("follow", on=on, step=self.at if on else None))
        for board in tuple(self.boards):
            board(message("following", on=on))

    def _numbered(self, number: int) -> Student | None:
        return next((each for each in self.students.values() if each.seat.number == number), None)

    async def _shown(self, student: Student) -> Mapping[str, Any] | None:
        """The setting the student's page shows just now; None when it does not, or may not be looked at."""
        if not student.may_look or not student.lines:
            return None
        self._number += 1
        number = self._number
        waits: asyncio.Future[Mapping[str, Any] | None] = asyncio.get_running_loop().create_future()
        self._looks[number] = student.seat.token, waits
        try:
            student.lines[-1](message("look", **{"for": number}))
            return await asyncio.wait_for(waits, _LOOK)
        except TimeoutError:
            return None
        finally:
            self._looks.pop(number, None)

    async def _look(self, line: Line, number: int) -> None:
        student = self._numbered(number)
        setting = await self._shown(student) if student is not None else None
        drawn = await self._worked(f"look {number}", setting, "draw") if setting is not None else None
        # what was allowed when it was asked for may have been taken back since
        if student is None or drawn is None or not student.may_look:
            line(message("looked", number=number, drawn=None))
            return
        kept = ("svg", "alt", "title", "label", "words", "sliders", "ok", "said")
        line(message("looked", number=number, drawn={key: drawn[key] for key in kept if key in drawn}))

    async def _over(self, line: Line) -> None:
        """The outlines of all who allow it, without their names; they come one by one."""
        asked = [student for student in self.students.values() if student.may_look and student.lines][:_OVER]
        line(message("over", count=len(asked)))

        async def one(student: Student) -> None:
            setting = await self._shown(student)
            told = await self._worked(f"over {student.seat.number}", setting, "outlines") if setting else None
            if student.may_look and told is not None and told.get("ok"):
                line(message("outlines", pieces=told["pieces"]))
            else:
                line(message("outlines", pieces=[]))

        await asyncio.gather(*(one(student) for student in asked))

    async def _worked(self, who: str, setting: Mapping[str, Any], what: str) -> dict[str, Any] | None:
        with suppress(TooMany, NoAnswer, ValueError):
            answer: dict[str, Any] = json.loads(await self.workers.ask(who, said.one_line({**setting, "do": what})))
            return answer
        return None

    # ---- telling the boards -------------------------------------------------------------------------------

    def tick(self) -> None:
        """Tell the boards what has changed."""
        self.forget_lost()
        if not self._changed and not self._gone:
            return
        rows = [self.students[token].row() for token in self._changed if token in self.students]
        gone, self._gone = self._gone, []
        self._changed.clear()
        text = message("people", rows=rows, gone=gone)
        for board in tuple(self.boards):
            board(text)
