"""What a cross-section has from the scene it stands beside: which cloth each ply is, and where its right side lies."""

from __future__ import annotations

from dataclasses import replace
from itertools import pairwise

from kit.sewing.cut import Cut
from kit.sewing.scene import Layer, Ply, Scene, Section


def in_cloth(pattern: Cut, scene: Scene) -> Section | None:
    """The section of a scene. Its plies told apart as a facing are so only where a facing is in the scene: a band or a
    pocket is cut from the main cloth."""
    section = scene.section
    if section is None or any(
        layer.stuff == "facing" or pattern.piece(layer.run.piece).role == "facing" for layer in scene.layers
    ):
        return section
    plies = tuple(replace(ply, stuff="main") if ply.stuff == "facing" else ply for ply in section.plies)
    return replace(section, plies=plies)


def right_sides(scene: Scene) -> tuple[int, ...]:
    """+1 for each ply of the scene's section whose right side lies left of its course, -1 for one on the right; ()
    where neither a ply nor the layers of the scene tell it. A section is cut as it is looked at, the nearest on top: so
    the cloth that goes on into the garment has on top the face that its layer shows."""
    if scene.section is None:
        return ()
    if any(ply.right for ply in scene.section.plies):
        return tuple(ply.right for ply in scene.section.plies)
    plies = [ply for ply in scene.section.plies if ply.stuff in ("main", "facing", "lining")]
    layers = [layer for layer in scene.layers if layer.stuff != "interfacing" and not layer.ring]
    if len(plies) != len(layers) or len(plies) != len(scene.section.plies) or not all(map(_going_on, plies)):
        return ()
    if any(layer.fold is not None or layer.along is not None or layer.place is not None for layer in layers):
        return ()
    if len({layer.up for layer in layers}) == 1:
        found = tuple(_side(ply, layers[0]) for ply in plies)
        # What is laid open or folded is turned to the wrong side (common practice, no source). Where the layers say
        # otherwise the section is cut the other way up than they lie, and tells nothing.
        return () if any(_inside(ply) == side for ply, side in zip(plies, found, strict=True)) else found
    if len(plies) != 2 or layers[1].how != "together":
        return ()
    upper = max(range(2), key=lambda number: _end(plies[number])[0][1])
    return tuple(_side(ply, layers[1] if number == upper else layers[0]) for number, ply in enumerate(plies))


def _inside(ply: Ply) -> int:
    """The side to which a ply is turned back, +1 left of its course and -1 right; 0 where it is not."""
    points = ply.path if not ply.raw[0] else ply.path[::-1]
    way = points[1][0] - points[0][0]
    for one, two in pairwise(points[1:]):
        if (two[0] - one[0]) * way < 0 and abs(two[1] - points[0][1]) > 0.1:
            above = two[1] > points[0][1]
            along = way if not ply.raw[0] else -way
            return 1 if above == (along > 0) else -1
    return 0


def _going_on(ply: Ply) -> bool:
    """Whether just one of its ends goes on into the garment."""
    return ply.raw[0] != ply.raw[1]


def _end(ply: Ply) -> tuple[tuple[float, float], tuple[float, float]]:
    """The end that goes on into the garment, and the next corner."""
    return (ply.path[0], ply.path[1]) if not ply.raw[0] else (ply.path[-1], ply.path[-2])


def _side(ply: Ply, layer: Layer) -> int:
    here, there = _end(ply)
    along = there[0] - here[0] if not ply.raw[0] else here[0] - there[0]  # the way the course runs there
    top = 1 if along > 0 else -1
    return top if layer.up == "right" else -top
