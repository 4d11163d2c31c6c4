"""The invisible zip: sewn to each allowance by itself, before the seam below it."""

from __future__ import annotations

from kit.sewing.operations.zips import TOP, Zip, closed_above, equal_sides
from kit.sewing.sections import closures as section
from kit.sewing.vocabulary import *

SPARE = 20.0
"""mm by which an invisible zip must reach below its opening: the slider has to lie there while the last stitches are
made, and no foot passes it (common practice, no source)."""


_BESIDE = 1.5  # mm from the coil to the row, in the pictures


def _too_short(zip: InvisibleZip, state: State, pattern: Cut) -> Iterator[Case]:
    """Whether the slider finds room below the last stitch."""
    opening = run_length(pattern, zip.over)
    least = opening - zip.from_top + SPARE
    yield off_by(zip.over, least - zip.length, length=zip.length, opening=opening, least=least)


def _seam_below(zip: InvisibleZip, state: State, pattern: Cut) -> Iterator[Case]:
    """A zip is sewn to two flat pieces: past one end of its opening the edge must still be raw, as far as the spare
    length of the zip reaches. (An opening in the middle of a seam may have the other end sewn.)"""
    for run in zip.runs():
        beside: list[Run] = []
        for span in spans(pattern, run):
            (whole,) = spans(pattern, Run(run.piece, (span.edge,), span.side))
            for rest in minus([whole], [span]):
                near = rest.start, min(rest.end, rest.start + SPARE)
                if rest.end <= span.start + 1e-6:
                    near = max(rest.start, rest.end - SPARE), rest.end
                if near[1] - near[0] > 0.5:
                    beside.append(Run(run.piece, (rest.edge,), rest.side, *near))
        sewn = [each for each in beside if not state.is_raw(pattern, each)]
        yield Case(not beside or len(sewn) < len(beside), sewn[0] if sewn else run)


@operation
class InvisibleZip(Zip):
    """Set in an invisible zip: parts of two edges or opening marks. The seam below it is sewn afterwards.

    Example::

        left, right = skirt_back.left.zip_opening, skirt_back.right.zip_opening
        make.invisible_zip(left, right, allowance=2 * cm, length=25 * cm)
    """

    kind = "invisible_zip"
    notions = ("thread", "invisible_zip")
    amounts = (("invisible_zip", "length", "length"),)
    says = ("coil", "lay_first", "stitch_first", "lay_second", "close", "ends")
    why = ("why", "why_seam")
    rules = (
        Rule(Asking(equal_sides), "zip_sides"),
        Rule(Asking(_too_short), "zip_short", says="zip_ends_short"),
        Rule(Asking(_seam_below), "seam_before_zip"),
        Rule(First(closed_above, "above"), "zip_late"),
    )

    lap: float = fixed(0.0)
    from_top: float = size(default=5 * mm, most=TOP)

    def top(self, pattern: Cut) -> float:
        return self.from_top

    @property
    def beside(self) -> float:
        return -_BESIDE

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        under = shown(pattern, self.under)
        tape, shape = Thing("zip_tape", under, self.line(pattern, under), 13.0), section.zip_invisible_first()
        first = laid(under, Row(under, inset=-_BESIDE), things=(tape,), section=shape)
        return (first, self._set_in(pattern, section.zip_invisible()))
