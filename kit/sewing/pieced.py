"""Strips that are pieced from several lengths, or cut from a sewn square: how their ends are joined before they are
made or sewn on.

The ends of lengths cut on the bias lie on the grain, at 45 degrees to the long edges; laid at a right angle with the
long edges crossing on the stitch line, a point stands out at either side, and the edges run on when the seam is opened
(common practice, no source; tests/sewing/test_pieced.py reckons it).
"""

from __future__ import annotations

from typing import Any

from kit.sewing.base import Sentence
from kit.sewing.before import state_before
from kit.sewing.cut import Cut
from kit.sewing.scene import Scene, StripShape
from kit.sewing.scenes import lone

__all__ = ["joining", "pieced"]


def _way(made: Any, pattern: Cut) -> str:
    """How the lengths of its strip are joined, when they have not been by then: "bias", "corner" or "straight",
    "square" for a tube sewn of a square; "" where nothing is to join."""
    strip = pattern.strip(made.name)
    if not (strip.joins or strip.square) or made.name in state_before(pattern, made).made:
        return ""
    if strip.square:
        return "square"
    if strip.join == "straight":
        return "straight"
    return "bias" if strip.grain == "bias" else "corner"


def pieced(made: Any, pattern: Cut) -> tuple[Sentence, ...]:
    """What is done with the lengths of the strip `name` of an operation before anything else."""
    way, strip = _way(made, pattern), pattern.strip(made.name)
    if not way:
        return ()
    values: dict[str, tuple[Any, str]] = {
        "strip": (strip.name, "strip"),
        "allowance": (strip.join_allowance, "allowance"),
        "width": (strip.width, "allowance"),
        "joins": (strip.joins, "count"),
    }
    keys = ("halve", "seam", "rule", "tube", "cut") if way == "square" else ("lay", "sew", "open")
    more = ("again",) if strip.joins > 1 else ()
    return tuple(Sentence(f"pieced.{way}_{key}", values) for key in keys) + tuple(
        Sentence(f"pieced.{key}", values) for key in more
    )


def joining(made: Any, pattern: Cut, stage: str = "") -> tuple[Scene, ...]:
    """The picture of two lengths being joined, where lengths are."""
    way = _way(made, pattern)
    if way in ("", "square"):
        return ()
    return (lone(made.name, StripShape(pieced=way), stage=stage),)
