"""One making: a student's pattern pages or booklet, in a process of its own.

    python -m kit.room.making LESSON.ipynb ENGINE.json

The job is one JSON line on standard input: {"setting", "paper", "part": "pages" or "booklet", "out"}. What is being
done and how it ended is told as JSON lines on standard output. Pages come from the page's own engine,
which needs no kernel; the booklet runs the notebook as a build does (kit/live/print_job.py). Files take their place
only when all are made.
"""

from __future__ import annotations

import base64
import json
import os
import pickle
import signal
import sys
from contextlib import suppress
from pathlib import Path
from typing import Any

from kit.atomic import write_atomically
from kit.errors import KitError

PAPERS = ("a4", "letter", "a3", "tabloid", "a0")


def main(arguments: list[str]) -> int:
    """Do the job on standard input."""
    out = os.fdopen(os.dup(1), "w", encoding="utf-8", buffering=1)
    os.dup2(2, 1)

    def line(**told: Any) -> None:
        print(json.dumps(told), file=out)

    with suppress(OSError, AttributeError):
        os.nice(10)
    signal.signal(signal.SIGTERM, lambda *_: sys.exit(143))  # cancelled: leave by way of every clean-up
    job = json.loads(sys.stdin.readline())
    lesson, options = Path(arguments[0]).resolve(), json.loads(Path(arguments[1]).read_text("utf-8"))
    try:
        line(done=_made(lesson, options, job, lambda key: line(doing=key)))
    except KitError as error:
        line(failed=str(error).replace(f"{job['out']}{os.sep}", ""))  # where the teacher keeps it is nobody's business
        return 1
    except Exception as error:
        line(failed=type(error).__name__)
        return 1
    return 0


def _made(lesson: Path, options: dict[str, Any], job: dict[str, Any], tell: Any) -> dict[str, Any]:
    from kit.language import speaking
    from kit.page.opened import without_notebook
    from kit.page.setting import read_language
    from kit.paper.papers import paper as named_paper
    from kit.proof import failed, prove
    from kit.room.engine import RoomEngine

    paper = named_paper(job["paper"] if job["paper"] in PAPERS else PAPERS[0])
    tell("print_run")
    without_notebook()
    os.chdir(lesson.parent)
    engine = RoomEngine(
        Path(lesson.name), offered=options["languages"], sliders=options["sliders"], cloth=options["cloth"]
    )
    setting = job["setting"]
    with speaking(read_language(setting, engine.offered)):
        pattern = engine.pattern(setting)
        if job["part"] == "pages":
            from kit.paper.printing import print_files
            from kit.paper.request import PageRequest

            tell("print_prove")
            unsound = failed(prove(pattern))
            tell("print_pages")
            made = print_files(pattern, PageRequest(papers=(paper,)))
            for name, data in made.items():
                write_atomically(Path(job["out"]) / name, data)
            return {"files": list(made), "who": pattern.body.name, "unsound": unsound}
        from kit.live.print_job import PrintJob, make

        own = engine.lesson.body.name not in engine.lesson.sizes.names
        asked = PrintJob(
            notebook=str(lesson),
            out=job["out"],
            paper=paper.name,
            values=engine.lesson.values,
            units=engine.lesson.units,
            size="" if own else engine.lesson.body.name,
            body=base64.b64encode(pickle.dumps(engine.lesson.body)).decode("ascii") if own else "",
            pages=False,
        )
        return make(asked, tell)


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
