"""What is made of a notebook that ran: its booklet in the forms asked for, pattern pages and their data.

Loaded while the notebook runs (kit/booklet/build.py), which waits for its kernel: what draws, composes and lays out is
half of what a build loads.
"""

from __future__ import annotations

import json
from collections.abc import Callable, Mapping, Sequence
from concurrent.futures import Future, ThreadPoolExecutor
from dataclasses import dataclass, field, replace
from pathlib import Path

from kit.atomic import write_atomically
from kit.booklet.asked_forms import EPUB, FOLDED, HTML, AskedForms
from kit.booklet.audience import Audience
from kit.booklet.buying import Shopping, shopping
from kit.booklet.compose import compose
from kit.booklet.epub import epub
from kit.booklet.fetch import LessonFolder
from kit.booklet.forms import FORMS, SCREEN, Form
from kit.booklet.handover import alone
from kit.booklet.html import to_html
from kit.booklet.impose import impose
from kit.booklet.model import Booklet
from kit.booklet.own_language import in_one_system, spoken
from kit.booklet.put_in_place import alone_for, put_in_place
from kit.booklet.run_notebook import Ran
from kit.booklet.screen import screen
from kit.booklet.stages import Stages
from kit.booklet.theme_file import BookTheme, read_theme
from kit.booklet.typeset import Set, WaitingTypesetter, at_once, set_in_type
from kit.cloth.kept_lays import Kept
from kit.diagnostic import reading
from kit.errors import KitError
from kit.language import say, speaking, spoken_for
from kit.lesson.no_paper import choosing, no_paper
from kit.lesson.pattern import Pattern
from kit.paper.export import write_pages
from kit.paper.papers import Paper
from kit.proof import Finding, failed, prove
from kit.prose.readings import ruling_of
from kit.rulers import ruled
from kit.units import System

SHEET = "worksheet-"
"""What the worksheet of a print form is called, where it is a file of its own."""


@dataclass(frozen=True)
class BuildAsked:
    """What a build was asked for, read already: see `kit.booklet.build.build`. `names` are the files it must make."""

    notebook: Path
    out: Path
    names: tuple[str, ...]
    forms: AskedForms
    papers: tuple[Paper, ...]
    audience: Audience
    language: str | None
    only: System | None
    bare: Sequence[str] | None
    address: str


@dataclass(frozen=True)
class Written:
    """The files that lie in their place, by name, the `pattern` as it was printed, and what is to be told of them."""

    pattern: Pattern
    paths: dict[str, Path]
    findings: tuple[Finding, ...]
    left_out: tuple[str, ...]
    notes: tuple[str, ...]


def written(
    ran: Ran,
    asking: BuildAsked,
    stage: Stages,
    progress: Callable[[str], None],
    waiting: Mapping[str, WaitingTypesetter],
) -> Written:
    """All files of a build made in a folder beside its output and put in their place, from what `ran`; `waiting` are
    typesetters begun already. Raises `KitError` for whatever stops it; nothing in the output has changed then."""
    if asking.only:
        ran = replace(ran, handover=alone(ran.handover))
    ran = replace(ran, handover=replace(ran.handover, pattern=choosing(ran.handover.pattern, asking.bare)))
    no_paper(ran.handover.pattern)  # refuses a piece that needs its paper before anything is made
    pattern = ran.handover.pattern
    own = pattern.lesson.language
    with (
        speaking(asking.language or spoken_for(own)),
        reading(pattern.lesson.units),
        ruled(ruling_of(pattern)),
        alone_for(asking.out) as made,
    ):
        notes: tuple[str, ...] = ()
        if asking.language is not None:
            given, cells, notes = spoken(ran.handover, ran.notebook, asking.notebook, asking.language)
            ran, pattern = replace(ran, handover=given, notebook=cells), given.pattern
        if asking.only:
            given, cells = in_one_system(ran.handover, ran.notebook)
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
            bought = shopping(ran.handover, Kept.beside(asking.notebook.resolve().parent, pattern.lesson.slug))
        lesson = LessonFolder(asking.notebook.resolve().parent)
        look = read_theme(lesson)
        told = (stage, progress, asking.audience)
        writing = Writing(
            ran, findings, bought, lesson, look, asking.forms, made, *told, waiting=waiting, address=asking.address
        )

        def pages() -> None:
            with stage("pattern pages"):
                progress(say("building.pages"))
                write_pages(pattern, made, lambda line: progress(f"  {line}"), bought.amounts, asking.papers)

        writing.all(pages)
        data = {"lesson": pattern.lesson.title, "size": pattern.body.name, "failed": failed(findings)}
        data["findings"] = [finding.as_dict() for finding in findings]
        write_atomically(made / "findings.json", json.dumps(data, indent=1, ensure_ascii=False) + "\n")
        names = (*asking.names, *(path.name for path in sorted(made.glob(f"{SHEET}*.pdf"))))
        missing = [name for name in names if not (made / name).is_file()]
        if missing:
            raise KitError(f"the build did not make {', '.join(missing)}.", do="Build again.")
        paths = put_in_place(made, asking.out, names)
    return Written(pattern, paths, findings, tuple(dict.fromkeys(lesson.left_out)), notes)


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
    waiting: Mapping[str, WaitingTypesetter] = field(default_factory=dict)
    """Typesetters begun already, by the print form each is for."""
    address: str = ""
    """Where the lesson lives on the web."""
    _books: dict[str, Booklet] = field(default_factory=dict)

    def all(self, meanwhile: Callable[[], None] = lambda: None) -> None:
        """Write every form that is asked for; `meanwhile` is done while print forms are set in type."""
        with ThreadPoolExecutor(max_workers=at_once()) as pool:
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
            begun = self.waiting.get(key)
            setting[key] = pool.submit(set_in_type, html, self.lesson.folder, scratch, f"booklet-{key}", begun)
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
