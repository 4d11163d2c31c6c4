"""How many small faults in the kit's own code its tests notice: random mutants, each tried by the nearest test folder.

    .venv/bin/python tests/bench/mutants.py --count 300 --jobs 2 --seed 1

A mutant is one change at one place: plus for minus, a number off by one, `<` for `<=`, `and` for `or`, a negation left
out, a loop that never runs. Places are drawn at random over the rooms named (each place alike), then one of the
changes possible there. Left out are changes that cannot be noticed or are noticed by Python itself: those in
annotations and docstrings, `+` for `<<` and the like, decorators taken off, those of a class. The changes are made by
Cosmic Ray, in copies of the tree, so that the checkout stays as it is. The same seed on the same tree draws the same
mutants.

Prints a line for each mutant as it is tried, then the survivors with their difference, and how many were caught.
`--only TEXT` tries those whose module and line hold the text, to look at a survivor again.
"""

from __future__ import annotations

import argparse
import ast
import os
import random
import shutil
import subprocess
import sys
import tempfile
import time
from collections import defaultdict
from collections.abc import Iterator
from concurrent.futures import ThreadPoolExecutor
from dataclasses import dataclass
from difflib import unified_diff
from pathlib import Path
from queue import Queue

import cosmic_ray.plugins
from cosmic_ray.ast import ast_nodes, get_ast_from_path
from cosmic_ray.mutating import mutate_code

ROOT = Path(__file__).resolve().parent.parent.parent
ROOMS = ("geometry", "piece", "lesson", "sewing", "proof")
_COPIED = ("kit", "templates", "tests", "example_notebooks", "pyproject.toml", "README.md", "DEVELOPERS.md")
_PLAIN = {"Add", "Sub", "Mul", "Div"}
_SKIPPED = ("RemoveDecorator", "ExceptionReplacer", "Variable", "Bit", "NoOp")


@dataclass(frozen=True)
class Mutant:
    """One change: `operator` of Cosmic Ray at its `occurrence` in `module` (a path in the tree), on `line`."""

    module: str
    operator: str
    occurrence: int
    line: int


@dataclass(frozen=True)
class Tried:
    """What became of a mutant: "caught", "survived", "too long" (counted as caught) after `seconds`."""

    mutant: Mutant
    outcome: str
    seconds: float
    difference: str


def sensible(operator: str) -> bool:
    """Whether the changes of an operator would not be stopped by Python itself."""
    name = operator.rsplit("/", 1)[-1]
    if name.startswith("ReplaceBinaryOperator_"):
        return set(name.split("_")[1:]) <= _PLAIN
    return not any(word in name for word in _SKIPPED)


def unseen(source: str) -> set[tuple[int, int]]:
    """(line, column) of every place in annotations, which nothing ever runs, and in decorators of classes."""
    found: set[tuple[int, int]] = set()
    for node in ast.walk(ast.parse(source)):
        noted = [getattr(node, name, None) for name in ("annotation", "returns")]
        if isinstance(node, ast.If) and isinstance(node.test, ast.Name) and node.test.id == "TYPE_CHECKING":
            noted.append(node)  # type: ignore[arg-type]
        if isinstance(node, ast.ClassDef):
            noted += node.decorator_list
        for part in noted:
            if isinstance(part, ast.AST) and hasattr(part, "lineno"):
                for line in range(part.lineno, (part.end_lineno or part.lineno) + 1):
                    first = part.col_offset if line == part.lineno else 0
                    last = part.end_col_offset or 0 if line == part.end_lineno else 500
                    found |= {(line, column) for column in range(first, last + 1)}
    return found


def mutants_of(path: Path) -> Iterator[tuple[tuple[int, int], Mutant]]:
    """((line, column), mutant) for every change possible in a module."""
    tree = get_ast_from_path(path)
    hidden = unseen(path.read_text("utf-8"))
    for operator in cosmic_ray.plugins.operator_names():
        if not sensible(operator):
            continue
        kind = cosmic_ray.plugins.get_operator(operator)
        if kind.arguments():
            continue
        changer = kind()
        places = (start for node in ast_nodes(tree) for start, _ in changer.mutation_positions(node))
        for occurrence, start in enumerate(places):
            if tuple(start) not in hidden:
                module = str(path.relative_to(ROOT))
                yield (start[0], start[1]), Mutant(module, operator, occurrence, start[0])


def drawn(count: int, seed: int, rooms: tuple[str, ...]) -> list[Mutant]:
    """`count` mutants at different places of the rooms, in an order that `seed` gives."""
    by_place: dict[tuple[str, tuple[int, int]], list[Mutant]] = defaultdict(list)
    for room in rooms:
        for path in sorted((ROOT / "kit" / room).rglob("*.py")):
            for place, mutant in mutants_of(path):
                by_place[(mutant.module, place)].append(mutant)
    chance = random.Random(seed)
    places = chance.sample(sorted(by_place), min(count, len(by_place)))
    return [chance.choice(by_place[place]) for place in places]


def nearest_tests(module: str) -> list[str]:
    """The test folder of a module's room, the file of its own name first so that most are caught at once."""
    folder = ROOT / "tests" / module.split("/")[1]
    own = sorted(folder.glob(f"test_{Path(module).stem}*.py"))
    rest = [path for path in sorted(folder.glob("test_*.py")) if path not in own]
    return [str(path.relative_to(ROOT)) for path in (*own, *rest)]


def tried(mutant: Mutant, tree: Path, most: float) -> Tried:
    """Makes the change in the copy `tree`, runs the nearest tests there, and takes it back."""
    target = tree / mutant.module
    before = target.read_text("utf-8")
    changer = cosmic_ray.plugins.get_operator(mutant.operator)()
    after = mutate_code(before, changer, mutant.occurrence)
    name = mutant.module
    difference = "\n".join(unified_diff(before.splitlines(), (after or "").splitlines(), name, name, lineterm="", n=1))
    target.write_text(after or before, "utf-8")
    environment = {
        **os.environ,
        "PYTHONPATH": str(tree),
        "PYTHONDONTWRITEBYTECODE": "1",
        "HYPOTHESIS_PROFILE": "mutants",
    }
    command = [sys.executable, "-m", "pytest", "-x", "-q", "-m", "not browser", "-p", "no:cacheprovider"]
    began = time.monotonic()
    try:
        done = subprocess.run(
            [*command, *nearest_tests(mutant.module)], cwd=tree, env=environment, capture_output=True, timeout=most
        )
        outcome = "survived" if done.returncode == 0 else "caught"
    except subprocess.TimeoutExpired:
        outcome = "too long"
    finally:
        target.write_text(before, "utf-8")
    return Tried(mutant, outcome, time.monotonic() - began, difference)


def copied(into: Path) -> Path:
    """A copy of the tree to make changes in."""
    for name in _COPIED:
        source = ROOT / name
        if source.is_dir():
            shutil.copytree(source, into / name, ignore=shutil.ignore_patterns("__pycache__"))
        else:
            shutil.copy2(source, into / name)
    return into


def main() -> int:
    asked = argparse.ArgumentParser(description=(__doc__ or "").split("\n")[0])
    asked.add_argument("--count", type=int, default=300)
    asked.add_argument("--seed", type=int, default=1)
    asked.add_argument("--jobs", type=int, default=2)
    asked.add_argument("--most", type=float, default=900.0, help="seconds for one mutant")
    asked.add_argument("--rooms", default=",".join(ROOMS))
    asked.add_argument("--only", default="")
    given = asked.parse_args()
    found = drawn(given.count, given.seed, tuple(given.rooms.split(",")))
    found = [mutant for mutant in found if given.only in f"{mutant.module}:{mutant.line}"]
    results: list[Tried] = []
    with tempfile.TemporaryDirectory(prefix="mutants-") as folder:
        trees: Queue[Path] = Queue()
        for number in range(given.jobs):
            trees.put(copied(Path(folder) / str(number)))

        def work(mutant: Mutant) -> Tried:
            tree = trees.get()
            try:
                return tried(mutant, tree, given.most)
            finally:
                trees.put(tree)

        with ThreadPoolExecutor(given.jobs) as pool:
            for result in pool.map(work, found):
                results.append(result)
                mutant = result.mutant
                caught = sum(r.outcome != "survived" for r in results)
                place, change = f"{mutant.module}:{mutant.line}", mutant.operator.rsplit("/", 1)[-1]
                count = f"{len(results):4}/{len(found)}"
                print(
                    f"{count}  {result.outcome:8}  {result.seconds:5.0f} s  {place}  {change}  ({caught} caught)",
                    flush=True,
                )
    for result in results:
        if result.outcome == "survived":
            print(f"\n{result.difference}")
    by_room: dict[str, list[bool]] = defaultdict(list)
    for result in results:
        by_room[result.mutant.module.split("/")[1]].append(result.outcome != "survived")
    print()
    for room, caught_there in sorted(by_room.items()):
        print(f"{room}: {sum(caught_there)} of {len(caught_there)} caught")
    caught = sum(r.outcome != "survived" for r in results)
    print(f"{caught} of {len(results)} mutants caught, {100 * caught / max(len(results), 1):.0f} %")
    return 0


if __name__ == "__main__":
    raise SystemExit(main())
