"""Marks, notches and folds of cut pieces, as a sewing step names them.

A mark that spans a stretch of its edge has two ends; any of these may name where a part of a run begins or ends
(kit/sewing/run.py).
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any, Literal

from kit.piece.piece import Mark, Notch, Side


@dataclass(frozen=True)
class Place:
    """A mark on a cut piece, with the half it is meant on (None: both)."""

    piece: str
    mark: Mark
    side: Side | None = None

    @property
    def edge(self) -> str:
        return self.mark.edge

    @property
    def start(self) -> MarkEnd:
        """The end of the mark where its edge, as drafted, comes to it first."""
        return MarkEnd(self, "start")

    @property
    def end(self) -> MarkEnd:
        """Its other end."""
        return MarkEnd(self, "end")

    @property
    def said(self) -> str:
        return f"{self.piece.replace('_', ' ')} {self.side + ' ' if self.side else ''}{self.mark.label}"

    def __repr__(self) -> str:
        return f"<{self.said}>"


class MarkEnd(float):
    """One end of a mark that spans a stretch of its edge: the mm along that edge, as drafted, and a landmark that a
    part is named by."""

    __slots__ = ("place", "which")
    place: Place
    which: Literal["start", "end"]

    def __new__(cls, place: Place, which: Literal["start", "end"]) -> MarkEnd:
        self = super().__new__(cls, place.mark.start if which == "start" else place.mark.end)
        self.place, self.which = place, which
        return self

    def __getnewargs__(self) -> tuple[Place, Literal["start", "end"]]:  # type: ignore[override]
        return self.place, self.which

    def __mul__(self, other: Any) -> Any:
        return float(self) * other  # as any number: a length by a unit

    @property
    def said(self) -> str:
        return f"{self.place.said}, its {self.which},"

    def __repr__(self) -> str:
        return f"<{self.place.said}, its {self.which}>"


@dataclass(frozen=True)
class Notched:
    """A notch of a cut piece, with the half it is meant on (None: both)."""

    piece: str
    notch: Notch
    side: Side | None = None

    @property
    def said(self) -> str:
        return f"a notch of the {self.piece.replace('_', ' ')}"

    def __repr__(self) -> str:
        return f"<{self.said}>"


@dataclass(frozen=True)
class Fold:
    """A dart, pleat or tuck of a cut piece, with the half it is meant on (None: both), and the edge it opens on: "" for
    a dart that this figure does not need."""

    piece: str
    name: str
    edge: str
    side: Side | None = None

    @property
    def said(self) -> str:
        return f"{self.piece.replace('_', ' ')} {self.side + ' ' if self.side else ''}{self.name.replace('_', ' ')}"

    def __repr__(self) -> str:
        return f"<{self.said}>"
