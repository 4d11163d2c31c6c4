"""An allowance folded in along a part of an edge: what is left of the layer's outline, and what lies over its cloth."""

from __future__ import annotations

from typing import Any

from kit.geometry import Curve, Point
from kit.picture.place import fold_mirror, polyline
from kit.piece.piece import Piece

_BEYOND = 100.0  # mm, more than any allowance that is crossed


def folded_along(
    piece: Piece,
    outline: tuple[Curve, ...],
    edge: str,
    part: tuple[float, float],
    depth: float,
    width: float,
    mirrored: bool,
) -> tuple[tuple[Curve, ...], list[tuple[Curve, ...]]]:
    """A closed outline whose allowance, `width` wide, is folded in along a part of an edge, or of its mirror image at
    the fold: the outline without it, and what lies `depth` over the cloth. Lines at most 0.2 mm off the curves."""
    from shapely.geometry import LineString, Polygon

    path = piece.edge(edge).path.between(*part)
    into = 1.0 if piece.outline.contains(path.at(path.length / 2) + path.normal_at(path.length / 2) * 2.0) else -1.0
    points = [q for curve in path.curves for q in list(curve.points(0.2))]
    # Where the part reaches the end of its edge the line runs on straight, over the allowance of the next edge.
    if part[0] < 0.5:
        points.insert(0, path.start - path.start_tangent * _BEYOND)
    if part[1] > piece.edge(edge).path.length - 0.5:
        points.append(path.end + path.end_tangent * _BEYOND)
    if mirrored:
        points, into = [fold_mirror(piece)(q) for q in points], -into
    stitched = LineString([(q.x, q.y) for q in points])

    def beside(wide: float) -> Any:
        # a buffer of one side, on the left where it is wide; the normal of a path points to the left as it runs
        return stitched.buffer(wide * into, single_sided=True, cap_style="flat", join_style="mitre")

    cloth = Polygon([(q.x, q.y) for curve in outline for q in list(curve.points(0.2))[:-1]]).buffer(0)
    over = beside(depth).intersection(cloth) if depth > 0 else Polygon()
    kept = cloth.difference(beside(-(width + 1.0)))
    largest = max(getattr(kept, "geoms", [kept]), key=lambda each: each.area)
    flaps = [each for each in getattr(over, "geoms", [over]) if each.geom_type == "Polygon" and each.area > 1.0]
    return _ring(largest), [_ring(each) for each in flaps]


def _ring(shape: Any) -> tuple[Curve, ...]:
    return polyline([Point(x, y) for x, y in shape.exterior.coords])
