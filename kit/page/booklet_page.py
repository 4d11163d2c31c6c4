"""The booklet beside a page: the HTML booklet as it is built, with what makes it follow the reader's body.

It stands as `booklet.html` in the page's folder and uses the engine of the edition it was built with. As it is opened
it is drawn in the size it was built in; the engine is loaded when the reader asks for their own measurements.
"""

from __future__ import annotations

import json
import re
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from html import escape
from pathlib import Path
from types import MappingProxyType

from kit.booklet.buying import shopping
from kit.booklet.compose import compose
from kit.booklet.fetch import LessonFolder
from kit.booklet.forms import SCREEN
from kit.booklet.handover import Handover
from kit.booklet.html import to_html
from kit.booklet.own_language import spoken
from kit.booklet.run_notebook import Ran
from kit.booklet.screen import screen
from kit.booklet.theme_file import read_theme
from kit.cloth.kept_lays import Kept
from kit.diagnostic import reading
from kit.language import speaking
from kit.page.opening import moved, size_of
from kit.proof import prove
from kit.prose.readings import ruling_of
from kit.rulers import ruled

BOOKLET_FILE = "booklet.html"


@dataclass(frozen=True)
class PageBooklet:
    """A booklet before it knows its edition: its `html`, the `size` it is drawn in ("" where there is one for
    all), the `inks` of its pictures, the `values` that do not stand as written, and the `notes` for its author."""

    html: str
    language: str
    units: str
    size: str
    inks: tuple[str, str]
    values: Mapping[str, float]
    notes: tuple[str, ...]


def page_booklet(ran: Ran, notebook: Path, language: str, kept: Kept) -> PageBooklet:
    """The booklet of a notebook that `ran` in all sizes, in a `language`; layouts `kept` are not searched again.
    Raises `KitError` as a build does."""
    notes: tuple[str, ...] = ()
    folder = LessonFolder(notebook.resolve().parent)
    look = read_theme(folder)
    given, cells = _of_a_size(ran.handover), ran.notebook
    asked = ran.handover.pattern.body.name
    other = asked != given.pattern.body.name
    with speaking(language):
        if language != given.pattern.lesson.language:
            given, cells, notes = spoken(given, cells, notebook, language)
        pattern = given.pattern
        with reading(pattern.lesson.units), ruled(ruling_of(pattern)):
            book = compose(given, cells, folder, prove(pattern), SCREEN, look, shopping(given, kept), marked=True)
            html = to_html(book, SCREEN, look, live=True)
    left = tuple(f"Left out of the booklet: {line}" for line in dict.fromkeys(folder.left_out))
    if other:
        drawn = given.pattern.body.name
        notes += (
            f"The live booklet is drawn in size {drawn}, not for {asked}: a page holds sizes of the chart alone.",
        )
    inks = (look.ink, look.accent)
    return PageBooklet(html, language, pattern.lesson.units, size_of(given), inks, moved(pattern), (*notes, *left))


def _of_a_size(given: Handover) -> Handover:
    """Drafted for a size of the chart where it was drafted for somebody: nobody's body is in a page."""
    names = [row.name for row in given.chart]
    if not given.sizes or given.pattern.body.name in names:
        return given
    usual = [pattern for pattern in given.sizes if pattern.body.name == "W4"] or given.sizes
    return replace(given, pattern=usual[0], fittings=())


def file_of(made: Sequence[PageBooklet]) -> dict[str, str]:
    """The files of one lesson's booklets by language: the first stands where a booklet alone would."""
    return {
        each.language: BOOKLET_FILE if number == 0 else BOOKLET_FILE.replace(".html", f".{each.language}.html")
        for number, each in enumerate(made)
    }


def booklet_file(
    made: PageBooklet,
    edition: str,
    slug: str,
    words: Mapping[str, str],
    megabytes: int,
    files: Mapping[str, str] = MappingProxyType({}),
) -> str:
    """The file, for the folder `edition` beside it; `words` are the page's own in the booklet's language. `files` are
    those of the lesson's booklets by language, which lead to one another; what a reader typed goes along."""
    told = {
        "slug": slug,
        "language": made.language,
        "units": made.units,
        "size": made.size,
        "values": dict(made.values),
        "words": dict(words),
        "megabytes": str(megabytes),
    }
    data = json.dumps(told, ensure_ascii=False, sort_keys=True).replace("<", "\\u003c")
    tail = (
        f'<link rel="stylesheet" href="{escape(edition)}/booklet.css">\n'
        f'<script type="application/json" id="live-data">{data}</script>\n'
        f'<script type="module" src="{escape(edition)}/booklet.js"></script>\n'
    )
    icon = f'<link rel="icon" href="{escape(edition)}/icon-192.png"/>\n'
    html = made.html.replace("</head>", f"{icon}</head>", 1)
    if len(files) > 1:
        links = "".join(_link(code, file, words, here=code == made.language) for code, file in files.items())
        label = escape(words.get("language", ""))
        choice = f'<div class="languages" role="navigation" aria-label="{label}">{links}</div>'
        html = re.sub(r"<body\b[^>]*>", lambda found: f"{found[0]}\n{choice}", html, count=1)
    with speaking(made.language):
        return screen(html, tail, own=True)


def _link(code: str, file: str, words: Mapping[str, str], *, here: bool) -> str:
    name = escape(words.get(f"language_{code}", code))
    now = ' aria-current="page"' if here else ""
    return f'<a href="{escape(file)}" lang="{escape(code)}" hreflang="{escape(code)}"{now}>{name}</a>\n'
