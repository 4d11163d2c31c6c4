"""The free outer edge of a facing, finished on its own."""

from __future__ import annotations

from kit.sewing import section
from kit.sewing.cut import Cut
from kit.sewing.fields import runs, width, word
from kit.sewing.operation import Operation, Say, both, closings, operation, shown, taken
from kit.sewing.outcome import Closing
from kit.sewing.reading import FINISHES
from kit.sewing.rules import EndToEnd, Rule
from kit.sewing.run import Run
from kit.sewing.scene import Layer, Row, Scene
from kit.units import mm


@operation
class FinishFacing(Operation):
    """Finish the free edge of a facing: zigzag, overlock, pinked, or turned under by `turn` and stitched.

    Example::

        make.finish_facing(front_facing.outer, back_facing.outer, stitch="turned", turn=6 * mm)
    """

    kind = "finish_facing"  # turned: ISO 4916 6.02.01, from memory
    cautions = ("needle", "iron")
    tools = ("machine", "iron")
    says = (
        Say("guide", lambda made: made.turned),
        Say("fold", lambda made: made.turned),
        Say("sew", lambda made: made.turned),
        Say("overcast", lambda made: not made.turned),
        both("outer"),
    )
    why = (Say("why_turned", lambda made: made.turned), Say("why", lambda made: not made.turned))
    rules = (
        # It can be finished piece by piece; joined first, the seam between two facings has its ends under the finish.
        Rule(EndToEnd("outer"), "facing_apart", tells=("place", "other"), level="note"),
    )

    outer: tuple[Run, ...] = runs()
    stitch: str = word((*FINISHES[:3], "turned"), default="zigzag")
    turn: float = width(default=6 * mm, most=15.0)

    @property
    def turned(self) -> bool:
        """Whether the edge is turned under."""
        return self.stitch == "turned"

    def values(self, pattern: Cut) -> dict[str, tuple[object, str]]:
        return super().values(pattern) | ({} if self.turned else {"finish": (f"finish.{self.stitch}", "word")})

    def closes(self, pattern: Cut) -> tuple[Closing, ...]:
        return closings(pattern, self.outer, "hemmed" if self.turned else "finished")

    def takes(self, pattern: Cut) -> dict[tuple[str, str], float]:
        return taken(self.outer, self.turn if self.turned else 0.0)

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        run = shown(pattern, self.outer[0])
        if self.turned:
            return (
                Scene(
                    layers=(Layer(run, up="wrong", stuff="facing", turn=((run.edges[0], self.turn),)),),
                    rows=(Row(run, inset=self.turn / 2),),
                    focus=run,
                    arrows=((run, "in"),),
                    section=section.hem_once(),
                ),
            )
        return (
            Scene(
                layers=(Layer(run, up="right", stuff="facing"),),
                rows=(Row(run, inset=1.5, zigzag=True),),
                focus=run,
                section=section.one_ply("facing"),
            ),
        )
