"""What a picture of an operation is beside others: turned over since the last one, or shown before in the same step."""

from __future__ import annotations

from dataclasses import fields
from itertools import takewhile

from kit.sewing.cut import Cut
from kit.sewing.operation import Operation
from kit.sewing.scene import Layer, Scene


def alike_before(pattern: Cut, operation: Operation) -> bool:
    """Whether an operation of the same step before this one did the same along other edges."""
    for record in getattr(pattern, "sewing", ()):
        before = list(takewhile(lambda each: each is not operation, record.operations))
        if len(before) < len(record.operations):
            return any(_numbers(each) == _numbers(operation) for each in before if each.kind == operation.kind)
    return False


def _numbers(operation: Operation) -> dict[str, object]:
    """All of an operation but the places it is sewn at."""
    given = ((each.name, getattr(operation, each.name)) for each in fields(operation))
    return {name: value for name, value in given if isinstance(value, str | int | float | bool)}


def turned(one: Scene, two: Scene) -> bool:
    """Whether the piece the work is on shows its other face: of what lies on top, what was seen before. A folded band
    has one face; it is turned with its garment."""
    if any(layer.along is not None for layer in two.layers) and one.inside != two.inside:
        return True
    faces = {(layer.run.piece, layer.run.side): layer.up for layer in one.layers if layer.stuff != "interfacing"}
    for layer in _from_top(two):
        before = faces.get((layer.run.piece, layer.run.side))
        if before is not None and layer.stuff != "interfacing":
            return before != layer.up
    return False


def _from_top(scene: Scene) -> list[Layer]:
    """The layers as they are met from above: the far side of a tube lies below."""
    layers = list(reversed(scene.layers))
    return [layer for layer in layers if not layer.ring] + [layer for layer in layers if layer.ring]
