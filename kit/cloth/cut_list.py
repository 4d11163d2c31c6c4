"""The cut list: what is cut from what, how many, on the fold, as a mirrored pair or right side up; and the boxes that
each cut takes of the cloth, turned so that its grainline lies on the grain it names."""

from __future__ import annotations

from dataclasses import dataclass

from kit.cloth.grain import at_fold, lengthwise
from kit.cloth.need import Box
from kit.cloth.pieced import in_two
from kit.geometry import Point, Vector
from kit.lesson.pattern import Pattern
from kit.piece.allowance import cut_line
from kit.piece.piece import Cloth, GrainKind, Piece, Strip
from kit.piece.strips import bias_cloth
from kit.piece.unfold import unfolded
from kit.wording.names import edge_label

INTERFACING_WIDTH = 900.0  # mm, a width it is often sold in; from memory


@dataclass(frozen=True)
class CutListRow:
    """One line of the cut list. `how` is "fold", "pair", "single", "right_side_up" or "strip"; the same shape is cut
    from `interfacing` layers of interfacing. A strip is cut `length` x `width` mm; `joins` is how many seams piece each
    of the finished ones, and `count` then says how many lengths are cut; `square` is the side of the square that
    gives them as one continuous bias. `in_two`: the interfacing is cut in two lengths (kit/cloth/pieced.py)."""

    number: int
    title: str
    count: int
    how: str
    cloth: Cloth
    edge: str = ""
    interfacing: int = 0
    grain: GrainKind = "lengthwise"
    length: float = 0.0
    width: float = 0.0
    joins: int = 0
    square: float = 0.0
    in_two: bool = False


def cut_list(pattern: Pattern) -> tuple[CutListRow, ...]:
    """Every cut of `pattern` in order of piece number, strips last.

    >>> from kit import bodice_block
    >>> from kit.lesson.lesson import Lesson
    >>> pattern = Lesson("Block", start=bodice_block).work()
    >>> [(cut.title, cut.count, cut.how) for cut in cut_list(pattern)]
    [('Front bodice', 1, 'fold'), ('Back bodice', 1, 'fold')]
    """
    lines: list[CutListRow] = []
    for piece in sorted(pattern.pieces, key=lambda piece: piece.number):
        how, edge = _how(piece)
        plan = piece.cut
        grain = piece.grain.kind if piece.grain else "lengthwise"
        two = plan.interfacing > 0 and in_two(piece) is not None
        lines.append(
            CutListRow(
                piece.number, piece.title, plan.count, how, plan.cloth, edge, plan.interfacing, grain, in_two=two
            )
        )
    for strip in pattern.strips:
        lines.append(
            CutListRow(
                strip.number,
                strip.title,
                strip.count if strip.square else strip.pieces,
                "strip",
                strip.cloth,
                grain=strip.grain,
                length=strip.cut_length,
                width=strip.width,
                joins=strip.joins,
                square=strip.square,
            )
        )
    return tuple(lines)


def boxes(pattern: Pattern, cloth: Cloth) -> tuple[Box, ...]:
    """The bounding boxes of everything cut from `cloth`, with allowances, along and across the cloth's length."""
    found: list[Box] = []
    for piece in pattern.pieces:
        count = piece.cut.count if piece.cut.cloth == cloth else 0
        if cloth == "interfacing":
            count = max(count, piece.cut.interfacing)
        if count and cloth == "interfacing" and (two := in_two(piece)):
            found.append(Box(piece.title, two.along, two.across, 2 * count))
        elif count:
            found.append(_piece_box(piece, count))
    for strip in pattern.strips:
        if strip.cloth == cloth:
            found.append(_strip_box(strip))
    return tuple(found)


def _how(piece: Piece) -> tuple[str, str]:
    if piece.cut.fold:
        return "fold", edge_label(piece.edge(piece.cut.fold))
    if piece.cut.right_side_up:
        return "right_side_up", ""
    return ("pair", "") if piece.cut.mirrored else ("single", "")


def _strip_box(strip: Strip) -> Box:
    if strip.square:
        return Box(strip.title, strip.square, strip.square, 1, single=True)
    if strip.grain == "bias":
        # All of them side by side on the opened cloth, as one slanting block.
        along, across = bias_cloth(strip.pieces, strip.cut_length, strip.width)
        return Box(strip.title, along, across, 1, single=True)
    along, across = strip.cut_length, strip.width
    if strip.grain == "crosswise":
        return Box(strip.title, across, along, strip.pieces)
    return Box(strip.title, along, across, strip.pieces)


def _piece_box(piece: Piece, count: int) -> Box:
    way = lengthwise(piece.grain)
    folded = bool(piece.fold)
    if folded and not at_fold(piece, way):
        # The cloth is folded along its length; a fold that lies otherwise is opened out whole.
        piece, folded = unfolded(piece), False
    single = piece.cut.right_side_up
    line = cut_line(piece)
    if abs(way.x) < 1e-9:
        left, bottom, right, top = line.bounds()
        return Box(piece.title, top - bottom, right - left, count, folded, piece.cut.mirrored, single)
    points = line.points(0.1)
    along = _reach(points, way)
    across = _reach(points, Vector(way.y, -way.x))
    return Box(piece.title, along, across, count, folded, piece.cut.mirrored, single)


def _reach(points: list[Point], way: Vector) -> float:
    places = [point.x * way.x + point.y * way.y for point in points]
    return max(places) - min(places)
