"""Every example garment for every measured woman: 993 of a survey and 260 of `bdims`.

    .venv/bin/python tests/bench/every_body.py                       # all of them, on two cores: some ten minutes
    .venv/bin/python tests/bench/every_body.py --each 10 --notebooks dune_skirt

Prints for each garment and table how many have a draft without an error, and of the others which message, how often,
and for whom.
"""

from __future__ import annotations

import argparse
import re
import sys
from collections import Counter, defaultdict
from concurrent.futures import ProcessPoolExecutor
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
# Some wheel installs a package `tests` of its own, so these are found by their folders.
sys.path[:0] = [str(ROOT), str(ROOT / "tests"), str(ROOT / "tests" / "body")]

import bdims  # noqa: E402
import survey  # noqa: E402
from example import notebook_names  # noqa: E402

from kit.body.make import make_body  # noqa: E402
from kit.errors import KitError  # noqa: E402
from kit.proof.prove import errors  # noqa: E402

NOTEBOOKS = (
    "tideline_wrap_top",
    "neap_tide_wrap",
    "harbour_jacket",
    "dune_skirt",
    "lantern_bag",
    "ferry_tote",
    "slack_water_trousers",
    "sandbar_top",
    "breaker_skirt",
    "eddy_skirt",
    "oyster_apron",
    "limpet_hat",
)
TABLES = {"survey": survey.women, "bdims": bdims.women}


def trouble(lesson, woman, name) -> str:  # type: ignore[no-untyped-def]
    """What stands between a body and its garment: the refusal, or the first error of the proof; "" for nothing."""
    try:
        pattern = lesson.work(make_body(woman, name=name))
    except KitError as error:
        return f"refused: {error}"
    return next((f"{name}: {finding}" for name, finding in errors(pattern)), "")


def _one(task: tuple[str, str, int, int]) -> list[tuple[str, str, int, str]]:
    notebook, table, part, each = task
    lesson = notebook_names(ROOT / "example_notebooks" / f"{notebook}.ipynb")["lesson"]
    found = []
    for number, woman in enumerate(TABLES[table]()):
        if number % each == part:
            found.append((notebook, table, number, trouble(lesson, woman, f"{table} {number}")))
    return found


def main() -> None:
    """Works them and prints what was found."""
    options = argparse.ArgumentParser()
    options.add_argument("--each", type=int, default=1, help="only each n-th woman")
    options.add_argument("--notebooks", default=",".join(NOTEBOOKS))
    options.add_argument("--tables", default=",".join(TABLES))
    options.add_argument("--cores", type=int, default=2)
    asked = options.parse_args()
    if not survey.rows():
        print(survey.ABSENT)
    parts = range(4) if asked.each == 1 else range(1)
    tasks = [
        (notebook, table, part, 4 if asked.each == 1 else asked.each)
        for notebook in asked.notebooks.split(",")
        for table in asked.tables.split(",")
        for part in parts
    ]
    counts: Counter[tuple[str, str]] = Counter()
    kinds: dict[tuple[str, str], dict[str, list[tuple[int, str]]]] = defaultdict(lambda: defaultdict(list))
    with ProcessPoolExecutor(asked.cores) as pool:
        for found in pool.map(_one, tasks):
            for notebook, table, number, wrong in found:
                counts[notebook, table] += 1
                if wrong:
                    kinds[notebook, table][re.sub(r"[\d./]+", "#", wrong)[:110]].append((number, wrong))
    for (notebook, table), count in counts.items():
        bad = kinds[notebook, table]
        print(f"{notebook}, {table}: {count - sum(map(len, bad.values()))} of {count}")
        for places in sorted(bad.values(), key=len, reverse=True)[:8]:
            print(f"  {len(places)} (such as {[n for n, _ in places[:4]]}): {places[0][1][:300]}")


if __name__ == "__main__":
    main()
