"""Pressing a seam that was left for later."""

from __future__ import annotations

from kit.sewing import section
from kit.sewing.sections import seams as shapes
from kit.sewing.vocabulary import *


@operation
class Press(Operation):
    """Press seams already sewn, each named by one of its edges. `way`: open, one side, or the piece they are pressed
    towards.

    Example::

        make.plain_seam(front.side, back.side, allowance=1.5 * cm, press="later")
        make.press(front.side, way="open")
    """

    kind = "press"
    stitch_type = ""
    cautions = ("iron",)
    tools = ("iron", "press_cloth")
    notions = ()
    says = ("{towards}", both("seams"))
    why = ("why",)
    rules = (
        Rule(Seamed("seams"), "pressed_early", each=True, ends="run"),
        Rule(
            Of("shut_in", "seams"),
            "pressed_open_shut_in",
            holds=False,
            each=True,
            when=lambda press: press.way == "open",
        ),
    )

    seams: tuple[Run, ...] = runs(becomes="pressed")
    way: str = direction("open", "one side", default="open")

    @property
    def towards(self) -> str:
        """The key of the way: open, one_side or towards (a piece)."""
        return {"open": "open", "one side": "one_side"}.get(self.way, "towards")

    def values(self, pattern: Cut) -> dict[str, tuple[object, str]]:
        piece = {"piece": ((self.way,), "piece")} if self.towards == "towards" else {}
        return super().values(pattern) | piece

    def minutes(self, pattern: Cut) -> float:
        """2 minutes a seam, more than the row itself would take a careful presser (common practice, no source)."""
        return 1.0 + 2.0 * sum(len(sides_of(pattern, run)) for run in self.seams)

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        run = shown(pattern, self.seams[0])
        inward = self.way in ("open", "one side", run.piece)
        shape = section.pressed_open() if self.way == "open" else shapes.pressed_one_side()
        return (laid(run, Row(run, ink="old"), up="wrong", arrows=((run, "in" if inward else "out"),), section=shape),)
