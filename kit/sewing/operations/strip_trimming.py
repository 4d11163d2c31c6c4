"""Scissors on the allowances of a strip's seam: before it is turned, or where it is sewn to an edge."""

from __future__ import annotations

from kit.sewing import section
from kit.sewing.handle import StripEdges
from kit.sewing.sections import finishes as shapes
from kit.sewing.vocabulary import *

LEFT_AT_LEAST = 2.0
"""mm of allowance that must stay beside a row so that it does not fray out (common practice, no source)."""


def parted(reader: Reader, given: Iterable[Any], where: str) -> tuple[tuple[Run, ...], tuple[StripEdges, ...]]:
    """What is written for scissors: edges of pieces, or edges of strips. Raises `KitError` for both at once, and for a
    strip without its edges."""
    flat = [each for one in given for each in (one if isinstance(one, list | tuple) else (one,))]
    whole = next((each for each in flat if isinstance(each, StripHandle)), None)
    if whole is not None:
        raise KitError(
            f"{whole.strip.title} is a whole strip, and its edges are wanted.",
            where=where,
            do=f"Write {whole.name}.sides or {whole.name}.ends.",
        )
    strips = tuple(each for each in flat if isinstance(each, StripEdges))
    if strips and len(strips) < len(flat):
        raise KitError(
            "edges of pieces and of strips are named together.", where=where, do="Write two calls, one for the strips."
        )
    return (() if strips else reader.runs(flat, where)), strips


def seam_of(made: Iterable[Any], name: str) -> Any:
    """The operation that sews the seam of a strip, by itself or to an edge; None before there is one."""
    whole = (each.entire for each in made)
    return next((each for each in whole if each.kind in ("turn_strip", "bias_facing") and each.name == name), None)


def _seam(pattern: Cut, name: str) -> Any:
    return seam_of((each for record in getattr(pattern, "sewing", ()) for each in record.operations), name)


def _in_reach(cut: OnStrip, state: State, pattern: Cut) -> Iterator[Case]:
    known = {fact[1] for fact in state.facts if fact[0] == "strip_seam"}
    return (Case(each.strip in known, pattern.strip(each.strip)) for each in cut.strips)


def _end_seamed(cut: OnStrip, state: State, pattern: Cut) -> Iterator[Case]:
    for each in cut.strips:
        slanted = getattr(_seam(pattern, each.strip), "slant", 0.0) > 0
        yield Case(each.which == "sides" or slanted, pattern.strip(each.strip))


def _stays(cut: OnStrip, state: State, pattern: Cut) -> Iterator[Case]:
    values = {"least": measured(LEFT_AT_LEAST, "allowance")}
    return (Case(cut.to >= LEFT_AT_LEAST, pattern.strip(each.strip), values=values) for each in cut.strips)


def _takes_off(cut: OnStrip, state: State, pattern: Cut) -> Iterator[Case]:
    wide = {fact[1]: float(fact[2]) for fact in state.facts if fact[0] == "strip_seam"}
    for each in cut.strips:
        width = wide.get(each.strip, cut.to + 1.0)
        values = {"width": measured(width, "allowance"), "to": measured(cut.most, "allowance")}
        yield Case(cut.most < width - 0.5, pattern.strip(each.strip), amount=cut.most - width, values=values)


@operation(verb="")
class OnStrip(Operation):
    """Base: the allowances of the edges `strips` are cut back, one of them or both, `to` a width."""

    tools = ("scissors",)
    says = (lambda cut, pattern: cut.cuts(pattern),)
    gives: ClassVar[tuple[Of, ...]] = ()
    leaves: ClassVar[Section] = section.superimposed("strip", "strip")
    rules = (
        Rule(Asking(_in_reach), "strip_seam_not_sewn", each=True, ends="all"),
        Rule(Asking(_end_seamed), "strip_end_open", each=True, ends="all"),
        Rule(Asking(_stays), "trimmed_away"),
        Rule(Asking(_takes_off), "strip_nothing_to_trim", do="nothing_to_trim_do", each=True),
    )

    strips: tuple[StripEdges, ...] = ()
    to: float = 0.0

    @property
    def most(self) -> float:
        """mm of the widest allowance that is left."""
        return self.to

    @property
    def uses(self) -> Uses:
        return Uses(strips={each.strip: 0 for each in self.strips})

    def key(self, each: StripEdges, pattern: Cut) -> str:
        """The key of what is cut there."""
        return each.which

    def cuts(self, pattern: Cut) -> Iterator[Sentence]:
        """What is cut of each."""
        lengths = {"to": (self.to, "allowance"), "wider": (self.most, "allowance")}
        for each in self.strips:
            yield Sentence(f"{self.kind}.{self.key(each, pattern)}", {"strip": (each.strip, "strip"), **lengths})

    def minutes(self, pattern: Cut) -> float:
        """2 minutes for each edge of every strip (common practice, no source)."""
        return 1.0 + 2.0 * sum(pattern.strip(each.strip).count for each in self.strips)

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        name = self.strips[0].strip
        seam = _seam(pattern, name)
        if seam is not None and seam.kind == "bias_facing":
            return (replace(seam.scenes(pattern)[0], section=self.leaves, pins=()),)
        ends, sides = (any(each.which == which for each in self.strips) for which in ("ends", "sides"))
        tube = StripShape(
            slant=getattr(seam, "slant", 0.0),
            tube=True,
            seam=getattr(seam, "allowance", self.to),
            back=self.most if sides else 0.0,
            back_end=self.most if ends else 0.0,
            upper=self.to if sides and self.to < self.most else 0.0,
            old=True,
        )
        return (lone(name, tube, self.leaves),)


@operation(verb="")
class TrimStrip(OnStrip):
    """The allowances along the seam of a strip trimmed, or those across its seamed end."""

    kind = "trim_strip"
    called = "trim"
    why = ("trim.why",)

    half: bool = False

    def key(self, each: StripEdges, pattern: Cut) -> str:
        return each.which + "_half" * self.half


@operation(verb="")
class GradeStrip(OnStrip):
    """The two allowances of a strip's seam trimmed to different widths, `wider` the one that lies next to the
    outside."""

    kind = "grade_strip"
    called = "grade"
    why = ("grade.why",)
    leaves = shapes.graded("strip")

    wider: float = 0.0

    @property
    def most(self) -> float:
        return self.wider

    def key(self, each: StripEdges, pattern: Cut) -> str:
        seam = _seam(pattern, each.strip)
        return "sides_on" if seam is not None and seam.kind == "bias_facing" else each.which
