"""The lines that every verb of the drafting bench leaves, point by point.

`bench_drawn` holds, for each verb's own example, every edge, guide, point, mark, notch and fold that is other than
before, to a hundredth of a mm; `bench_told` tells the rest of it in short. What stands there was made by the kit, the
lines being those of the blocks for W4 of the workshop's chart; read in samples beside the practice sheet's pictures.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path
from typing import Any

import pytest

from kit.errors import KitError
from kit.lesson.bench import BenchPiece
from kit.piece.darts_and_pleats import Dart
from kit.piece.piece import Piece
from kit.reference.verb_help import verbs_of
from tests.exact import exact, refusal
from tests.lesson.test_bench_told import others, written
from tests.live.test_verb_examples import DARTED, UNITS, bench
from tests.told import Kept

ALL = [(kind, name) for kind in ("piece", "line", "point") for name in sorted(verbs_of(kind))]  # type: ignore[arg-type]


def _lines(piece: Piece) -> dict[str, str]:
    found = {f"edge {edge.name}": exact(edge.path) for edge in piece.edges}
    found |= {f"guide {name}": exact(path) for name, path in piece.guides}
    found |= {f"point {name}": exact(point) for name, point in piece.points}
    found |= {f"mark {mark.name}": exact((mark.path, mark.point, mark.start, mark.end)) for mark in piece.marks}
    found |= {f"notch {n}": exact(notch) for n, notch in enumerate(piece.notches)}
    found |= {f"dart {dart.name}": exact((dart.apex, dart.start, dart.end)) for dart in piece.darts}
    found |= {f"pleat {pleat.name}": exact((pleat.lines, pleat.start, pleat.end)) for pleat in piece.pleats}
    return found


def turned(piece: Piece) -> Piece:
    """The same piece with its edges walked the other way round."""
    sizes = {edge.name: edge.path.length for edge in piece.edges}

    def back(dart: Dart) -> Dart:
        start, end = sizes[dart.edge] - dart.end, sizes[dart.edge] - dart.start
        return replace(dart, start=start, end=end, pressed="start" if dart.pressed == "end" else "end")

    return replace(
        piece,
        edges=tuple(replace(edge, path=edge.path.reversed()) for edge in reversed(piece.edges)),
        darts=tuple(map(back, piece.darts)),
        notches=tuple(replace(notch, distance=sizes[notch.edge] - notch.distance) for notch in piece.notches),
    )


def _drawn(name: str, example: str, *, darts: bool, back: bool = False) -> Iterator[str]:
    names = bench(darts)
    if back:
        names |= {key: BenchPiece(turned(names[key].freeze())) for key in ("front", "back", "pocket")}
    pieces = {key: thing for key, thing in names.items() if isinstance(thing, BenchPiece)}
    before = {key: _lines(piece.freeze()) for key, piece in pieces.items()}
    given: dict[str, Any] = {}
    try:
        exec(example, names | UNITS, given)
    except KitError as error:
        yield f"refused: {refusal(error)}"
        return
    for key, piece in pieces.items():
        after = _lines(piece.freeze())
        for what, now in after.items():
            if before[key].get(what) != now:
                yield f"{key}, {what}: {now}"
        yield from (f"{key}, {what} is gone" for what in before[key] if what not in after)
    for key, value in given.items():
        for part in ("path", "point"):
            if hasattr(value, part):
                yield f"{key} {part}: {exact(getattr(value, part))}"


@pytest.mark.parametrize(("kind", "name"), ALL)
def test_every_line_it_leaves(kind, name):
    verb, found = verbs_of(kind)[name], {}
    for title, more in (
        ("on its block", {"darts": name in DARTED}),
        ("on its block, walked the other way round", {"darts": name in DARTED, "back": True}),
        ("on the other block", {"darts": name not in DARTED}),
    ):
        lines = list(_drawn(name, verb.example, **more)) or ["nothing"]
        if title == "on its block" or not lines[0].startswith("refused"):
            found[title] = "\n".join(lines)
    usual = found["on its block"].split("\n")
    for argument, value in others(verb):
        try:
            lines = list(_drawn(name, written(verb.example, name, argument, value), darts=name in DARTED))
        except TypeError:
            continue  # the example writes that argument in its place
        found[f"{argument}={value}"] = "\n".join(line for line in lines if line not in usual) or "the same"
    Kept(Path(__file__).with_name("bench_drawn") / f"{kind}_{name}.txt").holds(found)
