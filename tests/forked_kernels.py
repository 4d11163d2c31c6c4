"""Kernels for the tests, each forked from a process that has loaded what every kernel loads.

    python tests/forked_kernels.py MODULE ARGUMENT ...    as `python -m MODULE ARGUMENT ...`, its kernels forked

To start Python, Jupyter's own code and the kit is most of the work of a kernel that runs a small lesson, and the tests
ask for some hundreds. Here that is done once for each process of tests, in a process beside it that runs nothing else
(tests/kernel_stock.py); a kernel is a fork of it, in a session of its own, with the folder, the environment and the
streams it was asked to have. It is a process as any kernel is: it speaks over its own sockets, is interrupted and
killed, and ends with whoever asked for it. What Python reads as it starts (its own variables, the locale) cannot be
changed afterwards: a kernel that is to have others is begun the usual way, and so are all inside `begun_anew`, for
tests that ask whether two runs agree, as each process has a seed of its own for the order in sets.
"""

from __future__ import annotations

import contextlib
import json
import os
import runpy
import signal
import socket
import subprocess
import sys
import threading
import time
from collections.abc import Iterator, Mapping
from pathlib import Path
from typing import Any

from jupyter_client.provisioning import local_provisioner

_KERNEL = [sys.executable, "-m", "ipykernel_launcher"]
_WHOLE_TRACES = "-Xfrozen_modules=off"  # for a debugger, which no test starts
_AT_START = ("PYTHON", "LC_", "LANG", "LD_", "DYLD_", "MALLOC_")
_STOCK = Path(__file__).with_name("kernel_stock.py")
_anew: list[None] = []


@contextlib.contextmanager
def begun_anew() -> Iterator[None]:
    """Kernels inside the block start from nothing."""
    _anew.append(None)
    try:
        yield
    finally:
        _anew.pop()


@contextlib.contextmanager
def kernels_forked() -> Iterator[None]:
    """Kernels that this process begins inside the block are forked from one that is ready."""
    usual = local_provisioner.launch_kernel
    stock = _Stock()
    at_start = _read_at_start(os.environ)

    def launch_kernel(cmd: list[str], *args: Any, **more: Any) -> Any:
        plain = [part for part in cmd if part != _WHOLE_TRACES]
        asked = {"stdin", "stdout", "stderr", "env", "cwd"} >= set(more) and not args
        env = dict(more.get("env") or os.environ)
        if _anew or not asked or plain[:3] != _KERNEL or _read_at_start(env) != at_start:
            return usual(cmd, *args, **more)
        streams = [more.get(name) for name in ("stdin", "stdout", "stderr")]
        return stock.begin(plain[3:], streams, env, str(more.get("cwd") or os.getcwd()))

    if sys.platform == "linux":  # macOS's own libraries may not be forked
        local_provisioner.launch_kernel = launch_kernel
    try:
        yield
    finally:
        local_provisioner.launch_kernel = usual
        stock.end()


def _read_at_start(environment: Mapping[str, str]) -> dict[str, str]:
    return {name: value for name, value in environment.items() if name.startswith(_AT_START)}


class _Stock:
    """The process that kernels are forked from, begun when the first is asked for."""

    def __init__(self) -> None:
        self._alone = threading.RLock()
        self._line: socket.socket | None = None
        self._process: subprocess.Popen[bytes] | None = None

    def begin(self, arguments: list[str], streams: list[Any], env: dict[str, str], cwd: str) -> ForkedKernel:
        ends: list[int] = []
        given: list[int] = []  # to be closed here
        own: list[Any] = [None, None, None]
        for number, stream in enumerate(streams):
            if stream == subprocess.PIPE or (number == 0 and stream is None):
                read, write = os.pipe()
                end, mine = (read, write) if number == 0 else (write, read)
                own[number] = os.fdopen(mine, "wb" if number == 0 else "rb")
                given.append(end)
            elif stream == subprocess.DEVNULL:
                end = os.open(os.devnull, os.O_RDWR)
                given.append(end)
            elif stream == subprocess.STDOUT:
                end = ends[1]
            else:
                end = number if stream is None else stream if isinstance(stream, int) else stream.fileno()
            ends.append(end)
        try:
            pid = self.ask({"begin": arguments, "env": env, "cwd": cwd}, ends)
        finally:
            for end in given:
                os.close(end)
        return ForkedKernel(self, pid, arguments, *own)

    def ask(self, what: dict[str, Any], ends: list[int] | None = None) -> Any:
        with self._alone:
            line = self._line or self._started()
            text = json.dumps(what).encode() + b"\n"
            line.sendall(text[socket.send_fds(line, [text], ends or []) :])
            return json.loads(self._answers.readline())

    def _started(self) -> socket.socket:
        self._line, other = socket.socketpair()
        self._answers = self._line.makefile("rb")
        with other:
            self._process = subprocess.Popen(
                [sys.executable, str(_STOCK), str(other.fileno())],
                pass_fds=[other.fileno()],
                stdin=subprocess.DEVNULL,
                start_new_session=True,
            )
        return self._line

    def end(self) -> None:
        with self._alone:
            if self._line is not None and self._process is not None:
                self._answers.close()
                self._line.close()
                self._process.wait(60)
                self._line = None


class ForkedKernel:
    """A forked kernel, as whoever asked for it knows a process it began (`subprocess.Popen`)."""

    def __init__(self, stock: _Stock, pid: int, args: list[str], stdin: Any, stdout: Any, stderr: Any) -> None:
        self._stock = stock
        self.pid = pid
        self.args = args
        self.stdin, self.stdout, self.stderr = stdin, stdout, stderr
        self.returncode: int | None = None

    def poll(self) -> int | None:
        if self.returncode is None:
            self.returncode = self._stock.ask({"ended": self.pid})
        return self.returncode

    def wait(self, timeout: float | None = None) -> int:
        until = None if timeout is None else time.monotonic() + timeout
        while (status := self.poll()) is None:
            if until is not None and time.monotonic() > until:
                raise subprocess.TimeoutExpired(self.args, timeout or 0.0)
            time.sleep(0.01)
        return status

    def send_signal(self, number: int) -> None:
        if self.poll() is None:
            os.kill(self.pid, number)

    def terminate(self) -> None:
        self.send_signal(signal.SIGTERM)

    def kill(self) -> None:
        self.send_signal(signal.SIGKILL)


if __name__ == "__main__":
    sys.path[0] = os.getcwd()
    del sys.argv[0]
    with kernels_forked():
        runpy.run_module(sys.argv[0], run_name="__main__", alter_sys=True)
