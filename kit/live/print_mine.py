"""“Print my size”: a student's own booklet and pattern pages, made beside the running notebook.

The work is done in another process, so that the sliders stay quick and it can be cancelled. Its files lie in a folder
of the student's; a job that fails leaves those of the last that did not.
"""

from __future__ import annotations

import atexit
import base64
import json
import os
import pickle
import signal
import subprocess
import sys
import threading
from datetime import datetime
from html import escape
from pathlib import Path
from typing import Any
from weakref import WeakSet

import ipywidgets as widgets

from kit.diagnostic import message
from kit.errors import KitError
from kit.language import say
from kit.lesson.lesson import Lesson
from kit.lesson.where import here
from kit.live import fragments
from kit.live.class_lesson import opened_from
from kit.live.pace import running_loop
from kit.live.print_job import BOOKLET, PrintJob

PAPERS = ("a4", "letter", "a3", "tabloid", "a0")
FOLDER = "my-pattern"
STEPS = ("print_run", "print_prove", "print_booklet", "print_pages")


def print_mine(lesson: Lesson) -> PrintMine:
    """A button that makes booklet and pattern pages of `lesson` for the size or body and the values chosen just now,
    into the folder `my-pattern` beside the notebook. Raises `KitError` for something that is not a lesson."""
    if not isinstance(lesson, Lesson):
        raise KitError(
            f"only a lesson can be printed, not {type(lesson).__name__}.",
            do="Write print_mine(lesson), with the lesson's own name.",
        )
    return PrintMine(lesson)


class PrintMine(widgets.VBox):
    """The widget `print_mine` gives. Its parts: `paper`, `booklet`, `make`, `cancel`, `bar`, `message`, `files` (the
    links). `busy` while something is made."""

    def __init__(self, lesson: Lesson) -> None:
        self.lesson = lesson
        self.out = Path(FOLDER)
        self._running: subprocess.Popen[str] | None = None
        self._cancelled = False
        self._build()
        super().__init__([self._head, self._progress, self.message, self.files])
        self.add_class("lessonkit-print")
        _open.add(self)
        self._list()

    @property
    def busy(self) -> bool:
        return self._running is not None

    def _build(self) -> None:
        plain = {"width": "auto"}
        self.make = widgets.Button(
            description=say("class_copy.print_mine"),
            tooltip=say("class_copy.print_tooltip"),
            button_style="primary",
            layout=plain,
        )
        from kit.paper.papers import paper

        self.paper = widgets.Dropdown(
            description=say("class_copy.paper"),
            options=[(paper(name).said, name) for name in PAPERS],
            value="letter" if self.lesson.units == "inch" else "a4",
            layout={"width": "auto"},
        )
        self.booklet = widgets.Checkbox(
            value=True, indent=False, description=say("class_copy.booklet_too"), layout=plain
        )
        self.cancel = widgets.Button(description=say("class_copy.cancel"), layout={"width": "auto", "display": "none"})
        self.bar = widgets.IntProgress(min=0, max=len(STEPS), layout={"width": "220px"})
        self.doing = widgets.HTML()
        self.message = widgets.HTML()
        self.files = widgets.VBox()
        wrap = {"flex_flow": "row wrap", "align_items": "center"}
        self._head = widgets.HBox([self.make, self.paper, self.booklet], layout=wrap)
        self._progress = widgets.HBox([self.bar, self.doing, self.cancel], layout={"display": "none", **wrap})
        self.make.on_click(lambda _: self.begin())
        self.cancel.on_click(lambda _: self.stop())

    # ---- the job ------------------------------------------------------------------------------------------

    def begin(self) -> None:
        """Begin to make the pages; nothing while they are being made."""
        if self.busy:
            return
        try:
            job = self._job()
            self._running = _start(job)
        except Exception as error:
            self._failed(fragments.plain(error))
            return
        self._cancelled = False
        self.message.value = ""
        self.make.disabled = True
        self.bar.value = 0
        self.doing.value = ""
        self._progress.layout.display = self.cancel.layout.display = ""
        loop = running_loop()

        def told(line: dict[str, Any]) -> None:
            if loop is None:
                self._told(line)
            else:
                loop.call_soon_threadsafe(self._told, line)

        self._reader = threading.Thread(target=_read, args=(self._running, told), daemon=True)
        self._reader.start()

    def wait(self) -> None:
        """Until the job has ended; for code without a running event loop."""
        if self.busy:
            self._reader.join()

    def stop(self) -> None:
        """Cancel what is being made."""
        if self._running is not None:
            self._cancelled = True
            _end(self._running)

    def close(self) -> None:
        self.stop()
        super().close()

    def _job(self) -> PrintJob:
        lesson = self.lesson
        notebook = opened_from(lesson) or here().file
        if notebook is None:
            raise KitError(message("paper.no_name"), do=message("paper.no_name_do"))
        own = lesson.body.name not in lesson.sizes.names
        return PrintJob(
            notebook=str(notebook.resolve()),
            out=str(self.out.resolve()),
            paper=self.paper.value,
            values=lesson.values,
            units=lesson.units,
            size="" if own else lesson.body.name,
            body=base64.b64encode(pickle.dumps(lesson.body)).decode("ascii") if own else "",
            booklet=self.booklet.value,
        )

    def _told(self, line: dict[str, Any]) -> None:
        """A line from the job: what it is doing, how it ended; {} when it is gone."""
        if "doing" in line:
            self.bar.value = STEPS.index(line["doing"])
            self.doing.value = escape(say(f"class_copy.{line['doing']}"))
            return
        if self._running is None:
            return
        self._running = None
        self.make.disabled = False
        self._progress.layout.display = self.cancel.layout.display = "none"
        if "done" in line:
            self._done(line["done"])
        elif self._cancelled:
            self.message.value = fragments.notes([say("class_copy.print_cancelled")])
        else:
            self._failed(line.get("failed") or say("class_copy.print_lost"))

    def _done(self, made: dict[str, Any]) -> None:
        when = datetime.now().strftime("%H:%M")
        warning = fragments.message(say("class_copy.print_unsound")) if made["unsound"] else ""
        said = say("class_copy.print_done", who=made["who"], when=when)
        self.message.value = fragments.notes([said]) + warning
        for path in self.out.glob("*.pdf"):  # those of another paper are of other values
            if path.name not in made["files"]:
                path.unlink(missing_ok=True)
        self._list()

    def _failed(self, why: str) -> None:
        kept = say("class_copy.print_kept") if self._made() else ""
        self.message.value = fragments.message(f"{say('class_copy.print_failed', why=why)} {kept}".strip())

    # ---- the files ----------------------------------------------------------------------------------------

    def _made(self) -> list[Path]:
        return sorted(self.out.glob("*.pdf"), key=lambda path: (path.name != BOOKLET, path.name))

    def _list(self) -> None:
        self.files.children = tuple(self._link(path) for path in self._made())

    def _link(self, path: Path) -> widgets.Widget:
        """A link by which JupyterLab downloads the file."""
        label = self._label(path.name)
        from IPython.display import FileLink

        link = FileLink(os.path.relpath(path), result_html_prefix=f"{escape(label)}: ")
        data = {"text/html": link._repr_html_(), "text/plain": label}
        return widgets.Output(outputs=({"output_type": "display_data", "data": data, "metadata": {}},))

    def _label(self, name: str) -> str:
        if name == BOOKLET:
            return say("class_copy.file_booklet")
        from kit.paper.papers import paper

        try:
            said = paper(name.removesuffix(".pdf").split("-", 1)[1]).said
        except (KitError, IndexError):
            return name
        return say("class_copy.file_pages", paper=said)


def _start(job: PrintJob) -> subprocess.Popen[str]:
    """The job in a process group of its own, so that the kernel it starts ends with it."""
    running = subprocess.Popen(
        [sys.executable, "-m", "kit.live.print_job"],
        stdin=subprocess.PIPE,
        stdout=subprocess.PIPE,
        stderr=subprocess.DEVNULL,
        text=True,
        encoding="utf-8",
        start_new_session=True,
    )
    assert running.stdin is not None
    with running.stdin as told:
        told.write(job.text())
    return running


def _read(running: subprocess.Popen[str], told: Any) -> None:
    assert running.stdout is not None
    last: dict[str, Any] = {}
    for line in running.stdout:
        try:
            last = json.loads(line)
        except ValueError:
            continue
        if "doing" in last:
            told(last)
    running.wait()
    told({} if "doing" in last else last)


def _end(running: subprocess.Popen[str]) -> None:
    try:
        if os.name == "posix":
            os.killpg(running.pid, signal.SIGTERM)
        else:
            running.terminate()
    except ProcessLookupError:
        pass


_open: WeakSet[PrintMine] = WeakSet()


@atexit.register
def _stop_all() -> None:
    """A kernel that goes takes its job along."""
    for one in tuple(_open):
        one.stop()
