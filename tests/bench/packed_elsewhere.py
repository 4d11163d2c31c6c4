"""How close our lays come to those of an independent engine for strip packing (spyrrow, from the package index) that is
given many long runs on the same outlines, at the same distance from each other and with the same turns allowed.

    pip install --target SOMEWHERE spyrrow
    PYTHONPATH=.:SOMEWHERE python tests/bench/packed_elsewhere.py --seconds 20 tideline_wrap_top harbour_jacket

For every width of the main cloth it prints our length opened out flat, the shortest of any way to lay, the best of the
engine's runs, and how much longer ours are. Aim: the shortest at most 3 % longer than the best of ten runs.
"""

from __future__ import annotations

import argparse
import importlib.util
import sys
from pathlib import Path
from typing import Any

from kit.cloth.lay import CuttingTable, widths
from kit.cloth.need import GAP
from kit.cloth.range_lay import range_lays
from kit.lesson.another import find_lesson
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


def main(arguments: list[str]) -> None:
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("lessons", nargs="+")
    parser.add_argument("--size", default="W4")
    parser.add_argument("--runs", type=int, default=10)
    parser.add_argument("--seconds", type=int, default=30)
    asked = parser.parse_args(arguments)
    found = importlib.util.spec_from_file_location("example", ROOT / "tests" / "example.py")
    assert found and found.loader
    example = importlib.util.module_from_spec(found)
    found.loader.exec_module(example)
    for name in asked.lessons:
        lesson = find_lesson(example.notebook_names(ROOT / "example_notebooks" / f"{name}.ipynb"))
        sizes = tuple(lesson.work(body=lesson.sizes[size]) for size in lesson.sizes.names) if lesson.measures else ()
        pattern: Any = next((each for each in sizes if each.body.name == asked.size), None) or lesson.work()
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
