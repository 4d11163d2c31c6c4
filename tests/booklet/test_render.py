"""A page set in type: how it is read, and that it gives the same bytes again."""

from __future__ import annotations

import re
import subprocess
from base64 import b64encode
from io import BytesIO
from pathlib import Path

import pikepdf
import pytest
from PIL import Image

import kit.booklet.render as render
from kit.booklet.fetch import LessonFolder
from kit.booklet.forms import FORMS
from kit.booklet.render import to_pdf

from .conftest import lesson_at, markdown, pages_html

WORDS = "## On cloth & thread\n\n- crisp\n- *light*\n\n| cloth | grams |\n|---|---|\n| lawn | 70 |\n\nOne line<br>two."


def short(html: str) -> str:
    """A booklet's page with the words after the last step, and nothing else of its parts."""
    parts = re.findall(r'<section class="part[^>]*>.*?</section>', html, re.DOTALL)
    kept = next(part for part in parts if "On cloth" in part)
    for part in parts:
        html = html.replace(part, "") if part != kept else html
    return html


@pytest.fixture(scope="module")
def page(tmp_path_factory: pytest.TempPathFactory) -> str:
    path = lesson_at(tmp_path_factory.mktemp("render"), {"end": [markdown(WORDS)]})
    return short(pages_html(path, "a5")[0])


def test_the_page_is_read_as_xml_and_gives_what_reading_it_as_html_gives(
    page: str, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """To the byte: nothing of a build's own time or chance is in it either."""
    read: list[str] = []

    def html(**given: object) -> object:
        read.append(str(given["string"]))
        return plain(**given)

    plain = render.HTML
    monkeypatch.setattr(render, "HTML", html)
    made = to_pdf(page, LessonFolder(tmp_path))
    assert read == ["<html></html>"]
    forgiven = page.replace('<meta charset="utf-8"/>', '<meta charset="utf-8">')
    assert forgiven != page
    assert to_pdf(forgiven, LessonFolder(tmp_path)) == made
    assert read[1:] == [forgiven]


def test_what_is_not_well_formed_is_forgiven_as_a_browser_does(tmp_path: Path) -> None:
    (tmp_path / "made.pdf").write_bytes(
        to_pdf("<!DOCTYPE html><html lang=en><title>A</title><p>one<p>two &nbsp; three", LessonFolder(tmp_path))
    )
    said = subprocess.run(["pdftotext", tmp_path / "made.pdf", "-"], capture_output=True, text=True, check=True).stdout
    assert said.split() == ["one", "two", "three"]


def test_a_picture_that_the_page_itself_holds_is_set(tmp_path: Path) -> None:
    """An author's portrait and a logo come so (RFC 2397)."""
    dot = BytesIO()
    Image.new("RGB", (7, 5), (200, 30, 30)).save(dot, "PNG")
    told = b64encode(dot.getvalue()).decode()
    page = f'<html lang="en"><head><title>A</title></head><body><img alt="dot" src="data:image/png;base64,{told}"/>'
    with pikepdf.open(BytesIO(to_pdf(f"{page}</body></html>", LessonFolder(tmp_path)))) as made:
        held = [thing for _, thing in made.pages[0].Resources.get("/XObject", pikepdf.Dictionary()).items()]
        assert [(int(image.Width), int(image.Height)) for image in held] == [(7, 5)]


@pytest.mark.parametrize("form", ["a4", "a5", "a4-large"])
def test_no_form_asks_the_typesetter_for_columns_of_long_lists(page: str, form: str) -> None:
    """It balances them by trying; half the time of a small form went there. The tapes, eleven at most, keep theirs."""
    assert form in FORMS
    assert len(re.findall(r"\bcolumns:", page)) <= 1
