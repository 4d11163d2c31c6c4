"""Sewing pictures: the real pieces, laid as the scene says, with the rows of stitching and what is turned.

`together` lays a piece on another so that the two runs coincide, `open` lays it beside the seam, `flat` leaves it in
its draft place. How it has come to lie by then, darts shut, hems turned, a band along its edge, is told in its layer.
Each layer above another is slid a little towards the inside so that both edges show. A picture of one run is cropped
around it and carries a small plan of the whole; the cross-section of the seam stands beside it.
"""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import replace

from kit.geometry import Arc, Curve, Line, Path, Point, Vector, parallel
from kit.language import say
from kit.lesson.pattern import Pattern
from kit.picture.cloth_items import layer_items
from kit.picture.drawing import Area, Drawing, Fill, Item, Label, Stroke
from kit.picture.framing import windows
from kit.picture.inset import NAMES, panel
from kit.picture.laid import along_line, place_all, slide
from kit.picture.layer_names import Over, half_said, hidden_items, layer_names
from kit.picture.locator import locator_items
from kit.picture.place import slant_of, strip_outline, widths_of
from kit.picture.placed import Box, PlacedLayer, area_of, box_of, find
from kit.picture.placket_open import placket_open
from kit.picture.recut import recut_drawing
from kit.picture.round_seam import is_round, round_items
from kit.picture.scene_signs import around, cut_mark, outside, press_items, turned_over
from kit.picture.sewn_on import bound_items, pin_items, thing_items
from kit.picture.stitching import row_items
from kit.picture.strip_alone import strip_alone
from kit.picture.strip_pieced import strip_pieced
from kit.picture.tried_on import try_on_drawing
from kit.piece.piece import Strip
from kit.sewing.run import Run
from kit.sewing.scene import Scene, StripShape, Thing
from kit.sewing.spans import path_of
from kit.units import System
from kit.wording.lists import listed, strung
from kit.wording.names import edge_label, title_said

Lettered = Callable[[tuple[float, float]], Drawing]
"""A picture whose names wait for the width and height in CSS px it will be shown in."""


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
    if scene.worn:
        tried = try_on_drawing(scene, pattern, alt, title)
        return lambda fit: tried
    if is_round(scene):
        return _in_the_round(scene, pattern, title, alt)
    if scene.strip and not scene.layers:
        return _strip_by_itself(scene, pattern, title, alt)
    placed = place_all(scene, pattern)
    paths = {id(p): path_of(pattern, p.layer.run) for p in placed}
    window, whole = windows(scene, pattern, placed)
    extent = max(window[2] - window[0], window[3] - window[1])
    slide(placed, pattern, paths, extent, scene.focus)
    items: list[Item] = []
    for number, p in enumerate(placed):
        covered = any(q.layer.trimmed for q in placed[number + 1 :])
        items.extend(layer_items(p, placed[:number], scene.folds if p is placed[-1] else (), covered))
        items.extend(bound_items(p, pattern))
    items.extend(hidden_items(placed, window))
    over: list[Over] = []
    if scene.strip:
        extra = _strip_at(scene, pattern, placed)
        items.extend(extra)
        over += [("", each.curves) for each in extra if isinstance(each, Fill)]
    sewn_over = [
        thing for thing in scene.things if thing.kind in ("zip", "zip_tape", "tower", "binding", "tie")
    ]  # rows show on their tapes
    for thing in sewn_over:
        drawn = thing_items(thing, placed, pattern)
        items.extend(drawn)
        called = _title(thing.of, pattern) if thing.of else ""
        over += [(called, each.curves) for each in drawn if isinstance(each, Fill)][:1]
    for row in scene.rows:
        for run in along_line(row.run, pattern) if row.line is None else (row.run,):
            items.extend(row_items(replace(row, run=run), placed, pattern, extent, window))
    for thing in scene.things:
        if thing not in sewn_over:
            items.extend(item for each in _as_long(thing, pattern) for item in thing_items(each, placed, pattern))
    for pinned in scene.pins:
        for run in along_line(pinned, pattern):
            items.extend(pin_items(run, placed, pattern, extent, window))
    for pressed, way in scene.arrows:
        for run in along_line(pressed, pattern):
            items.extend(press_items(run, way, placed, pattern, extent, window))
    window = around(window, items)
    items = [item for item in items if not outside(item, window)]
    if scene.section is not None and scene.focus is not None:
        items.extend(cut_mark(scene, placed, pattern, extent, window))
    told = alt or _alt(scene, placed, pattern)

    names = layer_names(placed, window, over)
    locate = scene.focus is not None and placed and area_of(window) < 0.6 * area_of(whole)

    def located(frame: Box) -> list[Item]:
        return locator_items(scene, pattern, placed, frame, window, whole)

    def fitted(fit: tuple[float, float]) -> Drawing:
        added, bounds = _framed(scene, window, located if locate else None, fit)
        return Drawing((*items, *added, *names), alt=told, title=title, bounds=bounds, window=window)

    return fitted


def _framed(
    scene: Scene, window: Box, locator: Callable[[Box], list[Item]] | None, fit: tuple[float, float]
) -> tuple[list[Item], Box]:
    """What stands round the window in a room of `fit` CSS px: below it the sign that the work was turned over, the
    cross-section and the plan; with the bounds of all."""
    if not scene.over:
        return panel(scene.section, locator, window, fit, scene.faces)
    room = None if locator is None else lambda frame: list[Item]()
    framed = window
    high = max(fit[1] - NAMES, 0.5 * fit[1])
    for _ in range(3):  # how large all will be shown tells how high the sign is, and that how large all is shown
        _, (x0, y0, x1, y1) = panel(scene.section, room, framed, fit, scene.faces)
        signs, framed = turned_over(window, max((x1 - x0) / fit[0], (y1 - y0) / high))
    extra, bounds = panel(scene.section, locator, framed, fit, scene.faces)
    return [*signs, *extra], bounds


def _title(name: str, pattern: Pattern) -> str:
    """The title of a strip or a piece."""
    strip = next((strip for strip in pattern.strips if strip.name == name), None)
    return strip.title if strip is not None else pattern.piece(name).title


def _in_the_round(scene: Scene, pattern: Pattern, title: str, alt: str) -> Lettered:
    """The picture of rings as they stand; all of them is seen, so there is no plan beside it."""
    items, placed, window = round_items(scene, pattern)
    told = alt or _alt(scene, placed, pattern)
    names = layer_names(placed, window)

    def fitted(fit: tuple[float, float]) -> Drawing:
        added, bounds = _framed(scene, window, None, fit)
        return Drawing((*items, *added, *names), alt=told, title=title, bounds=bounds, window=window)

    return fitted


def _as_long(thing: Thing, pattern: Pattern) -> list[Thing]:
    """A thing as it goes on over the fold, where it lies along the whole of both halves of an edge."""
    runs = along_line(thing.run, pattern)
    alike = {(run.edges, run.start, run.end) for run in runs} == {(thing.run.edges, None, None)}
    return [replace(thing, run=run) for run in runs] if alike else [thing]


# ---- strips --------------------------------------------------------------------------


def _strip_by_itself(scene: Scene, pattern: Pattern, title: str, alt: str) -> Lettered:
    """The picture of a strip where no piece is shown: as it is cut, and what is made of it."""
    strip, shape = pattern.strip(scene.strip), scene.shape or StripShape()
    told = alt or _alt(scene, [], pattern)

    def drawn(px: float) -> tuple[list[Item], Box]:
        if shape.placket:
            return placket_open(strip, shape, pattern)
        return strip_pieced(strip, shape.pieced) if shape.pieced else strip_alone(strip, shape, px)

    def fitted(fit: tuple[float, float]) -> Drawing:
        wide, high = fit
        fit = (wide, high + NAMES)  # its words stand inside the window
        items, window = drawn(0.0)
        for _ in range(6):  # room for words takes from the cloth's, and then the words want more of it
            _, (x0, y0, x1, y1) = panel(scene.section, None, window, fit, scene.faces)
            items, window = drawn(max((x1 - x0) / wide, (y1 - y0) / high))
        added, bounds = _framed(scene, window, None, fit)
        return Drawing((*items, *added), alt=told, title=title, bounds=bounds, window=window)

    return fitted


def _strip_at(scene: Scene, pattern: Pattern, placed: list[PlacedLayer]) -> list[Item]:
    """The made strip where it is attached: lapped over the edge and pointing outwards, caught in the edge and lying
    inwards, or (as a loop) along the seam."""
    strip = pattern.strip(scene.strip)
    place = next((row.run for row in scene.rows if row.ink == "new" and row.line is None), scene.focus)
    if place is None:
        return []
    p = find(placed, place, None)
    if p is None:
        return []
    # How it lies follows from the new row: none, a loop along the seam, held at its two ends; a box, a tie lapped over
    # the edge and sewn down; a row along the edge, a tie caught in the seam.
    path = path_of(pattern, place)
    lies = p.lay(path, place.side)
    middle = lies.length / 2
    inward = p.inward(path, place.side)
    foot, along = lies.at(middle), lies.tangent_at(middle)
    new = [row.inset for row in scene.rows if row.ink == "new"]
    lapped = any(row.style == "box" for row in scene.rows if row.ink == "new")
    slant = slant_of(strip, pattern)
    if not new:
        outline = strip_outline(strip, foot - along * (strip.finished_length / 2), along, True)
    elif lapped:
        outline = strip_outline(strip, foot + inward * (2 * new[0]), inward * -1.0, True, slant)
    else:
        width = widths_of(p.piece)[place.edges[0]]
        outline = strip_outline(strip, foot - inward * width, inward, True, slant)
    ends = [row.run for row in scene.rows if row.ink == "new"]
    if len(ends) == 2:
        feet = [(each := p.lay(path_of(pattern, run), run.side)).at(each.length / 2) for run in ends]
        lap = 2 * new[0] if lapped else -widths_of(p.piece)[ends[0].edges[0]]
        outline, foot = _arch(strip, feet, inward * (-1.0 if lapped else 1.0), lap), feet[0]
    far = Point(*_middle(outline)) - foot
    named = foot + far.unit() * 12.0 if far.length > 12.0 else foot
    return [
        Fill(outline, "strip", strip.name),
        Stroke(outline, "edge", closed=True, name=strip.name),
        *([] if new else _bars(strip, foot, along)),
        Label(strip.title, foot, "name", of=Area(outline, named)),
    ]


def _arch(strip: Strip, feet: list[Point], way: Vector, lap: float) -> tuple[Curve, ...]:
    """A handle from the one end to the other, a bow that runs the `way` given; its ends reach `lap` mm back over the
    edge, or from outside it where that is below zero."""
    one, two = feet
    back = way * -abs(lap)
    rise, half = way * 30.0, (two - one).length / 2
    middle = one.mid(two) + rise
    angle = (one - middle + rise).angle
    turn = -math.pi if way.cross(two - one) < 0 else math.pi
    bow = Arc(middle, half, angle, turn)
    line = Path((Line(one + back, bow.start), bow, Line(bow.end, two + back)))
    outer, inner = parallel(line, strip.finished_width / 2), parallel(line, -strip.finished_width / 2).reversed()
    return (*outer.curves, Line(outer.end, inner.start), *inner.curves, Line(inner.end, outer.start))


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


def _alt(scene: Scene, placed: list[PlacedLayer], pattern: Pattern) -> str:
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
