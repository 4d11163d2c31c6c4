"""Sewing pictures: the real pieces, laid as the scene says, with the rows of stitching and what is turned.

Every layer is moved rigidly, never bent: `together` lays a piece on another so that the two runs coincide, `open`
lays it beside the seam, `flat` leaves it in its draft place. Each layer above another is slid a little towards
the inside so that both edges show. A picture of one run is cropped around it and carries a small plan of the
whole; the cross-section of the seam stands in the corner above it.
"""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import replace
from typing import Any

from kit.geometry import Curve, Line, Point, Vector
from kit.language import say
from kit.lesson.pattern import Pattern
from kit.picture.drawing import Dot, Drawing, Fill, FillRole, Item, Label, Stroke
from kit.picture.inset import panel
from kit.picture.laid import (
    Box,
    Placed,
    along_line,
    area_of,
    box_of,
    find,
    grown,
    half_motion,
    place_all,
    slide,
    straightest,
    windows,
)
from kit.picture.lettering import overlap, text_box, text_width
from kit.picture.place import is_facing, slant_of, strip_outline, widths_of
from kit.picture.recut import recut_drawing
from kit.picture.sewn_on import pin_items, thing_items
from kit.picture.stitching import row_items
from kit.picture.strip_alone import strip_alone
from kit.piece.piece import Strip
from kit.sewing.run import Run
from kit.sewing.scene import Face, Scene, StripShape, Thing
from kit.sewing.spans import path_of
from kit.units import System
from kit.wording.lists import listed, strung
from kit.wording.names import edge_label, title_said

_FILLS: dict[tuple[str, str], FillRole] = {
    ("main", "right"): "right_side",
    ("main", "wrong"): "wrong_side",
    ("facing", "right"): "facing",
    ("facing", "wrong"): "wrong_side",
    ("interfacing", "right"): "interfacing",
    ("interfacing", "wrong"): "interfacing",
    ("lining", "right"): "lining",
    ("lining", "wrong"): "lining",
    ("strip", "right"): "strip",
    ("strip", "wrong"): "strip",
}
Lettered = Callable[[tuple[float, float]], Drawing]
"""A picture whose names wait for the width and height in CSS px it will be shown in."""

_OTHER: dict[Face, Face] = {"right": "wrong", "wrong": "right"}


def scene_drawing(
    scene: Scene,
    pattern: Pattern,
    system: System = "cm",
    title: str = "",
    alt: str = "",
    fit: tuple[float, float] = (640.0, 1e6),
) -> Drawing:
    """The picture of one scene. `alt` is the alternative text (without it, one is made from the layers); `fit`
    the width and height in CSS px it will be shown in, for which its names are lettered."""
    return staged(scene, pattern, system, title, alt)(fit)


def staged(scene: Scene, pattern: Pattern, system: System = "cm", title: str = "", alt: str = "") -> Lettered:
    """`scene_drawing` in two steps: everything but the names, which the function returned letters for a `fit`."""
    if scene.recut is not None:
        there = pattern.piece(scene.recut.now.name).title
        recut = recut_drawing(scene.recut, system, sewn=scene.resewn, title=there)
        recut = replace(recut, alt=alt or recut.alt, title=title or recut.title)
        return lambda fit: recut
    placed = place_all(scene, pattern)
    paths = {id(p): path_of(pattern, p.layer.run) for p in placed}
    window, whole = windows(scene, pattern, placed)
    extent = max(window[2] - window[0], window[3] - window[1])
    slide(placed, paths, extent)
    items: list[Item] = []
    for number, p in enumerate(placed):
        items.extend(_layer_items(p, placed[:number], extent))
    if scene.strip:
        extra, window = _strip_items(scene, pattern, placed, window if placed else None)
        items.extend(extra)
        whole = whole if placed else window
    sewn_over = [
        thing for thing in scene.things if thing.kind in ("zip", "zip_tape", "tower")
    ]  # rows show on their tapes
    for thing in sewn_over:
        items.extend(thing_items(thing, placed, pattern))
    for row in scene.rows:
        for run in along_line(row.run, pattern) if row.line is None else (row.run,):
            items.extend(row_items(replace(row, run=run), placed, pattern, extent))
    for thing in scene.things:
        if thing not in sewn_over:
            items.extend(item for each in _as_long(thing, pattern) for item in thing_items(each, placed, pattern))
    for pinned in scene.pins:
        for run in along_line(pinned, pattern):
            items.extend(pin_items(run, placed, pattern, extent, window))
    opened = any(layer.how == "open" for layer in scene.layers)
    for pressed, way in scene.arrows:
        for run in along_line(pressed, pattern):
            run = straightest(run, pattern) if opened else run
            items.extend(_arrow_items(run, way, placed, pattern, extent))
    told = alt or _alt(scene, placed, pattern)

    def lettered(fit: tuple[float, float]) -> Drawing:
        names = _names(placed, window, items, fit)
        shown = _around(window, names)
        drawn, bounds = [*items, *names], shown
        locate = scene.focus is not None and placed and area_of(shown) < 0.6 * area_of(whole)
        if scene.section is not None or locate:
            extra, bounds = panel(scene.section, placed if locate else [], shown, whole)
            drawn.extend(extra)
        return Drawing(tuple(drawn), alt=told, title=title, bounds=bounds)

    return lettered


def _as_long(thing: Thing, pattern: Pattern) -> list[Thing]:
    """A thing as it goes on over the fold, where it lies along the whole of both halves of an edge."""
    runs = along_line(thing.run, pattern)
    alike = {(run.edges, run.start, run.end) for run in runs} == {(thing.run.edges, None, None)}
    return [replace(thing, run=run) for run in runs] if alike else [thing]


# ---- painting ---------------------------------------------------------------------------------------------


def _cloth(p: Placed, face: str) -> FillRole:
    """The fill of a layer's face: a facing that is already interfaced shows its interfacing on the wrong side."""
    stuff: str = p.layer.stuff
    if stuff == "facing" and face == "wrong" and p.piece.cut.interfacing:
        return "interfacing"
    if stuff == "main" and p.piece.cut.cloth != "main":
        stuff = p.piece.cut.cloth
    elif stuff == "main" and is_facing(p.piece):
        stuff = "facing"
    return _FILLS[stuff, face]


def _layer_items(p: Placed, below: list[Placed], extent: float) -> list[Item]:
    layer = p.layer
    items: list[Item] = [
        Fill(p.outline, _cloth(p, layer.up), name=p.piece.name),
        Stroke(p.outline, "edge", closed=True, name=f"{p.piece.name}.{p.side}"),
    ]
    for flap in p.flaps:
        items.append(Fill(flap, _cloth(p, _OTHER[layer.up]), name=f"{p.piece.name}.turned"))
        items.append(Stroke(flap, "edge", closed=True))
    if layer.on is not None and layer.how != "open":
        for under in below:
            items.append(Stroke(under.outline, "hidden", closed=True))
    return items


def _arrow_items(run: Run, way: str, placed: list[Placed], pattern: Pattern, extent: float) -> list[Item]:
    p = find(placed, run, None)
    if p is None:
        return []
    path = path_of(pattern, run)
    inward = p.inward(path)
    motion = half_motion(p, run.side)
    if run.side is not None and motion is not p.motion:
        inward = motion.vector(p.motion.inverse().vector(inward))
    out: list[Item] = []
    for share in (0.3, 0.5, 0.7):
        foot = motion(path.at(path.length * share))
        tip = foot + inward * (extent * (0.09 if way == "in" else -0.09))
        start = foot - inward * (extent * (0.03 if way == "in" else -0.03))
        out.append(Stroke((Line(start, tip),), "press", arrow="end", name=f"press {way}"))
    return out


def _names(placed: list[Placed], window: Box, drawn: list[Item], fit: tuple[float, float]) -> list[Item]:
    """Each layer's name and face where it shows; a narrow layer is named beside, with a line to it.

    Layers lie in the order of `placed`, the last on top, so that what shows of one is its shape less everything that
    comes after it, less its own flaps that are folded over: those show the other face and are named only where
    nothing else of the layer is to be seen."""
    from shapely import LineString, box, unary_union
    from shapely.geometry import Polygon
    from shapely.ops import polylabel

    if not placed:
        return []
    # Type of one size on the page whatever the part shown: `letter` is that size in mm of the cloth.
    letter = 13.0 * max((window[2] - window[0]) * 1.3 / fit[0], (window[3] - window[1]) / fit[1])
    view = box(*grown(window, -letter * 0.8))
    shapes = []
    for p in placed:
        points = [q for c in p.outline for q in c.points(1.0)[:-1]]
        shapes.append(Polygon([(q.x, q.y) for q in points]).buffer(0))
    everything = unary_union(shapes)
    busy = unary_union(
        [
            LineString([(q.x, q.y) for q in c.points(1.0)])
            for item in drawn
            if isinstance(item, Stroke) and item.role in ("row", "old_row", "press", "baste", "hand", "symbol")
            for c in item.curves
        ]
    )
    counts: dict[tuple[str, str], int] = {}
    for p in placed:
        key = (p.piece.name, p.layer.stuff)
        counts[key] = counts.get(key, 0) + 1
    items: list[Item] = []
    taken: list[tuple[float, float, float, float]] = []
    for number, p in enumerate(placed):
        shown = shapes[number].intersection(view)
        turned = [Polygon([(q.x, q.y) for c in flap for q in c.points(1.0)[:-1]]).buffer(0) for flap in p.flaps]
        if turned:
            shown = shown.difference(unary_union(turned))
        if placed[number + 1 :]:
            shown = shown.difference(unary_union(shapes[number + 1 :]))
        face = p.layer.up
        parts = _large(shown, letter)
        if p.layer.fold is not None and not parts:
            face = _OTHER[face]
            parts = _large(unary_union(turned).intersection(view), letter)
        if not parts:
            continue
        widest = max(parts, key=lambda g: g.area)
        spot = polylabel(widest, 1.0)  # the place farthest from its outline, not the centroid, which may lie outside
        title = p.piece.title if counts[p.piece.name, p.layer.stuff] == 1 else _half(p)
        stuff = "interfacing" if p.layer.stuff == "interfacing" else face
        text = say("picture.layer_face", piece=title, face=stuff)
        wide, high = text_width(text, letter) + letter * 0.3, letter * 1.3
        inside = [Point(spot.x, spot.y + high * up) for up in (0.0, 1.2, -1.2, 2.4, -2.4, 3.6, -3.6)]
        frames = [box(*text_box(q.x, q.y, wide, high, 0.0)) for q in inside]
        free = [q for q, f in zip(inside, frames, strict=True) if widest.contains(f) and not busy.intersects(f)]
        if free:
            at = free[0]
            taken.append(text_box(at.x, at.y, wide, high, 0.0))
            items.append(Label(text, at, "name", size=letter))
            continue
        at = _name_aside(spot, (wide, high), letter, widest, everything, view, busy, taken)
        taken.append(text_box(at.x, at.y, wide, high, 0.0))
        foot = Point(spot.x, spot.y)
        items.append(Stroke((Line(at, foot),), "pin", name=f"to {p.piece.name}"))
        items.append(Dot(foot, "mark"))
        items.append(Label(text, at, "name", size=letter))
    return items


def _name_aside(
    spot: Any,
    size: tuple[float, float],
    letter: float,
    shown: Any,
    everything: Any,
    view: Any,
    busy: Any,
    taken: list[Box],
) -> Point:
    """The middle of a name `size` (width, height) large, set beside the layer that it names, on one of three rings
    around `spot`.

    No place is quite free in a close-up, so the cheapest is taken. Costs are areas (mm2 of the cloth) of the name's
    box: outside the picture or over another name weighs most, for there it cannot be read; over rows of stitching, or
    so close to its own layer that it seems to lie on it, as much as the box itself; over plain cloth least, as it is
    legible there; and a longer line to it only tells equal places apart.
    """
    from shapely import Point as Spot
    from shapely import box

    wide, high = size
    places = []
    for reach in (letter * 2.5, letter * 4.5, letter * 7.0):
        for step in range(16):
            angle = step * math.pi / 8
            at = Point(
                spot.x + math.cos(angle) * (reach + wide * 0.5 * abs(math.cos(angle))),
                spot.y + math.sin(angle) * reach,
            )
            area = text_box(at.x, at.y, wide, high, 0.0)
            frame = box(*area)
            cost = reach * letter * 0.05 + frame.intersection(everything).area * 0.3
            cost += (frame.area - frame.intersection(view).area) * 4
            cost += sum(overlap(area, other) for other in taken) * 4
            cost += frame.area if busy.intersects(frame) else 0.0
            if Spot(at.x, at.y).distance(shown) < high:
                cost += frame.area
            places.append((cost, at))
    return min(places, key=lambda place: place[0])[1]


def _large(shape: Any, letter: float) -> list[Any]:
    """The parts of a shape that can hold a name or the foot of its line."""
    return [g for g in getattr(shape, "geoms", [shape]) if g.geom_type == "Polygon" and g.area > letter**2 / 4]


def _around(window: Box, names: list[Item]) -> Box:
    """The window, wider where a name needs it: a tall narrow picture has no room for one inside."""
    left, right = window[0], window[2]
    for item in names:
        if isinstance(item, Label):
            half = text_width(item.text, item.size) / 2 + item.size * 0.3
            left, right = min(left, item.at.x - half), max(right, item.at.x + half)
    return (left, window[1], right, window[3])


# ---- strips --------------------------------------------------------------------------


def _strip_items(scene: Scene, pattern: Pattern, placed: list[Placed], window: Box | None) -> tuple[list[Item], Box]:
    """The strip itself: laid at the focus, or on its own when no piece is shown."""
    if window is not None:
        return _strip_at(scene, pattern, placed), window
    return strip_alone(pattern.strip(scene.strip), scene.shape or StripShape())


def _strip_at(scene: Scene, pattern: Pattern, placed: list[Placed]) -> list[Item]:
    """The made strip where it is attached: lapped over the edge and pointing outwards, caught in the edge and lying
    inwards, or (as a loop) along the seam."""
    strip = pattern.strip(scene.strip)
    if scene.focus is None:
        return []
    p = find(placed, scene.focus, None)
    if p is None:
        return []
    # How it lies follows from the new row: none, a loop along the seam, held at its two ends; a row inside the cloth
    # (inset above 0), a tie lapped over the edge and sewn down; a row on the edge itself, a tie caught in the seam.
    motion = half_motion(p, scene.focus.side)
    path = path_of(pattern, scene.focus)
    middle = path.length / 2
    inward = p.inward(path)
    if motion is not p.motion:
        inward = motion.vector(p.motion.inverse().vector(inward))
    foot = motion(path.at(middle))
    new = [row.inset for row in scene.rows if row.ink == "new"]
    slant = slant_of(strip, pattern)
    if not new:
        along = motion.vector(path.tangent_at(middle))
        outline = strip_outline(strip, foot - along * (strip.finished_length / 2), along, True)
    elif new[0] > 0:
        outline = strip_outline(strip, foot + inward * (2 * new[0]), inward * -1.0, True, slant)
    else:
        width = widths_of(p.piece)[scene.focus.edges[0]]
        outline = strip_outline(strip, foot - inward * width, inward, True, slant)
    name = Point(*_middle(outline))
    return [
        Fill(outline, "strip", strip.name),
        Stroke(outline, "edge", closed=True, name=strip.name),
        *([] if new else _bars(strip, foot, motion.vector(path.tangent_at(middle)))),
        *([Label(strip.title, foot - inward * 45.0, "name")] if new and new[0] > 0 else []),
        *([Label(strip.title, foot + inward * 45.0, "name")] if new and new[0] <= 0 else []),
        *([Label(strip.title, name + inward * (strip.finished_width * 0.5 + 22.0), "name")] if not new else []),
    ]


def _bars(strip: Strip, foot: Point, along: Vector) -> list[Item]:
    """The two rows that hold a loop, near its ends."""
    across = along.left() * (strip.finished_width / 2)
    out: list[Item] = []
    for way in (-1.0, 1.0):
        at = foot + along * (way * (strip.finished_length / 2 - 2.0))
        out.append(Stroke((Line(at - across, at + across),), "row"))
    return out


def _middle(curves: tuple[Curve, ...]) -> tuple[float, float]:
    x0, y0, x1, y1 = box_of(curves)
    return (x0 + x1) / 2, (y0 + y1) / 2


def _alt(scene: Scene, placed: list[Placed], pattern: Pattern) -> str:
    parts = []
    for p in placed:
        lies = say(f"picture.lies_{p.layer.how if p.layer.on is not None else 'flat'}")
        face = "interfacing" if p.layer.stuff == "interfacing" else p.layer.up
        parts.append(say("picture.scene_layer", piece=_half(p), face=face, lies=lies))
    text = [say("picture.scene_layers", layers=strung(parts, "parted"))] if parts else []
    new = [_run_said(row.run, pattern) for row in scene.rows if row.ink == "new"]
    if new:
        text.append(say("picture.scene_rows", runs=strung(new)))
    if scene.strip:
        text.append(say("picture.scene_strip", strip=pattern.strip(scene.strip).title))
    return " ".join(text) or say("picture.scene_empty")


def _half(p: Placed) -> str:
    """A layer's piece and which half of it lies there, where it has two."""
    return say("picture.half", piece=p.piece.title, side=p.side if len(p.piece.sides) == 2 else "both")


def _run_said(run: Run, pattern: Pattern) -> str:
    piece = pattern.piece(run.piece)
    edges = listed([edge_label(piece.edge(name)) for name in run.edges])
    side = run.side if run.side and len(piece.sides) == 2 else "both"
    return say("picture.scene_run", piece=title_said(piece.title), side=side, edges=edges)
