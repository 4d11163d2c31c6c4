"""How many small faults in the kit's own code its tests notice: random mutants, each tried by the nearest test files.

    .venv/bin/python tests/bench/mutants.py --count 300 --seed 1
    .venv/bin/python tests/bench/mutants.py --rooms geometry,piece --at-most 30

A mutant is one change at one place: plus for minus, a number off by one, `<` for `<=`, `and` for `or`, a negation left
out, a loop that never runs. Places are drawn at random over all rooms (each place alike), then one of the changes
possible there. Left out are changes that cannot be noticed or are noticed by Python itself: those in annotations and
docstrings, `+` for `<<` and the like, `is` for `==` (short texts are the same thing to Python anyway), decorators taken
off, those of a class. The changes are made by Cosmic Ray, in
copies of the tree, so that the checkout stays as it is.

The draw goes by the text of a place's line, so that the same seed draws the same mutants wherever the code stayed
as it was. What became of each is kept in `out/mutants/results.jsonl`: a slice (`--rooms`, `--files`, `--at-most`) goes
on where the last one stopped, a mutant that was caught is tried again when its module changes, one that survived also
when its tests do.

A mutant is tried by the test files of its module's name, then by those that import the module, then by the rest of the
folder, the quickest first, until one test fails: the far ones as long as all take no more than `--within` seconds.
`--thorough` tries survivors with all of them, however long. Tests marked slow are left out. Each file is run once
without a change before it is used, and one that fails so is left out and told (`out/mutants/unchanged.json`).

Prints a line for each mutant as it is tried with the test that noticed it, then the survivors, and how many of the draw
were caught so far: raw, and without those that nobody could notice (`equivalent_mutants.toml`, each with its reason).
"""

from __future__ import annotations

import argparse
import ast
import hashlib
import json
import tempfile
import tomllib
from collections import defaultdict
from collections.abc import Iterable, Iterator
from concurrent.futures import ThreadPoolExecutor
from dataclasses import asdict
from pathlib import Path, PurePosixPath
from queue import Queue

import cosmic_ray.plugins
from cosmic_ray.ast import ast_nodes, get_ast_from_path
from trials import (
    KEPT,
    ROOT,
    Bench,
    Mutant,
    Reach,
    Tried,
    Unchanged,
    changed,
    copied,
    folder_of,
    stamp,
    stamp_of,
    tried,
)

ROOMS = ("geometry", "piece", "lesson", "sewing", "proof")
EQUIVALENT = Path(__file__).with_name("equivalent_mutants.toml")
_PLAIN = {"Add", "Sub", "Mul", "Div"}
_ALIKE = ({"Eq", "Is"}, {"NotEq", "IsNot"})
_SKIPPED = ("RemoveDecorator", "ExceptionReplacer", "Variable", "Bit", "NoOp")


def sensible(operator: str) -> bool:
    """Whether the changes of an operator would not be stopped by Python itself."""
    name = operator.rsplit("/", 1)[-1]
    if name.startswith("ReplaceBinaryOperator_"):
        return set(name.split("_")[1:]) <= _PLAIN
    if name.startswith("ReplaceComparisonOperator_"):
        return set(name.split("_")[1:]) not in _ALIKE
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
    nodes = list(ast_nodes(get_ast_from_path(path)))
    hidden = unseen(path.read_text("utf-8"))
    for operator in cosmic_ray.plugins.operator_names():
        if not sensible(operator):
            continue
        kind = cosmic_ray.plugins.get_operator(operator)
        if kind.arguments():
            continue
        changer = kind()
        places = (start for node in nodes for start, _ in changer.mutation_positions(node))
        for occurrence, start in enumerate(places):
            if tuple(start) not in hidden:
                module = str(path.relative_to(ROOT))
                yield (start[0], start[1]), Mutant(module, operator, occurrence, start[0])


def _lot(*parts: object) -> str:
    """A number drawn for a thing by what it is, as hexadecimal text: the same for the same thing in any draw."""
    return hashlib.sha256("\0".join(map(str, parts)).encode()).hexdigest()


def lots_of(path: Path, seed: int) -> list[tuple[str, Mutant]]:
    """(the lot of a place, the change drawn there) for each place of a module, kept until the module changes."""
    source = path.read_text("utf-8")
    kept = KEPT / "lots" / f"{stamp(str(path.relative_to(ROOT)), source, str(seed))}.json"
    if kept.exists():
        return [(lot, Mutant(**found)) for lot, found in json.loads(kept.read_text("utf-8"))]
    at: dict[tuple[int, int], list[Mutant]] = defaultdict(list)
    for place, mutant in mutants_of(path):
        at[place].append(mutant)
    texts = source.splitlines()
    seen: dict[tuple[str, int], int] = defaultdict(int)
    lots = []
    for (line, column), mutants in sorted(at.items()):
        alike = (texts[line - 1], column)
        seen[alike] += 1
        lot = _lot(seed, path.relative_to(ROOT).as_posix(), *alike, seen[alike])
        mutants.sort(key=lambda mutant: (mutant.operator, mutant.occurrence))
        lots.append((lot, min(mutants, key=lambda mutant: _lot(lot, mutant.operator))))
    kept.parent.mkdir(parents=True, exist_ok=True)
    kept.write_text(json.dumps([(lot, asdict(mutant)) for lot, mutant in lots]), "utf-8")
    return lots


def drawn(count: int, seed: int, rooms: Iterable[str] = ROOMS) -> list[Mutant]:
    """`count` mutants at different places of some rooms, in the order of their lots."""
    lots = [
        lot for room in rooms for path in sorted((ROOT / "kit" / room).rglob("*.py")) for lot in lots_of(path, seed)
    ]
    return [mutant for _, mutant in sorted(lots, key=lambda lot: lot[0])[:count]]


class Results:
    """What became of mutants, kept in a file from slice to slice."""

    def __init__(self, without: str = "") -> None:
        self.file = KEPT / "results.jsonl"
        rows = self.file.read_text("utf-8").splitlines() if self.file.exists() else []
        self._found: dict[str, dict[str, object]] = {row["key"]: row for row in map(json.loads, rows)}
        self._tests = {room: stamp_of(ROOT / "tests" / room) + without for room in ROOMS}

    def _key(self, mutant: Mutant) -> str:
        source = (ROOT / mutant.module).read_text("utf-8")
        return stamp(mutant.module, source, mutant.operator, str(mutant.occurrence))

    def known(self, mutant: Mutant) -> Tried | None:
        """The kept result; None where it is of another module, or a survivor's tests have changed since, or it was kept
        when nobody noted which test failed."""
        row = self._found.get(self._key(mutant))
        if (
            row is None
            or "by" not in row
            or (row["outcome"] == "survived" and row["tests_of"] != self._tests[folder_of(mutant.module).name])
        ):
            return None
        return Tried(mutant, *(row[name] for name in ("outcome", "seconds", "was", "becomes", "files", "by")))  # type: ignore[arg-type]

    def keep(self, result: Tried) -> None:
        """Writes one result down at once."""
        key = self._key(result.mutant)
        row = {"key": key, "tests_of": self._tests[folder_of(result.mutant.module).name], **asdict(result)}
        self._found[key] = row
        self.file.parent.mkdir(parents=True, exist_ok=True)
        with self.file.open("a", encoding="utf-8") as out:
            out.write(json.dumps(row) + "\n")


def equivalents() -> dict[tuple[str, str, str], str]:
    """{(module, line as it was, line as it becomes): why nobody could notice} of `equivalent_mutants.toml`."""
    found = tomllib.loads(EQUIVALENT.read_text("utf-8")) if EQUIVALENT.exists() else {}
    return {(row["module"], row["was"], row["becomes"]): row["why"] for row in found.get("mutant", [])}


def _score(results: list[Tried], alike: dict[tuple[str, str, str], str]) -> str:
    caught = sum(result.outcome != "survived" for result in results)
    same = sum((r.mutant.module, r.was, r.becomes) in alike for r in results if r.outcome == "survived")
    noticed = len(results) - same
    return (
        f"{caught} of {len(results)} mutants caught, {100 * caught / max(len(results), 1):.0f} % raw; "
        f"{100 * caught / max(noticed, 1):.0f} % of the {noticed} that can be noticed"
    )


def main() -> int:
    asked = argparse.ArgumentParser(description=(__doc__ or "").split("\n")[0])
    asked.add_argument("--count", type=int, default=300, help="how many are drawn over all rooms")
    asked.add_argument("--each", type=int, default=0, help="draw so many of each room instead")
    asked.add_argument("--seed", type=int, default=1)
    asked.add_argument("--jobs", type=int, default=1)
    asked.add_argument("--most", type=float, default=300.0, help="seconds for one run of test files")
    asked.add_argument("--rooms", default=",".join(ROOMS), help="try those of the draw that lie in these rooms")
    asked.add_argument("--files", default="*.py", help="and in modules of this pattern, as kit/sewing/*.py")
    asked.add_argument("--without", default="", help="leave out these test files: what survives, they may yet notice")
    asked.add_argument("--at-most", type=int, default=10**6, help="try so many new ones, then stop")
    asked.add_argument("--only", default="", help="try again those whose module:line holds the text")
    asked.add_argument("--within", type=float, default=60.0, help="seconds that far test files may take for one mutant")
    asked.add_argument("--thorough", action="store_true", help="try survivors again with every file, however long")
    given = asked.parse_args()
    rooms = given.rooms.split(",")
    reach = Reach(given.within, given.most, given.thorough, tuple(given.without.split(",")))
    draw = [
        mutant
        for lots in (
            [drawn(given.each, given.seed, [room]) for room in rooms]
            if given.each
            else [drawn(given.count, given.seed)]
        )
        for mutant in lots
        if mutant.module.split("/")[1] in rooms and PurePosixPath(mutant.module).match(given.files)
    ]
    results, alike = Results(given.without), equivalents()

    def due(mutant: Mutant) -> bool:
        if given.only:
            return given.only in f"{mutant.module}:{mutant.line}"
        known = results.known(mutant)
        if given.thorough and known is not None and known.outcome == "survived":
            return (mutant.module, known.was, known.becomes) not in alike
        return known is None

    todo = [mutant for mutant in draw if due(mutant)][: given.at_most]
    with tempfile.TemporaryDirectory(prefix="mutants-") as folder:
        trees = [copied(Path(folder) / str(number)) for number in range(given.jobs if todo else 0)]
        benches = [Bench(tree) for tree in trees]
        unchanged = Unchanged(given.most)
        free: Queue[Bench] = Queue()
        for bench in benches:
            free.put(bench)

        def work(mutant: Mutant) -> Tried:
            same = changed(mutant, (ROOT / mutant.module).read_text("utf-8"))[1:]
            if (mutant.module, *same) in alike:
                return Tried(mutant, "survived", 0.0, *same, files=0)
            bench = free.get()
            try:
                return tried(mutant, bench, unchanged, reach)
            finally:
                free.put(bench)

        with ThreadPoolExecutor(given.jobs) as pool:
            for number, result in enumerate(pool.map(work, todo), 1):
                results.keep(result)
                mutant = result.mutant
                place, change = f"{mutant.module}:{mutant.line}", mutant.operator.rsplit("/", 1)[-1]
                print(
                    f"{number:4}/{len(todo)}  {result.outcome:8}  {result.seconds:5.0f} s  {result.files:3} files  "
                    f"{place}  {change}  {result.by}",
                    flush=True,
                )
        for bench in benches:
            bench.close()
        for file, what in unchanged.failing().items():
            print(f"\n{file} was left out, as it fails without a change: {what}")
    known = [found for mutant in draw if (found := results.known(mutant)) is not None]
    for result in known:
        if result.outcome == "survived":
            why = alike.get((result.mutant.module, result.was, result.becomes))
            print(f"\n{result.mutant.module}:{result.mutant.line}\n- {result.was}\n+ {result.becomes}")
            print(f"  cannot be noticed: {why}" if why else f"  {result.files} test files did not notice")
    print()
    for room in rooms:
        there = [result for result in known if result.mutant.module.split("/")[1] == room]
        if there:
            print(f"{room}: {_score(there, alike)}")
    print(f"{len(known)} of the {len(draw)} drawn were tried: {_score(known, alike)} (seed {given.seed})")
    return 0


if __name__ == "__main__":
    raise SystemExit(main())
