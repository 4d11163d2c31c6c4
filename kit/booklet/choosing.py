"""How a reader finds their size: which girth decides, what to do between two, and where the figure is two sizes.

The rules are common practice (no source), as in `kit.body.advice`: the girth nearest the shoulders is the hardest to
alter, so it decides; the side seam is led over from one size to another between two levels.
"""

from __future__ import annotations

from kit.booklet.handover import Handover
from kit.language import say

_DECIDES = ("bust_girth", "waist_girth", "hip_girth")


def choosing(given: Handover) -> tuple[str, ...]:
    """What is said before the charts; nothing where no size is chosen by a girth."""
    if len(given.chart) < 2:
        return ()
    taken = {name for row in given.chart for name, _ in row.measures}
    girths = [name for name in _DECIDES if name in taken]
    if not girths:
        return ()
    lead, *others = girths
    told = [f"{say(f'booklet.choose_{lead}')} {say('booklet.choose_between')}"]
    if others:
        told.append(say(f"booklet.choose_over_{'both' if len(others) > 1 else others[0]}"))
    return tuple(told)
