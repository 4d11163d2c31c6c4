"""A small picture of the garment as it is sewn so far, upright and as it is worn, with the place of the work marked.

Before the first seam there is no garment: then the pieces of the picture are shown as they lie, with a frame round the
part that it shows.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from typing import Any

from kit.errors import KitError
from kit.geometry import Line, Point, Vector
from kit.lesson.pattern import Pattern
from kit.picture.assembled import Assembled, Flat, View, assembled
from kit.picture.chains import Chain, at, drawn, length
from kit.picture.drawing import Dot, Fill, Item, Stroke
from kit.picture.drawn_up import DRAWS_IN
from kit.picture.place import Scaling, is_back, rectangle
from kit.picture.placed import Box, PlacedLayer, box_of
from kit.picture.put_on import outlines_on
from kit.picture.round_seam import round_plan
from kit.sewing.in_the_round import standing
from kit.sewing.run import Run
from kit.sewing.scene import Layer, Scene
from kit.sewing.state import State

SPOT = "place of the work"
"""The name of what marks the place."""
_SAME = 2.0  # mm
_TICK = 0.035  # of the locator's width that a notch reaches on either side of its edge
_KEPT = 2
"""How many patterns are known: a booklet shows one, a try-on that changes values another beside it."""
_Key = tuple[frozenset[Any], frozenset[Any], tuple[Any, ...], View]
_KNOWN: dict[int, tuple[Pattern, dict[_Key, Assembled]]] = {}


def garment_so_far(pattern: Pattern, state: State, view: View) -> Assembled:
    """The garment as `state` has it, put together; worked once for what is joined, folded and drawn up by then. What
    else the state tells (a hem that is sewn) moves no piece, and is read from the state that was given."""
    known = _KNOWN.get(id(pattern))
    if known is None:  # a pattern is held here, so that its id stays its own
        while len(_KNOWN) >= _KEPT:
            _KNOWN.pop(next(iter(_KNOWN)), None)
        known = _KNOWN[id(pattern)] = (pattern, {})
    folds = frozenset(fact for fact in state.facts if fact[0] in ("dart", "pleat", "tuck", *DRAWS_IN))
    wanted = (state.seams, folds, state.hung, view)
    if wanted not in known[1]:
        known[1][wanted] = assembled(pattern, view, state)
    return replace(known[1][wanted], state=state)


def locator_items(
    scene: Scene, pattern: Pattern, placed: list[PlacedLayer], frame: Box, window: Box, whole: Box
) -> list[Item]:
    """What stands in the `frame` beside a picture that shows the `window` of all the cloth in it."""
    round_one = standing(pattern, scene.sewn, scene.focus) if scene.sewn is not None and scene.focus is not None else ()
    if round_one and scene.focus is not None:
        return _as_it_stands(round_one, pattern, scene.focus, frame)
    found = _in_garment(scene, pattern)
    if found is None:
        return _as_laid(placed, frame, window, whole)
    garment, places = found
    box = garment.box()
    small = _fitted(box, frame)
    items: list[Item] = []
    for flat in garment.flats:
        for name, ring in outlines_on(flat, garment):
            curves = small.curves(drawn(ring, True))
            items += [Fill(curves, "paper"), Stroke(curves, "kept", closed=True, name=f"locator {name}")]
    for place in places:
        items.append(Stroke(small.curves(drawn(place)), "press", name=SPOT))
    tick = (frame[2] - frame[0]) * _TICK
    for flat in garment.flats:
        for foot, way, name in _notched(scene, flat) if flat.near else ():
            there = small.point(foot)
            items.append(Stroke((Line(there - way * tick, there + way * tick),), "notch", name=name))
    middle = at(places[0], length(places[0]) / 2)[0]
    items.append(Dot(small.point(middle), "new", SPOT))
    return items


def _as_it_stands(layers: tuple[Layer, ...], pattern: Pattern, run: Run, frame: Box) -> list[Item]:
    """Rings as they are worn, small, and the place of the work on them."""
    outlines, place = round_plan(layers, pattern, run)
    small = _fitted(box_of(tuple(curve for _, curves in outlines for curve in curves)), frame)
    items: list[Item] = []
    for name, curves in outlines:
        own = small.curves(curves)
        items += [Fill(own, "paper"), Stroke(own, "kept", closed=True, name=f"locator {name}")]
    if place:
        items.append(Stroke(small.curves(place), "press", name=SPOT))
        middle = place[len(place) // 2]
        spot = middle.start.mid(middle.end) if len(place) == 1 else middle.start
        items.append(Dot(small.point(spot), "new", SPOT))
    return items


def _in_garment(scene: Scene, pattern: Pattern) -> tuple[Assembled, list[Chain]] | None:
    """The garment so far and the lines of the work on it; None before anything of it is joined."""
    run, state = scene.focus, scene.sewn
    if run is None or state is None:
        return None
    for piece, edges, side in _places(run, pattern, state):
        own = pattern.piece(piece)
        if not any(key[0] == piece for seam in state.seams for key in seam):
            continue
        there = Run(piece, edges, side, run.start, run.end) if piece == run.piece else Run(piece, edges, side)
        views: tuple[View, View] = ("back", "front") if is_back(own) else ("front", "back")
        for view in views:
            try:
                garment = garment_so_far(pattern, state, view)
                flats = [flat for flat in garment.of(piece) if flat.near and (side is None or side in flat.sides)]
                chains = [chain for flat in flats for chain in flat.run(pattern, there) if length(chain) > _SAME]
            except KitError:
                continue
            if chains and _joined(garment, flats[0], state):
                return garment, chains
    return None


def _notched(scene: Scene, flat: Flat) -> Iterator[tuple[Point, Vector, str]]:
    """Where the notches of this step's edges lie on a piece, and the way across its edge there."""
    edges = {(run.piece, edge) for layer in scene.layers for run in (layer.run, layer.on) if run for edge in run.edges}
    for notch in flat.piece.notches:
        if (flat.piece.name, notch.edge) not in edges:
            continue
        path = flat.piece.edge(notch.edge).path
        for side in flat.sides:
            chain = flat.edge(notch.edge, side)
            foot, along = at(chain, notch.distance / max(path.length, 1e-6) * length(chain))
            yield foot, along.left(), f"locator notch {flat.piece.name}.{notch.edge}"


def _places(run: Run, pattern: Pattern, state: State) -> Iterator[tuple[str, tuple[str, ...], Any]]:
    """(piece, edges, half) where a run lies: its own, then what its edges are sewn to, which it lies inside of."""
    yield run.piece, run.edges, run.side
    keys = {(run.piece, side, edge) for edge in run.edges for side in ((run.side,) if run.side else ("right", "left"))}
    for seam in sorted(state.seams, key=sorted):
        if seam & keys:
            for other in sorted(seam - keys):
                yield other[0], (other[2],), other[1]


def _joined(garment: Assembled, flat: Flat, state: State) -> bool:
    """Whether what lies there hangs together with something else of the garment."""
    names = {each.piece.name for each in garment.flats}
    mine = flat.piece.name
    return any(
        {key[0] for key in seam} & (names - {mine}) and any(key[0] == mine for key in seam) for seam in state.seams
    )


def _fitted(box: Box, frame: Box) -> Scaling:
    wide, high = max(box[2] - box[0], 1.0), max(box[3] - box[1], 1.0)
    scale = min((frame[2] - frame[0]) * 0.94 / wide, (frame[3] - frame[1]) * 0.94 / high)
    centre = Point((frame[0] + frame[2]) / 2, (frame[1] + frame[3]) / 2)
    return Scaling(scale, centre - Vector((box[0] + box[2]) / 2, (box[1] + box[3]) / 2) * scale)


def _as_laid(placed: list[PlacedLayer], frame: Box, window: Box, whole: Box) -> list[Item]:
    """All layers small, with a frame around the part the picture shows."""
    small = _fitted(whole, frame)
    items: list[Item] = []
    for p in placed:
        curves = small.curves(p.outline)
        items += [Fill(curves, "paper"), Stroke(curves, "kept", closed=True, name=f"locator {p.piece.name}")]
        for notch in p.piece.notches:
            if any(run is not None and notch.edge in run.edges for run in (p.layer.run, p.layer.on)):
                path = p.piece.edge(notch.edge).path
                foot, way = path.at(notch.distance), path.normal_at(min(notch.distance, path.length)) * 0.5
                a, b = (small.point(p.point(foot + way * sign, p.side)) for sign in (1.0, -1.0))
                half = (b - a).unit() * ((frame[2] - frame[0]) * _TICK)
                tick = Line(a.mid(b) - half, a.mid(b) + half)
                items.append(Stroke((tick,), "notch", name=f"locator notch {p.piece.name}.{notch.edge}"))
    low, far = small.point(Point(window[0], window[1])), small.point(Point(window[2], window[3]))
    x0, y0, x1, y1 = max(low.x, frame[0]), max(low.y, frame[1]), min(far.x, frame[2]), min(far.y, frame[3])
    items.append(Stroke(rectangle(x0, y0, x1, y1), "press", closed=True, name=SPOT))
    return items
