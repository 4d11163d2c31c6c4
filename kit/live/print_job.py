"""Making a student's own booklet and pattern pages, in a process of its own.

    python -m kit.live.print_job        one job as JSON on standard input, progress and the outcome as JSON lines

The lesson's notebook is run afresh with the student's values and body, as a build runs it, and nothing is written
beside it. Both files are made before either is put in its place, so that a job that fails or is cancelled leaves the
former ones.
"""

from __future__ import annotations

import base64
import contextlib
import json
import os
import pickle
import signal
import sys
from collections.abc import Mapping
from dataclasses import asdict, dataclass
from pathlib import Path
from typing import Any

from kit.atomic import write_atomically
from kit.body.body import Body
from kit.booklet import handover
from kit.booklet.run_notebook import read_notebook, run_and_ask
from kit.diagnostic import message
from kit.errors import KitError
from kit.lesson.another import find_lesson
from kit.paper.papers import paper as named_paper
from kit.units import Length, System

BOOKLET = "booklet.pdf"


@dataclass(frozen=True)
class PrintJob:
    """What is to be made: the lesson's `notebook` worked for `size` or the pickled `body` (base64) and `values`
    (name -> mm, share or count), for `paper`, into the folder `out`; `booklet` and `pages` as they are wanted."""

    notebook: str
    out: str
    paper: str
    values: dict[str, float]
    units: System
    size: str = ""
    body: str = ""
    booklet: bool = True
    timeout: int = 120
    pages: bool = True

    def text(self) -> str:
        return json.dumps(asdict(self))


def dressed(namespace: Mapping[str, Any], job: Mapping[str, Any]) -> None:
    """In the lesson's kernel: choose what the student chose, and hand the pattern over."""
    try:
        lesson = find_lesson(namespace)
        body: Body | None = pickle.loads(base64.b64decode(job["body"])) if job["body"] else None
        lesson.choose(size=job["size"], body=body, units=job["units"])
        kinds = {p.name: p.kind for p in lesson.parameters}
        values = {name: value for name, value in job["values"].items() if name in kinds}
        lesson.change(**{n: Length(v) if kinds[n] == "length" else v for n, v in values.items()})
    except KitError as error:
        _send(error)
        return
    handover.send(namespace, None, None)


def _send(error: KitError) -> None:
    from IPython.display import publish_display_data

    publish_display_data({handover.MIMETYPE: base64.b64encode(pickle.dumps(error)).decode("ascii")})


def make(job: PrintJob, tell: Any) -> dict[str, Any]:
    """Make the files of `job`. `tell` is called with the key of a sentence as each part begins. Gives the file names
    and what to say of them. Raises `KitError`; the earlier files are untouched then."""
    from kit.paper.printing import print_files
    from kit.paper.request import PageRequest
    from kit.proof import failed, prove

    notebook = Path(job.notebook)
    tell("print_run")
    question = f"import kit.live.print_job\nkit.live.print_job.dressed(globals(), {asdict(job)!r})"
    book, (answer,) = run_and_ask(
        read_notebook(notebook),
        notebook.resolve().parent,
        [question],
        handover.MIMETYPE,
        name=notebook.name,
        timeout=job.timeout,
    )
    if not answer:
        raise KitError(message("paper.no_pattern"), do=message("paper.no_pattern_do"))
    worked = handover.receive(answer)
    tell("print_prove")
    findings = prove(worked.pattern)
    made: dict[str, bytes] = {}
    if job.booklet:
        from kit.booklet.compose import compose
        from kit.booklet.fetch import LessonFolder
        from kit.booklet.html import to_html
        from kit.booklet.typesetter import load_typesetter, need_typesetter

        need_typesetter()
        load_typesetter()
        from kit.booklet.render import to_pdf

        tell("print_booklet")
        folder = LessonFolder(notebook.resolve().parent)
        made[BOOKLET] = to_pdf(to_html(compose(worked, book, folder, findings)), folder)
    if job.pages:
        tell("print_pages")
        made.update(print_files(worked.pattern, PageRequest(papers=(named_paper(job.paper),))))
    out = Path(job.out)
    for name, data in made.items():
        write_atomically(out / name, data)
    return {"files": list(made), "who": worked.pattern.body.name, "unsound": failed(findings)}


def main() -> int:
    """Do the job on standard input."""
    out = os.fdopen(os.dup(1), "w", encoding="utf-8")
    os.dup2(2, 1)  # what the lesson's code prints must not mix with what is told here

    def line(**told: Any) -> None:
        print(json.dumps(told), file=out, flush=True)

    def tell(key: str) -> None:
        line(doing=key)

    with contextlib.suppress(OSError, AttributeError):
        os.nice(10)
    signal.signal(signal.SIGTERM, lambda *_: sys.exit(143))  # cancelled: leave by way of every clean-up
    try:
        job = PrintJob(**json.load(sys.stdin))
        line(done=make(job, tell))
    except KitError as error:
        line(failed=str(error))
        return 1
    except Exception as error:
        line(failed=f"{type(error).__name__}: {error}")
        raise
    return 0


if __name__ == "__main__":
    sys.exit(main())
