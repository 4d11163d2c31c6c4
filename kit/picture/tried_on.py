"""The garment as it is tried on: as sewn so far, from the front and the back, its ties tied where they can be, pinned
where its hem is still to be sewn.

A hem is levelled by measuring up from the floor all round: a line for the floor, and measures of one height. Which edge
that is follows from the state: a hem that is a cut edge still.
"""

from __future__ import annotations

from collections.abc import Iterator

from kit.errors import KitError
from kit.geometry import Line, Point, Vector
from kit.language import say
from kit.lesson.pattern import Pattern
from kit.picture.assembled import Assembled, View
from kit.picture.chains import Chain, at, drawn, length
from kit.picture.drawing import Dot, Drawing, Fill, Item, Label, Stroke
from kit.picture.locator import garment_so_far
from kit.picture.place import slid
from kit.picture.put_on import outlines_on
from kit.picture.tied import loops, ties_behind, ties_over
from kit.sewing.scene import Scene
from kit.sewing.state import State

FLOOR, RISE = "floor", "above the floor"
"""The names of the lines by which a hem is levelled."""
_BETWEEN = 0.12  # white between the two views, of their width
_BELOW = 0.16  # how far the floor is drawn below the hem, of the garment's height
_NAMED = 0.3  # how far the floor goes on for its name, of the width of a view
_PINS = (0.12, 0.5, 0.88)  # where along a hem its pins are


def try_on_drawing(scene: Scene, pattern: Pattern, alt: str = "", title: str = "") -> Drawing:
    """The garment of a scene that is tried on, its `pins` along the edges that are levelled."""
    items: list[Item] = []
    shift = 0.0
    for view in ("front", "back"):
        found = _view(scene, pattern, view)
        if not found:
            continue
        x0, x1 = _reach(found)
        slide = Vector(shift - x0, 0.0)
        items += [slid(item, slide) for item in found]
        shift += (x1 - x0) * (1 + _BETWEEN)
    floors = [item for item in items if isinstance(item, Stroke) and item.name == FLOOR]
    if floors:
        last = floors[-1].curves[-1]
        far = last.end + (last.end - last.start) * _NAMED
        items[items.index(floors[-1])] = Stroke((Line(last.start, far),), "guide", name=FLOOR)
        items.append(Label(say("picture.floor"), last.end + Vector(1.0, 10.0), "small", of=(Line(last.end, far),)))
    return Drawing(tuple(items), alt=alt, title=title)


def _view(scene: Scene, pattern: Pattern, view: View) -> list[Item]:
    try:
        garment = garment_so_far(pattern, scene.sewn or State(), view)
    except KitError:
        return []
    items: list[Item] = [*ties_behind(garment)]
    for flat in garment.flats:
        for number, (name, ring) in enumerate(outlines_on(flat, garment)):
            curves = drawn(ring, True)
            items.append(Fill(curves, "wrong_side" if flat.up == "wrong" and not number else "right_side", name))
            items.append(Stroke(curves, "edge", closed=True, name=f"{name}.{flat.side}"))
    items += ties_over(garment)
    for _, fill, stroke in loops(garment):
        items += [fill, stroke]
    hems = [chain for chain in _open_hems(scene, garment) if length(chain) > 20.0]
    return items + list(_levelled(garment, hems))


def _open_hems(scene: Scene, garment: Assembled) -> Iterator[Chain]:
    """The edges to be pinned of what lies uppermost that are still cut edges, those that run level."""
    pinned = {(run.piece, edge) for run in scene.pins for edge in run.edges}
    for flat in garment.near:
        for edge in flat.piece.edges:
            if (flat.piece.name, edge.name) not in pinned:
                continue
            for side in flat.sides:
                chain = flat.edge(edge.name, side)
                level = abs(chain[-1].x - chain[0].x) > 2 * abs(chain[-1].y - chain[0].y)
                if level and garment.state.raw(flat.piece, side, edge.name):
                    yield chain


def _levelled(garment: Assembled, hems: list[Chain]) -> Iterator[Item]:
    if not hems:
        return
    x0, y0, x1, y1 = garment.box()
    floor = y0 - (y1 - y0) * _BELOW
    yield Stroke((Line(Point(x0, floor), Point(x1, floor)),), "guide", name=FLOOR)
    size = (x1 - x0) * 0.02
    for chain in hems:
        for share in _PINS:
            foot, _ = at(chain, length(chain) * share)
            yield Stroke((Line(foot + Vector(-size, 0.0), foot + Vector(size, 0.0)),), "pin", name="pin")
            yield Dot(foot + Vector(size, 0.0), "mark")
            yield Stroke((Line(Point(foot.x, floor), foot),), "check", arrow="both", name=RISE)


def _reach(items: list[Item]) -> tuple[float, float]:
    boxes = [curve.bounds() for item in items if isinstance(item, Fill | Stroke) for curve in item.curves]
    return min(box[0] for box in boxes), max(box[2] for box in boxes)
