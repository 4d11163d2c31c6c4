"""Laying many sizes side by side in two processes.

This process takes its share of the jobs and hands the rest to a child: this same Python, with the current folder off
its path, running nothing but this module. Jobs and answers travel as pickles through pipes that only the two of them
hold. A child costs most of a second to begin, so that it is asked only where the jobs that were done first say that
there is more to do than that; where none can be had, or it ends early, all is done here. What is found is the same
either way.
"""

from __future__ import annotations

import contextlib
import os
import pickle
import subprocess
import sys
from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, field
from pathlib import Path
from time import perf_counter
from types import TracebackType
from typing import Any

from kit.cloth.arranged import HINTED, Hints, Try
from kit.cloth.lay import CuttingTable
from kit.cores import usable_cores
from kit.pausing import pause_here

_KIT = Path(__file__).resolve().parents[2]
WORTH = 1.2
"""Seconds of work that are left from which a second process is worth its beginning."""
_BEGIN = 0.7
"""Seconds that are worked here while a child begins."""
_LOOK = 0.2
"""Seconds after which it is clear how long the rest takes, about."""


@dataclass(frozen=True)
class LayJob:
    """One `table` to lay at a `width`, as `CuttingTable.tries` does."""

    table: CuttingTable
    width: float
    placed: int
    hints: Mapping[str, Hints] = field(default_factory=dict)
    seed: int = 1

    def work(self) -> tuple[Try, ...]:
        """The best of each way to lay."""
        return self.table.tries(self.width, self.placed, self.hints, self.seed)

    @property
    def weight(self) -> int:
        """About how many shapes are laid in doing it."""
        items = len(self.table.flat_items())
        orders = sum(len(part) for hint in self.hints.values() for part in hint)
        return items * orders + (2 * self.placed if items > 1 and self.placed > HINTED else items)


class SideBySide:
    """Works jobs here and in one other process, which is begun when it is first worth it and ends with the block."""

    def __init__(self, cores: int | None = None) -> None:
        self._cores = cores or usable_cores()
        self._child: subprocess.Popen[bytes] | None = None

    def __enter__(self) -> SideBySide:
        return self

    def __exit__(
        self, kind: type[BaseException] | None, error: BaseException | None, trace: TracebackType | None
    ) -> None:
        self._leave()

    def work(self, jobs: Sequence[LayJob]) -> list[tuple[Try, ...]]:
        """What each of `jobs` finds, in their order."""
        found: dict[int, tuple[Try, ...]] = {}
        heaviest = sorted(range(len(jobs)), key=lambda at: (-jobs[at].weight, at))
        began, done = perf_counter(), 0
        while heaviest and self._child is None and perf_counter() - began < _LOOK:
            at = heaviest.pop(0)
            pause_here()
            found[at] = jobs[at].work()
            done += jobs[at].weight
        pace = (perf_counter() - began) / done if done else 0.0
        here, there = self._dealt([(at, jobs[at].weight) for at in heaviest], pace)
        child = self._child_for([jobs[at] for at in there])
        if child is None:
            here, there = heaviest, []
        for at in here:
            pause_here()
            found[at] = jobs[at].work()
        if child is not None:
            try:
                assert child.stdout is not None
                found.update(zip(there, pickle.load(child.stdout), strict=True))
            except (OSError, EOFError, pickle.UnpicklingError, ValueError):
                self._leave()
                self._cores = 1
                found.update((at, jobs[at].work()) for at in there)
        return [found[at] for at in range(len(jobs))]

    def _dealt(self, jobs: Sequence[tuple[int, int]], pace: float) -> tuple[list[int], list[int]]:
        """Which of these jobs, each with its weight, are worked here and which beside: the heaviest first, each where
        less is to do yet. `pace` is how many seconds a weight of one takes, 0 where a child is there already."""
        if self._cores < 2 or (self._child is None and pace * sum(weight for _, weight in jobs) < WORTH):
            return [at for at, _ in jobs], []
        loads = [0.0, _BEGIN / pace if pace else 0.0]
        dealt: tuple[list[int], list[int]] = ([], [])
        for at, weight in jobs:
            side = 0 if loads[0] <= loads[1] else 1
            dealt[side].append(at)
            loads[side] += weight
        return dealt

    def _child_for(self, jobs: Sequence[LayJob] | Any) -> subprocess.Popen[bytes] | None:
        """The child, begun if need be, with these jobs in hand; None where there are none or it cannot be had."""
        if not jobs:
            return None
        try:
            if self._child is None:
                self._child = _begun()
            assert self._child.stdin is not None
            pickle.dump(list(jobs), self._child.stdin)
            self._child.stdin.flush()
        except (OSError, ValueError, pickle.PicklingError):
            self._leave()
            self._cores = 1
        return self._child

    def _leave(self) -> None:
        child, self._child = self._child, None
        if child is None:
            return
        child.kill()
        for pipe in (child.stdin, child.stdout):
            with contextlib.suppress(OSError):
                if pipe is not None:
                    pipe.close()
        child.wait()


def _begun() -> subprocess.Popen[bytes]:
    paths = os.pathsep.join(filter(None, (str(_KIT), os.environ.get("PYTHONPATH", ""))))
    return subprocess.Popen(
        [sys.executable, "-P", "-m", __name__ if __name__ != "__main__" else "kit.cloth.side_by_side"],
        env={**os.environ, "PYTHONPATH": paths},
        stdin=subprocess.PIPE,
        stdout=subprocess.PIPE,
        stderr=subprocess.DEVNULL,
    )


def _child(read: Callable[[], Any], write: Callable[[bytes], Any]) -> None:
    """Work batches of jobs until no more come."""
    while True:
        try:
            jobs: list[LayJob] = read()
        except EOFError:
            return
        write(pickle.dumps([job.work() for job in jobs]))


if __name__ == "__main__":
    # What is printed must not mix with the answers.
    answers = os.fdopen(os.dup(sys.stdout.fileno()), "wb", buffering=0)
    os.dup2(sys.stderr.fileno(), sys.stdout.fileno())
    _child(lambda: pickle.load(sys.stdin.buffer), answers.write)
