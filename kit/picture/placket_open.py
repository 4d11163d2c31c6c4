"""A slit pulled open into one straight line and bound with a strip, step by step: what cannot be shown on the piece as
it lies flat. The garment lies above, the strip hangs below it."""

from __future__ import annotations

from kit.geometry import Curve, Line, Path, Point, Vector
from kit.lesson.pattern import Pattern
from kit.picture.drawing import Area, Fill, FillRole, Item, Label, Stroke
from kit.picture.place import polyline
from kit.picture.placed import Box
from kit.picture.stitching import row_signs
from kit.piece.piece import Strip
from kit.sewing.scene import StripShape

_CLOTH = 45.0  # mm of the garment that are seen beside the slit
_OVER = 1.0  # mm by which the folded edge covers the stitches
_EDGE = 2.0  # mm from the folded edge to its row
_ROOM = 9.0
_BEHIND = 0.45  # of the second side of the slit, as much as is seen: it is like the first
_BEYOND = 30.0  # mm of the garment above the end of its slit
_FOLDS = ((-0.5, 0.8), (0.0, 1.0), (0.5, 0.8))
"""The small folds in which the cloth lies behind the end of the slit: how far aside and how long, of the allowance."""


def placket_open(strip: Strip, shape: StripShape, pattern: Pattern) -> tuple[list[Item], Box]:
    """What is drawn of a strip on its slit, and the window."""
    made = {"laid": _laid, "covering": _covering, "slant": _slanted}[shape.placket]
    return made(strip, shape, pattern)


def _laid(strip: Strip, shape: StripShape, pattern: Pattern) -> tuple[list[Item], Box]:
    """The strip under the garment, right side to wrong side: level at both ends, in the middle the garment is drawn
    back until its first row lies on the strip's stitch line."""
    half, wide, deep = shape.slit, shape.seam, strip.width
    window = (-half - _ROOM, -_ROOM, half * _BEHIND, max(deep, _CLOTH) + _ROOM)
    top = window[3]
    below = _ring([(-half, 0.0), (half, 0.0), (half, deep), (-half, deep)])
    slit = [(half, 0.0), (0.0, wide), (-half, 0.0)]
    cloth = _ring([(-half, top), (half, top), *slit])
    items = [*_cloth(below, "strip", strip.name), Fill(cloth, "right_side", shape.on)]
    items += [Stroke(polyline([Point(*p) for p in slit]), "edge", name=f"{shape.on} slit")]
    items += [Stroke((Line(Point(x, 0.0), Point(x, top)),), "edge", name=shape.on) for x in (-half, half)]
    for aside, long in _FOLDS:
        foot = Point(aside * wide, wide * (1.5 + abs(aside)))
        items.append(Stroke((Line(foot, foot + Vector(aside * wide, 2.5 * wide * long)),), "symbol", name="folds"))
    items += _row(Point(-half, wide), Point(half, wide), window)
    named = Point(half * 0.06, wide * 0.4), Point(-half * 0.5, top * 0.65)
    return [*items, *_names(strip, shape, pattern, (below, named[0]), (cloth, named[1]))], window


def _covering(strip: Strip, shape: StripShape, pattern: Pattern) -> tuple[list[Item], Box]:
    """The strip pressed away from the garment, folded over to the right side and edgestitched."""
    half, wide = shape.slit, (strip.width - 2 * shape.seam) / 2
    window = (-half - _ROOM, -wide - _ROOM, half * _BEHIND, _CLOTH)
    cloth = _ring([(-half, _CLOTH), (half, _CLOTH), (half, 0.0), (-half, 0.0)])
    made = _ring([(-half, _OVER), (half, _OVER), (half, -wide), (-half, -wide)])
    items = [Fill(cloth, "right_side", shape.on), *_cloth(made, "strip", strip.name)]
    items += [Stroke((Line(Point(x, 0.0), Point(x, _CLOTH)),), "edge", name=shape.on) for x in (-half, half)]
    items += [Stroke((Line(Point(-half, y), Point(half, y)),), "crease", name=strip.name) for y in (_OVER, -wide)]
    items += _row(Point(-half, _OVER - _EDGE), Point(half, _OVER - _EDGE), window)
    for share in (-0.75, -0.3, 0.15):
        foot = Point(half * share, -wide * 0.55)
        items.append(Stroke((Line(foot, foot + Vector(0.0, wide * 1.3)),), "press", arrow="end", name="press over"))
    named = Point(half * 0.3, -wide * 0.7), Point(-half * 0.5, _CLOTH * 0.6)
    return [*items, *_names(strip, shape, pattern, (made, named[0]), (cloth, named[1]))], window


def _slanted(strip: Strip, shape: StripShape, pattern: Pattern) -> tuple[list[Item], Box]:
    """Folded right sides together at the end of the slit, seen from the inside: the row across the strip's fold."""
    long, wide = shape.slit, (strip.width - 2 * shape.seam) / 2
    seen = min(long, 4.0 * wide + _BEYOND)
    low = long - seen
    window = (-_CLOTH, low, wide + 3 * _ROOM, long + _BEYOND + _ROOM)
    cloth = _ring([(-_CLOTH, low), (0.0, low), (0.0, window[3]), (-_CLOTH, window[3])])
    made = _ring([(0.0, low), (wide, low), (wide, long), (0.0, long)])
    items = [Fill(cloth, "wrong_side", shape.on), *_cloth(made, "strip", strip.name)]
    for start, end in (((0.0, long), (0.0, window[3])), ((0.0, long), (wide, long)), ((wide, low), (wide, long))):
        items.append(Stroke((Line(Point(*start), Point(*end)),), "crease", name=strip.name))
    items += _row(Point(0.0, long), Point(wide, long - wide), window)
    named = Point(wide * 0.5, low + seen * 0.3), Point(-_CLOTH * 0.5, low + seen * 0.5)
    return [*items, *_names(strip, shape, pattern, (made, named[0]), (cloth, named[1]))], window


def _ring(corners: list[tuple[float, float]]) -> tuple[Curve, ...]:
    return polyline([Point(x, y) for x, y in (*corners, corners[0])])


def _cloth(ring: tuple[Curve, ...], role: FillRole, name: str) -> list[Item]:
    return [Fill(ring, role, name), Stroke(ring, "edge", closed=True, name=name)]


def _row(start: Point, end: Point, window: Box) -> list[Item]:
    path = Path.line(start, end)
    size = max(window[2] - window[0], window[3] - window[1])
    return [Stroke(path.curves, "row", name="placket"), *row_signs(path, size, window)]


def _names(
    strip: Strip,
    shape: StripShape,
    pattern: Pattern,
    made: tuple[tuple[Curve, ...], Point],
    cloth: tuple[tuple[Curve, ...], Point],
) -> list[Item]:
    titles = (strip.title, made), (pattern.piece(shape.on).title, cloth)
    return [Label(title, at, "name", of=Area(ring, at)) for title, (ring, at) in titles]
