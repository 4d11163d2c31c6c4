"""The page that is read first: what is in the folder, in which order it is used, and what each size takes to print."""

from __future__ import annotations

import tempfile
from collections.abc import Sequence
from dataclasses import dataclass
from pathlib import Path

from kit.booklet.html import environment
from kit.booklet.typeset import set_in_type
from kit.language import language, say
from kit.lesson.pattern import LessonInfo
from kit.units import System

_PAPERS: dict[System, str] = {"cm": "A4", "inch": "Letter"}


@dataclass(frozen=True)
class SizeFiles:
    """Of one size, or of all nested ones: the file of its pages and how many there are, on A4 and on Letter; 0 where
    there is none."""

    size: str
    a4: str
    a4_pages: int
    letter: str
    letter_pages: int


@dataclass(frozen=True)
class Handed:
    """What a folder holds, for its first page: `screen` and `printed` booklets, the pages of each size, whether there
    are a nested file, sheets for a copy shop, a projector's and files for other programs."""

    screen: str
    printed: str
    pages: tuple[SizeFiles, ...]
    nested: bool = False
    sheets: str = ""
    projector: str = ""
    files: str = ""


def start_here_html(info: LessonInfo, handed: Handed) -> str:
    """The page, in the language spoken."""
    template = environment().get_template("start_here.html.j2")
    edition = say("release.edition", edition=info.edition)
    return template.render(
        info=info,
        edition=edition,
        steps=tuple(_steps(handed)),
        rows=_rows(handed.pages),
        head=tuple(say(f"release.{key}") for key in ("size", "pages_a4", "pages_letter")),
        cautions=(say("release.caution_blades"), say("release.caution_iron")),
        language=language(),
        paper=_PAPERS[info.units],
    )


def start_here(info: LessonInfo, handed: Handed) -> bytes:
    """The page as PDF."""
    with tempfile.TemporaryDirectory(prefix="lessonkit-") as folder:
        return set_in_type(start_here_html(info, handed), Path(folder), Path(folder), "start-here").pdf


def _steps(handed: Handed) -> Sequence[tuple[str, str]]:
    several = len(handed.pages) > 1
    found = []
    if handed.screen and handed.printed:
        found.append(("read", say("release.read", screen=handed.screen, printed=handed.printed)))
    elif handed.screen or handed.printed:
        found.append(("read", say("release.read_one", file=handed.screen or handed.printed)))
    if several:
        found.append(("choose", say("release.choose")))
    found.append(("print", say("release.print")))
    if handed.nested:
        found.append(("nested", say("release.nested")))
    for key in ("sheets", "projector", "files"):
        if folder := getattr(handed, key):
            found.append((key, say(f"release.{key}", folder=folder)))
    found.append(("join", say("release.join")))
    return [(say(f"release.do_{key}"), text) for key, text in found]


def _rows(pages: Sequence[SizeFiles]) -> list[tuple[str, str, str]]:
    def cell(file: str, count: int) -> str:
        return say("release.file_pages", file=file, count=count) if file else ""

    return [(each.size, cell(each.a4, each.a4_pages), cell(each.letter, each.letter_pages)) for each in pages]
