"""What lies on each block: edges in order, points, levels and darts, read from the block as it is drafted for one size.

One table for the terminal and the notebook, so that what a step may name of a block is looked up and not guessed.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass
from functools import cache

from kit.blocks import bodice_block, darted_bodice_block, skirt_block, trouser_block, with_sleeve
from kit.body.body import Body
from kit.body.chart import workshop_chart
from kit.language import say
from kit.piece.dart import depth, intake
from kit.piece.piece import Piece

SIZE = "W4"
"""The size of the workshop's chart that lengths and places are told in."""
BLOCKS: dict[str, Callable[[Body], tuple[Piece, ...]]] = {
    "bodice_block": bodice_block,
    "darted_bodice_block": darted_bodice_block,
    "skirt_block": skirt_block,
    "trouser_block": trouser_block,
    "with_sleeve": with_sleeve(bodice_block),
}
"""The blocks by the names they are imported under; of one with a sleeve the bodice is told by itself."""
FOR = {
    "bodice_block": "a top without darts, to the hip",
    "darted_bodice_block": "a bodice with bust, shoulder and waist darts, to the waist",
    "skirt_block": "a skirt with waist darts, to the knee",
    "trouser_block": "straight trousers with waist darts, to the ankle",
    "with_sleeve": "a sleeve for a bodice: start=with_sleeve(bodice_block), or of the darted one",
}
"""What each starts: in English, like the entries of verbs."""


@dataclass(frozen=True)
class PieceContents:
    """What lies on a `piece` of a block, each line worded: lengths and places in cm."""

    piece: str
    edges: tuple[str, ...]
    points: tuple[str, ...]
    levels: tuple[str, ...]
    darts: tuple[str, ...]

    @property
    def rows(self) -> tuple[tuple[str, tuple[str, ...]], ...]:
        """Its kinds under their headings, in the language spoken; none that is empty."""
        kinds = (("edges", self.edges), ("points", self.points), ("levels", self.levels), ("darts", self.darts))
        return tuple((say(f"reference.block_{kind}"), lines) for kind, lines in kinds if lines)


@cache
def lying(name: str) -> tuple[PieceContents, ...]:
    """What lies on the pieces of the block imported as `name`; `KeyError` for a name that is none."""
    pieces = BLOCKS[name](workshop_chart()[SIZE])
    return tuple(_of(piece) for piece in pieces if name != "with_sleeve" or piece.name == "sleeve")


def _of(piece: Piece) -> PieceContents:
    def place(x: float, y: float) -> str:
        return f"({_cm(x)}, {_cm(y)})"

    return PieceContents(
        piece.name,
        tuple(f"{edge.name} {_cm(edge.path.length)}" for edge in piece.edges),
        tuple(f"{name} {place(point.x, point.y)}" for name, point in piece.points),
        tuple(f"{name} {_cm(path.length)}" for name, path in piece.guides),
        tuple(
            f"{dart.name} on {dart.edge} from {_cm(dart.start)}, {_cm(intake(piece, dart))} wide, "
            f"{_cm(depth(piece, dart))} deep"
            for dart in piece.darts
        ),
    )


def _cm(mm: float) -> str:
    return f"{mm / 10 + 0.0:.1f}".replace("-0.0", "0.0")


def block_text(name: str) -> str:
    """The table of a block as lines of text."""
    parts = [say("reference.block_lies", size=SIZE)]
    for one in lying(name):
        rows = [f"  {heading} {', '.join(lines)}" for heading, lines in one.rows]
        parts.append("\n".join([one.piece, *rows]))
    return "\n\n".join(parts)


def block_tables(name: str) -> Iterable[str]:
    """The paragraphs of a block in the notebook: what it starts, and a table of its pieces."""
    yield f"### {name}"
    yield f"`from kit import {name}`: {FOR[name]}."
    rows = [
        f"| {one.piece} | {heading.rstrip(':')} | {', '.join(f'`{first}` {rest}' for first, rest in _split(lines))} |"
        for one in lying(name)
        for heading, lines in one.rows
    ]
    yield "\n".join(["| piece | what | name and measure |", "| --- | --- | --- |", *rows])


def _split(lines: Iterable[str]) -> Iterable[tuple[str, str]]:
    for line in lines:
        first, _, rest = line.partition(" ")
        yield first, rest
