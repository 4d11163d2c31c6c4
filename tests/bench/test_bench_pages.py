"""Pattern pages: ours (sheet drawn once, placed on every page) against a baseline in the same run, which draws
the same pieces anew on every page with matplotlib; growth with the number of pieces; and how many pages our packing
takes against boxes on shelves. The aim is 0.5 s for the pages of one size on an idle machine."""

from __future__ import annotations

import importlib.util
import sys
from dataclasses import replace
from io import BytesIO
from pathlib import Path
from types import ModuleType
from typing import Any

import pytest

from kit.lesson.pattern import Pattern
from kit.paper.export import pattern_text
from kit.paper.pages import page_origin, plan, tile
from kit.paper.papers import A3, A4, LETTER, Paper
from kit.paper.printing import laid_for, print_files
from kit.paper.request import PageRequest
from kit.paper.sheet import Sheet, sheet_content, sheet_pdf
from kit.picture.drawing import Label, Stroke

ON_A4 = PageRequest((A4,))


def loaded(path: Path) -> ModuleType:
    spec = importlib.util.spec_from_file_location(f"bench_{path.stem}", path)
    assert spec and spec.loader
    module = importlib.util.module_from_spec(spec)
    sys.modules[spec.name] = module
    spec.loader.exec_module(module)
    return module


@pytest.fixture(scope="module")
def garment(root: Path) -> Pattern:
    """The top of the paper tests."""
    return loaded(root / "tests" / "paper" / "conftest.py").make_garment()  # type: ignore[no-any-return]


@pytest.fixture(scope="module")
def lessons(root: Path, garment: Pattern) -> dict[str, Pattern]:
    """The top of the paper tests and the example lesson's own."""
    example = loaded(root / "tests" / "example.py")
    return {"plain top": garment, "Tideline": example.notebook_names(example.EXAMPLE)["lesson"].work(values={})}


def of_pieces(garment: Pattern, count: int) -> Pattern:
    """The garment's pieces over and over, `count` of them."""
    pieces = tuple(
        replace(garment.pieces[place % 3], name=f"{garment.pieces[place % 3].name}_{place}") for place in range(count)
    )
    return replace(garment, pieces=pieces)


def all_outputs(pattern: Pattern) -> list[bytes]:
    pages = print_files(pattern, PageRequest((A4, LETTER)))
    laid = laid_for(pattern, A4, ON_A4)
    return [*pages.values(), sheet_pdf(sheet_content(laid, pattern), laid, pattern), pattern_text(pattern).encode()]


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
    made = benchmark(print_files, garment, ON_A4)
    assert made["pages-a4.pdf"].startswith(b"%PDF")


@pytest.mark.benchmark(group="pages")
def test_pages_a4_drawn_only(benchmark: Any, garment: Pattern) -> None:
    """What the baseline does: the pieces have been laid already."""
    laid = laid_for(garment, A4, ON_A4)
    made = benchmark(lambda: tile(sheet_content(laid, garment), laid, garment, A4, ON_A4))
    benchmark.extra_info["bytes"] = len(made)


@pytest.mark.benchmark(group="pages")
def test_pages_baseline_drawn_anew(benchmark: Any, garment: Pattern) -> None:
    laid = laid_for(garment, A4, ON_A4)
    made = benchmark.pedantic(drawn_anew, args=(laid,), rounds=3)
    benchmark.extra_info["bytes"] = len(made)


@pytest.mark.benchmark(group="pages by pieces")
@pytest.mark.parametrize("count", [3, 6, 12, 24])
def test_growth_with_pieces(benchmark: Any, garment: Pattern, count: int) -> None:
    pattern = of_pieces(garment, count)
    made = benchmark.pedantic(print_files, args=(pattern, ON_A4), rounds=2)
    benchmark.extra_info["bytes"] = len(made["pages-a4.pdf"])


@pytest.mark.benchmark(group="packing")
@pytest.mark.parametrize("paper", [A4, LETTER, A3], ids=lambda paper: paper.name)
@pytest.mark.parametrize("name", ["plain top", "Tideline"])
def test_packing(benchmark: Any, root: Path, lessons: dict[str, Pattern], name: str, paper: Paper) -> None:
    """Pages taken, against next-fit shelves of boxes as drafted (tests/paper/shelf.py); never more."""
    shelf = loaded(root / "tests" / "paper" / "shelf.py")
    request = PageRequest((paper,))
    laid = benchmark.pedantic(laid_for, args=(lessons[name], paper, request), rounds=2)
    ours, shelves = len(plan(laid, paper, request).tiles), shelf.shelf_pages(laid, paper)
    benchmark.extra_info.update(pages=ours, shelf_pages=shelves)
    assert ours <= shelves


@pytest.mark.benchmark(group="outputs")
def test_all_paper_outputs(benchmark: Any, garment: Pattern) -> None:
    assert len(benchmark.pedantic(all_outputs, args=(garment,), rounds=3)) == 4
