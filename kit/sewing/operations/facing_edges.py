"""The free outer edge of a facing, finished on its own."""

from __future__ import annotations

from kit.sewing import section
from kit.sewing.vocabulary import *


@operation
class FinishFacing(Operation):
    """Finish the free edge of a facing: zigzag, overlock, pinked, or turned under by `turn` and stitched. Facings are
    joined first; `apart=True` where each is finished by itself on purpose.

    Example::

        make.finish_facing(front_facing.outer, back_facing.outer, stitch="turned", turn=6 * mm)
    """

    kind = "finish_facing"  # turned: ISO 4916 6.02.01, from memory
    tools = ("machine", "iron")
    says = (
        Say("guide", lambda made: made.turned),
        Say("fold", lambda made: made.turned),
        Say("sew", lambda made: made.turned, "overcast"),
        both("outer"),
    )
    why = (Say("why_turned", lambda made: made.turned, "why"),)
    also = (Also("finish", lambda made, pattern: None if made.turned else f"finish.{made.stitch}", "word"),)
    changes = (
        Brings(
            "turned",
            lambda made, pattern: tuple(Turned(run, made.turn, made.turn / 2) for run in made.outer if made.turned),
        ),
    )
    rules = (
        # It can be finished piece by piece; joined first, the seam between two facings has its ends under the finish.
        Rule(EndToEnd("outer"), "facing_apart", when=lambda made: not made.apart, level="note"),
    )

    outer: tuple[Run, ...] = runs(
        closes=lambda made: "hemmed" if made.turned else "finished",
        takes=lambda made: made.turn if made.turned else 0.0,
    )
    stitch: str = word((*FINISHES[:3], "turned"), default="zigzag")
    turn: float = width(default=6 * mm, most=15.0)
    apart: bool = flag(default=False)

    @property
    def turned(self) -> bool:
        """Whether the edge is turned under."""
        return self.stitch == "turned"

    def cautioned(self, pattern: Cut) -> Words:
        """Turned under, it is clipped round its curves."""
        return (*self.cautions, "scissors") if self.turned else self.cautions

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        run = shown(pattern, self.outer[0])
        if not self.turned:
            return (laid(run, Row(run, inset=1.5, zigzag=True), stuff="facing", section=section.one_ply("facing")),)
        row = Row(run, inset=self.turn / 2)
        return (turned_up(run, self.turn, row, stuff="facing", section=section.hem_once()),)
