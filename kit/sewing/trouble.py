"""A plain refusal of a sewing operation."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True)
class Trouble:
    """A plain refusal: what is wrong, where, what to do. `amount` in mm where one applies."""

    code: str
    what: str
    where: str = ""
    do: str = ""
    amount: float | None = None
    piece: str = ""
    edge: str = ""
