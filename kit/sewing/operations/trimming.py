"""Work with the scissors on allowances already sewn: clip, notch, trim, grade; and tacking down what they leave."""

from __future__ import annotations

from collections.abc import Iterable
from typing import ClassVar, Literal

from kit.sewing import section
from kit.sewing.reading import in_call
from kit.sewing.sections import finishes as shapes
from kit.sewing.vocabulary import *

Bend = Literal["in", "out", "straight"]
LEFT_AT_LEAST = 2.0
"""mm of allowance that must stay beside a row so that it does not fray out (common practice, no source)."""
CLIP_SPACING = 15.0  # mm from clip to clip (common practice, no source)
_BENT = 0.5  # mm from chord to curve that count as a bend


def bend(pattern: Cut, run: Run) -> Bend:
    """Whether the run bends into its piece, as a neck does, or out of it, as a rounded collar's edge."""
    piece, path = pattern.piece(run.piece), path_of(pattern, run)
    middle = path.at(path.length / 2)
    chord = path.start.mid(path.end)
    if middle.distance(chord) < _BENT:
        return "straight"
    return "out" if piece.outline.contains(middle.lerp(chord, 0.05)) else "in"


def _sewn_and_in_reach(kind: str) -> tuple[Rule, ...]:
    """What scissors on an allowance need: its seam is sewn, and nothing shuts it in yet."""
    early = Rule(
        Raw("along"),
        f"{kind}_early",
        holds=False,
        says="cut_into_early",
        do="do_sew_seam_first",
        each=True,
        ends="next",
    )
    shut_in = Of("shut_in", "along", each="run")
    late = Rule(shut_in, f"{kind}_late", holds=False, says="cut_into_late", do="cut_into_late_do", each=True)
    return (early, late)


def _does_not_bend(wrong: Bend) -> Asking:
    return Asking(lambda cut, state, pattern: (Case(bend(pattern, run) != wrong, run) for run in cut.along))


_FRAYS = Rule(
    Excess(lambda cut: LEFT_AT_LEAST - cut.to, of="along", values={"least": measured(LEFT_AT_LEAST, "allowance")}),
    "trimmed_away",
    tells=("to",),
    do_tells=("least",),
    each=True,
)


@operation
class OnAllowance(Operation):
    """Scissors on the allowances along sewn edges. They close nothing and take nothing."""

    stitch_type = ""
    cautions = ("scissors",)
    tools = ("scissors",)
    notions = ()
    says = ("cut", both("along"))
    why = ("why",)
    gives = (Of("{kind}", "along"),)
    also = (Also("spacing", CLIP_SPACING),)
    leaves: ClassVar[Section] = section.superimposed()

    along: tuple[Run, ...] = runs()

    def minutes(self, pattern: Cut) -> float:
        """2 minutes an edge (common practice, no source)."""
        return 1.0 + 2.0 * sum(len(sides_of(pattern, run)) for run in self.along)

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        run = shown(pattern, self.along[0])
        return (laid(run, Row(run, ink="old"), up="wrong", section=self.leaves),)


@operation
class Clip(OnAllowance):
    """Snip into the allowance of a sewn edge that bends inward.

    Example::

        make.clip(front.neck, back.neck)
    """

    kind = "clip"
    rules = (*_sewn_and_in_reach("clip"), Rule(_does_not_bend("out"), "clipped_outward_curve", each=True))


@operation
class NotchCurve(OnAllowance):
    """Cut wedges out of the allowance of a sewn edge that bends outward.

    Example::

        make.plain_seam(front.armhole, front_lining.armhole, allowance=1 * cm)
        make.notch_curve(front.armhole)
    """

    kind = "notch_curve"
    called = "notch the curve"
    rules = (*_sewn_and_in_reach("notch_curve"), Rule(_does_not_bend("in"), "notched_inward_curve", each=True))


def _takes_off(trim: Trim, state: State, pattern: Cut) -> Iterable[Case]:
    """The allowance is wider than what is to be left of it."""
    for run in trim.along:
        widths = [pattern.piece(run.piece).edge(name).allowance for name in run.edges]
        narrow = next((width for width in widths if width is not None and trim.to >= width - 0.5), None)
        if narrow is not None:
            yield Case(False, run, amount=trim.to - narrow, values={"width": measured(narrow, "allowance")})


@operation
class Trim(OnAllowance):
    """Cut the allowance of a sewn edge back `to` a width.

    Example::

        make.plain_seam(front.shoulder, back.shoulder, allowance=1.5 * cm)
        make.trim(front.shoulder, to=6 * mm)
    """

    kind = "trim"
    rules = (
        *_sewn_and_in_reach("trim"),
        _FRAYS,
        Rule(Asking(_takes_off), "nothing_to_trim", tells=("place", "width", "to"), each=True),
    )

    to: float = width(said="width")


@operation
class Grade(OnAllowance):
    """Trim the allowances of a seam to two widths: `to` at this edge, `wider` at the one it is sewn to.

    Example::

        make.grade(front_facing.inner, back_facing.inner, to=4 * mm, wider=7 * mm)
    """

    kind = "grade"
    leaves = shapes.graded()
    rules = (*_sewn_and_in_reach("grade"), _FRAYS, Rule(Seamed("along"), "one_layer_graded", each=True))

    to: float = width(default=4 * mm, said="narrower")
    wider: float = width(default=7 * mm)  # of the edge it is sewn to, which lies next to the outside

    @classmethod
    def agree(cls, asked: Asked) -> None:
        narrow, wide = asked.read["to"], asked.read["wider"]
        if wide <= narrow:
            raise KitError(
                message("refusal.grade", wide=measured(wide, "allowance"), narrow=measured(narrow, "allowance")),
                where=in_call(asked.where),
                do=message("refusal.grade_do"),
            )


def _held(tack: TackDown, state: State, pattern: Cut) -> Iterable[Case]:
    """Where all edges are sewn, what is tacked hangs together with what it is tacked to."""
    if not all(state.is_closed(pattern, run) for run in tack.runs()):
        return
    parts = [(run.piece, side) for run in tack.to for side in sides_of(pattern, run)]
    for run in tack.edges:
        for side in sides_of(pattern, run):
            yield Case(any(state.joined((run.piece, side), part) for part in parts), run)


@operation
class TackDown(Operation):
    """Hold the finished edges of a facing to the allowances of the seams `to` they cross.

    Example::

        make.tack_down(front_facing.outer, to=front.shoulder)
    """

    kind = "tack_down"
    stitch_type = ""
    tools = ("hand_needle",)
    says = ("sew", both("to"))
    why = ("why",)
    gives = (Of("tacked", "edges"),)
    rules = (
        Rule(Closed("edges"), "tacked_raw", each=True),
        Rule(Closed("to"), "tacked_to_no_seam", each=True),
        Rule(Asking(_held), "tacked_loose", tells=("piece",)),
    )

    edges: tuple[Run, ...] = runs()
    to: tuple[Run, ...] = row(by_name=True, said="seam", fills={"seam": "place"})

    def minutes(self, pattern: Cut) -> float:
        """3 minutes at each seam (common practice, no source)."""
        return 1.0 + 3.0 * sum(len(sides_of(pattern, run)) for run in self.to)

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        run = shown(pattern, self.edges[0])
        return (laid(run, Row(run, inset=1.0, style="hand"), stuff="facing", section=shapes.tacked()),)
