"""Strips made by themselves, before they are sewn to anything: folded in four, seamed and turned, hemmed."""

from __future__ import annotations

from kit.sewing import section
from kit.sewing.pieced import joining, pieced
from kit.sewing.scene import StripShape
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


def _cut_to(asked: Asked, folds: tuple[str, ...], said: str) -> None:
    """Raises `KitError` for a strip that is cut for something else."""
    found = asked.reader.cut.strip(asked.read["name"])
    if found.fold not in folds:
        raise KitError(
            f"it is cut {_CUT_FOR[found.fold]}, not {said}.",
            where=found.title,
            do=f"Write {_VERB_FOR[found.fold]} for it, or cut it {_CUT_FOR[folds[0]]}.",
        )


def _alike(make: MakeStrip, pattern: Cut) -> tuple[Sentence, ...]:
    """All of its count are made at once."""
    return make.told(("count",), pattern) if pattern.strip(make.name).count > 1 else ()


def _comes_out(make: MakeStrip, state: State, pattern: Cut) -> Iterable[Case]:
    """It comes out as wide as the strip is meant to be."""
    strip = pattern.strip(make.name)
    comes, meant = make.finished_width(strip.width), strip.finished_width
    if meant:
        values = {"width": measured(strip.width), "comes": measured(comes), "finished_width": measured(meant)}
        yield Case(abs(comes - meant) <= 0.5, strip, amount=abs(comes - meant), values=values)


@operation
class MakeStrip(Operation):
    """Base of the ways of making a strip; all of its `count` are made at once."""

    tools: ClassVar[tuple[str, ...]] = ("machine", "iron")
    rules: ClassVar[tuple[Rule, ...]] = (
        Rule(Made("name"), "strip_made_twice", holds=False, tells=()),
        Rule(Asking(_comes_out), "strip_width", tells=("width", "comes", "finished_width")),
    )
    also: ClassVar[tuple[Also, ...]] = (
        Also("count", lambda make, pattern: pattern.strip(make.name).count, "count"),
        Also("width", lambda make, pattern: make.finished_width(pattern.strip(make.name).width)),
    )

    name: str = strip(argument="strip", fills={"strip": "strip"})

    def finished_width(self, width: float) -> float:
        """mm across when made, from mm as cut."""
        raise NotImplementedError

    @property
    def section(self) -> Section:
        """It cut through, when made."""
        raise NotImplementedError

    @property
    def shape(self) -> StripShape:
        """How it is drawn, when made."""
        raise NotImplementedError

    @property
    def uses(self) -> Uses:
        return Uses(strips={self.name: 0})

    def effect(self, pattern: Cut) -> Effect:
        return replace(super().effect(pattern), made=(self.name,))

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        made = Scene(layers=(), section=self.section, strip=self.name, shape=self.shape)
        return (*joining(self, pattern), made)


@operation
class FoldStrip(MakeStrip):
    """Make a strip folded in four and edgestitched, along "both sides" or the open one alone.

    Example::

        make.fold_strip(loop, edgestitch=2 * mm, ends=0)
    """

    kind = "fold_strip"
    seam_class = "8"  # ISO 4916, single-ply items such as loops and straps, from memory
    says = (
        pieced,
        "half",
        Say("ends", lambda fold: fold.ends > 0),
        "quarter",
        lambda fold, pattern: fold.told(("sew" if fold.sides == "both sides" else "sew_one",), pattern),
        _alike,
    )

    edgestitch: float = width(default=2 * mm)
    sides: str = word(ROWS, default="both sides")
    ends: float = size(default=10 * mm)

    @classmethod
    def agree(cls, asked: Asked) -> None:
        _cut_to(asked, ("in_four",), "in four")

    def finished_width(self, width: float) -> float:
        return width / 4

    @property
    def section(self) -> Section:
        return section.folding_in_four(self.sides == "both sides")

    @property
    def shape(self) -> StripShape:
        return StripShape(rows=_beside(self.sides, self.edgestitch))


def _beside(sides: str, distance: float) -> tuple[Any, ...]:
    """The rows of edgestitching as they are drawn."""
    return tuple((edge, distance) for edge in {"one side": ("open",), "both sides": ("open", "fold")}.get(sides, ()))


def _slant_fits(turn: TurnStrip, state: State, pattern: Cut) -> Iterable[Case]:
    strip = pattern.strip(turn.name)
    values = {"slant": measured(turn.slant), "length": measured(strip.length)}
    yield Case(turn.slant <= strip.length / 2, strip, amount=turn.slant - strip.length / 2, values=values)


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
    rules = (*MakeStrip.rules, Rule(Asking(_slant_fits), "slant_long", tells=("slant", "length")))

    allowance: float = width()
    ends: float = size(default=0)
    slant: float = size(default=0, most=DEEPEST_HEM, fills="length")  # by which the fold is longer than the seam
    stitched: str = word(("none", *ROWS), default="none")
    edgestitch: float = width(default=2 * mm)
    trim: bool = flag(default=True)

    @classmethod
    def agree(cls, asked: Asked) -> None:
        _cut_to(asked, ("in_two", "band"), "in two")
        found, width = asked.reader.cut.strip(asked.read["name"]), asked.read["allowance"]
        if width >= found.width / 2:
            raise KitError(
                message("refusal.strip_eaten", width=measured(width), cut=measured(found.width)),
                where=found.title,
                do=message("refusal.strip_eaten_do"),
            )

    def finished_width(self, width: float) -> float:
        return width / 2 - self.allowance

    @property
    def section(self) -> Section:
        return section.turned_tube(("none", *ROWS).index(self.stitched))

    @property
    def shape(self) -> StripShape:
        return StripShape(slant=self.slant, rows=_beside(self.stitched, self.edgestitch))

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        tube = StripShape(slant=self.slant, tube=True, seam=self.allowance)
        sewn = Scene(layers=(), section=section.tube(), strip=self.name, shape=tube, stage="sew")
        return (*joining(self, pattern, "sew"), sewn, super().scenes(pattern)[-1])


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
    why = ("why",)

    turn: float = width(default=5 * mm, most=15.0)
    ends: str = word(("both", "one", "none"), default="both")

    @classmethod
    def agree(cls, asked: Asked) -> None:
        _cut_to(asked, ("hemmed",), "to be hemmed")

    def finished_width(self, width: float) -> float:
        return width - 4 * self.turn

    @property
    def section(self) -> Section:
        return section.hemmed_both()

    @property
    def shape(self) -> StripShape:
        return StripShape(hem=self.turn, hem_ends=("none", "one", "both").index(self.ends))
