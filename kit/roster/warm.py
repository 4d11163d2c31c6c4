"""A notebook that has run, kept warm: its kernel makes one set after another, without running the cells again."""

from __future__ import annotations

import os
import pickle
import secrets
import signal
from collections.abc import Callable
from contextlib import suppress
from multiprocessing.connection import Client, Connection, Listener
from threading import Thread
from typing import Any

from kit.booklet.run_notebook import read_notebook, run_and_ask
from kit.errors import KitError
from kit.roster.order import MadeSet, Order, Task


class Lost(Exception):
    """The kernel ended while it made a set; another may be begun."""


class Warm:
    """A kernel in which the notebook of `order` has run from the top. Raises `KitError` when it cannot be run, or has
    two lessons."""

    def __init__(self, order: Order, progress: Callable[[str], None] | None = None) -> None:
        self._order = order
        self._error: BaseException | None = None
        key = secrets.token_bytes(32)
        listener = Listener(authkey=key)
        address: Any = listener.address
        self._thread = Thread(target=self._run, args=(address, key, progress), daemon=True)
        self._thread.start()
        with listener:
            self._line: Connection = listener.accept()
        self._pid = 0
        try:
            self._pid = pickle.loads(self._line.recv_bytes())
        except (EOFError, OSError):
            self._thread.join()
            if isinstance(self._error, KitError):
                raise self._error from None
            raise KitError("the notebook's kernel did not start.", do="Run it again.") from self._error

    def _run(self, address: Any, key: bytes, progress: Callable[[str], None] | None) -> None:
        order = self._order
        question = f"import kit.roster.at_work\nkit.roster.at_work.serve(globals(), {address!r}, {key.hex()!r}, "
        try:
            run_and_ask(
                read_notebook(order.notebook),
                order.notebook.parent,
                [f"{question}{order.text()!r})"],
                "",
                name=order.notebook.name,
                timeout=order.timeout,
                progress=progress,
                patient=True,
            )
        except BaseException as error:
            self._error = error
        finally:
            with suppress(OSError, EOFError):  # whoever still waits for the kernel waits in vain
                Client(address, authkey=key).close()

    def make(self, task: Task) -> MadeSet:
        """The set of one body. Raises `KitError` for a body it cannot be made for, also when it takes longer than the
        order's time, and `Lost` when the kernel ended in it."""
        try:
            self._line.send_bytes(pickle.dumps(task))
            if not self._line.poll(self._order.timeout):
                self.end()
                raise KitError(
                    f"this set took longer than {self._order.timeout} s.",
                    do="Look for a loop without an end in the lesson's steps, or give more time with --timeout.",
                )
            answer = pickle.loads(self._line.recv_bytes())
        except (EOFError, OSError) as error:
            self.end()
            raise Lost from error
        if isinstance(answer, KitError):
            raise answer
        assert isinstance(answer, MadeSet)
        return answer

    @property
    def alive(self) -> bool:
        """Whether it can be asked for another."""
        return bool(self._pid)

    def end(self) -> None:
        """End the kernel, whatever it is doing."""
        if not self._pid:
            return
        pid, self._pid = self._pid, 0
        with suppress(OSError):
            self._line.close()
        with suppress(OSError):
            os.kill(pid, getattr(signal, "SIGKILL", signal.SIGTERM))
        self._thread.join(30)
