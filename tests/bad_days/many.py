"""Rosters on a bad day: a worker is lost, a set is damaged, the disk is full."""

from __future__ import annotations

import errno
import json
import os
import signal
import subprocess
import sys
import time
from pathlib import Path

import pytest

from kit.roster import run as running
from kit.roster.local import local
from kit.roster.order import MadeSet, Order, Task
from kit.roster.run import RECORD, run_roster

from .day import Day, fault, said

PEOPLE = "name,bust\nA,96\nB,88\nC,92\n"


class Pretended:
    """Sets of a few bytes, made without a kernel, so that what becomes of them can be looked at."""

    def __init__(self, day: Day) -> None:
        self.asked: list[int] = []

        class Makes:
            def __enter__(this):  # type: ignore[no-untyped-def]
                return self.made

            def __exit__(this, *given):  # type: ignore[no-untyped-def]
                return None

        day.patch.setattr(running, "_makes", lambda *given: Makes())

    def made(self, tasks):  # type: ignore[no-untyped-def]
        for task in tasks:
            self.asked.append(task.number)
            told = {"label": task.label, "language": "en", "title": "Napkin", "failed": False, "findings": []}
            told |= {"doubts": [], "estimated": [], "fit": [], "cloth": [], "finished": {}, "left_out": []}
            yield task, MadeSet({"pages-a4.pdf": f"%PDF {task.number}".encode(), "pattern.json": b"{}"}, told)


def begun(day: Day) -> tuple[Path, Order, Path, Pretended]:
    day.lesson()
    table = day.keeps(day.folder / "class.csv", PEOPLE)
    return table, Order(day.notebook, "none"), day.folder / "sets", Pretended(day)


@fault("Roster", "a set was damaged since it was made", "the others, untouched; it alone is made again", True)
def damaged(day: Day) -> str:
    table, order, out, made = begun(day)
    run_roster(table, order, out)
    whole = {path: path.stat().st_mtime_ns for path in out.glob("0[13]/*")}
    (out / "02" / "pages-a4.pdf").write_bytes(b"%PDF half")
    again = run_roster(table, order, out)
    assert (again.made, again.kept) == (1, 2) and made.asked == [1, 2, 3, 2]
    assert {path: path.stat().st_mtime_ns for path in out.glob("0[13]/*")} == whole
    return "2 sets are there already and stand."


@fault("Roster", "the record of a set is nested without end", "the others; it alone is made again")
def bad_record(day: Day) -> str:
    table, order, out, made = begun(day)
    run_roster(table, order, out)
    (out / "03" / RECORD).write_text("[" * 100_000)
    again = run_roster(table, order, out)
    assert (again.made, again.kept) == (1, 2) and made.asked[3:] == [3]
    return "2 sets are there already and stand."


@fault("Roster", "the disk is full at the second set", "the first set; the next run makes the rest")
def full_at_a_set(day: Day) -> str:
    table, order, out, _ = begun(day)
    real, count = os.fsync, [0]

    def no_room(number: int) -> None:
        count[0] += 1
        if count[0] > 4:
            raise OSError(errno.ENOSPC, os.strerror(errno.ENOSPC))
        real(number)

    with day.patch.context() as patch:
        patch.setattr("kit.atomic.os.fsync", no_room)
        text = said(lambda: run_roster(table, order, out))
    again = run_roster(table, order, out)
    assert again.kept >= 1 and again.made + again.kept == 3, (again.made, again.kept)
    return text.replace(str(day.folder), "FOLDER")


@fault("Roster", "it is killed between two files of a set", "whole sets; the half one is made again")
def killed_in_a_set(day: Day) -> str:
    table, order, out, _ = begun(day)
    real = running.write_atomically

    def cut(path: Path, content: bytes | str) -> Path:
        if path.parent.name == "02" and path.name == "pattern.json":
            raise KeyboardInterrupt
        return real(path, content)

    with day.patch.context() as patch:
        patch.setattr(running, "write_atomically", cut)
        with pytest.raises(KeyboardInterrupt):
            run_roster(table, order, out)
    assert not (out / "02" / RECORD).exists()
    again = run_roster(table, order, out)
    assert (again.made, again.kept) == (2, 1)
    return "1 set is there already and stands."


@fault("Roster", "the table is taken away in mid-run", "the sets that are made")
def no_table(day: Day) -> str:
    table, order, out, _ = begun(day)
    run_roster(table, order, out)
    table.unlink()
    day.wanted.pop(table)
    sets = {path: path.read_bytes() for path in out.glob("*/*")}
    text = said(lambda: run_roster(table, order, out))
    assert {path: path.read_bytes() for path in out.glob("*/*")} == sets
    return text.replace(str(day.folder), "FOLDER")


def three() -> list[Task]:
    return [Task(i, i + 1, f"No. {i}", f"{i:02}", (("bust_girth", 900.0 + 10 * i),)) for i in range(1, 4)]


@fault("Worker", "it is killed after its first set", "every set: another worker makes the rest")
def worker_killed(day: Day) -> str:
    order = Order(day.lesson(), "none")
    made: list[int] = []
    with local(order, 1, lambda line: None) as makes:
        for task, answer in makes(three()):
            assert isinstance(answer, MadeSet), answer
            made.append(task.number)
            if len(made) == 1:
                os.kill(makes.__closure__[0].cell_contents._kept[-1]._pid, signal.SIGKILL)  # type: ignore[attr-defined]
    assert sorted(made) == [1, 2, 3]
    return "(nothing: all sets are made)"


@fault("Worker", "one body ends it each time", "every other set; that row is told")
def worker_deadly(day: Day) -> str:
    deadly = "import os\n@lesson.step('End')\ndef end(front, bust_girth):\n    '''Look.'''\n"
    deadly += "    if abs(float(bust_girth) - 920) < 1: os._exit(9)"
    order = Order(day.lesson(deadly), "none")
    told: dict[int, str] = {}
    with local(order, 1, lambda line: None) as makes:
        for task, answer in makes(three()):
            told[task.number] = "" if isinstance(answer, MadeSet) else str(answer)
    assert told[1] == told[3] == "" and told[2]
    return told[2]


@fault("Worker", "no scheduler answers", "what was there")
def no_scheduler(day: Day) -> str:
    distributed = pytest.importorskip("distributed")
    from kit.roster.cluster import cluster

    assert distributed
    order = Order(day.lesson(), "none")

    def ask() -> None:
        with cluster(order, "tcp://127.0.0.1:1", patience="1s"):
            pass

    text = said(ask)
    return text.split("(")[0] + "(...)" + text.rsplit(")", 1)[-1]


@fault("Worker", "two of one cluster, one is killed in the middle", "every set once")
def cluster_killed(day: Day) -> str:
    """The whole of it is `tests/roster/test_cluster.py`; here the sets are counted."""
    distributed = pytest.importorskip("distributed")
    import threading

    order = Order(day.lesson(), "none")
    table = day.keeps(day.folder / "class.csv", "name,bust\n" + "".join(f"P{i},{84 + 3 * i}\n" for i in range(5)))
    with distributed.LocalCluster(
        n_workers=2, threads_per_worker=1, processes=True, dashboard_address=None, silence_logs=50
    ) as there:
        with distributed.Client(there.scheduler_address, set_as_default=False) as client:
            first = min(client.run(os.getpid).values())
        struck = threading.Event()

        def strike(count: int, total: int, left: float) -> None:
            if count == 1 and not struck.is_set():
                struck.set()
                os.kill(first, signal.SIGKILL)

        made = run_roster(table, order, day.folder / "sets", scheduler=there.scheduler_address, done=strike)
    assert struck.is_set() and made.made == 5, [entry.trouble for entry in made.entries]
    return "(nothing: all sets are made)"


@fault("Worker", "the scheduler of a cluster is lost", "the sets that are made; the next run makes the rest")
def scheduler_lost(day: Day) -> str:
    """In the middle of a roster; scheduler and worker are processes of their own, as on several machines."""
    distributed = pytest.importorskip("distributed")
    dask = pytest.importorskip("dask")
    assert distributed
    order = Order(day.lesson(), "none")
    table = day.keeps(day.folder / "class.csv", PEOPLE)
    file = day.folder / "scheduler.json"
    options = ["--no-dashboard", "--scheduler-file", str(file)]
    begun = [
        subprocess.Popen(
            [sys.executable, "-m", f"distributed.cli.dask_{what}", *more],
            stdout=subprocess.DEVNULL,
            stderr=subprocess.DEVNULL,
            start_new_session=True,
        )
        for what, more in (
            ("scheduler", ["--port", "0", *options]),
            ("worker", ["--nthreads", "1", "--no-nanny", "--death-timeout", "60", *options]),
        )
    ]
    try:
        while not file.is_file() or not file.read_text():
            time.sleep(0.1)
        address = json.loads(file.read_text())["address"]
        made: list[int] = []

        def strike(count: int, total: int, left: float) -> None:
            made.append(count)
            if count == 1:
                begun[0].kill()

        with dask.config.set({"distributed.comm.timeouts.connect": "3s"}):
            first = run_roster(table, order, day.folder / "sets", scheduler=address, done=strike)
    finally:
        for process in begun:
            process.kill()
            process.wait()
    assert first.made >= 1 and len(first.refused) == 3 - first.made, [entry.trouble for entry in first.entries]
    again = run_roster(table, order, day.folder / "sets", workers=1)
    assert again.kept == first.made and again.made + again.kept == 3
    assert all("connection to the scheduler was lost" in entry.trouble for entry in first.refused)
    return first.refused[0].trouble
