"""A roster from beginning to end: what is done already stands, the rest is made, and table and index tell of all.

A set is put into its folder as one: its record, `set.json`, is written last and holds a digest of every file and of
all that the set was made from. A set whose record does not fit is made again; nothing else ever is.
"""

from __future__ import annotations

import hashlib
import json
from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path
from time import monotonic
from typing import Any

from kit.atomic import make_folder, write_atomically
from kit.booklet.bodies import Unit, read_people, told_columns
from kit.cores import usable_cores
from kit.errors import KitError
from kit.language import language, say, speaking
from kit.roster.local import local
from kit.roster.order import NO_BOOKLET, MadeSet, Order, Task, tasks
from kit.roster.report import RowReport, write_report

RECORD = "set.json"


@dataclass(frozen=True)
class Roster:
    """What became of a table: its `entries` in the order of the rows, how many sets were `made` now and how many had
    been before (`kept`), the `seconds` it took, and the folders of sets `left` from before that no row stands for now:
    of another table, or of a row that is refused."""

    entries: tuple[RowReport, ...]
    made: int
    kept: int
    seconds: float
    left: tuple[str, ...] = ()

    @property
    def refused(self) -> tuple[RowReport, ...]:
        """The rows there is no set for."""
        return tuple(entry for entry in self.entries if entry.trouble)


def run_roster(
    table: Path,
    order: Order,
    out: Path,
    *,
    units: Unit = "cm",
    named: bool = False,
    workers: int = 0,
    scheduler: str = "",
    progress: Callable[[str], None] = lambda line: None,
    done: Callable[[int, int, float], None] = lambda count, total, left: None,
) -> Roster:
    """Make a set for every row of `table` (numbers without a unit in `units`) as `order` says, each in a folder of
    `out`, with a table and an index page. `named`: the folders are called by the people too. `workers` at once on this
    machine (0: one a core), or on the cluster of `scheduler`. `progress` is told phrases, `done` how many sets are
    there of how many, and about how many seconds are left.

    Raises `KitError` when table, notebook or folder cannot be used. What is made stays, however it ends.
    """
    began = monotonic()
    order = order.checked()
    if order.booklet != NO_BOOKLET and not scheduler:
        from kit.booklet.typesetter import need_typesetter

        need_typesetter()
    people = read_people(table, units)
    for line in told_columns(people):
        progress(line)
    if not order.notebook.is_file():
        from kit.booklet.run_notebook import read_notebook

        read_notebook(order.notebook)  # says what is there instead
    out = make_folder(out)
    label = say("roster.label", number="{number}")
    wanted = tasks(people, order, table, named=named, label=label, out=out)
    records = {task.number: record for task in wanted if (record := _record(out / task.folder, task)) is not None}
    entries = {number: RowReport.read(record, wanted[number - 1]) for number, record in records.items()}
    for task in wanted:
        if task.trouble:
            entries[task.number] = RowReport.refused(task, task.trouble)
    todo = [task for task in wanted if task.number not in entries]
    kept = len(records)
    if kept:
        progress(say("roster.kept", count=kept))
    spoken = next((str(record["language"]) for record in records.values()), "")
    with _makes(order, scheduler, workers, progress) as makes:
        first = monotonic()
        for count, (task, answer) in enumerate(makes(todo), 1):
            if isinstance(answer, MadeSet):
                entries[task.number] = RowReport.read(_place(answer, task, out), task)
                spoken = str(answer.told["language"])
            else:
                entries[task.number] = RowReport.refused(task, str(answer))
            done(count, len(todo), (monotonic() - first) / count * (len(todo) - count))
    found = tuple(entries[task.number] for task in wanted)
    with speaking(spoken or language()):
        write_report(found, out, people)
    used = {task.folder for task in wanted if not entries[task.number].trouble}
    left = tuple(path.parent.name for path in sorted(out.glob(f"*/{RECORD}")) if path.parent.name not in used)
    made = sum(not entries[task.number].trouble for task in todo)
    return Roster(found, made, kept, monotonic() - began, left)


def _makes(order: Order, scheduler: str, workers: int, progress: Callable[[str], None]) -> Any:
    if scheduler:
        from kit.roster.cluster import cluster

        return cluster(order, scheduler)
    return local(order, workers or usable_cores(), progress)


def _record(folder: Path, task: Task) -> dict[str, Any] | None:
    """What the folder says of the set in it, when it is the one asked for and all of it is there, whole."""
    try:
        record = json.loads((folder / RECORD).read_text("utf-8"))
        sums = record["files"]
        if record["digest"] == task.digest and all(_sum((folder / n).read_bytes()) == s for n, s in sums.items()):
            return dict(record)
    except (OSError, ValueError, KeyError, TypeError, AttributeError, RecursionError):
        pass
    return None


def _place(made: MadeSet, task: Task, out: Path) -> dict[str, Any]:
    folder = make_folder(out / task.folder)
    try:
        for name in _recorded(folder) - set(made.files):  # nobody is to print a file of the set before this one
            (folder / name).unlink(missing_ok=True)
        (folder / RECORD).unlink(missing_ok=True)  # while its files change, the folder holds no set
    except OSError as error:
        raise KitError(f"the set of before cannot be replaced ({error.strerror}).", where=str(folder)) from None
    for name, data in made.files.items():
        write_atomically(folder / name, data)
    record = {
        "digest": task.digest,
        "line": task.line,
        "files": {name: _sum(data) for name, data in made.files.items()},
        **made.told,
    }
    write_atomically(folder / RECORD, json.dumps(record, indent=1, ensure_ascii=False) + "\n")
    return record


def _recorded(folder: Path) -> set[str]:
    """The files the folder's record tells of, by name; never one outside the folder, nor the record."""
    try:
        names = json.loads((folder / RECORD).read_text("utf-8"))["files"]
        return {name for name in names if Path(name).name == name and name != RECORD}
    except (OSError, ValueError, KeyError, TypeError, RecursionError):
        return set()


def _sum(data: bytes) -> str:
    return hashlib.sha256(data).hexdigest()


def told_left(seconds: float) -> str:
    """How long it will take, as a person says it: "under a minute", "about 3 min", "about 2 h 10 min"."""
    minutes = round(seconds / 60)
    if seconds < 50:
        return say("roster.left_seconds")
    if minutes < 60:
        return say("roster.left_minutes", minutes=max(minutes, 1))
    return say("roster.left_hours", hours=minutes // 60, minutes=minutes % 60 // 5 * 5)
