"""The body behind the draft: level lines as long as a quarter of each girth, joined straight.

It is a scheme, to scale, at the block's own origin: the centre line is x = 0, the waist y = 0. It is drawn only for
pieces whose block has its centre there; a trouser leg or a sleeve has no such line.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from kit.body.body import Body
from kit.body.measures import said
from kit.geometry import Point
from kit.language import say
from kit.lesson.pattern import Pattern
from kit.piece.piece import Piece
from kit.units import System, show


@dataclass(frozen=True)
class Level:
    """A level line from the centre, `y` mm above the waist and a quarter girth (`width` mm) long."""

    measure: str
    y: float
    width: float

    def text(self, system: System) -> str:
        return say("canvas.quarter", measure=said(self.measure), length=show(self.width, system))


def levels(body: Body, block: Piece) -> tuple[Level, ...]:
    """The levels a block piece reaches, from the top; none for a piece that does not stand on the body's centre."""
    if not _on_centre(block):
        return ()
    bounds = [edge.path.bounds() for edge in block.edges]
    low, high = min(b[1] for b in bounds), max(b[3] for b in bounds)
    bust = block.guide_of("bust_line")
    wanted: list[tuple[str, float]] = [("waist_girth", 0.0)]
    if bust is not None:
        wanted.append(("bust_girth", bust.start.y))
    elif "back_waist_length" in body and "armscye_depth" in body:
        wanted.append(("bust_girth", body["back_waist_length"] - body["armscye_depth"]))
    if "waist_to_hip" in body:
        wanted.append(("hip_girth", -body["waist_to_hip"]))
    slack = 15.0
    found = [Level(name, y, body[name] / 4) for name, y in wanted if name in body and low - slack <= y <= high + slack]
    return tuple(sorted(found, key=lambda level: -level.y))


def side_line(found: Sequence[Level]) -> tuple[Point, ...]:
    """The side of the scheme, through the ends of its levels."""
    return tuple(Point(level.width, level.y) for level in found)


def on_body(pattern: Pattern, block: Sequence[Piece]) -> Mapping[str, Piece]:
    """Name of a piece -> the block piece that it is, for pieces of the block itself."""
    known = {piece.name: piece for piece in block}
    return {piece.name: known[piece.name] for piece in pattern.pieces if piece.name in known}


def _on_centre(piece: Piece) -> bool:
    return any(
        max(abs(edge.path.start.x), abs(edge.path.end.x)) < 0.5 and edge.path.is_straight
        for edge in piece.with_role("centre")
    )
