"""A foundation block: what a lesson may start from, drafted for a body."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from kit.body.body import Body
from kit.body.measures import MEASUREMENTS, said
from kit.errors import KitError
from kit.piece.piece import Piece


@dataclass(frozen=True)
class Block:
    """A block: `title`, the body `measures` it is drafted from, and `draft` (body to pieces).

    Calling it gives the pieces. Raises `KitError` when the body lacks a measurement, or when the draft
    refuses one.
    """

    title: str
    measures: tuple[str, ...]
    draft: Callable[[Body], tuple[Piece, ...]]

    def __call__(self, body: Body) -> tuple[Piece, ...]:
        for name in self.measures:
            if name not in body:
                row = MEASUREMENTS.get(name)
                raise KitError(
                    f"the {said(name)} is missing.",
                    where=f"{self.title} for {body.name}",
                    do=f"Measure it: {row.note}" if row else "Give it with the other measurements.",
                )
        try:
            return self.draft(body)
        except KitError as error:
            raise error.at(f"{self.title} for {body.name}") from None
