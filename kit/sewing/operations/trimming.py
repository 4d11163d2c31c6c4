"""Work with the scissors on allowances already sewn: clip, notch, trim, grade; and tacking down what they leave."""

from __future__ import annotations

from dataclasses import dataclass
from typing import ClassVar, Literal

from kit.diagnostic import Diagnostic, measured, message, titled
from kit.errors import KitError
from kit.sewing import section
from kit.sewing.cut import Cut
from kit.sewing.named import placed
from kit.sewing.operation import Operation, Sentence, both_sides, shown
from kit.sewing.operations.joined import edge_facts, trouble_on
from kit.sewing.outcome import Effect
from kit.sewing.reading import Reader, Runs, in_call, read_width
from kit.sewing.run import Run
from kit.sewing.scene import Layer, Row, Scene, Section
from kit.sewing.sections import finishes as shapes
from kit.sewing.spans import path_of, sides_of
from kit.sewing.state import State
from kit.sewing.verb import verb
from kit.units import Length, Size

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


@dataclass(frozen=True, kw_only=True)
class OnAllowance(Operation):
    """Scissors on the allowances along sewn edges. They close nothing and take nothing."""

    stitch_type: ClassVar[str] = ""
    cautions: ClassVar[tuple[str, ...]] = ("scissors",)
    tools: ClassVar[tuple[str, ...]] = ("scissors",)
    notions: ClassVar[tuple[str, ...]] = ()

    along: tuple[Run, ...]

    def runs(self) -> tuple[Run, ...]:
        return self.along

    def minutes(self, pattern: Cut) -> float:
        """2 minutes an edge (common practice, no source)."""
        return 1.0 + 2.0 * sum(len(sides_of(pattern, run)) for run in self.along)

    def effect(self, pattern: Cut) -> Effect:
        return Effect(facts=edge_facts(pattern, self.along, self.kind))

    def _values(self) -> dict[str, tuple[object, str]]:
        return {"edge": (self.along, "place"), "spacing": (CLIP_SPACING, "allowance")}

    def sentences(self, pattern: Cut) -> tuple[Sentence, ...]:
        return (Sentence(f"{self.kind}.cut", self._values()), *both_sides(pattern, self.along))

    def whys(self, pattern: Cut) -> tuple[Sentence, ...]:
        return (Sentence(f"{self.kind}.why", {}),)

    def _section(self) -> Section | None:
        return section.superimposed()

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        run = shown(pattern, self.along[0])
        return (Scene((Layer(run, up="wrong"),), (Row(run, ink="old"),), focus=run, section=self._section()),)

    def check(self, state: State, pattern: Cut) -> tuple[Diagnostic, ...]:
        found = []
        for run in self.along:
            if state.is_raw(pattern, run):
                found.append(
                    trouble_on(
                        pattern,
                        (run,),
                        f"{self.kind}_early",
                        message("sewing_trouble.cut_into_early", place=placed(pattern, run)),
                        message("sewing_trouble.do_sew_seam_first"),
                    )
                )
            elif any(fact in state.facts for fact in edge_facts(pattern, (run,), "shut_in")):
                found.append(
                    trouble_on(
                        pattern,
                        (run,),
                        f"{self.kind}_late",
                        message("sewing_trouble.cut_into_late", place=placed(pattern, run)),
                        message("sewing_trouble.cut_into_late_do"),
                    )
                )
        return tuple(found)

    def _wrong_bend(self, pattern: Cut, wrong: Bend, code: str) -> tuple[Diagnostic, ...]:
        key = f"sewing_trouble.{code}"
        return tuple(
            trouble_on(pattern, (run,), code, message(key, place=placed(pattern, run)), message(f"{key}_do"))
            for run in self.along
            if bend(pattern, run) == wrong
        )


@dataclass(frozen=True, kw_only=True)
class Clip(OnAllowance):
    """Snips into the allowance, almost to the stitches, where the edge bends into its piece: they open when turned."""

    kind: ClassVar[str] = "clip"

    def check(self, state: State, pattern: Cut) -> tuple[Diagnostic, ...]:
        return super().check(state, pattern) + self._wrong_bend(pattern, "out", "clipped_outward_curve")


@dataclass(frozen=True, kw_only=True)
class NotchCurve(OnAllowance):
    """Small wedges cut out of the allowance where the edge bends outward, so that it lies flat when turned."""

    kind: ClassVar[str] = "notch_curve"

    def check(self, state: State, pattern: Cut) -> tuple[Diagnostic, ...]:
        return super().check(state, pattern) + self._wrong_bend(pattern, "in", "notched_inward_curve")


@dataclass(frozen=True, kw_only=True)
class Trim(OnAllowance):
    """Allowances cut back `to` mm."""

    kind: ClassVar[str] = "trim"

    to: float

    def _values(self) -> dict[str, tuple[object, str]]:
        return {"edge": (self.along, "place"), "to": (self.to, "allowance")}

    def check(self, state: State, pattern: Cut) -> tuple[Diagnostic, ...]:
        found = list(super().check(state, pattern))
        for run in self.along:
            widths = [pattern.piece(run.piece).edge(name).allowance for name in run.edges]
            found += too_narrow(pattern, run, self.to)
            narrow = [width for width in widths if width is not None and self.to >= width - 0.5]
            if narrow:
                found.append(
                    trouble_on(
                        pattern,
                        (run,),
                        "nothing_to_trim",
                        message(
                            "sewing_trouble.nothing_to_trim",
                            place=placed(pattern, run),
                            width=measured(narrow[0], "allowance"),
                            to=measured(self.to, "allowance"),
                        ),
                        message("sewing_trouble.nothing_to_trim_do"),
                        amount=self.to - narrow[0],
                    )
                )
        return tuple(found)


@dataclass(frozen=True, kw_only=True)
class Grade(OnAllowance):
    """The allowances of a seam cut to different widths: that of `along` `to` mm, that of the edge it is sewn to, which
    lies next to the outside, left wider."""

    kind: ClassVar[str] = "grade"

    to: float
    wider: float

    def _values(self) -> dict[str, tuple[object, str]]:
        return {
            "edge": (self.along, "place"),
            "to": (self.to, "allowance"),
            "wider": (self.wider, "allowance"),
        }

    def _section(self) -> Section | None:
        return shapes.graded()

    def check(self, state: State, pattern: Cut) -> tuple[Diagnostic, ...]:
        found = list(super().check(state, pattern))
        for run in self.along:
            found += too_narrow(pattern, run, self.to)
            if not all(
                any((run.piece, side, edge) in seam for seam in state.seams)
                for side in sides_of(pattern, run)
                for edge in run.edges
            ):
                found.append(
                    trouble_on(
                        pattern,
                        (run,),
                        "one_layer_graded",
                        message("sewing_trouble.one_layer_graded", place=placed(pattern, run)),
                        message("sewing_trouble.one_layer_graded_do"),
                    )
                )
        return tuple(found)


def too_narrow(pattern: Cut, run: Run, to: float) -> list[Diagnostic]:
    if to >= LEFT_AT_LEAST:
        return []
    return [
        trouble_on(
            pattern,
            (run,),
            "trimmed_away",
            message("sewing_trouble.trimmed_away", to=measured(to, "allowance")),
            message("sewing_trouble.trimmed_away_do", least=measured(LEFT_AT_LEAST, "allowance")),
            amount=LEFT_AT_LEAST - to,
        )
    ]


@dataclass(frozen=True, kw_only=True)
class TackDown(Operation):
    """The finished edges `edges` of a facing held to the allowances of the seams `to` they cross by a few hand
    stitches, which do not go through to the right side."""

    kind: ClassVar[str] = "tack_down"
    stitch_type: ClassVar[str] = ""
    cautions: ClassVar[tuple[str, ...]] = ("needle",)
    tools: ClassVar[tuple[str, ...]] = ("hand_needle",)

    edges: tuple[Run, ...]
    to: tuple[Run, ...]

    def runs(self) -> tuple[Run, ...]:
        return self.edges + self.to

    def effect(self, pattern: Cut) -> Effect:
        return Effect(facts=edge_facts(pattern, self.edges, "tacked"))

    def minutes(self, pattern: Cut) -> float:
        """3 minutes at each seam (common practice, no source)."""
        return 1.0 + 3.0 * sum(len(sides_of(pattern, run)) for run in self.to)

    def sentences(self, pattern: Cut) -> tuple[Sentence, ...]:
        values: dict[str, tuple[object, str]] = {"edge": (self.edges, "place"), "seam": (self.to, "place")}
        return (Sentence("tack_down.sew", values), *both_sides(pattern, self.to))

    def whys(self, pattern: Cut) -> tuple[Sentence, ...]:
        return (Sentence("tack_down.why", {}),)

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        run = shown(pattern, self.edges[0])
        return (
            Scene(
                (Layer(run, up="right", stuff="facing"),),
                (Row(run, inset=1.0, style="hand"),),
                focus=run,
                section=shapes.tacked(),
            ),
        )

    def check(self, state: State, pattern: Cut) -> tuple[Diagnostic, ...]:
        found = []
        for run in self.edges:
            if not state.is_closed(pattern, run):
                found.append(
                    trouble_on(
                        pattern,
                        (run,),
                        "tacked_raw",
                        message("sewing_trouble.tacked_raw", place=placed(pattern, run)),
                        message("sewing_trouble.tacked_raw_do"),
                    )
                )
        for run in self.to:
            if not state.is_closed(pattern, run):
                found.append(
                    trouble_on(
                        pattern,
                        (run,),
                        "tacked_to_no_seam",
                        message("sewing_trouble.tacked_to_no_seam", place=placed(pattern, run)),
                        message("sewing_trouble.tacked_to_no_seam_do"),
                    )
                )
        parts = [(run.piece, side) for run in self.to for side in sides_of(pattern, run)]
        for run in self.edges:
            for side in sides_of(pattern, run):
                if not found and not any(state.joined((run.piece, side), part) for part in parts):
                    found.append(
                        trouble_on(
                            pattern,
                            (run,),
                            "tacked_loose",
                            message("sewing_trouble.tacked_loose", piece=titled(pattern.piece(run.piece).title)),
                            message("sewing_trouble.tacked_loose_do"),
                        )
                    )
        return tuple(found)


@verb
def clip(reader: Reader, *along: Runs) -> Clip:
    """Snip into the allowance of a sewn edge that bends inward.

    Example::

        make.clip(front.neck, back.neck)
    """
    return Clip(along=reader.runs(along, "clip"))


@verb
def notch_curve(reader: Reader, *along: Runs) -> NotchCurve:
    """Cut wedges out of the allowance of a sewn edge that bends outward.

    Example::

        make.plain_seam(front.armhole, front_lining.armhole, allowance=1 * cm)
        make.notch_curve(front.armhole)
    """
    return NotchCurve(along=reader.runs(along, "notch the curve"))


@verb
def trim(reader: Reader, *along: Runs, to: Size) -> Trim:
    """Cut the allowance of a sewn edge back `to` a width.

    Example::

        make.plain_seam(front.shoulder, back.shoulder, allowance=1.5 * cm)
        make.trim(front.shoulder, to=6 * mm)
    """
    return Trim(along=reader.runs(along, "trim"), to=read_width(to, "trim, width"))


@verb
def grade(reader: Reader, *along: Runs, to: Size = Length(4.0), wider: Size = Length(7.0)) -> Grade:
    """Trim the allowances of a seam to two widths: `to` at this edge, `wider` at the one it is sewn to.

    Example::

        make.grade(front_facing.inner, back_facing.inner, to=4 * mm, wider=7 * mm)
    """
    where = "grade"
    narrow, wide = read_width(to, f"{where}, narrower"), read_width(wider, f"{where}, wider")
    if wide <= narrow:
        raise KitError(
            message("refusal.grade", wide=measured(wide, "allowance"), narrow=measured(narrow, "allowance")),
            where=in_call(where),
            do=message("refusal.grade_do"),
        )
    return Grade(along=reader.runs(along, where), to=narrow, wider=wide)


@verb
def tack_down(reader: Reader, *edges: Runs, to: Runs) -> TackDown:
    """Hold the finished edges of a facing to the allowances of the seams `to` they cross.

    Example::

        make.tack_down(front_facing.outer, to=front.shoulder)
    """
    where = "tack down"
    return TackDown(edges=reader.runs(edges, where), to=reader.runs(to, f"{where}, seam"))
