"""What speaks against the jacket, the skirt and the tote when one of their steps is left out, or sewn after the next.

The objections in `out_of_order/` were made by the kit, and those of the jacket read beside each step (what must be sewn
before what: common practice, no source); their amounts are those of the pieces in `garments.py`.
"""

from __future__ import annotations

from pathlib import Path

import pytest

from kit.sewing.order import sew
from tests.sewing import garments
from tests.sewing.telling import told_objection
from tests.told import Kept


def _objections(pattern) -> str:
    state, refusals = sew(pattern)
    wanted = {fact for record in pattern.sewing for each in record.operations for fact in each.wants(pattern)}
    lines = [told_objection(refusal) for refusal in refusals]
    lines += [f"wants {', '.join(fact)}" for fact in sorted(wanted - state.facts)]
    return "\n".join(lines) or "nothing"


STEPS = [
    (name, title)
    for name, garment in (("jacket", garments.JACKET), ("skirt", garments.SKIRT), ("tote", garments.TOTE))
    for title, _ in garment.steps
]


@pytest.mark.parametrize(("name", "title"), STEPS)
def test_a_step_left_out_and_sewn_after_the_next(name, title):
    garment = getattr(garments, name.upper())
    titles = [step for step, _ in garment.steps]
    found = {"left out": _objections(garment.without(title))}
    for later in titles[titles.index(title) + 1 :][:1]:
        found[f"after {later}"] = _objections(garment.swapped(title, later))
    Kept(Path(__file__).with_name("out_of_order") / f"{name}_{title.lower().replace(' ', '_')}.txt").holds(found)
