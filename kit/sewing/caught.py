"""Ends of ties, straps and handles that lie between two layers, basted there by an earlier operation, when the seam is
sewn that catches them."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from kit.errors import KitError
from kit.geometry import Path
from kit.sewing import section
from kit.sewing.base import Operation, shown
from kit.sewing.cut import Cut
from kit.sewing.run import Run
from kit.sewing.scene import Scene, Thing
from kit.sewing.spans import path_of, sides_of, spans

_SHOWN = 80.0  # mm of a long tie that are drawn


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


def strips_caught(pattern: Cut, seam: Operation, runs: tuple[Run, ...]) -> tuple[str, ...]:
    """The strips whose ends were basted to the runs before an operation, each once."""
    halves = (replace(run, side=side) for run in runs for side in sides_of(pattern, run))
    found = (name for run in halves for _, name in _ends(pattern, seam, run))
    return tuple(dict.fromkeys(found))


def _ends(pattern: Cut, seam: Operation, run: Run) -> Iterator[tuple[Thing, str]]:
    """The strip ends basted to a run of one half before the seam is sewn, each along its middle line, and the names of
    their strips."""
    piece = pattern.piece(run.piece)
    for record in getattr(pattern, "sewing", ()):
        for made in record.operations:
            if seam in (made, made.entire):
                return
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
