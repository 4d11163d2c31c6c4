"""Strips made by themselves, before they are sewn to anything: folded in four, seamed and turned, hemmed."""

from __future__ import annotations

from kit.sewing import section
from kit.sewing.pieced import joining, pieced
from kit.sewing.vocabulary import *

_CUT_FOR = {
    "in_four": "to be folded in four",
    "in_two": "to be folded in two",
    "band": "as a band",
    "single_binding": "as a binding",
    "double_binding": "as a double binding",
    "hemmed": "to be hemmed",
}
_VERB_FOR = {
    "in_four": "make.fold_strip(...)",
    "in_two": "make.turn_strip(...)",
    "band": "make.turn_strip(...)",
    "single_binding": "make.bind(...)",
    "double_binding": "make.bind(...)",
    "hemmed": "make.hem_strip(...)",
}
ROWS = ("one side", "both sides")
"""Along which of its long edges a strip is edgestitched: the open or seamed one, or both."""


def _alike(make: MakeStrip, pattern: Cut) -> str:
    """All of its count are made at once."""
    return "count" if pattern.strip(make.name).count > 1 else ""


def _comes_out(make: MakeStrip, state: State, pattern: Cut) -> Iterable[Case]:
    """It comes out as wide as the strip is meant to be."""
    strip = pattern.strip(make.name)
    comes = make.finished_width(strip.width)
    if meant := strip.finished_width:
        yield off_by(strip, abs(comes - meant), width=strip.width, comes=comes, finished_width=meant)


@operation
class MakeStrip(Operation):
    """Base of the ways of making a strip; all of its `count` are made at once. `folds` are the ways it may be cut for,
    `said` is how refusals say that."""

    tools: ClassVar[tuple[str, ...]] = ("machine", "iron")
    rules: ClassVar[tuple[Rule, ...]] = (
        Rule(Made("name"), "strip_made_twice", holds=False),
        Rule(Asking(_comes_out), "strip_width"),
    )
    changes = (Brings("made", lambda make, pattern: (make.name,)),)
    also: ClassVar[tuple[Also, ...]] = (
        Also("count", lambda make, pattern: pattern.strip(make.name).count, "count"),
        Also("width", lambda make, pattern: make.finished_width(pattern.strip(make.name).width)),
    )

    folds: ClassVar[tuple[str, ...]]
    said: ClassVar[str]
    name: str = strip(argument="strip", fills={"strip": "strip"}, uses=0)

    @classmethod
    def agree(cls, asked: Asked) -> None:
        found = asked.reader.cut.strip(asked.read["name"])
        if found.fold not in cls.folds:
            raise KitError(
                f"it is cut {_CUT_FOR[found.fold]}, not {cls.said}.",
                where=found.title,
                do=f"Write {_VERB_FOR[found.fold]} for it, or cut it {_CUT_FOR[cls.folds[0]]}.",
            )

    def finished_width(self, width: float) -> float:
        """mm across when made, from mm as cut."""
        raise NotImplementedError

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        return (*joining(self, pattern, self.stages[0].name if self.stages else ""), *super().scenes(pattern))


@operation
class FoldStrip(MakeStrip):
    """Make a strip folded in four and edgestitched, along "both sides" or the open one alone.

    Example::

        make.fold_strip(loop, edgestitch=2 * mm, ends=0)
    """

    kind = "fold_strip"
    why = ()
    seam_class = "8"  # ISO 4916, single-ply items such as loops and straps, from memory
    says = (
        pieced,
        "half",
        Say("ends", lambda fold: fold.ends > 0),
        "quarter",
        Say("sew", lambda fold: fold.sides == "both sides", "sew_one"),
        _alike,
    )

    folds, said = ("in_four",), "in four"
    pictures = seen(
        lambda fold: lone(
            fold.name,
            StripShape(rows=_beside(fold.sides, fold.edgestitch)),
            section.folding_in_four(fold.sides == "both sides"),
        )
    )

    edgestitch: float = width(default=2 * mm)
    sides: str = word(ROWS, default="both sides")
    ends: float = size(default=10 * mm)

    def finished_width(self, width: float) -> float:
        return width / 4


def _beside(sides: str, distance: float) -> tuple[Any, ...]:
    """The rows of edgestitching as they are drawn."""
    return tuple((edge, distance) for edge in {"one side": ("open",), "both sides": ("open", "fold")}.get(sides, ()))


def _slant_fits(turn: TurnStrip, state: State, pattern: Cut) -> Iterable[Case]:
    strip = pattern.strip(turn.name)
    yield off_by(strip, turn.slant - strip.length / 2, 0.0, slant=turn.slant, length=strip.length)


SEAMED = Of("strip_seam", "name", each="piece", size="allowance")
"""The fact that a strip's seam is sewn, its allowances so wide, and scissors still reach them."""


@operation
class TurnStrip(MakeStrip):
    """Make a strip seamed right sides together and turned; with `slant`, one end is seamed on a slant. `stitched`:
    edgestitched then, `edgestitch` from "one side" (the seamed one) or "both sides". What steps of their own do is left
    out here: `trim=False`.

    Example::

        make.turn_strip(tie, allowance=6 * mm, ends=6 * mm)
    """

    kind = "turn_strip"
    why = ()
    seam_class = "1"
    tools = ("machine", "iron", "scissors", "turner")
    stages = (
        Stage(
            "sew",
            (
                pieced,
                "fold",
                "sew",
                Say("slant", lambda turn: turn.slant > 0),
                Say("slant_trim", lambda turn: turn.slant > 0 and turn.trim),
            ),
            gives=(SEAMED,),
            work=2.0,
        ),
        Stage(
            "turn",
            (
                "turn",
                Say("ends", lambda turn: turn.ends > 0),
                Say("stitch_one", lambda turn: turn.stitched == "one side"),
                Say("stitch_both", lambda turn: turn.stitched == "both sides"),
            ),
            undoes=(SEAMED,),
            brings=("made",),
        ),
    )
    lastly = (_alike,)
    rules = (*MakeStrip.rules, Rule(Asking(_slant_fits), "slant_long"))
    folds, said = ("in_two", "band"), "in two"
    pictures = seen(
        lambda turn: lone(
            turn.name, StripShape(slant=turn.slant, tube=True, seam=turn.allowance), section.tube(), stage="sew"
        ),
        lambda turn: lone(
            turn.name,
            StripShape(slant=turn.slant, rows=_beside(turn.stitched, turn.edgestitch), ends=turn.ends),
            section.turned_tube(("none", *ROWS).index(turn.stitched)),
        ),
    )

    allowance: float = width()
    ends: float = size(default=0)
    slant: float = size(default=0, most=DEEPEST_HEM, fills="length")  # by which the fold is longer than the seam
    stitched: str = word(("none", *ROWS), default="none")
    edgestitch: float = width(default=2 * mm)
    trim: bool = flag(default=True)

    @classmethod
    def agree(cls, asked: Asked) -> None:
        super().agree(asked)
        found, width = asked.reader.cut.strip(asked.read["name"]), asked.read["allowance"]
        if width >= found.width / 2:
            raise KitError(
                message("refusal.strip_eaten", width=measured(width), cut=measured(found.width)),
                where=found.title,
                do=message("refusal.strip_eaten_do"),
            )

    def finished_width(self, width: float) -> float:
        return width / 2 - self.allowance


@operation
class HemStrip(MakeStrip):
    """Make a strip of a single layer: a narrow hem of two equal turns along both long edges, and across "both" short
    ends, "one" (the other is caught in a seam or gathered) or "none".

    Example::

        make.hem_strip(sash, turn=5 * mm)
    """

    kind = "hem_strip"
    seam_class = "6.03.01"  # from memory
    says = (pieced, "turn", "sew", Say("ends_{ends}", lambda hem: hem.ends != "none"), _alike)
    folds, said = ("hemmed",), "to be hemmed"
    pictures = seen(
        lambda hem: lone(
            hem.name, StripShape(hem=hem.turn, hem_ends=("none", "one", "both").index(hem.ends)), section.hemmed_both()
        )
    )

    turn: float = width(default=5 * mm, most=15.0)
    ends: str = word(("both", "one", "none"), default="both")

    def finished_width(self, width: float) -> float:
        return width - 4 * self.turn
