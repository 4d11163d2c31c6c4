"""Sewing pictures: the real pieces, laid as the scene says, with the rows of stitching and what is turned.

Every layer is moved rigidly, never bent: `together` lays a piece on another so that the two runs coincide, `open`
lays it beside the seam, `flat` leaves it in its draft place. Each layer above another is slid a little towards
the inside so that both edges show. A picture of one run is cropped around it and carries a small plan of the
whole; the cross-section of the seam stands in the corner above it.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

from kit.geometry import Curve, Line, Point, Vector
from kit.language import say
from kit.lesson.pattern import Pattern
from kit.picture.drawing import Area, Drawing, Fill, FillRole, Item, Label, Stroke
from kit.picture.inset import panel
from kit.picture.laid import (
    Box,
    Placed,
    along_line,
    area_of,
    box_of,
    find,
    half_motion,
    place_all,
    slide,
    straightest,
    windows,
)
from kit.picture.layer_names import half_said, layer_names
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

    names = layer_names(placed, window)
    locate = scene.focus is not None and placed and area_of(window) < 0.6 * area_of(whole)
    extra, bounds = panel(scene.section, placed if locate else [], window, whole)
    drawing = Drawing((*items, *extra, *names), alt=told, title=title, bounds=bounds, window=window)
    return lambda fit: drawing


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
    far = Point(*_middle(outline)) - foot
    named = foot + far.unit() * 12.0 if far.length > 12.0 else foot
    return [
        Fill(outline, "strip", strip.name),
        Stroke(outline, "edge", closed=True, name=strip.name),
        *([] if new else _bars(strip, foot, motion.vector(path.tangent_at(middle)))),
        Label(strip.title, foot, "name", of=Area(outline, named)),
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
        parts.append(say("picture.scene_layer", piece=half_said(p), face=face, lies=lies))
    text = [say("picture.scene_layers", layers=strung(parts, "parted"))] if parts else []
    new = [_run_said(row.run, pattern) for row in scene.rows if row.ink == "new"]
    if new:
        text.append(say("picture.scene_rows", runs=strung(new)))
    if scene.strip:
        text.append(say("picture.scene_strip", strip=pattern.strip(scene.strip).title))
    return " ".join(text) or say("picture.scene_empty")


def _run_said(run: Run, pattern: Pattern) -> str:
    piece = pattern.piece(run.piece)
    edges = listed([edge_label(piece.edge(name)) for name in run.edges])
    side = run.side if run.side and len(piece.sides) == 2 else "both"
    return say("picture.scene_run", piece=title_said(piece.title), side=side, edges=edges)
