"""What is folded out of a piece's edge before it is sewn: darts, pleats and tucks, as values.

How they are measured, folded and closed is in `kit.piece.dart` and `kit.piece.pleat`, which know the piece.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from kit.geometry import Path, Point

Pressed = Literal["start", "end"]


@dataclass(frozen=True)
class Dart:
    """A dart opening on `edge` between `start` and `end` (mm along its path). `apex` is the place on the body it
    points to and pivots about; the stitching stops `short` mm before it. It is pressed toward the edge's "start"
    or "end"."""

    name: str
    edge: str
    apex: Point
    start: float
    end: float
    pressed: Pressed = "end"
    short: float = 0.0
    said: str = ""

    @property
    def label(self) -> str:
        return self.said or self.name.replace("_", " ")


@dataclass(frozen=True)
class Pleat:
    """The stretch of `edge` from `start` to `end` (mm along its path) is folded at its middle, so that its two ends
    meet. `lines` are the two stitching or placement lines, from the edge into the piece; the fold lies midway. A
    pleat is held at the edge only, a tuck is stitched along its `lines` for `sewn` mm. It is laid toward the edge's
    "start" or "end". One that runs across the piece ends on the edge `far`, from `far_start` to `far_end`; `held`
    says whether it is folded into the seam there too."""

    name: str
    edge: str
    start: float
    end: float
    lines: tuple[Path, Path]
    kind: Literal["pleat", "tuck"] = "pleat"
    sewn: float = 0.0
    laid: Literal["start", "end"] = "end"
    said: str = ""
    far: str = ""
    far_start: float = 0.0
    far_end: float = 0.0
    held: Literal["near", "both"] = "near"

    @property
    def label(self) -> str:
        return self.said or self.name.replace("_", " ")

    @property
    def tapered(self) -> bool:
        """Whether its lines run together to nothing inside the piece."""
        return self.lines[0].end.distance(self.lines[1].end) < 0.05
