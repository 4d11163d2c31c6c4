"""Pressing a seam that was left for later."""

from __future__ import annotations

from typing import Literal

from kit.sewing import section
from kit.sewing.sections import seams as shapes
from kit.sewing.vocabulary import *


def _faced(press: Press, state: State, pattern: Cut, run: Run) -> bool:
    """The seam lies at an edge: what was sewn to it has been turned to the inside."""
    others = state.opposite(pattern, run)
    at_edge = any(all(map(state.holds, facts_of(pattern, runs, "faced"))) for runs in ((run,), others))
    return at_edge and not any(map(state.touches, facts_of(pattern, (run, *others), "half_sewn")))


@operation
class Press(Operation):
    """Press seams already sewn, each named by one of its edges. `way`: open, one side, the piece they are pressed
    towards, or "edge" where a facing or a lining is turned: the seam at the very edge.

    Example::

        make.plain_seam(front.side, back.side, allowance=1.5 * cm, press="later")
        make.press(front.side, way="open")
    """

    kind = "press"
    tools = ("iron", "press_cloth")
    says = ("{towards}", both("seams"))
    rules = (
        Rule(Seamed("seams"), "pressed_early", each=True, ends="run"),
        Rule(
            Of("shut_in", "seams"),
            "pressed_open_shut_in",
            holds=False,
            each=True,
            when=lambda press: press.way == "open",
        ),
        Rule(Each("seams", _faced), "pressed_no_edge", each=True, when=lambda press: press.way == "edge"),
    )
    work = Work(1.0, each=2.0)
    also = (Also("piece", lambda press, pattern: (press.way,) if press.towards == "towards" else None, "piece"),)
    gives = (Of("pressed_towards", "seams", when=lambda press: press.towards == "towards"),)

    seams: tuple[Run, ...] = runs(becomes="pressed")
    way: str = direction("open", "one side", "edge", default="open")

    @property
    def towards(self) -> str:
        """The key of the way: open, one_side, edge or towards (a piece)."""
        return {"open": "open", "one side": "one_side", "edge": "edge"}.get(self.way, "towards")

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        run = shown(pattern, self.seams[0])
        inward = self.way in ("open", "one side", "edge", run.piece)
        arrows: tuple[tuple[Run, Literal["in", "out"]], ...] = ((run, "in" if inward else "out"),)
        if self.way == "open":
            arrows = ((run, "in"), (run, "out"))
        shape = {"open": section.pressed_open(), "edge": section.faced()}.get(self.way, shapes.pressed_one_side())
        return (laid(run, Row(run, ink="old"), up="wrong", arrows=arrows, section=shape),)
