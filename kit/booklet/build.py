"""One build: a notebook becomes its booklet in the forms asked for, pattern pages and their data, all or nothing.

Everything is made in a temporary folder beside the output; only when all of it is there do the files take
the place of the old ones, each in a single step. A build that fails leaves the last good output as it was.
Print forms are set in type in processes of their own (`kit.booklet.typeset`) while the pattern pages are laid out; the
first of them loads the typesetter while the notebook runs.
"""

from __future__ import annotations

import json
import os
from collections.abc import Callable, Iterator, Sequence
from concurrent.futures import Future, ThreadPoolExecutor
from contextlib import contextmanager, nullcontext
from dataclasses import dataclass, field, replace
from pathlib import Path
from time import perf_counter

from kit.atomic import write_atomically
from kit.booklet.asked_draft import AskedDraft
from kit.booklet.asked_forms import ALL, EPUB, FOLDED, HTML, AskedForms, asked_forms
from kit.booklet.audience import Audience
from kit.booklet.buying import Shopping, shopping
from kit.booklet.compose import compose
from kit.booklet.epub import epub
from kit.booklet.fetch import LessonFolder
from kit.booklet.forms import FORMS, SCREEN, Form
from kit.booklet.handover import DRAFTED, alone
from kit.booklet.html import to_html
from kit.booklet.impose import impose
from kit.booklet.live_at import read_live_at
from kit.booklet.model import Booklet
from kit.booklet.own_language import spoken
from kit.booklet.put_in_place import alone_for, put_in_place, writable
from kit.booklet.run_notebook import Ran, read_notebook, run_notebook
from kit.booklet.screen import screen
from kit.booklet.theme_file import BookTheme, read_theme
from kit.booklet.typeset import Set, WaitingTypesetter, set_in_type
from kit.booklet.typesetter import need_typesetter
from kit.cloth.kept_lays import Kept
from kit.diagnostic import reading
from kit.errors import KitError
from kit.language import SOURCE, region_of, say, speaking, spoken_for
from kit.lesson.no_paper import choosing, no_paper
from kit.lesson.pattern import Pattern
from kit.paper.export import write_pages
from kit.paper.papers import papers_of
from kit.proof import Finding, failed, prove
from kit.prose.readings import ruling_of
from kit.rulers import ruled
from kit.units import System

SHEET = "worksheet-"
"""What the worksheet of a print form is called, where it is a file of its own."""
DATA = ("sheet.pdf", "pattern.json", "findings.json")


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
    with WaitingTypesetter() if asked.prints else nullcontext() as waiting:
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
        if only:
            ran = replace(ran, handover=alone(ran.handover))
        ran = replace(ran, handover=replace(ran.handover, pattern=choosing(ran.handover.pattern, bare)))
        no_paper(ran.handover.pattern)  # refuses a piece that needs its paper before anything is made
        pattern = ran.handover.pattern
        own = pattern.lesson.language
        with (
            speaking(language or spoken_for(own)),
            reading(pattern.lesson.units),
            ruled(ruling_of(pattern)),
            alone_for(out) as made,
        ):
            notes: tuple[str, ...] = ()
            if language is not None:
                given, cells, notes = spoken(ran.handover, ran.notebook, notebook, language)
                ran, pattern = replace(ran, handover=given, notebook=cells), given.pattern
            notes += tuple(
                say("family.not_drafted", size=row.name, why=" ".join(row.trouble.split()))
                for row in ran.handover.chart
                if row.trouble
            )
            with stage("proof"):
                progress(say("building.proving"))
                findings = prove(pattern)
            with stage("cutting layouts"):
                progress(say("building.lays"))
                bought = shopping(ran.handover, Kept.beside(notebook.resolve().parent, pattern.lesson.slug))
            lesson = LessonFolder(notebook.resolve().parent)
            look = read_theme(lesson)
            told = (stage, progress, audience)
            writing = Writing(ran, findings, bought, lesson, look, asked, made, *told, waiting=waiting, address=address)

            def pages() -> None:
                with stage("pattern pages"):
                    progress(say("building.pages"))
                    write_pages(pattern, made, lambda line: progress(f"  {line}"), bought.amounts, papers)

            writing.all(pages)
            data = {"lesson": pattern.lesson.title, "size": pattern.body.name, "failed": failed(findings)}
            data["findings"] = [finding.as_dict() for finding in findings]
            write_atomically(made / "findings.json", json.dumps(data, indent=1, ensure_ascii=False) + "\n")
            names = (*names, *(path.name for path in sorted(made.glob(f"{SHEET}*.pdf"))))
            missing = [name for name in names if not (made / name).is_file()]
            if missing:
                raise KitError(f"the build did not make {', '.join(missing)}.", do="Build again.")
            paths = put_in_place(made, out, names)
    earlier = tuple(name for name in ALL if name not in names and (out / name).is_file())
    left_out = tuple(dict.fromkeys(lesson.left_out))
    return Built(pattern, paths, findings, timings, perf_counter() - began, left_out, earlier, notes)


class Stages:
    """Keeps how long each stage takes, in seconds."""

    def __init__(self, timings: dict[str, float]) -> None:
        self.timings = timings

    @contextmanager
    def __call__(self, name: str) -> Iterator[None]:
        began = perf_counter()
        yield
        self.timings[name] = self.timings.get(name, 0.0) + perf_counter() - began


@dataclass(frozen=True)
class Writing:
    """What every form of one booklet is made from, and the folder it goes to."""

    ran: Ran
    findings: tuple[Finding, ...]
    bought: Shopping
    lesson: LessonFolder
    look: BookTheme
    asked: AskedForms
    made: Path
    stage: Stages
    progress: Callable[[str], None]
    audience: Audience = "class"
    keep: bool = False
    """Whether the booklet in each form is kept, for who looks at it again."""
    waiting: WaitingTypesetter | None = None
    address: str = ""
    """Where the lesson lives on the web."""
    _books: dict[str, Booklet] = field(default_factory=dict)

    def all(self, meanwhile: Callable[[], None] = lambda: None) -> None:
        """Write every form that is asked for; `meanwhile` is done while print forms are set in type."""
        with ThreadPoolExecutor(max_workers=max(1, min(os.cpu_count() or 1, 4))) as pool:
            try:
                setting = self.begin_prints(pool)
                self.screen()
                meanwhile()
                self.end_prints(setting, self.stage.timings)
            except BaseException:
                pool.shutdown(wait=True, cancel_futures=True)
                raise

    def book(self, form: Form) -> Booklet:
        """The booklet in one form."""
        if form.key in self._books:
            return self._books[form.key]
        with self.stage("pictures and words"):
            ran = self.ran
            book = compose(
                ran.handover,
                ran.notebook,
                self.lesson,
                self.findings,
                form,
                self.look,
                self.bought,
                self.audience,
                self.address,
            )
        if self.keep:
            self._books[form.key] = book
        return book

    def page(self, book: Booklet, form: Form, *, sheet_only: bool = False) -> str:
        """Its HTML, or that of the worksheet which is a file of its own."""
        with self.stage("pictures and words"):
            return to_html(book, form, self.look, sheet_only=sheet_only)

    def begin_prints(self, pool: ThreadPoolExecutor) -> dict[str, Future[Set]]:
        """Compose every print form and hand it to the typesetter; the work goes on while other things are made."""
        setting: dict[str, Future[Set]] = {}
        (self.made / "set").mkdir()
        for key in self.asked.prints:
            self.progress(say("building.form", form=key))
            book, scratch = self.book(FORMS[key]), self.made / "set"
            html = self.page(book, FORMS[key])
            waiting = (self.waiting,) if self.waiting and key == self.asked.prints[0] else ()
            setting[key] = pool.submit(set_in_type, html, self.lesson.folder, scratch, f"booklet-{key}", *waiting)
            if book.apart:
                html = self.page(book, FORMS[key], sheet_only=True)
                setting[f"{SHEET}{key}"] = pool.submit(set_in_type, html, self.lesson.folder, scratch, f"{SHEET}{key}")
        return setting

    def screen(self) -> None:
        """The page for a screen, and the e-book made from it."""
        if HTML not in self.asked.files and EPUB not in self.asked.files:
            return
        self.progress(say("building.screen"))
        html = self.page(self.book(SCREEN), SCREEN)
        if HTML in self.asked.files:
            with self.stage(HTML):
                write_atomically(self.made / HTML, screen(html))
        if EPUB in self.asked.files:
            with self.stage(EPUB):
                write_atomically(self.made / EPUB, self._epub(html))

    def _epub(self, html: str) -> bytes:
        info = self.ran.handover.pattern.lesson
        return epub(html, rights=info.licence, date=info.date)

    def end_prints(self, setting: dict[str, Future[Set]], timings: dict[str, float]) -> None:
        """Wait for the print forms and write them."""
        for key, future in setting.items():
            if not future.done():
                self.progress(say("building.setting", form=key))
            done = future.result()
            self.lesson.left_out += done.left_out
            if key.startswith(SHEET):
                write_atomically(self.made / f"{key}.pdf", done.pdf)
                continue
            timings[f"booklet-{key}.pdf"] = done.seconds
            if f"booklet-{key}.pdf" in self.asked.files:
                write_atomically(self.made / f"booklet-{key}.pdf", done.pdf)
            for file, (small, sheet) in FOLDED.items():
                if small == key and file in self.asked.files:
                    write_atomically(self.made / file, impose(done.pdf, sheet))
