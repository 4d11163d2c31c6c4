"""A hostile lesson: whatever its words, pictures and theme ask for, making its booklet opens no file outside the
lesson's folder and no address, and shows its markup as text in PDF, web page and EPUB.

Three watches stand: Python's audit hook sees every file opened and every connection made by Python code; a server on
this machine counts what reaches it, whoever asks; and secrets lie where the lesson points, to be looked for in what is
made. The notebook itself is run before: running it runs its code, and that is what the command says.
"""

from __future__ import annotations

import io
import os
import re
import socketserver
import subprocess
import sys
import sysconfig
import tempfile
import threading
import zipfile
from collections.abc import Iterator
from dataclasses import dataclass, field
from pathlib import Path

import nbformat
import pikepdf
import pytest

import kit
from kit.booklet.clean_svg import clean_svg
from kit.booklet.compose import compose
from kit.booklet.epub import epub
from kit.booklet.fetch import LessonFolder
from kit.booklet.forms import FORMS, SCREEN
from kit.booklet.html import to_html
from kit.booklet.render import to_pdf
from kit.booklet.run_notebook import read_notebook, run_notebook
from kit.booklet.screen import screen
from kit.booklet.theme_file import read_theme
from kit.booklet.xhtml import name, parse
from kit.errors import KitError
from kit.proof import prove
from kit.resources import templates
from tests.laid import laying_anew

from .conftest import PNG, lesson_at, markdown

SECRET = "wharf-key-93117"


@dataclass
class Watch:
    """What was opened and asked for while `on`."""

    on: bool = False
    opened: list[str] = field(default_factory=list)
    asked: list[str] = field(default_factory=list)


WATCH = Watch()


def _hook(event: str, arguments: tuple[object, ...]) -> None:
    if not WATCH.on:
        return
    if event == "open" and isinstance(arguments[0], str | bytes | os.PathLike):
        WATCH.opened.append(os.path.realpath(os.fsdecode(arguments[0])))
    elif event in ("os.listdir", "os.scandir", "sqlite3.connect") and isinstance(arguments[0], str):
        WATCH.opened.append(os.path.realpath(arguments[0]))
    elif event == "urllib.Request" and str(arguments[0]).startswith("data:"):
        pass  # for what the page itself holds
    elif event in ("socket.connect", "socket.getaddrinfo", "urllib.Request", "subprocess.Popen", "os.system"):
        WATCH.asked.append(f"{event} {arguments!r}"[:200])


sys.addaudithook(_hook)  # a hook cannot be taken out again; it rests while nobody watches


ONE_OF_EACH = """<!DOCTYPE html><html lang="en"><head><title>One</title></head><body>
<h1>A heading</h1><p style="hyphens: auto">Some <b>bold</b> and <i>slanted</i> words, ⅜.</p>
<table><tr><td>1</td></tr></table>
<svg width="9" height="9" role="img"><title>A</title><path d="M0 0L9 9"/><text x="1" y="5">a</text></svg>
<img alt="dot" src="data:image/gif;base64,R0lGODlhAQABAAAAACwAAAAAAQABAAACAkQBADs="></body></html>"""
"""A page with something of each kind that a booklet sets."""


@pytest.fixture(scope="module")
def server() -> Iterator[tuple[int, list[str]]]:
    """A server on this machine, its port, and what it was asked for."""
    asked: list[str] = []

    class Counting(socketserver.StreamRequestHandler):
        def handle(self) -> None:
            asked.append(self.rfile.readline().decode("latin-1").strip())

    with socketserver.ThreadingTCPServer(("127.0.0.1", 0), Counting) as running:
        threading.Thread(target=running.serve_forever, daemon=True).start()
        yield running.server_address[1], asked
        running.shutdown()


def svg(inside: str, before: str = "") -> str:
    return (
        f'{before}<svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink" '
        f'width="40" height="40"><rect width="40" height="40" fill="#cccccc"/>{inside}</svg>'
    )


def hostile_drawings(out: str, web: str) -> dict[str, str]:
    """Drawings that reach for the files in `out` (a file: address) and for the server `web`."""
    return {
        "image": svg(f'<image href="{out}/secret.png" width="9" height="9"/><image xlink:href="{web}/i.png"/>'),
        "use": svg(f'<use href="{out}/secret.svg#a"/><use xlink:href="../secret.svg#a"/><use href="{web}/u.svg#a"/>'),
        "style": svg(f"<style>@import url('{web}/s.css'); rect {{ fill: url({out}/secret.svg#a) }}</style>"),
        "escape": svg(f"<style>@imp\\6frt '{web}/e.css'; rect {{ background: u\\72l({web}/e.png) }}</style>"),
        "entity": svg("<text>&x;</text>", f'<!DOCTYPE svg [<!ENTITY x SYSTEM "{out}/secret.txt">]>'),
        "doctype": svg("<text>plain</text>", f'<!DOCTYPE svg SYSTEM "{out}/secret.dtd">'),
        "sheet": svg("", f'<?xml-stylesheet href="{web}/x.css"?>'),
        "script": svg(
            "<script>alert(1)</script><g onclick='alert(2)'/><a href='javascript:alert(3)'><text>a</text></a>"
        ),
        "foreign": svg(
            '<foreignObject width="9" height="9">'
            f'<iframe xmlns="http://www.w3.org/1999/xhtml" src="{web}/f"/></foreignObject>'
        ),
        "animate": svg(f'<image><animate attributeName="href" to="{web}/a.png"/></image>'),
    }


def hostile_words(out: str, web: str) -> str:
    pictures = [
        f"{out}/secret.png",
        "../secret.png",
        "%2e%2e/secret.png",
        "link.png",
        "up/secret.png",
        "/etc/hostname",
        f"{web}/w.png",
        web.replace("http:", "") + "/w.png",
        "data:image/svg+xml;base64,PHN2ZyB4bWxucz0iaHR0cDovL3d3dy53My5vcmcvMjAwMC9zdmciPjxzY3JpcHQ+YWxlcnQoMSk8L3NjcmlwdD48L3N2Zz4=",
        "data:text/html,<script>alert(1)</script>",
        *(f"{drawing}.svg" for drawing in hostile_drawings(out, web)),
    ]
    links = [f"{out}/secret.txt", "javascript:alert(1)", "data:text/html,x", "vbscript:x", "file:///etc/passwd"]
    return "\n\n".join(
        [
            "## Words",
            *(f"![picture](<{address}>)" for address in pictures),
            *(f"[link](<{address}>)" for address in links),
            f'<img src="{web}/h.png" onerror="alert(1)"><script>alert(1)</script>',
            f'<style>@import url("{web}/h.css"); body {{ background: url({out}/secret.png) }}</style>',
            f'<link rel="stylesheet" href="{web}/l.css"><link rel="attachment" href="{out}/secret.txt">',
            f'<div style="background: url({web}/d.png)">styled</div>',
            f'<svg><image href="{out}/secret.png"/></svg><object data="{out}/secret.txt"></object>',
            f'<iframe src="{out}/secret.txt"></iframe><base href="{web}/">',
            f'<meta http-equiv="refresh" content="0;{web}">',
            "</body></html>{{ 7 * 7 }}{% include '/etc/passwd' %}",
        ]
    )


@dataclass(frozen=True)
class Made:
    """A hostile lesson's booklet in three forms, and where it lives."""

    pdf: bytes
    html: str
    epub: bytes
    home: Path
    left_out: tuple[str, ...]
    web: list[str]


@pytest.fixture(scope="module")
def made(tmp_path_factory: pytest.TempPathFactory, server: tuple[int, list[str]]) -> Made:
    folder = tmp_path_factory.mktemp("hostile")
    port, web = server
    out, address = folder.as_uri(), f"http://127.0.0.1:{port}"
    for secret, text in (("secret.txt", SECRET), ("secret.svg", svg(f'<text id="a">{SECRET}</text>'))):
        (folder / secret).write_text(text)
    (folder / "secret.dtd").write_text(f'<!ENTITY x "{SECRET}">')
    (folder / "secret.png").write_bytes(PNG)

    def spoil(book: nbformat.NotebookNode) -> None:
        for cell in book.cells:
            cell.source = (
                cell.source.replace('"Pebble top"', '"Pebble <script>alert(1)</script> & <b>top</b>"')
                .replace('author=""', "author=\"Ann</title><img src=x onerror='alert(1)'>\"")
                .replace("Join the shoulders", "Join <i>the</i> & </article>shoulders")
                .replace("Match the neck edges exactly;", f"Match <img src='{address}/t.png'> the neck edges & all;")
                .replace("the deep turn of the hem", "</svg><script>alert(1)</script>")
            )

    path = lesson_at(folder, {"end": [markdown(hostile_words(out, address))]}, spoil)
    home = path.parent
    for drawing, text in hostile_drawings(out, address).items():
        (home / f"{drawing}.svg").write_text(text)
    os.symlink(folder / "secret.png", home / "link.png")
    os.symlink(folder, home / "up")
    ran = run_notebook(read_notebook(path), home, name=path.name, size="W4", units="cm")
    lesson = LessonFolder(home)
    findings = prove(ran.handover.pattern)

    def book(form: str | None) -> str:
        chosen, look = FORMS[form] if form else SCREEN, read_theme(lesson)
        return to_html(compose(ran.handover, ran.notebook, lesson, findings, chosen, look), chosen, look)

    to_pdf(ONE_OF_EACH, lesson)  # once unwatched, so that modules and fonts are loaded
    WATCH.opened.clear()
    WATCH.asked.clear()
    WATCH.on = True
    try:
        with laying_anew():  # the tests' own store of layouts is no part of a build
            printed, page = to_pdf(book("a4"), lesson), book(None)
        shown, read = screen(page), epub(page)
    finally:
        WATCH.on = False
    return Made(printed, shown, read, home, tuple(lesson.left_out), web)


def test_only_the_lesson_s_folder_is_opened(made: Made) -> None:
    own = [made.home, Path(kit.__file__).parent, templates(), Path(sys.prefix), Path(sys.base_prefix)]
    own += [Path(sysconfig.get_path(key)) for key in ("stdlib", "purelib", "platlib")]
    allowed = [os.path.realpath(folder) for folder in own]
    stray = [path for path in WATCH.opened if not any(Path(path).is_relative_to(folder) for folder in allowed)]
    scratch = os.path.join(os.path.realpath(tempfile.gettempdir()), "weasyprint-")  # its own pictures, laid aside
    stray = [path for path in stray if not path.startswith(scratch)]
    assert stray == []
    assert any(path.startswith(str(made.home)) for path in WATCH.opened)  # the watch sees


def test_no_address_is_asked_for(made: Made) -> None:
    assert WATCH.asked == [] and made.web == []


def test_the_watch_would_have_seen(tmp_path: Path, server: tuple[int, list[str]]) -> None:
    import urllib.request

    seen = len(server[1])
    WATCH.on = True
    try:
        (tmp_path / "a").touch()
        (tmp_path / "a").read_bytes()
        with pytest.raises(OSError):
            urllib.request.urlopen(f"http://127.0.0.1:{server[0]}/seen", timeout=60)
    finally:
        WATCH.on = False
    assert os.path.realpath(tmp_path / "a") in WATCH.opened
    assert any("socket.connect" in each for each in WATCH.asked)
    assert server[1][seen:] == ["GET /seen HTTP/1.1"]
    server[1].clear()
    WATCH.asked.clear()


def test_nothing_secret_is_in_what_was_made(made: Made, tmp_path: Path) -> None:
    path = tmp_path / "booklet.pdf"
    path.write_bytes(made.pdf)
    printed = subprocess.run(["pdftotext", str(path), "-"], capture_output=True, text=True, check=True).stdout
    with zipfile.ZipFile(io.BytesIO(made.epub)) as book:
        told = [book.read(each).decode("utf-8", "replace") for each in book.namelist()]
    for text in (printed, made.html, *told):
        assert SECRET not in text
    with pikepdf.open(io.BytesIO(made.pdf)) as pdf:
        assert "/EmbeddedFiles" not in pdf.Root.get("/Names", {})
        for page in pdf.pages:
            for note in page.get("/Annots", []):
                uri = str(note.get("/A", {}).get("/URI", ""))
                assert uri == "" or uri.startswith(("http://", "https://", "mailto:"))
    # markup is printed as the text it is
    for said in ("<script>alert(1)</script>", "{{ 7 * 7 }}", "Join <i>the</i> & </article>shoulders"):
        assert re.sub(r"\s", "", said) in re.sub(r"\s", "", printed), said


def test_what_was_refused_is_said(made: Made) -> None:
    told = " ".join(made.left_out)
    for name_ in ("secret.png", "link.png", "/etc/hostname", "entity.svg", "not a picture"):
        assert name_ in told


def test_the_page_holds_no_element_of_the_lesson_s_own(made: Made) -> None:
    tree = parse(made.html)
    scripts = [element for element in tree.iter() if name(element) == "script"]
    assert [element.get("id") for element in scripts] == ["screen-data", None]  # ours
    for element in tree.iter():
        assert name(element) not in ("iframe", "object", "embed", "base", "link", "i", "foreignObject")
        for key, value in element.attrib.items():
            assert not key.lower().startswith("on") and key != "style"
            if key.rpartition("}")[2] in ("src", "href"):
                assert value.startswith(("#", "data:image/", "https://", "http://", "mailto:")), value
                assert name(element) == "a" or not value.startswith(("http", "mailto")), value
    metas = [
        element.get("http-equiv") for element in tree.iter() if name(element) == "meta" and element.get("http-equiv")
    ]
    assert metas == ["Content-Security-Policy"]


def test_every_drawing_carried_along_is_clean(made: Made) -> None:
    import base64

    drawings = [
        base64.b64decode(each) for each in re.findall(r"data:image/svg\+xml;base64,([A-Za-z0-9+/=]+)", made.html)
    ]
    with zipfile.ZipFile(io.BytesIO(made.epub)) as book:
        drawings += [book.read(each) for each in book.namelist() if each.startswith("EPUB/pictures/") and "svg" in each]
        assert all(b"<script" not in book.read(each) for each in book.namelist())
    assert len(drawings) > len(hostile_drawings("", "")) - 1  # all but the one with entities, in either form
    for drawing in drawings:
        text = drawing.decode("utf-8")
        for forbidden in (
            "127.0.0.1",
            "file:",
            "script",
            "onclick",
            "iframe",
            "@import",
            "DOCTYPE",
            "stylesheet",
            "../",
        ):
            assert forbidden not in text, (forbidden, text)
        assert "<rect" in text


@pytest.mark.parametrize(
    ("theme", "said"),
    [
        ('logo = "../secret.png"', "outside the lesson's folder"),
        ('logo = "file:///etc/passwd"', "outside the lesson"),
        ('logo = "http://127.0.0.1:9/a.png"', "outside the lesson"),
        ('headings = "../../secret.otf"', "headings"),
        ('ink = "red; background: url(http://127.0.0.1:9/)"', "not a colour"),
        ("accent = \"#a8391b}@import url('http://127.0.0.1:9/')\"", "not a colour"),
        ('typeface = "x\';src:url(file:///etc/passwd)"', "typeface"),
    ],
)
def test_a_theme_reaches_nothing_else(tmp_path: Path, theme: str, said: str) -> None:
    (tmp_path / "lesson").mkdir()
    (tmp_path / "secret.png").write_bytes(PNG)
    (tmp_path / "lesson" / "theme.toml").write_text(f"[theme]\n{theme}\n")
    with pytest.raises(KitError, match=said):
        read_theme(LessonFolder(tmp_path / "lesson"))


@pytest.mark.parametrize(
    "data",
    [
        b"",
        b"not xml",
        b"<html xmlns='http://www.w3.org/1999/xhtml'><script>1</script></html>",
        b"<svg/>",
        b'<!DOCTYPE svg [<!ENTITY a "b">]><svg xmlns="http://www.w3.org/2000/svg"/>',
        '<!DOCTYPE svg [<!ENTITY a "b">]><svg xmlns="http://www.w3.org/2000/svg"/>'.encode("utf-16"),
    ],
)
def test_what_is_no_drawing_is_refused(data: bytes) -> None:
    with pytest.raises(KitError, match=r"odd\.svg"):
        clean_svg(data, "odd.svg")


def test_a_plain_drawing_stays_as_it_is() -> None:
    plain = svg(
        '<defs><linearGradient id="g"><stop offset="0" stop-color="red"/></linearGradient></defs>'
        '<g fill="url(#g)" style="stroke: url(#g); stroke-width: 2"><text>a &amp; b<tspan>c</tspan>d</text></g>'
        '<use xlink:href="#g"/>'
    )
    said = clean_svg(plain.encode(), "plain.svg").decode()
    for kept in ('fill="url(#g)"', "stroke: url(#g); stroke-width: 2", "a &amp; b<tspan>c</tspan>d", 'href="#g"'):
        assert kept in said
