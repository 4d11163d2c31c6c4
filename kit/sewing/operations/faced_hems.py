"""A hem faced with a piece of its own shape instead of being turned."""

from __future__ import annotations

from kit.sewing.operations.facings import AttachFacing
from kit.sewing.operations.joined import eased, matched
from kit.sewing.sections import hems as shapes
from kit.sewing.vocabulary import *


@operation
class FacedHem(AttachFacing):
    """Face a hem with a piece: its edge `facing` is sewn to `to`, and its `free` edge, turned under by `turn` (0: it is
    finished already), sewn down inside by "hand" or "machine".

    Example::

        make.faced_hem(hem_facing.lower, skirt_front.hem, allowance=1 * cm,
                       free=hem_facing.upper, turn=6 * mm)
    """

    kind = "faced_hem"
    tools = ("machine", "pins", "iron", "scissors", "hand_needle")
    stages = (
        Stage(
            "stitch",
            (Say("turn_free", lambda hem: hem.turn > 0, "free_done"), "pin", matched, "sew"),
            closes={"a": "", "b": ""},
            joins=True,
            brings=("faced",),
            work=2.0,
        ),
        Stage(
            "trim",
            (Say("grade", lambda hem: hem.grade), Say("attach_facing.clip", lambda hem: hem.clip)),
            when=lambda hem: hem.grade or hem.clip,
        ),
        Stage("turn", ("press", "{by}")),
    )
    gives = (Of("shut_in", "a"), Of("shut_in", "b"), Of("shut_in", "free", when=lambda hem: hem.turn > 0))
    rules = (in_a_row("free"), Rule(Closed("free"), "free_edge_raw", each=True, when=lambda hem: hem.turn == 0))

    allowance: float = width()
    free: tuple[Run, ...] = row(
        by_name=True,
        said="free edge",
        closes=lambda hem: "hemmed" if hem.turn > 0 else None,
        takes=lambda hem: hem.turn or None,
        touched=False,
    )
    turn: float = size(default=0)
    by: str = word(("hand", "machine"), default="hand")
    clip: bool = flag(default=False)
    grade: bool = flag(default=True)
    press: str = fixed("edge")
    ease: float = eased()

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        first, *between, last = super().scenes(pattern)
        garment = shown(pattern, self.b[-1])
        free = shown(pattern, self.free[0], garment.side)
        down = Row(free, inset=1.5, style="hand" if self.by == "hand" else "machine")
        return (
            replace(first, pins=(garment,)),
            *between,
            replace(last, rows=(*last.rows, down), section=shapes.faced_down()),
        )
