"""Pleats and tucks: a stretch of an edge taken up in a fold."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from kit.geometry import Path


@dataclass(frozen=True)
class Pleat:
    """The stretch of `edge` from `start` to `end` (mm along its path) is folded at its middle, so that its two ends
    meet. `lines` are the two stitching or placement lines, from the edge into the piece; the fold lies midway. A
    pleat is held at the edge only, a tuck is stitched along its `lines` for `sewn` mm. It is laid toward the edge's
    "start" or "end"."""

    name: str
    edge: str
    start: float
    end: float
    lines: tuple[Path, Path]
    kind: Literal["pleat", "tuck"] = "pleat"
    sewn: float = 0.0
    laid: Literal["start", "end"] = "end"
    said: str = ""

    @property
    def label(self) -> str:
        return self.said or self.name.replace("_", " ")
