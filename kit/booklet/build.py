"""One build: a notebook becomes its booklet in the forms asked for, pattern pages and their data, all or nothing.

Everything is made in a temporary folder beside the output; only when all of it is there do the files take
the place of the old ones, each in a single step. A build that fails leaves the last good output as it was.
Print forms are set in type in processes of their own (`kit.booklet.typeset`) while the pattern pages are laid out; the
first of them load the typesetter while the notebook runs.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from contextlib import ExitStack, suppress
from dataclasses import dataclass
from importlib import import_module
from pathlib import Path
from threading import Thread
from time import perf_counter
from typing import TYPE_CHECKING

from kit.booklet.asked_draft import AskedDraft
from kit.booklet.asked_forms import ALL, asked_forms
from kit.booklet.handover import DRAFTED
from kit.booklet.live_at import read_live_at
from kit.booklet.put_in_place import writable
from kit.booklet.run_notebook import read_notebook, run_notebook
from kit.booklet.stages import Stages
from kit.booklet.typeset import WaitingTypesetter, at_once
from kit.booklet.typesetter import need_typesetter
from kit.booklet.undisturbed import undisturbed
from kit.language import SOURCE, region_of, say, speaking
from kit.paper.papers import papers_of
from kit.units import System

if TYPE_CHECKING:
    from kit.booklet.audience import Audience
    from kit.lesson.pattern import Pattern
    from kit.proof import Finding

DATA = ("sheet.pdf", "pattern.json", "findings.json")
_REST = "kit.booklet.writing"
"""What is asked of a notebook that ran, by name: loaded while it runs."""


@dataclass(frozen=True)
class Built:
    """What a build made: `paths` by file name, the `findings` of the proof, seconds by stage (`timings`, of which print
    forms run beside the others; `seconds` is the whole), what the markup asked for that was `left_out`, the
    booklet files of an `earlier` build that still lie in the folder, and `notes` on words without a translation
    and on sizes that cannot be drafted."""

    pattern: Pattern
    paths: dict[str, Path]
    findings: tuple[Finding, ...]
    timings: dict[str, float]
    seconds: float
    left_out: tuple[str, ...] = ()
    earlier: tuple[str, ...] = ()
    notes: tuple[str, ...] = ()

    @property
    def failed(self) -> bool:
        """Whether the proof found an error."""
        from kit.proof import failed

        return failed(self.findings)


def build(
    notebook: Path,
    out: Path,
    *,
    size: str | None = None,
    units: System | None = None,
    only: System | None = None,
    forms: str = "",
    audience: Audience = "class",
    language: str | None = None,
    draft: AskedDraft | None = None,
    bare: Sequence[str] | None = None,
    live_at: str = "",
    progress: Callable[[str], None] = lambda line: None,
    timeout: int = 120,
) -> Built:
    """Run `notebook` and write its booklet and pattern pages into the folder `out`.

    `size` and `units` None: as saved beside the notebook; `only` one system, nothing in brackets. `forms` as in
    `asked_forms`; for the `audience` "buyers" the worksheet is a file of its own beside each print form; `language`
    None: that of the lesson's own words, or English where there is no catalogue for it, and with a region ("de-AT")
    what that region's printers hold instead of A4 and US Letter; `draft` its values, and whether as first cut or as
    corrected (None: corrected); `bare` the pieces that are cut by their measures, as `no_paper` of a lesson (None: as
    its author chose); `live_at` the address of the lesson's page on the web, for the booklet to lead to. Raises
    `KitError` for whatever stops the build; nothing in `out` has changed then.
    """
    began = perf_counter()
    timings: dict[str, float] = {}
    stage = Stages(timings)
    papers = papers_of(region_of(language or ""))
    asked = asked_forms(forms, [paper.name for paper in papers])
    address = read_live_at(live_at) if live_at else ""
    if language is not None:
        with speaking(language):
            pass  # refuses a language without a catalogue before the notebook runs
    if asked.prints:
        need_typesetter()
    book_node = read_notebook(notebook)
    names = (*asked.files, *(f"pages-{paper.name}.pdf" for paper in papers), *DATA)
    writable(out, names)
    with undisturbed(), ExitStack() as processes:
        waiting = {key: processes.enter_context(WaitingTypesetter()) for key in asked.prints[: at_once()]}
        loading = Thread(target=_get_ready, args=(tuple(waiting.values()),))
        loading.start()
        processes.callback(loading.join)
        with stage("notebook"), speaking(language or SOURCE):
            progress(say("building.running", notebook=notebook.name))
            ran = run_notebook(
                book_node,
                notebook.resolve().parent,
                name=notebook.name,
                size=size,
                units=only or units,
                sizes=(DRAFTED,),
                draft=draft,
                timeout=timeout,
                progress=lambda line: progress(f"  {line}"),
            )
            loading.join()
        from kit.booklet.writing import BuildAsked, written

        asking = BuildAsked(notebook, out, names, asked, papers, audience, language, only, bare, address)
        made = written(ran, asking, stage, progress, waiting)
    earlier = tuple(name for name in ALL if name not in made.paths and (out / name).is_file())
    seconds = perf_counter() - began
    return Built(made.pattern, made.paths, made.findings, timings, seconds, made.left_out, earlier, made.notes)


def _get_ready(typesetters: Sequence[WaitingTypesetter]) -> None:
    """Load what is asked of a notebook that ran, then have the typesetters load: one after the other, so that of two
    cores one is the kernel's, for which everything else waits."""
    with suppress(ImportError, OSError):  # the one who needs it asks again, and tells
        import_module(_REST)
        for each in typesetters:
            each.begin()
