"""Lay plans with true outlines against the plain lay of bounding boxes, in the same run: the seconds, and the cloth.

Aims on an idle machine: all widths of the wrap top and the harbour jacket within 1 s altogether, cloth to buy for ten
sizes in two widths within 3 s. The baseline is `kit.cloth.need`. Run with `make bench`.
"""

from __future__ import annotations

import importlib.util
import sys
from pathlib import Path
from types import ModuleType
from typing import Any

import pytest

from kit.cloth.cut_list import boxes
from kit.cloth.lay import CLOTHS, lays, widths
from kit.cloth.need import need
from kit.cloth.yardage import yardage
from kit.lesson.another import find_lesson
from kit.lesson.pattern import Pattern
from kit.picture.lay import lay_drawing

LESSONS = ("tideline_wrap_top", "harbour_jacket")


def loaded(path: Path) -> ModuleType:
    spec = importlib.util.spec_from_file_location(f"bench_{path.stem}", path)
    assert spec and spec.loader
    module = importlib.util.module_from_spec(spec)
    sys.modules[spec.name] = module
    spec.loader.exec_module(module)
    return module


@pytest.fixture(scope="module")
def lessons(root: Path) -> dict[str, Any]:
    example = loaded(root / "tests" / "example.py")
    return {name: find_lesson(example.notebook_names(root / "example_notebooks" / f"{name}.ipynb")) for name in LESSONS}


@pytest.fixture(scope="module")
def patterns(lessons: dict[str, Any]) -> list[Pattern]:
    return [lesson.work() for lesson in lessons.values()]


def all_lays(patterns: list[Pattern]) -> list[float]:
    return [lay.length for pattern in patterns for lay in lays(pattern)]


def all_boxes(patterns: list[Pattern]) -> list[float]:
    found = []
    for pattern in patterns:
        for cloth in CLOTHS:
            cut = boxes(pattern, cloth)
            found += [need(cut, width).length for width in widths(pattern, cloth)] if cut else []
    return found


@pytest.mark.benchmark(group="lay plans of two lessons")
def test_lays(benchmark: Any, patterns: list[Pattern], capsys: pytest.CaptureFixture[str]) -> None:
    found = benchmark.pedantic(all_lays, args=(patterns,), rounds=3, warmup_rounds=1)
    simple = all_boxes(patterns)
    with capsys.disabled():
        for pattern in patterns:
            print(f"\n  {pattern.lesson.title}:")
            for lay in lays(pattern):
                length = need(boxes(pattern, lay.cloth), lay.width).length
                print(
                    f"    {lay.cloth} {lay.width / 10:.0f} cm: {lay.length / 10:.1f} cm {lay.fold}; boxes in rows "
                    f"{length / 10:.1f} cm; {lay.length / length:.2f} x; waste {lay.waste:.0%}"
                )
    assert len(found) == len(simple)
    assert all(ours <= theirs + 1e-6 for ours, theirs in zip(found, simple, strict=True))


@pytest.mark.benchmark(group="lay plans of two lessons")
def test_boxes_in_rows(benchmark: Any, patterns: list[Pattern]) -> None:
    assert all(benchmark.pedantic(all_boxes, args=(patterns,), rounds=3, warmup_rounds=1))


@pytest.mark.benchmark(group="cloth to buy in ten sizes")
@pytest.mark.parametrize("name", LESSONS)
def test_ten_sizes(benchmark: Any, lessons: dict[str, Any], name: str) -> None:
    lesson = lessons[name]
    sizes = [lesson.work(body=lesson.sizes[size]) for size in lesson.sizes.names]
    table = benchmark.pedantic(yardage, args=(sizes,), rounds=3)
    assert all(len(row.amounts) == 10 for row in table)


@pytest.mark.benchmark(group="lay plan picture")
def test_pictures(benchmark: Any, patterns: list[Pattern]) -> None:
    made = [(lay, pattern) for pattern in patterns for lay in lays(pattern)]
    assert benchmark(lambda: [lay_drawing(lay, pattern) for lay, pattern in made])
