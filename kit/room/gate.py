"""The gate before every address of a class.

Without a code nothing answers but the page that asks for it. What a request says of itself is looked at before anything
is done, in this order: is it called by a name of ours (Host), does it bring a body (none is ever read), does it bring
the cookie of a seat or of the board of this very class. A cookie is a random token that means something as long as the
class runs, and nothing elsewhere.
"""

from __future__ import annotations

import re
import secrets
from collections.abc import Mapping
from dataclasses import dataclass, field
from html import escape
from typing import Any

import tornado.web
from tornado.httputil import HTTPServerRequest
from tornado.log import app_log

from kit.language import say, speaking
from kit.room.codes import new_code, same
from kit.room.files import Given
from kit.room.gathering import Gathering
from kit.room.rates import Buckets
from kit.room.seats import NoSeat, Seat

_TOKEN = re.compile(r"[A-Za-z0-9_-]{22}\Z")
_WRONG = (1 / 6, 10.0)  # wrong codes of one device: ten at once, then one in six seconds
_BOARDS = 8
_PIECE = 1 << 18  # bytes written at once, so that what a slow line holds up is little
STRICT = (
    "default-src 'none'; script-src 'self'; style-src 'self' 'unsafe-inline'; img-src 'self' data:; "
    "connect-src 'self' {lines}; base-uri 'none'; form-action 'self'; frame-ancestors 'none'"
)
_MINE = re.compile(r"(?:booklet|pages-[a-z0-9-]+|sheet-[a-z0-9-]+|roll-[a-z0-9-]+)\.pdf\Z")


@dataclass
class Door:
    """What the gate knows: the `code` of the class and the `teacher`'s, the names it is called by (`hosts`), the
    `port` that its cookies carry, whether the line is `encrypted`, the path it is published under (`base`, with a
    slash at both ends) and the language its own pages speak. Where somebody else knows who people are, `enters` is the
    address at which they log in ("?page" or "?board" for what was asked) and no code opens anything; a seat or board
    is then good as long as the browser brings the same cookie `session` as when it came in."""

    gathering: Gathering
    hosts: frozenset[str]
    port: int
    language: str = "en"
    encrypted: bool = False
    base: str = "/"
    code: str = field(default_factory=new_code)
    teacher: str = field(default_factory=new_code)
    wrong: Buckets = field(default_factory=lambda: Buckets(*_WRONG))
    boards: list[str] = field(default_factory=list)
    enters: str = ""
    session: str = ""
    sessions: dict[str, str] = field(default_factory=dict)

    @property
    def seat_cookie(self) -> str:
        return f"lessonkit-class-{self.port}"

    @property
    def board_cookie(self) -> str:
        return f"lessonkit-board-{self.port}"

    def seat(self, request: HTTPServerRequest) -> Seat | None:
        """The seat whose token the browser brings."""
        brought = request.cookies.get(self.seat_cookie)
        if brought is None or not _TOKEN.match(brought.value) or not self._same_session(request, brought.value):
            return None
        return self.gathering.seats.find(brought.value)

    def is_teacher(self, request: HTTPServerRequest) -> bool:
        """Whether the browser brings the token of a board."""
        brought = request.cookies.get(self.board_cookie)
        if brought is None or not _TOKEN.match(brought.value) or not self._same_session(request, brought.value):
            return False
        return any(secrets.compare_digest(brought.value, token) for token in self.boards)

    def session_of(self, request: HTTPServerRequest) -> str:
        """What tells the browser's log-in from any other; "" where the class's own codes let people in."""
        brought = request.cookies.get(self.session) if self.session else None
        return brought.value if brought else ""

    def _same_session(self, request: HTTPServerRequest, token: str) -> bool:
        if not self.session:
            return True
        known, brought = self.sessions.get(token, ""), self.session_of(request)
        return bool(known) and secrets.compare_digest(known.encode(), brought.encode())

    def new_board(self) -> str:
        """A token for a board; the oldest of many opens nothing any more."""
        self.boards = [*self.boards, secrets.token_urlsafe(16)][-_BOARDS:]
        return self.boards[-1]


class Gate(tornado.web.Application):
    """Lets a request through to what it may reach."""

    def find_handler(self, request: HTTPServerRequest, **kwargs: Any) -> Any:
        door: Door = self.settings["door"]
        if request.host.lower() not in door.hosts:
            return self.get_handler_delegate(request, TurnedAway, {"status": 421})
        if request.headers.get("Content-Length", "0").strip() != "0" or "Transfer-Encoding" in request.headers:
            return self.get_handler_delegate(request, TurnedAway, {"status": 413 if _known(door, request) else 403})
        inside = request.path.removeprefix(door.base)
        if inside.split("/", 1)[0] in ("board", "board-files"):
            if not door.is_teacher(request):
                return self.get_handler_delegate(request, AskTeacher)
        elif door.seat(request) is None:
            return self.get_handler_delegate(request, AskCode)
        return super().find_handler(request, **kwargs)


def _known(door: Door, request: HTTPServerRequest) -> bool:
    return door.seat(request) is not None or door.is_teacher(request)


class Plain(tornado.web.RequestHandler):
    """What all answers share."""

    @property
    def door(self) -> Door:
        door: Door = self.settings["door"]
        return door

    def set_default_headers(self) -> None:
        self.clear_header("Server")
        self.set_header("X-Content-Type-Options", "nosniff")
        self.set_header("X-Frame-Options", "DENY")
        self.set_header("Referrer-Policy", "no-referrer")
        self.set_header("Cache-Control", "no-store")
        self.set_header("Cross-Origin-Resource-Policy", "same-origin")
        self.set_header("Content-Security-Policy", STRICT.format(lines=""))

    def write_error(self, status_code: int, **kwargs: Any) -> None:
        self.finish()

    def log_exception(self, kind: Any, value: Any, trace: Any) -> None:
        """What went wrong, without the address: a code may stand in it."""
        if not isinstance(value, tornado.web.HTTPError):
            app_log.error("%s %s", self.request.method, self.request.path, exc_info=(kind, value, trace))

    def lines(self) -> str:
        """The addresses of lines to this very class, for a page's Content-Security-Policy; the host was checked."""
        return f"{'wss' if self.door.encrypted else 'ws'}://{self.request.host}"

    def remember(self, name: str, token: str) -> None:
        """Put a token into the browser's cookie, for this class's path alone and until the browser is closed."""
        self.set_cookie(name, token, httponly=True, samesite="Lax", path=self.door.base, secure=self.door.encrypted)

    async def hand_out(self, given: Given, keep: bool, headers: Mapping[str, str] | None = None) -> None:
        """Send a file in pieces, each when the one before it is on its way."""
        self.set_header("Content-Type", given.kind)
        self.set_header("ETag", given.tag)
        self.set_header("Cache-Control", "private, max-age=604800, immutable" if keep else "private, no-cache")
        for name, value in (headers or {}).items():
            self.set_header(name, value)
        if self.request.headers.get("If-None-Match") == given.tag:
            self.set_status(304)
            self.finish()
            return
        if given.packed:
            self.set_header("Content-Encoding", "gzip")
        self.set_header("Content-Length", str(len(given.data)))
        if self.request.method != "HEAD":
            view = memoryview(given.data)
            for start in range(0, len(view), _PIECE):
                self.write(bytes(view[start : start + _PIECE]))
                await self.flush()
        self.finish()


@tornado.web.stream_request_body
class TurnedAway(Plain):
    """Nothing is read, nothing is said, and the line is closed."""

    def initialize(self, status: int) -> None:
        self._refusal = status

    def prepare(self) -> None:
        self.set_status(self._refusal)
        self.set_header("Connection", "close")
        self.finish()

    def data_received(self, chunk: bytes) -> None:
        return


class AskCode(Plain):
    """All that answers without the class code: the page that asks for it."""

    asks, refuses, asked = "class_copy.code_ask", "class_copy.code_wrong", "?page"

    @property
    def place(self) -> str:
        """The one path it answers at."""
        return self.door.base

    @property
    def code(self) -> str:
        return self.door.code

    def prepare(self) -> None:
        if self.request.method != "GET" or self.request.path != self.place:
            self.set_status(403)
            self.finish()
            return
        if self.door.enters:
            self.redirect(f"{self.door.enters}{self.asked}")
            return
        typed, device = self.get_query_argument("token", ""), str(self.request.remote_ip)
        with speaking(self.door.language):
            if not typed:
                self._say(403, say(self.asks))
            elif self.door.wrong.of(device).empty:
                self._say(429, say("room.code_often"))
            elif not same(self.code, typed):
                self.door.wrong.of(device).take()
                self._say(403, say(self.refuses))
            else:
                self._enter(device)

    def _enter(self, device: str) -> None:
        seats = self.door.gathering.seats
        self.door.gathering.forget_lost()
        seat = seats.take(device)
        if isinstance(seat, NoSeat):
            key = "class_copy.room_full" if seat.why == "full" else "room.device_full"
            self._say(503, say(key, count=seats.limit if seat.why == "full" else seats.per_device), form=False)
            return
        self.remember(self.door.seat_cookie, seat.token)
        self.redirect(self.door.base)

    def _say(self, status: int, text: str, form: bool = True) -> None:
        self.set_status(status)
        self.set_header("Content-Type", "text/html; charset=utf-8")
        self.finish(ask_page(text, say("class_copy.code"), self.request.path, self.door.language, form))


class AskTeacher(AskCode):
    """The same before the board, for the teacher's code."""

    asks, refuses, asked = "room.teacher_ask", "room.teacher_wrong", "?board"

    @property
    def place(self) -> str:
        return f"{self.door.base}board"

    @property
    def code(self) -> str:
        return self.door.teacher

    def _enter(self, device: str) -> None:
        self.remember(self.door.board_cookie, self.door.new_board())
        self.redirect(self.place)


class ShownFile(Plain):
    """A page or file of the class."""

    def initialize(self, files: Mapping[str, Given], keep: bool = False, policy: str = "") -> None:
        self.files, self.keep, self.policy = files, keep, policy

    async def get(self, name: str = "") -> None:
        seat = self.door.seat(self.request)
        found = self.files.get(name)
        if found is None:
            raise tornado.web.HTTPError(404)
        if seat is not None and not (seat.files.take() and seat.megabytes.take(len(found.data) / 1e6)):
            self.set_status(429)
            self.set_header("Retry-After", "10")
            self.finish()
            return
        # a worker obeys the policy that came with its own script, not that of its page
        more = {"Content-Security-Policy": self.policy.format(lines=self.lines())} if self.policy else {}
        await self.hand_out(found, self.keep, more)

    head = get


class GuardedPage(Plain):
    """A page whose own policy lets it speak with this class. `policy` has a place for the line's address."""

    def initialize(self, page: Given, policy: str) -> None:
        self.page, self.policy = page, policy

    async def get(self) -> None:
        if self.get_query_argument("token", ""):
            self.redirect(self.request.path)  # somebody who is in already: the code does not stay in the address bar
            return
        seat = self.door.seat(self.request)
        if seat is not None and self.policy is not STRICT and not seat.files.take():
            self.set_status(429)
            self.finish()
            return
        await self.hand_out(
            self.page,
            False,
            {"Content-Security-Policy": self.policy.format(lines=self.lines()), "Cache-Control": "no-store"},
        )

    head = get


class Missing(Plain):
    """There is nothing else."""

    def get(self) -> None:
        self.set_status(404)
        self.finish()

    head = post = put = delete = patch = options = get


class Mine(Plain):
    """A student's own pages: nobody else's, and nothing but these."""

    async def get(self, name: str) -> None:
        seat = self.door.seat(self.request)
        if seat is None or not _MINE.match(name):
            raise tornado.web.HTTPError(404)
        path = self.door.gathering.makings.folder(seat.number) / name
        if path.is_symlink() or not path.is_file():
            raise tornado.web.HTTPError(404)
        if not (seat.files.take() and seat.megabytes.take(min(20.0, path.stat().st_size / 1e6))):
            self.set_status(429)
            self.finish()
            return
        self.set_header("Content-Type", "application/pdf")
        self.set_header("Content-Disposition", f'attachment; filename="{name}"')
        self.set_header("Cache-Control", "private, no-store")
        with path.open("rb") as file:
            while piece := file.read(_PIECE):
                self.write(piece)
                await self.flush()
        self.finish()


def ask_page(text: str, label: str, action: str, code: str, form: bool) -> str:
    """The page that asks for a code, without any script."""
    enter, title = escape(say("class_copy.code_enter")), escape(say("class_copy.room"))
    asked = (
        f'<form method="get" action="{escape(action)}"><label>{escape(label)} <input name="token" autocomplete="off" '
        f'autocapitalize="none" spellcheck="false" autofocus></label> <button>{enter}</button></form>'
    )
    return (
        f'<!doctype html><html lang="{code}"><head><meta charset="utf-8"><title>{title}</title>'
        '<meta name="viewport" content="width=device-width"><link rel="icon" href="data:,">'
        "<style>body{font:1.2rem/1.5 sans-serif;max-width:34em;margin:3em auto;padding:0 1em}"
        "input,button{font:inherit;padding:.3em .5em;min-height:44px}input{width:9em;letter-spacing:.1em}</style>"
        "</head>"
        f"<body><h1>{title}</h1><p>{escape(text)}</p>{asked if form else ''}</body></html>"
    )
