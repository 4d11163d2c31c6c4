"""Cloth to buy for ten sizes: the seconds with two processes and with one, and of a second build that finds all of it
beside the notebook; and that its lengths agree. The aims, on two idle cores: 5 s for a garment of nine pieces in two
widths, nothing to speak of the second time. Run with `make bench`.
"""

from __future__ import annotations

from pathlib import Path
from typing import Any

import pytest

from kit.cloth import side_by_side
from kit.cloth.kept_lays import Kept
from kit.cloth.range_lay import range_lays
from kit.lesson.pattern import Pattern
from tests.bench.test_bench_lay import LESSONS, lessons  # noqa: F401


@pytest.fixture(scope="module", params=LESSONS)
def sizes(request: pytest.FixtureRequest, lessons: dict[str, Any]) -> tuple[Pattern, ...]:  # noqa: F811
    lesson = lessons[request.param]
    return tuple(lesson.work(body=lesson.sizes[size]) for size in lesson.sizes.names)


@pytest.mark.benchmark(group="all sizes laid together")
@pytest.mark.parametrize("cores", [1, 2])
def test_laid(benchmark: Any, sizes: tuple[Pattern, ...], cores: int, monkeypatch: pytest.MonkeyPatch) -> None:
    if cores == 1:
        monkeypatch.setattr(side_by_side, "WORTH", float("inf"))
    assert benchmark.pedantic(range_lays, args=(sizes,), rounds=2)


@pytest.mark.benchmark(group="all sizes laid together")
def test_found_again(benchmark: Any, sizes: tuple[Pattern, ...], tmp_path: Path) -> None:
    first = range_lays(sizes, kept=Kept.beside(tmp_path, "lesson"))
    again = benchmark(lambda: range_lays(sizes, kept=Kept.beside(tmp_path, "lesson")))
    assert again == first
