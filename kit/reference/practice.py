"""Practice lessons: paper and cloth on which the example of a verb can be tried, whatever has to be there before it.

The paper is the bodice block of the workshop's size W4, with darts where a verb needs them, and a pocket. The cloth is
a sampler: pieces made by hand that have an edge, a mark or a fold for every operation.
"""

from __future__ import annotations

import ast
from collections.abc import Callable, Mapping, Sequence
from dataclasses import replace
from typing import Any

from kit.blocks.block import Block
from kit.blocks.bodice import bodice_block
from kit.blocks.darted_bodice import darted_bodice_block
from kit.body.body import Body
from kit.body.chart import workshop_chart
from kit.errors import KitError, near
from kit.lesson.bench import BenchPiece
from kit.lesson.bench_strip import BenchStrip
from kit.lesson.lesson import Lesson, rewrite
from kit.lesson.steps import Entry, entry_of
from kit.piece.piece import Notch, Piece
from kit.reference.sampler import BEFORE, PIECES, STRIPS
from kit.reference.verb_help import Kind, verbs_of
from kit.units import cm, inch, mm

UNITS: Mapping[str, Any] = {"cm": cm, "mm": mm, "inch": inch}
DRAFTED: tuple[Kind, ...] = ("piece", "line", "point", "strip")
SEWN: tuple[Kind, ...] = ("make", "cut piece", "edges")
KINDS: tuple[Kind, ...] = (*DRAFTED, *SEWN)
"""The kinds of things that have verbs, in the order of the reference."""
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
    | {"true_dart", "add_pleat", "add_tuck", "true_pleat", "spare_darts"}
)
"""What is tried on the bodice with darts."""
EMPTY = ("pouch", "facing", "lining", "interfacing")
BENCH_STRIP = "tie"


def practice_paper(verb: str = "") -> Lesson:
    """A lesson whose start is practice paper for one verb of the bench: `front` and `back` of a bodice and a
    `pocket`. What a step makes it names itself: `makes="facing"`, `strips="tie"`. `KitError` when there is no such
    verb."""
    name = _known(verb, DRAFTED)
    block, draft = (darted_bodice_block, darted_paper) if name in DARTED else (bodice_block, paper)
    return Lesson("Practice paper", start=Block("Practice paper", block.measures, draft), size="W4")


def practice_cloth(verb: str = "") -> Lesson:
    """A lesson whose start is the sampler, sewn as far as one verb of sewing needs: its example can be written in the
    next step. `KitError` when there is no such verb."""
    name = _known(verb, SEWN)
    lesson = Lesson("Practice cloth", start=cloth_notched if name == "notch" else cloth)
    lesson.length("hem_drop", 14 * cm, least=4 * cm, most=20 * cm)
    written = [_strips()]
    if name in BEFORE:
        written.append(_before(name))
    rewrite(lesson, entries=tuple(written))
    return lesson


def paper(body: Body) -> tuple[Piece, ...]:
    """A bodice without darts, with the other practice pieces."""
    return (*bodice_block(body), *_others())


def darted_paper(body: Body) -> tuple[Piece, ...]:
    """A bodice with darts, with the other practice pieces."""
    return (*darted_bodice_block(body), *_others())


def cloth(body: Body) -> tuple[Piece, ...]:
    """The pieces of the sampler; they are of no size."""
    return PIECES


def cloth_notched(body: Body) -> tuple[Piece, ...]:
    """The sampler with a notch in the front's side."""
    return tuple(
        replace(piece, notches=(Notch("side", 120.0),)) if piece.name == "front" else piece for piece in PIECES
    )


def on_the_bench(verb: str) -> dict[str, Any]:
    """What names stand for in the example of a verb of the bench, each fresh."""
    pieces = (darted_paper if verb in DARTED else paper)(workshop_chart()["W4"])
    found: dict[str, Any] = {piece.name: BenchPiece(piece) for piece in pieces}
    found |= {name: BenchPiece(Piece(name, name.capitalize(), ())) for name in EMPTY}
    return found | {BENCH_STRIP: BenchStrip(BENCH_STRIP, "Tie", (1400.0,))}


def names_in(text: str) -> set[str]:
    """The names a piece of code reads."""
    return {
        node.id for node in ast.walk(ast.parse(text)) if isinstance(node, ast.Name) and isinstance(node.ctx, ast.Load)
    }


def asked_for(text: str, kind: str) -> tuple[str, ...]:
    """The pieces and strips that a step with this code must name as its arguments, `make` first."""
    first = ("make",) if kind in SEWN else ()
    known = [piece.name for piece in PIECES] + [strip.name for strip in STRIPS]
    if kind in DRAFTED:
        known = ["front", "back", "pocket", *EMPTY, BENCH_STRIP]
    used = names_in(text)
    return (*first, *(name for name in known if name in used))


def _others() -> tuple[Piece, ...]:
    pocket = BenchPiece(Piece("pocket", "Pocket", ()))
    lower = pocket.place(0, 0).ruled("out", 12 * cm)
    side = lower.end.ruled("up", 14 * cm)
    mouth = side.end.to(lower.start.up(14 * cm))
    pocket.draw(lower=lower, side=side, mouth=mouth, inner=mouth.end.to(lower.start))
    return (pocket.freeze(),)


def _known(verb: str, kinds: Sequence[Kind]) -> str:
    """The verb's name, of `edges.notch` that behind the dot."""
    kind, _, name = verb.rpartition(".")
    known = {name for one in kinds if kind in ("", one) for name in verbs_of(one)}
    if verb and name not in known:
        raise KitError(f"there is no verb '{verb}'.", do=near(name, known))
    return name


def _strips() -> Entry:
    names = tuple(strip.name for strip in STRIPS)
    lines = "\n".join(f"{name}.strip = cut[{name!r}]" for name in names)
    cut = {"cut": {strip.name: strip for strip in STRIPS}}
    return entry_of("step", "Cut the strips", written("cut_strips", lines, names, cut), strips=names)


def _before(name: str) -> Entry:
    lines = "\n".join(BEFORE[name])
    return entry_of("sew", "What is sewn before", written(f"before_{name}", lines, asked_for(lines, "make")))


def written(name: str, lines: str, arguments: Sequence[str], more: Mapping[str, Any] = UNITS) -> Callable[..., Any]:
    """A step's function of this name with `lines` as its body."""
    body = "\n".join(f"    {line}" for line in lines.split("\n"))
    made: dict[str, Any] = dict(more)
    exec(f"def {name}({', '.join(arguments)}):\n{body}\n", made)
    function: Callable[..., Any] = made[name]
    return function
