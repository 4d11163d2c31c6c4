"""Signs that one of serves all sizes laid over one another: grainlines, and the lines a piece is lengthened at."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import replace
from typing import Any

import shapely
from shapely.ops import polylabel

from kit.geometry import Line, Motion, Point
from kit.lesson.lengthen_lines import height_of, lengthen_lines, level_lines
from kit.lesson.pattern import Pattern
from kit.picture.drawing import Item, Stroke
from kit.piece.piece import Piece

_LEVELLED = 25.0  # mm that a lengthen line may be moved to lie where other sizes have it


def one_level(
    pieces: Sequence[Piece | None], motions: Sequence[Motion], patterns: Sequence[Pattern]
) -> tuple[Piece | None, ...]:
    """The pieces with their lengthen lines at the height that the middle size has them at, where those of all sizes lie
    close together: one line serves all of them then, as it does a stack of patterns cut through at once. Any height
    between the same two levels will do (`kit.lesson.lengthen_lines`)."""
    lines = [
        () if piece is None else lengthen_lines(piece, pattern.pieces)
        for piece, pattern in zip(pieces, patterns, strict=True)
    ]
    keys = [tuple((line.upper, line.lower) for line in own) for own, piece in zip(lines, pieces, strict=True) if piece]
    if not keys[0] or any(each != keys[0] for each in keys) or len(set(keys[0])) < len(keys[0]):
        return tuple(pieces)
    has = [at for at, piece in enumerate(pieces) if piece is not None]
    middle = has[len(has) // 2]
    moved_lines = [list(own) for own in lines]
    for number in range(len(keys[0])):
        home = motions[middle](lines[middle][number].path.start)
        for at in has:
            piece, line = pieces[at], lines[at][number]
            assert piece is not None
            height = height_of(piece, motions[at].inverse()(home))
            own = level_lines(piece, height)
            if len(own) != 1 or abs(height - height_of(piece, line.path.start)) > _LEVELLED:
                break
            moved_lines[at][number] = replace(line, path=own[0])
        else:
            continue
        for at in has:
            moved_lines[at][number] = lines[at][number]
    return tuple(
        None if piece is None else replace(piece, lengthen=tuple(own))
        for piece, own in zip(pieces, moved_lines, strict=True)
    )


def one_grain(drawings: Sequence[tuple[Item, ...]], inside: Any) -> list[tuple[Item, ...]]:
    """Grainlines and fold brackets differ from size to size only in where they stand: where they run the same way in
    all, one serves all. It lies in every size; a grainline for which there is none is drawn anew across the paper
    that all have."""
    has = [_signs(drawing) for drawing in drawings if drawing]
    fitting: dict[str, Stroke] = {}
    near = inside.buffer(0.1)
    shapely.prepare(near)
    for name in dict.fromkeys(name for signs in has for name in signs):
        signs = [each[name] for each in has if name in each]
        if any(abs(math.remainder(_way(other) - _way(signs[0]), math.pi)) > 1e-3 for other in signs):
            continue
        # The first size's own grainline that lies within every size serves all; else one is drawn anew.
        for sign in signs:
            line = shapely.LineString([(p.x, p.y) for curve in sign.curves for p in curve.points(0.5)])
            if near.covers(line):
                fitting[name] = sign
                break
        else:
            across = _across(inside, signs[0]) if len(signs[0].curves) == 1 else None
            if across is not None:
                fitting[name] = replace(signs[0], curves=(across,))
    return [
        tuple(fitting.get(item.name, item) if isinstance(item, Stroke) and _sign(item) else item for item in drawing)
        for drawing in drawings
    ]


def _across(inside: Any, sign: Stroke) -> Line | None:
    """A line the way of `sign` through the middle of the widest place of `inside`, as long as there is room for."""
    area = max(getattr(inside, "geoms", [inside]), key=lambda part: part.area)
    if area.is_empty or area.geom_type != "Polygon":
        return None
    middle = polylabel(area, 2.0)
    way = _way(sign)
    far = sign.curves[0].length
    cos, sin = math.cos(way), math.sin(way)
    ray = shapely.LineString(
        [(middle.x - far * cos, middle.y - far * sin), (middle.x + far * cos, middle.y + far * sin)]
    )
    met = ray.intersection(area.buffer(-4.0))
    run = next((part for part in getattr(met, "geoms", [met]) if part.distance(middle) < 1e-6), None)
    if run is None or run.length < 15.0:
        return None
    spots = [run.interpolate(share, normalized=True) for share in (0.08, 0.92)]
    ends = sorted((Point(spot.x, spot.y) for spot in spots), key=lambda point: point.x * cos + point.y * sin)
    return Line(*ends)


def _signs(drawing: Sequence[Item]) -> dict[str, Stroke]:
    return {item.name: item for item in drawing if isinstance(item, Stroke) and _sign(item)}


def _sign(item: Stroke) -> bool:
    return item.role == "grain"


def _way(item: Stroke) -> float:
    way = item.curves[0].end - item.curves[0].start
    return math.atan2(way.y, way.x)
