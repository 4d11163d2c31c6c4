"""Pattern pages: ours (sheet drawn once, placed on every page) against a baseline in the same run, which draws
the same pieces anew on every page with matplotlib. The aim is 0.5 s for the pages of one size."""

from __future__ import annotations

import importlib.util
from io import BytesIO
from pathlib import Path
from typing import Any

import pytest

from kit.lesson.pattern import Pattern
from kit.paper.export import pattern_text
from kit.paper.pages import page_origin, plan, tile
from kit.paper.papers import A4, LETTER
from kit.paper.sheet import Sheet, sheet, sheet_content, sheet_pdf
from kit.picture.drawing import Label, Stroke


@pytest.fixture(scope="module")
def garment(root: Path) -> Pattern:
    """The top of the paper tests."""
    spec = importlib.util.spec_from_file_location("paper_conftest", root / "tests" / "paper" / "conftest.py")
    assert spec and spec.loader
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    return module.make_garment()  # type: ignore[no-any-return]


def ours(pattern: Pattern) -> bytes:
    laid = sheet(pattern)
    return tile(sheet_content(laid, pattern), laid, pattern, A4)


def all_outputs(pattern: Pattern) -> list[bytes]:
    laid = sheet(pattern)
    content = sheet_content(laid, pattern)
    pages = [tile(content, laid, pattern, paper) for paper in (A4, LETTER)]
    return [*pages, sheet_pdf(content, laid, pattern), pattern_text(pattern).encode()]


def drawn_anew(laid: Sheet) -> bytes:
    """The baseline: one matplotlib figure a page, every piece drawn on each, clipped by the page."""
    from matplotlib.backends.backend_pdf import PdfPages
    from matplotlib.figure import Figure

    planned = plan(laid, A4)
    held = planned.paper
    target = BytesIO()
    with PdfPages(target) as document:
        for each in planned.tiles:
            figure = Figure(figsize=(held.width / 25.4, held.height / 25.4))
            axes = figure.add_axes((0, 0, 1, 1))
            dx, dy = page_origin(each, held)
            axes.set_xlim(-dx, held.width - dx)
            axes.set_ylim(-dy, held.height - dy)
            axes.axis("off")
            for placement in laid.placements:
                for item in placement.items:
                    if isinstance(item, Stroke):
                        for curve in item.curves:
                            points = [placement.motion(point) for point in curve.points(0.05)]
                            axes.plot([p.x for p in points], [p.y for p in points], "k-", lw=1)
                    elif isinstance(item, Label):
                        at = placement.motion(item.at)
                        axes.text(at.x, at.y, item.text, ha="center", va="center", clip_on=True)
            document.savefig(figure)
    return target.getvalue()


@pytest.mark.benchmark(group="pages")
def test_pages_a4(benchmark: Any, garment: Pattern) -> None:
    assert benchmark(ours, garment).startswith(b"%PDF")


@pytest.mark.benchmark(group="pages")
def test_pages_baseline_drawn_anew(benchmark: Any, garment: Pattern) -> None:
    laid = sheet(garment)
    assert benchmark.pedantic(drawn_anew, args=(laid,), rounds=3).startswith(b"%PDF")


@pytest.mark.benchmark(group="outputs")
def test_all_paper_outputs(benchmark: Any, garment: Pattern) -> None:
    assert len(benchmark(all_outputs, garment)) == 4
