"""Fold-over casings; what is drawn through them is in `drawn_in`."""

from __future__ import annotations

from dataclasses import dataclass
from typing import ClassVar

from kit.diagnostic import Diagnostic, message
from kit.sewing.cut import Cut
from kit.sewing.named import placed
from kit.sewing.operation import Operation, Sentence, shown, taken
from kit.sewing.operations.places import (
    alike,
    closed_but,
    facts_of,
    opening_run,
    refuse,
    sewn_length,
)
from kit.sewing.operations.seams import unjoined
from kit.sewing.outcome import Closing, Effect, Fact
from kit.sewing.reading import DEEPEST_HEM, Reader, Runs, read_width
from kit.sewing.run import Place, Run
from kit.sewing.scene import Layer, Row, Scene
from kit.sewing.sections import bindings as section
from kit.sewing.state import State
from kit.sewing.verb import verb
from kit.units import Length, Size

EDGE = 2.0  # mm from the inner fold to the row


@dataclass(frozen=True, kw_only=True)
class Casing(Operation):
    """An edge turned twice to the wrong side, `first` mm and then `depth` mm, and stitched near the inner fold: a
    tunnel. It takes first + depth. `gap` is left open for threading; without one, what is drawn through comes out
    by eyelets."""

    kind: ClassVar[str] = "casing"
    seam_class: ClassVar[str] = "6.03.01"
    cautions: ClassVar[tuple[str, ...]] = ("needle", "iron")
    tools: ClassVar[tuple[str, ...]] = ("machine", "pins", "iron")
    crosses: ClassVar[bool] = True

    edges: tuple[Run, ...]
    first: float
    depth: float
    gap: Run | None = None

    def runs(self) -> tuple[Run, ...]:
        return self.edges

    def closes(self, pattern: Cut) -> tuple[Closing, ...]:
        return closed_but(pattern, self.edges, (self.gap,) if self.gap else (), "hemmed")

    def takes(self, pattern: Cut) -> dict[tuple[str, str], float]:
        return taken(self.edges, self.first + self.depth)

    def effect(self, pattern: Cut) -> Effect:
        made = facts_of(pattern, self.edges, "casing")
        deep = tuple(("casing_depth", *fact[1:], f"{self.depth:.2f}") for fact in made)
        return Effect(facts=made + deep)

    def wants(self, pattern: Cut) -> tuple[Fact, ...]:
        return facts_of(pattern, self.edges, "threaded")

    def sentences(self, pattern: Cut) -> tuple[Sentence, ...]:
        values: dict[str, tuple[object, str]] = {
            "edge": (self.edges, "place"),
            "first": (self.first, "part"),
            "second": (self.depth, "part"),
            "total": (self.first + self.depth, "allowance"),
            "row": (EDGE, "allowance"),
        }
        keys = ["first", "second"]
        if self.gap is None:
            keys += ["sew"]
        else:
            values["gap"] = (sewn_length(pattern, (self.gap,)), "length")
            values["where"] = ((self.gap,), "place")
            keys += ["sew_gap"]
        return (*(Sentence(f"casing.{key}", values) for key in keys), *alike(pattern, self.edges))

    def whys(self, pattern: Cut) -> tuple[Sentence, ...]:
        return (Sentence("casing.why", {}),)

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        run = shown(pattern, self.edges[0])
        gap = None
        if self.gap is not None and self.gap.piece == run.piece and self.gap.edges == run.edges:
            gap = (self.gap.start or 0.0, self.gap.end or sewn_length(pattern, (shown(pattern, self.gap),)))
        row = Row(run, inset=max(self.depth - EDGE, self.depth / 2), gap=gap)
        return (
            Scene(
                layers=(Layer(run, up="wrong", turn=tuple((edge, self.depth) for edge in run.edges)),),
                rows=(row,),
                focus=run,
                arrows=((run, "in"),),
                section=section.casing(),
            ),
        )

    def check(self, state: State, pattern: Cut) -> tuple[Diagnostic, ...]:
        found = list(unjoined(state, pattern, self.edges))
        run = self.edges[0]
        if self.first > self.depth + 0.5:
            found.append(
                refuse(
                    pattern,
                    run,
                    "hem_turns",
                    message("sewing_trouble.casing_turns"),
                    message("sewing_trouble.do_deepen_second_turn"),
                    self.first - self.depth,
                )
            )
        if self.gap is not None:
            covered = {(each.piece, edge) for each in self.edges for edge in each.edges}
            if any((self.gap.piece, edge) not in covered for edge in self.gap.edges):
                found.append(
                    refuse(
                        pattern,
                        self.gap,
                        "gap_elsewhere",
                        message("sewing_trouble.gap_elsewhere", place=placed(pattern, self.gap)),
                        message("sewing_trouble.gap_elsewhere_do"),
                    )
                )
        return tuple(found)


@verb
def casing(
    reader: Reader, *edges: Runs, first: Size = Length(10.0), depth: Size, gap: Run | Place | None = None
) -> Casing:
    """Fold an edge over to a tunnel `depth` deep. `gap`: a part of it (front.waist.between(...)) left open.

    Example::

        make.casing(tote.top, first=1 * cm, depth=3 * cm)
    """
    where = "casing"
    return Casing(
        edges=reader.runs(edges, where),
        first=read_width(first, f"{where}, first turn"),
        depth=read_width(depth, f"{where}, depth", DEEPEST_HEM),
        gap=None if gap is None else opening_run(reader, gap, f"{where}, gap"),
    )
