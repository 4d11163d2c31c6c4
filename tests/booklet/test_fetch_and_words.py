"""A lesson's markup reads nothing outside its folder, opens no address, and is never obeyed as HTML."""

from __future__ import annotations

import base64
import os
import re
from pathlib import Path

import pytest
from weasyprint import HTML

from kit.booklet.fetch import LessonFolder
from kit.booklet.fetcher import Fetcher
from kit.booklet.words import to_html
from kit.errors import KitError

from .conftest import PNG


@pytest.fixture
def folder(tmp_path: Path) -> LessonFolder:
    (tmp_path / "lesson" / "pictures").mkdir(parents=True)
    (tmp_path / "lesson" / "pictures" / "seam.png").write_bytes(PNG)
    (tmp_path / "secret.png").write_bytes(PNG)
    (tmp_path / "lesson" / "secret.txt").write_text("a secret")
    os.symlink(tmp_path / "secret.png", tmp_path / "lesson" / "link.png")
    os.symlink(tmp_path, tmp_path / "lesson" / "up")
    return LessonFolder(tmp_path / "lesson")


REFUSED = [
    "file:///etc/passwd",
    "/etc/passwd",
    "../secret.png",
    "pictures/../../secret.png",
    "%2e%2e/secret.png",
    "..%2fsecret.png",
    "link.png",
    "up/secret.png",
    "secret.txt",
    "http://127.0.0.1:9/a.png",
    "https://127.0.0.1:9/a.png",
    "//127.0.0.1:9/a.png",
    "file://127.0.0.1/etc/passwd.png",
    "ftp://127.0.0.1:9/a.png",
    "data:text/html,<b>x</b>",
    "data:image/svg+xml;base64,PHN2Zy8+",
    "nothing.png",
    "pictures",
    "a\0b.png",
]


@pytest.mark.parametrize("address", REFUSED)
def test_refused_in_markdown(folder: LessonFolder, address: str) -> None:
    with pytest.raises(KitError):
        folder.data_uri(address)
    html = to_html(f"![seam](<{address}>)", folder)
    assert "<img" not in html


@pytest.mark.parametrize("address", [a for a in REFUSED if not a.startswith("data:") and "\0" not in a])
def test_refused_by_the_fetcher(folder: LessonFolder, address: str) -> None:
    absolute = address if ":" in address.split("/")[0] else (folder.folder.as_uri() + "/" + address.lstrip("/"))
    if address.startswith("//"):
        absolute = "http:" + address
    if address == "/etc/passwd":
        absolute = "file:///etc/passwd"
    with pytest.raises(KitError):
        Fetcher(folder).fetch(absolute)
    assert folder.left_out


def test_a_picture_in_the_folder_is_taken_in(folder: LessonFolder) -> None:
    html = to_html('![A flat seam](pictures/seam.png "Seen from above")', folder)
    encoded = base64.b64encode(PNG).decode()
    assert f'src="data:image/png;base64,{encoded}"' in html
    assert 'alt="A flat seam"' in html
    assert "Seen from above" in html
    assert folder.left_out == []
    assert Fetcher(folder).fetch((folder.folder / "pictures" / "seam.png").as_uri()).read() == PNG


def test_headings_leave_out_no_level(folder: LessonFolder) -> None:
    html = to_html("#### Deep\n\n##### Deeper\n\n# Top\n\n### Third\n\n## Second", folder, level=1)
    assert re.findall(r"<(h\d)>(\w+)", html) == [
        ("h3", "Deep"),
        ("h4", "Deeper"),
        ("h2", "Top"),
        ("h3", "Third"),
        ("h3", "Second"),
    ]


def test_a_picture_without_words_gets_some(folder: LessonFolder) -> None:
    assert 'alt="Seen from above"' in to_html('![](pictures/seam.png "Seen from above")', folder)
    assert 'alt="seam"' in to_html("![](pictures/seam.png)", folder)
    assert 'alt="seam"' in to_html("![ ](pictures/seam.png)", folder)
    pasted = base64.b64encode(PNG).decode()
    assert 'alt="Picture"' in to_html(f"![](data:image/png;base64,{pasted})", folder)
    assert 'alt="image"' in to_html(
        "![](attachment:image.png)", folder, attachments={"image.png": {"image/png": pasted}}
    )


def test_a_pasted_picture_is_taken_in(folder: LessonFolder) -> None:
    pasted = {"image.png": {"image/png": base64.b64encode(PNG).decode()}}
    assert "<img" in to_html("![pasted](attachment:image.png)", folder, attachments=pasted)
    assert "<img" not in to_html("![pasted](attachment:other.png)", folder, attachments=pasted)


@pytest.mark.parametrize(
    ("source", "forbidden"),
    [
        ("<script>alert(1)</script>", "<script"),
        ('<img src="x" onerror="alert(1)">', "<img"),
        ("text <iframe src='file:///etc/passwd'></iframe> text", "<iframe"),
        ("<style>@import url(http://127.0.0.1:9/a.css)</style>", "<style"),
        ("<link rel=stylesheet href=http://127.0.0.1:9/a.css>", "<link"),
        ("[go](javascript:alert(1))", "javascript:"),
        ("[go](file:///etc/passwd)", "file:"),
        ("[go](data:text/html,x)", "data:"),
        ('![" onerror="alert(1)](pictures/seam.png)', 'onerror="'),
        ('[a](https://example.org "x\\" onclick=\\"y")', "onclick="),
        ("<svg><image href='file:///etc/passwd'/></svg>", "<svg"),
        ("<object data='file:///etc/passwd'></object>", "<object"),
    ],
)
def test_markup_is_shown_not_obeyed(folder: LessonFolder, source: str, forbidden: str) -> None:
    assert forbidden not in to_html(source, folder)


def test_plain_markdown_works(folder: LessonFolder) -> None:
    html = to_html(
        "# Pressing\n\nUse a *cool* iron & [read](https://example.org/a?b=1&c=2).\n\n- one\n", folder, level=1
    )
    assert "<h2>Pressing</h2>" in html
    assert "<em>cool</em> iron &amp;" in html
    assert 'href="https://example.org/a?b=1&amp;c=2"' in html
    assert "<li>one</li>" in html


def _asked(html: str, folder: LessonFolder) -> list[str]:
    """Every resource outside the page that WeasyPrint was allowed to read while rendering `html`."""
    given: list[str] = []

    class Watching(Fetcher):
        def fetch(self, url: str, headers: dict[str, str] | None = None):  # type: ignore[no-untyped-def]
            response = super().fetch(url, headers)
            given.append(url)
            return response

    HTML(string=html, base_url=folder.folder.as_uri() + "/", url_fetcher=Watching(folder)).write_pdf()
    return given


@pytest.mark.parametrize(
    "html",
    [
        "<img src='file:///etc/passwd'>",
        "<img src='../secret.png'><img src='link.png'><img src='up/secret.png'>",
        "<style>@import 'http://127.0.0.1:9/a.css'; body{background:url(../secret.png)}</style>",
        "<link rel=stylesheet href='file:///etc/passwd'>",
        "<link rel=attachment href='file:///etc/passwd'>",
        "<style>@font-face{font-family:x;src:url(file:///etc/passwd)} body{font-family:x}</style>text",
        "<svg width=9 height=9><image href='file:///etc/passwd' width=9 height=9 /></svg>",
        "<object data='file:///etc/passwd'></object><embed src='../secret.png'>",
        "<style>body::before{content:url(http://127.0.0.1:9/a.png)}</style>",
    ],
)
def test_the_printed_page_reads_nothing_outside(folder: LessonFolder, html: str) -> None:
    assert _asked(html, folder) == []
    assert folder.left_out


def test_an_svg_uses_only_its_own_shapes(folder: LessonFolder) -> None:
    assert _asked("<svg width=9 height=9><use href='file:///etc/passwd#a' /></svg>", folder) == []


def test_an_svg_in_the_folder_reaches_nothing_else(folder: LessonFolder) -> None:
    svg = (
        '<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"><text>x</text>'
        '<image href="file:///etc/passwd" width="9" height="9"/><image href="../secret.png" width="9" height="9"/>'
        '<style>@import url("http://127.0.0.1:9/a.css");</style></svg>'
    )
    (folder.folder / "plan.svg").write_text(svg)
    (folder.folder / "entity.svg").write_text(
        '<!DOCTYPE svg [<!ENTITY x SYSTEM "file:///etc/passwd">]>' + svg.replace("<text>x", "<text>&x;")
    )
    given = _asked("<img src='plan.svg'><img src='entity.svg'>", folder)
    assert [url.rsplit("/", 1)[-1] for url in given] == ["plan.svg"]
    assert any("declares entities" in said for said in folder.left_out)
