"""The whole build of the example against WeasyPrint alone on the same HTML, in the same run.

Run with `make bench`. Group "booklet A4": the mean of `test_booklet` (composing, setting, mending the structure) over
that of `test_weasyprint_alone`, aim: at most 1.2. Group "whole build": `test_build_*` (a fresh kernel, the proof, the
booklet in these forms, pattern pages) over `test_weasyprint_alone_*` on the very pages that build sets. The seconds of
each stage of the last round are in `extra_info` and printed; `lessonkit build --timings` prints them too.
"""

from __future__ import annotations

import os
from collections.abc import Iterator
from pathlib import Path

import pytest
from pytest_benchmark.fixture import BenchmarkFixture
from weasyprint import HTML

from kit.booklet.asked_forms import asked_forms
from kit.booklet.build import Built, build
from kit.booklet.compose import compose
from kit.booklet.epub import epub
from kit.booklet.fetch import LessonFolder
from kit.booklet.forms import FORMS, SCREEN
from kit.booklet.html import to_html
from kit.booklet.impose import impose
from kit.booklet.render import to_pdf
from kit.booklet.run_notebook import Ran, read_notebook, run_notebook
from kit.booklet.screen import screen
from kit.proof import prove
from kit.resources import examples

EXAMPLE = examples() / "tideline_wrap_top.ipynb"


@pytest.fixture(scope="module")
def ran() -> Iterator[Ran]:
    yield run_notebook(read_notebook(EXAMPLE), EXAMPLE.parent, name=EXAMPLE.name, size="W4", units="cm")


def page(ran: Ran, key: str = "") -> str:
    """The example's booklet as HTML: a print form, or the screen page."""
    form, folder = FORMS[key] if key else SCREEN, LessonFolder(ran.folder)
    return to_html(compose(ran.handover, ran.notebook, folder, prove(ran.handover.pattern), form), form)


def alone(html: str, folder: Path) -> bytes:
    """What WeasyPrint makes of `html` by itself: the named baseline."""
    pdf = HTML(string=html, base_url=str(folder)).write_pdf(pdf_variant="pdf/ua-1")
    assert isinstance(pdf, bytes)
    return pdf


@pytest.mark.benchmark(group="booklet A4")
def test_booklet(benchmark: BenchmarkFixture, ran: Ran) -> None:
    pdf = benchmark.pedantic(lambda: to_pdf(page(ran, "a4"), LessonFolder(ran.folder)), rounds=3, warmup_rounds=1)
    assert pdf.startswith(b"%PDF-")


@pytest.mark.benchmark(group="booklet A4")
def test_weasyprint_alone(benchmark: BenchmarkFixture, ran: Ran, tmp_path: Path) -> None:
    html = page(ran, "a4")
    assert benchmark.pedantic(lambda: alone(html, tmp_path), rounds=3, warmup_rounds=1).startswith(b"%PDF-")


@pytest.mark.parametrize("forms", ["a4", "a4,letter,html,epub"])
@pytest.mark.benchmark(group="whole build")
def test_build(benchmark: BenchmarkFixture, tmp_path: Path, forms: str, capsys: pytest.CaptureFixture[str]) -> None:
    def whole() -> Built:
        return build(EXAMPLE, tmp_path / "out", size="W4", units="cm", forms=forms)

    built = benchmark.pedantic(whole, rounds=2, warmup_rounds=0)
    benchmark.extra_info |= {"stages": {name: round(seconds, 3) for name, seconds in built.timings.items()}}
    benchmark.extra_info |= {"cores": os.cpu_count()}
    with capsys.disabled():
        said = ", ".join(f"{name} {seconds:.2f} s" for name, seconds in built.timings.items())
        print(f"\nbuild --forms {forms}: {built.seconds:.2f} s ({said})")


@pytest.mark.parametrize("forms", ["a4", "a4,letter,html,epub"])
@pytest.mark.benchmark(group="whole build")
def test_weasyprint_alone_on_the_pages_of_the_build(
    benchmark: BenchmarkFixture, ran: Ran, tmp_path: Path, forms: str
) -> None:
    pages = [page(ran, key) for key in asked_forms(forms).prints]
    made = benchmark.pedantic(lambda: [alone(html, tmp_path) for html in pages], rounds=2, warmup_rounds=0)
    assert all(pdf.startswith(b"%PDF-") for pdf in made)


@pytest.mark.benchmark(group="booklet parts")
def test_words_and_pictures(benchmark: BenchmarkFixture, ran: Ran) -> None:
    benchmark.pedantic(lambda: page(ran, "a4"), rounds=3, warmup_rounds=1)


@pytest.mark.benchmark(group="booklet parts")
def test_screen_page(benchmark: BenchmarkFixture, ran: Ran) -> None:
    html = page(ran)
    benchmark.pedantic(lambda: screen(html), rounds=5)


@pytest.mark.benchmark(group="booklet parts")
def test_epub(benchmark: BenchmarkFixture, ran: Ran) -> None:
    html = page(ran)
    benchmark.pedantic(lambda: epub(html), rounds=3)


@pytest.mark.benchmark(group="booklet parts")
def test_laid_on_sheets(benchmark: BenchmarkFixture, ran: Ran) -> None:
    pdf = to_pdf(page(ran, "a5"), LessonFolder(ran.folder))
    benchmark.pedantic(lambda: impose(pdf, "a4"), rounds=3)


@pytest.mark.benchmark(group="booklet parts")
def test_running_the_notebook(benchmark: BenchmarkFixture) -> None:
    benchmark.pedantic(lambda: run_notebook(read_notebook(EXAMPLE), EXAMPLE.parent, name=EXAMPLE.name), rounds=3)
