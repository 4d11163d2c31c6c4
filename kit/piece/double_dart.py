"""Darts with two points: a narrow diamond folded out of the middle of a piece, as at the waist of a dress.

Such a dart opens on no edge. It is a `Mark` of kind "dart", whose path runs round it: from its upper point over the one
side to the lower point, and over the other side back. So everything that carries marks along carries it too.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from kit.geometry import Line, Path, Point, Region, inside_length
from kit.piece.dart import darts_lying, legs
from kit.piece.piece import Mark, Piece


@dataclass(frozen=True)
class DoubleDart:
    """A dart from `top` to `bottom`, its two stitching lines running over `one` and `other`, where it is widest."""

    mark: Mark
    top: Point
    one: Point
    bottom: Point
    other: Point

    @property
    def label(self) -> str:
        return self.mark.label

    @property
    def intake(self) -> float:
        """mm taken up at the widest place."""
        return self.one.distance(self.other)

    @property
    def middle(self) -> Point:
        """The middle of the widest place."""
        return self.one.mid(self.other)

    @property
    def up(self) -> float:
        """mm from the widest place to the upper point."""
        return self.middle.distance(self.top)

    @property
    def down(self) -> float:
        """mm from the widest place to the lower point."""
        return self.middle.distance(self.bottom)

    @property
    def legs(self) -> tuple[Path, Path]:
        """The two stitching lines, from the upper point to the lower."""
        one, other = ((Line(self.top, side), Line(side, self.bottom)) for side in (self.one, self.other))
        return Path(one), Path(other)

    @property
    def fold(self) -> Path:
        """The line it is folded along, from point to point."""
        return Path.line(self.top, self.bottom)

    @property
    def unlike(self) -> tuple[float, float] | None:
        """The two legs of that half, upper or lower, whose legs differ more, mm; None where both are alike."""
        halves = [(end.distance(self.one), end.distance(self.other)) for end in (self.top, self.bottom)]
        worst = max(halves, key=lambda half: abs(half[0] - half[1]))
        return worst if abs(worst[0] - worst[1]) > 1e-9 else None

    @property
    def sharpest(self) -> float:
        """The wider of the angles at its two points, degrees."""
        return max(math.degrees(abs((self.one - end).turn_to(self.other - end))) for end in (self.top, self.bottom))


def double_dart(mark: Mark) -> DoubleDart | None:
    """The dart that a mark is; None for any other mark."""
    if mark.kind != "dart" or mark.path is None or len(mark.path.curves) != 4:
        return None
    return DoubleDart(mark, *(curve.start for curve in mark.path.curves))


def double_darts(piece: Piece) -> tuple[DoubleDart, ...]:
    """All of a piece."""
    return tuple(dart for mark in piece.marks if (dart := double_dart(mark)) is not None)


def around(top: Point, one: Point, bottom: Point, other: Point) -> Path:
    """The path of such a mark."""
    return Path((Line(top, one), Line(one, bottom), Line(bottom, other), Line(other, top)))


def sewn_width(piece: Piece, line: Path) -> float:
    """mm of cloth along a line across the piece with its darts sewn: the part of the line that lies within the
    stitch line, less what it runs through darts of either kind.

    >>> from kit.piece.piece import Edge
    >>> corners = [Point(0, 0), Point(200, 0), Point(200, 300), Point(0, 300)]
    >>> edges = tuple(Edge(n, Path.line(a, b)) for n, a, b in zip("abcd", corners, corners[1:] + corners[:1]))
    >>> dart = Mark("d", "dart", path=around(Point(90, 250), Point(80, 150), Point(90, 50), Point(100, 150)))
    >>> sheet = Piece("sheet", "Sheet", edges, marks=(dart,))
    >>> [round(sewn_width(sheet, Path.line(Point(-9, y), Point(300, y)))) for y in (150, 200, 260)]
    [180, 190, 200]
    """
    whole = Region.of(p for curve in piece.outline.curves for p in curve.points(0.05)[:-1])
    taken = [Region.of((d.top, d.one, d.bottom, d.other)) for d in double_darts(piece)]
    for dart in darts_lying(piece):
        one, two = legs(piece, dart)
        taken.append(Region.of((one.start, one.end, two.end)))
    return inside_length(line.points(0.05), whole, taken)
