"""An order in which shapes are laid on cloth may hold some of them to more than their turn.

It is a row of whole numbers, so that it can be kept and tried again for the same lesson in another size: the number of
a shape, and so many times the number of shapes as its choice says. Choice 0 holds it to nothing. The next ones hold it
to lie at the right, to one of its ways, or to both; those after them to one way and about a place across, and they say
at which row it lay when the order was made.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from kit.pack.packing import Place

_STEP, _COLUMNS = 16, 4096
"""Rows to a step in which a choice tells its row, and more columns than any cloth has."""


@dataclass(frozen=True)
class Held:
    """What a choice says: one way of a shape, or all (None); that it lies at the right; or about where."""

    way: int | None = None
    rightmost: bool = False
    place: Place | None = None


def held(choice: int, ways: int) -> Held:
    """What it says of a shape with so many `ways`.

    >>> held(0, 2), held(5, 2)
    (Held(way=None, rightmost=False, place=None), Held(way=1, rightmost=True, place=None))
    >>> held(held_at((1, 320, 77), 2), 2)
    Held(way=1, rightmost=False, place=(1, 320, 77))
    """
    way, right = divmod(choice, 2)
    if way <= ways:
        return Held(way - 1 if way else None, bool(right))
    rest, way = divmod(choice - 2 * (ways + 1), ways)
    step, column = divmod(rest, _COLUMNS)
    return Held(way, place=(way, step * _STEP, column))


def held_at(place: Place, ways: int) -> int:
    """The choice that holds a shape with so many `ways` to a place."""
    way, row, column = place
    return 2 * (ways + 1) + ways * (row // _STEP * _COLUMNS + column) + way


def places_in(order: Sequence[int], ways: Sequence[int]) -> dict[int, Place]:
    """Where those shapes lay about that an order holds to a place; `ways` says how many each shape has."""
    said = ((number % len(ways), held(number // len(ways), ways[number % len(ways)]).place) for number in order)
    return {each: place for each, place in said if place is not None}
