"""A lesson released: booklets, pages, sheets, files and previews in one folder, all or nothing.

The notebook is run once. What must be in order is looked at first and told all at once (`gate`); then everything is
made in a folder beside the one asked for, which takes its place in a single step. A release that fails leaves the last
good one as it was. The same notebook gives the same bytes, and files of the same moment.
"""

from __future__ import annotations

import hashlib
import io
import json
import os
import tempfile
from collections.abc import Callable, Sequence
from dataclasses import dataclass, field, replace
from functools import partial
from pathlib import Path
from typing import Any

import pikepdf

from kit.atomic import make_folder
from kit.booklet.asked_draft import AskedDraft
from kit.booklet.asked_forms import EPUB, HTML, AskedForms, asked_forms
from kit.booklet.audience import Audience
from kit.booklet.buying import Shopping, shopping
from kit.booklet.fetch import LessonFolder
from kit.booklet.forms import FORMS, SCREEN
from kit.booklet.handover import DRAFTED
from kit.booklet.moment import moment_of
from kit.booklet.own_language import spoken
from kit.booklet.ranged import Ranges, ranges_of
from kit.booklet.run_notebook import Ran, read_notebook, run_notebook
from kit.booklet.stages import Stages
from kit.booklet.theme_file import read_theme
from kit.booklet.writing import SHEET, Writing
from kit.cloth.kept_lays import Kept
from kit.diagnostic import reading
from kit.errors import KitError
from kit.language import say, speaking
from kit.lesson.pattern import Pattern
from kit.paper.papers import A0, A4, LETTER
from kit.paper.range_files import RangeRequest, plain_size, range_files
from kit.paper.request import PageRequest
from kit.proof import prove
from kit.prose.readings import ruling_of
from kit.release import gate
from kit.release.gate import NotReady, Reason
from kit.release.previews import previews
from kit.release.start_here import Handed, SizeFiles, start_here
from kit.release.summary import (
    FORMAT,
    SCHEMA,
    SUMMARY,
    SUMS,
    FileMade,
    schema_text,
    summary_json,
    summary_text,
    sums_text,
)
from kit.rulers import ruled
from kit.scratch import alone_in, scratch

_FOLDERS = {"pages": "pages", "sheet": "copy-shop", "projector": "projector", "pattern": "files"}
_KINDS = {"pages": "pages", "sheet": "sheet", "projector": "projector"}
LICENCE = "LICENCE.txt"
_TOLD = 5  # files named in a refusal
_OF_SYSTEM = (".DS_Store", "Thumbs.db", "desktop.ini")  # put into folders by the computer's own file windows


@dataclass(frozen=True)
class AskedRelease:
    """What is asked of a release: `forms` of the booklet, `languages` ("" the lesson's own), for whom, the `size` its
    pictures are drawn in, the `sizes` to print (none: all), what to `allow`, and how thoroughly its ranges are tried:
    "quick" or "full"."""

    forms: str = ""
    languages: str = ""
    audience: Audience = "buyers"
    size: str | None = None
    sizes: tuple[str, ...] = ()
    allow: tuple[str, ...] = ()
    ranges: str = "quick"
    draft: AskedDraft | None = None
    timeout: int = 120
    live_at: str = ""
    """The address of the lesson's page on the web, which the booklets lead to."""


@dataclass(frozen=True)
class Released:
    """What was made: the `folder`, its files by path within it, and what was `waived`."""

    folder: Path
    files: tuple[str, ...]
    waived: tuple[Reason, ...]


def release(
    notebook: Path, out: Path, asked: AskedRelease, progress: Callable[[str], None] = lambda line: None
) -> Released:
    """Release the lesson in `notebook` into the folder `out`. Raises `NotReady`, a `KitError`, with everything that
    must be mended or waived, and `KitError` for whatever else stops it; `out` is then as it was."""
    forms = asked_forms(asked.forms)
    if forms.live:
        raise KitError(
            "a release has no form 'live'.",
            where="--forms",
            do="Write its folder with lessonkit live --booklet, put it on a web space and name that with --live-at.",
        )
    book = read_notebook(notebook)
    _free(out)
    progress(f"Running {notebook.name} from the top")
    ran = run_notebook(
        book,
        notebook.resolve().parent,
        name=notebook.name,
        size=asked.size,
        sizes=(DRAFTED,),
        draft=asked.draft,
        timeout=asked.timeout,
    )
    info = ran.handover.pattern.lesson
    tongues = gate.read_languages(asked.languages, info.language)
    folder = LessonFolder(notebook.resolve().parent)
    with reading(info.units), ruled(ruling_of(ran.handover.pattern)):
        reasons, checks = _looked_at(ran, notebook, tongues, asked, folder, progress)
        if held := [reason for reason in reasons if reason.name not in asked.allow]:
            raise NotReady.of(info.title, held)
        work = _Work(ran, notebook, forms, asked, folder, progress)
        for tongue in tongues:
            with speaking(tongue):
                work.speak(tongue, f"{tongue}/" if len(tongues) > 1 else "")
        if info.licence:
            work.files[LICENCE] = FileMade(f"{info.licence.strip()}\n".encode(), "licence", info.language)
        waived = tuple(reason for reason in reasons if reason.name in asked.allow)
        data = b"".join(made.data for _, made in sorted(work.files.items()))
        moment = moment_of(info.date, data)
        summary = summary_json(
            ran.handover.pattern,
            [pattern.body.name for pattern in work.sizes],
            work.files,
            checks,
            waived,
            work.bought.amounts if work.bought else (),
            moment.isoformat(),
        )
    made = {path: each.data for path, each in work.files.items()}
    made[SUMMARY] = summary_text(summary).encode()
    made[SCHEMA] = schema_text().encode()
    made[SUMS] = sums_text(made).encode()
    progress("Putting the folder in place")
    _put(made, out, int(moment.timestamp()))
    return Released(out, tuple(sorted(made)), waived)


def _looked_at(
    ran: Ran,
    notebook: Path,
    tongues: Sequence[str],
    asked: AskedRelease,
    folder: LessonFolder,
    progress: Callable[[str], None],
) -> tuple[list[Reason], dict[str, str]]:
    """All that speaks against a release, and of each check whether it passed."""
    given = ran.handover
    progress("Proving every size")
    found = [*gate.proof_reasons(given), *gate.size_reasons(given), *gate.word_reasons(ran, notebook, tongues)]
    progress("Looking at the pictures")
    look, none = read_theme(folder), Shopping((), ())
    quiet = Writing(ran, (), none, folder, look, AskedForms(()), Path(), Stages({}), progress, asked.audience)
    try:
        found += gate.picture_reasons(quiet.page(quiet.book(SCREEN), SCREEN), folder.unsaid)
    except KitError as error:  # what cannot be drawn is what the proof tells of, or worse
        found.append(Reason("proof", str(error), ""))
    trying = "ranges" not in asked.allow or asked.ranges == "full"
    if trying:
        progress("Trying the sliders" + (" over their whole ranges" if asked.ranges == "full" else " (quick form)"))
        found += gate.range_reasons(_ranges(notebook, asked))
    names = {reason.name for reason in found}
    checks = {name: "waived" if name in names else "passed" for name in gate.NAMES}
    if not trying:
        checks["ranges"] = "skipped"
    return found, checks


def _ranges(notebook: Path, asked: AskedRelease) -> Ranges:
    return ranges_of(notebook, timeout=asked.timeout, quick=asked.ranges != "full")


@dataclass
class _Work:
    """The files of a release as they come."""

    ran: Ran
    notebook: Path
    forms: AskedForms
    asked: AskedRelease
    folder: LessonFolder
    progress: Callable[[str], None]
    files: dict[str, FileMade] = field(default_factory=dict)
    bought: Shopping | None = None
    sizes: tuple[Pattern, ...] = ()

    def speak(self, tongue: str, head: str) -> None:
        """All files of one language, their paths beginning with `head`."""
        given, book, _ = spoken(self.ran.handover, self.ran.notebook, self.notebook, tongue)
        ran = replace(self.ran, handover=given, notebook=book)
        self.sizes = self._asked_sizes(given.sizes or (given.pattern,))
        kept = Kept.beside(self.folder.folder, given.pattern.lesson.slug)
        self.bought = shopping(given, kept)
        self._booklets(ran, tongue, head)
        self._papers(ran, tongue, head)
        self.progress(f"Writing the first page ({tongue})")
        page = start_here(given.pattern.lesson, self._handed(head))
        self.files[f"{head}start-here.pdf"] = FileMade(page, "start", tongue, pages=_pages(page))

    def _asked_sizes(self, sizes: tuple[Pattern, ...]) -> tuple[Pattern, ...]:
        names = [pattern.body.name for pattern in sizes]
        for name in self.asked.sizes:
            if name not in names:
                raise KitError(f"there is no size '{name}'.", where="--sizes", do=f"Choose from {', '.join(names)}.")
        return tuple(p for p in sizes if not self.asked.sizes or p.body.name in self.asked.sizes)

    def _booklets(self, ran: Ran, tongue: str, head: str) -> None:
        pattern = ran.handover.pattern
        assert self.bought is not None
        look = read_theme(self.folder)
        with tempfile.TemporaryDirectory(prefix="lessonkit-") as home:
            made = Path(home)
            writing = Writing(
                ran,
                prove(pattern),
                self.bought,
                self.folder,
                look,
                self.forms,
                made,
                Stages({}),
                self.progress,
                self.asked.audience,
                keep=True,  # the previews show pages of one that was printed
                address=self.asked.live_at,
            )
            writing.all()
            for path in sorted(item for item in made.iterdir() if item.is_file()):
                data = path.read_bytes()
                kind = "worksheet" if path.name.startswith(SHEET) else "booklet"
                pages = _pages(data) if path.suffix == ".pdf" else 0
                self.files[f"{head}booklet/{path.name}"] = FileMade(data, kind, tongue, pattern.body.name, pages)
            names = [f"booklet-{key}.pdf" for key in FORMS if (made / f"booklet-{key}.pdf").is_file()]
            printed = _first_of(names, pattern)
            if printed:
                self.progress("Painting the previews")
                book = writing.book(FORMS[printed.removeprefix("booklet-").removesuffix(".pdf")])
                for view in previews((made / printed).read_bytes(), book, pattern):
                    self.files[f"{head}previews/{view.name}"] = FileMade(view.data, "preview", tongue, alt=view.alt)

    def _papers(self, ran: Ran, tongue: str, head: str) -> None:
        chart = [row.name for row in ran.handover.chart]
        several = len(self.sizes) > 1
        pages = RangeRequest(PageRequest((A4, LETTER)), several, several, True, None, ("svg", "dxf", "json"))
        sheets = RangeRequest(PageRequest((A0,)), several, several)
        bought = self.bought.amounts if self.bought else ()
        for request in (pages, sheets):
            found = range_files(self.sizes, chart, request, lambda line: self.progress(f"  {line}"), bought)
            for name, data in found.items():
                self._paper(name, data, tongue, head)

    def _paper(self, name: str, data: bytes, tongue: str, head: str) -> None:
        family = name.split("-")[0].split(".")[0]
        stem = name.rsplit(".", 1)[0]
        if family == "projector":  # its files end in the ground they are on
            stem = stem.removesuffix("-light").removesuffix("-dark")
        nested, names = stem.endswith("-sizes"), self._names()
        size = "" if nested else next((s for s in names if stem.endswith(f"-{plain_size(s)}")), names[0])
        kind = "data" if name.endswith(".json") else _KINDS.get(family, "cut")
        if nested and kind in ("pages", "sheet"):
            kind = "nested"
        count = _pages(data) if name.endswith(".pdf") else 0
        self.files[f"{head}{_FOLDERS[family]}/{name}"] = FileMade(data, kind, tongue, size, count)

    def _names(self) -> list[str]:
        """The sizes, longest names first, so that "W4 long" is not taken for "Long"."""
        return sorted((pattern.body.name for pattern in self.sizes), key=lambda name: -len(plain_size(name)))

    def _handed(self, head: str) -> Handed:
        own = {path.removeprefix(head): made for path, made in self.files.items() if path.startswith(head)}
        names = [pattern.body.name for pattern in self.sizes]
        several = len(names) > 1
        rows = [_row(own, name, f"-{plain_size(name)}" if several else "") for name in names]
        if several:
            rows.append(_row(own, say("release.all_sizes"), "-sizes"))
        booklets = [path for path in own if path.startswith("booklet/booklet")]
        screen = next((path for name in (HTML, EPUB) for path in booklets if path.endswith(name)), "")
        printed = _first_of([path for path in booklets if path.endswith(".pdf")], self.sizes[0])
        return Handed(screen, printed, tuple(rows), several, "copy-shop/", "projector/", "files/")


def _first_of(names: Sequence[str], pattern: Pattern) -> str:
    """Of print forms that of the lesson's own paper, "" where there is none."""
    own = "letter" if pattern.lesson.units == "inch" else "a4"
    return next((name for name in names if own in name), names[0] if names else "")


def _row(own: dict[str, FileMade], size: str, tail: str) -> SizeFiles:
    found: list[Any] = [size]
    for paper in ("a4", "letter"):
        path = f"pages/pages-{paper}{tail}.pdf"
        found += [path, own[path].pages] if path in own else ["", 0]
    return SizeFiles(*found)


def _pages(data: bytes) -> int:
    with pikepdf.open(io.BytesIO(data)) as document:
        return len(document.pages)


# ---- the folder ------------------------------------------------------------------------------------------------


def _free(out: Path) -> None:
    """Refuse a folder that holds something other than a release, before any work is done."""
    if not out.exists():
        return
    if not out.is_dir():
        raise KitError("there is a file where the folder should go.", where=str(out), do="Choose another with --out.")
    strange = _strange(out)
    if strange is None:
        raise KitError(
            "the folder holds other things than an earlier release; a release takes the place of all that is in it.",
            where=str(out),
            do="Choose an empty or a new folder with --out.",
        )
    if strange:
        more = f" and {len(strange) - _TOLD} more" if len(strange) > _TOLD else ""
        raise KitError(
            f"beside the earlier release the folder holds {', '.join(strange[:_TOLD])}{more}; a release takes the "
            "place of all that is in it.",
            where=str(out),
            do="Move that elsewhere, or choose an empty or a new folder with --out.",
        )


def _strange(out: Path) -> list[str] | None:
    """The files in `out` that no release put there; None where it is neither empty nor a release."""
    try:
        if not any(out.iterdir()):
            return []
        told = json.loads((out / SUMMARY).read_text(encoding="utf-8"))
        if not isinstance(told, dict) or told.get("format") != FORMAT:
            return None
        lines = (out / SUMS).read_text(encoding="utf-8").splitlines()
    except (OSError, ValueError):
        return None
    known = {line.partition("  ")[2] for line in lines} | {SUMS, SUMMARY}
    found = (path for path in out.rglob("*") if path.is_symlink() or not path.is_dir())
    names = (path.relative_to(out).as_posix() for path in found if path.name not in _OF_SYSTEM)
    return sorted(name for name in names if name not in known)


def _put(made: dict[str, bytes], out: Path, moment: int) -> None:
    """Write the files beside `out`, and have that folder take its place."""
    out = out.absolute()
    make_folder(out.parent)
    with (
        alone_in(out.parent),
        scratch(_beside(out), out.parent, partial(_brought_back, out)) as beside,
    ):
        new, old = beside / "new", beside / "old"
        try:
            new.mkdir()
            for path, data in sorted(made.items()):
                file = new / path
                file.parent.mkdir(parents=True, exist_ok=True)
                file.write_bytes(data)
                os.utime(file, (moment, moment))
            for folder in sorted({new, *(item for item in new.rglob("*") if item.is_dir())}, reverse=True):
                os.utime(folder, (moment, moment))
            if out.exists():
                os.replace(out, old)
            try:
                os.replace(new, out)
            except OSError:
                if old.exists():
                    os.replace(old, out)
                raise
        except OSError as error:
            raise KitError(
                f"the folder cannot be put in place ({error.strerror}).",
                where=str(out),
                do="What was there before is untouched. Choose another folder with --out, or make this one writable.",
            ) from error


def _beside(out: Path) -> str:
    """How the scratch folders of `out` begin: no beginning of another's, as "top" is one of "top-2"."""
    return f".lessonkit-release-{hashlib.sha256(out.name.encode()).hexdigest()[:16]}-"


def _brought_back(out: Path, left: Path) -> None:
    """A process was killed while it exchanged the folders: the earlier release goes back where it was."""
    if (left / "old").is_dir() and not out.exists():
        os.replace(left / "old", out)
