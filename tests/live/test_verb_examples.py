"""Every verb has an example of a few lines in its docstring, and every example runs.

The bench's examples are run on the pieces of the blocks, the operations' on a sampler of hand-made pieces, each after
what must have been sewn before it.
"""

from __future__ import annotations

import ast
import re
from dataclasses import replace
from typing import Any

import pytest

from kit.blocks.bodice import bodice_block
from kit.blocks.darted_bodice import darted_bodice_block
from kit.body.body import Body
from kit.body.chart import workshop_chart
from kit.lesson.bench import BenchPiece, opened
from kit.lesson.bench_strip import BenchStrip
from kit.lesson.pattern import LessonInfo, Pattern, SewRecord
from kit.piece.piece import CutPlan, Notch, Piece
from kit.prose import sentences
from kit.reference.sampler import BEFORE, PIECES, STRIPS
from kit.reference.verb_help import Kind, in_full, verbs_of
from kit.sewing.handle import PieceHandle, StripHandle
from kit.sewing.make import Make
from kit.sewing.order import sew
from kit.units import cm, inch, mm

BENCH: tuple[Kind, ...] = ("piece", "line", "point", "strip")
SEWN: tuple[Kind, ...] = ("cut piece", "edges")
LINES = 4  # a call that is wide takes two of them
WIDE = 96
DARTED = frozenset(
    {
        "add_dart",
        "dart_to_ease",
        "dart_to_gathers",
        "move_dart",
        "remove_dart",
        "sewn_length",
        "shorten_dart",
        "split_dart",
    }
    | {"true_dart", "add_pleat", "add_tuck", "true_pleat"}
)
SNIPS = re.compile(r"(^|[.,;:] |\band )([Cc]lip|[Tt]rim|[Ss]nip|[Cc]ut|[Nn]otch) (the|it|both|away|off|out|into|\d)")
"""What is told of scissors."""
UNITS = {"cm": cm, "mm": mm, "inch": inch}


def cases(*kinds: Kind) -> list[Any]:
    return [pytest.param(kind, name, id=f"{kind}.{name}") for kind in kinds for name in verbs_of(kind)]


def bench(darts: bool) -> dict[str, Any]:
    """A bodice block, with `darts` or without, fresh paper, a pocket and a strip."""
    block = darted_bodice_block if darts else bodice_block
    found: dict[str, Any] = {piece.name: BenchPiece(piece) for piece in block(workshop_chart()["W4"])}
    found |= {name: BenchPiece(Piece(name, name, ())) for name in ("pouch", "facing", "lining", "interfacing")}
    pocket = BenchPiece(Piece("pocket", "Pocket", ()))
    lower = pocket.place(0, 0).ruled("out", 12 * cm)
    side = lower.end.ruled("up", 14 * cm)
    mouth = side.end.to(lower.start.up(14 * cm))
    pocket.draw(lower=lower, side=side, mouth=mouth, inner=mouth.end.to(lower.start))
    return found | {"pocket": pocket, "tie": BenchStrip("tie", "Tie", (1400.0,))}


@pytest.mark.parametrize(("kind", "name"), cases(*BENCH, *SEWN, "make"))
def test_every_verb_has_a_line_and_a_short_example_that_uses_it(kind: Kind, name: str) -> None:
    verb = verbs_of(kind)[name]
    assert verb.line
    assert "Example::" not in verb.words
    lines = verb.example.split("\n")
    assert 1 <= len(lines) <= LINES
    assert max(map(len, lines)) <= WIDE
    used = {node.attr for node in ast.walk(ast.parse(verb.example)) if isinstance(node, ast.Attribute)}
    assert name in used
    full = in_full(verb, "front")
    assert f"Example:\n  {lines[0]}\n" in full + "\n"
    assert all(" ".join(full.split()).count(" ".join(part.split())) for part in verb.words.split("\n\n")[1:])


@pytest.mark.parametrize(("kind", "name"), cases(*BENCH))
def test_an_example_of_the_bench_runs(kind: Kind, name: str) -> None:
    """It is drafted without a refusal, every piece it leaves has a closed outline, and it leaves something."""
    names, given = bench(darts=name in DARTED), {}  # type: tuple[dict[str, Any], dict[str, Any]]
    before = {key: thing.freeze() for key, thing in names.items() if isinstance(thing, BenchPiece)}
    exec(verbs_of(kind)[name].example, names | UNITS, given)
    pieces = {key: names[key] for key in before}
    for piece in pieces.values():
        assert not piece.freeze().edges or piece.freeze().outline
    changed = any(piece.freeze() != before[key] for key, piece in pieces.items())
    measured = any(opened(piece).spots for piece in pieces.values())
    cut = kind == "strip" and names["tie"].freeze().count > 0
    assert changed or measured or cut or given


@pytest.mark.parametrize(("kind", "name"), cases(*SEWN))
def test_an_example_of_a_cut_piece_runs(kind: Kind, name: str) -> None:
    (front,) = (piece for piece in bodice_block(workshop_chart()["W4"]) if piece.name == "front")
    front = replace(front, notches=(Notch("side", 120.0),))
    names: dict[str, Any] = {"front": PieceHandle(replace(front, cut=CutPlan(count=2, mirrored=True)))} | UNITS
    exec(verbs_of(kind)[name].example, names)
    assert len(names) > 5


@pytest.mark.parametrize(("kind", "name"), cases("make"))
def test_an_example_of_an_operation_is_sewn(kind: Kind, name: str) -> None:
    """Nothing speaks against sewing it then, and it has its sentences and pictures."""
    make = Make(PIECES, STRIPS)
    names: dict[str, Any] = {piece.name: PieceHandle(piece) for piece in PIECES} | {"make": make} | UNITS
    names |= {strip.name: StripHandle(strip) for strip in STRIPS}
    exec("\n".join(BEFORE.get(name, ())), names)
    before = len(make.operations)
    exec(verbs_of(kind)[name].example, names)
    assert len(make.operations) > before
    record = SewRecord("s", "Sampler", "", "", make.operations)
    pattern = Pattern(LessonInfo("Sampler", "sampler"), Body("W4", ()), (), PIECES, STRIPS, (), (record,))
    _, refusals = sew(pattern)
    assert [(refusal.code, str(refusal)) for refusal in refusals] == []
    for operation in make.operations[before:]:
        said = sentences(pattern, operation)
        assert all(said)
        if any(SNIPS.search(line) for line in said):
            assert {"scissors", "ripper"} & set(operation.cautioned(pattern)), said
        assert isinstance(operation.scenes(pattern), tuple)


def test_what_comes_before_names_operations_that_exist() -> None:
    assert set(BEFORE) <= set(verbs_of("make"))
