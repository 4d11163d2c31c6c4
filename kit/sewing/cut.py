"""What sewing needs to know of a pattern: its cut pieces and strips by name, and the order in which it is sewn.

A pattern as `kit.lesson` works it is one; so is the small table of pieces a test lays out.
"""

from __future__ import annotations

from typing import Protocol

from kit.piece.piece import Piece, Strip


class Cut(Protocol):
    """What operations need of a pattern: its pieces and strips by name."""

    @property
    def pieces(self) -> tuple[Piece, ...]: ...

    @property
    def strips(self) -> tuple[Strip, ...]: ...

    def piece(self, name: str) -> Piece: ...

    def strip(self, name: str) -> Strip: ...
