"""Rows sewn on an edge to make it ready: gathers, ease stitching, basting and taking the basting out."""

from __future__ import annotations

from dataclasses import dataclass
from typing import ClassVar

from kit.diagnostic import Diagnostic, measured, message, number, per_cent
from kit.errors import KitError
from kit.sewing.cut import Cut
from kit.sewing.named import placed
from kit.sewing.operation import Operation, Sentence, both_sides, shown
from kit.sewing.operations.joined import EASED_EASE, edge_facts, stitch_length, trouble_on
from kit.sewing.outcome import Effect, Fact
from kit.sewing.reading import DEEPEST_HEM, Reader, Runs, read_size, read_width
from kit.sewing.run import Run
from kit.sewing.scene import Layer, Row, Scene
from kit.sewing.sections import folds as shapes
from kit.sewing.spans import neighbours, sides_of
from kit.sewing.state import State
from kit.sewing.verb import verb
from kit.units import Length, Size

LEAST_GATHERS = 1.05
MOST_GATHERS = 4.0
"""Longer : drawn up; less shows no gathers, more cannot be pushed together (common practice, no source)."""
LONGEST = 5000.0  # mm an edge may be drawn up to


@dataclass(frozen=True, kw_only=True)
class DrawnUp(Operation):
    """Rows of long stitches in the allowance by which the edges become shorter: drawn up `to` mm on each half, or to
    the length of the runs they are to `fit`."""

    cautions: ClassVar[tuple[str, ...]] = ("needle",)
    tools: ClassVar[tuple[str, ...]] = ("machine", "pins")
    fact: ClassVar[str] = ""

    along: tuple[Run, ...]
    to: float | None = None
    fit: tuple[Run, ...] = ()
    rows: int = 2

    def runs(self) -> tuple[Run, ...]:
        return self.along

    def full(self, pattern: Cut) -> float:
        """mm of the edges as they lie flat, on one half."""
        return stitch_length(pattern, self.along) / self._halves(pattern)

    def drawn(self, pattern: Cut) -> float | None:
        """mm they are drawn up to, on one half; None where it is not said."""
        if not self.fit:
            return self.to
        return stitch_length(pattern, self.fit) / self._halves(pattern)

    def _halves(self, pattern: Cut) -> int:
        return max(len(sides_of(pattern, run)) for run in self.along)

    def _told(self, pattern: Cut) -> tuple[float, tuple[Sentence, ...]]:
        """How many halves one edge of the cloth has, and the closing sentence where left and right are two edges."""
        pieces = [pattern.piece(run.piece) for run in self.along]
        if all(
            run.side is None and p.fold in neighbours(p, run.edges) for p, run in zip(pieces, self.along, strict=True)
        ):
            return 2.0, ()
        return 1.0, both_sides(pattern, self.along)

    def effect(self, pattern: Cut) -> Effect:
        facts: tuple[Fact, ...] = edge_facts(pattern, self.along, self.fact)
        drawn = self.drawn(pattern)
        if drawn is not None and len(self.along) == 1 and self.along[0].start is None:
            run = self.along[0]
            edges = "+".join(sorted(run.edges))
            facts += tuple(("drawn_up_to", run.piece, side, edges, f"{drawn:.2f}") for side in sides_of(pattern, run))
        return Effect(facts=facts)

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        run = shown(pattern, self.along[0])
        rows = tuple(Row(run, inset=-(3.0 + 3.0 * number), style="gather") for number in range(self.rows))
        return (Scene((Layer(run, up="right"),), rows, focus=run, section=shapes.drawn_up(self.rows)),)

    def check(self, state: State, pattern: Cut) -> tuple[Diagnostic, ...]:
        found: list[Diagnostic] = []
        for run in self.along:
            if not state.is_raw(pattern, run):
                found.append(
                    trouble_on(
                        pattern,
                        (run,),
                        f"{self.fact}_late",
                        message("sewing_trouble.drawn_up_late", place=placed(pattern, run)),
                        message("sewing_trouble.drawn_up_late_do"),
                    )
                )
            elif any(fact in state.facts for fact in edge_facts(pattern, (run,), self.fact)) and run.start is None:
                found.append(
                    trouble_on(
                        pattern,
                        (run,),
                        f"{self.fact}_twice",
                        message(f"sewing_trouble.{self.fact}_twice", place=placed(pattern, run)),
                        message("sewing_trouble.do_take_one_operation_out"),
                    )
                )
        return tuple(found)


@dataclass(frozen=True, kw_only=True)
class Gather(DrawnUp):
    """Rows of the longest stitch on both sides of the stitch line, drawn up by their threads."""

    kind: ClassVar[str] = "gather"
    fact: ClassVar[str] = "gathered"

    def sentences(self, pattern: Cut) -> tuple[Sentence, ...]:
        drawn, full = self.drawn(pattern), self.full(pattern)
        halves, end = self._told(pattern)
        assert drawn is not None
        values: dict[str, tuple[object, str]] = {
            "edge": (self.along, "place"),
            "rows": (self.rows, "count"),
            "to": (drawn * halves, "length"),
            "full": (full * halves, "length"),
            "fit": (self.fit, "place"),
            "apart": (6.0, "allowance"),
        }
        keys = ["sew" if self.rows == 2 else "sew_more", "mark", "draw_to_fit" if self.fit else "draw", "spread"]
        return (*(Sentence(f"gather.{key}", values) for key in keys), *end)

    def whys(self, pattern: Cut) -> tuple[Sentence, ...]:
        return (Sentence("gather.why", {}), Sentence("gather.why_quarters", {}))

    def check(self, state: State, pattern: Cut) -> tuple[Diagnostic, ...]:
        found = super().check(state, pattern)
        drawn, full = self.drawn(pattern), self.full(pattern)
        assert drawn is not None
        ratio = full / drawn
        if ratio < LEAST_GATHERS:
            return (
                *found,
                trouble_on(
                    pattern,
                    self.along,
                    "gathers_too_few",
                    message(
                        "sewing_trouble.gathers_too_few",
                        place=placed(pattern, self.along[0]),
                        full=measured(full),
                        drawn=measured(drawn),
                    ),
                    message("sewing_trouble.gathers_too_few_do"),
                    amount=full - drawn,
                ),
            )
        if ratio > MOST_GATHERS:
            return (
                *found,
                trouble_on(
                    pattern,
                    self.along,
                    "gathers_too_many",
                    message(
                        "sewing_trouble.gathers_too_many",
                        place=placed(pattern, self.along[0]),
                        full=measured(full),
                        ratio=number(ratio),
                        drawn=measured(drawn),
                    ),
                    message("sewing_trouble.gathers_too_many_do"),
                    amount=full - drawn,
                ),
            )
        return found


@dataclass(frozen=True, kw_only=True)
class EaseStitch(DrawnUp):
    """A row of long stitches in the allowance, drawn up so little that no gathers show."""

    kind: ClassVar[str] = "ease_stitch"
    fact: ClassVar[str] = "eased"

    rows: int = 1

    def sentences(self, pattern: Cut) -> tuple[Sentence, ...]:
        drawn = self.drawn(pattern)
        halves, end = self._told(pattern)
        less = 0.0 if drawn is None else self.full(pattern) - drawn
        values: dict[str, tuple[object, str]] = {
            "edge": (self.along, "place"),
            "fit": (self.fit, "place"),
            "distance": (3.0, "allowance"),
            "less": (less * halves, "length"),
            "to": ((drawn or 0.0) * halves, "length"),
        }
        draw = "draw_to_fit" if self.fit else "draw" if drawn is not None else "draw_later"
        keys = ["sew" if self.rows == 1 else "sew_two", draw, "smooth"]
        return (*(Sentence(f"ease_stitch.{key}", values) for key in keys), *end)

    def whys(self, pattern: Cut) -> tuple[Sentence, ...]:
        return (Sentence("ease_stitch.why", {}),)

    def check(self, state: State, pattern: Cut) -> tuple[Diagnostic, ...]:
        found = super().check(state, pattern)
        drawn, full = self.drawn(pattern), self.full(pattern)
        if drawn is None:
            return found
        share = (full - drawn) / drawn
        if share <= 0 or share > EASED_EASE:
            code = "nothing_to_ease" if share <= 0 else "too_much_to_ease"
            return (
                *found,
                trouble_on(
                    pattern,
                    self.along,
                    code,
                    message(
                        f"sewing_trouble.{code}",
                        place=placed(pattern, self.along[0]),
                        full=measured(full),
                        drawn=measured(drawn),
                        share=per_cent(share),
                    ),
                    message(f"sewing_trouble.{code}_do"),
                    amount=abs(full - drawn),
                ),
            )
        return found


@dataclass(frozen=True, kw_only=True)
class Baste(Operation):
    """Long stitches `distance` mm outside the stitch line that hold layers until the seam is sewn. On the stitch line
    (`distance` 0) they show later and are taken out: `make.remove_basting`."""

    kind: ClassVar[str] = "baste"

    along: tuple[Run, ...]
    distance: float

    def runs(self) -> tuple[Run, ...]:
        return self.along

    def effect(self, pattern: Cut) -> Effect:
        return Effect(facts=edge_facts(pattern, self.along, "basted"))

    def wants(self, pattern: Cut) -> tuple[Fact, ...]:
        return edge_facts(pattern, self.along, "basting_out") if self.distance < 0.5 else ()

    def sentences(self, pattern: Cut) -> tuple[Sentence, ...]:
        values: dict[str, tuple[object, str]] = {
            "edge": (self.along, "place"),
            "distance": (self.distance, "allowance"),
        }
        key = "baste.sew_on_line" if self.distance < 0.5 else "baste.sew"
        return (Sentence(key, values), *both_sides(pattern, self.along))

    def whys(self, pattern: Cut) -> tuple[Sentence, ...]:
        return (Sentence("baste.why", {}),)

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        run = shown(pattern, self.along[0])
        row = Row(run, inset=-self.distance, style="baste")
        return (Scene((Layer(run, up="right"),), (row,), focus=run, section=shapes.drawn_up(1)),)

    def check(self, state: State, pattern: Cut) -> tuple[Diagnostic, ...]:
        return tuple(
            trouble_on(
                pattern,
                (run,),
                "basted_late",
                message("sewing_trouble.basted_late", place=placed(pattern, run)),
                message("sewing_trouble.basted_late_do"),
            )
            for run in self.along
            if state.is_closed(pattern, run)
        )


@dataclass(frozen=True, kw_only=True)
class RemoveBasting(Operation):
    """Basting taken out once the edge is sewn."""

    kind: ClassVar[str] = "remove_basting"
    stitch_type: ClassVar[str] = ""
    cautions: ClassVar[tuple[str, ...]] = ("scissors",)
    tools: ClassVar[tuple[str, ...]] = ("scissors",)
    notions: ClassVar[tuple[str, ...]] = ()

    along: tuple[Run, ...]

    def runs(self) -> tuple[Run, ...]:
        return self.along

    def effect(self, pattern: Cut) -> Effect:
        return Effect(
            facts=edge_facts(pattern, self.along, "basting_out"), undone=edge_facts(pattern, self.along, "basted")
        )

    def sentences(self, pattern: Cut) -> tuple[Sentence, ...]:
        return (
            Sentence("remove_basting.pull", {"edge": (self.along, "place")}),
            *both_sides(pattern, self.along),
        )

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        run = shown(pattern, self.along[0])
        return (Scene((Layer(run, up="right"),), (Row(run, ink="old"),), focus=run),)

    def check(self, state: State, pattern: Cut) -> tuple[Diagnostic, ...]:
        found = []
        for run in self.along:
            if any(fact not in state.facts for fact in edge_facts(pattern, (run,), "basted")):
                found.append(
                    trouble_on(
                        pattern,
                        (run,),
                        "not_basted",
                        message("sewing_trouble.not_basted", place=placed(pattern, run)),
                        message("sewing_trouble.not_basted_do"),
                    )
                )
            elif not state.is_closed(pattern, run):
                found.append(
                    trouble_on(
                        pattern,
                        (run,),
                        "basting_out_early",
                        message("sewing_trouble.basting_out_early", place=placed(pattern, run)),
                        message("sewing_trouble.basting_out_early_do"),
                    )
                )
        return tuple(found)


def _drawn(reader: Reader, to: Size | None, fit: Runs | None, where: str) -> tuple[float | None, tuple[Run, ...]]:
    if to is not None and fit is not None:
        raise KitError("both a length and an edge to fit are named.", where=where, do="Name one of them.")
    return (
        None if to is None else read_width(to, f"{where}, length drawn up to", LONGEST),
        () if fit is None else reader.runs(fit, f"{where}, fit"),
    )


def _rows(rows: object, where: str) -> int:
    if isinstance(rows, bool) or not isinstance(rows, int) or not 1 <= rows <= 3:
        raise KitError(f"{rows!r} rows of long stitches.", where=where, do="Write 1, 2 or 3.")
    return rows


@verb
def gather(reader: Reader, *along: Runs, to: Size | None = None, fit: Runs | None = None, rows: int = 2) -> Gather:
    """Gather an edge `to` a length on each half, or to `fit` the edge it will be sewn to.

    Example::

        make.gather(sleeve.wrist, to=18 * cm)
    """
    where = "gather"
    length, partner = _drawn(reader, to, fit, where)
    if length is None and not partner:
        raise KitError(
            "it is not said how far the edge is drawn up.",
            where=where,
            do="Write to=40 * cm, or fit=band.lower, the edge it will be sewn to.",
        )
    return Gather(along=reader.runs(along, where), to=length, fit=partner, rows=_rows(rows, where))


@verb
def ease_stitch(
    reader: Reader, *along: Runs, to: Size | None = None, fit: Runs | None = None, rows: int = 1
) -> EaseStitch:
    """A row of long stitches by which an edge is eased, `to` a length or to `fit` the edge it will be sewn to.

    Example::

        make.ease_stitch(sleeve.back_cap + sleeve.front_cap, to=36 * cm)
    """
    where = "ease stitching"
    length, partner = _drawn(reader, to, fit, where)
    return EaseStitch(along=reader.runs(along, where), to=length, fit=partner, rows=_rows(rows, where))


@verb
def baste(reader: Reader, *along: Runs, distance: Size = Length(3.0)) -> Baste:
    """Hold layers with long stitches `distance` outside the stitch line; `distance=0 * mm` on it, for a fitting.

    Example::

        make.baste(front.side)
    """
    where = "baste"
    return Baste(along=reader.runs(along, where), distance=read_size(distance, f"{where}, distance", DEEPEST_HEM))


@verb
def remove_basting(reader: Reader, *along: Runs) -> RemoveBasting:
    """Take basting out again.

    Example::

        make.remove_basting(front.side)
    """
    return RemoveBasting(along=reader.runs(along, "remove basting"))
