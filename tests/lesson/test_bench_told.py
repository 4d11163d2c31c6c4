"""Every verb of the drafting bench as it is written in its own example: what becomes of the pieces, what the hand did
and which measures are told; and then, for each word, number and length that may be left out, what becomes otherwise.

What stands in `bench_told/` was made by the kit, and read in samples (common practice, no source); the lines are
those of the blocks for W4 of the workshop's chart.
"""

from __future__ import annotations

import ast
import inspect
import re
from collections.abc import Iterator
from dataclasses import fields
from difflib import ndiff
from pathlib import Path
from typing import Any

import pytest

from kit.errors import KitError
from kit.lesson.bench import BenchPiece, opened
from kit.piece.piece import Piece
from kit.reference.verb_help import Verb, verbs_of
from tests.live.test_verb_examples import DARTED, UNITS, bench
from tests.told import Kept, told

WORDS = re.compile(r"^Literal\[([^]]+)\]$")
OTHERWISE = {
    # what is written for an argument of that kind which may be left out
    "Size": "7 * mm",
    "Size | None": "7 * mm",
    "float": "0.4",
    "float | None": "0.4",
    "Share": "0.4",
    "Across": "7 * mm",
    "bool | None": "True",
    "int | None": "3",
    "Ends": "'corner'",
}


def _worked(name: str, example: str, *, other: bool = False) -> list[str]:
    names = bench(darts=(name in DARTED) is not other)
    given: dict[str, Any] = {}
    pieces = {key: thing for key, thing in names.items() if isinstance(thing, BenchPiece)}
    before = {key: (piece.freeze(), len(opened(piece).hand)) for key, piece in pieces.items()}
    try:
        exec(example, names | UNITS, given)
        strip = [f"tie is {told(names['tie'].freeze())}"] if "tie." in example else []
    except KitError as error:
        return [f"refused: {getattr(error.told.says, 'key', error.what)}"]
    lines = [f"{key} is {told(value)}" for key, value in given.items() if isinstance(value, int | float)]
    for key, piece in pieces.items():
        was, moves = before[key]
        lines += _changes(key, was, piece.freeze())
        lines += [f"  measure {told(spot)}" for spot in opened(piece).spots]
        lines += [f"  hand {told(move)}" for move in opened(piece).hand[moves:]]
    return [*lines, *strip] or ["nothing"]


def _changes(name: str, before: Piece, after: Piece) -> Iterator[str]:
    for each in fields(after):
        was, now = getattr(before, each.name), getattr(after, each.name)
        if was == now:
            continue
        if isinstance(now, tuple):
            yield from (f"{name} {each.name} - {told(one)}" for one in was or () if one not in (now or ()))
            yield from (f"{name} {each.name} + {told(one)}" for one in now if one not in (was or ()))
            if sorted(map(repr, was or ())) == sorted(map(repr, now)):
                yield f"{name} {each.name} in order: {told(now)}"
        else:
            yield f"{name} {each.name}: {told(now)}"


def others(verb: Verb) -> Iterator[tuple[str, str]]:
    """(argument, another value in code) for what may be left out."""
    if verb.quality:
        return
    for name, argument in inspect.signature(verb.function).parameters.items():
        kind, usual_value = str(argument.annotation), argument.default
        if usual_value is argument.empty or argument.kind is argument.POSITIONAL_ONLY:
            continue
        if words := WORDS.match(kind):
            yield from ((name, word) for word in words[1].split(", ") if word != repr(usual_value))
        elif kind == "bool":
            yield name, str(not usual_value)
        elif kind == "int":
            yield name, str(usual_value + 1)
        elif kind == "str" and name in ("name", "said", "names"):
            yield name, "'new_name'"
        elif kind in OTHERWISE:
            yield name, OTHERWISE[kind]


def written(example: str, name: str, argument: str, value: str) -> str:
    """An example with one argument of its verb written otherwise."""
    tree = ast.parse(example)
    for node in ast.walk(tree):
        if isinstance(node, ast.Call) and isinstance(node.func, ast.Attribute) and node.func.attr == name:
            others = [each for each in node.keywords if each.arg != argument]
            node.keywords = [*others, ast.keyword(argument, ast.parse(value, mode="eval").body)]
    return ast.unparse(tree)


ALL = [(kind, name) for kind in ("piece", "line", "point", "strip") for name in sorted(verbs_of(kind))]


@pytest.mark.parametrize(("kind", "name"), ALL)
def test_what_it_does(kind, name):
    example = verbs_of(kind)[name].example
    found = {example.replace("\n", "; "): "\n".join(_worked(name, example))}
    Kept(Path(__file__).with_name("bench_told") / f"{kind}_{name}.txt").holds(found)


@pytest.mark.parametrize(("kind", "name"), ALL)
def test_what_it_does_on_the_other_block(kind, name):
    """On the block with darts, where the example is written for the one without, and the other way round."""
    example = verbs_of(kind)[name].example
    found = {example.replace("\n", "; "): "\n".join(_worked(name, example, other=True))}
    Kept(Path(__file__).with_name("bench_other") / f"{kind}_{name}.txt").holds(found)


@pytest.mark.parametrize(("kind", "name"), ALL)
def test_what_becomes_otherwise(kind, name):
    verb = verbs_of(kind)[name]
    as_written = _worked(name, verb.example)
    found = {}
    for argument, value in others(verb):
        try:
            other = _worked(name, written(verb.example, name, argument, value))
        except TypeError:
            continue  # the example writes that argument in its place
        lines = [line for line in ndiff(as_written, other) if line[0] in "+-"]
        found[f"{argument}={value}"] = "\n".join(other if other[0].startswith("refused") else lines) or "the same"
    Kept(Path(__file__).with_name("bench_otherwise") / f"{kind}_{name}.txt").holds(
        found or {"nothing": "may be left out"}
    )
