"""Ten sizes over one another on A4: time and bytes, and how both grow with sizes and with pieces. The baseline, in the
same run, draws every size anew on every page with matplotlib. The aim is 0.5 s and under 400 KB."""

from __future__ import annotations

import importlib.util
from dataclasses import replace
from io import BytesIO
from pathlib import Path
from typing import Any

import pytest

from kit.lesson.pattern import Pattern
from kit.paper.dxf_file import dxf_text
from kit.paper.nested import Nest, lay_nest, nest, sized
from kit.paper.nested_pages import nested_pages
from kit.paper.pages import page_origin, plan
from kit.paper.papers import A4
from kit.paper.sheet import Sheet
from kit.paper.svg_file import svg_text
from kit.picture.drawing import Stroke


@pytest.fixture(scope="module")
def patterns(root: Path) -> tuple[Pattern, ...]:
    """The example lesson in its ten sizes."""
    spec = importlib.util.spec_from_file_location("example", root / "tests" / "example.py")
    assert spec and spec.loader
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    lesson = module.notebook_names(module.EXAMPLE)["lesson"]
    return tuple(lesson.work(body=lesson.sizes[size], values={}) for size in lesson.sizes.names)


def ours(patterns: tuple[Pattern, ...]) -> bytes:
    made = nest(patterns)
    return nested_pages(made, lay_nest(made, (A4,)), A4)


def drawn_anew(made: Nest, laid: Sheet) -> bytes:
    """The baseline: one matplotlib figure a page, every size of every piece drawn on each, clipped by the page."""
    from matplotlib.backends.backend_pdf import PdfPages
    from matplotlib.figure import Figure

    pages = plan(laid, A4)
    held = pages.paper
    target = BytesIO()
    with PdfPages(target) as document:
        for tile in pages.tiles:
            figure = Figure(figsize=(held.width / 25.4, held.height / 25.4))
            axes = figure.add_axes((0, 0, 1, 1))
            dx, dy = page_origin(tile, held)
            axes.set_xlim(-dx, held.width - dx)
            axes.set_ylim(-dy, held.height - dy)
            axes.axis("off")
            for each, placement in zip(made.pieces, laid.placements, strict=True):
                for size in range(len(made.sizes)):
                    for item in sized(each, size):
                        if isinstance(item, Stroke):
                            for curve in item.curves:
                                points = [placement.motion(point) for point in curve.points(0.05)]
                                axes.plot([p.x for p in points], [p.y for p in points], "k--", lw=1)
            document.savefig(figure)
    return target.getvalue()


@pytest.mark.benchmark(group="ten sizes nested, A4")
def test_ten_sizes_nested(benchmark: Any, patterns: tuple[Pattern, ...]) -> None:
    pdf = benchmark.pedantic(ours, args=(patterns,), rounds=5, warmup_rounds=1)
    benchmark.extra_info["bytes"] = len(pdf)
    assert len(pdf) < 400_000


@pytest.mark.benchmark(group="ten sizes nested, A4")
def test_ten_sizes_nested_but_for_the_laying(benchmark: Any, patterns: tuple[Pattern, ...]) -> None:
    laid = lay_nest(nest(patterns), (A4,))
    pdf = benchmark.pedantic(lambda: nested_pages(nest(patterns), laid, A4), rounds=5, warmup_rounds=1)
    assert pdf.startswith(b"%PDF")


@pytest.mark.benchmark(group="ten sizes nested, A4")
def test_ten_sizes_baseline_drawn_anew(benchmark: Any, patterns: tuple[Pattern, ...]) -> None:
    made = nest(patterns)
    laid = lay_nest(made, (A4,))
    pdf = benchmark.pedantic(drawn_anew, args=(made, laid), rounds=1)
    benchmark.extra_info["bytes"] = len(pdf)


@pytest.mark.parametrize("count", [1, 2, 5, 10])
@pytest.mark.benchmark(group="growth with sizes")
def test_growth_with_sizes(benchmark: Any, patterns: tuple[Pattern, ...], count: int) -> None:
    pdf = benchmark.pedantic(ours, args=(patterns[:count],), rounds=3)
    benchmark.extra_info["bytes"] = len(pdf)


@pytest.mark.parametrize("times", [1, 2, 4])
@pytest.mark.benchmark(group="growth with pieces, three sizes")
def test_growth_with_pieces(benchmark: Any, patterns: tuple[Pattern, ...], times: int) -> None:
    more = tuple(
        replace(
            pattern,
            pieces=tuple(
                replace(piece, name=f"{piece.name}_{copy}") for copy in range(times) for piece in pattern.pieces
            ),
        )
        for pattern in patterns[:3]
    )
    pdf = benchmark.pedantic(ours, args=(more,), rounds=2)
    benchmark.extra_info["bytes"] = len(pdf)


@pytest.mark.parametrize("write", [svg_text, dxf_text], ids=["svg", "dxf"])
@pytest.mark.benchmark(group="files of ten sizes")
def test_files_of_ten_sizes(benchmark: Any, patterns: tuple[Pattern, ...], write: Any) -> None:
    made = nest(patterns)
    laid = lay_nest(made, (A4,))
    text = benchmark.pedantic(write, args=(made, laid), rounds=2)
    benchmark.extra_info["bytes"] = len(text)
