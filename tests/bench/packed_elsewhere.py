"""How close our lays come to those of an independent engine for strip packing (spyrrow, from the package index) that is
given many long runs on the same outlines, at the same distance from each other and with the same turns allowed.

    pip install --target SOMEWHERE spyrrow
    PYTHONPATH=.:SOMEWHERE python tests/bench/packed_elsewhere.py --seconds 20 tideline_wrap_top harbour_jacket

For every width of the main cloth it prints our length opened out flat, the shortest of any way to lay, the best of the
engine's runs, and how much longer ours are. Aim: the shortest at most 3 % longer than the best of ten runs.

With `--pages` it counts pages of A4 and US Letter instead: ours, and the fewest that the engine's layouts take on
sheets as high as one, two, three ... pages, held upright and on their side. It knows of no pages: it makes the sheet as
short as it can. Aim: no more than it finds.
"""

from __future__ import annotations

import argparse
import importlib.util
import sys
from pathlib import Path
from typing import Any

from shapely import affinity

from kit.cloth.lay import CuttingTable, widths
from kit.cloth.need import GAP
from kit.cloth.range_lay import range_lays
from kit.lesson.another import find_lesson
from kit.paper.page_cost import EDGE
from kit.paper.pages import plan
from kit.paper.papers import A4, LETTER, Paper
from kit.paper.plan import count_pages
from kit.paper.printing import laid_for
from kit.paper.request import PageRequest
from kit.paper.sheet import GAP as GAP_ON_PAPER
from kit.paper.sheet import _ink, drawn_pieces
from kit.piece.strips import SELVEDGE

ROOT = Path(__file__).resolve().parents[2]


def elsewhere(table: CuttingTable, width: float, runs: int, seconds: int) -> list[float]:
    """The lengths (mm) that the engine finds for all that is cut, opened out flat."""
    import spyrrow

    items = []
    for number, item in enumerate(table.flat_items()):
        over = item.ways[0][1]
        shape = item.part.lying(False, 0, over).simplify(0.2)
        points = [(y, x) for x, y in shape.exterior.coords[:-1]]  # there the strip is open to the right
        items.append(spyrrow.Item(str(number), points, 1, [float(turn) for turn, _ in item.ways]))
    found = []
    for seed in range(1, runs + 1):
        # It keeps the distance from the strip's own borders too, which ours need not.
        instance = spyrrow.StripPackingInstance(f"run-{seed}", width - 2 * SELVEDGE + 2 * GAP, items)
        asked = spyrrow.StripPackingConfig(
            total_computation_time=seconds, min_items_separation=GAP, num_workers=1, seed=seed
        )
        found.append(float(instance.solve(asked).width) - 2 * GAP)
    return found


def pages_elsewhere(shapes: list[Any], paper: Paper, runs: int, seconds: int) -> int:
    """The fewest pages of `paper` that hold the engine's layouts of the `shapes`, which may be turned by quarters."""
    import spyrrow

    items = []
    for number, shape in enumerate(shapes):
        outline = max(getattr(shape, "geoms", [shape]), key=lambda part: part.area).exterior
        points = [(x, y) for x, y in outline.simplify(0.2).coords[:-1]]
        items.append(spyrrow.Item(str(number), points, 1, [0.0, 90.0, 180.0, 270.0]))
    sides = [(shape.bounds[2] - shape.bounds[0], shape.bounds[3] - shape.bounds[1]) for shape in shapes]
    least = max(min(two) for two in sides)  # a strip takes every shape that is turned to lie along it
    fewest = 10**6
    for held in (paper, paper.turned):
        _, down = held.step
        for high in range(1, 6):
            if high * down - 2 * EDGE < least:
                continue
            for seed in range(1, runs + 1):
                strip = high * down - 2 * EDGE + 2 * GAP_ON_PAPER  # it keeps the distance from the borders too
                instance = spyrrow.StripPackingInstance(f"{held.name}-{high}-{seed}", strip, items)
                asked = spyrrow.StripPackingConfig(
                    total_computation_time=seconds, min_items_separation=GAP_ON_PAPER, num_workers=1, seed=seed
                )
                found = instance.solve(asked)
                moved = []
                for each in found.placed_items:
                    turned = affinity.rotate(shapes[int(each.id)], each.rotation, origin=(0, 0))
                    dx, dy = each.translation
                    moved.append(affinity.translate(turned, dx - GAP_ON_PAPER + EDGE, dy - GAP_ON_PAPER + EDGE))
                width = float(found.width) - 2 * GAP_ON_PAPER + 2 * EDGE
                fewest = min(fewest, count_pages(moved, width, high * down, held))
    return fewest


def compare_pages(name: str, pattern: Any, runs: int, seconds: int) -> None:
    for paper in (A4, LETTER):
        request = PageRequest((paper,))
        laid = laid_for(pattern, paper, request)
        ours = len(plan(laid, paper, request).tiles)
        inks = [_ink(items, corners) for _, items, corners in drawn_pieces(pattern, request)]
        theirs = pages_elsewhere(inks, paper, runs, seconds)
        print(
            f"{name}, {pattern.body.name}, {paper.name}: ours {ours} pages, the engine's layouts {theirs}", flush=True
        )


def main(arguments: list[str]) -> None:
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("lessons", nargs="+")
    parser.add_argument("--size", default="W4")
    parser.add_argument("--runs", type=int, default=10)
    parser.add_argument("--seconds", type=int, default=30)
    parser.add_argument("--pages", action="store_true", help="count pages of paper instead of lengths of cloth")
    asked = parser.parse_args(arguments)
    found = importlib.util.spec_from_file_location("example", ROOT / "tests" / "example.py")
    assert found and found.loader
    example = importlib.util.module_from_spec(found)
    found.loader.exec_module(example)
    for name in asked.lessons:
        lesson = find_lesson(example.notebook_names(ROOT / "example_notebooks" / f"{name}.ipynb"))
        sizes = tuple(lesson.work(body=lesson.sizes[size]) for size in lesson.sizes.names) if lesson.measures else ()
        pattern: Any = next((each for each in sizes if each.body.name == asked.size), None) or lesson.work()
        if asked.pages:
            compare_pages(name, pattern, asked.runs, asked.seconds)
            continue
        laid = range_lays(sizes or (pattern,))
        table = CuttingTable.of(pattern, "main")
        for width in widths(pattern, "main"):
            (ours,) = [
                each for each in laid if (each.size, each.cloth, each.width) == (pattern.body.name, "main", width)
            ]
            if ours.trouble:
                continue
            flat = min([lay.length for lay in ours.lays if lay.fold == "flat"], default=0.0)
            theirs = elsewhere(table, width, asked.runs, asked.seconds)
            best = min(theirs)
            print(
                f"{name}, {pattern.body.name}, {width / 10:.0f} cm: ours {ours.length / 10:.1f} cm"
                f" (flat {flat / 10:.1f}), best of {asked.runs} runs {best / 10:.1f} cm, worst {max(theirs) / 10:.1f};"
                f" ours {ours.length / best - 1:+.1%}",
                flush=True,
            )


if __name__ == "__main__":
    main(sys.argv[1:])
