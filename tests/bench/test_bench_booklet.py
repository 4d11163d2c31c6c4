"""The booklet against WeasyPrint alone on the same HTML, in the same run: what composing adds.

Run with `make bench`; the ratio of the two means is the number to watch (aim: at most 1.2).
"""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from pytest_benchmark.fixture import BenchmarkFixture
from weasyprint import HTML

from kit.booklet.compose import compose
from kit.booklet.fetch import LessonFolder
from kit.booklet.render import to_html, to_pdf
from kit.booklet.run_notebook import Ran, read_notebook, run_notebook
from kit.proof import prove
from kit.resources import examples


@pytest.fixture(scope="module")
def ran() -> Iterator[Ran]:
    path = examples() / "tideline_wrap_top.ipynb"
    yield run_notebook(read_notebook(path), path.parent, name=path.name, size="W4", units="cm")


def booklet(ran: Ran) -> bytes:
    folder = LessonFolder(ran.folder)
    return to_pdf(to_html(compose(ran.handover, ran.notebook, folder, prove(ran.handover.pattern))), folder)


@pytest.mark.benchmark(group="booklet")
def test_booklet(benchmark: BenchmarkFixture, ran: Ran) -> None:
    pdf = benchmark.pedantic(booklet, args=(ran,), rounds=5, warmup_rounds=1)
    assert pdf.startswith(b"%PDF-")


@pytest.mark.benchmark(group="booklet")
def test_weasyprint_alone(benchmark: BenchmarkFixture, ran: Ran, tmp_path: Path) -> None:
    html = to_html(compose(ran.handover, ran.notebook, LessonFolder(ran.folder)))

    def print_it() -> bytes:
        pdf = HTML(string=html, base_url=str(tmp_path)).write_pdf(pdf_tags=True)
        assert isinstance(pdf, bytes)
        return pdf

    assert benchmark.pedantic(print_it, rounds=5, warmup_rounds=1).startswith(b"%PDF-")


@pytest.mark.benchmark(group="booklet parts")
def test_words_and_pictures(benchmark: BenchmarkFixture, ran: Ran) -> None:
    benchmark(lambda: to_html(compose(ran.handover, ran.notebook, LessonFolder(ran.folder))))


@pytest.mark.benchmark(group="booklet parts")
def test_running_the_notebook(benchmark: BenchmarkFixture) -> None:
    path = examples() / "tideline_wrap_top.ipynb"
    benchmark.pedantic(lambda: run_notebook(read_notebook(path), path.parent, name=path.name), rounds=3)
