"""Whether an edge, gathered or eased, comes to the length of the edge it is sewn to."""

from __future__ import annotations

from kit.diagnostic import Diagnostic, measured, message, per_cent
from kit.sewing.cut import Cut
from kit.sewing.named import placed
from kit.sewing.operations.places import facts_of, refuse, sewn_length
from kit.sewing.run import Run
from kit.sewing.spans import sides_of
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
) -> tuple[Diagnostic, ...]:
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
        key = f"fits_{'longer' if off > 0 else 'shorter'}{'_with_ease' if ease else ''}"
        return (
            refuse(
                pattern,
                to[0],
                code,
                message(
                    f"sewing_trouble.{key}",
                    place=placed(pattern, to[0]),
                    wanted=measured(wanted),
                    amount=measured(abs(off)),
                ),
                message("sewing_trouble.fits_do"),
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
                message("sewing_trouble.not_gathered_yet", place=placed(pattern, first), share=per_cent(share)),
                message("sewing_trouble.not_gathered_yet_do"),
                ease,
            ),
        )
    if share > PINNED and not eased:
        return (
            refuse(
                pattern,
                first,
                "not_eased_yet",
                message("sewing_trouble.not_eased_yet", place=placed(pattern, first), ease=measured(ease)),
                message("sewing_trouble.not_eased_yet_do"),
                ease,
            ),
        )
    return ()
