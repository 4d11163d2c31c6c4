"""What is done with the allowances where two edges meet.

A rule is chosen from the sewing operations that meet at the corner, or set by hand. Going round the piece in the
order of its edges, `before` ends at the corner and `after` starts there.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

Rule = Literal["mitre", "squared", "turned", "clipped", "rounded"]


@dataclass(frozen=True)
class Corner:
    """How the cut lines of `before` and `after` are joined.

    mitre: both carried on until they meet, cut square where the point would run far out. squared: the allowance of
    `turned` ends square to its own stitch line, from where that, carried on, runs out into the neighbour's cut line.
    turned: the allowance of the edge `turned` is folded at each of `folds` (mm outside its stitch line, nearest first;
    0 is the stitch line itself), and its end mirrors the cut line of its neighbour at each fold, so that it lies flush
    once folded. clipped and rounded: the point is cut off straight, or in an arc about the corner, `size` mm from the
    stitch lines' corner (0: as far as the wider allowance). A shape that cannot be drawn at its corner, and any at a
    corner that is not convex, is a mitre. `by_hand` when a step said so, which no operation overrules."""

    before: str
    after: str
    rule: Rule = "mitre"
    turned: str = ""
    folds: tuple[float, ...] = (0.0,)
    size: float = 0.0
    by_hand: bool = False


@dataclass(frozen=True)
class Declared:
    """A corner drawn on purpose: the line across the seam there need not run smooth. `why` says what it is: a V
    point, a slit, a gusset."""

    before: str
    after: str
    why: str
