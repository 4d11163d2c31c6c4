"""A class copy served to a room from the teacher's machine, with Voila (which runs on jupyter_server and tornado).

One gate stands before every address, static files and websockets included: without the class code nothing answers but
the page that asks for it. Behind it there is only the class copy: no file browser, no terminal, no contents, and the
kernels take messages of widgets alone, never code. Each browser gets an id in a cookie; it names the student's folder,
where values, body and pages are kept, and the student's kernel, which nobody else's browser can reach. A page that is
loaded again gets a new kernel in the same folder.
"""

from __future__ import annotations

import asyncio
import contextlib
import errno
import hmac
import os
import re
import secrets
import shutil
import socket
import tempfile
from collections import defaultdict
from collections.abc import Callable
from html import escape
from pathlib import Path
from typing import Any, cast

import tornado.httpserver
import tornado.ioloop
import tornado.netutil
import tornado.web
from jupyter_server.services.kernels.kernelmanager import AsyncMappingKernelManager
from tornado.httputil import HTTPServerRequest, url_concat
from traitlets.config import Config
from voila.app import Voila
from voila.tornado.handler import TornadoVoilaHandler

from kit.booklet.run_notebook import OwnPython, read_notebook
from kit.errors import KitError
from kit.language import language, say
from kit.lesson.where import ROOM
from kit.live.print_job import AT_ONCE
from kit.live.print_mine import FOLDER

STUDENT = "HTTP_X_LESSONKIT_STUDENT"
_HEADER = "X-Lessonkit-Student"
_LETTERS = "abcdefghjkmnpqrstuvwxyz23456789"  # none that is read as another
_CODE_LENGTH = 10
_IDLE = 600  # seconds after which a kernel whose page is gone is ended
_MONTH = 30
_ID = re.compile(r"[A-Za-z0-9_-]{22}\Z")
_KERNEL = re.compile(r"/(?:api/kernels|voila/api/shutdown|voila/query|voila/execution)/([^/?]+)")
_ELSEWHERE = re.compile(r'<(?:link|script)\b[^>]*\b(?:href|src)="https?://[^>]*>(?:\s*</script>)?')
_OWN_FILE = re.compile(r"(?:booklet|pages-[a-z0-9-]+|sheet-[a-z0-9-]+|roll-[a-z0-9-]+)\.pdf\Z")
MEGABYTES = 110
"""What a student's kernel takes at most, found by tests/bench/class_room.py."""
WORK = 0.2
"""Seconds of one core a slider move takes, with the proof, two exercises and the server's part; found there too."""


def new_code() -> str:
    """A class code: 49 bits, short enough to be typed from the board."""
    return "".join(secrets.choice(_LETTERS) for _ in range(_CODE_LENGTH))


def written(code: str) -> str:
    """The code as it is written on a board: "k7qm-2xpd-9r"."""
    return "-".join(code[i : i + 4] for i in range(0, len(code), 4))


def read_code(text: str) -> str:
    """What somebody typed, without capitals, dashes and spaces."""
    return re.sub(r"[^a-z0-9]", "", text.lower())


def local_address() -> str:
    """This machine's address in the local network. Nothing is sent. Raises `KitError` when there is none."""
    with socket.socket(socket.AF_INET, socket.SOCK_DGRAM) as asked:
        try:
            asked.connect(("192.0.2.1", 9))  # an address of RFC 5737, for documentation: only the route is looked up
            found = str(asked.getsockname()[0])
        except OSError:
            found = ""
    if not found or found.startswith("127."):
        with contextlib.suppress(OSError):
            found = socket.gethostbyname(socket.gethostname())
    if not found or found.startswith("127."):
        raise KitError(
            "this machine has no address in a local network.",
            where="--local-network",
            do="Join the network first, or name the address: --local-network 192.168.1.20.",
        )
    return found


# ---- behind the gate --------------------------------------------------------------------------------------


class ClassKernels(AsyncMappingKernelManager):
    """One kernel for each student, in the student's folder."""

    def __init__(self, **kwargs: Any) -> None:
        super().__init__(**kwargs)
        self.student_of: dict[str, str] = {}
        self._turns: defaultdict[str, asyncio.Lock] = defaultdict(asyncio.Lock)

    def kernels_of(self, student: str) -> list[str]:
        return [kernel for kernel, whose in self.student_of.items() if whose == student and kernel in self]

    @property
    def students(self) -> set[str]:
        """Those who have a kernel."""
        return {student for kernel, student in self.student_of.items() if kernel in self}

    async def start_kernel(  # type: ignore[override]
        self, *, path: Any = None, env: dict[str, str] | None = None, **more: Any
    ) -> str:
        """Start a student's kernel in the student's own folder; the former one has saved its values and ended."""
        environment = dict(env or {})
        student = environment.pop(STUDENT, "")
        if not _ID.match(student):
            raise tornado.web.HTTPError(403)
        room = cast("ClassServer", self.parent)
        async with self._turns[student]:
            for kernel in self.kernels_of(student):
                await self._end(kernel)
            folder = room.sessions / student
            folder.mkdir(mode=0o700, exist_ok=True)
            environment[ROOM] = str(room.notebook.parent)
            environment[AT_ONCE] = str(room.slots)
            kernel = await super().start_kernel(env=environment, cwd=str(folder), **more)
            self.student_of[kernel] = student
        return kernel

    async def shutdown_kernel(  # type: ignore[override]
        self, kernel_id: str, now: bool = False, restart: bool = False
    ) -> None:
        async with self._turns[self.student_of.get(kernel_id, "")]:
            await self._end(kernel_id, now, restart)

    async def _end(self, kernel: str, now: bool = False, restart: bool = False) -> None:
        if kernel in self:
            await super().shutdown_kernel(kernel, now=now, restart=restart)
        self.student_of.pop(kernel, None)


class _ClassPage(TornadoVoilaHandler):
    """The class copy, for the student whose browser asks."""

    @tornado.web.authenticated
    async def get(self, path: str | None = None) -> None:
        if path:
            raise tornado.web.HTTPError(404)
        room: ClassServer = self.settings["class_room"]
        student = room.student(self.request)
        if not student:
            student = secrets.token_urlsafe(16)
            room.remember(self, room.student_cookie, student)
        kernels: ClassKernels = self.kernel_manager
        if student not in kernels.students and len(kernels.students) >= room.limit:
            self.set_status(503)
            self.finish(_page(say("class_copy.room_full", count=room.limit)))
            return
        self.request.headers[_HEADER] = student
        async for html in self.get_generator(path=None):
            self.write(_ELSEWHERE.sub("", html))  # a classroom may have no internet
            self.flush()


class _OwnFile(tornado.web.RequestHandler):
    """A student's own pages: nobody else's, and nothing but these."""

    def get(self, name: str) -> None:
        room: ClassServer = self.settings["class_room"]
        student = room.student(self.request)
        path = room.sessions / student / FOLDER / name
        if not student or not _OWN_FILE.match(name) or path.is_symlink() or not path.is_file():
            raise tornado.web.HTTPError(404)
        self.set_header("Content-Type", "application/pdf")
        self.set_header("Content-Disposition", f'attachment; filename="{name}"')
        self.set_header("Cache-Control", "private, no-store")
        self.set_header("X-Content-Type-Options", "nosniff")
        self.finish(path.read_bytes())


# ---- the gate ---------------------------------------------------------------------------------------------


class _Gate(tornado.web.Application):
    """Lets a request through when it brings the class code, and to a kernel only the student whose kernel it is."""

    def find_handler(self, request: HTTPServerRequest, **kwargs: Any) -> Any:
        room: ClassServer = self.settings["class_room"]
        if not room.admitted(request):
            return self.get_handler_delegate(request, _AskCode)
        named = _KERNEL.match(request.path)
        if named and self.settings["kernel_manager"].student_of.get(named[1]) != room.student(request):
            return self.get_handler_delegate(request, tornado.web.ErrorHandler, {"status_code": 404})
        return super().find_handler(request, **kwargs)


class _AskCode(tornado.web.RequestHandler):
    """All that answers without the class code: the page that asks for it."""

    def prepare(self) -> None:
        room: ClassServer = self.settings["class_room"]
        if self.request.method == "GET" and self.request.path == "/":
            typed = self.get_argument("token", "")
            if room.is_code(typed):
                room.remember(self, room.code_cookie, room.code)
                self.redirect("/")
                return
            self.set_status(403)
            self.finish(_page(say("class_copy.code_wrong" if typed else "class_copy.code_ask"), form=True))
            return
        self.set_status(403)
        self.finish()


def _page(text: str, form: bool = False) -> str:
    label, enter = escape(say("class_copy.code")), escape(say("class_copy.code_enter"))
    asked = (
        f'<form method="get" action="/"><label>{label} <input name="token" autocomplete="off" autocapitalize="none" '
        f'spellcheck="false" autofocus></label> <button>{enter}</button></form>'
    )
    title = escape(say("class_copy.room"))
    return (
        f'<!doctype html><html lang="{language()}"><head><meta charset="utf-8"><title>{title}</title>'
        '<meta name="viewport" content="width=device-width"><link rel="icon" href="data:,">'
        "<style>body{font:1.2rem/1.5 sans-serif;max-width:34em;margin:3em auto;padding:0 1em}"
        "input,button{font:inherit;padding:.3em .5em}input{width:9em;letter-spacing:.1em}</style></head>"
        f"<body><h1>{title}</h1><p>{escape(text)}</p>{asked if form else ''}</body></html>"
    )


# ---- the room ---------------------------------------------------------------------------------------------


class ClassServer(Voila):
    """Voila with the gate before it. Made by `serve`."""

    notebook: Path
    sessions: Path
    slots: Path
    code: str
    limit: int
    ready: Callable[[], None]

    def open_room(
        self, notebook: Path, sessions: Path, code: str, limit: int, address: str, port: int, ready: Callable[[], None]
    ) -> None:
        """Serve until stopped. Raises `KitError` when the port cannot be had."""
        self.notebook, self.sessions, self.code, self.limit, self.ready = notebook, sessions, code, limit, ready
        self.slots = sessions / "printing"
        self.slots.mkdir(mode=0o700, exist_ok=True)
        for number in range(max(1, (os.cpu_count() or 2) // 2)):
            (self.slots / f"slot-{number + 1}").touch()
        try:
            self._sockets = tornado.netutil.bind_sockets(port, address)
        except OSError as error:
            raise _no_port(error, address, port) from None
        self.port = self._sockets[0].getsockname()[1]
        self.ip = address
        self.notebook_path = str(notebook)
        self.initialize(argv=[])
        self.start()

    @property
    def code_cookie(self) -> str:
        return f"lessonkit-class-{self.port}"

    @property
    def student_cookie(self) -> str:
        return f"lessonkit-student-{self.port}"

    def is_code(self, text: str) -> bool:
        return hmac.compare_digest(read_code(text).encode(), self.code.encode())

    def admitted(self, request: HTTPServerRequest) -> bool:
        brought = request.cookies.get(self.code_cookie)
        return brought is not None and self.is_code(brought.value)

    def student(self, request: HTTPServerRequest) -> str:
        """The id the browser brings, or ""."""
        brought = request.cookies.get(self.student_cookie)
        return brought.value if brought is not None and _ID.match(brought.value) else ""

    def remember(self, handler: tornado.web.RequestHandler, name: str, value: str) -> None:
        handler.set_cookie(name, value, httponly=True, samesite="Lax", expires_days=_MONTH, path="/")

    def start(self) -> None:
        self.connection_dir = tempfile.mkdtemp(prefix="voila_", dir=self.connection_dir_root)
        settings = self.init_settings()
        # The gate's cookie is not sent along by another site's page (SameSite), so no second token is needed; with one,
        # the message a page sends when it is closed, which ends its kernel, would be refused.
        self.app = _Gate(**settings, class_room=self, disable_check_xsrf=True)
        handlers: list[Any] = [(r"/mine/([^/]+)", _OwnFile)]
        for handler in self.init_handlers():
            page = handler[1] is TornadoVoilaHandler
            handlers.append((handler[0], _ClassPage, *handler[2:]) if page else handler)
        self.app.add_handlers(".*$", handlers)
        self.listen()

    def listen(self) -> None:
        server = tornado.httpserver.HTTPServer(self.app)
        server.add_sockets(self._sockets)
        self.ioloop = tornado.ioloop.IOLoop.current()
        self.ioloop.add_callback(self.ready)
        try:
            self.ioloop.start()
        except KeyboardInterrupt:
            pass
        finally:
            server.stop()
            self.stop()


def _no_port(error: OSError, address: str, port: int) -> KitError:
    if error.errno == errno.EADDRINUSE:
        return KitError(f"port {port} is taken.", where="--port", do="Another class may be open; try --port 8867.")
    if error.errno == errno.EACCES:
        return KitError(f"port {port} may not be used.", where="--port", do="Choose one above 1024, such as 8866.")
    return KitError(f"'{address}' is no address of this machine.", where="--local-network", do="Look it up and retry.")


def _configuration() -> Config:
    """Voila as a class needs it: the notebook's code is not sent, nothing is chosen by the page's address, no file of
    the folder is handed out, and kernels whose page is gone are ended."""
    config = Config()
    config.Voila.open_browser = False
    config.Voila.config_file_paths = []
    config.Voila.log_level = "ERROR"
    config.VoilaConfiguration.multi_kernel_manager_class = ClassKernels
    config.VoilaConfiguration.kernel_spec_manager_class = OwnPython
    config.VoilaConfiguration.http_header_envs = [_HEADER]
    config.VoilaConfiguration.allow_template_override = "NO"
    config.VoilaConfiguration.allow_theme_override = "NO"
    config.VoilaConfiguration.strip_sources = True
    config.VoilaConfiguration.file_allowlist = []
    config.VoilaConfiguration.show_tracebacks = False
    if os.name == "posix":  # sockets in a private folder: nobody else on the machine can speak to a kernel
        config.KernelManager.transport = "ipc"
    config.MappingKernelManager.cull_idle_timeout = _IDLE
    config.MappingKernelManager.cull_interval = 60
    config.MappingKernelManager.cull_connected = False
    config.ZMQChannelsWebsocketConnection.iopub_data_rate_limit = 1e8
    config.ZMQChannelsWebsocketConnection.iopub_msg_rate_limit = 1e5
    return config


def serve(
    notebook: Path,
    *,
    port: int = 8866,
    address: str = "127.0.0.1",
    students: int = 30,
    keep: Path | None = None,
    tell: Callable[[str], None] = print,
) -> None:
    """Serve the class copy `notebook` at `address` to at most `students` at once, until stopped. What students make is
    kept in a folder that is removed at the end, or in `keep`. Raises `KitError` for a notebook that is no class copy
    or a port that is taken."""
    book = read_notebook(notebook)
    about = book.metadata.get("lessonkit", {})
    if "class_copy" not in about:
        raise KitError(
            f"'{notebook.name}' is not a class copy.", do=f"Make one: lessonkit class-copy {notebook}, and serve that."
        )
    lesson = notebook.resolve().parent / str(about["class_copy"])
    if not lesson.is_file():
        raise KitError(f"the lesson '{about['class_copy']}' is not beside it.", where=str(notebook))
    code = new_code()
    with contextlib.ExitStack() as stack:
        sessions = (
            keep.resolve()
            if keep
            else Path(stack.enter_context(tempfile.TemporaryDirectory(prefix="lessonkit-class-")))
        )
        sessions.mkdir(mode=0o700, parents=True, exist_ok=True)
        server = ClassServer(config=_configuration())

        def ready() -> None:
            for line in _welcome(str(about.get("title", "")), address, server.port, code, students):
                tell(line)

        server.open_room(notebook.resolve(), sessions, code, students, address, port, ready)
        if keep:
            shutil.rmtree(server.slots, ignore_errors=True)


def _welcome(title: str, address: str, port: int, code: str, students: int) -> list[str]:
    local = address in ("127.0.0.1", "localhost", "::1")
    place = f"{address}:{port}"
    lines = [
        f"{title} is open to the class.",
        f"  {url_concat(f'http://{place}/', {'token': code})}",
        f"  or open {place} and type the class code {written(code)}",
        "  Only this machine can reach it; --local-network opens it to the room."
        if local
        else "  Everybody in this network who has the code can reach it. The line is not encrypted (http).",
        f"  Up to {students} at once. Students see no code and can run none of their own; each has a folder and a "
        "kernel to themselves.",
        _measured(),
        *limits(students),
        "  Press Ctrl+C to close the room.",
    ]
    return lines


def _measured() -> str:
    """What a student costs, as tests/bench/class_room.py found, for the cores of this machine."""
    cores = os.cpu_count() or 1
    return (
        f"  A student takes about {MEGABYTES} MB; {cores} {'core works' if cores == 1 else 'cores work'} out about "
        f"{cores / WORK:.0f} slider moves a second for all together, and somewhat less while somebody prints."
    )


def limits(students: int) -> list[str]:
    """A warning when this machine has less memory than that many students may take."""
    lines = []
    need, free = students * MEGABYTES, _free_megabytes()
    if free and need > free:
        lines.append(
            f"  {students} students may take {need / 1024:.1f} GB; {free / 1024:.1f} GB are free. "
            f"Close programs, or let in {max(1, free // MEGABYTES)} with --students."
        )
    return lines


def _free_megabytes() -> int:
    """Free memory in MB, 0 when the system does not say."""
    with contextlib.suppress(OSError, ValueError, StopIteration):
        text = Path("/proc/meminfo").read_text(encoding="ascii")
        line = next(line for line in text.splitlines() if line.startswith("MemAvailable:"))
        return int(line.split()[1]) // 1024
    return 0
