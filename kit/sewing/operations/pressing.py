"""Pressing a seam that was left for later."""

from __future__ import annotations

from typing import Literal

from kit.sewing import section
from kit.sewing.sections import seams as shapes
from kit.sewing.vocabulary import *


def _faced(press: Press, state: State, pattern: Cut) -> Iterable[Case]:
    """The seam lies at an edge: what was sewn to it has been turned to the inside."""
    for run in press.seams:
        here = (run, *state.opposite(pattern, run))
        waiting = any(map(state.touches, facts_of(pattern, here, "half_sewn")))
        at_edge = all(map(state.holds, facts_of(pattern, (run,), "faced")))
        at_edge = at_edge or all(map(state.holds, facts_of(pattern, here[1:], "faced")))
        yield Case(at_edge and not waiting, run)


@operation
class Press(Operation):
    """Press seams already sewn, each named by one of its edges. `way`: open, one side, the piece they are pressed
    towards, or "edge" where a facing or a lining is turned: the seam at the very edge.

    Example::

        make.plain_seam(front.side, back.side, allowance=1.5 * cm, press="later")
        make.press(front.side, way="open")
    """

    kind = "press"
    stitch_type = ""
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
        Rule(Asking(_faced), "pressed_no_edge", each=True, when=lambda press: press.way == "edge"),
    )
    gives = (Of("pressed_towards", "seams", when=lambda press: press.towards == "towards"),)

    seams: tuple[Run, ...] = runs(becomes="pressed")
    way: str = direction("open", "one side", "edge", default="open")

    @property
    def towards(self) -> str:
        """The key of the way: open, one_side, edge or towards (a piece)."""
        return {"open": "open", "one side": "one_side", "edge": "edge"}.get(self.way, "towards")

    def values(self, pattern: Cut) -> dict[str, tuple[object, str]]:
        piece = {"piece": ((self.way,), "piece")} if self.towards == "towards" else {}
        return super().values(pattern) | piece

    def minutes(self, pattern: Cut) -> float:
        """2 minutes a seam, more than the row itself would take a careful presser (common practice, no source)."""
        return 1.0 + 2.0 * sum(len(sides_of(pattern, run)) for run in self.seams)

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        run = shown(pattern, self.seams[0])
        inward = self.way in ("open", "one side", "edge", run.piece)
        arrows: tuple[tuple[Run, Literal["in", "out"]], ...] = ((run, "in" if inward else "out"),)
        if self.way == "open":
            arrows = ((run, "in"), (run, "out"))
        shape = {"open": section.pressed_open(), "edge": section.faced()}.get(self.way, shapes.pressed_one_side())
        return (laid(run, Row(run, ink="old"), up="wrong", arrows=arrows, section=shape),)
