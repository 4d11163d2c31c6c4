"""One build: a notebook becomes booklet, pattern pages and their data, all or nothing.

Everything is made in a temporary folder beside the output; only when all of it is there do the files take
the place of the old ones, each in a single step. A build that fails leaves the last good output as it was.
"""

from __future__ import annotations

import json
import os
import shutil
import tempfile
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path
from time import perf_counter

from kit.atomic import make_folder, write_atomically
from kit.booklet.compose import compose
from kit.booklet.fetch import LessonFolder
from kit.booklet.render import to_html, to_pdf
from kit.booklet.run_notebook import read_notebook, run_notebook
from kit.errors import KitError
from kit.lesson.pattern import Pattern
from kit.paper.export import write_pages
from kit.proof import Finding, failed, prove
from kit.units import System

FILES = (
    "booklet.pdf",
    "booklet.html",
    "pages-a4.pdf",
    "pages-letter.pdf",
    "sheet.pdf",
    "pattern.json",
    "findings.json",
)


@dataclass(frozen=True)
class Built:
    """What a build made: `paths` by file name, the `findings` of the proof, seconds by stage, and what the
    markup asked for that was `left_out`."""

    pattern: Pattern
    paths: dict[str, Path]
    findings: tuple[Finding, ...]
    timings: dict[str, float]
    left_out: tuple[str, ...] = ()

    @property
    def failed(self) -> bool:
        """Whether the proof found an error."""
        return failed(self.findings)


def build(
    notebook: Path,
    out: Path,
    *,
    size: str | None = None,
    units: System | None = None,
    progress: Callable[[str], None] = lambda line: None,
    timeout: int = 120,
) -> Built:
    """Run `notebook` and write its booklet and pattern pages into the folder `out`.

    `size` and `units` None: as saved beside the notebook. Raises `KitError` for whatever stops the build;
    nothing in `out` has changed then.
    """
    timings: dict[str, float] = {}
    stage = _Stages(timings)
    book_node = read_notebook(notebook)
    _writable(out)
    with stage("notebook"):
        progress(f"Running {notebook.name} from the top")
        ran = run_notebook(
            book_node,
            notebook.resolve().parent,
            name=notebook.name,
            size=size,
            units=units,
            timeout=timeout,
            progress=lambda line: progress(f"  {line}"),
        )
    pattern = ran.handover.pattern
    with stage("proof"):
        progress("Proving the pattern and the sewing order")
        findings = prove(pattern)
    with tempfile.TemporaryDirectory(prefix=".lessonkit-", dir=out, ignore_cleanup_errors=True) as scratch:
        made = Path(scratch)
        lesson = LessonFolder(notebook.resolve().parent)
        with stage("pictures and words"):
            progress("Writing the booklet")
            html = to_html(compose(ran.handover, ran.notebook, lesson, findings))
            write_atomically(made / "booklet.html", html)
        with stage("booklet pdf"):
            progress("Setting the booklet in type")
            write_atomically(made / "booklet.pdf", to_pdf(html, lesson))
        with stage("pattern pages"):
            progress("Laying out the pattern pages")
            write_pages(pattern, made, lambda line: progress(f"  {line}"))
        data = {"lesson": pattern.lesson.title, "size": pattern.body.name, "failed": failed(findings)}
        data["findings"] = [finding.as_dict() for finding in findings]
        write_atomically(made / "findings.json", json.dumps(data, indent=1, ensure_ascii=False) + "\n")
        missing = [name for name in FILES if not (made / name).is_file()]
        if missing:
            raise KitError(f"the build did not make {', '.join(missing)}.", do="Build again.")
        paths = _swap_in(made, out)
    return Built(pattern, paths, findings, timings, tuple(dict.fromkeys(lesson.left_out)))


class _Stages:
    def __init__(self, timings: dict[str, float]) -> None:
        self._timings = timings

    @contextmanager
    def __call__(self, name: str) -> Iterator[None]:
        began = perf_counter()
        yield
        self._timings[name] = perf_counter() - began


def _writable(out: Path) -> None:
    """Refuse an output folder that cannot be written before the work begins."""
    make_folder(out)
    try:
        with tempfile.TemporaryFile(dir=out):
            pass
    except OSError as error:
        raise KitError(
            f"nothing can be written there ({error.strerror}).",
            where=str(out),
            do="What was there before is untouched. Choose another folder with --out, or make this one writable.",
        ) from error
    blocked = [name for name in FILES if (out / name).is_dir()]
    if blocked:
        raise KitError(
            f"there is a folder called {blocked[0]} where the file should go.",
            where=str(out),
            do="Move that folder away, or choose another folder with --out.",
        )


def _swap_in(made: Path, out: Path) -> dict[str, Path]:
    """Put every new file in the place of the old one. When one cannot be placed, those already placed are
    put back."""
    kept = made / "before"
    kept.mkdir()
    placed: list[str] = []
    try:
        for name in FILES:
            if (out / name).exists():
                shutil.copy2(out / name, kept / name)
        for name in FILES:
            os.replace(made / name, out / name)
            placed.append(name)
    except OSError as error:
        for name in placed:
            if (kept / name).exists():
                os.replace(kept / name, out / name)
            else:
                (out / name).unlink(missing_ok=True)
        raise KitError(
            f"the finished files cannot be put in place ({error.strerror}).",
            where=str(out),
            do="The earlier files are as they were. Close programs that hold them open, or choose another folder.",
        ) from error
    return {name: out / name for name in FILES}
