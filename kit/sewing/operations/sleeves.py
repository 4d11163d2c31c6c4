"""A sleeve set into its armhole."""

from __future__ import annotations

from itertools import islice

from kit.sewing.joined_lengths import stitch_length
from kit.sewing.operations.joined import Seam, fullness, notched, pressing
from kit.sewing.sections import bands as section
from kit.sewing.spans import sides_of
from kit.sewing.stretching import across, eased_by_hand
from kit.sewing.vocabulary import *


def _drawn_in(sleeve: SetInSleeve, state: State, pattern: Cut) -> Iterator[Case]:
    """A cap that is longer has its ease stitching, or the seam itself has been refused for want of it; cloth that
    stretches by enough takes it up as it is sewn."""
    armhole = stitch_length(pattern, sleeve.b) / len(sides_of(pattern, sleeve.b[0]))  # on one half, as its ease is
    if across(pattern) and sleeve.ease <= eased_by_hand(pattern, 0.0) * armhole:
        return
    ready = any(all(map(state.touches, facts_of(pattern, sleeve.a, what))) for what in ("eased", "gathered"))
    told = any(kind.startswith("seam_not") for kind, _ in islice(fullness(sleeve, state, pattern), 1))
    yield Case(ready or told, sleeve.a[0], amount=sleeve.ease, values={"ease": measured(sleeve.ease)})


@operation
class SetInSleeve(Seam):
    """Sew the cap of a closed sleeve into the closed armhole; the cap is `ease` longer on each half. `press`: over the
    cap "one side" (towards the sleeve), a piece it is pressed towards, or "open", as in a tailored sleeve.

    Example::

        cap = sleeve.back_cap + sleeve.front_cap
        make.set_in_sleeve(cap, [back.armhole, front.armhole], allowance=1.5 * cm, ease=3.7 * cm)
    """

    kind = "set_in_sleeve"
    seam_class = "1.01"
    work = Work(40.0)
    cautions = ("needle", "pins", "iron", "scissors")
    tools = ("machine", "pins", "iron", "scissors")
    says = (
        "place",
        lambda sleeve, pattern: "pin_notched" if notched(pattern, sleeve.a, sleeve.b) else "pin",
        Say("ease", lambda sleeve: sleeve.ease > 0),
        "sew",
        Say("trim", lambda sleeve: sleeve.trim),
        Say("finish", lambda sleeve: sleeve.finish != "none" and sleeve.press != "open"),
        Say("finish_apart", lambda sleeve: sleeve.finish != "none" and sleeve.press == "open"),
        "press{pressed}",
        both("b"),
    )
    rules = (
        whole_edges("a"),
        Rule(Ring("a"), "sleeve_no_ring"),
        Rule(Ring("b"), "armhole_no_ring"),
        Rule(Asking(_drawn_in), "not_eased_yet", says="cap_not_eased", when=lambda sleeve: sleeve.ease > 0),
    )

    a: tuple[Run, ...] = meets(
        "b", argument="cap", closes="sewn", takes="allowance", role="sleeve", fills={"sleeve": "piece"}
    )
    b: tuple[Run, ...] = meets("a", argument="armhole", closes="sewn", takes="allowance", fills={"edge": "place"})
    allowance: float = width()
    ease: float = size(default=0, fills="length")
    press: str = pressing(default="one side")
    finish: str = word(FINISHES, default="zigzag", fills={"": "word.finish"})
    trim: bool = flag(default=True)

    @property
    def pressed(self) -> str:
        """The end of the key of how it is pressed: towards the sleeve, open, or towards the garment."""
        if self.press == "open":
            return "_open"
        return "_garment" if self.press in {run.piece for run in self.b} else ""

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        cap, hole = shown(pattern, self.a[0]), shown(pattern, self.b[0])
        drawn = (Row(cap, inset=-3.0, style="gather"),) if self.ease > 0 else ()
        set_in = laid(hole, Row(hole), up="wrong", pins=(hole,), section=section.sleeve_set(self.pressed))
        return (laid(cap, *drawn, up="wrong"), set_in)
