"""A class that is open, whoever brings its requests: its workers, its queue of makings, its gathering and its gate."""

from __future__ import annotations

import asyncio
import json
import logging
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from kit.booklet.qr import qr_svg
from kit.cores import usable_cores
from kit.errors import KitError
from kit.language import known_language, speaking
from kit.room import said
from kit.room.codes import written
from kit.room.files import Given, given
from kit.room.gate import STRICT, Door, Gate, GuardedPage, Mine, Missing, ShownFile
from kit.room.gathering import TICK, Gathering
from kit.room.lines import BoardLine, StudentLine
from kit.room.makings import Makings
from kit.room.seats import Seats
from kit.room.shown import shown
from kit.room.workers import Workers, command

_ALIVE = 20  # seconds between two questions whether a page is still there
_log = logging.getLogger(__name__)


@dataclass(frozen=True)
class Prepared:
    """What a class is served from (`kit.room.prepare`): its `folder`, why its page is `without` the browser's own
    Python ("" when it has it), and the `home` of what students have made."""

    folder: Path
    without: str
    home: Path

    @property
    def facts(self) -> dict[str, Any]:
        told: dict[str, Any] = json.loads((self.folder / "facts.json").read_text("utf-8"))
        return told

    @property
    def language(self) -> str:
        """The language the class's own pages speak."""
        return known_language(str(self.facts["language"]))


class Running:
    """A class from its opening to its end: `students` at most, `each` of one device or person (0: no limit), `workers`
    that work for pages (0: one for each core, 4 at most)."""

    def __init__(
        self, prepared: Prepared, students: int, each: int = 0, workers: int = 0, tell: Callable[[str], None] = print
    ) -> None:
        self.prepared, self.students = prepared, students
        facts, folder, cores = prepared.facts, prepared.folder, usable_cores()
        lesson = folder / "lesson" / "lesson.ipynb"
        engine = folder / "page" / facts["edition"] / "engine.json"
        self._workers = Workers(command(str(lesson), str(engine)), workers or min(4, cores), tell=tell)
        self._makings = Makings(lesson, engine, prepared.home, max(1, cores // 2))
        self.gathering = Gathering(Seats(students, each), self._workers, self._makings)
        self._ticking: asyncio.Task[None] | None = None

    async def open(self) -> None:
        """Begin. Raises `KitError` for a lesson that cannot be worked; the class is to be closed in any case."""
        why = await self._workers.start()
        if why:
            raise KitError(f"the lesson cannot be worked: {why}", do="Run lessonkit check on it.")
        self._makings.start()
        self._ticking = asyncio.create_task(_tick(self.gathering))

    async def close(self) -> None:
        """End all that was begun."""
        if self._ticking is not None:
            self._ticking.cancel()
        await self._makings.stop()
        await self._workers.stop()

    def application(self, door: Door, link: str) -> Gate:
        """The class behind its `door`. `link` is the address that lets a student in, also as a QR code."""
        prepared, place = self.prepared, link.split("?")[0]
        facts, own = prepared.facts, not prepared.without
        given_out = shown(prepared.folder, facts, own=own, language=prepared.language)
        with speaking(prepared.language):
            code = given(qr_svg(link, place).encode(), ".svg")
        told = {
            "address": place.split("://")[1].rstrip("/"),
            "code": "" if door.enters else written(door.code),
            "students": self.students,
            "own": own,
        }
        return application(door, given_out, {**facts, **told}, {"qr.svg": code})


def application(door: Door, given_out: Any, facts: Mapping[str, Any], board_files: Mapping[str, Given]) -> Gate:
    """The class as an application of tornado, under `door.base`."""
    at = door.base
    return Gate(
        [
            (at, GuardedPage, {"page": given_out.page, "policy": given_out.policy}),
            (f"{at}line", StudentLine),
            (f"{at}mine/([^/]+)", Mine),
            (f"{at}room/(.+)", ShownFile, {"files": given_out.room}),
            (f"{at}board", GuardedPage, {"page": given_out.board, "policy": STRICT}),
            (f"{at}board/line", BoardLine, {"facts": facts}),
            (f"{at}board-files/(.+)", ShownFile, {"files": {**given_out.board_files, **board_files}}),
            (
                f"{at}(edition-[0-9a-f]+/.+)",
                ShownFile,
                {"files": given_out.files, "keep": True, "policy": given_out.policy},
            ),
            (f"{at}(page.webmanifest)", ShownFile, {"files": given_out.files}),
        ],
        door=door,
        log_function=lambda handler: None,  # an address may hold a code
        websocket_max_message_size=said.MOST,
        websocket_ping_interval=_ALIVE,
        websocket_ping_timeout=_ALIVE,
        default_handler_class=Missing,
    )


async def _tick(gathering: Gathering) -> None:
    while True:
        await asyncio.sleep(TICK)
        try:
            gathering.tick()
        except Exception:
            _log.exception("The boards could not be told.")  # the next time they may be
