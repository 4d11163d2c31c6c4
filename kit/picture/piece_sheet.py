"""A pattern piece with all that is written on it, at true size: for pattern pages and for the booklet's cut list.

Text keeps its size in mm of paper and is laid where it fits: on the widest free place inside the piece, beside
grainline and marks, turned along the piece and made smaller only where it must.
"""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import replace
from typing import TYPE_CHECKING

from kit.geometry import Curve, Line, Motion, Path, Point, Vector
from kit.lesson.pattern import Pattern
from kit.picture.dart import on_paper
from kit.picture.drawing import Dimension, Dot, Drawing, Item, Label, LabelRole, Stroke
from kit.picture.lettering import text_width, upright
from kit.piece.allowance import NOTCH_LENGTH, cut_line, has_allowances, notch_lines
from kit.piece.dart import darts_lying, intake, mouth
from kit.piece.piece import CutPlan, Mark, Piece
from kit.units import System, show

if TYPE_CHECKING:
    from shapely.geometry.base import BaseGeometry

_TITLE, _TEXT, _SMALL = 8.0, 5.0, 4.0
_LEADING = 1.35
_SCALES = (1.0, 0.8, 0.65, 0.5, 0.4, 0.32)
_CLOTH = {"main": "main cloth", "interfacing": "interfacing", "lining": "lining"}


def piece_drawing(piece: Piece, pattern: Pattern, system: System = "cm") -> Drawing:
    """One pattern piece as it is printed: cut line, stitch line, fold, grainline, notches, marks and text."""
    alt = [f"Pattern piece {piece.number}, {piece.title}: {cut_text(piece.cut)}."]
    edges = []
    for edge in piece.edges:
        if edge.name == piece.fold:
            edges.append(f"{edge.label} on the fold")
        elif edge.allowance is not None:
            edges.append(f"{edge.label} with {show(edge.allowance, system, 'allowance')} allowance")
        else:
            edges.append(edge.label)
    alt.append(f"Edges: {', '.join(edges)}.")
    marks = [mark.label for mark in piece.marks]
    if marks:
        alt.append(f"Marks: {', '.join(marks)}.")
    if piece.darts:
        darts = [f"{dart.label} taking {show(intake(piece, dart), system)}" for dart in darts_lying(piece)]
        alt.append(f"Darts: {', '.join(darts)}.")
    return Drawing(_items(piece, pattern, _booklet_scale(piece)), alt=" ".join(alt), title=piece.title)


def piece_items(piece: Piece, pattern: Pattern, system: System = "cm", at: Point | None = None) -> tuple[Item, ...]:
    """The items of one piece in mm of paper. `at` is where the origin of its draft comes to lie.

    Without all allowances declared the stitch line is drawn alone. Raises `KitError` as `cut_line` does.
    """
    items = _items(piece, pattern, 1.0)
    if at is None or (at.x == 0 and at.y == 0):
        return items
    return moved(items, Motion.translation(at - Point(0.0, 0.0)))


def _booklet_scale(piece: Piece) -> float:
    """How much larger than on paper the text must be to stay readable when the piece fills a booklet picture."""
    x0, y0, x1, y1 = piece.outline.bounds()
    return max(x1 - x0, y1 - y0) * 0.021 / _TEXT


def _items(piece: Piece, pattern: Pattern, letters: float) -> tuple[Item, ...]:
    """All items, with text `letters` times its size on paper."""
    return (*piece_lines(piece, letters), *piece_text(piece, pattern, letters))


def piece_lines(piece: Piece, letters: float = 1.0) -> tuple[Item, ...]:
    """What is drawn of a piece without its block of text; the names of marks are `letters` times their size."""
    items: list[Item] = []
    whole = has_allowances(piece)
    if whole:
        items.extend(_cut(piece))
    for edge in piece.edges:
        if edge.name == piece.fold:
            if not whole:
                items.append(Stroke(edge.path.curves, "fold", name=f"{piece.name}.{edge.name}"))
        elif not whole or edge.allowance:
            items.append(Stroke(edge.path.curves, "stitch", name=f"{piece.name}.{edge.name}"))
    if whole:
        for notch in notch_lines(piece):
            items.extend(Stroke((line,), "notch", name=f"{piece.name}.notch") for line in notch.lines)
    cut = cut_line(piece) if whole and piece.darts else None
    for dart in piece.darts:
        items.extend(on_paper(piece, dart, _SMALL * letters, cut))
    for mark in piece.marks:
        items.extend(_mark(piece, mark, letters))
    if piece.grain is not None:
        items.append(Stroke((Line(piece.grain.start, piece.grain.end),), "grain", arrow="both", name="grainline"))
    if piece.fold:
        items.extend(_fold_sign(piece, letters))
    return tuple(items)


def _cut(piece: Piece) -> Iterable[Item]:
    """The cut line, and along the fold, where nothing is cut, the fold line in its place."""
    curves = cut_line(piece).curves
    name = f"{piece.name}.cut"
    if not piece.fold:
        return [Stroke(curves, "cut", closed=True, name=name)]
    edge = piece.edge(piece.fold).path
    along = Line(edge.start, edge.end)
    on = [_lies_on(curve, edge, along) for curve in curves]
    if not any(on) or all(on):
        return [
            Stroke(curves, "cut", closed=True, name=name),
            Stroke(edge.curves, "fold", name=f"{piece.name}.{piece.fold}"),
        ]
    first = next(i for i in range(len(on)) if on[i - 1] and not on[i])
    order = [*range(first, len(on)), *range(first)]
    return [
        Stroke(tuple(curves[i] for i in order if not on[i]), "cut", name=name),
        Stroke(tuple(curves[i] for i in order if on[i]), "fold", name=f"{piece.name}.{piece.fold}"),
    ]


def _lies_on(curve: Curve, edge: Path, along: Line) -> bool:
    """Whether a part of the cut line lies on the fold `edge` or, where that is straight, on its run into an
    allowance."""
    places = (curve.start, curve.point(0.5), curve.end)
    if edge.is_straight:
        way = (along.end - along.start).unit()
        return all(abs(way.cross(place - along.start)) < 0.05 for place in places)
    return all(edge.distance_to(place) < 0.05 for place in places)


def cut_text(cut: CutPlan) -> str:
    """How a piece is cut, in words: "cut 2 mirrored, main cloth"."""
    how = f"cut {cut.count}"
    if cut.fold:
        how += " on the fold"
    elif cut.mirrored:
        how += " mirrored"
    text = f"{how}, {_CLOTH[cut.cloth]}"
    return f"{text}; interfacing: cut {cut.interfacing}" if cut.interfacing else text


def moved(items: Iterable[Item], motion: Motion) -> tuple[Item, ...]:
    """`items` under a rigid motion; labels turn with it and stay upright, dimensions keep their side."""
    out: list[Item] = []
    for item in items:
        if isinstance(item, Label):
            turned = motion.vector(Vector(math.cos(item.angle), math.sin(item.angle)))
            out.append(replace(item, at=motion(item.at), angle=upright(math.atan2(turned.y, turned.x))))
        elif isinstance(item, Dot):
            out.append(replace(item, at=motion(item.at)))
        elif isinstance(item, Dimension):
            out.append(
                replace(
                    item,
                    start=motion(item.start),
                    end=motion(item.end),
                    offset=-item.offset if motion.flips else item.offset,
                    along=tuple(curve.moved(motion) for curve in item.along),
                )
            )
        else:
            out.append(replace(item, curves=tuple(curve.moved(motion) for curve in item.curves)))
    return tuple(out)


# ---- signs ------------------------------------------------------------------------------------------------


def _fold_sign(piece: Piece, letters: float) -> Iterable[Item]:
    """The bracket whose two arrows point at the fold, and its words."""
    path = piece.edge(piece.fold).path
    sign = 1.0 if piece.outline.area > 0 else -1.0
    length = path.length
    deep = min(12.0 * max(letters, 1.0), length * 0.1)
    a, b = path.at(length * 0.25), path.at(length * 0.75)
    inward_a, inward_b = path.normal_at(length * 0.25) * sign, path.normal_at(length * 0.75) * sign
    p, q = a + inward_a * deep, b + inward_b * deep
    yield Stroke((Line(a, p), Line(p, q), Line(q, b)), "grain", arrow="both", name="place on fold")
    along = q - p
    angle = upright(math.atan2(along.y, along.x))
    size = min(_TEXT * letters, length * 0.06)
    yield Label("place on fold", p.mid(q) + inward_a * (size * 0.9), "small", angle, size)


def _mark(piece: Piece, mark: Mark, letters: float) -> Iterable[Item]:
    name = f"{piece.name}.{mark.name}"
    small = _SMALL * letters
    if mark.path is not None:
        yield Stroke(mark.path.curves, "mark", name=name)
        at, along = mark.path.at(mark.path.length * 0.72), mark.path.tangent_at(mark.path.length * 0.72)
        angle = upright(math.atan2(along.y, along.x))
        up = Vector(-math.sin(angle), math.cos(angle))
        yield Label(mark.label, at + up * (small * 0.8), "small", angle, small)
    if mark.point is not None:
        yield Dot(mark.point, "mark", name)
        middle = piece.outline.label_point()
        side = math.copysign(text_width(mark.label, small) / 2 + small, middle.x - mark.point.x)
        yield Label(mark.label, mark.point + Vector(side, small * 0.8), "small", 0.0, small)
    if mark.kind == "opening" and mark.edge:
        edge = piece.edge(mark.edge)
        width = edge.allowance or 0.0
        sign = 1.0 if piece.outline.area > 0 else -1.0
        for distance in (mark.start, mark.end):
            distance = min(max(distance, 0.0), edge.path.length)
            foot, inward = edge.path.at(distance), edge.path.normal_at(distance) * sign
            yield Stroke((Line(foot - inward * width, foot + inward * NOTCH_LENGTH),), "mark", name=name)
        half = min(max((mark.start + mark.end) / 2, 0.0), edge.path.length)
        at, along = edge.path.at(half), edge.path.tangent_at(half)
        inward = edge.path.normal_at(half) * sign
        yield Label(mark.label, at + inward * (small + 3.0), "small", upright(math.atan2(along.y, along.x)), small)


# ---- the text block ---------------------------------------------------------------------------------------


def piece_text(piece: Piece, pattern: Pattern, letters: float = 1.0) -> Iterable[Label]:
    """The block of text of a piece: number, title, lesson, size, how it is cut, edition."""
    lesson = pattern.lesson
    head = f"{piece.number}  {piece.title}" if piece.number else piece.title
    how, _, more = cut_text(piece.cut).partition("; ")
    edition = f"edition {lesson.edition}" + (f", {lesson.date}" if lesson.date else "")
    tall = [head, lesson.title, f"size {pattern.body.name}", how, *([more] if more else []), edition]
    wide = [head, f"{lesson.title}, size {pattern.body.name}; {edition}", cut_text(piece.cut)]
    line = [f"{head}; {lesson.title}, size {pattern.body.name}; {cut_text(piece.cut)}; {edition}"]
    at, angle, scale, lines = _fit(piece, (tall, wide, line), letters)
    heights = [(_TITLE if i == 0 and len(lines) > 1 else _TEXT) * scale for i in range(len(lines))]
    down = Vector(math.sin(angle), -math.cos(angle))
    offset = -sum(heights) * _LEADING / 2
    for i, (text, size) in enumerate(zip(lines, heights, strict=True)):
        role: LabelRole = "title" if i == 0 and len(lines) > 1 else "small"
        yield Label(text, at + down * (offset + size * _LEADING / 2), role, angle, size)
        offset += size * _LEADING


def _block(lines: list[str]) -> tuple[float, float]:
    """Width and height in mm of a text block at full size."""
    first = _TITLE if len(lines) > 1 else _TEXT
    wide = max(text_width(t, first if i == 0 else _TEXT, i == 0) for i, t in enumerate(lines))
    return wide + 4.0, (first + _TEXT * (len(lines) - 1)) * _LEADING + 4.0


def _fit(piece: Piece, layouts: tuple[list[str], ...], letters: float) -> tuple[Point, float, float, list[str]]:
    """Place, angle, scale and layout of the text: the largest that stays inside and clear of lines."""
    from shapely import affinity, box, prepare, prepared

    clear, spots = _free_room(piece, letters)
    prepare(clear)
    inside = prepared.prep(clear)
    angles = _angles(piece)
    tries = [(step, lines) for step in _SCALES[:4] for lines in layouts[:-1]]
    tries += [(step, lines) for step in _SCALES for lines in layouts]
    for step, lines in tries:
        scale = letters * step
        wide, high = _block(lines)
        shape = box(-wide / 2 * scale, -high / 2 * scale, wide / 2 * scale, high / 2 * scale)
        for spot in spots:
            for angle in angles:
                turned = affinity.affine_transform(
                    shape,
                    [math.cos(angle), -math.sin(angle), math.sin(angle), math.cos(angle), spot.x, spot.y],
                )
                if inside.contains(turned):
                    return spot, angle, scale, lines
    return spots[0], angles[0], letters * _SCALES[-1], layouts[-1]


def _free_room(piece: Piece, letters: float) -> tuple[BaseGeometry, list[Point]]:
    """The stitch-line area without grainline and marks, and places to try in it, widest first."""
    from shapely import LineString, unary_union
    from shapely.geometry import MultiPolygon, Polygon
    from shapely.ops import polylabel

    area = piece.outline.polygon(1.0)
    lines = [mark.path for mark in piece.marks if mark.path is not None]
    lines += [Path.line(dart.apex, end) for dart in darts_lying(piece) for end in mouth(piece, dart)]
    blocked = [LineString([(p.x, p.y) for p in path.points(1.0)]).buffer(3.0 + _SMALL * letters) for path in lines]
    if piece.grain is not None:
        a, b = piece.grain.start, piece.grain.end
        blocked.append(LineString([(a.x, a.y), (b.x, b.y)]).buffer(4.0))
    if piece.fold:
        path: Path = piece.edge(piece.fold).path
        blocked.append(LineString([(p.x, p.y) for p in path.points(1.0)]).buffer(18.0 * max(letters, 1.0)))
    clear = area.difference(unary_union(blocked)) if blocked else area
    parts = list(clear.geoms) if isinstance(clear, MultiPolygon) else [clear]
    parts = sorted((p for p in parts if p.area > 1.0), key=lambda p: -p.area)[:3] or [area]
    spots = [polylabel(part, 2.0) for part in parts if isinstance(part, Polygon)]
    out = [Point(s.x, s.y) for s in spots]
    for edge in piece.edges:
        if edge.path.length > 60.0:
            out.extend(_across(edge.path, parts[0]))
    return clear, out[:24]


def _across(path: Path, area: BaseGeometry) -> Iterable[Point]:
    """Middles of the piece measured square from an edge: places along the spine of a narrow facing."""
    from shapely import LineString

    for share in (0.5, 0.3, 0.7):
        distance = path.length * share
        foot, normal = path.at(distance), path.normal_at(distance)
        a, b = foot - normal * 1000.0, foot + normal * 1000.0
        cut = LineString([(a.x, a.y), (b.x, b.y)]).intersection(area)
        pieces = [g for g in getattr(cut, "geoms", [cut]) if not g.is_empty and g.length > 1.0]
        if pieces:
            near = min(pieces, key=lambda g: g.distance(LineString([(foot.x, foot.y), (foot.x, foot.y + 0.01)])))
            middle = near.interpolate(0.5, normalized=True)
            yield Point(middle.x, middle.y)


def _angles(piece: Piece) -> list[float]:
    """Level, then along the longest edges, then along the grain."""
    out = [0.0]
    for edge in sorted(piece.edges, key=lambda e: -e.path.length)[:2]:
        for share in (0.5, 0.3, 0.7):
            along = edge.path.tangent_at(edge.path.length * share)
            out.append(upright(math.atan2(along.y, along.x)))
    out.append(math.pi / 2)
    return list(dict.fromkeys(round(a, 3) for a in out))
