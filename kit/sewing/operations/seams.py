"""Seams that join two runs: the plain seam and the French seam."""

from __future__ import annotations

import math
from typing import Literal

from kit.sewing import section
from kit.sewing.caught import with_caught
from kit.sewing.fields import opening
from kit.sewing.operations.joined import eased, not_basted, pinned, pressed, pressing
from kit.sewing.operations.joined import length_gap as length_gap
from kit.sewing.operations.openings import (
    AGAIN,
    GAP_WIDE,
    OPENED,
    UNTRIMMED,
    WITHIN,
    OpenSeam,
    clipped,
    gap_along,
    left_open,
    left_raw,
)
from kit.sewing.sections import seams as shapes
from kit.sewing.vocabulary import *

_OVER_EDGE = 1.5  # mm inside a raw edge that the middle of its zigzag is drawn
NARROWEST = 3.0  # mm; a French seam's second row shuts in no less (common practice, no source)


def _bound(seam: PlainSeam, state: State, pattern: Cut) -> Iterator[Case]:
    """What is left of the strip goes round the allowances."""
    strip, wanted = pattern.strip(seam.binding), seam.bound_length(pattern)
    left = (strip.count - state.count(seam.binding)) * strip.length
    yield off_by(strip, wanted - left, wanted=wanted, left=left)


@operation
class PlainSeam(OpenSeam):
    """One row, right sides together. `opening` is a mark on the seam, or (start, end) along `a`. `finish`: zigzag,
    overlock, pinked, bound (with the strip `binding`, or bought binding) or none, of each allowance or of both
    `together`. `press`: open, one side, a piece's name, or "later" with `make.press` to follow. `ends`: "raw edge", or
    "stitch line" to begin and end where the neighbouring stitch lines cross.

    Example::

        make.plain_seam(front.side, back.side, allowance=1.5 * cm, finish="overlock")
    """

    kind = "plain_seam"
    seam_class = "1.01.01"
    tools = ("machine", "pins", "iron")
    says = (
        pinned("right"),
        Say("plain_seam.sew", lambda seam: seam.ends == "raw edge", "plain_seam.sew_line_to_line"),
        left_open,
        left_raw,
        lambda seam, pattern: seam.finished(),
        pressed,
        lambda seam, pattern: () if seam.press in ("open", "later") else clipped(seam, pattern),
        Say("plain_seam.opening_edges", lambda seam: seam.is_open),
        Say("plain_seam.gap_edges", lambda seam: seam.gap is not None),
        both_open("a", "b"),
    )
    why = (
        Say("why_line_to_line", lambda seam: seam.ends == "stitch line"),
        Say("why_later", lambda seam: seam.press == "later"),
        Say("why_open", lambda seam: seam.press == "open"),
        Say("why_one_side", lambda seam: seam.press not in ("later", "open")),
    )
    changes = (
        Brings("made", lambda seam, pattern: (seam.binding,) if seam.binding else ()),
        Brings("attached", lambda seam, pattern: seam.strips(pattern)),
    )
    rules = (
        *WITHIN,
        GAP_WIDE,
        Rule(Asking(_bound), "binding_short", says="binding_short_seam", when=lambda seam: seam.binding),
    )

    allowance: float = width()
    press: str = pressing("later", default="open")
    finish: str = word(("bound", *FINISHES), default="zigzag")
    gap: tuple[float, float] | None = opening("a", "b")  # mm along a: unsewn and raw until it is slip-stitched
    ease: float = eased()
    together: bool = flag(default=False)
    binding: str = strip(default=None)
    ends: str = word(("raw edge", "stitch line"), default="raw edge")

    @classmethod
    def agree(cls, asked: Asked) -> None:
        read, where = asked.read, asked.where
        if read["together"] and read["press"] == "open":
            raise KitError(
                "allowances finished together cannot be pressed open.",
                where=where,
                do='Write press="one side", or leave out together=True.',
            )
        if read["binding"] and read["finish"] != "bound":
            says = f"a binding is named, but the finish is '{read['finish']}'."
            raise KitError(says, where=where, do='Write finish="bound".')
        if read["opening"] is not None and read["gap"] is not None:
            says = "an opening that stays and a gap for turning are both named."
            raise KitError(says, where=where, do="Leave one of them out, or sew the seam in two parts.")
        if read["ends"] == "stitch line" and (read["opening"] is not None or read["gap"] is not None):
            says = "a row that stops at the stitch lines has no opening as well."
            raise KitError(says, where=where, do="Leave one of them out.")

    @classmethod
    def made(cls, asked: Asked) -> PlainSeam:
        bought = asked.read["finish"] == "bound" and not asked.read["binding"]
        return (BoundSeam if bought else PlainSeam)(**asked.read)

    def bound_length(self, pattern: Cut) -> float:
        """mm of binding that a bound finish takes, both halves together."""
        if self.finish != "bound":
            return 0.0
        runs = self.a if self.together else self.runs()
        return sum(run_length(pattern, run) * len(sides_of(pattern, run)) for run in runs)

    def strips(self, pattern: Cut) -> dict[str, int]:
        """How many of its strip bind the allowances."""
        if not self.binding:
            return {}
        return {self.binding: max(1, math.ceil(self.bound_length(pattern) / pattern.strip(self.binding).length - 1e-6))}

    def gaps(self, pattern: Cut) -> tuple[Run, ...]:
        return left_of(pattern, self, self.gap)

    def closes(self, pattern: Cut) -> tuple[Closing, ...]:
        raw = [span for run in self.gaps(pattern) for span in spans(pattern, run)]
        found = super().closes(pattern)
        return tuple(Closing(span, each.how) for each in found for span in minus((each.span,), raw))

    def finished(self) -> tuple[Sentence, ...]:
        """What keeps the raw edges from fraying."""
        if self.finish == "none":
            return ()
        if self.finish == "bound":
            key = f"bound{'_together' if self.together else ''}{'' if self.binding else '_bought'}"
            return (Sentence(f"plain_seam.{key}", {"strip": (self.binding, "strip")} if self.binding else {}),)
        key = "plain_seam.finish_together" if self.together else "plain_seam.finish"
        return (Sentence(key, {"finish": (f"finish.{self.finish}", "word")}),)

    def _section(self) -> Section:
        if self.press == "open":
            return shapes.bound_open() if self.finish == "bound" else section.pressed_open()
        return section.superimposed() if self.press == "later" else shapes.pressed_one_side()

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        a, b = (shown(pattern, row[0], side_of(self.half)) for row in (self.a, self.b))
        left = self.opening or self.gap
        turned = (Row(shown(pattern, run), inset=self.allowance / 2) for run in self.openings(pattern))
        rows = (Row(a, ink="old", gap=left), *(turned if self.opening is not None else ()))
        pressed = {"open": (a, b), "one side": (a,), "later": ()}.get(
            self.press, (a,) if self.press == a.piece else (b,)
        )
        first = with_caught(pattern, self, together(b, a, Row(a, gap=left), section=section.superimposed()))
        if self.press == "later" and not self.is_open:  # the pieces still lie on each other
            return (first,)
        return (first, self._opened(pattern, a, b, rows, tuple((run, "in") for run in pressed)))

    def _opened(
        self, pattern: Cut, a: Run, b: Run, rows: tuple[Row, ...], arrows: tuple[tuple[Run, Literal["in"]], ...]
    ) -> Scene:
        """The seam opened out and pressed; where an opening was left, it is that which is seen."""
        if self.finish in ("zigzag", "overlock") and not self.is_open:
            edges = (a, b) if self.press == "open" else (a,) if self.press != b.piece else (b,)
            ends = {a: self.gap, b: gap_along(pattern, a, b, self.gap) if self.gap else None}
            far = self.allowance - _OVER_EDGE
            rows += tuple(Row(run, inset=far, ink="old", zigzag=True, gap=ends[run]) for run in edges)
        scene = opened(b, a, *rows, arrows=arrows, section=self._section())
        if self.press not in ("open", "later") and not self.is_open:
            scene = over_to_one_side(scene, a, self.press, self.allowance)
        mine = [shown(pattern, run) for run in self.openings(pattern) if (run.piece, run.edges) == (a.piece, a.edges)]
        return replace(scene, focus=around(pattern, a, *_middle(pattern, a, mine[0]))) if mine else scene


def _middle(pattern: Cut, run: Run, part: Run) -> tuple[float, float]:
    """Where the middle of a part lies along its run, and as much as shows it with some of the seam, mm."""
    low, size = (part.start or 0.0) - (run.start or 0.0), run_length(pattern, part)
    return low + size / 2, size * 1.6


@operation(verb="")
class BoundSeam(PlainSeam):
    """A plain seam whose allowances are bound with bought binding."""

    kind = "bound_seam"
    notions = ("thread", "bias_binding")
    amounts = (("bias_binding", "bound_length", "length"),)


@operation
class FrenchSeam(OpenSeam):
    """Two rows: `first` from the edge wrong sides together, `second` from the crease right sides together. `trim`: how
    wide the first allowances are left in between.

    Example::

        make.french_seam(front.shoulder, back.shoulder, first=6 * mm, second=4 * mm)
    """

    # superimposed; order: A Complete Course in Dressmaking, vol. 1 (1921), p. 98
    kind = "french_seam"
    called = "French seam"
    seam_class = "1"
    tools = ("machine", "pins", "iron", "scissors")
    stages = (
        Stage("first", (pinned("wrong"), "first", left_open), closes={"a": "sewn", "b": "sewn"}, joins=True),
        OPENED,
        Stage("second", ("{trimmed}", UNTRIMMED, "turn", "second", AGAIN, "takes", pressed)),
    )
    lastly = (both_open("a", "b"),)
    why = ("why", "why_wrong_sides")
    also = (Also("total", lambda seam, pattern: seam.depth),)
    gives = (Of("shut_in", "a"), Of("shut_in", "b"))
    rules = (
        Rule(
            Excess(lambda seam: seam.trim - seam.second, of="a", slack=-0.5 - 1e-6),
            "french_seam_trimmed",
            when=lambda seam: seam.trim is not None,
        ),
        *WITHIN,
        *not_basted(),
        at_least("second", NARROWEST, "french_seam_rows", of="a"),
    )

    a: tuple[Run, ...] = meets("b", closes="sewn", takes=("first", "second"))
    b: tuple[Run, ...] = meets("a", closes="sewn", takes=("first", "second"))
    first: float = width(said="first row", fills="part")
    second: float = width(said="second row", fills="part")
    press: str = pressing(default="one side")
    ease: float = eased()
    trim: float | None = width(default=None)

    @classmethod
    def agree(cls, asked: Asked) -> None:
        if asked.read["press"] == "open":
            raise KitError(
                "a French seam cannot be pressed open: its edges are shut in.",
                where=asked.where,
                do='Write press="one side" or the name of one of its pieces.',
            )

    @property
    def trimmed(self) -> str:
        """The key of how the first allowances are trimmed."""
        if self.trim is not None:
            return "trim_to"
        if self.first > self.second + 0.5:
            return "trim_narrow"
        return "trim_sliver" if self.first > self.second - 1.0 else "trim"

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        a, b = (shown(pattern, row[0], side_of(self.half)) for row in (self.a, self.b))
        outer = Row(a, inset=-self.second, gap=self.opening)
        before = together(b, a, outer, facing="wrong", section=section.french_first(), stage="first")
        sewn = replace(outer, ink="old")
        trimmed = together(b, a, sewn, facing="wrong", section=shapes.french_trimmed(), stage="second", once=True)
        cut = tuple(replace(each, trimmed=((each.run, self.second + self.narrowed),)) for each in trimmed.layers)
        after = Scene(
            layers=tuple(
                replace(each, back=self.back(pattern, each.run), creased=((each.run, self.second),))
                for each in together(b, a).layers
            ),
            rows=(sewn, Row(a, gap=self.opening)),
            focus=a,
            section=section.french_second(),
            stage="second",
        )
        return (
            before,
            *((self.opening_scene(pattern, a, sewn),) if self.is_open else ()),
            replace(trimmed, layers=cut),
            after,
            pressed_over(
                b,
                a,
                self.press,
                self.second,
                Row(a, ink="old", gap=self.opening),
                section=shapes.enclosed_pressed(),
                stage="second",
                once=True,
            ),
        )

    @property
    def narrowed(self) -> float:
        """mm left of the first allowances outside the first row before the second is sewn."""
        return self.trim if self.trim is not None else max(min(self.first, self.second) - 1.0, 1.0)
