"""The rows of a roster handed out on this machine: as many warm kernels as cores, each asking for the next row."""

from __future__ import annotations

import queue
import threading
from collections.abc import Callable, Iterator, Sequence
from contextlib import contextmanager

from kit.errors import KitError
from kit.roster.order import MadeSet, Order, Task
from kit.roster.warm import Lost, Warm

Answer = tuple[Task, "MadeSet | KitError"]
Makes = Callable[[Sequence[Task]], Iterator[Answer]]
_TRIES = 2


@contextmanager
def local(
    order: Order, workers: int, progress: Callable[[str], None]
) -> Iterator[Callable[[Sequence[Task]], Iterator[Answer]]]:
    """Inside the block: what makes the sets of tasks and gives each as it is ready. However the block ends, no kernel
    lives on. Raises `KitError` when the notebook cannot be run."""
    crew = _Crew(order, progress)
    try:
        yield lambda tasks: crew.made(tasks, workers)
    finally:
        crew.end()


class _Crew:
    def __init__(self, order: Order, progress: Callable[[str], None]) -> None:
        self._order, self._progress = order, progress
        self._todo: queue.SimpleQueue[tuple[Task, int]] = queue.SimpleQueue()
        self._done: queue.SimpleQueue[Answer | BaseException] = queue.SimpleQueue()
        self._kept: list[Warm] = []
        self._lock = threading.Lock()
        self._ending = False

    def made(self, tasks: Sequence[Task], workers: int) -> Iterator[Answer]:
        for task in tasks:
            self._todo.put((task, 1))
        # One alone runs the notebook first: what is wrong with it is said once, and before others begin.
        first = self._begin(self._progress) if tasks else None
        for number in range(min(workers, len(tasks))):
            threading.Thread(target=self._work, args=(first if number == 0 else None,), daemon=True).start()
        for _ in tasks:
            answer = self._done.get()
            if isinstance(answer, BaseException):
                raise answer
            yield answer

    def _begin(self, progress: Callable[[str], None] | None = None) -> Warm:
        warm = Warm(self._order, progress)
        with self._lock:
            self._kept.append(warm)
            ending = self._ending
        if ending:
            warm.end()
        return warm

    def _work(self, warm: Warm | None) -> None:
        try:
            while not self._ending:
                try:
                    task, tries = self._todo.get_nowait()
                except queue.Empty:
                    return
                if warm is None or not warm.alive:
                    warm = self._begin()
                try:
                    self._done.put((task, warm.make(task)))
                except KitError as error:
                    self._done.put((task, error))
                except Lost:
                    if self._ending:
                        return
                    if tries < _TRIES:
                        self._todo.put((task, tries + 1))
                        continue
                    ended = KitError("it ended the notebook's kernel, twice.", do="Try this body alone in JupyterLab.")
                    self._done.put((task, ended))
        except BaseException as error:
            self._done.put(error)

    def end(self) -> None:
        with self._lock:
            self._ending = True
            kept, self._kept = self._kept, []
        for warm in kept:
            warm.end()
