"""Ends of ties, straps and handles that lie between two layers, basted there by an earlier operation: when the seam is
sewn that catches them, and in every later picture of the edge that they come out of; and a collar caught between two
bands, in the pictures after that.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from typing import Any

from kit.errors import KitError
from kit.geometry import Path
from kit.piece.piece import Side
from kit.sewing import section, stretches
from kit.sewing.base import Operation, shown
from kit.sewing.cut import Cut
from kit.sewing.run import Run
from kit.sewing.scene import Layer, Scene, Thing
from kit.sewing.spans import Span, path_of, sides_of, spans
from kit.sewing.state import State

_SHOWN = 80.0  # mm of a long tie that are drawn
_CATCH = ("faced", "end_stitched")
"""The facts that an edge is finished by a seam that is then turned, so that what was caught in it comes out of it."""


def with_caught(pattern: Cut, seam: Operation, scene: Scene) -> Scene:
    """A scene of two layers laid together, with what an earlier operation basted to either of them between the two: its
    outline under the upper layer, and its ply in the section. The same scene where nothing is caught."""
    found = tuple(thing for layer in scene.layers for thing, _ in _ends(pattern, seam, layer.run))
    if not found:
        return scene
    lower, upper = (layer.stuff for layer in scene.layers[:2])
    between = section.caught(lower, upper) if scene.section is not None else None
    return replace(scene, things=scene.things + found, section=between)


def caught_on(pattern: Cut, seam: Operation, runs: tuple[Run, ...]) -> tuple[Thing, ...]:
    """The strip ends that were basted to the runs before an operation, on the half that its pictures show."""
    return tuple(thing for run in runs for thing, _ in _ends(pattern, seam, shown(pattern, run)))


def come_out(pattern: Cut, operation: Operation, scene: Scene) -> Scene:
    """A scene with the strips that an earlier operation basted to the edges of its pieces, where they show: lying on
    the right side of an edge that is raw still, or coming out of one that was sewn and turned since; and with the
    collar that was caught in the upper edge of a band."""
    if scene.sewn is None or scene.strip or any(thing.kind == "caught" for thing in scene.things):
        return scene
    things: list[Thing] = []
    layers, focus = list(scene.layers), scene.focus
    for layer in scene.layers:
        if layer.ring or layer.round is not None or layer.stuff == "interfacing":
            continue
        piece, side = pattern.piece(layer.run.piece), layer.run.side or pattern.piece(layer.run.piece).sides[-1]
        out = _turned_out(operation, scene, layer, pattern)
        for edge in piece.edges:
            run = Run(piece.name, (edge.name,), side)
            for thing, name in _ends(pattern, operation, run):
                strip = pattern.strip(name)
                foot = thing.line.at(edge.allowance or 0.0)
                way = (thing.line.end - thing.line.start).unit()
                long = strip.finished_length or strip.length
                place = Span(piece.name, side, edge.name, *_round(edge.path.nearest(foot), edge.path.length))
                shut = any(done.span.overlap(place) > 0.0 for done in scene.sewn.on(place.key))
                if shut and out and _faces_out(scene.sewn, place, edge.path.length):
                    focus = _at_tie(operation, focus, run, edge.path.nearest(foot), edge.path.length)
                    things.append(Thing("tie", run, Path.line(foot, foot - way * long), thing.width, of=name))
                elif not shut and layer.up == "right" and layer is scene.layers[-1]:
                    things.append(
                        Thing("tie", run, Path.line(thing.line.start, foot + way * long), thing.width, of=name)
                    )
        if out and layer.up == "right":
            layers += _collars(pattern, operation, layer, side)
    return replace(scene, layers=tuple(layers), things=(*things, *scene.things), focus=focus)


def _at_tie(operation: Operation, focus: Run | None, run: Run, at: float, size: float) -> Run | None:
    """What is looked at, moved along a long edge that is sewn in this step to where a tie comes out of it."""
    mine = any(each.piece == run.piece and set(run.edges) & set(each.edges) for each in operation.runs())
    if focus is None or not mine or (focus.piece, focus.edges) != (run.piece, run.edges):
        return focus
    if focus.start is None or focus.end is None or focus.start <= at <= focus.end:
        return focus
    half = (focus.end - focus.start) / 2
    middle = min(max(at, half), size - half)
    return replace(focus, start=middle - half, end=middle + half)


def _round(at: float, size: float) -> tuple[float, float]:
    return max(at - 0.5, 0.0), min(at + 0.5, size)


def _turned_out(operation: Operation, scene: Scene, layer: Layer, pattern: Cut) -> bool:
    """Whether what lies round the edges of a layer is turned to where it stays: its piece is no longer inside out, and
    no other lies on it, right sides together."""
    name = layer.run.piece
    if scene.sewn is not None and name in scene.sewn.inside_out and name not in _turned_now(pattern, operation):
        return False
    laid = (each for each in scene.layers if each.how == "together" and each.stuff != "interfacing")
    return all(each.up == "right" for each in laid if each.on is not None and name in (each.run.piece, each.on.piece))


def _turned_now(pattern: Cut, operation: Operation) -> tuple[str, ...]:
    """The pieces that an operation turns right side out."""
    try:
        return operation.effect(pattern).right_side_out
    except KitError:
        return ()


def _faces_out(state: State, place: Span, size: float) -> bool:
    """Whether an edge was finished there by a seam that is turned, so that its own fold is the garment's edge."""
    if any(state.touches(stretches.of_span(what, place, size)) for what in _CATCH):
        return True
    return not state.across((place,))


def _collars(pattern: Cut, operation: Operation, layer: Layer, side: Side) -> list[Layer]:
    """What was caught between two bands along the upper edge of one of them, standing out of it; of a collar the layer
    that was named first."""
    for made in earlier(pattern, operation):
        catching = getattr(made, "catching", ())
        along = getattr(made, "caught_along", None)
        if not catching or along is None or layer.run.piece not in made.pieces:
            continue
        on = along(pattern, catching[0], layer.run.piece)
        if on is not None:
            caught = replace(catching[0], side=pattern.piece(catching[0].piece).sides[-1])
            return [Layer(caught, up=layer.up, on=replace(on, side=side), how="open")]
    return []


def earlier(pattern: Cut, operation: Operation) -> Iterator[Any]:
    """The operations before one, in order; those that are done in several rows once, whole."""
    for record in getattr(pattern, "sewing", ()):
        for made in record.operations:
            if operation in (made, made.entire):
                return
            if made.begins:
                yield made.entire


def strips_caught(pattern: Cut, seam: Operation, runs: tuple[Run, ...]) -> tuple[str, ...]:
    """The strips whose ends were basted to the runs before an operation, each once."""
    halves = (replace(run, side=side) for run in runs for side in sides_of(pattern, run))
    found = (name for run in halves for _, name in _ends(pattern, seam, run))
    return tuple(dict.fromkeys(found))


def _ends(pattern: Cut, seam: Operation, run: Run) -> Iterator[tuple[Thing, str]]:
    """The strip ends basted to a run of one half before the seam is sewn, each along its middle line, and the names of
    their strips."""
    piece = pattern.piece(run.piece)
    for made in earlier(pattern, seam):
        if getattr(made, "method", "") != "caught" or getattr(made, "to", run).piece != run.piece:
            continue
        try:
            strip, path = pattern.strip(made.name), path_of(pattern, made.to)
            if run.side not in sides_of(pattern, made.to):
                continue
            for at in made.at if isinstance(made.at, tuple) else (made.at,):
                place = min(max(at, 0.0), path.length)
                (edge,) = {span.edge for span in spans(pattern, made.to, max(place - 0.5, 0.0), place + 0.5)}
                if edge not in run.edges:
                    continue
                foot, into = path.at(place), path.normal_at(place)
                if not piece.outline.contains(foot + into * 2.0):
                    into = into * -1.0
                raw = foot - into * (piece.edge(edge).allowance or 0.0)
                long = min(strip.finished_length or strip.length, _SHOWN)
                wide = strip.finished_width or strip.width / 4
                yield Thing("caught", run, Path.line(raw, foot + into * long), wide), strip.name
        except (KitError, ValueError):
            continue  # told by the sewing order, or on the corner of two edges
