"""What a sewing picture shows, said without drawing: which layers lie how, and what is stitched.

An operation describes its scene; `kit.picture` draws it from the real pieces.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from kit.sewing.run import Run

Face = Literal["right", "wrong"]
Ink = Literal["new", "old"]


@dataclass(frozen=True)
class Layer:
    """One cloth layer: `run.piece` (and `run.side`) says which cut piece; `up` which face the viewer sees.
    `stuff` is facing, interfacing, main or strip. With `on`, this layer is laid so that its `run` lies on
    the run `on` of an earlier layer: `together` turns it over onto that layer, `open` lays it beside the
    seam (opened out), `flat` lays it exactly where its draft coordinates put it. `turn` folds an edge over:
    (edge name, depth in mm) turned to the viewer."""

    run: Run
    up: Face = "right"
    stuff: Literal["main", "facing", "interfacing", "strip"] = "main"
    on: Run | None = None
    how: Literal["together", "open", "flat"] = "flat"
    turn: tuple[tuple[str, float], ...] = ()


@dataclass(frozen=True)
class Row:
    """A row of stitching on `run`, `inset` mm inside the stitch line (negative: in the allowance).
    `ink` is new for this operation, old for what stood before. `gap` leaves out (start, end) mm."""

    run: Run
    inset: float = 0.0
    ink: Ink = "new"
    gap: tuple[float, float] | None = None
    zigzag: bool = False


@dataclass(frozen=True)
class Section:
    """Cross-section in plies from bottom to top. Each ply is a polyline in units of cloth thickness (x along,
    y up) with its `stuff`; `stitches` are vertical needle lines (x, y from, y to)."""

    plies: tuple[tuple[str, tuple[tuple[float, float], ...]], ...]
    stitches: tuple[tuple[float, float, float], ...]


@dataclass(frozen=True)
class Scene:
    """`layers` from the bottom up, `rows` of stitching, `focus` the run the picture is centred on (None: all),
    `arrows` pressing or folding directions (from run, "in" or "out"), `caption` a sentence key."""

    layers: tuple[Layer, ...]
    rows: tuple[Row, ...] = ()
    focus: Run | None = None
    arrows: tuple[tuple[Run, Literal["in", "out"]], ...] = ()
    section: Section | None = None
    strip: str = ""
