"""The rows of a roster handed out on a Dask cluster: the same tasks, on machines that reach the lesson's folder under
the same path and have the kit installed. What a lost worker was making is made again elsewhere; the files come back to
whoever asked, who alone writes them, so nothing is there twice.
"""

from __future__ import annotations

import queue
import threading
from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from typing import Any

from kit.errors import KitError
from kit.roster.local import Answer, Makes
from kit.roster.order import MadeSet, Order, Task
from kit.roster.warm import Lost, Warm

_IDLE: dict[str, queue.SimpleQueue[Warm]] = {}
_LOCK = threading.Lock()


def made_there(order: str, task: Task) -> MadeSet | KitError:
    """On a worker: the set of one body. A kernel is kept for as many tasks as run there at once. Raises `Lost` when the
    kernel ended twice."""
    with _LOCK:
        idle = _IDLE.setdefault(order, queue.SimpleQueue())
    for last in (False, True):
        warm = None
        try:
            warm = idle.get_nowait()
        except queue.Empty:
            pass
        try:
            if warm is None or not warm.alive:
                warm = Warm(Order.read(order))
            made: MadeSet | KitError = warm.make(task)
        except KitError as error:
            made = error
        except Lost:
            if last:
                return KitError("it ended the notebook's kernel, twice.", do="Try this body alone in JupyterLab.")
            continue
        if warm is not None and warm.alive:
            idle.put(warm)
        return made
    raise AssertionError


def _not_made(error: Exception, *, lost: bool) -> KitError:
    """Why there is no set, where that is nothing of the lesson's; `lost`: the scheduler does not answer any more."""
    if lost:
        do = "See that scheduler and network are there again, and run the same command once more: what is made stands."
        return KitError("the connection to the scheduler was lost before this set was made.", do=do)
    what = " ".join(f"{type(error).__name__}: {error}".split())[:200]
    return KitError(f"no worker could make this set ({what}).", do="Run the same command again.")


@contextmanager
def cluster(order: Order, scheduler: str, *, patience: str = "60s") -> Iterator[Makes]:
    """Inside the block: what makes the sets of tasks on the cluster whose scheduler is at `scheduler`, such as
    "tcp://10.0.0.5:8786", and gives each as it is ready. Raises `KitError` when Dask is not installed, and when nobody
    answers there for `patience`. A set that no worker could make is refused by itself."""
    try:
        from distributed import Client, as_completed
    except ImportError:
        raise KitError(
            "sets can be made beyond this machine with Dask, which is not installed.",
            where="--scheduler",
            do="Install it on every machine: pip install 'pattern-lesson-kit[cluster]'. Or leave --scheduler out.",
        ) from None
    try:
        client: Any = Client(scheduler, timeout=patience, set_as_default=False)
    except (OSError, ValueError, TimeoutError) as error:
        reason = " ".join(str(error).split())[:160]
        raise KitError(
            f"no scheduler answers at '{scheduler}' ({reason}).",
            where="--scheduler",
            do="Start one with `dask scheduler` and workers with `dask worker ADDRESS --nthreads 1`.",
        ) from None

    def made(tasks: Sequence[Task]) -> Iterator[Answer]:
        text = order.text()
        waiting = {
            client.submit(made_there, text, task, key=f"set-{task.digest}-{task.number}", pure=False): task
            for task in tasks
        }
        with client.as_current():
            ready = as_completed(list(waiting))
        for future in ready:
            task = waiting.pop(future)
            try:
                yield task, future.result()
            except Exception as error:
                yield task, _not_made(error, lost=client.status != "running")
            future.release()

    try:
        yield made
    finally:
        client.close()
