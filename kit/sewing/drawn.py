"""Whether an edge, gathered or eased, comes to the length of the edge it is sewn to."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from typing import Any

from kit.diagnostic import per_cent
from kit.sewing.facts import drawn_up_to, facts_of
from kit.sewing.places import sewn_length
from kit.sewing.stretching import eased_by_stitching
from kit.sewing.vocabulary import Case, Cut, First, Rule, Run, State, measured, sides_of

AGREE = 1.0
"""mm by which two rows sewn together may differ; 2% where one is drawn up by its threads."""
PINNED = 0.02
"""Share of fullness that is pinned in without easing (common practice, no source)."""
EASED = 0.15
"""Share that a row of ease stitching takes up (common practice, no source)."""


def as_drawn(state: State, pattern: Cut, run: Run) -> float:
    """mm of a run as it is now on all its halves, drawn up where it has been; of a part its share of the whole."""
    total = 0.0
    for side in sides_of(pattern, run):
        flat, drawn = sewn_length(pattern, (replace(run, side=side),)), drawn_up_to(state, run, side)
        whole = sewn_length(pattern, (replace(run, side=side, start=None, end=None),))
        total += flat if drawn is None else drawn * flat / whole
    return total


def _misfit(made: Any, state: State, pattern: Cut) -> Iterator[tuple[str, Case]]:
    """What speaks against sewing the runs `b` to `a` when they are `ease` mm longer in all: another length, or fullness
    that nothing has drawn in yet."""
    wanted, flat = sewn_length(pattern, made.a), sewn_length(pattern, made.b)
    drawn = sum(as_drawn(state, pattern, run) for run in made.b)
    slack = max(AGREE, 0.02 * wanted) if drawn != flat else AGREE
    if drawn < flat - AGREE and abs(drawn - wanted) <= slack:
        return
    if abs(flat - wanted - made.ease) > AGREE:
        off = drawn - wanted - (made.ease if drawn == flat else 0.0)
        key = f"fits_{'longer' if off > 0 else 'shorter'}{'_with_ease' if made.ease else ''}"
        yield key, Case(False, made.a[0], amount=abs(off), values={"wanted": measured(wanted)})
    share = made.ease / wanted if wanted else 0.0
    eased = all(
        any(state.touches((what, *fact[1:])) for what in ("eased", "gathered"))
        for fact in facts_of(pattern, made.b, "eased")
    )
    # A band that stretches is pulled to the edge and wants no threads; where it is woven, it is the edge that gives.
    pulled = eased_by_stitching(pattern, 0.0)
    kind = "not_gathered_yet" if share > max(EASED, pulled) else ""
    if not kind and share > max(PINNED, pulled) and not eased:
        kind = "not_eased_yet"
    if kind:
        values = {"share": per_cent(share), "ease": measured(made.ease)}
        yield kind, Case(False, made.b[0], amount=made.ease, values=values)


def fits(code: str) -> tuple[Rule, ...]:
    """The rules that the runs `b` of an operation fit its runs `a`; `code` is told where their lengths differ."""
    lengths = [f"fits_{way}{ease}" for way in ("longer", "shorter") for ease in ("", "_with_ease")]
    return (
        *(Rule(First(_misfit, key), code, says=key, do="fits_do") for key in lengths),
        Rule(First(_misfit, "not_gathered_yet"), "not_gathered_yet"),
        Rule(First(_misfit, "not_eased_yet"), "not_eased_yet"),
    )
