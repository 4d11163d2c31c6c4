"""Which piece of a seam lies uppermost as it is pinned and sewn: the gathered one; and the pictures of a seam whose
hollow edge is clipped before it is pinned to a straighter one, as the words tell.

Whether it is told is asked of the pattern, so that a picture never shows what its sentence leaves out.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, replace

from kit.sewing.cut import Cut
from kit.sewing.facts import facts_of
from kit.sewing.handling import CLIPS
from kit.sewing.operation import Operation
from kit.sewing.operations.seams import PlainSeam
from kit.sewing.operations.trimming import clipped, snips, spacing
from kit.sewing.run import Run
from kit.sewing.scene import Scene, Thing
from kit.sewing.spans import path_of
from kit.sewing.state import State

_PLACES = 40
_STEEP = math.cos(math.radians(50.0))


@dataclass(frozen=True)
class ClippedFirst:
    """The run whose allowance is clipped, on the half that is shown, `apart` mm from clip to clip."""

    run: Run
    apart: float

    def alone(self, pattern: Cut) -> Scene:
        """The edge by itself, as it is clipped."""
        return clipped(pattern, self.run, self.apart, held=False)

    def cuts(self, pattern: Cut) -> tuple[Thing, ...]:
        """The clips as they are seen when it is pinned."""
        return tuple(replace(cut, ink="old") for cut in snips(pattern, self.run, self.apart))

    def pinned(self, pattern: Cut, scene: Scene) -> Scene:
        """The scene of two pieces laid together with the clipped one on top, spread along the other."""
        focus = _spreading(pattern, self.run)
        scene = _on_top(scene, self.run)
        layers = (scene.layers[0], replace(scene.layers[1], spread=True))
        return replace(scene, layers=layers, focus=focus, things=scene.things + self.cuts(pattern))


def clipped_first(pattern: Cut, operation: Operation, scenes: tuple[Scene, ...]) -> ClippedFirst | None:
    """What is clipped before the first of an operation's scenes; None where nothing is said of it."""
    hints = getattr(pattern, "hints", None)
    for said in hints(operation) if hints is not None else ():
        if said.key == "handling.curved" and scenes and len(scenes[0].layers) == 2:
            ((hollow,), _) = said.values["hollow"]
            runs = [layer.run for layer in scenes[0].layers if _same(layer.run, hollow)]
            apart = min(max(spacing(pattern, (hollow,), "in"), CLIPS[0]), CLIPS[1])
            return ClippedFirst(runs[0], apart) if runs else None
    return None


def gathers_on_top(pattern: Cut, operation: Operation, state: State, scene: Scene) -> Scene:
    """The two pieces of a plain seam laid together with the gathered one uppermost, as it is sewn: who does not see the
    gathers catches folds across the row (common practice, no source). Where both are gathered it stays as it is."""
    if not isinstance(operation, PlainSeam) or len(scene.layers) != 2:
        return scene
    below, above = (any(map(state.touches, facts_of(pattern, (each.run,), "gathered"))) for each in scene.layers)
    if not below or above:
        return scene
    laid = _on_top(scene, scene.layers[0].run)
    if laid is scene:  # opened out they lie side by side, and what is looked at stays: an opening, say
        return scene
    return replace(laid, focus=laid.layers[1].run)  # its row is told of the upper one


def _spreading(pattern: Cut, run: Run) -> Run:
    """The part of a curve that can be drawn spread along a line: where it is too steep against the whole, near its
    ends, cloth buckles."""
    path = path_of(pattern, run)
    way = (path.end - path.start).unit()
    shares = [n / _PLACES for n in range(_PLACES + 1)]
    level = [share for share in shares if path.tangent_at(path.length * share).dot(way) > _STEEP]
    if not level or (level[0] == 0.0 and level[-1] == 1.0):
        return run
    low = run.start or 0.0
    return replace(run, start=low + level[0] * path.length, end=low + level[-1] * path.length)


def _same(one: Run, two: Run) -> bool:
    return one.piece == two.piece and one.edges == two.edges and (one.side == two.side or two.side is None)


def _on_top(scene: Scene, run: Run) -> Scene:
    """Two pieces laid together with that one uppermost, as it is sewn."""
    below, above = scene.layers
    if run == above.run or above.on != below.run or above.how != "together":
        return scene
    layers = (
        replace(below, run=above.run, stuff=above.stuff),
        replace(above, run=below.run, stuff=below.stuff, on=above.run),
    )
    rows = tuple(
        replace(row, run=below.run) if row.run == above.run and row.gap is None and row.line is None else row
        for row in scene.rows
    )
    return replace(scene, layers=layers, rows=rows)
