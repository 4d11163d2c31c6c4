"""Bands in scenes: the garment they hang on comes into the picture, and they lie along its edge as they are sewn.

A band sewn on but not folded yet lies on the garment, edges even; from then on it hangs from the edge, folded along its
middle, wrong side out while its ends are stitched.
"""

from __future__ import annotations

from dataclasses import replace

from kit.errors import KitError
from kit.geometry import Path
from kit.piece.piece import Piece
from kit.sewing.cut import Cut
from kit.sewing.hanging import BandStation, beside_run, placed_on, runs_against, stations
from kit.sewing.lying import Lying
from kit.sewing.outcome import Hung
from kit.sewing.run import Run
from kit.sewing.scene import Along, Face, Layer, Scene
from kit.sewing.spans import path_of, sides_of

_STRAIGHT = 1.0  # mm by which a band's own run may bend
_THING = 14.0  # mm of it on either side of a button
_SHOWN = 55.0  # mm of the garment's edge that are shown at a band's end


def band_layers(pattern: Cut, lying: Lying, hung: tuple[Hung, ...], scene: Scene) -> Scene:
    """The scene with its bands along the garment, and the garment under those that are in it alone."""
    if (curved := _on_curved(pattern, lying, hung, scene)) is not None:
        return curved
    for number, layer in enumerate(scene.layers):
        found = next((each for each in hung if any(run.piece == layer.run.piece for run in each.band)), None)
        if found is None or layer.stuff == "interfacing" or not _straight(pattern, found):
            continue
        if any(each.stuff == "interfacing" for each in scene.layers):
            continue
        line = list(stations(pattern, lying, found))
        if len(pattern.piece(layer.run.piece).sides) > 1:  # a band cut twice: each hangs on its own half
            line = [each for each in line if each.side == layer.run.side]
        if not line:
            continue
        if layer.on is not None:
            return _laid_on(pattern, scene, number, found, line)
        if len(scene.layers) == 1:
            return _hanging(pattern, lying, scene, layer, found, line)
    return scene


def _on_curved(pattern: Cut, lying: Lying, hung: tuple[Hung, ...], scene: Scene) -> Scene | None:
    """A band that bends, or its inner half, in a picture of its own: with the longest of the garment's edges that it
    hangs on beside it. None for any other scene."""
    if len(scene.layers) != 1 or scene.layers[0].stuff == "interfacing":
        return None
    (layer,) = scene.layers
    for found in hung:
        if _straight(pattern, found) or found not in lying.state.hung:
            continue
        band, name = found.band[0], layer.run.piece
        sewn_on = {
            key[0]
            for edge in pattern.piece(name).edges
            for side in pattern.piece(name).sides
            for key in lying.partners((name, side, edge.name))
        }
        if name != band.piece and (band.piece not in sewn_on or name in {run.piece for run in found.to}):
            continue
        inner = name != band.piece
        half = layer.run.side or pattern.piece(name).sides[-1]
        if not inner:
            band = next((run for run in found.band if half in sides_of(pattern, run)), band)
        own = replace(layer.run if inner else band, side=half)
        line = [run for run in found.to if half in sides_of(pattern, run)]
        if not line or (inner and len(own.edges) != 1):
            return None
        if inner and any(key[0] == band.piece for key in lying.partners((name, half, own.edges[0]))):
            return None  # where it is sewn to the outer half no garment hangs
        runs = [replace(run, side=half) for run in line]
        parts = {run: beside_run(pattern, own, tuple(found.to), run) for run in runs}
        bands = {run.piece for each in hung for run in each.band}  # they lie folded, and not as they were cut
        plain = [run for run in runs if run.piece not in bands]
        if scene.things:
            line_of, thing = path_of(pattern, own), scene.things[0].line
            at = line_of.nearest(thing.at(thing.length / 2))
            there = min((_off(parts[run], at) for run in plain), default=0.0)
            plain = [run for run in plain if _off(parts[run], at) < there + 0.5]
        garment = max(plain, key=lambda run: path_of(pattern, run).length, default=None)
        if garment is None or (parts[garment] == own and len(found.to) > 1):
            return None
        part = parts[garment]
        against = runs_against(pattern, lying, own, tuple(found.to), garment)
        focus = scene.focus
        if not scene.things and focus is not None and focus.start is None and focus.edges == part.edges:
            focus = part
        below = Layer(garment, up="wrong" if inner else "right", on=part, how="open", against=against)
        beside = (folded_beside(pattern, lying, hung, below, run) for run in runs if scene.things and run not in plain)
        return replace(scene, layers=(layer, below, *(each for each in beside if each is not None)), focus=focus)
    return None


def _off(part: Run, at: float) -> float:
    """How far a place on the band lies from a part of it, mm."""
    if part.start is None or part.end is None:
        return 0.0
    return max(part.start - at, at - part.end, 0.0)


def folded_beside(pattern: Cut, lying: Lying, hung: tuple[Hung, ...], garment: Layer, run: Run) -> Layer | None:
    """A band that ends under another one, as a button band does at a stand: folded along the edge of the `garment` that
    both hang on. None for anything else that the run is of."""
    for found in hung:
        if run.piece not in {each.piece for each in found.band} or not _straight(pattern, found):
            continue
        line = list(stations(pattern, lying, found))
        if len(pattern.piece(run.piece).sides) > 1:
            line = [each for each in line if each.side == run.side]
        held = [each for each in line if (each.piece, each.side) == (garment.run.piece, garment.run.side)]
        if held:
            layer = Layer(replace(found.band[0], side=run.side), up=garment.up)
            alone = Scene((layer,), inside=garment.up == "wrong")
            return _hanging(pattern, lying, alone, layer, found, line, held[-1]).layers[-1]
    return None


def _straight(pattern: Cut, hung: Hung) -> bool:
    try:
        path = path_of(pattern, hung.band[0])
    except KitError:
        return False
    chord = path.end - path.start
    if chord.length < 1.0:
        return False
    return all(abs(chord.unit().cross(path.at(path.length * s) - path.start)) < _STRAIGHT for s in (0.25, 0.5, 0.75))


def _depth(piece: Piece, own: Path) -> float:
    """mm from a band's run to the edge across from it."""
    way = (own.end - own.start).unit()
    return max(abs(way.cross(edge.path.at(edge.path.length / 2) - own.start)) for edge in piece.edges)


def _allowance(piece: Piece, edge: str) -> float:
    return float(piece.edge(edge).allowance or 0.0)


def _far_edge(piece: Piece, own: Path) -> str:
    way = (own.end - own.start).unit()
    return max(piece.edges, key=lambda e: abs(way.cross(e.path.at(e.path.length / 2) - own.start))).name


def _laid_on(pattern: Cut, scene: Scene, number: int, hung: Hung, line: list[BandStation]) -> Scene:
    """A band laid on the garment, right sides together and edges even."""
    layer = scene.layers[number]
    assert layer.on is not None
    place = placed_on(tuple(line), replace(layer.on, start=None, end=None))
    if place is None:
        return scene
    piece = pattern.piece(layer.run.piece)
    own = path_of(pattern, replace(hung.band[0], start=None, end=None))
    edge, far = hung.band[0].edges[0], _far_edge(piece, own)
    depth = (-_allowance(piece, edge), _depth(piece, own) + _allowance(piece, far))
    free, beyond, raw = _limits(pattern, piece, own, layer.on, line, place, True)
    del free
    along = Along(place[0], place[1], depth, outward=False, beyond=beyond, raw=raw)
    layers = list(scene.layers)
    layers[number] = replace(layer, run=replace(hung.band[0], side=layer.run.side), along=along)
    return replace(scene, layers=tuple(layers))


def _limits(
    pattern: Cut,
    piece: Piece,
    own: Path,
    on: Run,
    line: list[BandStation],
    place: tuple[float, float],
    raw: bool,
) -> tuple[list[str], tuple[float | None, float | None], tuple[bool, bool]]:
    """At the start and the end of a garment's run: whether the garment's edge stops there, how far the band is seen
    beyond it, and whether its end is cut."""
    mine = {(s.piece, s.side, s.edge): s for s in line}
    first, last = mine[on.piece, on.side or "right", on.edges[0]], mine[on.piece, on.side or "right", on.edges[-1]]
    low, high = min(s.start for s in line), max(max(s.start, s.end) for s in line)
    low = min(low, min(s.end for s in line))
    free: list[str] = []
    beyond: list[float | None] = []
    cut: list[bool] = []
    for name, at, station in (("start", place[0], first), ("end", place[1], last)):
        stops = bool(station.free) and (abs(at - low) < 1.0 or abs(at - high) < 1.0)
        if not stops:
            beyond.append(0.0)
            cut.append(False)
            continue
        free.append(name)
        at_start = abs(at - low) < 1.0
        over = at if at_start else own.length - at
        end = _end_edge(piece, own, at_start)
        beyond.append(max(over, 0.0) + (_allowance(piece, end) if raw and end else 0.0))
        cut.append(raw)
    return free, (beyond[0], beyond[1]), (cut[0], cut[1])


def _end_edge(piece: Piece, own: Path, at_start: bool) -> str:
    """The band's edge at one end of its run."""
    here = own.start if at_start else own.end
    far = _far_edge(piece, own)
    middle = own.at(own.length / 2)
    for edge in piece.edges:
        across = edge.name != far and edge.path.at(edge.path.length / 2).distance(middle) > 1.0
        if across and min(edge.path.start.distance(here), edge.path.end.distance(here)) < 0.5:
            return edge.name
    return ""


def _hanging(
    pattern: Cut,
    lying: Lying,
    scene: Scene,
    layer: Layer,
    hung: Hung,
    line: list[BandStation],
    station: BandStation | None = None,
) -> Scene:
    """A band in a picture of its own: the garment beside its end, or where the work is, comes under it; or along the
    `station` that is named."""
    piece = pattern.piece(layer.run.piece)
    own = path_of(pattern, replace(hung.band[0], start=None, end=None))
    at = _where(pattern, scene, own)
    station = station or _at(line, at)
    side = station.side
    on = Run(station.piece, (station.edge,), side)
    place = (station.start, station.end)
    ends_raw = not any(("end_stitched", piece.name) == fact[:2] for fact in lying.state.facts) and not _closed_ends(
        pattern, lying, piece, own
    )
    deep = _depth(piece, own)
    inner = _far_edge(piece, own)
    flat = ends_raw and layer.fold is None and not _is_shut(pattern, lying, piece, inner)  # not folded yet
    free, beyond, raw = _limits(pattern, piece, own, on, line, place, ends_raw and (layer.fold is not None or flat))
    single = flat or bool(lying.partners((piece.name, layer.run.side or piece.sides[-1], inner)))
    middle = 0.0 if single else deep / 2
    low = -_allowance(piece, inner) if layer.fold is not None else 0.0
    high = deep + (_allowance(piece, inner) if flat else 0.0) if single else middle
    along = Along(*place, (low, high), outward=True, middle=middle, beyond=beyond, raw=raw)
    up: Face = "wrong" if layer.fold is not None else layer.up
    if up == "wrong" and layer.fold is None and not single and _is_shut(pattern, lying, piece, inner):
        scene, up = replace(scene, inside=True), "right"  # both faces of a folded band are its right side
    below = Layer(on, up="wrong" if scene.inside else "right")
    whole = replace(hung.band[0], side=layer.run.side)
    above = replace(layer, run=whole, up=up, on=on, how="open", fold=None, along=along)
    size = pattern.piece(station.piece).edge(station.edge).path.length
    focus = on
    if _spots(scene, own):
        reach = [min(max((at - station.start) / (station.end - station.start), 0.0), 1.0) * size]
        for spot in _spots(scene, own):
            if _at(line, spot) is station:
                reach.append(min(max((spot - station.start) / (station.end - station.start), 0.0), 1.0) * size)
        focus = replace(on, start=max(min(reach) - _THING, 0.0), end=min(max(reach) + _THING, size))
    elif size > _SHOWN * 1.5:
        nearer_end = abs(station.end - at) < abs(station.start - at)
        at_end = nearer_end if len(free) != 1 else "end" in free
        focus = replace(on, start=size - _SHOWN, end=size) if at_end else replace(on, start=0.0, end=_SHOWN)
    ends = scene.focus is not None and scene.focus.piece == piece.name and _across(pattern, scene.focus, own)
    return replace(scene, layers=(below, above), focus=focus, cut=scene.focus if ends else None)


def _is_shut(pattern: Cut, lying: Lying, piece: Piece, inner: str) -> bool:
    """Whether a band lies folded right side out by now: turned out, or its inner edge closed."""
    turned = any(("turned_out", piece.name) == fact[:2] for fact in lying.state.facts)
    return turned or not lying.state.raw(piece, piece.sides[-1], inner)


def _closed_ends(pattern: Cut, lying: Lying, piece: Piece, own: Path) -> bool:
    """Whether the band's ends are sewn: to each other, or shut."""
    side = piece.sides[-1]
    ends = [_end_edge(piece, own, at_start) for at_start in (True, False)]
    return all(end and not lying.state.raw(piece, side, end) for end in ends)


def _where(pattern: Cut, scene: Scene, own: Path) -> float:
    """Where along the band the work is, mm: at what is sewn on, at its end, else at the end that comes last."""
    way = (own.end - own.start).unit()
    if spots := _spots(scene, own):
        return spots[0]
    for run in (scene.focus, *(row.run for row in scene.rows)):
        if run is not None and _across(pattern, run, own):
            path = path_of(pattern, run)
            return sum((p - own.start).dot(way) for p in (path.start, path.end)) / 2
    return own.length


def _across(pattern: Cut, run: Run, own: Path) -> bool:
    """Whether a run goes across the band, as its ends do, and not along it."""
    path = path_of(pattern, run)
    return abs((path.end - path.start).dot((own.end - own.start).unit())) < own.length * 0.3


def _spots(scene: Scene, own: Path) -> list[float]:
    """Where along the band the middles of what is sewn on lie, mm."""
    way = (own.end - own.start).unit()
    sewn_on = (thing for thing in scene.things if thing.kind != "caught")
    return [(thing.line.at(thing.line.length / 2) - own.start).dot(way) for thing in sewn_on]


def _at(line: list[BandStation], at: float) -> BandStation:
    """The station that a place along the band lies on, or the nearest; at the ends that with a free end."""

    def off(station: BandStation) -> float:
        low, high = sorted((station.start, station.end))
        return max(low - at, at - high, 0.0)

    return min(line, key=lambda station: (off(station), not station.free))
