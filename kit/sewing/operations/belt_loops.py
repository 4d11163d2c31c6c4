"""Belt loops."""

from __future__ import annotations

from kit.sewing.operations.strips import ATTACHED, ON_THE_RUN, OnRun, spotted
from kit.sewing.places import part
from kit.sewing.vocabulary import *


def _comes_out(loop: BeltLoop, state: State, pattern: Cut) -> Iterable[Case]:
    """It comes out as long as the strip is meant to be."""
    strip, left = pattern.strip(loop.name), loop.length(pattern)
    if meant := strip.finished_length:
        yield off_by(strip, abs(left - meant), length=strip.length, left=left, finished_length=meant)


def _seam_sewn(loop: BeltLoop, state: State, pattern: Cut) -> Iterable[Case]:
    values = {"place": placed(pattern, loop.seam)}
    yield Case(state.is_closed(pattern, loop.seam), pattern.strip(loop.name), values=values)


def _over_opening(loop: BeltLoop, state: State, pattern: Cut) -> Iterable[Case]:
    """No opening that was left in the seam lies under it."""
    size, long = run_length(pattern, loop.seam), max(loop.length(pattern), 0.0)
    top = min(loop.at, max(size - long, 0.0))
    covered = spans(pattern, part(pattern, loop.seam, top, top + long))
    free = any(done.how == "hemmed" and done.span.overlap(own) > 1.0 for own in covered for done in state.closed)
    yield Case(not free, pattern.strip(loop.name), values={"place": placed(pattern, loop.seam)})


@operation
class BeltLoop(OnRun):
    """Stitch a made strip over a seam as a loop, its top end `at` along the seam, or at a mark on it.

    Example::

        make.plain_seam(front.side, back.side, allowance=1.5 * cm)
        make.fold_strip(loop, ends=0)
        make.belt_loop(loop, front.side, at=10 * cm)
    """

    kind = "belt_loop"
    why = ()
    says = ("turn", "place", "sew")
    also = (
        Also("length", lambda loop, pattern: loop.length(pattern), "length"),
        Also("at", lambda loop, pattern: (loop.seam, loop.at), "spot"),
    )
    rules = (
        *ATTACHED,
        ON_THE_RUN,
        Rule(Asking(_comes_out), "strip_length"),
        Rule(Asking(_seam_sewn), "loop_before_seam", do="do_sew_seam_first", on="seam"),
        Rule(Asking(_over_opening), "loop_over_opening", on="seam"),
    )

    seam: Run = read_by(spotted(0, "seam"), "Run | Place", way="place", fills={"": "edge"})
    at: float = read_by(spotted(1, "seam"), "Size | None", default=None, held=0.0, fills={"": "length"})
    ends: float = size(default=10 * mm)

    def length(self, pattern: Cut) -> float:
        """mm of the loop once both its ends are turned under."""
        return pattern.strip(self.name).length - 2 * self.ends

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        run = shown(pattern, self.seam)
        loop = max(self.length(pattern), 10.0)
        top = min(self.at, max(run_length(pattern, run) - loop, 0.0))
        covered = part(pattern, run, top, top + loop)
        return (laid(run, focus=covered, strip=self.name),)
