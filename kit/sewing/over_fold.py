"""What is done across the fold of a piece, or on both its halves at once, is shown on both."""

from __future__ import annotations

from dataclasses import replace

from kit.piece.piece import Side
from kit.sewing.cut import Cut
from kit.sewing.legs import End
from kit.sewing.operation import Operation
from kit.sewing.run import Run
from kit.sewing.scene import Row, Scene
from kit.sewing.spans import neighbours, path_of, sides_of


def over_folds(pattern: Cut, operation: Operation, scene: Scene) -> Scene:
    """The scene with its rows going on over the fold of a piece where this operation sews both halves at once. Where
    the piece is seen whole, arrows and pins stand on both halves."""
    rows: list[Row] = []
    further: list[Row] = []
    for row in scene.rows:
        end = _at_fold(pattern, row)
        other = _other_half(pattern, operation, row.run) if end else None
        if other is not None and any(_same_place(each, row, other) for each in scene.rows):
            other = None  # the scene has a row of its own there
        rows.append(replace(row, folded=end) if other is not None and end else row)
        if other is not None:
            further.append(replace(row, run=other, goes_on=True))
    through = [
        replace(thing, run=other)
        for thing in scene.things
        if thing.kind in ("elastic", "cord") and (other := _other_half(pattern, operation, thing.run)) is not None
    ]
    scene = replace(scene, rows=(*rows, *further), things=(*scene.things, *through))
    if scene.focus is not None and not any(layer.place is not None for layer in scene.layers):
        return scene
    if any(layer.on is not None and layer.place is None for layer in scene.layers):
        return scene
    arrows = [(other, way) for run, way in scene.arrows if (other := _other_half(pattern, operation, run)) is not None]
    halves = (_other_half(pattern, operation, _on_half(pattern, run)) for run in scene.pins)
    pins = (run for run in halves if run is not None)
    return replace(scene, arrows=(*scene.arrows, *arrows), pins=(*scene.pins, *pins))


def _same_place(each: Row, row: Row, other: Run) -> bool:
    """Whether a row lies on the other half as `row` does on its own."""
    there = (each.run.piece, set(each.run.edges), each.inset)
    return there == (row.run.piece, set(row.run.edges), row.inset) and each.run.side in (other.side, None)


def _at_fold(pattern: Cut, row: Row) -> End | None:
    """The end of a plain row that lies on the fold of its piece."""
    piece = pattern.piece(row.run.piece)
    if row.line is not None or row.gap is not None or row.style == "box" or not piece.fold:
        return None
    if piece.fold not in neighbours(piece, row.run.edges):
        return None
    path, fold = path_of(pattern, row.run), piece.edge(piece.fold).path
    return "start" if fold.distance_to(path.start) < fold.distance_to(path.end) else "end"


def _on_half(pattern: Cut, run: Run) -> Run:
    """The run on the half that a picture shows first."""
    return run if run.side is not None else replace(run, side=sides_of(pattern, run)[-1])


def _other_half(pattern: Cut, operation: Operation, run: Run) -> Run | None:
    """The run on the other half of its piece on the fold, where the operation takes whole edges on both."""
    piece = pattern.piece(run.piece)
    if not piece.fold or run.side is None or run.chain is not None or run.start is not None or run.end is not None:
        return None
    same = [
        each
        for each in operation.runs()
        if each.piece == run.piece and set(run.edges) <= set(each.edges) and each.start is None and each.end is None
    ]
    if {side for each in same for side in sides_of(pattern, each)} != set(piece.sides):
        return None
    other: Side = "left" if run.side == "right" else "right"
    return replace(run, side=other)
