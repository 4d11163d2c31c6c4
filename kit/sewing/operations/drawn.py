"""Whether an edge, gathered or eased, comes to the length of the edge it is sewn to."""

from __future__ import annotations

from typing import TYPE_CHECKING

from kit.sewing.operation import Cut, Trouble
from kit.sewing.operations.places import facts_of, refuse, sewn_length
from kit.sewing.run import Run
from kit.sewing.walk import sides_of
from kit.units import both

if TYPE_CHECKING:
    from kit.sewing.state import State

AGREE = 1.0
"""mm by which two rows sewn together may differ; 2% where one is drawn up by its threads."""
PINNED = 0.02
"""Share of fullness that is pinned in without easing (common practice, no source)."""
EASED = 0.15
"""Share that a row of ease stitching takes up (common practice, no source)."""


def as_drawn(state: State, pattern: Cut, run: Run) -> float:
    """mm of a run as it is now on all its halves, drawn up where it has been."""
    total = 0.0
    for side in sides_of(pattern, run):
        half = Run(run.piece, run.edges, side, run.start, run.end)
        keys = ("drawn_up_to", run.piece, side, "+".join(sorted(run.edges)))
        drawn = [float(fact[4]) for fact in state.facts if fact[:4] == keys]
        total += drawn[0] if drawn else sewn_length(pattern, (half,))
    return total


def fits(
    state: State, pattern: Cut, to: tuple[Run, ...], runs: tuple[Run, ...], ease: float, code: str
) -> tuple[Trouble, ...]:
    """What speaks against sewing `runs` to `to` when they are `ease` mm longer in all."""
    wanted = sewn_length(pattern, to)
    flat = sewn_length(pattern, runs)
    drawn = sum(as_drawn(state, pattern, run) for run in runs)
    slack = max(AGREE, 0.02 * wanted) if drawn != flat else AGREE
    first = runs[0]
    if drawn < flat - AGREE and abs(drawn - wanted) <= slack:
        return ()
    if abs(flat - wanted - ease) > AGREE:
        off = drawn - wanted - (ease if drawn == flat else 0.0)
        return (
            refuse(
                pattern,
                to[0],
                code,
                f"the {to[0].said} gives {both(wanted)}, but the edge it is sewn to is {both(abs(off))} "
                f"{'longer' if off > 0 else 'shorter'} than that{' with its ease' if ease else ''}.",
                "Draw the two alike, gather the longer one to fit, or say the overlap and the ease.",
                abs(off),
            ),
        )
    share = ease / wanted if wanted else 0.0
    eased = all(
        any((what, *fact[1:]) in state.facts for what in ("eased", "gathered"))
        for fact in facts_of(pattern, runs, "eased")
    )
    if share > EASED:
        return (
            refuse(
                pattern,
                first,
                "not_gathered_yet",
                f"the {first.said} is {round(share * 100)}% longer than what it is sewn to: too much to ease in.",
                "Gather it first: make.gather(..., fit=...).",
                ease,
            ),
        )
    if share > PINNED and not eased:
        return (
            refuse(
                pattern,
                first,
                "not_eased_yet",
                f"the {first.said} is {both(ease)} longer than what it is sewn to, and nothing draws it in yet.",
                "Run a row of ease stitching along it first: make.ease_stitch(...).",
                ease,
            ),
        )
    return ()
