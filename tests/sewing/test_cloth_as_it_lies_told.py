"""What a picture shows of the cloth round an edge, whatever has been sewn by then: every edge of the jacket, the skirt
and the tote topstitched, whole and in parts, at several stages of the sewing.

What stands in `as_it_lies` was made by the kit, and read in samples beside the pictures: which edges lie turned, seamed
or faced, and which piece lies beyond a seam (how cloth lies while it is sewn: common practice, no source).
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Any

import pytest

from kit.errors import KitError
from kit.sewing.in_work import shown_scenes
from kit.sewing.scene import Layer
from kit.units import mm
from tests.exact import refusal
from tests.sewing import garments
from tests.told import Kept, told

PARTS: dict[str, Callable[[Any], Any]] = {
    "whole": lambda edge: edge,
    "below": lambda edge: edge.before(edge.length * 0.3),
    "above": lambda edge: edge.after(edge.length * 0.7),
}
STAGES = {
    # garment: how many of its steps are sewn
    "jacket": (6, 16, 20),
    "skirt": (8,),
    "tote": (3,),
}


def _shown(garment: garments.Garment, sewn: int, piece: str, edge: str, part: str) -> Iterator[Layer]:
    def probe(table: Any) -> None:
        table.make.topstitch(PARTS[part](getattr(getattr(table, piece), edge)), distance=6 * mm)

    pattern = garment.pattern([*garment.steps[:sewn], ("Probe", probe)])
    (operation,) = pattern.sewing[-1].operations
    for scene in shown_scenes(pattern, operation):
        yield from scene.layers


def _short(layer: Layer) -> str:
    on = "" if layer.on is None else f", {layer.how} on {told(layer.on)}"
    more = [name for name in ("ring", "fused") if getattr(layer, name)]
    more += [
        f"{name} {told(getattr(layer, name))}" for name in ("turn", "shut", "along", "place") if getattr(layer, name)
    ]
    return f"{told(layer.run)} {layer.up} side up{on}{''.join(f', {each}' for each in more)}"


@pytest.mark.parametrize(("name", "sewn"), [(name, sewn) for name, counts in STAGES.items() for sewn in counts])
def test_every_edge_as_it_lies(name: str, sewn: int) -> None:
    garment: garments.Garment = getattr(garments, name.upper())
    found, lies = {}, {}
    for piece in garment.pieces:
        for edge in piece.edges:
            if edge.name == piece.fold:
                continue
            lines = []
            for part in PARTS:
                try:
                    layers = list(_shown(garment, sewn, piece.name, edge.name, part))
                except KitError as error:
                    lines.append(f"{part} refused: {refusal(error)}")
                    continue
                lines.append(f"{part}: {' | '.join(map(_short, layers))}")
                lies |= {f"{layer.run.piece}.{layer.run.side}": told(layer.lies) for layer in layers}
            found[f"{piece.name}.{edge.name}"] = "\n".join(lines)
    found["how the edges of each piece lie"] = "\n".join(f"{piece}: {each}" for piece, each in sorted(lies.items()))
    Kept(Path(__file__).with_name("as_it_lies") / f"{name}_{sewn}.txt").holds(found)
