"""Strips without a paper piece: from what they measure when sewn to what is cut, and how long ones are pieced.

All lengths are mm. Cut widths by how a strip is folded are common practice (no source); what joins and bias cost
follows from their geometry and is derived beside each function.
"""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import dataclass
from typing import Literal

from kit.diagnostic import measured, message
from kit.errors import KitError

Join = Literal["straight", "diagonal"]
ROOT2 = math.sqrt(2.0)
SELVEDGE = 10.0
"""mm left along each selvedge; common practice, no source."""


def in_four(finished: float) -> float:
    """Cut width of a strip folded in four: four times the finished one (common practice, no source)."""
    return 4.0 * finished


def in_two(finished: float, allowance: float) -> float:
    """Cut width of a strip folded in two and seamed: it finishes at half its cut width less the allowance (common
    practice, no source)."""
    return 2.0 * (finished + allowance)


def hemmed(finished: float, turn: float) -> float:
    """Cut width of a single layer with a narrow hem of two equal turns along both its edges (common practice, no
    source)."""
    return finished + 4.0 * turn


def finished_from(cut: float, cut_of: Callable[[float], float]) -> float:
    """What a strip cut so wide or so long finishes at, where `cut_of` gives the cut size of a finished one: a straight
    line, as all of them are.

    >>> finished_from(60.0, in_four)
    15.0
    """
    slope = cut_of(1.0) - cut_of(0.0)
    return (cut - cut_of(0.0)) / slope


def binding(finished: float, double: bool = False) -> float:
    """Cut width of a binding: single four times the finished width (seam, front, back, turned under), double six
    times (the same three, folded in two first). Common practice, no source."""
    return (6.0 if double else 4.0) * finished


def band(finished_length: float, finished_width: float, allowance: float, overlap: float = 0.0) -> tuple[float, float]:
    """(length, width) as cut of a band folded lengthwise, with an allowance all round; `overlap` is added to the
    length for a button or a hook (common practice, no source)."""
    return finished_length + overlap + 2 * allowance, 2.0 * (finished_width + allowance)


# ---- joins ------------------------------------------------------------------------------------------------


def join_cost(how: Join, allowance: float, width: float, bias: bool = False) -> float:
    """mm of strip that one join takes up, measured along the strip's middle.

    A straight join takes an allowance from each end. A diagonal join of strips cut on the bias, whose ends lie on
    the grain at 45 degrees, takes allowance x sqrt 2 from each. Strips with square ends are laid corner on corner
    at a right angle and sewn across the square they share: along the middle each gives up half its width, whatever
    is trimmed afterwards.
    """
    if how == "straight":
        return 2.0 * allowance
    return 2.0 * ROOT2 * allowance if bias else width


@dataclass(frozen=True)
class Pieced:
    """How a strip is made up: `pieces` of `each` mm as cut, `joins` seams."""

    pieces: int
    joins: int
    each: float


def pieced(length: float, longest: float, cost: float, where: str = "") -> Pieced:
    """A strip of `length` mm from as few pieces as give it, none over `longest` mm, each join costing `cost` mm; all
    are cut alike. `KitError` when a piece is eaten up by its joins."""
    if length <= longest + 1e-6:
        return Pieced(1, 0, length)
    if longest <= cost:
        raise KitError(
            message("refusal.joins_eat", longest=measured(longest), cost=measured(cost)),
            where=where,
            do=message("refusal.joins_eat_do"),
        )
    # n pieces of `longest` give n * longest - (n - 1) * cost.
    number = math.ceil((length - cost) / (longest - cost) - 1e-9)
    return Pieced(number, number - 1, (length + (number - 1) * cost) / number)


# ---- bias -------------------------------------------------------------------------------------------------


def bias_across(cloth_width: float) -> float:
    """The longest bias strip from selvedge to selvedge, its ends along the selvedges: the usable width x sqrt 2."""
    return (cloth_width - 2 * SELVEDGE) * ROOT2


def bias_cloth(strips: int, each: float, width: float) -> tuple[float, float]:
    """(along, across) of cloth taken by `strips` bias strips `each` mm long and `width` wide, cut side by side with
    their ends along the lengthwise grain: the rise of the diagonal, and width x sqrt 2 for every strip."""
    return each / ROOT2 + strips * width * ROOT2, each / ROOT2


def continuous_bias(across: float, along: float, width: float, allowance: float) -> float:
    """Length of the one strip, `width` mm wide, that a rectangle cut on the grain gives as a sewn bias tube.

    Cut a corner off at 45 degrees (of a square, its half) and sew it to the opposite end: a parallelogram with two
    bias edges. The seam takes an allowance a of each end, and where its slanting ends are set stitch line on stitch
    line the sides along the grain come out `along` - a long and `across` - a apart, so the bias edges lie
    (`along` - a) / sqrt 2 from each other: n = floor of that by the width is how many lines are ruled. The two
    sides are then sewn into a tube, shifted by one line, which takes 2a more: each round is sqrt 2 (`across` - 3a)
    long, and the strip n rounds. Without seams that is area by width. The shorter side of the rectangle is taken
    as `across`.
    """
    _size(width, "bias strip")
    across, along = min(across, along), max(across, along)
    rounds = math.floor((along - allowance) / (ROOT2 * width) + 1e-9)
    return max(rounds, 0) * ROOT2 * max(across - 3 * allowance, 0.0)


def square_for_bias(length: float, width: float, allowance: float) -> float:
    """The side of the smallest square whose sewn bias tube gives a strip of `length` mm, the inverse of
    `continuous_bias`: for n rounds it must be both n lines and a round of length / n wide."""
    _size(width, "bias strip")
    _size(length, "bias strip")
    best, rounds = math.inf, 1
    while True:
        lines = allowance + rounds * ROOT2 * width
        best = min(best, max(lines, 3 * allowance + length / (rounds * ROOT2)))
        if lines >= best:
            return best
        rounds += 1


def _size(value: float, where: str) -> None:
    if not value > 0:
        raise KitError(
            message("refusal.strip_nothing", value=measured(value)), where=where, do=message("refusal.strip_nothing_do")
        )
