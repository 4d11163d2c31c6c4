"""A table to sew small hand-made pieces on: what one writes, its pattern, state and refusals."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from kit.body.body import Body
from kit.lesson.pattern import LessonInfo, Pattern, SewRecord
from kit.piece.piece import Piece, Strip
from kit.prose import sentences
from kit.sewing.handle import PieceHandle, StripHandle
from kit.sewing.make import Make
from kit.sewing.operation import Operation
from kit.sewing.order import sew
from kit.sewing.state import State

Write = Callable[..., None]


@dataclass(frozen=True)
class Sewn:
    pattern: Pattern
    state: State
    codes: list[str]

    @property
    def last(self) -> Operation:
        return self.pattern.sewing[-1].operations[-1]

    @property
    def said(self) -> list[str]:
        return sentences(self.pattern, self.last)


def sewn(pieces: tuple[Piece, ...], *writes: Write, strips: tuple[Strip, ...] = ()) -> Sewn:
    """Each of `writes` is called with `make` and every piece and strip by its name."""
    records = []
    for number, write in enumerate(writes):
        make = Make(pieces, strips, [operation for record in records for operation in record.operations])
        names = {piece.name: PieceHandle(piece) for piece in pieces}
        names |= {strip.name: StripHandle(strip) for strip in strips}  # type: ignore[misc]
        write(make, **names)
        records.append(SewRecord(f"s{number}", f"Step {number}", "", "", make.operations))
    pattern = Pattern(LessonInfo("Trial", "trial"), Body("W4", ()), (), pieces, strips, (), tuple(records))
    state, refusals = sew(pattern)
    return Sewn(pattern, state, [refusal.code for refusal in refusals])
