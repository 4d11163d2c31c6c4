"""A class as an extension of a Jupyter server: published under that server's address, entered with its log-in.

    jupyter server --ServerApp.jpserver_extensions="{'kit.room.extension': True}" --ClassRoom.notebook=...

Who may log in to a Jupyter server may run code in it as whoever started it. So the class opens only in a server that
offers nothing else: no kernels, files, terminals or other extensions. `kit.room.hub` is such a server, for JupyterHub.
"""

from __future__ import annotations

import contextlib
import os
from pathlib import Path
from typing import Any
from urllib.parse import urlsplit

from jupyter_server.base.handlers import JupyterHandler
from jupyter_server.extension.application import ExtensionApp
from tornado.web import Application, HTTPError, authenticated
from traitlets import Bool, Int, List, Unicode, default

from kit.errors import KitError
from kit.language import say, speaking
from kit.room.gate import Door, ask_page
from kit.room.running import Prepared, Running
from kit.room.seats import NoSeat
from kit.room.server import Options, class_copy, home_in, prepare

HARMLESS = frozenset(("api", "auth", "security"))
"""Services of a Jupyter server that run nothing and show no file."""
_OURS = frozenset(("kit.room.extension", "kit.room.hub"))
_PER_PERSON = 3  # seats: a telephone, a tablet and the room's computer
_SESSION = "jupyterhub-session-id"  # the hub gives a new one to whoever logs out and in


class ClassRoom(ExtensionApp):
    """The extension. A class copy that cannot be served ends the server with a sentence."""

    name = "lessonkit-class"
    load_other_extensions = False

    notebook = Unicode(help="The class copy, as lessonkit class-copy made it.").tag(config=True)
    students = Int(30, help="At most so many at once.").tag(config=True)
    address = Unicode(help="The address people type for this server, such as https://hub.school.example/.").tag(
        config=True
    )
    teachers = List(Unicode(), help="Who may see the board, by the names they log in with.").tag(config=True)
    keep = Unicode(help="Folder that keeps what students make; removed at the end when left out.").tag(config=True)
    room_alone = Bool(False, help="This machine works the lesson for every page.").tag(config=True)
    workers = Int(0, help="Processes that do so; 0: one for each core, 4 at most.").tag(config=True)

    running: Running | None = None

    @default("address")
    def _public(self) -> str:
        return os.environ.get("JUPYTERHUB_PUBLIC_URL", "")

    @default("teachers")
    def _owner(self) -> list[str]:
        return [name for name in [os.environ.get("JUPYTERHUB_USER", "")] if name]

    def initialize_handlers(self) -> None:
        """Open the class and put it into the server."""
        with contextlib.ExitStack() as stack:
            try:
                self._alone()
                self._open(stack)
            except KitError as error:
                self.log.critical("%s", error)
                self.exit(1)
            except Exception:  # a server without its class, which Jupyter would go on with, is of no use to anybody
                self.log.exception("The class could not be opened.")
                self.exit(1)
            self._ends = stack.pop_all()

    def _alone(self) -> None:
        """Whether this server offers nothing that a student could run."""
        app = self.serverapp
        assert app is not None
        more = sorted(set(app.default_services) - HARMLESS)
        others = sorted(name for name, on in app.jpserver_extensions.items() if on and name not in _OURS)
        if more or others:
            raise KitError(
                f"this Jupyter server also offers {', '.join([*more, *others])}; students could run code in it.",
                do="Start the class in a server of its own: python -m kit.room.hub.",
            )

    def _open(self, stack: contextlib.ExitStack) -> None:
        app, place = self.serverapp, urlsplit(self.address)
        assert app is not None
        if place.scheme not in ("http", "https") or not place.netloc:
            raise KitError(
                f"'{self.address}' is no address." if self.address else "the server does not know its address.",
                where="ClassRoom.address",
                do="Write the one that people type, with https://.",
            )
        if not self.teachers:
            raise KitError("nobody may see the board.", where="ClassRoom.teachers", do="Name the teacher.")
        title, lesson = class_copy(Path(self.notebook))
        made = home_in(Path(self.keep) if self.keep else None, stack)
        folder, without = prepare(lesson, Options(room_alone=self.room_alone), self.log.info)
        prepared = Prepared(folder, without, made)
        self.running = running = Running(prepared, self.students, 0, self.workers, self.log.warning)
        app.io_loop.run_sync(running.open)
        base = f"{app.base_url}room/"
        self.door = Door(
            running.gathering,
            frozenset({place.netloc.lower()}),
            place.port or (443 if place.scheme == "https" else 80),
            prepared.language,
            place.scheme == "https",
            base,
            enters=f"{app.base_url}room-in",
            session=_SESSION,
        )
        gate = running.application(self.door, f"{place.scheme}://{place.netloc}{base}")
        # past Jupyter's own list, which takes handlers alone: the class has its gate before each of its addresses
        Application.add_handlers(app.web_app, ".*$", [(f"{base}.*", gate)])
        self.handlers.append((r"/room-in", Enter, {"room": self}))
        self.log.info("%s is open to the class at %s://%s%s", title, place.scheme, place.netloc, base)

    async def stop_extension(self) -> None:
        """The class ends with the server."""
        if self.running is not None:
            await self.running.close()
            self._ends.close()


class Enter(JupyterHandler):
    """Whoever has logged in gets a seat, or the board where they are a teacher."""

    def initialize(self, room: ClassRoom) -> None:
        self.room = room

    @authenticated
    def get(self) -> None:
        door, who = self.room.door, str(self.current_user.username)
        wanted = "board" if who in self.room.teachers else "page"
        wanted = next((each for each in ("page", "board") if each in self.request.query_arguments), wanted)
        session = door.session_of(self.request)
        if not session or (wanted == "board" and who not in self.room.teachers):
            raise HTTPError(403)
        if wanted == "board":
            self._remember(door.board_cookie, door.new_board(), session)
            self.redirect(f"{door.base}board")
            return
        seat, seats = door.seat(self.request), door.gathering.seats
        if seat is None or seat.device != who:
            door.gathering.forget_lost()
            own = sorted((each for each in seats if each.device == who), key=lambda each: (each.lines > 0, each.seen))
            for old in own[: len(own) - _PER_PERSON + 1]:  # it is the same person: their newest browser counts
                door.gathering.let_go(door.gathering.student(old))
            taken = seats.take(who)
            if isinstance(taken, NoSeat):
                self._refuse()
                return
            self._remember(door.seat_cookie, taken.token, session)
        self.redirect(door.base)

    def _remember(self, name: str, token: str, session: str) -> None:
        door = self.room.door
        door.sessions[token] = session
        self.set_cookie(name, token, httponly=True, samesite="Lax", path=door.base, secure=door.encrypted)

    def _refuse(self) -> None:
        language = self.room.door.language
        with speaking(language):
            text = say("class_copy.room_full", count=self.room.door.gathering.seats.limit)
            self.set_status(503)
            self.finish(ask_page(text, "", "", language, form=False))


def _jupyter_server_extension_points() -> list[dict[str, Any]]:
    """As Jupyter server finds it."""
    return [{"module": "kit.room.extension", "app": ClassRoom}]
