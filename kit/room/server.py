"""A class copy served to a room: one process on tornado, a few warm workers, and a queue that makes pages."""

from __future__ import annotations

import asyncio
import contextlib
import json
import signal
import socket
import ssl
import subprocess
import sys
import tempfile
from collections import Counter
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from datetime import datetime
from itertools import count
from pathlib import Path
from typing import Any

import tornado.httpserver
import tornado.netutil
from tornado.httputil import url_concat
from tornado.iostream import IOStream

from kit.errors import KitError
from kit.room import said
from kit.room.addresses import LOOPBACK, hosts, no_port
from kit.room.codes import written
from kit.room.gate import Door, Gate
from kit.room.running import Prepared, Running

PER_DEVICE = 3
"""Seats that one device of the local network may take, unless said otherwise."""
_IDLE = 120  # seconds after which a connection on which nothing is asked is closed
_CONNECTIONS = (32, 1500)  # of one device of the network at least, and of all
_OF_SEAT = 10  # connections of one seat: a browser opens six at once, and a line for each page
_HEAD = 16384  # bytes of a request's headers
Tell = Callable[[str], None]


@dataclass(frozen=True)
class Options:
    """How a class is served: see `lessonkit serve --help`. `per_device` None: 3 in a network, no limit on this machine;
    `workers` 0: one for each core, 4 at most."""

    port: int = 8866
    address: str = "127.0.0.1"
    students: int = 30
    keep: Path | None = None
    pyodide: Path | None = None
    room_alone: bool = False
    certificate: Path | None = None
    key: Path | None = None
    names: tuple[str, ...] = ()
    per_device: int | None = None
    workers: int = 0
    base: str = "/"

    @property
    def local(self) -> bool:
        return self.address in LOOPBACK

    @property
    def seats_each(self) -> int:
        """Seats that one device may take; 0: no limit."""
        return self.per_device if self.per_device is not None else (0 if self.local else PER_DEVICE)

    @property
    def connections_each(self) -> int:
        """Connections that one device may have open; 0: no limit. A school may stand behind a single address."""
        return 0 if self.local else max(_CONNECTIONS[0], _OF_SEAT * (self.seats_each or self.students))


def serve(notebook: Path, options: Options = Options(), tell: Tell = print) -> None:
    """Serve the class copy `notebook` until stopped. What students have made is kept in a folder that is removed at the
    end, or in a new one within `options.keep`. Raises `KitError` for a notebook that is no class copy, a port that is
    taken, a certificate that cannot be used and a lesson that cannot be worked."""
    title, lesson = class_copy(notebook)
    context = _encrypted(options)
    try:
        sockets = tornado.netutil.bind_sockets(options.port, options.address)
    except OSError as error:
        raise no_port(error, options.address, options.port) from None
    with contextlib.ExitStack() as stack:
        for each in sockets:
            stack.callback(each.close)
        home = home_in(options.keep, stack)
        folder, without = prepare(lesson, options, tell)
        asyncio.run(_Class(title, Prepared(folder, without, home), options, context, tell).run(sockets))


def class_copy(notebook: Path) -> tuple[str, Path]:
    """The title of a class copy, and its lesson. Only the file is read: what can run it is not loaded here."""
    try:
        about = json.loads(notebook.read_text("utf-8-sig"))["metadata"].get("lessonkit", {})
    except (OSError, ValueError, KeyError, TypeError, AttributeError):
        from kit.booklet.run_notebook import read_notebook

        about = read_notebook(notebook).metadata.get("lessonkit", {})  # says what is wrong with it
    if not isinstance(about, dict) or "class_copy" not in about:
        raise KitError(
            f"'{notebook.name}' is not a class copy.", do=f"Make one: lessonkit class-copy {notebook}, and serve that."
        )
    lesson = notebook.resolve().parent / str(about["class_copy"])
    if not lesson.is_file():
        raise KitError(f"the lesson '{about['class_copy']}' is not beside it.", where=str(notebook))
    return str(about.get("title", "")), lesson


def _encrypted(options: Options) -> ssl.SSLContext | None:
    """The certificate that was given, ready for https."""
    if options.certificate is None:
        if options.key is not None:
            raise KitError("a key without its certificate.", where="--key", do="Name both: --certificate FILE.")
        return None
    for path, where in ((options.certificate, "--certificate"), (options.key, "--key")):
        if path is not None and not path.is_file():
            raise KitError(f"there is no file '{path}'.", where=where)
    context = ssl.create_default_context(ssl.Purpose.CLIENT_AUTH)
    context.minimum_version = ssl.TLSVersion.TLSv1_2
    try:
        context.load_cert_chain(options.certificate, options.key)
    except (ssl.SSLError, OSError):
        raise KitError(
            f"'{options.certificate}' cannot be used as a certificate.",
            where="--certificate",
            do="It must be PEM and belong to its key (--key FILE, where that is a file of its own).",
        ) from None
    return context


def home_in(keep: Path | None, stack: contextlib.ExitStack) -> Path:
    """The folder for what students have made."""
    if keep is None:
        return Path(stack.enter_context(tempfile.TemporaryDirectory(prefix="lessonkit-class-")))
    try:
        keep.mkdir(mode=0o700, parents=True, exist_ok=True)
        stamp = keep.resolve() / datetime.now().strftime("class-%Y-%m-%d-%H%M%S")
        for again in count(1):  # two classes at once, or a clock that was set back
            made = stamp if again == 1 else stamp.with_name(f"{stamp.name}-{again}")
            with contextlib.suppress(FileExistsError):
                made.mkdir(mode=0o700)
                break
    except OSError as error:
        raise KitError(f"'{keep}' cannot be written ({error.strerror}).", where="--keep") from None
    return made


def prepare(lesson: Path, options: Options, tell: Tell) -> tuple[Path, str]:
    """What `kit.room.prepare` makes or finds, in a process of its own: the folder, and why its page is without its own
    Python. Raises `KitError` as it does."""
    asked = [sys.executable, "-m", "kit.room.prepare", str(lesson)]
    asked += ["--pyodide", str(options.pyodide)] if options.pyodide else []
    asked += ["--room-alone"] if options.room_alone else []
    last: dict[str, Any] = {}
    with subprocess.Popen(asked, stdout=subprocess.PIPE, text=True, encoding="utf-8") as running:
        assert running.stdout is not None
        try:
            for line in running.stdout:
                last = json.loads(line)
                if "doing" in last:
                    tell(str(last["doing"]))
        except BaseException:
            running.kill()
            raise
    if "failed" in last:
        what, where, do = last["failed"]
        raise KitError(what, where=where, do=do)
    if "folder" not in last:
        raise KitError("the class could not be made ready.", do="Run lessonkit check on the lesson, and try again.")
    return Path(last["folder"]), str(last["without"])


class _Server(tornado.httpserver.HTTPServer):
    """Bounds the connections of each device and of all."""

    def initialize(self, *args: Any, each: int = 0, **kwargs: Any) -> None:
        super().initialize(*args, **kwargs)
        self._each = each
        self._open: Counter[str] = Counter()

    def handle_stream(self, stream: IOStream, address: Any) -> None:
        device = str(address[0]) if isinstance(address, tuple) else ""
        if (self._each and self._open[device] >= self._each) or self._open.total() >= _CONNECTIONS[1]:
            stream.close()
            return
        self._open[device] += 1
        super().handle_stream(stream, address)

    def on_close(self, server_conn: object) -> None:
        super().on_close(server_conn)
        device = str(getattr(getattr(server_conn, "context", None), "address", ("",))[0])
        self._open[device] -= 1
        if self._open[device] <= 0:
            del self._open[device]


class _Class:
    """One class from its opening to its end."""

    def __init__(
        self, title: str, prepared: Prepared, options: Options, context: ssl.SSLContext | None, tell: Tell
    ) -> None:
        self.title, self.prepared = title, prepared
        self.options, self.context, self.tell = options, context, tell

    async def run(self, sockets: Sequence[socket.socket]) -> None:
        """Until it is stopped."""
        _many_files()
        options = self.options
        running = Running(self.prepared, options.students, options.seats_each, options.workers, self.tell)
        ended, loop = asyncio.Event(), asyncio.get_running_loop()
        for number in (signal.SIGINT, signal.SIGTERM):
            with contextlib.suppress(NotImplementedError, ValueError):  # Windows; not the main thread
                loop.add_signal_handler(number, ended.set)
        server = None
        try:
            await running.open()
            port = int(sockets[0].getsockname()[1])
            door = Door(
                running.gathering,
                hosts(options.address, port, options.names),
                port,
                self.prepared.language,
                self.context is not None,
                options.base,
            )
            server = self._listen(running.application(door, self.link(door)), sockets)
            for line in self.welcome(door):
                self.tell(line)
            await ended.wait()
        except asyncio.CancelledError:
            pass
        finally:
            if server is not None:
                server.stop()
                with contextlib.suppress(asyncio.TimeoutError):
                    await asyncio.wait_for(server.close_all_connections(), 3)
            await running.close()

    def _listen(self, app: Gate, sockets: Sequence[socket.socket]) -> _Server:
        server = _Server(
            app,
            ssl_options=self.context,
            max_header_size=_HEAD,
            max_body_size=said.MOST,
            idle_connection_timeout=_IDLE,
            body_timeout=10,
            each=self.options.connections_each,
        )
        server.add_sockets(sockets)
        return server

    def link(self, door: Door) -> str:
        """The address with the class code in it."""
        return url_concat(f"{self._place(door)}", {"token": door.code})

    def _place(self, door: Door) -> str:
        called = self.options.names[0] if self.options.names else self.options.address
        called = f"[{called}]" if ":" in called else called
        return f"{'https' if door.encrypted else 'http'}://{called}:{door.port}{door.base}"

    def welcome(self, door: Door) -> list[str]:
        """What the teacher is told."""
        place = self._place(door)
        local = self.options.local
        line = "The line is encrypted (https)." if door.encrypted else "The line is not encrypted (http)."
        return [
            f"{self.title} is open to the class.",
            f"  {self.link(door)}",
            f"  or open {place.split('://')[1].rstrip('/')} and type the class code {written(door.code)}",
            "  Your board, for you alone (who is here, at which step; steps and values to all; the address to show):",
            f"  {url_concat(f'{place}board', {'token': door.teacher})}",
            "  Only this machine can reach it; --local-network opens it to the room."
            if local
            else f"  Everybody in this network who has the code can reach it. {line}",
            f"  Up to {self.options.students} at once. Students can run no code of their own here. Their values stay "
            "in their browsers; pages they have made are kept "
            + (f"in {self.prepared.home}." if self.options.keep else "until the room is closed."),
            *self._engine(),
            "  Press Ctrl+C to close the room.",
        ]

    def _engine(self) -> list[str]:
        """Who works the lesson."""
        if not self.prepared.without:
            return [
                "  Each student's own browser works the lesson (about 5 MB the first time; whoever looks for it there "
                "can read the lesson's code, without answers). What cannot, is worked by this machine."
            ]
        why = self.prepared.without
        why = why if why == "as you asked" else f"the browser's own Python is not here: {why}"
        return [f"  This machine works the lesson for every page ({why.rstrip('.')})."]


def _many_files() -> None:
    """As many open lines as the system allows this process."""
    with contextlib.suppress(ImportError, OSError, ValueError):
        import resource

        soft, hard = resource.getrlimit(resource.RLIMIT_NOFILE)
        wanted = 4096 if hard == resource.RLIM_INFINITY else min(hard, 4096)
        if soft < wanted:
            resource.setrlimit(resource.RLIMIT_NOFILE, (wanted, hard))
