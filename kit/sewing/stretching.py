"""What cloth that stretches takes more of than woven cloth does: ease that is pinned in, ease that is stitched in.

Stretch is (stretched - relaxed) / relaxed, measured along a fold of the cloth (ASTM D2594 is the laboratory's standard;
10 in drawn to 14 in is 40 %: Treadle Yard Goods, page of 2023). How much of it an edge can be eased or drawn by without
waves is common practice, no source.
"""

from __future__ import annotations

PINNED = 0.25
"""The part of the stretch that a seam or a hem takes up by itself."""
STITCHED = 0.5
"""The part that a row of ease stitching takes up."""
BENDS = 0.2
"""The stretch from which a strip cut across a knit bends round a curve as one on the bias does (common practice, no
source)."""


def across(pattern: object) -> float:
    """How much farther across the cloth of a pattern goes when it is stretched; 0 for woven cloth, and of pieces that
    belong to no lesson."""
    return float(getattr(getattr(pattern, "lesson", None), "stretch", 0.0))


def eased_by_hand(pattern: object, woven: float) -> float:
    """The share of its length by which an edge is eased in without more ado; `woven` in cloth that does not stretch.

    >>> eased_by_hand(None, 0.05)
    0.05
    """
    return max(woven, PINNED * across(pattern))


def eased_by_stitching(pattern: object, woven: float) -> float:
    """The share by which it is eased with a row of stitching."""
    return max(woven, STITCHED * across(pattern))
