"""The usual values of what is written on a piece: a text that tells a piece leaves them out."""

from __future__ import annotations

from pathlib import Path

from kit.piece import corner, darts_and_pleats, piece
from tests.exact import usual_values
from tests.told import Kept


def test_what_is_usual() -> None:
    Kept(Path(__file__).with_name("usual.txt")).holds(usual_values(piece, corner, darts_and_pleats))
