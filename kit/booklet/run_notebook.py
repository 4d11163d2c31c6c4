"""Running a notebook afresh, from the top, in a kernel of its own.

A build never trusts outputs stored in a notebook or the state of a live kernel: it runs every cell in a new
process started with this same Python, in the notebook's folder, and then asks that process for the lesson's
pattern (`kit.booklet.handover`). Each execution carries the cell's id, as JupyterLab's does, so that a step
knows which cell it came from.
"""

from __future__ import annotations

import asyncio
import json
import os
import re
import sys
from collections.abc import Callable, Coroutine, Sequence
from concurrent.futures import ThreadPoolExecutor
from contextlib import suppress
from dataclasses import dataclass
from importlib import import_module
from pathlib import Path
from typing import Any

import nbformat
from jupyter_client.asynchronous.client import AsyncKernelClient
from jupyter_client.kernelspec import KernelSpec, KernelSpecManager
from jupyter_client.manager import AsyncKernelManager
from nbclient.client import NotebookClient
from nbclient.exceptions import CellExecutionError, CellTimeoutError, DeadKernelError
from nbformat import NotebookNode

from kit.atomic import write_atomically
from kit.booklet.asked_draft import AskedDraft
from kit.booklet.handover import MIMETYPE, Handover, Refused, receive, receive_each
from kit.booklet.plain_text import SUFFIXES, cells_of_text
from kit.booklet.told_words import with_told_words
from kit.errors import KitError
from kit.language import language, say, speaking
from kit.lesson.own_code import told
from kit.lesson.where import BUILD, NOTEBOOK
from kit.scratch import for_sockets, scratch
from kit.units import System

Progress = Callable[[str], None]

QUESTION = "lessonkit-handover"
"""Tags the cells put behind a notebook's own."""
_ANSI = re.compile(r"\x1b\[[0-9;]*[A-Za-z]")
_FILE = re.compile(r"\([^()\s]*, line ")
_TITLED = re.compile(r"""@\w+\.(?:step|sew)\(\s*(["'])(.+?)\1""")


@dataclass(frozen=True)
class Ran:
    """A notebook that ran to its end: its `cells` as executed, in order, and what it handed over."""

    notebook: NotebookNode
    folder: Path
    handover: Handover


def read_notebook(path: Path) -> NotebookNode:
    """The notebook in `path`, format 4, every cell with an id; a Python or Markdown text with cells is read as one
    (kit/booklet/plain_text.py). Raises `KitError` for a missing or broken file."""
    if path.is_dir():
        raise KitError(f"'{path}' is a folder.", do="Name the notebook itself; its name ends in .ipynb.")
    try:
        text = path.read_text(encoding="utf-8-sig")
    except FileNotFoundError:
        raise KitError(f"there is no notebook '{path}'.", do=_beside(path)) from None
    except UnicodeDecodeError:
        raise KitError(
            f"'{path}' is not a notebook: it is not text in UTF-8.", do="Name a file saved by Jupyter (.ipynb)."
        ) from None
    except OSError as error:
        raise KitError(
            f"'{path}' cannot be read ({error.strerror}).", do="Check the file and its permissions."
        ) from None
    if path.suffix in SUFFIXES:
        return cells_of_text(text, path)
    return parse_notebook(text, str(path))


def parse_notebook(text: str, name: str) -> NotebookNode:
    """`text` as a notebook of format 4, a byte order mark before it or not. Raises `KitError` naming `name` when it is
    not one."""
    text = text.removeprefix("\ufeff")
    do = "Open it in JupyterLab and save it again, or go back to a saved copy (.ipynb_checkpoints keeps one)."
    try:
        data = json.loads(text)
    except RecursionError:
        raise KitError(f"'{name}' is broken: it is nested without end.", do=do) from None
    except ValueError as error:
        line = f" Line {error.lineno} cannot be read." if isinstance(error, json.JSONDecodeError) else ""
        raise KitError(f"'{name}' is broken: it is not a notebook file (not JSON).{line}", do=do) from None
    if not isinstance(data, dict) or type(data.get("nbformat")) is not int:
        raise KitError(f"'{name}' is not a notebook: it does not say its format.", do="Name a file saved by Jupyter.")
    if data["nbformat"] != 4:
        raise KitError(f"'{name}' is a notebook of format {data['nbformat']}; format 4 is needed.", do=do)
    try:
        book = nbformat.reads(text, as_version=4)
        nbformat.validate(book)
    except Exception as error:  # nbformat raises many kinds for files that are JSON but not notebooks
        said = _line(str(getattr(error, "message", error)))
        raise KitError(f"'{name}' is broken: it does not hold proper cells ({said}).", do=do) from None
    return book


def run_notebook(
    book: NotebookNode,
    folder: Path,
    *,
    name: str = "notebook.ipynb",
    size: str | None = None,
    units: System | None = None,
    sizes: Sequence[str] = (),
    mend: bool = False,
    draft: AskedDraft | None = None,
    timeout: int = 120,
    progress: Progress | None = None,
) -> Ran:
    """Run every code cell of `book` in a fresh kernel whose working folder is `folder`, then work its lesson
    for `size` and `units` (None: as saved beside the notebook), and for each of `sizes` ("all": every one). `timeout`
    is seconds per cell; `progress` is told of each cell in a phrase. `mend`: what mends it is found too. `draft`: its
    values, and whether as first cut or as corrected (None: the corrected draft at the values that stand).

    Raises `KitError` in plain words for a cell that fails, with the cell's place and title; with `mend`, `Refused`
    (kit/booklet/handover.py) for a pattern that cannot be drafted.
    """
    asked = f"globals(), {size!r}, {units!r}, {tuple(sizes)!r}" + (", mend=True" if mend else "")
    if draft is not None:
        asked += f", asked=kit.booklet.handover.{draft!r}"
    source = f"import kit.booklet.handover\nkit.booklet.handover.send({asked})"
    book, (answer,) = run_and_ask(book, folder, [source], MIMETYPE, name=name, timeout=timeout, progress=progress)
    if not answer:
        raise KitError(
            "the notebook ran, but gave no pattern.", do="Run it from the top in JupyterLab, then build again."
        )
    return Ran(book, folder, receive(answer))


def run_lessons(
    book: NotebookNode,
    folder: Path,
    *,
    name: str = "notebook.ipynb",
    size: str | None = None,
    units: System | None = None,
    draft: AskedDraft | None = None,
    timeout: int = 120,
) -> tuple[NotebookNode, list[Handover | Refused]]:
    """Run `book` as `run_notebook` does, and work each lesson in it: the notebook as executed, and of each lesson what
    it handed over, or its refusal with what mends it. Raises `KitError` for a cell that fails and where there is no
    lesson."""
    asked = "None" if draft is None else f"kit.booklet.handover.{draft!r}"
    source = f"import kit.booklet.handover\nkit.booklet.handover.send_each(globals(), {size!r}, {units!r}, {asked})"
    book, (answer,) = run_and_ask(book, folder, [source], MIMETYPE, name=name, timeout=timeout)
    if not answer:
        raise KitError(
            "the notebook ran, but gave no pattern.", do="Run it from the top in JupyterLab, then check again."
        )
    return book, receive_each(answer)


def run_and_ask(
    book: NotebookNode,
    folder: Path,
    questions: Sequence[str],
    mimetype: str,
    *,
    name: str = "notebook.ipynb",
    timeout: int = 120,
    progress: Progress | None = None,
    asking: Progress | None = None,
    patient: bool = False,
) -> tuple[NotebookNode, tuple[str, ...]]:
    """Run every code cell of `book` as `run_notebook` does, then each of `questions` (source code) in the same
    kernel; gives the executed notebook and what each question displayed as `mimetype` ("" for nothing).
    `asking` is told the number of each question, counted from 1, as it begins; `patient`: a question may take any time.

    Raises `KitError` in plain words for a cell that fails, with the cell's place and title.
    """
    book = nbformat.from_dict(book)
    for index, cell in enumerate(book.cells):
        cell.setdefault("id", f"cell-{index + 1}")
    book.nbformat_minor = max(5, book.get("nbformat_minor", 5))
    count = len(book.cells)
    book.cells += [nbformat.v4.new_code_cell(text, metadata={"tags": [QUESTION]}) for text in questions]
    with scratch("lessonkit-run-") as private, for_sockets(private) as sockets:
        # The kernel reads the order of cells from a file; it must be the notebook being run, which may
        # differ from the one on disk (an export of unsaved work, a file without cell ids).
        copy = private / f"{Path(name).stem}.ipynb"
        write_atomically(copy, nbformat.writes(book))
        environment = {**os.environ, BUILD: "1", NOTEBOOK: str(copy)}
        client = _Client(book, folder, timeout, progress, sockets, count, asking, patient)
        try:
            try:
                # What the kernel itself complains of, in words of its own, goes to a file.
                with open(private / "complaints", "w", encoding="utf-8") as complaints:
                    _blocking(client.async_execute(env=environment, stderr=complaints))
            finally:
                answers = book.cells[count:]
                del book.cells[count:]
        except CellExecutionError as error:
            raise _refusal(book, client.at, error) from None
        except CellTimeoutError:
            raise KitError(
                f"{place(book, client.at)} ran longer than {timeout} s.",
                do="Look for a loop without an end, or cut the work in that cell.",
            ) from None
        except DeadKernelError:
            raise KitError(
                f"{place(book, client.at)} ended the notebook's kernel.", do="Run that cell in JupyterLab to see why."
            ) from None
        except RuntimeError as error:
            raise KitError(
                f"the notebook's kernel did not start ({_line(str(error))}).", do="Check that ipykernel is installed."
            ) from None
    return with_told_words(book), tuple(_shown(cell, mimetype) for cell in answers)


def _shown(cell: NotebookNode, mimetype: str) -> str:
    return next((output.data[mimetype] for output in cell.outputs if mimetype in output.get("data", {})), "")


def place(book: NotebookNode, index: int) -> str:
    """Where a cell is, in words: 'Code cell 4 ("Raise the shoulder")'. `index` counts all cells from 0."""
    if index >= len(book.cells):
        return "The end of the notebook"
    number = sum(1 for cell in book.cells[: index + 1] if cell.cell_type == "code")
    return f'Code cell {number} ("{cell_title(book.cells[index].source)}")'


def _told(book: NotebookNode, index: int) -> str:
    """The same as progress is told, in the language spoken."""
    number = sum(1 for cell in book.cells[: index + 1] if cell.cell_type == "code")
    return say("building.cell", number=number, title=cell_title(book.cells[index].source))


def cell_title(source: str) -> str:
    """What a code cell is called: the title of the step it defines, else its first line."""
    titled = _TITLED.search(source)
    if titled:
        return titled[2]
    lines = [line.strip() for line in source.splitlines() if line.strip()]
    line = next((line for line in lines if not line.startswith(("#", "%"))), lines[0] if lines else "")
    return line if len(line) <= 48 else line[:47].rstrip() + "…"


# ---- the kernel -------------------------------------------------------------------------------------------


class _CellKernelClient(AsyncKernelClient):
    """A kernel client whose execute requests carry the running cell's id the way JupyterLab sends it."""

    cell_id = ""

    def execute(
        self,
        code: str,
        silent: bool = False,
        store_history: bool = True,
        user_expressions: dict[str, Any] | None = None,
        allow_stdin: bool | None = None,
        stop_on_error: bool = True,
    ) -> str:
        content = {
            "code": code,
            "silent": silent,
            "store_history": store_history,
            "user_expressions": user_expressions or {},
            "allow_stdin": bool(allow_stdin),
            "stop_on_error": stop_on_error,
        }
        message = self.session.msg("execute_request", content, metadata={"cellId": self.cell_id})
        self.shell_channel.send(message)
        return str(message["header"]["msg_id"])


class OwnPython(KernelSpecManager):
    """Whatever kernel the notebook names, it runs in this same Python: the pattern it hands over must be
    made of the same classes."""

    def get_kernel_spec(self, kernel_name: str) -> KernelSpec:
        return KernelSpec(
            argv=[sys.executable, "-m", "ipykernel_launcher", "-f", "{connection_file}"],
            display_name="Python 3",
            language="python",
        )


class _Client(NotebookClient):
    """nbclient with cell ids, our own Python, and the place of the running cell in `at`."""

    def __init__(
        self,
        book: NotebookNode,
        folder: Path,
        timeout: int,
        progress: Progress | None,
        sockets: Path | None,
        count: int,
        asking: Progress | None,
        patient: bool,
    ) -> None:
        super().__init__(
            book,
            kernel_name="python3",
            timeout_func=lambda cell: None if patient and QUESTION in cell.metadata.get("tags", ()) else timeout,
            startup_timeout=180,  # a kernel on a busy machine
            resources={"metadata": {"path": str(folder)}},
            on_cell_start=self._start,
        )
        self.at = 0
        self._progress = progress
        self._language = language()
        self._sockets = sockets
        self._count = count
        self._asking = asking

    def create_kernel_manager(self) -> AsyncKernelManager:
        self.km = AsyncKernelManager(kernel_name="python3", kernel_spec_manager=OwnPython(), config=self.config)
        if os.name == "posix" and self._sockets is not None:  # in a private folder: nobody else can speak to it
            self.km.transport = "ipc"
            self.km.ip = str(self._sockets / "kernel")
        self.km.client_class = f"{__name__}.{_CellKernelClient.__name__}"
        return self.km

    def _start(self, cell: NotebookNode, cell_index: int) -> None:
        self.at = cell_index
        if isinstance(self.kc, _CellKernelClient):
            self.kc.cell_id = cell.get("id", "")
        if cell_index >= self._count:
            if self._asking is not None:
                self._asking(str(cell_index - self._count + 1))
        elif self._progress is not None and cell.cell_type == "code":
            with speaking(self._language):  # the kernel's messages come in a context of their own
                self._progress(_told(self.nb, cell_index))


def _blocking(work: Coroutine[Any, Any, Any]) -> None:
    """Run `work` to its end in a thread of its own: this one may run an event loop already, and keeps its own answer
    to signals, which the library would set otherwise. Stopped here, the work is stopped there, and ends its kernel."""
    begun: list[tuple[asyncio.AbstractEventLoop, asyncio.Task[Any]]] = []

    async def all_of_it() -> None:
        task = asyncio.current_task()
        assert task is not None
        begun.append((asyncio.get_running_loop(), task))
        await work

    with ThreadPoolExecutor(1) as pool:
        running = pool.submit(asyncio.run, all_of_it())
        try:
            running.result()
        except BaseException:
            for loop, task in begun:
                with suppress(RuntimeError):  # it has ended meanwhile
                    loop.call_soon_threadsafe(task.cancel)
            raise


# ---- messages ---------------------------------------------------------------------------------------------


def _refusal(book: NotebookNode, index: int, error: CellExecutionError) -> KitError:
    where = place(book, index)
    text = _FILE.sub("(line ", _line(_ANSI.sub("", error.evalue or "")))
    if error.ename == "KitError":
        return KitError(text, where=where)
    public = import_module("kit")  # the names a notebook knows
    named = {name: getattr(public, name) for name in re.findall(r"\w+", text) if name in public.__all__}
    if error.ename == "TypeError" and (sentence := told(error.ename, text, named)):
        return KitError(sentence[0], where=where, do=sentence[1])
    if error.ename == "NameError" or error.ename == "ModuleNotFoundError":
        do = "Check the spelling, and that an earlier cell defines it: a build runs the notebook from the top."
    elif error.ename in ("SyntaxError", "IndentationError", "TabError"):
        do = "Correct the cell's code and run it once in JupyterLab."
    else:
        do = "Run that cell in JupyterLab to see more, then build again."
    said = f"{error.ename}: {text}" if text else str(error.ename)
    return KitError(f"{said}.".replace("..", "."), where=where, do=do)


def _line(text: str) -> str:
    """`text` on one line, not too long, without its full stop."""
    line = " ".join(text.split())
    return line if len(line) <= 300 else line[:299] + "…"


def _beside(path: Path) -> str:
    try:
        names = sorted(other.name for other in path.parent.glob("*.ipynb"))
    except OSError:
        names = []
    if not names:
        return "Check the name and the folder; a notebook's name ends in .ipynb."
    return f"Notebooks in that folder: {', '.join(names[:8])}."
