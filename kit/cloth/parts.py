"""What is laid on the cloth: every piece and strip with its true cut outline, turned so that its grainline lies on
the grain it names, and the ways it may lie.

A piece may be turned end for end unless the cloth has a nap or a print that runs one way. Its paper is turned over
only where a mirrored pair is cut, or where a doubled layer gives both sides at once. A piece that is neither a pair
nor on the fold, and whose mirror image is another shape, is never cut through doubled cloth.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from functools import cached_property
from typing import Any, Literal

import shapely
from shapely import affinity

from kit.cloth.grain import at_fold, lengthwise
from kit.cloth.pieced import Lengths, in_two
from kit.geometry import Curve, Line, Motion, Point, Vector
from kit.lesson.pattern import Pattern
from kit.pausing import pause_here
from kit.piece.allowance import cut_line
from kit.piece.piece import Cloth, Piece, Side, Strip
from kit.piece.strips import ROOT2, bias_cloth
from kit.piece.unfold import unfolded

TOLERANCE = 0.1
"""mm a polygon may lie off the curves it stands for."""
_ALIKE = 0.004
_RIGHT: tuple[Side, ...] = ("right",)
_UP = Motion.identity()
_ROUND = Motion(-1.0, 0.0)
_OVER = Motion.reflection(Point(0.0, 0.0), Point(0.0, 1.0))


@dataclass(frozen=True)
class LayPart:
    """A piece or a strip to lay, its outline as it lies with the grain along the cloth (y along it, in mm). `half`
    is the paper piece of one on the fold, with the fold at x = 0 and the piece to its right; `over` says that its
    paper is turned over for that. `copies` are the paper's sides ("right" as drafted, "left" turned over) of all that
    is cut; `gives` is how many cut pieces one laying gives through one layer. `doubles`: may be cut through both
    layers of folded cloth. `axis` is the fold line of the paper in the whole shape."""

    name: str
    title: str
    number: int
    kind: Literal["piece", "strip"]
    whole: tuple[Curve, ...]
    copies: tuple[Side, ...]
    half: tuple[Curve, ...] = ()
    over: bool = False
    gives: int = 1
    doubles: bool = True
    right_side_up: bool = False
    grain: tuple[Point, Point] | None = None
    grain_half: tuple[Point, Point] | None = None
    axis: tuple[Point, Point] | None = None

    @property
    def paired(self) -> bool:
        """Whether a left and a right one are cut."""
        return "left" in self.copies

    @cached_property
    def _shapes(self) -> tuple[Any, Any]:
        return polygon(self.whole), polygon(self.half) if self.half else None

    def lying(self, half: bool, turn: int = 0, over: bool = False) -> Any:
        """The whole outline, or the half at the fold, as a shapely polygon, turned and its paper turned over so."""
        shape = self._shapes[half]
        flip = over != (half and self.over)
        if not turn and not flip:
            return shape
        x, y = (-1.0 if flip else 1.0), 1.0
        return affinity.affine_transform(shape, [-x, 0.0, 0.0, -y, 0.0, 0.0] if turn else [x, 0.0, 0.0, y, 0.0, 0.0])

    def bounds(self, half: bool, turn: int = 0, over: bool | None = None) -> tuple[float, float, float, float]:
        """(xmin, ymin, xmax, ymax) of what `lying` gives, of the curves themselves."""
        flip = over is not None and over != (half and self.over)
        x0, y0, x1, y1 = self._boxes[half]
        if flip != (turn == 180):
            x0, x1 = -x1, -x0
        return (x0, -y1, x1, -y0) if turn else (x0, y0, x1, y1)

    @cached_property
    def _boxes(self) -> tuple[tuple[float, float, float, float], tuple[float, float, float, float]]:
        return _bounds(self.whole), _bounds(self.half or self.whole)

    def width(self, half: bool) -> float:
        """Across the cloth, in mm."""
        x0, _, x1, _ = self._boxes[half]
        return x1 - x0

    def area(self, half: bool) -> float:
        return float(self._shapes[half].area)

    def grain_on(self, half: bool, motion: Motion) -> tuple[Point, Point] | None:
        """The grainline under `motion`."""
        return _carried(self.grain_half if half else self.grain, motion)

    def axis_on(self, motion: Motion) -> tuple[Point, Point] | None:
        """The fold line of the paper in the whole shape, under `motion`."""
        return _carried(self.axis, motion)


def parts(pattern: Pattern, cloth: Cloth) -> tuple[LayPart, ...]:
    """Everything cut from `cloth`, in the order of the pattern. Raises `KitError` as `cut_line` does."""
    found: list[LayPart] = []
    for piece in pattern.pieces:
        pause_here()
        count = piece.cut.count if piece.cut.cloth == cloth else 0
        if cloth == "interfacing":
            count = max(count, piece.cut.interfacing)
        if count and cloth == "interfacing" and (two := in_two(piece)):
            found.append(_in_two(piece, two, count))
        elif count:
            found.append(_piece(piece, count, napped(pattern, cloth)))
    for strip in pattern.strips:
        if strip.cloth == cloth:
            found.append(_strip(strip))
    return tuple(found)


def napped(pattern: Pattern, cloth: Cloth) -> bool:
    """Whether no piece of `cloth` may be turned round: the lesson's cloth has a nap or a print; linings and
    interfacings have none."""
    return pattern.lesson.nap != "none" and cloth == "main"


def polygon(curves: Sequence[Curve]) -> Any:
    """A closed run of curves as a shapely polygon."""
    points = [(p.x, p.y) for curve in curves for p in list(curve.points(TOLERANCE))[:-1]]
    shape = shapely.Polygon(points)
    return shape if shape.is_valid else shape.buffer(0)


def moved(curves: Sequence[Curve], motion: Motion) -> tuple[Curve, ...]:
    return tuple(curve.moved(motion) for curve in curves)


def turns(nap: bool) -> tuple[int, ...]:
    """By how many degrees a piece may be turned."""
    return (0,) if nap else (0, 180)


def motion_of(turn: int, over: bool) -> Motion:
    """Turned about the origin by 0 or 180 degrees, the paper turned over first."""
    flipped = _OVER if over else _UP
    return flipped.then(_ROUND) if turn else flipped


def _piece(piece: Piece, count: int, nap: bool) -> LayPart:
    """The part that is laid on the cloth, turned so that the grain runs up (y is the length of the cloth).

    There are three cases. A piece without a fold is laid as it is, right and left in turn where it is mirrored. One
    whose fold lies along the grain can be laid two ways: as half a piece with its fold on the fold of the cloth
    (x = 0, the piece to the right of it), or opened out on a single layer; the part holds both shapes and the lay
    chooses. One whose fold lies otherwise has no place at the fold of the cloth and is always opened out.

    `doubles` says that on cloth lying double the two layers give two copies that are both wanted: either a right and a
    left, or a shape that is its own mirror image.
    """
    along = lengthwise(piece.grain)
    upright = Motion.rotation(math.pi / 2 - along.angle)
    line = cut_line(piece).curves
    grain = (piece.grain.start, piece.grain.end) if piece.grain else None
    if not piece.fold:
        whole = moved(line, upright)
        sides: tuple[Side, ...] = ("right", "left") if piece.cut.mirrored else ("right",)
        copies = tuple(sides[at % len(sides)] for at in range(count))
        plain = not piece.cut.right_side_up
        doubles = plain and (piece.cut.mirrored or count == 1 or _symmetric(polygon(whole), nap))
        return LayPart(
            piece.name,
            piece.title,
            piece.number,
            "piece",
            whole,
            copies,
            doubles=doubles,
            right_side_up=piece.cut.right_side_up,
            grain=_carried(grain, upright),
        )
    opened_line = cut_line(unfolded(piece)).curves
    fold_line = piece.edge(piece.fold).path
    fold_ends = (fold_line.start, fold_line.end)
    opened = moved(opened_line, upright)
    rights = _RIGHT * count
    whole_grain = _carried(grain, upright)
    if not at_fold(piece, along):
        # The cloth is folded along its length; a fold that lies otherwise is opened out whole.
        alike = _symmetric(polygon(opened), nap)
        axis = _carried(fold_ends, upright)
        return LayPart(
            piece.name, piece.title, piece.number, "piece", opened, rights, doubles=alike, grain=whole_grain, axis=axis
        )
    # From here on the fold itself is upright, not the grain, which may be drawn a hair aslant of it: laid by the grain,
    # the fold would leave the fold of the cloth by that hair and the piece would gain or lose it.
    way_of_fold = (fold_line.end - fold_line.start).unit()
    exact = way_of_fold if way_of_fold.dot(along) > 0 else -way_of_fold
    upright = Motion.rotation(math.pi / 2 - exact.angle)
    opened, whole_grain = moved(opened_line, upright), _carried(grain, upright)
    to_fold = upright.then(Motion.translation(Vector(-upright(fold_line.start).x, 0.0)))
    half = moved(line, to_fold)
    places = [curve.point(0.5).x for curve in half]
    over = sum(places) < 0  # the half lies to the left of its fold: turn the paper over
    if over:
        to_fold = to_fold.then(_OVER)
        half = moved(half, _OVER)
    return LayPart(
        piece.name,
        piece.title,
        piece.number,
        "piece",
        opened,
        rights,
        half,
        over,
        grain=whole_grain,
        grain_half=_carried(grain, to_fold),
        axis=_carried(fold_ends, upright),
    )


def _in_two(piece: Piece, two: Lengths, count: int) -> LayPart:
    """Two lengths of each layer of interfacing."""
    x, y = two.across, two.along
    grain = (Point(x / 2, 0.2 * y), Point(x / 2, 0.8 * y))
    block = _closed([(0.0, 0.0), (x, 0.0), (x, y), (0.0, y)])
    return LayPart(piece.name, piece.title, piece.number, "piece", block, _RIGHT * (2 * count), grain=grain)


def _carried(grain: tuple[Point, Point] | None, motion: Motion) -> tuple[Point, Point] | None:
    return grain and (motion(grain[0]), motion(grain[1]))


def _bounds(curves: Sequence[Curve]) -> tuple[float, float, float, float]:
    boxes = [curve.bounds() for curve in curves]
    return min(b[0] for b in boxes), min(b[1] for b in boxes), max(b[2] for b in boxes), max(b[3] for b in boxes)


def _symmetric(shape: Any, nap: bool) -> bool:
    """Whether the mirror image of a shape is the same shape, laid the same way up, or, without a nap, turned round."""
    x0, y0, x1, y1 = shape.bounds
    middle = ((x0 + x1) / 2, (y0 + y1) / 2)
    ways = ((-1.0, 1.0),) if nap else ((-1.0, 1.0), (1.0, -1.0))
    others = [affinity.scale(shape, x, y, origin=middle) for x, y in ways]
    return any(shape.symmetric_difference(other).area < _ALIKE * shape.area for other in others)


def _strip(strip: Strip) -> LayPart:
    if strip.square:
        side = strip.square
        block = _closed([(0.0, 0.0), (side, 0.0), (side, side), (0.0, side)])
        return _laid_strip(strip, block, 1, strip.count, False)
    if strip.grain == "bias":
        # All of them side by side on the opened cloth, as one slanting block with its ends along the selvedge.
        _, across = bias_cloth(strip.pieces, strip.cut_length, strip.width)
        deep = strip.pieces * strip.width * ROOT2
        block = _closed([(0.0, 0.0), (across, across), (across, across + deep), (0.0, deep)])
        return _laid_strip(strip, block, 1, strip.pieces, False)
    along, across = strip.cut_length, strip.width
    if strip.grain == "crosswise":
        along, across = across, along
    block = _closed([(0.0, 0.0), (across, 0.0), (across, along), (0.0, along)])
    return _laid_strip(strip, block, strip.pieces, 1, True)


def _laid_strip(strip: Strip, block: tuple[Curve, ...], count: int, gives: int, doubles: bool) -> LayPart:
    return LayPart(strip.name, strip.title, strip.number, "strip", block, _RIGHT * count, gives=gives, doubles=doubles)


def _closed(corners: list[tuple[float, float]]) -> tuple[Curve, ...]:
    points = [Point(x, y) for x, y in corners]
    return tuple(Line(a, b) for a, b in zip(points, [*points[1:], points[0]], strict=True))
