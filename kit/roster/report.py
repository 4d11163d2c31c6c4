"""The table and the index page of a roster. Neither names anybody: people are called by their number, and their folders
as the teacher asked."""

from __future__ import annotations

import csv
import io
from collections.abc import Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from jinja2 import Environment, FileSystemLoader, StrictUndefined

from kit.atomic import write_atomically
from kit.body.measures import said
from kit.booklet.bodies import People
from kit.language import language, say
from kit.resources import templates
from kit.roster.order import SUMMARY, Task

TABLE, INDEX = SUMMARY, "index.html"


@dataclass(frozen=True)
class RowReport:
    """What became of one row: its `label` and `line`, the `folder` and `files` of its set, what to buy (`cloth`), the
    changes of `fit` proposed, `doubts` about the body, what the proof `found` (sentences), whether it `failed`, which
    measurements were `estimated`, `finished` measurements in words; `trouble`: why there is no set."""

    number: int
    line: int
    label: str
    folder: str = ""
    title: str = ""
    files: tuple[str, ...] = ()
    cloth: tuple[str, ...] = ()
    fit: tuple[str, ...] = ()
    doubts: tuple[str, ...] = ()
    found: tuple[str, ...] = ()
    estimated: tuple[str, ...] = ()
    finished: tuple[tuple[str, str], ...] = ()
    failed: bool = False
    trouble: str = ""

    @staticmethod
    def read(record: dict[str, Any], task: Task) -> RowReport:
        """From the record of a set."""
        findings = [f for f in record["findings"] if f["level"] != "note"]
        return RowReport(
            task.number,
            task.line,
            record["label"],
            task.folder,
            record["title"],
            tuple(sorted(record["files"])),
            tuple(record["cloth"]),
            tuple(record["fit"]),
            tuple(record["doubts"]),
            tuple(" ".join(f"{f['where']}: {f['what']} {f['do']}".split()) for f in findings),
            tuple(record["estimated"]),
            tuple(record["finished"].items()),
            bool(record["failed"]),
        )

    @staticmethod
    def refused(task: Task, trouble: str) -> RowReport:
        """A row that there is no set for."""
        return RowReport(task.number, task.line, task.label, trouble=trouble.removeprefix(f"{task.label}, "))

    @property
    def state(self) -> str:
        """Whether it may be cut, in a word or two."""
        return say("roster.none" if self.trouble else "roster.failed" if self.failed else "roster.ready")


def write_report(entries: Sequence[RowReport], out: Path, people: People) -> tuple[Path, Path]:
    """Write summary.csv and index.html into `out`. Raises `KitError` when they cannot be written."""
    return write_atomically(out / TABLE, table(entries)), write_atomically(out / INDEX, index(entries, people))


def table(entries: Sequence[RowReport]) -> str:
    """A row for each set, as CSV that any spreadsheet opens."""
    finished = list(dict.fromkeys(title for entry in entries for title, _ in entry.finished))
    heads = ("number", "line", "state", "folder", "cloth", "fit", "doubts", "found", "estimated", "trouble")
    text = io.StringIO()
    write = csv.writer(text, lineterminator="\n")
    write.writerow([*(say(f"roster.{head}") for head in heads), *map(_cell, finished)])
    for entry in entries:
        sizes = dict(entry.finished)
        cells = [
            str(entry.number),
            str(entry.line),
            entry.state,
            entry.folder,
            "; ".join(entry.cloth),
            " ".join(entry.fit),
            " ".join(entry.doubts),
            " ".join(entry.found),
            ", ".join(map(said, entry.estimated)),
            entry.trouble,
        ]
        write.writerow([*map(_cell, cells), *(_cell(sizes.get(title, "")) for title in finished)])
    return "\ufeff" + text.getvalue()


def _cell(text: str) -> str:
    """A cell that no spreadsheet takes for a formula (OWASP, "CSV Injection")."""
    return f"'{text}" if text[:1] in "=+-@\t\r" and text else text


def index(entries: Sequence[RowReport], people: People) -> str:
    """The page that all sets are opened from."""
    environment = Environment(
        loader=FileSystemLoader(templates() / "roster"), autoescape=True, undefined=StrictUndefined, trim_blocks=True
    )
    title = next((entry.title for entry in entries if entry.title), "")
    ready = sum(not entry.trouble and not entry.failed for entry in entries)
    return environment.get_template("index.html.j2").render(
        entries=entries,
        title=title,
        language=language(),
        say=say,
        said=said,
        ready=ready,
        ignored=[column for column, _ in people.ignored],
    )
