"""The process that tests/forked_kernels.py forks kernels from: `python tests/kernel_stock.py SOCKET`.

It loads what a kernel of nearly every lesson imports, answers on the socket it was given, and runs nothing else, so
that a fork of it is a kernel which has just started.
"""

from __future__ import annotations

import atexit
import contextlib
import gc
import json
import os
import select
import signal
import socket
import sys
import tempfile
import threading
import time
import warnings
from importlib import import_module
from typing import Any

LOADED = (
    "ipykernel.kernelapp",
    "kit.blocks.bodice",
    "kit.booklet.handover",
    "kit.live.beside",
    "kit.live.panel",
    "kit.sewing.make",
)


def heard(line: socket.socket) -> tuple[dict[str, Any], list[int]]:
    """What is asked, a line of JSON, and the open files that came with it. `EOFError` where nobody asks any more."""
    text, files = b"", []
    while not text.endswith(b"\n"):
        more, given, *_ = socket.recv_fds(line, 1 << 16, 3)
        if not more:
            raise EOFError
        text, files = text + more, files + given
    return json.loads(text), files


def serve(line: socket.socket) -> None:
    """Answer until whoever asks has ended: fork a kernel, or say how one has ended. What is left then is killed."""
    ended: dict[int, int] = {}
    alive: set[int] = set()
    while True:
        asked = select.select([line], [], [], 0.5 if alive else None)[0]
        for pid in tuple(alive):
            found, status = os.waitpid(pid, os.WNOHANG)
            if found:
                alive.discard(pid)
                ended[pid] = os.waitstatus_to_exitcode(status)
        if not asked:
            continue
        try:
            what, files = heard(line)
        except (EOFError, OSError):
            break
        if "begin" in what:
            apart, told = os.pipe()
            with warnings.catch_warnings():  # Python warns of threads; those here are numpy's, and have nothing to do
                warnings.simplefilter("ignore")
                pid = os.fork()
            if not pid:
                line.close()
                os.setsid()
                os.close(told)
                os.close(apart)
                become(what, files)
            alive.add(pid)
            for file in (told, *files):
                os.close(file)
            os.read(apart, 1)  # it has its own session: whoever kills its group does not kill this process
            os.close(apart)
            answer: int | None = pid
        else:
            answer = ended.get(what["ended"])
        line.sendall(json.dumps(answer).encode() + b"\n")
    for pid in alive:
        with contextlib.suppress(OSError):
            os.killpg(pid, signal.SIGKILL)


def become(what: dict[str, Any], files: list[int]) -> None:
    """This process is a kernel from here on, and never comes back."""
    status = 1
    try:
        for number, file in enumerate(files):
            os.dup2(file, number)
        for file in files:
            os.close(file)
        os.environ.clear()
        os.environ.update(what["env"])
        os.environ["JPY_PARENT_PID"] = str(os.getppid())
        time.tzset()
        tempfile.tempdir = None
        os.chdir(what["cwd"])
        signal.signal(signal.SIGINT, signal.default_int_handler)
        sys.argv = ["ipykernel_launcher", *what["begin"]]
        from ipykernel import kernelapp

        kernelapp.launch_new_instance()
        status = 0
    except SystemExit as left:
        status = left.code if isinstance(left.code, int) else int(left.code is not None)
    except BaseException:
        sys.excepthook(*sys.exc_info())  # type: ignore[arg-type]
    finally:  # as Python ends, but for taking every module apart
        with contextlib.suppress(BaseException):
            threading._shutdown()  # type: ignore[attr-defined]
            atexit._run_exitfuncs()
            sys.stdout.flush()
            sys.stderr.flush()
        os._exit(status)


if __name__ == "__main__":
    del sys.path[0]  # the folder of tests, which a kernel does not know
    signal.signal(signal.SIGINT, signal.SIG_IGN)
    os.environ["JPY_PARENT_PID"] = str(os.getpid())  # read by Jupyter as it is imported
    for name in LOADED:
        import_module(name)
    gc.collect()
    gc.freeze()  # looking for lost circles would write to every page of memory that is shared
    serve(socket.socket(fileno=int(sys.argv[1])))
